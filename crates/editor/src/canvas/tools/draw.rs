use super::draft::{Aim, Draft};
use super::draw_bar::{After, choices, fields, outline_for};
use super::drawn::drawn;
use super::{Frame, Tool};
use crate::action::{Action, Actions};
use crate::canvas::brush::Brush;
use crate::canvas::cross::Aimed;
use crate::canvas::gesture::Drag;
use crate::canvas::paint_marks::handle;
use crate::state::{Shaped, State};
use crate::{Document, state, text, theme};
use chalkcourse_geometry::{DVec2, Length};
use egui::{Color32, Key, Modifiers, PointerButton, Pos2, Shape, Stroke, Ui};

/// Draws an outline: corner by corner, or a rectangle, an L or a T by a few points.
#[derive(Debug, Default)]
pub(super) struct DrawFace {
    draft: Option<Draft>,
}

impl DrawFace {
    fn corners(&self) -> usize {
        self.draft.as_ref().map_or(0, |draft| draft.corners.len())
    }

    /// Enter sets the first corner where aimed, or in the middle of the view, and later ones where the keys aim;
    /// otherwise it closes the outline. Returns whether to close it.
    fn set_by_key(&mut self, at: &Frame) -> bool {
        let Some(draft) = self.draft.as_mut().filter(|draft| draft.corners.is_empty() || draft.by_keys)
        else {
            return true;
        };
        if draft.next.is_none() || at.stage.pointer.is_none() {
            draft.aim(at.scene(), at.middle(), Aim { free: true, square: false });
        }
        draft.set()
    }

    /// Applies what was drawn, or shows why it can't be.
    fn close(&mut self, document: &Document, state: &State, actions: &mut Actions) {
        let Some(draft) = &mut self.draft else { return };
        match drawn(draft, document, state) {
            Ok(done) => {
                actions.push(Action::EditAndSelect(done.label, done.edit, done.selection));
                actions.push(Action::Use(state::Tool::Select));
                // The first face determines where the roof is: bring it into view.
                if document.job().faces.is_empty() {
                    actions.push(Action::Fit);
                }
            }
            Err(refused) => {
                actions.push(Action::Trouble(refused.at));
                // The last corner of the shape has to be set again.
                if draft.shaped.is_whole(draft.corners.len()) {
                    draft.back();
                }
                draft.wrong = refused.words;
            }
        }
    }
}

impl Tool for DrawFace {
    fn pointer(&mut self, at: &Frame, drag: &mut Drag, actions: &mut Actions) {
        let (job, response) = (at.document.job(), &at.stage.response);
        let shaped = at.state.shaped;
        if self.draft.as_ref().is_none_or(|draft| draft.corners.is_empty() && draft.shaped != shaped) {
            self.draft = Some(Draft::of(shaped, job));
        }
        let Some(draft) = &mut self.draft else { return };
        // Keys aim in whole steps, which snapping must not swallow.
        let how = Aim { free: at.free() || at.stage.by_keys, square: at.shift() && !at.stage.by_keys };
        // Dragging opens a rectangle from where the button went down.
        if let Some(origin) = at.drag_from()
            && draft.corners.is_empty()
        {
            if draft.shaped == Shaped::Corners {
                *draft = Draft::of(Shaped::Rectangle, job);
            }
            draft.aim(at.scene(), at.stage.space.plan(origin), how);
            draft.set();
        }
        draft.by_keys = at.stage.by_keys;
        if let Some(pointer) = at.stage.pointer {
            let typing = !draft.typed.trim().is_empty();
            let aimed = draft.aim(at.scene(), pointer, how);
            // With a typed length only the direction matters.
            drag.guides = if typing { Vec::new() } else { aimed };
        } else {
            drag.guides.clear();
        }
        let pulled = response.drag_stopped_by(PointerButton::Primary) && !draft.corners.is_empty();
        // Enter and the space bar also count as clicks on a focused widget, but are handled as keys.
        if (response.clicked_by(PointerButton::Primary) || pulled) && draft.set() {
            self.close(at.document, at.state, actions);
        }
    }

