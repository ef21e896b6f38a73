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
        // Far above any package of roofing; a total of all lines must stay within what a decimal can hold.
        let most = Decimal::from(1_000_000_000_u64);
        for (number, price) in &self.prices {
            let price = price.package;
            if price < Decimal::ZERO {
                return Err(format!("prices.{number}: {price} is below zero"));
            }
            if price > most {
                return Err(format!("prices.{number}: {price} is more than {most}"));
            }
            if price.normalize().scale() > 4 {
                return Err(format!("prices.{number}: {price} has more than four decimals"));
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rust_decimal::Decimal;

    fn check(text: &str) -> Result<(), String> {
        let price = Price { package: text.parse::<Decimal>().unwrap() };
        let prices = BTreeMap::from([("FH-1".to_owned(), price)]);
        PriceList { name: String::new(), date: String::new(), currency: "USD".into(), prices }.check()
    }

    #[test]
    fn prices_that_no_supplier_writes_are_refused_by_name() {
        check("0").unwrap();
        check("184.50").unwrap();
        check("0.012500").unwrap();
        for wrong in ["-0.01", "1000000000.01", "0.00001"] {
            assert!(check(wrong).unwrap_err().starts_with("prices.FH-1: "), "{wrong}");
        }
    }
}
