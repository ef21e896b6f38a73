//! What stands on a picture of the house: what stops the job, what was waived, the cautions.

use chalkcourse_picture::{Caption, CaptionError, Picture};
use chalkcourse_plan::{NOT_TO_BUILD, Standing};
use chalkcourse_telling::order::CAUTION;

/// The picture with all that must stand on it; across it, of a job that something stops, that it is not to be built.
///
/// # Errors
/// [`CaptionError::NoRoom`] for a picture that is too small for the whole of it.
pub(crate) fn captioned(picture: Picture, standing: &Standing) -> Result<Picture, CaptionError> {
    let mut lines = standing.lines();
    let strong = lines.len();
    lines.push(CAUTION.now().to_owned());
    let across = if standing.stops.is_empty() { String::new() } else { NOT_TO_BUILD.now().to_owned() };
    picture.captioned(&Caption { across, strong, lines })
}
