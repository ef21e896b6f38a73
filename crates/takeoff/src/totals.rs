//! What a job is sold for, step by step, and how amounts are rounded.

use rust_decimal::{Decimal, RoundingStrategy};
use schemars::JsonSchema;
use serde::Serialize;

/// From the lines to what the job is sold for. Every amount is rounded to the cent where it comes about, and each one
/// below is the sum of those above it, so that a column adds up as it is printed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Totals {
    /// Goods: all lines but work.
    #[schemars(with = "String")]
    pub goods: Decimal,
    /// Work.
    #[schemars(with = "String")]
    pub labour: Decimal,
    /// Sales tax on what is taxed; none where the price list does not say.
    #[schemars(with = "Option<String>")]
    pub tax: Option<Decimal>,
    /// Delivery; none where the price list does not say.
    #[schemars(with = "Option<String>")]
    pub delivery: Option<Decimal>,
    /// What the job costs: the sum of those above.
    #[schemars(with = "String")]
    pub cost: Decimal,
    /// Overhead on the cost.
    #[schemars(with = "String")]
    pub overhead: Decimal,
    /// Profit on cost and overhead.
    #[schemars(with = "String")]
    pub profit: Decimal,
    /// What the job is sold for.
    #[schemars(with = "String")]
    pub total: Decimal,
}

/// An amount to the cent, half a cent up: as invoices round. It shows both of its decimals.
pub(crate) fn cents(amount: Decimal) -> Decimal {
    let mut amount = amount.round_dp_with_strategy(2, RoundingStrategy::MidpointAwayFromZero);
    amount.rescale(2);
    amount
}

/// Packages at a price, to the cent. `None` without a price, or beyond what a decimal holds.
pub(crate) fn cost(price: Option<Decimal>, packages: u64) -> Option<Decimal> {
    price.and_then(|price| price.checked_mul(Decimal::from(packages))).map(cents)
}

/// `percent` of an amount, to the cent.
pub(crate) fn share(amount: Decimal, percent: Decimal) -> Decimal {
    let percent = percent / Decimal::ONE_HUNDRED;
    cents(amount.checked_mul(percent).unwrap_or(Decimal::MAX))
}

/// A sum that tells an overflow by its size, louder than a zero would.
pub(crate) fn sum(amounts: impl IntoIterator<Item = Decimal>) -> Decimal {
    amounts.into_iter().fold(Decimal::ZERO, Decimal::saturating_add)
}
