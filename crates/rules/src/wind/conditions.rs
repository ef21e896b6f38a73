use super::{Refused, RoofShape, Wind, velocity_pressure_with_kd, zone_width};
use crate::Unknown;
use chalkcourse_geometry::{DVec2, EdgeKind, RoofFace};
use chalkcourse_job::{LoadStandard, Resolved};
use chalkcourse_layout::{Layout, known};

/// Internal pressure of an enclosed building (ASCE/SEI 7 table 26.13-1).
const GCPI: f64 = 0.18;

/// Wind conditions of a roof, independent of blocks.
#[derive(Clone, Debug, PartialEq)]
pub struct Conditions {
    /// The edition.
    pub standard: LoadStandard,
    /// Mean roof height, feet.
    pub height_ft: f64,
    /// Velocity pressure times Kd, pounds per square foot.
    pub q_kd_psf: f64,
    /// Width of edge zones, feet.
    pub zone_width_ft: f64,
    /// Minimum pressure on cladding, pounds per square foot.
    pub least_psf: f64,
    /// The roof shape as the figures classify it, or why they don't cover it.
    pub shape: Result<RoofShape, Refused>,
}

impl Conditions {
    /// The conditions of a job. `None` if rule book or site lack data.
    pub fn of(job: &Resolved, layout: &Layout) -> Option<Self> {
        let loads = job.rule_book.loads.as_ref()?;
        let site = &job.site.building;
        let standard = loads.standard.value;
        let height_ft = known::eave_height(job)?.length.feet() + half_rise(layout) / 0.3048;
        let wind = Wind {
            standard,
            mph: site.wind_mph?,
            exposure: site.exposure?,
            height_ft,
            elevation_ft: site.elevation.map_or(0.0, |elevation| elevation.feet()),
        };
        Some(Self {
            standard,
            height_ft,
            q_kd_psf: velocity_pressure_with_kd(&wind),
            zone_width_ft: zone_width(known::least_width(job)?.length.feet(), height_ft),
            least_psf: loads.least_pressure_psf.value,
            shape: shape_of(layout),
        })
    }

    /// Outward pressure, pounds per square foot at strength level, for a coefficient.
    pub fn psf(&self, gcp: f64) -> f64 {
        (self.q_kd_psf * (GCPI - gcp)).max(self.least_psf)
    }
}

/// The roof shape as the figures classify it.
///
/// # Errors
/// [`Refused`] for a roof with valleys, walls or steps: the figures are for plain gables and hips.
pub fn shape_of(layout: &Layout) -> Result<RoofShape, Refused> {
    if let Some(kind) = other_kind(layout) {
        return Err(Refused::Edge(kind));
    }
    let hip = kinds(layout).any(|kind| kind == EdgeKind::Hip);
    Ok(if hip { RoofShape::Hip } else { RoofShape::Gable })
}

fn kinds(layout: &Layout) -> impl Iterator<Item = EdgeKind> + '_ {
    layout.roof.faces.iter().flat_map(|face| face.edges.iter().map(|edge| edge.kind))
}

/// An edge kind that a plain gable or hip roof does not have.
fn other_kind(layout: &Layout) -> Option<EdgeKind> {
    kinds(layout).find(|kind| {
        matches!(kind, EdgeKind::Valley | EdgeKind::WallLine | EdgeKind::Step | EdgeKind::PitchChange)
    })
}

/// Inputs of the wind conditions that neither site nor drawing gives.
pub(crate) fn unknown_wind(job: &Resolved) -> Vec<Unknown> {
    let site = &job.site.building;
    Unknown::among([
        (Unknown::WindSpeed, site.wind_mph.is_none()),
        (Unknown::Exposure, site.exposure.is_none()),
        (Unknown::EaveHeight, known::eave_height(job).is_none()),
        (Unknown::LeastWidth, known::least_width(job).is_none()),
    ])
}

/// Half the rise of the roof, metres: the mean roof height is the eave height plus this.
fn half_rise(layout: &Layout) -> f64 {
    let sound = || layout.roof.faces.iter().filter(|face| face.sound);
    let height = |face: &RoofFace, p: DVec2| face.plane.height_at(p);
    let all = || sound().flat_map(|face| face.plan.outer.iter().map(|&p| height(face, p)));
    let (low, high) = (all().fold(f64::INFINITY, f64::min), all().fold(f64::NEG_INFINITY, f64::max));
    if high > low { (high - low) / 2.0 } else { 0.0 }
}
