//! A roof raised from a footprint: a weighted straight skeleton.
//!
//! Imagine a level sheet of water rising past the walls. Every side of the footprint is the foot of a plane; where the water line
//! meets a plane it moves inward, faster over a low pitch than over a steep one, and not at all at a gable. The ground that a
//! side's water line sweeps over is that side's face in plan; the corners of the water line trace the hips, valleys and ridges.
//!
//! - `lines` sets up the moving lines: overhangs, eave heights, ring orientation
//! - `front` moves the water line from event to event, `meeting` resolves everything that meets at one point
//! - `faces` chains the traces into faces and proves that they tile the footprint
//!
//! Conventions:
//! - A side's plane is at `eave_height` over the *wall line*, the side as drawn. Its overhang extends the same plane outwards and
//!   down, so the eave's edge is `overhang × slope` lower. A deeper overhang never lifts the roof.
//! - A gable or a wall is a vertical plane on the (overhung) side. The adjacent faces run up to it. At a re-entrant corner it
//!   extends into the roof as far as there is a higher face on it.
//! - Where two collinear sides differ in pitch, height or overhang, the step between them is at right angles to them at their
//!   common corner. Where two faces become collinear only further up, the lower pitch continues over the top of the steeper one,
//!   so that the roof has no step there.
//! - Coplanar sides whose faces join make one face.

mod faces;
mod front;
mod lines;
mod meeting;
#[cfg(test)]
mod tests;

use crate::{Defect, EdgeKind, FaceInput, Pitch, Plane, Polygon};
use chalkcourse_words::{Said, Say, later as words};
use front::{Front, Stuck};
use glam::{DVec2, DVec3};
use lines::Setup;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Minimum slope of a side: 1 mm of rise per metre. Below it a roof would have no top.
pub const LEAST_SLOPE: f64 = 1e-3;

/// What is on a side of a footprint.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Treatment {
    /// A roof face that rises from its eave at this pitch.
    Slope(Pitch),
    /// A vertical end that the adjacent faces run out to: their edges there are rakes.
    Gable,
    /// A wall of a higher building that the adjacent faces die into: their edges there are wall lines.
    Wall,
}

/// One side of a footprint.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Side {
    /// What is on it.
    pub treatment: Treatment,
    /// Height of the roof's plane at the wall line, in metres. Ignored at a gable or wall.
    #[serde(default)]
    pub eave_height: f64,
    /// Overhang of the roof past the wall line, measured level and square to it, in metres; 0 or more.
    #[serde(default)]
    pub overhang: f64,
}

impl Side {
    /// A sloped side without an overhang.
    pub fn sloped(pitch: Pitch, eave_height: f64) -> Self {
        Self { treatment: Treatment::Slope(pitch), eave_height, overhang: 0.0 }
    }

    /// A gable without an overhang.
    pub fn gable() -> Self {
        Self { treatment: Treatment::Gable, eave_height: 0.0, overhang: 0.0 }
    }
}

/// A footprint that a roof can be raised from.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Footprint {
    /// Wall lines in plan, in metres. Holes are courtyards. Rings may run either way.
    pub outline: Polygon,
    /// For each ring (the outline first, then the holes) one [`Side`] for each corner: the side from this corner
    /// to the next one, as drawn.
    pub sides: Vec<Vec<Side>>,
}

impl Footprint {
    /// A footprint with the same on all sides.
    pub fn even(outline: Polygon, side: Side) -> Self {
        let sides = outline.rings().map(|ring| vec![side; ring.len()]).collect();
        Self { outline, sides }
    }
}

/// A side of a footprint: ring 0 is the outline, ring n the n-th hole; sides are 0-based, by their start corner, as drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
pub struct SideRef {
    /// Which ring.
    pub ring: usize,
    /// Which side of it.
    pub side: usize,
}

/// One face of a raised roof.
#[derive(Clone, Debug, PartialEq)]
pub struct RaisedFace {
    /// Its sides, in order: one, or several that are coplanar. Never empty.
    pub sides: Vec<SideRef>,
    /// In plan: counter-clockwise, holes clockwise.
    pub outline: Polygon,
    /// For each ring of `outline`, the index of each corner in [`Raised::nodes`].
    pub corners: Vec<Vec<usize>>,
    /// Its plane; the datum is the start corner of its first side at the wall, at eave height.
    pub plane: Plane,
}

