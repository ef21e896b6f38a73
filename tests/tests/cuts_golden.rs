//! Cut lists against HiGHS: the least length bought for a thousand random orders, as found by an arc-flow mixed-integer program
//! (Valério de Carvalho, 1999). `tests/peers/cuts_against_highs.py` wrote the answers.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_takeoff::cutting::{Cutting, cut};
use chalkcourse_tests::top;

/// Far more than a drag can wait for.
const STEPS: u64 = 50_000_000;

#[test]
fn cut_lists_buy_the_least_that_highs_finds() {
    let text = std::fs::read_to_string(top().join("tests/data/cuts-golden.json")).unwrap();
    let orders: Vec<serde_json::Value> = serde_json::from_str(&text).unwrap();
    assert!(orders.len() >= 990, "{} orders", orders.len());
    for order in orders {
        let numbers = |field: &str| -> Vec<u32> { serde_json::from_value(order[field].clone()).unwrap() };
        let pieces: Vec<(u32, u32)> = serde_json::from_value(order["pieces"].clone()).unwrap();
        let kerf = serde_json::from_value(order["kerf"].clone()).unwrap();
        let problem = Cutting { pieces, stocks: numbers("stocks"), kerf };
        let answer = cut(&problem, STEPS);
        assert_eq!(answer.bought, order["least"].as_u64().unwrap(), "{order}");
        assert_eq!(answer.least, answer.bought, "proved: {order}");
        // The sticks hold the demand, with a cut between two pieces, and are what is paid for.
        let mut left: Vec<u32> = problem.pieces.iter().map(|(_, count)| *count).collect();
        let mut paid = 0;
        for (stock, cuts) in &answer.sticks {
            let length = problem.stocks[*stock];
            paid += u64::from(length);
            let used: u32 = cuts.iter().map(|&at| problem.pieces[at].0 + problem.kerf).sum();
            assert!(used <= length + problem.kerf, "{cuts:?} of {length}: {order}");
            for &at in cuts {
                left[at] = left[at].checked_sub(1).expect("no piece is cut twice");
            }
        }
        assert_eq!(paid, answer.bought, "{order}");
        assert!(left.iter().all(|count| *count == 0), "{left:?}: {order}");
    }
}
