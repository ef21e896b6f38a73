//! A block needs a face to lie on: one that is in the job, and whose outline holds together.
//!
//! Source: geometry; nothing can be measured on an outline that folds over itself.

use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::{block_name, sentence};
use chalkcourse_words::{pick, say, tell};
use std::collections::HashMap;

pub(crate) const RULE: Rule = Rule {
    code: "no-deck",
    title: say(
        "Blocks lie on a face whose outline holds together",
        "Los bloques están en un faldón de contorno válido",
    ),
    reason: say(
        "Nothing can be placed, measured or counted on an outline that folds over itself.",
        "Nada se puede colocar, medir ni contar en un contorno que se cruza a sí mismo.",
    ),
    sketch: &[
        Stroke::Edge(&[[10.0, 10.0], [90.0, 50.0], [90.0, 10.0], [10.0, 50.0], [10.0, 10.0]]),
        Stroke::Wrong([38.0, 21.0, 24.0, 18.0]),
    ],
    source: |_| {
        pick("geometry: no deck can be measured there", "geometría: ahí no se puede medir ningún entablado")
            .into()
    },
    missing: nothing_missing,
    run: Run::Whole(run),
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let index_of: HashMap<_, _> =
        case.layout.faces.iter().enumerate().rev().map(|(index, face)| (face.id, index)).collect();
    for block in &case.job.blocks {
        let index = index_of.get(&block.face).copied();
        let (what, measured) = match index.and_then(|index| case.layout.roof.faces.get(index)) {
            Some(face) if face.sound => continue,
            Some(_) => (
                tell!(
                    "{}, whose outline does not hold together. Mend the outline first",
                    "{}, cuyo contorno no es válido. Corrija primero el contorno",
                    case.face_name(index.unwrap_or(0))
                ),
                pick("an outline with defects", "un contorno con defectos"),
            ),
            None if case.job.resting.iter().any(|face| face.id == block.face) => {
                let rests = case.job.resting.iter().find(|face| face.id == block.face);
                (
                    tell!(
                        "face {}, which is gone: its side of the house has no roof there now. Put the block on another face, or \
                         bring the face back",
                        "el faldón {}, que ya no existe: su lado de la casa no tiene techo ahora. Ponga el bloque en otro \
        faldón, o recupere el faldón",
                        rests.map_or("", |face| face.name.as_str())
                    ),
                    pick("no face", "ningún faldón"),
                )
            }
            None => (
                pick(
                    "a face that the job does not have. Put the block on another face",
                    "un faldón que la obra no tiene. Ponga el bloque en otro faldón",
                )
                .to_owned(),
                pick("no face", "ningún faldón"),
            ),
        };
        findings.push(Finding {
            message: tell!(
                "{} lies on {what}; nothing on it is checked until then.",
                "{} está en {what}; hasta entonces no se revisa nada de él.",
                sentence(&block_name(block))
            ),
            place: Place { face: Some(block.face), block: Some(block.id), ..Place::default() },
            measured: measured.into(),
            required: pick("a face with a sound outline", "un faldón con contorno válido").into(),
            source: RULE.source(case.job),
            ..Finding::of(
                RULE.code,
                Severity::Stop,
                format!("no-deck/block-{}/face-{}", block.id, block.face),
            )
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, of, one};
    use chalkcourse_job::FaceId;

    #[test]
    fn a_sound_face_passes_and_a_folded_one_does_not() {
        let mut job = gable_job();
        assert!(of(&job, "no-deck").is_empty());
        job.faces[0].outline.outer.swap(1, 2);
        assert_eq!(one(&job, "no-deck").key, "no-deck/block-3/face-1");
    }

    #[test]
    fn a_face_that_is_not_there() {
        let mut job = gable_job();
        job.blocks[0].face = FaceId(77);
        assert!(one(&job, "no-deck").message.contains("does not have"));
    }
}
