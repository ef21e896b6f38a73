//! The differences between two orders, and what they cost.

use crate::line::PackageName;
use crate::{Line, Takeoff, show_amount};
use chalkcourse_geometry::Units;
use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;

/// The differences of one order from another.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Comparison {
    /// Parts whose need, packages, price or cost differ, in the order of the first and then of the second.
    pub changes: Vec<Change>,
    /// Currency of the amounts.
    pub currency: String,
    /// Total of the first.
    #[schemars(with = "String")]
    pub before: Decimal,
    /// Total of the second.
    #[schemars(with = "String")]
    pub after: Decimal,
    /// Extra cost of the second.
    #[schemars(with = "String")]
    pub more: Decimal,
    /// Why the two totals can't be compared; `None` if they can.
    #[schemars(with = "Option<String>")]
    pub money_apart: Option<Said>,
}

/// One part in two orders. A part missing from an order counts as zero.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Change {
    /// Its number.
    pub number: String,
    /// What it is.
    #[schemars(with = "String")]
    pub name: Said,
    /// The need before and after, in the unit of the part: pieces, metres, square metres, hours, kilograms.
    pub need: [f64; 2],
    /// The need as text.
    pub need_words: [String; 2],
    /// Packages to order, before and after.
    pub packages: [u64; 2],
    /// What a package is called.
    #[schemars(with = "String")]
    pub package: PackageName,
    /// Extra cost; `None` if it has no price in one of the two.
    #[schemars(with = "Option<String>")]
    pub more: Option<Decimal>,
}

/// The differences of `other` from `one`. An order compared with itself gives none.
pub fn compare(one: &Takeoff, other: &Takeoff) -> Comparison {
    let index = |takeoff: &'_ Takeoff| -> BTreeMap<String, usize> {
        takeoff.lines.iter().enumerate().map(|(at, line)| (line.number.clone(), at)).collect()
    };
    let (ones, others) = (index(one), index(other));
    let units = other.units;
    let mut changes: Vec<Change> = Vec::new();
    for line in &one.lines {
        let after = others.get(&line.number).and_then(|&at| other.lines.get(at));
        changes.extend(change(Some(line), after, units));
    }
    for line in other.lines.iter().filter(|line| !ones.contains_key(&line.number)) {
        changes.extend(change(None, Some(line), units));
    }
    let (before, after) = (one.totals.total, other.totals.total);
    let money_apart = (one.currency != other.currency)
        .then(|| words::takeoff::one_order_is_in_the(&one.currency, &other.currency));
    Comparison {
        changes,
        currency: other.currency.clone(),
        before,
        after,
        more: after.saturating_sub(before),
        money_apart,
    }
}

fn change(before: Option<&Line>, after: Option<&Line>, units: Units) -> Option<Change> {
    let either = after.or(before)?;
    let need = [before, after].map(|line| line.map_or(0.0, |line| line.need));
    let packages = [before, after].map(|line| line.map_or(0, |line| line.packages));
    let cost = |line: Option<&Line>| line.map_or(Some(Decimal::ZERO), |line| line.cost);
    let (old, new) = (cost(before), cost(after));
    // Differences of float dust in sums of lengths are not changes.
    let same = (need[0] - need[1]).abs() <= 1e-6 && packages[0] == packages[1] && old == new;
    (!same).then(|| Change {
        number: either.number.clone(),
        name: either.name.clone(),
        need,
        need_words: need.map(|need| show_amount(need, either.unit, units)),
        packages,
        package: either.package.clone(),
        more: old.zip(new).map(|(old, new)| new.saturating_sub(old)),
    })
}

impl Comparison {
    /// Whether the two orders are the same.
    pub fn is_empty(&self) -> bool {
        self.changes.is_empty() && self.more.is_zero() && self.money_apart.is_none()
    }
}
