use chalkcourse_geometry::Length;
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How a kit lets rows be laid upon one another and upon the courses of the roof.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Laying {
    /// How the joints of a row may stand to those of the row below.
    #[serde(default = "all_joints")]
    pub joints: Vec<RowJoints>,
    /// Where the base rail may fall.
    #[serde(default)]
    pub base_rail: BaseRail,
}

impl Default for Laying {
    fn default() -> Self {
        Self { joints: all_joints(), base_rail: BaseRail::default() }
    }
}

impl Laying {
    /// Shifts of a row against the one below that the kit allows, within one module, metres; none where any is allowed.
    ///
    /// `spacing` is from a module to the next of its row, metres.
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

/// How the joints of a row stand to those of the row below.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RowJoints {
    /// Anywhere.
    Free,
    /// In line.
    Aligned,
    /// Half a module aside.
    HalfLapped,
}

/// Where the base rail may fall among the courses of the roof.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BaseRail {
    /// Whether it may fall anywhere; else only so far above a course line as follows.
    pub anywhere: bool,
    /// The least height of the rail's line above a course line.
    pub above_course_from: Length,
    /// The greatest one.
    pub above_course_to: Length,
}

impl BaseRail {
    /// How far up the slope a rail must go to lie where it may, metres, and how far above its course line it lies now; of the
    /// course lines that it lies by, the one whose allowed stretch is nearest. `None` where it may lie anywhere or there are
    /// no courses.
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
