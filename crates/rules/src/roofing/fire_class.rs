//! Array and covering have the fire class required at the site.
//!
//! Source: IRC R902.1 (2018): class A, B or C where the law requires it, and where an edge of the roof is less than 3 ft from a
//! lot line; R902.3: roof-integrated arrays as roof covering. The array's class is its listing's, with the listed underlayment
//! under it.

use super::{missing, source_of};
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::{ClassAsked, Covering, Facts, Unknown, WhyNot};
use chalkcourse_job::{Building, FireClass, Quantity, Required, RuleBook, Subject};
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "fire-class",
    sketch: &[
        Stroke::Edge(&[[8.0, 8.0], [92.0, 36.0]]),
        Stroke::Thing([44.0, 24.0, 12.0, 10.0]),
        Stroke::Way([46.0, 37.0], [46.0, 48.0]),
        Stroke::Way([54.0, 37.0], [54.0, 52.0]),
        Stroke::Module([60.0, 30.0, 24.0, 4.0]),
    ],
    source: |job| source_of(job, |roofing| roofing.fire_class.as_ref().map(|limit| &limit.source)),
    missing: |job| {
        missing(job).or_else(|| {
            let asked = job.rule_book.roofing.as_ref().is_some_and(|roofing| roofing.fire_class.is_some());
            if !asked {
                return Some(WhyNot::LeftOut);
            }
            let site = &job.site.building;
            let unknown = site.class_by_law.is_none() && site.lot_line.is_none();
            unknown.then(|| WhyNot::NotKnown(vec![Unknown::FireClass]))
        })
    },
    run: Run::Whole(run),
};

/// The required class, and why; `None` if none is.
fn asked(book: &RuleBook, building: &Building) -> Option<(FireClass, ClassAsked)> {
    let roofing = book.roofing.as_ref()?;
    let near = roofing.lot_line_within.as_ref().zip(building.lot_line).and_then(|(limit, away)| {
        let near = away.metres() < limit.value.metres() - TOLERANCE;
        near.then_some((FireClass::C, ClassAsked::LotLine(limit.value)))
    });
    let law = building.class_by_law.filter(|class| *class != FireClass::Unrated);
    // The better class of the two governs.
    near.into_iter().chain(law.map(|class| (class, ClassAsked::Law))).min_by_key(|(class, _)| *class)
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let building = &view.site().building;
    let Some((class, why)) = asked(view.book(), building) else { return };
    let mut tell = |of: Covering, has: Option<FireClass>, matter: &'static str, severity: Severity| {
        if has.is_none_or(|has| has > class) {
            findings.push(Finding {
                measured: has.map_or(Quantity::Unknown, Quantity::Class),
                required: Required::AtLeast(Quantity::Class(class)),
                source: RULE.source(view.job()),
                ..Finding::of(
                    RULE.code,
                    severity,
                    Subject::Matter(matter.into()),
                    Facts::FireClass { of, why },
                )
            });
        }
    };
    if !view.laid().is_empty() {
        let listed = view.kit().fire.as_ref().map(|listing| listing.class);
        tell(Covering::Array, listed, "array", Severity::Stop);
    }
    let beyond = building.covering_class;
    let severity = if beyond.is_some() { Severity::Stop } else { Severity::Caution };
    tell(Covering::Beyond, beyond, "covering", severity);
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, kit, of};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Building, FireClass, Resolved};

    fn on(covering: FireClass, by_law: Option<FireClass>, lot_feet: f64) -> Resolved {
        let mut job = gable_job();
        job.site.building = Building {
            covering_class: Some(covering),
            class_by_law: by_law,
            lot_line: Some(Length::from_feet(lot_feet)),
            ..Building::default()
        };
        job
    }

    fn keys(job: &Resolved) -> Vec<String> {
        of(job, "fire-class").into_iter().map(|finding| finding.key.to_string()).collect()
    }

    /// IRC R902.1 (2018): nearer than 3 ft to a lot line a class is required; at 3 ft none is.
    #[test]
    fn nearer_than_at_and_beyond_3_ft_of_a_lot_line() {
        assert_eq!(keys(&on(FireClass::Unrated, None, 2.9)), ["fire-class/covering"]);
        assert_eq!(keys(&on(FireClass::Unrated, None, 3.0)), [""; 0]);
        assert_eq!(keys(&on(FireClass::C, None, 2.9)), [""; 0]);
    }

    #[test]
    fn the_required_class_and_a_lower_one() {
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
