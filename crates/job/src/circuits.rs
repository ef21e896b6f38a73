//! What circuits, junction boxes and their choices must be in a job, and what edits do to those of others.

use crate::check::is_place;
use crate::{BlockId, BoxId, Circuit, EditError, Face, Job, JunctionBox, Leg, LiesIn, WiringChoices};
use chalkcourse_geometry::Length;
use chalkcourse_words::later as words;
use std::collections::BTreeSet;

fn check_name(name: &str) -> Result<(), EditError> {
    if name.trim().is_empty() { Err(EditError::NoName) } else { Ok(()) }
}

/// What a circuit must be to be in a job at all. One that breaks a limit is told as a finding.
pub(crate) fn check_circuit(job: &Job<Face>, circuit: &Circuit) -> Result<(), EditError> {
    check_name(&circuit.name)?;
    let count = circuit.modules.len();
    if !(1..=Circuit::MOST_MODULES).contains(&count) {
        return Err(EditError::CircuitSize { name: circuit.name.clone(), modules: count });
    }
    let mut seen = BTreeSet::new();
    if !circuit.modules.iter().all(|module| seen.insert(module)) {
        return Err(EditError::ModuleTwice { name: circuit.name.clone() });
    }
    if let Some(module) = circuit.modules.iter().find(|module| job.block(module.block).is_none()) {
        return Err(EditError::Missing { what: words::job::BLOCK, number: module.block.0 });
    }
    if let Some(to) = circuit.to.filter(|to| job.junction_box(*to).is_none()) {
        return Err(EditError::Missing { what: words::job::JUNCTION_BOX, number: to.0 });
    }
    Ok(())
}

/// What a junction box must be to be in a job at all.
pub(crate) fn check_box(junction: &JunctionBox) -> Result<(), EditError> {
    check_name(&junction.name)?;
    let what = || words::job::junction_box_2(&junction.name);
    if !is_place(junction.at) {
        return Err(EditError::NotAPlace { what: what() });
    }
    let sound = |length: Length| (0.0..1000.0).contains(&length.metres());
    let leg_sound = |leg: &Leg| {
        sound(leg.length)
            && match leg.lies {
                LiesIn::RoofRaceway(above) => sound(above),
                LiesIn::FreeAir | LiesIn::Attic | LiesIn::Wall => true,
            }
    };
    if junction.legs.iter().all(leg_sound) { Ok(()) } else { Err(EditError::BadLength { what: what() }) }
}

/// What the choices must be.
pub(crate) fn check_choices(choices: &WiringChoices) -> Result<(), EditError> {
    for (field, celsius) in [
        ("lowest_celsius", choices.lowest_celsius),
        ("highest_celsius", choices.highest_celsius),
        ("hottest_cell_celsius", choices.hottest_cell_celsius),
    ] {
        if let Some(celsius) = celsius.filter(|celsius| !(-90.0..=120.0).contains(celsius)) {
            return Err(EditError::Temperature { field, celsius });
        }
    }
    Ok(())
}

/// Takes the modules of a circuit out of all others: a module is in one at most. A circuit that loses all goes.
pub(crate) fn leave_others(job: &mut Job<Face>, put: &Circuit) {
    for other in job.circuits.iter_mut().filter(|other| other.id != put.id) {
        other.modules.retain(|module| !put.modules.contains(module));
    }
    job.circuits.retain(|circuit| !circuit.modules.is_empty());
}

/// Forgets modules whose block is gone, and boxes that are. A module that is switched off, or lies beyond its block, stays named:
/// that is told as a finding, and heals when the module comes back.
pub(crate) fn forget_gone(job: &mut Job<Face>) {
    if job.circuits.is_empty() {
        return;
    }
    let blocks: BTreeSet<BlockId> = job.blocks.iter().map(|block| block.id).collect();
    let boxes: BTreeSet<BoxId> = job.boxes.iter().map(|junction| junction.id).collect();
    for circuit in &mut job.circuits {
        circuit.modules.retain(|module| blocks.contains(&module.block));
        circuit.to = circuit.to.filter(|to| boxes.contains(to));
    }
    job.circuits.retain(|circuit| !circuit.modules.is_empty());
}
