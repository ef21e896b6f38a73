//! The roofing itself: what a slope asks for, and what a wide penetration does.

pub(crate) mod cricket;
pub(crate) mod deck_condition;
pub(crate) mod drip_edge;
pub(crate) mod fire_class;
pub(crate) mod slope;
pub(crate) mod underlayment;

use chalkcourse_job::{Job, Roofing};
use chalkcourse_words::pick;

/// Why roofing is not checked.
pub(crate) fn missing(job: &Job) -> Option<String> {
    job.rule_book.roofing.is_none().then(|| {
        pick("the rule book does not go into roofing", "el libro de reglas no trata el recubrimiento").into()
    })
}

/// The section of the book for a source line.
pub(crate) fn source(job: &Job, of: fn(&Roofing) -> &str) -> String {
    job.rule_book.roofing.as_ref().map_or_else(
        || pick("none in this book", "ninguno en este libro").into(),
        |roofing| of(roofing).to_owned(),
    )
}

/// Rise over run: a hair below a pitch is that pitch.
pub(crate) const SLACK: f64 = 2e-5;
