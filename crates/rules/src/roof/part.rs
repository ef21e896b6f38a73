//! Every part of the house carries a roof.
//!
//! Source: geometry; edits that would make a footprint over which no roof closes are refused, so only files made elsewhere or by
//! an older program can trigger this.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::{Authority, Facts};
use chalkcourse_job::{PartTrouble, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "part",
    sketch: &[
        Stroke::Edge(&[[24.0, 6.0], [24.0, 32.0]]),
        Stroke::Edge(&[[76.0, 6.0], [76.0, 32.0]]),
        Stroke::Edge(&[[6.0, 6.0], [94.0, 6.0]]),
        Stroke::Limit(&[[18.0, 29.0], [50.0, 54.0], [82.0, 29.0]]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    for problem in view.job().problems() {
        let Some(part) = view.job().part(problem.part) else { continue };
        let (facts, matter, severity) = match &problem.trouble {
            PartTrouble::NotRaised(why) => {
                (Facts::NotRaised { why: why.clone() }, "not-raised", Severity::Stop)
            }
            PartTrouble::Hidden => (Facts::Hidden, "hidden", Severity::Caution),
            PartTrouble::NoCricket => (Facts::NoCricket, "no-cricket", Severity::Caution),
        };
        findings.push(Finding {
            place: Location { shape: part.outline.outer.clone(), ..Location::default() },
            ..Finding::of(RULE.code, severity, Subject::Part(part.id, matter.into()), facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{gable_job, of, one};
    use chalkcourse_geometry::raise::Treatment;
    use chalkcourse_geometry::{Length, Pitch, Polygon, dvec2};
    use chalkcourse_job::{Edit, PartId, PartKind, RoofPart, apply, job_from_text, job_to_text};
    use std::path::Path;

    #[test]
    fn a_part_with_a_roof_and_one_from_a_file_that_has_none() {
        let outline = Polygon::new(
            [(30.0, 0.0), (38.0, 0.0), (38.0, 6.0), (30.0, 6.0)].map(|(x, y)| dvec2(x, y)).to_vec(),
        );
        let slope = Treatment::Slope(Pitch::from_rise_in_12(6.0).unwrap());
        let id = PartId(40);
        let (name, eave) = ("Barn".to_owned(), Length::from_metres(3.0));
        let part = RoofPart::new(id, name, PartKind::Main, outline, eave, slope, Length::ZERO);
        let job = apply(&gable_job(), &Edit::PutPart(part)).unwrap();
        assert!(of(&job, "part").is_empty());
        // A file with gables all around, as from a mistake in a text editor.
        let mut wrong = job;
        for side in wrong.parts.iter_mut().flat_map(|part| &mut part.sides).flatten() {
            side.treatment = Treatment::Gable;
        }
        let text = job_to_text(&wrong).unwrap();
        let job = job_from_text(&text, Path::new("barn")).unwrap();
        let finding = one(&job, "part");
        assert!(
            matches!(finding.facts, Facts::NotRaised { .. })
                && finding.key.to_string().ends_with("/not-raised")
        );
        assert_eq!(job.resting.len(), 4, "its faces wait");
    }
}
