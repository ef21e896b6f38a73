use super::*;
use crate::testing::{bare, circuit, gable, junction, kit};
use chalkcourse_geometry::Length;
use chalkcourse_job::{BoxId, Circuit, CircuitId, InverterInput, Kit};
use chalkcourse_layout::Layout;
use std::sync::Arc;

/// Six modules of a kit in one circuit, led to a box with a roof raceway 10 mm up, an attic and a wall.
fn job(kit: Kit) -> Resolved {
    let mut job = gable();
    job.kit = Arc::new(kit);
    let mut down = junction(9, 6.0, 5.0);
    let leg = |metres: f64, lies| Leg { length: Length::from_metres(metres), lies };
    down.legs = vec![
        leg(3.0, LiesIn::RoofRaceway(Length::from_mm(10.0))),
        leg(4.0, LiesIn::Attic),
        leg(5.0, LiesIn::Wall),
    ];
    job.boxes = vec![down];
    let mut one = circuit(20, &[(0, 0), (0, 1), (0, 2), (1, 2), (1, 1), (1, 0)]);
    (one.to, one.input) = (Some(BoxId(9)), Some(InverterInput { inverter: 0, input: 0 }));
    job.circuits = vec![one];
    Arc::make_mut(&mut job.wiring).attic_celsius = Some(55.0);
    job
}

fn wires(job: &Resolved) -> Wires {
    Wires::of(job, &Layout::of(job))
}

/// Leads and home run lie at 77 °C in free air: 55 × 0.41 = 22.55 A of 10 AWG. On the roof 34 + 33 = 67 °C: 40 × 0.58 = 23.2 A; in the
/// attic at 55 °C 30.4 A; on the wall at 34 °C 38.4 A. With a second string four together: × 0.8. By hand.
#[test]
fn stretches_of_a_string() {
    let mut job = job(bare());
    let carried = |job: &Resolved| -> Vec<f64> {
        let wires = wires(job);
        let found = stretches(job, &wires, &wires.circuits[0]);
        assert_eq!(
            found.iter().map(|stretch| stretch.part).collect::<Vec<_>>(),
            [Part::Leads, Part::HomeRun, Part::Leg(0), Part::Leg(1), Part::Leg(2)]
        );
        found.iter().map(|stretch| stretch.run.carried(stretch.gauge)).collect()
    };
    let near = |found: Vec<f64>, expected: [f64; 5]| {
        assert!(found.iter().zip(expected).all(|(a, b)| (a - b).abs() < 1e-9), "{found:?}, not {expected:?}");
    };
    near(carried(&job), [22.55, 22.55, 23.2, 30.4, 38.4]);
    let modules = job.circuits[0].modules.split_off(3);
    let second = Circuit { id: CircuitId(21), modules, ..job.circuits[0].clone() };
    job.circuits.push(second);
    near(carried(&job), [22.55, 22.55, 18.56, 24.32, 30.72]);
    // XHHW-2 on a roof is excepted in 2017: 34 °C; not in 2020.
    Arc::make_mut(&mut job.kit).wiring.as_mut().unwrap().run_down.as_mut().unwrap().insulation =
        Insulation::Xhhw2;
    near(carried(&job), [22.55, 22.55, 30.72, 24.32, 30.72]);
    Arc::make_mut(&mut job.wiring).edition = CodeEdition::Nec2020;
    near(carried(&job), [22.55, 22.55, 18.56, 24.32, 30.72]);
}

/// Until a temperature is said, what depends on it is not there.
#[test]
fn what_is_not_stated_is_left_out() {
    let mut job = job(bare());
    let choices = Arc::make_mut(&mut job.wiring);
    (choices.attic_celsius, choices.hottest_cell_celsius) = (None, None);
    let wires = wires(&job);
    let parts: Vec<Part> =
        stretches(&job, &wires, &wires.circuits[0]).iter().map(|stretch| stretch.part).collect();
    assert_eq!(parts, [Part::Leg(0), Part::Leg(2)]);
}

