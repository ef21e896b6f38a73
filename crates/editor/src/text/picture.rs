//! Words about the picture under the plan.

use chalkcourse_exchange::PictureInError;
use chalkcourse_geometry::{DVec2, Length, Units};
use std::path::Path;

pub(crate) const TOOL_PICTURE: &str = "Picture";
pub(crate) const TOOL_PICTURE_HELP: &str = "Lay an aerial photo or a sketch under the plan, to draw over";
pub(crate) const PICTURE: &str = "Picture under the plan";
pub(crate) const LAY_PICTURE: &str = "Picture under the plan…";
pub(crate) const CHOOSE_PICTURE: &str = "Choose a picture…";
pub(crate) const CHOOSE_ANOTHER: &str = "Choose another…";
pub(crate) const NO_PICTURE: &str =
    "An aerial photo or a sketch to draw over: a PNG or JPEG. Choose one, or drop it on the window.";
pub(crate) const PICTURE_BROKE: &str = "Reading the picture broke off: choose it again.";
pub(crate) const PICTURE_CHANGED: &str =
    "The file holds another picture than when it was laid here. Look whether it still lies right.";
pub(crate) const PICTURE_OTHER_SHAPE: &str =
    "The file holds a picture of another shape than the one that was laid here, so it is not drawn.";
pub(crate) const TAKE_AS_IT_IS: &str = "Take it as it is now";
pub(crate) const LOOK_AGAIN: &str = "Look again";
pub(crate) const READING_PICTURE: &str = "The picture is being read…";
pub(crate) const CANT_LAY: &str = "This picture can't be laid under the plan";
pub(crate) const PICTURE_MODES: [&str; 4] = ["Move", "Turn", "Scale", "Crop"];
pub(crate) const PICTURE_MODES_HELP: [&str; 4] = [
    "Drag the picture, or move it with the arrow keys",
    "Drag around the picture's middle; or click two points of a line that should run square",
    "Click two points whose distance you know, then type it",
    "Drag over the part that should show",
];
pub(crate) const GROUND_LENGTH: &str = "Length on the ground";
pub(crate) const MAKE_SQUARE: &str = "Make the line square";
pub(crate) const MAKE_SQUARE_HELP: &str =
    "Turn the picture so that the line runs due east–west or north–south";
pub(crate) const WIDE_ON_GROUND: &str = "Width";
pub(crate) const WIDE_HELP: &str = "How wide the whole picture is on the ground. It keeps its aspect.";
pub(crate) const PICTURE_TURN: &str = "Turned by";
pub(crate) const PICTURE_TURN_HELP: &str = "Degrees clockwise.";
pub(crate) const PICTURE_MIDDLE_HELP: &str = "Where the middle of the whole picture lies.";
pub(crate) const PICTURE_DIM: &str = "Dimmed by";
pub(crate) const PICTURE_DIM_BY_HAND: &str = "Dim the picture";
pub(crate) const PICTURE_CROP: &str = "Cropped, in percent of the picture";
pub(crate) const CROP_SIDES: [&str; 4] =
    ["From the left", "From the top", "From the right", "From the bottom"];
pub(crate) const SHOW_WHOLE: &str = "Show all of it";
pub(crate) const TAKE_AWAY: &str = "Take it away";
pub(crate) const CROP_TOO_MUCH: &str = "Something of the picture must be left: type less.";
pub(crate) const NO_SUCH_SCALE: &str =
    "The picture would be of no sensible size: click two points farther apart.";
pub(crate) const BAD_PERCENT: &str = "Type a number from 0 to 100.";
pub(crate) const BAD_TURN: &str = "Type degrees, such as 12.5.";

// Steps
pub(crate) const LAY_A_PICTURE: &str = "lay a picture under the plan";
pub(crate) const MOVE_PICTURE: &str = "move the picture";
pub(crate) const TURN_PICTURE: &str = "turn the picture";
pub(crate) const SCALE_PICTURE: &str = "scale the picture";
pub(crate) const CROP_PICTURE: &str = "crop the picture";
pub(crate) const DIM_PICTURE: &str = "dim the picture";
pub(crate) const CHANGE_PICTURE: &str = "take the changed picture";
pub(crate) const REMOVE_PICTURE: &str = "take the picture away";

pub(crate) fn not_decoded(path: &Path, wrong: &PictureInError) -> String {
    format!("{}: {wrong}", path.display())
}

/// The name of the file alone.
pub(crate) fn picture_name(path: &str) -> String {
    Path::new(path).file_name().map_or_else(|| path.to_owned(), |name| name.to_string_lossy().into_owned())
}

pub(crate) fn picture_words(path: &str) -> String {
    format!("{PICTURE}: {}", picture_name(path))
}

pub(crate) fn picture_laid(path: &str) -> String {
    format!(
        "{} lies under the plan. Set its scale: click two points whose distance you know.",
        picture_name(path)
    )
}

/// "20' × 15' on the ground, 400 × 300 pixels"
pub(crate) fn picture_size(size: DVec2, pixels: [u32; 2], units: Units) -> String {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    format!("{} × {} on the ground, {} × {} pixels", show(size.x), show(size.y), pixels[0], pixels[1])
}

pub(crate) fn not_shown(path: &str) -> String {
    format!("{} can't be shown", picture_name(path))
}

/// What to do with the picture now.
pub(crate) fn picture_hint(mode: usize, points: usize) -> &'static str {
    match (mode, points) {
        (2, 0) => "Click a point, then another one whose distance from it you know.",
        (2, 1) => "Click the other point.",
        (2, _) => "Type how far apart they are on the ground.",
        (mode, _) => PICTURE_MODES_HELP.get(mode).copied().unwrap_or_default(),
    }
}
