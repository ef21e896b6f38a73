//! Findings about the roof as drawn.

use crate::names::{Names, length, measured, the_edge};
use crate::{RuleWords, Told};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_geometry::{EdgeKind, Tolerances, Units};
use chalkcourse_job::{FaceId, Subject};
use chalkcourse_rules::{Fault, Finding, Severity};
use chalkcourse_words::{self as words, sentence};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "part",
        title: words::rules::EVERY_PART_OF_THE_HOUSE,
        reason: words::rules::A_PART_THAT_CANT_BE,
        geometry: Some(words::rules::GEOMETRY_NO_ROOF_CLOSES_OVER),
    },
    RuleWords {
        code: "outline",
        title: words::rules::OUTLINES_OF_FACES_ENCLOSE_ONE,
        reason: words::rules::LENGTHS_AREAS_AND_EDGES_OF,
        geometry: Some(words::rules::GEOMETRY_SUCH_AN_OUTLINE_HAS),
    },
    RuleWords {
        code: "height-gap",
        title: words::rules::FACES_THAT_MEET_IN_PLAN,
        reason: words::rules::A_ROOF_WITH_A_GAP,
        geometry: Some(words::rules::GEOMETRY_FACES_OF_ONE_ROOF),
    },
    RuleWords {
        code: "near-miss",
        title: words::rules::EDGES_THAT_ALL_BUT_MEET,
        reason: words::rules::TWO_EDGES_A_HAND_APART,
        geometry: Some(words::rules::GEOMETRY_SIDES_BESIDE_EACH_OTHER),
    },
    RuleWords {
        code: "counted-twice",
        title: words::rules::NO_ROOF_IS_COUNTED_TWICE,
        reason: words::rules::WHERE_TWO_FACES_LIE_OVER,
        geometry: Some(words::rules::GEOMETRY_TWO_DECKS_CANT_HAVE),
    },
    RuleWords {
        code: "no-home",
        title: words::rules::PENETRATIONS_LIE_ON_A_FACE,
        reason: words::rules::NO_MODULE_KEEPS_CLEAR_OF,
        geometry: Some(words::rules::GEOMETRY_IT_IS_MEASURED_AGAINST),
    },
    RuleWords {
        code: "one-plane",
        title: words::rules::WHAT_COMES_THROUGH_COMES_THROUGH,
        reason: words::rules::A_BOOT_OR_A_CURB,
        geometry: None,
    },
    RuleWords {
        code: "lost-sides",
        title: words::rules::WHAT_WAS_DECIDED_FOR_A,
        reason: words::rules::A_KIND_THAT_WAS_SET,
        geometry: Some(words::rules::GEOMETRY_THE_OUTLINE_HAS_NO),
    },
];

pub(crate) fn lost_sides(names: &Names<'_>, finding: &Finding, overrules: usize, taped: bool) -> Told {
    let kinds = words::rules::the_kinds_of_sides_that(overrules);
    let tape = words::rules::WHAT_THE_TAPE_READ.now();
    let lost = match (overrules, taped) {
        (0, _) => tape.to_owned(),
        (_, false) => kinds,
        (_, true) => words::rules::and(&kinds, &tape),
    };
    Told {
        message: words::rules::counts_for_nothing_since_the(&sentence(&names.face_of(finding)), &lost),
        measured: words::rules::SIDES_THAT_ARE_GONE.now().to_owned(),
        required: words::rules::SIDES_OF_THE_OUTLINE.now().to_owned(),
    }
}

fn part_name(names: &Names<'_>, finding: &Finding) -> String {
    let Subject::Part(id, _) = &finding.key.subject else { return String::new() };
    match names.job.part(*id) {
        Some(part) if !part.name.trim().is_empty() => words::rules::part(&part.name),
        _ => words::rules::part_2(&id),
    }
}

fn of_part(message: String, measured: &str) -> Told {
    let required = words::rules::A_ROOF_OVER_ALL_OF.now().to_owned();
    Told { message, measured: measured.to_owned(), required }
}

pub(crate) fn not_raised(names: &Names<'_>, finding: &Finding, why: &RaiseError) -> Told {
    let name = part_name(names, finding);
    let message = words::rules::carries_no_roof_nothing_on(&name, &why);
    of_part(message, words::rules::NO_ROOF.now())
}

pub(crate) fn hidden(names: &Names<'_>, finding: &Finding) -> Told {
    let name = part_name(names, finding);
    let message = words::rules::lies_under_other_parts_so(&name);
    of_part(message, words::rules::NO_ROOF_THAT_IS_SEEN.now())
}

pub(crate) fn no_cricket(names: &Names<'_>, finding: &Finding) -> Told {
    let name = part_name(names, finding);
    let message = words::rules::has_no_side_that_looks(&name);
    of_part(message, words::rules::NO_CRICKET.now())
}

