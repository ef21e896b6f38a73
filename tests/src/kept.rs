//! Independent layouts that once beat a claim, kept as small jobs in `tests/data/claims`.

use crate::top;
use chalkcourse_job::{FaceId, Kit, PriceList, Resolved, RuleBook, load};
use serde::Deserialize;
use std::path::PathBuf;
use std::sync::Arc;

/// One such case: a job with the layout in place, and what was claimed for the face.
#[derive(Clone, Debug)]
pub struct Kept {
    /// Its entry in the list.
    pub told: KeptEntry,
    /// The job.
    pub job: Resolved,
}

/// An entry of `list.json`.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KeptEntry {
    /// The job file beside the list.
    pub file: String,
    /// The face with the layout.
    pub face: u32,
    /// Modules on that face.
    pub modules: usize,
    /// The claimed maximum.
    pub claimed: usize,
    /// What the claim overlooked.
    pub why: String,
}

/// The folder.
pub fn folder() -> PathBuf {
    top().join("tests/data/claims")
}

/// All cases.
///
/// # Errors
/// If the list or a job can't be read.
pub fn all() -> Result<Vec<Kept>, String> {
    let path = folder().join("list.json");
    let text = std::fs::read_to_string(&path).map_err(|error| format!("{}: {error}", path.display()))?;
    let list: Vec<KeptEntry> =
        serde_json::from_str(&text).map_err(|error| format!("{}: {error}", path.display()))?;
    list.into_iter()
        .map(|told| {
            let job = load(&folder().join(&told.file)).map_err(|error| error.to_string())?;
            Ok(Kept { told, job })
        })
        .collect()
}

impl Kept {
    /// The face.
    pub fn face(&self) -> FaceId {
        FaceId(self.told.face)
    }
}

/// A job without the data that no rule about module positions reads: parts other than the module and the listed
/// underlayment, prices, cautions.
pub fn small(job: &Resolved) -> Resolved {
    let mut kit = Kit::clone(&job.kit);
    let underlayment = kit.fire.as_ref().map(|fire| fire.underlayment.clone());
    kit.parts.retain(|part| part.number == kit.module.part || Some(&part.number) == underlayment.as_ref());
    // Fasteners put no limit on where modules lie, and their parts are gone.
    kit.hold_down = None;
    for part in &mut kit.parts {
        part.needs.clear();
        part.laps.clear();
    }
    kit.crews.clear();
    let book = RuleBook { cautions: Vec::new(), ..RuleBook::clone(&job.rule_book) };
    let prices = PriceList { prices: Default::default(), ..PriceList::clone(&job.prices) };
    job.with(|job| {
        (job.kit, job.rule_book, job.prices) = (Arc::new(kit), Arc::new(book), Arc::new(prices));
    })
}
