use crate::{wind, words};
use chalkcourse_job::Resolved;
use chalkcourse_rules::Authority;

/// The source of a rule for a job.
pub fn source(job: &Resolved, rule: &str, authority: &Authority) -> String {
    let book = &job.rule_book.name;
    match authority {
        Authority::Source(source) => source.text.clone(),
        Authority::EachItsOwn if rule == "setback" => {
            chalkcourse_words::rules::setbacks_each_with_its_own(&book)
        }
        Authority::EachItsOwn => chalkcourse_words::rules::clearances_each_with_its_own(&book),
        Authority::Kit => chalkcourse_words::rules::issue(&job.kit.name, &job.kit.issue),
        Authority::Geometry => words(rule)
            .and_then(|words| words.geometry)
            .map_or_else(|| chalkcourse_words::rules::GEOMETRY.now().into(), Into::into),
        Authority::Person => chalkcourse_words::rules::SET_BY_A_PERSON_FOR.now().into(),
        Authority::Practice => chalkcourse_words::rules::COMMON_PRACTICE_NO_SOURCE.now().into(),
        Authority::Figure(figure) => {
            chalkcourse_words::rules::taken_as_roof_covering_a(&wind::figure(*figure))
        }
        Authority::Waivers => chalkcourse_words::rules::THE_JOBS_OWN_WAIVERS.now().into(),
        Authority::NotInBook => chalkcourse_words::rules::NONE_IN_THIS_BOOK.now().into(),
        Authority::NotInEdition => chalkcourse_words::rules::NOT_ASKED_BY_THIS_EDITION.now().into(),
        Authority::LeftOut => chalkcourse_words::rules::NOT_ASKED_BY_THIS_BOOK.now().into(),
    }
}
