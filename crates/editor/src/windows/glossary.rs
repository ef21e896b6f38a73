use super::Windows;
use crate::widgets::quiet;
use crate::{text, theme};
use chalkcourse_words::{Say, plain};
use egui::{RichText, ScrollArea, TextEdit, Ui};

/// The glossary, with a search field.
pub(super) fn glossary_pane(ui: &mut Ui, windows: &mut Windows) {
    let asked = plain(windows.glossary_asked.trim());
    quiet(ui, text::GLOSSARY_WHY.now());
    ui.horizontal(|ui| {
        let label = ui.label(text::GLOSSARY_FIND.now());
        let field = TextEdit::singleline(&mut windows.glossary_asked).desired_width(f32::INFINITY);
        ui.add(field).labelled_by(label.id);
    });
    ui.separator();
    let mut words: Vec<(Say, Say)> = text::WORDS_OF_THE_TRADE.to_vec();
    words.retain(|(word, meaning)| {
        plain(word.now()).contains(&asked) || plain(meaning.now()).contains(&asked)
    });
    words.sort_by_key(|(word, _)| word.now());
    if words.is_empty() {
        quiet(ui, text::GLOSSARY_NONE.now());
    }
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        for (word, meaning) in words {
            ui.label(RichText::new(word.now()).strong());
            ui.label(meaning.now());
            ui.add_space(theme::GAP * 2.0);
        }
    });
}
