use crate::{Authority, Facts};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{
    Accepted, BlockId, Cell, CircuitId, FaceId, FindingKey, Lapse, PenetrationId, Quantity, Required,
    Subject, Waiver,
};
use schemars::JsonSchema;
use serde::Serialize;

/// Severity of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Severity {
    /// Must not be built this way.
    Stop,
    /// To be reviewed before it is built.
    Caution,
    /// For information.
    Note,
}

/// One finding of a rule, as facts; crate `telling` puts it into words.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The rule, such as "setback".
    pub rule: &'static str,
    /// Its severity.
    pub severity: Severity,
    /// Stable from run to run for the same trouble between the same things.
    pub key: FindingKey,
    /// What was measured.
    pub measured: Quantity,
    /// What is required.
    pub required: Required,
    /// Where it is.
    pub place: Location,
    /// Where the requirement comes from.
    pub source: Authority,
    /// Other facts for its message.
    pub facts: Facts,
    /// The waiver, if a person accepted it as it is.
    pub waived: Option<Waiver>,
    /// A waiver that no longer covers it, and why.
    pub lapsed: Option<(Waiver, Lapse)>,
}

/// Where a finding is: the things it concerns, and points in plan to highlight.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct Location {
    /// The face.
    pub face: Option<FaceId>,
    /// The block.
    pub block: Option<BlockId>,
    /// Cells of the block.
    pub cells: Vec<Cell>,
    /// The penetration.
    pub penetration: Option<PenetrationId>,
    /// The circuit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub circuit: Option<CircuitId>,
    /// A point, a line or an outline in plan, metres: whatever is in the way.
    #[schemars(with = "Vec<[f64; 2]>")]
    pub shape: Vec<DVec2>,
}

impl Finding {
    /// A finding about a plain fact of geometry, with no particular place.
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

    /// A waiver that accepts the finding as it is now.
    pub fn waiver(&self, reason: String, by: String, date: String) -> Waiver {
        let accepted = Accepted { measured: self.measured, required: self.required.clone() };
        Waiver { key: self.key.clone(), accepted: Some(accepted), reason, by, date }
    }
}
