//! The wind zones of a roof per the figures, for drawing, with the outward pressure in each.

use super::{Conditions, Figure, Refused, Zone, coefficients, unknown_wind, zone_areas};
use crate::{Section, WhyNot};
use chalkcourse_geometry::Polygon;
use chalkcourse_job::Resolved;
use chalkcourse_layout::Layout;

/// Zones on the faces of a roof, and what could not be drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// Conditions behind the pressures, and the effective wind area in square feet; or why there are none.
    pub from: Result<(Conditions, f64), WhyNot>,
    /// Faces whose zones are known.
    pub faces: Vec<FaceZones>,
    /// Why faces are missing, each reason once.
    pub refused: Vec<Refused>,
}

/// The zones of one face.
#[derive(Clone, Debug, PartialEq)]
pub struct FaceZones {
    /// Index of the face.
    pub face: usize,
    /// The figure used.
    pub figure: Figure,
    /// Its zones, mildest first.
    pub zones: Vec<DrawnZone>,
}

/// One zone of a face.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnZone {
    /// The zone.
    pub zone: Zone,
    /// Outward coefficient GCp.
    pub gcp: f64,
    /// Outward pressure, pounds per square foot, at strength level.
    pub psf: f64,
    /// Its outline in plan, in pieces.
    pub shapes: Vec<Polygon>,
}

/// Effective wind area at which the figures are most severe, square feet.
const LEAST_AREA: f64 = 10.0;

/// The zones of a job's roof. The effective wind area is the deck area per fastener if site or kit gives it, otherwise the 10 ft²
/// at which the figures are most severe.
pub fn drawn(job: &Resolved, layout: &Layout) -> Drawn {
    let said = job.site.building.fastener_square_feet.or_else(|| job.kit.deck_a_fastener());
    let square_feet = said.unwrap_or(LEAST_AREA);
    let Some(conditions) = Conditions::of(job, layout) else {
        let why = if job.rule_book.loads.is_none() {
            WhyNot::NotInBook(Section::Wind)
        } else {
            WhyNot::NotKnown(unknown_wind(job))
        };
        return Drawn { from: Err(why), faces: Vec::new(), refused: Vec::new() };
    };
    let mut all =
        Drawn { from: Ok((conditions.clone(), square_feet)), faces: Vec::new(), refused: Vec::new() };
    for (index, face) in layout.roof.faces.iter().enumerate().filter(|(_, face)| face.sound) {
        let found = conditions.shape.and_then(|shape| {
            Ok((shape, coefficients(conditions.standard, shape, face.plane.pitch.degrees())?))
        });
        match found {
            Ok((shape, figure)) => {
                let width = conditions.zone_width_ft * 0.3048;
                let zones = zone_areas(conditions.standard, shape, face, width).into_iter();
                let mut zones: Vec<DrawnZone> = zones
                    .filter_map(|area| {
                        let gcp = figure.outward(area.zone, square_feet)?;
                        Some(DrawnZone {
                            zone: area.zone,
                            gcp,
                            psf: conditions.psf(gcp),
                            shapes: area.shapes,
                        })
                    })
                    .collect();
                zones.sort_by(|a, b| a.psf.total_cmp(&b.psf).then(a.zone.cmp(&b.zone)));
                all.faces.push(FaceZones { face: index, figure: figure.figure, zones });
            }
            Err(refused) if !all.refused.contains(&refused) => all.refused.push(refused),
            Err(_) => {}
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{book, gable_job};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Building, Exposure, LoadStandard};

    fn in_wind() -> Resolved {
        let mut job = gable_job();
        book(&mut job).loads.as_mut().unwrap().standard.value = LoadStandard::Asce722;
        job.site.building = Building {
            wind_mph: Some(115.0),
            exposure: Some(Exposure::B),
            eave_height: Some(Length::from_feet(12.0)),
            least_width: Some(Length::from_metres(12.0)),
            ..Building::default()
        };
        job
    }

    /// 6:12 under 7-22, figure 2C at 10 ft²: −1.5, −2.5 and −3.0; qh·Kd is 17.03 psf (see the rule's own test), so the pressures
    /// are 17.03 × (GCp − 0.18).
    #[test]
    fn every_part_of_each_face_has_a_zone_and_a_pressure() {
        let job = in_wind();
        let layout = Layout::of(&job);
        let all = drawn(&job, &layout);
        assert!(all.faces.len() == 2 && all.refused.is_empty());
        for face in &all.faces {
            let area: f64 = face.zones.iter().flat_map(|zone| &zone.shapes).map(Polygon::area).sum();
            assert!((area - layout.roof.faces[face.face].plan_area).abs() < 1e-6);
            for (zone, psf) in face.zones.iter().zip([28.6, 45.6, 54.2]) {
                assert!((zone.psf - psf).abs() < 0.1, "{zone:?}");
            }
        }
    }

    #[test]
    fn unknowns_and_cases_without_a_figure_say_so() {
        let mut job = in_wind();
        job.site.building.exposure = None;
        let all = drawn(&job, &Layout::of(&job));
        assert!(all.faces.is_empty() && all.from.is_err());
        let mut job = in_wind();
        book(&mut job).loads.as_mut().unwrap().standard.value = LoadStandard::Asce716;
        let all = drawn(&job, &Layout::of(&job));
        assert!(all.faces.is_empty() && all.refused.len() == 1, "{:?}", all.refused);
    }
}
