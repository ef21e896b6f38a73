use super::{Part, Windows};
use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::widgets::{LittleButton, fields, quiet, sketch};
use crate::{text, theme};
use chalkcourse_geometry::{Length, Pitch, Units};
use chalkcourse_job::{Edit, LimitRow, LimitValue, Resolved, RuleBook, Source, Standing, builtin_rule_books};
use chalkcourse_rules::RULES;
use chalkcourse_words::{Said, of_data};
use egui::{Button, ComboBox, Frame, Margin, RichText, ScrollArea, Stroke, Ui};
use std::sync::Arc;

/// Width of the name of a limit.
const NAME: f32 = 232.0;

/// The job's rule book: its limits, which rules are on, and how it differs from another. Each change is a step.
pub(super) fn rule_book_pane(ui: &mut Ui, job: &Resolved, windows: &mut Windows, actions: &mut Actions) {
    which(ui, job, actions);
    ui.horizontal(|ui| {
        for (part, words) in [
            (Part::Limits, text::LIMITS.now()),
            (Part::Rules, text::RULES.now()),
            (Part::Compare, text::COMPARE.now()),
        ] {
            let button =
                Button::selectable(windows.part == part, words).min_size([90.0, theme::PRESS].into());
            if ui.add(button).clicked() {
                windows.part = part;
            }
        }
    });
    ui.separator();
    if windows.part == Part::Compare {
        compare_with(ui, windows, actions);
    }
    ScrollArea::vertical().id_salt(windows.part as u8).auto_shrink([false, false]).show(
        ui,
        |ui| match windows.part {
            Part::Limits => {
                heading(ui, &job.rule_book, actions);
                limits(ui, job, windows, actions);
            }
            Part::Rules => rules(ui, job, actions),
            Part::Compare => differences(ui, &job.rule_book, windows),
        },
    );
}

fn take(label: impl Into<Said>, book: RuleBook) -> Action {
    Action::Edit(label.into(), Edit::SetRuleBook(Arc::new(book)))
}

/// Which book it is, and buttons to load and save it.
fn which(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    let book = &job.rule_book;
    fields::row(ui, text::BOOK.now(), |ui, words| {
        if ui.button(text::SAVE_BOOK_SHORT.now()).on_hover_text(text::SAVE_RULE_BOOK.now()).clicked() {
            actions.push(Command::SaveRuleBook.action());
        }
        if ui.button(text::LOAD_BOOK_SHORT.now()).on_hover_text(text::LOAD_RULE_BOOK.now()).clicked() {
            actions.push(Command::LoadRuleBook.action());
        }
        let chosen = choose(ui, "book", &book.name, Some(&**book)).labelled_by(words);
        if let Some(chosen) = chosen.book {
            actions.push(Action::Edit(text::CHANGE_BOOK.into(), Edit::SetRuleBook(chosen)));
        }
    });
}

/// Name, date and basis of the book.
fn heading(ui: &mut Ui, book: &RuleBook, actions: &mut Actions) {
    if let Some(name) = fields::name(ui, text::NAME.now(), &book.name) {
        actions.push(take(text::RENAME_BOOK.now().to_owned(), RuleBook { name, ..book.clone() }));
    }
    if let Some(date) = fields::name(ui, text::BOOK_DATE.now(), &book.date) {
        actions.push(take(text::RENAME_BOOK.now().to_owned(), RuleBook { date, ..book.clone() }));
    }
    if let Some(based_on) = fields::sentences(ui, text::BASED_ON.now(), &book.based_on) {
        actions.push(take(text::RENAME_BOOK.now().to_owned(), RuleBook { based_on, ..book.clone() }));
    }
}

/// The result of a choice among the built-in books.
struct Chosen {
    book: Option<Arc<RuleBook>>,
    response: egui::Response,
}

impl Chosen {
    fn labelled_by(self, words: egui::Id) -> Self {
        Self { response: self.response.labelled_by(words), ..self }
    }
}

fn choose(ui: &mut Ui, salt: &str, shown: &str, now: Option<&RuleBook>) -> Chosen {
    let mut chosen = None;
    let width = (ui.available_width() - 2.0).max(120.0);
    let response = ComboBox::from_id_salt(salt)
        .selected_text(shown)
        .width(width)
        .truncate()
        .show_ui(ui, |ui| {
            for book in builtin_rule_books() {
                let is_it = now.is_some_and(|now| now == &**book);
                if ui.selectable_label(is_it, &book.name).clicked() && !is_it {
                    chosen = Some(Arc::clone(book));
                }
            }
        })
        .response;
    Chosen { book: chosen, response }
}

fn limits(ui: &mut Ui, job: &Resolved, windows: &mut Windows, actions: &mut Actions) {
    let book = &job.rule_book;
    super::book_parts::parts_of_book(ui, book, actions);
    let mut part = None;
    for row in book.limits() {
        if part != Some(row.part) {
            ui.add_space(theme::GAP * 2.0);
            ui.label(RichText::new(row.part.now()).heading().strong());
            part = Some(row.part);
        }
        ui.push_id(&row.field, |ui| {
            if let Some(book) = value(ui, book, &row, job.units) {
                actions.push(take(text::change_limit(&row), book));
            }
            source(ui, book, &row, windows, actions);
        });
        ui.add_space(theme::GAP);
    }
}

