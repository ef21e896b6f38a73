//! Sentences of the lists and the status bar.

use crate::Document;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Resolved, Unit};
use chalkcourse_plan::Summary;
use chalkcourse_rules::{Finding, Severity};
use chalkcourse_takeoff::{Line, LineTerm, Takeoff, show_amount};
use chalkcourse_words::{pick, tell};

pub(crate) fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => pick("Stop", "Alto"),
        Severity::Caution => pick("Caution", "Precaución"),
        Severity::Note => pick("Note", "Nota"),
    }
}

pub(crate) fn findings_tab(open: usize) -> String {
    match open {
        0 => pick("Findings: none", "Hallazgos: ninguno").to_owned(),
        open => tell!("Findings: {open}", "Hallazgos: {open}"),
    }
}

/// What an empty list of findings means.
pub(crate) fn nothing_found(job: &Resolved) -> &'static str {
    if job.faces.is_empty() {
        pick(
            "Nothing to check yet: draw a face first.",
            "Todavía nada que revisar: dibuje primero un faldón.",
        )
    } else if job.blocks.is_empty() {
        pick(
            "The roof holds together. Place a block, and the rules are checked as you move it.",
            "El techo cuadra. Coloque un bloque, y las reglas se revisan mientras lo mueve.",
        )
    } else {
        pick(
            "The rules of this book found nothing. They are not all that can be wrong: read the cautions.",
            "Las reglas de este libro no hallaron nada. No son todo lo que puede estar mal: lea las precauciones.",
        )
    }
}

/// A finding in one line, for an order and for a screen reader.
pub(crate) fn finding_words(job: &Resolved, finding: &Finding) -> String {
    let waived = chalkcourse_telling::waiver_words(job, finding);
    let waived = waived.map_or_else(String::new, |words| format!(" ({words})"));
    format!("{}: {}{waived}", severity(finding.severity), chalkcourse_telling::message(job, finding))
}

/// An area as a person reads it.
pub(crate) fn area(square_metres: f64, units: Units) -> String {
    show_amount(square_metres, Unit::Area, units)
}

pub(crate) fn area_words(plan: f64, slope: f64, units: Units) -> String {
    tell!(
        "{} on the slope, {} in plan",
        "{} en la pendiente, {} en planta",
        area(slope, units),
        area(plan, units)
    )
}

pub(crate) fn roof_words(summary: &Summary, faces: usize, units: Units) -> String {
    let faces = if faces == 1 {
        pick("1 face", "1 faldón").to_owned()
    } else {
        tell!("{faces} faces", "{faces} faldones")
    };
    format!("{faces}, {}", area_words(summary.plan_area, summary.slope_area, units))
}

/// "12 modules · 4.86 kW · USD 9123.40"
pub(crate) fn summary(document: &Document) -> String {
    let plan = document.plan();
    let modules = match plan.summary.modules {
        1 => pick("1 module", "1 módulo").to_owned(),
        modules => tell!("{modules} modules", "{modules} módulos"),
    };
    let change = document
        .plan_before()
        .map_or(0, |before| plan.summary.modules as i64 - before.summary.modules as i64);
    let change = if change == 0 { String::new() } else { format!(" ({})", signed(change as f64)) };
    let without = match plan.takeoff.unpriced.len() {
        0 => String::new(),
        1 => pick(" + 1 part without a price", " + 1 pieza sin precio").to_owned(),
        many => tell!(" + {many} parts without a price", " + {many} piezas sin precio"),
    };
    format!(
        "{modules}{change}  ·  {:.2} kW  ·  {} {:.2}{without}",
        plan.summary.kilowatts, plan.takeoff.currency, plan.takeoff.totals.total
    )
}

pub(crate) fn total(takeoff: &Takeoff) -> String {
    tell!("Total, {}", "Total, {}", takeoff.currency)
}

/// An amount to the cent; what nobody has said is told, not taken for nothing.
pub(crate) fn money(amount: Option<impl std::fmt::Display>) -> String {
    amount.map_or_else(|| pick("not known", "no se sabe").to_owned(), |amount| format!("{amount:.2}"))
}

pub(crate) fn unpriced(numbers: &[String]) -> String {
    tell!(
        "Without a price, and not in the total: {}",
        "Sin precio, y fuera del total: {}",
        numbers.join(", ")
    )
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
    tell!(
        "{}, {}: {amount}{delta}, order {}",
        "{}, {}: {amount}{delta}, pedir {}",
        line.number,
        line.name,
        line.packages_words(units)
    )
}

pub(crate) fn line_gone(number: &str, name: &str, amount: &str) -> String {
    tell!("{number} {name}: −{amount}, none left", "{number} {name}: −{amount}, no queda ninguno")
}

pub(crate) fn term_words(term: &LineTerm, units: Units) -> String {
    format!("{} = {}", term.words(units), show_amount(term.need, term.unit, units))
}

/// "with 5 % waste 61, in 3 boxes of 25"
pub(crate) fn waste_words(line: &Line, units: Units) -> String {
    let with_waste = show_amount(line.with_waste, line.unit, units);
    let packages = line.packages_words(units);
    let words = if line.waste > 0.0 {
        tell!(
            "with {} % waste {with_waste}, in {packages}",
            "con {} % de desperdicio {with_waste}, en {packages}",
            (line.waste * 1000.0).round() / 10.0
        )
    } else {
        tell!("no waste added, in {packages}", "sin desperdicio agregado, en {packages}")
    };
    match chalkcourse_takeoff::waste_words(line) {
        Some(why) => format!("{words}. {why}"),
        None => words,
    }
}
