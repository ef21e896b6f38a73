//! Errors of edits.

use crate::id::MOST_NUMBER;
use crate::{Block, Circuit, KeyError, WiringChoices};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_words::{Said, Say, later as words};

/// Why an edit is rejected. The job is unchanged.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum EditError {
    /// The job has no such object.
    #[error("{}", words::job::the_job_has_no(&what, &number))]
    Missing {
        /// Its kind: "part", "face", "block" or "penetration".
        what: Say,
        /// The requested id.
        number: u32,
    },
    /// A coordinate is not finite or beyond 100 km.
    #[error("{}", words::job::a_position_must_be_a(&what))]
    NotAPlace {
        /// The object.
        what: Said,
    },
    /// A block is too large or empty.
    #[error("{}", words::job::a_block_has_1_to(&name, &Block::MOST_CELLS, &rows, &columns))]
    BlockSize {
        /// The block.
        name: String,
        /// Requested rows.
        rows: u32,
        /// Requested columns.
        columns: u32,
    },
    /// A circuit is too long or empty.
    #[error("{}", words::job::a_circuit_has_1_to(&name, &Circuit::MOST_MODULES, &modules))]
    CircuitSize {
        /// The circuit.
        name: String,
        /// Modules in it.
        modules: usize,
    },
    /// A module is in a circuit twice, or in two circuits.
    #[error("{}", words::job::a_module_is_in_one_circuit(&name))]
    ModuleTwice {
        /// The circuit.
        name: String,
    },
    /// A circuit or junction box has no name.
    #[error("{}", words::job::A_NAME_IS_NEEDED)]
    NoName,
    /// A temperature that occurs nowhere on earth.
    #[error("{}", words::job::is_no_temperature(&field, &celsius))]
    Temperature {
        /// The field.
        field: &'static str,
        /// The given value.
        celsius: f64,
    },
    /// A number that no house has.
    #[error("{}", words::job::is_out_of_range(&field, &value, &least, &most))]
    OutOfRange {
        /// Of what.
        field: &'static str,
        /// As given.
        value: f64,
        /// Not less.
        least: f64,
        /// Not more.
        most: f64,
    },
    /// A circuit has two readings.
    #[error("{}", words::job::A_CIRCUIT_IS_READ_ONCE)]
    ReadTwice,
    /// A label's own text is too long, or its code is none.
    #[error("{}", words::job::label_text_must_be(&format_args!("{code:?}"), &WiringChoices::MOST_LABEL_LETTERS))]
    LabelText {
        /// The label.
        code: String,
    },
    /// A length is not positive or implausibly large.
    #[error("{}", words::job::must_be_more_than_0(&what))]
    BadLength {
        /// The length.
        what: Said,
    },
    /// The roof of a part can't be raised.
    #[error("{}", words::job::cant_be_raised(&part, &format_args!("{error}")))]
    CantRaise {
        /// The part's name.
        part: String,
        /// The problematic corner or side, and what to do.
        error: RaiseError,
    },
    /// Parts intersect so closely that rounding makes the result ambiguous.
    #[error("{}", words::job::the_parts_of_the_house(&format_args!("{_0}")))]
    Tangled(chalkcourse_geometry::envelope::Tangle),
    /// The face belongs to a part of the house and can only be changed through it.
    #[error("{}", words::job::face_follows_from_a_part(&name))]
    FollowsPart {
        /// The face.
        name: String,
    },
    /// The described sides of a part don't match its outline.
    #[error("{}", words::job::part_describes_sides_for_rings(&part, &format_args!("{described:?}"), &format_args!("{drawn:?}")))]
    PartSides {
        /// The part.
        part: String,
        /// Sides described, per ring.
        described: Vec<usize>,
        /// Corners drawn, per ring.
        drawn: Vec<usize>,
    },
    /// The side ids of a face don't match its outline.
    #[error("{}", words::job::face_numbers_sides_for_rings(&face, &format_args!("{numbered:?}"), &format_args!("{drawn:?}")))]
    FaceSides {
        /// The face.
        face: String,
        /// Sides numbered, per ring.
        numbered: Vec<usize>,
        /// Corners drawn, per ring.
        drawn: Vec<usize>,
    },
    /// Two sides of a part have the same id.
    #[error("{}", words::job::part_has_two_sides_with(&part, &side))]
    SideTwice {
        /// The part.
        part: String,
        /// The id.
        side: u32,
    },
    /// Invalid latitude or longitude.
    #[error("{}", words::job::latitude_longitude_degrees_from_85(&latitude, &longitude))]
    NotOnGlobe {
        /// The given latitude.
        latitude: f64,
        /// The given longitude.
        longitude: f64,
    },
    /// A picture has an invalid position or size.
    #[error("{}", words::job::THE_PICTURE_UNDER_THE_PLAN)]
    BadUnderlay,
    /// A waiver has an unreadable key.
    #[error(transparent)]
    Key(#[from] KeyError),
    /// A waiver has no reason.
    #[error("{}", words::job::A_WAIVER_NEEDS_A_REASON)]
    NoReason,
    /// An id is so large that those after it could run out.
    #[error("{}", words::job::cant_be_the_number_of(&_0, &MOST_NUMBER))]
    NoNumber(u32),
    /// A kit, a rule book or a price list is inconsistent.
    #[error("{what}: {wrong}")]
    Data {
        /// Which of them.
        what: Say,
        /// What is wrong in it, and where.
        wrong: Said,
    },
    /// A choice about the order is invalid.
    #[error("{}", words::job::the_order(&_0))]
    Order(Said),
}
