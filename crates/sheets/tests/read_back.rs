//! Files read back: workbooks with a separate reader crate, PDFs checked against the format's rules. The formulas are
//! recalculated by an office program in `tests/peers/sheets_read_back.py`.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use calamine::{Data, Reader, Xlsx};
use chalkcourse_geometry::{DVec2, Polygon, distance_to_segment, dvec2};
use chalkcourse_job::{AddedLine, Edit, Group, Resolved, Stage, apply, load};
use chalkcourse_plan::{By, Plan, evaluate};
use chalkcourse_sheets::{Ink, Output, Shape, face_drawing, plan_drawing};
use rust_decimal::Decimal;
use std::io::Cursor;
use std::path::Path;
use std::str::FromStr;
use std::sync::Arc;

const SAMPLES: [&str; 4] = ["alder-court", "quarry-lane", "mill-row", "low-barn"];
/// First row of the lines, 0-based.
const FIRST: usize = 3;

fn sample(name: &str) -> (Resolved, Plan) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../sample-roofs").join(name);
    let job = load(&path.with_extension("chalk.json")).unwrap();
    let plan = evaluate(&job);
    (job, plan)
}

fn open(bytes: &[u8]) -> Xlsx<Cursor<&[u8]>> {
    Xlsx::new(Cursor::new(bytes)).unwrap()
}

/// A numeric cell as the decimal that was written.
fn decimal(cell: &Data) -> Decimal {
    match cell {
        Data::Float(number) => Decimal::from_str(&number.to_string()).unwrap(),
        Data::Int(number) => Decimal::from(*number),
        other => panic!("{other:?} is no number"),
    }
}

#[test]
fn the_workbook_agrees_with_the_order_to_the_cent() {
    for name in SAMPLES {
        let (job, plan) = sample(name);
        let bytes = Output::OrderWorkbook.bytes(&job, &plan).unwrap();
        let mut book = open(&bytes);
        assert_eq!(book.sheet_names(), ["Order", "Cost by stage", "Cut list", "To know"]);
        let sheet = book.worksheet_range("Order").unwrap();
        let lines = &plan.takeoff.lines;
        for (row, line) in sheet.rows().skip(FIRST).zip(lines) {
            assert_eq!(row[2], Data::String(line.number.clone()), "{name}");
            assert_eq!(decimal(&row[9]), Decimal::from(line.packages), "{name} {}", line.number);
            match line.cost {
                Some(cost) => assert_eq!(decimal(&row[13]), cost.normalize(), "{name} {}", line.number),
                None => assert_eq!(row[13], Data::String("no price".to_owned()), "{name} {}", line.number),
            }
        }
        let amounts: Vec<Decimal> = sheet
            .rows()
            .skip(FIRST + lines.len().max(1))
            .filter(|row| row[12] != Data::Empty && row[13] != Data::String("not known".to_owned()))
            .map(|row| decimal(&row[13]))
            .collect();
        let sums = &plan.takeoff.totals;
        let known = [
            Some(sums.goods),
            Some(sums.labour),
            sums.tax,
            sums.delivery,
            Some(sums.cost),
            Some(sums.overhead),
            Some(sums.profit),
            Some(sums.total),
        ];
        assert_eq!(amounts, known.into_iter().flatten().map(|d| d.normalize()).collect::<Vec<_>>(), "{name}");
    }
}

#[test]
fn every_cost_and_total_is_a_formula() {
    let (job, plan) = sample("alder-court");
    let bytes = Output::OrderWorkbook.bytes(&job, &plan).unwrap();
    let formulas = open(&bytes).worksheet_formula("Order").unwrap();
    let (top, count) = (formulas.start().unwrap().0 as usize, plan.takeoff.lines.len());
    assert_eq!(top, FIRST, "nothing above the lines is one");
    let written: Vec<&String> = formulas.rows().map(|row| &row[0]).filter(|f| !f.is_empty()).collect();
    assert_eq!(formulas.start().unwrap().1, 13, "and none stands beside the costs");
    assert_eq!(written.len(), count + 8);
    assert_eq!(*written[0], "IF(ISNUMBER(M4),ROUND(J4*M4,2),\"no price\")");
    assert!(written[count].starts_with("SUMIF("), "{}", written[count]);
}

/// Names that spreadsheets take for formulas, after OWASP, "CSV Injection".
const NASTY: [&str; 6] =
    ["=HYPERLINK(\"http://192.0.2.1\",\"a\")", "+1+1", "-2+3", "@SUM(1,1)", "\t=1+1", "\r=1+1"];

