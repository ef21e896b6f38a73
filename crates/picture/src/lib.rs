//! A solid drawn as a picture, in software: no graphics driver, no screen, the same bytes on every machine.
//!
//! - [`Camera`]: an eye that goes around the house
//! - [`Scene`]: a solid made ready to be drawn again and again
//! - [`Scene::draw`]: the picture of a scene, with what stands at each pixel
//! - [`Picture::captioned`]: sentences at its foot, and words across it
//! - [`Picture::to_png`]
//!
//! A picture is made in two steps: every triangle writes how near it is and which it is (`raster`), then each pixel that
//! something was left on is coloured once (`shade`). The sun's shadows are a picture too, taken from the sun (`shadow`).

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
