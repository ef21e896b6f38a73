//! The picture under the plan on the drawing: moved, turned, scaled by two points, cropped; and painted under all else.

use super::brush::Brush;
use super::gesture::{Gesture, Step};
use super::{Canvas, Stage};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::{State, Tool, View};
use crate::widgets::fields;
use crate::{Document, text, theme};
use chalkcourse_geometry::{DVec2, Length, Units};
use chalkcourse_job::{Crop, Edit, Underlay};
use egui::{
    Align2, Button, Color32, Mesh, PointerButton, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo,
};

/// What the pointer does with the picture.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Mode {
    Move,
    Turn,
    #[default]
    Scale,
    Crop,
}

impl Mode {
    const ALL: [Self; 4] = [Self::Move, Self::Turn, Self::Scale, Self::Crop];

    fn index(self) -> usize {
        Self::ALL.iter().position(|mode| *mode == self).unwrap_or_default()
    }
}

/// What is half done with the picture.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Handling {
    pub(crate) mode: Mode,
    /// Two points of a line whose length or direction is known, in plan.
    pub(crate) points: Vec<DVec2>,
    pub(crate) wrong: String,
}

/// What the pointer does while the picture tool is held.
pub(super) fn interact(ui: &Ui, stage: &Stage, document: &Document, own: &mut Canvas) {
    let Some(underlay) = &document.job().underlay else { return };
    let response = &stage.response;
    let by_points = matches!(own.handling.mode, Mode::Scale | Mode::Turn);
    if by_points
        && response.clicked()
        && let Some(at) = stage.pointer
    {
        own.handling.wrong.clear();
        if own.handling.points.len() >= 2 {
            own.handling.points.clear();
        }
        own.handling.points.push(at);
    }
    if own.handling.mode != Mode::Scale
        && response.drag_started_by(PointerButton::Primary)
        && !super::pan_key(ui)
        && let Some(origin) = ui.input(|input| input.pointer.press_origin())
    {
        let grab = stage.space.plan(origin);
        own.handling.points.clear();
        own.gesture =
            Some(Gesture::Picture { start: Box::new(underlay.clone()), mode: own.handling.mode, grab });
    }
}

/// What a drag of the picture means.
pub(super) fn step(start: &Underlay, mode: Mode, grab: DVec2, plan: DVec2) -> Option<Step> {
    let (label, next) = match mode {
        Mode::Scale => return None,
        Mode::Move => (text::MOVE_PICTURE.now(), Underlay { at: start.at + plan - grab, ..start.clone() }),
        Mode::Turn => {
            let degrees = -(grab - start.at).angle_to(plan - start.at).to_degrees();
            (
                text::TURN_PICTURE.now(),
                if degrees.is_finite() { start.turned(start.at, degrees) } else { start.clone() },
            )
        }
        Mode::Crop => {
            let (a, b) = (start.to_picture(grab), start.to_picture(plan));
            let (from, to) =
                (a.min(b).clamp(DVec2::ZERO, DVec2::ONE), a.max(b).clamp(DVec2::ZERO, DVec2::ONE));
            let enough = (to - from).min_element() > 0.005;
            let crop = Crop { left: from.x, top: from.y, right: to.x, bottom: to.y };
            (
                text::CROP_PICTURE.now(),
                if enough { Underlay { crop, ..start.clone() } } else { start.clone() },
            )
        }
    };
    Some(Step { label: label.to_owned(), edit: Edit::SetUnderlay(Some(next)), guides: Vec::new() })
}

/// The strip over the drawing.
pub(super) fn bar(ui: &mut Ui, document: &Document, own: &mut Canvas, actions: &mut Actions) {
    let Some(underlay) = &document.job().underlay else {
        if ui.button(text::CHOOSE_PICTURE.now()).clicked() {
            actions.push(Command::LayPicture.action());
        }
        return;
    };
    for mode in Mode::ALL {
        let chosen = own.handling.mode == mode;
        let index = mode.index();
        let (words, help) = (text::PICTURE_MODES[index].now(), text::PICTURE_MODES_HELP[index].now());
        if ui.add(Button::selectable(chosen, words)).on_hover_text(help).clicked() && !chosen {
            own.handling = Handling { mode, ..Handling::default() };
        }
    }
    ui.separator();
    if let [from, to] = *own.handling.points.as_slice() {
        line(ui, underlay, own, (from, to), document.job().units, actions);
        ui.separator();
    }
    if !own.handling.wrong.is_empty() {
        fields::wrong(ui, &own.handling.wrong);
    }
}

/// What to do now.
pub(super) fn hint(handling: &Handling) -> &'static str {
    text::picture_hint(handling.mode.index(), handling.points.len())
}

