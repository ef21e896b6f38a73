//! Small jobs for the tests.

use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon};
use chalkcourse_job::{
    Block, BlockId, BoxId, BoxStands, Cell, Circuit, CircuitId, Face, FaceId, JunctionBox, Kit, ModuleAt,
    ModuleDevice, Resolved, builtin_kits, builtin_prices, builtin_rule_book,
};
use std::sync::Arc;

/// The kit that ships with dc devices (0) or with ac devices (1).
pub(crate) fn kit(index: usize) -> Kit {
    (*builtin_kits()[index]).clone()
}

/// The first kit without devices, on an inverter that works from 120 V to 600 V.
pub(crate) fn bare() -> Kit {
    let mut kit = kit(0);
    let wiring = kit.wiring.as_mut().unwrap();
    wiring.device = ModuleDevice::None;
    let inverter = &mut wiring.inverters[0];
    (inverter.most_volts, inverter.least_volts, inverter.string_volts) = (600.0, 120.0, None);
    kit
}

fn face(id: u32, corners: &[(f64, f64)], downslope: f64) -> Face {
    Face::new(
        FaceId(id),
        id.to_string(),
        Polygon::new(corners.iter().map(|&c| c.into()).collect()),
        Pitch::from_rise_in_12(6.0).unwrap(),
        Azimuth::from_degrees(downslope),
        Length::from_metres(3.0),
    )
}

pub(crate) fn block(id: u32, face: u32, at: (f64, f64), rows: u32, columns: u32) -> Block {
    Block {
        id: BlockId(id),
        name: id.to_string(),
        face: FaceId(face),
        at: at.into(),
        rows,
        columns,
        orientation: Default::default(),
        reveal: Length::from_mm(3.0),
        shifts: Vec::new(),
        off: Default::default(),
        locked: false,
    }
}

pub(crate) fn junction(id: u32, x: f64, y: f64) -> JunctionBox {
    JunctionBox {
        id: BoxId(id),
        name: id.to_string(),
        at: (x, y).into(),
        stands: BoxStands::OnRoof,
        legs: Vec::new(),
        others: Vec::new(),
    }
}

/// A gable 12 × 12 m at 6:12 with a block of 2 rows of 3 on its south face, an inverter, −22 °C and cells of 77 °C.
pub(crate) fn gable() -> Resolved {
    let mut job = Resolved::new("Gable".into(), Arc::new(kit(0)), builtin_rule_book(), builtin_prices());
    job.faces = vec![
        face(1, &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 180.0),
        face(2, &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 0.0),
    ];
    job.blocks = vec![block(3, 1, (3.0, 1.0), 2, 3)];
    let choices = Arc::make_mut(&mut job.wiring);
    choices.inverters = vec!["FH-181".into()];
    choices.lowest_celsius = Some(-22.0);
    choices.highest_celsius = Some(34.0);
    choices.hottest_cell_celsius = Some(77.0);
    job.next_id = 50;
    job
}

pub(crate) fn module(block: u32, row: u32, column: u32) -> ModuleAt {
    ModuleAt { block: BlockId(block), cell: Cell { row, column } }
}

pub(crate) fn circuit(id: u32, modules: &[(u32, u32)]) -> Circuit {
    Circuit {
        id: CircuitId(id),
        name: id.to_string(),
        modules: modules.iter().map(|(row, column)| module(3, *row, *column)).collect(),
        to: None,
        input: None,
    }
}
