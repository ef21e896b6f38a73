//! Side flashing stays clear of the lines that water and caps lie on: valleys and hips.
//!
//! Source: the rule book. A valley's lining reaches to both sides of its line (IRC R905.2.8.2, 2018: an open metal valley
//! is at least 24 in wide) and takes no nail near it; a hip's caps lap over the faces on both sides. How near flashing and
//! its nails may come is common practice, no source. Measured on the slope, square to the line, from the modules by
//! as much more as the kit's side flashing reaches.

use super::moves::{MustMove, ends, into_the_face, place_of};
use crate::case::{Case, Laid};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, at_least_to_segment, to_segment};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{block_name, length, sentence, the_edge, too_short};
use chalkcourse_geometry::{EdgeKind, EdgeSpan, Length};
use chalkcourse_job::{Cell, Job, Limit};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "valley-hip",
    title: say("Flashing keeps off valleys and hips", "Los tapajuntas se apartan de limahoyas y limatesas"),
    reason: say(
        "A nail in a valley lining lets water in, and flashing under hip caps lifts them.",
        "Un clavo en el forro de una limahoya deja entrar agua, y un tapajuntas bajo las tapas de limatesa \
        las levanta.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Edge(&[[16.0, 8.0], [60.0, 52.0]]),
        Stroke::Limit(&[[25.0, 8.0], [69.0, 52.0]]),
        Stroke::Wrong([44.0, 16.0, 26.0, 16.0]),
        Stroke::Measure([40.0, 32.0], [49.0, 32.0]),
    ],
    source: |job| {
        [EdgeKind::Valley, EdgeKind::Hip].into_iter().find_map(|kind| asked(job, kind)).map_or_else(
            || pick("none in this book", "ninguno en este libro").into(),
            |limit| limit.source.clone(),
        )
    },
    missing: |job| {
        let none = asked(job, EdgeKind::Valley).or(asked(job, EdgeKind::Hip)).is_none();
        none.then(|| pick("the rule book has no such limit", "el libro de reglas no tiene ese límite").into())
    },
    run: Run::block(run),
};

/// What a book asks from the line of an edge to the side flashing; `None` for kinds that have no such line.
fn asked(job: &Job, kind: EdgeKind) -> Option<&Limit<Length>> {
    let roofing = job.rule_book.roofing.as_ref()?;
    match kind {
        EdgeKind::Valley => roofing.valley_clear.as_ref(),
        EdgeKind::Hip => roofing.hip_clear.as_ref(),
        _ => None,
    }
}

/// How far modules stay from a kind of edge so that their side flashing keeps clear of it, metres on the slope; 0 where
/// nothing is asked.
pub fn flashing_room(job: &Job, kind: EdgeKind) -> f64 {
    asked(job, kind).map_or(0.0, |limit| limit.value.metres() + job.kit.flashing.side.metres())
}

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    findings.extend(laid.face.edges.iter().filter_map(|span| finding(case, laid, span)));
}

