//! A hip or valley with modules on both sides is clear on both.
//!
//! Source: IFC 605.11 (2012, 2015): 18 in. Editions from 2018 on have no such number, and books on them leave it out.
//! Measured on the slope, where nothing is nearer than in plan would be: so the room is asked in plan, as the ridge's.

use super::{exempt, looked_at, source};
use crate::array::moves::{MustMove, ends, place_of};
use crate::case::{Case, Laid};
use crate::clear::{first_free, hull_around, stretch};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, to_segment};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{Way, block_name, length, sentence, the_edge, too_short};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Rect, dvec2};
use chalkcourse_job::Cell;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "fire-hip-valley",
    title: say(
        "A hip or valley between modules is clear",
        "Una limatesa o limahoya entre módulos está libre",
    ),
    reason: say(
        "A hip between two arrays is a way up, and a valley a way along.",
        "Una limatesa entre dos arreglos es un camino hacia arriba, y una limahoya un camino a lo largo.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Free(&[[42.0, 8.0], [58.0, 8.0], [58.0, 52.0], [42.0, 52.0]]),
        Stroke::Edge(&[[50.0, 8.0], [50.0, 52.0]]),
        Stroke::Module([14.0, 20.0, 26.0, 18.0]),
        Stroke::Wrong([54.0, 20.0, 26.0, 18.0]),
        Stroke::Measure([42.0, 44.0], [58.0, 44.0]),
    ],
    source: |job| {
        source(job, |fire| {
            fire.hip_or_valley
                .as_ref()
                .map_or(pick("not asked by this edition", "no lo pide esta edición"), |limit| &limit.source)
        })
    },
    missing: |job| {
        exempt(job).or_else(|| {
            let asked = job.rule_book.fire_access.as_ref().is_some_and(|fire| fire.hip_or_valley.is_some());
            (!asked).then(|| {
                pick(
                    "this edition has no number for hips and valleys",
                    "esta edición no tiene número para limatesas y limahoyas",
                )
                .into()
            })
        })
    },
    run: Run::Block(run, both_sides),
};

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &case.book.fire_access else { return };
    let Some(limit) = &fire.hip_or_valley else { return };
    if looked_at(fire, laid.face) {
        let asked = limit.value.metres();
        for span in hips_and_valleys(laid).filter(|span| on_both(case, span)) {
            findings.extend(finding(case, laid, span, asked, &limit.source));
        }
    }
}

fn hips_and_valleys<'l>(laid: &'l Laid<'_>) -> impl Iterator<Item = &'l EdgeSpan> {
    laid.face.edges.iter().filter(|span| matches!(span.kind, EdgeKind::Hip | EdgeKind::Valley))
}

/// Whether modules lie on the other side too.
fn on_both(case: &Case<'_>, span: &EdgeSpan) -> bool {
    span.neighbour.is_some_and(|n| case.on_face.get(n.face).is_some_and(|blocks| !blocks.is_empty()))
}

/// Which hips and valleys have modules on the other side, and by what name the faces there go.
fn both_sides(case: &Case<'_>, laid: &Laid<'_>) -> Vec<u64> {
    hips_and_valleys(laid)
        .map(|span| {
            let id = span.neighbour.and_then(|n| case.face_id(n.face)).map_or(0, |id| u64::from(id.0));
            id * 2 + u64::from(on_both(case, span))
        })
        .collect()
}

