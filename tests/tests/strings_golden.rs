//! Automatic stringing against HiGHS: circuits, extension leads and length for random arrays, from an integer program
//! over links with cuts. `tests/peers/strings_against_highs.py` wrote the answers.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use chalkcourse_tests::arrays::Array;
use chalkcourse_tests::top;
use chalkcourse_wiring::paths::{Effort, divide};
use serde::Deserialize;

/// An array and its optimum.
#[derive(Debug, Deserialize)]
struct Answered {
    #[serde(flatten)]
    array: Array,
    circuits: usize,
    leads: u64,
    length: u64,
}

#[test]
fn circuits_are_those_that_highs_finds() {
    let text = std::fs::read_to_string(top().join("tests/data/strings-golden.json")).unwrap();
    let answered: Vec<Answered> = serde_json::from_str(&text).unwrap();
    assert!(answered.len() >= 290, "{} arrays", answered.len());
    for best in answered {
        let problem = best.array.problem();
        let answer = divide(&problem, Effort::WHOLE).unwrap();
        let told = (answer.paths.len(), answer.leads, answer.length);
        assert_eq!(told, (best.circuits, best.leads, best.length), "{best:?}");
        assert!(answer.least_leads <= best.leads && answer.least_length <= best.length, "{best:?}");
        // The first, quick answer is no better than the optimum, and its bounds hold.
        let first = divide(&problem, Effort::FIRST).unwrap();
        assert!((first.leads, first.length) >= (best.leads, best.length), "{best:?}");
        assert!(first.least_leads <= best.leads, "{best:?}");
        if first.leads == best.leads || first.least_leads < first.leads {
            assert!(first.least_length <= best.length, "{best:?}");
        }
    }
}
