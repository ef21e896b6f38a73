//! The panes beside the drawing, and the windows that ask something.

mod book_parts;
mod checklist;
mod circuits;
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
use crate::state::{Courses, Importing, Pane, State};
use crate::widgets::fields;
use crate::{Document, Selection, text};
use chalkcourse_job::{BlockId, FaceId, RuleBook};
use chalkcourse_sheets::Output;
use egui::{Context, Ui};
use std::sync::Arc;

pub(crate) use order::{OrderPart, OrderWindow, OtherOrder};
use palette::Palette;
use roof::RoofWindow;

/// State of the panes beside the drawing, and of the windows that ask something.
#[derive(Debug, Default)]
pub(crate) struct Windows {
    /// The search text of the glossary.
    glossary_asked: String,
    /// Number of steps in the list when last drawn.
    steps_shown: usize,
    /// The command palette.
    pub(crate) palette: Option<Palette>,
    pub(crate) roof: RoofWindow,
    pub(crate) order: OrderWindow,
    /// Buildings to choose from.
    pub(crate) import: Option<Importing>,
    /// The courses of a face.
    pub(crate) coursing: coursing::Coursing,
    /// A deck as measured.
    pub(crate) fit_up: fit_up::FitUp,
    /// The block to be copied, while its target face is asked for.
    pub(crate) copy_to: Option<BlockId>,
    /// `copy_to` in the previous frame.
    copy_to_asked: Option<BlockId>,
    /// A face by measurements.
    pub(crate) taping: Taping,
    /// The visible part of the rule book.
    pub(crate) part: Part,
    /// The limit whose source is being edited.
    sourcing: Option<String>,
    /// The book that the job's book is compared with.
    pub(crate) other: Option<Arc<RuleBook>>,
}

/// A part of the rule book's pane.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Part {
    #[default]
    Limits,
    Rules,
    Compare,
}

/// The contents of a pane. The drawing and the house are drawn elsewhere.
pub(crate) fn pane(
    ui: &mut Ui,
    pane: Pane,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    match pane {
        Pane::Drawing | Pane::House => {}
        Pane::Order => order::order_pane(ui, document, state, windows, actions),
        Pane::RuleBook => rule_book::rule_book_pane(ui, document.job(), windows, actions),
        Pane::RoofReport => roof::roof_pane(ui, document, windows, actions),
        Pane::Coursing => coursing::coursing_pane(ui, document, state, windows, actions),
        Pane::FitUp => fit_up::fit_up_pane(ui, document, state, windows, actions),
        Pane::Taped => taped::taped_pane(ui, document, state, windows, actions),
        Pane::Checklist => checklist::checklist_pane(ui, document, actions),
        Pane::History => history::history_pane(ui, document, windows, actions),
        Pane::Glossary => glossary::glossary_pane(ui, windows),
        Pane::Circuits => circuits::circuits_pane(ui, document, state, actions),
    }
}

/// The id of a pane as a whole, which has the focus when a key moves to the pane.
pub(crate) fn node(pane: Pane) -> egui::Id {
    egui::Id::unique(("pane", pane))
}

/// Shows the windows that ask something.
pub(crate) fn questions(
    ctx: &Context,
    document: &Document,
    state: &State,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    if windows.import.is_some() {
        import::import_window(ctx, document.job().units, windows, state.raise_as, actions);
    }
    if windows.copy_to.is_some() {
        copy_to::copy_to_window(ctx, document, windows, actions);
    }
    palette::palette_window(ctx, document, state, windows, actions);
    tell_drawing(state, windows, actions);
}

/// What open panes mark on the drawing: the courses of a face, a part of the roof, a preview.
fn tell_drawing(state: &State, windows: &Windows, actions: &mut Actions) {
    let coursing = &windows.coursing;
    let coursing_open = state.desk.is_open(Pane::Coursing);
    let courses = coursing_open.then_some(Courses { face: coursing.face, block: coursing.block });
    if courses != state.courses {
        actions.push(Action::MarkCourses(courses));
    }
    if !coursing_open && state.ghost.is_some() {
        actions.push(Action::Ghost(None));
    }
    let lit = windows.roof.pointed.filter(|_| state.desk.is_open(Pane::RoofReport));
    if lit != state.lit_roof {
        actions.push(Action::LightRoof(lit));
    }
}

impl Windows {
    /// Opens the command palette with an empty search.
    pub(crate) fn find_command(&mut self) {
        self.palette = Some(Palette::default());
    }

    /// Whether a window that asks something is open: Esc closes it before anything on the drawing.
    pub(crate) fn asks(&self) -> bool {
        self.copy_to.is_some() || self.import.is_some()
    }

    /// Closes the topmost window that asks something.
    pub(crate) fn close_top(&mut self) {
        if self.copy_to.take().is_none() {
            self.import = None;
        }
    }

    /// The part of the order whose line is under the pointer.
    pub(crate) fn pointed_line(&self, state: &State) -> Option<&String> {
        self.order.pointed.as_ref().filter(|_| state.desk.is_open(Pane::Order))
    }
}

/// Height of the menu bar in points.
const UNDER_MENUS: f32 = 46.0;

/// A window that asks something: below the menus, movable and resizable.
fn window<'open>(
    ctx: &Context,
    name: &'static str,
    open: &'open mut bool,
    width: f32,
) -> egui::Window<'open> {
    let all = ctx.content_rect();
    // Don't cover the menus.
    let room = all.with_min_y((all.top() + UNDER_MENUS).min(all.bottom()));
    let height = (room.height() - 144.0).max(240.0);
    egui::Window::new(name.trim_end_matches('…'))
        .id(egui::Id::unique(name))
        .open(open)
        .collapsible(false)
        .default_pos(room.min + egui::vec2(100.0, 50.0))
        .default_size([width, height])
        .min_size([320.0, 220.0])
        .max_size(room.size())
        .constrain_to(room)
}

/// Copies an output of the open job to the clipboard.
pub(crate) fn copy(ui: &Ui, document: &Document, output: Output<'_>) {
    if let Ok(text) = output.text(document.job(), document.plan()) {
        ui.ctx().copy_text(text);
    }
}

/// The face that a pane is about. Choosing another one also selects it.
fn face_choice(ui: &mut Ui, document: &Document, face: FaceId, actions: &mut Actions) {
    let faces: Vec<_> = document.job().faces.iter().map(|face| (face.id, face.name.as_str())).collect();
    if let Some(other) = fields::choice(ui, text::FACE_OF_WINDOW.now(), face, &faces) {
        actions.push(Action::Select(Selection::Face(other)));
    }
}
