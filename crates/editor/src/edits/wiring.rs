//! Circuits and junction boxes, as steps to take.

use crate::action::Action;
use crate::{Document, Selection, text};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{
    BoxId, BoxStands, Circuit, CircuitId, Edit, JunctionBox, ModuleAt, Resolved, WiringChoices,
};
use chalkcourse_wiring::{free_input, plugging_order};
use std::sync::Arc;

/// The first name by a number from 1 that is not taken.
fn next_name(taken: &[&str], named: impl Fn(&str) -> String) -> String {
    let mut names = (1_u32..).map(|number| named(&number.to_string()));
    names.find(|name| !taken.contains(&name.as_str())).unwrap_or_default()
}

/// A circuit of those modules: to the job's first box, and to the first input that is free.
pub(crate) fn new_circuit(job: &Resolved, modules: Vec<ModuleAt>) -> Circuit {
    let taken: Vec<&str> = job.circuits.iter().map(|circuit| circuit.name.as_str()).collect();
    Circuit {
        id: CircuitId(job.next_id),
        name: next_name(&taken, str::to_owned),
        modules,
        to: job.boxes.first().map(|junction| junction.id),
        input: free_input(job),
    }
}

/// A junction box at a place in plan.
fn new_box(job: &Resolved, at: DVec2) -> JunctionBox {
    let taken: Vec<&str> = job.boxes.iter().map(|junction| junction.name.as_str()).collect();
    let name = next_name(&taken, text::box_name);
    JunctionBox {
        id: BoxId(job.next_id),
        name,
        at,
        stands: BoxStands::OnRoof,
        legs: Vec::new(),
        others: Vec::new(),
    }
}

/// The circuit that a module is in.
pub(crate) fn circuit_of(job: &Resolved, module: ModuleAt) -> Option<&Circuit> {
    job.circuits.iter().find(|circuit| circuit.modules.contains(&module))
}

/// Where stringing by hand begins: a circuit goes on from the end that was pressed, any other module begins a new one.
pub(crate) fn begun_at(job: &Resolved, module: ModuleAt) -> Circuit {
    match circuit_of(job, module) {
        Some(circuit) if circuit.modules.last() == Some(&module) => circuit.clone(),
        Some(circuit) if circuit.modules.first() == Some(&module) => {
            let modules = circuit.modules.iter().rev().copied().collect();
            Circuit { modules, ..circuit.clone() }
        }
        _ => new_circuit(job, vec![module]),
    }
}

/// A circuit with one module more at its end; going back over the last takes that off again.
pub(crate) fn gone_on(circuit: &mut Circuit, module: ModuleAt) {
    let count = circuit.modules.len();
    if count >= 2 && circuit.modules.get(count - 2) == Some(&module) {
        circuit.modules.pop();
    } else if !circuit.modules.contains(&module) {
        circuit.modules.push(module);
    }
}

/// The step that a press on a module means while a circuit is held or not: one more, or one less, or a new circuit.
pub(crate) fn pressed(job: &Resolved, held: Selection, module: ModuleAt) -> Action {
    let held = match held {
        Selection::Circuit(id) => job.circuit(id),
        _ => None,
    };
    let Some(held) = held else {
        // A module of a circuit takes hold of that.
        if let Some(circuit) = circuit_of(job, module) {
            return Action::Select(Selection::Circuit(circuit.id));
        }
        return put(new_circuit(job, vec![module]));
    };
    let mut circuit = held.clone();
    if circuit.modules.last() == Some(&module) {
        circuit.modules.pop();
        if circuit.modules.is_empty() {
            return removed(held);
        }
    } else {
        circuit.modules.retain(|other| *other != module);
        circuit.modules.push(module);
    }
    put(circuit)
}

/// The step that puts a circuit and holds it.
pub(crate) fn put(circuit: Circuit) -> Action {
    let (label, held) = (text::string_of(&circuit.name), Selection::Circuit(circuit.id));
    Action::EditAndSelect(label, Edit::PutCircuit(circuit), held)
}

/// The step that takes a circuit away.
pub(crate) fn removed(circuit: &Circuit) -> Action {
    let label = text::delete_of(text::circuit_heading(&circuit.name));
    Action::EditAndSelect(label, Edit::RemoveCircuit(circuit.id), Selection::Nothing)
}

/// The step that plugs a circuit the other way about.
pub(crate) fn reversed(circuit: &Circuit) -> Action {
    let modules = circuit.modules.iter().rev().copied().collect();
    put(Circuit { modules, ..circuit.clone() })
}

