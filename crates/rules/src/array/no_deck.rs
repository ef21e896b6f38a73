//! A block lies on a face that exists in the job and has a valid outline.
//!
//! Source: geometry; nothing can be measured on a self-intersecting outline.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::{Authority, Facts, NoDeck};
use chalkcourse_job::Subject;
use std::collections::HashMap;

pub(crate) const RULE: Rule = Rule {
    code: "no-deck",
    sketch: &[
        Stroke::Edge(&[[10.0, 10.0], [90.0, 50.0], [90.0, 10.0], [10.0, 50.0], [10.0, 10.0]]),
        Stroke::Wrong([38.0, 21.0, 24.0, 18.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Whole(run),
};

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let (job, layout) = (view.job(), view.layout());
    let sound: HashMap<_, _> = layout
        .faces
        .iter()
        .zip(&layout.roof.faces)
        .rev()
        .map(|(face, on_roof)| (face.id, on_roof.sound))
        .collect();
    for block in &job.blocks {
        let state = match sound.get(&block.face) {
            Some(true) => continue,
            Some(false) => NoDeck::Defective,
            None if job.resting.iter().any(|face| face.id == block.face) => NoDeck::Resting,
            None => NoDeck::Absent,
        };
        findings.push(Finding {
            place: Location { face: Some(block.face), block: Some(block.id), ..Location::default() },
            ..Finding::of(
                RULE.code,
                Severity::Stop,
                Subject::OnFace(block.id, block.face),
                Facts::NoDeck(state),
            )
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};
    use crate::{Facts, NoDeck};
    use chalkcourse_job::FaceId;

    #[test]
    fn a_sound_face_passes_and_a_folded_one_does_not() {
        let mut job = gable_job();
        assert!(of(&job, "no-deck").is_empty());
        job.faces[0].outline.outer.swap(1, 2);
        assert_eq!(one(&job, "no-deck").key.to_string(), "no-deck/block-3/face-1");
    }

    #[test]
    fn a_face_that_is_not_there() {
        let mut job = gable_job();
        job.blocks[0].face = FaceId(77);
        assert_eq!(one(&job, "no-deck").facts, Facts::NoDeck(NoDeck::Absent));
    }
}
