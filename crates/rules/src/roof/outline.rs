//! The outline of a face encloses one area once.
//!
//! Source: geometry; lengths, areas and edges of any other outline mean nothing.

use super::grouped;
use crate::case::Case;
use crate::finding::{Finding, Fix, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::sentence;
use chalkcourse_geometry::{Defect, RoofProblem, Sides};
use chalkcourse_job::{Edit, Face};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "outline",
    title: say(
        "Outlines of faces enclose one area once",
        "Los contornos de los faldones encierran un área una sola vez",
    ),
    reason: say(
        "Lengths, areas and edges of an outline that folds over itself mean nothing.",
        "Longitudes, áreas y bordes de un contorno que se cruza a sí mismo no significan nada.",
    ),
    sketch: &[
        Stroke::Edge(&[[14.0, 10.0], [86.0, 50.0], [86.0, 10.0], [14.0, 50.0], [14.0, 10.0]]),
        Stroke::Pipe([50.0, 30.0, 3.0]),
    ],
    source: |_| {
        pick("geometry: such an outline has no area", "geometría: un contorno así no tiene área").into()
    },
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let defects = case.layout.roof.problems.iter().filter_map(|problem| match problem {
        RoofProblem::BadFace { face, defect } => {
            let id = case.face_id(*face)?;
            let sides = &case.job.faces.get(*face)?.sides;
            Some((format!("outline/face-{id}/{}", slug(sides, defect)), (*face, *defect)))
        }
        _ => None,
    });
    for (key, list) in grouped(defects.collect()) {
        let Some(&(index, defect)) = list.first() else { continue };
        let Some(face) = case.job.faces.get(index) else { continue };
        let (wrong, shape) = told(face, defect);
        findings.push(Finding {
            message: format!("{}: {wrong}.", sentence(&case.face_name(index))),
            place: Place { face: Some(face.id), shape, ..Place::default() },
            measured: measured(&defect),
            required: pick(
                "an outline that encloses one area once",
                "un contorno que encierra un área una sola vez",
            )
            .into(),
            source: RULE.source(case.job),
            fix: mended(face, defect),
            ..Finding::of(RULE.code, Severity::Stop, key)
        });
    }
}

/// What is wrong, and the ring where it is one ring's trouble.
fn trouble(defect: &Defect) -> (&'static str, Option<usize>) {
    match *defect {
        Defect::NotFinite { ring, .. } => ("no-number", Some(ring)),
        Defect::TooFewCorners { ring } => ("too-few-corners", Some(ring)),
        Defect::RepeatedCorner { ring, .. } => ("repeated-corner", Some(ring)),
        Defect::NoArea { ring } => ("no-area", Some(ring)),
        Defect::Crosses { .. } => ("folds-over", None),
        Defect::HoleOutside { ring } => ("hole-outside", Some(ring)),
    }
}

/// The same for a key: holes by their numbers, so that a hole that goes leaves its waivers to no other.
fn slug(sides: &Sides, defect: &Defect) -> String {
    match trouble(defect) {
        (what, None) => what.to_owned(),
        (what, Some(0)) => format!("{what}-outline"),
        (what, Some(ring)) => format!("{what}-hole-{}", sides.of_ring(ring).unwrap_or_default()),
    }
}

fn measured(defect: &Defect) -> String {
    match trouble(defect) {
        (what, None) => what.replace('-', " "),
        (what, Some(ring)) => format!("{} ring {ring}", what.replace('-', " ")),
    }
}

