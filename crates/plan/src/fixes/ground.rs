//! Where a group of modules may be on a face under all limits at once, searched along lines.

use chalkcourse_geometry::fit::{Allowed, Part};
use chalkcourse_geometry::{Convex, DVec2, Rect, Units};
use chalkcourse_job::{BaseRail, BlockId, Resolved, Subject};
use chalkcourse_layout::{CourseLines, Layout, PlacedBlock};
use chalkcourse_limits::{Against, KeepOut, KeepOutContext, Shape, TOLERANCE, keep_outs};
use chalkcourse_rules::Finding;

/// Most line ends to continue from, so that a face with a thousand pipes does not keep the user waiting.
const MOST_ENDS: usize = 24;

/// Modules that move together.
#[derive(Clone, Debug)]
pub(crate) struct Body {
    /// As rectangles, slightly smaller than the modules: overlaps within the tolerance are allowed.
    parts: Vec<Part>,
    /// The lower edge of the row with the base rail, up the slope.
    bottom: f64,
    bounds: Rect,
}

impl Body {
    pub(crate) fn of(parts: &[Part]) -> Option<Self> {
        // A little more measured from corner to corner, but still below the tolerance.
        let less = |part: &Part| Part { rect: part.rect.grown(-0.7 * TOLERANCE), ..*part };
        let bounds = parts.iter().map(|part| part.rect).reduce(|a, b| a.union(&b))?;
        Some(Self { parts: parts.iter().map(less).collect(), bottom: bounds.min.y, bounds })
    }

    fn moved(&self, by: DVec2) -> Vec<Part> {
        self.parts.iter().map(|part| Part { rect: part.rect.moved(by), ..*part }).collect()
    }

    /// The same body moved by `by`.
    pub(crate) fn at(&self, by: DVec2) -> Self {
        Self { parts: self.moved(by), bottom: self.bottom + by.y, bounds: self.bounds.moved(by) }
    }
}

/// A block as few rectangles: its contiguous rows. The reveals belong to it.
pub(crate) fn rows_of(placed: &PlacedBlock, counts: impl Fn(u32) -> bool) -> Vec<Part> {
    let rows = placed.stretches().filter(|(row, _)| counts(*row));
    rows.map(|(row, rect)| Part { rect, lowest: row == 0 }).collect()
}

/// The limits on a face.
pub(crate) struct Ground {
    pub(super) keep_outs: Vec<KeepOut>,
    /// Where the base rail may be relative to the courses, if the kit restricts that.
    rail: Option<(CourseLines, BaseRail)>,
    bounds: Rect,
    units: Units,
}

impl Ground {
    /// The limits on a face with a sound outline, including blocks that stay and strips reserved as pathways.
    pub(crate) fn of(
        job: &Resolved,
        layout: &Layout,
        face: usize,
        stays: impl Fn(BlockId) -> bool,
        kept: Vec<Convex>,
    ) -> Option<Self> {
        let on = layout.roof.faces.get(face).filter(|on| on.sound)?;
        let mut given = KeepOutContext { kept, ..KeepOutContext::as_laid(job, layout) };
        given.standing.retain(|id| stays(*id));
        let laying = &job.kit.laying;
        let courses = layout.faces.get(face)?.courses;
        let asked = crate::room::is_checked(job, "laying") && !laying.base_rail.anywhere;
        let rail = (asked && courses.exposure > TOLERANCE).then_some((courses, laying.base_rail));
        Some(Self {
            keep_outs: keep_outs(job, layout, face, &given),
            rail,
            bounds: on.bounds,
            units: job.units,
        })
    }

