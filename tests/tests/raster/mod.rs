//! Shared by the pathway tests: roofs of a few faces, and an independent search that pushes a disc over a fine raster with plain
//! arithmetic of its own.
#![allow(clippy::unwrap_used, dead_code, reason = "a helper of a test may stop it; not every test needs all")]

use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, BlockId, Edit, Face, FaceId, Penetration, PenetrationId, PenetrationKind, Resolved, apply,
    builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use std::sync::Arc;

/// Raster step, metres.
pub(crate) const STEP: f64 = 0.02;
/// Tolerance of the raster: a step to each side, a little for its corners, and the 8 mm by which a circumscribed 24-gon is wider
/// than its circle.
pub(crate) const BLUR: f64 = 3.0 * STEP + 0.01;
/// The width required by the codes, metres.
pub(crate) const ASKED: f64 = 0.9144;

pub(crate) fn empty_job() -> Resolved {
    Resolved::new("Random".into(), builtin_kit(), builtin_rule_book(), builtin_prices())
}

pub(crate) fn face(id: u32, corners: &[(f64, f64)], rise: f64, way: f64) -> Face {
    let outline = Polygon::new(corners.iter().map(|&c| c.into()).collect());
    let pitch = Pitch::from_rise_in_12(rise).unwrap();
    let mut face = Face::new(
        FaceId(id),
        format!("{id}"),
        outline,
        pitch,
        Azimuth::from_degrees(way),
        Length::from_metres(3.0),
    );
    // Heights relative to the datum corner.
    face.height = Length::from_metres(3.0);
    face
}

pub(crate) fn block(id: u32, face: u32, at: (f64, f64), rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(id),
        name: String::new(),
        face: FaceId(face),
        at: at.into(),
        rows,
        columns,
        orientation: Default::default(),
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}

/// A hip roof, `long` by `deep`: two trapezoids and two triangles.
pub(crate) fn hip(long: f64, deep: f64, rise: f64) -> Vec<Face> {
    let half = deep / 2.0;
    vec![
        face(1, &[(0.0, 0.0), (long, 0.0), (long - half, half), (half, half)], rise, 180.0),
        face(2, &[(long, 0.0), (long, deep), (long - half, half)], rise, 90.0),
        face(3, &[(long, deep), (0.0, deep), (half, half), (long - half, half)], rise, 0.0),
        face(4, &[(0.0, deep), (0.0, 0.0), (half, half)], rise, 270.0),
    ]
}

/// A penetration that can't be walked over, or a vent, at a point in plan.
pub(crate) fn penetration(id: u32, kind: PenetrationKind, at: (f64, f64)) -> Penetration {
    let id = PenetrationId(id);
    Penetration { id, name: String::new(), kind, at: at.into(), shape: kind.usual_shape(), clearance: None }
}

/// The job with the book's pathway of the given width.
pub(crate) fn asking(job: &Resolved, width: f64) -> Resolved {
    let mut book = (*job.rule_book).clone();
    book.fire_access.as_mut().unwrap().path_width.value = Length::from_metres(width);
    apply(job, &Edit::SetRuleBook(Arc::new(book))).unwrap()
}

// The independent part: it uses only the coordinates from the program's geometry.

fn inside(p: DVec2, ring: &[DVec2]) -> bool {
    let mut odd = false;
    for (i, &a) in ring.iter().enumerate() {
        let b = ring[(i + 1) % ring.len()];
        if (a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y) {
            odd = !odd;
        }
    }
    odd
}

fn away(p: DVec2, a: DVec2, b: DVec2) -> f64 {
    let (ab, ap) = (b - a, p - a);
    let t = ((ap.x * ab.x + ap.y * ab.y) / (ab.x * ab.x + ab.y * ab.y)).clamp(0.0, 1.0);
    ((ap.x - t * ab.x).powi(2) + (ap.y - t * ab.y).powi(2)).sqrt()
}

fn away_from_ring(p: DVec2, ring: &[DVec2]) -> f64 {
    if inside(p, ring) {
        return 0.0;
    }
    (0..ring.len()).map(|i| away(p, ring[i], ring[(i + 1) % ring.len()])).fold(f64::INFINITY, f64::min)
}

/// A ring that the disc must avoid, with the box outside which it is out of reach.
struct Solid {
    ring: Vec<DVec2>,
    low: DVec2,
    high: DVec2,
}

impl Solid {
    fn new(ring: Vec<DVec2>) -> Self {
        let low = ring.iter().fold(DVec2::INFINITY, |a, &b| a.min(b));
        let high = ring.iter().fold(DVec2::NEG_INFINITY, |a, &b| a.max(b));
        Self { ring, low, high }
    }

