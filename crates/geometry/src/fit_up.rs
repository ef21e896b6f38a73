//! A deck as measured by tape: how far out of square it is, where to snap the base line, and whether a row of modules closes
//! within the range of its reveals when sizes vary.
//!
//! Lengths are metres. Corners are in a frame with the left end of the eave at the origin, u along the eave to the right, v up
//! the slope. Planning figures: snap from a straight control line, and check on the roof.

use chalkcourse_words::{Say, later as words};
use glam::{DVec2, dvec2};
use serde::Serialize;

/// Tape readings of a four-cornered deck.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Measured {
    /// Along the eave, from corner to corner.
    pub eave: f64,
    /// Along the head: the ridge or the upper edge.
    pub head: f64,
    /// Up the left rake.
    pub left: f64,
    /// Up the right rake.
    pub right: f64,
    /// The diagonal from the left end of the eave up to the right end of the head.
    pub rising: f64,
    /// The diagonal from the right end of the eave up to the left end of the head.
    pub falling: f64,
    /// Bow of each edge at its middle, from the string between its corners; positive into the deck.
    pub bows: Bows,
}

/// Bow of the edges into the deck at their middle, metres; negative outwards.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Bows {
    /// The eave, upwards.
    pub eave: f64,
    /// The head, downwards.
    pub head: f64,
    /// The left rake, to the right.
    pub left: f64,
    /// The right rake, to the left.
    pub right: f64,
}

/// The corners and sides of a four-cornered deck, by role, as seen from the eave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FourSided {
    /// Left and right end of the eave, right and left end of the head.
    pub corners: [DVec2; 4],
    /// Eave, head, left and right rake, by start corner.
    pub sides: [usize; 4],
}

impl FourSided {
    /// From a ring in the face's frame, in either direction. `None` unless it has four corners, and for one that stands on a
    /// corner, so that no side is the eave.
    pub fn of(ring: &[DVec2]) -> Option<Self> {
        if ring.len() != 4 {
            return None;
        }
        let mut order = [0, 1, 2, 3];
        order.sort_by(|&p, &q| ring[p].y.total_cmp(&ring[q].y));
        let [mut a, mut b, mut d, mut c] = order;
        if ring[a].x > ring[b].x {
            std::mem::swap(&mut a, &mut b);
        }
        if ring[d].x > ring[c].x {
            std::mem::swap(&mut d, &mut c);
        }
        let side = |p: usize, q: usize| match (q + 4 - p) % 4 {
            1 => Some(p),
            3 => Some(q),
            _ => None,
        };
        let sides = [side(a, b)?, side(d, c)?, side(a, d)?, side(b, c)?];
        Some(Self { corners: [a, b, c, d].map(|at| ring[at]), sides })
    }
}

/// Why there is no result.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FitUpError {
    /// An invalid length.
    #[error("{}", words::fitup::of_m_measure_it_again(&name, &value, &must))]
    Length {
        /// Which one.
        name: Say,
        /// As given.
        value: f64,
        /// The requirement.
        must: Say,
    },
    /// Three lengths that violate the triangle inequality.
    #[error("{}", words::fitup::the_eave_and_make_no(&rake, &diagonal, &a, &b, &c))]
    NoTriangle {
        /// Which rake.
        rake: Say,
        /// Which diagonal.
        diagonal: Say,
        /// The eave.
        a: f64,
        /// The rake.
        b: f64,
        /// The diagonal.
        c: f64,
    },
}

/// A deck computed from its measurements.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Deck {
    /// Left and right end of the eave, right and left end of the head.
    pub corners: [DVec2; 4],
    /// Misclosure: how much longer the head is as calculated from the other five measurements than as measured.
    pub closing: f64,
    /// The largest adjustment that makes all measurements agree.
    pub adjusted: f64,
    /// How far the left end of the head is to the right of square to the eave.
    pub racked_left: f64,
    /// How far the right end of the head is to the right of square to the eave.
    pub racked_right: f64,
    /// How much farther the right end of the head is from the eave than the left end.
    pub head_out_of_parallel: f64,
    bows: Bows,
}

/// How far a deck with parallel sides is racked, from its two diagonals: `(longer − shorter) · D / 2w`, with `side`
/// the side along which it is racked and D the mean diagonal. With the mean it is exact for a parallelogram:
/// d1² − d2² = 4 w δ.
pub fn racking(rising: f64, falling: f64, side: f64) -> f64 {
    (rising - falling) * (rising + falling) / 2.0 / (2.0 * side)
}

/// Hypotenuse for a square check: what the third tape must read, `√(a² + b²)`.
pub fn square_check(a: f64, b: f64) -> f64 {
    a.hypot(b)
}

impl Measured {
    fn lengths(&self) -> [f64; 6] {
        [self.eave, self.left, self.right, self.rising, self.falling, self.head]
    }

