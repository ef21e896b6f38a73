//! Findings about the roofing.

use crate::names::{Names, asked, limit, measured};
use crate::{RuleWords, Told};
use chalkcourse_job::{FireClass, Quantity};
use chalkcourse_rules::{ClassAsked, Covering, Finding};
use chalkcourse_words::{self as words, of_data, sentence};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "shingle-slope",
        title: words::rules::SHINGLES_LIE_ON_SLOPES_THAT,
        reason: words::rules::LAPPED_SHINGLES_LET_WATER_IN,
        geometry: None,
    },
    RuleWords {
        code: "underlayment",
        title: words::rules::LOW_SLOPES_HAVE_A_DOUBLE,
        reason: words::rules::WATER_RUNS_SLOWLY_ON_A,
        geometry: None,
    },
    RuleWords {
        code: "cricket",
        title: words::rules::WIDE_PENETRATIONS_HAVE_A_CRICKET,
        reason: words::rules::WATER_AND_SNOW_PILE_UP,
        geometry: None,
    },
    RuleWords {
        code: "drip-edge",
        title: words::rules::EAVES_AND_RAKES_HAVE_A,
        reason: words::rules::WITHOUT_IT_WATER_RUNS_BACK,
        geometry: None,
    },
    RuleWords {
        code: "fire-class",
        title: words::rules::ARRAY_AND_COVERING_HAVE_THE,
        reason: words::rules::BURNING_BRANDS_FROM_A_FIRE,
        geometry: None,
    },
    RuleWords {
        code: "deck-condition",
        title: words::rules::THE_DECK_IS_SOUND_BEFORE,
        reason: words::rules::SCREWS_HOLD_ONLY_IN_FIRM,
        geometry: None,
    },
];

/// "3:12".
fn pitch(quantity: Quantity) -> String {
    if let Quantity::Pitch(pitch) = quantity { pitch.to_string() } else { String::new() }
}

pub(crate) fn slope(names: &Names<'_>, finding: &Finding) -> Told {
    let measured = pitch(finding.measured);
    let required = crate::names::at_least(&pitch(limit(&finding.required)));
    Told {
        message: words::rules::is_asphalt_shingles_need_choose(
            &sentence(&names.face_of(finding)),
            &measured,
            &required,
        ),
        measured,
        required,
    }
}

pub(crate) fn underlayment(names: &Names<'_>, finding: &Finding) -> Told {
    let how = names.job.rule_book.roofing.as_ref().map_or("", |roofing| roofing.double_underlayment.as_str());
    let measured = pitch(finding.measured);
    Told {
        message: words::rules::is_less_than_lay_its(
            &sentence(&names.face_of(finding)),
            &measured,
            &pitch(limit(&finding.required)),
            &of_data(how),
        ),
        measured,
        required: words::rules::DOUBLE_UNDERLAYMENT.now().into(),
    }
}

pub(crate) fn cricket(names: &Names<'_>, finding: &Finding) -> Told {
    let (wide, required) = (names.length(measured(finding)), names.length(asked(finding)));
    let it = finding.place.penetration.and_then(|id| names.job.penetration(id));
    let (kind, name) = it.map_or(("", ""), |it| (it.kind.with_article().now(), it.name.as_str()));
    Told {
        message: words::rules::is_wide_along_the_eave(&sentence(kind), &name, &wide, &required),
        measured: words::rules::wide(&wide),
        required: words::rules::a_cricket_beyond(&required),
    }
}

pub(crate) fn drip_edge(names: &Names<'_>) -> Told {
    let roofing = names.job.rule_book.roofing.as_ref();
    let how = roofing.and_then(|roofing| roofing.drip_edge.as_ref()).map_or("", |limit| limit.value.as_str());
    Told {
        message: words::rules::the_roof_has_no_drip(&of_data(how)),
        measured: words::common::NONE_2.now().into(),
        required: words::rules::A_DRIP_EDGE_AT_EAVES.now().into(),
    }
}

pub(crate) fn fire_class(names: &Names<'_>, finding: &Finding, of: Covering, why: ClassAsked) -> Told {
    let class = |quantity| if let Quantity::Class(class) = quantity { Some(class) } else { None };
    let measured = class(finding.measured).map_or(words::common::NOT_KNOWN, FireClass::name).into();
    let asked = class(limit(&finding.required)).map_or("", |class| class.name().now());
    let required = words::rules::or_better(&asked);
    let what = match of {
        Covering::Array => words::rules::THE_ARRAY.now(),
        Covering::Beyond => words::rules::THE_COVERING_BEYOND_THE_ARRAY.now(),
    };
    let why = match why {
        ClassAsked::LotLine(within) => {
            let within = names.length(within.metres());
            words::rules::an_edge_of_the_roof(&within)
        }
        ClassAsked::Law => words::rules::THE_LAW_ASKS_FOR_IT.now().to_owned(),
    };
    Told {
        message: words::rules::has_against_fire_and_is(&sentence(what), &measured, &required, &why),
        measured,
        required,
    }
}

pub(crate) fn deck_condition() -> Told {
    Told {
        message: words::rules::PARTS_OF_THE_DECK_ARE.now().into(),
        measured: words::rules::NEEDS_REPAIR.now().into(),
        required: words::rules::A_SOUND_DECK.now().into(),
    }
}
