//! Room for the fire service: pathways from the lowest edge to the ridge, and clear room beside the ridge.
//!
//! IRC R324.6 and IFC 1205.2 (1204.2 in 2018), or IFC 605.11 of 2012 and 2015, as the rule book says. A roof with modules
//! on it is looked at; planes no steeper than the book's exemption are not.

pub(crate) mod escape;
mod free;
pub(crate) mod hip_valley;
pub(crate) mod kept;
pub(crate) mod opening;
pub(crate) mod paths;
pub(crate) mod pathway;
pub(crate) mod plane_path;
pub(crate) mod ridge;
pub(crate) mod street;

use crate::view::WholeView;
use crate::{Authority, Exemption, Section, WhyNot};
use chalkcourse_geometry::{DVec2, Rect, RoofFace, dvec2};
use chalkcourse_job::{FireAccess, Job, Quantity, Source};
use chalkcourse_limits::looked_at;

/// Why fire access is not checked for a job at all.
pub(crate) fn exempt(job: &Job) -> Option<WhyNot> {
    let Some(book) = &job.rule_book.fire_access else { return Some(WhyNot::NotInBook(Section::FireAccess)) };
    let site = &job.site.building;
    if site.detached_uninhabited {
        return Some(WhyNot::Exempt(Exemption::Detached));
    }
    if !site.no_roof_operations.trim().is_empty() {
        return Some(WhyNot::Exempt(Exemption::NoRoofOperations));
    }
    let integrated = book.integrated_exempt.as_ref().is_some_and(|limit| limit.value);
    let read = !site.integrated_listing_read_by.trim().is_empty();
    (integrated && read).then_some(WhyNot::Exempt(Exemption::Integrated))
}

/// By whose word a limit of the book's fire access is.
pub(crate) fn source(job: &Job, of: fn(&FireAccess) -> &Source) -> Authority {
    job.rule_book.fire_access.as_ref().map_or(Authority::NotInBook, |fire| Authority::of(of(fire)))
}

/// The same of a limit that an edition may not have.
pub(crate) fn source_of(job: &Job, of: fn(&FireAccess) -> Option<&Source>) -> Authority {
    let fire = job.rule_book.fire_access.as_ref();
    fire.map_or(Authority::NotInBook, |fire| of(fire).map_or(Authority::NotInEdition, Authority::of))
}

/// Whether there is anything to look at: a block on a plane that is not exempt.
pub(crate) fn has_array(view: WholeView<'_>, fire: &FireAccess) -> bool {
    view.laid().iter().any(|laid| looked_at(fire, laid.face))
}

/// So many pathways, as wide as the book asks.
pub(crate) fn pathways(fire: &FireAccess, count: usize) -> Quantity {
    Quantity::Pathways { count: u32::try_from(count).unwrap_or(u32::MAX), width: fire.path_width.value }
}

/// A shape in the frame of a face as it lies in plan, where the code measures.
pub(crate) trait Level: Copy {
    /// With heights up the slope divided by how much longer they are than in plan.
    fn level(self, factor: f64) -> Self;
}

impl Level for DVec2 {
    fn level(self, factor: f64) -> Self {
        dvec2(self.x, self.y / factor)
    }
}

impl Level for Rect {
    fn level(self, factor: f64) -> Self {
        Self { min: self.min.level(factor), max: self.max.level(factor) }
    }
}

impl Level for (DVec2, DVec2) {
    fn level(self, factor: f64) -> Self {
        (self.0.level(factor), self.1.level(factor))
    }
}

/// A shape on a face as it lies in plan.
pub(crate) fn level<T: Level>(face: &RoofFace, shape: T) -> T {
    shape.level(face.plane.pitch.slope_factor())
}
