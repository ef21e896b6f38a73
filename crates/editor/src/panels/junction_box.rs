//! A junction box that is held: where it stands, and the way down from it.

use super::{heading, quiet};
use crate::action::Actions;
use crate::edits::wiring::change_box;
use crate::widgets::{LittleButton, fields};
use crate::{Document, Selection, text};
use chalkcourse_geometry::{Length, Units, dvec2};
use chalkcourse_job::{BoxId, BoxStands, JunctionBox, Leg, LiesIn};
use chalkcourse_wiring::face_of_box;
use egui::Ui;

/// A leg as it is added, to be typed over.
const NEW_LEG: Leg = Leg { length: Length::ZERO, lies: LiesIn::Attic };

pub(super) fn box_form(ui: &mut Ui, document: &Document, id: BoxId, actions: &mut Actions) {
    let job = document.job();
    let Some(junction) = job.junction_box(id) else { return };
    heading(ui, &junction.name);
    let leads_here = job.circuits.iter().filter(|circuit| circuit.to == Some(id)).count();
    quiet(ui, &text::box_words(leads_here));
    let mut put = |next: JunctionBox| actions.push(change_box(next));
    if let Some(name) = fields::name(ui, text::NAME.now(), &junction.name) {
        put(JunctionBox { name, ..junction.clone() });
    }
    let stands = [(BoxStands::OnRoof, text::ON_ROOF.now()), (BoxStands::UnderDeck, text::UNDER_DECK.now())];
    if let Some(stands) = fields::choice(ui, text::STANDS.now(), junction.stands, &stands) {
        put(JunctionBox { stands, ..junction.clone() });
    }
    place(ui, document, junction, &mut put);
    ui.add_space(6.0);
    ui.strong(text::LEGS.now()).on_hover_text(text::LEGS_HELP.now());
    legs(ui, junction, job.units, &mut put);
    ui.add_space(6.0);
    if ui.button(text::DELETE_BOX.now()).clicked() {
        actions.extend(crate::edits::delete(document, Selection::JunctionBox(id)));
    }
}

/// Where it is on its face, against the face's lower left corner, as a crew tapes it.
fn place(ui: &mut Ui, document: &Document, junction: &JunctionBox, put: &mut impl FnMut(JunctionBox)) {
    let layout = &document.plan().layout;
    let spot = face_of_box(&layout.roof, junction);
    let Some((face, frame)) = spot.and_then(|(index, at)| Some((layout.roof.faces.get(index)?, at))) else {
        quiet(ui, text::BESIDE_FACES.now());
        return;
    };
    let units = document.job().units;
    let from = frame - face.bounds.min;
    for (label, value, along) in [(text::FROM_LEFT, from.x, true), (text::FROM_EAVE, from.y, false)] {
        let shown = Length::from_metres(value);
        if let Some(typed) = fields::length(ui, label.now(), shown, units, false, text::MIDDLE_HELP.now()) {
            let moved = if along { dvec2(typed.metres(), from.y) } else { dvec2(from.x, typed.metres()) };
            let at = face.plane.to_plan(face.bounds.min + moved);
            put(JunctionBox { at, ..junction.clone() });
        }
    }
}

fn legs(ui: &mut Ui, junction: &JunctionBox, units: Units, put: &mut impl FnMut(JunctionBox)) {
    let with = |index: usize, leg: Leg| {
        let mut next = junction.clone();
        if let Some(own) = next.legs.get_mut(index) {
            *own = leg;
        }
        next
    };
    for (index, leg) in junction.legs.iter().enumerate() {
        ui.push_id(("leg", index), |ui| {
            if let Some(length) = fields::length(ui, &text::leg(index + 1), leg.length, units, false, "") {
                put(with(index, Leg { length, ..*leg }));
            }
            let raceway = match leg.lies {
                LiesIn::RoofRaceway(above) => Some(above),
                _ => None,
            };
            let choices = text::LYING.map(|(lies, words)| match (lies, raceway) {
                (LiesIn::RoofRaceway(_), Some(above)) => (LiesIn::RoofRaceway(above), words.now()),
                _ => (lies, words.now()),
            });
            if let Some(lies) = fields::choice(ui, text::LIES_IN.now(), leg.lies, &choices) {
                put(with(index, Leg { lies, ..*leg }));
            }
            if let Some(above) = raceway
                && let Some(above) = fields::length(ui, text::ABOVE_ROOF.now(), above, units, true, "")
            {
                put(with(index, Leg { lies: LiesIn::RoofRaceway(above), ..*leg }));
            }
            if ui.little_button(text::REMOVE_LEG.now()).clicked() {
                let mut next = junction.clone();
                next.legs.remove(index);
                put(next);
            }
        });
    }
    if ui.little_button(text::ADD_LEG.now()).clicked() {
        let mut next = junction.clone();
        next.legs.push(NEW_LEG);
        put(next);
    }
}
