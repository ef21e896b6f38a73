//! Cost of the outline of an array by the price list: flashing per metre and per corner, before rounding to packages.

use super::FillError;
use chalkcourse_geometry::Length;
use chalkcourse_geometry::fit::{StackCosts, Tile};
use chalkcourse_job::{Amount, Measure, Part, Resolved, RoofKind};

/// The cost of an outline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Outline {
    /// Sides and corners.
    pub(super) costs: StackCosts,
    /// Per block, whatever its outline.
    pub(super) block: f64,
}

/// A cost per unit of a measure, and one per run of it.
#[derive(Clone, Copy, Default)]
struct Rate {
    each: f64,
    run: f64,
}

/// The cost of the outline of an array of these tiles on a face with this exposure. The costs of modules, of what is
/// under them and of leads are the same for each module and not included; lengths along the eave are counted in whole
/// tiles with their reveals, left and right corners at their average, and offcuts not at all.
///
/// # Errors
/// If a part of the outline is not in the price list.
pub(super) fn outline(job: &Resolved, tile: &Tile, exposure: f64) -> Result<Outline, FillError> {
    let of = |measure: Measure| rate(job, &measure);
    let mean = |one: Rate, two: Rate| (one.each + two.each) / 2.0;
    let (along, up) = tile.pitch().into();
    let (base, side, head) = (of(Measure::BaseRail)?, of(Measure::Side)?, of(Measure::Head)?);
    let course = of(Measure::SideCourse)?.each;
    let support = of(Measure::HeadSupport)?.each;
    let membrane = of(Measure::Around)?.each + of(Measure::ArrayMembrane)?.each;
    let margin = job.kit.flashing.membrane.metres();
    let (strip, square) = (membrane * margin, membrane * margin * margin);
    let courses = if exposure > 0.0 { up / exposure } else { 0.0 };
    // A run has two ends, and each head corner one side run.
    let foot_corner =
        mean(of(Measure::BaseCornerLeft)?, of(Measure::BaseCornerRight)?) + base.run / 2.0 + square;
    let head_end = (head.run + support) / 2.0;
    let head_corner = mean(of(Measure::HeadCornerLeft)?, of(Measure::HeadCornerRight)?)
        + head_end
        + side.run
        + course
        + square;
    let inside_corner = (of(Measure::InsideCorner)?.each + head_end - square).max(0.0);
    let costs = StackCosts {
        foot: (base.each + strip) * along,
        head: (head.each + strip) * along + of(Measure::HeadModule)?.each + support,
        side: (side.each + strip) * up + course * courses,
        foot_corner,
        head_corner,
        inside_corner,
    };
    Ok(Outline { costs, block: of(Measure::Block)?.each })
}

/// The cost of all parts that are counted by a measure, including parts counted by those.
fn rate(job: &Resolved, measure: &Measure) -> Result<Rate, FillError> {
    let mut sum = Rate::default();
    for part in &job.kit.parts {
        for term in part.needs.iter().filter(|term| term.of == *measure && job.order.counts(term)) {
            let price = price(job, part)?;
            let area = matches!(measure, Measure::Around | Measure::ArrayMembrane | Measure::Under);
            let run = matches!(measure, Measure::BaseRail | Measure::Side | Measure::Head);
            let per = |length: Length| price / length.metres().max(1e-3);
            match &term.each {
                Amount::Length(length) if run => sum.run += length.metres() * price,
                Amount::Count(_) | Amount::Rate { .. } | Amount::Length(_) | Amount::Width(_) => {
                    sum.each += share(&term.each) * price;
                }
                Amount::Pieces { length, lap } => sum.each += per(*length - *lap),
                Amount::Cut(sticks) => sum.each += per(sticks.length - sticks.lap),
                Amount::Laid(roll) => {
                    let widths = roll.width.metres() / (roll.width - roll.side_lap).metres().max(1e-3);
                    sum.each += price * widths;
                }
                Amount::Spaced(length) if area => sum.each += price / length.metres().max(1e-3).powi(2),
                Amount::Spaced(length) => {
                    sum.each += per(*length);
                    sum.run += price;
                }
            }
        }
    }
    Ok(sum)
}