fn finding(case: &Case<'_>, laid: &Laid<'_>, span: &EdgeSpan, asked: f64, source: &str) -> Option<Finding> {
    let factor = laid.face.plane.pitch.slope_factor();
    let level = |p: DVec2| dvec2(p.x, p.y / factor);
    let flat = |rect: &Rect| Rect { min: level(rect.min), max: level(rect.max) };
    let (a, b) = (level(span.frame.0), level(span.frame.1));
    let near: Vec<(Cell, f64)> = laid
        .placed
        .modules
        .iter()
        .map(|module| (module.cell, to_segment(&flat(&module.rect), a, b)))
        .filter(|(_, away)| *away < asked - TOLERANCE)
        .collect();
    let nearest = near.iter().map(|(_, away)| *away).reduce(f64::min)?;
    let units = case.units;
    let inward = span.inward();
    let ways = Way::ALL.into_iter().filter(|way| way.unit().dot(inward) > 0.01);
    let by = ways
        .map(|way| {
            let on_slope = if matches!(way, Way::Up | Way::Down) { factor } else { 1.0 };
            let stretches = laid.rows.iter().filter_map(|row| {
                let row = flat(row);
                let (low, high) = stretch(&hull_around(&[a, b], &row), asked, row.centre(), way.unit())?;
                Some((low * on_slope, high * on_slope))
            });
            crate::clear::Move { way, by: first_free(stretches.collect(), units) }
        })
        .min_by(|a, b| a.by.total_cmp(&b.by))?;
    let (measured, required) = (too_short(nearest, units), length(asked, units));
    let (kind, the_kind) = (span.kind.name(), the_edge(span.kind));
    let found = MustMove {
        code: RULE.code,
        severity: Severity::Stop,
        key: format!(
            "fire-hip-valley/block-{}/face-{}/side-{}/face-{}",
            laid.block.id,
            laid.on.id,
            span.id,
            span.neighbour.and_then(|n| case.face_id(n.face)).map_or(0, |id| id.0)
        ),
        says: tell!(
            "{} leaves {measured} beside the {kind} of {}, in plan, with modules on the other side too; the code asks {required}",
            "{} deja {measured} junto a {the_kind} de {}, en planta, con módulos también del otro lado; el \
        código pide {required}",
            sentence(&block_name(laid.block)),
            case.face_name(laid.placed.face),
        ),
        named: false,
        measured: tell!("{measured} in plan", "{measured} en planta"),
        required: tell!("at least {required} in plan", "al menos {required} en planta"),
        source: source.to_owned(),
        place: place_of(laid, near.iter().map(|(cell, _)| *cell).collect(), ends([span])),
        moving: laid,
        by,
    };
    Some(found.finding(case))
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, fixed, gable_job, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Job, Limit};

    const INCH: f64 = 0.0254;

    /// Two planes at a hip from (0, 0) to (6, 6) in plan; a block so many inches of plan beside it, to the right of its
    /// upper left corner, and one far off on the other plane.
    fn beside(inches: f64) -> Job {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "West", &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 6.0, 270.0, 3.0),
        ];
        let book = book(&mut job);
        book.setbacks.clear();
        book.fire_access.as_mut().unwrap().hip_or_valley =
            Some(Limit { value: Length::from_inches(18.0), source: "IFC 605.11".into() });
        // The corner is at plan height (0.5 + 1.134) / 1.118; square to the 45° hip is 1/√2 of what lies beside it.
        let beside = inches * INCH * std::f64::consts::SQRT_2;
        job.blocks = vec![
            block(3, 1, ((0.5 + 1.134) / 1.25f64.sqrt() + beside, 0.5), 1, 1),
            block(4, 2, (6.0, 0.5), 1, 1),
        ];
        job
    }

    #[test]
    fn short_of_at_and_beyond_18_in() {
        let on_south = |job: &Job| {
            of(job, "fire-hip-valley").into_iter().filter(|f| f.place.face.is_some_and(|f| f.0 == 1)).count()
        };
        assert_eq!(on_south(&beside(19.0)), 0);
        assert_eq!(on_south(&beside(18.0)), 0);
        let job = beside(16.0);
        let short = one(&job, "fire-hip-valley");
        assert!(short.message.contains("leaves 16\" beside the hip"), "{}", short.message);
        fixed(&job, &short);
        let mut job = beside(16.0);
        job.blocks.pop();
        assert!(of(&job, "fire-hip-valley").is_empty(), "modules on one side alone");
    }
}
