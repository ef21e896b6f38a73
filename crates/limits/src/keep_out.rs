use crate::TOLERANCE;
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{Border, Convex, DVec2, EdgeKind, Polygon, Rect, SideId, dvec2};
use chalkcourse_job::{BlockId, PenetrationId, Source};
use serde::Serialize;
use std::borrow::Cow;

/// One limit applied to one thing on a face: what modules keep clear of, and by how much.
#[derive(Clone, Debug, PartialEq)]
pub struct KeepOut {
    /// The code of the limit and of its rule.
    pub rule: &'static str,
    /// What it keeps modules off.
    pub against: Against,
    /// Its shape, in the frame of the face.
    pub shape: Shape,
    /// The required distance, metres by the metric; 0 if it may be touched.
    pub reach: f64,
    /// How the distance is measured.
    pub metric: Metric,
    /// What must keep the distance.
    pub held: ConstrainedPart,
    /// The distance given by the book or the kit, metres: less than the reach if the flashing's width is added.
    pub asked: f64,
    /// Where the requirement comes from.
    pub by: RequiredBy,
    /// The spans of the border that it applies to, as indices among the edges of the face.
    pub edges: Vec<usize>,
}

/// What a limit keeps modules off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Against {
    /// Everything beyond the border of the face.
    Border,
    /// The part of a side of the face that has this kind.
    Side {
        /// Id of the side.
        side: SideId,
        /// Its kind there.
        kind: EdgeKind,
    },
    /// The part of the edge of a hole that has this kind.
    Hole {
        /// The lowest id among its sides.
        side: SideId,
        /// The kind of its edge there.
        kind: EdgeKind,
    },
    /// A penetration.
    Penetration(PenetrationId),
    /// A block that stays in place.
    Block(BlockId),
    /// A region reserved as a pathway.
    Pathway,
}

/// Where a requirement comes from.
#[derive(Clone, Debug, PartialEq)]
pub enum RequiredBy {
    /// The source given for the limit in the rule book.
    Source(Source),
    /// The rule book, without a source.
    Book,
    /// The kit.
    Kit,
    /// A person, for this one penetration.
    Person,
    /// Geometry: nothing else is possible.
    Geometry,
}

/// The shape of an obstacle.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// Convex pieces; they may touch and overlap.
    Pieces(Vec<Convex>),
    /// Everything outside this polygon, including its holes.
    Outside(Polygon),
}

/// How a distance is measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Metric {
    /// On the slope, as with a tape on the deck.
    OnSlope,
    /// Horizontally, as on a plan: distances up the slope are divided by the slope factor.
    InPlan {
        /// Length up the slope divided by its length in plan.
        slope_factor: f64,
    },
}

/// Which part of a module must keep the distance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ConstrainedPart {
    /// The whole module.
    Module,
    /// Only the rail below a module of the lowest row; modules of other rows have none.
    Rail {
        /// How far the rail extends down the slope from the lower edge of the module, metres.
        depth: f64,
    },
}

impl KeepOut {
    /// A keep-out that modules may touch but not overlap, by geometry.
    pub(crate) fn of(rule: &'static str, against: Against, shape: Shape) -> Self {
        Self {
            rule,
            against,
            shape,
            reach: 0.0,
            metric: Metric::OnSlope,
            held: ConstrainedPart::Module,
            asked: 0.0,
            by: RequiredBy::Geometry,
            edges: Vec::new(),
        }
    }

    /// The same with a required distance, metres by the metric.
    pub(crate) fn reaching(self, reach: f64) -> Self {
        Self { reach, asked: reach, ..self }
    }

    /// Whether it is a span of the border without a required distance. What crosses it is off the face, and reported as
    /// such.
    pub(crate) fn is_bare_line(&self) -> bool {
        let line = |pieces: &[Convex]| pieces.iter().all(|piece| piece.corners().len() < 3);
        matches!(&self.shape, Shape::Pieces(pieces) if !self.edges.is_empty() && line(pieces))
            && self.reach <= 0.0
    }

    /// The same with another origin.
    pub(crate) fn by(self, by: RequiredBy) -> Self {
        Self { by, ..self }
    }

    /// The part of a module that must keep the distance, scaled to the metric; `None` if the module has no such part.
    fn held_of(&self, module: &Part) -> Option<Rect> {
        let rect = match self.held {
            ConstrainedPart::Module => module.rect,
            ConstrainedPart::Rail { .. } if !module.lowest => return None,
            ConstrainedPart::Rail { depth } => {
                let Rect { min, max } = module.rect;
                Rect { min: dvec2(min.x, min.y - depth), max: dvec2(max.x, min.y) }
            }
        };
        Some(rect.stretched(self.scale()))
    }

