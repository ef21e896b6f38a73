//! A face from tape readings: side lengths and diagonals, all on the deck.
//!
//! Corners are numbered from 0 at the left end of the eave, counter-clockwise as seen, so side 0 is the eave. A tape lies on the
//! deck, so every diagonal runs inside the face.
//!
//! As many readings as the shape has degrees of freedom determine it exactly. Every further reading is a check: the misclosure is
//! spread over all readings by least squares with equal weights, as a surveyor adjusts a network of distances (least-squares
//! adjustment of trilateration, from memory). Above a limit nothing is spread: then one of them was misread.

mod spread;
mod start;
#[cfg(test)]
mod tests;

use crate::{Defect, Length, Plane, Polygon, Units};
use chalkcourse_words::{Said, later as words};
use glam::DVec2;

/// The assumed shape of a face. The more is assumed, the fewer readings are needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// Three corners: the eave and a peak.
    Triangle,
    /// Four right angles.
    Rectangle,
    /// Opposite sides are parallel.
    Parallelogram,
    /// The ridge is parallel to the eave.
    Trapezoid,
    /// This many corners, nothing assumed.
    Polygon(usize),
}

/// One reading of the tape.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// What was measured.
    pub of: TapedLine,
    /// The reading.
    pub length: Length,
}

/// What a reading measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TapedLine {
    /// From one corner to another: a side or a diagonal.
    Between(usize, usize),
    /// From the line of the eave straight up the slope to a corner.
    Up(usize),
}

impl TapedLine {
    /// Its name; corners are 1-based there.
    pub fn name(self) -> Said {
        match self {
            Self::Between(from, to) => words::tape::the_line_from_corner_to(&(from + 1), &(to + 1)),
            Self::Up(corner) => words::tape::the_height_of_corner_over(&(corner + 1)),
        }
    }
}

/// A face as taped.
#[derive(Clone, Debug, PartialEq)]
pub struct Taped {
    /// Corners in the face's own frame, metres: the first one at the origin, the eave along u.
    pub corners: Vec<DVec2>,
    /// The correction to each reading that makes all agree, in the order of the readings.
    pub corrections: Vec<Length>,
    /// The largest correction, absolute.
    pub closing_error: Length,
    /// Redundant readings. With none, nothing is checked and nothing can be spread.
    pub spare: usize,
    /// The reading most likely to be wrong, if two or more redundant ones can tell and there is a misclosure.
    pub suspect: Option<usize>,
}

impl Taped {
    /// The outline in plan for a plane whose datum is the first corner.
    pub fn plan(&self, plane: &Plane) -> Polygon {
        Polygon::new(self.corners.iter().map(|&p| plane.to_plan(p)).collect())
    }

    /// The area on the slope, m².
    pub fn area(&self) -> f64 {
        crate::signed_area(&self.corners).abs()
    }
}

/// Why readings make no face. Corners are 1-based in the messages.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TapedError {
    /// The form can't have that number of corners.
    #[error("{}", words::tape::a_face_has_3_to(&MOST_CORNERS, &_0))]
    Corners(usize),
    /// A reading refers to a corner or line that the face does not have.
    #[error("{}", words::tape::the_face_has_corners(&_0.name(), &_1))]
    NoSuchLine(TapedLine, usize),
    /// A reading is not a plausible length.
    #[error("{}", words::tape::must_be_more_than_0(&_0.name()))]
    NoLength(TapedLine),
    /// A corner is not determined.
    #[error("{}", words::tape::corner_is_held_by_too(&(.0 + 1)))]
    Loose(usize),
    /// The readings of a four-sided shape leave it free to rack.
    #[error("{}", words::tape::THESE_SIDES_COULD_LEAN_EITHER)]
    Leans,
    /// Two readings together are shorter than the third.
    #[error("{}", words::tape::cant_be_the_other_two(&of.name(), &both(.is), &both(.reach), &both(&(*.is - *.reach))))]
    TooLong {
        /// The reading, or what it is compared with.
        of: TapedLine,
        /// Its length.
        is: Length,
        /// The combined length of the others.
        reach: Length,
    },
    /// The misclosure is more than a careful tape can explain.
    #[error("{}", words::tape::the_readings_miss_by_more(&both(.closing_error), &both(.limit), &.worst.name()))]
    DoesNotClose {
        /// The largest correction.
        closing_error: Length,
        /// The maximum that is spread.
        limit: Length,
        /// The reading it belongs to.
        worst: TapedLine,
    },
    /// The corners make no valid outline.
    #[error("{}", words::tape::THESE_LENGTHS_MAKE_A_FACE)]
    Folded,
}

/// Maximum corners of a taped face.
pub const MOST_CORNERS: usize = 40;

fn both(length: &Length) -> String {
    format!("{} ({})", length.show(Units::FeetInches), length.show(Units::Metric))
}

impl Form {
    /// Its number of corners.
    pub fn corners(self) -> usize {
        match self {
            Self::Triangle => 3,
            Self::Rectangle | Self::Parallelogram | Self::Trapezoid => 4,
            Self::Polygon(corners) => corners,
        }
    }
}

/// The face that readings make. `limit` is the maximum correction of a reading, about 1 in for a face of a house (common
/// practice, no source).
///
/// # Errors
/// [`TapedError`] says which reading is the problem and what to do.
pub fn lay_out(form: Form, readings: &[Reading], limit: Length) -> Result<Taped, TapedError> {
    let corners = form.corners();
    if !(3..=MOST_CORNERS).contains(&corners) {
        return Err(TapedError::Corners(corners));
    }
    for reading in readings {
        let known = match reading.of {
            TapedLine::Between(from, to) => from < corners && to < corners && from != to,
            // both ends of the eave are always on it
            TapedLine::Up(corner) => (2..corners).contains(&corner),
        };
        if !known {
            return Err(TapedError::NoSuchLine(reading.of, corners));
        }
        if !(reading.length.metres() > 0.0 && reading.length.metres() < 1000.0) {
            return Err(TapedError::NoLength(reading.of));
        }
    }
    let start = start::of(form, readings, limit.metres())?;
    let best = spread::least_squares(form, start, readings);
    let shape = spread::shape(form, &best.freedoms);
    let corrections: Vec<Length> = best.corrections.iter().map(|&by| Length::from_metres(by)).collect();
    let worst = (0..readings.len())
        .max_by(|&a, &b| best.corrections[a].abs().total_cmp(&best.corrections[b].abs()))
        .and_then(|index| Some((readings.get(index)?.of, corrections.get(index)?.abs())));
    let closing_error = worst.map_or(Length::ZERO, |(_, error)| error);
    if let Some((worst, _)) = worst.filter(|(_, error)| *error > limit) {
        let worst = best.suspect.and_then(|index| Some(readings.get(index)?.of)).unwrap_or(worst);
        return Err(TapedError::DoesNotClose { closing_error, limit, worst });
    }
    let outline = Polygon::new(shape.clone());
    let crosses =
        outline.defects(0.001).iter().any(|defect| !matches!(defect, Defect::RepeatedCorner { .. }));
    let upright = crate::signed_area(&shape) > 1e-4;
    if crosses || !upright {
        return Err(TapedError::Folded);
    }
    let spare = readings.len().saturating_sub(best.freedoms.len());
    Ok(Taped { corners: shape, corrections, closing_error, spare, suspect: best.suspect })
}
