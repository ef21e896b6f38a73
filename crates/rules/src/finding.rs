use chalkcourse_geometry::DVec2;
use chalkcourse_job::{BlockId, Cell, Edit, FaceId, PenetrationId, Waiver};
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

/// One thing that a rule found.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Finding {
    /// The rule, such as "setback".
    pub code: &'static str,
    /// How much it weighs.
    pub severity: Severity,
    /// What was measured, what is required, and by how much to move which way, in the job's units.
    pub message: String,
    /// Where.
    pub place: Place,
    /// What was measured, in words with its unit.
    pub measured: String,
    /// What is required, in words with its unit.
    pub required: String,
    /// By whose word: a section, a listing, or "common practice, no source".
    pub source: String,
    /// The same from run to run for the same trouble between the same things.
    pub key: String,
    /// What would clear it, where that can be worked out.
    #[serde(skip)]
    pub fix: Option<Fix>,
    /// The waiver of a person who accepted it.
    pub waived: Option<Waiver>,
}

/// Where a finding is: what it touches, and points in plan to show.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct Place {
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

/// An edit that clears a finding.
#[derive(Clone, Debug, PartialEq)]
pub struct Fix {
    /// What it does, as on a button: "Move block A 3 1/4\" up the slope".
    pub label: String,
    /// The edit.
    pub edit: Edit,
}

impl Finding {
    /// A finding with nothing but its code, weight and key.
    pub(crate) fn of(code: &'static str, severity: Severity, key: String) -> Self {
        Self {
            code,
            severity,
            message: String::new(),
            place: Place::default(),
            measured: String::new(),
            required: String::new(),
            source: String::new(),
            key,
            fix: None,
            waived: None,
        }
    }
}
