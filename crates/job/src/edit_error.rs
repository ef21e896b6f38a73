//! Why an edit is refused.

use crate::id::MOST_NUMBER;
use crate::{Block, Circuit, KeyError, WiringChoices};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_words::{Said, Say, later as words};

/// Why an edit makes no sense. The job stays as it was.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum EditError {
    /// There is no such thing in the job.
    #[error("{}", words::job::the_job_has_no(&what, &number))]
    Missing {
        /// "part", "face", "block" or "penetration".
        what: Say,
        /// The number asked for.
        number: u32,
    },
    /// A number is not finite or beyond 100 km.
    #[error("{}", words::job::a_position_must_be_a(&what))]
    NotAPlace {
        /// Whose.
        what: Said,
    },
    /// A block is too large or empty.
    #[error("{}", words::job::a_block_has_1_to(&name, &Block::MOST_CELLS, &rows, &columns))]
    BlockSize {
        /// The block.
        name: String,
        /// Rows asked for.
        rows: u32,
        /// Columns asked for.
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
    /// A module is in a circuit twice, or in two.
    #[error("{}", words::job::a_module_is_in_one_circuit(&name))]
    ModuleTwice {
        /// The circuit.
        name: String,
    },
    /// A circuit or a junction box without a name.
    #[error("{}", words::job::A_NAME_IS_NEEDED)]
    NoName,
    /// No place on earth is that cold or hot.
    #[error("{}", words::job::is_no_temperature(&field, &celsius))]
    Temperature {
        /// Of what.
        field: &'static str,
        /// As given.
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
    /// A length that must be positive, or within sense, is not.
    #[error("{}", words::job::must_be_more_than_0(&what))]
    BadLength {
        /// Which.
        what: Said,
    },
    /// No roof can be raised from a part.
    #[error("{}", words::job::cant_be_raised(&part, &format_args!("{error}")))]
    CantRaise {
        /// The part's name.
        part: String,
        /// Which corner or side is the trouble, and what to do.
        error: RaiseError,
    },
    /// Parts stand in each other so nearly that rounding leaves no answer.
    #[error("{}", words::job::the_parts_of_the_house(&format_args!("{_0}")))]
    Tangled(chalkcourse_geometry::envelope::Tangle),
    /// A face that a part of the house makes can only be changed through that part.
    #[error("{}", words::job::face_follows_from_a_part(&name))]
    FollowsPart {
        /// The face.
        name: String,
    },
    /// The sides of a part are not those of its outline.
    #[error("{}", words::job::part_describes_sides_for_rings(&part, &format_args!("{described:?}"), &format_args!("{drawn:?}")))]
    PartSides {
        /// The part.
        part: String,
        /// Sides described, for each ring.
        described: Vec<usize>,
        /// Corners drawn, for each ring.
        drawn: Vec<usize>,
    },
    /// The numbers of a face's sides are not those of its outline.
    #[error("{}", words::job::face_numbers_sides_for_rings(&face, &format_args!("{numbered:?}"), &format_args!("{drawn:?}")))]
    FaceSides {
        /// The face.
        face: String,
        /// Sides numbered, for each ring.
        numbered: Vec<usize>,
        /// Corners drawn, for each ring.
        drawn: Vec<usize>,
    },
    /// Two sides of a part have one number.
    #[error("{}", words::job::part_has_two_sides_with(&part, &side))]
    SideTwice {
        /// The part.
        part: String,
        /// The number.
        side: u32,
    },
    /// Latitude or longitude is none.
    #[error("{}", words::job::latitude_longitude_degrees_from_85(&latitude, &longitude))]
    NotOnGlobe {
        /// As given.
        latitude: f64,
        /// As given.
        longitude: f64,
    },
    /// A picture lies nowhere or has no size.
    #[error("{}", words::job::THE_PICTURE_UNDER_THE_PLAN)]
    BadUnderlay,
    /// A waiver needs a key that can be read.
    #[error(transparent)]
    Key(#[from] KeyError),
    /// A waiver needs a reason.
    #[error("{}", words::job::A_WAIVER_NEEDS_A_REASON)]
    NoReason,
    /// A number beyond all that a job could need: those after it would run out.
    #[error("{}", words::job::cant_be_the_number_of(&_0, &MOST_NUMBER))]
    NoNumber(u32),
    /// A kit, a rule book or a price list makes no sense.
    #[error("{what}: {wrong}")]
    Data {
        /// Which of them.
        what: Say,
        /// What is wrong in it, and where.
        wrong: Said,
    },
    /// A choice about the order makes no sense.
    #[error("{}", words::job::the_order(&_0))]
    Order(Said),
}
