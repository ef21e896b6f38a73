//! A waiver covers the side that it was granted for, and no other.

use super::{again, empty, face};
use chalkcourse_geometry::{Length, SideId, dvec2};
use chalkcourse_job::{Block, BlockId, Edit, Face, FaceId, Orientation, Resolved, apply};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Finding, check};
use std::collections::BTreeSet;

const INCH: f64 = 0.0254;

/// 12 × 6 m with a step of 0.3 m in its eave, and a module 3 in from either rake.
fn two_rakes() -> Resolved {
    let corners =
        [(0.0, 0.0), (4.0, 0.0), (4.0, -0.3), (8.0, -0.3), (8.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)];
    let south = face(1, corners.map(|(x, y)| dvec2(x, y)).to_vec());
    let mut job = apply(&empty(), &Edit::PutFace(south)).unwrap();
    let width = job.kit.module.length.metres();
    let middle = job.faces[0].datum;
    for (id, u) in [(2, 3.0 * INCH), (3, 12.0 - width - 3.0 * INCH)] {
        let block = Block {
            id: BlockId(id),
            name: format!("B{id}"),
            face: FaceId(1),
            at: dvec2(u - middle.x, 2.5),
            rows: 1,
            columns: 1,
            orientation: Orientation::Landscape,
            reveal: Length::from_mm(3.0),
            shifts: Vec::new(),
            off: BTreeSet::new(),
            locked: false,
        };
        job = apply(&job, &Edit::PutBlock(block)).unwrap();
    }
    job
}

fn setbacks(job: &Resolved) -> Vec<Finding> {
    check(job, &Layout::of(job)).into_iter().filter(|finding| finding.rule == "setback").collect()
}

/// Positions along x in plan of the waived setbacks, and of those not waived.
fn waived(job: &Resolved) -> (Vec<f64>, Vec<f64>) {
    let x = |finding: &Finding| {
        let shape = &finding.place.shape;
        (shape.iter().map(|p| p.x).sum::<f64>() / shape.len() as f64 * 100.0).round() / 100.0
    };
    let (yes, no): (Vec<Finding>, Vec<Finding>) =
        setbacks(job).into_iter().partition(|finding| finding.waived.is_some());
    (yes.iter().map(x).collect(), no.iter().map(x).collect())
}

fn with_east_waived(job: &Resolved) -> Resolved {
    let east = setbacks(job).into_iter().find(|f| f.place.shape.iter().all(|p| p.x > 11.0)).unwrap();
    let waiver = east.waiver("agreed".into(), "R. Vale".into(), "2026-03-02".into());
    let job = apply(job, &Edit::Waive(waiver)).unwrap();
    assert_eq!(waived(&job), (vec![12.0], vec![0.0]));
    job
}

fn put(job: &Resolved, face: Face) -> Resolved {
    let next = apply(job, &Edit::PutFace(face)).unwrap();
    assert_eq!(again(&next), next);
    next
}

/// If sides were referred to by position, then with two corners of the eave before it removed, the east rake would have
/// the number that the west rake had.
#[test]
fn a_waiver_stays_on_its_rake_when_eave_corners_are_removed() {
    let mut less = with_east_waived(&two_rakes());
    for corner in [3, 2] {
        less = put(&less, less.faces[0].without_corner(0, corner).unwrap());
        assert_eq!(waived(&less), (vec![12.0], vec![0.0]), "corner {corner}");
    }
}

#[test]
fn a_waiver_stays_on_its_rake_when_corners_are_added() {
    let mut job = with_east_waived(&two_rakes());
    for (side, at) in [(0, (2.0, 0.0)), (0, (1.0, -0.1)), (6, (10.0, 0.0))] {
        job = put(&job, job.faces[0].with_corner_added(0, side, at.into()).unwrap());
        assert_eq!(waived(&job).0, [12.0]);
    }
    // On the rake itself: the longer piece remains the rake.
    let (_, side) = job.faces[0].sides.place_of(SideId(5)).unwrap();
    job = put(&job, job.faces[0].with_corner_added(0, side, dvec2(12.0, 1.0)).unwrap());
    assert_eq!(waived(&job).0, [12.0]);
}

#[test]
fn a_waiver_of_a_merged_rake_covers_nothing() {
    let job = with_east_waived(&two_rakes());
    let less = put(&job, job.faces[0].without_corner(0, 6).unwrap());
    assert_eq!(waived(&less).0, Vec::<f64>::new());
    assert!(less.faces[0].sides.place_of(SideId(5)).is_none());
    // It stays gone when a corner is added where the old one was.
    let back = less.faces[0].with_corner_added(0, 5, dvec2(12.0, 6.0)).unwrap();
    assert_eq!(waived(&put(&less, back)).0, Vec::<f64>::new());
}

#[test]
fn a_waiver_stays_with_its_hole() {
    let hole =
        |x: f64| [(x, 2.3), (x, 3.0), (x + 0.5, 3.0), (x + 0.5, 2.3)].map(|(x, y)| dvec2(x, y)).to_vec();
    let job = two_rakes();
    let job = put(&job, job.faces[0].with_hole(hole(2.0)).with_hole(hole(9.5)));
    let holes: Vec<Finding> = setbacks(&job)
        .into_iter()
        .filter(|f| f.place.shape.iter().all(|p| p.x > 1.0 && p.x < 11.0))
        .collect();
    let first = holes.iter().find(|f| f.place.shape[0].x < 5.0).unwrap();
    let waiver = first.waiver("agreed".into(), "R. Vale".into(), "2026-03-02".into());
    let job = apply(&job, &Edit::Waive(waiver)).unwrap();
    assert_eq!(waived(&job).0.len(), 1);
    let second = put(&job, job.faces[0].without_hole(1).unwrap());
    assert_eq!(waived(&second).0, Vec::<f64>::new(), "the other hole got it");
    let first = put(&job, job.faces[0].without_hole(2).unwrap());
    assert_eq!(waived(&first).0.len(), 1);
}