#[test]
fn hostile_names_stay_text_in_the_workbook_and_break_no_sheet() {
    for nasty in NASTY {
        let (mut job, _) = sample("alder-court");
        nasty.clone_into(&mut job.name);
        nasty.clone_into(&mut job.site.address);
        let mut order = job.order.as_ref().clone();
        order.added.push(AddedLine {
            number: "X-1".to_owned(),
            name: nasty.to_owned(),
            group: Group::Roofing,
            stage: Stage::Modules,
            package: nasty.to_owned(),
            packages: 1,
            price: None,
            why: nasty.to_owned(),
        });
        job = apply(&job, &Edit::SetOrder(Arc::new(order))).unwrap();
        let plan = evaluate(&job);
        assert!(plan.takeoff.lines.iter().any(|line| line.name.now() == nasty));
        let bytes = Output::OrderWorkbook.bytes(&job, &plan).unwrap();
        let mut book = open(&bytes);
        for name in book.sheet_names() {
            let formulas = book.worksheet_formula(&name).unwrap();
            for formula in formulas.rows().flatten() {
                assert!(!formula.contains("HYPERLINK") && !formula.contains("1+1"), "{name}: {formula}");
            }
        }
        for output in [Output::OrderSheet(By::Stage), Output::PalletSheet, Output::ChecklistSheet] {
            assert!(output.bytes(&job, &plan).unwrap().starts_with(b"%PDF-"));
        }
    }
}

/// Header and trailer of a file per ISO 32000-1, 7.5.2 and 7.5.5.
fn ends_well(pdf: &[u8]) -> bool {
    pdf.starts_with(b"%PDF-1.") && pdf.trim_ascii_end().ends_with(b"%%EOF")
}

#[test]
fn sheets_are_whole_files_for_every_sample_and_for_an_empty_job() {
    let empty = {
        let (mut job, _) = sample("alder-court");
        job.faces.clear();
        job.blocks.clear();
        job.penetrations.clear();
        let plan = evaluate(&job);
        (job, plan)
    };
    for (job, plan) in SAMPLES.into_iter().map(sample).chain([empty]) {
        let mut seen = Vec::new();
        for output in [
            Output::OrderSheet(By::Group),
            Output::OrderSheet(By::Stage),
            Output::PalletSheet,
            Output::ClaimSheet,
            Output::ChecklistSheet,
        ] {
            let pdf = output.bytes(&job, &plan).unwrap();
            assert!(ends_well(&pdf), "{}", job.name);
            // An empty order is the same by part and by stage.
            let same = seen.contains(&pdf) && !plan.takeoff.lines.is_empty();
            assert!(!same, "two sheets of {} are the same", job.name);
            seen.push(pdf);
        }
        let again = Output::OrderSheet(By::Group).bytes(&job, &plan).unwrap();
        assert_eq!(again, seen[0], "the same order is the same file");
    }
}

/// The drawing read back with a separate XML reader (the one that comes with the workbook reader): it is well formed, has a path
/// for each module and each edge segment, and describes itself in text.
#[test]
fn the_svg_is_well_formed_and_has_every_module() {
    for name in SAMPLES {
        let (job, plan) = sample(name);
        let text = Output::PlanDrawing.text(&job, &plan).unwrap();
        let mut reader = quick_xml::Reader::from_str(&text);
        let (mut filled, mut lines, mut depth) = (0, 0, 0_i32);
        loop {
            match reader.read_event().unwrap() {
                quick_xml::events::Event::Start(_) => depth += 1,
                quick_xml::events::Event::End(_) => depth -= 1,
                quick_xml::events::Event::Empty(tag) if tag.name().as_ref() == b"path" => {
                    let fill = tag.try_get_attribute("fill").unwrap().unwrap().value;
                    if fill.as_ref() == b"none" { lines += 1 } else { filled += 1 }
                }
                quick_xml::events::Event::Eof => break,
                _ => {}
            }
        }
        assert_eq!(depth, 0, "{name}");
        assert_eq!(filled, plan.summary.modules + plan.layout.penetrations.len(), "{name}");
        // An edge shared by two faces is drawn once: drawn twice, the dashes would fill each other's gaps.
        let edges = plan.layout.roof.lines().len();
        let drawing = plan_drawing(&job, &plan).unwrap();
        let leaders = drawing.shapes.iter().filter(|it| matches!(it, Shape::Line { ink: Ink::Leader, .. }));
        assert_eq!(lines, edges + 1 + leaders.count(), "{name}: edges, the arrow to the north, leaders");
        assert!(text.contains(&format!("<title>{}", job.name)), "{name}");
        assert!(text.contains("Falls"), "{name}: no caution");
    }
}

/// The build sheet carries every face with modules, and has at least one page for an empty job.
#[test]
fn the_build_sheet_is_a_pdf_for_every_sample_and_for_an_empty_job() {
    for name in SAMPLES {
        let (job, plan) = sample(name);
        let bytes = Output::BuildSheet.bytes(&job, &plan).unwrap();
        assert!(bytes.starts_with(b"%PDF-"), "{name}");
        for (index, face) in plan.layout.faces.iter().enumerate() {
            let drawing = face_drawing(&job, &plan, index).unwrap();
            let modules = plan.layout.blocks.iter().filter(|b| b.face == index).map(|b| b.modules.len());
            let areas = drawing.shapes.iter().filter(|s| matches!(s, Shape::Area { ink: Ink::Module, .. }));
            assert_eq!(areas.count(), modules.sum::<usize>(), "{name} {}", face.name);
        }
    }
    let (mut job, _) = sample("alder-court");
    (job.faces, job.blocks, job.penetrations, job.parts) = Default::default();
    let plan = evaluate(&job);
    assert!(plan_drawing(&job, &plan).is_none());
    assert!(Output::BuildSheet.bytes(&job, &plan).unwrap().starts_with(b"%PDF-"));
}

