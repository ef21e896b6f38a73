//! Sentences of the lists and the status bar.

use crate::Document;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Resolved, Unit};
use chalkcourse_plan::Summary;
use chalkcourse_rules::{Finding, Severity};
use chalkcourse_takeoff::{Line, LineTerm, Takeoff, show_amount};
use chalkcourse_telling::order::{self, packages_words, show_money};
use chalkcourse_words as words;
use rust_decimal::Decimal;

pub(crate) fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => words::panels::STOP.now(),
        Severity::Caution => words::panels::CAUTION.now(),
        Severity::Note => words::common::NOTE.now(),
    }
}

pub(crate) fn findings_tab(open: usize) -> String {
    match open {
        0 => words::panels::FINDINGS_NONE.now().to_owned(),
        open => words::panels::findings(&open),
    }
}

/// What an empty list of findings means.
pub(crate) fn nothing_found(job: &Resolved) -> &'static str {
    if job.faces.is_empty() {
        words::panels::NOTHING_TO_CHECK_YET_DRAW.now()
    } else if job.blocks.is_empty() {
        words::panels::THE_ROOF_HOLDS_TOGETHER_PLACE.now()
    } else {
        words::panels::THE_RULES_OF_THIS_BOOK.now()
    }
}

/// A finding in one line, for an order and for a screen reader.
pub(crate) fn finding_words(job: &Resolved, finding: &Finding) -> String {
    let waived = chalkcourse_telling::waiver_words(job, finding);
    let waived = waived.map_or_else(String::new, |words| format!(" ({words})"));
    format!("{}: {}{waived}", severity(finding.severity), chalkcourse_telling::message(job, finding))
}

/// What a rule is about, in a few words.
pub(crate) fn rule_title(code: &'static str) -> &'static str {
    chalkcourse_rules::RULES
        .iter()
        .find(|rule| rule.code == code)
        .map_or(code, |rule| chalkcourse_telling::title(rule))
}

/// An area for display.
pub(crate) fn area(square_metres: f64, units: Units) -> String {
    show_amount(square_metres, Unit::Area, units)
}

pub(crate) fn area_words(plan: f64, slope: f64, units: Units) -> String {
    words::panels::on_the_slope_in_plan(&area(slope, units), &area(plan, units))
}

pub(crate) fn roof_words(summary: &Summary, faces: usize, units: Units) -> String {
    let faces = words::panels::faces(faces);
    format!("{faces}, {}", area_words(summary.plan_area, summary.slope_area, units))
}

/// "12 modules · 4.86 kW · $9,123.40"
pub(crate) fn summary(document: &Document) -> String {
    let plan = document.plan();
    let modules = words::common::modules(plan.summary.modules);
    let change = document
        .plan_before()
        .map_or(0, |before| plan.summary.modules as i64 - before.summary.modules as i64);
    let change = if change == 0 { String::new() } else { format!(" ({})", signed(change as f64)) };
    let without = match plan.takeoff.unpriced.len() {
        0 => String::new(),
        many => words::panels::parts_without_a_price(many),
    };
    format!(
        "{modules}{change}  ·  {:.2} kW  ·  {}{without}",
        plan.summary.kilowatts,
        super::order_total(&plan.takeoff)
    )
}

pub(crate) fn total(takeoff: &Takeoff) -> String {
    words::common::total(&takeoff.currency)
}

/// An amount to the cent; an unknown one is shown as such, not as zero.
pub(crate) fn money(amount: Option<Decimal>) -> String {
    amount.map_or_else(|| words::common::NOT_KNOWN.now().to_owned(), show_money)
}

pub(crate) fn unpriced(numbers: &[String]) -> String {
    words::panels::without_a_price_and_not(&numbers.join(", "))
}

fn signed(number: f64) -> String {
    let rounded = (number * 1000.0).round() / 1000.0;
    if rounded < 0.0 { format!("−{}", -rounded) } else { format!("+{rounded}") }
}

/// "+2", "−1", "+3' 4\"".
pub(crate) fn delta(change: f64, unit: Unit, units: Units) -> String {
    let sign = if change < 0.0 { "−" } else { "+" };
    format!("{sign}{}", show_amount(change.abs(), unit, units))
}

pub(crate) fn line_words(line: &Line, amount: &str, delta: &str, units: Units) -> String {
    let delta = if delta.is_empty() { String::new() } else { format!(" ({delta})") };
    words::panels::order(&line.number, &line.name, &amount, &delta, &packages_words(line, units))
}

pub(crate) fn line_gone(number: &str, name: &str, amount: &str) -> String {
    words::panels::none_left(&number, &name, &amount)
}

pub(crate) fn term_words(term: &LineTerm, units: Units) -> String {
    format!("{} = {}", order::term_words(term, units), show_amount(term.need, term.unit, units))
}

/// "with 5 % waste 61, in 3 boxes of 25"
pub(crate) fn waste_words(line: &Line, units: Units) -> String {
    let with_waste = show_amount(line.with_waste, line.unit, units);
    let packages = packages_words(line, units);
    let words = if line.waste > 0.0 {
        words::panels::with_waste_in(&((line.waste * 1000.0).round() / 10.0), &with_waste, &packages)
    } else {
        words::panels::no_waste_added_in(&packages)
    };
    match chalkcourse_telling::order::waste_words(line) {
        Some(why) => format!("{words}. {why}"),
        None => words,
    }
}
