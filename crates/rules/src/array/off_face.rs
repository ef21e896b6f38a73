//! Modules lie on the face that carries them, whole.
//!
//! Source: geometry. An edge that the book gives no setback still may not be crossed, nor a hole in the face.

use crate::case::{Case, Laid};
use crate::clear::{hull_around, moved, round_up, rows_or_bounds, stretch};
use crate::finding::{Finding, Fix, Place, Severity};
use crate::measure::{TOLERANCE, overhang};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::{Way, block_name, length, modules, sentence, the_edge, too_much};
use chalkcourse_geometry::{DVec2, Polygon, Rect, Units, distance_to_segment, dvec2};
use chalkcourse_job::{Block, Cell, Edit};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "off-face",
    title: say("Modules lie on their face", "Los módulos están sobre su faldón"),
    reason: say(
        "A module is screwed to the deck under it: where there is no deck there is no module.",
        "Un módulo se atornilla al entablado de abajo: donde no hay entablado no hay módulo.",
    ),
    sketch: &[
        Stroke::Roof(&[[8.0, 8.0], [72.0, 8.0], [72.0, 52.0], [8.0, 52.0]]),
        Stroke::Module([38.0, 20.0, 24.0, 16.0]),
        Stroke::Wrong([62.0, 20.0, 24.0, 16.0]),
    ],
    source: |_| pick("geometry: no deck is there", "geometría: ahí no hay entablado").into(),
    missing: nothing_missing,
    run: Run::block(run),
};

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    if overhang(&laid.bounds, &laid.face.frame) != 0.0 {
        let over: Vec<(Cell, Rect, f64)> = laid
            .placed
            .modules
            .iter()
            .map(|module| (module.cell, module.rect, overhang(&module.rect, &laid.face.frame)))
            .filter(|(_, _, over)| *over > TOLERANCE)
            .collect();
        if let Some(worst) = over.iter().max_by(|a, b| a.2.total_cmp(&b.2)) {
            let cells: Vec<Cell> = over.iter().map(|(cell, ..)| *cell).collect();
            findings.push(finding(case, laid, cells, worst.1, worst.2));
        }
    }
}

fn finding(case: &Case<'_>, laid: &Laid<'_>, cells: Vec<Cell>, worst: Rect, over: f64) -> Finding {
    let units = case.units;
    let (edge, shape) = edge_near(laid, &worst);
    let fix = move_onto(laid, units).unwrap_or_else(|| switch_off(laid.block, &cells));
    let measured = too_much(over, units);
    let reach = if cells.len() == laid.placed.modules.len() {
        pick("lies", "está").to_owned()
    } else {
        tell!("lies with {}", "está con {}", modules(cells.len()))
    };
    Finding {
        message: tell!(
            "{} {reach} up to {measured} over the {edge} of {}. {}.",
            "{} {reach} hasta {measured} fuera de {edge} de {}. {}.",
            sentence(&block_name(laid.block)),
            case.face_name(laid.placed.face),
            fix.label,
        ),
        place: Place { face: Some(laid.on.id), block: Some(laid.block.id), cells, shape, penetration: None },
        measured: tell!("{measured} over", "{measured} fuera"),
        required: pick("all on the face", "todo sobre el faldón").into(),
        source: RULE.source(case.job),
        fix: Some(fix),
        ..Finding::of(
            RULE.code,
            Severity::Stop,
            format!("off-face/block-{}/face-{}", laid.block.id, laid.on.id),
        )
    }
}

/// The name and the plan of the edge that a module reaches over.
fn edge_near(laid: &Laid<'_>, worst: &Rect) -> (&'static str, Vec<DVec2>) {
    let out = worst
        .corners()
        .into_iter()
        .filter(|&p| !laid.face.frame.contains(p))
        .max_by(|&p, &q| {
            let away = |p| laid.face.frame.distance_to_border(p);
            away(p).total_cmp(&away(q))
        })
        .unwrap_or_else(|| worst.centre());
    let near = laid.face.edges.iter().min_by(|a, b| {
        let away =
            |span: &chalkcourse_geometry::EdgeSpan| distance_to_segment(out, span.frame.0, span.frame.1);
        away(a).total_cmp(&away(b))
    });
    near.map_or((pick("border", "el contorno"), Vec::new()), |span| {
        (pick(span.kind.code(), the_edge(span.kind)), vec![span.plan.0, span.plan.1])
    })
}

/// The least move onto the face: along one axis, or else along both.
fn move_onto(laid: &Laid<'_>, units: Units) -> Option<Fix> {
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
    let by = by.filter(|by| *by != DVec2::ZERO)?;
    let ways = [(by.x, Way::Left, Way::Right), (by.y, Way::Down, Way::Up)]
        .into_iter()
        .filter(|(by, ..)| *by != 0.0)
        .map(|(by, less, more)| {
            format!("{} {}", length(by.abs(), units), if by < 0.0 { less } else { more }.name())
        });
    let label = tell!(
        "Move {} {}",
        "Mover {} {}",
        block_name(laid.block),
        ways.collect::<Vec<_>>().join(pick(" and ", " y "))
    );
    Some(Fix { label, edit: moved(laid.block, by) })
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
            .filter_map(|(row, &(a, b))| stretch(&hull_around(&[a, b], row), 0.0, row.centre() + start, axis))
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

/// The edit that switches some modules off, or takes the block away when none is left.
pub(crate) fn switch_off(block: &Block, cells: &[Cell]) -> Fix {
    if block.cells().count() <= cells.len() {
        let label = tell!("Take {} away", "Quitar {}", block_name(block));
        return Fix { label, edit: Edit::RemoveBlock(block.id) };
    }
    let mut less = block.clone();
    less.off.extend(cells.iter().copied());
    Fix {
        label: tell!("Switch off {} of {}", "Apagar {} de {}", modules(cells.len()), block_name(block)),
        edit: Edit::PutBlock(less),
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, face, fixed, gable_job, of, one};

    /// Without setbacks, so that the border alone decides.
    fn at(u: f64, v: f64) -> chalkcourse_job::Job {
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
        assert!(over.message.contains("1\" over the rake of face South"), "{}", over.message);
        assert!(over.message.contains("1\" to the left"), "{}", over.message);
        assert_eq!(over.place.cells.len(), 2);
        fixed(&job, &over);
    }

    #[test]
    fn a_corner_needs_two_moves() {
        let job = at(7.0, 5.0);
        let over = one(&job, "off-face");
        assert!(over.message.contains("to the left and") && over.message.contains("down the slope"));
        fixed(&job, &over);
    }

    #[test]
    fn what_does_not_fit_is_switched_off() {
        let mut job = at(0.0, 0.0);
        job.blocks[0].columns = 9;
        let over = one(&job, "off-face");
        assert!(over.message.contains("Switch off 6 modules"), "{}", over.message);
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
