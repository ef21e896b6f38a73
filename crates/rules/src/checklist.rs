//! What a crew goes through before and during the work, to print with a job: the book's cautions, and what the roof
//! as drawn asks for. Nothing here is wrong with the job, so none of it is a finding.

use crate::words::length;
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_job::{Caution, Job};
use chalkcourse_layout::Layout;
use chalkcourse_words::{of_data, pick, tell};
use std::collections::BTreeMap;

/// The lines of the checklist, those of the roof first.
pub fn checklist(job: &Job, layout: &Layout) -> Vec<Caution> {
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
        lines.extend(ice_barrier(job, layout));
    }
    lines.extend(job.rule_book.cautions.iter().map(|caution| Caution {
        about: of_data(&caution.about),
        text: of_data(&caution.text),
        source: of_data(&caution.source),
    }));
    lines
}

/// How far an ice barrier reaches up the slope: `inside` the wall line beyond an overhang, both in plan, and from some
/// pitch on no less than a length along the slope.
pub fn ice_barrier_length(
    pitch: Pitch,
    overhang: Length,
    inside: Length,
    at_least: Option<Length>,
) -> Length {
    let reach = (overhang.metres() + inside.metres()) * pitch.slope_factor();
    Length::from_metres(at_least.map_or(reach, |least| reach.max(least.metres())))
}

fn ice_barrier(job: &Job, layout: &Layout) -> Vec<Caution> {
    let Some(ice) = job.rule_book.roofing.as_ref().and_then(|roofing| roofing.ice_barrier.as_ref()) else {
        return Vec::new();
    };
    let Some(overhang) = job.site.building.overhang else {
        return vec![Caution {
            about: pick("Ice barrier", "Barrera contra hielo").into(),
            text: tell!(
                "From the eave to {} inside the outer wall, where the place has ice along its eaves; give the overhang to have the \
                 length on the slope worked out.",
                "Del alero a {} hacia adentro del muro exterior, donde el lugar tiene hielo en los aleros; indique \
        el voladizo para calcular la longitud en la pendiente.",
                length(ice.inside_wall.value.metres(), job.units)
            ),
            source: ice.inside_wall.source.clone(),
        }];
    };
    // Faces of one pitch ask for one length.
    let mut by_pitch: BTreeMap<u64, (Pitch, Vec<&str>)> = BTreeMap::new();
    for (face, on_roof) in layout.faces.iter().zip(&layout.roof.faces).filter(|(_, face)| face.sound) {
        let pitch = on_roof.plane.pitch;
        let tenths = (pitch.rise_in_12() * 10.0).round() as u64;
        by_pitch.entry(tenths).or_insert((pitch, Vec::new())).1.push(&face.name);
    }
    let lines = by_pitch.into_values().map(|(pitch, names)| {
        let steep = pitch.slope() >= ice.steep_from.value.slope() - crate::roofing::SLACK;
        let least = steep.then_some(ice.steep_length.value);
        let reach = ice_barrier_length(pitch, overhang, ice.inside_wall.value, least);
        Caution {
            about: pick("Ice barrier", "Barrera contra hielo").into(),
            text: tell!("On {} ({:.1}:12), where the place has ice along its eaves: {} up the slope from the eave.", "En {} ({:.1}:12), donde el lugar tiene hielo en los aleros: {} pendiente arriba desde el alero.",
                names.join(", "),
                pitch.rise_in_12(),
                length(reach.metres(), job.units)
            ),
            source: if steep { ice.steep_length.source.clone() } else { ice.inside_wall.source.clone() },
        }
    });
    lines.collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::gable_job;

    /// Worked out: (12 + 24) in × 1.118 at 6:12 (IRC R905.1.2, 2018; slope factors of the trade's tables); at 8:12 no less
    /// than 36 in along the slope.
    #[test]
    fn ice_barrier_on_the_slope() {
        let inches = Length::from_inches;
        let pitch = |rise| Pitch::from_rise_in_12(rise).unwrap();
        let at = |rise, overhang, least| {
            ice_barrier_length(pitch(rise), inches(overhang), inches(24.0), least).inches()
        };
        assert!((at(6.0, 12.0, None) - 40.249).abs() < 1e-3);
        assert!((at(8.0, 0.0, Some(inches(36.0))) - 36.0).abs() < 1e-9);
        assert!((at(8.0, 12.0, Some(inches(36.0))) - 36.0 * 1.2019).abs() < 1e-2);
    }

    #[test]
    fn the_list_has_falls_and_live_dc() {
        let mut job = gable_job();
        job.site.building.overhang = Some(Length::from_inches(12.0));
        let lines = checklist(&job, &Layout::of(&job));
        for about in ["Falls", "Live dc", "Ladders", "Drip edge", "Ice barrier"] {
            assert!(lines.iter().any(|line| line.about == about && !line.source.is_empty()), "{about}");
        }
        assert!(lines.iter().any(|line| line.text.contains("South, North (6.0:12)")));
    }
}
