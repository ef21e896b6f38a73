//! Side flashing keeps clear of valleys and hips.
//!
//! Source: the rule book. A valley's lining extends to both sides of its line (IRC R905.2.8.2, 2018: an open metal valley is at
//! least 24 in wide) and takes no nail near it; a hip's caps lap over the faces on both sides. The clearance of flashing and its
//! nails is common practice, no source. Measured on the slope, square to the line, from the modules, with the width of the kit's
//! side flashing added.

use crate::by_limit::TooNear;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_limits::{KeepOut, flashing_asked};

pub(crate) const RULE: Rule = Rule {
    code: "valley-hip",
    sketch: &[
        SLOPE,
        Stroke::Edge(&[[16.0, 8.0], [60.0, 52.0]]),
        Stroke::Limit(&[[25.0, 8.0], [69.0, 52.0]]),
        Stroke::Wrong([44.0, 16.0, 26.0, 16.0]),
        Stroke::Measure([40.0, 32.0], [49.0, 32.0]),
    ],
    source: |job| {
        let limit = [EdgeKind::Valley, EdgeKind::Hip]
            .into_iter()
            .find_map(|kind| flashing_asked(&job.rule_book, kind));
        limit.map_or(Authority::NotInBook, |limit| Authority::of(&limit.source))
    },
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    let flashing = view.kit().flashing.side;
    findings.extend(keep_outs.iter().filter_map(|keep_out| {
        let facts = Facts::ValleyHip { kind: keep_out.against_kind()?, flashing };
        Some(TooNear::of(view.laid, keep_out)?.finding(view, Severity::Stop, facts))
    }));
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, gable_job, inches, kit, measures, of, office, one};
    use chalkcourse_geometry::{EdgeKind, Length, SideId, dvec2};
    use chalkcourse_job::{Limit, Overrule, Resolved};

    const INCH: f64 = 0.0254;

    /// Two planes at a hip from (0, 0) to (6, 6) in plan, which a person may have set to be a valley, and a block whose upper
    /// left corner, the nearest, is at a distance in inches from it, square to it on the slope. The kit's side flashing is 4 in
    /// wide, the book requires 6 in beside a valley and 5 in beside a hip.
    fn beside(inches: f64, kind: EdgeKind) -> Resolved {
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
        let limit = |inches| Some(Limit { value: Length::from_inches(inches), source: office() });
        roofing.hip_clear = limit(5.0);
        roofing.valley_clear = limit(6.0);
        kit(&mut job).flashing.side = Length::from_inches(4.0);
        // In the frame of the face the line rises by the slope factor per metre along the eave.
        let line = dvec2(1.0, 1.25f64.sqrt()).normalize();
        let foot = line * 2.5;
        let corner = foot + dvec2(line.y, -line.x) * inches * INCH;
        job.blocks = vec![block(3, 1, (corner.x, corner.y - 1.134), 1, 1)];
        job
    }

    #[test]
    fn short_of_at_and_beyond_the_limit() {
        for (kind, asked) in [(EdgeKind::Hip, 9.0), (EdgeKind::Valley, 10.0)] {
            assert!(of(&beside(asked + 1.0, kind), "valley-hip").is_empty());
            assert!(of(&beside(asked, kind), "valley-hip").is_empty());
            measures(&one(&beside(asked - 2.0, kind), "valley-hip"), asked - 6.0, asked - 4.0);
        }
    }

    #[test]
    fn a_book_without_the_limit_requires_nothing() {
        let mut job = beside(7.0, EdgeKind::Hip);
        book(&mut job).roofing.as_mut().unwrap().hip_clear = None;
        assert!(of(&job, "valley-hip").is_empty());
    }

    #[test]
    fn flashing_over_the_line_lies_on_it() {
        let over = one(&beside(2.0, EdgeKind::Hip), "valley-hip");
        assert!(inches(over.measured) < 0.0);
    }
}
