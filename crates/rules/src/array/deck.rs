//! The deck suits the kit: thick enough, of an allowed kind, over rafters close enough together.
//!
//! Source: the kit; the demo kit's numbers are invented with it. Holding values in thin sheathing have to come from the listing:
//! the equations for wood screws are for lumber (NDS 12.2, caveat), and a screw in a 7/16 in panel has less than six diameters of
//! penetration.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_geometry::Length;
use chalkcourse_job::{Deck, DeckLimits, Quantity, Required, Subject};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "deck",
    sketch: &[
        Stroke::Edge(&[[8.0, 22.0], [92.0, 22.0]]),
        Stroke::Edge(&[[8.0, 30.0], [92.0, 30.0]]),
        Stroke::Thing([18.0, 36.0, 64.0, 6.0]),
        Stroke::Way([34.0, 50.0], [34.0, 20.0]),
        Stroke::Way([66.0, 50.0], [66.0, 20.0]),
        Stroke::Measure([88.0, 22.0], [88.0, 30.0]),
    ],
    source: |_| Authority::Kit,
    missing: |job| {
        if job.kit.deck.is_none() {
            return Some(WhyNot::KitWithoutDeck);
        }
        let unknown = unknown_of(&job.site.building.deck);
        (unknown.len() == 3).then_some(WhyNot::NotKnown(unknown))
    },
    run: Run::Whole(run),
};

fn unknown_of(deck: &Deck) -> Vec<Unknown> {
    Unknown::among([
        (Unknown::SheathingThickness, deck.thickness.is_none()),
        (Unknown::SheathingKind, deck.kind.is_none()),
        (Unknown::RafterSpacing, deck.rafter_spacing.is_none()),
    ])
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let Some(limits) = &view.kit().deck else { return };
    let deck = &view.site().building.deck;
    if view.laid().is_empty() {
        return;
    }
    findings.extend(troubles(deck, limits));
    let unknown = unknown_of(deck);
    if !unknown.is_empty() {
        findings.push(Finding {
            measured: Quantity::Unknown,
            source: Authority::Kit,
            ..Finding::of(
                RULE.code,
                Severity::Note,
                Subject::Matter("unknown".into()),
                Facts::DeckUnknown(unknown),
            )
        });
    }
}

/// Everything about a deck that the kit does not allow.
fn troubles(deck: &Deck, limits: &DeckLimits) -> Vec<Finding> {
    let hair = Length::from_metres(TOLERANCE);
    let stop = |matter: &'static str, measured, required, facts| Finding {
        measured,
        required,
        source: Authority::Kit,
        ..Finding::of(RULE.code, Severity::Stop, Subject::Matter(matter.into()), facts)
    };
    let thick = deck.thickness.filter(|thick| *thick < limits.least_thickness - hair).map(|thick| {
        let least = Required::AtLeast(Quantity::Length(limits.least_thickness));
        stop("thickness", Quantity::Length(thick), least, Facts::DeckTooThin)
    });
    let kind = deck.kind.filter(|kind| !limits.kinds.contains(kind)).map(|kind| {
        stop("kind", Quantity::Deck(kind), Required::Deck(limits.kinds.clone()), Facts::DeckOfKind)
    });
    let span = deck.rafter_spacing.filter(|span| *span > limits.most_span + hair).map(|span| {
        let most = Required::AtMost(Quantity::Length(limits.most_span));
        stop("span", Quantity::Length(span), most, Facts::DeckSpan)
    });
    [thick, kind, span].into_iter().flatten().collect()
}

#[cfg(test)]
mod tests {
    use crate::Severity;
    use crate::testing::{gable_job, of, why_not};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Deck, DeckKind, Resolved};

    fn on(thick: f64, kind: DeckKind, span: f64) -> Resolved {
        let mut job = gable_job();
        job.site.building.deck = Deck {
            thickness: Some(Length::from_inches(thick)),
            kind: Some(kind),
            rafter_spacing: Some(Length::from_inches(span)),
            condition: None,
        };
        job
    }

    fn keys(job: &Resolved) -> Vec<String> {
        of(job, "deck").into_iter().map(|finding| finding.key.to_string()).collect()
    }

    /// The demo kit: 7/16 in, OSB or plywood, rafters 24 in apart.
    #[test]
    fn thinner_than_just_and_thicker() {
        assert_eq!(keys(&on(0.5, DeckKind::Osb, 16.0)), [""; 0]);
        assert_eq!(keys(&on(7.0 / 16.0, DeckKind::Plywood, 24.0)), [""; 0]);
        assert_eq!(keys(&on(3.0 / 8.0, DeckKind::Osb, 24.0)), ["deck/thickness"]);
        assert_eq!(keys(&on(0.5, DeckKind::SpacedBoards, 25.0)), ["deck/kind", "deck/span"]);
    }

    #[test]
    fn unknowns_are_reported() {
        let mut job = on(0.5, DeckKind::Osb, 16.0);
        job.site.building.deck.rafter_spacing = None;
        let found = of(&job, "deck");
        assert!(found.len() == 1 && found[0].severity == Severity::Note, "{found:?}");
        job.site.building.deck = Deck::default();
        assert!(of(&job, "deck").is_empty());
        assert!(why_not(&job, "deck").is_some());
    }
}
