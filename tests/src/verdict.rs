//! What the program says about a job, as the judge of claims reads it. All that the judge asks of the program under test goes
//! through here: the rules' findings, the modules of a face, what a fill claims.

use chalkcourse_geometry::Roof;
use chalkcourse_job::{FaceId, Job, apply};
use chalkcourse_layout::{Layout, assemble};
use chalkcourse_plan::{FillError, Mode, fill, fill_edit};
use chalkcourse_rules::Severity;
use std::collections::BTreeSet;
use std::sync::Arc;

/// What `check` has against a job, by key.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Open {
    /// Stops that nobody waived.
    pub stops: BTreeSet<String>,
    /// Pairs of blocks that the kit wants farther apart: a caution.
    pub near_blocks: BTreeSet<String>,
}

/// What `check` has against a job.
pub fn open(job: &Job) -> Open {
    open_on(job, &Arc::new(assemble(job)))
}

/// The same on a roof that was put together before.
pub fn open_on(job: &Job, roof: &Arc<Roof>) -> Open {
    let layout = Layout::on_roof(job, Arc::clone(roof));
    let mut open = Open::default();
    for finding in chalkcourse_rules::check(job, &layout) {
        if finding.waived.is_some() {
            continue;
        }
        if finding.severity == Severity::Stop {
            open.stops.insert(finding.key.to_string());
        }
        if finding.rule == "between-blocks" {
            open.near_blocks.insert(finding.key.to_string());
        }
    }
    open
}

/// The job without any block: what is against that is against the roof, not against an array.
pub fn bare(job: &Job) -> Job {
    Job { blocks: Vec::new(), ..job.clone() }
}

/// Modules on a face.
pub fn modules_on(job: &Job, face: FaceId) -> usize {
    job.blocks.iter().filter(|block| block.face == face).map(|block| block.cells().count()).sum()
}

/// What a fill found on one face, and what it says that no layout exceeds.
#[derive(Clone, Debug, PartialEq)]
pub struct Claim {
    /// The face.
    pub face: FaceId,
    /// Modules laid.
    pub laid: usize,
    /// "At most" so many.
    pub most: usize,
    /// In words.
    pub words: String,
}

/// The usual fill of some faces: the claim of each, and the job with all of them in place.
///
/// # Errors
/// A face that can't be filled.
pub fn claims(job: &Job, faces: &[FaceId]) -> Result<(Vec<Claim>, Job), FillError> {
    claims_of(job, faces, Mode::SlidingRows)
}

/// The same for one way of filling.
///
/// # Errors
/// A face that can't be filled.
pub fn claims_of(job: &Job, faces: &[FaceId], mode: Mode) -> Result<(Vec<Claim>, Job), FillError> {
    let fills = fill(job, faces, mode, &|| false)?;
    let after =
        fills.iter().fold(job.clone(), |job, fill| apply(&job, &fill_edit(&job, fill)).unwrap_or(job));
    let claims = fills
        .into_iter()
        .map(|fill| Claim { face: fill.face, laid: fill.modules, most: fill.bound, words: fill.claim })
        .collect();
    Ok((claims, after))
}

/// Faces that the kit may stand on.
pub fn steep_enough(job: &Job) -> Vec<FaceId> {
    job.faces.iter().filter(|face| face.pitch >= job.kit.least_pitch).map(|face| face.id).collect()
}
