//! A picture under the plan: an aerial photo or a sketch to trace. The job stores its position and the path of its
//! file; the picture itself stays in that file.

use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_words::later as words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::io::Read;
use std::path::{Component, Path, PathBuf};

/// Larger files are not accepted as pictures.
pub const MOST_PICTURE_BYTES: u64 = 64 << 20;

/// A picture under the plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Underlay {
    /// Path of the picture. In a job file relative to the folder of that file, with `/` as separator; in an open job
    /// absolute.
    pub path: String,
    /// SHA-256 of the picture file as 64 hexadecimal digits, so that another picture is not mistaken for it.
    pub sha256: String,
    /// Width and height of the picture in pixels, in its display orientation.
    pub pixels: [u32; 2],
    /// The plan point under the centre of the whole picture.
    #[schemars(with = "[f64; 2]")]
    pub at: DVec2,
    /// Clockwise rotation in degrees.
    #[serde(default)]
    pub turn: f64,
    /// Size of a pixel in metres, the same in both directions.
    pub metres_per_pixel: f64,
    /// How much it is faded, from 0 (not at all) to 1 (invisible).
    #[serde(default)]
    pub dim: f64,
    /// The visible part.
    #[serde(default, skip_serializing_if = "Crop::is_whole")]
    pub crop: Crop,
}

/// A part of a picture, as fractions of its width from the left and of its height from the top.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Crop {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

impl Default for Crop {
    fn default() -> Self {
        Self { left: 0.0, top: 0.0, right: 1.0, bottom: 1.0 }
    }
}

impl Crop {
    /// Whether the whole picture is visible.
    pub fn is_whole(&self) -> bool {
        *self == Self::default()
    }
}

/// Why a file can't be used as the picture.
#[derive(Debug, thiserror::Error)]
pub enum PictureError {
    /// It does not exist or can't be read.
    #[error("{}", words::job::picture_missing(&path.display(), &format_args!("{error}")))]
    Missing {
        /// The expected path.
        path: PathBuf,
        /// The system's error.
        error: std::io::Error,
    },
    /// It is too large.
    #[error("{}", words::job::picture_too_large(&path.display(), &(MOST_PICTURE_BYTES >> 20)))]
    TooLarge {
        /// The file.
        path: PathBuf,
    },
}

impl Underlay {
    /// Width and height on the ground, metres.
    pub fn size(&self) -> DVec2 {
        dvec2(f64::from(self.pixels[0]), f64::from(self.pixels[1])) * self.metres_per_pixel
    }

    /// A point of the picture (fractions of its width from the left, of its height from the top) in plan.
    pub fn to_plan(&self, fraction: DVec2) -> DVec2 {
        let from_middle = (fraction - DVec2::splat(0.5)) * dvec2(1.0, -1.0) * self.size();
        self.at + DVec2::from_angle(-self.turn.to_radians()).rotate(from_middle)
    }

    /// A plan point as a point of the picture: the inverse of [`Self::to_plan`].
    pub fn to_picture(&self, plan: DVec2) -> DVec2 {
        let from_middle = DVec2::from_angle(self.turn.to_radians()).rotate(plan - self.at);
        from_middle * dvec2(1.0, -1.0) / self.size() + DVec2::splat(0.5)
    }

    /// The corners of the visible part, in plan: upper left, upper right, lower right, lower left of the picture.
    pub fn corners(&self) -> [DVec2; 4] {
        let Crop { left, top, right, bottom } = self.crop;
        [(left, top), (right, top), (right, bottom), (left, bottom)].map(|(x, y)| self.to_plan(dvec2(x, y)))
    }

    /// The picture scaled so that two plan points are `length` apart on the ground, with the first fixed. `None` if the
    /// points coincide, or the size would be implausible.
    pub fn scaled(&self, from: DVec2, to: DVec2, length: f64) -> Option<Self> {
        let factor = length / from.distance(to);
        let scaled = Self {
            metres_per_pixel: self.metres_per_pixel * factor,
            at: from + (self.at - from) * factor,
            ..self.clone()
        };
        scaled.is_sensible().then_some(scaled)
    }

    /// The picture rotated clockwise about a plan point.
    pub fn turned(&self, about: DVec2, degrees: f64) -> Self {
        let at = about + DVec2::from_angle(-degrees.to_radians()).rotate(self.at - about);
        Self { at, turn: (self.turn + degrees).rem_euclid(360.0), ..self.clone() }
    }

