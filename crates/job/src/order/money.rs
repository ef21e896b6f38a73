use chalkcourse_words::{Said, later as words};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The office's surcharges on its costs.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Pricing {
    /// Overhead, percent of the cost.
    #[schemars(with = "String")]
    pub overhead_percent: Decimal,
    /// Profit on cost and overhead.
    pub profit: Profit,
}

/// How profit is computed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Profit {
    /// None: the price is the cost.
    #[default]
    None,
    /// A percentage of the cost: 100.00 with 25 % is 125.00.
    Markup {
        /// Percent of cost and overhead.
        #[schemars(with = "String")]
        percent: Decimal,
    },
    /// A percentage of the selling price: 100.00 with 20 % is 125.00.
    Margin {
        /// Percent of the selling price, below 100.
        #[schemars(with = "String")]
        percent: Decimal,
    },
}

impl Pricing {
    pub(super) fn check(&self) -> Result<(), Said> {
        percent("overhead_percent", self.overhead_percent, 1000)?;
        match self.profit {
            Profit::None => Ok(()),
            Profit::Markup { percent: share } => percent("profit.markup.percent", share, 1000),
            // At 100 % there would be no finite price.
            Profit::Margin { percent: share } => percent("profit.margin.percent", share, 95),
        }
    }
}

fn percent(field: &str, share: Decimal, most: i64) -> Result<(), Said> {
    if (Decimal::ZERO..=Decimal::from(most)).contains(&share) && share.normalize().scale() <= 4 {
        Ok(())
    } else {
        Err(words::order::must_be_0_to_with(&field, &most, &format_args!("{share}")))
    }
}
