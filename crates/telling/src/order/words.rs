//! Quantities of an order in words.

use super::nouns::counted;
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Amount, Holds, Measure, Unit};
use chalkcourse_takeoff::{CutList, Line, LineState, LineTerm, WasteFrom, number, show_amount};
use chalkcourse_words::{self as words, Count};

/// What to load on the truck: "3 boxes of 25", "2 rolls of 100'".
pub fn packages_words(line: &Line, units: Units) -> String {
    let packages = line.package.counted(line.packages);
    // A package of one is named by its contents: "3 sticks", "20 hours".
    if matches!(line.unit, Unit::Each | Unit::Time) && line.holds == 1.0 {
        return packages.into();
    }
    words::takeoff::of_3(&packages, &show_amount(line.holds, line.unit, units))
}

/// How the count was made: "12 modules × 5 + 2 blocks × 6'".
pub fn count_words(line: &Line, units: Units) -> String {
    let terms = line.terms.iter().filter(|term| term.need > 0.0).map(|term| term_words(term, units));
    terms.collect::<Vec<_>>().join(" + ")
}

/// A short distance in inches, a longer one as roofs are measured: `12"`, `20'`.
fn way(length: Length, units: Units) -> String {
    // Up to a yard people say inches (common practice, no source).
    if length.metres() <= 0.9145 { length.show_small(units) } else { length.show(units) }
}

/// With no more decimals than needed.
fn counts(value: f64) -> Count {
    Count::shown(value, number(value))
}

/// How good a cut list is. The bound takes the joints of each run where the takeoff puts them; other splits are not searched.
fn of_proof(cuts: &CutList, units: Units) -> String {
    let bought = Length::from_metres(cuts.bought).show(units);
    if cuts.proved {
        words::takeoff::bought_the_least_for_these(&bought)
    } else {
        let more = Length::from_metres(cuts.bought - cuts.least).show(units);
        words::takeoff::bought_at_most_more_than(&bought, &more)
    }
}

/// What a person changed; `None` if the line is as counted and takes nothing from stock.
pub fn state_words(line: &Line, units: Units) -> Option<String> {
    let because = |why: &str| if why.trim().is_empty() { String::new() } else { format!(": {why}") };
    let mut words = Vec::new();
    match &line.state {
        LineState::Counted => {}
        LineState::Overridden { why } => {
            let counted = line.package.counted(line.counted);
            words.push(words::takeoff::overridden_counted(&counted, &because(why)));
        }
        LineState::Added { why } => words.push(words::takeoff::added_by_hand(&because(why))),
        LineState::Off { why } => words.push(words::takeoff::off(&because(why))),
    }
    if line.own && line.from_stock > 0.0 {
        words.push(words::takeoff::of_the_offices_own_to(&show_amount(line.from_stock, line.unit, units)));
    } else if line.from_stock > 0.0 {
        words.push(words::takeoff::from_stock_in_hand(&show_amount(line.from_stock, line.unit, units)));
    }
    if let Some((number, name)) = &line.alternate {
        words.push(words::takeoff::alternate(&number, &name));
    }
    (!words.is_empty()).then(|| words.join("; "))
}

/// The waste share and its source, and beside it the waste from the faces' cuts alone; `None` if the kit's one share is all there
/// is to say.
pub fn waste_words(line: &Line) -> Option<String> {
    let percent = |share: f64| format!("{}", (share * 1000.0).round() / 10.0);
    let waste = percent(line.waste);
    let mut words = match &line.waste_from {
        WasteFrom::Kit => None,
        WasteFrom::Roof { kind, chosen } => {
            let by = if *chosen { words::takeoff::AS_CHOSEN.now() } else { words::takeoff::AS_DRAWN.now() };
            Some(words::takeoff::for_a(&waste, &kind.name(), &by))
        }
        WasteFrom::Office { why } if why.trim().is_empty() => Some(words::takeoff::the_offices_own(&waste)),
        WasteFrom::Office { why } => Some(words::takeoff::the_offices_own_2(&waste, &why)),
    };
    if let Some(cut_off) = line.waste_by_geometry {
        let cuts = words::takeoff::the_cuts_of_these_faces(&percent(cut_off));
        words =
            Some(words.map_or_else(
                || words::takeoff::waste_cuts(&waste, &cuts),
                |first| format!("{first}; {cuts}"),
            ));
    }
    words
}

