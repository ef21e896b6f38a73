//! The deck is one that the kit may be screwed to: thick enough, of the right kind, over rafters that are near enough.
//!
//! Source: the kit; the demo kit's numbers are invented with it. What holds in thin sheathing is the listing's word: the
//! equations for wood screws are for lumber (NDS 12.2, caveat), and a screw in a 7/16 in panel has less than six
//! diameters of hold.

use super::of_kit;
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use crate::words::{length, too_much, too_short};
use chalkcourse_job::{Deck, DeckKind, DeckLimits};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "deck",
    title: say(
        "The deck is one that the kit may be screwed to",
        "El entablado es de los que admiten los tornillos del kit",
    ),
    reason: say(
        "All that holds the array are screws in the deck.",
        "Lo único que sostiene el arreglo son tornillos en el entablado.",
    ),
    sketch: &[
        Stroke::Edge(&[[8.0, 22.0], [92.0, 22.0]]),
        Stroke::Edge(&[[8.0, 30.0], [92.0, 30.0]]),
        Stroke::Thing([18.0, 36.0, 64.0, 6.0]),
        Stroke::Way([34.0, 50.0], [34.0, 20.0]),
        Stroke::Way([66.0, 50.0], [66.0, 20.0]),
        Stroke::Measure([88.0, 22.0], [88.0, 30.0]),
    ],
    source: of_kit,
    missing: |job| {
        if job.kit.deck.is_none() {
            return Some(
                pick("the kit does not say what deck it needs", "el kit no dice qué entablado necesita")
                    .into(),
            );
        }
        let deck = &job.site.building.deck;
        let unknown = deck.thickness.is_none() && deck.kind.is_none() && deck.rafter_spacing.is_none();
        unknown.then(|| tell!("the job does not say: {}", "la obra no dice: {}", unknown_of(deck).join(", ")))
    },
    run: Run::Whole(run),
};

fn unknown_of(deck: &Deck) -> Vec<&'static str> {
    [
        (pick("how thick the sheathing is", "qué grueso es el tablero"), deck.thickness.is_none()),
        (pick("what it is made of", "de qué está hecho"), deck.kind.is_none()),
        (
            pick("how far apart the rafters are", "qué tan separadas están las vigas"),
            deck.rafter_spacing.is_none(),
        ),
    ]
    .into_iter()
    .filter_map(|(name, unknown)| unknown.then_some(name))
    .collect()
}

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let Some(limits) = &case.job.kit.deck else { return };
    let deck = &case.job.site.building.deck;
    if case.blocks.is_empty() {
        return;
    }
    findings.extend(troubles(case, deck, limits).into_iter().map(|(what, measured, required, key)| Finding {
        message: tell!("The sheathing {what} {measured}; the kit asks {required}. Ask the maker, or add to the deck before the array goes on.", "El tablero {what} {measured}; el kit pide {required}. Pregunte al fabricante, o refuerce el \
        entablado antes de poner el arreglo."
        ),
        place: Place::default(),
        measured,
        required,
        source: RULE.source(case.job),
        ..Finding::of(RULE.code, Severity::Stop, format!("deck/{key}"))
    }));
    let unknown = unknown_of(deck);
    if !unknown.is_empty() {
        findings.push(Finding {
            message: tell!(
                "Of the deck the job does not say {}: that was not checked.",
                "Del entablado la obra no dice {}: eso no se revisó.",
                unknown.join(", ")
            ),
            measured: pick("not known", "no se sabe").into(),
            required: pick("a measurement on site", "una medida en el sitio").into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Note, "deck/unknown".into())
        });
    }
}

/// What of a deck the kit does not allow: what it is, measured, required, and a word for the key.
fn troubles(
    case: &Case<'_>,
    deck: &Deck,
    limits: &DeckLimits,
) -> Vec<(&'static str, String, String, &'static str)> {
    let units = case.units;
    let mut all = Vec::new();
    if let Some(thick) = deck.thickness.filter(|t| *t < limits.least_thickness - tolerance()) {
        let least = tell!("at least {}", "al menos {}", length(limits.least_thickness.metres(), units));
        all.push((
            pick("is", "tiene"),
            tell!("{} thick", "{} de grueso", too_short(thick.metres(), units)),
            least,
            "thickness",
        ));
    }
    if let Some(kind) = deck.kind.filter(|kind| !limits.kinds.contains(kind)) {
        let allowed: Vec<&str> = limits.kinds.iter().map(|kind| DeckKind::name(*kind)).collect();
        all.push((pick("is of", "es de"), kind.name().to_owned(), allowed.join(pick(" or ", " u ")), "kind"));
    }
    if let Some(span) = deck.rafter_spacing.filter(|span| *span > limits.most_span + tolerance()) {
        let most = tell!("at most {}", "como máximo {}", length(limits.most_span.metres(), units));
        all.push((pick("spans", "salva"), too_much(span.metres(), units), most, "span"));
    }
    all
}

fn tolerance() -> chalkcourse_geometry::Length {
    chalkcourse_geometry::Length::from_metres(TOLERANCE)
}

#[cfg(test)]
mod tests {
    use crate::Severity;
    use crate::testing::{gable_job, of};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Deck, DeckKind, Job};

    fn on(thick: f64, kind: DeckKind, span: f64) -> Job {
        let mut job = gable_job();
        job.site.building.deck = Deck {
            thickness: Some(Length::from_inches(thick)),
            kind: Some(kind),
            rafter_spacing: Some(Length::from_inches(span)),
            condition: None,
        };
        job
    }

    fn keys(job: &Job) -> Vec<String> {
        of(job, "deck").into_iter().map(|finding| finding.key).collect()
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
    fn what_is_not_known_is_told() {
        let mut job = on(0.5, DeckKind::Osb, 16.0);
        job.site.building.deck.rafter_spacing = None;
        let found = of(&job, "deck");
        assert!(found.len() == 1 && found[0].severity == Severity::Note, "{found:?}");
        job.site.building.deck = Deck::default();
        assert!(of(&job, "deck").is_empty());
        assert!(crate::checked(&job).iter().any(|line| line.code == "deck" && line.why_not.is_some()));
    }
}
