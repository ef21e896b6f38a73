//! How sheets about the wires name things, alike on all of them, and the frame of such a sheet: who may do electrical work stands at the
//! foot of each page.

use crate::crew::sheet;
use crate::page::Sheet;
use chalkcourse_geometry::Length;
use chalkcourse_job::{BlockId, BoxId, ModuleAt, Resolved};
use chalkcourse_plan::Plan;
use chalkcourse_telling::order::CAUTION;
use chalkcourse_wiring::{Kind, Wired};
use chalkcourse_words as words;

/// An empty sheet about the wires.
pub(crate) fn wires_sheet(title: String, job: &Resolved, plan: &Plan, landscape: bool) -> Sheet {
    let sheet = sheet(title, job, plan);
    Sheet { foot: cautions().join(" "), landscape, ..sheet }
}

/// What each page and each drawing about the wires says.
pub(crate) fn cautions() -> [&'static str; 2] {
    [CAUTION.now(), words::wires::PLANNING_AID.now()]
}

/// "string 2", "branch 2"; a name that is no number says it all.
pub(crate) fn circuit_name(circuit: &Wired) -> String {
    let numbered = circuit.name.starts_with(|first: char| first.is_ascii_digit());
    match circuit.kind {
        _ if !numbered => circuit.name.clone(),
        Kind::Bare | Kind::DcDevices => words::diagram::string(&circuit.name),
        Kind::AcDevices => words::diagram::branch(&circuit.name),
    }
}

/// A module by its number, with the name of its block unless it is on `within`: "A 2-3".
pub(crate) fn module_name(job: &Resolved, at: ModuleAt, within: Option<BlockId>) -> String {
    let number = at.cell.number();
    if within == Some(at.block) {
        return number;
    }
    format!("{} {number}", job.block(at.block).map_or("", |block| block.name.as_str()))
}

/// The name of a junction box.
pub(crate) fn box_name(job: &Resolved, id: BoxId) -> &str {
    job.junction_box(id).map_or("", |junction| junction.name.as_str())
}

/// A length in the units of the job.
pub(crate) fn long(job: &Resolved, metres: f64) -> String {
    Length::from_metres(metres).show(job.units)
}

/// Extension leads of a link, by number and length: "FH-172 6' 6 3/4\"".
pub(crate) fn lead_names(job: &Resolved, leads: &[usize]) -> Vec<String> {
    let stock = job.kit.wiring.as_ref().map(|wiring| wiring.leads.extensions.as_slice()).unwrap_or_default();
    let name =
        |lead: &chalkcourse_job::ExtensionLead| format!("{} {}", lead.number, lead.length.show(job.units));
    leads.iter().filter_map(|at| stock.get(*at)).map(name).collect()
}