/// Three strings on one input: two others send 34.75 A, more than a series fuse of 25 A; two strings, 17.375 A, need none. A fuse is at
/// least 1.25 × 17.375 = 21.7 A. A branch has its breaker.
#[test]
fn what_protects() {
    let mut job = job(bare());
    let of = |job: &Resolved| {
        let wires = wires(job);
        protection(job, &wires, &wires.circuits[0]).unwrap()
    };
    assert_eq!((of(&job).needed, of(&job).others_amps, of(&job).device), (false, 0.0, None));
    let mut add = |id: u32| {
        let at = job.circuits[0].modules.len() - 1;
        let modules = job.circuits[0].modules.split_off(at);
        let next = Circuit { id: CircuitId(id), modules, ..job.circuits[0].clone() };
        job.circuits.push(next);
        of(&job)
    };
    assert!(!add(21).needed);
    let three = add(22);
    assert!(three.needed && (three.others_amps - 34.75).abs() < 1e-9 && three.most == Some(25.0));
    assert!((three.least - 21.71875).abs() < 1e-9);
    Arc::make_mut(&mut job.kit).wiring.as_mut().unwrap().inverters[0].string_fuse_amps = Some(25.0);
    assert_eq!(of(&job).device, Some(25));
    let mut branch = job.clone();
    branch.kit = Arc::new(kit(1));
    let protected = of(&branch);
    assert_eq!((protected.device, protected.needed, protected.most), (Some(20), true, None));
}

/// 21.7 A would be 25 A: 10 AWG; a branch of 20 A: 12 AWG.
#[test]
fn what_grounds() {
    let of = |job: &Resolved| grounding(job, &wires(job).circuits[0]);
    assert_eq!(of(&job(bare())), Some((25, Gauge::Awg10)));
    assert_eq!(of(&job(kit(1))), Some((20, Gauge::Awg12)));
}

/// A string of six at 12.98 A in 10 AWG, 1.24 Ω a thousand feet: five links of 2 m, home 6 − 3.861 + 5 √1.25 − 1.8505 m from the first
/// and 1.137 m less from the last, in the row above; 2 × 12 m down. Of 6 × 31.2 V.
#[test]
fn what_a_string_loses() {
    let job = job(bare());
    let lost = voltage_drop(&job, &wires(&job).circuits[0]).unwrap();
    let first = 6.0 - 3.861 + 5.0 * 1.25_f64.sqrt() - 1.8505;
    let metres = 10.0 + first + (first - 1.137) + 24.0;
    let volts = metres / 304.8 * 1.24 * 12.98;
    assert!((lost.volts - volts).abs() < 1e-9 && lost.whole, "{lost:?}, not {volts}");
    assert!((lost.of - 187.2).abs() < 1e-9);
}

/// A branch: 1.21 A in the first link, then 2.42 … 6.05 A; all 7.26 A home and down, in both conductors.
#[test]
fn what_a_branch_loses() {
    let mut job = job(kit(1));
    let lost = voltage_drop(&job, &wires(&job).circuits[0]).unwrap();
    let home = 6.0 - 3.861 + 5.0 * 1.25_f64.sqrt() - 1.8505 - 1.137;
    let amp_metres = 2.0 * 1.21 * (1.0 + 2.0 + 3.0 + 4.0 + 5.0) + 7.26 * (home + 12.0);
    let volts = 2.0 * amp_metres / 304.8 * 1.24;
    assert!((lost.volts - volts).abs() < 1e-9, "{lost:?}, not {volts}");
    job.circuits[0].to = None;
    let lost = voltage_drop(&job, &wires(&job).circuits[0]).unwrap();
    assert!(!lost.whole && (lost.volts - 2.0 * 36.3 / 304.8 * 1.24).abs() < 1e-9, "{lost:?}");
}
