//! Pathways for the fire service against an independent search: a disc that is pushed over a fine raster of the plane.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, Length, Pitch, Polygon, distance_to_segment, dvec2};
use chalkcourse_job::{
    Block, BlockId, Edit, Face, FaceId, Job, apply, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use chalkcourse_rules::pathways;
use proptest::prelude::*;
use std::sync::Arc;

/// The raster's step, metres.
const STEP: f64 = 0.04;
/// What a raster can miss or take too much: a step to each side, and a little for its corners.
const BLUR: f64 = 4.0 * STEP;

/// One plane that falls south: the eave from (0, 0), the ridge anywhere above it.
fn plane(width: f64, ridge: (f64, f64), deep: f64, rise: f64) -> Face {
    let (from, to) = (ridge.0.min(ridge.1), ridge.0.max(ridge.1) + 0.5);
    let corners = vec![dvec2(0.0, 0.0), dvec2(width, 0.0), dvec2(to, deep), dvec2(from, deep)];
    let pitch = Pitch::from_rise_in_12(rise).unwrap();
    Face::new(FaceId(1), "South".into(), Polygon::new(corners), pitch, Azimuth::SOUTH, Length::ZERO)
}

fn jobs() -> impl Strategy<Value = Job> {
    let block = ((0.0..10.0f64, 0.0..5.0f64), 1..4u32, 1..5u32);
    (
        4.0..12.0f64,
        (-2.0..13.0f64, -2.0..13.0f64),
        3.0..6.0f64,
        3.0..12.0f64,
        proptest::collection::vec(block, 1..4),
    )
        .prop_map(|(width, ridge, deep, rise, blocks)| {
            let mut job = Job::new("Random".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
            job.faces = vec![plane(width, ridge, deep, rise)];
            let top = deep * job.faces[0].pitch.slope_factor();
            job.blocks = (10..)
                .zip(blocks)
                // A module that lies a little over an eave or a ridge is a matter of the raster's step.
                .filter(|(_, (at, rows, _))| at.1 > 0.3 && at.1 + f64::from(*rows) * 1.137 < top - 0.3)
                .map(|(number, (at, rows, columns))| Block {
                    id: BlockId(number),
                    name: String::new(),
                    face: FaceId(1),
                    at: at.into(),
                    rows,
                    columns,
                    orientation: Default::default(),
                    reveal: Length::from_mm(3.0),
                    shifts: Vec::new(),
                    off: Default::default(),
                    locked: false,
                })
                .collect();
            job
        })
}

/// The book's pathway made so wide.
fn asking(job: &Job, width: f64) -> Job {
    let mut book = (*job.rule_book).clone();
    book.fire_access.as_mut().unwrap().path_width.value = Length::from_metres(width);
    apply(job, &Edit::SetRuleBook(Arc::new(book))).unwrap()
}

fn found(job: &Job, width: f64) -> bool {
    let job = asking(job, width);
    !pathways(&job, &Layout::of(&job)).is_empty()
}

/// Pushes a disc so wide from the eave to the ridge, a raster step at a time.
fn pushed(job: &Job, width: f64) -> bool {
    let layout = Layout::of(job);
    let face = &layout.roof.faces[0];
    let reach = width / 2.0;
    let modules: Vec<Vec<DVec2>> = layout
        .blocks
        .iter()
        .flat_map(|block| block.modules.iter())
        .map(|module| module.rect.corners().map(|p| face.plane.to_plan(p)).to_vec())
        .collect();
    let bounds = face.plan.bounds().unwrap();
    let size = bounds.size() / STEP;
    let (columns, rows) = (size.x.ceil() as usize + 1, size.y.ceil() as usize + 1);
    let at = |cell: usize| bounds.min + dvec2((cell % columns) as f64, (cell / columns) as f64) * STEP;
    let free = |p: DVec2| {
        face.plan.contains(p)
            && face.plan.distance_to_border(p) >= reach
            && modules.iter().all(|corners| {
                let shape = Polygon::new(corners.clone());
                !shape.contains(p) && shape.distance_to_border(p) >= reach
            })
    };
    let touches = |p: DVec2, kind: EdgeKind| {
        let mut edges = face.edges.iter().filter(|edge| edge.kind == kind);
        edges.any(|edge| distance_to_segment(p, edge.plan.0, edge.plan.1) <= reach + 2.0 * STEP)
    };
    let mut open: Vec<bool> = (0..columns * rows).map(|cell| free(at(cell))).collect();
    let mut stack: Vec<usize> =
        (0..open.len()).filter(|&cell| open[cell] && touches(at(cell), EdgeKind::Eave)).collect();
    stack.iter().for_each(|&cell| open[cell] = false);
    while let Some(cell) = stack.pop() {
        if touches(at(cell), EdgeKind::Ridge) {
            return true;
        }
        let (column, row) = (cell % columns, cell / columns);
        for (dx, dy) in [(-1i64, 0i64), (1, 0), (0, -1), (0, 1), (-1, -1), (-1, 1), (1, -1), (1, 1)] {
            let (x, y) = (column as i64 + dx, row as i64 + dy);
            if (0..columns as i64).contains(&x) && (0..rows as i64).contains(&y) {
                let next = y as usize * columns + x as usize;
                if std::mem::take(&mut open[next]) {
                    stack.push(next);
                }
            }
        }
    }
    false
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(1000) })]

    /// What is found for 36 in, a somewhat thinner disc can be pushed along; where a somewhat thicker one can be pushed, a
    /// pathway is found.
    #[test]
    fn a_pathway_is_where_a_disc_can_be_pushed(job in jobs()) {
        let width = Length::from_inches(36.0).metres();
        if found(&job, width) {
            prop_assert!(pushed(&job, width - BLUR), "found, but no disc passes");
        } else {
            prop_assert!(!pushed(&job, width + BLUR), "a disc passes, but none found");
        }
    }
}

/// Both answers come up, so that the test above says something.
#[test]
fn both_answers() {
    let mut job = Job::new("Two".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    job.faces = vec![plane(6.0, (0.0, 5.5), 5.0, 6.0)];
    let width = Length::from_inches(36.0).metres();
    assert!(found(&job, width) && pushed(&job, width));
    job.blocks = vec![Block {
        id: BlockId(10),
        name: String::new(),
        face: FaceId(1),
        at: dvec2(0.4, 1.0),
        rows: 1,
        columns: 3,
        orientation: Default::default(),
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }];
    assert!(!found(&job, width) && !pushed(&job, width));
}
