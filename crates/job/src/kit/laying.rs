use chalkcourse_geometry::Length;
use chalkcourse_words::pick;
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

impl Default for BaseRail {
    fn default() -> Self {
        Self { anywhere: true, above_course_from: Length::ZERO, above_course_to: Length::ZERO }
    }
}

impl Laying {
    pub(super) fn check(&self) -> Result<(), String> {
        if self.joints.is_empty() {
            return Err(pick(
                "laying.joints must name at least one of \"free\", \"aligned\" and \"half-lapped\"",
                "laying.joints debe nombrar al menos uno de \"free\", \"aligned\" y \"half-lapped\"",
            )
            .to_owned());
        }
        let (from, to) = (self.base_rail.above_course_from.metres(), self.base_rail.above_course_to.metres());
        if !((-1.0..1.0).contains(&from) && from <= to && to < 1.0) {
            return Err(
                pick("laying.base_rail: above_course_from and above_course_to must rise, within a metre of \
                        the course line", "laying.base_rail: above_course_from y above_course_to deben subir, a menos de un metro de la \
        línea de hilada")
                    .to_owned(),
            );
        }
        Ok(())
    }
}
