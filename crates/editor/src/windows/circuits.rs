//! The circuits of the job: what is decided about the wires as a whole, what automatic stringing proves, and each circuit in numbers.

use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::edits::wiring::choose;
use crate::state::{State, Tool};
use crate::widgets::{LittleButton, fields, quiet};
use crate::{Document, Selection, text, theme};
use chalkcourse_job::{CodeEdition, Connection, Inverter, Resolved, Service, WiringChoices};
use chalkcourse_plan::{claim_words, held_words};
use chalkcourse_wiring::Wired;
use chalkcourse_words::Say;
use egui::{Button, Grid, RichText, ScrollArea, Ui};

/// Width of the words left of a field.
const LABEL: f32 = 150.0;

/// Shows the pane.
pub(super) fn circuits_pane(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        let job = document.job();
        quiet(ui, text::PLANNING_AID_OF_WIRES.now());
        if job.kit.wiring.is_none() {
            ui.label(text::sentence(text::KIT_WITHOUT_WIRING.now()));
            return;
        }
        ui.add_space(theme::GAP);
        decided(ui, job, actions);
        ui.separator();
        asked(ui, document, state, actions);
        ui.separator();
        if job.circuits.is_empty() {
            ui.label(text::NO_CIRCUITS_YET.now());
        } else {
            table(ui, document, state, actions);
        }
        ui.separator();
        boxes(ui, job, state, actions);
    });
}

/// What a person decides about the wires as a whole.
fn decided(ui: &mut Ui, job: &Resolved, actions: &mut Actions) {
    let choices = WiringChoices::clone(&job.wiring);
    inverters(ui, job, &choices, actions);
    for (label, help, value, put) in [
        (
            text::LOWEST_AIR,
            text::LOWEST_AIR_HELP,
            choices.lowest_celsius,
            (|choices, value| choices.lowest_celsius = value) as fn(&mut WiringChoices, Option<f64>),
        ),
        (text::HIGHEST_AIR, text::HIGHEST_AIR_HELP, choices.highest_celsius, |choices, value| {
            choices.highest_celsius = value;
        }),
        (text::HOTTEST_CELL, text::HOTTEST_CELL_HELP, choices.hottest_cell_celsius, |choices, value| {
            choices.hottest_cell_celsius = value;
        }),
        (text::ATTIC_AIR, text::ATTIC_AIR_HELP, choices.attic_celsius, |choices, value| {
            choices.attic_celsius = value;
        }),
    ] {
        let shown = text::temperature(value, job.units);
        let typed = fields::parsed_at(ui, LABEL, label.now(), &shown, help.now(), |text| {
            text::parse_temperature(text, job.units)
        });
        if let Some(typed) = typed {
            let mut next = choices.clone();
            put(&mut next, typed);
            actions.push(choose(next));
        }
    }
    service(ui, &choices, actions);
    let years = CodeEdition::ALL.map(|edition| (edition, edition.year().to_string()));
    let editions: Vec<(CodeEdition, &str)> =
        years.iter().map(|(edition, year)| (*edition, year.as_str())).collect();
    if let Some(edition) = fields::choice_at(ui, LABEL, text::EDITION.now(), choices.edition, &editions) {
        actions.push(choose(WiringChoices { edition, ..choices.clone() }));
    }
    let mut by_table = choices.voltage_by_table;
    if ui.checkbox(&mut by_table, text::BY_TABLE.now()).on_hover_text(text::BY_TABLE_HELP.now()).changed() {
        actions.push(choose(WiringChoices { voltage_by_table: by_table, ..choices.clone() }));
    }
}

