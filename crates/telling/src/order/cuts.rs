//! Cut lists and crews as text.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::Amount;
use chalkcourse_takeoff::{CutStick, LineTerm, Takeoff};
use chalkcourse_words::{self as words, Said};

/// Cut lists and crews of an order, line by line.
pub(super) fn lines(takeoff: &Takeoff, units: Units) -> Vec<String> {
    let mut lines = Vec::new();
    for (number, name, cuts) in cut_lists(takeoff, units) {
        if lines.is_empty() {
            lines.extend([String::new(), words::common::CUT_LIST.now().to_owned()]);
        }
        lines.push(format!("  {number}  {name}"));
        lines.extend(cuts.into_iter().map(|cut| format!("      {cut}")));
    }
    if !takeoff.crews.is_empty() {
        lines.extend([String::new(), words::common::CREWS.now().to_owned()]);
        for crew in &takeoff.crews {
            lines.push(words::takeoff::h_of_work_h_on(
                &crew.crew,
                &crew.person_hours,
                &words::things::person(crew.people),
                &format_args!("{:.1}", crew.hours),
            ));
        }
    }
    lines
}

/// For each part that is cut: its number, its name and its sticks in words, with identical sticks grouped.
pub fn cut_lists(takeoff: &Takeoff, units: Units) -> Vec<(&str, &Said, Vec<String>)> {
    let mut lists = Vec::new();
    for line in &takeoff.lines {
        let cuts: Vec<String> = line.terms.iter().flat_map(|term| of_term(term, units)).collect();
        if !cuts.is_empty() {
            lists.push((line.number.as_str(), &line.name, cuts));
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
    let told = |(count, stick): (usize, &CutStick)| {
        let pieces: Vec<String> = stick.pieces.iter().map(|piece| show(piece.length)).collect();
        let left = if stick.left > 0.0 { words::takeoff::left(&show(stick.left)) } else { String::new() };
        words::takeoff::of_2(
            &words::things::stick(count),
            &show(stick.length),
            &of_part(stick),
            &pieces.join(" + "),
            &left,
        )
    };
    cuts.alike().into_iter().map(told).collect()
}
