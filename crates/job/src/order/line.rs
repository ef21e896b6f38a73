use super::MOST_PACKAGES;
use crate::{Group, Stage};
use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A number of packages set by the user in place of the count.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Override {
    /// Packages to order.
    pub packages: u64,
    /// The reason; it is shown beside the line.
    #[serde(default)]
    pub why: String,
}

/// A line added to the order by the user.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AddedLine {
    /// Its number, different from those of all other lines.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Its group on the order.
    pub group: Group,
    /// The stage of work that needs it.
    pub stage: Stage,
    /// Name of the package.
    pub package: String,
    /// Number of packages.
    pub packages: u64,
    /// Price per package. Without one, the price list may have one under the number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(with = "Option<String>")]
    pub price: Option<Decimal>,
    /// The reason; it is shown beside the line.
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
