//! The checklist that a crew works through before and during the work, for printing: the book's cautions, and what the roof as
//! drawn calls for. None of it is wrong with the job, so none of it is a finding.

use crate::names::length;
use chalkcourse_job::{Caution, Resolved, Source};
use chalkcourse_layout::Layout;
use chalkcourse_rules::{IceBarrier, ice_barrier};
use chalkcourse_words::{self as words, of_data};

/// The lines of the checklist, those about the roof first.
pub fn checklist(job: &Resolved, layout: &Layout) -> Vec<Caution> {
    let mut lines = Vec::new();
    if let Some(roofing) = &job.rule_book.roofing {
        for (about, limit) in [
            (words::common::DRIP_EDGE.now(), &roofing.drip_edge),
            (words::common::FIRE_CLASS.now(), &roofing.fire_class),
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
    let about = words::common::ICE_BARRIER.now().into();
    match barrier {
        IceBarrier::InsideWall(inside, source) => Caution {
            about,
            text: words::rules::from_the_eave_to_inside(&length(inside.metres(), job.units)),
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
                text: words::rules::on_where_the_place_has(
                    &names.join(", "),
                    &pitch,
                    &length(reach.metres(), job.units),
                ),
                source,
            }
        }
    }
}
