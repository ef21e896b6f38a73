//! Roll goods laid in level courses from the eave up, and shingle courses lost at sloped edges.

use crate::{MeasuredPlace, MeasuredShape};
use chalkcourse_geometry::{DVec2, Polygon};
use chalkcourse_job::Roll;
use chalkcourse_layout::CourseLines;

/// How rolls are laid over all places of a term.
///
/// Courses run level from the lowest point of each place, as far as the place extends anywhere within the course: what is cut off
/// along a hip or a valley is waste. Rolls are used one after the other; a new roll within a course laps the end of the previous
/// one.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LaidOut {
    /// All strips, in the order they are laid.
    pub strips: Vec<Strip>,
    /// Rolls started.
    pub rolls: u64,
    /// Length used off the rolls, including laps and remnants too short to use, in metres.
    pub length: f64,
    /// Area used off the rolls, by place, in square metres.
    pub(crate) shares: Vec<f64>,
    /// Length of the starter strip, by place, in metres.
    starters: Vec<f64>,
}

/// One strip as laid, in the frame of its face, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strip {
    /// Index of its place.
    pub place: usize,
    /// Its lower edge.
    pub low: f64,
    /// Its left end.
    pub from: f64,
    /// Its right end.
    pub to: f64,
}

/// A place with more courses than this means a hair-thin roll width.
const MOST_COURSES: f64 = 5_000.0;
/// A remnant shorter than this is not laid: common practice, no source.
const SHORTEST: f64 = 0.3;

/// Lays rolls over the places of a term. `before` has lists with what this roll took on them: a place with the same shape, at the
/// same index, has the same strips.
pub(crate) fn lay(roll: &Roll, places: &[MeasuredPlace], before: &[(&[MeasuredPlace], &LaidOut)]) -> LaidOut {
    let mut laid = LaidOut { shares: vec![0.0; places.len()], ..LaidOut::default() };
    let mut left = 0.0;
    for (index, place) in places.iter().enumerate() {
        let same =
            |of: &&(&[MeasuredPlace], &LaidOut)| of.0.get(index).is_some_and(|it| it.shape == place.shape);
        let first = laid.strips.len();
        let starter = match before.iter().find(same) {
            Some((_, known)) => {
                laid.strips.extend(known.strips_of(index));
                known.starters.get(index).copied().unwrap_or_default()
            }
            None => courses(roll, index, &place.shape, &mut laid.strips),
        };
        // A starter strip as wide as the lap comes off along the roll; it is charged as a fraction of a roll.
        let mut off_roll = starter * roll.side_lap.metres() / roll.width.metres();
        for nth in first..laid.strips.len() {
            let long = laid.strips.get(nth).map_or(0.0, |strip| strip.to - strip.from);
            off_roll += laid.take(&mut left, long, roll);
        }
        laid.starters.push(starter);
        laid.length += off_roll;
        laid.shares[index] = off_roll * roll.width.metres();
    }
    laid
}

/// Adds the strips of one place; returns the length of its starter strip.
fn courses(roll: &Roll, place: usize, shape: &MeasuredShape, strips: &mut Vec<Strip>) -> f64 {
    let (width, step) = (roll.width.metres(), (roll.width - roll.side_lap).metres());
    let Some(shape) = Outlines::of(shape) else { return 0.0 };
    let (Some(bottom), Some(top)) = (shape.level(f64::min), shape.level(f64::max)) else { return 0.0 };
    let courses = (((top - bottom) / step) - 1e-6).ceil().clamp(1.0, MOST_COURSES) as usize;
    for course in 0..courses {
        let low = bottom + step * course as f64;
        // What the course below covers with its lap needs no course of its own.
        if course > 0 && low + (width - step) >= top - 1e-6 {
            break;
        }
        strips.extend(shape.spans(low, low + width).into_iter().map(|(from, to)| Strip {
            place,
            low,
            from,
            to,
        }));
    }
    let starter = |lap: f64| shape.spans(bottom, bottom + lap).iter().map(|(a, b)| b - a).sum();
    if roll.starter { starter(roll.side_lap.metres()) } else { 0.0 }
}

impl LaidOut {
    /// The strips of one place.
    fn strips_of(&self, place: usize) -> impl Iterator<Item = &Strip> {
        let first = self.strips.partition_point(|strip| strip.place < place);
        self.strips.iter().skip(first).take_while(move |strip| strip.place == place)
    }

