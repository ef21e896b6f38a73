//! What fills claim, judged by layouts by hand that `check` passes (`chalkcourse_tests::climb`), on houses by number.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_tests::climb::{Budget, Strict, climb};
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
