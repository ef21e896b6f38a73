//! The wire diagram: each block face-on as the crew stands before it, with the path of each lead, and where all wires go.

mod content;
mod draw;
mod legend;
mod route;
mod strokes;

pub use content::{
    BlockWires, DrawnBox, DrawnEnd, DrawnGround, DrawnLink, DrawnModule, End, LinkPart, WireDiagram,
};
pub use strokes::circuit_line;

pub(crate) use content::end_name;

use crate::drawing::Drawing;
use crate::page::{Column, Part, Row, Sheet};
use crate::svg::{Figure, svg};
use crate::wire_words::{box_name, cautions, circuit_name, lead_names, long, module_name, wires_sheet};
use chalkcourse_job::Resolved;
use chalkcourse_plan::{Plan, standing};
use chalkcourse_wiring::Wired;
use chalkcourse_words::{self as words, block_heading, face_heading};

impl BlockWires {
    /// The block as a drawing, with labels that lie on nothing.
    pub fn drawing(&self, job: &Resolved, plan: &Plan) -> Drawing {
        draw::drawing(job, plan, self)
    }

    /// "Block A on face South, face-on".
    fn heading(&self, plan: &Plan) -> String {
        let face = plan.layout.faces.get(self.face).map_or("", |face| face.name.as_str());
        words::diagram::block_on(&block_heading(&self.name), &face_heading(face))
    }
}

/// The wire diagram on paper: the legend, a drawing of each block, then circuits, wires and copper as tables.
pub(crate) fn wire_diagram_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let mut sheet = wires_sheet(words::diagram::TITLE.now().to_owned(), job, plan, true);
    let diagram = WireDiagram::of(job, plan);
    sheet.parts.extend(notes(job, plan).into_iter().map(Part::Text));
    let legend = legend::legend(plan);
    let height = legend.bounds.size().y as f32;
    sheet.parts.push(Part::Drawing { drawing: legend, height });
    for block in &diagram.blocks {
        sheet.parts.push(Part::Heading(block.heading(plan)));
        let drawing = block.drawing(job, plan);
        let beside = drawing.beside.join("; ");
        sheet.parts.push(Part::Drawing { drawing, height: draw::ROOM.1 });
        if !beside.is_empty() {
            sheet.parts.push(Part::Text(beside));
        }
    }
    if !plan.wires.circuits.is_empty() {
        sheet.parts.push(Part::Heading(words::diagram::ORDER_OF_PLUGGING.now().to_owned()));
        sheet.parts.push(plugging(job, plan));
    }
    if !diagram.blocks.is_empty() {
        sheet.parts.push(Part::Heading(words::diagram::WHERE_WIRES_GO.now().to_owned()));
        sheet.parts.push(ways(job, plan, &diagram));
    }
    sheet
}

/// The same as one drawing (SVG): the blocks one below the other.
pub(crate) fn wire_diagram_svg(job: &Resolved, plan: &Plan) -> String {
    let diagram = WireDiagram::of(job, plan);
    let blocks = diagram.blocks.iter().map(|block| (block.heading(plan), block.drawing(job, plan)));
    let legend = (words::diagram::LEGEND.now().to_owned(), legend::legend(plan));
    let drawings: Vec<(String, Drawing)> = blocks.chain([legend]).collect();
    let notes: Vec<String> = notes(job, plan)
        .into_iter()
        .chain(
            plan.wires
                .circuits
                .iter()
                .map(|circuit| format!("{}: {}", circuit_name(circuit), plugging_words(job, circuit))),
        )
        .collect();
    let title = words::diagram::title_of(&job.name);
    svg(
        &Figure { title: &title, drawings: &drawings, notes: &notes, cautions: &cautions() },
        &standing(job, plan),
    )
}

