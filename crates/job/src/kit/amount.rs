use crate::Holds;
use chalkcourse_geometry::Length;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An amount per unit of a measure. Its unit must be that of its part; reading a kit reports where it is not.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Amount {
    /// This many pieces per piece, metre or square metre, metres of length per metre, or square metres per square
    /// metre.
    Count(f64),
    /// This length per piece or per run.
    Length(Length),
    /// Pieces of this length laid end to end along each run, each overlapping the next; the last piece of a run is cut
    /// and its offcut discarded.
    Pieces {
        /// Length of a piece.
        length: Length,
        /// Overlap of one piece and the next.
        lap: Length,
    },
    /// One piece at this spacing, or less, along each run, plus one at its end; over an area one per square of this
    /// spacing.
    Spaced(Length),
    /// A rate: 80 pieces per 100 square feet, 2 hours per 100 square feet, 1 piece per 50 ft.
    Rate {
        /// This much of the part,
        take: Holds,
        /// for each such amount of the measure.
        of: Holds,
    },
    /// A strip of this width along each run: a length gives an area.
    Width(Length),
    /// Sticks cut so that as little as possible is bought: an exact cut list over all runs, with offcuts of one used
    /// for another.
    Cut(Sticks),
    /// Roll goods laid in level courses from the eave up, each as long as the area is wide there.
    Laid(Roll),
}

/// How sticks are cut and spliced along runs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Sticks {
    /// Length of a stick of this part.
    pub length: Length,
    /// Overlap of one piece and the next along a run.
    #[serde(default)]
    pub lap: Length,
    /// Width of a cut.
    #[serde(default)]
    pub kerf: Length,
    /// Whether a run may be made of several pieces. If not, a run longer than every stick is reported.
    pub splice: bool,
    /// The shortest piece in a spliced run; the piece before it is cut back if necessary.
    #[serde(default)]
    pub least_piece: Length,
    /// Other lengths of the same stock, each a part listed below with a term `{"sticks": "NUMBER OF THIS PART"}`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub also: Vec<OtherStick>,
}

/// Another length of the same stock.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OtherStick {
    /// Its part number.
    pub part: String,
    /// Its length.
    pub length: Length,
}

/// A roll and how it is laid.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Roll {
    /// Width of a roll.
    pub width: Length,
    /// Length of a roll.
    pub length: Length,
    /// Overlap of a course and the one below.
    pub side_lap: Length,
    /// Overlap of a new roll and the one that ended in the same course.
    pub end_lap: Length,
    /// Double layer: each course overlaps the one below so that there are two layers everywhere, over a starter strip
    /// along the eave as wide as the side lap.
    #[serde(default)]
    pub starter: bool,
}

impl Sticks {
    pub(super) fn makes_sense(&self) -> bool {
        let sane = |length: Length| (0.05..100.0).contains(&length.metres());
        let lengths = || std::iter::once(self.length).chain(self.also.iter().map(|other| other.length));
        let shortest = lengths().fold(self.length, Length::min);
        lengths().all(sane)
            && self.lap >= Length::ZERO
            && self.kerf >= Length::ZERO
            && self.least_piece >= Length::ZERO
            && (shortest - self.lap - self.least_piece).metres() > 0.01
            && self.kerf < shortest
    }
}

impl Roll {
    pub(super) fn makes_sense(&self) -> bool {
        let step = self.width - self.side_lap;
        self.side_lap >= Length::ZERO
            && self.end_lap >= Length::ZERO
            && (0.01..100.0).contains(&step.metres())
            && (0.1..1e4).contains(&(self.length - self.end_lap).metres())
    }
}
