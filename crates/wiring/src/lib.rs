//! Circuits and wires: what follows from a job's circuits where its modules stand. A planning aid: electrical design and work are for
//! licensed people where the law says so.
//!
//! - [`Wires`]: each circuit as wired: its links with their extension leads, its way home, its volts and amperes
//! - [`string_up`]: circuits made automatically, with what is proved of them; [`plugging_order`]: the best order within one
//! - [`window()`]: how many modules a circuit may hold, and what limits it
//! - [`volts`], [`amps`], [`tables`], [`conductors`], [`connection`]: electrical arithmetic by NEC tables and sections, which [`cite`] names
//! - [`runs`]: a circuit's conductors stretch by stretch, what protects and grounds them and what they lose; [`fill`]: boxes and raceways
//! - [`expected_reading`]: what a meter should show of a circuit
//! - [`ground_path`]: the bare copper past every lug
//! - [`paths`]: points divided into paths; it knows no roof
//!
//! Pure and total. Lengths are metres, temperatures °C. This crate judges nothing and has no sentence: findings are for crate `rules`.

pub mod amps;
pub mod cite;
pub mod conductors;
pub mod connection;
mod expected;
pub mod fill;
mod ground;
mod leads;
pub mod paths;
mod place;
pub mod runs;
mod stringing;
pub mod tables;
pub mod volts;
mod window;
mod wires;

#[cfg(test)]
mod testing;

pub use expected::{Expected, InsulationTest, expected_of, expected_reading};
pub use ground::{ground_path, ground_to_box};
pub use leads::{fewest_leads, reach};
pub use place::{Device, devices, face_of_box};
pub use stringing::{Left, Stringing, Strung, faces_alike, plugging_order, string_up};
pub use window::{Bar, DWELLING_VOLTS, Kind, LimitedBy, Unknown, Window, most_volts, window};
pub use wires::{HomeWay, Joined, Wired, Wires};
