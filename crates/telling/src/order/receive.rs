//! The delivery as text and as CSV, and the claim to the supplier.

use super::OutputError;
use super::csv_out::write_rows;
use super::text::plain;
use chalkcourse_job::Delivery;
use chalkcourse_takeoff::{PalletRow, stages_ready};
use chalkcourse_words as words;
use std::fmt::Write;

/// "3 short, 1 damaged", "complete", "not counted".
pub fn counted_words(row: &PalletRow) -> String {
    let Some(_) = row.counted else { return words::takeoff::NOT_COUNTED.now().to_owned() };
    let counts = [
        (row.short(), words::takeoff::SHORT.now()),
        (row.over(), words::takeoff::OVER.now()),
        (row.damaged, words::takeoff::DAMAGED.now()),
    ];
    let words: Vec<String> =
        counts.iter().filter(|(n, _)| *n > 0).map(|(n, word)| format!("{n} {word}")).collect();
    if words.is_empty() { words::takeoff::COMPLETE.now().to_owned() } else { words.join(", ") }
}

/// The claim to the supplier: what is short, damaged or over, with notes; or that nothing is.
pub fn claim_text(job: &str, delivery: &Delivery, rows: &[PalletRow]) -> String {
    let mut out = String::new();
    // Writing to a string can't fail.
    let _ = writeln!(out, "{}", words::takeoff::delivery_for(&plain(job)));
    for (what, text) in [
        (words::common::DATE.now(), &delivery.date),
        (words::common::COUNTED_BY.now(), &delivery.by),
        (words::common::NOTE.now(), &delivery.note),
    ] {
        if !text.trim().is_empty() {
            let _ = writeln!(out, "{what}: {}", plain(text));
        }
    }
    for (heading, wanted) in [
        (words::common::SHORT.now(), 0),
        (words::common::DAMAGED.now(), 1),
        (words::takeoff::OVER_OR_NOT_ORDERED.now(), 2),
    ] {
        let count = |row: &PalletRow| [row.short(), row.damaged, row.over()][wanted];
        let wrong: Vec<&PalletRow> = rows.iter().filter(|row| count(row) > 0).collect();
        if wrong.is_empty() {
            continue;
        }
        let _ = writeln!(out, "\n{heading}");
        for row in wrong {
            let packages = row.package.counted(count(row));
            let note = if row.note.is_empty() { String::new() } else { format!("; {}", row.note) };
            let _ = writeln!(
                out,
                "{}",
                words::takeoff::of_ordered_came(
                    &plain(&row.number),
                    &plain(&row.name.now()),
                    &packages,
                    &row.ordered,
                    &row.counted.unwrap_or(0),
                    &plain(&note)
                )
            );
        }
    }
    let open = rows.iter().filter(|row| row.counted.is_none()).count();
    if open > 0 {
        let _ = writeln!(out, "{}", words::takeoff::not_counted_yet_of_lines(&open, &rows.len()));
    } else if rows.iter().all(|row| row.is_complete() && row.over() == 0 && row.damaged == 0) {
        let _ = writeln!(out, "{}", words::takeoff::all_lines_are_complete(&rows.len()));
    }
    let _ = writeln!(out, "{}", words::takeoff::WHAT_CAN_START);
    for stage in stages_ready(rows) {
        let _ = match stage.can_start {
            true => writeln!(out, "{}", words::takeoff::can_start(&stage.stage.name())),
            false => {
                let why: Vec<String> = stage.waits_for.iter().map(|why| plain(&why.now())).collect();
                writeln!(out, "{}", words::takeoff::cant_start_2(&stage.stage.name(), &why.join("; ")))
            }
        };
    }
    out
}

/// The pallet list as CSV, with cells as safe as in [`to_csv`](super::to_csv). Sentences below it go in the name column, with
/// neither number nor count, so that reading the counts back skips them.
///
/// # Errors
/// [`OutputError::Csv`] if the writer fails, which only lack of memory could cause.
pub fn pallet_csv(rows: &[PalletRow], below: &[String]) -> Result<String, OutputError> {
    let header =
        ["Number", "Name", "Stage", "Package", "Ordered", "Counted", "Damaged", "Short", "Over", "Note"];
    let cells = rows.iter().map(|row| {
        [
            row.number.clone(),
            row.name.to_string(),
            row.stage.name().to_string(),
            row.package.name().to_string(),
            row.ordered.to_string(),
            row.counted.map_or_else(String::new, |counted| counted.to_string()),
            row.damaged.to_string(),
            row.short().to_string(),
            row.over().to_string(),
            row.note.clone(),
        ]
    });
    let below = below.iter().map(|sentence| {
        let mut cells = header.map(|_| String::new());
        cells[1].clone_from(sentence);
        cells
    });
    write_rows(std::iter::once(header.map(str::to_owned)).chain(cells).chain(below))
}
