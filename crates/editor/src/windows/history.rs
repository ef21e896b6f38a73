use super::Windows;
use crate::action::{Action, Actions};
use crate::widgets::quiet;
use crate::{Document, text, theme};
use chalkcourse_job::StepPosition;
use egui::{Button, RichText, ScrollArea, Ui};

/// Every step since the job was opened, in chronological order; a click goes there.
pub(super) fn history_pane(ui: &mut Ui, document: &Document, windows: &mut Windows, actions: &mut Actions) {
    let past: Vec<_> = document.history().past().collect();
    let grown = windows.steps_shown != past.len();
    windows.steps_shown = past.len();
    quiet(ui, text::HISTORY_WHY.now());
    ui.separator();
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        let p = theme::of(ui);
        for step in past {
            let now = step.place == StepPosition::Now;
            let (indent, color) = match step.place {
                StepPosition::Before | StepPosition::Now => (0.0, p.text),
                StepPosition::Ahead => (0.0, p.quiet),
                StepPosition::Aside => (theme::GAP * 3.0, p.quiet),
            };
            ui.horizontal(|ui| {
                ui.add_space(indent);
                let words = RichText::new(text::step_words(&step)).color(color);
                let note = RichText::new(text::step_note(&step)).small().color(p.quiet);
                let row = Button::selectable(now, words).right_text(note);
                let row = ui.add(row.min_size(egui::vec2(ui.available_width(), 0.0)));
                if now && grown {
                    row.scroll_to_me(None);
                }
                if row.clicked() && !now {
                    actions.push(Action::Jump(step.number));
                }
            });
        }
    });
}
