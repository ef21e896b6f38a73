//! Sheets for the crew: pallet list, claim, checklist.

use crate::page::{Column, Part, Row, Sheet};
use chalkcourse_job::{Resolved, Stage};
use chalkcourse_plan::{Plan, standing};
use chalkcourse_takeoff::{PalletRow, pallet, stages_ready};
use chalkcourse_telling::order::CAUTION;
use chalkcourse_words::{self as words, Said};

/// An empty checkbox.
pub(crate) const BOX: &str = "\u{2610}";

pub(crate) fn sheet(title: String, job: &Resolved, plan: &Plan) -> Sheet {
    let mut under = vec![job.name.clone(), job.site.address.clone()];
    under.retain(|line| !line.trim().is_empty());
    Sheet {
        title,
        under,
        standing: standing(job, plan),
        foot: CAUTION.now().to_owned(),
        landscape: false,
        parts: Vec::new(),
    }
}

/// A row, followed by its note if it has one.
fn with_note(cells: Vec<String>, note: &str) -> Vec<Row> {
    let note = (!note.trim().is_empty()).then(|| Row::Note(note.to_owned()));
    std::iter::once(Row::Cells(cells)).chain(note).collect()
}

/// The pallet list, sorted by the first stage that needs each part, with checkboxes and blanks for counts: for checking a
/// delivery with a pencil. Counts already entered are filled in.
pub(crate) fn pallet_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let rows = pallet(&plan.takeoff, &job.order.delivery);
    let mut sheet = sheet(words::common::PALLET_LIST.now().to_owned(), job, plan);
    sheet.parts.push(Part::Text(words::sheets::TICK_WHAT_IS_WHOLE_AND.now().to_owned()));
    let blank = || "………".to_owned();
    for stage in Stage::ALL {
        let mut of_stage = rows.iter().filter(|row| row.stage == stage).peekable();
        if of_stage.peek().is_none() {
            continue;
        }
        sheet.parts.push(Part::Heading(stage.name().into()));
        let cells = of_stage.flat_map(|row| {
            let damaged = if row.damaged > 0 { row.damaged.to_string() } else { blank() };
            let cells = vec![
                BOX.to_owned(),
                row.number.clone(),
                row.name.clone().into(),
                row.package.counted(row.ordered).into(),
                row.counted.map_or_else(blank, |counted| counted.to_string()),
                damaged,
            ];
            with_note(cells, &row.note)
        });
        sheet.parts.push(Part::Table {
            columns: vec![
                Column::words("", 0.25),
                Column::words(words::common::NUMBER.now(), 1.0),
                Column::words(words::common::WHAT.now(), 3.4),
                Column::words(words::common::ORDERED.now(), 1.3),
                Column::numbers(words::common::CAME.now(), 0.7),
                Column::numbers(words::common::DAMAGED.now(), 0.7),
            ],
            rows: cells.collect(),
        });
    }
    if rows.is_empty() {
        sheet.parts.push(Part::Text(words::common::NOTHING_IS_ON_ORDER.now().to_owned()));
    }
    sheet.parts.push(Part::Text(words::sheets::COUNTED_BY_DATE.now().to_owned()));
    sheet
}

/// The claim to the supplier: what is short, damaged or over, with notes; and which stages can start.
pub(crate) fn claim_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let delivery = &job.order.delivery;
    let rows = pallet(&plan.takeoff, delivery);
    let mut sheet = sheet(words::sheets::DELIVERY_WHAT_IS_SHORT_DAMAGED.now().to_owned(), job, plan);
    for (what, text) in [
        (words::common::DATE.now(), &delivery.date),
        (words::common::COUNTED_BY.now(), &delivery.by),
        (words::common::NOTE.now(), &delivery.note),
    ] {
        if !text.trim().is_empty() {
            sheet.under.push(format!("{what}: {text}"));
        }
    }
    let wrong: Vec<&PalletRow> =
        rows.iter().filter(|row| row.short() + row.over() + row.damaged > 0).collect();
    if wrong.is_empty() {
        let open = rows.iter().filter(|row| row.counted.is_none()).count();
        sheet.parts.push(Part::Text(match open {
            0 => words::sheets::all_lines_are_complete(&rows.len()),
            open => words::sheets::nothing_is_wrong_with_what(&open, &rows.len()),
        }));
    } else {
        let number = |count: u64| if count > 0 { count.to_string() } else { "–".to_owned() };
        let cells = wrong.iter().flat_map(|row| {
            let cells = vec![
                row.number.clone(),
                row.name.clone().into(),
                row.package.name().into(),
                row.ordered.to_string(),
                number(row.counted.unwrap_or(0)),
                number(row.short()),
                number(row.damaged),
                number(row.over()),
            ];
            with_note(cells, &row.note)
        });
        sheet.parts.push(Part::Table {
            columns: vec![
                Column::words(words::common::NUMBER.now(), 1.0),
                Column::words(words::common::WHAT.now(), 3.0),
                Column::words(words::common::PACKAGE.now(), 0.9),
                Column::numbers(words::common::ORDERED.now(), 0.75),
                Column::numbers(words::common::CAME.now(), 0.7),
                Column::numbers(words::common::SHORT.now(), 0.7),
                Column::numbers(words::common::DAMAGED.now(), 0.85),
                Column::numbers(words::sheets::OVER.now(), 0.7),
            ],
            rows: cells.collect(),
        });
    }
    sheet.parts.push(Part::Heading(words::common::WHAT_CAN_START.now().to_owned()));
    for stage in stages_ready(&rows) {
        let words = if stage.can_start {
            words::common::CAN_START.now().to_owned()
        } else {
            words::sheets::cant_start(&Said::listed(stage.waits_for, "; "))
        };
        sheet.parts.push(Part::Text(format!("{}: {words}", stage.stage.name())));
    }
    sheet
}

/// The crew's checklist before and during the work: the book's cautions, and what this roof calls for.
pub(crate) fn checklist_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let mut sheet = sheet(words::sheets::CREW_CHECKLIST.now().to_owned(), job, plan);
    sheet.under.push(words::sheets::after_the_rule_book(&job.rule_book.name));
    for lines in chalkcourse_telling::checklist(job, &plan.layout).chunk_by(|a, b| a.about == b.about) {
        sheet.parts.extend(lines.first().map(|line| Part::Heading(line.about.clone())));
        let rows = lines
            .iter()
            .flat_map(|line| with_note(vec![BOX.to_owned(), line.text.clone()], &line.source.text));
        let columns = vec![Column::words("", 0.25), Column::words("", 9.0)];
        sheet.parts.push(Part::Table { columns, rows: rows.collect() });
    }
    sheet.parts.push(Part::Caution(CAUTION.now().to_owned()));
    sheet.parts.push(Part::Text(words::sheets::GONE_THROUGH_BY_DATE.now().to_owned()));
    sheet
}
