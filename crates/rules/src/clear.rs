//! The least move that clears a block of what is in its way.
//!
//! A rectangle that moves along a line is too near to a convex thing during one stretch of the move. The
//! stretches of all rows against all pieces of the thing are known exactly, and the least move is the first that
//! lies in none of them.

use crate::{Candidate, Change};
use chalkcourse_geometry::{DVec2, Polygon, Rect, Units, signed_area};
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
    /// Its corners: two for an edge.
    pub(crate) corners: Vec<DVec2>,
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
    let hulls: Vec<(DVec2, Vec<DVec2>, f64)> = rows
        .iter()
        .flat_map(|row| obstacles.iter().map(|o| (row.centre(), hull_around(&o.corners, row), o.reach)))
        .collect();
    ways.iter()
        .map(|&way| {
            let stretches =
                hulls.iter().filter_map(|(from, hull, reach)| stretch(hull, *reach, *from, way.unit()));
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

/// Taken off a rectangle on all sides, so that one that slides along a limit does not catch on it.
const SLIDE: f64 = 1e-6;

/// Where the middle of a rectangle may not be, if it is to stay off a convex thing.
pub(crate) fn hull_around(corners: &[DVec2], rect: &Rect) -> Vec<DVec2> {
    let half = rect.size() / 2.0 - SLIDE;
    let offsets = Rect { min: -half, max: half }.corners();
    convex_hull(corners.iter().flat_map(|&c| offsets.iter().map(move |&o| c + o)).collect())
}

/// The convex hull, counter-clockwise (Andrew's monotone chain).
pub(crate) fn convex_hull(mut points: Vec<DVec2>) -> Vec<DVec2> {
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    points.dedup();
    let half = |points: &mut dyn Iterator<Item = DVec2>| {
        let mut chain: Vec<DVec2> = Vec::new();
        for p in points {
            while let [.., a, b] = chain[..]
                && (b - a).perp_dot(p - b) <= 0.0
            {
                chain.pop();
            }
            chain.push(p);
        }
        chain.pop();
        chain
    };
    let mut hull = half(&mut points.iter().copied());
    hull.extend(half(&mut points.iter().rev().copied()));
    hull
}

/// The stretch of the line `from + t · way` that is nearer than `reach` to a convex hull (or inside it).
pub(crate) fn stretch(hull: &[DVec2], reach: f64, from: DVec2, way: DVec2) -> Option<(f64, f64)> {
    let mut found: Option<(f64, f64)> = None;
    let mut meet = |t: f64| {
        found = Some(found.map_or((t, t), |(low, high)| (low.min(t), high.max(t))));
    };
    for (index, &a) in hull.iter().enumerate() {
        let b = hull[(index + 1) % hull.len()];
        let side = b - a;
        let outward = -side.perp().normalize_or_zero() * reach;
        let cross = way.perp_dot(side);
        if cross != 0.0 {
            let to_side = a + outward - from;
            let along = to_side.perp_dot(way) / cross;
            if (0.0..=1.0).contains(&along) {
                meet(to_side.perp_dot(side) / cross);
            }
        }
        // the rounded corner
        let middle = (a - from).dot(way);
        let off = (a - from).perp_dot(way);
        let half = reach * reach - off * off;
        if half >= 0.0 {
            meet(middle - half.sqrt());
            meet(middle + half.sqrt());
        }
    }
    found.filter(|(low, high)| high > low)
}

/// A shape as convex pieces: itself, or its triangles.
pub(crate) fn convex_pieces(shape: &Polygon) -> Vec<Vec<DVec2>> {
    let corners = &shape.outer;
    let turn = signed_area(corners).signum();
    let convex = (0..corners.len()).all(|i| {
        let (a, b, c) = (corners[i], corners[(i + 1) % corners.len()], corners[(i + 2) % corners.len()]);
        (b - a).perp_dot(c - b) * turn >= -1e-12
    });
    if convex && shape.holes.is_empty() {
        return vec![corners.clone()];
    }
    // An outline as taped may fold over itself; then what it covers is anyone's guess, and its hull is the safe one.
    let triangles = if shape.defects(1e-6).is_empty() { shape.triangles() } else { Vec::new() };
    if triangles.is_empty() {
        return vec![convex_hull(corners.clone())];
    }
    triangles.into_iter().map(|t| t.to_vec()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure;
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
        let edge = Obstacle { corners: vec![dvec2(0.0, -9.0), dvec2(0.0, 9.0)], reach: 12.0 * inch };
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
            let corners = vec![dvec2(u, v), dvec2(x, y)];
            prop_assume!(measure::to_segment(&row, corners[0], corners[1]) < reach - 1e-3);
            let way = Way::ALL[way];
            let obstacle = Obstacle { corners: corners.clone(), reach };
            let it = least_move(&[row], &[obstacle], &[way], Units::Metric).unwrap();
            let after = |by: f64| measure::to_segment(&row.moved(way.unit() * by), corners[0], corners[1]);
            prop_assert!(after(it.by) >= reach - 1e-5, "{} < {reach}", after(it.by));
            prop_assert!(after(it.by - 0.0011) < reach);
        }
    }
}
