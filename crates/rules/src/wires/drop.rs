//! A circuit does not lose much of its voltage on the way: advice.
//!
//! Source: common practice, no source: 2 to 3 %. Resistances of NEC chapter 9 table 8 (2017), stranded, at 75 °C. A trunk of ac devices loses
//! section by section, since each carries only the devices behind it.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::conductors::gaps;
use crate::wires::{not_dc, not_stated, not_wired, of_circuit};
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};
use chalkcourse_wiring::runs::voltage_drop;

/// More than this share is told (common practice, no source).
pub(crate) const MOST: f64 = 0.03;

pub(crate) const RULE: Rule = Rule {
    code: "voltage-drop",
    sketch: &[
        SLOPE,
        Stroke::Module([10.0, 34.0, 14.0, 12.0]),
        Stroke::Edge(&[[24.0, 40.0], [90.0, 40.0]]),
        Stroke::Measure([24.0, 28.0], [90.0, 28.0]),
        Stroke::Limit(&[[24.0, 16.0], [90.0, 20.0]]),
    ],
    source: |_| Authority::Practice,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let dc = not_dc(job).is_none();
    not_wired(job).or_else(|| gaps(job)).or_else(|| not_stated(job, &[Unknown::Inverter]).filter(|_| dc))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    for circuit in &view.wires().circuits {
        let Some(lost) = voltage_drop(view.job(), circuit).filter(|lost| lost.volts > MOST * lost.of) else {
            continue;
        };
        let facts = Facts::VoltageDrop { volts: lost.volts, whole: lost.whole };
        findings.push(Finding {
            measured: Quantity::Share(lost.volts / lost.of),
            required: Required::AtMost(Quantity::Share(MOST)),
            source: Authority::Practice,
            ..of_circuit(RULE.code, Severity::Note, view.layout(), circuit, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::finding::Severity;
    use crate::testing::{boxed, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::Quantity;

    /// Six modules of 31.2 V, 187.2 V, lose 5.616 V at 3 %: at 12.98 A in 10 AWG that is 106.36 m of conductor. Five links of 2 m and what
    /// goes home leave 3.7 m + 2.6 m of it; the rest, twice, is the way down.
    #[test]
    fn below_and_above_three_percent() {
        let mut job = boxed();
        assert!(of(&job, "voltage-drop").is_empty());
        let conductor = 0.03 * 187.2 / 12.98 / 1.24 * 304.8;
        let first = 6.0 - 3.861 + 5.0 * 1.25_f64.sqrt() - 1.8505;
        let down = (conductor - 10.0 - first - (first - 1.137)) / 2.0;
        job.boxes[0].legs.truncate(1);
        let mut long = |metres: f64| {
            job.boxes[0].legs[0].length = Length::from_metres(metres);
            job.clone()
        };
        assert!(of(&long(down - 0.01), "voltage-drop").is_empty());
        let found = one(&long(down + 0.01), "voltage-drop");
        assert_eq!(found.severity, Severity::Note);
        let Quantity::Share(share) = found.measured else { panic!() };
        assert!((share - 0.03).abs() < 1e-4);
        let Facts::VoltageDrop { volts, whole: true } = found.facts else { panic!() };
        assert!((volts - 5.616).abs() < 1e-2);
    }
}
