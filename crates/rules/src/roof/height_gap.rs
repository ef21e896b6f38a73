//! Faces that meet in plan meet in height, or one is a storey above the other.
//!
//! Source: geometry; the height tolerance is that with which the roof is put together (10 mm), and a rise of up to
//! 300 mm counts as one that was meant to be none. A person who means a step says so by deciding the edge's kind.

use super::{grouped, pair};
use crate::case::Case;
use crate::finding::{Finding, Fix, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::{length, sentence};
use chalkcourse_geometry::{DVec2, Length, RoofProblem, Tolerances};
use chalkcourse_job::{Edit, Face};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "height-gap",
    title: say(
        "Faces that meet in plan meet in height",
        "Los faldones que se juntan en planta se juntan en altura",
    ),
    reason: say(
        "A roof with a gap in it was measured or drawn wrong, and so are its ridges and areas.",
        "Un techo con un escalón se midió o se dibujó mal, y también sus cumbreras y áreas.",
    ),
    sketch: &[
        Stroke::Edge(&[[10.0, 14.0], [50.0, 46.0]]),
        Stroke::Edge(&[[50.0, 34.0], [90.0, 8.0]]),
        Stroke::Measure([50.0, 34.0], [50.0, 46.0]),
    ],
    source: |_| {
        pick(
            "geometry: faces of one roof share their edges, within 10 mm",
            "geometría: los faldones de un techo comparten sus bordes, a menos de 10 mm",
        )
        .into()
    },
    missing: nothing_missing,
    run: Run::Drawn(run),
};

#[derive(Clone, Copy)]
struct Gap {
    lower: usize,
    upper: usize,
    gap: f64,
    along: (DVec2, DVec2),
}

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let gaps = case.layout.roof.problems.iter().filter_map(|problem| match *problem {
        RoofProblem::HeightGap { lower, upper, gap, along } => {
            Some((format!("height-gap/{}", pair(case, lower, upper)), Gap { lower, upper, gap, along }))
        }
        _ => None,
    });
    for (key, list) in grouped(gaps.collect()) {
        let Some(&worst) = list.iter().max_by(|a, b| a.gap.total_cmp(&b.gap)) else { continue };
        let measured = length(worst.gap, case.units);
        let fix = level(case, worst);
        let what = fix.as_ref().map_or_else(
            || {
                pick("the gap is not the same all along, so no lift closes it: check the pitch, the way of fall and the eave heights", "el escalón no es igual en toda su longitud, así que subir uno no lo cierra: revise la pendiente, \
        la caída y las alturas de alero")
                    .to_owned()
            },
            |fix| fix.label.clone(),
        );
        findings.push(Finding {
            message: tell!("{} does not meet {}: where they share an edge it lies {measured} lower. {}. If the step is meant, decide the \
                 edge's kind.", "{} no se junta con {}: donde comparten un borde está {measured} más abajo. {}. Si el escalón es a \
        propósito, decida la clase del borde.",
                sentence(&case.face_name(worst.lower)),
                case.face_name(worst.upper),
                sentence(&what),
            ),
            place: Place {
                face: case.face_id(worst.lower),
                shape: list.iter().flat_map(|gap| [gap.along.0, gap.along.1]).collect(),
                ..Place::default()
            },
            measured: tell!("{measured} apart", "{measured} de diferencia"),
            required: tell!("within {}", "a menos de {}", length(Tolerances::default().height, case.units)),
            source: RULE.source(case.job),
            fix,
            ..Finding::of(RULE.code, Severity::Caution, key)
        });
    }
}

/// Lifts or lowers the face with fewer neighbours, of two the one drawn later, where one lift closes all of the gap.
fn level(case: &Case<'_>, gap: Gap) -> Option<Fix> {
    let neighbours = |index: usize| {
        let edges = case.layout.roof.faces.get(index).map(|face| face.edges.as_slice()).unwrap_or_default();
        edges.iter().filter(|span| span.neighbour.is_some()).count()
    };
    let key = |index: usize| (neighbours(index), std::cmp::Reverse(index));
    let (moving, other) =
        if key(gap.lower) < key(gap.upper) { (gap.lower, gap.upper) } else { (gap.upper, gap.lower) };
    let edges = &case.layout.roof.faces.get(moving)?.edges;
    let rises: Vec<f64> = edges
        .iter()
        .filter_map(|span| span.neighbour.filter(|n| n.face == other))
        .flat_map(|neighbour| [neighbour.gap.0, neighbour.gap.1])
        .collect();
    let low = rises.iter().copied().fold(f64::INFINITY, f64::min);
    let high = rises.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (lift, uneven) = ((low + high) / 2.0, (high - low) / 2.0);
    if !lift.is_finite() || uneven > Tolerances::default().height * 0.9 {
        return None;
    }
    let face = case.job.faces.get(moving).filter(|face| face.from.is_none())?;
    let verb = if lift > 0.0 { pick("raise", "subir") } else { pick("lower", "bajar") };
    Some(Fix {
        label: sentence(&format!("{verb} {} {}", case.face_name(moving), length(lift.abs(), case.units))),
        edit: Edit::PutFace(Face {
            height: Length::from_metres(face.height.metres() + lift),
            ..face.clone()
        }),
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{fixed, gable_job, of, one};
    use chalkcourse_geometry::{Length, Pitch};

    fn raised(mm: f64) -> chalkcourse_job::Job {
        let mut job = gable_job();
        job.faces[1].height = Length::from_metres(3.0 + mm / 1000.0);
        job
    }

    #[test]
    fn meeting_at_the_tolerance_and_beyond() {
        assert!(of(&raised(0.0), "height-gap").is_empty());
        assert!(of(&raised(9.9), "height-gap").is_empty());
        let job = raised(80.0);
        let gap = one(&job, "height-gap");
        assert_eq!(gap.key, "height-gap/face-1/face-2");
        assert!(gap.message.contains("Lower face North 3 1/8\""), "{}", gap.message);
        let level = fixed(&job, &gap);
        assert!((level.faces[1].height.metres() - 3.0).abs() < 1e-9);
    }

    #[test]
    fn a_gap_that_opens_has_no_lift() {
        let mut job = gable_job();
        job.faces[1].pitch = Pitch::from_rise_in_12(6.2).unwrap();
        job.faces[1].downslope = chalkcourse_geometry::Azimuth::from_degrees(1.0);
        let gap = one(&job, "height-gap");
        assert!(gap.fix.is_none() && gap.message.contains("not the same all along"), "{}", gap.message);
    }
}
