//! Metal of the array is bonded by listed parts, and stays so when a module is taken out.
//!
//! Source: NEC 690.43 (2017) for listed devices; that the path stays whole is the kit's word: the bare conductor lies uncut in each lug.
//! Whether each lug sits on bare metal is seen on the roof alone.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{kit_silent, not_wired};
use crate::{Authority, Facts, KitGap, WhyNot};
use chalkcourse_job::{Resolved, Subject};
use chalkcourse_wiring::cite::BONDING;
use std::borrow::Cow;

pub(crate) const RULE: Rule = Rule {
    code: "bonding",
    sketch: &[
        SLOPE,
        Stroke::Module([12.0, 18.0, 20.0, 24.0]),
        Stroke::Wrong([40.0, 18.0, 20.0, 24.0]),
        Stroke::Module([68.0, 18.0, 20.0, 24.0]),
        Stroke::Edge(&[[22.0, 30.0], [44.0, 30.0]]),
        Stroke::Edge(&[[56.0, 30.0], [78.0, 30.0]]),
    ],
    source: |job| Authority::Source(BONDING.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    not_wired(job).or_else(|| kit_silent(job, [(KitGap::Bonding, |wiring| wiring.bonding.is_some())]))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let Some(bonding) = view.kit().wiring.as_ref().and_then(|wiring| wiring.bonding.as_ref()) else { return };
    let of = |severity, matter, facts| {
        Finding::of(RULE.code, severity, Subject::Matter(Cow::Borrowed(matter)), facts)
    };
    if bonding.listing.trim().is_empty() {
        let source = RULE.source(view.job());
        findings.push(Finding { source, ..of(Severity::Stop, "listing", Facts::NotListed) });
    }
    if !bonding.lay_in {
        let source = Authority::Kit;
        findings.push(Finding { source, ..of(Severity::Caution, "path", Facts::PathOpens) });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{Facts, KitGap, WhyNot};
    use chalkcourse_job::{Bonding, Resolved};

    fn with(bonding: Option<Bonding>) -> Resolved {
        let mut job = wired();
        kit(&mut job).wiring.as_mut().unwrap().bonding = bonding;
        job
    }

    #[test]
    fn listed_and_whole_or_not() {
        assert!(of(&wired(), "bonding").is_empty());
        let bonding = |listing: &str, lay_in| with(Some(Bonding { listing: listing.into(), lay_in }));
        assert_eq!(one(&bonding(" ", true), "bonding").facts, Facts::NotListed);
        assert_eq!(one(&bonding("UL 2703", false), "bonding").facts, Facts::PathOpens);
        assert_eq!(why_not(&with(None), "bonding"), Some(WhyNot::KitSilent(vec![KitGap::Bonding])));
    }
}
