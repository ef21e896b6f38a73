//! Questions and notices in the window. Each says what happened or will happen, and what can be done.

use crate::commands::Command;
use crate::recovery::AbandonedCopy;
use crate::widgets::scroll_by_keys;
use crate::{text, theme};
use egui::{Context, Id, Key, Modal, RichText, Ui};
use std::path::PathBuf;

/// What to do after the question about unsaved changes.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Then {
    New,
    /// The start page.
    Start,
    /// A new job with the lesson.
    Lesson,
    AskOpen,
    Open(PathBuf),
    OpenSample,
    Recover(AbandonedCopy),
    /// Open a job from memory, with a message.
    Take(Box<chalkcourse_job::Resolved>, String),
    Quit,
}

/// The open dialog.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Dialog {
    /// The job has unsaved changes.
    Unsaved(Then),
    /// Recovery copies left by an earlier session.
    Recovered(Vec<AbandonedCopy>),
    /// An error: its title and text.
    Wrong { title: String, words: String },
    /// The result of an action: its title and text.
    Told { title: String, words: String },
    /// The full cautions.
    Cautions,
    /// All keys.
    Keys,
}

/// The user's answer.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Reply {
    Save(Then),
    Discard(Then),
    OpenCopy(AbandonedCopy),
    DeleteCopy(AbandonedCopy),
    Close,
}

const WIDTH: f32 = 460.0;
const WIDTH_OF_KEYS: f32 = 620.0;

/// Shows a dialog. Returns the reply, once there is one.
pub(crate) fn dialog_over(ctx: &Context, dialog: &Dialog, name: &str) -> Option<Reply> {
    // A separate id for each kind: the toolkit reuses the size of the last dialog with the same id.
    let id = match dialog {
        Dialog::Unsaved(_) => "unsaved",
        Dialog::Recovered(_) => "recovered",
        Dialog::Wrong { .. } => "wrong",
        Dialog::Told { .. } => "told",
        Dialog::Cautions => "cautions",
        Dialog::Keys => "keys",
    };
    let shown = modal(ctx, id).show(ctx, |ui| {
        let width = if matches!(dialog, Dialog::Keys) { WIDTH_OF_KEYS } else { WIDTH };
        ui.set_width(width.min(ctx.content_rect().width() - 60.0));
        match dialog {
            Dialog::Unsaved(then) => unsaved(ui, then, name),
            Dialog::Recovered(left) => recovered(ui, left),
            Dialog::Wrong { title, words } | Dialog::Told { title, words } => {
                title_of(ui, title);
                ui.label(words);
                buttons(ui, &[(text::OK.now(), Reply::Close)])
            }
            Dialog::Cautions => {
                title_of(ui, text::CAUTIONS.now());
                for words in text::CAUTIONS_LONG {
                    ui.label(words.now());
                    ui.add_space(theme::GAP);
                }
                buttons(ui, &[(text::CLOSE.now(), Reply::Close)])
            }
            Dialog::Keys => keys(ui),
        }
    });
    if shown.inner.is_some() {
        return shown.inner;
    }
    let esc = ctx.input_mut(|input| input.consume_key(egui::Modifiers::NONE, Key::Escape));
    esc.then_some(Reply::Close)
}

/// A dialog over a dimmed window, with a margin.
pub(crate) fn modal(ctx: &Context, name: &str) -> Modal {
    let frame = egui::Frame::popup(&ctx.global_style()).inner_margin(egui::Margin::same(22));
    Modal::new(Id::unique(name)).frame(frame)
}

/// The title of a dialog, also its accessible name.
pub(crate) fn title_of(ui: &mut Ui, words: &str) {
    let modal = ui.stack().iter().find(|around| around.kind() == Some(egui::UiKind::Modal));
    if let Some(modal) = modal.map(|around| around.unique_id) {
        ui.ctx().accesskit_node_builder(modal, |node| node.set_label(words));
    }
    ui.label(RichText::new(words).heading().strong());
    ui.add_space(theme::GAP * 2.0);
}

