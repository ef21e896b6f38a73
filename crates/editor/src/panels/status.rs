use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::State;
use crate::{Document, text, theme};
use egui::{Align, Button, Label, Layout, RichText, Ui};

/// Key figures of the job, the pointer position, the last message, and the caution.
pub(crate) fn status_bar(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    let p = theme::of(ui);
    ui.horizontal_centered(|ui| {
        ui.spacing_mut().item_spacing.x = theme::GAP * 3.0;
        let summary = ui.label(RichText::new(text::summary(document)).strong());
        summary.on_hover_text(text::SUMMARY_HELP.now());
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if ui.add(Button::new(text::CAUTIONS_SHORT.now())).on_hover_text(text::CAUTION.now()).clicked() {
                actions.push(Command::Cautions.action());
            }
            if let Some(at) = state.pointer {
                let words = text::pointer(document, state.view, at);
                ui.label(RichText::new(words).small().color(p.quiet));
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                if let Some(making) = &state.making_room {
                    super::turning(ui);
                    if ui
                        .add(Button::new(text::STOP.now()))
                        .on_hover_text(text::ROOM_STOP_HELP.now())
                        .clicked()
                    {
                        actions.push(Action::StopMakingRoom);
                    }
                    let name = document.job().block(making.block()).map_or("", |block| block.name.as_str());
                    ui.label(
                        RichText::new(text::making_room(&text::block_heading(name).now())).color(p.note),
                    );
                }
                ui.add(Label::new(RichText::new(&state.said).color(p.note)).truncate());
            });
        });
    });
}
