//! Windows beside the drawing: they stay open while one works on.

mod book_parts;
mod checklist;
mod copy_to;
mod coursing;
mod fit_up;
mod glossary;
mod history;
mod import;
mod order;
mod palette;
mod roof;
mod rule_book;
mod taped;

use crate::action::{Action, Actions};
use crate::edits::taping::Taping;
use crate::state::{Courses, DRAWING, Importing, State, Window};
use crate::widgets::fields;
use crate::{Document, Selection, text};
use chalkcourse_job::{BlockId, FaceId, RuleBook};
use chalkcourse_sheets::Output;
use egui::{Context, Ui};
use std::sync::Arc;

pub(crate) use order::{OrderPart, OrderWindow, OtherOrder};
use palette::Palette;
use roof::RoofWindow;

/// What is open beside the drawing.
#[derive(Debug, Default)]
pub(crate) struct Windows {
    /// All steps since the job was opened.
    pub(crate) history: bool,
    /// The words of the trade.
    pub(crate) glossary: bool,
    /// What is looked for in them.
    glossary_asked: String,
    /// How many steps the list had when it was drawn last.
    steps_shown: usize,
    pub(crate) checklist: bool,
    /// The field that finds commands.
    pub(crate) palette: Option<Palette>,
    pub(crate) rule_book: bool,
    pub(crate) roof: RoofWindow,
    pub(crate) order: OrderWindow,
    /// Buildings to choose from.
    pub(crate) import: Option<Importing>,
    /// The courses of a face.
    pub(crate) coursing: coursing::Coursing,
    /// A deck as measured.
    pub(crate) fit_up: fit_up::FitUp,
    /// The block for which a face is asked that it is copied to.
    pub(crate) copy_to: Option<BlockId>,
    /// The same as it was in the frame before.
    copy_to_asked: Option<BlockId>,
    /// Something had the keys in the frame before: Esc is for that first.
    had_focus: bool,
    /// A face from measurements.
    pub(crate) taped: bool,
    pub(crate) taping: Taping,
    /// Which part of the rule book shows.
    pub(crate) part: Part,
    /// The limit whose source is being written.
    sourcing: Option<String>,
    /// The book that the job's is compared with.
    pub(crate) other: Option<Arc<RuleBook>>,
    /// The last press was in a window: keys that change what is held on the drawing are not for the drawing then.
    pub(crate) has_keys: bool,
    /// A window was opened, or pressed, after the drawing was pressed last: Esc is for it.
    on_top: bool,
}

/// A part of the rule book's window.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Part {
    #[default]
    Limits,
    Rules,
    Compare,
}

/// Shows what is open.
pub(crate) fn open_windows(
    ctx: &Context,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    if windows.rule_book {
        rule_book::rule_book_window(ctx, document.job(), windows, actions);
    }
    if windows.roof.open {
        roof::roof_window(ctx, document, windows, actions);
    }
    if windows.order.open {
        order::order_window(ctx, document, state, windows, actions);
    }
    if windows.import.is_some() {
        import::import_window(ctx, document.job().units, windows, state.raise_as, actions);
    }
    if windows.coursing.open {
        coursing::coursing_window(ctx, document, state, windows, actions);
    }
    if windows.fit_up.open {
        fit_up::fit_up_window(ctx, document, state, windows, actions);
    }
    if windows.copy_to.is_some() {
        copy_to::copy_to_window(ctx, document, windows, actions);
    }
    if windows.taped {
        taped::taped_window(ctx, document, state, windows, actions);
    }
    if windows.checklist {
        checklist::checklist_window(ctx, document, windows, actions);
    }
    if windows.glossary {
        glossary::glossary_window(ctx, windows);
    }
    if windows.history {
        history::history_window(ctx, document, windows, actions);
    }
    palette::palette_window(ctx, document, state, windows, actions);
    windows.follow_keys(ctx);
    let drawing = egui::Id::unique(DRAWING);
    windows.had_focus = ctx.memory(|memory| memory.focused().is_some_and(|focused| focused != drawing));
    tell_drawing(state, windows, actions);
}

/// What the drawing marks for windows that are open: the courses of a face, a part of the roof.
fn tell_drawing(state: &State, windows: &Windows, actions: &mut Actions) {
    let coursing = &windows.coursing;
    let courses = coursing.open.then_some(Courses { face: coursing.face, block: coursing.block });
    if courses != state.courses {
        actions.push(Action::MarkCourses(courses));
    }
    let lit = windows.roof.pointed.filter(|_| windows.roof.open);
    if lit != state.lit_roof {
        actions.push(Action::LightRoof(lit));
    }
}

impl Windows {
    /// Whether the order is looked at.
    pub(crate) fn order_is_open(&self) -> bool {
        self.order.open
    }

    /// The part of the order whose line is pointed at in its window.
    pub(crate) fn pointed_line(&self) -> Option<&String> {
        self.order.pointed.as_ref().filter(|_| self.order.open)
    }

    /// Whether a window lies over the drawing that Esc closes before anything on the drawing.
    pub(crate) fn is_on_top(&self) -> bool {
        self.on_top && self.any_open()
    }

