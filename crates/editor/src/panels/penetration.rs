use super::{heading, quiet};
use crate::action::{Action, Actions};
use crate::widgets::{LittleButton, fields};
use crate::{Document, text};
use chalkcourse_geometry::Length;
use chalkcourse_job::{Edit, Penetration, PenetrationId, PenetrationKind, Shape};
use egui::Ui;

/// The kind of shape.
#[derive(Clone, Copy, PartialEq)]
enum Form {
    Circle,
    Rectangle,
    Polygon,
}

/// The form of a penetration: kind, size, clearance.
pub(super) fn penetration_form(ui: &mut Ui, document: &Document, id: PenetrationId, actions: &mut Actions) {
    let job = document.job();
    let Some(penetration) = job.penetration(id) else { return };
    let units = job.units;
    heading(ui, &penetration.name);
    let mut put = |next: Penetration| {
        actions.push(Action::Edit(text::change_of(&penetration.name), Edit::PutPenetration(next)));
    };
    if let Some(name) = fields::name(ui, text::NAME.now(), &penetration.name) {
        put(Penetration { name, ..penetration.clone() });
    }
    let kinds = PenetrationKind::ALL.map(|kind| (kind, text::kind(kind)));
    if let Some(kind) = fields::choice(ui, text::KIND.now(), penetration.kind, &kinds) {
        put(Penetration { kind, ..penetration.clone() });
    }
    let (form, across, up) = match &penetration.shape {
        Shape::Circle { diameter } => (Form::Circle, *diameter, *diameter),
        Shape::Rectangle { along, up } => (Form::Rectangle, *along, *up),
        Shape::Polygon { .. } => (Form::Polygon, Length::from_feet(1.0), Length::from_feet(1.0)),
    };
    let mut forms = vec![(Form::Circle, text::ROUND.now()), (Form::Rectangle, text::RECTANGLE.now())];
    if form == Form::Polygon {
        forms.push((Form::Polygon, text::ANY_OUTLINE.now()));
    }
    let mut reshape = |shape| put(Penetration { shape, ..penetration.clone() });
    match fields::choice(ui, text::SHAPE.now(), form, &forms) {
        Some(Form::Circle) => reshape(Shape::Circle { diameter: across }),
        Some(Form::Rectangle) => reshape(Shape::Rectangle { along: across, up }),
        _ => {}
    }
    match form {
        Form::Circle => {
            if let Some(diameter) =
                fields::length(ui, text::DIAMETER.now(), across, units, true, text::TAPED_HELP.now())
            {
                reshape(Shape::Circle { diameter });
            }
        }
        Form::Rectangle => {
            if let Some(along) =
                fields::length(ui, text::ALONG.now(), across, units, true, text::TAPED_HELP.now())
            {
                reshape(Shape::Rectangle { along, up });
            }
            if let Some(up) =
                fields::length(ui, text::UP_SLOPE.now(), up, units, true, text::TAPED_HELP.now())
            {
                reshape(Shape::Rectangle { along: across, up });
            }
        }
        Form::Polygon => {}
    }
    let usual = job.rule_book.clearance(penetration.kind);
    let clearance = penetration.clearance.unwrap_or(usual);
    if let Some(clearance) =
        fields::length(ui, text::CLEARANCE.now(), clearance, units, true, text::CLEARANCE_HELP.now())
    {
        put(Penetration { clearance: Some(clearance), ..penetration.clone() });
    }
    if penetration.clearance.is_some() {
        ui.horizontal(|ui| {
            quiet(ui, &text::own_clearance(&usual.show_small(units)));
            if ui.little_button(text::AS_THE_BOOK.now()).clicked() {
                put(Penetration { clearance: None, ..penetration.clone() });
            }
        });
    }
    place(ui, document, penetration, &mut put);
    if ui.button(text::DELETE_PENETRATION.now()).clicked() {
        actions.extend(crate::edits::delete(document, crate::Selection::Penetration(id)));
    }
}

/// The position of its centre relative to the face's lower left corner, as a crew tapes it.
fn place(ui: &mut Ui, document: &Document, penetration: &Penetration, put: &mut impl FnMut(Penetration)) {
    let layout = &document.plan().layout;
    let home = layout.penetration(penetration.id).and_then(|placed| placed.home);
    let Some(face) = home.and_then(|index| layout.roof.faces.get(index)) else {
        quiet(ui, text::BESIDE_FACES.now());
        return;
    };
    let units = document.job().units;
    let frame = face.plane.to_frame(penetration.at);
    let from = frame - face.bounds.min;
    let mut moved = |u: f64, v: f64| {
        let at = face.plane.to_plan(face.bounds.min + chalkcourse_geometry::dvec2(u, v));
        put(Penetration { at, ..penetration.clone() });
    };
    let along = Length::from_metres(from.x);
    if let Some(along) =
        fields::length(ui, text::FROM_LEFT.now(), along, units, false, text::MIDDLE_HELP.now())
    {
        moved(along.metres(), from.y);
    }
    if let Some(up) = fields::length(
        ui,
        text::FROM_EAVE.now(),
        Length::from_metres(from.y),
        units,
        false,
        text::MIDDLE_HELP.now(),
    ) {
        moved(from.x, up.metres());
    }
}
