//! The deck is sound before an array goes on it.
//!
//! Source: common practice, no source: the deck is inspected, from below or after tear-off, and what is soft, split or wet is
//! replaced first.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{DeckCondition, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "deck-condition",
    sketch: &[
        Stroke::Edge(&[[8.0, 22.0], [92.0, 22.0]]),
        Stroke::Edge(&[[8.0, 32.0], [92.0, 32.0]]),
        Stroke::Edge(&[[36.0, 22.0], [36.0, 32.0]]),
        Stroke::Edge(&[[64.0, 22.0], [64.0, 32.0]]),
        Stroke::Wrong([40.0, 22.0, 20.0, 10.0]),
        Stroke::Way([50.0, 50.0], [50.0, 28.0]),
    ],
    source: |_| Authority::Practice,
    missing: |job| {
        let unknown = job.site.building.deck.condition.is_none();
        unknown.then(|| WhyNot::NotKnown(vec![Unknown::DeckCondition]))
    },
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    if !view.laid().is_empty() && view.site().building.deck.condition == Some(DeckCondition::Repair) {
        findings.push(Finding {
            source: Authority::Practice,
            ..Finding::of(RULE.code, Severity::Caution, Subject::Whole, Facts::DeckCondition)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of};
    use chalkcourse_job::DeckCondition;

    #[test]
    fn sound_to_repair_and_unknown() {
        let mut job = gable_job();
        assert!(of(&job, "deck-condition").is_empty());
        job.site.building.deck.condition = Some(DeckCondition::Sound);
        assert!(of(&job, "deck-condition").is_empty());
        job.site.building.deck.condition = Some(DeckCondition::Repair);
        assert_eq!(of(&job, "deck-condition").len(), 1);
    }
}
