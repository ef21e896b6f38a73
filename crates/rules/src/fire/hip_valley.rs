//! A hip or valley with modules on both sides is clear on both.
//!
//! Source: IFC 605.11 (2012, 2015): 18 in. Editions from 2018 on have no such number, and books on them leave it out.
//! Measured on the slope, where nothing is nearer than in plan would be: so the room is asked in plan, as the ridge's.

use super::{exempt, level, source_of};
use crate::array::near::{Side, ends, nearer, place_of, sides};
use crate::clear::{Move, Way, first_free};
use crate::finding::{Finding, Severity};
use crate::measure::in_plan;
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, Laid, ModulesBeyond};
use crate::{Authority, Facts, WhyNot};
use chalkcourse_geometry::{Convex, EdgeKind, Length, Rect, Units};
use chalkcourse_job::{Limit, Required, Subject};
use chalkcourse_limits::{TOLERANCE, looked_at};

pub(crate) const RULE: Rule = Rule {
    code: "fire-hip-valley",
    sketch: &[
        SLOPE,
        Stroke::Free(&[[42.0, 8.0], [58.0, 8.0], [58.0, 52.0], [42.0, 52.0]]),
        Stroke::Edge(&[[50.0, 8.0], [50.0, 52.0]]),
        Stroke::Module([14.0, 20.0, 26.0, 18.0]),
        Stroke::Wrong([54.0, 20.0, 26.0, 18.0]),
        Stroke::Measure([42.0, 44.0], [58.0, 44.0]),
    ],
    source: |job| source_of(job, |fire| fire.hip_or_valley.as_ref().map(|limit| &limit.source)),
    missing: |job| {
        exempt(job).or_else(|| {
            let asked = job.rule_book.fire_access.as_ref().is_some_and(|fire| fire.hip_or_valley.is_some());
            (!asked).then_some(WhyNot::NoNumberInEdition)
        })
    },
    run: Run::BlockAndBeyond(run),
};

fn run(view: BlockView<'_>, beyond: &ModulesBeyond, findings: &mut Vec<Finding>) {
    let Some(fire) = &view.book().fire_access else { return };
    let Some(limit) = &fire.hip_or_valley else { return };
    if looked_at(fire, view.laid.face) {
        let lines = beyond.spans(view.laid.face);
        let lines = lines.filter(|span| matches!(span.kind, EdgeKind::Hip | EdgeKind::Valley));
        findings.extend(sides(lines).into_iter().filter_map(|side| finding(view, side, limit)));
    }
}

fn finding(view: BlockView<'_>, side: Side<'_>, limit: &Limit<Length>) -> Option<Finding> {
    let (laid, asked) = (view.laid, limit.value.metres());
    let away = |rect: &Rect| {
        let rect = level(laid.face, *rect);
        let spans = side.spans.iter().map(|span| level(laid.face, span.frame));
        spans.map(|(a, b)| rect.distance_to_segment(a, b)).fold(f64::INFINITY, f64::min)
    };
    let (cells, nearest) = nearer(laid, asked - TOLERANCE, away)?;
    let subject = Subject::Side(laid.block.id, laid.on.id, side.id, side.kind);
    Some(Finding {
        measured: in_plan(nearest),
        required: Required::AtLeast(in_plan(asked)),
        source: Authority::of(&limit.source),
        candidate: move_off(laid, &side, asked, view.units()).map(|by| by.of(laid.block)),
        place: place_of(laid, cells, ends(side.spans)),
        ..Finding::of(RULE.code, Severity::Stop, subject, Facts::FireHipValley { kind: side.kind })
    })
}

/// The least move away from a line, into the face.
fn move_off(laid: &Laid<'_>, side: &Side<'_>, asked: f64, units: Units) -> Option<Move> {
    let inward = side.spans.first()?.inward();
    let factor = laid.face.plane.pitch.slope_factor();
    let ways = Way::ALL.into_iter().filter(|way| way.unit().dot(inward) > 0.01);
    ways.map(|way| {
        let on_slope = if matches!(way, Way::Up | Way::Down) { factor } else { 1.0 };
        let pairs = laid.rows.iter().flat_map(|row| side.spans.iter().map(move |span| (row, span)));
        let stretches = pairs.filter_map(|(row, span)| {
            let (row, (a, b)) = (level(laid.face, *row), level(laid.face, span.frame));
            let (low, high) = Convex::segment(a, b).moves_of(&row).too_near_along(asked, way.unit())?;
            Some((low * on_slope, high * on_slope))
        });
        Move { way, by: first_free(stretches.collect(), units) }
    })
    .min_by(|a, b| a.by.total_cmp(&b.by))
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, fixed, gable_job, measures, of, office, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Limit, Resolved};

    const INCH: f64 = 0.0254;

    /// Two planes at a hip from (0, 0) to (6, 6) in plan; a block so many inches of plan beside it, to the right of its
    /// upper left corner, and one far off on the other plane.
    fn beside(inches: f64) -> Resolved {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "West", &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 6.0, 270.0, 3.0),
        ];
        let book = book(&mut job);
        book.setbacks.clear();
        book.fire_access.as_mut().unwrap().hip_or_valley =
            Some(Limit { value: Length::from_inches(18.0), source: office() });
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
        let on_south = |job: &Resolved| {
            of(job, "fire-hip-valley").into_iter().filter(|f| f.place.face.is_some_and(|f| f.0 == 1)).count()
        };
        assert_eq!(on_south(&beside(19.0)), 0);
        assert_eq!(on_south(&beside(18.0)), 0);
        let job = beside(16.0);
        let short = one(&job, "fire-hip-valley");
        measures(&short, 16.0, 18.0);
        fixed(&job, &short);
        let mut job = beside(16.0);
        job.blocks.pop();
        assert!(of(&job, "fire-hip-valley").is_empty(), "modules on one side alone");
    }
}
