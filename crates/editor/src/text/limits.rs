//! Words for limits.

use super::{at_edge, at_setback, clear_of, clear_of_block};
use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{Against, KeepOut};
use chalkcourse_words as words;

/// Why a block stopped at a keep-out; `kind` is the edge kind of the face's border there.
pub(crate) fn at_limit(keep_out: &KeepOut, kind: EdgeKind, layout: &Layout, units: Units) -> String {
    let asked = || Length::from_metres(keep_out.asked);
    let small = || asked().show_small(units);
    match (keep_out.rule, keep_out.against) {
        ("setback", _) => at_setback(kind, asked(), units),
        ("valley-hip", _) => words::rules::flashing_from_the(&small(), &kind.name()),
        ("ridge-course", _) => words::rules::of_courses_left_below_the(&small()),
        ("base-rail", Against::Border) => words::rules::THE_BASE_RAIL_ENDS_WITH.now().to_owned(),
        ("base-rail", _) => words::rules::the_base_rail_above_the(&small(), &kind.name()),
        ("fire-ridge" | "fire-hip-valley", _) => words::rules::in_plan_from_the_for(&small(), &kind.name()),
        ("fire-escape", Against::Penetration(id)) => words::rules::beside_the_strip_below(
            &layout.penetration(id).map_or("", |through| through.name.as_str()),
        ),
        (_, Against::Penetration(id)) => {
            clear_of(layout.penetration(id).map_or("", |through| through.name.as_str()))
        }
        ("off-face", _) => at_edge(kind),
        (_, Against::Side { .. } | Against::Hole { .. }) => words::rules::from_the(&small(), &kind.name()),
        (_, Against::Block(id)) => clear_of_block(layout.block(id).map_or("", |block| block.name.as_str())),
        _ => at_edge(kind),
    }
}
