//! Where a job stands: what stops it and what was waived, in words, for everything that leaves the program.

use crate::{CAUTION, Plan};
use chalkcourse_job::{Profit, Resolved};
use chalkcourse_rules::{Finding, Severity};
use chalkcourse_words::{self as words, Say};
use schemars::JsonSchema;
use serde::Serialize;

/// What stands across an output of a job that something stops.
pub const NOT_TO_BUILD: Say = words::standing::NOT_TO_BUILD;

/// What an output of a job must not be without.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Standing {
    /// What stops the job and nobody waived, a sentence each.
    pub stops: Vec<String>,
    /// What was waived, why, by whom and when, a sentence each.
    pub waived: Vec<String>,
}

/// Where a job stands.
pub fn standing(job: &Resolved, plan: &Plan) -> Standing {
    let stops = plan.findings.iter().filter(|f| f.severity == Severity::Stop && f.waived.is_none());
    Standing {
        stops: stops.map(|finding| open_words(job, finding)).collect(),
        waived: plan.findings.iter().filter_map(|finding| waived_words(job, finding)).collect(),
    }
}

impl Standing {
    /// Whether nothing stops the job and nothing was waived.
    pub fn is_plain(&self) -> bool {
        self.stops.is_empty() && self.waived.is_empty()
    }

    /// A line for each stop and each waiver, the stops first.
    pub fn lines(&self) -> Vec<String> {
        let stops = self.stops.iter().map(|stop| format!("{}: {stop}", NOT_TO_BUILD.now()));
        let waived = self.waived.iter().map(|waived| format!("{}: {waived}", words::standing::WAIVED.now()));
        stops.chain(waived).collect()
    }

    /// [`Standing::lines`] as the head of a text, each at its own line; empty for a job that is plain.
    pub fn head(&self) -> String {
        self.lines().into_iter().map(|line| line + "\n").collect()
    }

    /// For a text that tells each finding itself: that the job is not to be built, and how much stops it.
    pub fn verdict(&self) -> String {
        let not = NOT_TO_BUILD.now();
        match self.stops.len() {
            0 => String::new(),
            stops => words::standing::findings_stop_this_job(&not, stops),
        }
    }
}

/// A report for other programs, with where its job stands and the caution beside what it reports.
#[derive(Clone, Debug, Serialize)]
pub struct Told<'a, T> {
    /// Which kind of report it is.
    pub format: &'static str,
    /// Version of that kind.
    pub version: u32,
    /// Name of the job.
    pub job: &'a str,
    /// Caution.
    pub caution: &'static str,
    /// Where the job stands.
    #[serde(flatten)]
    pub standing: Standing,
    /// What it reports.
    #[serde(flatten)]
    pub report: T,
}

/// A report for other programs, with where its job stands.
pub fn told<'a, T>(format: &'static str, job: &'a Resolved, plan: &Plan, report: T) -> Told<'a, T> {
    let standing = standing(job, plan);
    Told { format, version: 1, job: &job.name, caution: CAUTION.now(), standing, report }
}

/// A finding in words, with the waiver of it that lapsed.
pub(crate) fn open_words(job: &Resolved, finding: &Finding) -> String {
    let message = chalkcourse_telling::message(job, finding);
    match chalkcourse_telling::lapse_words(job, finding) {
        Some(lapsed) => format!("{message} ({lapsed})"),
        None => message,
    }
}

/// A waiver in words; `None` for a finding that nobody waived.
pub(crate) fn waived_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let waiver = finding.waived.as_ref()?;
    Some(words::standing::waived_by_on(
        &chalkcourse_telling::message(job, finding),
        &waiver.by,
        &waiver.date,
        &waiver.reason,
    ))
}

/// Whether the price of a job is its bare cost: neither overhead nor profit is on it.
pub fn is_bare_cost(job: &Resolved) -> bool {
    let pricing = &job.order.pricing;
    let none = match pricing.profit {
        Profit::None => true,
        Profit::Markup { percent } | Profit::Margin { percent } => percent.is_zero(),
    };
    none && pricing.overhead_percent.is_zero()
}
