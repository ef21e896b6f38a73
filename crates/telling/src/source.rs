use crate::{wind, words};
use chalkcourse_job::Resolved;
use chalkcourse_rules::Authority;
use chalkcourse_words::{pick, tell};

/// By whose word a rule asks something of a job.
pub fn source(job: &Resolved, rule: &str, authority: &Authority) -> String {
    let book = &job.rule_book.name;
    match authority {
        Authority::Source(source) => source.text.clone(),
        Authority::EachItsOwn if rule == "setback" => {
            tell!(
                "{book}: setbacks, each with its own source",
                "{book}: retiros, cada uno con su propia fuente"
            )
        }
        Authority::EachItsOwn => {
            tell!(
                "{book}: clearances, each with its own source",
                "{book}: holguras, cada una con su propia fuente"
            )
        }
        Authority::Kit => tell!("{}, issue {}", "{}, edición {}", job.kit.name, job.kit.issue),
        Authority::Geometry => words(rule)
            .and_then(|words| words.geometry)
            .map_or_else(|| pick("geometry", "geometría").into(), Into::into),
        Authority::Person => pick("set by a person for this one", "puesta por una persona para esta").into(),
        Authority::Practice => pick("common practice, no source", "práctica común, sin fuente").into(),
        Authority::Figure(figure) => tell!(
            "{}, taken as roof covering: a flush, flashed array is outside the reductions for panels above a roof (29.4.4)",
            "{}, tomado como recubrimiento de techo: un arreglo al ras y con tapajuntas queda fuera de las \
             reducciones para paneles sobre un techo (29.4.4)",
            wind::figure(*figure)
        ),
        Authority::Waivers => pick("the job's own waivers", "las dispensas de la obra").into(),
        Authority::NotInBook => pick("none in this book", "ninguno en este libro").into(),
        Authority::NotInEdition => pick("not asked by this edition", "no lo pide esta edición").into(),
        Authority::LeftOut => pick("not asked by this book", "no lo pide este libro").into(),
    }
}
