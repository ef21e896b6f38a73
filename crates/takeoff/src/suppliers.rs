//! One order at the prices of several suppliers.

use crate::Takeoff;
use crate::totals::{cents, sum};
use chalkcourse_job::PriceList;
use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::Serialize;

/// One order at the prices of several suppliers.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PriceComparison {
    /// The total of each supplier, in the order given.
    pub offers: Vec<Offer>,
    /// Line by line.
    pub rows: Vec<PriceRow>,
    /// Sum of each line at its cheapest; lines that nobody has are left out; excludes tax and delivery.
    #[schemars(with = "String")]
    pub cheapest: Decimal,
    /// Lines that no supplier has a price for.
    pub nobody_has: Vec<String>,
    /// Why the amounts can't be compared; `None` if they can.
    #[schemars(with = "Option<String>")]
    pub money_apart: Option<Said>,
}

/// One supplier's offer.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Offer {
    /// Name of the price list.
    pub list: String,
    /// Its date.
    pub date: String,
    /// Currency of its amounts.
    pub currency: String,
    /// Sum of the lines it has a price for.
    #[schemars(with = "String")]
    pub lines: Decimal,
    /// Of that, the lines that every supplier has, for a fair comparison.
    #[schemars(with = "String")]
    pub in_common: Decimal,
    /// Sales tax; `None` if the list gives none.
    #[schemars(with = "Option<String>")]
    pub tax: Option<Decimal>,
    /// Delivery; `None` if the list gives none.
    #[schemars(with = "Option<String>")]
    pub delivery: Option<Decimal>,
    /// Lines, tax and delivery as far as known.
    #[schemars(with = "String")]
    pub total: Decimal,
    /// Lines it has no price for; the total excludes them.
    pub missing: Vec<String>,
}

/// One line at each supplier's price.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PriceRow {
    /// The part.
    pub number: String,
    /// What it is.
    #[schemars(with = "String")]
    pub name: Said,
    /// Packages.
    pub packages: u64,
    /// The cost at each supplier; `None` if it has no price.
    #[schemars(with = "Vec<Option<String>>")]
    pub costs: Vec<Option<Decimal>>,
    /// Index of the cheapest; `None` if nobody has a price.
    pub cheapest: Option<usize>,
}

/// The cost of an order at the prices of several suppliers. Lines with a price of their own are left out.
pub fn compare_prices(takeoff: &Takeoff, lists: &[&PriceList]) -> PriceComparison {
    let rows: Vec<PriceRow> = takeoff
        .lines
        .iter()
        .filter(|line| line.packages > 0)
        .map(|line| {
            let cost = |list: &&PriceList| {
                let price = list.prices.get(&line.number)?.package;
                price.checked_mul(Decimal::from(line.packages)).map(cents)
            };
            let costs: Vec<Option<Decimal>> = lists.iter().map(cost).collect();
            let priced = costs.iter().enumerate().filter_map(|(at, cost)| Some((at, (*cost)?)));
            PriceRow {
                number: line.number.clone(),
                name: line.name.clone(),
                packages: line.packages,
                cheapest: priced.min_by_key(|(_, cost)| *cost).map(|(at, _)| at),
                costs,
            }
        })
        .collect();
    let of = |row: &PriceRow, at: usize| row.costs.get(at).copied().flatten();
    let offers = lists
        .iter()
        .enumerate()
        .map(|(at, list)| {
            let lines = sum(rows.iter().filter_map(|row| of(row, at)));
            let all_have = |row: &&PriceRow| row.costs.iter().all(Option::is_some);
            let taxed =
                rows.iter().filter(|row| list.prices.get(&row.number).is_some_and(|price| !price.untaxed));
            let taxed = sum(taxed.filter_map(|row| of(row, at)));
            let tax = list.tax_percent.map(|percent| {
                cents(taxed.checked_mul(percent / Decimal::ONE_HUNDRED).unwrap_or(Decimal::MAX))
            });
            let delivery = list.delivery.map(cents);
            Offer {
                list: list.name.clone(),
                date: list.date.clone(),
                currency: list.currency.clone(),
                lines,
                in_common: sum(rows.iter().filter(all_have).filter_map(|row| of(row, at))),
                tax,
                delivery,
                total: sum([lines, tax.unwrap_or_default(), delivery.unwrap_or_default()]),
                missing: rows
                    .iter()
                    .filter(|row| of(row, at).is_none())
                    .map(|row| row.number.clone())
                    .collect(),
            }
        })
        .collect();
    let currencies: Vec<&str> = lists.iter().map(|list| list.currency.as_str()).collect();
    let apart = currencies.iter().any(|currency| currencies.first() != Some(currency));
    PriceComparison {
        offers,
        cheapest: sum(rows.iter().filter_map(|row| of(row, row.cheapest?))),
        nobody_has: rows.iter().filter(|row| row.cheapest.is_none()).map(|row| row.number.clone()).collect(),
        rows,
        money_apart: apart.then(|| {
            let each = currencies.iter().map(|currency| Said::own(*currency));
            words::takeoff::the_lists_are_in(&Said::listed(each, words::common::AND))
        }),
    }
}
