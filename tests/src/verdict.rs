//! The judge's view of what the program says about a job. Everything that the judge asks of the program under test goes
//! through here: findings of the rules, modules of a face, claims of a fill.

use chalkcourse_geometry::Roof;
use chalkcourse_job::{Amount, FaceId, Resolved, Sticks, apply};
use chalkcourse_layout::{Layout, assemble};
use chalkcourse_plan::{FillError, Mode, Size, Target, Way, Worth, fill, fill_edit};
use chalkcourse_rules::Severity;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Open findings of `check`, by key.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Open {
    /// Stops that are not waived.
    pub stops: BTreeSet<String>,
    /// Pairs of blocks closer than the kit's clearance: a caution.
    pub near_blocks: BTreeSet<String>,
}

/// Open findings of a job.
pub fn open(job: &Resolved) -> Open {
    open_on(job, &Arc::new(assemble(job)))
}

/// The same on a roof that is already assembled.
pub fn open_on(job: &Resolved, roof: &Arc<Roof>) -> Open {
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

/// The job without blocks: findings on it are about the roof, not about an array.
pub fn bare(job: &Resolved) -> Resolved {
    job.with(|job| job.blocks.clear())
}

/// Number of modules on a face.
pub fn modules_on(job: &Resolved, face: FaceId) -> usize {
    job.blocks.iter().filter(|block| block.face == face).map(|block| block.cells().count()).sum()
}

/// What a fill found on one face, and the maximum that it claims.
#[derive(Clone, Debug, PartialEq)]
pub struct Claim {
    /// The face.
    pub face: FaceId,
    /// Modules laid.
    pub laid: usize,
    /// The claimed maximum.
    pub most: usize,
    /// The claim in words.
    pub words: String,
}

/// The usual fill of some faces: the claim of each, and the job with all of them in place.
///
/// # Errors
/// If a face can't be filled.
pub fn claims(job: &Resolved, faces: &[FaceId]) -> Result<(Vec<Claim>, Resolved), FillError> {
    claims_of(job, faces, Mode::SlidingRows)
}

/// The same for a given mode.
///
/// # Errors
/// If a face can't be filled.
pub fn claims_of(job: &Resolved, faces: &[FaceId], mode: Mode) -> Result<(Vec<Claim>, Resolved), FillError> {
    let fills = fill(job, faces, mode, &|| false)?;
    let after =
        fills.iter().fold(job.clone(), |job, fill| apply(&job, &fill_edit(&job, fill)).unwrap_or(job));
    let claims = fills
        .into_iter()
        .map(|fill| Claim { face: fill.face, laid: fill.modules, most: fill.bound, words: fill.claim.into() })
        .collect();
    Ok((claims, after))
}

/// The answer to a fill to a number of modules.
#[derive(Clone, Debug, PartialEq)]
pub enum Number {
    /// This many were laid.
    Laid(usize),
    /// The faces hold at most this many.
    TooMany(usize),
    /// Another error.
    Refused(String),
}

/// Asks for exactly this number of modules, as compact as possible.
pub fn number(job: &Resolved, faces: &[FaceId], modules: usize) -> Number {
    let mode = Mode::ToNumber(Target { size: Size::Modules(modules), way: Way::Compact });
    match claims_of(job, faces, mode) {
        Ok((claims, _)) => Number::Laid(claims.iter().map(|claim| claim.laid).sum()),
        Err(FillError::TooFew { most, .. } | FillError::NotFound { most, .. }) => Number::TooMany(most),
        Err(error) => Number::Refused(error.to_string()),
    }
}

/// The greatest worth that a fill by worth claims possible on a face, with the given worth of a module; `None` if it
/// claims none.
pub fn most_worth(job: &Resolved, face: FaceId, module: f64) -> Option<f64> {
    let mode = Mode::ByWorth(Worth { module, by_area: false });
    let fills = fill(job, &[face], mode, &|| false).ok()?;
    fills.first()?.measure.as_ref()?.any
}

/// A cut list of the order that claims to buy the least: the part, the runs, the rule of its sticks, and what it buys.
/// Metres.
#[derive(Clone, Debug, PartialEq)]
pub struct LeastCuts {
    /// The part.
    pub part: String,
    /// Lengths of the runs.
    pub runs: Vec<f64>,
    /// The sticks and their splice rule.
    pub sticks: Sticks,
    /// What is bought.
    pub bought: f64,
}

/// All cut lists of a job's order that claim that nothing less can be bought.
pub fn least_cuts(job: &Resolved) -> Vec<LeastCuts> {
    let plan = chalkcourse_plan::evaluate(job);
    let terms = plan.takeoff.lines.iter().flat_map(|line| line.terms.iter().map(move |term| (line, term)));
    terms
        .filter_map(|(line, term)| {
            let cuts = term.cuts.as_ref().filter(|cuts| cuts.proved)?;
            let Amount::Cut(sticks) = &term.each else { return None };
            Some(LeastCuts {
                part: line.name.clone().into(),
                runs: term.places.iter().map(|place| place.amount).collect(),
                sticks: sticks.clone(),
                bought: cuts.bought,
            })
        })
        .collect()
}

/// Faces that are steep enough for the kit.
pub fn steep_enough(job: &Resolved) -> Vec<FaceId> {
    job.faces.iter().filter(|face| face.pitch >= job.kit.least_pitch).map(|face| face.id).collect()
}