pub(crate) fn outline(
    names: &Names<'_>,
    finding: &Finding,
    fault: Fault,
    ring: usize,
    corner: usize,
) -> Told {
    let ring_name =
        if ring == 0 { words::common::THE_OUTLINE.now().to_owned() } else { words::common::hole(&ring) };
    let wrong = match fault {
        Fault::NoNumber => words::rules::corner_of_is_at_no(&(corner + 1), &ring_name),
        Fault::TooFewCorners => words::rules::has_less_than_three_corners(&ring_name),
        Fault::RepeatedCorner => words::rules::corner_of_lies_on_the(&(corner + 1), &ring_name),
        Fault::NoArea => words::rules::encloses_nothing_pull_its_corners(&ring_name),
        Fault::FoldsOver => words::rules::THE_OUTLINE_FOLDS_OVER_ITSELF.now().into(),
        Fault::HoleOutside => words::rules::does_not_lie_inside_the(&ring_name),
    };
    let measured = match fault {
        Fault::NoNumber => words::rules::A_CORNER_AT_NO_PLACE.now(),
        Fault::TooFewCorners => words::rules::TOO_FEW_CORNERS.now(),
        Fault::RepeatedCorner => words::rules::A_REPEATED_CORNER.now(),
        Fault::NoArea => words::rules::NO_AREA.now(),
        Fault::FoldsOver => words::rules::FOLDS_OVER.now(),
        Fault::HoleOutside => words::rules::A_HOLE_OUTSIDE.now(),
    };
    Told {
        message: format!("{}: {wrong}.", sentence(&names.face_of(finding))),
        measured: measured.to_owned(),
        required: words::rules::AN_OUTLINE_THAT_ENCLOSES_ONE.now().into(),
    }
}

pub(crate) fn height_gap(
    names: &Names<'_>,
    finding: &Finding,
    lower: FaceId,
    upper: FaceId,
    even: bool,
) -> Told {
    let apart = names.length(measured(finding));
    let uneven = if even { String::new() } else { sentence(words::rules::THE_GAP_IS_NOT_THE.now()) };
    Told {
        message: words::rules::does_not_meet_where_they(
            &sentence(&names.face(lower)),
            &names.face(upper),
            &apart,
            &uneven,
        ),
        measured: words::rules::apart(&apart),
        required: words::rules::within(&length(Tolerances::default().height, names.units())),
    }
}

pub(crate) fn near_miss(names: &Names<'_>, finding: &Finding, face: FaceId, other: FaceId) -> Told {
    let apart = names.length(measured(finding));
    Told {
        message: words::rules::an_edge_of_runs_beside(&names.face(face), &apart, &names.face(other)),
        measured: sentence(&words::rules::apart_2(&apart)),
        required: words::rules::ONE_EDGE_OR_TWO_THAT.now().into(),
    }
}

pub(crate) fn counted_twice(names: &Names<'_>, finding: &Finding, face: FaceId, other: FaceId) -> Told {
    let area = measured(finding);
    let area = match names.units() {
        Units::FeetInches => format!("{:.1} ft²", area / 0.3048f64.powi(2)),
        Units::Metric => format!("{area:.2} m²"),
    };
    Told {
        message: words::rules::of_plan_lie_under_both(&area, &names.face(face), &names.face(other)),
        measured: area,
        required: words::rules::NO_GROUND_UNDER_TWO_FACES.now().into(),
    }
}

/// A penetration, distinguished from other unnamed ones.
fn through(names: &Names<'_>, finding: &Finding) -> String {
    match finding.place.penetration.and_then(|id| names.job.penetration(id)) {
        Some(it) if it.name.trim().is_empty() => format!("{} {}", it.kind.name(), it.id),
        _ => names.penetration(finding.place.penetration).into(),
    }
}

pub(crate) fn one_plane(names: &Names<'_>, finding: &Finding, kind: EdgeKind) -> Told {
    let (what, edge) = (sentence(&through(names, finding)), the_edge(kind));
    let by = names.length(measured(finding));
    let message = match finding.severity {
        Severity::Note => words::rules::stands_over_by_hand(&what, &by, &edge),
        _ => words::rules::reaches_over_set_it_clear(&what, &by, &edge),
    };
    Told {
        message,
        measured: words::rules::over_the_edge(&by, &edge),
        required: words::rules::ON_ONE_PLANE.now().into(),
    }
}

pub(crate) fn no_home(names: &Names<'_>, finding: &Finding) -> Told {
    let what = through(names, finding);
    Told {
        message: words::rules::has_its_middle_on_no(&sentence(&what)),
        measured: words::rules::ON_NO_FACE.now().into(),
        required: words::rules::ON_A_FACE.now().into(),
    }
}
