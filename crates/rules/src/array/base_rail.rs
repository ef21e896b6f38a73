//! The base rail lies on the deck, far enough above the eave, and is no longer than the kit lets it be without a gap.
//!
//! Source: the kit; the demo kit's numbers are invented with it. The rail carries the whole block: it is screwed to the deck
//! on one snapped line, and the starter and the drip edge need the room below it.

use super::near::{ends, into_the_face, place_of};
use crate::finding::{Finding, Severity};
use crate::measure::{at_least_to_segment, length};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, Laid};
use crate::{Authority, Facts, WhyNot};
use chalkcourse_geometry::{EdgeKind, EdgeSpan, Rect, dvec2};
use chalkcourse_job::{Cell, RailLimits, Required, Subject};
use chalkcourse_layout::RunKind;
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "base-rail",
    sketch: &[
        SLOPE,
        Stroke::Module([20.0, 24.0, 20.0, 14.0]),
        Stroke::Module([40.0, 24.0, 20.0, 14.0]),
        Stroke::Module([60.0, 24.0, 20.0, 14.0]),
        Stroke::Edge(&[[17.0, 22.0], [83.0, 22.0]]),
        Stroke::Measure([50.0, 8.0], [50.0, 22.0]),
    ],
    source: |_| Authority::Kit,
    missing: |job| job.kit.base_rail.is_none().then_some(WhyNot::KitWithoutRail),
    run: Run::Block(run),
};

/// The strips of deck that the base rail of a block covers, in the frame of its face.
fn rails(view: BlockView<'_>) -> Vec<Rect> {
    let down = dvec2(0.0, view.kit().flashing.base.metres());
    let runs = view.laid.placed.runs.iter().filter(|run| run.kind == RunKind::BaseRail);
    runs.map(|run| Rect { min: run.from - down, max: run.to }).collect()
}

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    let Some(limits) = view.kit().base_rail else { return };
    let rails = rails(view);
    let off = near_the_eave(view, &rails, limits).or_else(|| off_the_deck(view.laid, &rails));
    findings.extend(off);
    findings.extend(too_long(view.laid, &rails, limits));
}

/// Modules of the lowest row.
fn lowest(laid: &Laid<'_>) -> Vec<Cell> {
    let row = laid.placed.modules.iter().map(|module| module.cell.row).min();
    laid.placed.modules.iter().map(|module| module.cell).filter(|cell| Some(cell.row) == row).collect()
}

fn subject(laid: &Laid<'_>, matter: &'static str) -> Subject {
    Subject::OfBlock(laid.block.id, laid.on.id, matter.into())
}

fn near_the_eave(view: BlockView<'_>, rails: &[Rect], limits: RailLimits) -> Option<Finding> {
    let (laid, least) = (view.laid, limits.least_above_eave.metres());
    let short = |span: &&EdgeSpan| {
        let (a, b) = span.frame;
        rails.iter().any(|rail| {
            at_least_to_segment(rail, a, b) < least - TOLERANCE
                && rail.distance_to_segment(a, b) < least - TOLERANCE
        })
    };
    let near: Vec<_> =
        laid.face.edges.iter().filter(|span| span.kind == EdgeKind::Eave).filter(short).collect();
    let away = near
        .iter()
        .flat_map(|span| rails.iter().map(|rail| rail.distance_to_segment(span.frame.0, span.frame.1)));
    let nearest = away.reduce(f64::min)?;
    Some(Finding {
        measured: length(nearest),
        required: Required::AtLeast(length(least)),
        source: Authority::Kit,
        candidate: into_the_face(rails, &near, least, view.units()).map(|by| by.of(laid.block)),
        place: place_of(laid, lowest(laid), ends(near)),
        ..Finding::of(RULE.code, Severity::Stop, subject(laid, "eave"), Facts::RailAboveEave)
    })
}

fn off_the_deck(laid: &Laid<'_>, rails: &[Rect]) -> Option<Finding> {
    let over = rails.iter().map(|rail| rail.overhang(&laid.face.frame, TOLERANCE)).fold(0.0, f64::max);
    (over > TOLERANCE * 2.0).then(|| Finding {
        measured: length(over),
        required: Required::AtMost(length(0.0)),
        source: Authority::Kit,
        place: place_of(laid, lowest(laid), laid.face.plan.outer.clone()),
        ..Finding::of(RULE.code, Severity::Stop, subject(laid, "deck"), Facts::RailOffDeck)
    })
}

fn too_long(laid: &Laid<'_>, rails: &[Rect], limits: RailLimits) -> Option<Finding> {
    let most = limits.longest.metres();
    let longest = rails.iter().map(|rail| rail.size().x).fold(0.0, f64::max);
    (longest > most + TOLERANCE).then(|| Finding {
        measured: length(longest),
        required: Required::AtMost(length(most)),
        source: Authority::Kit,
        place: place_of(laid, lowest(laid), Vec::new()),
        ..Finding::of(RULE.code, Severity::Caution, subject(laid, "length"), Facts::RailTooLong)
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, fixed, gable_job, kit, measures, moves, of, one, why_not};
    use crate::{Facts, WhyNot};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::Resolved;

    const INCH: f64 = 0.0254;

    /// The modules so many inches above the eave; the demo kit's rail reaches 2 in below them and keeps 2 in.
    fn at(inches: f64) -> Resolved {
        let mut job = gable_job();
        book(&mut job).setbacks.clear();
        job.blocks[0].at.y = inches * INCH;
        job
    }

    #[test]
    fn short_of_at_and_beyond_the_room_above_the_eave() {
        assert!(of(&at(5.0), "base-rail").is_empty());
        assert!(of(&at(4.0), "base-rail").is_empty());
        let job = at(3.0);
        let short = one(&job, "base-rail");
        measures(&short, 1.0, 2.0);
        moves(&short, 0.0, 1.0);
        fixed(&job, &short);
        let job = at(0.0);
        fixed(&job, &one(&job, "base-rail"));
    }

    #[test]
    fn over_a_hole_there_is_no_deck() {
        let mut job = at(60.0);
        // The rail is 58 to 60 in up the slope, 1.47 to 1.52 m; in plan 1.318 to 1.363 m.
        let hole = [(4.0, 1.2), (4.5, 1.2), (4.5, 1.34), (4.0, 1.34)];
        job.faces[0] = job.faces[0].with_hole(hole.map(|(x, y)| dvec2(x, y)).to_vec());
        let off = one(&job, "base-rail");
        assert_eq!(off.facts, Facts::RailOffDeck);
        job.faces[0].outline.holes[0].iter_mut().for_each(|p| p.y -= 0.1);
        assert!(of(&job, "base-rail").is_empty());
    }

    /// The block is 5.172 m wide.
    #[test]
    fn longer_than_just_and_shorter_than_without_a_gap() {
        for (longest, expect) in [(5.0, 1), (5.172, 0), (6.0, 0)] {
            let mut job = at(12.0);
            kit(&mut job).base_rail.as_mut().unwrap().longest = Length::from_metres(longest);
            assert_eq!(of(&job, "base-rail").len(), expect, "{longest}");
        }
    }

    #[test]
    fn a_kit_that_does_not_say_is_not_checked() {
        let mut job = at(0.0);
        kit(&mut job).base_rail = None;
        assert!(of(&job, "base-rail").is_empty());
        assert_eq!(why_not(&job, "base-rail"), Some(WhyNot::KitWithoutRail));
    }
}
