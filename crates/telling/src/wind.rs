//! Wind-uplift screening: findings, zones and figures in words.

use crate::names::{Names, asked, measured};
use crate::{RuleWords, Told};
use chalkcourse_job::{Kit, LoadWay};
use chalkcourse_rules::wind::{Drawn, Figure, Refused, RoofShape, Zone};
use chalkcourse_rules::{Finding, Section, WhyNot};
use chalkcourse_words::{self as words, of_data, sentence};

pub(crate) const RULES: &[RuleWords] = &[RuleWords {
    code: "wind",
    title: words::rules::FASTENERS_HOLD_AGAINST_WIND_UPLIFT,
    reason: words::rules::A_CORNER_OF_A_ROOF,
    geometry: None,
}];

/// "ASCE/SEI 7-22 figure 30.3-2B".
pub fn figure(figure: Figure) -> String {
    let (standard, number) = (figure.standard.name(), figure.number);
    match figure.towards {
        Some(other) => words::rules::figures_and_between_27_and(&standard, &number, &other),
        None => words::rules::figure(&standard, &number),
    }
}

/// Why a case is not calculated.
pub fn refused(refused: Refused) -> String {
    match refused {
        Refused::Slope(degrees) => words::rules::a_slope_of_is_outside(&format_args!("{degrees:.1}")),
        Refused::Edge(kind) => words::rules::the_figures_are_for_plain(&kind.name()),
        Refused::NotInSources(standard, shape, degrees) => {
            let (standard, shape) = (
                standard.name(),
                match shape {
                    RoofShape::Hip => words::rules::HIP_ROOF.now(),
                    RoofShape::Gable => words::rules::GABLE_ROOF.now(),
                },
            );
            words::rules::the_coefficients_of_for_a(&standard, &shape, &format_args!("{degrees:.1}"))
        }
        Refused::NoZone => words::rules::NO_ZONE_OF_THE_FIGURE.now().into(),
    }
}

/// The inputs of the drawn zones' pressures.
pub fn about(drawn: &Drawn) -> String {
    let Ok((conditions, square_feet)) = &drawn.from else { return words::rules::WIND.now().into() };
    words::rules::mean_roof_height_ft_qh(
        &conditions.standard.name(),
        &format_args!("{:.1}", conditions.height_ft),
        &format_args!("{:.2}", conditions.q_kd_psf),
        &format_args!("{:.1}", conditions.zone_width_ft),
        &square_feet,
    )
}

/// Why faces have no zones, each reason once.
pub fn not_drawn(drawn: &Drawn) -> Vec<String> {
    let whole = drawn.from.as_ref().err().map(|why| match why {
        WhyNot::NotInBook(Section::Wind) => words::rules::THE_RULE_BOOK_DOES_NOT_GO_INTO.now().to_owned(),
        WhyNot::NotKnown(unknown) => crate::why_not::not_known(unknown),
        _ => words::rules::THE_WIND_IS_NOT_WORKED.now().to_owned(),
    });
    whole.into_iter().chain(drawn.refused.iter().map(|it| refused(*it))).collect()
}

/// The load path of uplift from a module into the deck, part by part: the capacity in the kit's listing, or that it gives none,
/// and what follows. `None` for a kit that says nothing about how its modules are held down.
pub fn load_path(kit: &Kit) -> Option<String> {
    let hold = kit.hold_down.as_ref()?;
    let screw = kit.part(&hold.part).map_or_else(|| hold.part.clone(), |part| of_data(&part.name));
    let a_foot = kit.fasteners_a_foot()?;
    let mut words = vec![words::rules::lb_each_a_foot(&screw, &hold.pounds, &a_foot)];
    words.extend(hold.path.iter().map(|it| {
        let what = of_data(&it.what);
        match (it.way, it.pounds) {
            (LoadWay::Through, Some(pounds)) => words::rules::lb_a_foot_no_foot(&what, &pounds),
            (LoadWay::Through, None) => words::rules::the_listing_says_nothing_ask(&what),
            (LoadWay::Beside, Some(pounds)) => words::rules::lb_a_foot_which_helps(&what, &pounds),
            (LoadWay::Beside, None) => words::rules::the_listing_says_nothing_counted(&what),
        }
    }));
    Some(words::rules::load_path_by_the_kits(&words.join("; ")))
}

pub(crate) fn lifted(names: &Names<'_>, finding: &Finding, zone: Zone, by: Figure, psf: f64) -> Told {
    let (pounds, holds) = (measured(finding).ceil(), asked(finding));
    let path =
        load_path(&names.job.kit).unwrap_or_else(|| words::rules::THE_KIT_SAYS_NOTHING_OF.now().to_owned());
    Told {
        message: words::rules::reaches_zone_psf_outward_lb(
            &sentence(&names.block_of(finding)),
            &zone.name(),
            &figure(by),
            &format_args!("{psf:.1}"),
            &format_args!("{pounds:.0}"),
            &format_args!("{holds:.0}"),
            &path,
        ),
        measured: words::rules::lb_a_fastener(&format_args!("{pounds:.0}")),
        required: words::rules::at_most_lb(&format_args!("{holds:.0}")),
    }
}

pub(crate) fn not_screened(names: &Names<'_>, finding: &Finding, why: Refused) -> Told {
    let (name, why) = (sentence(&names.block_of(finding)), refused(why));
    Told {
        message: words::rules::is_not_screened_for_wind(&name, &why),
        measured: words::rules::NOT_WORKED_OUT.now().into(),
        required: words::rules::A_CASE_THAT_THE_SOURCES.now().into(),
    }
}
