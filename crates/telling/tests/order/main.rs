//! An order as text, CSV and JSON.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::float_cmp,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

#[path = "../../../takeoff/src/tests/small.rs"]
#[allow(dead_code, reason = "the orders are counted there")]
mod small;

mod choices;

use chalkcourse_geometry::Units;
use chalkcourse_job::{OrderChoices, Resolved, builtin_kit, builtin_prices};
use chalkcourse_layout::Layout;
use chalkcourse_takeoff::*;
use chalkcourse_telling::order::*;
use chalkcourse_words::Said;
use proptest::prelude::*;
use rust_decimal::{Decimal, RoundingStrategy};
use small::{any_block, array_alone, block, job};
use std::sync::Arc;

fn takeoff(job: &Resolved) -> Takeoff {
    take_off(job, &Layout::of(job))
}

fn line<'a>(takeoff: &'a Takeoff, number: &str) -> &'a Line {
    takeoff.lines.iter().find(|line| line.number == number).unwrap()
}

fn without_price(number: &str) -> Resolved {
    let mut job = job(vec![block(3, 4)]);
    let mut prices = (*builtin_prices()).clone();
    prices.prices.remove(number);
    job.prices = Arc::new(prices);
    job
}

#[test]
fn a_missing_price_is_reported_and_never_zero() {
    let job = without_price("FH-130");
    let (with, missing) = (takeoff(&small::job(vec![block(3, 4)])), takeoff(&job));
    assert_eq!(missing.unpriced, ["FH-130"]);
    assert_eq!((line(&missing, "FH-130").price, line(&missing, "FH-130").cost), (None, None));
    assert_eq!(missing.priced_total, with.priced_total - line(&with, "FH-130").cost.unwrap());
    let text = to_text(&missing, &Header::of(&job), Units::FeetInches);
    assert!(text.contains("NO PRICE, and not in the total: FH-130"), "{text}");
    assert!(text.contains("Total of the parts that have a price:"), "{text}");
    let csv = to_csv(&missing, &Header::of(&job), Units::FeetInches).unwrap();
    let rows: Vec<csv::StringRecord> =
        csv::Reader::from_reader(csv.as_bytes()).records().map(|r| r.unwrap()).collect();
    let row = rows.iter().find(|r| &r[0] == "part" && &r[2] == "FH-130").unwrap();
    assert_eq!((&row[12], &row[13]), ("no price", "no price"));
    assert!(rows.iter().any(|r| &r[0] == "no price" && &r[2] == "FH-130"));
}

#[test]
fn the_text_says_what_to_put_on_the_truck() {
    let job = job(vec![block(3, 4)]);
    let mut header = Header::of(&job);
    header.waivers.push("Too near the rake: the rake is bricked up (Ida, 2026-04-01)".into());
    let text = to_text(&takeoff(&job), &header, Units::FeetInches);
    for words in [
        "Order for Test",
        "3 boxes of 25",
        "12 modules × 5",
        "4 pieces",
        "2 rolls of 200 sq ft",
        "1 run of base rail, 22' 7 9/16\": cut from sticks of 8'",
        "the least for these joints (proved)",
        "common practice, no source",
        "Waived findings",
        "the rake is bricked up",
        "Falls and dc shock or arc can kill",
    ] {
        assert!(text.contains(words), "{words:?} is not in\n{text}");
    }
    let metric = to_text(&takeoff(&job), &header, Units::Metric);
    assert!(metric.contains("6.897 m") && metric.contains("23.5 m²"), "{metric}");
}

#[test]
fn text_of_hostile_names_stays_on_its_line() {
    let mut job = job(vec![block(1, 1)]);
    job.name = "a\nTotal: 0\u{1b}[2J".into();
    let text = to_text(&takeoff(&job), &Header::of(&job), Units::FeetInches);
    assert!(text.starts_with("Order for a Total: 0 [2J\n"), "{text}");
}

/// Signs as in the OWASP page on CSV injection (from memory): = + - @ tab, carriage return, line feed, full-width forms.
#[test]
fn no_cell_becomes_a_formula() {
    let hostile = [
        "=1+1",
        "+1",
        "-1",
        "-2.5",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "\n=1",
        "\u{ff1d}1+1",
        "\u{ff0b}1",
        "\u{ff0d}1",
        "\u{ff20}x",
        " =1+1",
        "\u{feff}=1",
        "\u{200b}=1",
        "a;=1+1",
        "a; +1",
        "a\t=1",
        "a\n=1",
        "\"=1+1",
        "a|=cmd",
        "'=1",
    ];
    for name in hostile {
        let mut job = job(vec![block(1, 1)]);
        job.name = name.to_owned();
        let mut kit = (*builtin_kit()).clone();
        kit.name = name.to_owned();
        for part in &mut kit.parts {
            part.name = name.to_owned();
            part.package.name = name.to_owned();
            part.source.text = name.to_owned();
        }
        job.kit = Arc::new(kit);
        let mut prices = (*builtin_prices()).clone();
        prices.currency = name.to_owned();
        job.prices = Arc::new(prices);
        let mut header = Header::of(&job);
        header.findings.push(name.to_owned());
        let csv = to_csv(&takeoff(&job), &header, Units::FeetInches).unwrap();
        for delimiter in [b',', b';', b'\t'] {
            // Also parsed as a spreadsheet of another locale would: split at its own separator, quotes stripped.
            let reader =
                csv::ReaderBuilder::new().flexible(true).delimiter(delimiter).from_reader(csv.as_bytes());
            for record in reader.into_records() {
                for cell in &record.unwrap() {
                    let seen = cell.trim_start_matches(|c: char| {
                        c.is_whitespace() || c == '"' || c == '\u{feff}' || c == '\u{200b}'
                    });
                    assert!(
                        !seen.starts_with([
                            '=', '+', '-', '@', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'
                        ]) && !cell.starts_with(['\t', '\r', '\n']),
                        "{name:?} gave the cell {cell:?}"
                    );
                }
            }
        }
    }
}

#[test]
fn plain_cells_stay_as_they_are() {
    for cell in ["Module, 405 W", "12-6-8", "a - b", "10 x 7 in", "1 + 1", ""] {
        assert_eq!(safe_cell(cell), cell);
    }
    assert_eq!(safe_cell("-1"), "'-1");
}

proptest! {
    #[test]
    fn every_cell_is_formula_safe(text in any::<String>()) {
        let cell = safe_cell(&text);
        let seen = cell.trim_start();
        prop_assert!(!seen.starts_with(['=', '+', '-', '@']), "{cell:?}");
        prop_assert!(!cell.contains(['\t', '\r', '\n']), "{cell:?}");
    }
}
