//! Modules stay away from each kind of edge by that kind's own setback, measured square to the edge on the slope.
//!
//! Source: the rule book, for each kind its own: see its `setbacks`. The edges of holes count.

use super::moves::{MustMove, ends, into_the_face, place_of};
use crate::case::{Case, Laid};
use crate::clear::{Move, Obstacle, convex_pieces, least_move};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, at_least_to_segment, to_segment};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{Way, block_name, length, sentence, the_edge, too_short};
use chalkcourse_geometry::{EdgeKind, EdgeSpan, Polygon, RoofFace, SideId};
use chalkcourse_job::Cell;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "setback",
    title: say("Modules keep each edge's setback", "Los módulos respetan el retiro de cada borde"),
    reason: say(
        "Edges need room: for drip edge, starter and flashing, for water, for a foot, for the fire service.",
        "Los bordes necesitan lugar: para goterón, hilada inicial y tapajuntas, para el agua, para un pie, \
        para los bomberos.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Limit(&[[17.0, 15.0], [83.0, 15.0], [83.0, 45.0], [17.0, 45.0], [17.0, 15.0]]),
        Stroke::Module([17.0, 15.0, 22.0, 15.0]),
        Stroke::Module([39.0, 15.0, 22.0, 15.0]),
        Stroke::Wrong([66.0, 15.0, 22.0, 15.0]),
        Stroke::Measure([83.0, 38.0], [92.0, 38.0]),
    ],
    source: |job| {
        tell!(
            "{}: setbacks, each with its own source",
            "{}: retiros, cada uno con su propia fuente",
            job.rule_book.name
        )
    },
    missing: |job| {
        job.rule_book
            .setbacks
            .is_empty()
            .then(|| pick("the rule book has no setbacks", "el libro de reglas no tiene retiros").into())
    },
    run: Run::block(run),
};

/// The spans of one side, or of one hole, that have one kind.
struct Edge<'a> {
    ring: usize,
    /// `None` for a hole: it is one thing in the way, not one for each of its sides.
    side: Option<SideId>,
    kind: EdgeKind,
    setback: f64,
    spans: Vec<&'a EdgeSpan>,
}

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    findings.extend(edges_of(case, laid.face).iter().filter_map(|edge| finding(case, laid, edge)));
}

fn edges_of<'a>(case: &Case<'_>, face: &'a RoofFace) -> Vec<Edge<'a>> {
    let mut edges: Vec<Edge<'a>> = Vec::new();
    for span in &face.edges {
        let setback = case.book.setback(span.kind).metres();
        if setback <= 0.0 {
            continue;
        }
        let (ring, kind) = (span.ring, span.kind);
        let side = (ring == 0).then_some(span.id);
        match edges.iter_mut().find(|e| (e.ring, e.side, e.kind) == (ring, side, kind)) {
            Some(edge) => edge.spans.push(span),
            None => edges.push(Edge { ring, side, kind, setback, spans: vec![span] }),
        }
    }
    edges
}

fn finding(case: &Case<'_>, laid: &Laid<'_>, edge: &Edge<'_>) -> Option<Finding> {
    let limit = edge.setback - TOLERANCE;
    let may_be_near =
        |rect| edge.spans.iter().any(|s| at_least_to_segment(rect, s.frame.0, s.frame.1) < limit);
    if !may_be_near(&laid.bounds) {
        return None;
    }
    let mut nearest = f64::INFINITY;
    let mut cells: Vec<Cell> = Vec::new();
    for module in laid.placed.modules.iter().filter(|module| may_be_near(&module.rect)) {
        let away = edge.spans.iter().map(|s| to_segment(&module.rect, s.frame.0, s.frame.1));
        let away = away.fold(f64::INFINITY, f64::min);
        if away < limit {
            cells.push(module.cell);
            nearest = nearest.min(away);
        }
    }
    if cells.is_empty() {
        return None;
    }
    let units = case.units;
    let by = move_off(laid, edge, case)?;
    let (measured, required) = (too_short(nearest, units), length(edge.setback, units));
    let (kind, the_kind) = (edge.kind.name(), the_edge(edge.kind));
    let on = case.face_name(laid.placed.face);
    let is = if nearest > 0.0 {
        tell!("is {measured} from the {kind} of {on}", "está a {measured} de {the_kind} de {on}")
    } else {
        tell!("lies on or over the {kind} of {on}", "está sobre o más allá de {the_kind} de {on}")
    };
    let limit = case.book.setbacks.get(&edge.kind)?;
    let found = MustMove {
        code: RULE.code,
        severity: Severity::Stop,
        key: format!(
            "setback/block-{}/face-{}/{}/{}",
            laid.block.id,
            laid.on.id,
            match (edge.side, laid.face.ring_id(edge.ring)) {
                (Some(side), _) => format!("side-{side}"),
                (None, ring) => format!("hole-{}", ring.unwrap_or_default()),
            },
            edge.kind.code().replace(' ', "-")
        ),
        says: tell!(
            "{} {is}; the book asks {required}",
            "{} {is}; el libro pide {required}",
            sentence(&block_name(laid.block))
        ),
        named: false,
        measured,
        required: tell!("at least {required}", "al menos {required}"),
        source: limit.source.clone(),
        place: place_of(laid, cells, ends(edge.spans.iter().copied())),
        moving: laid,
        by,
    };
    Some(found.finding(case))
}

