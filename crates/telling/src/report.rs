use crate::{Told, lapse_words, source, title, told, why_not};
use chalkcourse_job::{FindingKey, Quantity, Required, Resolved, Standing, Waiver};
use chalkcourse_rules::{Facts, Finding, Location, RULES, Severity};
use schemars::JsonSchema;
use serde::Serialize;

/// A finding as JSON: facts and words.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FindingReport<'a> {
    /// The rule, such as "setback".
    pub code: &'static str,
    /// Its severity.
    pub severity: Severity,
    /// The sentence, in the job's units.
    pub message: String,
    /// Where.
    pub place: &'a Location,
    /// What was measured, in words with its unit.
    pub measured: String,
    /// What is required, in words with its unit.
    pub required: String,
    /// Source: a section, a listing, or "common practice, no source".
    pub source: String,
    /// How reliable that source is.
    pub standing: Option<Standing>,
    /// Stable from run to run for the same trouble between the same things.
    pub key: &'a FindingKey,
    /// The same as quantities and facts.
    pub facts: FactsReport<'a>,
    /// The fix, tried and in words, or that none was found. `None` if none was searched for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fix: Option<String>,
    /// The waiver, if a person accepted the finding.
    pub waived: Option<&'a Waiver>,
    /// Why a waiver given for it no longer covers it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lapsed: Option<String>,
}

/// The facts behind a finding's words.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FactsReport<'a> {
    /// What was measured.
    pub measured: Quantity,
    /// What is required.
    pub required: &'a Required,
    /// Other facts.
    pub about: &'a Facts,
}

/// The report of a finding.
pub fn report<'a>(job: &Resolved, finding: &'a Finding) -> FindingReport<'a> {
    let Told { message, measured, required } = told(job, finding);
    FindingReport {
        code: finding.rule,
        severity: finding.severity,
        message,
        place: &finding.place,
        measured,
        required,
        source: source(job, finding.rule, &finding.source),
        standing: finding.source.standing(),
        key: &finding.key,
        facts: FactsReport { measured: finding.measured, required: &finding.required, about: &finding.facts },
        fix: None,
        waived: finding.waived.as_ref(),
        lapsed: lapse_words(job, finding),
    }
}

/// One line of the report of what was checked.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CheckedReport {
    /// The rule.
    pub code: &'static str,
    /// What it checks.
    pub title: &'static str,
    /// Source.
    pub source: String,
    /// The book that it was checked against, with its date.
    pub book: String,
    /// Whether it was checked.
    pub on: bool,
    /// Why not, if it was not.
    pub why_not: Option<String>,
}

/// What is checked for a job and against which book, and what is not.
pub fn checked(job: &Resolved) -> Vec<CheckedReport> {
    let book = format!("{}, {}", job.rule_book.name, job.rule_book.date);
    let line = |rule: &&chalkcourse_rules::Rule| {
        let why = rule.why_not(job);
        CheckedReport {
            code: rule.code,
            title: title(rule),
            source: source(job, rule.code, &rule.source(job)),
            book: book.clone(),
            on: why.is_none(),
            why_not: why.map(|why| why_not(job, &why)),
        }
    };
    RULES.iter().map(line).collect()
}
