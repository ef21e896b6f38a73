//! How full a junction box and its raceway are.

use crate::runs::{grounding, led_home_to};
use crate::tables::{box_cubic_inches, conductor_square_inches, fill_share, raceway_square_inches};
use crate::wires::Wires;
use chalkcourse_job::{BlockId, CodeEdition, Gauge, Insulation, JunctionBox, LiesIn, Resolved};
use std::collections::BTreeSet;

/// How full a box or a raceway is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fill {
    /// What is in it: cubic inches of a box, square inches of a raceway.
    pub taken: f64,
    /// What it holds of it.
    pub holds: f64,
    /// Conductors in it, those that ground among them.
    pub conductors: u32,
}

/// Conductors of each circuit into a box, and as many out of it.
const OF_A_CIRCUIT: u32 = 2;
/// Grounding conductors that count as one (NEC 314.16(B)(5), from memory: since 2020 each above four counts a quarter more).
const GROUNDS_AS_ONE: u32 = 4;

/// How full a box is (NEC 314.16(B), from memory): each conductor that ends in it once, each that passes once, all grounding conductors
/// together as one of the thickest. `None` where the kit does not say how much room it has or how thick conductors are, and for conductors
/// that the table does not have.
pub fn box_fill(job: &Resolved, wires: &Wires, junction: &JunctionBox) -> Option<Fill> {
    let wiring = job.kit.wiring.as_ref()?;
    let circuits = count(led_home_to(wires, junction.id).count());
    let mut within = vec![(wiring.home_run?.gauge, OF_A_CIRCUIT * circuits)];
    if !junction.legs.is_empty() {
        within.push((wiring.run_down?.gauge, OF_A_CIRCUIT * circuits));
    }
    within.extend(junction.others.iter().map(|others| (others.gauge, others.count)));
    let mut taken = 0.0;
    let mut conductors = 0;
    for (gauge, count) in within {
        taken += f64::from(count) * box_cubic_inches(gauge)?;
        conductors += count;
    }
    // A bare conductor comes from each block, and one goes on.
    let blocks: BTreeSet<BlockId> = led_home_to(wires, junction.id)
        .flat_map(|circuit| circuit.devices.iter().map(|device| device.at.block))
        .collect();
    let grounds = count(blocks.len()) + 1;
    let above = match job.wiring.edition {
        CodeEdition::Nec2017 => 0,
        CodeEdition::Nec2020 | CodeEdition::Nec2023 => grounds.saturating_sub(GROUNDS_AS_ONE),
    };
    taken += (1.0 + 0.25 * f64::from(above)) * box_cubic_inches(wiring.grounding?)?;
    Some(Fill { taken, holds: wiring.box_cubic_inches?, conductors: conductors + grounds })
}

/// How full the raceway of a box is (NEC chapter 9, from memory): both conductors of each circuit, those of others, and one that grounds,
/// as thick as the thickest that a circuit needs. `None` where the kit does not say what it is, and for conductors that the tables don't
/// have.
pub fn raceway_fill(job: &Resolved, wires: &Wires, junction: &JunctionBox) -> Option<Fill> {
    let wiring = job.kit.wiring.as_ref()?;
    let (choice, raceway) = (wiring.run_down?, wiring.raceway?);
    let circuits = count(led_home_to(wires, junction.id).count());
    let ground: Gauge = led_home_to(wires, junction.id)
        .filter_map(|circuit| grounding(job, circuit))
        .map(|(_, gauge)| gauge)
        .max()?;
    let own = (choice.gauge, choice.insulation, OF_A_CIRCUIT * circuits);
    let others = junction.others.iter().map(|others| (others.gauge, Insulation::Thwn2, others.count));
    let mut taken = 0.0;
    let mut conductors = 0;
    for (gauge, insulation, count) in others.chain([own, (ground, choice.insulation, 1)]) {
        taken += f64::from(count) * conductor_square_inches(gauge, insulation)?;
        conductors += count;
    }
    let holds = fill_share(conductors) * raceway_square_inches(raceway.kind, raceway.size);
    Some(Fill { taken, holds, conductors })
}

/// Whether any leg of a box lies in a raceway.
pub fn has_raceway(junction: &JunctionBox) -> bool {
    junction.legs.iter().any(|leg| !matches!(leg.lies, LiesIn::FreeAir))
}

fn count(of: usize) -> u32 {
    u32::try_from(of).unwrap_or(u32::MAX / 8)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{bare, circuit, gable, junction};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{BoxId, Current, Leg, OtherConductors, TradeSize};
    use chalkcourse_layout::Layout;
    use std::sync::Arc;

    /// Two strings of three to one box with a raceway down.
    fn two_strings() -> Resolved {
        let mut job = gable();
        job.kit = Arc::new(bare());
        let mut down = junction(9, 6.0, 5.0);
        down.legs.push(Leg { length: Length::from_metres(6.0), lies: LiesIn::Wall });
        job.boxes = vec![down];
        job.circuits = vec![circuit(20, &[(0, 0), (0, 1), (0, 2)]), circuit(21, &[(1, 0), (1, 1), (1, 2)])];
        for circuit in &mut job.circuits {
            circuit.to = Some(BoxId(9));
        }
        job
    }

    fn fills(job: &Resolved) -> (Fill, Fill) {
        let wires = Wires::of(job, &Layout::of(job));
        let junction = &job.boxes[0];
        (box_fill(job, &wires, junction).unwrap(), raceway_fill(job, &wires, junction).unwrap())
    }

    /// Eight ends of 10 AWG at 2.50 in³ and one 6 AWG at 5.00: 25 in³ of 60. Four 10 AWG of .0211 in² and a ground: 1.25 × 17.375 A is
    /// 21.7 A, 25 A, 10 AWG: .1055 of 40 % of .533, .2132.
    #[test]
    fn two_strings_by_hand() {
        let (filled, raceway) = fills(&two_strings());
        assert_eq!((filled.taken, filled.holds, filled.conductors), (25.0, 60.0, 10));
        assert!((raceway.taken - 0.1055).abs() < 1e-9 && (raceway.holds - 0.2132).abs() < 1e-9);
        assert_eq!(raceway.conductors, 5);
    }

    /// Others in it count too: six of 12 AWG, 13.5 in³ and .0798 in².
    #[test]
    fn others_and_narrower() {
        let mut job = two_strings();
        job.boxes[0].others = vec![OtherConductors { current: Current::Dc, gauge: Gauge::Awg12, count: 6 }];
        Arc::make_mut(&mut job.kit).wiring.as_mut().unwrap().raceway.as_mut().unwrap().size = TradeSize::Half;
        let (filled, raceway) = fills(&job);
        assert_eq!(filled.taken, 38.5);
        assert!((raceway.taken - 0.1853).abs() < 1e-9 && (raceway.holds - 0.1216).abs() < 1e-9);
        // PV wire is as thick as its maker says.
        let wiring = Arc::make_mut(&mut job.kit).wiring.as_mut().unwrap();
        wiring.run_down.as_mut().unwrap().insulation = Insulation::PvWire;
        assert_eq!(raceway_fill(&job, &Wires::of(&job, &Layout::of(&job)), &job.boxes[0]), None);
    }
}
