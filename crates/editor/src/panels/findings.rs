use super::Panels;
use super::{checked, quiet};
use crate::action::{Action, Actions};
use crate::state::{Pointed, Settings, State};
use crate::widgets::{LittleButton, severity_sign, sketch};
use crate::{Document, Selection, text, theme};
use chalkcourse_job::{Edit, FindingKey, Subject, WAIVER};
use chalkcourse_plan::fix_words;
use chalkcourse_rules::{Finding, Location, Severity};
use chalkcourse_words::of_data;
use egui::{Button, Frame, Margin, RichText, Sense, Stroke, TextEdit, Ui, WidgetInfo};
use std::collections::BTreeSet;

/// Which findings are listed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Filter {
    /// Severities that are hidden.
    hidden: BTreeSet<Severity>,
    /// Only those on the selected object.
    only_held: bool,
}

/// A waiver being written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Waiving {
    key: FindingKey,
    reason: String,
    /// Whether its form was scrolled into view.
    shown: bool,
}

impl Filter {
    /// Whether a finding is listed, given the selection.
    fn shows(&self, finding: &Finding, held: Selection) -> bool {
        !self.hidden.contains(&finding.severity) && (!self.only_held || lies_on(&finding.place, held))
    }
}

const SEVERITIES: [Severity; 3] = [Severity::Stop, Severity::Caution, Severity::Note];

/// The open findings, most severe first, then the accepted ones.
pub(super) fn findings_list(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Panels,
    settings: &Settings,
    actions: &mut Actions,
) {
    let findings = &document.plan().findings;
    let (waived, open): (Vec<&Finding>, Vec<&Finding>) = findings.iter().partition(|f| f.waived.is_some());
    if open.is_empty() {
        let words = text::nothing_found(document.job());
        quiet(ui, words);
    } else if open.len() > 1 || own.filter != Filter::default() {
        filter(ui, state, &mut own.filter, &open);
    }
    let held = state.selection;
    let (shown, hidden): (Vec<&Finding>, Vec<&Finding>) =
        open.into_iter().partition(|finding| own.filter.shows(finding, held));
    for severity in SEVERITIES {
        let of: Vec<&Finding> = shown.iter().copied().filter(|f| f.severity == severity).collect();
        if !of.is_empty() {
            ui.add_space(theme::GAP);
            ui.label(RichText::new(text::severity_group(severity, of.len())).strong());
        }
        for finding in of {
            row(ui, document, state, own, settings, finding, actions);
        }
    }
    if !hidden.is_empty() {
        ui.horizontal_wrapped(|ui| {
            quiet(ui, &text::hidden_findings(hidden.len()));
            if ui.little_button(text::SHOW_ALL.now()).clicked() {
                own.filter = Filter::default();
            }
        });
    }
    if !waived.is_empty() {
        ui.add_space(theme::GAP);
        quiet(ui, text::ACCEPTED.now());
        for finding in waived {
            row(ui, document, state, own, settings, finding, actions);
        }
    }
    if !document.job().faces.is_empty() {
        checked::checked_list(ui, document);
    }
}

/// Filter buttons, each with its count.
fn filter(ui: &mut Ui, state: &State, filter: &mut Filter, open: &[&Finding]) {
    ui.horizontal_wrapped(|ui| {
        for severity in SEVERITIES {
            let count = open.iter().filter(|finding| finding.severity == severity).count();
            if count == 0 {
                continue;
            }
            let on = !filter.hidden.contains(&severity);
            let words = format!("{} {count}", text::severity(severity));
            if ui.add(Button::selectable(on, words)).clicked() && !filter.hidden.remove(&severity) {
                filter.hidden.insert(severity);
            }
        }
        let holds = state.selection != Selection::Nothing;
        ui.add_enabled_ui(holds || filter.only_held, |ui| {
            ui.checkbox(&mut filter.only_held, text::ONLY_HELD.now())
                .on_hover_text(text::ONLY_HELD_HELP.now());
        });
    });
}

/// Whether a place is on the selected object; a place on a face also counts for its blocks.
fn lies_on(place: &Location, held: Selection) -> bool {
    match held {
        Selection::Nothing | Selection::Part(..) => true,
        Selection::Face(face) | Selection::Side { face, .. } | Selection::Corner { face, .. } => {
            place.face == Some(face)
        }
        held => concerns(place, held),
    }
}

