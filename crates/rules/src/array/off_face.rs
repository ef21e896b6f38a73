//! Modules lie on the face that carries them, whole.
//!
//! Source: geometry. An edge that the book gives no setback still may not be crossed, nor a hole in the face.

use super::near::place_of;
use crate::clear::{moved, round_up, rows_or_bounds};
use crate::finding::{Finding, Severity};
use crate::measure::length;
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::{BlockView, Laid};
use crate::{Authority, Candidate, Change, Facts};
use chalkcourse_geometry::{
    Convex, DVec2, EdgeKind, EdgeSpan, Polygon, Rect, Units, distance_to_segment, dvec2,
};
use chalkcourse_job::{Block, Cell, Edit, Required, Subject};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "off-face",
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [72.0, 8.0], [72.0, 52.0], [8.0, 52.0]]),
        Stroke::Module([38.0, 20.0, 24.0, 16.0]),
        Stroke::Wrong([62.0, 20.0, 24.0, 16.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Block(run),
};

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    let laid = view.laid;
    if laid.bounds.overhang(&laid.face.frame, TOLERANCE) != 0.0 {
        let over: Vec<(Cell, Rect, f64)> = laid
            .placed
            .modules
            .iter()
            .map(|module| (module.cell, module.rect, module.rect.overhang(&laid.face.frame, TOLERANCE)))
            .filter(|(_, _, over)| *over > TOLERANCE)
            .collect();
        if let Some(worst) = over.iter().max_by(|a, b| a.2.total_cmp(&b.2)) {
            let cells: Vec<Cell> = over.iter().map(|(cell, ..)| *cell).collect();
            findings.push(finding(view, cells, worst.1, worst.2));
        }
    }
}

fn finding(view: BlockView<'_>, cells: Vec<Cell>, worst: Rect, over: f64) -> Finding {
    let laid = view.laid;
    let (edge, shape) = edge_near(laid, &worst);
    let facts = Facts::OffFace { edge, modules: cells.len(), of: laid.placed.modules.len() };
    Finding {
        measured: length(over),
        required: Required::AtMost(length(0.0)),
        candidate: Some(move_onto(laid, view.units()).unwrap_or_else(|| switch_off(laid.block, &cells))),
        place: place_of(laid, cells, shape),
        ..Finding::of(RULE.code, Severity::Stop, Subject::OnFace(laid.block.id, laid.on.id), facts)
    }
}

/// The kind and the plan of the edge that a module reaches over.
fn edge_near(laid: &Laid<'_>, worst: &Rect) -> (Option<EdgeKind>, Vec<DVec2>) {
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

/// The least move onto the face: along one axis, or else along both.
fn move_onto(laid: &Laid<'_>, units: Units) -> Option<Candidate> {
    let sides: Vec<(DVec2, DVec2)> = laid.face.frame.sides().map(|(_, _, a, b)| (a, b)).collect();
    // Half the tolerance: what fits here is well within what passes.
    let rows: Vec<Rect> =
        rows_or_bounds(&laid.rows, sides.len() * 4).iter().map(|row| row.grown(-TOLERANCE / 2.0)).collect();
    let fit = Fit { rows: &rows, sides: &sides, face: &laid.face.frame, units };
    let straight = [DVec2::X, DVec2::Y]
        .into_iter()
        .filter_map(|axis| fit.along(axis, DVec2::ZERO).map(|by| axis * by))
        .min_by(|a, b| a.length().total_cmp(&b.length()));
    let by = straight.or_else(|| {
        fit.ends(DVec2::X, DVec2::ZERO)
            .into_iter()
            .take(16)
            .filter_map(|u| Some(dvec2(u, fit.along(DVec2::Y, dvec2(u, 0.0))?)))
            .min_by(|a, b| a.length().total_cmp(&b.length()))
    });
    by.filter(|by| *by != DVec2::ZERO).map(|by| moved(laid.block, by))
}

/// Rows that are to come to lie inside a face.
struct Fit<'a> {
    rows: &'a [Rect],
    sides: &'a [(DVec2, DVec2)],
    face: &'a Polygon,
    units: Units,
}

