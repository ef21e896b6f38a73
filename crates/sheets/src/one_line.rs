//! The one-line diagram: from modules and devices by strings or branches, junction box, inverter and disconnects to the service, with all
//! conductors in a table. It fits on one sheet.

mod content;
mod draw;
mod electric;
mod legs;

use crate::SheetError;
use crate::drawing::Drawing;
use crate::letters::Letters;
use crate::page::{Column, Part, Row, Sheet};
use crate::svg::{Figure, svg};
use crate::wire_words::{cautions, wires_sheet};
use chalkcourse_job::Resolved;
use chalkcourse_plan::{Plan, standing, unknown_wires};
use chalkcourse_words as words;
use content::OneLine;
use legs::Conductors;

/// Height of the drawing on the sheet at most, points.
const ROOM: f32 = 250.0;

/// The diagram on paper.
///
/// # Errors
/// [`SheetError::Letters`] if the font can't be read.
pub(crate) fn one_line_sheet(job: &Resolved, plan: &Plan) -> Result<Sheet, SheetError> {
    let (all, drawing) = drawn(job, plan)?;
    let mut sheet = wires_sheet(words::oneline::TITLE.now().to_owned(), job, plan, true);
    sheet.under.push(words::wires::edition(&job.wiring.edition.year()));
    sheet.parts.push(Part::Drawing { drawing, height: ROOM });
    sheet.parts.push(table(&all.conductors));
    sheet.parts.extend(notes(plan).into_iter().map(Part::Text));
    Ok(sheet)
}

/// The same as one drawing (SVG).
///
/// # Errors
/// As [`one_line_sheet`].
pub(crate) fn one_line_svg(job: &Resolved, plan: &Plan) -> Result<String, SheetError> {
    let (all, drawing) = drawn(job, plan)?;
    let row = |(number, row): (usize, &Conductors)| {
        let cells = [
            (words::oneline::CONDUCTORS, &row.conductors),
            (words::oneline::GROUND, &row.ground),
            (words::oneline::LIES_IN, &row.lies),
            (words::oneline::LENGTH, &row.length),
            (words::oneline::AMPS, &row.amps),
            (words::oneline::DEVICE, &row.device),
            (words::oneline::DROP, &row.drop),
        ];
        let cells: Vec<String> = cells.map(|(title, cell)| format!("{}: {cell}", title.now())).into();
        format!("{number}  {}.  {}", row.between, cells.join("; "))
    };
    let notes: Vec<String> = (1..).zip(&all.conductors).map(row).chain(notes(plan)).collect();
    let title = words::oneline::title_of(&job.name);
    let drawings = [(String::new(), drawing)];
    let figure = Figure { title: &title, drawings: &drawings, notes: &notes, cautions: &cautions() };
    Ok(svg(&figure, &standing(job, plan)))
}

fn drawn(job: &Resolved, plan: &Plan) -> Result<(OneLine, Drawing), SheetError> {
    let letters = Letters::both()?;
    let all = OneLine::of(job, plan);
    let drawing = draw::drawing(words::oneline::title_of(&job.name), &all, &letters);
    Ok((all, drawing))
}

fn notes(plan: &Plan) -> Vec<String> {
    let mut notes = vec![words::oneline::HOW_TO_READ.now().to_owned()];
    if !plan.wires.unknown.is_empty() {
        notes.push(unknown_wires(&plan.wires.unknown));
    }
    notes
}

fn table(conductors: &[Conductors]) -> Part {
    let row = |(number, row): (usize, &Conductors)| {
        let Conductors { between, conductors, ground, lies, length, amps, device, drop } = row.clone();
        Row::Cells(vec![number.to_string(), between, conductors, ground, lies, length, amps, device, drop])
    };
    Part::Table {
        columns: vec![
            Column::words("", 0.3),
            Column::words(words::oneline::FROM_TO.now(), 2.0),
            Column::words(words::oneline::CONDUCTORS.now(), 1.7),
            Column::words(words::oneline::GROUND.now(), 1.3),
            Column::words(words::oneline::LIES_IN.now(), 2.4),
            Column::words(words::oneline::LENGTH.now(), 1.2),
            Column::words(words::oneline::AMPS.now(), 1.2),
            Column::words(words::oneline::DEVICE.now(), 0.9),
            Column::words(words::oneline::DROP.now(), 1.3),
        ],
        rows: (1..).zip(conductors).map(row).collect(),
    }
}