    /// Takes a strip off the rolls; returns the length of roll used.
    fn take(&mut self, left: &mut f64, strip: f64, roll: &Roll) -> f64 {
        let (mut need, mut used) = (strip, 0.0);
        let lap = roll.end_lap.metres();
        // A bound on the loop: even a strip of a kilometre is only dozens of rolls.
        for _ in 0..10_000 {
            if need <= *left + 1e-9 {
                *left = (*left - need).max(0.0);
                return used + need;
            }
            // The rest of the roll is laid and lapped by the next one; a remnant too short to lay is waste.
            if *left > lap + SHORTEST {
                need -= *left - lap;
            }
            used += *left;
            *left = roll.length.metres();
            self.rolls += 1;
        }
        used + need
    }
}

/// Area of shingles that courses take on a face: each course as far as the face extends within it. What a rake cuts off starts
/// the next course, so a rectangle has no waste; what a hip or a valley cuts off is waste.
pub(crate) fn coursed_area(face: &Polygon, courses: &CourseLines) -> f64 {
    let shape = Outlines(vec![face]);
    let (Some(bottom), Some(top)) = (shape.level(f64::min), shape.level(f64::max)) else { return 0.0 };
    let lines = courses.lines().filter(|line| *line > bottom + 1e-6 && *line < top - 1e-6);
    let levels: Vec<f64> = std::iter::once(bottom).chain(lines).chain([top]).collect();
    levels
        .iter()
        .zip(levels.iter().skip(1))
        .map(|(&low, &high)| shape.spans(low, high).iter().map(|(a, b)| b - a).sum::<f64>() * (high - low))
        .sum()
}

/// Outlines that are covered together.
struct Outlines<'a>(Vec<&'a Polygon>);

impl<'a> Outlines<'a> {
    fn of(shape: &'a MeasuredShape) -> Option<OwnedOutlines<'a>> {
        let rect = |rect: &chalkcourse_geometry::Rect| Polygon::new(rect.corners().to_vec());
        match shape {
            MeasuredShape::Outlines(outlines) => {
                Some(OwnedOutlines::Kept(Outlines(outlines.iter().collect())))
            }
            MeasuredShape::Rect(at) => Some(OwnedOutlines::Made(vec![rect(at)])),
            MeasuredShape::Area(rects) => Some(OwnedOutlines::Made(rects.iter().map(rect).collect())),
            MeasuredShape::Point(_) | MeasuredShape::Path(_) | MeasuredShape::Whole => None,
        }
    }

    fn level(&self, pick: fn(f64, f64) -> f64) -> Option<f64> {
        self.0.iter().flat_map(|outline| &outline.outer).map(|corner| corner.y).reduce(pick)
    }

    /// The stretches, left to right, that some outline covers anywhere between two heights.
    fn spans(&self, low: f64, high: f64) -> Vec<(f64, f64)> {
        let mut spans = Vec::new();
        for outline in &self.0 {
            spans_of(outline, low, high, &mut spans);
        }
        spans.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut merged: Vec<(f64, f64)> = Vec::with_capacity(spans.len());
        for (from, to) in spans {
            match merged.last_mut() {
                Some(last) if from <= last.1 + 1e-9 => last.1 = last.1.max(to),
                _ => merged.push((from, to)),
            }
        }
        merged
    }
}

/// The outlines of a shape, borrowed or built.
enum OwnedOutlines<'a> {
    Kept(Outlines<'a>),
    Made(Vec<Polygon>),
}

impl OwnedOutlines<'_> {
    fn with<T>(&self, f: impl FnOnce(&Outlines) -> T) -> T {
        match self {
            Self::Kept(outlines) => f(outlines),
            Self::Made(outlines) => f(&Outlines(outlines.iter().collect())),
        }
    }

    fn level(&self, pick: fn(f64, f64) -> f64) -> Option<f64> {
        self.with(|outlines| outlines.level(pick))
    }

    fn spans(&self, low: f64, high: f64) -> Vec<(f64, f64)> {
        self.with(|outlines| outlines.spans(low, high))
    }
}

