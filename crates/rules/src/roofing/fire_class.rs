//! Array and covering have the class against fire that is asked where the house stands.
//!
//! Source: IRC R902.1 (2018): class A, B or C where the law asks for it, and where an edge of the roof is less than 3 ft from a
//! lot line; R902.3: roof-integrated arrays as roof covering. The array's class is its listing's, with the underlayment
//! of the listing under it.

use super::{missing, source};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run};
use crate::sketch::Stroke;
use crate::words::sentence;
use chalkcourse_job::{Building, FireClass, Job};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "fire-class",
    title: say(
        "Array and covering have the class against fire that is asked",
        "Arreglo y recubrimiento tienen la clase contra fuego que se pide",
    ),
    reason: say(
        "Burning brands from a fire next door must not set the roof on fire.",
        "Las brasas de un incendio vecino no deben prender el techo.",
    ),
    sketch: &[
        Stroke::Edge(&[[8.0, 8.0], [92.0, 36.0]]),
        Stroke::Thing([44.0, 24.0, 12.0, 10.0]),
        Stroke::Way([46.0, 37.0], [46.0, 48.0]),
        Stroke::Way([54.0, 37.0], [54.0, 52.0]),
        Stroke::Module([60.0, 30.0, 24.0, 4.0]),
    ],
    source: |job| {
        source(job, |roofing| {
            roofing
                .fire_class
                .as_ref()
                .map_or(pick("not asked by this book", "no lo pide este libro"), |limit| &limit.source)
        })
    },
    missing: |job| {
        missing(job).or_else(|| {
            let asked = job.rule_book.roofing.as_ref().is_some_and(|roofing| roofing.fire_class.is_some());
            if !asked {
                return Some(pick("this book does not ask for it", "este libro no lo pide").into());
            }
            let site = &job.site.building;
            let unknown = site.class_by_law.is_none() && site.lot_line.is_none();
            unknown.then(|| {
                pick(
                    "the job does not say which class the law asks for, nor how far the lot line is",
                    "la obra no dice qué clase pide la ley, ni a qué distancia está el lindero",
                )
                .into()
            })
        })
    },
    run: Run::Whole(run),
};

/// The class that is asked, and why; `None` where none is.
fn asked(job: &Job) -> Option<(FireClass, String)> {
    let site: &Building = &job.site.building;
    let roofing = job.rule_book.roofing.as_ref()?;
    let near = roofing.lot_line_within.as_ref().zip(site.lot_line).and_then(|(limit, away)| {
        let near = away.metres() < limit.value.metres() - TOLERANCE;
        let within = crate::words::length(limit.value.metres(), job.units);
        near.then(|| {
            (
                FireClass::C,
                tell!(
                    "an edge of the roof is less than {within} from a lot line",
                    "un borde del techo está a menos de {within} de un lindero"
                ),
            )
        })
    });
    let law = site
        .class_by_law
        .filter(|class| *class != FireClass::Unrated)
        .map(|class| (class, pick("the law asks for it here", "aquí lo pide la ley").to_owned()));
    // The better class of the two decides.
    near.into_iter().chain(law).min_by_key(|(class, _)| *class)
}

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let Some((class, why)) = asked(case.job) else { return };
    let listing = case.job.kit.fire.as_ref();
    let required = tell!("{} or better", "{} o mejor", class.name());
    let mut tell = |what: &str, has: Option<FireClass>, key: &str, severity: Severity| {
        let measured = has.map_or(pick("not known", "no se sabe"), FireClass::name).to_owned();
        findings.push(Finding {
            message: tell!(
                "{} has {measured} against fire, and {required} is needed: {why}.",
                "{} tiene {measured} contra fuego, y hace falta {required}: {why}.",
                sentence(what)
            ),
            place: Place::default(),
            measured,
            required: required.clone(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, severity, format!("fire-class/{key}"))
        });
    };
    if !case.blocks.is_empty() {
        match listing.map(|listing| listing.class) {
            Some(has) if has <= class => {}
            has => tell(pick("the array", "el arreglo"), has, "array", Severity::Stop),
        }
    }
    match case.job.site.building.covering_class {
        Some(has) if has <= class => {}
        Some(has) => tell(
            pick("the covering beyond the array", "el recubrimiento fuera del arreglo"),
            Some(has),
            "covering",
            Severity::Stop,
        ),
        None => tell(
            pick("the covering beyond the array", "el recubrimiento fuera del arreglo"),
            None,
            "covering",
            Severity::Caution,
        ),
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, kit, of};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Building, FireClass, Job};

    fn on(covering: FireClass, by_law: Option<FireClass>, lot_feet: f64) -> Job {
        let mut job = gable_job();
        job.site.building = Building {
            covering_class: Some(covering),
            class_by_law: by_law,
            lot_line: Some(Length::from_feet(lot_feet)),
            ..Building::default()
        };
        job
    }

    fn keys(job: &Job) -> Vec<String> {
        of(job, "fire-class").into_iter().map(|finding| finding.key).collect()
    }

    /// IRC R902.1 (2018): nearer than 3 ft to a lot line a class is needed; at 3 ft none is.
    #[test]
    fn nearer_than_at_and_beyond_3_ft_of_a_lot_line() {
        assert_eq!(keys(&on(FireClass::Unrated, None, 2.9)), ["fire-class/covering"]);
        assert_eq!(keys(&on(FireClass::Unrated, None, 3.0)), [""; 0]);
        assert_eq!(keys(&on(FireClass::C, None, 2.9)), [""; 0]);
    }

    #[test]
    fn as_good_as_the_law_asks_and_less() {
        let law = Some(FireClass::B);
        assert_eq!(keys(&on(FireClass::A, law, 9.0)), [""; 0]);
        assert_eq!(keys(&on(FireClass::B, law, 9.0)), [""; 0]);
        assert_eq!(keys(&on(FireClass::C, law, 9.0)), ["fire-class/covering"]);
        let mut job = on(FireClass::A, law, 9.0);
        kit(&mut job).fire.as_mut().unwrap().class = FireClass::C;
        assert_eq!(keys(&job), ["fire-class/array"]);
        kit(&mut job).fire = None;
        assert_eq!(keys(&job), ["fire-class/array"]);
        job.site.building = Building::default();
        assert_eq!(keys(&job), [""; 0]);
    }
}
