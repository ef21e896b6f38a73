use super::quiet;
use crate::widgets::sketch;
use crate::{Document, text, theme};
use chalkcourse_words::of_data;
use egui::{CollapsingHeader, RichText, Ui};

/// Which rules were checked against which book, and which were not and why.
pub(super) fn checked_list(ui: &mut Ui, document: &Document) {
    let checked = chalkcourse_telling::checked(document.job());
    ui.add_space(theme::GAP * 2.0);
    CollapsingHeader::new(text::checked_heading(&checked)).id_salt("checked").show(ui, |ui| {
        let caution = theme::of(ui).caution;
        quiet(ui, &text::checked_against(&checked));
        // What was not checked matters more to whoever signs.
        let (on, off): (Vec<_>, Vec<_>) = checked.iter().partition(|rule| rule.on);
        for rule in off.into_iter().chain(on) {
            ui.add_space(theme::GAP);
            let title = ui.label(RichText::new(rule.title).strong());
            sketch::tip(title, rule.code);
            if rule.on {
                quiet(ui, &of_data(&rule.source));
            } else {
                let words = text::not_checked(rule.why_not.as_deref());
                ui.label(RichText::new(words).small().color(caution));
            }
        }
    });
}
