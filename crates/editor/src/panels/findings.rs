use super::quiet;
use crate::action::{Action, Actions};
use crate::desk::{Desk, Pointed, Waiving};
use crate::settings::Settings;
use crate::{Document, Selection, canvas, text, theme};
use chalkcourse_job::{Edit, Waiver};
use chalkcourse_rules::{Finding, Place, Severity};
use egui::{Frame, Margin, RichText, Sense, Stroke, TextEdit, Ui, WidgetInfo};

/// What the rules found, the severest first, then what was accepted.
pub(super) fn show(
    ui: &mut Ui,
    document: &Document,
    desk: &mut Desk,
    settings: &mut Settings,
    actions: &mut Actions,
) {
    let findings = &document.plan().findings;
    let (waived, open): (Vec<&Finding>, Vec<&Finding>) = findings.iter().partition(|f| f.waived.is_some());
    if open.is_empty() {
        let words = text::nothing_found(document.job());
        quiet(ui, words);
    }
    for finding in open {
        row(ui, document, desk, settings, finding, actions);
    }
    if !waived.is_empty() {
        ui.add_space(theme::GAP);
        quiet(ui, text::ACCEPTED);
        for finding in waived {
            row(ui, document, desk, settings, finding, actions);
        }
    }
}

fn row(
    ui: &mut Ui,
    document: &Document,
    desk: &mut Desk,
    settings: &mut Settings,
    finding: &Finding,
    actions: &mut Actions,
) {
    let p = theme::of(ui);
    let lit = concerns(&finding.place, desk.hover);
    let line = if lit { p.light } else { p.rule };
    let frame = Frame::new()
        .fill(p.field)
        .stroke(Stroke::new(if lit { 2.0 } else { 1.0 }, line))
        .corner_radius(6)
        .inner_margin(Margin::symmetric(10, 8));
    let card = ui.push_id(&finding.key, |ui| {
        frame.show(ui, |ui| {
            ui.set_min_width(ui.available_width());
            contents(ui, document, desk, settings, finding, actions);
        })
    });
    let rect = card.inner.response.rect;
    let id = ui.make_persistent_id(("finding", &finding.key));
    let response = ui.interact(rect, id, Sense::focusable_noninteractive());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::ListItem, true, text::finding_words(finding)));
    let under = ui.rect_contains_pointer(rect);
    if under || response.has_focus() {
        desk.pointed = Pointed::Finding(finding.key.clone());
    }
    let pressed = under && ui.input(|input| input.pointer.primary_clicked());
    if pressed || response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        actions.push(Action::Select(selection_of(&finding.place)));
    }
}

fn contents(
    ui: &mut Ui,
    document: &Document,
    desk: &mut Desk,
    settings: &mut Settings,
    finding: &Finding,
    actions: &mut Actions,
) {
    let p = theme::of(ui);
    ui.horizontal(|ui| {
        let (rect, _) = ui.allocate_exact_size(egui::vec2(18.0, 18.0), Sense::hover());
        let severity = if finding.waived.is_some() { Severity::Note } else { finding.severity };
        canvas::severity_sign(ui.painter(), rect.center(), 7.5, severity, p);
        let word = if finding.waived.is_some() { text::WAIVED } else { text::severity(finding.severity) };
        ui.label(RichText::new(word).strong().color(theme::severity(p, severity)));
        ui.label(RichText::new(finding.code).small().color(p.quiet));
    });
    ui.label(&finding.message);
    quiet(ui, &finding.source);
    if let Some(waiver) = &finding.waived {
        ui.label(text::waived_by(waiver));
        if ui.small_button(text::UNWAIVE).clicked() {
            actions.push(Action::Edit(text::UNWAIVE.to_owned(), Edit::Unwaive(finding.key.clone())));
        }
        return;
    }
    let writing = desk.waiving.as_ref().is_some_and(|w| w.key == finding.key);
    if writing {
        write_waiver(ui, desk, settings, actions);
        return;
    }
    ui.horizontal_wrapped(|ui| {
        if let Some(fix) = &finding.fix
            && ui.button(&fix.label).on_hover_text(text::FIX_HELP).clicked()
        {
            actions.push(Action::Edit(fix.label.clone(), fix.edit.clone()));
        }
        // A drag that is going on is no time to accept what it makes.
        let calm = !document.history().in_gesture();
        if ui.add_enabled(calm, egui::Button::new(text::WAIVE)).on_hover_text(text::WAIVE_HELP).clicked() {
            desk.waiving = Some(Waiving { key: finding.key.clone(), reason: String::new() });
        }
    });
}

fn write_waiver(ui: &mut Ui, desk: &mut Desk, settings: &mut Settings, actions: &mut Actions) {
    let Some(waiving) = &mut desk.waiving else { return };
    let label = ui.label(text::WAIVE_REASON);
    let width = ui.available_width();
    ui.add(TextEdit::multiline(&mut waiving.reason).desired_rows(2).desired_width(width))
        .labelled_by(label.id);
    let label = ui.label(text::WAIVE_BY);
    ui.add(TextEdit::singleline(&mut settings.person).desired_width(width)).labelled_by(label.id);
    let ready = !waiving.reason.trim().is_empty() && !settings.person.trim().is_empty();
    let mut done = false;
    ui.horizontal(|ui| {
        if ui
            .add_enabled(ready, egui::Button::new(text::WAIVE_DO))
            .on_disabled_hover_text(text::WAIVE_NEEDS)
            .clicked()
        {
            let waiver = Waiver {
                key: waiving.key.clone(),
                reason: waiving.reason.trim().to_owned(),
                by: settings.person.trim().to_owned(),
                date: text::today(std::time::SystemTime::now()),
            };
            actions.push(Action::Edit(text::WAIVE_DO.to_owned(), Edit::Waive(waiver)));
            done = true;
        }
        done |= ui.button(text::CANCEL).clicked();
    });
    if done {
        desk.waiving = None;
    }
}

/// Whether a place is what the pointer is on.
fn concerns(place: &Place, hover: Selection) -> bool {
    match hover {
        Selection::Nothing => false,
        Selection::Face(face) | Selection::Side { face, .. } | Selection::Corner { face, .. } => {
            place.face == Some(face) && place.block.is_none() && place.penetration.is_none()
        }
        Selection::Penetration(id) => place.penetration == Some(id),
        Selection::Block(id) => place.block == Some(id),
        Selection::Module { block, cell } => {
            place.block == Some(block) && (place.cells.is_empty() || place.cells.contains(&cell))
        }
    }
}

fn selection_of(place: &Place) -> Selection {
    place
        .block
        .map(Selection::Block)
        .or(place.penetration.map(Selection::Penetration))
        .or(place.face.map(Selection::Face))
        .unwrap_or_default()
}