/// The least move that keeps off an edge: into the face, or any way around a hole.
fn move_off(laid: &Laid<'_>, edge: &Edge<'_>, case: &Case<'_>) -> Option<Move> {
    if edge.side.is_some() {
        return into_the_face(&laid.rows, &edge.spans, edge.setback, case);
    }
    let hole = laid.face.frame.holes.get(edge.ring.checked_sub(1)?)?;
    let pieces = convex_pieces(&Polygon::new(hole.clone()));
    let obstacles: Vec<Obstacle> =
        pieces.into_iter().map(|corners| Obstacle { corners, reach: edge.setback }).collect();
    least_move(&laid.rows, &obstacles, &Way::ALL, case.units)
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, fixed, gable_job, of, one};
    use chalkcourse_geometry::{EdgeKind, Length, Units};
    use chalkcourse_job::Job;

    const INCH: f64 = 0.0254;

    fn at(u: f64, v: f64) -> Job {
        let mut job = gable_job();
        job.blocks[0].at = (u, v).into();
        job
    }

    #[test]
    fn short_of_at_and_beyond_the_rake_setback() {
        assert!(of(&at(13.0 * INCH, 1.0), "setback").is_empty());
        assert!(of(&at(12.0 * INCH, 1.0), "setback").is_empty());
        let job = at(4.5 * INCH, 1.0);
        let short = one(&job, "setback");
        assert_eq!(
            short.message,
            "Block 3 is 4 1/2\" from the rake of face South; the book asks 12\". Move the block 7 1/2\" to the right."
        );
        assert_eq!(short.key, "setback/block-3/face-1/side-3/rake");
        assert_eq!(short.place.cells.len(), 2);
        fixed(&job, &short);
    }

    #[test]
    fn each_kind_has_its_own() {
        // eave 6 in: 5 in is short of it; ridge 18 in: the block's head is at 1 + 2.271 m
        let eave = one(&at(3.0, 5.0 * INCH), "setback");
        assert!(eave.message.contains("1\" up the slope"), "{}", eave.message);
        let slope = 6.0 * 1.25f64.sqrt();
        let ridge_limit = slope - 2.271 - 18.0 * INCH;
        assert!(of(&at(3.0, ridge_limit), "setback").is_empty());
        let ridge = one(&at(3.0, ridge_limit + INCH), "setback");
        assert!(ridge.message.contains("1\" down the slope"), "{}", ridge.message);
        assert!(ridge.source.contains("R324.6.2"));
        let mut job = at(3.0, 5.0 * INCH);
        book(&mut job).setbacks.remove(&EdgeKind::Eave);
        assert!(of(&job, "setback").is_empty());
    }

    #[test]
    fn metric_moves_are_whole_millimetres() {
        let mut job = at(0.1002, 1.0);
        job.units = Units::Metric;
        let short = one(&job, "setback");
        assert!(
            short.message.contains("100 mm from the rake") && short.message.contains("205 mm to the right")
        );
        fixed(&job, &short);
    }

    #[test]
    fn a_hip_is_cleared_by_the_shorter_way() {
        // A triangle that falls south; its hips rise at 45° in plan, steeper in the frame.
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "West", &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 6.0, 270.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, (2.0, 1.0), 1, 2)];
        let short = one(&job, "setback");
        assert!(short.key.ends_with("/hip") && short.message.contains("to the right"), "{}", short.message);
        fixed(&job, &short);
    }

    #[test]
    fn the_edge_of_a_hole_is_a_wall_line() {
        let mut job = at(3.0, 1.0);
        // the block's right side is at 8.172; the hole starts 5 in from it; the book asks 9 in
        let x = 8.172 + 5.0 * INCH;
        let hole = face(9, "", &[(x, 2.0), (x + 1.0, 2.0), (x + 1.0, 3.0), (x, 3.0)], 6.0, 180.0, 0.0);
        job.faces[0] = job.faces[0].with_hole(hole.outline.outer);
        let short = one(&job, "setback");
        assert!(
            short.message.contains("4\" to the left") && short.key.contains("/hole-4/"),
            "{}",
            short.message
        );
        fixed(&job, &short);
    }

    #[test]
    fn a_tenth_of_a_millimetre_passes() {
        let limit = Length::from_inches(12.0).metres();
        assert!(of(&at(limit - 0.9e-4, 1.0), "setback").is_empty());
        assert_eq!(of(&at(limit - 1.1e-4, 1.0), "setback").len(), 1);
    }
}
