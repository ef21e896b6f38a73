//! Where modules of a face may be under the job's limits, as input for the fitting, and words for obstacles.

use chalkcourse_geometry::fit::{Allowed, Barrier};
use chalkcourse_geometry::{
    Azimuth, Convex, DVec2, EdgeKind, Rect, RoofFace, SideId, distance_to_segment, dvec2,
};
use chalkcourse_job::{BlockId, PenetrationId, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{Against, KeepOut, KeepOutContext, Share, TOLERANCE, keep_outs};
use chalkcourse_words::{Said, later as words};
use serde::Serialize;

/// Fire access requirements of a face that are not a fixed region.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Fire {
    /// How much of the roof the final array covers.
    pub(crate) share: Share,
    /// Whether the faces across hips and valleys will have modules too.
    pub(crate) beyond: bool,
    /// Areas reserved as a pathway, in the face's frame.
    pub(crate) kept: Vec<Convex>,
}

/// Strips straight up a face that could be reserved as a pathway, if the job's rules require one: at both ends of each
/// interval from which one can go up to the ridge past chimneys and skylights. Empty for a face where no straight one
/// fits.
pub(crate) fn path_strips(job: &Resolved, layout: &Layout, face: usize) -> Vec<Convex> {
    let ways = path_ways(job, layout, face);
    let mut strips: Vec<Convex> = Vec::new();
    for (from, to) in ways {
        for strip in [from, (to - path_width(job)).max(from)].map(|at| strip(job, layout, face, at)) {
            if !strips.contains(&strip) {
                strips.push(strip);
            }
        }
    }
    strips
}

/// The intervals along the eave that are wide enough for a straight pathway, if one is required: from, to, metres.
pub(crate) fn path_ways(job: &Resolved, layout: &Layout, face: usize) -> Vec<(f64, f64)> {
    let asked = is_checked(job, "fire-paths") || is_checked(job, "fire-plane-path");
    let ways = if asked { chalkcourse_rules::ways_up(job, layout, face) } else { Vec::new() };
    let wide = path_width(job) - TOLERANCE;
    ways.into_iter().filter(|(from, to)| wide > 0.0 && to - from >= wide).collect()
}

/// Width of a pathway, metres; 0 if the book does not cover fire access.
pub(crate) fn path_width(job: &Resolved) -> f64 {
    job.rule_book.fire_access.as_ref().map_or(0.0, |book| book.path_width.value.metres())
}

/// A straight pathway that starts at `from` along the eave.
pub(crate) fn strip(job: &Resolved, layout: &Layout, face: usize, from: f64) -> Convex {
    let bounds = layout.roof.faces.get(face).map(|face| face.bounds);
    let (low, high) = bounds.map_or((0.0, 0.0), |bounds| (bounds.min.y - 1.0, bounds.max.y + 1.0));
    Convex::rect(&Rect { min: dvec2(from, low), max: dvec2(from + path_width(job), high) })
}

/// Whether a rule is on in the job's book and applies to the job.
pub(crate) fn is_checked(job: &Resolved, code: &str) -> bool {
    chalkcourse_rules::RULES.iter().any(|rule| rule.code == code && rule.why_not(job).is_none())
}

/// Where modules of a face may be, with the obstacle for each shape number.
#[derive(Clone, Debug)]
pub(crate) struct Room {
    pub(crate) allowed: Allowed,
    pub(crate) things: Vec<What>,
}

/// The room that the limits leave on a face, given the blocks that stay.
pub(crate) fn room(
    job: &Resolved,
    layout: &Layout,
    face: usize,
    stays: &dyn Fn(BlockId) -> bool,
    fire: &Fire,
) -> Room {
    room_within(job, layout, face, stays, fire, chalkcourse_limits::TOLERANCE)
}

/// The same with polygons around round shapes that are larger by no more than `outside` metres.
pub(crate) fn room_within(
    job: &Resolved,
    layout: &Layout,
    face: usize,
    stays: &dyn Fn(BlockId) -> bool,
    fire: &Fire,
    outside: f64,
) -> Room {
    let Some(on) = layout.roof.faces.get(face) else {
        return Room { allowed: Allowed::default(), things: Vec::new() };
    };
    let laid = KeepOutContext::as_laid(job, layout);
    let given = KeepOutContext {
        share: fire.share,
        covered: if fire.beyond { vec![true; laid.covered.len()] } else { laid.covered },
        standing: laid.standing.into_iter().filter(|id| stays(*id)).collect(),
        kept: fire.kept.clone(),
    };
    let mut things: Vec<What> = Vec::new();
    let mut number = |keep_out: &KeepOut| {
        let what = What::of(keep_out);
        things.iter().position(|thing| *thing == what).unwrap_or_else(|| {
            things.push(what);
            things.len() - 1
        })
    };
    let keep_outs = keep_outs(job, layout, face, &given);
    let allowed = chalkcourse_limits::room_within(on, &keep_outs, outside, &mut number);
    Room { allowed, things }
}

