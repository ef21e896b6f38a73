use crate::{CutList, Line, LineState, LineTerm};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Amount, Holds, Measure, Unit};

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
    let hisses = ["s", "x", "z", "ch", "sh"].iter().any(|end| word.ends_with(end));
    format!("{word}{}", if hisses { "es" } else { "s" })
}

pub(crate) fn packages(line: &Line, units: Units) -> String {
    let count = line.packages as f64;
    let package = plural(&line.package, count);
    if line.unit == Unit::Each && line.holds == 1.0 {
        return format!("{} {package}", line.packages);
    }
    format!("{} {package} of {}", line.packages, show_amount(line.holds, line.unit, units))
}

/// What one of a measure is called. A length is told by its runs.
fn noun(measure: &Measure) -> &str {
    match measure {
        Measure::Module => "module",
        Measure::Block => "block",
        Measure::Row => "row",
        Measure::Seam => "seam",
        Measure::BaseRail => "run of base rail",
        Measure::Side => "side",
        Measure::SideCourse => "course up the sides, one more a side",
        Measure::Head => "run of head flashing",
        Measure::HeadModule => "module under the head",
        Measure::HeadSupport => "head end and seam",
        Measure::HeadCornerLeft => "left head corner",
        Measure::HeadCornerRight => "right head corner",
        Measure::InsideCorner => "inside corner",
        Measure::BaseCornerLeft => "left base corner",
        Measure::BaseCornerRight => "right base corner",
        Measure::Under => "area under the array",
        Measure::Around => "strip around the array",
        Measure::BondingPath => "bonding path",
        Measure::Part(number) => number,
        Measure::Sticks(_) => "stick of this length in the cut list",
        Measure::Joints(_) => "joint between two pieces",
        Measure::Job => "job",
        Measure::Person => "person",
        Measure::Deck => "face of deck",
        Measure::TearOff => "face of old roofing, each layer counted",
        Measure::Shingled => "face of deck less the array",
        Measure::SingleUnderlayment => "face with one layer of underlayment",
        Measure::DoubleUnderlayment => "face with two layers of underlayment",
        Measure::LeakBarrier => "strip along the eaves",
        Measure::AroundThrough => "strip around what comes through",
        Measure::Edge(kind) => kind.name(),
        Measure::SideWall => "wall line up the slope",
        Measure::SideWallCourse => "course up the wall lines, one more a line",
        Measure::HeadWall => "wall line across the slope",
        Measure::Through(kind) => kind.name(),
        Measure::Pipe { .. } => "pipe of this size",
        Measure::CurbCourse => "course beside chimneys and skylights, one more a side",
        Measure::CurbWidth => "lower or upper side of a chimney or skylight",
    }
}

fn nouns(measure: &Measure, count: f64) -> String {
    if (count - 1.0).abs() < 1e-9 {
        return noun(measure).to_owned();
    }
    match measure {
        Measure::BaseRail => "runs of base rail".to_owned(),
        Measure::Head => "runs of head flashing".to_owned(),
        Measure::HeadModule => "modules under the head".to_owned(),
        Measure::HeadSupport => "head ends and seams".to_owned(),
        Measure::SideCourse => "courses up the sides, one more a side".to_owned(),
        Measure::Under => "areas under the array".to_owned(),
        Measure::Around => "strips around the array".to_owned(),
        Measure::Sticks(_) => "sticks of this length in the cut list".to_owned(),
        Measure::Joints(_) => "joints between two pieces".to_owned(),
        Measure::Person => "people".to_owned(),
        Measure::Deck => "faces of deck".to_owned(),
        Measure::TearOff => "faces of old roofing, each layer counted".to_owned(),
        Measure::Shingled => "faces of deck less the array".to_owned(),
        Measure::SingleUnderlayment => "faces with one layer of underlayment".to_owned(),
        Measure::DoubleUnderlayment => "faces with two layers of underlayment".to_owned(),
        Measure::LeakBarrier => "strips along the eaves".to_owned(),
        Measure::AroundThrough => "strips around what comes through".to_owned(),
        Measure::SideWall => "wall lines up the slope".to_owned(),
        Measure::SideWallCourse => "courses up the wall lines, one more a line".to_owned(),
        Measure::HeadWall => "wall lines across the slope".to_owned(),
        Measure::Pipe { .. } => "pipes of this size".to_owned(),
        Measure::CurbCourse => "courses beside chimneys and skylights, one more a side".to_owned(),
        Measure::CurbWidth => "lower and upper sides of chimneys and skylights".to_owned(),
        // A part keeps its number as it is.
        Measure::Part(number) => number.clone(),
        _ => plural(noun(measure), count),
    }
}