    /// Solves the deck.
    ///
    /// Four sides and two diagonals are one more than four corners need. The disagreement is reported as the misclosure and
    /// spread over the six by least squares (the usual adjustment by one condition equation), so that no single measurement is
    /// trusted more than the others.
    ///
    /// # Errors
    /// An invalid length, or three that make no triangle.
    pub fn solve(&self) -> Result<Deck, FitUpError> {
        let names = [
            words::fitup::THE_EAVE,
            words::fitup::THE_LEFT_RAKE,
            words::fitup::THE_RIGHT_RAKE,
            words::fitup::THE_RISING_DIAGONAL,
            words::fitup::THE_FALLING_DIAGONAL,
        ];
        for (name, value) in names.into_iter().chain([words::fitup::THE_HEAD]).zip(self.lengths()) {
            if !(value > 0.0 && value < 1e5) {
                return Err(FitUpError::Length { name, value, must: words::fitup::ABOVE_0_AND_BELOW_100 });
            }
        }
        let Bows { eave, head, left, right } = self.bows;
        let across = self.eave.min(self.head).min(self.left).min(self.right) / 4.0;
        for (name, value) in [
            (words::fitup::THE_BOW_OF_THE_EAVE, eave),
            (words::fitup::THE_BOW_OF_THE_HEAD, head),
            (words::fitup::THE_BOW_OF_THE_LEFT, left),
            (words::fitup::THE_BOW_OF_THE_RIGHT, right),
        ] {
            if value.is_nan() || value.abs() > across {
                return Err(FitUpError::Length { name, value, must: words::fitup::SHORT_OF_A_QUARTER_OF });
            }
        }
        let measured = self.lengths();
        let mut lengths = measured;
        let corners = corners(&lengths)?;
        let closing = closing(&lengths, &corners);
        let mut solved = corners;
        for _ in 0..20 {
            let off = self::closing(&lengths, &solved);
            if off.abs() < 1e-12 {
                break;
            }
            let slopes = slopes(&lengths)?;
            let sum: f64 = slopes.iter().map(|s| s * s).sum();
            for (length, slope) in lengths.iter_mut().zip(slopes) {
                *length -= off * slope / sum;
            }
            solved = self::corners(&lengths)?;
        }
        let adjusted = lengths.iter().zip(measured).map(|(l, m)| (l - m).abs()).fold(0.0, f64::max);
        let [a, b, c, d] = solved;
        Ok(Deck {
            corners: solved,
            closing,
            adjusted,
            racked_left: d.x - a.x,
            racked_right: c.x - b.x,
            head_out_of_parallel: c.y - d.y,
            bows: self.bows,
        })
    }
}

/// The corners from the eave, the rakes and the diagonals.
fn corners(&[eave, left, right, rising, falling, _]: &[f64; 6]) -> Result<[DVec2; 4], FitUpError> {
    let apex = |near: f64, far: f64, rake, diagonal| {
        let u = (eave * eave + near * near - far * far) / (2.0 * eave);
        let square = near * near - u * u;
        if square > 0.0 {
            Ok(dvec2(u, square.sqrt()))
        } else {
            Err(FitUpError::NoTriangle { rake, diagonal, a: eave, b: near, c: far })
        }
    };
    let d = apex(left, falling, words::fitup::THE_LEFT_RAKE, words::fitup::THE_FALLING_DIAGONAL)?;
    let c = apex(right, rising, words::fitup::THE_RIGHT_RAKE, words::fitup::THE_RISING_DIAGONAL)?;
    Ok([DVec2::ZERO, dvec2(eave, 0.0), dvec2(eave - c.x, c.y), d])
}

fn closing(lengths: &[f64; 6], corners: &[DVec2; 4]) -> f64 {
    corners[2].distance(corners[3]) - lengths[5]
}

/// Derivative of the misclosure by each measurement.
fn slopes(lengths: &[f64; 6]) -> Result<[f64; 6], FitUpError> {
    let step = lengths[0] * 1e-6;
    let mut slopes = [0.0; 6];
    for (i, slope) in slopes.iter_mut().enumerate() {
        let at = |by: f64| {
            let mut moved = *lengths;
            if let Some(length) = moved.get_mut(i) {
                *length += by;
            }
            corners(&moved).map(|corners| closing(&moved, &corners))
        };
        *slope = (at(step)? - at(-step)?) / (2.0 * step);
    }
    Ok(slopes)
}

/// What the base line should be parallel to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Along {
    /// Parallel to the eave.
    Eave,
    /// Parallel to the head, so that the courses above the array come out even.
    Head,
    /// Halfway between the two: the error is shared.
    Between,
}

/// Where to snap a line.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Snap {
    /// Distance square to the string along the eave, at the left rake.
    pub at_left: f64,
    /// The same at the right rake.
    pub at_right: f64,
    /// At the middle of the eave, from the edge itself, which may be bowed.
    pub at_middle: f64,
}

