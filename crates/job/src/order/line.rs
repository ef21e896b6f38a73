use super::MOST_PACKAGES;
use crate::{Group, Stage};
use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A number of packages that a person put in place of the count.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Override {
    /// Packages to order.
    pub packages: u64,
    /// Why; it shows beside the line.
    #[serde(default)]
    pub why: String,
}

/// A line that a person put on the order.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AddedLine {
    /// Its number, which no other line has.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Where it stands on the order.
    pub group: Group,
    /// For which stage of work it is needed.
    pub stage: Stage,
    /// What a package is called.
    pub package: String,
    /// How many.
    pub packages: u64,
    /// For one package. Where there is none, the price list may have one under the number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(with = "Option<String>")]
    pub price: Option<Decimal>,
    /// Why; it shows beside the line.
    #[serde(default)]
    pub why: String,
}

impl Override {
    pub(super) fn check(&self) -> Result<(), Said> {
        within(self.packages)
    }
}

impl AddedLine {
    pub(super) fn check(&self) -> Result<(), Said> {
        if self.number.trim().is_empty() {
            return Err(words::order::NUMBER_A_LINE_NEEDS_A.into());
        }
        if let Some(price) = self.price {
            crate::prices::check_money(price).map_err(|wrong| wrong.after("price: "))?;
        }
        within(self.packages)
    }
}

fn within(packages: u64) -> Result<(), Said> {
    if packages > MOST_PACKAGES {
        return Err(words::order::packages_must_be_at_most(&MOST_PACKAGES, &packages));
    }
    Ok(())
}
