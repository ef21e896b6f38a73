//! Modules lie entirely on their face.
//!
//! Source: geometry. Even an edge without a setback may not be crossed, and neither may a hole in the face.

use crate::by_limit::TooNear;
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::{BlockView, LaidBlock};
use crate::{Authority, Facts};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Rect, distance_to_segment};
use chalkcourse_limits::{KeepOut, TOLERANCE};

pub(crate) const RULE: Rule = Rule {
    code: "off-face",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [72.0, 8.0], [72.0, 52.0], [8.0, 52.0]]),
        Stroke::Module([38.0, 20.0, 24.0, 16.0]),
        Stroke::Wrong([62.0, 20.0, 24.0, 16.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    findings.extend(keep_outs.iter().filter_map(|border| {
        let over = TooNear::of(view.laid, border)?;
        let (edge, shape) = edge_near(view.laid, &worst(view.laid, &over)?);
        let facts = Facts::OffFace { edge, modules: over.cells.len(), of: view.laid.placed.modules.len() };
        let finding = over.finding(view, Severity::Stop, facts);
        Some(Finding { place: Location { shape, ..finding.place }, ..finding })
    }));
}

/// The module that overhangs farthest.
fn worst(laid: &LaidBlock<'_>, over: &TooNear<'_>) -> Option<Rect> {
    let out = |rect: &Rect| rect.overhang(&laid.face.frame, TOLERANCE);
    let modules = laid.placed.modules.iter().filter(|module| over.cells.contains(&module.cell));
    modules.map(|module| module.rect).max_by(|a, b| out(a).total_cmp(&out(b)))
}

/// The kind of the edge that a module overhangs, and its line in plan.
fn edge_near(laid: &LaidBlock<'_>, worst: &Rect) -> (Option<EdgeKind>, Vec<DVec2>) {
    let out = worst
        .corners()
        .into_iter()
        .filter(|&p| !laid.face.frame.contains(p))
        .max_by(|&p, &q| {
            let away = |p| laid.face.frame.distance_to_border(p);
            away(p).total_cmp(&away(q))
        })
        .unwrap_or_else(|| worst.centre());
    let away = |span: &EdgeSpan| distance_to_segment(out, span.frame.0, span.frame.1);
    let near = laid.face.edges.iter().min_by(|a, b| away(a).total_cmp(&away(b)));
    near.map_or((None, Vec::new()), |span| (Some(span.kind), vec![span.plan.0, span.plan.1]))
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{block, face, gable_job, measures, of, one};
    use chalkcourse_geometry::EdgeKind;

    /// Without setbacks, so that the border alone decides.
    fn at(u: f64, v: f64) -> chalkcourse_job::Resolved {
        let mut job = gable_job();
        crate::testing::book(&mut job).setbacks.clear();
        job.blocks[0].at = (u, v).into();
        job
    }

    #[test]
    fn inside_at_and_over_the_rake() {
        assert!(of(&at(3.0, 1.0), "off-face").is_empty());
        // 12 m wide, the block 5.172 m: at 6.828 it touches
        assert!(of(&at(6.828, 1.0), "off-face").is_empty());
        let over = one(&at(6.828 + 0.0254, 1.0), "off-face");
        assert!(matches!(over.facts, Facts::OffFace { edge: Some(EdgeKind::Rake), .. }), "{:?}", over.facts);
        measures(&over, 1.0, 0.0);
        assert_eq!(over.place.cells.len(), 2);
    }

    /// Six columns of 1.725 m fit on 12 m; of nine, three overhang, two modules each.
    #[test]
    fn all_overhanging_modules_are_named() {
        let mut job = at(0.0, 0.0);
        job.blocks[0].columns = 9;
        assert_eq!(one(&job, "off-face").place.cells.len(), 6);
    }

    #[test]
    fn a_hole_is_not_deck() {
        let mut job = at(3.0, 1.0);
        let hole = face(9, "", &[(4.0, 2.0), (4.5, 2.0), (4.5, 2.5), (4.0, 2.5)], 6.0, 180.0, 0.0);
        job.faces[0] = job.faces[0].with_hole(hole.outline.outer);
        assert_eq!(of(&job, "off-face").len(), 1);
        job.blocks = vec![block(3, 1, (0.5, 0.5), 1, 1)];
        assert!(of(&job, "off-face").is_empty());
    }
}
