//! Roof geometry: planes in space, each face's own true-size frame, edges and their kinds.
//!
//! This crate knows no solar, no files and no user interface. Lengths are metres, angles radians unless a name says degrees, plan
//! coordinates are x east and y north, heights are z up, all `f64`.
//!
//! - [`Length`], [`Pitch`], [`Azimuth`]: quantities, parsed and displayed as people write them
//! - [`Polygon`]: an outline with holes; area, defects, containment, offsets, differences
//! - [`Convex`]: convex pieces of shapes against axis-aligned rectangles: clearance, depth, offset outlines
//! - [`Plane`]: the plane of a face and its own frame (u along the eave, v up the slope)
//! - [`raise`]: a roof from a footprint, by a weighted straight skeleton
//! - [`envelope`]: the visible surface of intersecting roofs
//! - [`fit`]: exact fitting of equal rectangles on a face
//! - [`coursing`]: an array among the courses of shingles: cut and full courses at both ends
//! - [`fit_up`]: a deck as measured: how far out of square, whether a row closes, where to snap the line
//! - [`taped`]: a face from side lengths and diagonals as taped on the deck
//! - [`sides`]: side ids that persist while corners are added, removed and moved
//! - [`Roof`]: assembled faces: shared edges, edge kinds, mismatches

mod azimuth;
mod convex;
pub mod coursing;
pub mod envelope;
pub mod fit;
pub mod fit_up;
mod length;
mod pieces;
mod pitch;
mod plane;
mod polygon;
pub mod raise;
mod rect;
mod rings;
mod roof;
pub mod sides;
mod slide_in;
mod square;
pub mod taped;

pub use azimuth::Azimuth;
pub use convex::{Border, Convex, Moves};
pub use length::{Length, LengthError, Units};
pub use pitch::{Pitch, PitchError};
pub use plane::{Plane, PlaneError};
pub use polygon::{Defect, Polygon, distance_to_segment, nearest_on_segment, signed_area};
pub use rect::Rect;
pub use roof::{EdgeKind, EdgeSpan, FaceInput, Neighbour, Roof, RoofFace, RoofLine, RoofProblem, Tolerances};
pub use sides::{SideId, Sides};
pub use slide_in::{holds, slide_in};
pub use square::{out_of_square, squared};

pub use glam::{DVec2, DVec3, dvec2, dvec3};
