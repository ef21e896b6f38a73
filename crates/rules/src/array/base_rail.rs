//! The base rail lies on the deck, far enough above the eave, and is no longer than the kit lets it be without a gap.
//!
//! Source: the kit; the demo kit's numbers are invented with it. The rail carries the whole block: it is screwed to the deck
//! on one snapped line, and the starter and the drip edge need the room below it.

use super::moves::{MustMove, ends, into_the_face, place_of};
use super::of_kit;
use crate::case::{Case, Laid};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, at_least_to_segment, overhang, to_segment};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{block_name, length, sentence, too_much, too_short};
use chalkcourse_geometry::{EdgeKind, Rect, dvec2};
use chalkcourse_job::{Cell, RailLimits};
use chalkcourse_layout::RunKind;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "base-rail",
    title: say("The base rail is where the kit lets it be", "El riel base está donde el kit lo deja estar"),
    reason: say(
        "The rail carries the block: it needs deck under all of it, room for the starter below, and room to grow.",
        "El riel lleva el bloque: necesita entablado debajo de todo, lugar para la hilada inicial debajo y \
        lugar para dilatarse.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Module([20.0, 24.0, 20.0, 14.0]),
        Stroke::Module([40.0, 24.0, 20.0, 14.0]),
        Stroke::Module([60.0, 24.0, 20.0, 14.0]),
        Stroke::Edge(&[[17.0, 22.0], [83.0, 22.0]]),
        Stroke::Measure([50.0, 8.0], [50.0, 22.0]),
    ],
    source: of_kit,
    missing: |job| {
        job.kit.base_rail.is_none().then(|| {
            pick(
                "the kit does not say where its base rail may be",
                "el kit no dice dónde puede estar su riel base",
            )
            .into()
        })
    },
    run: Run::block(run),
};

/// The strips of deck that the base rail of a block covers, in the frame of its face.
fn rails(case: &Case<'_>, laid: &Laid<'_>) -> Vec<Rect> {
    let down = dvec2(0.0, case.job.kit.flashing.base.metres());
    let runs = laid.placed.runs.iter().filter(|run| run.kind == RunKind::BaseRail);
    runs.map(|run| Rect { min: run.from - down, max: run.to }).collect()
}

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let Some(limits) = case.job.kit.base_rail else { return };
    let rails = rails(case, laid);
    let off = near_the_eave(case, laid, &rails, limits).or_else(|| off_the_deck(case, laid, &rails));
    findings.extend(off);
    findings.extend(too_long(case, laid, &rails, limits));
}

/// Modules of the lowest row.
fn lowest(laid: &Laid<'_>) -> Vec<Cell> {
    let row = laid.placed.modules.iter().map(|module| module.cell.row).min();
    laid.placed.modules.iter().map(|module| module.cell).filter(|cell| Some(cell.row) == row).collect()
}

fn near_the_eave(case: &Case<'_>, laid: &Laid<'_>, rails: &[Rect], limits: RailLimits) -> Option<Finding> {
    let least = limits.least_above_eave.metres();
    let eaves = || laid.face.edges.iter().filter(|span| span.kind == EdgeKind::Eave);
    let short = |span: &&chalkcourse_geometry::EdgeSpan| {
        let (a, b) = span.frame;
        rails.iter().any(|rail| {
            at_least_to_segment(rail, a, b) < least - TOLERANCE && to_segment(rail, a, b) < least - TOLERANCE
        })
    };
    let near: Vec<_> = eaves().filter(short).collect();
    if near.is_empty() {
        return None;
    }
    let away =
        near.iter().flat_map(|span| rails.iter().map(|rail| to_segment(rail, span.frame.0, span.frame.1)));
    let nearest = away.fold(f64::INFINITY, f64::min);
    let by = into_the_face(rails, &near, least, case)?;
    let (measured, required) = (too_short(nearest, case.units), length(least, case.units));
    let found = MustMove {
        code: RULE.code,
        severity: Severity::Stop,
        key: format!("base-rail/block-{}/face-{}/eave", laid.block.id, laid.on.id),
        says: tell!(
            "The base rail of {} is {measured} above the eave of {}; the kit asks {required}",
            "El riel base de {} está {measured} arriba del alero de {}; el kit pide {required}",
            block_name(laid.block),
            case.face_name(laid.placed.face)
        ),
        named: false,
        measured,
        required: tell!("at least {required}", "al menos {required}"),
        source: RULE.source(case.job),
        place: place_of(laid, lowest(laid), ends(near)),
        moving: laid,
        by,
    };
    Some(found.finding(case))
}

fn off_the_deck(case: &Case<'_>, laid: &Laid<'_>, rails: &[Rect]) -> Option<Finding> {
    let over = rails.iter().map(|rail| overhang(rail, &laid.face.frame)).fold(0.0, f64::max);
    if over <= TOLERANCE * 2.0 {
        return None;
    }
    let measured = too_much(over, case.units);
    Some(Finding {
        message: tell!(
            "The base rail of {} reaches {measured} beyond the deck of {}. Move the block until there is deck under all of it.",
            "El riel base de {} sobresale {measured} del entablado de {}. Mueva el bloque hasta que haya \
        entablado debajo de todo.",
            block_name(laid.block),
            case.face_name(laid.placed.face)
        ),
        place: place_of(laid, lowest(laid), laid.face.plan.outer.clone()),
        measured: tell!("{measured} beyond", "sobresale {measured}"),
        required: pick("all on the deck", "todo sobre el entablado").into(),
        source: RULE.source(case.job),
        ..Finding::of(
            RULE.code,
            Severity::Stop,
            format!("base-rail/block-{}/face-{}/deck", laid.block.id, laid.on.id),
        )
    })
}

fn too_long(case: &Case<'_>, laid: &Laid<'_>, rails: &[Rect], limits: RailLimits) -> Option<Finding> {
    let most = limits.longest.metres();
    let longest = rails.iter().map(|rail| rail.size().x).fold(0.0, f64::max);
    if longest <= most + TOLERANCE {
        return None;
    }
    let (measured, required) = (too_much(longest, case.units), length(most, case.units));
    Some(Finding {
        message: sentence(&tell!(
            "the base rail of {} is {measured} long without a break; the kit lets it be {required}. Split the block, or leave a gap \
             in the rail where the maker shows it.",
            "el riel base de {} mide {measured} sin interrupción; el kit permite {required}. Divida el bloque, \
        o deje un espacio en el riel donde lo muestra el fabricante.",
            block_name(laid.block)
        )),
        place: place_of(laid, lowest(laid), Vec::new()),
        measured,
        required: tell!("at most {required}", "como máximo {required}"),
        source: RULE.source(case.job),
        ..Finding::of(
            RULE.code,
            Severity::Caution,
            format!("base-rail/block-{}/face-{}/length", laid.block.id, laid.on.id),
        )
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, fixed, gable_job, kit, of, one};
    use chalkcourse_geometry::{Length, dvec2};
    use chalkcourse_job::Job;

    const INCH: f64 = 0.0254;

    /// The modules so many inches above the eave; the demo kit's rail reaches 2 in below them and keeps 2 in.
    fn at(inches: f64) -> Job {
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
        assert_eq!(
            short.message,
            "The base rail of block 3 is 1\" above the eave of face South; the kit asks 2\". Move the block 1\" up the slope."
        );
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
        assert!(off.message.contains("beyond the deck"), "{}", off.message);
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
        assert!(crate::checked(&job).iter().any(|line| line.code == "base-rail" && !line.on));
    }
}
