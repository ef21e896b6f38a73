//! Sentences of the lists and the status bar.

use crate::Document;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Job, Unit, Waiver};
use chalkcourse_plan::Summary;
use chalkcourse_rules::{Finding, Severity};
use chalkcourse_takeoff::{Line, LineTerm, Takeoff, show_amount};

pub(crate) fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => "Stop",
        Severity::Caution => "Caution",
        Severity::Note => "Note",
    }
}

pub(crate) fn findings_tab(open: usize) -> String {
    match open {
        0 => "Findings: none".to_owned(),
        open => format!("Findings: {open}"),
    }
}

/// What an empty list of findings means.
pub(crate) fn nothing_found(job: &Job) -> &'static str {
    if job.faces.is_empty() {
        "Nothing to check yet: draw a face first."
    } else if job.blocks.is_empty() {
        "The roof holds together. Place a block, and the rules are checked as you move it."
    } else {
        "The rules of this book found nothing. They are not all that can be wrong: read the cautions."
    }
}

/// A finding in one line, for an order and for a screen reader.
pub(crate) fn finding_words(finding: &Finding) -> String {
    let waived = finding.waived.as_ref().map(|w| format!(" ({})", waived_by(w))).unwrap_or_default();
    format!("{}: {}{waived}", severity(finding.severity), finding.message)
}

pub(crate) fn waived_by(waiver: &Waiver) -> String {
    format!("waived by {} on {}: {}", waiver.by, waiver.date, waiver.reason)
}

/// An area as a person reads it.
pub(crate) fn area(square_metres: f64, units: Units) -> String {
    show_amount(square_metres, Unit::Area, units)
}

pub(crate) fn area_words(plan: f64, slope: f64, units: Units) -> String {
    format!("{} on the slope, {} in plan", area(slope, units), area(plan, units))
}

pub(crate) fn roof_words(summary: &Summary, faces: usize, units: Units) -> String {
    let faces = if faces == 1 { "1 face".to_owned() } else { format!("{faces} faces") };
    format!("{faces}, {}", area_words(summary.plan_area, summary.slope_area, units))
}

/// "12 modules · 4.86 kW · USD 9123.40"
pub(crate) fn summary(document: &Document) -> String {
    let plan = document.plan();
    let modules = match plan.summary.modules {
        1 => "1 module".to_owned(),
        modules => format!("{modules} modules"),
    };
    let change = document
        .plan_before()
        .map_or(0, |before| plan.summary.modules as i64 - before.summary.modules as i64);
    let change = if change == 0 { String::new() } else { format!(" ({})", signed(change as f64)) };
    let without = match plan.takeoff.unpriced.len() {
        0 => String::new(),
        1 => " + 1 part without a price".to_owned(),
        many => format!(" + {many} parts without a price"),
    };
    format!(
        "{modules}{change}  ·  {:.2} kW  ·  {} {:.2}{without}",
        plan.summary.kilowatts, plan.takeoff.currency, plan.takeoff.totals.total
    )
}

pub(crate) fn total(takeoff: &Takeoff) -> String {
    format!("Total, {}", takeoff.currency)
}

/// An amount to the cent; what nobody has said is told, not taken for nothing.
pub(crate) fn money(amount: Option<impl std::fmt::Display>) -> String {
    amount.map_or_else(|| "not known".to_owned(), |amount| format!("{amount:.2}"))
}

pub(crate) fn unpriced(numbers: &[String]) -> String {
    format!("Without a price, and not in the total: {}", numbers.join(", "))
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
    format!("{}, {}: {amount}{delta}, order {}", line.number, line.name, line.packages_words(units))
}

pub(crate) fn line_gone(number: &str, name: &str, amount: &str) -> String {
    format!("{number} {name}: −{amount}, none left")
}

pub(crate) fn term_words(term: &LineTerm, units: Units) -> String {
    format!("{} = {}", term.words(units), show_amount(term.need, term.unit, units))
}

/// "with 5 % waste 61, in 3 boxes of 25"
pub(crate) fn waste_words(line: &Line, units: Units) -> String {
    let with_waste = show_amount(line.with_waste, line.unit, units);
    let packages = line.packages_words(units);
    if line.waste > 0.0 {
        format!("with {} % waste {with_waste}, in {packages}", (line.waste * 1000.0).round() / 10.0)
    } else {
        format!("no waste added, in {packages}")
    }
}
