//! What a kit says of its conductors, held against what there is.

use super::KitWiring;
use chalkcourse_words::{Said, later as words};

impl KitWiring {
    /// What is said of conductors and the like makes sense.
    pub(super) fn check_conductors(&self) -> Result<(), Said> {
        for (field, choice) in [("home_run", self.home_run), ("run_down", self.run_down)] {
            if choice.is_some_and(|choice| !matches!(choice.terminals_celsius, 60 | 75)) {
                return Err(words::kit::wiring_terminals(&format_args!("wiring.{field}.terminals_celsius")));
            }
        }
        for (index, setting) in self.torques.iter().enumerate() {
            let newton_metres = setting.torque.newton_metres();
            if !(newton_metres > 0.0 && newton_metres < 1e3) {
                let field = format_args!("wiring.torques[{index}].torque");
                return Err(words::kit::must_be_more_than_0(&field, &newton_metres));
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use crate::{KitWiring, Torque, builtin_kits};

    fn refused(change: impl Fn(&mut KitWiring), words: &str) {
        let mut kit = (*builtin_kits()[0]).clone();
        change(kit.wiring.as_mut().unwrap());
        let error = kit.check().unwrap_err();
        assert!(error.now().contains(words), "{error:?} does not say {words:?}");
    }

    #[test]
    fn what_no_conductor_can_be_is_refused() {
        refused(
            |wiring| wiring.home_run.as_mut().unwrap().terminals_celsius = 90,
            "home_run.terminals_celsius",
        );
        refused(|wiring| wiring.torques[0].torque = Torque::from_newton_metres(0.0), "torques[0].torque");
        refused(|wiring| wiring.box_cubic_inches = Some(-1.0), "box_cubic_inches");
        refused(|wiring| wiring.inverters[0].string_fuse_amps = Some(0.0), "inverters[0].string_fuse_amps");
    }

    /// Kits that ship say all that the rules of the wires ask of one.
    #[test]
    fn kits_that_ship_say_all() {
        for kit in builtin_kits() {
            let wiring = kit.wiring.as_ref().unwrap();
            assert!(wiring.home_run.is_some() && wiring.run_down.is_some() && wiring.raceway.is_some());
            assert!(
                wiring.box_cubic_inches.is_some() && wiring.grounding.is_some() && wiring.bonding.is_some()
            );
            assert!(wiring.leads.gauge.is_some() && wiring.insulation_test_connected.is_some());
            assert!(!wiring.torques.is_empty());
            for inverter in &wiring.inverters {
                assert!(inverter.arc_fault.is_some() && inverter.ground_fault.is_some());
            }
        }
    }
}
