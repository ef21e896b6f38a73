use crate::TOLERANCE;
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{Border, Convex, DVec2, EdgeKind, Polygon, Rect, SideId, dvec2};
use chalkcourse_job::{BlockId, PenetrationId, Source};
use serde::Serialize;
use std::borrow::Cow;

/// One limit against one thing on a face: what modules stay off, and how far.
#[derive(Clone, Debug, PartialEq)]
pub struct KeepOut {
    /// The code of the limit and of its rule.
    pub rule: &'static str,
    /// What it keeps off.
    pub against: Against,
    /// Where that is, in the frame of the face.
    pub shape: Shape,
    /// How far what is held off stays away, metres by the metric; 0 where it may touch.
    pub reach: f64,
    /// How that is measured.
    pub metric: Metric,
    /// What is held off.
    pub held: Held,
    /// What the book or the kit says, metres: less than the reach where flashing takes room of its own.
    pub asked: f64,
    /// By whose word.
    pub by: By,
    /// The stretches of the border that it is about, by their places among the edges of the face.
    pub edges: Vec<usize>,
}

/// What a limit keeps modules off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Against {
    /// All that lies beyond the border of the face.
    Border,
    /// A side of the face, where it is of one kind.
    Side {
        /// Which.
        side: SideId,
        /// What it is there.
        kind: EdgeKind,
    },
    /// A hole in the face, where its edge is of one kind.
    Hole {
        /// Its side of the least number.
        side: SideId,
        /// What its edge is there.
        kind: EdgeKind,
    },
    /// Something that comes through the roof.
    Penetration(PenetrationId),
    /// A block that stays.
    Block(BlockId),
    /// Room that is kept free as a pathway.
    Pathway,
}

/// By whose word a limit is asked.
#[derive(Clone, Debug, PartialEq)]
pub enum By {
    /// The source that the limit carries in the rule book.
    Source(Source),
    /// The rule book, which names no source for it.
    Book,
    /// The kit.
    Kit,
    /// A person, for this one thing.
    Person,
    /// Geometry: it can't be otherwise.
    Geometry,
}

/// The shape of a thing in the way.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// Convex pieces; they may touch and overlap.
    Pieces(Vec<Convex>),
    /// All that lies outside of this, and in its holes.
    Outside(Polygon),
}

/// How a limit is measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Metric {
    /// As a tape on the deck does.
    OnSlope,
    /// Level, as on a plan: a metre up the slope counts for this part of one.
    InPlan {
        /// True length up the slope by its length in plan.
        slope_factor: f64,
    },
}

/// What of a module is held off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Held {
    /// All of it.
    Module,
    /// Only the rail below a module of the lowest row, so deep; a module of another row has none.
    Rail {
        /// Metres down the slope from the lower edge of the module.
        depth: f64,
    },
}

impl KeepOut {
    /// All of a module may touch a shape and not lie on it, by geometry.
    pub(crate) fn of(rule: &'static str, against: Against, shape: Shape) -> Self {
        Self {
            rule,
            against,
            shape,
            reach: 0.0,
            metric: Metric::OnSlope,
            held: Held::Module,
            asked: 0.0,
            by: By::Geometry,
            edges: Vec::new(),
        }
    }

    /// So far off it, metres by the metric.
    pub(crate) fn reaching(self, reach: f64) -> Self {
        Self { reach, asked: reach, ..self }
    }

    /// Whether it is a stretch of the border beside which no room is asked: what crosses it is off the face, and told by that.
    pub(crate) fn is_bare_line(&self) -> bool {
        let line = |pieces: &[Convex]| pieces.iter().all(|piece| piece.corners().len() < 3);
        matches!(&self.shape, Shape::Pieces(pieces) if !self.edges.is_empty() && line(pieces))
            && self.reach <= 0.0
    }

    /// By somebody's word.
    pub(crate) fn by(self, by: By) -> Self {
        Self { by, ..self }
    }

    /// What of a module is held off, by the metric; `None` for one that carries nothing of it.
    fn held_of(&self, module: &Part) -> Option<Rect> {
        let rect = match self.held {
            Held::Module => module.rect,
            Held::Rail { .. } if !module.lowest => return None,
            Held::Rail { depth } => {
                let Rect { min, max } = module.rect;
                Rect { min: dvec2(min.x, min.y - depth), max: dvec2(max.x, min.y) }
            }
        };
        Some(rect.stretched(self.scale()))
    }

    /// From the frame of the face to the metric.
    fn scale(&self) -> DVec2 {
        match self.metric {
            Metric::OnSlope => DVec2::ONE,
            Metric::InPlan { slope_factor } => dvec2(1.0, 1.0 / slope_factor),
        }
    }

    /// Its pieces by the metric, as they are given: none for what lies outside of a shape.
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

    /// How far a module is away, or its rail, metres by the metric; below 0, how deep it lies within. Infinite for one that
    /// carries nothing of what is held off.
    pub fn distance(&self, module: &Part) -> f64 {
        let Some(held) = self.held_of(module) else { return f64::INFINITY };
        match &self.shape {
            Shape::Pieces(_) => {
                self.pieces().map(|piece| piece.clearance(&held)).fold(f64::INFINITY, f64::min)
            }
            Shape::Outside(inside) => -held.overhang(inside, TOLERANCE),
        }
    }

