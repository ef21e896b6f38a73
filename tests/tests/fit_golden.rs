//! Fits against answers of reference libraries (GEOS, HiGHS, networkx), stored in `tests/data/fit-golden.json` with how
//! they were made. `tests/peers/fit_against_references.py --golden` regenerates them.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_geometry::fit::{
    Aim, Allowed, Base, BlockRules, Cell, Constraint, Costs, FINE, Joints, RowRules, StackCosts, Tile, Want,
    fit_blocks, fit_number, fit_rows, fit_stacks, fit_worth,
};
use chalkcourse_geometry::{Polygon, Rect, dvec2};
use serde_json::Value;

fn golden(kind: &str) -> Vec<(Value, f64)> {
    let text = include_str!("../data/fit-golden.json");
    let all: Value = serde_json::from_str(text).unwrap();
    let cases = all[kind].as_array().unwrap();
    cases.iter().map(|c| (c["case"].clone(), c["expected"].as_f64().unwrap())).collect()
}

macro_rules! read {
    ($value:expr) => {
        serde_json::from_value($value.clone()).unwrap()
    };
}

fn allowed(case: &Value) -> Allowed {
    let blocked: Vec<Polygon> = read!(case["blocked"]);
    let named = blocked.into_iter().enumerate().map(|(i, shape)| Constraint { id: i, shape });
    Allowed { region: read!(case["region"]), blocked: named.collect(), foot: None, tolerance: FINE }
}

fn never() -> bool {
    false
}

#[test]
fn rows_equal_every_critical_offset_by_geos() {
    let cases = golden("rows");
    assert!(cases.len() >= 60);
    for joints in [Joints::Free, Joints::Aligned, Joints::Lapped] {
        let of_kind = |case: &Value| {
            let rules: RowRules = read!(case["task"]["rows"]);
            rules.joints == joints
        };
        assert!(
            cases.iter().filter(|(case, count)| of_kind(case) && *count > 3.0).count() > 10,
            "{joints:?} too easy"
        );
    }
    for (i, (case, count)) in cases.iter().enumerate() {
        let tile: Tile = read!(case["tile"]);
        let rules: RowRules = read!(case["task"]["rows"]);
        let fit = fit_rows(&allowed(case), &tile, &rules, &never).unwrap();
        assert_eq!((fit.count(), fit.bound), (*count as usize, *count as usize), "case {i}");
    }
}

#[test]
fn hooked_rows_equal_integer_programmes_with_free_places() {
    let cases = golden("hooked");
    assert!(cases.len() >= 60);
    let mut held = 0;
    for (i, (case, count)) in cases.iter().enumerate() {
        let tile: Tile = read!(case["tile"]);
        let rules: RowRules = read!(case["task"]["rows"]);
        assert!(rules.hooked && rules.joints == Joints::Free);
        let fit = fit_rows(&allowed(case), &tile, &rules, &never).unwrap();
        assert_eq!((fit.count(), fit.bound), (*count as usize, *count as usize), "case {i}");
        let loose = fit_rows(&allowed(case), &tile, &RowRules { hooked: false, ..rules }, &never).unwrap();
        held += usize::from(loose.count() > fit.count());
    }
    assert!(held >= 15, "in {held} cases alone a tile would not be carried");
}

#[test]
fn blocks_equal_an_integer_programme() {
    let cases = golden("blocks");
    assert!(cases.len() >= 30);
    for (i, (case, count)) in cases.iter().enumerate() {
        let (tile, rules): (Tile, BlockRules) = (read!(case["tile"]), read!(case["task"]["blocks"]));
        let found = fit_blocks(&allowed(case), &tile, &rules, &never).unwrap();
        assert_eq!((found.count, found.bound), (*count as usize, *count as usize), "case {i}");
    }
}

#[test]
fn worth_and_number_equal_flows_and_integer_programmes() {
    let cases = golden("choices");
    assert!(cases.len() >= 40);
    for (i, (case, worth)) in cases.iter().enumerate() {
        let triples: Vec<(usize, usize, f64)> = read!(case["cells"]);
        let cell = |&(column, row, value): &(usize, usize, f64)| Cell {
            column,
            row,
            rect: Rect::at(dvec2(column as f64, row as f64), dvec2(1.0, 1.0)),
            value,
        };
        let cells: Vec<Cell> = triples.iter().map(cell).collect();
        let task = &case["task"];
        let found = if let Some(costs) = task.get("worth") {
            let costs: Costs = read!(costs);
            fit_worth(&cells, &costs, &never)
        } else {
            let (number, aim): (usize, Aim) = read!(task["number"]);
            fit_number(&cells, number, &aim, &never)
        };
        let found = found.unwrap();
        assert!((found.worth - worth).abs() < 1e-6 && found.proved(), "case {i}: {} {worth}", found.worth);
    }
}

#[test]
fn stacks_equal_integer_programmes_over_every_critical_offset() {
    let cases = golden("stacks");
    assert!(cases.len() >= 40);
    for (i, (case, expected)) in cases.iter().enumerate() {
        let task = &case["task"]["stacks"];
        let (tile, base, costs): (Tile, Base, StackCosts) =
            (read!(case["tile"]), read!(task["base"]), read!(task["costs"]));
        let (value, number): (f64, Option<usize>) = (read!(task["value"]), read!(task["number"]));
        let want = number.map_or(Want::Worth(value), |n| Want::Numbers(n, n));
        let found = fit_stacks(&allowed(case), &tile, base, &costs, want, &never).unwrap();
        let best = &found.found[0];
        let worth = value * best.placed.len() as f64 - best.cost;
        assert!((worth - expected).abs() < 1e-6 && best.proved(), "case {i}: {worth}, not {expected}");
    }
}
