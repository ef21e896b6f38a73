//! The limits that a rule book and a kit put on one module of a face, written from the wording of the book.
//!
//! Each is a [`Thing`] in the face's frame; a limit counts as met within a tenth of a millimetre, as in `check`.

use super::shape::{Thing, hull};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Polygon, Rect, RoofFace, dvec2};
use chalkcourse_job::{FireAccess, PathScheme, PenetrationKind, Resolved};
use chalkcourse_layout::{Layout, OnFace, PlacedPenetration};

/// A limit missed by less than this counts as met, metres.
pub(super) const MET: f64 = 1e-4;

/// All limits on a face.
#[derive(Clone, Debug, Default)]
pub(super) struct Limits {
    /// For every module.
    pub(super) modules: Vec<Thing>,
    /// For the strip of base rail below the modules of a block's lowest row.
    pub(super) rail: Vec<Thing>,
    /// How far that strip extends below them, metres.
    pub(super) rail_reach: f64,
}

/// Input that depends on the whole layout.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Given {
    /// Ridge setback for the fire service, metres in plan.
    pub(super) ridge: f64,
    /// Whether there may be modules across every hip and valley.
    pub(super) beyond: bool,
}

/// The fire access requirements, where the book has them and nothing exempts the job.
pub(super) fn fire(job: &Resolved) -> Option<&FireAccess> {
    let fire = job.rule_book.fire_access.as_ref()?;
    let site = &job.site.building;
    let listed = fire.integrated_exempt.as_ref().is_some_and(|limit| limit.value);
    let exempt = site.detached_uninhabited
        || !site.no_roof_operations.trim().is_empty()
        || listed && !site.integrated_listing_read_by.trim().is_empty();
    (!exempt).then_some(fire)
}

/// Whether a face is steeper than the pitch that the book exempts.
pub(super) fn looked_at(fire: &FireAccess, face: &RoofFace) -> bool {
    face.sound && face.plane.pitch.slope() > fire.exempt_to.value.slope() + 2e-5
}

fn on(job: &Resolved, rule: &str) -> bool {
    !job.rule_book.off.contains(rule)
}

impl Limits {
    pub(super) fn of(job: &Resolved, layout: &Layout, index: usize, given: Given) -> Self {
        let mut limits = Self::default();
        let Some(face) = layout.roof.faces.get(index).filter(|face| face.sound) else { return limits };
        for edge in &face.edges {
            limits.edge(job, face, edge, given);
        }
        let courses = layout.faces.get(index).map(|face| face.courses);
        if let Some(courses) = courses.filter(|courses| on(job, "ridge-course") && courses.exposure > 0.0) {
            let whole = job.rule_book.courses_to_ridge.value as usize;
            let ridges = face.edges.iter().filter(|edge| edge.kind == EdgeKind::Ridge);
            limits.modules.extend(ridges.map(|edge| {
                let (a, b) = edge.frame;
                // In course lines: from the last line at or below the ridge, go down one course for each that is
                // required. A tape reads to 1/32 in.
                let ridge = a.y.min(b.y);
                let mut line = courses.first;
                while line > ridge {
                    line -= courses.exposure;
                }
                while line + courses.exposure <= ridge + 0.000_79 {
                    line += courses.exposure;
                }
                let over = if whole > 0 { (ridge - line).max(0.0) } else { 0.0 };
                let room = job.kit.flashing.head.metres() + over + whole as f64 * courses.exposure;
                Thing::Below { a, b, room: room - MET }
            }));
        }
        for penetration in &layout.penetrations {
            for outline in penetration.on.iter().filter(|on| on.face == index) {
                limits.penetration(job, face, penetration, outline);
            }
        }
        if let Some(rail) = job.kit.base_rail.filter(|_| on(job, "base-rail")) {
            limits.rail_reach = job.kit.flashing.base.metres();
            for edge in &face.edges {
                let off = if edge.kind == EdgeKind::Eave { rail.least_above_eave.metres() } else { 0.0 };
                // Modules that keep off by more than the rail's reach keep their rail off as well.
                if on_slope(job, edge) < limits.rail_reach + off + 2.0 * MET {
                    limits.rail.push(over(edge));
                    limits.rail.extend((off > 0.0).then(|| near(edge, off, 1.0)));
                }
            }
        }
        limits
    }

    fn edge(&mut self, job: &Resolved, face: &RoofFace, edge: &EdgeSpan, given: Given) {
        let reach = on_slope(job, edge);
        self.keep_off(edge, reach, 1.0);
        // A module that keeps off an edge cannot lie over it.
        if reach < 2.0 * MET && on(job, "off-face") {
            self.modules.push(over(edge));
        }
        let Some(fire) = fire(job).filter(|fire| looked_at(fire, face)) else { return };
        let flat = face.plane.pitch.slope_factor();
        if edge.kind == EdgeKind::Ridge && on(job, "fire-ridge") {
            self.keep_off(edge, given.ridge, flat);
        }
        let inner = matches!(edge.kind, EdgeKind::Hip | EdgeKind::Valley) && edge.neighbour.is_some();
        if let Some(limit) = fire.hip_or_valley.as_ref().filter(|_| inner && given.beyond) {
            self.keep_off(edge, limit.value.metres(), flat);
        }
    }

    fn keep_off(&mut self, edge: &EdgeSpan, reach: f64, squeeze: f64) {
        if reach > 0.0 {
            self.modules.push(near(edge, reach, squeeze));
        }
    }

