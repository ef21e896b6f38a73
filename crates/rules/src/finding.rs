use crate::{Authority, Facts};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{
    Accepted, BlockId, Cell, FaceId, FindingKey, Lapse, PenetrationId, Quantity, Required, Subject, Waiver,
};
use schemars::JsonSchema;
use serde::Serialize;

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Severity {
    /// May not be built so.
    Stop,
    /// Look again before it is built.
    Caution,
    /// Good to know.
    Note,
}

/// One thing that a rule found, as facts: whoever shows it puts it into words.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The rule, such as "setback".
    pub rule: &'static str,
    /// How much it weighs.
    pub severity: Severity,
    /// The same from run to run for the same trouble between the same things.
    pub key: FindingKey,
    /// What was measured.
    pub measured: Quantity,
    /// What is asked.
    pub required: Required,
    /// Where.
    pub place: Location,
    /// By whose word it is asked.
    pub source: Authority,
    /// What else a sentence about it needs.
    pub facts: Facts,
    /// The waiver of a person who accepted it as it is.
    pub waived: Option<Waiver>,
    /// A waiver that was given for it and no longer covers it, and why.
    pub lapsed: Option<(Waiver, Lapse)>,
}

/// Where a finding is: what it touches, and points in plan to show.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct Location {
    /// The face.
    pub face: Option<FaceId>,
    /// The block.
    pub block: Option<BlockId>,
    /// Places in the block.
    pub cells: Vec<Cell>,
    /// The penetration.
    pub penetration: Option<PenetrationId>,
    /// A point, a line or an outline in plan, metres: the thing that is in the way.
    #[schemars(with = "Vec<[f64; 2]>")]
    pub shape: Vec<DVec2>,
}

impl Finding {
    /// A finding of something that is so or is not, by geometry, nowhere in particular.
    pub(crate) fn of(rule: &'static str, severity: Severity, subject: Subject, facts: Facts) -> Self {
        Self {
            rule,
            severity,
            key: FindingKey::new(rule, subject),
            measured: Quantity::Nothing,
            required: Required::So,
            place: Location::default(),
            source: Authority::Geometry,
            facts,
            waived: None,
            lapsed: None,
        }
    }

    /// A waiver for the finding as it is now.
    pub fn waiver(&self, reason: String, by: String, date: String) -> Waiver {
        let accepted = Accepted { measured: self.measured, required: self.required.clone() };
        Waiver { key: self.key.clone(), accepted: Some(accepted), reason, by, date }
    }
}