/// The step that plugs a circuit in its best order, or words on why there is none.
pub(crate) fn best_order(document: &Document, id: CircuitId) -> Option<Action> {
    let circuit = document.job().circuit(id)?;
    let found = plugging_order(document.job(), &document.plan().layout, circuit);
    Some(match found {
        Some((best, _)) if best.modules == circuit.modules => Action::Say(text::order_is_best(&circuit.name)),
        Some((best, _)) => put(best),
        None => Action::Say(text::no_order(&circuit.name)),
    })
}

/// The step that decides about the wires as a whole.
pub(crate) fn choose(choices: WiringChoices) -> Action {
    Action::Edit(text::CHANGE_WIRING.into(), Edit::SetWiring(Arc::new(choices)))
}

/// The step that places a box: circuits that lead to none yet lead there.
pub(crate) fn placed_box(job: &Resolved, at: DVec2) -> Action {
    let junction = new_box(job, at);
    let (label, held) = (text::place_of(&junction.name), Selection::JunctionBox(junction.id));
    let loose = job.circuits.iter().filter(|circuit| circuit.to.is_none()).cloned();
    let led = loose.map(|circuit| Edit::PutCircuit(Circuit { to: Some(junction.id), ..circuit }));
    let edits = led.collect::<Vec<_>>();
    let edits = std::iter::once(Edit::PutBox(junction)).chain(edits).collect();
    Action::EditAndSelect(label, Edit::Several(edits), held)
}

/// The step that puts a junction box.
pub(crate) fn change_box(junction: JunctionBox) -> Action {
    Action::Edit(text::change_of(&junction.name), Edit::PutBox(junction))
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_job::{BlockId, Cell};

    fn module(column: u32) -> ModuleAt {
        ModuleAt { block: BlockId(1), cell: Cell { row: 0, column } }
    }

    fn columns(circuit: &Circuit) -> Vec<u32> {
        circuit.modules.iter().map(|module| module.cell.column).collect()
    }

    #[test]
    fn going_on_and_back() {
        let job = crate::sample::alder_court().unwrap();
        let mut circuit = new_circuit(&job, vec![module(0)]);
        for (next, expected) in [
            (1, vec![0, 1]),
            (2, vec![0, 1, 2]),
            (1, vec![0, 1]),
            (1, vec![0, 1]),
            (0, vec![0]),
            (0, vec![0]),
        ] {
            gone_on(&mut circuit, module(next));
            assert_eq!(columns(&circuit), expected);
        }
    }

    #[test]
    fn a_press_adds_takes_off_and_takes_hold() {
        let mut job = crate::sample::alder_court().unwrap();
        job.circuits.clear();
        let Action::EditAndSelect(_, Edit::PutCircuit(one), held) =
            pressed(&job, Selection::Nothing, module(3))
        else {
            panic!()
        };
        assert_eq!((columns(&one), one.name.as_str()), (vec![3], "1"));
        job.circuits.push(one);
        let Action::EditAndSelect(_, Edit::PutCircuit(two), _) = pressed(&job, held, module(4)) else {
            panic!()
        };
        assert_eq!(columns(&two), [3, 4]);
        job.circuits[0] = two;
        assert!(matches!(pressed(&job, Selection::Nothing, module(3)), Action::Select(it) if it == held));
        // One that is in it already comes last; the last is taken off.
        let Action::EditAndSelect(_, Edit::PutCircuit(turned), _) = pressed(&job, held, module(3)) else {
            panic!()
        };
        assert_eq!(columns(&turned), [4, 3]);
        let Action::EditAndSelect(_, Edit::PutCircuit(less), _) = pressed(&job, held, module(4)) else {
            panic!()
        };
        assert_eq!(columns(&less), [3]);
        job.circuits[0] = less;
        assert!(matches!(
            pressed(&job, held, module(3)),
            Action::EditAndSelect(_, Edit::RemoveCircuit(_), Selection::Nothing)
        ));
        assert_eq!(new_circuit(&job, vec![module(5)]).name, "2");
    }

    #[test]
    fn it_goes_on_from_either_end() {
        let mut job = crate::sample::alder_court().unwrap();
        job.circuits = vec![new_circuit(&job, vec![module(0), module(1), module(2)])];
        assert_eq!(columns(&begun_at(&job, module(2))), [0, 1, 2]);
        assert_eq!(columns(&begun_at(&job, module(0))), [2, 1, 0]);
        assert_eq!(columns(&begun_at(&job, module(1))), [1]);
    }
}