/// What is wrong and what to do, and where.
fn told(face: &Face, defect: Defect) -> (String, Vec<chalkcourse_geometry::DVec2>) {
    let ring_name = |ring: usize| {
        if ring == 0 {
            pick("the outline", "el contorno").to_owned()
        } else {
            tell!("hole {ring}", "el hueco {ring}")
        }
    };
    let corners = |ring: usize| face.outline.rings().nth(ring).unwrap_or_default();
    let all = |ring: usize| corners(ring).iter().copied().filter(|p| p.is_finite()).collect();
    let at = |ring: usize, corner: usize| corners(ring).get(corner).copied().into_iter().collect();
    match defect {
        Defect::NotFinite { ring, corner } => (
            tell!(
                "corner {} of {} is at no place within 100 km. Set it again",
                "la esquina {} de {} no está en ningún lugar a menos de 100 km. Póngala otra vez",
                corner + 1,
                ring_name(ring)
            ),
            Vec::new(),
        ),
        Defect::TooFewCorners { ring } => (
            tell!(
                "{} has less than three corners. Draw the rest",
                "{} tiene menos de tres esquinas. Dibuje las demás",
                ring_name(ring)
            ),
            all(ring),
        ),
        Defect::RepeatedCorner { ring, corner } => (
            tell!(
                "corner {} of {} lies on the one before it. Take one of the two away",
                "la esquina {} de {} está sobre la anterior. Quite una de las dos",
                corner + 1,
                ring_name(ring)
            ),
            at(ring, corner),
        ),
        Defect::NoArea { ring } => (
            tell!(
                "{} encloses nothing. Pull its corners apart",
                "{} no encierra nada. Separe sus esquinas",
                ring_name(ring)
            ),
            all(ring),
        ),
        Defect::Crosses { at } => (
            pick(
                "the outline folds over itself. Move a corner so that no sides cross",
                "el contorno se cruza a sí mismo. Mueva una esquina para que ningún lado se cruce",
            )
            .into(),
            vec![at],
        ),
        Defect::HoleOutside { ring } => (
            tell!(
                "{} does not lie inside the face. Move it in or take it away",
                "{} no está dentro del faldón. Métalo o quítelo",
                ring_name(ring)
            ),
            all(ring),
        ),
    }
}

/// All repeated corners of a ring taken away, or a hole that is none.
fn mended(face: &Face, defect: Defect) -> Option<Fix> {
    if face.from.is_some() {
        return None;
    }
    match defect {
        Defect::RepeatedCorner { ring, .. } => {
            let mut less = face.clone();
            loop {
                let again = less.outline.defects(1e-3).into_iter().find_map(|defect| match defect {
                    Defect::RepeatedCorner { ring: there, corner } if there == ring => Some(corner),
                    _ => None,
                });
                match again {
                    Some(corner) => less = less.without_corner(ring, corner)?,
                    None => break,
                }
            }
            Some(Fix {
                label: pick("Take the repeated corner away", "Quitar la esquina repetida").into(),
                edit: Edit::PutFace(less),
            })
        }
        Defect::HoleOutside { ring } | Defect::NoArea { ring } | Defect::TooFewCorners { ring }
            if ring > 0 =>
        {
            Some(Fix {
                label: tell!("Take hole {ring} away", "Quitar el hueco {ring}"),
                edit: Edit::PutFace(face.without_hole(ring)?),
            })
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{fixed, gable_job, of, one};
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
        assert!(wrong.message.contains("folds over itself"));
        assert_eq!((wrong.key.as_str(), wrong.place.shape.len()), ("outline/face-2/folds-over", 1));
    }

    /// Corners a millimetre apart are one corner; farther apart they are two.
    #[test]
    fn repeated_corners_go() {
        let mut job = gable_job();
        job.faces[1].outline.outer.insert(1, dvec2(0.0008, 6.0));
        job.faces[1].outline.outer.insert(2, dvec2(0.0012, 6.0));
        let wrong = one(&job, "outline");
        assert!(wrong.message.contains("lies on the one before it"), "{}", wrong.message);
        fixed(&job, &wrong);
        let mut job = gable_job();
        job.faces[1].outline.outer.insert(1, dvec2(0.0012, 6.0));
        assert!(of(&job, "outline").is_empty());
    }

    #[test]
    fn no_area_and_a_hole_outside() {
        let mut job = gable_job();
        job.faces[1].outline.outer = vec![dvec2(0.0, 6.0), dvec2(5.0, 6.0)];
        assert!(one(&job, "outline").message.contains("less than three corners"));
        let mut job = gable_job();
        job.faces[1].outline.holes = vec![vec![dvec2(50.0, 6.0), dvec2(51.0, 6.0), dvec2(51.0, 7.0)]];
        let wrong = one(&job, "outline");
        fixed(&job, &wrong);
    }
}
