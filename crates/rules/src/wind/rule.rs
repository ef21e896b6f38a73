//! What wind asks of one fastener is no more than what it was tested or listed for.
//!
//! Source: ASCE/SEI 7 chapter 30, as roof covering; see the parent module. A caution, and never a design: by a licensed
//! engineer.

use super::screen::{Conditions, unknown, uplift};
use crate::case::{Case, Laid};
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{block_name, sentence};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "wind",
    title: say(
        "Fasteners hold against wind uplift (screening)",
        "Las fijaciones aguantan el levantamiento del viento (revisión preliminar)",
    ),
    reason: say(
        "A corner of a roof is lifted by several times its weight in a storm.",
        "En una tormenta la esquina de un techo se levanta con varias veces su peso.",
    ),
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
        job.rule_book.loads.as_ref().map_or_else(
            || pick("none in this book", "ninguno en este libro").into(),
            |loads| loads.standard.source.clone(),
        )
    },
    missing: unknown,
    run: Run::Block(run, |case, _| case.wind().map_or_else(Vec::new, Conditions::numbers)),
};

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let Some(holds) = case.job.site.building.fastener_pounds else { return };
    let Some(outcome) = case.wind().and_then(|conditions| uplift(case, conditions, laid)) else { return };
    let name = sentence(&block_name(laid.block));
    let place = Place { face: Some(laid.on.id), block: Some(laid.block.id), ..Place::default() };
    let key = format!("wind/block-{}/face-{}", laid.block.id, laid.on.id);
    match &outcome {
        Ok(uplift) if uplift.pounds > holds + 1e-6 => findings.push(Finding {
            message: tell!("{name} reaches zone {} ({}): {:.1} psf outward, {:.0} lb on a fastener, which is said to hold {holds:.0} lb. Keep out of \
                 the edge zones, or set more fasteners; have it designed by a licensed engineer.", "{name} llega a la zona {} ({}): {:.1} psf hacia afuera, {:.0} lb en una fijación, que según se \
        dice aguanta {holds:.0} lb. No entre en las zonas de borde, o ponga más fijaciones; encargue el \
        diseño a un ingeniero con licencia.",
                uplift.zone.name(),
                uplift.figure,
                uplift.psf,
                uplift.pounds.ceil(),
            ),
            place,
            measured: tell!("{:.0} lb a fastener", "{:.0} lb por fijación", uplift.pounds.ceil()),
            required: tell!("at most {holds:.0} lb", "como máximo {holds:.0} lb"),
            source: tell!("{}, taken as roof covering: a flush, flashed array is outside the reductions for panels above a roof (29.4.4)", "{}, tomado como recubrimiento de techo: un arreglo al ras y con tapajuntas queda fuera de las \
        reducciones para paneles sobre un techo (29.4.4)",
                uplift.figure
            ),
            ..Finding::of(RULE.code, Severity::Caution, key)
        }),
        Ok(_) => {}
        Err(refused) => findings.push(Finding {
            message: tell!("{name} is not screened for wind: {refused}.", "El viento en {name} no se revisó: {refused}."),
            place,
            measured: pick("not worked out", "sin calcular").into(),
            required: pick("a case that the sources have", "un caso que las fuentes tengan").into(),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Note, key)
        }),
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, gable_job, of, one};
    use crate::wind::screen;
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Building, Exposure, Job, LoadStandard};
    use chalkcourse_layout::Layout;

    fn in_wind(pounds: f64) -> Job {
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

    /// Worked by hand: 6:12 is 26.57°, figure 2C. The roof rises 3 m, so h = 12 + 4.92 = 16.92 ft; Kz = 2.41 (16.92 / 3280)^(2/7.5) =
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
        assert!(short.message.contains("zone 1") && short.message.contains("licensed engineer"));
        assert!(short.source.contains("29.4.4"));
        assert!(of(&in_wind(uplift.pounds), "wind").is_empty());
        assert!(of(&in_wind(80.0), "wind").is_empty());
    }

    #[test]
    fn nearer_to_the_ridge_is_worse() {
        let mut job = in_wind(80.0);
        job.blocks[0].at.y = 4.0;
        assert!(one(&job, "wind").message.contains("zone 2"));
    }

    #[test]
    fn what_is_not_known_is_not_checked_and_what_has_no_figure_is_refused() {
        let mut job = in_wind(60.0);
        job.site.building.exposure = None;
        assert!(of(&job, "wind").is_empty());
        let line = crate::checked(&job).into_iter().find(|line| line.code == "wind").unwrap();
        assert_eq!(line.why_not.as_deref(), Some("the job does not say: exposure"));
        let mut job = in_wind(60.0);
        book(&mut job).loads.as_mut().unwrap().standard.value = LoadStandard::Asce716;
        assert!(one(&job, "wind").message.contains("not among the sources"));
    }
}
