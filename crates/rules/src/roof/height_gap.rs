//! Faces that meet in plan meet in height, or one is a storey above the other.
//!
//! Source: geometry; the height tolerance is the one used to assemble the roof (10 mm), and a step of up to 300 mm counts as
//! unintended. A person who intends a step decides the edge's kind.

use super::pairs;
use crate::finding::{Finding, Location, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::DrawnView;
use crate::{Authority, Facts};
use chalkcourse_geometry::{DVec2, EdgeSpan, Length, RoofProblem, Tolerances};
use chalkcourse_job::{FaceId, Required};

pub(crate) const RULE: Rule = Rule {
    code: "height-gap",
    sketch: &[
        Stroke::Edge(&[[10.0, 14.0], [50.0, 46.0]]),
        Stroke::Edge(&[[50.0, 34.0], [90.0, 8.0]]),
        Stroke::Measure([50.0, 34.0], [50.0, 46.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Drawn(run),
};

#[derive(Clone, Copy)]
struct Gap {
    /// Index of the lower face.
    lower: usize,
    upper: usize,
    gap: f64,
    along: (DVec2, DVec2),
}

fn run(view: DrawnView<'_>, findings: &mut Vec<Finding>) {
    let gaps = view.roof().problems.iter().filter_map(|problem| match *problem {
        RoofProblem::HeightGap { lower, upper, gap, along } => {
            Some((lower, upper, Gap { lower, upper, gap, along }))
        }
        _ => None,
    });
    for (subject, list) in pairs(view, gaps) {
        let Some((lower, upper, worst)) = list.iter().copied().max_by(|a, b| a.2.gap.total_cmp(&b.2.gap))
        else {
            continue;
        };
        findings.push(Finding {
            measured: length(worst.gap),
            required: Required::AtMost(length(Tolerances::default().height)),
            place: Location {
                face: Some(lower),
                shape: list.iter().flat_map(|(.., gap)| [gap.along.0, gap.along.1]).collect(),
                ..Location::default()
            },
            ..Finding::of(
                RULE.code,
                Severity::Caution,
                subject,
                Facts::HeightGap { lower, upper, lift: lift(view, worst) },
            )
        });
    }
}

/// The lift that closes all of the gap: of the face with fewer neighbours, of two the one drawn later, and never of a part's
/// face.
fn lift(view: DrawnView<'_>, gap: Gap) -> Option<(FaceId, Length)> {
    let edges = |index: usize| -> &[EdgeSpan] {
        view.roof().faces.get(index).map(|face| face.edges.as_slice()).unwrap_or_default()
    };
    let neighbours = |index: usize| edges(index).iter().filter(|span| span.neighbour.is_some()).count();
    let key = |index: usize| (neighbours(index), std::cmp::Reverse(index));
    let (moving, other) =
        if key(gap.lower) < key(gap.upper) { (gap.lower, gap.upper) } else { (gap.upper, gap.lower) };
    let rises: Vec<f64> = edges(moving)
        .iter()
        .filter_map(|span| span.neighbour.filter(|n| n.face == other))
        .flat_map(|neighbour| [neighbour.gap.0, neighbour.gap.1])
        .collect();
    let low = rises.iter().copied().fold(f64::INFINITY, f64::min);
    let high = rises.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (by, uneven) = ((low + high) / 2.0, (high - low) / 2.0);
    let face = view.faces().get(moving).filter(|face| face.from.is_none())?;
    let even = by.is_finite() && uneven <= Tolerances::default().height * 0.9;
    even.then(|| (face.id, Length::from_metres(by)))
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{gable_job, inches, of, one};
    use chalkcourse_geometry::{Length, Pitch};

    fn raised(mm: f64) -> chalkcourse_job::Resolved {
        let mut job = gable_job();
        job.faces[1].height = Length::from_metres(3.0 + mm / 1000.0);
        job
    }

    #[test]
    fn meeting_at_the_tolerance_and_beyond() {
        assert!(of(&raised(0.0), "height-gap").is_empty());
        assert!(of(&raised(9.9), "height-gap").is_empty());
        let gap = one(&raised(80.0), "height-gap");
        assert_eq!(gap.key.to_string(), "height-gap/face-1/face-2");
        assert!((inches(gap.measured) * 0.0254 - 0.08).abs() < 1e-9, "{gap:#?}");
        // Of two faces that meet only each other, the one drawn later is lowered by the gap.
        let Facts::HeightGap { lift: Some((face, by)), .. } = gap.facts else { panic!("{gap:#?}") };
        assert_eq!(face, raised(80.0).faces[1].id);
        assert!((by.metres() + 0.08).abs() < 1e-9, "{by:?}");
    }

    #[test]
    fn a_gap_that_opens_has_no_lift() {
        let mut job = gable_job();
        job.faces[1].pitch = Pitch::from_rise_in_12(6.2).unwrap();
        job.faces[1].downslope = chalkcourse_geometry::Azimuth::from_degrees(1.0);
        let gap = one(&job, "height-gap");
        assert!(matches!(gap.facts, Facts::HeightGap { lift: None, .. }));
    }
}
