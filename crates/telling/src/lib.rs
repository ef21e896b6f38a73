//! Findings in words: a finding is facts, and this crate turns them into sentences in the current language.
//!
//! - [`told`]: the sentence of a finding, what was measured and what is required
//! - [`title`], [`reason`]: what a rule checks, and why
//! - [`source`], [`why_not`]: the source of a rule, and why a rule is not checked
//! - [`waiver_words`]: the state of a finding's waiver
//! - [`order`]: an order, its lines and its delivery
//! - [`report`], [`checked`], [`checklist`]: reports for JSON and paper
//!
//! One file per group of rules, as in crate `rules`. Blocks, faces and penetrations are named as in the job, or by number.

mod array;
mod checklist;
mod electrical;
mod fire;
mod names;
pub mod order;
mod report;
mod roof;
mod roofing;
mod source;
mod waiver;
mod why_not;
pub mod wind;
mod wires;

pub use checklist::checklist;
pub use electrical::{connected, connection_way, gauge, stretch};
pub use names::Names;
pub use report::{CheckedReport, FindingReport, checked, report};
pub use source::source;
pub use waiver::{lapse_words, waived_words, waiver_words};
pub use why_not::why_not;
pub use wires::limited_by;

use chalkcourse_job::Resolved;
use chalkcourse_rules::{Facts, Finding, Rule};
use chalkcourse_words::Say;

/// A finding in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// The sentence, with what was measured and what is required.
    pub message: String,
    /// What was measured, with its unit.
    pub measured: String,
    /// What is required, with its unit.
    pub required: String,
}

/// The fixed texts of a rule.
struct RuleWords {
    code: &'static str,
    title: Say,
    reason: Say,
    /// Why the geometry requires it, for a rule that follows from geometry alone.
    geometry: Option<Say>,
}

fn groups() -> [&'static [RuleWords]; 7] {
    [roof::RULES, array::RULES, fire::RULES, roofing::RULES, wind::RULES, wires::RULES, electrical::RULES]
}

fn words(code: &str) -> Option<&'static RuleWords> {
    groups().into_iter().flatten().find(|words| words.code == code)
}

/// What a rule checks, in a few words; for the rule of a limit without a title of its own, its code.
pub fn title(rule: &Rule) -> &'static str {
    words(rule.code).map_or(rule.code, |words| words.title.now())
}

/// Why the rule exists.
pub fn reason(rule: &Rule) -> &'static str {
    words(rule.code).map_or("", |words| words.reason.now())
}

/// The sentence of a finding.
pub fn message(job: &Resolved, finding: &Finding) -> String {
    told(job, finding).message
}