/// The field of a limit. Returns the book with the new value, once there is one.
fn value(ui: &mut Ui, book: &RuleBook, row: &LimitRow, units: Units) -> Option<RuleBook> {
    let with = |value: LimitValue| book.with_limit(&row.field, &value).map_err(String::from);
    let words = |error: &dyn std::fmt::Display| error.to_string();
    let name = &*row.name.now();
    let number = |typed: &str| typed.trim().parse::<f64>().map_err(|_| text::BAD_NUMBER.now().to_owned());
    match &row.value {
        LimitValue::Length(length) => {
            fields::parsed_at(ui, NAME, name, &length.show_small(units), "", |typed| {
                Length::parse(typed, units)
                    .map_err(|e| words(&e))
                    .and_then(|length| with(LimitValue::Length(length)))
            })
        }
        LimitValue::Pitch(pitch) => fields::parsed_at(ui, NAME, name, &pitch.to_string(), "", |typed| {
            Pitch::parse(typed).map_err(|e| words(&e)).and_then(|pitch| with(LimitValue::Pitch(pitch)))
        }),
        LimitValue::Count(count) => fields::parsed_at(ui, NAME, name, &count.to_string(), "", |typed| {
            match typed.trim().parse::<u32>() {
                Ok(count) if count <= 1_000 => with(LimitValue::Count(count)),
                _ => Err(text::out_of_range(0.0, 1_000.0)),
            }
        }),
        LimitValue::Share(share) => fields::parsed_at(ui, NAME, name, &show_share(*share), "", |typed| {
            parse_share(typed).and_then(|share| with(LimitValue::Share(share)))
        }),
        LimitValue::Factor(factor) => fields::parsed_at(ui, NAME, name, &factor.to_string(), "", |typed| {
            number(typed).and_then(|factor| with(LimitValue::Factor(factor)))
        }),
        LimitValue::Psf(psf) => fields::parsed_at(ui, NAME, name, &format!("{psf} psf"), "", |typed| {
            number(typed.trim().trim_end_matches("psf")).and_then(|psf| with(LimitValue::Psf(psf)))
        }),
        LimitValue::Yes(yes) => {
            let choices = [(true, text::YES.now()), (false, text::NO.now())];
            fields::choice_at(ui, NAME, name, *yes, &choices).and_then(|yes| with(LimitValue::Yes(yes)).ok())
        }
        LimitValue::Scheme(scheme) => {
            let choices = text::SCHEMES.map(|scheme| (scheme, text::scheme(scheme)));
            let chosen = fields::choice_at(ui, NAME, name, *scheme, &choices);
            chosen.and_then(|scheme| with(LimitValue::Scheme(scheme)).ok())
        }
        LimitValue::Standard(standard) => {
            let choices = text::STANDARDS.map(|standard| (standard, standard.name()));
            let chosen = fields::choice_at(ui, NAME, name, *standard, &choices);
            chosen.and_then(|standard| with(LimitValue::Standard(standard)).ok())
        }
        LimitValue::Words(sentence) => {
            let typed = fields::sentences(ui, name, sentence);
            typed.and_then(|sentence| with(LimitValue::Words(sentence)).ok())
        }
    }
}

fn show_share(share: f64) -> String {
    format!("{} %", (share * 1e6).round() / 1e4)
}

fn parse_share(typed: &str) -> Result<f64, String> {
    let typed = typed.trim();
    let (number, of) = typed.strip_suffix('%').map_or((typed, 1.0), |percent| (percent.trim(), 100.0));
    match number.parse::<f64>().map(|number| number / of) {
        Ok(share) if (0.0..=1.0).contains(&share) => Ok(share),
        _ => Err(text::BAD_SHARE.now().to_owned()),
    }
}

/// The source of a limit, its weakness, and a field to edit it.
fn source(ui: &mut Ui, book: &RuleBook, row: &LimitRow, windows: &mut Windows, actions: &mut Actions) {
    if windows.sourcing.as_ref() == Some(&row.field) {
        let before = row.source.clone().unwrap_or_else(|| Source::new("", Standing::Office));
        let typed = fields::sentences(ui, text::SOURCE.now(), &before.text);
        let choices = Standing::ALL.map(|standing| (standing, text::standing(standing)));
        let chosen = fields::choice_at(ui, NAME, text::STANDING.now(), before.standing, &choices);
        if typed.is_some() || chosen.is_some() {
            let source = Source::new(typed.unwrap_or(before.text), chosen.unwrap_or(before.standing));
            match book.with_source(&row.field, &source) {
                Ok(book) => actions.push(take(text::change_source(row), book)),
                Err(words) => actions.push(Action::Say(words.into())),
            }
            windows.sourcing = None;
        }
        if ui.little_button(text::CANCEL.now()).clicked() {
            windows.sourcing = None;
        }
        return;
    }
    ui.horizontal_wrapped(|ui| {
        let words = row.source.as_ref().map(|source| of_data(&source.text));
        quiet(ui, &words.unwrap_or_else(|| text::NOT_IN_BOOK.now().to_owned()));
        // Wrap the link as a whole.
        ui.style_mut().wrap_mode = Some(egui::TextWrapMode::Extend);
        let words = RichText::new(text::CHANGE_SOURCE.now()).small();
        if row.source.is_some() && ui.link(words).clicked() {
            windows.sourcing = Some(row.field.clone());
        }
    });
    let doubt = match &row.source {
        Some(source) => text::doubt(Some(source.standing)),
        None => Some(text::NO_LIMIT.now()),
    };
    if let Some(words) = doubt {
        let color = theme::of(ui).caution;
        ui.label(RichText::new(words).small().color(color));
    }
}

