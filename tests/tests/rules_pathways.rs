//! Fire-service pathways against an independent search that pushes a disc over a fine raster of the plane.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod raster;

use chalkcourse_job::{Face, PenetrationKind, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_rules::pathways;
use proptest::prelude::*;
use raster::{ASKED, BLUR, asking, block, empty_job, face, penetration, pushed};

/// One plane that falls south: the eave from (0, 0), the ridge anywhere above it.
fn plane(width: f64, ridge: (f64, f64), deep: f64, rise: f64) -> Face {
    let (from, to) = (ridge.0.min(ridge.1), ridge.0.max(ridge.1) + 0.5);
    face(1, &[(0.0, 0.0), (width, 0.0), (to, deep), (from, deep)], rise, 180.0)
}

/// Blocks anywhere, or a barrier from side to side with one gap about as wide as a pathway.
fn blocks() -> impl Strategy<Value = Vec<((f64, f64), u32, u32)>> {
    let anywhere = ((0.0..7.0f64, 0.35..4.0f64), 1..4u32, 1..5u32);
    let fence = (0.4..1.5f64, -0.3..0.3f64, -0.25..0.25f64, 1..3u32, 1..4u32).prop_map(
        |(up, left, more, rows, columns)| {
            let gap = left + f64::from(columns) * 1.725 + ASKED + more;
            vec![((left, up), rows, columns), ((gap, up), rows, 5)]
        },
    );
    prop_oneof![proptest::collection::vec(anywhere, 1..4), fence]
}

fn jobs() -> impl Strategy<Value = Resolved> {
    let through = (0.5..7.0f64, 0.5..3.5f64, any::<bool>()).prop_map(|(x, y, chimney)| {
        let kind = if chimney { PenetrationKind::Chimney } else { PenetrationKind::Vent };
        (kind, (x, y))
    });
    (
        4.0..8.0f64,
        (-2.0..9.0f64, -2.0..9.0f64),
        3.0..5.0f64,
        3.0..12.0f64,
        blocks(),
        proptest::collection::vec(through, 0..3),
    )
        .prop_map(|(width, ridge, deep, rise, blocks, through)| {
            let mut job = empty_job();
            job.faces = vec![plane(width, ridge, deep, rise)];
            let top = deep * job.faces[0].pitch.slope_factor();
            job.blocks = (10..)
                .zip(blocks)
                // Leave out modules that slightly overhang an eave or a ridge: they depend on the raster step.
                .filter(|(_, (at, rows, _))| at.1 + f64::from(*rows) * 1.137 < top - 0.3)
                .map(|(number, (at, rows, columns))| block(number, 1, at, rows, columns))
                .collect();
            job.penetrations =
                (40..).zip(through).map(|(number, (kind, at))| penetration(number, kind, at)).collect();
            // Likewise a chimney that an eave or a ridge runs through.
            job.penetrations.retain(|p| (0.5..deep - 0.5).contains(&p.at.y));
            job
        })
}

fn found(job: &Resolved, width: f64) -> bool {
    let job = asking(job, width);
    !pathways(&job, &Layout::of(&job)).is_empty()
}

fn passes(job: &Resolved, width: f64, touch: bool) -> bool {
    pushed(&Layout::of(job), &[0], width, touch)
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(1000) })]

    /// If a pathway is found for 36 in, a slightly thinner disc can be pushed along; if a slightly thicker one can, a pathway is
    /// found. The two differ by a sixth of the width.
    #[test]
    fn a_pathway_is_where_a_disc_can_be_pushed(job in jobs()) {
        if found(&job, ASKED) {
            prop_assert!(passes(&job, ASKED - BLUR, false), "found, but no disc passes");
        } else {
            prop_assert!(!passes(&job, ASKED + BLUR, true), "a disc passes, but none found");
        }
    }
}

/// Both outcomes occur, so that the test above is meaningful.
#[test]
fn both_answers() {
    let mut job = empty_job();
    job.faces = vec![plane(6.0, (0.0, 5.5), 5.0, 6.0)];
    assert!(found(&job, ASKED) && passes(&job, ASKED - BLUR, true));
    job.blocks = vec![block(10, 1, (0.4, 1.0), 1, 3)];
    assert!(!found(&job, ASKED) && !passes(&job, ASKED - BLUR, false));
}
