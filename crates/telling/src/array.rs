//! Findings about where blocks are placed.

use crate::names::{Names, asked, at_least, at_most, measured, number, the_edge};
use crate::why_not::unknown_name;
use crate::{RuleWords, Told};
use chalkcourse_geometry::{EdgeKind, Length, Pitch};
use chalkcourse_job::{BlockId, Quantity, Required, RowJoints, Subject};
use chalkcourse_rules::{Against, Beside, Finding, NoDeck, Unknown};
use chalkcourse_words::{self as words, modules, sentence};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "no-deck",
        title: words::rules::BLOCKS_LIE_ON_A_FACE,
        reason: words::rules::NOTHING_CAN_BE_PLACED_MEASURED,
        geometry: Some(words::rules::GEOMETRY_NO_DECK_CAN_BE),
    },
    RuleWords {
        code: "pitch",
        title: words::rules::FACES_ARE_STEEP_ENOUGH_FOR,
        reason: words::rules::LAPPED_FLASHING_SHEDS_WATER_ONLY,
        geometry: None,
    },
    RuleWords {
        code: "off-face",
        title: words::rules::MODULES_LIE_ON_THEIR_FACE,
        reason: words::rules::A_MODULE_IS_SCREWED_TO,
        geometry: Some(words::rules::GEOMETRY_NO_DECK_IS_THERE),
    },
    RuleWords {
        code: "overlap",
        title: words::rules::NO_MODULE_LIES_ON_ANOTHER,
        reason: words::rules::TWO_MODULES_CANT_HAVE_ONE,
        geometry: Some(words::rules::GEOMETRY_TWO_MODULES_CANT_HAVE),
    },
    RuleWords {
        code: "setback",
        title: words::rules::MODULES_KEEP_EACH_EDGES_SETBACK,
        reason: words::rules::EDGES_NEED_ROOM_FOR_DRIP,
        geometry: None,
    },
    RuleWords {
        code: "clearance",
        title: words::rules::MODULES_KEEP_CLEAR_OF_WHAT,
        reason: words::rules::A_BOOT_A_CURB_OR,
        geometry: None,
    },
    RuleWords {
        code: "valley-hip",
        title: words::rules::FLASHING_KEEPS_OFF_VALLEYS_AND,
        reason: words::rules::A_NAIL_IN_A_VALLEY,
        geometry: None,
    },
    RuleWords {
        code: "ridge-course",
        title: words::rules::FULL_COURSES_ARE_LEFT_BETWEEN,
        reason: words::rules::THE_COURSE_ABOVE_LAPS_THE,
        geometry: None,
    },
    RuleWords {
        code: "base-rail",
        title: words::rules::THE_BASE_RAIL_IS_WHERE,
        reason: words::rules::THE_RAIL_CARRIES_THE_BLOCK,
        geometry: None,
    },
    RuleWords {
        code: "deck",
        title: words::rules::THE_DECK_IS_ONE_THAT,
        reason: words::rules::ALL_THAT_HOLDS_THE_ARRAY,
        geometry: None,
    },
    RuleWords {
        code: "hook",
        title: words::rules::MODULES_HOOK_INTO_THE_ROW,
        reason: words::rules::THE_ROW_BELOW_HOLDS_A,
        geometry: None,
    },
    RuleWords {
        code: "laying",
        title: words::rules::ROWS_AND_BASE_RAIL_ARE,
        reason: words::rules::MODULES_INTERLOCK_ONLY_IN_THE,
        geometry: None,
    },
    RuleWords {
        code: "reveal",
        title: words::rules::THE_REVEAL_IS_WITHIN_THE,
        reason: words::rules::MODULES_NEED_ROOM_TO_GROW,
        geometry: None,
    },
    RuleWords {
        code: "between-blocks",
        title: words::rules::BLOCKS_LEAVE_ROOM_FOR_EACH,
        reason: words::rules::SIDE_FLASHING_OF_TWO_BLOCKS,
        geometry: None,
    },
];

