//! The least move that clears a block of what is in its way.
//!
//! During which stretches of a straight move a block is too near to a keep-out is known exactly; the least move is the first
//! place that lies in none of them.

use crate::view::Laid;
use crate::{Candidate, Change};
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{Convex, DVec2, Units};
use chalkcourse_job::{Block, Edit};
use chalkcourse_limits::{Against, KeepOut, Shape};

/// The candidate that moves a block.
pub(crate) fn moved(block: &Block, by: DVec2) -> Candidate {
    let edit = Edit::PutBlock(Block { at: block.at + by, ..block.clone() });
    Candidate { change: Change::Move(block.id, by), edit }
}

/// A move is shown to a sixteenth of an inch or a millimetre, and rounded up to it, so that what is shown clears.
fn step(units: Units) -> f64 {
    match units {
        Units::FeetInches => 0.0254 / 16.0,
        Units::Metric => 0.001,
    }
}

/// A length rounded up to whole steps.
fn round_up(length: f64, units: Units) -> f64 {
    let step = step(units);
    (length / step - 1e-6).ceil() * step
}

/// More rows times pieces than this are taken together as their bounds: a move that clears the bounds clears them.
const MOST_PAIRS: usize = 1_024;
/// Of places along the eave from which a way up or down is looked for, the nearest so many.
const MOST_TURNS: usize = 16;

/// The least move along the eave or up the slope, or else along both, after which a block clears some keep-outs.
pub(crate) fn clear_of(laid: &Laid<'_>, keep_outs: &[&KeepOut], units: Units) -> Option<Candidate> {
    let inward = keep_outs.first().and_then(|keep_out| inward(laid, keep_out));
    let apart = keep_outs.iter().flat_map(|keep_out| side_by_side(keep_out)).collect();
    let by = Clearing { rows: rows_of(laid, keep_outs), keep_outs, apart, inward, units }.least()?;
    Some(moved(laid.block, by))
}

/// A border as its sides: what crosses two of them may clear each at a place of its own.
fn side_by_side(keep_out: &KeepOut) -> Vec<KeepOut> {
    let side = |a, b| {
        let shape = Shape::Pieces(vec![Convex::segment(a, b)]);
        KeepOut { shape, ..keep_out.clone() }
    };
    match &keep_out.shape {
        Shape::Outside(inside) => inside.sides().map(|(_, _, a, b)| side(a, b)).collect(),
        Shape::Pieces(_) => vec![keep_out.clone()],
    }
}

/// Into the face from a side of it, since over the edge and away is no way to keep off it; around a hole is one.
fn inward(laid: &Laid<'_>, keep_out: &KeepOut) -> Option<DVec2> {
    let span = laid.face.edges.get(*keep_out.edges.first()?)?;
    matches!(keep_out.against, Against::Side { .. }).then(|| span.inward())
}

/// Rows of a block, or their bounds when there are too many to look at one by one.
fn rows_of(laid: &Laid<'_>, keep_outs: &[&KeepOut]) -> Vec<Part> {
    let rows: Vec<Part> = laid.rows().collect();
    let pieces = keep_outs.iter().map(|keep_out| match &keep_out.shape {
        Shape::Pieces(pieces) => pieces.len(),
        Shape::Outside(shape) => shape.sides().count() * 4,
    });
    if rows.len().saturating_mul(pieces.sum::<usize>().max(1)) <= MOST_PAIRS {
        rows
    } else {
        vec![laid.whole()]
    }
}

/// Rows that are to come to clear keep-outs.
struct Clearing<'a> {
    rows: Vec<Part>,
    keep_outs: &'a [&'a KeepOut],
    /// The same, borders as their sides.
    apart: Vec<KeepOut>,
    /// A move goes this way at least a little, where that is said.
    inward: Option<DVec2>,
    units: Units,
}