/// The panel that the output is connected to.
fn service(ui: &mut Ui, choices: &WiringChoices, actions: &mut Actions) {
    let mut put = |service| actions.push(choose(WiringChoices { service, ..choices.clone() }));
    let amps = |ui: &mut Ui, label: Say, value: Option<f64>, help: Say| {
        let shown = text::number_or_none(value);
        fields::parsed_at(ui, LABEL, label.now(), &shown, help.now(), text::parse_number)
    };
    ui.add_space(theme::GAP);
    ui.strong(text::SERVICE.now());
    let now = choices.service;
    if let Some(typed) = amps(ui, text::BUS, now.map(|it| it.bus_amps), text::BUS_HELP) {
        // Until somebody looks, the main is taken for as large as the bus.
        let fresh = |bus_amps| Service {
            bus_amps,
            main_breaker_amps: bus_amps,
            other_breakers_amps: None,
            connection: Connection::OppositeEnds,
        };
        put(typed.map(|bus_amps| now.map_or_else(|| fresh(bus_amps), |it| Service { bus_amps, ..it })));
    }
    let Some(now) = now else { return };
    let main = amps(ui, text::MAIN_BREAKER, Some(now.main_breaker_amps), text::BUS_HELP);
    if let Some(Some(main_breaker_amps)) = main {
        put(Some(Service { main_breaker_amps, ..now }));
    }
    let others = amps(ui, text::OTHER_BREAKERS, now.other_breakers_amps, text::OTHER_BREAKERS_HELP);
    if let Some(other_breakers_amps) = others {
        put(Some(Service { other_breakers_amps, ..now }));
    }
    let ways = Connection::ALL.map(|way| (way, chalkcourse_telling::connected(way)));
    if let Some(connection) = fields::choice_at(ui, LABEL, text::CONNECTION.now(), now.connection, &ways) {
        put(Some(Service { connection, ..now }));
    }
    ui.add_space(theme::GAP);
}

/// The inverters that the job has, each of those that the kit goes with.
fn inverters(ui: &mut Ui, job: &Resolved, choices: &WiringChoices, actions: &mut Actions) {
    let known: &[Inverter] = job.kit.wiring.as_ref().map_or(&[], |wiring| &wiring.inverters);
    if known.is_empty() {
        return;
    }
    let named = |number: &str| known.iter().position(|inverter| inverter.number == number);
    let mut put =
        |inverters: Vec<String>| actions.push(choose(WiringChoices { inverters, ..choices.clone() }));
    let list: Vec<(Option<usize>, &str)> =
        known.iter().enumerate().map(|(at, inverter)| (Some(at), inverter.name.as_str())).collect();
    if choices.inverters.is_empty() {
        let none: Vec<(Option<usize>, &str)> =
            std::iter::once((None, text::NO_INVERTER.now())).chain(list.iter().copied()).collect();
        if let Some(Some(at)) = fields::choice_at(ui, LABEL, text::INVERTER.now(), None, &none) {
            put(known.get(at).map(|inverter| inverter.number.clone()).into_iter().collect());
        }
        return;
    }
    for (index, number) in choices.inverters.iter().enumerate() {
        ui.push_id(("inverter", index), |ui| {
            let label = if index == 0 { text::INVERTER.now().to_owned() } else { (index + 1).to_string() };
            if let Some(Some(at)) = fields::choice_at(ui, LABEL, &label, named(number), &list) {
                let mut next = choices.inverters.clone();
                if let (Some(own), Some(inverter)) = (next.get_mut(index), known.get(at)) {
                    own.clone_from(&inverter.number);
                }
                put(next);
            }
            let last = index + 1 == choices.inverters.len();
            ui.horizontal(|ui| {
                ui.add_space(LABEL + ui.spacing().item_spacing.x);
                if last && ui.little_button(text::ANOTHER_INVERTER.now()).clicked() {
                    put(choices.inverters.iter().cloned().chain([number.clone()]).collect());
                }
                if ui.little_button(text::REMOVE_INVERTER.now()).clicked() {
                    let mut next = choices.inverters.clone();
                    next.remove(index);
                    put(next);
                }
            });
        });
    }
}

