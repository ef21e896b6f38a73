//! Room for the fire service: pathways from the lowest edge to the ridge, and clear room beside the ridge.
//!
//! IRC R324.6 and IFC 1205.2 (1204.2 in 2018), or IFC 605.11 of 2012 and 2015, as the rule book says. A roof with modules
//! on it is looked at; planes no steeper than the book's exemption are not.

pub(crate) mod escape;
mod free;
pub(crate) mod hip_valley;
pub(crate) mod opening;
pub(crate) mod paths;
pub(crate) mod pathway;
pub(crate) mod plane_path;
pub(crate) mod ridge;
pub(crate) mod street;

use crate::case::Case;
use chalkcourse_geometry::RoofFace;
use chalkcourse_job::{FireAccess, Job};
use chalkcourse_words::{pick, tell};

/// Why fire access is not checked for a job at all.
pub(crate) fn exempt(job: &Job) -> Option<String> {
    let Some(book) = &job.rule_book.fire_access else {
        return Some(
            pick(
                "the rule book does not go into fire access",
                "el libro de reglas no trata el acceso de bomberos",
            )
            .into(),
        );
    };
    let site = &job.site.building;
    if site.detached_uninhabited {
        return Some(
            pick(
                "exempt: a detached building in which nobody lives",
                "exento: un edificio separado en el que nadie vive",
            )
            .into(),
        );
    }
    if !site.no_roof_operations.trim().is_empty() {
        return Some(tell!(
            "exempt: the fire official found no roof operations ({})",
            "exento: el oficial de bomberos determinó que no habrá trabajo en el techo ({})",
            site.no_roof_operations.trim()
        ));
    }
    let integrated = book.integrated_exempt.as_ref().is_some_and(|limit| limit.value);
    let read_by = site.integrated_listing_read_by.trim();
    (integrated && !read_by.is_empty()).then(|| {
        tell!(
            "exempt: roof-integrated array, its listing read by {read_by}; the exemption is in doubt",
            "exento: arreglo integrado al techo, su certificación la leyó {read_by}; la exención está en duda"
        )
    })
}

/// The section of the book for a source line.
pub(crate) fn source(job: &Job, of: fn(&FireAccess) -> &str) -> String {
    job.rule_book
        .fire_access
        .as_ref()
        .map_or_else(|| pick("none in this book", "ninguno en este libro").into(), |fire| of(fire).to_owned())
}

/// Whether a plane is steep enough to be looked at.
pub(crate) fn looked_at(fire: &FireAccess, face: &RoofFace) -> bool {
    // A hair over the exempt pitch is that pitch.
    face.sound && face.plane.pitch.slope() > fire.exempt_to.value.slope() + 2e-5
}

/// Whether there is anything to look at: a block on a plane that is not exempt.
pub(crate) fn has_array(case: &Case<'_>, fire: &FireAccess) -> bool {
    case.blocks.iter().any(|laid| looked_at(fire, laid.face))
}
