//! What a crew goes through before and during the work, to print with a job: the book's cautions, and what the roof
//! as drawn asks for. Nothing here is wrong with the job, so none of it is a finding.

use crate::names::length;
use chalkcourse_job::{Caution, Resolved, Source};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{IceBarrier, ice_barrier};
use chalkcourse_words::{of_data, pick, tell};

/// The lines of the checklist, those of the roof first.
pub fn checklist(job: &Resolved, layout: &Layout) -> Vec<Caution> {
    let mut lines = Vec::new();
    if let Some(roofing) = &job.rule_book.roofing {
        for (about, limit) in [
            (pick("Drip edge", "Goterón"), &roofing.drip_edge),
            (pick("Fire class", "Clase de fuego"), &roofing.fire_class),
        ] {
            lines.extend(limit.as_ref().map(|limit| Caution {
                about: about.into(),
                text: of_data(&limit.value),
                source: limit.source.clone(),
            }));
        }
        lines.extend(ice_barrier(job, layout).into_iter().map(|barrier| of_ice(job, layout, barrier)));
    }
    lines.extend(job.rule_book.cautions.iter().map(|caution| Caution {
        about: of_data(&caution.about),
        text: of_data(&caution.text),
        source: Source::new(of_data(&caution.source.text), caution.source.standing),
    }));
    lines
}

fn of_ice(job: &Resolved, layout: &Layout, barrier: IceBarrier) -> Caution {
    let about = pick("Ice barrier", "Barrera contra hielo").into();
    match barrier {
        IceBarrier::InsideWall(inside, source) => Caution {
            about,
            text: tell!(
                "From the eave to {} inside the outer wall, where the place has ice along its eaves; give the overhang to have the \
                 length on the slope worked out.",
                "Del alero a {} hacia adentro del muro exterior, donde el lugar tiene hielo en los aleros; indique \
                 el voladizo para calcular la longitud en la pendiente.",
                length(inside.metres(), job.units)
            ),
            source,
        },
        IceBarrier::OnFaces { faces, pitch, reach, source } => {
            let names: Vec<&str> = faces
                .iter()
                .filter_map(|index| layout.faces.get(*index))
                .map(|face| face.name.as_str())
                .collect();
            Caution {
                about,
                text: tell!(
                    "On {} ({pitch}), where the place has ice along its eaves: {} up the slope from the eave.",
                    "En {} ({pitch}), donde el lugar tiene hielo en los aleros: {} pendiente arriba desde el alero.",
                    names.join(", "),
                    length(reach.metres(), job.units)
                ),
                source,
            }
        }
    }
}