/// Checks that nothing crosses the labels at the build sheet's size, `room` in points.
fn check_labels_are_clear(drawing: &chalkcourse_sheets::Drawing, room: (f64, f64), name: &str) -> usize {
    let size = drawing.bounds.size();
    let point = (size.x / room.0).max(size.y / room.1);
    // Half the text box: DejaVu Sans Condensed averages half an em in width, and tall letters are four fifths of an em.
    let half = |size: f32, text: &str| {
        dvec2(text.chars().count() as f64 * 0.5, 0.8) * (f64::from(size) * point / 2.0)
    };
    let words: Vec<(DVec2, f64, DVec2, &str)> = drawing
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Words { at, turn, size, text } => Some((*at, *turn, half(*size, text), text.as_str())),
            _ => None,
        })
        .collect();
    for (nth, &(at, turn, half, text)) in words.iter().enumerate() {
        let along = DVec2::from_angle(turn);
        // Sample points all over the letters: whatever crosses them covers one.
        let places: Vec<DVec2> = (-20..=20)
            .flat_map(|u| (-2..=2).map(move |v| (f64::from(u) / 20.0, f64::from(v) / 2.0)))
            .map(|(u, v)| at + along * (u * half.x) + along.perp() * (v * half.y))
            .collect();
        for &(at, turn, half, other) in words.iter().skip(nth + 1) {
            let along = DVec2::from_angle(turn);
            let over = |p: &DVec2| {
                let d = *p - at;
                d.dot(along).abs() < half.x && d.dot(along.perp()).abs() < half.y
            };
            assert!(!places.iter().any(over), "{name}: {text:?} lies on {other:?}");
        }
        for shape in &drawing.shapes {
            match shape {
                Shape::Area { ring, ink: Ink::Penetration } => {
                    let vent = Polygon::new(ring.clone());
                    assert!(!places.iter().any(|p| vent.contains(*p)), "{name}: {text:?} lies on a vent");
                }
                Shape::Line { points: line, ink: Ink::Soft, .. } => {
                    let far = |p: &DVec2| distance_to_segment(*p, line[0], line[1]);
                    let near = places.iter().map(far).fold(f64::INFINITY, f64::min);
                    assert!(near > 0.2 * point, "{name}: {text:?} lies on a dimension");
                }
                Shape::Line { points: line, ink: Ink::Leader, .. } => {
                    // A leader starts at its own label, the one nearest to one of its ends.
                    let off = |at: DVec2, turn: f64, half: DVec2, p: DVec2| {
                        let along = DVec2::from_angle(turn);
                        let d = dvec2((p - at).dot(along).abs(), (p - at).dot(along.perp()).abs()) - half;
                        d.max(DVec2::ZERO).length()
                    };
                    let ends = |it: &(DVec2, f64, DVec2, &str)| {
                        line.iter().map(|&p| off(it.0, it.1, it.2, p)).fold(f64::INFINITY, f64::min)
                    };
                    let own = words.iter().map(ends).fold(f64::INFINITY, f64::min);
                    let far = |p: &DVec2| distance_to_segment(*p, line[0], line[1]);
                    let near = places.iter().map(far).fold(f64::INFINITY, f64::min);
                    let is_own = ends(&words[nth]) <= own + 1e-9;
                    assert!(is_own || near > 0.2 * point, "{name}: {text:?} lies on a leader");
                }
                _ => {}
            }
        }
    }
    words.len()
}

#[test]
fn labels_cover_nothing_that_must_be_seen() {
    for name in SAMPLES {
        let (job, plan) = sample(name);
        let drawing = plan_drawing(&job, &plan).unwrap();
        assert!(check_labels_are_clear(&drawing, (526.0, 380.0), name) > 1, "{name}");
        for index in (0..plan.layout.faces.len()).take(40) {
            let Some(drawing) = face_drawing(&job, &plan, index) else { continue };
            check_labels_are_clear(&drawing, (526.0, 300.0), name);
        }
    }
}

#[test]
fn dimensions_begin_on_an_edge_of_the_face() {
    for name in SAMPLES {
        let (job, plan) = sample(name);
        for (index, face) in plan.layout.roof.faces.iter().enumerate().take(40) {
            let Some(drawing) = face_drawing(&job, &plan, index) else { continue };
            for shape in &drawing.shapes {
                let Shape::Line { points, ink: Ink::Soft, .. } = shape else { continue };
                assert!(face.frame.distance_to_border(points[0]) < 1e-6, "{name}: {points:?}");
            }
        }
    }
}