/// A term in words: "12 modules × 5".
pub fn term_words(term: &LineTerm, units: Units) -> String {
    let runs = term.places.len() as f64;
    let measured = match term.of_unit {
        Unit::Each if matches!(term.of, Measure::Part(_)) => {
            words::takeoff::of_4(&number(term.measured), &part_of(&term.of))
        }
        // A part used as a measure counts once, however many places it is in.
        unit if matches!(term.of, Measure::Part(_)) => {
            format!("{}, {}", part_of(&term.of), show_amount(term.measured, unit, units))
        }
        Unit::Each => counted(&term.of, counts(term.measured)),
        unit => {
            format!("{}, {}", counted(&term.of, counts(runs)), show_amount(term.measured, unit, units))
        }
    };
    match &term.each {
        &Amount::Count(1.0) => measured,
        Amount::Count(count) => format!("{measured} × {}", number(*count)),
        Amount::Length(length) if term.of_unit == Unit::Each => {
            format!("{measured} × {}", way(*length, units))
        }
        Amount::Length(length) => words::takeoff::each(&measured, &way(*length, units)),
        Amount::Pieces { length, lap } if *lap == Length::ZERO => {
            words::takeoff::pieces_of_end_to_end(&measured, &length.show(units))
        }
        Amount::Pieces { length, lap } => {
            words::takeoff::pieces_of_each_lapping(&measured, &length.show(units), &lap.show_small(units))
        }
        Amount::Spaced(spacing) if term.of_unit == Unit::Area => {
            words::takeoff::one_every_both_ways(&measured, &way(*spacing, units))
        }
        Amount::Spaced(spacing) => words::takeoff::one_every_and_one_at(&measured, &way(*spacing, units)),
        Amount::Rate { take, of } => {
            let take = take.show(units);
            match of {
                Holds::Pieces(pieces) if *pieces == 1.0 => words::takeoff::for_each(&measured, &take),
                of => {
                    let of = of.show(units);
                    words::takeoff::for_each_2(&measured, &take, &of)
                }
            }
        }
        Amount::Width(width) => words::takeoff::a_strip_wide(&measured, &width.show_small(units)),
        Amount::Cut(sticks) => {
            let lap = if sticks.lap == Length::ZERO {
                String::new()
            } else {
                words::takeoff::each_lapping(&sticks.lap.show_small(units))
            };
            let lengths: Vec<String> = std::iter::once(sticks.length)
                .chain(sticks.also.iter().map(|other| other.length))
                .map(|length| length.show(units))
                .collect();
            let proof = term.cuts.as_ref().map_or_else(String::new, |cuts| of_proof(cuts, units));
            words::takeoff::cut_from_sticks_of(
                &measured,
                &lengths.join(words::common::AND.now()),
                &lap,
                &proof,
            )
        }
        Amount::Laid(roll) => {
            let (strips, rolls) = term.laid.as_ref().map_or((0, 0), |laid| (laid.strips.len(), laid.rolls));
            let double = if roll.starter { words::takeoff::DOUBLE.now() } else { "" };
            words::takeoff::laid_in_wide_lapping_at(
                &measured,
                &words::things::strip(strips),
                &roll.width.show_small(units),
                &roll.side_lap.show_small(units),
                &double,
                &roll.end_lap.show_small(units),
                &words::things::roll(rolls),
            )
        }
    }
}

/// The part number if the measure is a part; else empty.
fn part_of(measure: &Measure) -> &str {
    match measure {
        Measure::Part(number) => number,
        _ => "",
    }
}
