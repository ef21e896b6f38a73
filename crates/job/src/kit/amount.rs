use crate::Holds;
use chalkcourse_geometry::Length;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How much for each. What a term gives must be what its part is counted in; reading the kit says where it is not.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Amount {
    /// So many pieces for each piece, metre or square metre, metres of length for each metre, or square metres for
    /// each square metre.
    Count(f64),
    /// So much length for each piece or each run.
    Length(Length),
    /// Pieces of this length end to end along each run, each lapping the next; a run's last piece is cut and its
    /// offcut is not used again.
    Pieces {
        /// Length of a piece.
        length: Length,
        /// How far one laps the next.
        lap: Length,
    },
    /// One piece at this spacing, or less, along each run, and one more at its end; over an area one for each square
    /// of this spacing.
    Spaced(Length),
    /// So much for so much: 80 pieces for each 100 square feet, 2 hours for each 100 square feet, 1 piece for each 50 ft.
    Rate {
        /// This much of the part,
        take: Holds,
        /// for each such amount of what is measured.
        of: Holds,
    },
    /// A strip of this width along each run: a length gives an area.
    Width(Length),
    /// Sticks cut so that least is bought: an exact cut list over all runs, offcuts of one used for another.
    Cut(Sticks),
    /// Roll goods laid in level courses from the eave up, as far as the area reaches in each course.
    Laid(Roll),
}

/// How sticks are cut and joined along runs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Sticks {
    /// Length of a stick of this part.
    pub length: Length,
    /// How far one piece laps the next along a run.
    #[serde(default)]
    pub lap: Length,
    /// What a cut takes away.
    #[serde(default)]
    pub kerf: Length,
    /// Whether a run may be made of several pieces. Where not, a run that is longer than every stick is told.
    pub splice: bool,
    /// No piece of a spliced run is shorter; the piece before it is cut back for it.
    #[serde(default)]
    pub least_piece: Length,
    /// Other lengths of the same stock, each a part below with a term `{"sticks": "NUMBER OF THIS PART"}`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub also: Vec<OtherStick>,
}

/// Another length of the same stock.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OtherStick {
    /// The number of its part.
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
    /// How far a course laps the one below.
    pub side_lap: Length,
    /// How far a roll that begins in a course laps the one that ended there.
    pub end_lap: Length,
    /// Laid double: each course laps the one below so far that two layers lie everywhere, over a strip of the side
    /// lap's width along the eave.
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
