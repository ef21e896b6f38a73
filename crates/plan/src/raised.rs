//! Raising a roof from a footprint, as a part of a job.

use chalkcourse_geometry::raise::{RaiseError, Treatment, raise};
use chalkcourse_geometry::{DVec2, Length, Pitch, Polygon, signed_area};
use chalkcourse_job::{Edit, PartId, PartKind, Resolved, RoofPart};
use chalkcourse_words as words;
use serde::{Deserialize, Serialize};

/// What to put on the short ends of a footprint.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ends {
    /// A sloped face, as on all other sides.
    #[default]
    Hip,
    /// An upright gable.
    Gable,
}

/// How to raise a roof: the same on all sides but the ends.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct RaiseAs {
    /// Pitch of all sloped sides.
    pub pitch: Pitch,
    /// Height of the roof over the walls.
    pub eave: Length,
    /// Overhang beyond the walls, in plan.
    pub overhang: Length,
    /// What to put on the short ends.
    pub ends: Ends,
}

/// The edit that adds a part of the house with its roof to a job; the outline is that of the walls, in plan.
///
/// # Errors
/// [`RaiseError`] names the problematic corner or side and what to do.
pub fn raise_roof(job: &Resolved, outline: &Polygon, how: &RaiseAs) -> Result<Edit, RaiseError> {
    let part = part_over(job, outline, how);
    raise(&part.footprint())?;
    Ok(Edit::PutPart(part))
}

/// The part that [`raise_roof`] adds: the first is the main house.
pub fn part_over(job: &Resolved, outline: &Polygon, how: &RaiseAs) -> RoofPart {
    let kind = if job.parts.is_empty() { PartKind::Main } else { PartKind::Ell };
    let taken = |name: &String| job.parts.iter().any(|part| part.name == *name);
    let stem = if kind == PartKind::Main { words::common::MAIN.now() } else { words::common::ELL.now() };
    let names = std::iter::once(stem.to_owned()).chain((2..).map(|n| format!("{stem} {n}")));
    let name = names.into_iter().find(|name| !taken(name)).unwrap_or_default();
    let slope = Treatment::Slope(how.pitch);
    let mut part =
        RoofPart::new(PartId(job.next_id), name, kind, outline.clone(), how.eave, slope, how.overhang);
    if how.ends == Ends::Gable {
        for (ring, sides) in outline.rings().zip(&mut part.sides) {
            for end in short_ends(ring) {
                if let Some(side) = sides.get_mut(end) {
                    side.treatment = Treatment::Gable;
                }
            }
        }
    }
    part
}

/// Sides between two convex corners that are shorter than both neighbours: where a house has its gables.
fn short_ends(ring: &[DVec2]) -> Vec<usize> {
    let n = ring.len();
    let turn = signed_area(ring).signum();
    let at = |i: usize| ring[i % n];
    let length = |i: usize| at(i).distance(at(i + 1));
    let outward = |i: usize| (at(i) - at(i + n - 1)).perp_dot(at(i + 1) - at(i)) * turn > 0.0;
    (0..n)
        .filter(|&i| outward(i) && outward(i + 1))
        .filter(|&i| length(i) < length(i + n - 1) && length(i) < length(i + 1))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::evaluate;
    use chalkcourse_geometry::{EdgeKind, dvec2};
    use chalkcourse_job::{apply, builtin_kit, builtin_prices, builtin_rule_book};

    const FOOT: f64 = 0.3048;

    fn raised(corners: &[(f64, f64)], ends: Ends, overhang: f64) -> crate::Plan {
        let job = Resolved::new("t".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let outline = Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y) * FOOT).collect());
        let how = RaiseAs {
            pitch: Pitch::from_rise_in_12(6.0).unwrap(),
            eave: Length::from_feet(9.0),
            overhang: Length::from_feet(overhang),
            ends,
        };
        let edit = raise_roof(&job, &outline, &how).unwrap();
        evaluate(&apply(&job, &edit).unwrap())
    }

    fn feet(plan: &crate::Plan, kind: EdgeKind) -> f64 {
        plan.lines().get(&kind).copied().unwrap_or(0.0) / FOOT
    }

    /// 60 × 30 ft at 6:12: 2,012.46 ft² as a gable and as a hip; hips of 22.50 ft (closed forms).
    #[test]
    fn gable_and_hip_on_60_by_30() {
        let corners = [(0.0, 0.0), (60.0, 0.0), (60.0, 30.0), (0.0, 30.0)];
        let gable = raised(&corners, Ends::Gable, 0.0);
        assert_eq!(gable.layout.faces.len(), 2);
        assert!((gable.summary.slope_area / FOOT.powi(2) - 2_012.46).abs() < 0.005);
        assert!((feet(&gable, EdgeKind::Ridge) - 60.0).abs() < 1e-6);
        let hip = raised(&corners, Ends::Hip, 0.0);
        assert_eq!(hip.layout.faces.len(), 4);
        assert!((hip.summary.slope_area / FOOT.powi(2) - 2_012.46).abs() < 0.005);
        assert!((feet(&hip, EdgeKind::Hip) - 90.0).abs() < 1e-6);
        assert!(hip.layout.roof.problems.is_empty() && gable.layout.roof.problems.is_empty());
    }

    #[test]
    fn an_ell_has_a_valley_and_distinct_face_names() {
        let corners = [(0.0, 0.0), (40.0, 0.0), (40.0, 20.0), (20.0, 20.0), (20.0, 45.0), (0.0, 45.0)];
        let plan = raised(&corners, Ends::Gable, 1.0);
        assert!(feet(&plan, EdgeKind::Valley) > 10.0);
        assert!(plan.layout.roof.problems.is_empty(), "{:?}", plan.layout.roof.problems);
        let mut names: Vec<_> = plan.layout.faces.iter().map(|face| face.name.clone()).collect();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), plan.layout.faces.len());
        // The overhang is part of the roof: 42 × 22 + 22 × 25 ft in plan.
        assert!((plan.summary.plan_area / FOOT.powi(2) - (42.0 * 22.0 + 22.0 * 25.0)).abs() < 1e-6);
    }
}