    /// Whether a module is as far away as it should be, but for the [`TOLERANCE`].
    pub fn clears(&self, module: &Part) -> bool {
        let Some(held) = self.held_of(module) else { return true };
        match &self.shape {
            Shape::Pieces(_) => self.pieces().all(|piece| {
                // Bounds are never farther away than what they bound.
                piece.bounds().distance(&held) >= self.reach.max(TOLERANCE)
                    || piece.clearance(&held) >= self.reach - TOLERANCE
            }),
            Shape::Outside(inside) => held.overhang(inside, TOLERANCE) <= TOLERANCE,
        }
    }

    /// Outlines around all that is nearer to its shape than the reach, in the frame of the face: along straight sides exact,
    /// on round parts outside by no more than the [`TOLERANCE`] and nowhere inside. None for what lies outside of a shape.
    pub fn outlines(&self) -> Vec<Polygon> {
        self.outlines_within(TOLERANCE)
    }

    /// The same, on round parts outside by no more than so many metres: less than the [`TOLERANCE`] takes more corners.
    pub fn outlines_within(&self, outside: f64) -> Vec<Polygon> {
        let back = DVec2::ONE / self.scale();
        self.pieces().map(|piece| piece.outline(self.reach, outside).map(|p| p * back)).collect()
    }

    /// The stretches of a move of some modules along a unit vector during which one of them is too near, joined, in metres of
    /// the move; both ends of each lie where the module that is nearest just clears.
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

    /// The line on which what is held off just clears, in the frame of the face, round parts as chords of `step` radians at
    /// most.
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

    /// The smallest upright rectangle around its shape, in the frame of the face; `None` for what lies outside of a shape.
    pub fn bounds(&self) -> Option<Rect> {
        match &self.shape {
            Shape::Pieces(pieces) => pieces.iter().map(Convex::bounds).reduce(|a, b| a.union(&b)),
            Shape::Outside(_) => None,
        }
    }

    /// What the border is where it keeps modules off.
    pub fn against_kind(&self) -> Option<EdgeKind> {
        match self.against {
            Against::Side { kind, .. } | Against::Hole { kind, .. } => Some(kind),
            _ => None,
        }
    }

    /// Whether all that it keeps modules off, another one does too.
    pub fn is_within(&self, other: &Self) -> bool {
        self.shape == other.shape
            && self.metric == other.metric
            && self.held == other.held
            && self.reach <= other.reach
    }
}

/// Stretches in order, those that meet as one.
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

    fn off(reach: f64, metric: Metric, held: Held) -> KeepOut {
        let shape = Shape::Pieces(vec![Convex::segment(dvec2(-9.0, 0.0), dvec2(9.0, 0.0))]);
        KeepOut { metric, held, ..KeepOut::of("test", Against::Pathway, shape).reaching(reach) }
    }

    fn at(v: f64, lowest: bool) -> Part {
        Part { rect: unit().moved(dvec2(0.0, v)), lowest }
    }

    #[test]
    fn the_tolerance_passes_and_a_hair_more_does_not() {
        let it = off(0.5, Metric::OnSlope, Held::Module);
        assert!(it.clears(&at(0.5, false)) && it.clears(&at(0.5 - 0.9e-4, false)));
        assert!(!it.clears(&at(0.5 - 1.1e-4, false)));
        let touching = off(0.0, Metric::OnSlope, Held::Module);
        assert!(touching.clears(&at(-0.9e-4, false)) && !touching.clears(&at(-1.1e-4, false)));
    }

    /// At 12 in 12 a plan metre is √2 m up the slope.
    #[test]
    fn in_plan_more_is_kept_up_the_slope() {
        let it = off(0.5, Metric::InPlan { slope_factor: 2.0_f64.sqrt() }, Held::Module);
        assert!((it.distance(&at(0.5 * 2.0_f64.sqrt(), false)) - 0.5).abs() < 1e-12);
        let [(from, to)] = it.too_near_along(&[at(0.0, false)], DVec2::Y)[..] else { panic!() };
        assert!((to - 0.5 * 2.0_f64.sqrt()).abs() < 1e-5 && (from + 1.0 + 0.5 * 2.0_f64.sqrt()).abs() < 1e-5);
        let top = it.outlines()[0].bounds().unwrap().max.y;
        assert!((-1e-9..1e-4 * 1.5).contains(&(top - 0.5 * 2.0_f64.sqrt())), "{top}");
    }

    #[test]
    fn a_rail_is_held_off_and_an_upper_row_has_none() {
        let it = off(0.1, Metric::OnSlope, Held::Rail { depth: 0.05 });
        assert!((it.distance(&at(0.4, true)) - 0.35).abs() < 1e-12);
        assert!(it.clears(&at(0.15, true)) && !it.clears(&at(0.14, true)) && it.clears(&at(0.0, false)));
    }

    #[test]
    fn stretches_that_meet_are_one() {
        assert_eq!(joined(vec![(3.0, 4.0), (0.0, 1.0), (1.0, 2.0)]), vec![(0.0, 2.0), (3.0, 4.0)]);
    }
}
