use crate::{PenetrationKind, Source};
use chalkcourse_geometry::{EdgeKind, Length};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

mod caution;
mod compare;
mod fire;
mod limits;
mod loads;
mod roofing;

pub use caution::Caution;
pub use compare::Difference;
pub use fire::{FireAccess, PathScheme, RidgeRoom};
pub use limits::{LimitRow, LimitValue};
pub use loads::{LoadStandard, Loads};
pub use roofing::{IceBarrier, Roofing};

/// A limit with its source.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Limit<T> {
    /// The limit.
    pub value: T,
    /// Its source.
    pub source: Source,
}

/// An office's rules. Codes are amended locally: every limit is data.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RuleBook {
    /// Its name.
    pub name: String,
    /// Its date, as the office writes it.
    pub date: String,
    /// The edition that it is based on, and its amendments.
    pub based_on: String,
    /// How far modules keep off each kind of edge, measured on the slope. A kind not listed has no setback: modules
    /// must only stay on the face.
    pub setbacks: BTreeMap<EdgeKind, Limit<Length>>,
    /// How far modules keep off each kind of penetration, measured on the slope.
    pub clearances: BTreeMap<PenetrationKind, Limit<Length>>,
    /// How far modules keep off above a penetration, straight up the slope from its upper end, if more than its
    /// clearance: water and snow collect there.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub clearances_above: BTreeMap<PenetrationKind, Limit<Length>>,
    /// How far they keep off below it, if more.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub clearances_below: BTreeMap<PenetrationKind, Limit<Length>>,
    /// Full courses of shingles required between the head flashing and the ridge.
    pub courses_to_ridge: Limit<u32>,
    /// The share of a module's lower edge that must hook into the row below, 0 to 1.
    pub hooked_share: Limit<f64>,
    /// Fire access; `None` if the book does not cover it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fire_access: Option<FireAccess>,
    /// Requirements on the roofing itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub roofing: Option<Roofing>,
    /// Wind and snow loads.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loads: Option<Loads>,
    /// The work-safety checklist.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub cautions: Vec<Caution>,
    /// Codes of rules that are switched off in this book.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub off: BTreeSet<String>,
}

impl RuleBook {
    /// The setback from a kind of edge; zero if the book has none.
    pub fn setback(&self, kind: EdgeKind) -> Length {
        self.setbacks.get(&kind).map_or(Length::ZERO, |limit| limit.value)
    }

    /// The clearance to a kind of penetration; zero if the book has none.
    pub fn clearance(&self, kind: PenetrationKind) -> Length {
        self.clearances.get(&kind).map_or(Length::ZERO, |limit| limit.value)
    }
}

impl RuleBook {
    /// Checks a rule book beyond the shape of its file: messages name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), Said> {
        let lengths =
            self.setbacks.iter().map(|(kind, limit)| (format!("setbacks.{}", kind.code()), limit.value));
        let clearances =
            self.clearances.iter().map(|(kind, limit)| (format!("clearances.{}", kind.code()), limit.value));
        let sides = [("above", &self.clearances_above), ("below", &self.clearances_below)];
        let by_side = sides.into_iter().flat_map(|(side, limits)| {
            limits
                .iter()
                .map(move |(kind, limit)| (format!("clearances_{side}.{}", kind.code()), limit.value))
        });
        for (field, length) in lengths.chain(clearances).chain(by_side) {
            if !(0.0..100.0).contains(&length.metres()) {
                return Err(words::rulebook::must_be_0_or_more(&field));
            }
        }
        if !(0.0..=1.0).contains(&self.hooked_share.value) {
            return Err(words::rulebook::HOOKED_SHARE_IS_A_SHARE.into());
        }
        self.fire_access.as_ref().map_or(Ok(()), FireAccess::check)?;
        self.roofing.as_ref().map_or(Ok(()), Roofing::check)?;
        self.loads.as_ref().map_or(Ok(()), Loads::check)
    }
}
