//! The start page of the window, and leaving it.

use super::Editor;
use crate::action::{Action, Actions};
use crate::{Document, sample, start_page};
use egui::Ui;

impl Editor {
    /// Goes to the start page, with an empty job.
    pub(super) fn start(&mut self) {
        self.put(Document::new(sample::empty(), None));
        self.state.starting = true;
        self.start_page = start_page::StartPage::default();
    }

    /// The window while it shows the start page: the menus, and dialogs and help.
    pub(super) fn at_start(&mut self, ui: &mut Ui, mut actions: Actions) {
        let ctx = ui.ctx().clone();
        self.top_bar(ui, &mut actions);
        egui::CentralPanel::no_frame().show(ui, |ui| {
            start_page::page(ui, &mut self.start_page, &self.settings, &mut actions);
        });
        // Anything that works on a roof leaves the page first.
        if actions.iter().any(|action| !is_beside_job(action)) {
            self.state.starting = false;
            ctx.request_repaint();
        }
        self.carry_out(&ctx, actions);
        self.questions(&ctx);
        self.over(&ctx);
        self.keep_copy(&ctx);
        self.name_window(&ctx);
    }
}

/// Whether an action can be done from the start page, since it only asks, looks or helps; those that open a job leave
/// the page by doing so.
fn is_beside_job(action: &Action) -> bool {
    action.is_of_pointer()
        || matches!(
            action,
            Action::StartPage
                | Action::New
                | Action::BeginLesson
                | Action::AskOpen
                | Action::OpenFile(_)
                | Action::OpenSample
                | Action::AskImport
                | Action::AskImportFolder
                | Action::TakeBuilding
                | Action::Quit
                | Action::ShowKeys
                | Action::ShowCautions
                | Action::CloseTopWindow
                | Action::FindCommand
                | Action::Speak(_)
                | Action::ChangeTheme
                | Action::TypeSize(_)
                | Action::Say(_)
                | Action::Fit
                | Action::Zoom(_)
                | Action::Undo
                | Action::Redo
                | Action::Delete
                | Action::Copy
                | Action::Cut
                | Action::Paste
                | Action::PasteText(_)
                | Action::Duplicate
                | Action::HoldAll
        )
}