    /// Scale from the frame of the face to the metric.
    fn scale(&self) -> DVec2 {
        match self.metric {
            Metric::OnSlope => DVec2::ONE,
            Metric::InPlan { slope_factor } => dvec2(1.0, 1.0 / slope_factor),
        }
    }

    /// The pieces of the shape, scaled to the metric; none for [`Shape::Outside`].
    fn pieces(&self) -> impl Iterator<Item = Cow<'_, Convex>> {
        let scale = self.scale();
        let pieces = match &self.shape {
            Shape::Pieces(pieces) => pieces.as_slice(),
            Shape::Outside(_) => &[],
        };
        pieces.iter().map(move |piece| {
            if scale == DVec2::ONE { Cow::Borrowed(piece) } else { Cow::Owned(piece.stretched(scale)) }
        })
    }

    /// Distance of a module, or of its rail, metres by the metric; negative is the depth of the overlap. Infinite if
    /// the module has no part that must keep the distance.
    pub fn distance(&self, module: &Part) -> f64 {
        let Some(held) = self.held_of(module) else { return f64::INFINITY };
        match &self.shape {
            Shape::Pieces(_) => {
                self.pieces().map(|piece| piece.clearance(&held)).fold(f64::INFINITY, f64::min)
            }
            Shape::Outside(inside) => -held.overhang(inside, TOLERANCE),
        }
    }

    /// Whether a module keeps the distance, within the [`TOLERANCE`].
    pub fn clears(&self, module: &Part) -> bool {
        let Some(held) = self.held_of(module) else { return true };
        match &self.shape {
            Shape::Pieces(_) => self.pieces().all(|piece| {
                // The bounds are never farther away than what they enclose.
                piece.bounds().distance(&held) >= self.reach.max(TOLERANCE)
                    || piece.clearance(&held) >= self.reach - TOLERANCE
            }),
            Shape::Outside(inside) => held.overhang(inside, TOLERANCE) <= TOLERANCE,
        }
    }

    /// Outlines of the region closer to the shape than the reach, in the frame of the face: exact along straight sides;
    /// on round parts too large by at most the [`TOLERANCE`], never too small. None for [`Shape::Outside`].
    pub fn outlines(&self) -> Vec<Polygon> {
        self.outlines_within(TOLERANCE)
    }

    /// The same, with round parts too large by at most `outside` metres: a smaller number gives more corners.
    pub fn outlines_within(&self, outside: f64) -> Vec<Polygon> {
        let back = DVec2::ONE / self.scale();
        self.pieces().map(|piece| piece.outline(self.reach, outside).map(|p| p * back)).collect()
    }

    /// When some modules move along a unit vector: the intervals of the move, metres, in which one of them is too near.
    /// Overlapping intervals are joined; at both ends the nearest module just clears.
    pub fn too_near_along(&self, modules: &[Part], way: DVec2) -> Vec<(f64, f64)> {
        let scaled = way * self.scale();
        let (unit, length) = (scaled.normalize_or_zero(), scaled.length());
        let mut stretches = Vec::new();
        for held in modules.iter().filter_map(|module| self.held_of(module)) {
            let mut meet = |piece: &Convex, reach: f64| {
                let stretch = piece.moves_of(&held).too_near_along(reach, unit);
                stretches.extend(stretch.map(|(from, to)| (from / length, to / length)));
            };
            match &self.shape {
                Shape::Pieces(_) => self.pieces().for_each(|piece| meet(&piece, self.reach)),
                Shape::Outside(inside) => {
                    inside.sides().for_each(|(_, _, a, b)| meet(&Convex::segment(a, b), 0.0));
                }
            }
        }
        joined(stretches)
    }

    /// The line at which the modules just clear, in the frame of the face. Round parts are chords of at most `step`
    /// radians.
    pub fn borders(&self, step: f64) -> Vec<(DVec2, DVec2)> {
        let back = DVec2::ONE / self.scale();
        let mut lines = Vec::new();
        match &self.shape {
            Shape::Outside(inside) => lines.extend(inside.sides().map(|(_, _, a, b)| (a, b))),
            Shape::Pieces(_) => {
                for border in self.pieces().flat_map(|piece| piece.border(self.reach)) {
                    match border {
                        Border::Line(a, b) => lines.push((a * back, b * back)),
                        Border::Arc { centre, radius, from, turn } => {
                            let steps = (turn / step).ceil().max(1.0);
                            let at = |i: f64| {
                                (centre + DVec2::from_angle(from + turn * i / steps) * radius) * back
                            };
                            lines.extend((0..steps as u32).map(|i| (at(i.into()), at(f64::from(i) + 1.0))));
                        }
                    }
                }
            }
        }
        lines
    }

    /// The bounding rectangle of the shape in the frame of the face; `None` for [`Shape::Outside`].
    pub fn bounds(&self) -> Option<Rect> {
        match &self.shape {
            Shape::Pieces(pieces) => pieces.iter().map(Convex::bounds).reduce(|a, b| a.union(&b)),
            Shape::Outside(_) => None,
        }
    }

    /// The kind of edge that it keeps modules off, if it is an edge.
    pub fn against_kind(&self) -> Option<EdgeKind> {
        match self.against {
            Against::Side { kind, .. } | Against::Hole { kind, .. } => Some(kind),
            _ => None,
        }
    }

    /// Whether the other keep-out covers everything that this one does.
    pub fn is_within(&self, other: &Self) -> bool {
        self.shape == other.shape
            && self.metric == other.metric
            && self.held == other.held
            && self.reach <= other.reach
    }
}

