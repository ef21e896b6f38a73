//! The price of a job, step by step, and how amounts are rounded.

use rust_decimal::{Decimal, RoundingStrategy};
use schemars::JsonSchema;
use serde::Serialize;

/// From line costs to the price of the job. Every amount is rounded to the cent where it arises, and each sum adds the rounded
/// amounts above it, so that the column adds up as printed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Totals {
    /// Goods: all lines except labour.
    #[schemars(with = "String")]
    pub goods: Decimal,
    /// Labour.
    #[schemars(with = "String")]
    pub labour: Decimal,
    /// Sales tax on taxable lines; `None` if the price list gives none.
    #[schemars(with = "Option<String>")]
    pub tax: Option<Decimal>,
    /// Delivery; `None` if the price list gives none.
    #[schemars(with = "Option<String>")]
    pub delivery: Option<Decimal>,
    /// Cost of the job: the sum of the above.
    #[schemars(with = "String")]
    pub cost: Decimal,
    /// Overhead on the cost.
    #[schemars(with = "String")]
    pub overhead: Decimal,
    /// Profit on cost and overhead.
    #[schemars(with = "String")]
    pub profit: Decimal,
    /// Price of the job.
    #[schemars(with = "String")]
    pub total: Decimal,
}

/// Rounds to the cent, half a cent up, as on invoices. Always shows both decimals.
pub(crate) fn cents(amount: Decimal) -> Decimal {
    let mut amount = amount.round_dp_with_strategy(2, RoundingStrategy::MidpointAwayFromZero);
    amount.rescale(2);
    amount
}

/// Cost of packages at a price, to the cent. `None` without a price, or on overflow.
pub(crate) fn cost(price: Option<Decimal>, packages: u64) -> Option<Decimal> {
    price.and_then(|price| price.checked_mul(Decimal::from(packages))).map(cents)
}

/// `percent` of an amount, to the cent.
pub(crate) fn share(amount: Decimal, percent: Decimal) -> Decimal {
    let percent = percent / Decimal::ONE_HUNDRED;
    cents(amount.checked_mul(percent).unwrap_or(Decimal::MAX))
}

/// A sum that saturates on overflow, which stands out more than a zero would.
pub(crate) fn sum(amounts: impl IntoIterator<Item = Decimal>) -> Decimal {
    amounts.into_iter().fold(Decimal::ZERO, Decimal::saturating_add)
}
