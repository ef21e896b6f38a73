use crate::case::{Case, Laid};
use crate::checker::{alone, itself};
use crate::finding::Finding;
use crate::sketch::Stroke;
use crate::{array, fire, roof, roofing, wind};
use chalkcourse_job::Job;
use chalkcourse_layout::PlacedPenetration;
use chalkcourse_words::{Say, tell};
use schemars::JsonSchema;
use serde::Serialize;

/// One rule.
pub struct Rule {
    /// Its code, as findings carry it and a rule book switches it off by.
    pub code: &'static str,
    /// What it looks at, in a few words.
    pub title: Say,
    /// Why there is such a rule.
    pub reason: Say,
    /// The rule as a small drawing.
    pub sketch: &'static [Stroke],
    /// By whose word, for a job with its kit and book.
    pub(crate) source: fn(&Job) -> String,
    /// Why it can't be checked for a job, where a measurement or a section of the book is missing.
    pub(crate) missing: fn(&Job) -> Option<String>,
    pub(crate) run: Run,
}

/// What one run of a rule looks at, and so what must change before it is run again.
#[derive(Clone, Copy)]
pub(crate) enum Run {
    /// The whole job: run after every change, and quick.
    Whole(fn(&Case<'_>, &mut Vec<Finding>)),
    /// The faces as drawn and how they meet; no block and no penetration.
    Drawn(fn(&Case<'_>, &mut Vec<Finding>)),
    /// One sound face and what comes through it; no block.
    Ground(fn(&Case<'_>, usize, &mut Vec<Finding>)),
    /// One sound face with its blocks, and what else it reads, as numbers.
    Face(fn(&Case<'_>, usize, &mut Vec<Finding>), fn(&Case<'_>, usize) -> Vec<u64>),
    /// One block with its face and what comes through that; no other block. And what else it reads, as numbers.
    Block(fn(&Case<'_>, &Laid<'_>, &mut Vec<Finding>), fn(&Case<'_>, &Laid<'_>) -> Vec<u64>),
    /// One penetration, and the faces as drawn.
    Penetration(fn(&Case<'_>, &PlacedPenetration, &mut Vec<Finding>)),
}

impl Run {
    /// One face with its blocks and nothing else.
    pub(crate) const fn face(run: fn(&Case<'_>, usize, &mut Vec<Finding>)) -> Self {
        Self::Face(run, itself)
    }

    /// One block with its face and nothing else.
    pub(crate) const fn block(run: fn(&Case<'_>, &Laid<'_>, &mut Vec<Finding>)) -> Self {
        Self::Block(run, alone)
    }
}

/// All rules, in the order in which findings of one weight are listed.
pub const RULES: &[&Rule] = &[
    &roof::part::RULE,
    &roof::outline::RULE,
    &roof::height_gap::RULE,
    &roof::near_miss::RULE,
    &roof::counted_twice::RULE,
    &roof::no_home::RULE,
    &array::no_deck::RULE,
    &array::pitch::RULE,
    &array::off_face::RULE,
    &array::overlap::RULE,
    &array::setback::RULE,
    &array::clearance::RULE,
    &array::water::RULE,
    &array::ridge_course::RULE,
    &array::base_rail::RULE,
    &array::deck::RULE,
    &array::hook::RULE,
    &array::laying::RULE,
    &array::reveal::RULE,
    &array::between_blocks::RULE,
    &fire::ridge::RULE,
    &fire::paths::RULE,
    &fire::plane_path::RULE,
    &fire::street::RULE,
    &fire::hip_valley::RULE,
    &fire::escape::RULE,
    &roofing::slope::RULE,
    &roofing::underlayment::RULE,
    &roofing::cricket::RULE,
    &roofing::drip_edge::RULE,
    &roofing::fire_class::RULE,
    &roofing::deck_condition::RULE,
    &wind::rule::RULE,
];

/// What is needed is there.
pub(crate) fn nothing_missing(_: &Job) -> Option<String> {
    None
}

impl Rule {
    /// By whose word, for a job with its kit and book.
    pub fn source(&self, job: &Job) -> String {
        (self.source)(job)
    }

    /// Why the rule is not checked for a job; `None` when it is.
    pub fn why_not(&self, job: &Job) -> Option<String> {
        if job.rule_book.off.contains(self.code) {
            return Some(tell!(
                "switched off in the rule book “{}”",
                "apagada en el libro de reglas “{}”",
                job.rule_book.name
            ));
        }
        (self.missing)(job)
    }
}

/// One line of the report of what was checked.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Checked {
    /// The rule.
    pub code: &'static str,
    /// What it looks at.
    pub title: &'static str,
    /// By whose word.
    pub source: String,
    /// The book that it was checked against, with its date.
    pub book: String,
    /// Whether it was checked.
    pub on: bool,
    /// Why it was not.
    pub why_not: Option<String>,
}

/// What [`check`](crate::check) checks for a job, against which book, and what it does not.
pub fn checked(job: &Job) -> Vec<Checked> {
    let book = format!("{}, {}", job.rule_book.name, job.rule_book.date);
    RULES
        .iter()
        .map(|rule| {
            let why_not = rule.why_not(job);
            Checked {
                code: rule.code,
                title: rule.title.now(),
                source: rule.source(job),
                book: book.clone(),
                on: why_not.is_none(),
                why_not,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing;
    use std::collections::BTreeSet;

    #[test]
    fn codes_are_plain_and_none_is_taken_twice() {
        let codes: BTreeSet<_> = RULES.iter().map(|rule| rule.code).collect();
        assert_eq!(codes.len(), RULES.len());
        assert!(codes.iter().all(|c| c.chars().all(|l| l.is_ascii_lowercase() || l == '-')), "{codes:?}");
    }

    #[test]
    fn a_rule_that_is_off_is_told() {
        let mut job = testing::gable_job();
        testing::book(&mut job).off.insert("setback".into());
        let report = checked(&job);
        let setback = report.iter().find(|line| line.code == "setback").unwrap();
        assert!(!setback.on && setback.why_not.as_ref().is_some_and(|why| why.contains("switched off")));
        assert_eq!(report.len(), RULES.len());
    }
}
