//! What an electrician read and typed back is what it should be.
//!
//! Source: common practice, in the spirit of IEC 62446-1 (its sections are not at hand): the volts of a string within 5 % of n · Voc at the
//! temperature measured; + and − as marked; insulation of at least 1 MΩ, tested by 1.25 times the string's voltage, and never with electronics
//! connected unless their maker allows it. Of dc devices count their standby volts, of a branch those of the house.

use crate::facts::ReadingWrong;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{not_wired, of_circuit};
use crate::{Authority, Facts, WhyNot};
use chalkcourse_job::{FindingKey, Quantity, Reading, Required, Resolved, Subject};
use chalkcourse_wiring::{Expected, expected_reading};
use std::borrow::Cow;

pub(crate) const RULE: Rule = Rule {
    code: "readings",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 20.0, 24.0]),
        Stroke::Way([32.0, 36.0], [62.0, 36.0]),
        Stroke::Way([32.0, 24.0], [62.0, 24.0]),
        Stroke::Pipe([74.0, 30.0, 12.0]),
        Stroke::Measure([68.0, 30.0], [80.0, 34.0]),
    ],
    source: |_| Authority::Practice,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_wired(job).or_else(|| job.readings.is_empty().then_some(WhyNot::NoReading))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let Some(wiring) = &job.kit.wiring else { return };
    for reading in &job.readings {
        let Some(circuit) = view.wires().circuit(reading.circuit) else { continue };
        let expected = expected_reading(&job.kit.module.electrical, wiring, circuit, reading.celsius);
        for Wrong { what, matter, severity, measured, required } in wrong(reading, &expected) {
            let facts = Facts::Reading { celsius: reading.celsius, what };
            let subject = Subject::OfCircuit(circuit.id, Cow::Borrowed(matter));
            findings.push(Finding {
                key: FindingKey::new(RULE.code, subject),
                measured,
                required,
                source: Authority::Practice,
                ..of_circuit(RULE.code, severity, view.layout(), circuit, facts)
            });
        }
    }
}

/// One thing that is wrong with a reading.
struct Wrong {
    what: ReadingWrong,
    matter: &'static str,
    severity: Severity,
    measured: Quantity,
    required: Required,
}

fn wrong(reading: &Reading, expected: &Expected) -> Vec<Wrong> {
    let mut found = Vec::new();
    let mut add = |what, matter, severity, measured, required| {
        found.push(Wrong { what, matter, severity, measured, required });
    };
    let band = expected.least_volts - 1e-6..=expected.most_volts + 1e-6;
    if let Some(volts) = reading.open_volts.filter(|volts| !band.contains(volts)) {
        let (least, most) = (Quantity::Volts(expected.least_volts), Quantity::Volts(expected.most_volts));
        let measured = Quantity::Volts(volts);
        add(ReadingWrong::Volts, "volts", Severity::Stop, measured, Required::Between(least, most));
    }
    if reading.polarity_right == Some(false) {
        add(ReadingWrong::Polarity, "polarity", Severity::Stop, Quantity::Nothing, Required::So);
    }
    let Some(test) = expected.insulation else {
        if reading.insulation_megohms.is_some() || reading.test_volts.is_some() {
            let (nothing, so) = (Quantity::Nothing, Required::So);
            add(ReadingWrong::TestConnected, "test", Severity::Caution, nothing, so);
        }
        return found;
    };
    if let Some(megohms) = reading.insulation_megohms.filter(|megohms| *megohms < test.least_megohms - 1e-9) {
        let least = Required::AtLeast(Quantity::Megohms(test.least_megohms));
        add(ReadingWrong::Insulation, "insulation", Severity::Stop, Quantity::Megohms(megohms), least);
    }
    let asked = f64::from(test.volts);
    if let Some(volts) = reading.test_volts.filter(|volts| *volts < asked - 1e-6) {
        let least = Required::AtLeast(Quantity::Volts(asked));
        add(ReadingWrong::TestVolts, "test", Severity::Caution, Quantity::Volts(volts), least);
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::testing::{of, one, why_not, wired};
    use crate::{ReadingWrong, WhyNot};
    use chalkcourse_job::{CircuitId, Quantity, Reading, Required, Resolved, builtin_kit};

    fn read(how: impl FnOnce(&mut Reading)) -> Resolved {
        let mut job = wired();
        let mut reading = Reading {
            circuit: CircuitId(8),
            celsius: 45.0,
            open_volts: None,
            polarity_right: None,
            insulation_megohms: None,
            test_volts: None,
        };
        how(&mut reading);
        job.readings = vec![reading];
        job
    }

    fn keys(job: &Resolved) -> Vec<String> {
        of(job, "readings").iter().map(|found| found.key.to_string()).collect()
    }

    /// Six modules at 45 °C: 6 × 37.2 V × (1 − 0.0026 × 20) = 211.6 V, 201.0 to 222.2 V. Five modules show 176 V.
    #[test]
    fn volts_within_at_and_outside() {
        let volts = |volts| read(|reading| reading.open_volts = Some(volts));
        for fine in [211.6, 201.015, 222.173] {
            assert!(keys(&volts(fine)).is_empty(), "{fine}");
        }
        for wrong in [176.3, 201.0, 222.2] {
            assert_eq!(keys(&volts(wrong)), ["readings/circuit-8/volts"], "{wrong}");
        }
    }

    #[test]
    fn polarity_and_insulation() {
        assert!(keys(&read(|reading| reading.polarity_right = Some(true))).is_empty());
        let reversed = read(|reading| reading.polarity_right = Some(false));
        assert_eq!(keys(&reversed), ["readings/circuit-8/polarity"]);
        let tested = |megohms, volts| {
            read(|reading| (reading.insulation_megohms, reading.test_volts) = (Some(megohms), Some(volts)))
        };
        // 1.25 × 223.2 V = 279 V: 500 V.
        assert!(keys(&tested(1.0, 500.0)).is_empty());
        let found = one(&tested(0.9, 500.0), "readings");
        assert_eq!(
            (found.measured, found.required),
            (Quantity::Megohms(0.9), Required::AtLeast(Quantity::Megohms(1.0)))
        );
        assert_eq!(keys(&tested(2.0, 250.0)), ["readings/circuit-8/test"]);
        // With devices connected, whose maker does not allow it.
        let mut connected = tested(2.0, 500.0);
        connected.kit = builtin_kit();
        let crate::Facts::Reading { what, .. } = one(&connected, "readings").facts else { panic!() };
        assert_eq!(what, ReadingWrong::TestConnected);
        assert_eq!(why_not(&wired(), "readings"), Some(WhyNot::NoReading));
    }
}
