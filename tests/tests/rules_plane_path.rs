//! The rule of one pathway per plane with modules, on roofs with hips and valleys: its finding against an independent search over
//! the plane, each adjacent plane, and the two together.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

mod raster;

use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{Length, Pitch, Polygon};
use chalkcourse_job::{Edit, PartId, PartKind, PenetrationKind, Resolved, RoofPart, apply};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{Severity, check};
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use raster::{ASKED, BLUR, beside, block, empty_job, penetration, pushed};
use std::collections::BTreeMap;

/// A house with an ell, hipped or with gables: ridges, hips and a valley.
fn ell(long: f64, deep: f64, out: f64, wide: f64, rise: f64, gables: bool) -> Resolved {
    let corners = [(0.0, 0.0), (wide, 0.0), (wide, out), (long, out), (long, out + deep), (0.0, out + deep)];
    let outline = Polygon::new(corners.iter().map(|&c| c.into()).collect());
    let slope = Treatment::Slope(Pitch::from_rise_in_12(rise).unwrap());
    let eave = Length::from_metres(3.0);
    let mut part =
        RoofPart::new(PartId(1), "House".into(), PartKind::Main, outline, eave, slope, Length::ZERO);
    if gables {
        for side in [0, 3] {
            part.sides[0][side].treatment = Treatment::Gable;
        }
    }
    apply(&empty_job(), &Edit::PutPart(part)).unwrap()
}

type Spot = (usize, (f64, f64), u32, u32);

fn jobs() -> impl Strategy<Value = Resolved> {
    let spot = (0..6usize, (-0.05..0.9f64, 0.0..1.0f64), 1..4u32, 1..6u32);
    let through = (0.5..8.0f64, 0.5..7.0f64);
    (
        (7.0..10.0f64, 4.0..6.0f64, 2.0..4.0f64, 3.5..5.5f64),
        (4.0..10.0f64, any::<bool>()),
        proptest::collection::vec(spot, 3..12),
        proptest::collection::vec(through, 0..3),
    )
        .prop_map(|((long, deep, out, wide), (rise, gables), spots, through)| {
            let mut job = ell(long, deep, out, wide, rise, gables);
            place(&mut job, &spots);
            job.penetrations = (90..)
                .zip(through)
                .map(|(number, at)| penetration(number, PenetrationKind::Skylight, at))
                .collect();
            // One that an eave or a ridge runs through depends on the raster step.
            let layout = Layout::of(&job);
            let clear = |id| {
                let placed = layout.penetrations.iter().find(|p| p.id == id).unwrap();
                placed.on.len() == 1
                    && layout.roof.faces[placed.on[0].face]
                        .plan
                        .offset(-0.3)
                        .iter()
                        .any(|inner| placed.plan.outer.iter().all(|&corner| inner.contains(corner)))
            };
            job.penetrations.retain(|p| clear(p.id));
            job
        })
}

/// Places blocks by their lower left corner on a face, as fractions of its width and height, away from its eave and its top.
fn place(job: &mut Resolved, spots: &[Spot]) {
    let layout = Layout::of(job);
    for (number, &(face, at, rows, columns)) in (10..).zip(spots) {
        let face = face % layout.roof.faces.len();
        let bounds = layout.roof.faces[face].bounds;
        let room = bounds.size().y - 0.6 - f64::from(rows) * 1.137;
        if room > 0.0 {
            let from = bounds.min + chalkcourse_geometry::dvec2(at.0 * bounds.size().x, 0.3 + at.1 * room);
            job.blocks.push(block(number, layout.faces[face].id.0, (from.x, from.y), rows, columns));
        }
    }
}

#[test]
fn a_plane_without_a_pathway_is_one_where_no_disc_passes() {
    let mut runner = TestRunner::deterministic();
    let strategy = jobs();
    // How each plane with modules is served: by itself, by an adjacent one alone, by the two together, or not.
    let mut served: BTreeMap<&str, usize> = BTreeMap::new();
    for roof in 0..1000 {
        let job = strategy.new_tree(&mut runner).unwrap().current();
        let layout = Layout::of(&job);
        let findings = check(&job, &layout);
        let mut planes: Vec<usize> = layout.blocks.iter().map(|block| block.face).collect();
        planes.sort_unstable();
        planes.dedup();
        for plane in planes {
            let id = layout.faces[plane].id.0;
            let key = format!("fire-plane-path/face-{id}");
            let stopped = findings.iter().any(|f| f.key.to_string() == key && f.severity == Severity::Stop);
            let way = |width: f64, touch: bool| {
                let others = beside(&layout, plane);
                if pushed(&layout, &[plane], width, touch) {
                    "by itself"
                } else if others.iter().any(|&other| pushed(&layout, &[other], width, touch)) {
                    "by one beside it"
                } else if others.iter().any(|&other| pushed(&layout, &[plane, other], width, touch)) {
                    "by two together"
                } else {
                    "not"
                }
            };
            let found = if stopped { way(ASKED + BLUR, true) } else { way(ASKED - BLUR, false) };
            assert_eq!(stopped, found == "not", "roof {roof}, face {id}, served {found}:\n{job:#?}");
            *served.entry(found).or_default() += 1;
        }
    }
    assert!(served.len() == 4 && served.values().all(|&count| count >= 20), "{served:?}");
}
