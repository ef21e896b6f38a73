//! Circuits of the array share no box and no raceway with other circuits of another kind of current.
//!
//! Source: NEC 690.31(B) (2017), from memory: dc circuits of the array are kept apart from others, by a partition where they meet.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{boxes, no_box, of_box};
use crate::{Authority, Facts};
use chalkcourse_job::Current;
use chalkcourse_wiring::Kind;
use chalkcourse_wiring::cite::APART;

pub(crate) const RULE: Rule = Rule {
    code: "dc-ac-apart",
    sketch: &[
        SLOPE,
        Stroke::Thing([40.0, 18.0, 20.0, 24.0]),
        Stroke::Way([12.0, 34.0], [88.0, 34.0]),
        Stroke::Way([88.0, 26.0], [12.0, 26.0]),
    ],
    source: |job| Authority::Source(APART.of(job.wiring.edition)),
    missing: no_box,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let own = match job.kit.wiring.as_ref().map(Kind::of) {
        Some(Kind::AcDevices) => Current::Ac,
        Some(Kind::Bare | Kind::DcDevices) => Current::Dc,
        None => return,
    };
    for junction in boxes(job) {
        if junction.others.iter().any(|others| others.current != own) {
            let facts = Facts::NotApart { junction: junction.id };
            findings.push(Finding {
                source: RULE.source(job),
                ..of_box(RULE.code, Severity::Stop, view.layout(), junction, facts)
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{boxed, of, one};
    use chalkcourse_job::{Current, Gauge, OtherConductors, builtin_kits};

    #[test]
    fn dc_beside_dc_and_beside_ac() {
        let with = |current| {
            let mut job = boxed();
            job.boxes[0].others = vec![OtherConductors { current, gauge: Gauge::Awg12, count: 2 }];
            job
        };
        assert!(of(&boxed(), "dc-ac-apart").is_empty());
        assert!(of(&with(Current::Dc), "dc-ac-apart").is_empty());
        assert_eq!(one(&with(Current::Ac), "dc-ac-apart").key.to_string(), "dc-ac-apart/box-9");
        let mut branch = with(Current::Ac);
        branch.kit = builtin_kits()[1].clone();
        assert!(of(&branch, "dc-ac-apart").is_empty());
        branch.boxes[0].others[0].current = Current::Dc;
        assert_eq!(of(&branch, "dc-ac-apart").len(), 1);
    }
}
