//! Findings about fire-service access: pathways and setbacks.

use crate::names::{Names, asked, limit, measured, the_edge};
use crate::{RuleWords, Told};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::Quantity;
use chalkcourse_rules::Finding;
use chalkcourse_words::{self as words, sentence};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "fire-ridge",
        title: words::rules::THE_RIDGE_IS_CLEAR_FOR,
        reason: words::rules::FIRE_FIGHTERS_OPEN_THE_ROOF,
        geometry: None,
    },
    RuleWords {
        code: "fire-paths",
        title: words::rules::TWO_PATHWAYS_LEAD_TO_THE,
        reason: words::rules::WHO_WORKS_ON_A_ROOF,
        geometry: None,
    },
    RuleWords {
        code: "fire-plane-path",
        title: words::rules::EACH_PLANE_WITH_MODULES_HAS,
        reason: words::rules::WHOEVER_MUST_REACH_THE_ARRAY,
        geometry: None,
    },
    RuleWords {
        code: "fire-street",
        title: words::rules::ONE_PATHWAY_IS_ON_A,
        reason: words::rules::A_LADDER_IS_RAISED_WHERE,
        geometry: None,
    },
    RuleWords {
        code: "fire-hip-valley",
        title: words::rules::A_HIP_OR_VALLEY_BETWEEN,
        reason: words::rules::A_HIP_BETWEEN_TWO_ARRAYS,
        geometry: None,
    },
    RuleWords {
        code: "fire-escape",
        title: words::rules::THE_ROOF_BELOW_AN_ESCAPE,
        reason: words::rules::WHO_CLIMBS_OUT_OF_A,
        geometry: None,
    },
];

fn in_plan(names: &Names<'_>, finding: &Finding, near: &str) -> (String, String) {
    let required = names.length(asked(finding));
    (words::rules::in_plan(&near), words::rules::at_least_in_plan(&required))
}

pub(crate) fn ridge(names: &Names<'_>, finding: &Finding, share: f64) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let message = words::rules::leaves_beside_the_ridge_of(
        &sentence(&names.block_of(finding)),
        &near,
        &names.face_of(finding),
        &format_args!("{:.1}", share * 100.0),
        &required,
    );
    let (measured, required) = in_plan(names, finding, &near);
    Told { message, measured, required }
}

pub(crate) fn hip_valley(names: &Names<'_>, finding: &Finding, kind: EdgeKind) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let the_kind = the_edge(kind);
    let message = words::rules::leaves_beside_the_of_in(
        &sentence(&names.block_of(finding)),
        &near,
        &the_kind,
        &names.face_of(finding),
        &required,
    );
    let (measured, required) = in_plan(names, finding, &near);
    Told { message, measured, required }
}

pub(crate) fn escape(names: &Names<'_>, finding: &Finding) -> Told {
    let (wide, over) = (names.length(asked(finding)), names.too_much(measured(finding)));
    Told {
        message: words::rules::lies_into_the_strip_below(
            &sentence(&names.block_of(finding)),
            &over,
            &names.penetration(finding.place.penetration),
            &wide,
        ),
        measured: words::rules::into_it(&over),
        required: words::rules::free_below_the_window(&wide),
    }
}

/// The required pathway width.
fn width(names: &Names<'_>, finding: &Finding) -> String {
    match limit(&finding.required) {
        Quantity::Pathways { width, .. } => names.length(width.metres()),
        _ => String::new(),
    }
}

fn no_ridge_to_go_to() -> String {
    words::rules::NO_RIDGE_TO_GO_TO.now().into()
}

fn two_wide(width: &str) -> String {
    words::rules::each_wide_in_plan(&width)
}

fn found_words(found: f64) -> String {
    words::rules::found(&found)
}

pub(crate) fn paths(names: &Names<'_>, finding: &Finding, opens: bool, room_for: u32) -> Told {
    let (found, width) = (measured(finding), width(names, finding));
    let none = if opens {
        ""
    } else if f64::from(room_for) < asked(finding) {
        words::rules::THE_ROOF_AS_DRAWN_HAS.now()
    } else {
        words::rules::NO_REMOVAL_OF_MODULES_OPENS.now()
    };
    Told {
        message: words::rules::of_2_pathways_of_lead(&found, &width, &none),
        measured: found_words(found),
        required: two_wide(&width),
    }
}

pub(crate) fn no_ridge(names: &Names<'_>, finding: &Finding) -> Told {
    let width = width(names, finding);
    Told {
        message: words::rules::no_plane_of_this_roof(&width),
        measured: no_ridge_to_go_to(),
        required: two_wide(&width),
    }
}

pub(crate) fn plane_path(names: &Names<'_>, finding: &Finding, opens: bool) -> Told {
    let (found, asked, width) = (measured(finding), asked(finding), width(names, finding));
    let on = sentence(&names.face_of(finding));
    let none = if opens { "" } else { words::rules::NO_REMOVAL_OF_MODULES_ALONG.now() };
    Told {
        message: words::rules::has_of_pathways_of_from(&on, &found, &asked, &width, &none),
        measured: found_words(found),
        required: words::rules::wide_in_plan(&asked, &width),
    }
}

pub(crate) fn no_ridge_beside(names: &Names<'_>, finding: &Finding) -> Told {
    let (on, width) = (sentence(&names.face_of(finding)), width(names, finding));
    Told {
        message: words::rules::has_no_ridge_and_no(&on),
        measured: no_ridge_to_go_to(),
        required: words::rules::a_pathway_wide_from_the(&width),
    }
}

pub(crate) fn street(names: &Names<'_>) -> Told {
    let ways: Vec<&str> = names.job.site.building.street_sides.iter().map(|side| side.wind()).collect();
    Told {
        message: words::rules::no_pathway_lies_on_the(&ways.join(", ")),
        measured: words::rules::NONE_ON_THAT_SIDE.now().into(),
        required: words::rules::ONE_ON_THAT_SIDE.now().into(),
    }
}
