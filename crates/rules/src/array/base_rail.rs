//! The base rail lies on the deck, far enough above the eave, and is no longer than the kit allows without a gap.
//!
//! Source: the kit; the demo kit's numbers are invented with it. The rail carries the whole block: it is screwed to the deck on
//! one snapped line, and the starter and the drip edge need the room below it.

use crate::by_limit::{TooNear, ends, place_of};
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, LaidBlock};
use crate::{Authority, Facts};
use chalkcourse_job::{Cell, FindingKey, Required, Subject};
use chalkcourse_layout::{Run as Stretch, RunKind};
use chalkcourse_limits::{Against, KeepOut, TOLERANCE};

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
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    let near: Vec<TooNear<'_>> = keep_outs.iter().filter_map(|it| TooNear::of(view.laid, it)).collect();
    let (deck, eaves): (Vec<_>, Vec<_>) =
        near.into_iter().partition(|near| near.keep_out.against == Against::Border);
    let off = near_the_eave(view, eaves).or_else(|| off_the_deck(view, deck.into_iter().next()?));
    findings.extend(off);
    findings.extend(too_long(view));
}

/// Modules of the lowest row.
fn lowest(laid: &LaidBlock<'_>) -> Vec<Cell> {
    let row = laid.placed.modules.iter().map(|module| module.cell.row).min();
    laid.placed.modules.iter().map(|module| module.cell).filter(|cell| Some(cell.row) == row).collect()
}

fn subject(laid: &LaidBlock<'_>, matter: &'static str) -> Subject {
    Subject::OfBlock(laid.block.id, laid.on.id, matter.into())
}

/// One finding for all eaves: the rail is a single part, snapped to one line.
fn near_the_eave(view: BlockView<'_>, eaves: Vec<TooNear<'_>>) -> Option<Finding> {
    let laid = view.laid;
    let keep_outs: Vec<&KeepOut> = eaves.iter().map(|near| near.keep_out).collect();
    let shape = keep_outs.iter().flat_map(|keep_out| ends(laid, keep_out)).collect();
    let nearest = eaves.iter().map(TooNear::away).reduce(f64::min)?;
    let finding = eaves.into_iter().next()?.finding(view, Severity::Stop, Facts::RailAboveEave);
    Some(Finding {
        key: FindingKey::new(RULE.code, subject(laid, "eave")),
        measured: length(nearest),
        required: Required::AtLeast(length(keep_outs.first()?.asked)),
        place: Location { cells: lowest(laid), shape, ..finding.place },
        ..finding
    })
}

fn off_the_deck(view: BlockView<'_>, deck: TooNear<'_>) -> Option<Finding> {
    let finding = deck.finding(view, Severity::Stop, Facts::RailOffDeck);
    Some(Finding {
        key: FindingKey::new(RULE.code, subject(view.laid, "deck")),
        place: Location { cells: lowest(view.laid), ..finding.place },
        ..finding
    })
}

/// A rail too long without a gap; this does not limit any single module.
fn too_long(view: BlockView<'_>) -> Option<Finding> {
    let laid = view.laid;
    let most = view.kit().base_rail?.longest.metres();
    let longest = laid.placed.runs_of(RunKind::BaseRail).map(Stretch::length).fold(0.0, f64::max);
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
    use crate::testing::{book, gable_job, kit, measures, of, one, why_not};
    use crate::{Facts, WhyNot};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::Resolved;

    const INCH: f64 = 0.0254;

    /// The modules at a height above the eave, in inches; the demo kit's rail extends 2 in below them and needs 2 in of
    /// clearance.
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
        measures(&one(&at(3.0), "base-rail"), 1.0, 2.0);
        assert_eq!(of(&at(0.0), "base-rail").len(), 1);
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
    fn a_kit_without_a_limit_is_not_checked() {
        let mut job = at(0.0);
        kit(&mut job).base_rail = None;
        assert!(of(&job, "base-rail").is_empty());
        assert_eq!(why_not(&job, "base-rail"), Some(WhyNot::KitWithoutRail));
    }
}