fn row(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Panels,
    settings: &Settings,
    finding: &Finding,
    actions: &mut Actions,
) {
    let p = theme::of(ui);
    let lit = concerns(&finding.place, state.hover);
    let line = if lit { p.light } else { p.rule };
    let frame = Frame::new()
        .fill(p.field)
        .stroke(Stroke::new(if lit { 2.0 } else { 1.0 }, line))
        .corner_radius(6)
        .inner_margin(Margin::symmetric(10, 8));
    let card = ui.push_id(&finding.key, |ui| {
        frame.show(ui, |ui| {
            ui.set_min_width(ui.available_width());
            contents(ui, document, state, own, settings, finding, actions)
        })
    });
    let on_a_fix = card.inner.inner;
    let rect = card.inner.response.rect;
    let id = ui.make_persistent_id(("finding", &finding.key));
    let response = ui.interact(rect, id, Sense::focusable_noninteractive());
    response.widget_info(|| {
        WidgetInfo::labeled(egui::Role::ListItem, true, text::finding_words(document.job(), finding))
    });
    let under = ui.rect_contains_pointer(rect);
    if (under || response.has_focus()) && !on_a_fix {
        actions.push(Action::Point(Pointed::Finding(finding.key.clone())));
    }
    let held = state.fixing.is_open(&finding.key)
        || concerns(&finding.place, state.selection)
        || matches!(finding.key.subject, Subject::Circuit(id) if state.selection == Selection::Circuit(id));
    if finding.waived.is_none() && (under || on_a_fix || response.has_focus() || held) {
        let now = under || on_a_fix || response.has_focus();
        actions.push(Action::LookAtFinding(finding.key.clone(), now));
    }
    let pressed = under && ui.input(|input| input.pointer.primary_clicked());
    if pressed || response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        actions.push(Action::OpenFinding(finding.key.clone()));
        actions.push(Action::Select(selection_of(finding)));
    }
}

/// The text of a finding and its controls. Returns whether the pointer is on one of its fixes.
fn contents(
    ui: &mut Ui,
    document: &Document,
    state: &State,
    own: &mut Panels,
    settings: &Settings,
    finding: &Finding,
    actions: &mut Actions,
) -> bool {
    let p = theme::of(ui);
    ui.horizontal(|ui| {
        let (rect, _) = ui.allocate_exact_size(egui::vec2(18.0, 18.0), Sense::hover());
        let severity = if finding.waived.is_some() { Severity::Note } else { finding.severity };
        severity_sign(ui.painter(), rect.center(), 7.5, severity, p);
        let word =
            if finding.waived.is_some() { text::WAIVED.now() } else { text::severity(finding.severity) };
        ui.label(RichText::new(word).strong().color(theme::severity(p, severity)));
        let title = RichText::new(text::rule_title(finding.rule)).small().color(p.quiet);
        let title = ui.add(egui::Label::new(title).truncate());
        sketch::tip(title, finding.rule);
    });
    let job = document.job();
    ui.label(chalkcourse_telling::message(job, finding));
    quiet(ui, &of_data(&chalkcourse_telling::source(job, finding.rule, &finding.source)));
    if let Some(waiver) = &finding.waived {
        ui.label(chalkcourse_telling::waived_words(waiver));
        if ui.little_button(text::UNWAIVE.now()).clicked() {
            actions.push(Action::Edit(text::UNWAIVE.into(), Edit::Unwaive(finding.key.clone())));
        }
        return false;
    }
    let writing = own.waiving.as_ref().is_some_and(|w| w.key == finding.key);
    if writing {
        write_waiver(ui, finding, own, settings, actions);
        return false;
    }
    if let Some(words) = chalkcourse_telling::lapse_words(job, finding) {
        ui.label(RichText::new(words).color(p.caution));
    }
    let mut on_a_fix = false;
    ui.horizontal_wrapped(|ui| {
        on_a_fix = fixes(ui, document, state, finding, actions);
        // A finding about a waiver can't be accepted.
        if finding.rule == WAIVER {
            return;
        }
        // Not during a drag.
        let calm = !document.history().in_gesture();
        let words = if finding.lapsed.is_some() { text::WAIVE_AGAIN.now() } else { text::WAIVE.now() };
        if ui.add_enabled(calm, egui::Button::new(words)).on_hover_text(text::WAIVE_HELP.now()).clicked() {
            // Propose the previous reason.
            let reason =
                finding.lapsed.as_ref().map_or_else(String::new, |(waiver, _)| waiver.reason.clone());
            own.waiving = Some(Waiving { key: finding.key.clone(), reason, shown: false });
        }
    });
    on_a_fix
}

