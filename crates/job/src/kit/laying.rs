use chalkcourse_geometry::Length;
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How a kit allows rows to be laid relative to each other and to the courses of the roof.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Laying {
    /// Allowed joints of a row relative to the row below.
    #[serde(default = "all_joints")]
    pub joints: Vec<RowJoints>,
    /// Where the base rail may be.
    #[serde(default)]
    pub base_rail: BaseRail,
}

impl Default for Laying {
    fn default() -> Self {
        Self { joints: all_joints(), base_rail: BaseRail::default() }
    }
}

impl Laying {
    /// Shifts of a row against the one below that the kit allows, within one module, metres; `None` if any is allowed.
    ///
    /// `spacing` is the distance from a module to the next in its row, metres.
    pub fn shifts(&self, spacing: f64) -> Option<Vec<f64>> {
        let mut shifts = Vec::new();
        for joints in &self.joints {
            match joints {
                RowJoints::Free => return None,
                RowJoints::Aligned => shifts.extend([0.0, spacing]),
                RowJoints::HalfLapped => shifts.push(spacing / 2.0),
            }
        }
        Some(shifts)
    }
}

fn all_joints() -> Vec<RowJoints> {
    vec![RowJoints::Free, RowJoints::Aligned, RowJoints::HalfLapped]
}

/// The joints of a row relative to the row below.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RowJoints {
    /// Anywhere.
    Free,
    /// In line.
    Aligned,
    /// Offset by half a module.
    HalfLapped,
}

/// Where the base rail may be relative to the courses of the roof.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BaseRail {
    /// Whether it may be anywhere; otherwise only within the range above a course line below.
    pub anywhere: bool,
    /// The least height of the rail's line above a course line.
    pub above_course_from: Length,
    /// The greatest height.
    pub above_course_to: Length,
}

impl BaseRail {
    /// How far up the slope the rail must move to an allowed height, metres, and how far above its course line it is
    /// now; of the adjacent course lines, the one with the nearest allowed range. `None` if it may be anywhere or there
    /// are no courses.
    ///
    /// `bottom` is the rail's height up the slope and `first` that of a course line, metres.
    pub fn off(&self, bottom: f64, first: f64, exposure: f64) -> Option<(f64, f64)> {
        if self.anywhere || exposure <= f64::EPSILON {
            return None;
        }
        let (least, most) = (self.above_course_from.metres(), self.above_course_to.metres());
        let above = (bottom - first).rem_euclid(exposure);
        [exposure, 0.0, -exposure]
            .into_iter()
            .map(|course| above + course)
            .map(|above| (above.max(least).min(most) - above, above))
            .min_by(|a, b| a.0.abs().total_cmp(&b.0.abs()))
    }
}

impl Default for BaseRail {
    fn default() -> Self {
        Self { anywhere: true, above_course_from: Length::ZERO, above_course_to: Length::ZERO }
    }
}

impl Laying {
    pub(super) fn check(&self) -> Result<(), Said> {
        if self.joints.is_empty() {
            return Err(words::kit::LAYING_JOINTS_MUST_NAME_AT.into());
        }
        let (from, to) = (self.base_rail.above_course_from.metres(), self.base_rail.above_course_to.metres());
        if !((-1.0..1.0).contains(&from) && from <= to && to < 1.0) {
            return Err(words::kit::LAYING_BASE_RAIL_ABOVE_COURSE.into());
        }
        Ok(())
    }
}
