//! A deck as a tape measures it: how far out of square it is, where to snap the base line, and whether a row of
//! modules closes within the range of its reveals when sizes vary.
//!
//! Lengths are metres. Corners are in a frame with the left end of the eave at the origin, u along the eave to the
//! right, v up the slope. Planning figures: snap from a straight control line, and check on the roof.

use chalkcourse_words::{Say, later as words};
use glam::{DVec2, dvec2};
use serde::Serialize;

/// What a tape reads on a deck with four corners.
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
    /// How far each edge bows at its middle from the string between its corners; above 0 into the deck.
    pub bows: Bows,
}

/// How far edges bow into the deck at their middle, metres; below 0 out of it.
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

/// The corners and sides of a deck with four corners by what they are to a person who stands at its eave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FourSided {
    /// Left and right end of the eave, right and left end of the head.
    pub corners: [DVec2; 4],
    /// Eave, head, left and right rake, by the corner that each starts from.
    pub sides: [usize; 4],
}

impl FourSided {
    /// Of a ring in the face's frame, run either way. `None` with more or fewer corners, and for one that stands on a
    /// corner, so that no side of it is the eave.
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

/// Why there is no answer.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FitUpError {
    /// A length that is none.
    #[error("{}", words::fitup::of_m_measure_it_again(&name, &value, &must))]
    Length {
        /// Which one.
        name: Say,
        /// As given.
        value: f64,
        /// What it must be.
        must: Say,
    },
    /// Three lengths that make no triangle.
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

/// A deck worked out from its measures.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Deck {
    /// Left and right end of the eave, right and left end of the head.
    pub corners: [DVec2; 4],
    /// By how much the head as worked out from the other five measures is longer than the head as measured.
    pub closing: f64,
    /// The most by which a measure was changed to make them all agree.
    pub adjusted: f64,
    /// How far the left end of the head stands right of square to the eave.
    pub racked_left: f64,
    /// How far the right end of the head stands right of square to the eave.
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

/// Sides of a right angle: what the third must read, `√(a² + b²)`.
pub fn square_check(a: f64, b: f64) -> f64 {
    a.hypot(b)
}

impl Measured {
    fn lengths(&self) -> [f64; 6] {
        [self.eave, self.left, self.right, self.rising, self.falling, self.head]
    }

    /// Works the deck out.
    ///
    /// Four sides and two diagonals are one more than four corners need. What does not agree is told as the
    /// closing error and spread over the six, the least squares of all changes (the usual adjustment by one condition
    /// equation), so that no single measure is trusted more than the others.
    ///
    /// # Errors
    /// A measure that is no length, or three that make no triangle.
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

/// How the closing error grows with each measure.
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

/// What the base line should be level with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Along {
    /// Parallel to the eave.
    Eave,
    /// Parallel to the head, so that the courses above the array come out even.
    Head,
    /// Halfway between the two: what is out of parallel is shared.
    Between,
}

/// Where to snap a line.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Snap {
    /// Square up from the string along the eave, where the left rake meets it.
    pub at_left: f64,
    /// The same at the right.
    pub at_right: f64,
    /// At the middle of the eave, from the edge itself, which may bow.
    pub at_middle: f64,
}

impl Deck {
    /// Where to snap the base line, `up` metres from the eave at its lower end.
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

    /// The widest block with sides square to the eave from `v` up by `height`, between the rakes, bows taken off:
    /// from where to where along u. Less than nothing when it does not fit.
    pub fn opening(&self, v: f64, height: f64) -> (f64, f64) {
        let [a, b, c, d] = self.corners;
        let at = |foot: DVec2, top: DVec2, v: f64| foot.x + (top.x - foot.x) * (v / top.y).clamp(0.0, 1.0);
        let left = at(a, d, v).max(at(a, d, v + height)) + self.bows.left.max(0.0);
        let right = at(b, c, v).min(at(b, c, v + height)) - self.bows.right.max(0.0);
        (left, right)
    }
}

/// A row to close: so many modules in an opening, with sizes that vary.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RowToClose {
    /// How many modules.
    pub modules: usize,
    /// One module along the row, as its sheet says.
    pub module: f64,
    /// How much one may be larger or smaller than that.
    pub module_varies: f64,
    /// The reveal that it is laid with: it stays unless the row is too long with it.
    pub reveal: f64,
    /// The least reveal between neighbours.
    pub least: f64,
    /// How far one reveal can be set wrong.
    pub reveal_varies: f64,
    /// From side to side.
    pub opening: f64,
}

/// Whether and how a row closes.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Closed {
    /// The reveal to set: as laid, or where the row is too long with that, the one with which it just fills its
    /// opening, and never less than the least.
    pub reveal: f64,
    /// By how much the row is too long for its opening as it is laid; 0 where it fits.
    pub too_long: f64,
    /// What is over at the sides with that reveal; below 0 what is missing.
    pub spare: f64,
    /// By how much the row can come out longer or shorter when all err the same way.
    pub worst: f64,
    /// The same as the root of the sum of squares: what to expect when errors are independent.
    pub likely: f64,
    /// Whether it closes with modules as on the sheet.
    pub closes: bool,
    /// Whether it closes even with the worst.
    pub closes_at_worst: bool,
    /// Whether it closes within what is likely.
    pub closes_likely: bool,
}

impl RowToClose {
    /// Whether and how the row closes: modules at the least reveal must go into the opening. Joints are not opened to fill it:
    /// what is over stays at the sides, which flashings take up.
    ///
    /// With sizes that vary the reveals are what gives: the row closes when the reveals that are left, the modules'
    /// error shared among them, are not below the least.
    ///
    /// # Errors
    /// No modules, or a length that is none.
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

/// How much a row can err: all errors added, and the root of the sum of their squares.
pub fn stack(modules: usize, module_varies: f64, reveal_varies: f64) -> (f64, f64) {
    let (n, joints) = (modules as f64, modules.saturating_sub(1) as f64);
    let squares = n * module_varies * module_varies + joints * reveal_varies * reveal_varies;
    (n * module_varies + joints * reveal_varies, squares.sqrt())
}

#[cfg(test)]
mod tests;