impl Fit<'_> {
    /// Stretches of a move along an axis, from `start`, in which a side of the face cuts through a row.
    fn stretches(&self, axis: DVec2, start: DVec2) -> Vec<(f64, f64)> {
        let pairs = self.rows.iter().flat_map(|row| self.sides.iter().map(move |side| (row, side)));
        pairs
            .filter_map(|(row, &(a, b))| {
                Convex::segment(a, b).moves_of(&row.moved(start)).too_near_along(0.0, axis)
            })
            .collect()
    }

    /// Where those stretches end, the nearest first, in whole steps.
    fn ends(&self, axis: DVec2, start: DVec2) -> Vec<f64> {
        let stretches = self.stretches(axis, start);
        let mut ends: Vec<f64> = stretches
            .iter()
            .flat_map(|&(low, high)| [-round_up(-low, self.units), round_up(high, self.units), 0.0])
            .collect();
        ends.sort_by(|a, b| a.abs().total_cmp(&b.abs()).then(a.total_cmp(b)));
        ends.dedup();
        ends
    }

    /// The least move along an axis that brings all rows onto the face.
    fn along(&self, axis: DVec2, start: DVec2) -> Option<f64> {
        let stretches = self.stretches(axis, start);
        let onto = |by: f64| {
            let free = !stretches.iter().any(|&(low, high)| low < by - 1e-9 && by + 1e-9 < high);
            free && self.rows.iter().all(|row| self.face.contains(row.centre() + start + axis * by))
        };
        self.ends(axis, start).into_iter().find(|&by| onto(by))
    }
}

/// Switches some modules off, or takes the block away when none is left.
pub(crate) fn switch_off(block: &Block, cells: &[Cell]) -> Candidate {
    if block.cells().count() <= cells.len() {
        return Candidate { change: Change::Take(block.id), edit: Edit::RemoveBlock(block.id) };
    }
    let mut less = block.clone();
    less.off.extend(cells.iter().copied());
    Candidate { change: Change::SwitchOff(block.id, cells.len()), edit: Edit::PutBlock(less) }
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, face, fixed, gable_job, measures, moves, of, one};
    use crate::{Change, Facts};
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
        let job = at(6.828 + 0.0254, 1.0);
        let over = one(&job, "off-face");
        assert!(matches!(over.facts, Facts::OffFace { edge: Some(EdgeKind::Rake), .. }), "{:?}", over.facts);
        measures(&over, 1.0, 0.0);
        moves(&over, -1.0, 0.0);
        assert_eq!(over.place.cells.len(), 2);
        fixed(&job, &over);
    }

    #[test]
    fn a_corner_needs_two_moves() {
        let job = at(7.0, 5.0);
        let over = one(&job, "off-face");
        let Some(Change::Move(_, by)) = over.candidate.as_ref().map(|it| &it.change) else {
            panic!("{over:#?}")
        };
        assert!(by.x < 0.0 && by.y < 0.0, "{by}");
        fixed(&job, &over);
    }

    #[test]
    fn what_does_not_fit_is_switched_off() {
        let mut job = at(0.0, 0.0);
        job.blocks[0].columns = 9;
        let over = one(&job, "off-face");
        let change = &over.candidate.as_ref().unwrap().change;
        assert!(matches!(change, Change::SwitchOff(_, 6)), "{change:?}");
        fixed(&job, &over);
    }

    #[test]
    fn a_hole_is_no_deck() {
        let mut job = at(3.0, 1.0);
        let hole = face(9, "", &[(4.0, 2.0), (4.5, 2.0), (4.5, 2.5), (4.0, 2.5)], 6.0, 180.0, 0.0);
        job.faces[0] = job.faces[0].with_hole(hole.outline.outer);
        let over = one(&job, "off-face");
        fixed(&job, &over);
        job.blocks = vec![block(3, 1, (0.5, 0.5), 1, 1)];
        assert!(of(&job, "off-face").is_empty());
    }
}
