use chalkcourse_job::Resolved;
use chalkcourse_takeoff::Takeoff;
use chalkcourse_words::{self as words, Say};

/// The caution on every order.
pub const CAUTION: Say = words::takeoff::PLANNING_AID_ONLY_CONFIRM_AGAINST;

/// What an order states about its job.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Header {
    /// The job.
    pub job: String,
    /// The kit and its issue.
    pub kit: String,
    /// The rule book and its date.
    pub rule_book: String,
    /// The price list and its date.
    pub prices: String,
    /// Findings that are not waived, one per line, in words.
    pub findings: Vec<String>,
    /// Waivers, one per line: what was waived, why, by whom.
    pub waivers: Vec<String>,
    /// The caution.
    pub caution: String,
}

impl Header {
    /// Remarks under their headings: assumptions of the count, findings, waivers. Headings without an entry are left out.
    pub fn remarks(&self, takeoff: &Takeoff) -> Vec<(Say, Vec<String>)> {
        let notes = takeoff.notes.iter().map(ToString::to_string).collect();
        let all = [
            (words::common::TO_KNOW_ABOUT_THE_COUNT, notes),
            (words::common::FINDINGS, self.findings.clone()),
            (words::common::WAIVED_FINDINGS, self.waivers.clone()),
        ];
        all.into_iter().filter(|(_, entries)| !entries.is_empty()).collect()
    }

    /// The header of a job. Waivers are listed by their keys; a caller that has the findings at hand replaces the keys with words
    /// and puts the findings that remain into [`Header::findings`].
    pub fn of(job: &Resolved) -> Self {
        let waivers = job
            .waivers
            .iter()
            .map(|waiver| format!("{}: {} ({}, {})", waiver.key, waiver.reason, waiver.by, waiver.date))
            .collect();
        Self {
            job: job.name.clone(),
            kit: format!("{}, {}", job.kit.name, job.kit.issue),
            rule_book: job.rule_book.name.clone(),
            prices: format!("{}, {}", job.prices.name, job.prices.date),
            findings: Vec::new(),
            waivers,
            caution: CAUTION.now().to_owned(),
        }
    }
}