/// Width of a sketch beside its rule, in points.
const SKETCH: f32 = 120.0;

fn rules(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    let book = &job.rule_book;
    quiet(ui, text::RULE_SWITCH_HELP.now());
    for rule in RULES.iter() {
        let mut on = !book.off.contains(rule.code);
        ui.add_space(theme::GAP);
        ui.horizontal(|ui| {
            if ui.checkbox(&mut on, chalkcourse_telling::title(rule)).clicked() {
                let mut book = (**book).clone();
                if on {
                    book.off.remove(rule.code);
                } else {
                    book.off.insert(rule.code.to_owned());
                }
                actions.push(take(text::switch_rule(chalkcourse_telling::title(rule), on), book));
            }
        });
        ui.horizontal_top(|ui| {
            sketch::rule_sketch(ui, rule, SKETCH);
            ui.vertical(|ui| {
                ui.label(chalkcourse_telling::reason(rule));
                let source = rule.source(job);
                quiet(ui, &of_data(&chalkcourse_telling::source(job, rule.code, &source)));
                let caution = theme::of(ui).caution;
                let doubt = text::doubt(source.standing()).map(str::to_owned);
                let why_not = rule.why_not(job).map(|why| chalkcourse_telling::why_not(job, &why));
                let why_not = why_not.map(|why| text::not_checked(Some(&why)));
                for words in doubt.into_iter().chain(why_not) {
                    ui.label(RichText::new(words).small().color(caution));
                }
            });
        });
        ui.separator();
    }
}

fn compare_with(ui: &mut Ui, windows: &mut Windows, actions: &mut Actions) {
    fields::row(ui, text::COMPARE_WITH.now(), |ui, words| {
        if ui.button(text::FROM_FILE.now()).on_hover_text(text::COMPARE_WITH_FILE.now()).clicked() {
            actions.push(Command::CompareRuleBook.action());
        }
        let other = windows.other.as_deref();
        let shown = other.map_or(text::CHOOSE_BOOK.now(), |book| book.name.as_str());
        let chosen = choose(ui, "other book", shown, other).labelled_by(words);
        if let Some(chosen) = chosen.book {
            windows.other = Some(chosen);
        }
    });
}

fn differences(ui: &mut Ui, book: &RuleBook, windows: &Windows) {
    let Some(other) = &windows.other else { return };
    let differences = book.differences(other);
    if differences.is_empty() {
        ui.label(text::SAME_BOOKS.now());
        return;
    }
    ui.label(text::differences(differences.len(), &other.name));
    let mut rows = book.limits();
    rows.extend(other.limits());
    let p = theme::of(ui);
    for difference in &differences {
        let frame = Frame::new()
            .fill(p.field)
            .stroke(Stroke::new(1.0, p.rule))
            .corner_radius(6)
            .inner_margin(Margin::symmetric(10, 6));
        frame.show(ui, |ui| {
            ui.set_min_width(ui.available_width());
            ui.label(RichText::new(text::field_words(difference, &rows)).strong());
            for (which, said) in [(text::HERE.now(), &difference.one), (text::THERE.now(), &difference.other)]
            {
                ui.horizontal_top(|ui| {
                    ui.allocate_ui([64.0, 18.0].into(), |ui| {
                        ui.set_min_width(64.0);
                        quiet(ui, which);
                    });
                    ui.add(egui::Label::new(said.as_deref().unwrap_or(text::NOTHING_THERE.now())).wrap());
                });
            }
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shares_are_typed_both_ways_and_shown_as_they_are() {
        for (typed, share) in
            [("33 %", 0.33), ("0.33", 0.33), (" 66% ", 0.66), ("1", 1.0), ("100 %", 1.0), ("0", 0.0)]
        {
            assert_eq!(parse_share(typed), Ok(share), "{typed}");
        }
        for wrong in ["33", "", "-1 %", "101 %", "nan", "many"] {
            assert!(parse_share(wrong).is_err(), "{wrong}");
        }
        for share in [0.0, 0.33, 0.66, 0.5, 1.0, 0.123_456] {
            assert!((parse_share(&show_share(share)).unwrap() - share).abs() < 1e-6);
        }
    }
}
