//! A module's voltages by straight lines against pvlib 0.16.1 (BSD-3), at cells of −22 and 77 °C: values written by
//! `tests/peers/module_volts_against_pvlib.py`. Five modules of the CEC table in pvlib, drawn by chance; two single-diode models: De Soto,
//! Klein and Beckman (2006), which takes the sheet's coefficient of Voc as it is, and the CEC's (Dobos, 2012), which bends it so that the
//! power comes out as the sheet says.
//!
//! What a line is off by has two causes, and each is stated here. The curve bends: by De Soto's saturation current, which goes with the cube
//! of the temperature, Voc lies below its line by 3/2 · a · (ΔT / 298.15 K)², where a is the ideality voltage. And the model's own
//! coefficient is not the sheet's: then the line is off by that difference times ΔT. Beyond what is stated the lines hold within 0.5 %,
//! but for one value of 40.
//!
//! What was found: the first cause is small, 0.19 % at most, and on the safe side when cold. The second is not: where no coefficient of Vmp is
//! stated and that of power stands for it, the line of these five is off by up to 0.9 % of the CEC model and 5.3 % of De Soto's, to both
//! sides; and by the CEC model, Voc when cold is up to 2.3 % above the sheet's line. That is what sheets leave open, not what lines lose.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use chalkcourse_job::{Electrical, KitWiring, builtin_kits};
use chalkcourse_tests::top;
use chalkcourse_wiring::volts;
use serde::Deserialize;

const COLD: f64 = -22.0;
const HOT: f64 = 77.0;

/// Voc and Vmp.
type Volts = [f64; 2];

#[derive(Deserialize)]
struct Golden {
    made_by: String,
    modules: Vec<Module>,
    cell: Vec<[f64; 4]>,
}

/// Cold, standard and hot, by each model, and each model's own coefficients in per cent per kelvin.
#[derive(Deserialize)]
struct Module {
    name: String,
    voc: f64,
    isc: f64,
    vmp: f64,
    imp: f64,
    voc_percent_per_kelvin: f64,
    power_percent_per_kelvin: f64,
    ideality_volts: f64,
    de_soto: [Volts; 3],
    cec: [Volts; 3],
    de_soto_percent_per_kelvin: Volts,
    cec_percent_per_kelvin: Volts,
}

impl Module {
    fn sheet(&self) -> Electrical {
        Electrical {
            voc_volts: self.voc,
            isc_amps: self.isc,
            vmp_volts: self.vmp,
            imp_amps: self.imp,
            voc_percent_per_kelvin: self.voc_percent_per_kelvin,
            power_percent_per_kelvin: self.power_percent_per_kelvin,
        }
    }

