//! Side flashing stays clear of the lines that water and caps lie on: valleys and hips.
//!
//! Source: the rule book. A valley's lining reaches to both sides of its line (IRC R905.2.8.2, 2018: an open metal valley
//! is at least 24 in wide) and takes no nail near it; a hip's caps lap over the faces on both sides. How near flashing and
//! its nails may come is common practice, no source. Measured on the slope, square to the line, from the modules by
//! as much more as the kit's side flashing reaches.

use super::near::{Side, ends, into_the_face, nearer, place_of, sides};
use crate::finding::{Finding, Severity};
use crate::measure::{at_least_to_segment, length};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts, Section, WhyNot};
use chalkcourse_geometry::{EdgeKind, Rect};
use chalkcourse_job::{Required, Subject};
use chalkcourse_limits::{TOLERANCE, flashing_asked};

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
    missing: |job| {
        let any = [EdgeKind::Valley, EdgeKind::Hip]
            .into_iter()
            .any(|kind| flashing_asked(&job.rule_book, kind).is_some());
        (!any).then_some(WhyNot::NotInBook(Section::ValleysAndHips))
    },
    run: Run::Block(run),
};

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    let lines = view.laid.face.edges.iter().filter(|span| flashing_asked(view.book(), span.kind).is_some());
    findings.extend(sides(lines).into_iter().filter_map(|side| finding(view, side)));
}

fn finding(view: BlockView<'_>, side: Side<'_>) -> Option<Finding> {
    let (laid, limit, flashing) =
        (view.laid, flashing_asked(view.book(), side.kind)?, view.kit().flashing.side);
    let reach = limit.value.metres() + flashing.metres();
    let away = |rect: &Rect| {
        side.spans
            .iter()
            .map(|s| rect.distance_to_segment(s.frame.0, s.frame.1))
            .fold(f64::INFINITY, f64::min)
    };
    let far = |s: &&chalkcourse_geometry::EdgeSpan| {
        at_least_to_segment(&laid.bounds, s.frame.0, s.frame.1) >= reach - TOLERANCE
    };
    if side.spans.iter().all(far) {
        return None;
    }
    let (cells, nearest) = nearer(laid, reach - TOLERANCE, away)?;
    let subject = Subject::Side(laid.block.id, laid.on.id, side.id, side.kind);
    Some(Finding {
        measured: length(nearest - flashing.metres()),
        required: Required::AtLeast(length(limit.value.metres())),
        source: Authority::of(&limit.source),
        candidate: into_the_face(&laid.rows, &side.spans, reach, view.units()).map(|by| by.of(laid.block)),
        place: place_of(laid, cells, ends(side.spans)),
        ..Finding::of(RULE.code, Severity::Stop, subject, Facts::ValleyHip { kind: side.kind, flashing })
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, fixed, gable_job, inches, kit, measures, of, office, one};
    use chalkcourse_geometry::{EdgeKind, Length, SideId, dvec2};
    use chalkcourse_job::{Limit, Overrule, Resolved};

    const INCH: f64 = 0.0254;

    /// Two planes at a hip from (0, 0) to (6, 6) in plan, which a person may have said to be a valley, and a block whose upper
    /// left corner, the nearest, is so many inches from it, square to it on the slope. The kit's side flashing is 4 in
    /// wide, the book asks 6 in beside a valley and 5 in beside a hip.
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
            measures(&short, asked - 6.0, asked - 4.0);
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
        assert!(inches(over.measured) < 0.0);
        fixed(&job, &over);
    }
}
