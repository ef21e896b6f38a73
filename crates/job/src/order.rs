//! What a person decides about the order of one job, beyond roof, kit and prices.

use crate::FaceId;
use chalkcourse_words::tell;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

mod line;
mod money;
mod received;
mod stock;

pub use line::{AddedLine, Override};
pub use money::{Pricing, Profit};
pub use received::{Delivery, Received, counts_from_csv};
pub use stock::{Leftover, stock_from_csv};

/// Decisions about the order. An empty one orders all that the kit counts, for the whole roof.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct OrderChoices {
    /// How much of the roof is stripped and covered anew.
    pub roof: RoofWork,
    /// Which waste the order follows where a part has both.
    pub waste_by: WasteBy,
    /// Numbers of parts that are not ordered, each with the reason.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub off: BTreeMap<String, String>,
    /// By part number: how many packages to order, whatever was counted.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub overrides: BTreeMap<String, Override>,
    /// Lines that the kit does not have.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub added: Vec<AddedLine>,
    /// By part number: the alternate of the price list that is taken in its place.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub alternates: BTreeMap<String, String>,
    /// Overhead and profit on top of what suppliers and crews are paid.
    pub pricing: Pricing,
    /// What lies in the warehouse and is used first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub stock: Vec<Leftover>,
    /// What was counted on arrival.
    #[serde(skip_serializing_if = "Delivery::is_empty")]
    pub delivery: Delivery,
}

/// How much of the roof is stripped and covered anew.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct RoofWork {
    /// Which faces.
    pub scope: RoofScope,
    /// Layers of old roofing that come off.
    pub layers: u32,
}

impl Default for RoofWork {
    fn default() -> Self {
        Self { scope: RoofScope::Whole, layers: 1 }
    }
}

/// Which faces are covered anew.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RoofScope {
    /// All of them.
    #[default]
    Whole,
    /// Those with modules on them.
    ArrayFaces,
    /// None: the array's own parts alone are ordered.
    ArrayOnly,
    /// These.
    Faces(BTreeSet<FaceId>),
}

/// Which waste an order follows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum WasteBy {
    /// The share that the kit gives, as handbooks do.
    #[default]
    Rule,
    /// What is cut off on the faces as drawn, where that can be worked out.
    Geometry,
}

impl OrderChoices {
    /// What choices must hold beyond the shape of their file: the words name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), String> {
        if self.roof.layers > 5 {
            return Err(tell!(
                "roof.layers must be 0 to 5, not {}",
                "roof.layers debe ser de 0 a 5, no {}",
                self.roof.layers
            ));
        }
        for (number, choice) in &self.overrides {
            choice.check().map_err(|wrong| format!("overrides.{number}: {wrong}"))?;
        }
        let mut seen = BTreeSet::new();
        for (index, line) in self.added.iter().enumerate() {
            line.check().map_err(|wrong| format!("added[{index}].{wrong}"))?;
            if !seen.insert(line.number.as_str()) {
                return Err(tell!(
                    "added[{index}].number: {:?} is taken twice",
                    "added[{index}].number: {:?} está dos veces",
                    line.number
                ));
            }
        }
        for (index, leftover) in self.stock.iter().enumerate() {
            leftover.check().map_err(|wrong| format!("stock[{index}].{wrong}"))?;
        }
        self.pricing.check().map_err(|wrong| format!("pricing.{wrong}"))?;
        self.delivery.check().map_err(|wrong| format!("delivery.{wrong}"))
    }
}

/// Packages beyond any truck: a slip of the finger.
pub(crate) const MOST_PACKAGES: u64 = 1_000_000;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Group, Stage};
    use rust_decimal::Decimal;

    fn refused(change: impl FnOnce(&mut OrderChoices), word: &str) {
        let mut choices = OrderChoices::default();
        change(&mut choices);
        let wrong = choices.check().unwrap_err();
        assert!(wrong.contains(word), "{wrong:?} does not say {word:?}");
    }

    fn added(number: &str) -> AddedLine {
        AddedLine {
            number: number.into(),
            name: "Snow guard".into(),
            group: Group::Roofing,
            stage: Stage::Roofing,
            package: "piece".into(),
            packages: 3,
            price: None,
            why: String::new(),
        }
    }

    #[test]
    fn nonsense_is_refused_by_name() {
        OrderChoices::default().check().unwrap();
        refused(|c| c.roof.layers = 9, "roof.layers");
        refused(|c| c.added = vec![added(" ")], "added[0].number");
        refused(|c| c.added = vec![added("X"), added("X")], "added[1].number");
        refused(|c| c.pricing.overhead_percent = Decimal::from(-1), "pricing.overhead_percent");
        refused(|c| c.pricing.profit = Profit::Margin { percent: Decimal::from(100) }, "pricing.profit");
        let far = Override { packages: MOST_PACKAGES + 1, why: String::new() };
        refused(|c| drop(c.overrides.insert("FH-1".into(), far)), "overrides.FH-1");
    }

    #[test]
    fn empty_choices_read_from_nothing_and_come_back() {
        let empty: OrderChoices = serde_json::from_str("{}").unwrap();
        assert_eq!(empty, OrderChoices::default());
        let text = serde_json::to_string(&empty).unwrap();
        assert_eq!(serde_json::from_str::<OrderChoices>(&text).unwrap(), empty);
    }
}
