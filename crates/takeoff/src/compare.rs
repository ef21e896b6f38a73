//! Two orders beside each other: what is more, what is less, what it costs.

use crate::line::PackageName;
use crate::{Line, Takeoff, show_amount};
use chalkcourse_geometry::Units;
use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;

/// What another order has more or less.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Comparison {
    /// Parts of which need, packages, price or cost differ, in the order of the one and then of the other.
    pub changes: Vec<Change>,
    /// What amounts of money are in.
    pub currency: String,
    /// Total of the one.
    #[schemars(with = "String")]
    pub before: Decimal,
    /// Total of the other.
    #[schemars(with = "String")]
    pub after: Decimal,
    /// What the other costs more.
    #[schemars(with = "String")]
    pub more: Decimal,
    /// Why the two amounts can't be compared; `None` where they can.
    #[schemars(with = "Option<String>")]
    pub money_apart: Option<Said>,
}

/// One part in two orders. What an order does not have is none of it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Change {
    /// Its number.
    pub number: String,
    /// What it is.
    #[schemars(with = "String")]
    pub name: Said,
    /// What is needed, before and after, in what the part is counted in: pieces, metres, square metres, hours, kilograms.
    pub need: [f64; 2],
    /// The need in words.
    pub need_words: [String; 2],
    /// Packages to order, before and after.
    pub packages: [u64; 2],
    /// What a package is called.
    #[schemars(with = "String")]
    pub package: PackageName,
    /// What it costs more; none where one of the two has no price.
    #[schemars(with = "Option<String>")]
    pub more: Option<Decimal>,
}

/// What the other order has more or less than the one. An order beside itself gives nothing.
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
    // What sums of lengths differ in by float dust is no change.
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
    /// Whether the two orders are alike.
    pub fn is_empty(&self) -> bool {
        self.changes.is_empty() && self.more.is_zero() && self.money_apart.is_none()
    }
}
