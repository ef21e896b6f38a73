//! A raceway has room for the conductors in it.
//!
//! Source: NEC chapter 9 tables 1, 4 and 5 (2017), from memory: more than two conductors fill at most 40 % of it.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{boxes, kit_silent, no_box, of_box};
use crate::{Authority, Facts, KitGap, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved};
use chalkcourse_wiring::cite::FILL;
use chalkcourse_wiring::fill::{has_raceway, raceway_fill};
use chalkcourse_wiring::tables::{conductor_square_inches, fill_share};

pub(crate) const RULE: Rule = Rule {
    code: "raceway-fill",
    sketch: &[
        SLOPE,
        Stroke::Pipe([50.0, 30.0, 18.0]),
        Stroke::Pipe([43.0, 34.0, 6.0]),
        Stroke::Pipe([57.0, 34.0, 6.0]),
        Stroke::Wrong([44.0, 16.0, 12.0, 12.0]),
    ],
    source: |job| Authority::Source(FILL.of(job.wiring.edition)),
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    no_box(job).or_else(|| (!boxes(job).any(has_raceway)).then_some(WhyNot::NoRaceway)).or_else(|| {
        kit_silent(
            job,
            [
                (KitGap::Raceway, |wiring| wiring.raceway.is_some()),
                (KitGap::RunDown, |wiring| wiring.run_down.is_some()),
                (KitGap::OwnArea, |wiring| {
                    wiring.run_down.is_none_or(|choice| {
                        conductor_square_inches(choice.gauge, choice.insulation).is_some()
                    })
                }),
            ],
        )
    })
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    for junction in boxes(job).filter(|junction| has_raceway(junction)) {
        let full = raceway_fill(job, view.wires(), junction).filter(|fill| fill.taken > fill.holds + 1e-9);
        let Some(fill) = full else { continue };
        let most = fill_share(fill.conductors);
        let facts = Facts::RacewayFill { junction: junction.id, conductors: fill.conductors };
        findings.push(Finding {
            measured: Quantity::Share(fill.taken * most / fill.holds),
            required: Required::AtMost(Quantity::Share(most)),
            source: RULE.source(job),
            ..of_box(RULE.code, Severity::Stop, view.layout(), junction, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{boxed, kit, of, one, why_not};
    use crate::{KitGap, WhyNot};
    use chalkcourse_job::{
        Current, Gauge, Insulation, LiesIn, OtherConductors, Quantity, Required, TradeSize,
    };

    /// Two 10 AWG and a ground of 10 AWG, .0633 in² in 1/2 in EMT of .304: 20.8 %. Three more of 10 AWG and one of 8 AWG: .1632 in², 53.7 %.
    #[test]
    fn half_an_inch() {
        let mut job = boxed();
        kit(&mut job).wiring.as_mut().unwrap().raceway.as_mut().unwrap().size = TradeSize::Half;
        assert!(of(&job, "raceway-fill").is_empty());
        let others = |gauge, count| OtherConductors { current: Current::Dc, gauge, count };
        job.boxes[0].others = vec![others(Gauge::Awg10, 3), others(Gauge::Awg8, 1)];
        let found = one(&job, "raceway-fill");
        let Quantity::Share(share) = found.measured else { panic!() };
        assert!((share - 0.1632 / 0.304).abs() < 1e-9, "{share}");
        assert_eq!(found.required, Required::AtMost(Quantity::Share(0.40)));
        kit(&mut job).wiring.as_mut().unwrap().raceway.as_mut().unwrap().size = TradeSize::ThreeQuarters;
        assert!(of(&job, "raceway-fill").is_empty());
    }

    #[test]
    fn what_is_not_in_the_tables_and_what_lies_free() {
        let mut job = boxed();
        kit(&mut job).wiring.as_mut().unwrap().run_down.as_mut().unwrap().insulation = Insulation::Use2;
        assert_eq!(why_not(&job, "raceway-fill"), Some(WhyNot::KitSilent(vec![KitGap::OwnArea])));
        for leg in &mut job.boxes[0].legs {
            leg.lies = LiesIn::FreeAir;
        }
        assert_eq!(why_not(&job, "raceway-fill"), Some(WhyNot::NoRaceway));
    }
}
