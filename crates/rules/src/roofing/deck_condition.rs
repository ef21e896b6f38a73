//! The deck is sound before an array goes on it.
//!
//! Source: common practice, no source: somebody looks at the deck, from below or after tear-off, and what is soft, split
//! or wet is replaced first.

use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use chalkcourse_job::DeckCondition;
use chalkcourse_words::{pick, say};

pub(crate) const RULE: Rule = Rule {
    code: "deck-condition",
    title: say(
        "The deck is sound before an array goes on it",
        "El entablado está sano antes de poner un arreglo",
    ),
    reason: say(
        "Screws hold only in firm wood, and nobody gets at the deck again for decades.",
        "Los tornillos solo agarran en madera firme, y nadie vuelve a llegar al entablado en décadas.",
    ),
    sketch: &[
        Stroke::Edge(&[[8.0, 22.0], [92.0, 22.0]]),
        Stroke::Edge(&[[8.0, 32.0], [92.0, 32.0]]),
        Stroke::Edge(&[[36.0, 22.0], [36.0, 32.0]]),
        Stroke::Edge(&[[64.0, 22.0], [64.0, 32.0]]),
        Stroke::Wrong([40.0, 22.0, 20.0, 10.0]),
        Stroke::Way([50.0, 50.0], [50.0, 28.0]),
    ],
    source: |_| pick("common practice, no source", "práctica común, sin fuente").into(),
    missing: |job| {
        let unknown = job.site.building.deck.condition.is_none();
        unknown.then(|| {
            pick(
                "the job does not say what state the deck is in",
                "la obra no dice en qué estado está el entablado",
            )
            .into()
        })
    },
    run: Run::Whole(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    if case.blocks.is_empty() || case.job.site.building.deck.condition != Some(DeckCondition::Repair) {
        return;
    }
    findings.push(Finding {
        message: pick("Parts of the deck are soft, split or wet: replace that sheathing before the membrane and the array go on.", "Partes del entablado están blandas, rajadas o mojadas: reemplace esos tableros antes de poner la \
        membrana y el arreglo.")
            .into(),
        place: Place::default(),
        measured: pick("needs repair", "necesita reparación").into(),
        required: pick("a sound deck", "un entablado sano").into(),
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
