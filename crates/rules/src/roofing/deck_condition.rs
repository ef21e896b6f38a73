//! The deck is sound before an array goes on it.
//!
//! Source: common practice, no source: somebody looks at the deck, from below or after tear-off, and what is soft, split
//! or wet is replaced first.

use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use chalkcourse_job::DeckCondition;

pub(crate) const RULE: Rule = Rule {
    code: "deck-condition",
    title: "The deck is sound before an array goes on it",
    reason: "Screws hold only in firm wood, and nobody gets at the deck again for decades.",
    sketch: &[
        Stroke::Edge(&[[8.0, 22.0], [92.0, 22.0]]),
        Stroke::Edge(&[[8.0, 32.0], [92.0, 32.0]]),
        Stroke::Edge(&[[36.0, 22.0], [36.0, 32.0]]),
        Stroke::Edge(&[[64.0, 22.0], [64.0, 32.0]]),
        Stroke::Wrong([40.0, 22.0, 20.0, 10.0]),
        Stroke::Way([50.0, 50.0], [50.0, 28.0]),
    ],
    source: |_| "common practice, no source".into(),
    missing: |job| {
        let unknown = job.site.building.deck.condition.is_none();
        unknown.then(|| "the job does not say what state the deck is in".into())
    },
    run: Run::Whole(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    if case.blocks.is_empty() || case.job.site.building.deck.condition != Some(DeckCondition::Repair) {
        return;
    }
    findings.push(Finding {
        message: "Parts of the deck are soft, split or wet: replace that sheathing before the membrane and the array go on."
            .into(),
        place: Place::default(),
        measured: "needs repair".into(),
        required: "a sound deck".into(),
        source: RULE.source(case.job),
        ..Finding::of(RULE.code, Severity::Caution, "deck-condition/roof".into())
    });
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of};
    use chalkcourse_job::DeckCondition;

    #[test]
    fn sound_to_mend_and_not_known() {
        let mut job = gable_job();
        assert!(of(&job, "deck-condition").is_empty());
        job.site.building.deck.condition = Some(DeckCondition::Sound);
        assert!(of(&job, "deck-condition").is_empty());
        job.site.building.deck.condition = Some(DeckCondition::Repair);
        assert_eq!(of(&job, "deck-condition").len(), 1);
    }
}
