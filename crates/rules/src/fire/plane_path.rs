//! Each plane with modules has a pathway: on it, on an adjacent plane, or straddling both.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1 (2018 on). IFC 605.11 (2012, 2015) requires it on the slope itself: one on a hip roof, two
//! under a single ridge. Adjacent planes are those over a hip, a valley or a change of pitch.

use super::opening::openings;
use super::pathway::{alone, has_ridge, straddling};
use super::{exempt, pathways, source};
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BesideView;
use crate::way::{Opening, Pathway, RemovedModules};
use crate::{Authority, Facts};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::{FireAccess, PathScheme, Required, Subject};
use chalkcourse_limits::{TOLERANCE, looked_at};

pub(crate) const RULE: Rule = Rule {
    code: "fire-plane-path",
    sketch: &[
        SLOPE,
        Stroke::Free(&[[8.0, 8.0], [24.0, 8.0], [24.0, 52.0], [8.0, 52.0]]),
        Stroke::Way([16.0, 10.0], [16.0, 48.0]),
        Stroke::Module([30.0, 14.0, 26.0, 14.0]),
        Stroke::Module([56.0, 14.0, 26.0, 14.0]),
        Stroke::Module([30.0, 28.0, 26.0, 14.0]),
        Stroke::Measure([8.0, 30.0], [24.0, 30.0]),
    ],
    source: |job| source(job, |fire| &fire.scheme.source),
    missing: exempt,
    run: Run::Beside(run),
};

fn run(view: BesideView<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &view.book().fire_access else { return };
    let own = view.own;
    if !looked_at(fire, own.face) {
        return;
    }
    let Some(first) = own.laid().next() else { return };
    let each = fire.scheme.value == PathScheme::EachSlope;
    let single_ridge = || own.face.edges.iter().all(|span| span.kind != EdgeKind::Hip);
    let asked = if each && single_ridge() { 2 } else { 1 };
    let finding = |severity, facts| Finding {
        required: Required::AtLeast(pathways(fire, asked)),
        source: Authority::of(&fire.scheme.source),
        place: Location {
            face: Some(own.on.id),
            block: Some(first.block.id),
            shape: own.face.plan.outer.clone(),
            ..Location::default()
        },
        ..Finding::of(RULE.code, severity, Subject::Face(own.on.id), facts)
    };
    if !has_ridge(view) {
        findings.push(finding(Severity::Note, Facts::NoRidgeBeside));
        return;
    }
    let found = found(view, fire, &RemovedModules::new());
    if found >= asked {
        return;
    }
    // Only one opening is worked out: two missing on one slope must be laid out by hand.
    let opening = (found + 1 == asked)
        .then(|| opening_of(view, fire).first())
        .flatten()
        .filter(|opening| self::found(view, fire, &opening.away) >= asked);
    let mut stop = finding(Severity::Stop, Facts::FirePlanePath { opening: opening.map(Opening::by_blocks) });
    stop.measured = pathways(fire, found);
    if let Some(opening) = opening {
        stop.place.shape.clone_from(&opening.strip);
    }
    findings.push(stop);
}

/// Openings of a pathway on a plane, fewest modules first; cached.
pub(super) fn opening_of<'s>(view: BesideView<'s>, fire: &FireAccess) -> &'s [Opening] {
    view.own.planes().map_or(&[], |planes| planes.openings.get_or_init(|| openings(view, fire)))
}

/// How many pathways serve a plane with the modules of `away` removed. One on an adjacent plane counts if it is on that plane
/// alone, or on the two: one that straddles the adjacent plane and a third does not.
fn found(view: BesideView<'_>, fire: &FireAccess, away: &RemovedModules) -> usize {
    let width = fire.path_width.value.metres();
    let fit =
        |path: &Pathway| if path.straight { ((path.width + TOLERANCE) / width).floor() as usize } else { 1 };
    let own = alone(view.own, fire, away);
    match fire.scheme.value {
        PathScheme::EachSlope => own.iter().map(fit).sum(),
        PathScheme::WholeRoof if !own.is_empty() => 1,
        PathScheme::WholeRoof => {
            let other = view.beside().any(|other| !alone(other, fire, away).is_empty());
            usize::from(other || !straddling(view, fire, away).is_empty())
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::Severity;
    use crate::testing::{block, book, face, found, gable_job, of, one, opened, taken};
    use chalkcourse_geometry::{EdgeKind, SideId};
    use chalkcourse_job::{PathScheme, Resolved};

    /// A hip roof of 12 × 8 m: the south trapezoid carries the block.
    fn hip(at: (f64, f64), rows: u32, columns: u32) -> Resolved {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (8.0, 4.0), (4.0, 4.0)], 6.0, 180.0, 3.0),
            face(2, "East", &[(12.0, 0.0), (12.0, 8.0), (8.0, 4.0)], 6.0, 90.0, 3.0),
            face(4, "North", &[(12.0, 8.0), (0.0, 8.0), (4.0, 4.0), (8.0, 4.0)], 6.0, 0.0, 3.0),
            face(5, "West", &[(0.0, 8.0), (0.0, 0.0), (4.0, 4.0)], 6.0, 270.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, at, rows, columns)];
        job
    }

    #[test]
    fn beside_the_block_or_over_the_hip() {
        // The ridge is over u 4 to 8: a block at 5 to 8.445 leaves 1 m beside it.
        assert!(of(&hip((5.0, 0.3), 2, 2), "fire-plane-path").is_empty());
        // No straight one is left; the hip to the adjacent plane is free.
        assert!(of(&hip((3.5, 0.3), 2, 3), "fire-plane-path").is_empty());
    }

    #[test]
    fn the_old_edition_requires_two_on_each_slope() {
        let mut job = gable_job();
        let fire = book(&mut job).fire_access.as_mut().unwrap();
        fire.scheme.value = PathScheme::EachSlope;
        assert!(of(&job, "fire-plane-path").is_empty());
        job.blocks = vec![block(3, 1, (0.4, 1.0), 1, 6)];
        let short = one(&job, "fire-plane-path");
        assert_eq!(found(&short), 1);
        opened(&job, &short);
    }

    /// The codes say nothing about a porch whose roof ends at a wall (common practice, no source: ask the fire official).
    #[test]
    fn a_plane_without_a_ridge_is_not_judged() {
        let mut job = gable_job();
        let porch = face(1, "Porch", &[(0.0, 0.0), (6.0, 0.0), (6.0, 3.0), (0.0, 3.0)], 4.0, 180.0, 3.0);
        job.faces = vec![porch.with_side_overruled(SideId(2), Some(EdgeKind::WallLine))];
        job.blocks = vec![block(3, 1, (0.1, 0.4), 1, 3)];
        let note = one(&job, "fire-plane-path");
        assert_eq!(note.severity, Severity::Note);
        assert_eq!(note.facts, Facts::NoRidgeBeside);
        // With a ridge, the same block leaves too little room.
        job.faces[0] = job.faces[0].with_side_overruled(SideId(2), Some(EdgeKind::Ridge));
        assert_eq!(one(&job, "fire-plane-path").severity, Severity::Stop);
    }

    #[test]
    fn a_plane_with_a_full_row_has_none() {
        let mut job = gable_job();
        for blocks in [1, 2] {
            job.blocks = vec![block(3, 1, (0.5, 1.0), blocks, 6)];
            job.faces[0].outline.outer[1].x = 11.2;
            job.faces[0].outline.outer[2].x = 11.2;
            let short = one(&job, "fire-plane-path");
            // 36 in takes one column of modules at the end: one per row
            assert_eq!(taken(&short), blocks as usize);
            opened(&job, &short);
        }
    }
}
