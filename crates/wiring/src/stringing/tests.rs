use super::*;
use crate::testing::{bare, block, circuit, gable, junction, kit, module};
use chalkcourse_job::{Cell, apply};
use std::sync::Arc;

fn strung(job: &Resolved) -> Stringing {
    string_up(job, &Layout::of(job), None, Effort::WHOLE).unwrap()
}

/// Two rows of 7 and a box above: one string of 14, the window's most, and no extension lead.
#[test]
fn one_string_of_fourteen() {
    let mut job = gable();
    job.blocks = vec![block(3, 1, (-0.0, 1.0), 2, 6), block(4, 1, (10.4, 1.0), 2, 1)];
    job.boxes = vec![junction(9, 6.0, 5.0)];
    let made = strung(&job);
    assert_eq!(made.circuits.len(), 1);
    assert_eq!((made.left.len(), made.groups[0].fewest_circuits, made.groups[0].leads), (0, true, 0));
    assert!((made.groups[0].way - made.groups[0].least_way).abs() < 1e-9, "{:?}", made.groups);
    let circuit = &made.circuits[0];
    assert_eq!(
        (circuit.id, circuit.to, circuit.input),
        (CircuitId(50), Some(BoxId(9)), Some(InverterInput { inverter: 0, input: 0 }))
    );
    let mut all: Vec<ModuleAt> = circuit.modules.clone();
    all.sort();
    all.dedup();
    assert_eq!(all.len(), 14);
}

/// Six modules are too few for a string of eight devices, and told.
#[test]
fn too_few_for_a_string() {
    let made = strung(&gable());
    assert_eq!((made.circuits.len(), made.groups.len()), (0, 0));
    assert_eq!((made.left[0].modules.len(), made.left[0].least, made.left[0].most), (6, 8, 14));
}

/// Bare modules on two slopes make two strings, dc devices one over the ridge.
#[test]
fn faces_are_mixed_only_where_the_kit_lets_them() {
    let mut job = gable();
    job.blocks = vec![block(3, 1, (3.0, 4.0), 2, 3), block(4, 2, (-9.0, 4.0), 2, 3)];
    let devices = strung(&job);
    assert_eq!((devices.circuits.len(), devices.left.len()), (1, 0));
    job.kit = Arc::new(bare());
    let strings = strung(&job);
    assert_eq!((strings.circuits.len(), strings.groups.len()), (2, 2));
    for circuit in &strings.circuits {
        let block = circuit.modules[0].block;
        assert!(circuit.modules.iter().all(|module| module.block == block), "{circuit:?}");
    }
    assert_eq!(strings.circuits[1].input, Some(InverterInput { inverter: 0, input: 1 }));
}

/// A branch of ac devices is led home from its last module alone: from the one nearest to the box.
#[test]
fn a_branch_ends_beside_its_box() {
    let mut job = gable();
    job.kit = Arc::new(kit(1));
    job.boxes = vec![junction(9, 3.9, 1.8)];
    let made = strung(&job);
    assert_eq!(made.circuits.len(), 1);
    assert_eq!(made.circuits[0].modules.last().unwrap().cell, Cell { row: 0, column: 0 });
    assert_eq!(made.circuits[0].input, None);
    assert_eq!(made.groups[0].leads, 0);
}

/// Row by row back and forth is the best order of 2 × 3, whatever order a person clicked in; what is gone stays at the end.
#[test]
fn plugged_in_the_best_order() {
    let job = gable();
    let layout = Layout::of(&job);
    let clicked = circuit(20, &[(0, 0), (1, 2), (0, 2), (1, 0), (0, 1), (1, 1), (7, 7)]);
    let (ordered, told) = plugging_order(&job, &layout, &clicked).unwrap();
    assert_eq!((told.leads, told.least_leads), (0, 0));
    // Five links: two rows of two at 1.725 m and one between rows at 1.137 m; or up and down, three and two.
    assert!((told.way - (3.0 * 1.137 + 2.0 * 1.725)).abs() < 1e-6, "{told:?}");
    assert_eq!(told.way, told.least_way);
    assert_eq!(ordered.modules.last(), Some(&module(3, 7, 7)));
    assert_eq!(ordered.modules.len(), 7);
}

/// Within a branch too the last module is the one beside the box; within a string both ends are led home.
#[test]
fn the_order_of_a_branch_ends_beside_its_box() {
    let mut job = gable();
    job.boxes = vec![junction(9, 3.9, 1.8)];
    let mut row = circuit(20, &[(0, 2), (0, 0), (0, 1)]);
    row.to = Some(BoxId(9));
    let layout = Layout::of(&job);
    let (_, string) = plugging_order(&job, &layout, &row).unwrap();
    job.kit = Arc::new(kit(1));
    let (branch, told) = plugging_order(&job, &layout, &row).unwrap();
    assert_eq!(branch.modules, [module(3, 0, 2), module(3, 0, 1), module(3, 0, 0)]);
    // From 3.861 m along to 3.9 m, and up or down to the box; the string's other end begins at 7.311 m.
    let up = told.way - 2.0 * 1.725 - 0.039;
    assert!((string.way - told.way - 3.411 - up).abs() < 1e-3, "{string:?} {told:?}");
}

/// The edit puts what was made in place of what was there, and each module is in one circuit.
#[test]
fn the_edit_takes_the_place_of_all_circuits() {
    let mut job = gable();
    job.blocks = vec![block(3, 1, (0.0, 0.5), 4, 6)];
    job.circuits = vec![circuit(20, &[(0, 0), (0, 1)])];
    let made = strung(&job);
    let after = apply(&job, &made.edit(&job)).unwrap();
    assert_eq!(after.circuits, made.circuits);
    assert_eq!(made.circuits.len(), 2);
    let mut all: Vec<ModuleAt> = after.circuits.iter().flat_map(|circuit| circuit.modules.clone()).collect();
    all.sort();
    all.dedup();
    assert_eq!(all.len(), 24);
    assert!(after.next_id > made.circuits[1].id.0);
}