/// A finding of a job in words.
pub fn told(job: &Resolved, finding: &Finding) -> Told {
    let names = Names { job };
    let f = finding;
    match &f.facts {
        Facts::NotRaised { why } => roof::not_raised(&names, f, why),
        Facts::Hidden => roof::hidden(&names, f),
        Facts::NoCricket => roof::no_cricket(&names, f),
        Facts::Outline { fault, ring, corner } => roof::outline(&names, f, *fault, *ring, *corner),
        Facts::HeightGap { lower, upper, lift } => {
            roof::height_gap(&names, f, *lower, *upper, lift.is_some())
        }
        Facts::NearMiss { face, other } => roof::near_miss(&names, f, *face, *other),
        Facts::CountedTwice { face, other } => roof::counted_twice(&names, f, *face, *other),
        Facts::NoHome => roof::no_home(&names, f),
        Facts::OnePlane { kind } => roof::one_plane(&names, f, *kind),
        Facts::LostSides { overrules, taped } => roof::lost_sides(&names, f, *overrules, *taped),
        Facts::NoDeck(state) => array::no_deck(&names, f, *state),
        Facts::Pitch => array::pitch(&names, f),
        Facts::OffFace { edge, modules, of } => array::off_face(&names, f, *edge, *modules, *of),
        Facts::Overlap { block, other } => array::overlap(&names, f, *block, *other),
        Facts::OverlapWithin { modules } => array::overlap_within(&names, f, *modules),
        Facts::TooNear { against } => array::too_near(&names, f, *against),
        Facts::Setback { kind } => array::setback(&names, f, *kind),
        Facts::Clearance { side, own } => array::clearance(&names, f, *side, *own),
        Facts::ValleyHip { kind, flashing } => array::valley_hip(&names, f, *kind, *flashing),
        Facts::RidgeCourse { courses, exposure } => array::ridge_course(&names, f, *courses, *exposure),
        Facts::RailAboveEave => array::rail_above_eave(&names, f),
        Facts::RailOffDeck => array::rail_off_deck(&names, f),
        Facts::RailTooLong => array::rail_too_long(&names, f),
        Facts::DeckTooThin => array::deck_too_thin(&names, f),
        Facts::DeckOfKind => array::deck_of_kind(f),
        Facts::DeckSpan => array::deck_span(&names, f),
        Facts::DeckUnknown(unknown) => array::deck_unknown(unknown),
        Facts::Hook { modules } => array::hook(&names, f, *modules),
        Facts::Joints { aside } => array::joints(&names, f, *aside),
        Facts::RailAmongCourses { exposure } => array::rail_among_courses(&names, f, *exposure),
        Facts::Reveal => array::reveal(&names, f),
        Facts::BetweenBlocks { block, other } => array::between_blocks(&names, f, *block, *other),
        Facts::FireRidge { share } => fire::ridge(&names, f, *share),
        Facts::FirePaths { opening, room_for } => fire::paths(&names, f, opening.is_some(), *room_for),
        Facts::NoRidge => fire::no_ridge(&names, f),
        Facts::FirePlanePath { opening } => fire::plane_path(&names, f, opening.is_some()),
        Facts::NoRidgeBeside => fire::no_ridge_beside(&names, f),
        Facts::FireStreet => fire::street(&names),
        Facts::FireHipValley { kind } => fire::hip_valley(&names, f, *kind),
        Facts::FireEscape => fire::escape(&names, f),
        Facts::ShingleSlope => roofing::slope(&names, f),
        Facts::Underlayment => roofing::underlayment(&names, f),
        Facts::Cricket => roofing::cricket(&names, f),
        Facts::DripEdge => roofing::drip_edge(&names),
        Facts::FireClass { of, why } => roofing::fire_class(&names, f, *of, *why),
        Facts::DeckCondition => roofing::deck_condition(),
        Facts::Wind { zone, figure, psf } => wind::lifted(&names, f, *zone, *figure, *psf),
        Facts::WindRefused(refused) => wind::not_screened(&names, f, *refused),
        Facts::StringVoltage { modules, by } => wires::string_voltage(&names, f, *modules, *by),
        Facts::StringStart { modules } => wires::string_start(&names, f, *modules),
        Facts::CircuitSize { by } => wires::circuit_size(&names, f, *by),
        Facts::NoInput => wires::no_input(&names, f),
        Facts::InputStrings => wires::input_strings(&names, f),
        Facts::InputCurrent => wires::input_current(&names, f),
        Facts::ParallelStrings { other, faces } => wires::parallel(&names, f, *other, *faces),
        Facts::StringFaces => wires::string_faces(&names, f),
        Facts::LeadsShort { links } => wires::leads_short(&names, f, *links),
        Facts::DeviceInput => wires::device_input(f),
        Facts::NotWired => wires::not_wired(&names, f),
        Facts::CircuitGone => wires::circuit_gone(&names, f),
        Facts::ArcFault => electrical::arc_fault(&names, f),
        Facts::GroundFault => electrical::ground_fault(&names, f),
        Facts::NoFuse => electrical::no_fuse(&names, f),
        Facts::FuseSmall => electrical::fuse_small(&names, f),
        Facts::FuseLarge => electrical::fuse_large(&names, f),
        Facts::ConductorThin { part, gauge, least, how } => {
            electrical::conductor_thin(&names, f, (*part, *gauge, *least), *how)
        }
        Facts::VoltageDrop { volts, whole } => electrical::voltage_drop(&names, f, *volts, *whole),
        Facts::BoxFill { junction, taken, holds } => electrical::box_fill(&names, *junction, *taken, *holds),
        Facts::RacewayFill { junction, conductors } => {
            electrical::raceway_fill(&names, f, *junction, *conductors)
        }
        Facts::GroundThin { gauge, least, device } => {
            electrical::ground_thin(&names, f, (*gauge, *least), *device)
        }
        Facts::GroundBare { gauge } => electrical::ground_bare(*gauge),
        Facts::Connection { way, volts } => electrical::connection(f, *way, *volts),
        Facts::NotApart { junction } => electrical::not_apart(&names, *junction),
        Facts::NoModuleShutdown => electrical::no_module_shutdown(),
        Facts::ShutdownBoundary { junction } => electrical::shutdown_boundary(&names, f, *junction),
        Facts::StandbyVolts => electrical::standby_volts(&names, f),
        Facts::InsideNotMetal { junction } => electrical::inside_not_metal(&names, *junction),
        Facts::InsideFree { junction } => electrical::inside_free(&names, *junction),
        Facts::BoxNear { junction, against } => electrical::box_near(&names, f, *junction, *against),
        Facts::BoxNowhere { junction } => electrical::box_nowhere(&names, *junction),
        Facts::BoxUnderModules { junction } => electrical::box_under_modules(&names, f, *junction),
        Facts::Reading { celsius, what } => electrical::reading(&names, f, *celsius, *what),
        Facts::NotListed => electrical::not_listed(),
        Facts::PathOpens => electrical::path_opens(),
        Facts::PlugsDiffer { plug, other } => electrical::plugs_differ(&names, f, plug, other),
        Facts::WaiverIdle { waiver, missing } => waiver::idle(&names, waiver, *missing),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_rules::RULES;

    #[test]
    fn every_rule_has_its_texts_and_no_text_is_unused() {
        for rule in RULES.iter() {
            let words = words(rule.code).unwrap_or_else(|| panic!("{}", rule.code));
            assert!(!words.title.now().is_empty() && !words.reason.now().is_empty());
        }
        assert_eq!(groups().into_iter().flatten().count(), RULES.len());
    }
}
