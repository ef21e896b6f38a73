use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::gesture::{Drag, Gesture};
use crate::commands::Command;
use crate::state::{PictureMode, State};
use crate::widgets::fields;
use crate::{Document, edits, state, text, theme};
use chalkcourse_geometry::{DVec2, Length, Units};
use chalkcourse_job::{Edit, Underlay};
use chalkcourse_words::Say;
use egui::{Button, Pos2, Shape, Stroke, Ui};

/// Moves, rotates, scales and crops the picture under the plan.
#[derive(Debug, Default)]
pub(super) struct Picture {
    mode: PictureMode,
    /// Two points of a line with known length or direction, in plan.
    points: Vec<DVec2>,
    wrong: String,
}

impl Picture {
    /// Sets how the pointer edits the picture.
    pub(super) fn handle(&mut self, mode: PictureMode) {
        *self = Self { mode, ..Self::default() };
    }
}

impl Tool for Picture {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, _: &mut Actions) {
        let Some(underlay) = &at.document.job().underlay else { return };
        let by_points = matches!(self.mode, PictureMode::Scale | PictureMode::Turn);
        if by_points
            && at.stage.response.clicked()
            && let Some(place) = at.stage.pointer
        {
            self.wrong.clear();
            if self.points.len() >= 2 {
                self.points.clear();
            }
            self.points.push(place);
        }
        if self.mode != PictureMode::Scale
            && let Some(origin) = at.drag_from()
        {
            let grab = at.stage.space.plan(origin);
            self.points.clear();
            drag.gesture =
                Some(Gesture::Picture { start: Box::new(underlay.clone()), mode: self.mode, grab });
        }
    }

    fn nudged(&self, at: &Frame, by: DVec2) -> Option<Action> {
        edits::picture_nudged(at.document, by)
    }

    fn take_back(&mut self) -> bool {
        let any = !self.points.is_empty();
        self.let_go();
        any
    }

    fn let_go(&mut self) {
        self.points.clear();
        self.wrong.clear();
    }

    fn bar(&mut self, _: u8, ui: &mut Ui, document: &Document, _: &State, actions: &mut Actions) {
        let Some(underlay) = &document.job().underlay else {
            if ui.button(text::CHOOSE_PICTURE.now()).clicked() {
                actions.push(Command::LayPicture.action());
            }
            return;
        };
        for mode in PictureMode::ALL {
            let chosen = self.mode == mode;
            let index = mode.index();
            let (words, help) = (text::PICTURE_MODES[index].now(), text::PICTURE_MODES_HELP[index].now());
            if ui.add(Button::selectable(chosen, words)).on_hover_text(help).clicked() && !chosen {
                self.handle(mode);
            }
        }
        ui.separator();
        if let [from, to] = *self.points.as_slice() {
            line(ui, underlay, self, (from, to), document.job().units, actions);
            ui.separator();
        }
        if !self.wrong.is_empty() {
            fields::wrong(ui, &self.wrong);
        }
    }

    fn hint(&self, document: &Document, _: &State) -> &'static str {
        match document.job().underlay {
            Some(_) => text::picture_hint(self.mode.index(), self.points.len()),
            None => text::hint(state::Tool::Picture, 0, document.job()),
        }
    }

    /// The frame of the picture, its centre, and the clicked line.
    fn paint(&self, brush: &Brush, document: &Document, state: &State) {
        let Some(underlay) = &document.job().underlay else { return };
        let p = brush.palette;
        let corners = underlay.corners().map(|corner| brush.space.screen_from_plan(corner));
        brush.painter.add(Shape::closed_line(corners.to_vec(), Stroke::new(1.5, p.accent)));
        if self.mode == PictureMode::Turn {
            let middle = brush.space.screen_from_plan(underlay.at);
            brush.painter.circle_stroke(middle, theme::HANDLE, Stroke::new(1.6, p.accent));
        }
        let points: Vec<Pos2> = self.points.iter().map(|&at| brush.space.screen_from_plan(at)).collect();
        let next = state.pointer.filter(|_| points.len() == 1).map(|at| brush.space.screen_from_plan(at));
        let line: Vec<Pos2> = points.iter().copied().chain(next).collect();
        if let [a, b] = line.as_slice() {
            brush.styled(*a, *b, p.guide, (2.0, &[], &[]));
        }
        for at in points {
            brush.painter.circle(at, theme::HANDLE, p.panel, Stroke::new(1.6, p.guide));
        }
    }
}

/// Inputs for the clicked line: its length, or making it run square.
fn line(
    ui: &mut Ui,
    underlay: &Underlay,
    own: &mut Picture,
    (from, to): (DVec2, DVec2),
    units: Units,
    actions: &mut Actions,
) {
    let put = |next: Underlay, label: Say| Action::Edit(label.into(), Edit::SetUnderlay(Some(next)));
    let mut next = None;
    if own.mode == PictureMode::Scale {
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
                        next = Some((scaled, text::SCALE_PICTURE, reached));
                    }
                    None => own.wrong = text::NO_SUCH_SCALE.now().to_owned(),
                }
            }
        });
    }
    if ui.button(text::MAKE_SQUARE.now()).on_hover_text(text::MAKE_SQUARE_HELP.now()).clicked() {
        let squared = underlay.squared(from, to);
        let reached = squared.to_plan(underlay.to_picture(to));
        next = Some((squared, text::TURN_PICTURE, reached));
    }
    if let Some((picture, label, reached)) = next {
        actions.push(put(picture, label));
        own.points = vec![from, reached];
        own.wrong.clear();
    }
}