/// Two points were clicked: how long their line is, or that it should run square.
fn line(
    ui: &mut Ui,
    underlay: &Underlay,
    own: &mut Canvas,
    (from, to): (DVec2, DVec2),
    units: Units,
    actions: &mut Actions,
) {
    let put = |next: Underlay, label: &str| Action::Edit(label.to_owned(), Edit::SetUnderlay(Some(next)));
    let mut next = None;
    if own.handling.mode == Mode::Scale {
        let shown = Length::from_metres(from.distance(to)).show(units);
        ui.allocate_ui(egui::vec2(250.0, ui.spacing().interact_size.y), |ui| {
            let parse = |typed: &str| Length::parse(typed, units);
            let length = fields::parsed_at(
                ui,
                136.0,
                text::GROUND_LENGTH.now(),
                &shown,
                text::PICTURE_MODES_HELP[2].now(),
                parse,
            );
            if let Some(length) = length {
                match underlay.scaled(from, to, length.metres()) {
                    Some(scaled) => {
                        let reached = scaled.to_plan(underlay.to_picture(to));
                        next = Some((scaled, text::SCALE_PICTURE.now(), reached));
                    }
                    None => own.handling.wrong = text::NO_SUCH_SCALE.now().to_owned(),
                }
            }
        });
    }
    if ui.button(text::MAKE_SQUARE.now()).on_hover_text(text::MAKE_SQUARE_HELP.now()).clicked() {
        let squared = underlay.squared(from, to);
        let reached = squared.to_plan(underlay.to_picture(to));
        next = Some((squared, text::TURN_PICTURE.now(), reached));
    }
    if let Some((picture, label, reached)) = next {
        actions.push(put(picture, label));
        own.handling.points = vec![from, reached];
        own.handling.wrong.clear();
    }
}

/// Whether the picture is seen: then faces over it are drawn see-through.
pub(super) fn shows(document: &Document, state: &State) -> bool {
    let underlay = document.job().underlay.as_ref();
    state.view == View::Plan && underlay.is_some_and(|underlay| state.pictures.texture(underlay).is_some())
}

/// Paints the picture, or where it should be and why it is not there.
pub(super) fn paint(brush: &Brush, document: &Document, state: &State) {
    let Some(underlay) = document.job().underlay.as_ref().filter(|_| state.view == View::Plan) else {
        return;
    };
    let corners = underlay.corners().map(|corner| brush.space.screen_from_plan(corner));
    if let Some(texture) = state.pictures.texture(underlay) {
        let Crop { left, top, right, bottom } = underlay.crop;
        let places = [(left, top), (right, top), (right, bottom), (left, bottom)];
        let tint = Color32::WHITE.gamma_multiply((1.0 - underlay.dim) as f32);
        let mut mesh = Mesh::with_texture(texture.id());
        for (at, (x, y)) in corners.into_iter().zip(places) {
            mesh.vertices.push(egui::epaint::Vertex {
                pos: at,
                uv: Pos2::new(x as f32, y as f32),
                color: tint,
            });
        }
        mesh.add_triangle(0, 1, 2);
        mesh.add_triangle(0, 2, 3);
        brush.painter.add(Shape::mesh(mesh));
    } else if state.pictures.trouble(underlay).is_some() {
        let mut ring = corners.to_vec();
        ring.push(corners[0]);
        brush.painter.extend(Shape::dashed_line(&ring, Stroke::new(1.5, brush.palette.caution), 8.0, 6.0));
        let at = Rect::from_points(&corners).intersect(brush.space.area.shrink(20.0)).center_top();
        let words = text::not_shown(&underlay.path);
        brush.label(
            at + egui::vec2(0.0, 8.0),
            Align2::CENTER_TOP,
            &words,
            theme::size::SMALL,
            brush.palette.caution,
        );
    }
}

/// The frame of the picture that is handled, its middle, and the line that was clicked.
pub(super) fn marks(brush: &Brush, document: &Document, state: &State, own: &Canvas) {
    let Some(underlay) = document.job().underlay.as_ref().filter(|_| state.tool == Tool::Picture) else {
        return;
    };
    let p = brush.palette;
    let corners = underlay.corners().map(|corner| brush.space.screen_from_plan(corner));
    brush.painter.add(Shape::closed_line(corners.to_vec(), Stroke::new(1.5, p.accent)));
    if own.handling.mode == Mode::Turn {
        let middle = brush.space.screen_from_plan(underlay.at);
        brush.painter.circle_stroke(middle, theme::HANDLE, Stroke::new(1.6, p.accent));
    }
    let points: Vec<Pos2> = own.handling.points.iter().map(|&at| brush.space.screen_from_plan(at)).collect();
    let next = state.pointer.filter(|_| points.len() == 1).map(|at| brush.space.screen_from_plan(at));
    let line: Vec<Pos2> = points.iter().copied().chain(next).collect();
    if let [a, b] = line.as_slice() {
        brush.styled(*a, *b, p.guide, (2.0, &[], &[]));
    }
    for at in points {
        brush.painter.circle(at, theme::HANDLE, p.panel, Stroke::new(1.6, p.guide));
    }
}

/// Tells the picture to screen readers.
pub(super) fn tell(ui: &Ui, stage: &Stage, document: &Document, state: &State) {
    let Some(underlay) = document.job().underlay.as_ref().filter(|_| state.view == View::Plan) else {
        return;
    };
    let corners = underlay.corners().map(|corner| stage.space.screen_from_plan(corner));
    let rect = Rect::from_points(&corners).intersect(stage.space.area);
    if rect.is_positive() {
        let response = ui.interact(rect, egui::Id::unique("picture under the plan"), Sense::empty());
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, text::picture_words(&underlay.path)));
    }
}
