use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A stage of the work, in the order in which a roof is built (common practice, no source). Stage names of earlier kits
/// are read as the first stage that they covered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Stage {
    /// Tear-off of the old roofing.
    TearOff,
    /// Replacing bad sheathing, driving proud nails, framing crickets.
    Deck,
    /// The roof is watertight from here on.
    DryIn,
    /// Starter, and shingles up to the line of the base rail, with flashing of what they reach.
    FirstCourses,
    /// What the ground crew preassembles meanwhile.
    Ground,
    /// Membrane, and the layer that the fire listing requires.
    UnderArray,
    /// The rail that carries everything.
    #[serde(alias = "flashing")]
    BaseRail,
    /// Row by row, each with its leads and lugs.
    #[serde(alias = "array")]
    Modules,
    /// Flashing above the top row.
    Head,
    /// Step flashing woven with the courses beside the array, then counter flashing.
    Sides,
    /// Corners, membrane and starter under the shingles above and beside.
    Around,
    /// The rest of the shingles, and the caps.
    #[serde(alias = "roofing")]
    Shingles,
    /// Wiring to the box.
    #[serde(alias = "wiring")]
    Wires,
}

impl Stage {
    /// All stages, first to last.
    pub const ALL: [Self; 13] = [
        Self::TearOff,
        Self::Deck,
        Self::DryIn,
        Self::FirstCourses,
        Self::Ground,
        Self::UnderArray,
        Self::BaseRail,
        Self::Modules,
        Self::Head,
        Self::Sides,
        Self::Around,
        Self::Shingles,
        Self::Wires,
    ];

    /// The stages that must be done before this one can start. All of them come earlier.
    pub fn stands_on(self) -> &'static [Self] {
        match self {
            Self::TearOff | Self::Ground => &[],
            Self::Deck => &[Self::TearOff],
            Self::DryIn => &[Self::Deck],
            Self::FirstCourses => &[Self::DryIn],
            Self::UnderArray => &[Self::FirstCourses],
            Self::BaseRail => &[Self::UnderArray],
            Self::Modules => &[Self::BaseRail, Self::Ground],
            Self::Head | Self::Sides => &[Self::Modules],
            Self::Around => &[Self::Head, Self::Sides],
            Self::Shingles => &[Self::Around],
            Self::Wires => &[Self::Modules, Self::Shingles],
        }
    }

    /// Its heading on an order.
    pub fn name(self) -> Say {
        match self {
            Self::TearOff => words::kit::TEAR_OFF,
            Self::Deck => words::kit::DECK,
            Self::DryIn => words::kit::DRY_IN,
            Self::FirstCourses => words::kit::FIRST_COURSES,
            Self::Ground => words::kit::ON_THE_GROUND,
            Self::UnderArray => words::kit::UNDER_THE_ARRAY,
            Self::BaseRail => words::kit::BASE_RAIL,
            Self::Modules => words::kit::MODULES,
            Self::Head => words::kit::HEAD_FLASHING,
            Self::Sides => words::kit::SIDES_OF_THE_ARRAY,
            Self::Around => words::kit::AROUND_THE_ARRAY,
            Self::Shingles => words::kit::SHINGLES_TO_THE_RIDGE,
            Self::Wires => words::kit::WIRES_INTO_THE_BOX,
        }
    }

    /// The work of this stage, in order.
    pub fn work(self) -> Say {
        match self {
            Self::TearOff => words::kit::OLD_ROOFING_OFF_ANCHORS_ROPES,
            Self::Deck => words::kit::REPLACE_BAD_SHEATHING_FRAME_CRICKETS,
            Self::DryIn => words::kit::DRIP_EDGE_AT_THE_EAVES,
            Self::FirstCourses => words::kit::STARTER_AT_EAVES_AND_RAKES,
            Self::Ground => words::kit::MEANWHILE_FEET_BRACKETS_AND_DEVICES,
            Self::UnderArray => words::kit::SELF_ADHERED_MEMBRANE_IN_LEVEL,
            Self::BaseRail => words::kit::SNAP_THE_LINE_SCREW_THE,
            Self::Modules => words::kit::ROW_BY_ROW_FROM_THE,
            Self::Head => words::kit::SUPPORTS_AT_ENDS_AND_SEAMS,
            Self::Sides => words::kit::A_PIECE_OF_STEP_FLASHING,
            Self::Around => words::kit::CORNERS_INTERLOCKED_AN_L_PIECE,
            Self::Shingles => words::kit::CUT_COURSE_OVER_THE_HEAD,
            Self::Wires => words::kit::BOTH_ENDS_OF_THE_HOME,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stages_depend_on_earlier_ones_and_all_but_two_on_some() {
        for stage in Stage::ALL {
            assert!(stage.stands_on().iter().all(|before| *before < stage), "{stage:?}");
            let from_nothing = matches!(stage, Stage::TearOff | Stage::Ground);
            assert_eq!(stage.stands_on().is_empty(), from_nothing, "{stage:?}");
        }
        assert!(Stage::ALL.is_sorted());
    }

    #[test]
    fn stages_of_earlier_kits_are_read() {
        let read = |code: &str| serde_json::from_value::<Stage>(code.into()).unwrap();
        assert_eq!(
            ["array", "flashing", "roofing", "wiring"].map(read),
            [Stage::Modules, Stage::BaseRail, Stage::Shingles, Stage::Wires]
        );
    }
}
