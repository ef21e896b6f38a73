//! Orders on the command line: by stage, with other prices and stock, compared, and received.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn top(path: &str) -> String {
    let path: PathBuf = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(path);
    path.to_str().expect("a path of words").to_owned()
}

fn run(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_chalkcourse-cli")).args(arguments).output().expect("the program starts")
}

fn text(output: &Output) -> String {
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout.clone()).expect("UTF-8")
}

fn refused(arguments: &[&str], words: &str) {
    let output = run(arguments);
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert!(said.contains(words), "{said:?} does not say {words:?}");
}

fn alder_court() -> String {
    top("sample-roofs/alder-court.chalk.json")
}

#[test]
fn an_order_by_stage_runs_from_tear_off_to_wiring() {
    let order = text(&run(&["takeoff", &alder_court(), "--by", "stage"]));
    let at =
        |heading: &str| order.find(&format!("\n{heading}\n")).unwrap_or_else(|| panic!("{heading}: {order}"));
    let stages = ["Tear-off", "Dry-in", "Array", "Flashing", "Roofing", "Wiring"].map(at);
    assert!(stages.is_sorted(), "{stages:?}");
    assert!(order.contains("Cut list") && order.contains("proved least"));
}

#[test]
fn decisions_are_taken_saved_and_compared() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("words").to_owned();
    std::fs::write(path("stock.csv"), "number,amount,note\nFH-102,40,rack 2\n").expect("a file");
    let (stock, saved) = (path("stock.csv"), path("decided.chalk.json"));
    let order = text(&run(&[
        "takeoff",
        &alder_court(),
        "--stock",
        &stock,
        "--off",
        "FH-301=crew has them",
        "--packages",
        "FH-214=62",
        "--save",
        &saved,
    ]));
    for words in ["40 from stock in hand", "OFF: crew has them", "OVERRIDDEN, counted 59 bundles"] {
        assert!(order.contains(words), "{words:?} is not in\n{order}");
    }
    assert_eq!(order, text(&run(&["takeoff", &saved])), "what was decided is in the job");
    let alike = text(&run(&["compare-orders", &saved, &saved]));
    assert!(alike.contains("alike, line by line"), "{alike}");
    let changed = text(&run(&["compare-orders", &alder_court(), &saved]));
    assert!(changed.contains("59 -> 62 bundles") && changed.contains("7 -> 0 sets"), "{changed}");
    refused(&["takeoff", &alder_court(), "--off", "FH-999=x"], "no part \"FH-999\"");
    refused(&["takeoff", &alder_court(), "--packages", "FH-214"], "NUMBER=PACKAGES");
}

/// The workbook was written by openpyxl 3.1: every price 3 % above the built-in list's, none for FH-130.
#[test]
fn a_workbook_of_prices_is_read_and_compared() {
    let (own, other) =
        (top("assets/price-lists/fernhollow-2026.json"), top("tests/data/harbour-supply.xlsx"));
    let compared = text(&run(&["suppliers", &alder_court(), &own, &other, "--format", "json"]));
    let compared: serde_json::Value = serde_json::from_str(&compared).expect("JSON");
    let offer = &compared["offers"][1];
    assert_eq!(offer["list"], "Harbour Supply, spring");
    assert_eq!(offer["missing"], serde_json::json!(["FH-130"]));
    assert_eq!(offer["delivery"], "95");
    let row = |number: &str| {
        let rows = compared["rows"].as_array().expect("rows");
        rows.iter().find(|row| row["number"] == number).cloned().expect("a row")
    };
    // 12 × 212.00 and 12 × 218.36
    assert_eq!(row("FH-101")["costs"], serde_json::json!(["2544.00", "2620.32"]));
    assert_eq!(row("FH-130")["costs"][1], serde_json::Value::Null);
    let order = text(&run(&["takeoff", &alder_court(), "--prices", &other]));
    assert!(order.contains("NO PRICE, and not in the total: FH-130"), "{order}");
    refused(&["takeoff", &alder_court(), "--prices", &top("README.md")], "README.md");
}

#[test]
fn a_delivery_is_counted_and_claimed() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("words").to_owned();
    let pallet = text(&run(&["receive", &alder_court(), "--format", "csv"]));
    // Filled in as a person would: all came but one module, and a box of nails is wet.
    let filled: Vec<String> = pallet
        .lines()
        .map(|line| match line.split("\",\"").collect::<Vec<_>>().as_slice() {
            [number, name, stage, package, ordered, _, _, short, over, _] if *ordered != "Ordered" => {
                let (counted, damaged, note) = match *number {
                    "\"FH-101" => ("11", "0", ""),
                    "\"FH-136" => ("1", "1", "wet"),
                    _ => (*ordered, "0", ""),
                };
                [*number, name, stage, package, ordered, counted, damaged, short, over, note].join("\",\"")
                    + "\""
            }
            _ => line.to_owned(),
        })
        .collect();
    let (counts, saved) = (path("pallet.csv"), path("received.chalk.json"));
    std::fs::write(&counts, filled.join("\n")).expect("a file");
    let claim = text(&run(&["receive", &alder_court(), "--counts", &counts, "--save", &saved]));
    for words in [
        "1 module of 12 ordered, 11 came",
        "1 box of 1 ordered, 1 came; wet",
        "Dry-in: can start",
        "Array: can't start",
    ] {
        assert!(claim.contains(words), "{words:?} is not in\n{claim}");
    }
    assert_eq!(claim, text(&run(&["receive", &saved])), "the counts are in the job");
    std::fs::write(&counts, "number,counted\nFH-101,many\n").expect("a file");
    refused(&["receive", &alder_court(), "--counts", &counts], "line 2");
}
