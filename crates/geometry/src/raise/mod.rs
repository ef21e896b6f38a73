//! A roof raised from a footprint: a weighted straight skeleton.
//!
//! Think of a level sheet of water that rises past the walls. Every side of the footprint is the foot of a
//! plane; where the water line meets a plane it moves inward, faster over a low pitch than over a steep one, and
//! not at all at a gable. The ground that a side's water line sweeps over is that side's face in plan; the
//! corners of the water line draw the hips, valleys and ridges.
//!
//! - `lines` sets up the moving lines: overhangs, eave heights, which way a ring runs
//! - `front` moves the water line from event to event, `meeting` resolves all that comes together in one point
//! - `faces` chains the traces to faces and proves that they tile the footprint
//!
//! Conventions:
//! - A side's plane is `eave_height` high at the *wall line*, the side as drawn. Its overhang carries the same
//!   plane on outward and down, so that the eave's edge hangs `overhang × slope` lower. A deeper overhang
//!   never lifts the roof.
//! - A gable or a wall is an upright plane on the (overhung) side. The faces beside it run up to it. At an inward
//!   corner it carries on into the roof as far as a higher face stands on it.
//! - Where two sides in one straight line differ in pitch, height or overhang, the step between them stands at
//!   right angles to them at their common corner. Where two faces come into one line only further up, the lower
//!   pitch goes on over the top of the steeper one, so that the roof has no step there.
//! - Sides in one plane whose faces come together make one face.

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

/// The least slope that a side can have: 1 mm of rise in a metre. Under it a roof would have no top.
pub const LEAST_SLOPE: f64 = 1e-3;

/// What stands on a side of a footprint.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Treatment {
    /// A roof face that rises from its eave with this pitch.
    Slope(Pitch),
    /// An upright end that the faces beside it run out to: their edges there are rakes.
    Gable,
    /// A wall of a higher building that the faces beside it die into: their edges there are wall lines.
    Wall,
}

/// One side of a footprint.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Side {
    /// What stands on it.
    pub treatment: Treatment,
    /// How high the roof's plane is over the wall line, in metres. Without meaning at a gable or wall.
    #[serde(default)]
    pub eave_height: f64,
    /// How far the roof reaches beyond the wall line, measured level and square to it, in metres; 0 or more.
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

/// A side of a footprint: ring 0 is the outline, ring n the n-th hole; sides count from 0 at the corner that they
/// start from, as drawn.
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
    /// The sides that it stands on, in order: one, or several in one plane. Never empty.
    pub sides: Vec<SideRef>,
    /// In plan: counter-clockwise, holes clockwise.
    pub outline: Polygon,
    /// For each ring of `outline` the index into [`Raised::nodes`] of each corner.
    pub corners: Vec<Vec<usize>>,
    /// Its plane; the datum is the wall corner that its first side starts from, at eave height.
    pub plane: Plane,
}

/// A roof raised from a footprint.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Raised {
    /// The faces, by their first side. A side can have none (gables; a side that is buried under its neighbours)
    /// or several.
    pub faces: Vec<RaisedFace>,
    /// The points where faces have corners. Where a gable stands inside the roof, a node is on the face that it
    /// is a corner of.
    pub nodes: Vec<DVec3>,
    /// The ground that the roof covers: the footprint with its overhangs, counter-clockwise, holes clockwise.
    /// The faces tile it.
    pub outline: Polygon,
    /// For each ring of `outline` what stands on the side from each corner.
    ground: Vec<Vec<Stands>>,
}

/// What stands on a side of the ground.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Stands {
    /// The side of the footprint; for a step between two of them one beside it.
    on: SideRef,
    /// Whether it is a wall, so that faces that come to it end in a wall line.
    wall: bool,
}