/// A roof raised from a footprint.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Raised {
    /// The faces, by their first side. A side can have none (gables; a side buried under its neighbours) or several.
    pub faces: Vec<RaisedFace>,
    /// The points where faces have corners. Where a gable is inside the roof, a node is on the face that it is a corner of.
    pub nodes: Vec<DVec3>,
    /// The ground that the roof covers: the footprint with its overhangs, counter-clockwise, holes clockwise. The faces tile it.
    pub outline: Polygon,
    /// For each ring of `outline`, what is on the side that starts at each corner.
    ground: Vec<Vec<Stands>>,
}

/// What is on a side of the ground.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Stands {
    /// The side of the footprint; for a step between two of them, an adjacent one.
    on: SideRef,
    /// Whether it is a wall, so that faces that meet it end in a wall line.
    wall: bool,
}

/// Why no roof can be raised. Rings and sides are 0-based; the messages are 1-based.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RaiseError {
    /// The outline is invalid.
    #[error("{}", words::roof::the_footprint_cant_be_used(&outline_words(.0)))]
    Outline(Defect),
    /// Sides and corners do not match.
    #[error("{}", words::roof::has_sides_but_are_described(&ring_words(*.ring), &corners, &given))]
    SideCount {
        /// Which ring.
        ring: usize,
        /// Its number of corners.
        corners: usize,
        /// The number of sides given.
        given: usize,
    },
    /// An invalid number for a side.
    #[error("{}", words::roof::has_of(&side_words(*.at), &what, &value, &remedy))]
    BadNumber {
        /// Which side.
        at: SideRef,
        /// Which of its numbers.
        what: Say,
        /// Its value.
        value: f64,
        /// What to do.
        remedy: Say,
    },
    /// An overhang consumes the adjacent side, or runs into another part.
    #[error("{}", words::roof::the_overhangs_around_run_into(&side_words(*.at), &format_args!("{:.3}", .near.x), &format_args!("{:.3}", .near.y)))]
    Overhang {
        /// A side there.
        at: SideRef,
        /// Where.
        near: DVec2,
    },
    /// A part of the roof has vertical planes on all sides.
    #[error("{}", words::roof::nothing_slopes_over_the_part(&side_words(*.at)))]
    NoSlope {
        /// A side of that part.
        at: SideRef,
    },
    /// The events there could not be told apart.
    #[error("{}", words::roof::the_roof_cant_be_worked(&format_args!("{:.3}", .near.x), &format_args!("{:.3}", .near.y), &(*.corner + 1), &ring_words(*.ring)))]
    Knot {
        /// Where.
        near: DVec2,
        /// Ring of the nearest footprint corner.
        ring: usize,
        /// That corner.
        corner: usize,
    },
}

fn ring_words(ring: usize) -> Said {
    if ring == 0 { words::common::THE_OUTLINE.into() } else { words::common::hole(&ring) }
}

fn side_words(at: SideRef) -> Said {
    words::roof::side_of(&(at.side + 1), &ring_words(at.ring))
}

fn outline_words(defect: &Defect) -> Said {
    match *defect {
        Defect::NotFinite { ring, corner } => {
            words::roof::corner_of_is_no_usable(&(corner + 1), &ring_words(ring))
        }
        Defect::TooFewCorners { ring } => words::roof::has_fewer_than_three_corners(&ring_words(ring)),
        Defect::RepeatedCorner { ring, corner } => {
            words::roof::corner_of_lies_on_the(&(corner + 1), &ring_words(ring))
        }
        Defect::NoArea { ring } => words::roof::encloses_nothing_move_its_corners(&ring_words(ring)),
        Defect::Crosses { at } => {
            words::roof::two_sides_meet_at_x(&format_args!("{:.3}", at.x), &format_args!("{:.3}", at.y))
        }
        Defect::HoleOutside { ring } => words::roof::is_not_inside_the_outline(&ring_words(ring)),
    }
}

/// Raises the roof of a footprint.
///
/// Time is quadratic in the number of corners, with a small constant. If events are so nearly simultaneous that no roof results,
/// corners are perturbed by half a micrometre.
///
/// # Errors
/// [`RaiseError`] says which corner or side is the problem and what to do. No input panics or fails to terminate, and a returned
/// roof has been checked: its faces are simple, lie on their planes and tile the footprint.
pub fn raise(footprint: &Footprint) -> Result<Raised, RaiseError> {
    let knot = match sweep(footprint) {
        Err(error @ RaiseError::Knot { .. }) => error,
        done => return done,
    };
    // Nearly simultaneous events can make a knot that disappears when the corners are perturbed.
    (0..PERTURBATIONS)
        .find_map(|nth| {
            let mut aside = footprint.clone();
            let rings = std::iter::once(&mut aside.outline.outer).chain(&mut aside.outline.holes);
            for (at, corner) in rings.flatten().enumerate() {
                *corner = perturbed(*corner, nth, at);
            }
            sweep(&aside).ok()
        })
        .ok_or(knot)
}

