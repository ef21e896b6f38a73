//! A hip or valley with modules on both sides is clear on both.
//!
//! Source: IFC 605.11 (2012, 2015): 18 in. Editions from 2018 on have no such number, and books on them leave it out. A distance
//! on the slope is never less than in plan; the room is required in plan, as at the ridge.

use super::source_of;
use crate::Facts;
use crate::by_limit::TooNear;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use chalkcourse_limits::KeepOut;

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
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    findings.extend(keep_outs.iter().filter_map(|keep_out| {
        let facts = Facts::FireHipValley { kind: keep_out.against_kind()? };
        Some(TooNear::of(view.laid, keep_out)?.finding(view, Severity::Stop, facts))
    }));
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, gable_job, measures, of, office, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Limit, Resolved};

    const INCH: f64 = 0.0254;

    /// Two planes at a hip from (0, 0) to (6, 6) in plan; a block at a distance in inches of plan from it, to the right of its
    /// upper left corner, and one far away on the other plane.
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
        // The corner is at plan height (0.5 + 1.134) / 1.118; square to the 45° hip, the distance is 1/√2 of the horizontal one.
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
        measures(&one(&beside(16.0), "fire-hip-valley"), 16.0, 18.0);
        let mut job = beside(16.0);
        job.blocks.pop();
        assert!(of(&job, "fire-hip-valley").is_empty(), "modules on one side alone");
    }
}