/// An obstacle for modules on a face: a limit with what it is against.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct What {
    /// The code of the limit and its rule.
    pub rule: &'static str,
    /// What it keeps modules away from.
    pub against: Against,
}

impl What {
    /// All clearances around one penetration count as one obstacle, and so does a block with its clearance.
    fn of(keep_out: &KeepOut) -> Self {
        let rule = match keep_out.against {
            Against::Penetration(_) => "clearance",
            Against::Block(_) => "between-blocks",
            _ => keep_out.rule,
        };
        Self { rule, against: keep_out.against }
    }

    /// The penetration, if it is one.
    pub(crate) fn penetration(&self) -> Option<PenetrationId> {
        match self.against {
            Against::Penetration(id) => Some(id),
            _ => None,
        }
    }

    /// The obstacle for a barrier reported by the fitting.
    pub(crate) fn of_barrier(barrier: &Barrier, things: &[Self], allowed: &Allowed, face: &RoofFace) -> Self {
        let border = Self { rule: "off-face", against: Against::Border };
        match *barrier {
            Barrier::Constraint(number) => things.get(number).copied().unwrap_or(border),
            Barrier::Side { shape, ring, side } => {
                let sides = allowed.region.get(shape).into_iter().flat_map(|shape| shape.sides());
                let drawn = sides.filter(|s| (s.0, s.1) == (ring, side)).map(|(_, _, a, b)| (a + b) / 2.0);
                let nearest = drawn.last().and_then(|middle| {
                    let away = |span: &chalkcourse_geometry::EdgeSpan| {
                        distance_to_segment(middle, span.frame.0, span.frame.1)
                    };
                    face.edges.iter().min_by(|a, b| away(a).total_cmp(&away(b)))
                });
                nearest.map_or(border, |span| Self {
                    against: Against::Side { side: span.id, kind: span.kind },
                    ..border
                })
            }
        }
    }

    /// Its name for the user; among several sides of one kind, with the compass direction that it faces.
    pub(crate) fn words(&self, layout: &Layout, face: usize) -> Said {
        let kind = match self.against {
            Against::Side { side, kind } => side_words(layout, face, side, kind),
            Against::Hole { kind, .. } => kind.name().into(),
            Against::Border => words::report::BORDER.into(),
            Against::Pathway => {
                return words::report::THE_PATHWAY_FOR_THE_FIRE.into();
            }
            Against::Penetration(id) => {
                return layout.penetration(id).map_or_else(
                    || words::common::A_PENETRATION.into(),
                    |p| {
                        Said::joined([
                            Said::own(format!("{} (", p.name)),
                            p.kind.name().into(),
                            Said::own(")"),
                        ])
                    },
                );
            }
            Against::Block(id) => {
                return layout
                    .block(id)
                    .map_or_else(|| words::report::ANOTHER_BLOCK.into(), |b| words::report::block(&b.name));
            }
        };
        match self.rule {
            "setback" => words::report::the_setback_from_the(&kind),
            "valley-hip" => words::report::the_room_for_flashing_beside(&kind),
            "ridge-course" => words::report::THE_COURSES_BELOW_THE_RIDGE.into(),
            "base-rail" if self.against == Against::Border => words::report::THE_DECK_THAT_THE_BASE.into(),
            "base-rail" => words::report::the_room_below_the_base(&kind),
            "fire-ridge" | "fire-hip-valley" => words::report::the_fire_services_room_beside(&kind),
            "off-face" => words::report::THE_EDGE_OF_THE_FACE.into(),
            _ => words::report::the_room_beside_the(&kind),
        }
    }
}

/// A side of a face, `rake`; if the face has others of its kind, `east rake`.
fn side_words(layout: &Layout, face: usize, side: SideId, kind: EdgeKind) -> Said {
    let Some(face) = layout.roof.faces.get(face) else { return kind.name().into() };
    let others = face.edges.iter().any(|span| span.kind == kind && span.id != side);
    let own = face.edges.iter().filter(|span| span.id == side && others);
    let Some(span) = own.max_by(|a, b| a.length.total_cmp(&b.length)) else {
        return kind.name().into();
    };
    let outward = face.plane.to_plan(DVec2::ZERO) - face.plane.to_plan(span.inward());
    let wind = Azimuth::of(outward).word();
    words::report::wind_kind(&wind, &kind.name())
}