    /// Relaxes the limits that the body breaks already to the present distance, except those that the finding is about.
    pub(super) fn relaxed(mut self, body: &Body, finding: &Finding) -> Self {
        self.keep_outs.retain_mut(|keep_out| {
            let nearest = body.parts.iter().map(|part| keep_out.distance(part)).fold(f64::INFINITY, f64::min);
            let broken = !body.parts.iter().all(|part| keep_out.clears(part));
            if !broken || is_about(finding, keep_out) {
                return true;
            }
            keep_out.reach = nearest - TOLERANCE;
            keep_out.reach > 0.0 && matches!(keep_out.shape, Shape::Pieces(_))
        });
        if finding.rule != "laying" && self.rail_forbids(body.bottom) {
            self.rail = None;
        }
        self
    }

    /// The same without the restriction of the base rail to the courses.
    pub(super) fn on_any_course(self) -> Self {
        Self { rail: None, ..self }
    }

    /// The input for the fitting.
    pub(super) fn allowed(&self, layout: &Layout, face: usize) -> Option<Allowed> {
        Some(chalkcourse_limits::room(layout.roof.faces.get(face)?, &self.keep_outs, &mut |_| 0))
    }

    /// Whether a body is free after a move.
    pub(super) fn is_free(&self, body: &Body, by: DVec2) -> bool {
        let parts = body.moved(by);
        !self.rail_forbids(body.bottom + by.y)
            && self.keep_outs.iter().all(|keep_out| parts.iter().all(|part| keep_out.clears(part)))
    }

    /// The nearest free positions on a line along an axis, one in each direction from a start: in whole steps, rounded
    /// away from obstacles.
    pub(super) fn free_along(&self, body: &Body, from: DVec2, axis: DVec2) -> Vec<DVec2> {
        if axis.y == 0.0 && self.rail_forbids(body.bottom + from.y) {
            return Vec::new();
        }
        let stretches = self.stretches(body, from, axis);
        let mut ends = self.ends(body, from, axis, &stretches);
        ends.sort_by(|a, b| a.abs().total_cmp(&b.abs()));
        let free = |by: f64| {
            let within = stretches.iter().any(|&(low, high)| low + 1e-9 < by && by < high - 1e-9);
            !within && self.is_on(body, from + axis * by)
        };
        let first = |way: f64| ends.iter().copied().find(|&by| by * way >= 0.0 && free(by));
        [1.0, -1.0].into_iter().filter_map(first).map(|by| from + axis * by).collect()
    }

    /// Moves along an axis after which some obstacle is just cleared, or the body just reaches the bounds of the face;
    /// including no move, shortest first.
    fn turns(&self, body: &Body, axis: DVec2) -> Vec<f64> {
        let stretches = self.stretches(body, DVec2::ZERO, axis);
        let mut ends = self.ends(body, DVec2::ZERO, axis, &stretches);
        let onto = [self.bounds.min - body.bounds.min, self.bounds.max - body.bounds.max];
        ends.extend(onto.map(|by| {
            let by = by.dot(axis);
            by.signum() * self.up(by.abs())
        }));
        ends.sort_by(|a, b| a.abs().total_cmp(&b.abs()));
        ends.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        ends.truncate(MOST_ENDS);
        ends
    }

    /// Moves straight along one axis, or first along one and then along the other, after which a body is free; in the
    /// order found.
    pub(crate) fn ways(&self, body: &Body) -> impl Iterator<Item = DVec2> {
        [(DVec2::X, DVec2::Y), (DVec2::Y, DVec2::X)].into_iter().flat_map(move |(first, then)| {
            self.turns(body, first).into_iter().flat_map(move |by| self.free_along(body, first * by, then))
        })
    }

    /// Moves of a body past each limit that it breaks as if that were the only one: straight if possible.
    pub(crate) fn ways_past_each(&self, body: &Body) -> Vec<DVec2> {
        let alone = |keep_outs: Vec<KeepOut>, rail| Self { keep_outs, rail, ..*self };
        let limits = self.keep_outs.iter().map(|keep_out| alone(vec![keep_out.clone()], None));
        let rail = alone(Vec::new(), self.rail);
        limits
            .chain([rail])
            .filter(|limit| !limit.is_free(body, DVec2::ZERO))
            .flat_map(|limit| {
                let straight = [DVec2::X, DVec2::Y].map(|axis| limit.free_along(body, DVec2::ZERO, axis));
                let straight = straight.concat();
                if straight.is_empty() { limit.ways(body).collect() } else { straight }
            })
            .collect()
    }

