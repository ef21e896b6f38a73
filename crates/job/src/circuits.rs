//! What circuits, junction boxes, readings and their choices must be in a job, and what edits do to those of others.

use crate::check::is_place;
use crate::{
    BlockId, BoxId, Circuit, CircuitId, EditError, Face, Job, JunctionBox, Leg, LiesIn, Reading,
    WiringChoices,
};
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
    if !junction.legs.iter().all(leg_sound) {
        return Err(EditError::BadLength { what: what() });
    }
    match junction.others.iter().find(|others| !(1..=MOST_OTHERS).contains(&others.count)) {
        Some(others) => {
            Err(out_of_range("others.count", f64::from(others.count), 1.0, f64::from(MOST_OTHERS)))
        }
        None => Ok(()),
    }
}

/// Most conductors of one size that pass through a box.
const MOST_OTHERS: u32 = 100;
/// The largest service of a house that is asked about, in amperes.
const MOST_AMPS: f64 = 10_000.0;
/// No meter shows more volts or megohms than this.
const MOST_READING: f64 = 1e6;

fn out_of_range(field: &'static str, value: f64, least: f64, most: f64) -> EditError {
    EditError::OutOfRange { field, value, least, most }
}

/// What an electrician's reading must be.
pub(crate) fn check_reading(job: &Job<Face>, reading: &Reading) -> Result<(), EditError> {
    if job.circuit(reading.circuit).is_none() {
        return Err(EditError::Missing { what: words::job::CIRCUIT, number: reading.circuit.0 });
    }
    check_celsius("celsius", Some(reading.celsius))?;
    for (field, value) in [
        ("open_volts", reading.open_volts),
        ("insulation_megohms", reading.insulation_megohms),
        ("test_volts", reading.test_volts),
    ] {
        if let Some(value) = value.filter(|value| !(0.0..=MOST_READING).contains(value)) {
            return Err(out_of_range(field, value, 0.0, MOST_READING));
        }
    }
    Ok(())
}

fn check_celsius(field: &'static str, celsius: Option<f64>) -> Result<(), EditError> {
    match celsius.filter(|celsius| !(-90.0..=120.0).contains(celsius)) {
        Some(celsius) => Err(EditError::Temperature { field, celsius }),
        None => Ok(()),
    }
}

/// What the choices must be.
pub(crate) fn check_choices(choices: &WiringChoices) -> Result<(), EditError> {
    for (field, celsius) in [
        ("lowest_celsius", choices.lowest_celsius),
        ("highest_celsius", choices.highest_celsius),
        ("hottest_cell_celsius", choices.hottest_cell_celsius),
        ("attic_celsius", choices.attic_celsius),
    ] {
        check_celsius(field, celsius)?;
    }
    if let Some(service) = &choices.service {
        for (field, amps, least) in [
            ("service.bus_amps", service.bus_amps, 1.0),
            ("service.main_breaker_amps", service.main_breaker_amps, 1.0),
            ("service.other_breakers_amps", service.other_breakers_amps.unwrap_or_default(), 0.0),
        ] {
            if !(least..=MOST_AMPS).contains(&amps) {
                return Err(out_of_range(field, amps, least, MOST_AMPS));
            }
        }
    }
    let sound = |(code, text): (&String, &String)| {
        let is_code = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        (1..=MOST_CODE).contains(&code.len())
            && code.chars().all(is_code)
            && text.chars().count() <= WiringChoices::MOST_LABEL_LETTERS
    };
    match choices.label_texts.iter().find(|label| !sound(*label)) {
        Some((code, _)) => Err(EditError::LabelText { code: code.chars().take(MOST_CODE).collect() }),
        None if choices.label_texts.len() > WiringChoices::MOST_LABELS => {
            let count = choices.label_texts.len() as f64;
            Err(out_of_range("label_texts", count, 0.0, WiringChoices::MOST_LABELS as f64))
        }
        None => Ok(()),
    }
}

/// Most letters of a label's code.
const MOST_CODE: usize = 64;

/// Takes the modules of a circuit out of all others: a module is in one at most. A circuit that loses all goes.
pub(crate) fn leave_others(job: &mut Job<Face>, put: &Circuit) {
    for other in job.circuits.iter_mut().filter(|other| other.id != put.id) {
        other.modules.retain(|module| !put.modules.contains(module));
    }
    job.circuits.retain(|circuit| !circuit.modules.is_empty());
}

/// Forgets modules whose block is gone, boxes that are, and readings of circuits that are. A module that is switched off, or lies
/// beyond its block, stays named: that is told as a finding, and heals when the module comes back.
pub(crate) fn forget_gone(job: &mut Job<Face>) {
    if job.circuits.is_empty() {
        job.readings.clear();
        return;
    }
    let blocks: BTreeSet<BlockId> = job.blocks.iter().map(|block| block.id).collect();
    let boxes: BTreeSet<BoxId> = job.boxes.iter().map(|junction| junction.id).collect();
    for circuit in &mut job.circuits {
        circuit.modules.retain(|module| blocks.contains(&module.block));
        circuit.to = circuit.to.filter(|to| boxes.contains(to));
    }
    job.circuits.retain(|circuit| !circuit.modules.is_empty());
    let left: BTreeSet<CircuitId> = job.circuits.iter().map(|circuit| circuit.id).collect();
    job.readings.retain(|reading| left.contains(&reading.circuit));
}
