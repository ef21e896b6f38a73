//! The outline of a face encloses a single area.
//!
//! Source: geometry; lengths, areas and edges of any other outline are meaningless.

use super::grouped;
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::DrawnView;
use crate::{Authority, Facts, Fault};
use chalkcourse_geometry::{DVec2, Defect, RoofProblem, SideId};
use chalkcourse_job::{Face, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "outline",
    sketch: &[
        Stroke::Edge(&[[14.0, 10.0], [86.0, 50.0], [86.0, 10.0], [14.0, 50.0], [14.0, 10.0]]),
        Stroke::Pipe([50.0, 30.0, 3.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(view: DrawnView<'_>, findings: &mut Vec<Finding>) {
    let defects = view.roof().problems.iter().filter_map(|problem| match problem {
        RoofProblem::BadFace { face, defect } => {
            let face = view.faces().get(*face)?;
            Some((subject(face, *defect), (face, *defect)))
        }
        _ => None,
    });
    for (subject, list) in grouped(defects) {
        let Some(&(face, defect)) = list.first() else { continue };
        let (fault, ring, corner) = fault_at(defect);
        findings.push(Finding {
            place: Location { face: Some(face.id), shape: shape(face, defect), ..Location::default() },
            ..Finding::of(RULE.code, Severity::Stop, subject, Facts::Outline { fault, ring, corner })
        });
    }
}

fn subject(face: &Face, defect: Defect) -> Subject {
    let (fault, ring, _) = fault_at(defect);
    if ring == 0 {
        return Subject::Outline(face.id, fault.code().into());
    }
    // A hole without sides has no id of its own.
    let hole = face.sides.of_ring(ring).unwrap_or(SideId(u32::MAX));
    Subject::HoleOutline(face.id, hole, fault.code().into())
}

/// What is wrong, in which ring, at which corner.
fn fault_at(defect: Defect) -> (Fault, usize, usize) {
    match defect {
        Defect::NotFinite { ring, corner } => (Fault::NoNumber, ring, corner),
        Defect::TooFewCorners { ring } => (Fault::TooFewCorners, ring, 0),
        Defect::RepeatedCorner { ring, corner } => (Fault::RepeatedCorner, ring, corner),
        Defect::NoArea { ring } => (Fault::NoArea, ring, 0),
        Defect::Crosses { .. } => (Fault::FoldsOver, 0, 0),
        Defect::HoleOutside { ring } => (Fault::HoleOutside, ring, 0),
    }
}

/// Where it is wrong.
fn shape(face: &Face, defect: Defect) -> Vec<DVec2> {
    let corners = |ring: usize| face.outline.rings().nth(ring).unwrap_or_default();
    match defect {
        Defect::NotFinite { .. } => Vec::new(),
        Defect::RepeatedCorner { ring, corner } => corners(ring).get(corner).copied().into_iter().collect(),
        Defect::Crosses { at } => vec![at],
        Defect::TooFewCorners { ring } | Defect::NoArea { ring } | Defect::HoleOutside { ring } => {
            corners(ring).iter().copied().filter(|p| p.is_finite()).collect()
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};
    use crate::{Facts, Fault};
    use chalkcourse_geometry::dvec2;

    #[test]
    fn a_sound_outline_passes() {
        assert!(of(&gable_job(), "outline").is_empty());
    }

    #[test]
    fn a_folded_one() {
        let mut job = gable_job();
        job.faces[1].outline.outer.swap(1, 2);
        let wrong = one(&job, "outline");
        assert_eq!(
            (wrong.key.to_string().as_str(), wrong.place.shape.len()),
            ("outline/face-2/folds-over", 1)
        );
    }

    /// Corners within a millimetre are one corner; farther apart they are two.
    #[test]
    fn corners_that_are_one() {
        let mut job = gable_job();
        job.faces[1].outline.outer.insert(1, dvec2(0.0008, 6.0));
        job.faces[1].outline.outer.insert(2, dvec2(0.0012, 6.0));
        let wrong = one(&job, "outline");
        assert!(matches!(wrong.facts, Facts::Outline { fault: Fault::RepeatedCorner, ring: 0, .. }));
        let mut job = gable_job();
        job.faces[1].outline.outer.insert(1, dvec2(0.0012, 6.0));
        assert!(of(&job, "outline").is_empty());
    }

    #[test]
    fn no_area_and_a_hole_outside() {
        let mut job = gable_job();
        job.faces[1].outline.outer = vec![dvec2(0.0, 6.0), dvec2(5.0, 6.0)];
        assert!(matches!(one(&job, "outline").facts, Facts::Outline { fault: Fault::TooFewCorners, .. }));
        let mut job = gable_job();
        job.faces[1].outline.holes = vec![vec![dvec2(50.0, 6.0), dvec2(51.0, 6.0), dvec2(51.0, 7.0)]];
        assert!(matches!(
            one(&job, "outline").facts,
            Facts::Outline { fault: Fault::HoleOutside, ring: 1, .. }
        ));
    }
}
