//! Words of the panes beside the drawing.

use crate::state::Pane;
use chalkcourse_words::{self as words, Say};

pub(crate) const PANES: Say = words::desk::PANES;
pub(crate) const NEXT_PANE: Say = words::desk::NEXT_PANE;
pub(crate) const NEXT_PANE_HELP: Say = words::desk::NEXT_PANE_HELP;
pub(crate) const PREVIOUS_PANE: Say = words::desk::PREVIOUS_PANE;
pub(crate) const PREVIOUS_PANE_HELP: Say = words::desk::PREVIOUS_PANE_HELP;
pub(crate) const CLOSE_PANE: Say = words::desk::CLOSE_PANE;
pub(crate) const CLOSE_PANE_HELP: Say = words::desk::CLOSE_PANE_HELP;
pub(crate) const OWN_WINDOW: Say = words::desk::OWN_WINDOW;
pub(crate) const OWN_WINDOW_HELP: Say = words::desk::OWN_WINDOW_HELP;
pub(crate) const BESIDE_DRAWING: Say = words::desk::BESIDE_THE_DRAWING;
pub(crate) const BESIDE_DRAWING_HELP: Say = words::desk::BESIDE_THE_DRAWING_HELP;
pub(crate) const RESET_DESK: Say = words::desk::RESET;
pub(crate) const RESET_DESK_HELP: Say = words::desk::RESET_HELP;
pub(crate) const SIDE_PANEL: Say = words::desk::SIDE_PANEL;
pub(crate) const SIDE_PANEL_HELP: Say = words::desk::SIDE_PANEL_HELP;
pub(crate) const NO_PANE_HAS_KEYS: Say = words::desk::PANE_NOTHING_TO_ACT_ON;
pub(crate) const BORDER_OF_PANES: Say = words::desk::BORDER;
pub(crate) const DRAG_TAB: Say = words::desk::DRAG_A_TAB;

/// The title of a pane.
pub(crate) fn pane_title(pane: Pane) -> &'static str {
    let title = match pane {
        Pane::Drawing => words::desk::DRAWING,
        Pane::House => super::SOLID_VIEW,
        Pane::Order => super::ORDER,
        Pane::RuleBook => super::RULE_BOOK_WINDOW,
        Pane::RoofReport => super::ROOF_REPORT,
        Pane::Coursing => super::COURSING,
        Pane::FitUp => super::FIT_UP,
        Pane::Taped => super::TAPED_FACE,
        Pane::Checklist => super::CHECKLIST,
        Pane::History => super::HISTORY,
        Pane::Glossary => super::GLOSSARY,
        Pane::Circuits => super::CIRCUITS,
    };
    title.now().trim_end_matches('…')
}

pub(crate) fn close_pane(pane: Pane) -> String {
    words::desk::close(&pane_title(pane))
}

pub(crate) fn in_own_window(pane: Pane) -> String {
    words::desk::in_own_window(&pane_title(pane))
}

pub(crate) fn own_window_title(pane: Pane, job: &str) -> String {
    words::desk::window_title(&pane_title(pane), &job)
}
