//! Rules about the roofing: requirements of slopes and of wide penetrations.

pub(crate) mod cricket;
pub(crate) mod deck_condition;
pub(crate) mod drip_edge;
pub(crate) mod fire_class;
pub(crate) mod ice_barrier;
pub(crate) mod slope;
pub(crate) mod underlayment;

use crate::{Authority, Section, WhyNot};
use chalkcourse_job::{Resolved, Roofing, Source};

/// Why roofing is not checked.
pub(crate) fn missing(job: &Resolved) -> Option<WhyNot> {
    job.rule_book.roofing.is_none().then_some(WhyNot::NotInBook(Section::Roofing))
}

/// The source of a limit in the book's roofing section.
pub(crate) fn source(job: &Resolved, of: fn(&Roofing) -> &Source) -> Authority {
    job.rule_book.roofing.as_ref().map_or(Authority::NotInBook, |roofing| Authority::of(of(roofing)))
}

/// The same for a limit that a book may leave out.
pub(crate) fn source_of(job: &Resolved, of: fn(&Roofing) -> Option<&Source>) -> Authority {
    let roofing = job.rule_book.roofing.as_ref();
    roofing.map_or(Authority::NotInBook, |roofing| of(roofing).map_or(Authority::LeftOut, Authority::of))
}

/// Tolerance on rise over run: a hair below a pitch counts as that pitch.
pub(crate) const SLACK: f64 = 2e-5;
