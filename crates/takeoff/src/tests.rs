//! Measures checked by hand, and properties.

use super::*;
use crate::measure::Measures;
use chalkcourse_geometry::{Length, Polygon, dvec2};
use chalkcourse_job::{Block, BlockId, Measure};
use proptest::prelude::*;
use std::sync::Arc;

mod small;

pub(crate) use small::{any_block, array_alone, block, job, without};

pub(crate) fn takeoff(job: &Resolved) -> Takeoff {
    take_off(job, &Layout::of(job))
}

pub(crate) fn line<'a>(takeoff: &'a Takeoff, number: &str) -> &'a Line {
    takeoff.lines.iter().find(|line| line.number == number).unwrap()
}

/// Checks the number of places and the total of a measure.
fn check(block: Block, measure: &Measure, places: usize, total: f64) {
    let job = job(vec![block]);
    let layout = Layout::of(&job);
    let counted =
        Measures::of(&job, &layout, &Wires::of(&job, &layout)).counted(measure, &mut Memo::default());
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
    // the side runs from 0.5, a course line, to 3.908: 27.3 courses of 0.125, so 28 are touched, plus one
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
    // Row 1 from the right, row 2 back, row 3 from its right end, where row 2 ended: three seams, three, two. Starting from the
    // left would take one module more.
    check(notched(), &Measure::BondingPath, 1, (3.0 + 3.0 + 2.0) * 1.725 + 2.0 * 1.137 + 0.567);
}

/// A row left open is a finding; if that is waived, the rail is ordered all the same.
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
    let wires = Wires::of(&job, &layout);
    let mut measures = Measures::of(&job, &layout, &wires);
    let rects = match &measures.counted(&Measure::Under, &mut memo).places[0].shape {
        MeasuredShape::Area(rects) => rects.clone(),
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
    let places = &line(&takeoff, "FH-101").terms[0].places;
    let labels: Vec<String> = places.iter().map(|place| place.label().into()).collect();
    assert_eq!((labels[0].as_str(), labels[11].as_str()), ("row 1, column 1", "row 3, column 4"));
}

/// A membrane strip stays on its face, and the overlap of two adjacent blocks is counted once.
#[test]
fn the_strip_around_is_on_the_face_and_counted_once() {
    let around = |job: &Resolved| {
        let layout = Layout::of(job);
        Measures::of(job, &layout, &Wires::of(job, &layout))
            .counted(&Measure::Around, &mut Memo::default())
            .total
    };
    let one = array_alone(block(1, 1));
    let alone = around(&one);
    // The next block is half a metre to the right: the 18 in strips overlap by 2 × 0.4572 − 0.5 m, and neither extends under the
    // other block; the overlap is as high as a module and two strips.
    let mut two = one.clone();
    let mut next = two.blocks[0].clone();
    (next.id, next.at.x) = (BlockId(3), next.at.x + 1.722 + 0.5);
    two.blocks.push(next);
    let overlap = (2.0 * 0.4572 - 0.5) * (1.134 + 2.0 * 0.4572);
    assert!((around(&two) - (2.0 * alone - overlap)).abs() < 1e-9);
    // At the eave the strip below the array is only as high as the deck there.
    let mut low = one;
    low.blocks[0].at.y = 0.1;
    let lost = (0.4572 - 0.1) * (1.722 + 2.0 * 0.4572);
    assert!((around(&low) - (alone - lost)).abs() < 1e-9);
}

/// Parts whose count depends on the course lines: step flashing and its nails.
const BY_COURSE: [&str; 2] = ["FH-121", "FH-215"];
/// Parts that depend on the modules alone.
const BY_MODULE: [&str; 7] = ["FH-101", "FH-102", "FH-103", "FH-104", "FH-105", "FH-107", "FH-161"];

proptest! {
    #[test]
    fn order_covers_need_and_no_package_is_idle(block in any_block()) {
        let takeoff = takeoff(&job(vec![block]));
        let mut total = Decimal::ZERO;
        for line in &takeoff.lines {
            let dust = DUST * line.holds;
            prop_assert!(line.with_waste >= line.need);
            // Hours are rounded once per crew: a line may lack a fraction that another has.
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

    /// A module that fills a notch may save a corner or a piece of flashing; what is counted per module only grows.
    #[test]
    fn one_more_module_never_orders_less_of_what_is_counted_per_module(block in any_block()) {
        let Some(&cell) = block.off.iter().next() else { return Ok(()) };
        let before = takeoff(&job(vec![block.clone()]));
        let after = takeoff(&job(vec![block.with_switched(cell)]));
        for old in before.lines.iter().filter(|line| BY_MODULE.contains(&line.number.as_str())) {
            prop_assert!(line(&after, &old.number).packages >= old.packages, "{}", old.number);
            prop_assert!(line(&after, &old.number).need > old.need, "{}", old.number);
        }
    }

    #[test]
    fn need_does_not_depend_on_the_blocks_position(block in any_block(), u in -5.0f64..20.0, v in -1.0f64..3.0) {
        let here = takeoff(&array_alone(block.clone()));
        let there = takeoff(&array_alone(Block { at: block.at + dvec2(u, v), ..block.clone() }));
        prop_assert_eq!(here.lines.len(), there.lines.len());
        for (old, new) in here.lines.iter().zip(&there.lines) {
            prop_assert_eq!(&old.number, &new.number);
            if !BY_COURSE.contains(&old.number.as_str()) {
                prop_assert!((old.need - new.need).abs() < 1e-6 && old.packages == new.packages, "{old:?} {new:?}");
            }
        }
        // Moving up by one course changes nothing.
        let up = takeoff(&array_alone(Block { at: block.at + dvec2(u, 0.125), ..block }));
        for (old, new) in here.lines.iter().zip(&up.lines) {
            prop_assert!((old.need - new.need).abs() < 1e-6 && old.packages == new.packages, "{old:?} {new:?}");
        }
    }

    /// During a drag, the memo gives the same order and solves no cutting problem again.
    #[test]
    fn an_order_with_a_memo_is_the_same(block in any_block(), steps in 1usize..5) {
        let mut memo = Memo::default();
        let mut moved = job(vec![block]);
        let layout = Layout::of(&moved);
        let roof = Arc::clone(&layout.roof);
        let wires = Wires::default();
        take_off_with(&moved, &layout, &wires, &mut memo);
        let solved = memo.problems_solved();
        for _ in 0..steps {
            moved.blocks[0].at.x += 0.013;
            let layout = Layout::on_roof(&moved, Arc::clone(&roof));
            let with = take_off_with(&moved, &layout, &wires, &mut memo);
            prop_assert_eq!(with, take_off(&moved, &layout));
        }
        prop_assert_eq!(memo.problems_solved(), solved);
    }
}
