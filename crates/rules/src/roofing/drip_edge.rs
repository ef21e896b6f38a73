//! Eaves and rakes of a shingle roof have a drip edge.
//!
//! Source: IRC R905.2.8.5 (2018): a drip edge at eaves and rake edges of shingle roofs.

use super::{missing, source_of};
use crate::finding::{Finding, Location, Severity};
use crate::measure::ends;
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::{DripEdge, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "drip-edge",
    sketch: &[
        Stroke::Edge(&[[34.0, 36.0], [94.0, 52.0]]),
        Stroke::Edge(&[[34.0, 28.0], [94.0, 44.0]]),
        Stroke::Edge(&[[34.0, 28.0], [34.0, 36.0]]),
        Stroke::Edge(&[[70.0, 47.0], [30.0, 37.0], [30.0, 20.0], [25.0, 16.0]]),
        Stroke::Way([24.0, 14.0], [24.0, 4.0]),
    ],
    source: |job| source_of(job, |roofing| roofing.drip_edge.as_ref().map(|limit| &limit.source)),
    missing: |job| {
        missing(job).or_else(|| {
            let asked = job.rule_book.roofing.as_ref().is_some_and(|roofing| roofing.drip_edge.is_some());
            if !asked {
                return Some(WhyNot::LeftOut);
            }
            let unknown = job.site.building.drip_edge.is_none();
            unknown.then(|| WhyNot::NotKnown(vec![Unknown::DripEdge]))
        })
    },
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let asked = view.book().roofing.as_ref().and_then(|roofing| roofing.drip_edge.as_ref());
    let Some(asked) = asked.filter(|_| view.site().building.drip_edge == Some(DripEdge::Absent)) else {
        return;
    };
    let edges = view.layout().roof.faces.iter().flat_map(|face| &face.edges);
    let bare = edges.filter(|span| matches!(span.kind, EdgeKind::Eave | EdgeKind::Rake));
    findings.push(Finding {
        source: Authority::of(&asked.source),
        place: Location { shape: ends(bare), ..Location::default() },
        ..Finding::of(RULE.code, Severity::Stop, Subject::Whole, Facts::DripEdge)
    });
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one, why_not};
    use crate::{Unknown, WhyNot};
    use chalkcourse_job::DripEdge;

    /// IRC R905.2.8.5 (2018): present or absent, with no limit in between.
    #[test]
    fn there_planned_and_absent() {
        let mut job = gable_job();
        assert!(of(&job, "drip-edge").is_empty(), "not known, not checked");
        assert_eq!(why_not(&job, "drip-edge"), Some(WhyNot::NotKnown(vec![Unknown::DripEdge])));
        for fine in [DripEdge::InPlace, DripEdge::WithThisJob] {
            job.site.building.drip_edge = Some(fine);
            assert!(of(&job, "drip-edge").is_empty());
        }
        job.site.building.drip_edge = Some(DripEdge::Absent);
        let bare = one(&job, "drip-edge");
        // Two eaves and four rakes.
        assert_eq!(bare.place.shape.len(), 12);
    }
}