    /// The two models: their volts, and their own coefficients.
    fn models(&self) -> [(&'static str, [Volts; 3], Volts); 2] {
        [
            ("De Soto", self.de_soto, self.de_soto_percent_per_kelvin),
            ("CEC", self.cec, self.cec_percent_per_kelvin),
        ]
    }
}

fn golden() -> Golden {
    let text = std::fs::read_to_string(top().join("tests/data/module-volts-golden.json")).unwrap();
    serde_json::from_str(&text).unwrap()
}

/// A kit's wiring with or without a coefficient of Vmp.
fn wiring(vmp_percent_per_kelvin: Option<f64>) -> KitWiring {
    KitWiring { vmp_percent_per_kelvin, ..builtin_kits()[0].wiring.clone().unwrap() }
}

/// What a line says more than a model, in per cent of the model.
fn over(line: f64, model: f64) -> f64 {
    (line / model - 1.0) * 100.0
}

#[test]
fn the_source_is_named() {
    let golden = golden();
    assert!(golden.made_by.contains("pvlib 0.16.1") && golden.modules.len() == 5, "{}", golden.made_by);
    for (number, module) in (1..).zip(&golden.modules) {
        assert_eq!(module.name, format!("statistical module {number}"));
    }
}

/// Against the model that takes the sheet's coefficient: within 0.5 %, above the curve as stated, so that no string is told lower than it is.
#[test]
fn open_circuit_volts_when_cold_and_hot() {
    for module in golden().modules {
        let cold = volts::highest(&module.sheet(), COLD, false).unwrap();
        let hot = volts::at_cell(module.voc, module.voc_percent_per_kelvin, HOT);
        for (celsius, line, model) in [(COLD, cold, module.de_soto[0][0]), (HOT, hot, module.de_soto[2][0])] {
            let off = over(line, model);
            assert!((0.0..0.5).contains(&off), "{} at {celsius}: {off} %", module.name);
            let bend = 1.5 * module.ideality_volts * ((celsius - 25.0) / 298.15_f64).powi(2);
            assert!((off - bend / model * 100.0).abs() < 0.1, "{}: {off} %, stated {bend} V", module.name);
        }
    }
}

/// The voltage at most power by its own coefficient, where a maker states one: within 0.5 % of De Soto's model, 0.6 % of the CEC's. The line
/// is below the curve when hot, so that no string is told to work that does not.
#[test]
fn working_volts_by_their_own_coefficient() {
    for module in golden().modules {
        for (name, model, own) in module.models() {
            let line = volts::lowest_working(&module.sheet(), &wiring(Some(own[1])), HOT);
            let off = over(line, model[2][1]);
            let within = if name == "CEC" { 0.6 } else { 0.5 };
            assert!((-within..0.0).contains(&off), "{} by {name}: {off} %", module.name);
        }
    }
}

/// Both voltages, both models, cold and hot, by the sheet's coefficients: what is beyond the difference of coefficients is within 0.5 %,
/// but for one: module 3 by the CEC model, which takes 17 % off a coefficient, when hot, by 0.56 %.
#[test]
fn what_the_coefficients_do_not_explain() {
    let mut beyond = Vec::new();
    let mut worst = [[0.0_f64; 2]; 2];
    for module in golden().modules {
        let sheet = module.sheet();
        for (index, (name, model, own)) in module.models().into_iter().enumerate() {
            for (at, celsius) in [(0, COLD), (2, HOT)] {
                let lines = [
                    volts::at_cell(sheet.voc_volts, sheet.voc_percent_per_kelvin, celsius),
                    volts::lowest_working(&sheet, &wiring(None), celsius),
                ];
                let stated = [sheet.voc_percent_per_kelvin, sheet.power_percent_per_kelvin];
                for which in [0, 1] {
                    let off = over(lines[which], model[at][which]);
                    let by_coefficient =
                        (stated[which] - own[which]) * (celsius - 25.0) * model[1][which] / model[at][which];
                    worst[index][which] = worst[index][which].max(off.abs());
                    if (off - by_coefficient).abs() > 0.5 {
                        beyond.push(format!("{} by {name} at {celsius}", module.name));
                    }
                }
            }
        }
    }
    assert_eq!(beyond, ["statistical module 3 by CEC at 77"]);
    // The worst of Voc and Vmp, as the head of this file says: De Soto 0.19 and 5.25 %, CEC 4.43 (hot) and 0.84 %.
    let expected = [[0.19, 5.25], [4.43, 0.84]];
    for (found, told) in worst.concat().iter().zip(expected.concat()) {
        assert!((found - told).abs() < 0.01, "{worst:?}");
    }
}

/// Cells are as cold as the air by night, and 43 to 50 K warmer in full sun on a close mount: 77 °C, as the sample jobs have it, is air of 34 °C
/// with a breeze of 4 m/s; without wind cells get hotter (SAPM by pvlib; King, Boyson and Kratochvil, 2004). By the published formula,
/// anew: T = air + sun · exp(−2.98 − 0.0471 · wind) + sun / 1,000 · 1 K.
#[test]
fn cells_in_the_sun_and_by_night() {
    for [air, sun, wind, cell] in golden().cell {
        let by_hand = air + sun * (-2.98_f64 - 0.0471 * wind).exp() + sun / 1000.0;
        assert!((by_hand - cell).abs() < 0.01, "{air} {sun} {wind}: {cell}, {by_hand}");
    }
    let of = |air: f64, sun: f64, wind: f64| {
        golden().cell.into_iter().find(|row| row[..3] == [air, sun, wind]).map(|row| row[3])
    };
    assert_eq!(of(COLD, 0.0, 1.0), Some(COLD));
    assert!((of(34.0, 1000.0, 4.0).unwrap() - HOT).abs() < 0.1);
}