pub(crate) fn no_deck(names: &Names<'_>, finding: &Finding, state: NoDeck) -> Told {
    let what = match state {
        NoDeck::Defective => words::rules::whose_outline_does_not_hold(&names.face_of(finding)),
        NoDeck::Resting => {
            let rests = names.job.resting.iter().find(|face| Some(face.id) == finding.place.face);
            words::rules::face_which_is_gone_its(&rests.map_or("", |face| face.name.as_str()))
        }
        NoDeck::Absent => words::rules::A_FACE_THAT_THE_JOB.now().to_owned(),
    };
    let measured = match state {
        NoDeck::Defective => words::rules::AN_OUTLINE_WITH_DEFECTS.now(),
        NoDeck::Resting | NoDeck::Absent => words::rules::NO_FACE.now(),
    };
    Told {
        message: words::rules::lies_on_nothing_on_it(&sentence(&names.block_of(finding)), &what),
        measured: measured.into(),
        required: words::rules::A_FACE_WITH_A_SOUND.now().into(),
    }
}

pub(crate) fn pitch(names: &Names<'_>, finding: &Finding) -> Told {
    let words = |pitch: Pitch| format!("{pitch} ({:.1}°)", pitch.degrees());
    let words = |quantity| if let Quantity::Pitch(it) = quantity { words(it) } else { String::new() };
    let (measured, required) = (words(finding.measured), words(crate::names::limit(&finding.required)));
    Told {
        message: words::rules::lies_on_which_is_the(
            &sentence(&names.block_of(finding)),
            &names.face_of(finding),
            &measured,
            &required,
        ),
        measured,
        required: at_least(&required),
    }
}

pub(crate) fn off_face(
    names: &Names<'_>,
    finding: &Finding,
    edge: Option<EdgeKind>,
    count: usize,
    of: usize,
) -> Told {
    let over = names.too_much(measured(finding));
    let reach = if count == of {
        words::rules::LIES.now().to_owned()
    } else {
        words::rules::lies_with(&modules(count))
    };
    let edge = match edge {
        Some(kind) => the_edge(kind),
        None => words::rules::BORDER.now(),
    };
    Told {
        message: words::rules::up_to_over_the_of(
            &sentence(&names.block_of(finding)),
            &reach,
            &over,
            &edge,
            &names.face_of(finding),
        ),
        measured: words::rules::over(&over),
        required: words::rules::ALL_ON_THE_FACE.now().into(),
    }
}

pub(crate) fn overlap(names: &Names<'_>, finding: &Finding, block: BlockId, other: BlockId) -> Told {
    let deep = names.too_much(measured(finding));
    Told {
        message: words::rules::lies_up_to_over(&sentence(&names.block(block)), &deep, &names.block(other)),
        measured: words::rules::over_2(&deep),
        required: words::rules::BESIDE_EACH_OTHER.now().into(),
    }
}

pub(crate) fn overlap_within(names: &Names<'_>, finding: &Finding, count: usize) -> Told {
    let deep = names.too_much(measured(finding));
    Told {
        message: words::rules::of_are_shifted_up_to(
            &sentence(&modules(count)),
            &names.block_of(finding),
            &deep,
        ),
        measured: words::rules::over_2(&deep),
        required: words::rules::BESIDE_EACH_OTHER.now().into(),
    }
}