/// Buttons for the fixes, best first; or a text on why there is none. Returns whether the pointer is on one of them.
fn fixes(ui: &mut Ui, document: &Document, state: &State, finding: &Finding, actions: &mut Actions) -> bool {
    let mut on_a_fix = false;
    let job = document.job();
    if state.fixing.is_looking_for(&finding.key) {
        quiet(ui, text::FIX_IS_SOUGHT.now());
    }
    let Some(found) = state.fixing.of(job, &finding.key) else { return false };
    let offered = found.offered();
    if offered.is_empty() && found.tried > 0 {
        quiet(ui, text::NO_FIX.now());
    } else if found.together.is_some() {
        let alone = found.has_a_single_step();
        quiet(ui, if alone { text::FEWER_MODULES.now() } else { text::NO_SINGLE_FIX.now() });
    }
    let seen = state.view.seen();
    for (index, fix) in offered.into_iter().enumerate() {
        let label = fix_words(job, fix, seen);
        let button = ui.button(label.now()).on_hover_text(text::FIX_HELP.now());
        // Preview the fix.
        if button.hovered() || button.has_focus() {
            on_a_fix = true;
            actions.push(Action::Point(Pointed::Fix(finding.key.clone(), index)));
        }
        if button.clicked() {
            actions.push(Action::Edit(label, fix.edit()));
        }
    }
    on_a_fix
}

fn write_waiver(
    ui: &mut Ui,
    finding: &Finding,
    own: &mut Panels,
    settings: &Settings,
    actions: &mut Actions,
) {
    let Some(waiving) = &mut own.waiving else { return };
    let label = ui.label(text::WAIVE_REASON.now());
    let width = ui.available_width();
    ui.add(TextEdit::multiline(&mut waiving.reason).desired_rows(2).desired_width(width))
        .labelled_by(label.id);
    let label = ui.label(text::WAIVE_BY.now());
    let mut person = settings.person.clone();
    let field = ui.add(TextEdit::singleline(&mut person).desired_width(width)).labelled_by(label.id);
    if field.changed() {
        actions.push(Action::Person(person.clone()));
    }
    let ready = !waiving.reason.trim().is_empty() && !person.trim().is_empty();
    let mut done = false;
    let buttons = ui.horizontal(|ui| {
        if ui
            .add_enabled(ready, egui::Button::new(text::WAIVE_DO.now()))
            .on_disabled_hover_text(text::WAIVE_NEEDS.now())
            .clicked()
        {
            let waiver = finding.waiver(
                waiving.reason.trim().to_owned(),
                person.trim().to_owned(),
                text::today(std::time::SystemTime::now()),
            );
            actions.push(Action::Edit(text::WAIVE_DO.into(), Edit::Waive(waiver)));
            done = true;
        }
        done |= ui.button(text::CANCEL.now()).clicked();
    });
    // The form may open with no room below: scroll its end into view once.
    if !std::mem::replace(&mut waiving.shown, true) {
        buttons.response.scroll_to_me(None);
    }
    if done {
        own.waiving = None;
    }
}

/// Whether a place is under the pointer.
fn concerns(place: &Location, hover: Selection) -> bool {
    match hover {
        Selection::Nothing | Selection::Part(..) | Selection::Circuit(_) | Selection::JunctionBox(_) => false,
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

fn selection_of(finding: &Finding) -> Selection {
    if let Subject::Circuit(id) = finding.key.subject {
        return Selection::Circuit(id);
    }
    let place = &finding.place;
    place
        .block
        .map(Selection::Block)
        .or(place.penetration.map(Selection::Penetration))
        .or(place.face.map(Selection::Face))
        .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_job::{BlockId, FaceId, FindingKey, Quantity, Required, Subject};
    use chalkcourse_rules::{Authority, Facts};

    fn finding(severity: Severity, face: u32, block: Option<u32>) -> Finding {
        let place = Location { face: Some(FaceId(face)), block: block.map(BlockId), ..Location::default() };
        Finding {
            rule: "test",
            severity,
            key: FindingKey::new("test", Subject::Whole),
            measured: Quantity::Nothing,
            required: Required::So,
            place,
            source: Authority::Geometry,
            facts: Facts::NoHome,
            waived: None,
            lapsed: None,
        }
    }

    #[test]
    fn a_filter_hides_severities_and_what_is_not_held() {
        let stop = finding(Severity::Stop, 1, Some(7));
        let note = finding(Severity::Note, 2, None);
        let shown = |filter: &Filter, held| [filter.shows(&stop, held), filter.shows(&note, held)];
        let mut filter = Filter::default();
        assert_eq!(shown(&filter, Selection::Face(FaceId(2))), [true, true]);
        filter.only_held = true;
        assert_eq!(shown(&filter, Selection::Nothing), [true, true]);
        assert_eq!(shown(&filter, Selection::Face(FaceId(2))), [false, true]);
        assert_eq!(shown(&filter, Selection::Face(FaceId(1))), [true, false]);
        assert_eq!(shown(&filter, Selection::Block(BlockId(7))), [true, false]);
        filter.hidden.insert(Severity::Stop);
        assert_eq!(shown(&filter, Selection::Nothing), [false, true]);
    }
}
