use super::{RoofShape, Zone};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Polygon, RoofFace};
use chalkcourse_job::LoadStandard;

/// Which edges are within an edge-zone width.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Near {
    /// An eave.
    pub eave: bool,
    /// A rake.
    pub rake: bool,
    /// A ridge.
    pub ridge: bool,
    /// A hip.
    pub hip: bool,
}

/// The zone of a point by the edges near it. `steep` is more than 27°.
///
/// 7-22: gables up to 27° have strips along rakes and ridges and corners at the ends of the ridge, but none along eaves; above
/// 27°, strips along rakes and corners at both their ends; hips have zone 3 along eaves and zone 2 beside hips and ridges. 7-16:
/// strips along all edges, corners where rakes meet eaves and ridges (from memory).
pub fn zone_near(standard: LoadStandard, shape: RoofShape, steep: bool, near: Near) -> Zone {
    let Near { eave, rake, ridge, hip } = near;
    match (standard, shape) {
        (LoadStandard::Asce722, RoofShape::Hip) if eave => Zone::Three,
        (LoadStandard::Asce722, RoofShape::Hip) if hip || ridge => Zone::Two,
        (LoadStandard::Asce722, RoofShape::Gable) if rake && (ridge || steep && eave) => Zone::Three,
        (LoadStandard::Asce722, RoofShape::Gable) if rake || ridge && !steep => Zone::Two,
        (LoadStandard::Asce722, _) => Zone::One,
        (LoadStandard::Asce716, _) => match (rake, eave, ridge || hip) {
            (true, true, _) => Zone::ThreeEave,
            (true, _, true) => Zone::ThreeRidge,
            (true, ..) => Zone::TwoRake,
            (_, _, true) => Zone::TwoRidge,
            (_, true, _) => Zone::TwoEave,
            _ => Zone::One,
        },
    }
}

/// A zone as drawn on a face.
#[derive(Clone, Debug, PartialEq)]
pub struct ZoneArea {
    /// The zone.
    pub zone: Zone,
    /// Its outline in plan, in pieces.
    pub shapes: Vec<Polygon>,
}

/// The zones of a face in plan, for edge zones `width` metres wide. Every part of the face is in one.
pub fn zone_areas(standard: LoadStandard, shape: RoofShape, face: &RoofFace, width: f64) -> Vec<ZoneArea> {
    let steep = face.plane.pitch.degrees() > 27.0;
    if !face.sound || width.is_nan() || width <= 0.0 {
        return Vec::new();
    }
    let strips = |kind: EdgeKind| -> Vec<Polygon> {
        let strips: Vec<Polygon> =
            face.edges.iter().filter(|span| span.kind == kind).map(|span| strip(span, width)).collect();
        if strips.is_empty() { strips } else { Polygon::union(&strips) }
    };
    let edges = [EdgeKind::Eave, EdgeKind::Rake, EdgeKind::Ridge, EdgeKind::Hip].map(strips);
    let mut pieces: Vec<(Near, Vec<Polygon>)> = vec![(Near::default(), vec![face.plan.clone()])];
    // Each kind of strip splits every piece in two: inside the strip and outside.
    for (index, strips) in edges.iter().enumerate().filter(|(_, strips)| !strips.is_empty()) {
        let mut cut = Vec::new();
        for (near, shapes) in pieces {
            let inside: Vec<Polygon> =
                shapes.iter().flat_map(|s| strips.iter().flat_map(|strip| s.intersection(strip))).collect();
            let outside: Vec<Polygon> = shapes.iter().flat_map(|s| s.difference(strips)).collect();
            let with = match index {
                0 => Near { eave: true, ..near },
                1 => Near { rake: true, ..near },
                2 => Near { ridge: true, ..near },
                _ => Near { hip: true, ..near },
            };
            cut.extend(
                [(with, inside), (near, outside)].into_iter().filter(|(_, shapes)| !shapes.is_empty()),
            );
        }
        pieces = cut;
    }
    let mut areas: Vec<ZoneArea> = Vec::new();
    for (near, shapes) in pieces {
        let zone = zone_near(standard, shape, steep, near);
        match areas.iter_mut().find(|area| area.zone == zone) {
            Some(area) => area.shapes.extend(shapes),
            None => areas.push(ZoneArea { zone, shapes }),
        }
    }
    areas.sort_by_key(|area| area.zone);
    areas
}

/// A strip inside an edge, extended at both ends so that no corner of the face is missed.
fn strip(span: &EdgeSpan, width: f64) -> Polygon {
    let (a, b) = span.plan;
    let along = (b - a).normalize_or_zero();
    let inward = along.perp() * width;
    let more: DVec2 = along * width * 3.0;
    Polygon::new(vec![a - more, b + more, b + more + inward, a - more + inward])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::gable_job;
    use LoadStandard::{Asce716, Asce722};
    use chalkcourse_layout::Layout;

    fn area(areas: &[ZoneArea], zone: Zone) -> f64 {
        areas.iter().filter(|a| a.zone == zone).flat_map(|a| &a.shapes).map(Polygon::area).sum()
    }

    /// A 12 × 6 m face with a = 1 m: rake strips 2 × 6, the ridge strip 12 × 1, corners 2 × 1.
    #[test]
    fn a_gable_of_7_22() {
        let layout = Layout::of(&gable_job());
        let areas = zone_areas(Asce722, RoofShape::Gable, &layout.roof.faces[0], 1.0);
        let near =
            |zone, expect: f64| assert!((area(&areas, zone) - expect).abs() < 1e-6, "{zone:?} {areas:?}");
        near(Zone::Three, 2.0);
        near(Zone::Two, 10.0 + 10.0);
        near(Zone::One, 72.0 - 22.0);
    }

    /// 7-16 has the same plus strips along the eave, with corners of their own.
    #[test]
    fn a_gable_of_7_16() {
        let layout = Layout::of(&gable_job());
        let areas = zone_areas(Asce716, RoofShape::Gable, &layout.roof.faces[0], 1.0);
        let near =
            |zone, expect: f64| assert!((area(&areas, zone) - expect).abs() < 1e-6, "{zone:?} {areas:?}");
        near(Zone::ThreeRidge, 2.0);
        near(Zone::ThreeEave, 2.0);
        near(Zone::TwoRake, 8.0);
        near(Zone::TwoRidge, 10.0);
        near(Zone::TwoEave, 10.0);
        near(Zone::One, 40.0);
    }

    #[test]
    fn hips_and_steep_gables_of_7_22() {
        let near = |eave, rake, ridge, hip| Near { eave, rake, ridge, hip };
        let at = |shape, steep, near| zone_near(Asce722, shape, steep, near);
        assert_eq!(at(RoofShape::Hip, false, near(true, false, false, true)), Zone::Three);
        assert_eq!(at(RoofShape::Hip, false, near(false, false, true, false)), Zone::Two);
        assert_eq!(at(RoofShape::Gable, true, near(false, false, true, false)), Zone::One);
        assert_eq!(at(RoofShape::Gable, true, near(true, true, false, false)), Zone::Three);
        assert_eq!(at(RoofShape::Gable, false, near(true, false, false, false)), Zone::One);
    }
}
