//! Pathways over two planes side by side, and what opens one, against independent searches: a disc pushed over a fine
//! raster with plain arithmetic of its own, and every set of modules tried in turn.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

use chalkcourse_geometry::{Azimuth, DVec2, EdgeKind, Length, Pitch, Polygon, dvec2};
use chalkcourse_job::{
    Block, BlockId, Cell, Edit, Face, FaceId, Job, apply, builtin_kit, builtin_prices, builtin_rule_book,
};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{check, pathways};
use proptest::prelude::*;
use std::collections::BTreeSet;
use std::sync::Arc;

/// The raster's step, metres.
const STEP: f64 = 0.05;
/// What a raster can miss or take too much: a step to each side, and a little for its corners.
const BLUR: f64 = 4.0 * STEP;

fn face(id: u32, corners: &[(f64, f64)], rise: f64, way: f64) -> Face {
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
    // Heights from the datum's own corner.
    face.height = Length::from_metres(3.0);
    face
}

fn block(id: u32, face: u32, at: (f64, f64), rows: u32, columns: u32) -> Block {
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
fn hip(long: f64, deep: f64, rise: f64) -> Vec<Face> {
    let half = deep / 2.0;
    vec![
        face(1, &[(0.0, 0.0), (long, 0.0), (long - half, half), (half, half)], rise, 180.0),
        face(2, &[(long, 0.0), (long, deep), (long - half, half)], rise, 90.0),
        face(3, &[(long, deep), (0.0, deep), (half, half), (long - half, half)], rise, 0.0),
        face(4, &[(0.0, deep), (0.0, 0.0), (half, half)], rise, 270.0),
    ]
}

fn jobs() -> impl Strategy<Value = Job> {
    let block_at = ((0.2..9.0f64, 0.35..4.0f64), 1..3u32, 1..5u32, 1..5u32);
    (9.0..14.0f64, 6.0..9.0f64, 4.0..10.0f64, proptest::collection::vec(block_at, 1..6)).prop_map(
        |(long, deep, rise, blocks)| {
            let mut job = Job::new("Random".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
            job.faces = hip(long, deep, rise);
            // A module that lies a little over an eave or the ridge is a matter of the raster's step.
            let top = deep / 2.0 * job.faces[0].pitch.slope_factor() - 0.3;
            job.blocks = (10..)
                .zip(blocks)
                .filter(|(_, (at, rows, ..))| at.1 + f64::from(*rows) * 1.137 < top)
                .map(|(number, (at, rows, columns, face))| block(number, face, at, rows, columns))
                .collect();
            job
        },
    )
}

fn asking(job: &Job, width: f64) -> Job {
    let mut book = (*job.rule_book).clone();
    book.fire_access.as_mut().unwrap().path_width.value = Length::from_metres(width);
    apply(job, &Edit::SetRuleBook(Arc::new(book))).unwrap()
}

/// Whether a pathway serves the first plane: on it, or straddling it and a plane beside it.
fn found(job: &Job, width: f64) -> bool {
    let job = asking(job, width);
    pathways(&job, &Layout::of(&job)).iter().any(|path| path.faces.contains(&0))
}

// The independent part: no function of the program's geometry but the places of corners.

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

/// Pushes a disc from an eave to the ridge over some planes; the lines between them may be crossed. A disc that is to touch
/// comes right up to the edge; one that need not is there a little before.
fn pushed(layout: &Layout, faces: &[usize], width: f64, touch: bool) -> bool {
    let reach = width / 2.0;
    let rings: Vec<&[DVec2]> = faces.iter().map(|&f| layout.roof.faces[f].plan.outer.as_slice()).collect();
    let modules: Vec<Vec<DVec2>> = layout
        .blocks
        .iter()
        .filter(|block| faces.contains(&block.face))
        .flat_map(|block| {
            let plane = layout.roof.faces[block.face].plane;
            block.modules.iter().map(move |m| m.rect.corners().map(|p| plane.to_plan(p)).to_vec())
        })
        .collect();
    let spans = || faces.iter().flat_map(|&f| layout.roof.faces[f].edges.iter());
    let walls: Vec<(DVec2, DVec2)> = spans()
        .filter(|s| !s.neighbour.is_some_and(|n| faces.contains(&n.face) && s.kind == EdgeKind::Hip))
        .map(|s| s.plan)
        .collect();
    let of = |kind: EdgeKind| spans().filter(move |s| s.kind == kind).map(|s| s.plan).collect::<Vec<_>>();
    let (eaves, ridges) = (of(EdgeKind::Eave), of(EdgeKind::Ridge));
    let all: Vec<DVec2> = rings.iter().flat_map(|ring| ring.iter().copied()).collect();
    let low = all.iter().fold(DVec2::INFINITY, |a, &b| a.min(b));
    let high = all.iter().fold(DVec2::NEG_INFINITY, |a, &b| a.max(b));
    let columns = ((high.x - low.x) / STEP) as usize + 2;
    let rows = ((high.y - low.y) / STEP) as usize + 2;
    let at = |cell: usize| low + dvec2((cell % columns) as f64, (cell / columns) as f64) * STEP;
    // A raster point may fall between two planes by the rounding of a hip's corner.
    let ground = |p: DVec2| rings.iter().any(|ring| away_from_ring(p, ring) < 1e-6);
    let free = |p: DVec2| {
        ground(p)
            && walls.iter().all(|&(a, b)| away(p, a, b) >= reach)
            && modules.iter().all(|ring| away_from_ring(p, ring) >= reach)
    };
    let mut open: Vec<bool> = (0..columns * rows).map(|cell| free(at(cell))).collect();
    let near = |p: DVec2, edges: &[(DVec2, DVec2)]| {
        edges.iter().any(|&(a, b)| {
            let to_edge = away(p, a, b);
            let ab = b - a;
            let q = a + ab * ((p - a).dot(ab) / ab.dot(ab)).clamp(0.0, 1.0);
            let right_up = q + (p - q) * ((reach + 1e-6) / to_edge);
            to_edge <= reach + 2.0 * STEP && (!touch || free(right_up))
        })
    };
    let mut stack: Vec<usize> = (0..open.len()).filter(|&c| open[c] && near(at(c), &eaves)).collect();
    stack.iter().for_each(|&cell| open[cell] = false);
    while let Some(cell) = stack.pop() {
        if near(at(cell), &ridges) {
            return true;
        }
        let (x, y) = ((cell % columns) as i64, (cell / columns) as i64);
        for (dx, dy) in [(-1, 0), (1, 0), (0, -1), (0, 1), (-1, -1), (-1, 1), (1, -1), (1, 1)] {
            let (x, y) = (x + dx, y + dy);
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

fn any_pushed(job: &Job, width: f64, touch: bool) -> bool {
    let layout = Layout::of(job);
    [&[0][..], &[0, 1], &[0, 3]].iter().any(|faces| pushed(&layout, faces, width, touch))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(1000) })]

    /// On the first plane of a hip roof, or straddling it and a plane beside it: what is found for 36 in, a somewhat thinner
    /// disc can be pushed along; where a somewhat thicker one can be pushed, a pathway is found.
    #[test]
    fn a_straddling_pathway_is_where_a_disc_can_be_pushed(job in jobs()) {
        let width = Length::from_inches(36.0).metres();
        if found(&job, width) {
            prop_assert!(any_pushed(&job, width - BLUR, false), "found, but no disc passes");
        } else {
            prop_assert!(!any_pushed(&job, width + BLUR, true), "a disc passes, but none found");
        }
    }
}

/// All answers come up, so that the test above says something.
#[test]
fn straddling_alone_and_none() {
    let mut job = Job::new("Hip".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    job.faces = hip(12.0, 8.0, 6.0);
    let width = Length::from_inches(36.0).metres();
    let kinds = |job: &Job| -> BTreeSet<usize> {
        let found = pathways(job, &Layout::of(job));
        found.iter().filter(|path| path.faces.contains(&0)).map(|path| path.faces.len()).collect()
    };
    // Its own, and those of the triangles, which must straddle.
    assert_eq!(kinds(&job), BTreeSet::from([1, 2]));
    // The ridge is shut on the south; over a hip one comes past.
    job.blocks = vec![block(10, 1, (2.9, 0.6), 2, 4)];
    assert!(kinds(&job) == BTreeSet::from([2]) && any_pushed(&job, width - BLUR, false), "{:?}", kinds(&job));
    let layout = Layout::of(&job);
    assert!(!pushed(&layout, &[0], width, false));
}

/// The least number of modules whose removal clears a finding, by trying every set of them.
fn by_trying(job: &Job, key: &str, most: usize) -> Option<usize> {
    let all: Vec<(usize, Cell)> = job
        .blocks
        .iter()
        .enumerate()
        .flat_map(|(at, block)| block.cells().map(move |cell| (at, cell)))
        .collect();
    let clears = |set: u32| {
        let mut less = job.clone();
        for (bit, &(at, cell)) in all.iter().enumerate() {
            if set & (1 << bit) != 0 {
                less.blocks[at].off.insert(cell);
            }
        }
        check(&less, &Layout::of(&less)).iter().all(|finding| finding.key != key)
    };
    let mut sets: Vec<u32> = (0..1u32 << all.len()).filter(|set| set.count_ones() as usize <= most).collect();
    sets.sort_by_key(|set| set.count_ones());
    sets.into_iter().find(|&set| clears(set)).map(u32::count_ones).map(|count| count as usize)
}

fn switched_off(edit: &Edit, job: &Job) -> usize {
    let next = apply(job, edit).unwrap();
    let count = |job: &Job| job.blocks.iter().map(|block| block.cells().count()).sum::<usize>();
    count(job) - count(&next)
}

/// Small gables and hips with up to eight modules in the way.
fn shut_jobs() -> impl Strategy<Value = Job> {
    let block_at = ((0.1..1.2f64, 0.3..1.0f64), 1..3u32, 2..4u32);
    (3.7..6.5f64, 3.0..4.5f64, any::<bool>(), proptest::collection::vec(block_at, 1..3)).prop_map(
        |(long, deep, hipped, blocks)| {
            let mut job = Job::new("Shut".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
            if hipped {
                job.faces = hip(long + 3.0, 6.0, 6.0);
            } else {
                job.faces = vec![
                    face(1, &[(0.0, 0.0), (long, 0.0), (long, deep), (0.0, deep)], 6.0, 180.0),
                    face(2, &[(0.0, deep), (long, deep), (long, 2.0 * deep), (0.0, 2.0 * deep)], 6.0, 0.0),
                ];
            }
            let mut up = 0.0;
            let mut left = 8usize;
            for (number, (at, rows, columns)) in (10..).zip(blocks) {
                let rows = rows.min((left / columns as usize) as u32);
                if rows > 0 {
                    job.blocks.push(block(number, 1, (at.0, at.1 + up), rows, columns));
                    left -= (rows * columns) as usize;
                    up += f64::from(rows) * 1.137 + 0.3;
                }
            }
            job
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(60) })]

    /// What the finding says to remove is as few as trying every set of modules gives.
    #[test]
    fn the_least_loss_is_least(job in shut_jobs()) {
        for finding in check(&job, &Layout::of(&job)) {
            if !["fire-plane-path", "fire-paths"].contains(&finding.code) {
                continue;
            }
            let offered = finding.fix.as_ref().map(|fix| switched_off(&fix.edit, &job));
            let least = by_trying(&job, &finding.key, offered.unwrap_or(3));
            prop_assert_eq!(offered, least, "{}", finding.message);
        }
    }
}