/// Why no roof can be raised. Rings and sides count from 0; the words count from 1, as people do.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RaiseError {
    /// The outline itself is wrong.
    #[error("{}", words::roof::the_footprint_cant_be_used(&outline_words(.0)))]
    Outline(Defect),
    /// Sides and corners don't match.
    #[error("{}", words::roof::has_sides_but_are_described(&ring_words(*.ring), &corners, &given))]
    SideCount {
        /// Which ring.
        ring: usize,
        /// How many sides it has.
        corners: usize,
        /// How many are described.
        given: usize,
    },
    /// A number that a side can't have.
    #[error("{}", words::roof::has_of(&side_words(*.at), &what, &value, &remedy))]
    BadNumber {
        /// Which side.
        at: SideRef,
        /// Which of its numbers.
        what: Say,
        /// What it is.
        value: f64,
        /// What to do.
        remedy: Say,
    },
    /// An overhang eats the side beside it, or runs into another part.
    #[error("{}", words::roof::the_overhangs_around_run_into(&side_words(*.at), &format_args!("{:.3}", .near.x), &format_args!("{:.3}", .near.y)))]
    Overhang {
        /// A side there.
        at: SideRef,
        /// Where.
        near: DVec2,
    },
    /// A part of the roof has upright planes on all sides.
    #[error("{}", words::roof::nothing_slopes_over_the_part(&side_words(*.at)))]
    NoSlope {
        /// A side of that part.
        at: SideRef,
    },
    /// The planes could not be told apart there.
    #[error("{}", words::roof::the_roof_cant_be_worked(&format_args!("{:.3}", .near.x), &format_args!("{:.3}", .near.y), &(*.corner + 1), &ring_words(*.ring)))]
    Knot {
        /// Where.
        near: DVec2,
        /// Ring of the footprint's corner that is nearest.
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
/// The work grows with the square of the number of corners, with a small constant. Where events miss each other by so little
/// that no roof comes of it, corners are taken half a micrometre aside.
///
/// # Errors
/// [`RaiseError`] says which corner or side is the trouble and what to do. No input panics or runs on without an
/// end, and a roof that is returned has been checked: its faces are simple, lie on their planes and tile the
/// footprint.
pub fn raise(footprint: &Footprint) -> Result<Raised, RaiseError> {
    let knot = match sweep(footprint) {
        Err(error @ RaiseError::Knot { .. }) => error,
        done => return done,
    };
    // Events that miss each other by a hair can make a knot that is gone when the corners lie another hair aside.
    (0..HAIRS)
        .find_map(|nth| {
            let mut aside = footprint.clone();
            let rings = std::iter::once(&mut aside.outline.outer).chain(&mut aside.outline.holes);
            for (at, corner) in rings.flatten().enumerate() {
                *corner = hair(*corner, nth, at);
            }
            sweep(&aside).ok()
        })
        .ok_or(knot)
}

/// How far aside a corner may be moved where no roof is found otherwise, in metres: less than a drawing says.
const HAIR: f64 = 5e-7;
/// How many times that is tried.
const HAIRS: usize = 8;

/// A corner a hair aside: first where a round number is, which makes what is all but regular regular; then spread evenly
/// around where it was, each corner another way.
fn hair(corner: DVec2, nth: usize, at: usize) -> DVec2 {
    if nth == 0 {
        return (corner / (2.0 * HAIR)).round() * (2.0 * HAIR);
    }
    // Steps of the golden ratio fall nowhere near one another.
    let turn = (at * HAIRS + nth) as f64 * 0.618_033_988_749_895;
    corner + DVec2::from_angle(turn.fract() * std::f64::consts::TAU) * HAIR
}

/// Raises the roof of a footprint as it is drawn.
fn sweep(footprint: &Footprint) -> Result<Raised, RaiseError> {
    let setup = Setup::of(footprint)?;
    let mut trouble = DVec2::ZERO;
    // What is one point is a matter of rounding. Where one answer leads to a knot, a wider or a narrower one helps.
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

    /// The faces as [`Roof::assemble`](crate::Roof::assemble) takes them. Corners nearer than `tolerance` metres
    /// (advice: what `assemble` gets, 1 mm) become one, for all faces alike; a face that is thinner than that goes
    /// away. The indices of the faces that stay come along.
    pub fn face_inputs(&self, tolerance: f64) -> Vec<(usize, FaceInput)> {
        let plan: Vec<DVec2> = self.nodes.iter().map(|node| node.truncate()).collect();
        let rings: Vec<&[Vec<usize>]> = self.faces.iter().map(|face| face.corners.as_slice()).collect();
        crate::rings::tidy(&plan, &rings, tolerance)
            .into_iter()
            .map(|(index, outline, _)| (index, self.input(&self.faces[index], outline)))
            .collect()
    }

    /// The sides of [`Raised::outline`], with the roof to their left, and the side of the footprint that each is the edge
    /// of; for a step between two of them one beside it.
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
