use crate::PenetrationId;
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_words::{Say, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The kind of a penetration.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum PenetrationKind {
    /// A plumbing pipe with its boot.
    PipeBoot,
    /// A roof vent.
    Vent,
    /// A chimney.
    Chimney,
    /// A skylight.
    Skylight,
    /// An emergency escape window: in the roof, or in a wall above the face, with its sill at the wall line (IRC R310).
    EscapeWindow,
    /// Anything else.
    Other,
}

impl PenetrationKind {
    /// All kinds.
    pub const ALL: [Self; 6] =
        [Self::PipeBoot, Self::Vent, Self::Chimney, Self::Skylight, Self::EscapeWindow, Self::Other];

    /// Its trade name.
    pub fn name(self) -> Say {
        match self {
            Self::PipeBoot => words::job::PIPE_BOOT,
            Self::Vent => words::job::VENT,
            Self::Chimney => words::common::CHIMNEY_2,
            Self::Skylight => words::job::SKYLIGHT,
            Self::EscapeWindow => words::job::ESCAPE_WINDOW,
            Self::Other => words::job::OTHER_PENETRATION,
        }
    }

    /// A code that is the same in every language, for files and keys.
    pub fn code(self) -> &'static str {
        match self {
            Self::PipeBoot => "pipe boot",
            Self::Vent => "vent",
            Self::Chimney => "chimney",
            Self::Skylight => "skylight",
            Self::EscapeWindow => "escape window",
            Self::Other => "other penetration",
        }
    }

    /// With its article, for the middle of a sentence.
    pub fn with_article(self) -> Say {
        match self {
            Self::PipeBoot => words::job::THE_PIPE_BOOT,
            Self::Vent => words::job::THE_VENT,
            Self::Chimney => words::job::THE_CHIMNEY,
            Self::Skylight => words::job::THE_SKYLIGHT,
            Self::EscapeWindow => words::job::THE_ESCAPE_WINDOW,
            Self::Other => words::job::THE_OTHER_PENETRATION,
        }
    }

    /// Whether it can be rerouted through the deck elsewhere with little work. Masonry and framed openings stay where
    /// they are (common practice, no source).
    pub fn can_be_moved(self) -> bool {
        matches!(self, Self::PipeBoot | Self::Vent | Self::Other)
    }

    /// A default shape: common sizes, no source.
    pub fn usual_shape(self) -> Shape {
        let inches = Length::from_inches;
        match self {
            Self::PipeBoot => Shape::Circle { diameter: inches(4.0) },
            Self::Vent => Shape::Rectangle { along: inches(16.0), up: inches(16.0) },
            Self::Chimney => Shape::Rectangle { along: inches(32.0), up: inches(20.0) },
            Self::Skylight => Shape::Rectangle { along: inches(24.0), up: inches(48.0) },
            Self::EscapeWindow => Shape::Rectangle { along: inches(30.0), up: inches(46.0) },
            Self::Other => Shape::Rectangle { along: inches(12.0), up: inches(12.0) },
        }
    }
}

/// The shape of a penetration as measured on the deck.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", tag = "is", deny_unknown_fields)]
pub enum Shape {
    /// Round.
    Circle {
        /// Diameter.
        diameter: Length,
    },
    /// Aligned with the eave.
    Rectangle {
        /// Along the eave.
        along: Length,
        /// Up the slope.
        up: Length,
    },
    /// Any outline.
    Polygon {
        /// Corners on the deck relative to the centre: u along the eave, v up the slope, metres.
        #[schemars(with = "Vec<[f64; 2]>")]
        corners: Vec<DVec2>,
    },
}

/// A penetration of the roof.
///
/// Its position is in plan, since it comes up from the house below and stays there when the roof is redrawn; its shape
/// is measured on the deck of the face that contains its centre.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Penetration {
    /// Its id in the job.
    pub id: PenetrationId,
    /// Display name.
    pub name: String,
    /// Its kind.
    pub kind: PenetrationKind,
    /// Its centre in plan: x east, y north, metres.
    #[schemars(with = "[f64; 2]")]
    pub at: DVec2,
    /// Its shape as measured on the deck.
    pub shape: Shape,
    /// How far modules keep off, if different from the rule book's clearance for its kind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clearance: Option<Length>,
}
