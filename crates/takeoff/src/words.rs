use crate::nouns::{noun, nouns};
use crate::{CutList, Line, LineState, LineTerm, WasteFrom};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Amount, Holds, Measure, Unit};
use chalkcourse_words::{self as words, Language, spoken};

/// A quantity as a person reads it: `58`, `22' 7 9/16"`, `253.04 sq ft`.
pub fn show_amount(amount: f64, unit: Unit, units: Units) -> String {
    match unit {
        Unit::Each => number(amount),
        Unit::Length => Length::from_metres(amount).show(units),
        Unit::Area => Holds::Area(amount).show(units),
        Unit::Time => Holds::Hours(amount).show(units),
        Unit::Mass => Holds::Kilograms(amount).show(units),
    }
}

/// With at most three decimals, and none that say nothing.
pub(crate) fn number(value: f64) -> String {
    let rounded = (value * 1000.0).round() / 1000.0;
    format!("{rounded}")
}

/// "boxes" for "box" where there is more than one.
pub(crate) fn plural(word: &str, count: f64) -> String {
    if (count - 1.0).abs() < 1e-9 {
        return word.to_owned();
    }
    if spoken() == Language::SPANISH {
        // The noun takes it, not what is said of it: "tramo de riel", "tramos de riel".
        let (noun, rest) = word.split_at(word.find(' ').unwrap_or(word.len()));
        let open = noun.ends_with(['a', 'e', 'i', 'o', 'u', 'á', 'é', 'ó']);
        if let Some(stem) = noun.strip_suffix('z') {
            return format!("{stem}ces{rest}");
        }
        if let Some(stem) = noun.strip_suffix("ón") {
            return format!("{stem}ones{rest}");
        }
        format!("{noun}{}{rest}", if open { "s" } else { "es" })
    } else {
        let hisses = ["s", "x", "z", "ch", "sh"].iter().any(|end| word.ends_with(end));
        format!("{word}{}", if hisses { "es" } else { "s" })
    }
}

pub(crate) fn packages(line: &Line, units: Units) -> String {
    let count = line.packages as f64;
    let package = plural(&line.package, count);
    // A package of one is what it holds: "3 sticks", "20 hours".
    if matches!(line.unit, Unit::Each | Unit::Time) && line.holds == 1.0 {
        return format!("{} {package}", line.packages);
    }
    words::takeoff::of_3(&line.packages, &package, &show_amount(line.holds, line.unit, units))
}

/// A short way in inches, a longer one as roofs are measured: `12"`, `20'`.
fn way(length: Length, units: Units) -> String {
    // Up to a yard people say inches (common practice, no source).
    if length.metres() <= 0.9145 { length.show_small(units) } else { length.show(units) }
}

/// "3 rolls"
fn many(word: &str, count: f64) -> String {
    format!("{} {}", number(count), plural(word, count))
}

/// How good a cut list is: for runs with their joints where the takeoff puts them; other splits are not searched.
fn of_proof(cuts: &CutList, units: Units) -> String {
    let bought = Length::from_metres(cuts.bought).show(units);
    if cuts.proved {
        words::takeoff::bought_the_least_for_these(&bought)
    } else {
        let more = Length::from_metres(cuts.bought - cuts.least).show(units);
        words::takeoff::bought_at_most_more_than(&bought, &more)
    }
}

pub(crate) fn of_state(line: &Line, units: Units) -> Option<String> {
    let because = |why: &str| if why.trim().is_empty() { String::new() } else { format!(": {why}") };
    let mut words = Vec::new();
    match &line.state {
        LineState::Counted => {}
        LineState::Overridden { why } => {
            let counted = many(&line.package, line.counted as f64);
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

/// How much is lost and by whose word, and beside it what the faces' cuts alone make; `None` where there is nothing to say but
/// the kit's one share.
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

pub(crate) fn of_term(term: &LineTerm, units: Units) -> String {
    let runs = term.places.len() as f64;
    let measured = match term.of_unit {
        Unit::Each if matches!(term.of, Measure::Part(_)) => {
            words::takeoff::of_4(&number(term.measured), &noun(&term.of))
        }
        // A part that is measured is one thing, in however many places it lies.
        unit if matches!(term.of, Measure::Part(_)) => {
            format!("{}, {}", noun(&term.of), show_amount(term.measured, unit, units))
        }
        Unit::Each => format!("{} {}", number(term.measured), nouns(&term.of, term.measured)),
        unit => {
            format!("{} {}, {}", number(runs), nouns(&term.of, runs), show_amount(term.measured, unit, units))
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
                &many(words::takeoff::STRIP.now(), strips as f64),
                &roll.width.show_small(units),
                &roll.side_lap.show_small(units),
                &double,
                &roll.end_lap.show_small(units),
                &many(words::takeoff::ROLL.now(), rolls as f64),
            )
        }
    }
}