    fn penetration(
        &mut self,
        job: &Resolved,
        face: &RoofFace,
        penetration: &PlacedPenetration,
        on_face: &OnFace,
    ) {
        if on(job, "clearance") {
            self.modules.extend(around(&on_face.outline, clearance(job, penetration)));
            self.modules.extend(strips(job, penetration, on_face));
        }
        let asked =
            fire(job).filter(|fire| looked_at(fire, face)).and_then(|fire| fire.below_escape.as_ref());
        let window = penetration.kind == PenetrationKind::EscapeWindow && on(job, "fire-escape");
        if let Some(least) = asked.filter(|_| window) {
            // From the window to the lower edge of the face, as wide as the window but no narrower than a pathway.
            let Rect { min, max } = on_face.bounds;
            let (middle, half) = ((min.x + max.x) / 2.0, least.value.metres().max(max.x - min.x) / 2.0);
            let low = face.bounds.min.y.min(min.y);
            let rect = Rect { min: dvec2(middle - half, low), max: dvec2(middle + half, min.y) };
            self.modules.push(Thing::Ground { rect, by: MET });
        }
    }
}

/// Even a limit of zero forbids lying over the line.
fn near(edge: &EdgeSpan, reach: f64, squeeze: f64) -> Thing {
    Thing::Convex { corners: vec![edge.frame.0, edge.frame.1], reach: reach - MET, squeeze, less: 0.0 }
}

/// Distance to keep from an edge, measured on the slope: its setback, or what keeps the side flashing clear of the
/// valley or the hip caps.
fn on_slope(job: &Resolved, edge: &EdgeSpan) -> f64 {
    let book = &job.rule_book;
    let setback = if on(job, "setback") { book.setback(edge.kind).metres() } else { 0.0 };
    let asked = book.roofing.as_ref().and_then(|roofing| match edge.kind {
        EdgeKind::Valley => roofing.valley_clear.as_ref(),
        EdgeKind::Hip => roofing.hip_clear.as_ref(),
        _ => None,
    });
    let flashing = asked.map_or(0.0, |limit| limit.value.metres() + job.kit.flashing.side.metres());
    if on(job, "valley-hip") { setback.max(flashing) } else { setback }
}

/// A rectangle must not overlap an edge.
fn over(edge: &EdgeSpan) -> Thing {
    Thing::Convex { corners: vec![edge.frame.0, edge.frame.1], reach: 0.0, squeeze: 1.0, less: MET }
}

/// The clearance on all sides: the penetration's own, or that of its kind.
fn clearance(job: &Resolved, penetration: &PlacedPenetration) -> f64 {
    let own = job.penetration(penetration.id).and_then(|p| p.clearance);
    own.unwrap_or_else(|| job.rule_book.clearance(penetration.kind)).metres()
}

fn around(outline: &Polygon, clearance: f64) -> Vec<Thing> {
    let (reach, less) = if clearance <= MET { (0.0, MET) } else { (clearance - MET, 0.0) };
    if hull(outline.outer.clone()).len() == outline.outer.len() {
        return vec![Thing::Convex { corners: outline.outer.clone(), reach, squeeze: 1.0, less }];
    }
    let mut things: Vec<Thing> = outline
        .sides()
        .map(|(_, _, a, b)| Thing::Convex { corners: vec![a, b], reach, squeeze: 1.0, less })
        .collect();
    things.push(Thing::Middle(outline.clone()));
    things
}

/// Strips straight above and below a penetration, of its width, where the book requires more there than on all sides
/// and the job sets no clearance of its own.
fn strips(job: &Resolved, penetration: &PlacedPenetration, on_face: &OnFace) -> Vec<Thing> {
    let book = &job.rule_book;
    if job.penetration(penetration.id).is_some_and(|p| p.clearance.is_some()) {
        return Vec::new();
    }
    let around = clearance(job, penetration);
    let Rect { min, max } = on_face.bounds;
    let mut things = Vec::new();
    let reach = |limits: &std::collections::BTreeMap<PenetrationKind, chalkcourse_job::Limit<_>>| {
        limits
            .get(&penetration.kind)
            .map_or(0.0, |limit: &chalkcourse_job::Limit<chalkcourse_geometry::Length>| limit.value.metres())
    };
    let (above, below) = (reach(&book.clearances_above), reach(&book.clearances_below));
    if above > around {
        let rect = Rect { min: dvec2(min.x, max.y), max: dvec2(max.x, max.y + above) };
        things.push(Thing::Ground { rect, by: MET });
    }
    if below > around {
        let rect = Rect { min: dvec2(min.x, min.y - below), max: dvec2(max.x, min.y) };
        things.push(Thing::Ground { rect, by: MET });
    }
    things
}

/// How many pathways a face needs on itself: none where the book requires them for the whole roof only.
pub(super) fn on_each_slope(fire: &FireAccess, face: &RoofFace) -> usize {
    match fire.scheme.value {
        PathScheme::WholeRoof => 0,
        PathScheme::EachSlope => 1 + usize::from(face.edges.iter().all(|edge| edge.kind != EdgeKind::Hip)),
    }
}

/// Corners of a rectangle in plan.
pub(super) fn in_plan(face: &RoofFace, rect: &Rect) -> [DVec2; 4] {
    rect.corners().map(|p| face.plane.to_plan(p))
}