    /// Opens a window; one that is open stays.
    pub(crate) fn open(&mut self, window: Window) {
        self.on_top = true;
        match window {
            // Each time anew, with nothing typed.
            Window::Palette => self.palette = Some(Palette::default()),
            // It lies over the drawing: keys are for it until the drawing is pressed.
            Window::Order => (self.order.open, self.has_keys) = (true, true),
            window => {
                if let Some(open) = self.is_open(window) {
                    *open = true;
                }
            }
        }
    }

    /// Opens a window, or closes the one that is open.
    pub(crate) fn open_or_close(&mut self, window: Window) {
        match self.is_open(window) {
            Some(open) if *open => *open = false,
            _ => return self.open(window),
        }
        if window == Window::Order {
            self.has_keys = false;
        }
    }

    fn is_open(&mut self, window: Window) -> Option<&mut bool> {
        Some(match window {
            Window::RuleBook => &mut self.rule_book,
            Window::RoofReport => &mut self.roof.open,
            Window::Order => &mut self.order.open,
            Window::Coursing => &mut self.coursing.open,
            Window::FitUp => &mut self.fit_up.open,
            Window::Taped => &mut self.taped,
            Window::Checklist => &mut self.checklist,
            Window::History => &mut self.history,
            Window::Glossary => &mut self.glossary,
            Window::Palette => return None,
        })
    }

    /// Keys go where the last press was; a list that unfolds from a window is a part of it.
    fn follow_keys(&mut self, ctx: &Context) {
        let pressed = ctx.input(|input| input.pointer.press_origin().filter(|_| input.pointer.any_pressed()));
        let layer = pressed.and_then(|at| ctx.layer_id_at(at));
        match layer.map(|layer| layer.order) {
            Some(egui::Order::Middle) => (self.has_keys, self.on_top) = (true, true),
            Some(egui::Order::Background) => (self.has_keys, self.on_top) = (false, false),
            _ => {}
        }
        self.has_keys &= self.any_open();
    }

    fn any_open(&self) -> bool {
        self.rule_book
            || self.roof.open
            || self.order.open
            || self.import.is_some()
            || self.coursing.open
            || self.fit_up.open
            || self.copy_to.is_some()
            || self.taped
            || self.checklist
            || self.glossary
            || self.history
    }
}

/// Closes the window that lies over the others, if one is open; a field that was typed in is left first.
pub(crate) fn close_top(ctx: &Context, windows: &mut Windows) {
    if windows.had_focus {
        return;
    }
    let mut import = windows.import.is_some();
    let layers: Vec<egui::Id> = ctx.memory(|memory| memory.layer_ids().map(|layer| layer.id).collect());
    let top = [
        (text::RULE_BOOK_WINDOW.now(), &mut windows.rule_book),
        (text::ROOF_REPORT.now(), &mut windows.roof.open),
        (text::ORDER.now(), &mut windows.order.open),
        (text::IMPORT.now(), &mut import),
        (text::COURSING.now(), &mut windows.coursing.open),
        (text::FIT_UP.now(), &mut windows.fit_up.open),
        (text::TAPED_FACE.now(), &mut windows.taped),
        (text::CHECKLIST.now(), &mut windows.checklist),
        (text::HISTORY.now(), &mut windows.history),
        (text::GLOSSARY.now(), &mut windows.glossary),
    ]
    .into_iter()
    .filter(|(_, open)| **open)
    .max_by_key(|(name, _)| layers.iter().position(|id| *id == egui::Id::unique(*name)));
    if let Some((_, open)) = top {
        *open = false;
    }
    if !import {
        windows.import = None;
    }
}

/// A window that fits the drawing's room at first, and can be dragged and resized.
fn window<'open>(
    ctx: &Context,
    name: &'static str,
    open: &'open mut bool,
    width: f32,
) -> egui::Window<'open> {
    let room = ctx.content_rect();
    let height = (room.height() - 190.0).max(240.0);
    egui::Window::new(name.trim_end_matches('…'))
        .id(egui::Id::unique(name))
        .open(open)
        .collapsible(false)
        .default_pos(room.min + egui::vec2(100.0, 96.0))
        .default_size([width, height])
        .min_size([320.0, 220.0])
        .constrain(true)
}

/// Puts an output of what is on the desk on the clipboard.
pub(crate) fn copy(ui: &Ui, document: &Document, output: Output<'_>) {
    if let Ok(text) = output.text(document.job(), document.plan()) {
        ui.ctx().copy_text(text);
    }
}

/// Which face a window speaks of. Another one is selected, and so shown everywhere.
fn face_choice(ui: &mut Ui, document: &Document, face: FaceId, actions: &mut Actions) {
    let faces: Vec<_> = document.job().faces.iter().map(|face| (face.id, face.name.as_str())).collect();
    if let Some(other) = fields::choice(ui, text::FACE_OF_WINDOW.now(), face, &faces) {
        actions.push(Action::Select(Selection::Face(other)));
    }
}