/// Buttons from the right, the default one first.
fn buttons(ui: &mut Ui, choices: &[(&str, Reply)]) -> Option<Reply> {
    let mut reply = None;
    ui.add_space(theme::GAP * 3.0);
    ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
        for (index, (words, choice)) in choices.iter().enumerate() {
            let mut button = egui::Button::new(*words);
            if index == 0 {
                button = button.fill(theme::of(ui).accent_ground);
            }
            let button = ui.add(button);
            if index == 0 {
                begin_at(&button);
            }
            if button.clicked() {
                reply = Some(choice.clone());
            }
        }
    });
    reply
}

/// Gives it the initial focus, so that Enter triggers the default and Tab continues among the buttons of the dialog.
fn begin_at(button: &egui::Response) {
    let ctx = &button.ctx;
    let focused = ctx.memory(egui::Memory::focused).and_then(|focused| ctx.read_response(focused));
    if focused.is_none_or(|focused| focused.layer_id != button.layer_id) {
        button.request_focus();
    }
}

fn unsaved(ui: &mut Ui, then: &Then, name: &str) -> Option<Reply> {
    title_of(ui, &text::unsaved_title(name));
    ui.label(text::UNSAVED.now());
    buttons(
        ui,
        &[
            (text::SAVE_NOW.now(), Reply::Save(then.clone())),
            (text::DISCARD.now(), Reply::Discard(then.clone())),
            (text::CANCEL.now(), Reply::Close),
        ],
    )
}

fn recovered(ui: &mut Ui, left: &[AbandonedCopy]) -> Option<Reply> {
    title_of(ui, text::RECOVERED_TITLE.now());
    ui.label(text::RECOVERED.now());
    let mut reply = None;
    for (nth, copy) in left.iter().enumerate() {
        ui.add_space(theme::GAP * 2.0);
        ui.separator();
        ui.label(text::copy_words(copy));
        ui.push_id(&copy.copy, |ui| {
            ui.horizontal(|ui| {
                let open = egui::Button::new(text::OPEN_COPY.now()).fill(theme::of(ui).accent_ground);
                let open = ui.add(open);
                if nth == 0 {
                    begin_at(&open);
                }
                if open.clicked() {
                    reply = Some(Reply::OpenCopy(copy.clone()));
                }
                if ui.button(text::DELETE_COPY.now()).clicked() {
                    reply = Some(Reply::DeleteCopy(copy.clone()));
                }
            });
        });
    }
    ui.add_space(theme::GAP * 2.0);
    ui.separator();
    if ui.button(text::LATER.now()).clicked() {
        reply = Some(Reply::Close);
    }
    reply
}

fn keys(ui: &mut Ui) -> Option<Reply> {
    title_of(ui, text::KEYS.now());
    let height = (ui.ctx().content_rect().height() - 220.0).max(120.0);
    let room = egui::Rect::from_min_size(ui.cursor().min, egui::vec2(ui.available_width(), height));
    let begins = ui.interact(room, Id::unique("keys that are read"), egui::Sense::focusable_noninteractive());
    begins.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Document, true, text::KEYS.now()));
    begin_at(&begins);
    scroll_by_keys(ui, begins.id);
    egui::ScrollArea::vertical().max_height(height).auto_shrink([false, true]).show(ui, |ui| {
        for (command, keys) in Command::with_keys() {
            let keys: Vec<String> = keys.iter().map(|key| text::key_words(ui.ctx(), key)).collect();
            key_row(ui, command.title(), &keys.join(", ")).on_hover_text(command.help());
        }
        for (what, key) in text::OTHER_KEYS.into_iter().chain(text::HOUSE_KEYS) {
            key_row(ui, what.now(), key.now());
        }
    });
    buttons(ui, &[(text::CLOSE.now(), Reply::Close)])
}

/// What a key does, and the key; either wraps if it is long.
fn key_row(ui: &mut Ui, what: &str, key: &str) -> egui::Response {
    ui.horizontal_top(|ui| {
        let half = (ui.available_width() - 2.0 * ui.spacing().item_spacing.x) / 2.0;
        let mut cell = |words: RichText| {
            let down = egui::Layout::top_down(egui::Align::Min);
            ui.allocate_ui_with_layout(egui::vec2(half, 0.0), down, |ui| {
                ui.set_width(half);
                ui.label(words)
            })
            .inner
        };
        let what = cell(RichText::new(what));
        cell(RichText::new(key).strong());
        what
    })
    .inner
}
