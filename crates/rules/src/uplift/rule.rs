//! The wind demand on a fastener does not exceed its tested or listed capacity.
//!
//! Source: ASCE/SEI 7 chapter 30, as roof covering; see [`wind`](crate::wind). A caution, and never a design: that is a licensed
//! engineer's.

use super::screen::{unknown, uplift};
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::wind::Conditions;
use crate::{Authority, Facts};
use chalkcourse_job::{Quantity, Required, Subject};

pub(crate) const RULE: Rule = Rule {
    code: "wind",
    sketch: &[
        SLOPE,
        Stroke::Free(&[[8.0, 8.0], [26.0, 8.0], [26.0, 20.0], [8.0, 20.0]]),
        Stroke::Free(&[[74.0, 8.0], [92.0, 8.0], [92.0, 20.0], [74.0, 20.0]]),
        Stroke::Free(&[[8.0, 40.0], [26.0, 40.0], [26.0, 52.0], [8.0, 52.0]]),
        Stroke::Free(&[[74.0, 40.0], [92.0, 40.0], [92.0, 52.0], [74.0, 52.0]]),
        Stroke::Way([17.0, 14.0], [17.0, 34.0]),
        Stroke::Module([40.0, 22.0, 20.0, 14.0]),
        Stroke::Measure([8.0, 4.0], [26.0, 4.0]),
    ],
    source: |job| {
        let loads = job.rule_book.loads.as_ref();
        loads.map_or(Authority::NotInBook, |loads| Authority::of(&loads.standard.source))
    },
    missing: unknown,
    run: Run::BlockInWind(run),
};

