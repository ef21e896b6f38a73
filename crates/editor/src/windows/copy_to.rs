use super::Windows;
use crate::action::Actions;
use crate::edits::arranging;
use crate::{Document, text};
use egui::{Context, Key, Modifiers, ScrollArea};

/// Asks for the face to copy a block to.
pub(super) fn copy_to_window(
    ctx: &Context,
    document: &Document,
    windows: &mut Windows,
    actions: &mut Actions,
) {
    let job = document.job();
    let fresh = windows.copy_to_asked != windows.copy_to;
    windows.copy_to_asked = windows.copy_to;
    let Some(block) = windows.copy_to.and_then(|id| job.block(id)) else {
        windows.copy_to = None;
        return;
    };
    let mut open = true;
    let mut done = ctx.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape));
    let title = text::copy_title(&text::block_heading(&block.name).now());
    egui::Window::new(title)
        .id(egui::Id::unique(text::COPY_TO_FACE.now()))
        .open(&mut open)
        .collapsible(false)
        .resizable(false)
        .anchor(egui::Align2::CENTER_CENTER, [0.0, 0.0])
        .show(ctx, |ui| {
            ui.set_min_width(220.0);
            let others: Vec<_> = job.faces.iter().filter(|face| face.id != block.face).collect();
            if others.is_empty() {
                ui.label(text::NO_OTHER_FACE.now());
            }
            ScrollArea::vertical().max_height(360.0).show(ui, |ui| {
                ui.with_layout(egui::Layout::top_down_justified(egui::Align::Min), |ui| {
                    for (nth, face) in others.into_iter().enumerate() {
                        let button = ui.button(&face.name);
                        // Keyboard users can continue directly.
                        if nth == 0 && fresh {
                            button.request_focus();
                        }
                        if button.clicked() {
                            actions.push(arranging::copied(document, block.id, face.id));
                            done = true;
                        }
                    }
                });
            });
        });
    if done || !open {
        (windows.copy_to, windows.copy_to_asked) = (None, None);
    }
}
