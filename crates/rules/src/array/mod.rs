//! Rules about where blocks are placed.

pub(crate) mod base_rail;
pub(crate) mod between_blocks;
pub(crate) mod clearance;
pub(crate) mod deck;
pub(crate) mod hook;
pub(crate) mod laying;
pub(crate) mod no_deck;
pub(crate) mod off_face;
pub(crate) mod overlap;
pub(crate) mod pitch;
pub(crate) mod reveal;
pub(crate) mod ridge_course;
pub(crate) mod setback;
pub(crate) mod water;
