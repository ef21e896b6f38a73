//! Optional parts of a rule book: added from the built-in books, or removed.

use crate::action::{Action, Actions};
use crate::{text, theme};
use chalkcourse_job::{Edit, OptionalPart, RuleBook};
use chalkcourse_words::Said;
use egui::{CollapsingHeader, RichText, Ui};
use std::sync::Arc;

/// Buttons for missing and for present parts.
pub(super) fn parts_of_book(ui: &mut Ui, book: &RuleBook, actions: &mut Actions) {
    let mut change = |label: Said, changed: Result<RuleBook, String>| {
        actions.push(match changed {
            Ok(book) => Action::Edit(label, Edit::SetRuleBook(Arc::new(book))),
            Err(words) => Action::Say(words),
        });
    };
    CollapsingHeader::new(text::BOOK_PARTS.now()).id_salt("parts of the book").show(ui, |ui| {
        let quiet = theme::of(ui).quiet;
        ui.label(RichText::new(text::BOOK_PARTS_WHY.now()).small().color(quiet));
        for part in OptionalPart::ALL {
            if book.missing_parts().contains(&part) {
                let words = text::put_in(part.name);
                if ui.button(words.now()).on_hover_text(text::PUT_IN_HELP.now()).clicked() {
                    change(words, book.with_part(part));
                }
            } else if book.optional_parts().contains(&part) {
                let words = text::take_out(part.name);
                if ui.button(words.now()).on_hover_text(text::TAKE_OUT_HELP.now()).clicked() {
                    change(words, book.without_part(part));
                }
            }
        }
    });
}
