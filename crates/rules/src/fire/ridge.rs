//! Both sides of a level ridge are clear, depending on the share of the plan roof area that the array covers.
//!
//! Source: IRC R324.6.2 / IFC 1205.2.2: 18 in for up to 33 % (66 % with sprinklers), 36 in beyond. The share is of the whole
//! roof, and exactly 33 % counts as not more; the distance is measured in plan, the safe reading of a code that specifies
//! neither.

use super::source;
use crate::Facts;
use crate::by_limit::TooNear;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use chalkcourse_limits::KeepOut;

pub(crate) const RULE: Rule = Rule {
    code: "fire-ridge",
    sketch: &[
        SLOPE,
        Stroke::Free(&[[8.0, 41.0], [92.0, 41.0], [92.0, 52.0], [8.0, 52.0]]),
        Stroke::Module([26.0, 12.0, 24.0, 14.0]),
        Stroke::Module([50.0, 12.0, 24.0, 14.0]),
        Stroke::Module([26.0, 26.0, 24.0, 15.0]),
        Stroke::Wrong([50.0, 32.0, 24.0, 15.0]),
        Stroke::Measure([86.0, 41.0], [86.0, 52.0]),
    ],
    source: |job| source(job, |fire| &fire.ridge.up_to_share.source),
    missing: nothing_missing,
    run: Run::KeptOffAndShare(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], share: f64, findings: &mut Vec<Finding>) {
    let near = keep_outs.iter().filter_map(|keep_out| TooNear::of(view.laid, keep_out));
    findings.extend(near.map(|near| near.finding(view, Severity::Stop, Facts::FireRidge { share })));
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, gable_job, measures, of, one};
    use chalkcourse_job::{Building, Resolved};
    use chalkcourse_limits::Share;

    const INCH: f64 = 0.0254;

    /// The block at a distance in inches of plan from its upper edge to the ridge.
    fn below(inches: f64) -> Resolved {
        let mut job = gable_job();
        book(&mut job).setbacks.clear();
        job.blocks[0].at.y = (6.0 - inches * INCH) * 1.25f64.sqrt() - 2.271;
        job
    }

    #[test]
    fn short_of_at_and_beyond_18_in() {
        assert!(of(&below(19.0), "fire-ridge").is_empty());
        assert!(of(&below(18.0), "fire-ridge").is_empty());
        measures(&one(&below(16.0), "fire-ridge"), 16.0, 18.0);
    }

    /// IRC R324.6.2 (2018): 18 in up to 33 %, 36 in beyond; with sprinklers 66 % (from memory).
    #[test]
    fn the_share_decides() {
        let mut job = gable_job();
        let fire = job.rule_book.fire_access.clone().unwrap();
        let asks = |job: &Resolved, share: f64| Share::of(job, share).room(&fire).value.inches().round();
        for (share, expect) in [(0.0, 18.0), (0.33, 18.0), (0.331, 36.0), (0.9, 36.0)] {
            assert_eq!(asks(&job, share), expect, "{share}");
        }
        job.site.building = Building { sprinklers: true, ..Building::default() };
        for (share, expect) in [(0.331, 18.0), (0.66, 18.0), (0.661, 36.0)] {
            assert_eq!(asks(&job, share), expect, "{share} with sprinklers");
        }
    }

    #[test]
    fn exemptions() {
        let job = below(10.0);
        let with = |building: Building| {
            let mut job = job.clone();
            job.site.building = building;
            of(&job, "fire-ridge").len()
        };
        assert_eq!(with(Building::default()), 1);
        assert_eq!(with(Building { detached_uninhabited: true, ..Building::default() }), 0);
        assert_eq!(with(Building { no_roof_operations: "Chief Ashdown".into(), ..Building::default() }), 0);
        // the integrated exemption is off in the book, whoever read the listing
        assert_eq!(with(Building { integrated_listing_read_by: "R. Vale".into(), ..Building::default() }), 1);
    }
}
