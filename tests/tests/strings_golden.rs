//! Automatic stringing against HiGHS: circuits, extension leads and length of random arrays, as found by an integer program over links
//! with cuts. `tests/peers/strings_against_highs.py` wrote the answers.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use chalkcourse_tests::top;
use chalkcourse_wiring::paths::{Effort, Link, Problem, divide};
use serde::Deserialize;

/// Places of modules in tenths of a millimetre, how far leads reach, the one length of extension leads, the box, and the best answer.
#[derive(Debug, Deserialize)]
struct Array {
    places: Vec<(i64, i64)>,
    reach: u32,
    extension: u32,
    home: (i64, i64),
    least: usize,
    most: usize,
    circuits: usize,
    leads: u64,
    length: u64,
}

fn problem(array: &Array) -> Problem {
    let way = |a: (i64, i64), b: (i64, i64)| (a.0.abs_diff(b.0) + a.1.abs_diff(b.1)) as u32;
    let link = |a: (i64, i64), b: (i64, i64)| {
        let length = way(a, b);
        let leads = length.saturating_sub(array.reach).div_ceil(array.extension);
        (a != b).then_some(Link { leads, length })
    };
    Problem {
        links: array.places.iter().map(|a| array.places.iter().map(|b| link(*a, *b)).collect()).collect(),
        home: array.places.iter().map(|a| way(*a, array.home)).collect(),
        both_ends: true,
        least: array.least,
        most: array.most,
        orders: vec![(0..array.places.len()).collect()],
    }
}

#[test]
fn circuits_are_those_that_highs_finds() {
    let text = std::fs::read_to_string(top().join("tests/data/strings-golden.json")).unwrap();
    let arrays: Vec<Array> = serde_json::from_str(&text).unwrap();
    assert!(arrays.len() >= 290, "{} arrays", arrays.len());
    for array in arrays {
        let answer = divide(&problem(&array), Effort::WHOLE).unwrap();
        let told = (answer.paths.len(), answer.leads, answer.length);
        assert_eq!(told, (array.circuits, array.leads, array.length), "{array:?}");
        assert!(answer.least_leads <= array.leads && answer.least_length <= array.length, "{array:?}");
        // What a person waits for first is no better than the best, and its bounds hold.
        let first = divide(&problem(&array), Effort::FIRST).unwrap();
        assert!((first.leads, first.length) >= (array.leads, array.length), "{array:?}");
        assert!(first.least_leads <= array.leads, "{array:?}");
        if first.leads == array.leads || first.least_leads < first.leads {
            assert!(first.least_length <= array.length, "{array:?}");
        }
    }
}