/// For a limit without a message of its own; its code stands in for a title.
pub(crate) fn too_near(names: &Names<'_>, finding: &Finding, against: Against) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let from = match against {
        Against::Side { kind, .. } | Against::Hole { kind, .. } => {
            words::rules::the_of(&the_edge(kind), &names.face_of(finding))
        }
        Against::Border => words::rules::the_border_of(&names.face_of(finding)),
        Against::Penetration(id) => names.penetration(Some(id)).into(),
        Against::Block(id) => names.block(id).into(),
        Against::Pathway => words::rules::A_PATHWAY.now().to_owned(),
    };
    Told {
        message: words::rules::is_from_the_limit_asks(
            &sentence(&names.block_of(finding)),
            &near,
            &from,
            &finding.rule,
            &required,
        ),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn setback(names: &Names<'_>, finding: &Finding, kind: EdgeKind) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let (the_kind, on) = (the_edge(kind), names.face_of(finding));
    let is = if measured(finding) > 0.0 {
        words::rules::is_from_the_of(&near, &the_kind, &on)
    } else {
        words::rules::lies_on_or_over_the(&the_kind, &on)
    };
    Told {
        message: words::rules::the_book_asks(&sentence(&names.block_of(finding)), &is, &required),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn clearance(names: &Names<'_>, finding: &Finding, side: Beside, own: bool) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let the_penetration = names.penetration(finding.place.penetration);
    let is = match side {
        Beside::Around if measured(finding) > 0.0 => words::rules::is_from(&near, &the_penetration),
        Beside::Around => words::rules::lies_on(&the_penetration),
        Beside::Above => words::rules::is_above(&near, &the_penetration),
        Beside::Below => words::rules::is_below(&near, &the_penetration),
    };
    let whose = if own { words::rules::IT_IS_TO_HAVE.now() } else { words::rules::THE_BOOK_ASKS_2.now() };
    Told {
        message: words::rules::sentence_is(&sentence(&names.block_of(finding)), &is, &whose, &required),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn valley_hip(names: &Names<'_>, finding: &Finding, kind: EdgeKind, flashing: Length) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let the_kind = the_edge(kind);
    let comes = if measured(finding) > 0.0 {
        words::rules::comes_within_of_the(&near, &the_kind)
    } else {
        words::rules::lies_on_the(&the_kind)
    };
    Told {
        message: words::rules::the_side_flashing_of_wide(
            &names.block_of(finding),
            &names.length(flashing.metres()),
            &comes,
            &names.face_of(finding),
            &required,
        ),
        measured: sentence(&near),
        required: at_least(&required),
    }
}

pub(crate) fn ridge_course(names: &Names<'_>, finding: &Finding, courses: u32, exposure: Length) -> Told {
    let room = measured(finding);
    let required = words::rules::whole_on_its_lines(
        &courses,
        &if courses == 1 { words::common::COURSE.now() } else { words::common::COURSES.now() },
        &names.length(asked(finding)),
    );
    let (left, measured) = if room > 0.0 {
        // The remainder above the last course line is part of the requirement but belongs to no course.
        let over = asked(finding) - f64::from(courses) * exposure.metres();
        let whole = ((room - over) / exposure.metres() + 1e-6).floor().max(0.0);
        let measured = match whole {
            0.0 => words::rules::no_whole_course_on_the(&names.too_short(room)),
            whole => words::rules::whole_courses_on_the_lines(&names.too_short(room), whole),
        };
        (words::rules::is_left(&measured), measured)
    } else {
        (words::rules::NOTHING_IS_LEFT.now().to_owned(), words::common::NOTHING.now().to_owned())
    };
    Told {
        message: words::rules::between_the_head_flashing_of(
            &left,
            &names.block_of(finding),
            &names.face_of(finding),
            &required,
        ),
        measured: sentence(&measured),
        required,
    }
}

pub(crate) fn rail_above_eave(names: &Names<'_>, finding: &Finding) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    Told {
        message: words::rules::the_base_rail_of_is(
            &names.block_of(finding),
            &near,
            &names.face_of(finding),
            &required,
        ),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn rail_off_deck(names: &Names<'_>, finding: &Finding) -> Told {
    let over = names.too_much(measured(finding));
    Told {
        message: words::rules::the_base_rail_of_reaches(
            &names.block_of(finding),
            &over,
            &names.face_of(finding),
        ),
        measured: words::rules::beyond(&over),
        required: words::rules::ALL_ON_THE_DECK.now().into(),
    }
}

pub(crate) fn rail_too_long(names: &Names<'_>, finding: &Finding) -> Told {
    let (long, required) = (names.too_much(measured(finding)), names.length(asked(finding)));
    Told {
        message: sentence(&words::rules::the_base_rail_of_is_long(
            &names.block_of(finding),
            &long,
            &required,
        )),
        measured: long,
        required: at_most(&required),
    }
}

/// A deck whose material, thickness or span the kit does not allow.
fn deck(what: &str, measured: String, required: String) -> Told {
    let message = words::rules::the_sheathing_the_kit_asks(&what, &measured, &required);
    Told { message, measured, required }
}

pub(crate) fn deck_too_thin(names: &Names<'_>, finding: &Finding) -> Told {
    let thick = words::rules::thick(&names.too_short(measured(finding)));
    deck(words::rules::IS.now(), thick, at_least(&names.length(asked(finding))))
}

pub(crate) fn deck_of_kind(finding: &Finding) -> Told {
    let kind = if let Quantity::Deck(kind) = finding.measured { kind.name().now() } else { "" };
    let allowed: Vec<&str> = match &finding.required {
        Required::Deck(kinds) => kinds.iter().map(|kind| kind.name().now()).collect(),
        _ => Vec::new(),
    };
    deck(words::rules::IS_OF.now(), kind.to_owned(), allowed.join(words::rules::OR.now()))
}

pub(crate) fn deck_span(names: &Names<'_>, finding: &Finding) -> Told {
    let most = at_most(&names.length(asked(finding)));
    deck(words::rules::SPANS.now(), names.too_much(measured(finding)), most)
}

pub(crate) fn deck_unknown(unknown: &[Unknown]) -> Told {
    let unknown: Vec<&str> = unknown.iter().map(|it| unknown_name(*it)).collect();
    Told {
        message: words::rules::of_the_deck_the_job(&unknown.join(", ")),
        measured: words::common::NOT_KNOWN.now().into(),
        required: words::rules::A_MEASUREMENT_ON_SITE.now().into(),
    }
}

/// The row of a block that a finding is about, from 1.
fn row_of(finding: &Finding) -> u32 {
    if let Subject::Row(_, row) = finding.key.subject { row } else { 0 }
}

pub(crate) fn hook(names: &Names<'_>, finding: &Finding, count: usize) -> Told {
    let hooked = format!("{:.0} %", (measured(finding) * 100.0).floor());
    let required = format!("{:.0} %", (asked(finding) * 100.0).ceil());
    let hooks = words::rules::hook(&modules(count), count);
    Told {
        message: words::rules::in_row_of_into_the(
            &row_of(finding),
            &names.block_of(finding),
            &hooks,
            &hooked,
            &required,
        ),
        measured: words::rules::of_the_lower_edge(&hooked),
        required: at_least(&required),
    }
}

pub(crate) fn joints(names: &Names<'_>, finding: &Finding, aside: Length) -> Told {
    let ways: Vec<&str> = match &finding.required {
        Required::Joints(ways) => ways.iter().map(|way| joints_name(*way)).collect(),
        _ => Vec::new(),
    };
    let (aside, required) = (names.length(aside.metres()), ways.join(words::common::OR.now()));
    Told {
        message: words::rules::the_joints_of_row_of(
            &row_of(finding),
            &names.block_of(finding),
            &aside,
            &required,
        ),
        measured: words::rules::aside(&aside),
        required,
    }
}

fn joints_name(joints: RowJoints) -> &'static str {
    match joints {
        RowJoints::Free => words::common::ANYWHERE.now(),
        RowJoints::Aligned => words::rules::IN_LINE.now(),
        RowJoints::HalfLapped => words::rules::HALF_A_MODULE_ASIDE.now(),
    }
}

/// "3/16" to 1/4"".
fn range(names: &Names<'_>, finding: &Finding) -> String {
    let Required::Between(from, to) = finding.required else { return String::new() };
    words::rules::to(&names.length(number(from)), &names.length(number(to)))
}

pub(crate) fn rail_among_courses(names: &Names<'_>, finding: &Finding, exposure: Length) -> Told {
    let above = names.length(measured(finding).rem_euclid(exposure.metres()));
    let required = range(names, finding);
    Told {
        message: words::rules::the_base_rail_of_is_above(&names.block_of(finding), &above, &required),
        measured: words::rules::above_a_course_line(&above),
        required,
    }
}

pub(crate) fn reveal(names: &Names<'_>, finding: &Finding) -> Told {
    let has = measured(finding);
    let measured = if has < asked(finding) { names.too_short(has) } else { names.too_much(has) };
    let allowed = range(names, finding);
    Told {
        message: words::rules::the_reveal_of_is_the(&names.block_of(finding), &measured, &allowed),
        measured,
        required: allowed,
    }
}

pub(crate) fn between_blocks(names: &Names<'_>, finding: &Finding, block: BlockId, other: BlockId) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    Told {
        message: words::rules::is_from_the_kit_asks(
            &sentence(&names.block(block)),
            &near,
            &names.block(other),
            &required,
        ),
        measured: near,
        required: at_least(&required),
    }
}
