//! Fire-service access: pathways from the lowest edge to the ridge, and setbacks at the ridge.
//!
//! IRC R324.6 and IFC 1205.2 (1204.2 in 2018), or IFC 605.11 of 2012 and 2015, as the rule book says. Only roofs with modules are
//! checked; planes no steeper than the book's exemption are not.

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
use crate::{Authority, WhyNot};
use chalkcourse_job::{FireAccess, Quantity, Resolved, Source};
use chalkcourse_limits::looked_at;

/// Why fire access is not checked for a job at all.
pub(crate) fn exempt(job: &Resolved) -> Option<WhyNot> {
    chalkcourse_limits::exempt(job).map(WhyNot::from)
}

/// The source of a limit in the book's fire access section.
pub(crate) fn source(job: &Resolved, of: fn(&FireAccess) -> &Source) -> Authority {
    job.rule_book.fire_access.as_ref().map_or(Authority::NotInBook, |fire| Authority::of(of(fire)))
}

/// The same for a limit that an edition may not have.
pub(crate) fn source_of(job: &Resolved, of: fn(&FireAccess) -> Option<&Source>) -> Authority {
    let fire = job.rule_book.fire_access.as_ref();
    fire.map_or(Authority::NotInBook, |fire| of(fire).map_or(Authority::NotInEdition, Authority::of))
}

/// Whether there is anything to check: a block on a plane that is not exempt.
pub(crate) fn has_array(view: WholeView<'_>, fire: &FireAccess) -> bool {
    view.laid().iter().any(|laid| looked_at(fire, laid.face))
}

/// A number of pathways, as wide as the book requires.
pub(crate) fn pathways(fire: &FireAccess, count: usize) -> Quantity {
    Quantity::Pathways { count: u32::try_from(count).unwrap_or(u32::MAX), width: fire.path_width.value }
}