impl Deck {
    /// Where to snap the base line; its lower end is `up` metres from the eave.
    pub fn snap(&self, up: f64, along: Along) -> Snap {
        let [a, b, c, d] = self.corners;
        let head = if (c.x - d.x).abs() > 1e-9 { (c.y - d.y) / (c.x - d.x) } else { 0.0 };
        let slope = match along {
            Along::Eave => 0.0,
            Along::Head => head,
            Along::Between => (head.atan() / 2.0).tan(),
        };
        let rise = slope * (b.x - a.x);
        let (at_left, at_right) = (up + (-rise).max(0.0), up + rise.max(0.0));
        Snap { at_left, at_right, at_middle: (at_left + at_right) / 2.0 - self.bows.eave }
    }

    /// The widest block square to the eave from `v` up by `height`, between the rakes, less bows: its extent along u. Negative
    /// width if it does not fit.
    pub fn opening(&self, v: f64, height: f64) -> (f64, f64) {
        let [a, b, c, d] = self.corners;
        let at = |foot: DVec2, top: DVec2, v: f64| foot.x + (top.x - foot.x) * (v / top.y).clamp(0.0, 1.0);
        let left = at(a, d, v).max(at(a, d, v + height)) + self.bows.left.max(0.0);
        let right = at(b, c, v).min(at(b, c, v + height)) - self.bows.right.max(0.0);
        (left, right)
    }
}

/// A row to close: a number of modules in an opening, with tolerances.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RowToClose {
    /// How many modules.
    pub modules: usize,
    /// Nominal module size along the row.
    pub module: f64,
    /// Its tolerance, plus or minus.
    pub module_varies: f64,
    /// The planned reveal: kept unless it makes the row too long.
    pub reveal: f64,
    /// Minimum reveal.
    pub least: f64,
    /// Setting tolerance of a reveal.
    pub reveal_varies: f64,
    /// Width of the opening.
    pub opening: f64,
}

/// Whether and how a row closes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Closed {
    /// The reveal to set: as planned, or, if the row is too long with that, the one that just fills the opening, but never less
    /// than the minimum.
    pub reveal: f64,
    /// How much too long the row is as planned; 0 if it fits.
    pub too_long: f64,
    /// Room left at the sides with that reveal; negative is what is missing.
    pub spare: f64,
    /// How much longer or shorter the row can come out if all errors add up.
    pub worst: f64,
    /// The same as the root of the sum of squares: the expected error if they are independent.
    pub likely: f64,
    /// Whether it closes with nominal modules.
    pub closes: bool,
    /// Whether it closes in the worst case.
    pub closes_at_worst: bool,
    /// Whether it closes within the likely error.
    pub closes_likely: bool,
}

impl RowToClose {
    /// Whether and how the row closes: the modules at minimum reveal must fit the opening. Joints are not opened to fill it: the
    /// rest is left at the sides, for the flashing to cover.
    ///
    /// Module tolerances are absorbed by the reveals: the row closes if the remaining reveals, after sharing the modules' error
    /// among them, are not below the minimum.
    ///
    /// # Errors
    /// No modules, or an invalid length.
    pub fn close(&self) -> Result<Closed, FitUpError> {
        let (least, laid) = (self.least, self.reveal);
        let lengths = [
            (words::fitup::THE_MODULE, self.module, self.module > 0.0),
            (words::fitup::THE_VARIATION_OF_MODULES, self.module_varies, self.module_varies >= 0.0),
            (words::fitup::THE_VARIATION_OF_REVEALS, self.reveal_varies, self.reveal_varies >= 0.0),
            (words::fitup::THE_LEAST_REVEAL, least, least >= 0.0),
            (words::fitup::THE_REVEAL, laid, laid >= 0.0),
            (words::fitup::THE_OPENING, self.opening, self.opening > 0.0),
        ];
        for (name, value, good) in lengths {
            if !(good && value.is_finite()) {
                return Err(FitUpError::Length {
                    name,
                    value,
                    must: words::fitup::A_LENGTH_RANGES_FROM_LESS,
                });
            }
        }
        if self.modules == 0 {
            return Err(FitUpError::Length {
                name: words::fitup::A_ROW,
                value: 0.0,
                must: words::fitup::AT_LEAST_ONE_MODULE_LONG,
            });
        }
        let (n, joints) = (self.modules as f64, (self.modules - 1) as f64);
        let left = self.opening - n * self.module;
        let too_long = (joints * laid - left).max(0.0);
        let reveal = if too_long > 0.0 && joints > 0.0 { (left / joints).max(least) } else { laid };
        let (worst, likely) = stack(self.modules, self.module_varies, self.reveal_varies);
        let closes = |error: f64| left - error - joints * least >= -1e-12;
        Ok(Closed {
            reveal,
            too_long,
            spare: left - joints * reveal,
            worst,
            likely,
            closes: closes(0.0),
            closes_at_worst: closes(worst),
            closes_likely: closes(likely),
        })
    }
}

/// Error of a row: all errors added, and the root of the sum of their squares.
pub fn stack(modules: usize, module_varies: f64, reveal_varies: f64) -> (f64, f64) {
    let (n, joints) = (modules as f64, modules.saturating_sub(1) as f64);
    let squares = n * module_varies * module_varies + joints * reveal_varies * reveal_varies;
    (n * module_varies + joints * reveal_varies, squares.sqrt())
}

#[cfg(test)]
mod tests;
