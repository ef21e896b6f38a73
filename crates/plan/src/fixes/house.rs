//! Fixes for findings that are not about blocks: faces that do not meet, outlines, references to deleted sides, drip
//! edge, waivers.

use super::FixRequest;
use super::change::{Change, Step};
use chalkcourse_geometry::{Defect, Length};
use chalkcourse_job::{DripEdge, Edit, Face, FaceId, Subject, WAIVER};
use chalkcourse_rules::{Facts, Fault};

pub(super) fn steps(asked: &FixRequest<'_>) -> Vec<Step> {
    let step = match (&asked.finding.facts, &asked.finding.key.subject) {
        (Facts::HeightGap { lift: Some((face, by)), .. }, _) => raise_face(asked, *face, *by),
        (Facts::Outline { fault, ring, .. }, _) => repair_outline(asked, *fault, *ring),
        (Facts::LostSides { .. }, Subject::Face(face)) => asked
            .state
            .job
            .face(*face)
            .map(|face| Step { change: Change::TakeBack(face.id), edit: Edit::PutFace(face.without_lost()) }),
        (Facts::DripEdge, _) => Some(drip_edge(asked)),
        (_, Subject::Waiver(key)) if asked.finding.rule == WAIVER => {
            Some(Step { change: Change::Unwaive, edit: Edit::Unwaive(key.as_ref().clone()) })
        }
        _ => None,
    };
    step.into_iter().collect()
}

/// A face raised by a length.
fn raise_face(asked: &FixRequest<'_>, face: FaceId, by: Length) -> Option<Step> {
    let face = asked.state.job.face(face)?;
    let height = Length::from_metres(face.height.metres() + by.metres());
    Some(Step { change: Change::Lift(face.id, by), edit: Edit::PutFace(Face { height, ..face.clone() }) })
}

/// Removes all repeated corners of a ring, or an invalid hole.
fn repair_outline(asked: &FixRequest<'_>, fault: Fault, ring: usize) -> Option<Step> {
    let face = asked.finding.place.face.and_then(|id| asked.state.job.face(id));
    let face = face.filter(|face| face.from.is_none())?;
    match fault {
        Fault::RepeatedCorner => {
            let mut less = face.clone();
            let repeated = |face: &Face| {
                face.outline.defects(1e-3).into_iter().find_map(|defect| match defect {
                    Defect::RepeatedCorner { ring: there, corner } if there == ring => Some(corner),
                    _ => None,
                })
            };
            while let Some(corner) = repeated(&less) {
                less = less.without_corner(ring, corner)?;
            }
            Some(Step { change: Change::RepeatedCorner, edit: Edit::PutFace(less) })
        }
        Fault::HoleOutside | Fault::NoArea | Fault::TooFewCorners if ring > 0 => {
            Some(Step { change: Change::Hole(ring), edit: Edit::PutFace(face.without_hole(ring)?) })
        }
        _ => None,
    }
}

fn drip_edge(asked: &FixRequest<'_>) -> Step {
    let mut site = asked.state.job.site.clone();
    site.building.drip_edge = Some(DripEdge::WithThisJob);
    Step { change: Change::DripEdge, edit: Edit::SetSite(site) }
}
