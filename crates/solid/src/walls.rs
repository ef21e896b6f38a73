//! Walls, from the ground to the underside of the roof.

use crate::build::Build;
use crate::house::THICK;
use crate::{Kind, Marks, SolidObject};
use chalkcourse_geometry::{DVec2, EdgeSpan, Polygon, RoofFace};
use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// Overhang of the roof past the walls, in plan, if unknown: 1 ft (common practice, no source).
const OVERHANG: f64 = 0.3048;

/// Faces within this distance in plan are one roof: twice the gap that a shared edge may have.
const CLOSE: f64 = 0.02;

/// Outer walls, and walls under roofs that stand over others.
pub(crate) fn walls(build: &mut Build, job: &Resolved, layout: &Layout, ground: f64) {
    let faces: Vec<&RoofFace> = layout.roof.faces.iter().filter(|face| face.sound).collect();
    let overhang = job.site.building.overhang.map_or(OVERHANG, |length| length.metres()).clamp(0.0, 10.0);
    for outline in wall_lines(&faces, overhang) {
        for (_, _, a, b) in outline.oriented().sides() {
            for piece in under_roof(&faces, a, b) {
                wall(build, piece, |_| ground);
            }
        }
    }
    for face in &faces {
        for span in face.edges.iter().filter(|span| span.neighbour.is_none()) {
            over_another(build, &faces, face, span, overhang);
        }
    }
}

/// The outer wall lines in plan: the roof's outline offset inwards by the overhang.
fn wall_lines(faces: &[&RoofFace], overhang: f64) -> Vec<Polygon> {
    let wide: Vec<Polygon> = faces.iter().flat_map(|face| face.plan.offset(CLOSE)).collect();
    let roofs = Polygon::union(&wide);
    // A roof narrower than two overhangs gets its walls at its edge.
    roofs
        .iter()
        .flat_map(|roof| {
            let walls = roof.offset(-(CLOSE + overhang));
            if walls.is_empty() { roof.offset(-CLOSE) } else { walls }
        })
        .collect()
}

/// A segment of wall, and the heights of its top at both ends.
#[derive(Clone, Copy)]
struct Piece {
    from: (DVec2, f64),
    to: (DVec2, f64),
}

/// A wall line split into segments, each under one face. A sliver under none is merged with its neighbours.
fn under_roof(faces: &[&RoofFace], a: DVec2, b: DVec2) -> Vec<Piece> {
    let mut cuts = vec![0.0, 1.0];
    for face in faces {
        cuts.extend(face.plan.sides().filter_map(|(_, _, c, d)| crossing(a, b, c, d)));
    }
    cuts.sort_by(f64::total_cmp);
    cuts.dedup_by(|x, y| (*x - *y).abs() * a.distance(b) < 1e-6);
    let mut pieces: Vec<Piece> = Vec::new();
    for pair in cuts.windows(2) {
        let &[from, to] = pair else { continue };
        let (start, end) = (a.lerp(b, from), a.lerp(b, to));
        let middle = start.midpoint(end);
        let over =
            |face: &&&RoofFace| face.plan.contains(middle) || face.plan.distance_to_border(middle) < 1e-3;
        let top = faces
            .iter()
            .filter(over)
            .max_by(|p, q| p.plane.height_at(middle).total_cmp(&q.plane.height_at(middle)));
        match top {
            Some(face) => pieces.push(Piece {
                from: (start, face.plane.height_at(start) - THICK),
                to: (end, face.plane.height_at(end) - THICK),
            }),
            None => {
                if let Some(before) = pieces.last_mut() {
                    before.to = (end, before.to.1);
                }
            }
        }
    }
    pieces
}

/// Where segment `a`–`b` meets segment `c`–`d`, as a fraction of the former; a segment that ends a millimetre short still meets.
fn crossing(a: DVec2, b: DVec2, c: DVec2, d: DVec2) -> Option<f64> {
    let (along, across) = (b - a, d - c);
    let turn = along.perp_dot(across);
    if turn.abs() < 1e-12 {
        return None;
    }
    let (t, s) = ((c - a).perp_dot(across) / turn, (c - a).perp_dot(along) / turn);
    let slack = 1e-3 / across.length();
    ((0.0..=1.0).contains(&t) && (-slack..=1.0 + slack).contains(&s)).then_some(t)
}

/// A wall with the house to its left, from the height given by `foot` to its top.
fn wall(build: &mut Build, piece: Piece, foot: impl Fn(DVec2) -> f64) {
    let ((a, top_a), (b, top_b)) = (piece.from, piece.to);
    let (foot_a, foot_b) = (foot(a), foot(b));
    if top_a > foot_a || top_b > foot_b {
        let corners =
            [a.extend(foot_a), b.extend(foot_b), b.extend(top_b.max(foot_b)), a.extend(top_a.max(foot_a))];
        build.quad(Kind::Wall, SolidObject::House, corners, Marks::Plain);
    }
}

/// The wall under a free edge above another face: a dormer's, or an upper storey's over a porch.
fn over_another(build: &mut Build, faces: &[&RoofFace], face: &RoofFace, span: &EdgeSpan, overhang: f64) {
    let (a, b) = span.plan;
    let inward = (b - a).perp().normalize_or_zero();
    let middle = a.midpoint(b) + inward * overhang.max(1e-3);
    let height = face.plane.height_at(middle);
    let below = faces
        .iter()
        .filter(|other| other.plan.contains(middle) && other.plane.height_at(middle) < height - THICK)
        .max_by(|p, q| p.plane.height_at(middle).total_cmp(&q.plane.height_at(middle)));
    if let Some(below) = below {
        let moved = |p: DVec2| {
            let p = p + inward * overhang;
            (p, face.plane.height_at(p) - THICK)
        };
        wall(build, Piece { from: moved(a), to: moved(b) }, |p| below.plane.height_at(p));
    }
}
