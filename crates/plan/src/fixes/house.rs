//! Findings about no block: faces that do not meet, outlines, what was said of sides that are gone, drip edge, waivers.

use super::Asked;
use super::change::{Change, Step};
use chalkcourse_geometry::{Defect, EdgeSpan, Length, Tolerances};
use chalkcourse_job::{DripEdge, Edit, Face, Subject, WAIVER};
use chalkcourse_rules::{Facts, Fault};

pub(super) fn steps(asked: &Asked<'_>) -> Vec<Step> {
    let step = match (&asked.finding.facts, &asked.finding.key.subject) {
        (Facts::HeightGap { even: true, .. }, Subject::Faces(..)) => lifted(asked),
        (Facts::Outline { fault, ring, .. }, _) => mended(asked, *fault, *ring),
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

/// The face that is lifted is the one with fewer neighbours, of two the one drawn later, and none of a part: the one
/// lift closes all of the gap, which is the same all along.
fn lifted(asked: &Asked<'_>) -> Option<Step> {
    let (job, roof) = (&asked.state.job, &asked.state.layout.roof);
    let Facts::HeightGap { lower, upper, .. } = asked.finding.facts else { return None };
    let index = |id| job.faces.iter().position(|face| face.id == id);
    let (lower, upper) = (index(lower)?, index(upper)?);
    let edges = |index: usize| -> &[EdgeSpan] {
        roof.faces.get(index).map(|face| face.edges.as_slice()).unwrap_or_default()
    };
    let neighbours = |index: usize| edges(index).iter().filter(|span| span.neighbour.is_some()).count();
    let key = |index: usize| (neighbours(index), std::cmp::Reverse(index));
    let (moving, other) = if key(lower) < key(upper) { (lower, upper) } else { (upper, lower) };
    let rises: Vec<f64> = edges(moving)
        .iter()
        .filter_map(|span| span.neighbour.filter(|n| n.face == other))
        .flat_map(|neighbour| [neighbour.gap.0, neighbour.gap.1])
        .collect();
    let low = rises.iter().copied().fold(f64::INFINITY, f64::min);
    let high = rises.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (by, uneven) = ((low + high) / 2.0, (high - low) / 2.0);
    let face = job.faces.get(moving).filter(|face| face.from.is_none())?;
    (by.is_finite() && uneven <= Tolerances::default().height * 0.9).then(|| {
        let height = Length::from_metres(face.height.metres() + by);
        Step {
            change: Change::Lift(face.id, Length::from_metres(by)),
            edit: Edit::PutFace(Face { height, ..face.clone() }),
        }
    })
}

/// All repeated corners of a ring taken away, or a hole that is none.
fn mended(asked: &Asked<'_>, fault: Fault, ring: usize) -> Option<Step> {
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

fn drip_edge(asked: &Asked<'_>) -> Step {
    let mut site = asked.state.job.site.clone();
    site.building.drip_edge = Some(DripEdge::WithThisJob);
    Step { change: Change::DripEdge, edit: Edit::SetSite(site) }
}
