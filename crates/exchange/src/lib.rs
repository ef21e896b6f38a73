//! Import and export of buildings in open formats.
//!
//! - [`list`]: the buildings of a file or folder to choose from; [`find`]: one of them in full
//! - [`outlines_from_geojson`]: footprints from GeoJSON (RFC 7946)
//! - [`houses_from_cityjson`]: roofs from CityJSON 1.1 and 2.0, and CityJSONSeq
//! - [`picture_from_bytes`]: an aerial photo or a sketch as a backdrop to trace
//! - [`House::edit`]: adds a building to a job
//! - [`plan_to_geojson`]: the plan for maps; [`house_to_glb`]: the house for 3D software
//!
//! Files are untrusted: sizes are bounded, every number is checked, and whatever is not imported is reported with the reason.

mod cityjson;
mod error;
mod geojson_in;
mod geojson_out;
mod gltf_out;
mod grid;
mod house;
mod local;
mod picture_in;
mod source;

pub use cityjson::{CityJsonError, houses_from_cityjson};
pub use error::ImportError;
pub use geojson_in::{GeoJsonError, Outline, outlines_from_geojson};
pub use geojson_out::{GeoJsonOutError, plan_to_geojson};
pub use gltf_out::{GltfError, house_to_glb};
pub use house::{CityRoof, House, HouseShape, LeftOut, Reason, Surface};
pub use local::LocalPlan;
pub use picture_in::{PictureInError, picture_from_bytes};
pub use source::{Entry, Listing, find, list, list_until};

/// Maximum corners of an outline.
pub const MOST_CORNERS: usize = 2_000;
/// A roof surface with a corner farther than this from its plane can't be one face, metres.
pub const MOST_OFF: f64 = 0.3;
/// A roof surface with a corner farther than this from its plane is reported, metres: two faces closer than that meet.
pub const TOLD_OFF: f64 = 0.01;
/// Maximum distance of a house's corners from its centre, metres.
pub const MOST_REACH: f64 = 5_000.0;
