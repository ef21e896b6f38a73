//! Fills as text and as data.

use super::Fill;
use crate::Plan;
use chalkcourse_geometry::Length;
use chalkcourse_job::{Cell, Resolved};
use chalkcourse_words::{self as words, face_heading};
use serde::Serialize;
use std::fmt::Write;

/// Fills as data.
#[derive(Clone, Debug, Serialize)]
pub struct FillsReport<'a> {
    /// Always "chalkcourse-fit".
    pub format: &'static str,
    /// Version of this format.
    pub version: u32,
    /// Name of the job.
    pub job: &'a str,
    /// Caution.
    pub caution: &'static str,
    /// Where the job stands with all of them in place.
    #[serde(flatten)]
    pub standing: crate::Standing,
    /// One per face.
    pub faces: &'a [Fill],
    /// What the rules find with all of them in place.
    pub findings: Vec<chalkcourse_telling::FindingReport<'a>>,
}

/// Fills as data; `plan` is that of the job with all of them in place.
pub fn fills_report<'a>(job: &'a Resolved, fills: &'a [Fill], plan: &'a Plan) -> FillsReport<'a> {
    FillsReport {
        format: "chalkcourse-fit",
        version: 1,
        job: &job.name,
        caution: crate::CAUTION.now(),
        standing: crate::standing(job, plan),
        faces: fills,
        findings: plan.told(job),
    }
}

/// Fills as text; `plan` is that of the job with all of them in place.
pub fn fills_text(job: &Resolved, fills: &[Fill], plan: &Plan) -> String {
    let mut text = format!("{}\n{}", job.name, crate::standing(job, plan).head());
    for fill in fills {
        let face = job.face(fill.face).map_or("", |face| face.name.as_str());
        let _ = writeln!(text, "\n{}: {}", face_heading(face), fill.claim);
        let _ = writeln!(text, "{}", words::fill::searched(&fill.searched));
        for block in &fill.blocks {
            let _ = writeln!(
                text,
                "{}",
                words::fill::block_base_rail_up_from(
                    &block.name,
                    &words::fill::rows(block.rows),
                    &Length::from_metres(block.at.y).show(job.units),
                    &Length::from_metres(block.at.x).show(job.units)
                )
            );
            for row in 0..block.rows {
                let cells: Vec<Cell> = block.cells().filter(|cell| cell.row == row).collect();
                let at = cells.first().map_or(0.0, |cell| block.corner_of(*cell, &job.kit).x - block.at.x);
                let shown = Length::from_metres(at).show(job.units);
                let _ =
                    writeln!(text, "{}", words::fill::row_from(&(row + 1), &modules(cells.len()), &shown));
            }
        }
        let Some(held) = &fill.held else { continue };
        if held.is_empty() {
            text.push_str(words::fill::NOTHING_BUT_THE_SIZE_OF.now());
        }
        for words in held.words() {
            let _ = writeln!(text, "  {words}");
        }
        for (words, places) in held.near_by_words() {
            let _ = writeln!(
                text,
                "{}",
                words::fill::at(
                    &places,
                    &if places == 1 { words::fill::PLACE.now() } else { words::fill::PLACES.now() },
                    &words
                )
            );
        }
    }
    let _ = writeln!(
        text,
        "{}",
        words::fill::kw(
            &modules(plan.summary.modules),
            &format_args!("{:.2}", plan.summary.kilowatts),
            &words::fill::findings(plan.findings.len()),
            &crate::CAUTION.now()
        )
    );
    text
}

pub(super) use chalkcourse_words::modules;
