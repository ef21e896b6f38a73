//! A circuit that is held: what a person decides of it, and what follows.

use super::{heading, quiet};
use crate::action::{Action, Actions};
use crate::edits::wiring::{best_order, put, removed, reversed};
use crate::widgets::fields;
use crate::{Document, text};
use chalkcourse_job::{BoxId, Circuit, CircuitId, Edit, InverterInput, Reading, Resolved};
use chalkcourse_words::Say;
use egui::{Button, Ui};

/// Standard test conditions, where nobody said how warm the modules were (IEC 61215; from memory).
const STANDARD_CELSIUS: f64 = 25.0;

pub(super) fn circuit_form(ui: &mut Ui, document: &Document, id: CircuitId, actions: &mut Actions) {
    let job = document.job();
    let Some(circuit) = job.circuit(id) else { return };
    heading(ui, &text::circuit_heading(&circuit.name).now());
    if let Some(name) = fields::name(ui, text::NAME.now(), &circuit.name) {
        actions.push(put(Circuit { name, ..circuit.clone() }));
    }
    box_choice(ui, job, circuit, actions);
    input_choice(ui, job, circuit, actions);
    if let Some(wired) = document.plan().wires.circuit(id) {
        ui.add_space(6.0);
        ui.label(text::circuit_live(wired, document.plan().wires.window.as_ref()));
        for line in text::circuit_volts(wired) {
            quiet(ui, &line);
        }
        if let Some(home) = wired.home {
            let ways = text::ways_home(job, home.first, home.last);
            quiet(ui, &format!("{}: {}", text::WAY_HOME, ways.as_deref().unwrap_or(text::WAY_UNKNOWN.now())));
        }
    }
    ui.add_space(6.0);
    ui.horizontal_wrapped(|ui| {
        if ui.button(text::BEST_ORDER.now()).on_hover_text(text::BEST_ORDER_HELP.now()).clicked() {
            actions.extend(best_order(document, id));
        }
        if ui.button(text::TURN_ABOUT.now()).on_hover_text(text::TURN_ABOUT_HELP.now()).clicked() {
            actions.push(reversed(circuit));
        }
        if ui.add(Button::new(text::DELETE_CIRCUIT.now())).clicked() {
            actions.push(removed(circuit));
        }
    });
    ui.add_space(6.0);
    reading(ui, job, circuit, actions);
    ui.add_space(6.0);
    quiet(ui, text::PLANNING_AID_OF_WIRES.now());
}

/// What an electrician read of it.
fn reading(ui: &mut Ui, job: &Resolved, circuit: &Circuit, actions: &mut Actions) {
    ui.strong(text::READING.now()).on_hover_text(text::READING_HELP.now());
    let known = job.readings.iter().find(|reading| reading.circuit == circuit.id);
    let now = known.copied().unwrap_or(Reading {
        circuit: circuit.id,
        celsius: STANDARD_CELSIUS,
        open_volts: None,
        polarity_right: None,
        insulation_megohms: None,
        test_volts: None,
    });
    let mut put = |next: Reading| {
        actions.push(Action::Edit(text::reading_of(&circuit.name), Edit::PutReading(next)));
    };
    let celsius = known.map(|reading| reading.celsius);
    let shown = text::temperature(celsius, job.units);
    let help = text::READING_CELSIUS_HELP.now();
    let typed = fields::parsed(ui, text::READING_CELSIUS.now(), &shown, help, |text| {
        text::parse_temperature(text, job.units)
    });
    if let Some(Some(celsius)) = typed {
        put(Reading { celsius, ..now });
    }
    let number = |ui: &mut Ui, label: Say, value: Option<f64>, help: &str| {
        let shown = text::number_or_none(value);
        fields::parsed(ui, label.now(), &shown, help, text::parse_number)
    };
    if let Some(open_volts) = number(ui, text::READING_VOLTS, now.open_volts, "") {
        put(Reading { open_volts, ..now });
    }
    let polarities = text::POLARITIES.map(|(polarity, words)| (polarity, words.now()));
    if let Some(polarity_right) =
        fields::choice(ui, text::READING_POLARITY.now(), now.polarity_right, &polarities)
    {
        put(Reading { polarity_right, ..now });
    }
    if let Some(insulation_megohms) = number(ui, text::READING_INSULATION, now.insulation_megohms, "") {
        put(Reading { insulation_megohms, ..now });
    }
    let help = text::READING_TEST_HELP.now();
    if let Some(test_volts) = number(ui, text::READING_TEST, now.test_volts, help) {
        put(Reading { test_volts, ..now });
    }
    if known.is_some() && ui.button(text::REMOVE_READING.now()).clicked() {
        let label = text::reading_of(&circuit.name);
        actions.push(Action::Edit(label, Edit::RemoveReading(circuit.id)));
    }
}

fn box_choice(ui: &mut Ui, job: &Resolved, circuit: &Circuit, actions: &mut Actions) {
    let boxes = job.boxes.iter().map(|junction| (Some(junction.id), junction.name.as_str()));
    let choices: Vec<(Option<BoxId>, &str)> =
        std::iter::once((None, text::NO_BOX.now())).chain(boxes).collect();
    if let Some(to) = fields::choice(ui, text::JUNCTION_BOX.now(), circuit.to, &choices) {
        actions.push(put(Circuit { to, ..circuit.clone() }));
    }
}

/// The inputs of the job's inverters, with their names.
fn inputs(job: &Resolved) -> Vec<(InverterInput, String)> {
    let wiring = job.kit.wiring.as_ref();
    let chosen = (0_u32..).zip(&job.wiring.inverters);
    let known = chosen.filter_map(|(at, number)| Some((at, wiring?.inverter(number)?)));
    known
        .flat_map(|(at, inverter)| {
            (0..inverter.inputs.min(24)).map(move |input| {
                (InverterInput { inverter: at, input }, text::input_of(&inverter.name, input))
            })
        })
        .collect()
}

fn input_choice(ui: &mut Ui, job: &Resolved, circuit: &Circuit, actions: &mut Actions) {
    let inputs = inputs(job);
    if inputs.is_empty() {
        return;
    }
    let named = inputs.iter().map(|(input, name)| (Some(*input), name.as_str()));
    let choices: Vec<(Option<InverterInput>, &str)> =
        std::iter::once((None, text::NO_INPUT.now())).chain(named).collect();
    if let Some(input) = fields::choice(ui, text::INPUT.now(), circuit.input, &choices) {
        actions.push(put(Circuit { input, ..circuit.clone() }));
    }
}
