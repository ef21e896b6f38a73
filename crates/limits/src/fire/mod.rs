//! Fire-service access: IRC R324.6 and IFC 1205.2 (1204.2 in 2018), or IFC 605.11 of 2012 and 2015, as the rule book says.

pub(crate) mod escape;
pub(crate) mod hip_valley;
pub(crate) mod ridge;

use crate::off::{Exemption, OffReason};
use crate::site::Site;
use chalkcourse_geometry::RoofFace;
use chalkcourse_job::{FireAccess, Resolved};

/// Why a job as a whole is exempt from fire access.
pub fn exempt(job: &Resolved) -> Option<OffReason> {
    let Some(book) = &job.rule_book.fire_access else { return Some(OffReason::NoFireAccess) };
    let site = &job.site.building;
    if site.detached_uninhabited {
        return Some(OffReason::Exempt(Exemption::Detached));
    }
    if !site.no_roof_operations.trim().is_empty() {
        return Some(OffReason::Exempt(Exemption::NoRoofOperations));
    }
    let integrated = book.integrated_exempt.as_ref().is_some_and(|limit| limit.value);
    let read = !site.integrated_listing_read_by.trim().is_empty();
    (integrated && read).then_some(OffReason::Exempt(Exemption::Integrated))
}

/// Whether a plane is steep enough for the book to apply.
pub fn looked_at(fire: &FireAccess, face: &RoofFace) -> bool {
    // A hair above the exempt pitch counts as that pitch.
    face.sound && face.plane.pitch.slope() > fire.exempt_to.value.slope() + 2e-5
}

impl Site<'_> {
    /// The book's fire access for this face; `None` if the face is exempt.
    pub(crate) fn fire(&self) -> Option<&FireAccess> {
        self.job.rule_book.fire_access.as_ref().filter(|fire| looked_at(fire, self.face))
    }
}
