//! Software rendering of a solid: no graphics driver, no display, the same bytes on every machine.
//!
//! - [`Camera`]: orbits the house
//! - [`Scene`]: a solid prepared for repeated rendering
//! - [`Scene::draw`]: renders a scene, with the object at each pixel
//! - [`Picture::captioned`]: sentences at the foot, and words across the picture
//! - [`Picture::to_png`]
//!
//! Rendering has two passes: every triangle writes depth and id per pixel (`raster`), then each covered pixel is shaded once
//! (`shade`). Shadows come from a shadow map, rendered from the sun (`shadow`).

mod camera;
mod look;
mod png_out;
mod raster;
mod scene;
mod shade;
mod shadow;
mod words;

pub use camera::Camera;
pub use look::{Look, Rgb};
pub use png_out::PngError;
pub use scene::{Detail, Light, Picture, Scene, Shot};
pub use words::{Caption, CaptionError};
