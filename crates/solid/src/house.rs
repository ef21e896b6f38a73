//! Roof and ground.

use crate::build::{Build, Lifted};
use crate::{Kind, Marks, SolidObject};
use chalkcourse_geometry::{Azimuth, DVec2, EdgeSpan, Pitch, Plane, Polygon, RoofFace};
use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// Drawn thickness of the roof at its edges, measured vertically: a rafter's end with its deck and board (common practice, no
/// source).
pub(crate) const THICK: f64 = 0.18;

/// One storey, if the eave height is unknown (common practice, no source).
const STOREY: f64 = 9.0 * 0.3048;

/// All sound faces with their undersides and edges.
pub(crate) fn roof(build: &mut Build, layout: &Layout) {
    for (face, placed) in layout.roof.faces.iter().zip(&layout.faces).filter(|(face, _)| face.sound) {
        let of = SolidObject::Face(placed.id);
        let courses = placed.courses;
        let marks = if courses.count() > 0 {
            Marks::Courses { first: courses.first, exposure: courses.exposure }
        } else {
            Marks::Plain
        };
        let top = Lifted { plane: &face.plane, up: 0.0, turned: false };
        build.lifted(Kind::Roof, of, &face.plan, top, marks);
        let under = Lifted { up: -THICK, turned: true, ..top };
        build.lifted(Kind::Soffit, of, &face.plan, under, Marks::Plain);
        for span in &face.edges {
            edge(build, face, span, of);
        }
    }
}

/// The vertical edge of a roof where nothing meets it, and the wall up to a higher roof that meets it.
fn edge(build: &mut Build, face: &RoofFace, span: &EdgeSpan, of: SolidObject) {
    let (a, b) = span.plan;
    let (low_a, low_b) = (face.plane.height_at(a), face.plane.height_at(b));
    let Some(neighbour) = span.neighbour else {
        let fascia = [a.extend(low_a - THICK), b.extend(low_b - THICK), b.extend(low_b), a.extend(low_a)];
        build.quad(Kind::Fascia, of, fascia, Marks::Plain);
        return;
    };
    // The higher roof's own span is the same segment from the other side: draw it once, from below.
    let (gap_a, gap_b) = neighbour.gap;
    let Some(((a, gap_a), (b, gap_b))) = above_zero((a, gap_a), (b, gap_b)) else { return };
    if gap_a.max(gap_b) < 1e-3 {
        return;
    }
    let low = |p: DVec2| face.plane.height_at(p);
    let wall = |gap: f64| (gap - THICK).max(0.0);
    let between = |from: (f64, f64), to: (f64, f64)| {
        [
            b.extend(low(b) + from.1),
            a.extend(low(a) + from.0),
            a.extend(low(a) + to.0),
            b.extend(low(b) + to.1),
        ]
    };
    build.quad(Kind::Wall, of, between((0.0, 0.0), (wall(gap_a), wall(gap_b))), Marks::Plain);
    build.quad(Kind::Fascia, of, between((wall(gap_a), wall(gap_b)), (gap_a, gap_b)), Marks::Plain);
}

/// The part of a segment where a linearly varying value is above 0.
fn above_zero(a: (DVec2, f64), b: (DVec2, f64)) -> Option<((DVec2, f64), (DVec2, f64))> {
    let zero = || (a.0.lerp(b.0, a.1 / (a.1 - b.1)), 0.0);
    match (a.1 > 0.0, b.1 > 0.0) {
        (true, true) => Some((a, b)),
        (true, false) => Some((a, zero())),
        (false, true) => Some((zero(), b)),
        (false, false) => None,
    }
}

/// The height of the ground: below the eave of the largest face by the job's eave height; otherwise 0 if the faces are high
/// enough above it for a storey; otherwise a storey below the lowest eave.
pub(crate) fn ground_height(job: &Resolved, layout: &Layout) -> f64 {
    let sound = || layout.roof.faces.iter().filter(|face| face.sound);
    let lowest_of = |face: &RoofFace| {
        face.plan.outer.iter().map(|&p| face.plane.height_at(p)).fold(f64::INFINITY, f64::min)
    };
    let lowest = sound().map(lowest_of).fold(f64::INFINITY, f64::min);
    if !lowest.is_finite() {
        return 0.0;
    }
    let largest = sound().max_by(|a, b| a.plan_area.total_cmp(&b.plan_area)).map_or(lowest, lowest_of);
    let ground = match job.site.building.eave_height {
        Some(height) => largest - height.metres(),
        None if lowest >= 1.5 => 0.0,
        None => lowest - STOREY,
    };
    // A porch may be low, but not in the ground.
    ground.min(lowest - 2.0 * THICK)
}

/// Vertices of the ground's rim.
const RIM: usize = 64;

/// The ground around the house, as far as a picture needs it.
pub(crate) fn ground(build: &mut Build, height: f64) {
    let Some((least, most)) = build.bounds() else { return };
    let middle = (least + most).truncate() / 2.0;
    let radius = (most - least).length() * 4.0 + 60.0;
    let plane = Plane { datum: middle.extend(height), pitch: Pitch::FLAT, downslope: Azimuth::SOUTH };
    let rim = Polygon::circle(middle, radius, RIM);
    let on = Lifted { plane: &plane, up: 0.0, turned: false };
    build.lifted(Kind::Ground, SolidObject::Ground, &rim, on, Marks::Plain);
}