    /// Intervals of a move in which the body hits something.
    fn stretches(&self, body: &Body, from: DVec2, axis: DVec2) -> Vec<(f64, f64)> {
        let parts = body.moved(from);
        let mut all: Vec<(f64, f64)> =
            self.keep_outs.iter().flat_map(|keep_out| keep_out.too_near_along(&parts, axis)).collect();
        if axis.y != 0.0 {
            all.extend(self.rail_stretches(body.bottom + from.y));
        }
        all
    }

    /// No move, and both ends of each interval, rounded away from it to whole steps. The allowed heights of a rail are
    /// not rounded: the range may be smaller than a step.
    fn ends(&self, body: &Body, from: DVec2, axis: DVec2, stretches: &[(f64, f64)]) -> Vec<f64> {
        let away = |by: f64, more: f64| more * self.up(by * more);
        let mut ends = vec![0.0];
        ends.extend(stretches.iter().flat_map(|&(low, high)| [away(low, -1.0), away(high, 1.0)]));
        if axis.y != 0.0 {
            let bottom = body.bottom + from.y;
            ends.extend(self.rail_stretches(bottom).into_iter().flat_map(|(low, high)| [low, high]));
        }
        ends
    }

    /// A length rounded up to whole steps, as lengths are displayed.
    pub(super) fn up(&self, length: f64) -> f64 {
        self.units.up(length)
    }

    /// Whether no part is beyond a border: along a line that meets no border all of the body may be outside.
    fn is_on(&self, body: &Body, by: DVec2) -> bool {
        let mut borders =
            self.keep_outs.iter().filter(|keep_out| matches!(keep_out.shape, Shape::Outside(_))).peekable();
        if borders.peek().is_none() {
            return true;
        }
        let parts = body.moved(by);
        borders.all(|border| parts.iter().all(|part| border.clears(part)))
    }

    fn rail_forbids(&self, bottom: f64) -> bool {
        let Some((courses, rail)) = self.rail else { return false };
        rail.off(bottom, courses.first, courses.exposure).is_some_and(|(by, _)| by.abs() > TOLERANCE)
    }

    /// Intervals of a move up the slope in which the rail is between two allowed heights.
    fn rail_stretches(&self, bottom: f64) -> Vec<(f64, f64)> {
        let Some((courses, rail)) = self.rail else { return Vec::new() };
        let (from, to) = (rail.above_course_from.metres(), rail.above_course_to.metres());
        if to - from >= courses.exposure {
            return Vec::new();
        }
        let height = self.bounds.size().y / courses.exposure;
        let lines = height.clamp(0.0, 500.0) as i32 + 2;
        (-2..lines)
            .map(|line| courses.first + f64::from(line) * courses.exposure - bottom)
            .map(|line| (line + to, line + courses.exposure + from))
            .collect()
    }
}

/// Whether a finding is about a keep-out.
fn is_about(finding: &Finding, keep_out: &KeepOut) -> bool {
    let same = match (&finding.key.subject, keep_out.against) {
        (Subject::Side(_, _, own, _), Against::Side { side, .. })
        | (Subject::Hole(_, _, own, _), Against::Hole { side, .. }) => *own == side,
        (Subject::Hole(..), Against::Side { .. }) | (Subject::Side(..), Against::Hole { .. }) => false,
        (Subject::Through(_, own) | Subject::BesideOf(_, own, _), Against::Penetration(id)) => *own == id,
        (Subject::Blocks(one, two), Against::Block(id)) => *one == id || *two == id,
        _ => true,
    };
    same && keep_out.rule == finding.rule
}
