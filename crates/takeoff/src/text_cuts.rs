//! Cut lists and crews as lines of text.

use crate::words::plural;
use crate::{CutStick, LineTerm, Takeoff};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::Amount;
use chalkcourse_words::{pick, tell};

/// Cut lists and crews of an order, line by line.
pub(crate) fn lines(takeoff: &Takeoff, units: Units) -> Vec<String> {
    let mut lines = Vec::new();
    for (number, name, cuts) in cut_lists(takeoff, units) {
        if lines.is_empty() {
            lines.extend([String::new(), pick("Cut list", "Lista de cortes").to_owned()]);
        }
        lines.push(format!("  {number}  {name}"));
        lines.extend(cuts.into_iter().map(|cut| format!("      {cut}")));
    }
    if !takeoff.crews.is_empty() {
        lines.extend([String::new(), pick("Crews", "Cuadrillas").to_owned()]);
        for crew in &takeoff.crews {
            let people = plural(pick("person", "persona"), f64::from(crew.people))
                .replace(pick("persons", "personas"), pick("people", "personas"));
            lines.push(tell!(
                "  {}: {} h of work, {} {people}, {:.1} h on the clock",
                "  {}: {} h de trabajo, {} {people}, {:.1} h de reloj",
                crew.crew,
                crew.person_hours,
                crew.people,
                crew.hours
            ));
        }
    }
    lines
}

/// For each part that is cut: its number, its name, and its sticks in words, those that are cut alike together.
pub fn cut_lists(takeoff: &Takeoff, units: Units) -> Vec<(&str, &str, Vec<String>)> {
    let mut lists = Vec::new();
    for line in &takeoff.lines {
        let cuts: Vec<String> = line.terms.iter().flat_map(|term| of_term(term, units)).collect();
        if !cuts.is_empty() {
            lists.push((line.number.as_str(), line.name.as_str(), cuts));
        }
    }
    lists
}

fn of_term(term: &LineTerm, units: Units) -> Vec<String> {
    let (Some(cuts), Amount::Cut(sticks)) = (&term.cuts, &term.each) else { return Vec::new() };
    let of_part = |stick: &CutStick| match stick.stock.checked_sub(1).and_then(|other| sticks.also.get(other))
    {
        Some(other) => format!(" ({})", other.part),
        None => String::new(),
    };
    let show = |metres: f64| Length::from_metres(metres).show(units);
    let words = |(count, stick): (usize, &CutStick)| {
        let pieces: Vec<String> = stick.pieces.iter().map(|piece| show(piece.length)).collect();
        let left = if stick.left > 0.0 {
            tell!(", {} left", ", sobran {}", show(stick.left))
        } else {
            String::new()
        };
        tell!(
            "{count} {} of {}{}: {}{left}",
            "{count} {} de {}{}: {}{left}",
            plural(pick("stick", "tramo"), count as f64),
            show(stick.length),
            of_part(stick),
            pieces.join(" + ")
        )
    };
    cuts.alike().into_iter().map(words).collect()
}