    fn is_off(&self, p: DVec2, reach: f64) -> bool {
        let far = self.low.x - p.x >= reach
            || p.x - self.high.x >= reach
            || self.low.y - p.y >= reach
            || p.y - self.high.y >= reach;
        far || away_from_ring(p, &self.ring) >= reach
    }
}

/// Lines between two planes that may be walked over: hips, valleys, changes of pitch.
pub(crate) fn walked_over(kind: EdgeKind) -> bool {
    [EdgeKind::Hip, EdgeKind::Valley, EdgeKind::PitchChange].contains(&kind)
}

/// The planes adjacent over such a line.
pub(crate) fn beside(layout: &Layout, face: usize) -> Vec<usize> {
    let spans = layout.roof.faces[face].edges.iter().filter(|span| walked_over(span.kind));
    let mut others: Vec<usize> = spans.filter_map(|span| span.neighbour.map(|n| n.face)).collect();
    others.sort_unstable();
    others.dedup();
    others
}

/// Pushes a disc from an eave to the ridge over some planes; the lines between them may be crossed. Chimneys, skylights and
/// windows are obstacles, vents and pipes are not. With `touch` the disc must come right up to the edge; without, it counts as
/// there slightly before.
pub(crate) fn pushed(layout: &Layout, faces: &[usize], width: f64, touch: bool) -> bool {
    let reach = width / 2.0;
    let rings: Vec<&[DVec2]> = faces.iter().map(|&f| layout.roof.faces[f].plan.outer.as_slice()).collect();
    let modules = layout.blocks.iter().filter(|block| faces.contains(&block.face)).flat_map(|block| {
        let plane = layout.roof.faces[block.face].plane;
        block.modules.iter().map(move |m| m.rect.corners().map(|p| plane.to_plan(p)).to_vec())
    });
    let minor = [PenetrationKind::PipeBoot, PenetrationKind::Vent, PenetrationKind::Other];
    let through = layout.penetrations.iter().filter(|p| !minor.contains(&p.kind));
    let solids: Vec<Solid> = modules.chain(through.map(|p| p.plan.outer.clone())).map(Solid::new).collect();
    let spans = || faces.iter().flat_map(|&f| layout.roof.faces[f].edges.iter());
    let walls: Vec<(DVec2, DVec2)> = spans()
        .filter(|s| !s.neighbour.is_some_and(|n| faces.contains(&n.face) && walked_over(s.kind)))
        .map(|s| s.plan)
        .collect();
    let of = |kind: EdgeKind| spans().filter(move |s| s.kind == kind).map(|s| s.plan).collect::<Vec<_>>();
    let (eaves, ridges) = (of(EdgeKind::Eave), of(EdgeKind::Ridge));
    let all = Solid::new(rings.iter().flat_map(|ring| ring.iter().copied()).collect());
    let columns = ((all.high.x - all.low.x) / STEP) as usize + 2;
    let rows = ((all.high.y - all.low.y) / STEP) as usize + 2;
    let at = |cell: usize| all.low + dvec2((cell % columns) as f64, (cell / columns) as f64) * STEP;
    // A raster point may fall between two planes by the rounding of a hip's corner.
    let ground = |p: DVec2| rings.iter().any(|ring| away_from_ring(p, ring) < 1e-6);
    let free = |p: DVec2| {
        walls.iter().all(|&(a, b)| away(p, a, b) >= reach)
            && solids.iter().all(|solid| solid.is_off(p, reach))
            && ground(p)
    };
    let near = |p: DVec2, edges: &[(DVec2, DVec2)]| {
        edges.iter().any(|&(a, b)| {
            let to_edge = away(p, a, b);
            let ab = b - a;
            let q = a + ab * ((p - a).dot(ab) / ab.dot(ab)).clamp(0.0, 1.0);
            let right_up = q + (p - q) * ((reach + 1e-6) / to_edge);
            to_edge <= reach + 2.0 * STEP && (!touch || free(right_up))
        })
    };
    // Evaluate each point once, on demand.
    let mut seen = vec![false; columns * rows];
    let mut stack: Vec<usize> = (0..seen.len()).filter(|&c| near(at(c), &eaves) && free(at(c))).collect();
    stack.iter().for_each(|&cell| seen[cell] = true);
    while let Some(cell) = stack.pop() {
        if near(at(cell), &ridges) {
            return true;
        }
        let (x, y) = ((cell % columns) as i64, (cell / columns) as i64);
        for (dx, dy) in [(-1, 0), (1, 0), (0, -1), (0, 1), (-1, -1), (-1, 1), (1, -1), (1, 1)] {
            let (x, y) = (x + dx, y + dy);
            if (0..columns as i64).contains(&x) && (0..rows as i64).contains(&y) {
                let next = y as usize * columns + x as usize;
                if !std::mem::replace(&mut seen[next], true) && free(at(next)) {
                    stack.push(next);
                }
            }
        }
    }
    false
}
