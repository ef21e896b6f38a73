//! Where a job stands: its stops and waivers, in words, for every output.

use crate::{CAUTION, Plan};
use chalkcourse_job::{Profit, Resolved};
use chalkcourse_rules::{Finding, Severity};
use chalkcourse_words::{self as words, Say};
use schemars::JsonSchema;
use serde::Serialize;

/// The words across an output of a job with open stops.
pub const NOT_TO_BUILD: Say = words::standing::NOT_TO_BUILD;

/// What no output of a job may omit.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Standing {
    /// Open stops, a sentence each.
    pub stops: Vec<String>,
    /// Waived findings with why, by whom and when, a sentence each.
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
    /// Whether there are neither open stops nor waivers.
    pub fn is_plain(&self) -> bool {
        self.stops.is_empty() && self.waived.is_empty()
    }

    /// A line for each stop and each waiver, stops first.
    pub fn lines(&self) -> Vec<String> {
        let stops = self.stops.iter().map(|stop| format!("{}: {stop}", NOT_TO_BUILD.now()));
        let waived = self.waived.iter().map(|waived| format!("{}: {waived}", words::standing::WAIVED.now()));
        stops.chain(waived).collect()
    }

    /// [`Standing::lines`] as the head of a text, one per line; empty if there are none.
    pub fn head(&self) -> String {
        self.lines().into_iter().map(|line| line + "\n").collect()
    }

    /// For a text that lists all findings itself: that the job is not to be built, and how many findings stop it.
    pub fn verdict(&self) -> String {
        let not = NOT_TO_BUILD.now();
        match self.stops.len() {
            0 => String::new(),
            stops => words::standing::findings_stop_this_job(&not, stops),
        }
    }
}

/// A report as data, with where its job stands and the caution.
#[derive(Clone, Debug, Serialize)]
pub struct Told<'a, T> {
    /// The kind of report.
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
    /// The report itself.
    #[serde(flatten)]
    pub report: T,
}

/// Wraps a report with where its job stands.
pub fn told<'a, T>(format: &'static str, job: &'a Resolved, plan: &Plan, report: T) -> Told<'a, T> {
    let standing = standing(job, plan);
    Told { format, version: 1, job: &job.name, caution: CAUTION.now(), standing, report }
}

/// A finding in words, with its lapsed waiver if there is one.
pub(crate) fn open_words(job: &Resolved, finding: &Finding) -> String {
    let message = chalkcourse_telling::message(job, finding);
    match chalkcourse_telling::lapse_words(job, finding) {
        Some(lapsed) => format!("{message} ({lapsed})"),
        None => message,
    }
}

/// A waiver in words; `None` for a finding without one.
pub(crate) fn waived_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let waiver = finding.waived.as_ref()?;
    Some(words::standing::waived_by_on(
        &chalkcourse_telling::message(job, finding),
        &waiver.by,
        &waiver.date,
        &waiver.reason,
    ))
}

/// Whether the price of a job is its bare cost, without overhead or profit.
pub fn is_bare_cost(job: &Resolved) -> bool {
    let pricing = &job.order.pricing;
    let none = match pricing.profit {
        Profit::None => true,
        Profit::Markup { percent } | Profit::Margin { percent } => percent.is_zero(),
    };
    none && pricing.overhead_percent.is_zero()
}
