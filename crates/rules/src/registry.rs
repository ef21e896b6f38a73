//! The list of all rules.

use crate::rule::Rule;
use crate::{array, by_limit, fire, roof, roofing, uplift, wires};
use chalkcourse_limits::LIMITS;
use std::sync::LazyLock;

/// All rules, in the order that findings of equal severity are listed: those with their own file, then one for each remaining
/// limit.
pub static RULES: LazyLock<Vec<&'static Rule>> = LazyLock::new(|| {
    let own = |code: &str| OWN.iter().any(|rule| rule.code == code);
    OWN.iter().copied().chain(BY_LIMIT.iter().filter(|rule| !own(rule.code))).collect()
});

/// The default rule of each limit, as if it had no file of its own.
static BY_LIMIT: LazyLock<Vec<Rule>> =
    LazyLock::new(|| LIMITS.iter().map(|limit| by_limit::rule(limit)).collect());

const OWN: &[&Rule] = &[
    &roof::part::RULE,
    &roof::outline::RULE,
    &roof::height_gap::RULE,
    &roof::near_miss::RULE,
    &roof::counted_twice::RULE,
    &roof::no_home::RULE,
    &roof::one_plane::RULE,
    &roof::lost::RULE,
    &array::no_deck::RULE,
    &array::pitch::RULE,
    &array::off_face::RULE,
    &array::overlap::RULE,
    &array::setback::RULE,
    &array::clearance::RULE,
    &array::water::RULE,
    &array::ridge_course::RULE,
    &array::base_rail::RULE,
    &array::deck::RULE,
    &array::hook::RULE,
    &array::laying::RULE,
    &array::reveal::RULE,
    &array::between_blocks::RULE,
    &fire::ridge::RULE,
    &fire::paths::RULE,
    &fire::plane_path::RULE,
    &fire::street::RULE,
    &fire::hip_valley::RULE,
    &fire::escape::RULE,
    &roofing::slope::RULE,
    &roofing::underlayment::RULE,
    &roofing::cricket::RULE,
    &roofing::drip_edge::RULE,
    &roofing::fire_class::RULE,
    &roofing::deck_condition::RULE,
    &uplift::rule::RULE,
    &wires::voltage::RULE,
    &wires::start::RULE,
    &wires::size::RULE,
    &wires::input::RULE,
    &wires::parallel::RULE,
    &wires::faces::RULE,
    &wires::leads::RULE,
    &wires::device::RULE,
    &wires::loose::RULE,
    &wires::plugs::RULE,
    &wires::arc_fault::RULE,
    &wires::ground_fault::RULE,
    &wires::overcurrent::RULE,
    &wires::conductors::RULE,
    &wires::drop::RULE,
    &wires::grounding::RULE,
    &wires::bonding::RULE,
    &wires::box_fill::RULE,
    &wires::raceway_fill::RULE,
    &wires::apart::RULE,
    &wires::inside::RULE,
    &wires::shutdown::RULE,
    &wires::box_place::RULE,
    &wires::connection::RULE,
    &wires::readings::RULE,
];