fn run(view: BlockView<'_>, conditions: &Conditions, findings: &mut Vec<Finding>) {
    let laid = view.laid;
    let (Some(fastener), Some(loads)) = (view.kit().fastener(view.site()), &view.book().loads) else {
        return;
    };
    let holds = fastener.holds(view.kit().fasteners_a_foot().unwrap_or(1.0));
    let Some(outcome) = uplift(view, conditions) else { return };
    let (measured, required, source, severity, facts) = match outcome {
        Ok(uplift) if uplift.pounds > holds + 1e-6 => (
            Quantity::Pounds(uplift.pounds),
            Required::AtMost(Quantity::Pounds(holds)),
            Authority::Figure(uplift.figure),
            Severity::Caution,
            Facts::Wind { zone: uplift.zone, figure: uplift.figure, psf: uplift.psf },
        ),
        Ok(_) => return,
        Err(refused) => (
            Quantity::Unknown,
            Required::So,
            Authority::of(&loads.standard.source),
            Severity::Note,
            Facts::WindRefused(refused),
        ),
    };
    findings.push(Finding {
        measured,
        required,
        source,
        place: Location { face: Some(laid.on.id), block: Some(laid.block.id), ..Location::default() },
        ..Finding::of(RULE.code, severity, Subject::OnFace(laid.block.id, laid.on.id), facts)
    });
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, gable_job, of, one, why_not};
    use crate::uplift::screen;
    use crate::wind::{Refused, Zone};
    use crate::{Facts, Unknown, WhyNot};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Building, Exposure, LoadStandard, Quantity, Required, Resolved};
    use chalkcourse_layout::Layout;

    fn in_wind(pounds: f64) -> Resolved {
        let mut job = gable_job();
        book(&mut job).loads.as_mut().unwrap().standard.value = LoadStandard::Asce722;
        job.site.building = Building {
            wind_mph: Some(115.0),
            exposure: Some(Exposure::B),
            eave_height: Some(Length::from_feet(12.0)),
            least_width: Some(Length::from_metres(12.0)),
            fastener_pounds: Some(pounds),
            fastener_square_feet: Some(4.0),
            ..Building::default()
        };
        job
    }

    /// Defaults come from kit and drawing: the kit's capacity applies if the fastener was not tested on this deck, and height and
    /// width are the house's as drawn unless entered.
    #[test]
    fn values_of_kit_and_house_are_not_required_again() {
        let mut job = in_wind(60.0);
        let building = &mut job.site.building;
        (building.fastener_pounds, building.fastener_square_feet) = (None, None);
        assert_eq!(why_not(&job, "wind"), None);
        let outcome = screen(&job, &Layout::of(&job)).unwrap().blocks[0].outcome.clone().unwrap();
        // Five feet per module of 21.02 sq ft: a fastener holds down 4.204 sq ft, so the demand of the next test times 4.204 / 4.
        assert!((outcome.pounds - 63.7 * 4.204 / 4.0).abs() < 0.4, "{outcome:?}");
        assert!(of(&job, "wind").is_empty(), "the demo kit's screw holds 75 lb");
        crate::testing::kit(&mut job).hold_down.as_mut().unwrap().pounds = 60.0;
        assert_eq!(of(&job, "wind").len(), 1);
        // A foot holds no more than the screw between it and the module.
        let hold = crate::testing::kit(&mut job).hold_down.as_mut().unwrap();
        hold.pounds = 75.0;
        hold.path[0].pounds = Some(60.0);
        assert_eq!(one(&job, "wind").required, Required::AtMost(Quantity::Pounds(60.0)));
        crate::testing::kit(&mut job).hold_down.as_mut().unwrap().path[0].pounds = None;
        assert!(of(&job, "wind").is_empty());
        crate::testing::kit(&mut job).hold_down.as_mut().unwrap().pounds = 60.0;
        // The faces of the test's gable are drawn 12 m across at the least.
        job.site.building.least_width = None;
        assert_eq!(why_not(&job, "wind"), None);
        job.site.building.eave_height = None;
        assert_eq!(why_not(&job, "wind"), Some(WhyNot::NotKnown(vec![Unknown::EaveHeight])));
    }

    /// By hand: 6:12 is 26.57°, figure 2C. The roof rises 3 m, so h = 12 + 4.92 = 16.92 ft; Kz = 2.41 (16.92 / 3280)^(2/7.5) =
    /// 0.592; q Kd = 0.00256 × 0.592 × 0.85 × 115² = 17.03 psf. The block is in zone 1: GCp −1.5, p = 17.03 × 1.68 = 28.6 psf.
    /// Dead load 22.1 kg on 21.02 ft² is 2.318 psf, × cos 26.57° = 2.073. (0.6 × 28.6 − 0.6 × 2.073) × 4 = 63.7 lb.
    #[test]
    fn more_than_just_and_less_than_it_holds() {
        let job = in_wind(60.0);
        let screening = screen(&job, &Layout::of(&job)).unwrap();
        assert!((screening.q_kd_psf - 17.03).abs() < 0.03, "{screening:?}");
        let uplift = screening.blocks[0].outcome.clone().unwrap();
        assert!((uplift.pounds - 63.7).abs() < 0.2, "{uplift:?}");
        let short = one(&job, "wind");
        assert!(matches!(short.facts, Facts::Wind { zone: Zone::One, .. }), "{:?}", short.facts);
        assert!(of(&in_wind(uplift.pounds), "wind").is_empty());
        assert!(of(&in_wind(80.0), "wind").is_empty());
    }

    #[test]
    fn nearer_to_the_ridge_is_worse() {
        let mut job = in_wind(80.0);
        job.blocks[0].at.y = 4.0;
        assert!(matches!(one(&job, "wind").facts, Facts::Wind { zone: Zone::Two, .. }));
    }

    #[test]
    fn unknowns_are_not_checked_and_cases_without_a_figure_are_refused() {
        let mut job = in_wind(60.0);
        job.site.building.exposure = None;
        assert!(of(&job, "wind").is_empty());
        assert_eq!(why_not(&job, "wind"), Some(WhyNot::NotKnown(vec![Unknown::Exposure])));
        let mut job = in_wind(60.0);
        book(&mut job).loads.as_mut().unwrap().standard.value = LoadStandard::Asce716;
        assert!(matches!(one(&job, "wind").facts, Facts::WindRefused(Refused::NotInSources(..))));
    }
}
