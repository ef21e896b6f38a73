//! The build sheet for the crew: the roof plan, each face with its chalk lines, and the stages of work in order.

use crate::crew::{BOX, sheet};
use crate::drawing::{Drawing, FACE_ROOM, PLAN_ROOM, face_drawing, legend, plan_drawing};
use crate::page::{Column, Part, Row, Sheet};
use chalkcourse_geometry::coursing::Coursing;
use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_job::{Resolved, Stage};
use chalkcourse_layout::PlacedBlock;
use chalkcourse_plan::{FromEdge, Plan, base_line, block_span, cut_words, rows_words, whole_words};
use chalkcourse_telling::order::CAUTION;
use chalkcourse_words::{self as words, face_heading};

/// The roof plan, every face with modules drawn to scale with its base lines, and the order of work.
pub(crate) fn build_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let mut sheet = sheet(words::sheets::PLAN_TO_BUILD_FROM.now().to_owned(), job, plan);
    sheet.parts.push(Part::Caution(CAUTION.now().to_owned()));
    match plan_drawing(job, plan) {
        Some(drawing) => {
            drawn(&mut sheet.parts, drawing, PLAN_ROOM.1);
            sheet.parts.push(Part::Text(legend()));
        }
        None => sheet.parts.push(Part::Text(words::sheets::NO_FACE_OF_THE_ROOF.now().to_owned())),
    }
    if !job.site.notes.trim().is_empty() {
        sheet.parts.push(Part::Heading(words::sheets::CREW_NOTES.now().to_owned()));
        sheet.parts.push(Part::Text(job.site.notes.clone()));
    }
    for (index, placed) in plan.layout.faces.iter().enumerate() {
        let on_face = plan.layout.blocks.iter().filter(|b| b.face == index && b.bounds.is_some());
        let blocks: Vec<&PlacedBlock> = on_face.map(std::sync::Arc::as_ref).collect();
        let Some(drawing) = face_drawing(job, plan, index).filter(|_| !blocks.is_empty()) else { continue };
        let pitch = plan.layout.roof.faces.get(index).map(|face| face.plane.pitch);
        let pitch = pitch.map(|pitch| pitch.to_string()).unwrap_or_default();
        sheet.parts.push(Part::Heading(words::sheets::pitch(&face_heading(&placed.name), &pitch)));
        drawn(&mut sheet.parts, drawing, FACE_ROOM.1);
        sheet.parts.push(Part::Table {
            columns: vec![
                Column::words("", 0.25),
                Column::words(words::common::BLOCK.now(), 1.0),
                Column::words(words::sheets::ROWS_OF_MODULES.now(), 1.3),
                Column::words(words::sheets::BASE_LINE_UP_FROM_THE.now(), 1.6),
                Column::words(words::sheets::LEFT_END_ALONG_THAT_LINE.now(), 1.7),
                Column::words(words::common::REVEAL.now(), 0.8),
            ],
            rows: blocks.iter().flat_map(|block| rows(job, plan, index, block)).collect(),
        });
    }
    sheet.parts.push(Part::Heading(words::sheets::IN_THIS_ORDER.now().to_owned()));
    let staged = |stage: &Stage| {
        let terms = plan.takeoff.lines.iter().flat_map(|line| &line.terms);
        terms.into_iter().any(|term| term.stage == *stage && term.need > 0.0)
            || plan.takeoff.lines.iter().any(|line| line.stage == *stage)
    };
    let stages = Stage::ALL.into_iter().filter(staged).enumerate();
    sheet.parts.push(Part::Table {
        columns: vec![
            Column::words("", 0.25),
            Column::words("", 0.4),
            Column::words(words::sheets::STAGE.now(), 5.0),
            Column::words(words::sheets::DONE_BY.now(), 2.0),
        ],
        rows: stages
            .flat_map(|(nth, stage)| {
                let name = stage.name().to_owned();
                [
                    Row::Cells(vec![
                        BOX.to_owned(),
                        format!("{}.", nth + 1),
                        name.into(),
                        "………………………".to_owned(),
                    ]),
                    Row::Note(stage.work().into()),
                ]
            })
            .collect(),
    });
    sheet
}

/// Adds a drawing, followed by the labels that did not fit on it.
fn drawn(parts: &mut Vec<Part>, drawing: Drawing, height: f32) {
    let beside = drawing.beside.join("; ");
    parts.push(Part::Drawing { drawing, height });
    if !beside.is_empty() {
        parts.push(Part::Text(beside));
    }
}

fn rows(job: &Resolved, plan: &Plan, index: usize, block: &PlacedBlock) -> Vec<Row> {
    let Some(line) = plan.layout.roof.faces.get(index).and_then(|face| base_line(face, block)) else {
        return Vec::new();
    };
    let per_row: Vec<usize> = {
        let mut counts = std::collections::BTreeMap::new();
        block.modules.iter().for_each(|module| *counts.entry(module.cell.row).or_insert(0) += 1);
        counts.into_values().collect()
    };
    let same = per_row.windows(2).all(|pair| pair[0] == pair[1]);
    let modules = match (same, per_row.first()) {
        (true, Some(each)) => rows_words(per_row.len(), *each),
        _ => per_row.iter().map(usize::to_string).collect::<Vec<_>>().join(" + "),
    };
    let mut rows = vec![Row::Cells(vec![
        BOX.to_owned(),
        block.name.clone(),
        modules,
        from_words(line.up, EdgeKind::Eave, job.units),
        from_words(line.along, EdgeKind::Rake, job.units),
        Length::from_metres(block.reveal).show_small(job.units),
    ])];
    // Rows that do not start flush with the block are listed one by one.
    let mut starts = std::collections::BTreeMap::new();
    for module in &block.modules {
        let left = starts.entry(module.cell.row).or_insert(f64::INFINITY);
        *left = f64::min(*left, module.rect.min.x);
    }
    let set_in: Vec<String> = starts
        .into_iter()
        .filter(|(_, left)| (left - line.start.x).abs() > 0.001)
        .map(|(row, left)| {
            let by = Length::from_metres((left - line.start.x).abs()).show_small(job.units);
            if left > line.start.x {
                words::sheets::row_begins_to_the_right(&(row + 1), &by)
            } else {
                words::sheets::row_begins_to_the_left(&(row + 1), &by)
            }
        })
        .collect();
    if !set_in.is_empty() {
        rows.push(Row::Note(set_in.join("; ")));
    }
    rows.extend(above(job, plan, index, block).map(Row::Note));
    rows
}

/// A tape reading, and the edge it is taken from where that is not the usual one.
fn from_words(from: Option<FromEdge>, usual: EdgeKind, units: Units) -> String {
    let Some(from) = from else { return "–".to_owned() };
    let length = Length::from_metres(from.length()).show(units);
    if from.kind == usual { length } else { words::common::from_the(&length, &from.kind.name()) }
}

/// The courses above a block, with what the crew cuts off each.
fn above(job: &Resolved, plan: &Plan, index: usize, block: &PlacedBlock) -> Option<String> {
    let lines = plan.layout.faces.get(index)?.courses;
    let courses = Coursing { eave: lines.eave, top: lines.top, first: lines.first, exposure: lines.exposure };
    let laid = courses.laid(&block_span(job, block)?).ok()?;
    let whole = whole_words(laid.whole_to_top);
    let cut = cut_words(laid.cut_at_head, job.units);
    let lap = Length::from_metres(job.kit.flashing.head_lap.metres()).show_small(job.units);
    Some(words::sheets::above_then_the_shingles_lie(&cut, &whole, &lap))
}
