//! Outlines slightly out of square: shown for the selection, and squared on request.

use crate::edits::corners_at;
use crate::text;
use chalkcourse_geometry::{Polygon, out_of_square, squared};
use chalkcourse_job::{Edit, Face, FaceId, Resolved, RoofPart};
use chalkcourse_words::Said;
use std::collections::BTreeMap;

/// Smaller angles can't be seen or taped, degrees: 1/8 in in 12 ft (common practice, no source).
const TOLD_FROM: f64 = 0.05;

/// How far an outline is out of square, degrees, if it is noticeable.
pub(crate) fn off(outline: &Polygon) -> Option<f64> {
    out_of_square(&outline.outer).map(f64::to_degrees).filter(|&off| off >= TOLD_FROM)
}

/// The edit that squares a drawn face; coincident corners of other faces are moved along.
pub(crate) fn of_face(job: &Resolved, id: FaceId) -> Option<(Said, Edit)> {
    let face = job.face(id).filter(|face| face.from.is_none())?;
    let square = squared(&face.outline.outer)?;
    let mut changed: BTreeMap<FaceId, Face> = BTreeMap::new();
    for (&from, &to) in face.outline.outer.iter().zip(&square) {
        for (other, ring, corner) in corners_at(job, from) {
            let Some(now) = changed.get(&other).or_else(|| job.face(other)).filter(|it| it.from.is_none())
            else {
                continue;
            };
            if let Some(next) = now.with_corner_moved(ring, corner, to) {
                changed.insert(other, next);
            }
        }
    }
    let edits = changed.into_values().map(Edit::PutFace).collect();
    Some((text::square_of(&face.name), Edit::Several(edits)))
}

/// The edit that squares a part of the house.
pub(crate) fn of_part(part: &RoofPart) -> Option<(Said, Edit)> {
    let square = squared(&part.outline.outer)?;
    let next = square
        .into_iter()
        .enumerate()
        .try_fold(part.clone(), |part, (corner, to)| part.with_corner_moved(0, corner, to))?;
    Some((text::square_of(&part.name), Edit::PutPart(next)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;
    use chalkcourse_geometry::{Azimuth, Length, Pitch, dvec2};
    use chalkcourse_job::apply;

    /// Two faces that share a ridge, the lower one with a leaning rake: after squaring, they still share it.
    #[test]
    fn touching_faces_are_squared_along() {
        let mut job = sample::empty();
        let face = |id: u32, name: &str, at: &[(f64, f64)], way: Azimuth| {
            let outline = Polygon::new(at.iter().map(|&(x, y)| dvec2(x, y)).collect());
            Face::new(FaceId(id), name.into(), outline, Pitch::FLAT, way, Length::from_feet(9.0))
        };
        job.faces.push(face(1, "South", &[(0.0, 0.0), (10.0, 0.0), (10.1, 4.0), (0.0, 4.0)], Azimuth::SOUTH));
        job.faces.push(face(2, "North", &[(0.0, 4.0), (10.1, 4.0), (10.1, 8.0), (0.0, 8.0)], Azimuth::NORTH));
        job.next_id = 3;
        let told = off(&job.faces[0].outline).unwrap();
        assert!((told - 0.1_f64.atan2(4.0).to_degrees()).abs() < 0.01, "{told}");
        let (_, edit) = of_face(&job, FaceId(1)).unwrap();
        let next = apply(&job, &edit).unwrap();
        assert_eq!(off(&next.faces[0].outline), None);
        let (south, north) = (&next.faces[0].outline.outer, &next.faces[1].outline.outer);
        assert_eq!((south[3], south[2]), (north[0], north[1]), "one ridge");
        assert_eq!(of_face(&next, FaceId(1)), None, "nothing is left to do");
    }
}
