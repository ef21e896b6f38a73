//! A small job for the tests of limits, and shorthands for checking them.

use crate::{KeepOut, KeepOutContext, TOLERANCE, keep_outs};
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, Rect, dvec2};
use chalkcourse_job::{
    Block, BlockId, Face, FaceId, Kit, Penetration, PenetrationId, PenetrationKind, Resolved, RuleBook,
    Shape, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use std::sync::Arc;

pub(crate) const INCH: f64 = 0.0254;
/// Slope factor of 6:12: length up the slope per length in plan.
pub(crate) const SLOPE: f64 = 1.118_033_988_749_895;

pub(crate) fn face(id: u32, corners: &[(f64, f64)], downslope: f64) -> Face {
    Face::new(
        FaceId(id),
        id.to_string(),
        Polygon::new(corners.iter().map(|&c| c.into()).collect()),
        Pitch::from_rise_in_12(6.0).unwrap(),
        Azimuth::from_degrees(downslope),
        Length::from_metres(3.0),
    )
}

/// A 12 × 12 m gable, 6:12; face 1 falls south and is 6 m deep in plan, 6.708 m up the slope. Nothing on it.
pub(crate) fn gable() -> Resolved {
    let mut job = Resolved::new("Gable".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    job.faces = vec![
        face(1, &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 180.0),
        face(2, &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 0.0),
    ];
    job.next_id = 10;
    job
}

/// Two planes, 6:12, that meet in a hip from (0, 0) to (6, 6) in plan; face 1 falls south.
pub(crate) fn hip() -> Resolved {
    let mut job = gable();
    job.faces = vec![
        face(1, &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 180.0),
        face(2, &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 270.0),
    ];
    job
}

pub(crate) fn block(id: u32, face: u32, at: (f64, f64), rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(id),
        name: id.to_string(),
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

/// 0.4 m square, at a point in plan.
pub(crate) fn through(kind: PenetrationKind, x: f64, y: f64) -> Penetration {
    Penetration {
        id: PenetrationId(5),
        name: "vent".into(),
        kind,
        at: dvec2(x, y),
        shape: Shape::Rectangle { along: Length::from_metres(0.4), up: Length::from_metres(0.4) },
        clearance: None,
    }
}

pub(crate) fn book(job: &mut Resolved) -> &mut RuleBook {
    Arc::make_mut(&mut job.rule_book)
}

pub(crate) fn kit(job: &mut Resolved) -> &mut Kit {
    Arc::make_mut(&mut job.kit)
}

/// The keep-outs of a rule on face 1.
pub(crate) fn of(job: &Resolved, rule: &str) -> Vec<KeepOut> {
    let layout = Layout::of(job);
    let given = KeepOutContext::as_laid(job, &layout);
    keep_outs(job, &layout, 0, &given).into_iter().filter(|keep_out| keep_out.rule == rule).collect()
}

/// A module of the demo kit, in the lowest row, with its lower left corner at a point on the face.
pub(crate) fn module(u: f64, v: f64) -> Part {
    Part { rect: Rect::at(dvec2(u, v), dvec2(1.722, 1.134)), lowest: true }
}

/// Asserts that a rule allows a module at a point, but not slightly more than the tolerance in the direction `nearer`.
pub(crate) fn just(job: &Resolved, rule: &str, at: (f64, f64), nearer: DVec2) {
    let keep_outs = of(job, rule);
    let clear = |by: f64| {
        let moved = module(at.0 + nearer.x * by, at.1 + nearer.y * by);
        keep_outs.iter().all(|keep_out| keep_out.clears(&moved))
    };
    assert!(!keep_outs.is_empty(), "{rule} gives none");
    assert!(clear(-0.05) && clear(0.0) && clear(TOLERANCE * 0.9), "{rule} keeps off too far at {at:?}");
    // A tenth of a millimetre in the limit's own metric may be more along an oblique direction.
    assert!(!clear(TOLERANCE * 2.0) && !clear(0.05), "{rule} lets come too near at {at:?}");
}