/// The amount of a part per unit of its measure; 0 if that depends on runs.
fn share(amount: &Amount) -> f64 {
    match amount {
        Amount::Count(count) => *count,
        Amount::Rate { take, of } => take.amount() / of.amount().max(1e-9),
        Amount::Length(length) | Amount::Width(length) => length.metres(),
        Amount::Pieces { .. } | Amount::Spaced(_) | Amount::Cut(_) | Amount::Laid(_) => 0.0,
    }
}

/// The cost of a piece, a metre or a square metre of a part, including its waste and the parts that it needs.
fn price(job: &Resolved, part: &Part) -> Result<f64, FillError> {
    let listed = job.prices.prices.get(&part.number);
    let package = listed.and_then(|price| f64::try_from(price.package).ok());
    let package = package.ok_or_else(|| FillError::NoPrice(format!("{} ({})", part.name, part.number)))?;
    // Parts around an array have the same waste on every roof; others are computed as on a gable.
    let kind = job.order.waste_as.chosen().unwrap_or(RoofKind::Gable);
    let mut price = package / part.package.holds.amount() * (1.0 + part.waste.share(kind));
    // Parts only count parts above them, so this recursion ends.
    let at = job.kit.parts.iter().position(|other| other.number == part.number).unwrap_or(usize::MAX);
    for other in job.kit.parts.iter().skip(at.saturating_add(1)) {
        for term in &other.needs {
            let of_this = matches!(&term.of, Measure::Part(number) if *number == part.number);
            if of_this && job.order.counts(term) {
                price += share(&term.each) * self::price(job, other)?;
            }
        }
    }
    Ok(price)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{DVec2, dvec2};
    use chalkcourse_job::{builtin_kit, builtin_prices, builtin_rule_book};
    use rust_decimal::Decimal;
    use std::sync::Arc;

    fn job() -> Resolved {
        Resolved::new("prices".into(), builtin_kit(), builtin_rule_book(), builtin_prices())
    }

    const TILE: Tile = Tile { size: dvec2(1.722, 1.134), gap: DVec2::splat(0.003) };

    #[test]
    fn a_rail_sold_by_the_stick_is_costed_by_the_metre() {
        let mut job = job();
        let mut kit = (*job.kit).clone();
        kit.parts.retain(|part| part.number == "FH-110");
        job.kit = Arc::new(kit);
        let stick = f64::try_from(job.prices.prices["FH-110"].package).unwrap();
        let outline = outline(&job, &TILE, 0.127).unwrap();
        // An 8 ft stick, 2.4384 m, laid end to end.
        assert!((outline.costs.foot - stick / 2.4384 * 1.725).abs() < 1e-9);
        assert_eq!(StackCosts { foot: 0.0, ..outline.costs }, StackCosts::default());
    }

    #[test]
    fn a_part_without_a_price_is_named() {
        let mut job = job();
        let mut prices = (*job.prices).clone();
        prices.prices.remove("FH-110");
        job.prices = Arc::new(prices);
        let error = outline(&job, &TILE, 0.127).unwrap_err().to_string();
        assert!(error.contains("FH-110"), "{error}");
    }

    #[test]
    fn the_outline_cost_follows_the_flashing_price() {
        let plain = outline(&job(), &TILE, 0.127).unwrap();
        assert!(plain.costs.foot > 0.0 && plain.costs.head > 0.0 && plain.costs.side > 0.0);
        let mut job = job();
        let mut prices = (*job.prices).clone();
        for price in prices.prices.values_mut() {
            price.package *= Decimal::TWO;
        }
        job.prices = Arc::new(prices);
        let double = outline(&job, &TILE, 0.127).unwrap();
        assert!((double.costs.head_corner - 2.0 * plain.costs.head_corner).abs() < 1e-9);
        assert!((double.costs.side - 2.0 * plain.costs.side).abs() < 1e-9);
    }
}