    fn aimed(&self) -> Option<Aimed> {
        let from = self.draft.as_ref().and_then(|draft| draft.corners.last().copied());
        Some(Aimed { from, typed: self.draft.as_ref().is_some_and(|draft| !draft.typed.is_empty()) })
    }

    fn keys(&mut self, at: &Frame, actions: &mut Actions) {
        let pressed = |key| at.ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
        if self.draft.is_none() {
            return;
        }
        if pressed(Key::Enter) {
            if self.set_by_key(at) {
                self.close(at.document, at.state, actions);
            }
        } else if pressed(Key::Backspace)
            && let Some(draft) = &mut self.draft
        {
            draft.back();
        }
    }

    fn take_back(&mut self) -> bool {
        let begun = self.has_steps();
        if let Some(draft) = self.draft.as_mut().filter(|_| begun) {
            draft.step_back();
        }
        begun
    }

    fn has_steps(&self) -> bool {
        self.corners() > 0
    }

    fn step_again(&mut self) -> bool {
        self.draft.as_mut().is_some_and(Draft::again)
    }

    fn let_go(&mut self) {
        self.draft = None;
    }

    fn rows(&self) -> u8 {
        2
    }

    fn bar(&mut self, row: u8, ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
        if row == 0 {
            outline_for(ui, state, self.has_steps(), actions);
            return;
        }
        if !self.has_steps() {
            choices(ui, state, document.job().units, actions);
            return;
        }
        let Some(draft) = &mut self.draft else { return };
        match fields(ui, document, draft) {
            After::GoOn => {}
            After::Close => self.close(document, state, actions),
            After::TakeBack => draft.step_back(),
        }
    }

    fn hint(&self, document: &Document, state: &State) -> &'static str {
        match state.shaped {
            Shaped::Corners => text::hint(state::Tool::DrawFace, self.corners(), document.job()),
            _ => text::shape_hint(self.corners()),
        }
    }

    fn paint(&self, brush: &Brush, document: &Document, _: &State) {
        if let Some(draft) = &self.draft {
            paint(brush, document, draft);
        }
    }

    fn next_point(&self) -> Option<DVec2> {
        self.draft.as_ref()?.next
    }
}

/// The outline so far, and the side to the next corner as aimed.
fn paint(brush: &Brush, document: &Document, draft: &Draft) {
    let p = brush.palette;
    let units = document.job().units;
    let points: Vec<Pos2> = draft.corners.iter().map(|&c| brush.space.screen_from_plan(c)).collect();
    let side = |a: DVec2, b: DVec2, color: Color32| {
        let words = Length::from_metres(a.distance(b)).show(units);
        let (a, b) = (brush.space.screen_from_plan(a), brush.space.screen_from_plan(b));
        brush.label_along(a, b, &words, color);
    };
    let shown = draft.shown();
    if !shown.is_empty() {
        // A shape is drawn completely, each side with its length.
        for (&a, &b) in shown.iter().zip(shown.iter().cycle().skip(1)) {
            let (from, to) = (brush.space.screen_from_plan(a), brush.space.screen_from_plan(b));
            brush.styled(from, to, p.accent, (1.6, &[7.0], &[4.0]));
            side(a, b, p.accent);
        }
        if let Some(next) = draft.next {
            let at = brush.space.screen_from_plan(next);
            brush.painter.circle_stroke(at, theme::HANDLE, Stroke::new(1.6, p.accent));
        }
        for (index, &at) in points.iter().enumerate() {
            handle(brush, at, index == 0);
        }
        return;
    }
    for pair in draft.corners.windows(2) {
        side(pair[0], pair[1], p.text);
    }
    brush.painter.add(Shape::line(points.clone(), Stroke::new(2.2, p.accent)));
    if let Some(next) = draft.next {
        let at = brush.space.screen_from_plan(next);
        if let Some(&last) = draft.corners.last() {
            brush.styled(brush.space.screen_from_plan(last), at, p.accent, (1.6, &[7.0], &[4.0]));
            side(last, next, p.accent);
        }
        brush.painter.circle_stroke(at, theme::HANDLE, Stroke::new(1.6, p.accent));
    }
    for (index, &at) in points.iter().enumerate() {
        handle(brush, at, index == 0);
    }
}