/// Between two adjacent vertex heights an outline is a row of trapezoids; each extends as far as its wider ends.
fn spans_of(outline: &Polygon, low: f64, high: f64, spans: &mut Vec<(f64, f64)>) {
    let mut levels: Vec<f64> =
        outline.rings().flatten().map(|p| p.y).filter(|y| *y > low && *y < high).collect();
    levels.extend([low, high]);
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|a, b| *a - *b <= 1e-9);
    for (bottom, top) in levels.iter().zip(levels.iter().skip(1)) {
        let middle = (bottom + top) / 2.0;
        let at = |a: DVec2, b: DVec2, y: f64| a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);
        let mut crossed: Vec<(f64, f64, f64)> = outline
            .sides()
            .filter(|(_, _, a, b)| (a.y < middle) != (b.y < middle))
            .map(|(_, _, a, b)| {
                let (one, other) = (at(a, b, *bottom), at(a, b, *top));
                (at(a, b, middle), one.min(other), one.max(other))
            })
            .collect();
        crossed.sort_by(|a, b| a.0.total_cmp(&b.0));
        for pair in crossed.chunks_exact(2) {
            spans.push((pair[0].1, pair[1].2));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Length, Rect, dvec2};

    fn feet(x: f64) -> f64 {
        x * 0.3048
    }

    fn felt(side_lap_in: f64, starter: bool) -> Roll {
        Roll {
            width: Length::from_inches(36.0),
            length: Length::from_feet(144.0),
            side_lap: Length::from_inches(side_lap_in),
            end_lap: Length::from_inches(4.0),
            starter,
        }
    }

    fn on(shape: MeasuredShape) -> Vec<MeasuredPlace> {
        vec![MeasuredPlace { shape, ..MeasuredPlace::test_run(1.0) }]
    }

    fn face(wide: f64, high: f64) -> Vec<MeasuredPlace> {
        on(MeasuredShape::Rect(Rect::at(dvec2(0.0, 0.0), dvec2(feet(wide), feet(high)))))
    }

    /// No. 15 felt, 36 in × 144 ft = 432 sq ft, nets about 400 (handbook coverage). Single, lapped 2 in (IRC table
    /// R905.1.1(2)): on 60 × 16.77 ft a course covers 34 in, 201.2 / 34 = 5.9, so 6 courses of 60 ft, 360 ft of roll and
    /// two end laps of 4 in where a roll ends within a course (at 144 and at 288 ft): 360.67 ft, 3 rolls.
    #[test]
    fn one_layer_on_a_gable() {
        let laid = lay(&felt(2.0, false), &face(60.0, 16.77), &[]);
        assert_eq!(laid.strips.len(), 6);
        assert!((laid.length / 0.3048 - (360.0 + 2.0 * 4.0 / 12.0)).abs() < 1e-6, "{}", laid.length / 0.3048);
        assert_eq!(laid.rolls, 3);
        assert!((laid.shares[0] - laid.length * 0.9144).abs() < 1e-9);
    }

    /// Double (IRC table R905.1.1(2), from memory): a strip of 19 in at the eave, then 36 in sheets lapped 19 in, a course
    /// each 17 in. On 40 × 18.25 ft = 219 in: sheets at 0, 17, … until one reaches 219: (219 − 36) / 17 = 10.8, so 12 of
    /// them, 480 ft, and 40 × 19/36 = 21.11 ft for the strip. End laps are where rolls end: 144, 288, 432 ft.
    #[test]
    fn two_layers_on_a_low_slope() {
        let laid = lay(&felt(19.0, true), &face(40.0, 18.25), &[]);
        assert_eq!(laid.strips.len(), 12);
        let expect = 480.0 + 40.0 * 19.0 / 36.0 + 3.0 * 4.0 / 12.0;
        assert!((laid.length / 0.3048 - expect).abs() < 1e-6, "{} against {expect}", laid.length / 0.3048);
    }

    /// A triangle 12 ft wide at the eave and 6 ft high, courses of 1 ft: each is as long as the triangle at its lower edge,
    /// 12 + 10 + 8 + 6 + 4 + 2 = 42, where the triangle has 36.
    #[test]
    fn a_hip_end_loses_what_its_hips_cut_off() {
        let triangle = Polygon::new(vec![dvec2(0.0, 0.0), dvec2(12.0, 0.0), dvec2(6.0, 6.0)]);
        let courses = CourseLines { eave: 0.0, top: 6.0, first: 1.0, exposure: 1.0 };
        assert!((coursed_area(&triangle, &courses) - 42.0).abs() < 1e-9);
        let square = Polygon::new(Rect::at(dvec2(0.0, 0.0), dvec2(5.0, 4.5)).corners().to_vec());
        let courses = CourseLines { top: 4.5, ..courses };
        assert!((coursed_area(&square, &courses) - 22.5).abs() < 1e-9);
    }

    #[test]
    fn a_hole_is_not_laid_over_and_a_notch_is() {
        let mut face = Polygon::new(Rect::at(dvec2(0.0, 0.0), dvec2(10.0, 4.0)).corners().to_vec());
        face.holes.push(vec![dvec2(4.0, 0.5), dvec2(4.0, 3.5), dvec2(6.0, 3.5), dvec2(6.0, 0.5)]);
        let shape = Outlines(vec![&face]);
        assert_eq!(shape.spans(1.0, 2.0), [(0.0, 4.0), (6.0, 10.0)]);
        // a course that extends below the hole is laid through
        assert_eq!(shape.spans(0.0, 2.0), [(0.0, 10.0)]);
    }
}
