//! Measures by hand, properties, and outputs.

use super::*;
use crate::measure::Measures;
use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon, Rect, Units, dvec2};
use chalkcourse_job::{
    Block, BlockId, Cell, Courses, Face, FaceId, Measure, OrderChoices, Orientation, RoofScope, RoofWork,
    builtin_kit, builtin_prices, builtin_rule_book,
};
use proptest::prelude::*;
use std::sync::Arc;

mod choices;

/// A face 60 ft long and 15 ft deep in plan at 6:12, with blocks on it. The reveal is 3 mm, so that a module and its
/// reveal are 1.725 × 1.137 m.
pub(crate) fn job(blocks: Vec<Block>) -> Resolved {
    job_on(60.0, 15.0, blocks)
}

/// A face that holds all that blocks and their flashing reach to, with the array alone on the order.
fn array_alone(block: Block) -> Resolved {
    let mut job = job_on(300.0, 150.0, vec![Block { at: block.at + dvec2(20.0, 12.5), ..block }]);
    let order = OrderChoices {
        roof: RoofWork { scope: RoofScope::ArrayOnly, ..RoofWork::default() },
        ..OrderChoices::default()
    };
    job.order = Arc::new(order);
    job
}

fn job_on(long: f64, deep: f64, blocks: Vec<Block>) -> Resolved {
    let mut job = Resolved::new("Test".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let (long, deep) = (Length::from_feet(long).metres(), Length::from_feet(deep).metres());
    let outline = Polygon::new(Rect::at(dvec2(0.0, 0.0), dvec2(long, deep)).corners().to_vec());
    let mut face = Face::new(
        FaceId(1),
        "South".into(),
        outline,
        Pitch::from_rise_in_12(6.0).unwrap(),
        Azimuth::from_degrees(180.0),
        Length::ZERO,
    );
    face.courses = Courses { exposure: Length::from_mm(125.0), first: Length::from_mm(125.0) };
    job.faces.push(face);
    job.blocks = blocks;
    job.next_id = 100;
    job
}

pub(crate) fn block(rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(2),
        name: "A".into(),
        face: FaceId(1),
        at: dvec2(2.0, 0.5),
        rows,
        columns,
        orientation: Orientation::Landscape,
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}

fn without(rows: u32, columns: u32, off: &[(u32, u32)]) -> Block {
    off.iter().fold(block(rows, columns), |block, &(row, column)| block.with_switched(Cell { row, column }))
}

pub(crate) fn takeoff(job: &Resolved) -> Takeoff {
    take_off(job, &Layout::of(job))
}

pub(crate) fn line<'a>(takeoff: &'a Takeoff, number: &str) -> &'a Line {
    takeoff.lines.iter().find(|line| line.number == number).unwrap()
}

/// Places and total of a measure.
fn check(block: Block, measure: &Measure, places: usize, total: f64) {
    let job = job(vec![block]);
    let layout = Layout::of(&job);
    let counted = Measures::of(&job, &layout).counted(measure, &mut Memo::default());
    assert!(
        counted.places.len() == places && (counted.total - total).abs() < 1e-9,
        "{measure:?}: {} places, {}; expected {places}, {total}",
        counted.places.len(),
        counted.total
    );
}

/// 4 × 1.722 + 3 × 0.003.
const WIDE: f64 = 6.897;
/// 3 × 1.134 + 2 × 0.003.
const HIGH: f64 = 3.408;

#[test]
fn measures_of_a_full_block_by_hand() {
    let full = || block(3, 4);
    check(full(), &Measure::Module, 12, 12.0);
    check(full(), &Measure::Block, 1, 1.0);
    check(full(), &Measure::Row, 3, 3.0);
    check(full(), &Measure::Seam, 9, 9.0);
    check(full(), &Measure::BaseRail, 1, WIDE);
    check(full(), &Measure::Side, 2, 2.0 * HIGH);
    // the side runs from 0.5, a course line, to 3.908: 27.3 courses of 0.125, so 28 are touched, and one more
    check(full(), &Measure::SideCourse, 2, 2.0 * 29.0);
    check(full(), &Measure::Head, 1, WIDE);
    check(full(), &Measure::HeadModule, 4, 4.0);
    check(full(), &Measure::HeadSupport, 5, 5.0);
    for corner in
        [Measure::HeadCornerLeft, Measure::HeadCornerRight, Measure::BaseCornerLeft, Measure::BaseCornerRight]
    {
        check(full(), &corner, 1, 1.0);
    }
    check(full(), &Measure::InsideCorner, 0, 0.0);
    check(full(), &Measure::Under, 1, WIDE * HIGH);
    // 18 in on all sides
    let grown = (WIDE + 2.0 * 0.4572) * (HIGH + 2.0 * 0.4572);
    check(full(), &Measure::Around, 1, grown - WIDE * HIGH);
    // along each row three steps, up two, and from the middle of the top row to its upper edge
    check(full(), &Measure::BondingPath, 1, 3.0 * 3.0 * 1.725 + 2.0 * 1.137 + 0.567);
}

