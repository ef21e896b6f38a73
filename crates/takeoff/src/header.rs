use chalkcourse_job::Resolved;
use chalkcourse_words::{Say, say};

/// What every order says beside its numbers.
pub const CAUTION: Say = say(
    "Planning aid only. Confirm against the codes adopted locally, the product listing and the \
maker's instructions. Structural design belongs to a licensed engineer and electrical work to a qualified, licensed \
electrician where that is required. Falls and dc shock or arc can kill: count and order on the ground, and treat every \
module as live whenever light falls on it.",
    "Solo es una ayuda para planear. Confirme con los códigos adoptados localmente, la certificación \
        del producto y las instrucciones del fabricante. El diseño estructural corresponde a un ingeniero \
        con licencia y el trabajo eléctrico a un electricista calificado, con licencia donde se exige. \
        Las caídas y la descarga o el arco de corriente directa pueden matar: cuente y pida desde el \
        suelo, y trate cada módulo como energizado siempre que le dé la luz.",
);

/// What an order says about the job that it is for.
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
    /// Findings that nobody waived, one a line, in words.
    pub findings: Vec<String>,
    /// Waivers, one a line: what was waived, why, by whom.
    pub waivers: Vec<String>,
    /// What to be careful about.
    pub caution: String,
}

impl Header {
    /// The header of a job. Its waivers are told by their keys; a caller that has the findings at hand puts their words
    /// in place of those, and the findings that are left into [`Header::findings`].
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
