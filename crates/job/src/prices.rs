use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Prices of packages. Money is decimal, never a binary fraction.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PriceList {
    /// Its name.
    pub name: String,
    /// Its date, as the supplier writes it.
    pub date: String,
    /// The currency of its amounts, such as "USD".
    pub currency: String,
    /// Sales tax, percent of taxed amounts. `None` if the list does not give it; every output then says so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(with = "Option<String>")]
    pub tax_percent: Option<Decimal>,
    /// Delivery cost per order. `None` if the list does not give it; every output then says so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(with = "Option<String>")]
    pub delivery: Option<Decimal>,
    /// By part number. A part not listed has no price, which every output says; it is never taken as zero.
    pub prices: BTreeMap<String, Price>,
}

/// The price of one part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Price {
    /// Price per package, as ordered: a decimal in a string, `"184.50"`.
    #[schemars(with = "String")]
    pub package: Decimal,
    /// Whether it is exempt from sales tax, as labour in many places.
    #[serde(default, skip_serializing_if = "is_false")]
    pub untaxed: bool,
    /// Alternates for the part from this supplier, in packages of the same size.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub alternates: Vec<Alternate>,
}

/// An equivalent part of another manufacturer, in packages of the same size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Alternate {
    /// Its number.
    pub number: String,
    /// Its name.
    pub name: String,
    /// Price per package.
    #[schemars(with = "String")]
    pub package: Decimal,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_false(value: &bool) -> bool {
    !*value
}

impl Price {
    /// A taxed price without alternates.
    pub fn of(package: Decimal) -> Self {
        Self { package, untaxed: false, alternates: Vec::new() }
    }
}

/// Checks an amount of money. A total over all lines must fit into a decimal.
pub(crate) fn check_money(amount: Decimal) -> Result<(), Said> {
    // Far more than any package of roofing costs.
    let most = Decimal::from(1_000_000_000_u64);
    if amount < Decimal::ZERO {
        return Err(words::order::is_below_zero(&format_args!("{amount}")));
    }
    if amount > most {
        return Err(words::order::is_more_than(&format_args!("{amount}"), &format_args!("{most}")));
    }
    if amount.normalize().scale() > 4 {
        return Err(words::order::has_more_than_four_decimals(&format_args!("{amount}")));
    }
    Ok(())
}

impl PriceList {
    /// Checks a price list beyond the shape of its file: messages name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), Said> {
        for (number, price) in &self.prices {
            check_money(price.package).map_err(|wrong| wrong.after(format!("prices.{number}: ")))?;
            for other in &price.alternates {
                check_money(other.package).map_err(|wrong| {
                    wrong.after(format!("prices.{number}.alternates, {}: ", other.number))
                })?;
            }
        }
        if let Some(tax) = self.tax_percent {
            check_money(tax).map_err(|wrong| wrong.after("tax_percent: "))?;
            if tax > Decimal::ONE_HUNDRED {
                return Err(words::order::tax_percent_is_more_than(&format_args!("{tax}")));
            }
        }
        self.delivery.map_or(Ok(()), check_money).map_err(|wrong| wrong.after("delivery: "))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str) -> Result<(), Said> {
        let prices = BTreeMap::from([("FH-1".to_owned(), Price::of(text.parse::<Decimal>().unwrap()))]);
        PriceList {
            name: String::new(),
            date: String::new(),
            currency: "USD".into(),
            tax_percent: None,
            delivery: None,
            prices,
        }
        .check()
    }

    #[test]
    fn prices_that_no_supplier_writes_are_refused_by_name() {
        check("0").unwrap();
        check("184.50").unwrap();
        check("0.012500").unwrap();
        for wrong in ["-0.01", "1000000000.01", "0.00001"] {
            assert!(check(wrong).unwrap_err().now().starts_with("prices.FH-1: "), "{wrong}");
        }
    }
}