#[test]
fn a_notch_at_the_top_left() {
    let notched = || without(3, 4, &[(2, 0)]);
    check(notched(), &Measure::Head, 2, WIDE);
    check(notched(), &Measure::HeadModule, 4, 4.0);
    // Both runs have two ends; the upper one has two seams; the lower one ends at its seam.
    check(notched(), &Measure::HeadSupport, 6, 6.0);
    check(notched(), &Measure::InsideCorner, 1, 1.0);
    check(notched(), &Measure::HeadCornerLeft, 2, 2.0);
    check(notched(), &Measure::HeadCornerRight, 1, 1.0);
    check(notched(), &Measure::Under, 1, WIDE * HIGH - 1.725 * 1.137);
    // Row 1 from the right, row 2 back, row 3 from its right end, where row 2 ended: three seams, three, two. From the
    // left it would be one module more.
    check(notched(), &Measure::BondingPath, 1, (3.0 + 3.0 + 2.0) * 1.725 + 2.0 * 1.137 + 0.567);
}

/// A row that hangs open is a finding; where it is waived the rail is ordered all the same.
#[test]
fn an_open_row_gets_a_rail_of_its_own() {
    check(without(2, 3, &[(0, 1)]), &Measure::BaseRail, 3, 2.0 * 1.722 + 1.728);
}

#[test]
fn nothing_placed_is_nothing_ordered() {
    assert!(takeoff(&array_alone(without(1, 1, &[(0, 0)]))).lines.is_empty());
    let mut job = job(Vec::new());
    job.faces.clear();
    assert!(takeoff(&job).lines.is_empty());
}

/// Against the general polygon offset and difference on a block with a notch, a hole and a shifted row.
#[test]
fn the_strip_around_agrees_with_polygon_offset() {
    let placed = without(3, 4, &[(2, 0), (1, 2)]).with_shift(2, Length::from_metres(0.6));
    let job = job(vec![placed]);
    let layout = Layout::of(&job);
    let mut memo = Memo::default();
    let mut measures = Measures::of(&job, &layout);
    let rects = match &measures.counted(&Measure::Under, &mut memo).places[0].shape {
        PlaceShape::Area(rects) => rects.clone(),
        other => panic!("{other:?}"),
    };
    let shapes: Vec<Polygon> = rects.iter().map(|r| Polygon::new(r.corners().to_vec())).collect();
    let under: f64 = Polygon::union(&shapes).iter().map(Polygon::area).sum();
    assert!((measures.counted(&Measure::Under, &mut memo).total - under).abs() < 1e-6);
    assert!((layout.blocks[0].area_under() - under).abs() < 1e-6);
    let margin = job.kit.flashing.membrane.metres();
    let grown: Vec<Polygon> = Polygon::union(&shapes).iter().flat_map(|p| p.offset(margin)).collect();
    let whole: f64 = Polygon::union(&grown).iter().map(Polygon::area).sum();
    let around = measures.counted(&Measure::Around, &mut memo).total;
    assert!((around - (whole - under)).abs() < 1e-4, "{around} against {}", whole - under);
}

#[test]
fn a_part_counts_another_parts_need_before_its_waste() {
    let takeoff = takeoff(&job(vec![block(3, 4)]));
    assert_eq!(line(&takeoff, "FH-102").with_waste, 62.0);
    let screws = line(&takeoff, "FH-103");
    assert_eq!(screws.need, 60.0);
    assert_eq!(screws.terms[0].places.len(), 12);
    assert_eq!(screws.terms[0].shares().next().unwrap(), 5.0);
}

#[test]
fn parts_that_count_the_same_share_its_places() {
    let takeoff = takeoff(&job(vec![block(3, 4)]));
    let places = |number: &str| Arc::clone(&line(&takeoff, number).terms[0].places);
    assert!(Arc::ptr_eq(&places("FH-101"), &places("FH-102")));
    assert!(Arc::ptr_eq(&places("FH-101"), &places("FH-161")));
}

#[test]
fn labels_count_from_one() {
    let takeoff = takeoff(&job(vec![block(3, 4)]));
    let labels: Vec<String> = line(&takeoff, "FH-101").terms[0].places.iter().map(Place::label).collect();
    assert_eq!((labels[0].as_str(), labels[11].as_str()), ("row 1, column 1", "row 3, column 4"));
}

fn without_price(number: &str) -> Resolved {
    let mut job = job(vec![block(3, 4)]);
    let mut prices = (*builtin_prices()).clone();
    prices.prices.remove(number);
    job.prices = Arc::new(prices);
    job
}