    /// The picture rotated by the smallest angle that makes the line between two plan points run due east–west or
    /// north–south, with the first fixed.
    pub fn squared(&self, from: DVec2, to: DVec2) -> Self {
        let line = (to - from).to_angle().to_degrees();
        self.turned(from, line - (line / 90.0).round() * 90.0)
    }

    /// Whether its position and size are plausible for a house.
    pub fn is_sensible(&self) -> bool {
        let Crop { left, top, right, bottom } = self.crop;
        let part = |from: f64, to: f64| 0.0 <= from && from < to && to <= 1.0;
        self.at.is_finite()
            && self.at.abs().max_element() <= 1e5
            && self.turn.is_finite()
            && self.pixels.iter().all(|&side| (1..=1_000_000).contains(&side))
            && self.metres_per_pixel > 0.0
            && self.size().min_element() >= 1e-3
            && self.size().max_element() <= 1e5
            && (0.0..=1.0).contains(&self.dim)
            && part(left, right)
            && part(top, bottom)
    }
}

/// The bytes of a picture file.
///
/// # Errors
/// [`PictureError`] if it does not exist or is too large.
pub fn read_picture(path: &Path) -> Result<Vec<u8>, PictureError> {
    let missing = |error| PictureError::Missing { path: path.to_owned(), error };
    let mut bytes = Vec::new();
    // The length that the system reports may be wrong, so bound the reader.
    std::fs::File::open(path)
        .and_then(|file| file.take(MOST_PICTURE_BYTES + 1).read_to_end(&mut bytes))
        .map_err(missing)?;
    if bytes.len() as u64 > MOST_PICTURE_BYTES {
        return Err(PictureError::TooLarge { path: path.to_owned() });
    }
    Ok(bytes)
}