/// Perturbation of a corner if no roof is found otherwise, in metres: below drawing accuracy.
const PERTURBATION: f64 = 5e-7;
/// Number of perturbations tried.
const PERTURBATIONS: usize = 8;

/// A perturbed corner: first rounded, which makes the almost regular regular; then spread evenly around its position, each corner
/// in another direction.
fn perturbed(corner: DVec2, nth: usize, at: usize) -> DVec2 {
    if nth == 0 {
        return (corner / (2.0 * PERTURBATION)).round() * (2.0 * PERTURBATION);
    }
    // Golden-ratio steps are never near one another.
    let turn = (at * PERTURBATIONS + nth) as f64 * 0.618_033_988_749_895;
    corner + DVec2::from_angle(turn.fract() * std::f64::consts::TAU) * PERTURBATION
}

/// Raises the roof of a footprint without perturbation.
fn sweep(footprint: &Footprint) -> Result<Raised, RaiseError> {
    let setup = Setup::of(footprint)?;
    let mut trouble = DVec2::ZERO;
    // Whether points coincide is a matter of rounding. If one tolerance leads to a knot, a wider or a narrower one helps.
    for width in [1.0, 32.0, 1.0 / 32.0, 1024.0] {
        let near = setup.near * width;
        match Front::sweep(&setup, near).and_then(|front| faces::build(&front, &setup, footprint)) {
            Ok(raised) => return Ok(raised),
            Err(Stuck::NoSlope { line }) => return Err(RaiseError::NoSlope { at: setup.side_at(line) }),
            Err(Stuck::Knot { at }) => trouble = at + setup.centre,
        }
    }
    let nearest = footprint
        .outline
        .sides()
        .min_by(|a, b| a.2.distance_squared(trouble).total_cmp(&b.2.distance_squared(trouble)));
    let (ring, corner) = nearest.map_or((0, 0), |(ring, corner, ..)| (ring, corner));
    Err(RaiseError::Knot { near: trouble, ring, corner })
}

impl Raised {
    /// Sum of the faces' plan areas, in m².
    pub fn plan_area(&self) -> f64 {
        self.faces.iter().map(|face| face.outline.area()).sum()
    }

    /// Sum of the faces' areas on the slope, in m².
    pub fn slope_area(&self) -> f64 {
        self.faces.iter().map(|face| face.outline.area() * face.plane.pitch.slope_factor()).sum()
    }

    /// The faces as inputs of [`Roof::assemble`](crate::Roof::assemble). Corners closer than `tolerance` metres (use the one of
    /// `assemble`, 1 mm) are merged, consistently over all faces; a thinner face is dropped. Each comes with its index here.
    pub fn face_inputs(&self, tolerance: f64) -> Vec<(usize, FaceInput)> {
        let plan: Vec<DVec2> = self.nodes.iter().map(|node| node.truncate()).collect();
        let rings: Vec<&[Vec<usize>]> = self.faces.iter().map(|face| face.corners.as_slice()).collect();
        crate::rings::tidy(&plan, &rings, tolerance)
            .into_iter()
            .map(|(index, outline, _)| (index, self.input(&self.faces[index], outline)))
            .collect()
    }

    /// The sides of [`Raised::outline`], with the roof to their left, and the footprint side that each is the edge of; for a step
    /// between two of them, an adjacent one.
    pub fn ground_sides(&self) -> impl Iterator<Item = ((DVec2, DVec2), SideRef)> {
        self.stands().map(|(line, stands)| (line, stands.on))
    }

    fn stands(&self) -> impl Iterator<Item = ((DVec2, DVec2), &Stands)> {
        let lines = self.outline.sides().map(|(.., a, b)| (a, b));
        lines.zip(self.ground.iter().flatten())
    }

    fn input(&self, face: &RaisedFace, outline: Polygon) -> FaceInput {
        let on_wall = |a: DVec2, b: DVec2| {
            let near = |p, (c, d)| crate::distance_to_segment(p, c, d) < 1e-6;
            self.stands().any(|(line, stands)| stands.wall && near(a, line) && near(b, line))
        };
        let overruled: BTreeMap<_, _> = outline
            .sides()
            .filter(|&(_, _, a, b)| on_wall(a, b))
            .map(|(ring, side, ..)| ((ring, side), EdgeKind::WallLine))
            .collect();
        FaceInput { outline, sides: Vec::new(), plane: face.plane, overruled }
    }
}
