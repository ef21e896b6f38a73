use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// What packages cost. Money is decimal: no binary fraction ever touches it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PriceList {
    /// Its name.
    pub name: String,
    /// The day that it holds for, as the supplier writes it.
    pub date: String,
    /// What amounts are in, such as "USD".
    pub currency: String,
    /// By part number. A part that is missing has no price, which every output says; it is never zero.
    pub prices: BTreeMap<String, Price>,
}

/// The price of one part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Price {
    /// For one package, as ordered: a decimal as a text, `"184.50"`.
    #[schemars(with = "String")]
    pub package: Decimal,
}

impl PriceList {
    /// What a price list must hold beyond the shape of its file: the words name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), String> {
        match self.prices.iter().find(|(_, price)| price.package < Decimal::ZERO) {
            Some((number, price)) => Err(format!("prices.{number}: {} is below zero", price.package)),
            None => Ok(()),
        }
    }
}