/// What can be asked for, and what was proved.
fn asked(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    let (job, wires) = (document.job(), &document.plan().wires);
    if !wires.unknown.is_empty() {
        ui.label(
            RichText::new(text::sentence(&chalkcourse_plan::unknown_wires(&wires.unknown)))
                .color(theme::of(ui).caution),
        );
    }
    if let Some(window) = &wires.window {
        ui.label(chalkcourse_plan::window_words(window));
    }
    ui.horizontal_wrapped(|ui| {
        for command in [Command::StringAutomatically, Command::StringModules, Command::PlaceBox] {
            let chosen = match command {
                Command::StringModules => state.tool == Tool::Circuit,
                Command::PlaceBox => state.tool == Tool::JunctionBox,
                _ => false,
            };
            let button = Button::new(command.title()).selected(chosen);
            let enabled = command.can(document, state);
            if ui.add_enabled(enabled, button).on_hover_text(command.tip(ui.ctx())).clicked() {
                actions.push(command.action());
            }
        }
    });
    if state.stringing.running().is_some() {
        ui.horizontal(|ui| {
            ui.spinner();
            ui.label(text::STRINGING.now());
            if ui
                .little_button(text::STOP_STRINGING.now())
                .on_hover_text(text::STOP_STRINGING_HELP.now())
                .clicked()
            {
                actions.push(Action::StopStringing);
            }
        });
    }
    if !state.stringing.said.is_empty() {
        ui.label(RichText::new(&state.stringing.said).color(theme::of(ui).caution));
    }
    if !state.stringing.proved().is_empty() {
        ui.strong(text::STRUNG_AS.now());
    }
    for group in state.stringing.proved() {
        ui.label(claim_words(job, group));
    }
    for held in state.stringing.held() {
        quiet(ui, &held_words(job, held));
    }
    for left in state.stringing.left() {
        let words = chalkcourse_words::wires::left(left.modules.len(), &left.least, &left.most);
        ui.label(RichText::new(words).color(theme::of(ui).caution));
    }
}

/// Each circuit in numbers. A press holds it.
fn table(ui: &mut Ui, document: &Document, state: &State, actions: &mut Actions) {
    let job = document.job();
    ScrollArea::horizontal().id_salt("circuits").show(ui, |ui| {
        Grid::new("circuits").striped(true).spacing([9.0, 4.0]).show(ui, |ui| {
            for title in text::CIRCUIT_COLUMNS {
                ui.label(RichText::new(title.now()).small().color(theme::of(ui).quiet))
                    .on_hover_text(text::CIRCUIT_COLUMNS_HELP.now());
            }
            ui.end_row();
            for circuit in &document.plan().wires.circuits {
                let held = state.selection == Selection::Circuit(circuit.id);
                if ui.add(Button::selectable(held, &circuit.name).min_size(egui::vec2(40.0, 0.0))).clicked() {
                    actions.push(Action::Select(Selection::Circuit(circuit.id)));
                }
                for words in cells(job, circuit) {
                    ui.label(words);
                }
                ui.end_row();
            }
        });
    });
    let loose = document.plan().wires.loose.len();
    if loose > 0 {
        ui.label(RichText::new(chalkcourse_words::wires::loose(loose)).color(theme::of(ui).caution));
    }
}

fn cells(job: &Resolved, circuit: &Wired) -> [String; 8] {
    let leads: usize = circuit.links.iter().filter_map(|link| link.leads.as_ref()).map(Vec::len).sum();
    let junction =
        circuit.home.and_then(|home| job.junction_box(home.to)).map(|junction| junction.name.clone());
    let input = circuit.input.map(|input| {
        let number = job.wiring.inverters.get(input.inverter as usize);
        let inverter = number.and_then(|number| job.kit.wiring.as_ref()?.inverter(number));
        match job.wiring.inverters.len() {
            1 => text::input_short(input.input),
            _ => text::input_of(inverter.map_or("?", |inverter| inverter.name.as_str()), input.input),
        }
    });
    let to: Vec<String> = junction.into_iter().chain(input).collect();
    [
        circuit.devices.len().to_string(),
        format!("{:.2}", circuit.watts / 1000.0),
        text::volts(circuit.volts.highest),
        text::volts(Some(circuit.volts.shown)),
        text::volts(circuit.volts.lowest),
        format!("{:.1}", circuit.currents.most),
        leads.to_string(),
        if to.is_empty() { "–".to_owned() } else { to.join(" · ") },
    ]
}

/// The junction boxes of the job.
fn boxes(ui: &mut Ui, job: &Resolved, state: &State, actions: &mut Actions) {
    if job.boxes.is_empty() {
        ui.label(text::NO_BOXES.now());
        return;
    }
    ui.strong(text::BOXES.now());
    ui.horizontal_wrapped(|ui| {
        for junction in &job.boxes {
            let held = state.selection == Selection::JunctionBox(junction.id);
            if ui.add(Button::new(&junction.name).selected(held)).clicked() {
                actions.push(Action::Select(Selection::JunctionBox(junction.id)));
            }
        }
    });
}