#[test]
fn a_missing_price_is_told_and_never_zero() {
    let job = without_price("FH-130");
    let (with, missing) = (takeoff(&super::tests::job(vec![block(3, 4)])), takeoff(&job));
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
            // Read as a spreadsheet of another country does too: split at its own separator, quotes stripped.
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

/// Parts whose count hangs on where the course lines run: step flashing and its nails.
const BY_COURSE: [&str; 2] = ["FH-121", "FH-215"];
/// Parts that follow modules alone.
const BY_MODULE: [&str; 7] = ["FH-101", "FH-102", "FH-103", "FH-104", "FH-105", "FH-107", "FH-161"];

fn any_block() -> impl Strategy<Value = Block> {
    let cells = proptest::collection::btree_set((0u32..5, 0u32..7), 0..8);
    (1u32..5, 1u32..7, cells, proptest::option::of((1u32..4, -1.5f64..1.5))).prop_map(
        |(rows, columns, off, shift)| {
            let mut block = block(rows, columns);
            block.off = off
                .into_iter()
                .map(|(row, column)| Cell { row, column })
                .filter(|cell| cell.row < rows && cell.column < columns)
                .collect();
            match shift {
                Some((row, by)) if row < rows => block.with_shift(row, Length::from_metres(by)),
                _ => block,
            }
        },
    )
}

proptest! {
    #[test]
    fn order_covers_need_and_no_package_is_idle(block in any_block()) {
        let takeoff = takeoff(&job(vec![block]));
        let mut total = Decimal::ZERO;
        for line in &takeoff.lines {
            let dust = DUST * line.holds;
            prop_assert!(line.with_waste >= line.need);
            // Hours are rounded once a crew: a line may miss part of one that another has.
            let work = if line.crew.is_some() { line.holds } else { 0.0 };
            prop_assert!(line.ordered + dust + work >= line.with_waste, "{line:?}");
            prop_assert!(line.packages <= 1 || line.ordered - line.holds < line.with_waste, "{line:?}");
            let places: f64 = line.terms.iter().flat_map(|term| term.shares()).sum();
            let places = if line.unit == Unit::Each { amount::whole(places) } else { places };
            prop_assert!((places - line.need).abs() < 1e-9, "{}: {places} in places, {}", line.number, line.need);
            total += line.price.unwrap() * Decimal::from(line.packages);
        }
        prop_assert_eq!(total, takeoff.priced_total);
    }

    #[test]
    fn a_full_block_with_one_more_row_or_column_never_orders_less(rows in 1u32..6, columns in 1u32..8) {
        let before = takeoff(&array_alone(block(rows, columns)));
        for (rows, columns) in [(rows + 1, columns), (rows, columns + 1)] {
            let after = takeoff(&array_alone(block(rows, columns)));
            for old in &before.lines {
                let new = line(&after, &old.number);
                let packages = new.packages >= old.packages || old.crew.is_some();
                prop_assert!(new.need >= old.need - 1e-9 && packages, "{}", old.number);
            }
        }
    }

    /// A module that fills a notch may spare a corner or a piece of flashing; what modules carry only grows.
    #[test]
    fn one_more_module_never_orders_less_of_what_modules_carry(block in any_block()) {
        let Some(&cell) = block.off.iter().next() else { return Ok(()) };
        let before = takeoff(&job(vec![block.clone()]));
        let after = takeoff(&job(vec![block.with_switched(cell)]));
        for old in before.lines.iter().filter(|line| BY_MODULE.contains(&line.number.as_str())) {
            prop_assert!(line(&after, &old.number).packages >= old.packages, "{}", old.number);
            prop_assert!(line(&after, &old.number).need > old.need, "{}", old.number);
        }
    }

    #[test]
    fn need_does_not_hang_on_where_the_block_stands(block in any_block(), u in -5.0f64..20.0, v in -1.0f64..3.0) {
        let here = takeoff(&array_alone(block.clone()));
        let there = takeoff(&array_alone(Block { at: block.at + dvec2(u, v), ..block.clone() }));
        prop_assert_eq!(here.lines.len(), there.lines.len());
        for (old, new) in here.lines.iter().zip(&there.lines) {
            prop_assert_eq!(&old.number, &new.number);
            if !BY_COURSE.contains(&old.number.as_str()) {
                prop_assert!((old.need - new.need).abs() < 1e-6 && old.packages == new.packages, "{old:?} {new:?}");
            }
        }
        // One course up everything is the same.
        let up = takeoff(&array_alone(Block { at: block.at + dvec2(u, 0.125), ..block }));
        for (old, new) in here.lines.iter().zip(&up.lines) {
            prop_assert!((old.need - new.need).abs() < 1e-6 && old.packages == new.packages, "{old:?} {new:?}");
        }
    }

    #[test]
    fn a_cell_is_neutral_whatever_is_in_it(text in any::<String>()) {
        let cell = safe_cell(&text);
        let seen = cell.trim_start();
        prop_assert!(!seen.starts_with(['=', '+', '-', '@']), "{cell:?}");
        prop_assert!(!cell.contains(['\t', '\r', '\n']), "{cell:?}");
    }
}
