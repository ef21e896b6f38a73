//! Decisions about the order of one job, beyond roof, kit and prices.

use crate::kit::is_share;
use crate::{FaceId, RoofKind, Term};
use chalkcourse_words::{Said, later as words};
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

/// Decisions about the order. The default orders everything that the kit counts, for the whole roof.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct OrderChoices {
    /// How much of the roof is torn off and covered.
    pub roof: RoofWork,
    /// The kind of roof that waste is computed for, if it depends on that. Files of earlier versions call this
    /// `waste_by`.
    #[serde(alias = "waste_by")]
    pub waste_as: WasteAs,
    /// By part number: the office's own waste share, replacing the kit's.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub waste: BTreeMap<String, OwnWaste>,
    /// Codes of the kit's options that are taken.
    #[serde(skip_serializing_if = "BTreeSet::is_empty")]
    pub taken: BTreeSet<String>,
    /// Part numbers that the office owns: needed but not bought.
    #[serde(skip_serializing_if = "BTreeSet::is_empty")]
    pub own: BTreeSet<String>,
    /// Part numbers that are not ordered, each with the reason.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub off: BTreeMap<String, String>,
    /// By part number: how many packages to order, replacing the count.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub overrides: BTreeMap<String, Override>,
    /// Lines that are not in the kit.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub added: Vec<AddedLine>,
    /// By part number: the alternate of the price list that is ordered instead.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub alternates: BTreeMap<String, String>,
    /// Overhead and profit on top of the payments to suppliers and crews.
    pub pricing: Pricing,
    /// Stock in the warehouse, which is used first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub stock: Vec<Leftover>,
    /// What was counted on delivery.
    #[serde(skip_serializing_if = "Delivery::is_empty")]
    pub delivery: Delivery,
}

/// How much of the roof is torn off and covered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct RoofWork {
    /// The faces.
    pub scope: RoofScope,
    /// Layers of old roofing to tear off.
    pub layers: u32,
}

impl Default for RoofWork {
    fn default() -> Self {
        Self { scope: RoofScope::Whole, layers: 1 }
    }
}

/// The faces that get a new roof covering.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RoofScope {
    /// All faces.
    #[default]
    Whole,
    /// Faces with modules.
    ArrayFaces,
    /// None: only the array's own parts are ordered.
    ArrayOnly,
    /// The given faces.
    Faces(BTreeSet<FaceId>),
}

/// The kind of roof that waste is computed for. Actual cutting losses of the faces are shown beside it but never used
/// for ordering: earlier files that asked for that are read as [`WasteAs::AsDrawn`].
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum WasteAs {
    /// Determined by its hips and valleys.
    #[default]
    #[serde(alias = "rule", alias = "geometry")]
    AsDrawn,
    /// As a gable roof.
    Gable,
    /// As a hip roof.
    Hip,
    /// As a cut-up roof.
    CutUp,
}

impl WasteAs {
    /// The kind chosen by the user.
    pub fn chosen(self) -> Option<RoofKind> {
        match self {
            Self::AsDrawn => None,
            Self::Gable => Some(RoofKind::Gable),
            Self::Hip => Some(RoofKind::Hip),
            Self::CutUp => Some(RoofKind::CutUp),
        }
    }
}

/// A waste share of the office.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OwnWaste {
    /// 0.05 is 5 %.
    pub share: f64,
    /// The reason; it is shown beside the line.
    #[serde(default)]
    pub why: String,
}

impl OrderChoices {
    /// Whether a term of a part counts on this order: always, or with an option that is taken.
    pub fn counts(&self, term: &Term) -> bool {
        term.when.as_ref().is_none_or(|code| self.taken.contains(code))
    }

    /// Checks choices beyond the shape of their file: messages name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), Said> {
        if self.roof.layers > 5 {
            return Err(words::order::roof_layers_must_be_0(&self.roof.layers));
        }
        for (number, own) in &self.waste {
            if !is_share(own.share) {
                return Err(words::order::waste_share_is_a_share(&number, &own.share));
            }
        }
        for (number, choice) in &self.overrides {
            choice.check().map_err(|wrong| wrong.after(format!("overrides.{number}: ")))?;
        }
        let mut seen = BTreeSet::new();
        for (index, line) in self.added.iter().enumerate() {
            line.check().map_err(|wrong| wrong.after(format!("added[{index}].")))?;
            if !seen.insert(line.number.as_str()) {
                return Err(words::order::added_number_is_taken_twice(
                    &index,
                    &format_args!("{:?}", line.number),
                ));
            }
        }
        for (index, leftover) in self.stock.iter().enumerate() {
            leftover.check().map_err(|wrong| wrong.after(format!("stock[{index}].")))?;
        }
        self.pricing.check().map_err(|wrong| wrong.after("pricing."))?;
        self.delivery.check().map_err(|wrong| wrong.after("delivery."))
    }
}

/// More packages than this are a typing error.
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
        assert!(wrong.now().contains(word), "{wrong:?} does not say {word:?}");
    }

    fn added(number: &str) -> AddedLine {
        AddedLine {
            number: number.into(),
            name: "Snow guard".into(),
            group: Group::Roofing,
            stage: Stage::Shingles,
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
        let all = OwnWaste { share: 1.5, why: String::new() };
        refused(|c| drop(c.waste.insert("FH-1".into(), all)), "waste.FH-1");
    }

    #[test]
    fn files_with_waste_by_geometry_are_read() {
        for old in ["rule", "geometry", "as-drawn"] {
            let text = format!("{{\"waste_by\": \"{old}\"}}");
            assert_eq!(serde_json::from_str::<OrderChoices>(&text).unwrap(), OrderChoices::default());
        }
        let hip: OrderChoices = serde_json::from_str("{\"waste_as\": \"hip\"}").unwrap();
        assert_eq!(hip.waste_as.chosen(), Some(RoofKind::Hip));
    }

    #[test]
    fn empty_choices_read_from_nothing_and_come_back() {
        let empty: OrderChoices = serde_json::from_str("{}").unwrap();
        assert_eq!(empty, OrderChoices::default());
        let text = serde_json::to_string(&empty).unwrap();
        assert_eq!(serde_json::from_str::<OrderChoices>(&text).unwrap(), empty);
    }
}
