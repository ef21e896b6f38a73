//! Side numbers, and what refers to them, over edits of all kinds: a number never passes to another side.
//!
//! Here the identity of a side is decided without its number: on a drawn face a side keeps one of its ends while one
//! corner is added, removed or moved; on a face of a part it continues along the same line, the same wall of a part, or
//! the same adjacent face.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

mod drawn;
mod raised;
mod waivers;

use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon};
use chalkcourse_job::{
    Face, FaceId, Resolved, builtin_kit, builtin_prices, builtin_rule_book, job_from_text, job_to_text,
};
use std::path::Path;

pub(crate) fn empty() -> Resolved {
    Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices())
}

pub(crate) fn again(job: &Resolved) -> Resolved {
    job_from_text(&job_to_text(job).unwrap(), Path::new("t")).unwrap()
}

pub(crate) fn face(id: u32, corners: Vec<DVec2>) -> Face {
    let pitch = Pitch::from_rise_in_12(6.0).unwrap();
    let height = Length::from_metres(3.0);
    Face::new(FaceId(id), "South".into(), Polygon::new(corners), pitch, Azimuth::SOUTH, height)
}