fn finding(case: &Case<'_>, laid: &Laid<'_>, span: &EdgeSpan) -> Option<Finding> {
    let limit = asked(case.job, span.kind)?;
    let side = case.job.kit.flashing.side.metres();
    let reach = flashing_room(case.job, span.kind);
    let (a, b) = span.frame;
    if at_least_to_segment(&laid.bounds, a, b) >= reach - TOLERANCE {
        return None;
    }
    let near: Vec<(Cell, f64)> = laid
        .placed
        .modules
        .iter()
        .map(|module| (module.cell, to_segment(&module.rect, a, b)))
        .filter(|(_, away)| *away < reach - TOLERANCE)
        .collect();
    let nearest = near.iter().map(|(_, away)| *away).reduce(f64::min)?;
    let (units, kind, the_kind) = (case.units, span.kind.name(), the_edge(span.kind));
    let by = into_the_face(&laid.rows, &[span], reach, case)?;
    let (measured, required) = (too_short(nearest - side, units), length(limit.value.metres(), units));
    let comes = if nearest > side {
        tell!("comes within {measured} of the {kind}", "llega a {measured} de {the_kind}")
    } else {
        tell!("lies on the {kind}", "está sobre {the_kind}")
    };
    Some(
        MustMove {
            code: RULE.code,
            severity: Severity::Stop,
            key: format!(
                "valley-hip/block-{}/face-{}/side-{}/face-{}",
                laid.block.id,
                laid.on.id,
                span.id,
                span.neighbour.and_then(|n| case.face_id(n.face)).map_or(0, |id| id.0)
            ),
            says: tell!(
                "The side flashing of {}, {} wide, {comes} of {}; the book asks {required}",
                "El tapajuntas lateral de {}, de {} de ancho, {comes} de {}; el libro pide {required}",
                block_name(laid.block),
                length(side, units),
                case.face_name(laid.placed.face),
            ),
            named: false,
            measured: sentence(&measured),
            required: tell!("at least {required}", "al menos {required}"),
            source: limit.source.clone(),
            place: place_of(laid, near.into_iter().map(|(cell, _)| cell).collect(), ends([span])),
            moving: laid,
            by,
        }
        .finding(case),
    )
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, fixed, gable_job, kit, of, one};
    use chalkcourse_geometry::{EdgeKind, Length, SideId, dvec2};
    use chalkcourse_job::{Job, Limit, Overrule};

    const INCH: f64 = 0.0254;

    /// Two planes at a hip from (0, 0) to (6, 6) in plan, which a person may have said to be a valley, and a block whose upper
    /// left corner, the nearest, is so many inches from it, square to it on the slope. The kit's side flashing is 4 in
    /// wide, the book asks 6 in beside a valley and 5 in beside a hip.
    fn beside(inches: f64, kind: EdgeKind) -> Job {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "West", &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 6.0, 270.0, 3.0),
        ];
        job.faces[0].overruled = vec![Overrule { side: SideId(2), kind }];
        let book = book(&mut job);
        book.setbacks.clear();
        book.fire_access = None;
        let roofing = book.roofing.as_mut().unwrap();
        let limit =
            |inches| Some(Limit { value: Length::from_inches(inches), source: "common practice".into() });
        roofing.hip_clear = limit(5.0);
        roofing.valley_clear = limit(6.0);
        kit(&mut job).flashing.side = Length::from_inches(4.0);
        // In the frame of the face the line rises by the slope factor for each metre along the eave.
        let line = dvec2(1.0, 1.25f64.sqrt()).normalize();
        let foot = line * 2.5;
        let corner = foot + dvec2(line.y, -line.x) * inches * INCH;
        job.blocks = vec![block(3, 1, (corner.x, corner.y - 1.134), 1, 1)];
        job
    }

    #[test]
    fn short_of_at_and_beyond_what_is_asked() {
        for (kind, asked) in [(EdgeKind::Hip, 9.0), (EdgeKind::Valley, 10.0)] {
            assert!(of(&beside(asked + 1.0, kind), "valley-hip").is_empty());
            assert!(of(&beside(asked, kind), "valley-hip").is_empty());
            let job = beside(asked - 2.0, kind);
            let short = one(&job, "valley-hip");
            let words = format!("4\" wide, comes within {}\" of the {}", asked - 6.0, kind.name());
            assert!(short.message.contains(&words), "{}", short.message);
            fixed(&job, &short);
        }
    }

    #[test]
    fn a_book_without_the_limit_asks_nothing() {
        let mut job = beside(7.0, EdgeKind::Hip);
        book(&mut job).roofing.as_mut().unwrap().hip_clear = None;
        assert!(of(&job, "valley-hip").is_empty());
    }

    #[test]
    fn flashing_over_the_line_lies_on_it() {
        let job = beside(2.0, EdgeKind::Hip);
        let over = one(&job, "valley-hip");
        assert!(over.message.contains("lies on the hip"), "{}", over.message);
        fixed(&job, &over);
    }
}
