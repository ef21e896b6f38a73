//! The least move that clears a block of what is in its way.
//!
//! A rectangle that moves along a line is too near to a convex thing during one stretch of the move. The
//! stretches of all rows against all pieces of the thing are known exactly, and the least move is the first that
//! lies in none of them.

use crate::{Candidate, Change};
use chalkcourse_geometry::{Convex, DVec2, Moves, Polygon, Rect, Units, signed_area};
use chalkcourse_job::{Block, Edit};

/// A direction on a face, seen by a person who stands at the eave and looks up the slope.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Way {
    Left,
    Right,
    Up,
    Down,
}

impl Way {
    pub(crate) const ALL: [Self; 4] = [Self::Left, Self::Right, Self::Up, Self::Down];

    /// In the face's frame.
    pub(crate) fn unit(self) -> DVec2 {
        match self {
            Self::Left => DVec2::NEG_X,
            Self::Right => DVec2::X,
            Self::Up => DVec2::Y,
            Self::Down => DVec2::NEG_Y,
        }
    }
}

/// A convex thing and how far modules stay from it.
pub(crate) struct Obstacle {
    /// What it is.
    pub(crate) piece: Convex,
    /// Metres to stay away.
    pub(crate) reach: f64,
}

/// A move of a block in the frame of its face, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Move {
    /// Which way.
    pub(crate) way: Way,
    /// How far; a whole number of steps.
    pub(crate) by: f64,
}

impl Move {
    /// The candidate that moves a block so.
    pub(crate) fn of(self, block: &Block) -> Candidate {
        moved(block, self.way.unit() * self.by)
    }
}

/// The candidate that moves a block.
pub(crate) fn moved(block: &Block, by: DVec2) -> Candidate {
    let edit = Edit::PutBlock(Block { at: block.at + by, ..block.clone() });
    Candidate { change: Change::Move(block.id, by), edit }
}

/// A move is shown to a sixteenth of an inch or a millimetre, and rounded up to it, so that what is shown clears.
pub(crate) fn step(units: Units) -> f64 {
    match units {
        Units::FeetInches => 0.0254 / 16.0,
        Units::Metric => 0.001,
    }
}

/// A length rounded up to whole steps.
pub(crate) fn round_up(length: f64, units: Units) -> f64 {
    let step = step(units);
    (length / step - 1e-6).ceil() * step
}

/// More rows times pieces than this are taken together as their bounds: a move that clears the bounds clears them.
const MOST_PAIRS: usize = 1_024;

/// Rows of a block, or their bounds when there are too many to look at one by one.
pub(crate) fn rows_or_bounds(rows: &[Rect], pieces: usize) -> Vec<Rect> {
    if rows.len().saturating_mul(pieces.max(1)) <= MOST_PAIRS {
        return rows.to_vec();
    }
    rows.iter().copied().reduce(|a, b| a.union(&b)).into_iter().collect()
}

/// The least move along one of some ways after which no row is too near to any obstacle.
pub(crate) fn least_move(rows: &[Rect], obstacles: &[Obstacle], ways: &[Way], units: Units) -> Option<Move> {
    let rows = rows_or_bounds(rows, obstacles.len());
    let moves: Vec<(Moves, f64)> =
        rows.iter().flat_map(|row| obstacles.iter().map(|o| (o.piece.moves_of(row), o.reach))).collect();
    ways.iter()
        .map(|&way| {
            let stretches =
                moves.iter().filter_map(|(moves, reach)| moves.too_near_along(*reach, way.unit()));
            Move { way, by: first_free(stretches.collect(), units) }
        })
        .min_by(|a, b| a.by.total_cmp(&b.by))
}

/// The first whole number of steps that lies in none of some stretches.
pub(crate) fn first_free(mut stretches: Vec<(f64, f64)>, units: Units) -> f64 {
    stretches.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut at = 0.0;
    for (from, to) in stretches {
        if from < at + 1e-9 && to > at + 1e-9 {
            at = round_up(to, units);
        }
    }
    at
}

/// A shape as convex pieces: itself, or its triangles.
pub(crate) fn convex_pieces(shape: &Polygon) -> Vec<Convex> {
    let corners = &shape.outer;
    let turn = signed_area(corners).signum();
    let convex = (0..corners.len()).all(|i| {
        let (a, b, c) = (corners[i], corners[(i + 1) % corners.len()], corners[(i + 2) % corners.len()]);
        (b - a).perp_dot(c - b) * turn >= -1e-12
    });
    if convex && shape.holes.is_empty() {
        return Convex::around(corners.iter().copied()).into_iter().collect();
    }
    // An outline as taped may fold over itself; then what it covers is anyone's guess, and its hull is the safe one.
    let triangles = if shape.defects(1e-6).is_empty() { shape.triangles() } else { Vec::new() };
    if triangles.is_empty() {
        return Convex::around(corners.iter().copied()).into_iter().collect();
    }
    triangles.into_iter().filter_map(Convex::around).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::dvec2;
    use proptest::prelude::*;

    #[test]
    fn stretches_join_and_leave_gaps() {
        let free = |s: &[(f64, f64)]| first_free(s.to_vec(), Units::Metric);
        assert_eq!(free(&[]), 0.0);
        assert_eq!(free(&[(-1.0, 0.5)]), 0.5);
        assert_eq!(free(&[(0.4, 2.0), (-1.0, 0.5)]), 2.0);
        assert_eq!(free(&[(-1.0, 0.5), (0.6, 2.0)]), 0.5);
        assert_eq!(free(&[(-1.0, 0.0), (0.6, 2.0)]), 0.0);
    }

    #[test]
    fn a_move_is_whole_sixteenths_and_enough() {
        let inch = 0.0254;
        let row = [Rect::at(dvec2(4.5 * inch, 0.0), dvec2(40.0 * inch, 20.0 * inch))];
        let edge = Obstacle { piece: Convex::segment(dvec2(0.0, -9.0), dvec2(0.0, 9.0)), reach: 12.0 * inch };
        let it = least_move(&row, &[edge], &[Way::Right], Units::FeetInches).unwrap();
        assert!((it.by - 7.5 * inch).abs() < 1e-12, "{it:?}");
    }

    proptest! {
        /// The distance after the least move is what was asked, by the independent measure, and a step less is not.
        #[test]
        fn the_least_move_is_least(
            (u, v) in (-1.5..1.5f64, -1.5..1.5f64), (x, y) in (-2.0..2.0f64, -2.0..2.0f64), reach in 0.0..0.6f64,
            way in 0..4usize,
        ) {
            let row = Rect::at(dvec2(-0.8, -0.5), dvec2(1.6, 1.0));
            let (a, b) = (dvec2(u, v), dvec2(x, y));
            prop_assume!(row.distance_to_segment(a, b) < reach - 1e-3);
            let way = Way::ALL[way];
            let obstacle = Obstacle { piece: Convex::segment(a, b), reach };
            let it = least_move(&[row], &[obstacle], &[way], Units::Metric).unwrap();
            let after = |by: f64| row.moved(way.unit() * by).distance_to_segment(a, b);
            prop_assert!(after(it.by) >= reach - 1e-5, "{} < {reach}", after(it.by));
            prop_assert!(after(it.by - 0.0011) < reach);
        }
    }
}
