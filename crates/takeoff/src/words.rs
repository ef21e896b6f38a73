use crate::{Line, LineTerm};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Amount, Holds, Measure, Unit};

/// A quantity as a person reads it: `58`, `22' 7 9/16"`, `253.04 sq ft`.
pub fn show_amount(amount: f64, unit: Unit, units: Units) -> String {
    match unit {
        Unit::Each => number(amount),
        Unit::Length => Length::from_metres(amount).show(units),
        Unit::Area => Holds::Area(amount).show(units),
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
        // A part keeps its number as it is.
        Measure::Part(number) => number.clone(),
        _ => plural(noun(measure), count),
    }
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
    match term.each {
        Amount::Count(1.0) => measured,
        Amount::Count(count) => format!("{measured} × {}", number(count)),
        Amount::Length(length) if term.of_unit == Unit::Each => {
            format!("{measured} × {}", length.show_small(units))
        }
        Amount::Length(length) => format!("{measured}: {} each", length.show_small(units)),
        Amount::Pieces { length, lap } if lap == Length::ZERO => {
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
    }
}
