//! Pathways over two adjacent planes, and what opens one, against independent searches: a disc pushed over a fine raster with
//! plain arithmetic of its own, and every set of modules tried in turn.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod raster;

use chalkcourse_job::{Cell, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Facts, Finding, check, pathways};
use proptest::prelude::*;
use raster::{ASKED, BLUR, asking, block, empty_job, face, hip, pushed};
use std::collections::BTreeSet;

fn jobs() -> impl Strategy<Value = Resolved> {
    let block_at = ((0.2..7.0f64, 0.35..3.5f64), 1..3u32, 1..5u32, 1..5u32);
    (8.0..11.0f64, 5.0..7.5f64, 4.0..10.0f64, proptest::collection::vec(block_at, 1..6)).prop_map(
        |(long, deep, rise, blocks)| {
            let mut job = empty_job();
            job.faces = hip(long, deep, rise);
            // Leave out modules that slightly overhang an eave or the ridge: they depend on the raster step.
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

/// Whether a pathway serves the first plane: on it, or straddling it and an adjacent plane.
fn found(job: &Resolved, width: f64) -> bool {
    let job = asking(job, width);
    pathways(&job, &Layout::of(&job)).iter().any(|path| path.faces.contains(&0))
}

fn any_pushed(job: &Resolved, width: f64, touch: bool) -> bool {
    let layout = Layout::of(job);
    [&[0][..], &[0, 1], &[0, 3]].iter().any(|faces| pushed(&layout, faces, width, touch))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(1000) })]

    /// On the first plane of a hip roof, or straddling it and an adjacent plane: if a pathway is found for 36 in, a slightly
    /// thinner disc can be pushed along; if a slightly thicker one can, a pathway is found.
    #[test]
    fn a_straddling_pathway_is_where_a_disc_can_be_pushed(job in jobs()) {
        if found(&job, ASKED) {
            prop_assert!(any_pushed(&job, ASKED - BLUR, false), "found, but no disc passes");
        } else {
            prop_assert!(!any_pushed(&job, ASKED + BLUR, true), "a disc passes, but none found");
        }
    }
}

/// All outcomes occur, so that the test above is meaningful.
#[test]
fn straddling_alone_and_none() {
    let mut job = empty_job();
    job.faces = hip(12.0, 8.0, 6.0);
    let kinds = |job: &Resolved| -> BTreeSet<usize> {
        let found = pathways(job, &Layout::of(job));
        found.iter().filter(|path| path.faces.contains(&0)).map(|path| path.faces.len()).collect()
    };
    // Its own, and those of the triangles, which must straddle.
    assert_eq!(kinds(&job), BTreeSet::from([1, 2]));
    // The south side blocks the ridge; a pathway gets past over a hip.
    job.blocks = vec![block(10, 1, (2.9, 0.6), 2, 4)];
    assert!(kinds(&job) == BTreeSet::from([2]) && any_pushed(&job, ASKED - BLUR, false), "{:?}", kinds(&job));
    let layout = Layout::of(&job);
    assert!(!pushed(&layout, &[0], ASKED, false));
}

/// The least number of modules whose removal clears a finding, by brute force over every set.
fn by_trying(job: &Resolved, key: &str, most: usize) -> Option<usize> {
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
        check(&less, &Layout::of(&less)).iter().all(|finding| finding.key.to_string() != key)
    };
    let mut sets: Vec<u32> = (0..1u32 << all.len()).filter(|set| set.count_ones() as usize <= most).collect();
    sets.sort_by_key(|set| set.count_ones());
    sets.into_iter().find(|&set| clears(set)).map(u32::count_ones).map(|count| count as usize)
}

/// How many modules a finding says to remove.
fn removed(finding: &Finding) -> Option<usize> {
    match &finding.facts {
        Facts::FirePaths { opening, .. } | Facts::FirePlanePath { opening } => {
            Some(opening.as_ref()?.iter().map(|(_, cells)| cells.len()).sum())
        }
        _ => None,
    }
}

/// Small gables and hips with up to eight modules in the way.
fn shut_jobs() -> impl Strategy<Value = Resolved> {
    let block_at = ((0.1..1.2f64, 0.3..1.0f64), 1..3u32, 2..4u32);
    (3.7..6.5f64, 3.0..4.5f64, any::<bool>(), proptest::collection::vec(block_at, 1..3)).prop_map(
        |(long, deep, hipped, blocks)| {
            let mut job = empty_job();
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

/// A strip straight up beside the lower block must clear two modules of the upper one, of which the second is entirely past the
/// ridge: a path that winds around it only needs the first.
#[test]
fn a_winding_pathway_removes_fewer_modules_than_a_strip() {
    let mut job = empty_job();
    job.faces = vec![
        face(1, &[(0.0, 0.0), (3.7, 0.0), (3.7, 3.0), (0.0, 3.0)], 6.0, 180.0),
        face(2, &[(0.0, 3.0), (3.7, 3.0), (3.7, 6.0), (0.0, 6.0)], 6.0, 0.0),
    ];
    job.blocks = vec![block(10, 1, (0.942_312_98, 0.3), 1, 2), block(11, 1, (0.1, 2.376_562_77), 2, 2)];
    let findings = check(&job, &Layout::of(&job));
    let finding = findings.iter().find(|finding| finding.rule == "fire-paths").unwrap();
    assert_eq!(removed(finding), Some(1));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(60) })]

    /// The finding removes as few modules as brute force over every set. On about one hip in several hundred it removes one more:
    /// at a gap over a hip that is wider than a pathway by less than a step of the search's lattice.
    #[test]
    fn the_least_loss_is_least(job in shut_jobs()) {
        for finding in check(&job, &Layout::of(&job)) {
            if !["fire-plane-path", "fire-paths"].contains(&finding.rule) {
                continue;
            }
            let offered = removed(&finding);
            let least = by_trying(&job, &finding.key.to_string(), offered.unwrap_or(3));
            prop_assert_eq!(offered, least, "{}", finding.key);
        }
    }
}