/// Sorts intervals and joins those that overlap.
fn joined(mut stretches: Vec<(f64, f64)>) -> Vec<(f64, f64)> {
    stretches.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut joined: Vec<(f64, f64)> = Vec::new();
    for (from, to) in stretches {
        match joined.last_mut() {
            Some(last) if from <= last.1 => last.1 = last.1.max(to),
            _ => joined.push((from, to)),
        }
    }
    joined
}

#[cfg(test)]
mod tests {
    use super::*;

    fn unit() -> Rect {
        Rect::at(DVec2::ZERO, DVec2::ONE)
    }

    fn off(reach: f64, metric: Metric, held: ConstrainedPart) -> KeepOut {
        let shape = Shape::Pieces(vec![Convex::segment(dvec2(-9.0, 0.0), dvec2(9.0, 0.0))]);
        KeepOut { metric, held, ..KeepOut::of("test", Against::Pathway, shape).reaching(reach) }
    }

    fn at(v: f64, lowest: bool) -> Part {
        Part { rect: unit().moved(dvec2(0.0, v)), lowest }
    }

    #[test]
    fn the_tolerance_passes_and_a_hair_more_does_not() {
        let it = off(0.5, Metric::OnSlope, ConstrainedPart::Module);
        assert!(it.clears(&at(0.5, false)) && it.clears(&at(0.5 - 0.9e-4, false)));
        assert!(!it.clears(&at(0.5 - 1.1e-4, false)));
        let touching = off(0.0, Metric::OnSlope, ConstrainedPart::Module);
        assert!(touching.clears(&at(-0.9e-4, false)) && !touching.clears(&at(-1.1e-4, false)));
    }

    /// At 12 in 12 a plan metre is √2 m up the slope.
    #[test]
    fn in_plan_more_is_kept_up_the_slope() {
        let it = off(0.5, Metric::InPlan { slope_factor: 2.0_f64.sqrt() }, ConstrainedPart::Module);
        assert!((it.distance(&at(0.5 * 2.0_f64.sqrt(), false)) - 0.5).abs() < 1e-12);
        let [(from, to)] = it.too_near_along(&[at(0.0, false)], DVec2::Y)[..] else { panic!() };
        assert!((to - 0.5 * 2.0_f64.sqrt()).abs() < 1e-5 && (from + 1.0 + 0.5 * 2.0_f64.sqrt()).abs() < 1e-5);
        let top = it.outlines()[0].bounds().unwrap().max.y;
        assert!((-1e-9..1e-4 * 1.5).contains(&(top - 0.5 * 2.0_f64.sqrt())), "{top}");
    }

    #[test]
    fn a_rail_is_held_off_and_an_upper_row_has_none() {
        let it = off(0.1, Metric::OnSlope, ConstrainedPart::Rail { depth: 0.05 });
        assert!((it.distance(&at(0.4, true)) - 0.35).abs() < 1e-12);
        assert!(it.clears(&at(0.15, true)) && !it.clears(&at(0.14, true)) && it.clears(&at(0.0, false)));
    }

    #[test]
    fn stretches_that_meet_are_one() {
        assert_eq!(joined(vec![(3.0, 4.0), (0.0, 1.0), (1.0, 2.0)]), vec![(0.0, 2.0), (3.0, 4.0)]);
    }
}