/// How to read it, and what is not drawn: modules in no circuit, modules that are gone.
fn notes(job: &Resolved, plan: &Plan) -> Vec<String> {
    let wires = &plan.wires;
    let mut notes = Vec::new();
    if job.kit.wiring.is_none() {
        notes.push(words::wires::KIT_WITHOUT_WIRING.now().to_owned());
    }
    if wires.circuits.is_empty() {
        notes.push(words::wires::NO_CIRCUIT_YET.now().to_owned());
    } else {
        notes.push(words::diagram::HOW_TO_READ.now().to_owned());
    }
    let named = |modules: &[chalkcourse_job::ModuleAt]| {
        modules.iter().map(|at| module_name(job, *at, None)).collect::<Vec<_>>().join(", ")
    };
    if !wires.loose.is_empty() {
        notes.push(words::diagram::in_no_circuit(&named(&wires.loose)));
    }
    for circuit in wires.circuits.iter().filter(|circuit| !circuit.gone.is_empty()) {
        notes.push(words::diagram::not_there(&circuit_name(circuit), &named(&circuit.gone)));
    }
    notes
}

/// Circuits with their modules in the order of plugging.
fn plugging(job: &Resolved, plan: &Plan) -> Part {
    let rows = plan.wires.circuits.iter().map(|circuit| {
        Row::Cells(vec![
            circuit_name(circuit),
            circuit.devices.len().to_string(),
            plugging_words(job, circuit),
        ])
    });
    Part::Table {
        columns: vec![
            Column::words(words::diagram::CIRCUIT.now(), 1.3),
            Column::numbers(words::diagram::MODULES.now(), 0.8),
            Column::words(words::diagram::FROM_MODULE_TO_MODULE.now(), 9.0),
        ],
        rows: rows.collect(),
    }
}

/// Modules in the order of plugging with the extension leads between them; the block is named where it changes.
fn plugging_words(job: &Resolved, circuit: &Wired) -> String {
    let mut order = String::new();
    let mut block = None;
    for (index, device) in circuit.devices.iter().enumerate() {
        if let Some(link) = index.checked_sub(1).and_then(|before| circuit.links.get(before)) {
            match &link.leads {
                None => order += &format!(" \u{2192} [{}]", words::diagram::NO_LEAD_REACHES.now()),
                Some(leads) => {
                    lead_names(job, leads).iter().for_each(|name| order += &format!(" \u{2192} [{name}]"));
                }
            }
            order += " \u{2192} ";
        }
        order += &module_name(job, device.at, block);
        block = Some(device.at.block);
    }
    order
}

/// Each wire that leaves a block: from which module, to which box, how far.
fn ways(job: &Resolved, plan: &Plan, diagram: &WireDiagram) -> Part {
    let cells = |what: String, from: String, to: Option<(chalkcourse_job::BoxId, Option<f64>)>| {
        let (name, far) = match to {
            None => (words::diagram::NOT_STATED.now().to_owned(), None),
            Some((to, far)) => (box_name(job, to).to_owned(), far),
        };
        let far = far.map_or_else(|| words::diagram::NOT_KNOWN.now().to_owned(), |far| long(job, far));
        Row::Cells(vec![what, from, name, far])
    };
    let mut rows = Vec::new();
    for block in &diagram.blocks {
        let leaving = block.ends.iter().filter(|end| end.end != End::Closed);
        for end in leaving {
            let Some(circuit) = plan.wires.circuits.get(end.circuit) else { continue };
            rows.push(cells(end_name(circuit, end.end), module_name(job, end.at, None), end.home));
        }
        let copper = words::diagram::copper_of(&block_heading(&block.name));
        let along = words::diagram::past_lugs(block.modules.len(), &long(job, block.ground.along));
        rows.push(cells(copper, along, block.ground.home.map(|(to, way)| (to, Some(way)))));
    }
    Part::Table {
        columns: vec![
            Column::words(words::diagram::WIRE.now(), 2.2),
            Column::words(words::diagram::FROM_MODULE.now(), 3.0),
            Column::words(words::diagram::TO_BOX_2.now(), 2.2),
            Column::words(words::diagram::HOW_FAR.now(), 1.4),
        ],
        rows,
    }
}
