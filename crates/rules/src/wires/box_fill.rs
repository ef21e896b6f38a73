//! A junction box has room for the conductors in it.
//!
//! Source: NEC 314.16(B) (2017), from memory: so much for each conductor that ends in it or passes, and once for all that ground.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{boxes, kit_silent, no_box, of_box};
use crate::{Authority, Facts, KitGap, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};
use chalkcourse_wiring::cite::BOX_FILL;
use chalkcourse_wiring::fill::box_fill;

pub(crate) const RULE: Rule = Rule {
    code: "box-fill",
    sketch: &[
        SLOPE,
        Stroke::Thing([36.0, 16.0, 28.0, 28.0]),
        Stroke::Way([12.0, 40.0], [50.0, 36.0]),
        Stroke::Way([12.0, 30.0], [50.0, 30.0]),
        Stroke::Way([12.0, 20.0], [50.0, 24.0]),
        Stroke::Wrong([44.0, 20.0, 12.0, 20.0]),
    ],
    source: |job| Authority::Source(BOX_FILL.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    no_box(job).or_else(|| {
        let down = boxes(job).any(|junction| !junction.legs.is_empty());
        let down_said = kit_silent(job, [(KitGap::RunDown, |wiring| wiring.run_down.is_some())]);
        kit_silent(
            job,
            [
                (KitGap::BoxVolume, |wiring| wiring.box_cubic_inches.is_some()),
                (KitGap::HomeRun, |wiring| wiring.home_run.is_some()),
                (KitGap::Grounding, |wiring| wiring.grounding.is_some()),
            ],
        )
        .or(down_said.filter(|_| down))
    })
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    for junction in boxes(job) {
        let full = box_fill(job, view.wires(), junction).filter(|fill| fill.taken > fill.holds + 1e-9);
        let Some(fill) = full else { continue };
        let facts = Facts::BoxFill { junction: junction.id, taken: fill.taken, holds: fill.holds };
        findings.push(Finding {
            measured: Quantity::Share(fill.taken / fill.holds),
            required: Required::AtMost(Quantity::Share(1.0)),
            source: RULE.source(job),
            ..of_box(RULE.code, Severity::Stop, view.layout(), junction, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{boxed, kit, of, one, why_not, wired};
    use crate::{Facts, KitGap, WhyNot};
    use chalkcourse_job::BoxId;

    /// One string: two ends in and two out of 10 AWG at 2.50 in³, one 6 AWG at 5.00: 15 in³.
    #[test]
    fn just_full_and_too_full() {
        let with = |volume| {
            let mut job = boxed();
            kit(&mut job).wiring.as_mut().unwrap().box_cubic_inches = volume;
            job
        };
        assert!(of(&with(Some(15.0)), "box-fill").is_empty());
        let found = one(&with(Some(14.5)), "box-fill");
        assert_eq!(found.facts, Facts::BoxFill { junction: BoxId(9), taken: 15.0, holds: 14.5 });
        assert_eq!(found.key.to_string(), "box-fill/box-9");
        assert_eq!(why_not(&with(None), "box-fill"), Some(WhyNot::KitSilent(vec![KitGap::BoxVolume])));
        assert_eq!(why_not(&wired(), "box-fill"), Some(WhyNot::NoBox));
    }
}