/// SHA-256 (FIPS 180-4) as 64 hexadecimal digits.
pub fn sha256(bytes: &[u8]) -> String {
    use std::fmt::Write;
    Sha256::digest(bytes).iter().fold(String::new(), |mut text, byte| {
        // Writing to a string can't fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// A path as stored in a job file: relative to the folder of the job, with `/` as separator; absolute if there is no
/// relative path.
pub(crate) fn relative(file: &Path, folder: &Path) -> String {
    let whole = |path: &Path| std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let (file, folder) = (whole(file), whole(folder));
    let (there, here): (Vec<Component>, Vec<Component>) =
        (file.components().collect(), folder.components().collect());
    let same = there.iter().zip(&here).take_while(|(a, b)| a == b).count();
    // Another drive.
    if same == 0 {
        return text_of(&file);
    }
    let up = here.iter().skip(same).map(|_| "..".to_owned());
    let down = there.iter().skip(same).map(|part| part.as_os_str().to_string_lossy().into_owned());
    up.chain(down).collect::<Vec<_>>().join("/")
}

/// The absolute path for a path in a job file in this folder.
pub(crate) fn resolved(path: &str, folder: &Path) -> String {
    let whole = folder.join(path);
    let whole = std::path::absolute(&whole).unwrap_or(whole);
    let mut plain = PathBuf::new();
    for part in whole.components() {
        match part {
            Component::ParentDir if plain.pop() => {}
            other => plain.push(other),
        }
    }
    text_of(&plain)
}

fn text_of(path: &Path) -> String {
    let text = path.to_string_lossy();
    if cfg!(windows) { text.replace('\\', "/") } else { text.into_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn photo() -> Underlay {
        Underlay {
            path: "/jobs/photos/roof.png".to_owned(),
            sha256: sha256(b"abc"),
            pixels: [400, 300],
            at: dvec2(3.0, -2.0),
            turn: 0.0,
            metres_per_pixel: 0.05,
            dim: 0.3,
            crop: Crop::default(),
        }
    }

    /// FIPS 180-4's example "abc" (also in the NIST example values for SHA-256).
    #[test]
    fn the_digest_is_sha_256() {
        assert_eq!(sha256(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    #[test]
    fn the_upper_left_corner_is_north_west_until_rotated() {
        let photo = photo();
        assert_eq!(photo.corners()[0], dvec2(3.0 - 10.0, -2.0 + 7.5));
        let turned = photo.turned(photo.at, 90.0);
        // A quarter turn clockwise: what was north-west is north-east.
        assert!(turned.corners()[0].distance(dvec2(3.0 + 7.5, -2.0 + 10.0)) < 1e-9);
    }

    #[test]
    fn scaling_by_two_points_keeps_the_first() {
        let photo = photo();
        let (a, b) = (dvec2(1.0, 1.0), dvec2(4.0, 5.0));
        let (on_a, on_b) = (photo.to_picture(a), photo.to_picture(b));
        let scaled = photo.scaled(a, b, 12.5).unwrap();
        assert!(scaled.to_plan(on_a).distance(a) < 1e-9);
        assert!((scaled.to_plan(on_b).distance(a) - 12.5).abs() < 1e-9);
        let aspect = |u: &Underlay| u.size().x / u.size().y;
        assert!((aspect(&scaled) - aspect(&photo)).abs() < 1e-12);
        for (to, length) in [(a, 3.0), (b, 0.0), (b, -1.0), (b, f64::NAN), (b, 1e12)] {
            assert!(photo.scaled(a, to, length).is_none(), "{to} {length}");
        }
    }

    #[test]
    fn a_line_is_made_square() {
        let photo = photo();
        let (a, b) = (dvec2(1.0, 1.0), dvec2(11.0, 1.5));
        let on_b = photo.to_picture(b);
        let squared = photo.squared(a, b);
        let now = squared.to_plan(on_b);
        assert!((now.y - 1.0).abs() < 1e-9 && now.x > 11.0, "{now}");
    }

    #[test]
    fn paths_run_from_the_folder_of_the_job() {
        for (file, folder, expect) in [
            ("/jobs/photos/roof.png", "/jobs", "photos/roof.png"),
            ("/photos/roof.png", "/jobs/alder", "../../photos/roof.png"),
            ("/jobs/roof.png", "/jobs", "roof.png"),
        ] {
            let relative = relative(Path::new(file), Path::new(folder));
            assert_eq!(relative, expect);
            assert_eq!(resolved(&relative, Path::new(folder)), file);
        }
        assert_eq!(resolved("/elsewhere/a.png", Path::new("/jobs")), "/elsewhere/a.png");
    }

    #[test]
    fn a_job_and_its_picture_can_be_moved_together() {
        use crate::{Edit, Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book, load, save};
        let folder = tempfile::tempdir().unwrap();
        let (one, two) = (folder.path().join("one"), folder.path().join("two"));
        std::fs::create_dir_all(one.join("photos")).unwrap();
        std::fs::write(one.join("photos/roof.png"), b"abc").unwrap();
        let job = Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let photo = Underlay { path: text_of(&one.join("photos/roof.png")), ..photo() };
        let job = apply(&job, &Edit::SetUnderlay(Some(photo.clone()))).unwrap();
        save(&job, &one.join("t.chalk.json")).unwrap();
        let text = std::fs::read_to_string(one.join("t.chalk.json")).unwrap();
        assert!(text.contains("\"photos/roof.png\""), "{text}");
        assert_eq!(load(&one.join("t.chalk.json")).unwrap(), job);
        std::fs::rename(&one, &two).unwrap();
        let moved = load(&two.join("t.chalk.json")).unwrap().underlay.clone().unwrap();
        assert_eq!(sha256(&read_picture(Path::new(&moved.path)).unwrap()), photo.sha256);
        // An invalid position is rejected, in an edit and in a file.
        let nowhere = Underlay { metres_per_pixel: 0.0, ..photo };
        assert!(apply(&job, &Edit::SetUnderlay(Some(nowhere))).is_err());
        let wrong = text.replace("\"metres_per_pixel\": 0.05", "\"metres_per_pixel\": -1.0");
        let error = crate::job_from_text(&wrong, Path::new("t")).unwrap_err().to_string();
        assert!(error.contains("data.underlay"), "{error}");
        assert!(apply(&job, &Edit::SetUnderlay(None)).unwrap().underlay.is_none());
    }

    #[test]
    fn a_missing_or_too_large_picture_is_reported() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("none.png");
        let words = read_picture(&path).unwrap_err().to_string();
        assert!(words.contains("none.png") && words.contains("choose it again"), "{words}");
        let file = std::fs::File::create(&path).unwrap();
        file.set_len(MOST_PICTURE_BYTES + 1).unwrap();
        assert!(read_picture(&path).unwrap_err().to_string().contains("larger than 64 MB"));
    }

    proptest! {
        #[test]
        fn plan_and_picture_are_inverse(x in -50.0..50.0f64, y in -50.0..50.0f64, turn in 0.0..360.0f64, scale in 0.001..2.0f64) {
            let photo = Underlay { turn, metres_per_pixel: scale, ..photo() };
            let p = dvec2(x, y);
            prop_assert!(photo.to_plan(photo.to_picture(p)).distance(p) < 1e-9);
        }
    }
}
