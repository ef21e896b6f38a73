//! A job with the faces derived from its parts, and how they are derived.

mod body;
mod borders;
mod chimney;
mod derive;
mod problem;
mod reassign;
mod seen;
mod sides;
mod surface;
#[cfg(test)]
mod tests;

pub(crate) use derive::{Strictness, derive_faces};
pub use problem::{PartProblem, PartTrouble};

use crate::{DecidedFace, EditError, Face, Job, Kit, PriceList, RuleBook};
use body::Body;
use std::fmt;
use std::ops::{Deref, DerefMut};
use std::sync::Arc;

/// A job with the faces derived from its parts: what everything that works with a roof reads.
///
/// It is made by [`resolve`] and [`apply`](crate::apply); [`decided`](Self::decided) returns only what a person
/// decided, which is what a file contains. Direct modifications, as in tests, do not derive faces again.
#[derive(Clone)]
pub struct Resolved {
    job: Job<Face>,
    /// Each part with its own roof, cached so that an edit only raises the parts that it changes.
    bodies: Vec<Arc<Body>>,
    problems: Vec<PartProblem>,
}

/// Derives the faces of the parts of a job. A part that can't be raised is reported in
/// [`problems`](Resolved::problems).
///
/// # Errors
/// [`EditError::Tangled`] if parts intersect so closely that rounding makes the result ambiguous.
pub fn resolve(job: Job) -> Result<Resolved, EditError> {
    raised(numbered(job))
}

/// A job with ids for sides that were written without; the faces of parts have no geometry yet.
pub(crate) fn numbered(job: Job) -> Job<Face> {
    let mut job = job.with_faces(Face::from);
    for part in &mut job.parts {
        part.settle_sides(None);
    }
    for face in job.faces.iter_mut().filter(|face| face.from.is_none() && face.sides.is_empty()) {
        face.settle_sides(None);
    }
    job
}

/// The job with the geometry of its parts' faces.
pub(crate) fn raised(job: Job<Face>) -> Result<Resolved, EditError> {
    let mut resolved = Resolved { job, bodies: Vec::new(), problems: Vec::new() };
    derive_faces(&mut resolved, Strictness::Report)?;
    Ok(resolved)
}

impl Resolved {
    /// A job without a roof.
    pub fn new(name: String, kit: Arc<Kit>, rule_book: Arc<RuleBook>, prices: Arc<PriceList>) -> Self {
        let job = Job::new(name, kit, rule_book, prices);
        Self { job, bodies: Vec::new(), problems: Vec::new() }
    }

    /// Only what a person decided.
    pub fn decided(&self) -> Job {
        self.job.clone().with_faces(DecidedFace::from)
    }

    /// A copy with a change that does not affect how faces are derived.
    #[must_use]
    pub fn with(&self, change: impl FnOnce(&mut Job<Face>)) -> Self {
        let mut changed = self.clone();
        change(&mut changed.job);
        changed
    }

    /// Parts or pieces of parts that are not on the roof, and why.
    pub fn problems(&self) -> &[PartProblem] {
        &self.problems
    }
}

impl Deref for Resolved {
    type Target = Job<Face>;

    fn deref(&self) -> &Job<Face> {
        &self.job
    }
}

impl DerefMut for Resolved {
    fn deref_mut(&mut self) -> &mut Job<Face> {
        &mut self.job
    }
}

impl PartialEq for Resolved {
    /// Bodies are derived from the parts, which are compared.
    fn eq(&self, other: &Self) -> bool {
        let Self { job, bodies: _, problems } = self;
        (job, problems) == (&other.job, &other.problems)
    }
}

impl fmt::Debug for Resolved {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { job, bodies: _, problems } = self;
        f.debug_struct("Resolved").field("job", job).field("problems", problems).finish_non_exhaustive()
    }
}
