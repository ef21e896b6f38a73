//! Dc conductors inside the building lie in metal up to the first disconnect.
//!
//! Source: NEC 690.31(G) (2017; 690.31(D) from 2020): metal raceway, metal-clad cable or metal enclosures. What lies behind the disconnect is
//! not told apart here: all of the way down counts.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::wires::{boxes, kit_silent, no_box, not_dc, not_stated, of_box};
use crate::{Authority, Facts, KitGap, Unknown, WhyNot};
use chalkcourse_job::{BoxStands, JunctionBox, LiesIn, RacewayKind, Resolved};
use chalkcourse_wiring::cite::INSIDE;

pub(crate) const RULE: Rule = Rule {
    code: "raceway-inside",
    sketch: &[
        Stroke::Roof(&[[10.0, 20.0], [50.0, 52.0], [90.0, 20.0]]),
        Stroke::Edge(&[[16.0, 20.0], [16.0, 6.0], [84.0, 6.0], [84.0, 20.0]]),
        Stroke::Way([40.0, 40.0], [40.0, 10.0]),
        Stroke::Wrong([36.0, 16.0, 8.0, 14.0]),
    ],
    source: |job| Authority::Source(INSIDE.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let inside = boxes(job).any(is_inside);
    not_dc(job).or_else(|| no_box(job)).or_else(|| not_stated(job, &[Unknown::WayDown])).or_else(|| {
        kit_silent(job, [(KitGap::Raceway, |wiring| wiring.raceway.is_some())]).filter(|_| inside)
    })
}

/// Whether its way leads through the building.
fn is_inside(junction: &JunctionBox) -> bool {
    junction.stands == BoxStands::UnderDeck || junction.legs.iter().any(|leg| leg.lies == LiesIn::Attic)
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let raceway = job.kit.wiring.as_ref().and_then(|wiring| wiring.raceway);
    for junction in boxes(job).filter(|junction| is_inside(junction)) {
        let free = junction.legs.iter().any(|leg| leg.lies == LiesIn::FreeAir);
        let id = junction.id;
        let facts = if raceway.is_some_and(|raceway| raceway.kind != RacewayKind::Emt) {
            Facts::InsideNotMetal { junction: id }
        } else if free && junction.stands == BoxStands::UnderDeck {
            Facts::InsideFree { junction: id }
        } else {
            continue;
        };
        findings.push(Finding {
            source: RULE.source(job),
            ..of_box(RULE.code, Severity::Stop, view.layout(), junction, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{boxed, kit, of, one, why_not};
    use crate::{Facts, Unknown, WhyNot};
    use chalkcourse_job::{BoxId, BoxStands, LiesIn, RacewayKind};

    #[test]
    fn metal_plastic_and_free_air() {
        let mut job = boxed();
        job.boxes[0].legs[0].lies = LiesIn::Attic;
        assert!(of(&job, "raceway-inside").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().raceway.as_mut().unwrap().kind = RacewayKind::Pvc40;
        let found = one(&job, "raceway-inside");
        assert_eq!(found.facts, Facts::InsideNotMetal { junction: BoxId(9) });
        assert!(
            matches!(&found.source, crate::Authority::Source(source) if source.text == "NEC 690.31(G) (2017)")
        );
        // Outside it may be of plastic.
        for leg in &mut job.boxes[0].legs {
            leg.lies = LiesIn::Wall;
        }
        assert!(of(&job, "raceway-inside").is_empty());
        let mut under = boxed();
        under.boxes[0].stands = BoxStands::UnderDeck;
        assert!(of(&under, "raceway-inside").is_empty());
        under.boxes[0].legs[0].lies = LiesIn::FreeAir;
        assert_eq!(one(&under, "raceway-inside").facts, Facts::InsideFree { junction: BoxId(9) });
        under.boxes[0].legs.clear();
        assert_eq!(why_not(&under, "raceway-inside"), Some(WhyNot::NotKnown(vec![Unknown::WayDown])));
    }
}