impl Clearing<'_> {
    fn least(&self) -> Option<DVec2> {
        let straight = [DVec2::X, DVec2::Y].into_iter().filter_map(|axis| {
            let by = axis * self.along(axis, DVec2::ZERO)?;
            (by != DVec2::ZERO).then_some(by)
        });
        let least = |a: &DVec2, b: &DVec2| a.length().total_cmp(&b.length());
        straight.min_by(least).or_else(|| {
            let (stops, _) = self.stops(DVec2::X, DVec2::ZERO);
            let turned = stops.into_iter().take(MOST_TURNS).filter_map(|u| {
                let aside = DVec2::X * u;
                Some(aside + DVec2::Y * self.along(DVec2::Y, aside)?)
            });
            turned.filter(|by| *by != DVec2::ZERO).min_by(least)
        })
    }

    /// The least move along an axis, from `start`, in whole steps.
    fn along(&self, axis: DVec2, start: DVec2) -> Option<f64> {
        let (stops, stretches) = self.stops(axis, start);
        stops.into_iter().find(|&by| {
            let goes_in = self.inward.is_none_or(|inward| (start + axis * by).dot(inward) > 0.01 * by.abs());
            goes_in
                && !stretches.iter().any(|&(low, high)| low < by - 1e-9 && by + 1e-9 < high)
                && self.on_the_face(start + axis * by)
        })
    }

    /// Where something stops being too near, the nearest first; and the stretches in which it is.
    fn stops(&self, axis: DVec2, start: DVec2) -> (Vec<f64>, Vec<(f64, f64)>) {
        let rows = self.moved(start);
        let stretches: Vec<(f64, f64)> =
            self.apart.iter().flat_map(|keep_out| keep_out.too_near_along(&rows, axis)).collect();
        let ends = |&(low, high): &(f64, f64)| [-round_up(-low, self.units), round_up(high, self.units)];
        let mut stops: Vec<f64> = stretches.iter().flat_map(ends).chain([0.0]).collect();
        stops.sort_by(|a, b| a.abs().total_cmp(&b.abs()).then(a.total_cmp(b)));
        stops.dedup();
        (stops, stretches)
    }

    fn moved(&self, by: DVec2) -> Vec<Part> {
        self.rows.iter().map(|row| Part { rect: row.rect.moved(by), ..*row }).collect()
    }

    /// A border is crossed going out as well as going in.
    fn on_the_face(&self, by: DVec2) -> bool {
        let mut borders = self.keep_outs.iter().filter(|it| matches!(it.shape, Shape::Outside(_)));
        borders.all(|border| self.moved(by).iter().all(|row| border.clears(row)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{all, block, gable_job, vent};
    use chalkcourse_geometry::Length;
    use proptest::prelude::*;

    #[test]
    fn whole_steps() {
        assert!((round_up(7.49 * 0.0254, Units::FeetInches) - 7.5 * 0.0254).abs() < 1e-12);
        assert!((round_up(0.2051, Units::Metric) - 0.206).abs() < 1e-12);
        assert_eq!(round_up(0.0, Units::Metric), 0.0);
    }

    proptest! {
        /// After the least move there is no finding, and after half of it along any axis there is one.
        #[test]
        fn the_least_move_is_least((u, v) in (3.0..7.0f64, 1.0..3.5f64), clearance in 1.0..20.0f64) {
            let mut job = gable_job();
            job.units = Units::Metric;
            job.blocks = vec![block(3, 1, (4.0, 2.0), 1, 1)];
            job.penetrations = vec![vent(5, u, v)];
            job.penetrations[0].clearance = Some(Length::from_inches(clearance));
            let near = |job: &chalkcourse_job::Resolved| all(job).into_iter().find(|f| f.rule == "clearance");
            let Some(found) = near(&job) else { return Ok(()) };
            let Some(Change::Move(_, by)) = found.candidate.map(|candidate| candidate.change) else { panic!() };
            let after = |by: DVec2| {
                let mut moved = job.clone();
                moved.blocks[0].at += by;
                near(&moved).is_some()
            };
            prop_assert!(!after(by), "{by} is not enough");
            for axis in [DVec2::X, DVec2::NEG_X, DVec2::Y, DVec2::NEG_Y] {
                let half = axis * (by.length() / 2.0 - 0.001);
                prop_assert!(by.length() < 0.01 || after(half), "half of {by} is enough along {axis}");
            }
        }
    }
}
