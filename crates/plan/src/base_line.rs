//! Where the lowest row of a block starts, measured from where a crew can hook a tape: edges of the face, never a point
//! in the air beyond a hip.

use chalkcourse_geometry::{DVec2, EdgeKind, RoofFace, dvec2};
use chalkcourse_layout::PlacedBlock;

/// A tape measure from an edge of the face to the base line or its start, in the face's frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FromEdge {
    /// Where the tape is held: a point on the edge.
    pub edge: DVec2,
    /// Where it is read.
    pub to: DVec2,
    /// The kind of the edge.
    pub kind: EdgeKind,
}

impl FromEdge {
    /// The tape reading, metres.
    pub fn length(&self) -> f64 {
        self.edge.distance(self.to)
    }
}

/// How to find the base line of a block on its face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BaseLine {
    /// Lower left corner of the lowest row.
    pub start: DVec2,
    /// Right end of the lowest row, along u.
    pub end: f64,
    /// Straight up the slope to the line, from an eave if there is one below any of it.
    pub up: Option<FromEdge>,
    /// Along the line to the left end of the row.
    pub along: Option<FromEdge>,
}

/// The base line of a block; `None` if it has no modules.
pub fn base_line(face: &RoofFace, block: &PlacedBlock) -> Option<BaseLine> {
    let lowest = block.modules.iter().map(|module| module.cell.row).min()?;
    let row = || block.modules.iter().filter(move |module| module.cell.row == lowest).map(|m| m.rect);
    let left = row().min_by(|a, b| a.min.x.total_cmp(&b.min.x))?;
    let end = row().map(|rect| rect.max.x).fold(left.max.x, f64::max);
    let start = left.min;
    let down =
        |share: f64| from_edge(face, dvec2(start.x + (end - start.x) * share, start.y), dvec2(0.0, -1.0));
    // About a third along the row there is usually space for a label; an end may be above an eave where the middle is
    // not.
    let places = [0.35, 0.65, 0.5, 0.0, 1.0, 0.15, 0.85].map(down);
    let on_eave = places.iter().flatten().find(|from| from.kind == EdgeKind::Eave);
    let up = on_eave.or_else(|| places.iter().flatten().next()).copied();
    Some(BaseLine { start, end, up, along: from_edge(face, start, dvec2(-1.0, 0.0)) })
}

/// The nearest edge of the face from a point in a direction.
fn from_edge(face: &RoofFace, to: DVec2, way: DVec2) -> Option<FromEdge> {
    // A point on the edge itself has no distance to it.
    let least = -1e-6;
    let met = face.edges.iter().filter_map(|span| {
        let (a, b) = span.frame;
        let along = b - a;
        let across = way.perp_dot(along);
        if across.abs() < 1e-12 {
            return None;
        }
        let (far, share) = ((a - to).perp_dot(along) / across, (a - to).perp_dot(way) / across);
        ((-1e-9..=1.0 + 1e-9).contains(&share) && far >= least).then_some((far.max(0.0), span.kind))
    });
    let (far, kind) = met.min_by(|a, b| a.0.total_cmp(&b.0))?;
    Some(FromEdge { edge: to + way * far, to, kind })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::evaluate;
    use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon};
    use chalkcourse_job::{
        Block, BlockId, Face, FaceId, Resolved, builtin_kit, builtin_prices, builtin_rule_book,
    };

    /// A trapezoid between two hips: eave 10 m, ridge 4 m, 3 m deep in plan at 12:12, so that each hip comes in 3 m
    /// over 3 √2 m of slope.
    fn between_hips(at: DVec2) -> (RoofFace, PlacedBlock) {
        let mut job = Resolved::new("hips".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let pitch = Pitch::from_rise_in_12(12.0).unwrap();
        let outline = Polygon::new(vec![dvec2(0.0, 0.0), dvec2(10.0, 0.0), dvec2(7.0, 3.0), dvec2(3.0, 3.0)]);
        job.faces.push(Face::new(
            FaceId(1),
            "F".into(),
            outline,
            pitch,
            Azimuth::SOUTH,
            Length::from_metres(3.0),
        ));
        job.blocks.push(Block {
            id: BlockId(2),
            name: "A".into(),
            face: FaceId(1),
            at,
            rows: 2,
            columns: 2,
            orientation: chalkcourse_job::Orientation::Landscape,
            reveal: Length::from_mm(3.0),
            shifts: Vec::new(),
            off: std::collections::BTreeSet::new(),
            locked: false,
        });
        job.next_id = 3;
        let layout = evaluate(&job).layout;
        (layout.roof.faces[0].clone(), PlacedBlock::clone(&layout.blocks[0]))
    }

    #[test]
    fn measures_start_on_an_edge_of_the_face() {
        let (face, block) = between_hips(dvec2(3.0, 1.0));
        let line = base_line(&face, &block).unwrap();
        let (up, along) = (line.up.unwrap(), line.along.unwrap());
        assert!((up.length() - 1.0).abs() < 1e-9 && up.kind == EdgeKind::Eave);
        // By hand: 1 m up the slope the left hip has come in by 1 / √2 m, so 3 − 0.7071 m are left.
        assert!((along.length() - (3.0 - 0.5_f64.sqrt())).abs() < 1e-9, "{}", along.length());
        for from in [up, along] {
            assert!(face.frame.distance_to_border(from.edge) < 1e-9, "{from:?} starts in the air");
        }
    }
}
