//! Captions on a picture of the house: stop findings, waivers, cautions.

use chalkcourse_picture::{Caption, CaptionError, Picture};
use chalkcourse_plan::{NOT_TO_BUILD, Standing};
use chalkcourse_telling::order::CAUTION;

/// The picture with all its captions; if a finding stops the job, also "not to be built" across the picture.
///
/// # Errors
/// [`CaptionError::NoRoom`] if the picture is too small for the captions.
pub(crate) fn captioned(picture: Picture, standing: &Standing) -> Result<Picture, CaptionError> {
    let mut lines = standing.lines();
    let strong = lines.len();
    lines.push(CAUTION.now().to_owned());
    let across = if standing.stops.is_empty() { String::new() } else { NOT_TO_BUILD.now().to_owned() };
    picture.captioned(&Caption { across, strong, lines })
}
