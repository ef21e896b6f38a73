//! Fills as a person and as a program read them.

use super::Fill;
use crate::Plan;
use chalkcourse_geometry::Length;
use chalkcourse_job::{Cell, Resolved};
use chalkcourse_words::{face_heading, pick, putln, tell};
use serde::Serialize;
use std::fmt::Write;

/// Fills for other programs.
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
    /// Face by face.
    pub faces: &'a [Fill],
    /// What the rules find with all of them in place.
    pub findings: Vec<chalkcourse_telling::FindingReport<'a>>,
}

/// Fills for other programs; `plan` is that of the job with all of them in place.
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

/// Fills as a person reads them; `plan` is that of the job with all of them in place.
pub fn fills_text(job: &Resolved, fills: &[Fill], plan: &Plan) -> String {
    let mut text = format!("{}\n{}", job.name, crate::standing(job, plan).head());
    for fill in fills {
        let face = job.face(fill.face).map_or("", |face| face.name.as_str());
        let _ = writeln!(text, "\n{}: {}", face_heading(face), fill.claim);
        let _ = putln!(text, "  searched: {}", "  se buscó: {}", fill.searched);
        for block in &fill.blocks {
            let _ = putln!(
                text,
                "  block {}: {}, base rail {} up from the face's datum, left end {} along it",
                "  bloque {}: {}, riel base a {} del origen del faldón, extremo izquierdo a {} a lo largo",
                block.name,
                match block.rows {
                    1 => pick("1 row", "1 fila").to_owned(),
                    rows => tell!("{rows} rows", "{rows} filas"),
                },
                Length::from_metres(block.at.y).show(job.units),
                Length::from_metres(block.at.x).show(job.units)
            );
            for row in 0..block.rows {
                let cells: Vec<Cell> = block.cells().filter(|cell| cell.row == row).collect();
                let at = cells.first().map_or(0.0, |cell| block.corner_of(*cell, &job.kit).x - block.at.x);
                let shown = Length::from_metres(at).show(job.units);
                let _ = putln!(
                    text,
                    "    row {}: {}, from {shown}",
                    "    fila {}: {}, desde {shown}",
                    row + 1,
                    modules(cells.len())
                );
            }
        }
        let Some(held) = &fill.held else { continue };
        if held.is_empty() {
            text.push_str(pick(
                "  nothing but the size of the face holds it back\n",
                "  nada más que el tamaño del faldón lo limita\n",
            ));
        }
        for words in held.words() {
            let _ = writeln!(text, "  {words}");
        }
        for (words, places) in held.near_by_words() {
            let _ = putln!(
                text,
                "  At {places} {}: {words}",
                "  En {places} {}: {words}",
                if places == 1 { pick("place", "lugar") } else { pick("places", "lugares") }
            );
        }
    }
    let _ = putln!(
        text,
        "\n{}, {:.2} kW; {}\n\n{}",
        "\n{}, {:.2} kW; {}\n\n{}",
        modules(plan.summary.modules),
        plan.summary.kilowatts,
        match plan.findings.len() {
            1 => pick("1 finding", "1 hallazgo").to_owned(),
            many => tell!("{many} findings", "{many} hallazgos"),
        },
        crate::CAUTION.now()
    );
    text
}

pub(super) use chalkcourse_words::modules;