/// "3 rolls"
fn many(word: &str, count: f64) -> String {
    format!("{} {}", number(count), plural(word, count))
}

/// How good a cut list is.
fn of_proof(cuts: &CutList, units: Units) -> String {
    let bought = Length::from_metres(cuts.bought).show(units);
    if cuts.proved {
        format!("{bought} bought, proved least")
    } else {
        let more = Length::from_metres(cuts.bought - cuts.least).show(units);
        format!("{bought} bought, at most {more} more than the least")
    }
}

pub(crate) fn of_state(line: &Line, units: Units) -> Option<String> {
    let because = |why: &str| if why.trim().is_empty() { String::new() } else { format!(": {why}") };
    let mut words = Vec::new();
    match &line.state {
        LineState::Counted => {}
        LineState::Overridden { why } => {
            let counted = many(&line.package, line.counted as f64);
            words.push(format!("OVERRIDDEN, counted {counted}{}", because(why)));
        }
        LineState::Added { why } => words.push(format!("ADDED by hand{}", because(why))),
        LineState::Off { why } => words.push(format!("OFF{}", because(why))),
    }
    if line.from_stock > 0.0 {
        words.push(format!("{} from stock in hand", show_amount(line.from_stock, line.unit, units)));
    }
    if let Some((number, name)) = &line.alternate {
        words.push(format!("alternate {number}, {name}"));
    }
    (!words.is_empty()).then(|| words.join("; "))
}

pub(crate) fn of_term(term: &LineTerm, units: Units) -> String {
    let runs = term.places.len() as f64;
    let measured = match term.of_unit {
        Unit::Each if matches!(term.of, Measure::Part(_)) => {
            format!("{} of {}", number(term.measured), noun(&term.of))
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
            format!("{measured} × {}", length.show_small(units))
        }
        Amount::Length(length) => format!("{measured}: {} each", length.show_small(units)),
        Amount::Pieces { length, lap } if *lap == Length::ZERO => {
            format!("{measured}: pieces of {} end to end", length.show(units))
        }
        Amount::Pieces { length, lap } => {
            format!("{measured}: pieces of {}, each lapping {}", length.show(units), lap.show_small(units))
        }
        Amount::Spaced(spacing) if term.of_unit == Unit::Area => {
            format!("{measured}: one every {} both ways", spacing.show_small(units))
        }
        Amount::Spaced(spacing) => {
            format!("{measured}: one every {} and one at each run's end", spacing.show_small(units))
        }
        Amount::Rate { take, of } => {
            let of = match of {
                Holds::Pieces(pieces) if *pieces == 1.0 => "each".to_owned(),
                of => format!("each {}", of.show(units)),
            };
            format!("{measured}: {} for {of}", take.show(units))
        }
        Amount::Width(width) => format!("{measured}: a strip {} wide", width.show_small(units)),
        Amount::Cut(sticks) => {
            let lap = if sticks.lap == Length::ZERO {
                String::new()
            } else {
                format!(", each lapping {}", sticks.lap.show_small(units))
            };
            let lengths: Vec<String> = std::iter::once(sticks.length)
                .chain(sticks.also.iter().map(|other| other.length))
                .map(|length| length.show(units))
                .collect();
            let proof = term.cuts.as_ref().map_or_else(String::new, |cuts| of_proof(cuts, units));
            format!("{measured}: cut from sticks of {}{lap}; {proof}", lengths.join(" and "))
        }
        Amount::Laid(roll) => {
            let (strips, rolls) = term.laid.as_ref().map_or((0, 0), |laid| (laid.strips.len(), laid.rolls));
            let double = if roll.starter { ", double" } else { "" };
            format!(
                "{measured}: laid in {strips} strips {} wide lapping {}{double}, {} at ends; {} begun",
                roll.width.show_small(units),
                roll.side_lap.show_small(units),
                roll.end_lap.show_small(units),
                many("roll", rolls as f64),
            )
        }
    }
}
