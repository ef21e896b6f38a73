//! Making a face from an outline: which way it slopes and how high it is, by what it touches.

use crate::text;
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, distance_to_segment, signed_area};
use chalkcourse_job::{Face, FaceId, Resolved};
use chalkcourse_layout::Layout;

/// Sides of two faces within this distance count as shared, metres: the roof's own tolerance.
const SHARED: f64 = 0.010;

/// A side of the new outline along a side of an existing face.
struct Shared {
    face: usize,
    /// The common segment, in plan.
    line: (DVec2, DVec2),
}

/// A face with a slope that fits its neighbours: down from a shared ridge, or across the longest side; with a height
/// that meets the neighbour.
pub(crate) fn new_face(job: &Resolved, layout: &Layout, corners: Vec<DVec2>) -> Face {
    let id = FaceId(job.next_id);
    let outline = Polygon::new(corners);
    let shared = shared_side(layout, &outline);
    let neighbour = shared.as_ref().and_then(|s| Some((s, layout.roof.faces.get(s.face)?)));
    let pitch = neighbour.map(|(_, face)| face.plane.pitch);
    let pitch = pitch.unwrap_or_else(|| Pitch::from_rise_in_12(6.0).unwrap_or(Pitch::FLAT));
    let downslope = match neighbour {
        Some((shared, face)) => {
            let (a, b) = shared.line;
            let middle = face.plan.bounds().map_or(a, |bounds| bounds.centre());
            let along = face.plane.downslope.unit();
            let level = (b - a).normalize_or_zero().dot(along).abs() < 0.1;
            let at_top = face.plane.height_at((a + b) / 2.0) > face.plane.height_at(middle);
            if !level {
                // Along a rake, or a hip or valley that is not yet known, keep the slope direction.
                face.plane.downslope
            } else if at_top {
                Azimuth::of(-along)
            } else {
                face.plane.downslope
            }
        }
        None => downslope_of(&outline),
    };
    let name = text::new_face_name(job);
    // As high as existing eaves, unless the neighbour determines it.
    let eave = job.faces.first().map_or(Length::from_feet(9.0), |face| face.height);
    let mut face = Face::new(id, name, outline, pitch, downslope, eave);
    if let Some((shared, neighbour)) = neighbour {
        let middle = (shared.line.0 + shared.line.1) / 2.0;
        let gap = neighbour.plane.height_at(middle) - face.plane().height_at(middle);
        face.height = Length::from_metres(face.height.metres() + gap);
    }
    face
}

/// The longest segment that an outline shares with a face.
fn shared_side(layout: &Layout, outline: &Polygon) -> Option<Shared> {
    let mut best: Option<(f64, Shared)> = None;
    for (index, face) in layout.roof.faces.iter().enumerate().filter(|(_, face)| face.sound) {
        for (_, _, a, b) in face.plan.sides() {
            let Some(along) = (b - a).try_normalize() else { continue };
            let length = (b - a).dot(along);
            for (_, _, c, d) in outline.sides() {
                let off = |p: DVec2| (p - a).perp_dot(along).abs();
                if off(c) > SHARED || off(d) > SHARED {
                    continue;
                }
                let (c, d) = ((c - a).dot(along), (d - a).dot(along));
                let (from, to) = (c.min(d).max(0.0), c.max(d).min(length));
                if to - from > best.as_ref().map_or(SHARED, |(most, _)| *most) {
                    let line = (a + along * from, a + along * to);
                    best = Some((to - from, Shared { face: index, line }));
                }
            }
        }
    }
    best.map(|(_, shared)| shared)
}

/// Outwards across the longest side; among several the southernmost, since plans are drawn with the street at the
/// bottom.
fn downslope_of(outline: &Polygon) -> Azimuth {
    let inside_left = signed_area(&outline.outer) > 0.0;
    let longest = outline.sides().map(|(_, _, a, b)| a.distance(b)).fold(0.0, f64::max);
    outline
        .sides()
        .filter(|(_, _, a, b)| a.distance(*b) >= longest * 0.999)
        .min_by(|(_, _, a, b), (_, _, c, d)| (a.y + b.y).total_cmp(&(c.y + d.y)))
        .map_or(Azimuth::SOUTH, |(_, _, a, b)| {
            let out = (b - a).perp() * if inside_left { -1.0 } else { 1.0 };
            let azimuth = Azimuth::of(out);
            // Remove rounding errors from the direction of a side drawn along an axis.
            let quarter = (azimuth.degrees() / 90.0).round() * 90.0;
            if (azimuth.degrees() - quarter).abs() < 1e-6 { Azimuth::from_degrees(quarter) } else { azimuth }
        })
}

/// Corners of other faces that coincide with a corner, so that they move together.
pub(crate) fn corners_at(job: &Resolved, at: DVec2) -> Vec<(FaceId, usize, usize)> {
    job.faces
        .iter()
        .flat_map(|face| {
            face.outline.rings().enumerate().flat_map(move |(ring, corners)| {
                corners
                    .iter()
                    .enumerate()
                    .filter(move |(_, p)| distance_to_segment(**p, at, at) <= SHARED)
                    .map(move |(corner, _)| (face.id, ring, corner))
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;
    use chalkcourse_geometry::dvec2;

    fn corners(at: &[(f64, f64)]) -> Vec<DVec2> {
        at.iter().map(|&(x, y)| dvec2(x, y)).collect()
    }

    #[test]
    fn a_first_face_slopes_down_to_its_lower_long_side() {
        let job = sample::empty();
        let layout = Layout::of(&job);
        for at in [
            [(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (0.0, 4.0)],
            [(0.0, 4.0), (10.0, 4.0), (10.0, 0.0), (0.0, 0.0)],
        ] {
            let face = new_face(&job, &layout, corners(&at));
            assert_eq!(face.downslope, Azimuth::SOUTH);
            assert_eq!(face.datum, dvec2(0.0, 0.0));
        }
    }

    #[test]
    fn a_second_face_meets_the_first_at_the_ridge() {
        let mut job = sample::empty();
        let south = corners(&[(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (0.0, 4.0)]);
        let face = new_face(&job, &Layout::of(&job), south);
        job.faces.push(face);
        job.next_id = 2;
        // Not as deep as the first: its eave is higher, its ridge the same.
        let north = corners(&[(0.0, 4.0), (10.0, 4.0), (10.0, 6.0), (0.0, 6.0)]);
        let face = new_face(&job, &Layout::of(&job), north);
        job.faces.push(face);
        assert_eq!(job.faces[1].downslope, Azimuth::NORTH);
        let layout = Layout::of(&job);
        assert!(layout.roof.problems.is_empty(), "{:?}", layout.roof.problems);
        assert_eq!(
            layout.roof.lines().iter().filter(|l| l.kind == chalkcourse_geometry::EdgeKind::Ridge).count(),
            1
        );
    }
}
