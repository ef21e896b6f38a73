//! What fills claim, judged by layouts by hand that `check` passes (`chalkcourse_tests::climb`), on houses by number.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::dvec2;
use chalkcourse_job::{Block, BlockId};
use chalkcourse_tests::climb::{Budget, Strict, climb, starts};
use chalkcourse_tests::dice::Dice;
use chalkcourse_tests::houses::{USUAL, awkward, odd, usual};
use chalkcourse_tests::verdict;

/// The kept houses are of all kinds, with and without room for the fire service, and sound.
#[test]
fn usual_houses_are_sound_and_of_all_kinds() {
    let mut kinds = std::collections::BTreeMap::new();
    let mut with_fire = 0;
    for seed in USUAL {
        let house = usual(seed);
        assert_eq!(house.job, usual(seed).job, "{seed}");
        *kinds.entry(house.kind).or_insert(0) += 1;
        with_fire += usize::from(house.job.rule_book.fire_access.is_some());
        let open = verdict::open(&house.job);
        assert!(open.stops.is_empty(), "{seed}: {:?}", open.stops);
        assert!((2..=6).contains(&house.job.penetrations.len()), "{seed}");
        assert!(verdict::steep_enough(&house.job).len() >= 2, "{seed}");
    }
    assert!(kinds.len() == 4 && kinds.values().all(|&many| many >= 25), "{kinds:?}");
    assert!((60..=140).contains(&with_fire), "{with_fire}");
}

/// What the climber hands out was checked, and is the same for the same dice.
#[test]
fn layouts_by_hand_pass_and_are_the_same_again() {
    for house in [usual(1), odd(2), awkward(3)] {
        for face in verdict::steep_enough(&house.job) {
            for strict in [Strict::Kit, Strict::Stops] {
                let hand = climb(&house.job, face, strict, Budget::QUICK, 7);
                assert_eq!(verdict::modules_on(&hand.job, face), hand.modules);
                let open = verdict::open(&hand.job);
                assert!(open.stops.is_subset(&verdict::open(&house.job).stops));
                assert!(strict == Strict::Stops || open.near_blocks.is_empty());
                assert_eq!(climb(&house.job, face, strict, Budget::QUICK, 7).job, hand.job);
            }
        }
    }
}

/// Where one module may stand is known to the hundredth of a millimetre: just inside the ends of each stretch `check` passes it,
/// just outside it does not.
#[test]
fn limits_by_hand_are_those_of_check() {
    let mut dice = Dice::new(11);
    let mut tried = 0;
    let houses = (1..=12).flat_map(|seed| [usual(seed), odd(seed), awkward(seed), awkward(seed + 50)]);
    for house in houses {
        let before = verdict::open(&house.job).stops;
        for face in verdict::steep_enough(&house.job) {
            let on = house.job.face(face).unwrap();
            let bounds = on.outline.map(|p| on.plane().to_frame(p)).bounds().unwrap();
            for &way in &house.job.kit.orientations {
                let v = dice.within(bounds.min.y, bounds.max.y);
                for (from, to) in starts(&house.job, face, way, v) {
                    let middle = dice.within(from, to);
                    let at = [
                        (from - 1e-5, false),
                        (from + 1e-5, true),
                        (middle, true),
                        (to - 1e-5, true),
                        (to + 1e-5, false),
                    ];
                    for (u, stands) in at.into_iter().filter(|_| to - from > 1e-4) {
                        let mut job = house.job.clone();
                        job.blocks.push(Block {
                            id: BlockId(900),
                            name: String::new(),
                            face,
                            at: dvec2(u, v),
                            rows: 1,
                            columns: 1,
                            orientation: way,
                            reveal: job.kit.reveal.usual,
                            shifts: Vec::new(),
                            off: Default::default(),
                            locked: false,
                        });
                        let stops = verdict::open(&job).stops;
                        // Ways for the fire service, and courses that the kit wants the rail on, are not about this place along the eave.
                        let about = |key: &&String| {
                            !["fire-paths", "fire-plane-path", "fire-street", "laying"]
                                .iter()
                                .any(|of| key.starts_with(of))
                        };
                        let told: Vec<&String> = stops.difference(&before).filter(about).collect();
                        assert_eq!(
                            told.is_empty(),
                            stands,
                            "{:?} {}, {way:?} at {u}, {v}: {told:?}",
                            house.job.name,
                            on.name
                        );
                        tried += 1;
                    }
                }
            }
        }
    }
    assert!(tried > 500, "{tried}");
}
