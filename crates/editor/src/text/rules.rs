//! Words about the building, the rule book, what was checked, the checklist and the cost of an order.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Difference, LimitRow, LoadStandard, PathScheme, Standing};
use chalkcourse_plan::{GroupCost, StepCost};
use chalkcourse_rules::{Pathway, Rule, Severity};
use chalkcourse_telling::CheckedReport;
use chalkcourse_telling::order::show_sum;
use chalkcourse_words::{self as words, Said, Say, later};

// Commands
pub(crate) const RULE_BOOK_WINDOW: Say = words::rules::RULE_BOOK;
pub(crate) const SAVE_RULE_BOOK: Say = words::rules::SAVE_THE_RULE_BOOK_AS;
pub(crate) const COMPARE_WITH_FILE: Say = words::rules::COMPARE_WITH_A_RULE_BOOK;
pub(crate) const CHECKLIST: Say = words::rules::CREW_CHECKLIST;
pub(crate) const PATHWAYS: Say = words::rules::PATHWAYS_FOR_THE_FIRE_SERVICE;

// Building and site
pub(crate) const HOUSE: Say = words::rules::HOUSE_AND_PLACE;
pub(crate) const HOUSE_WHY: Say = words::rules::WHAT_RULES_NEED_TO_KNOW;
pub(crate) const FIRE_PART: Say = words::common::FIRE_ACCESS;
pub(crate) const SIZE_PART: Say = words::rules::THE_HOUSE;
pub(crate) const LOADS_PART: Say = words::common::WIND_AND_SNOW;
pub(crate) const HOLD_PART: Say = words::rules::FASTENERS_OF_THE_ARRAY;
pub(crate) const SPRINKLERS: Say = words::rules::SPRINKLERS_THROUGHOUT;
pub(crate) const SPRINKLERS_HELP: Say = words::rules::AN_AUTOMATIC_SPRINKLER_SYSTEM_IN;
pub(crate) const UNINHABITED: Say = words::rules::DETACHED_NOBODY_LIVES_IN_IT;
pub(crate) const UNINHABITED_HELP: Say = words::rules::A_SHED_OR_CARPORT_THAT;
pub(crate) const STREETS: Say = words::rules::STREETS_LIE_TO;
pub(crate) const STREETS_HELP: Say = words::rules::THE_WAYS_IN_WHICH_A;
pub(crate) const NO_ROOF_WORK: Say = words::rules::NO_ROOF_WORK;
pub(crate) const NO_ROOF_WORK_HELP: Say = words::rules::WHO_OF_THE_FIRE_SERVICE;
pub(crate) const LISTING_READ: Say = words::rules::LISTING_READ_BY;
pub(crate) const LISTING_READ_HELP: Say = words::rules::WHO_READ_THE_LISTING_BY;
pub(crate) const EAVE_HEIGHT: Say = words::common::EAVE_HEIGHT;
pub(crate) const EAVE_HEIGHT_HELP: Say = words::rules::FROM_THE_GROUND_TO_THE;
pub(crate) const LEAST_WIDTH: Say = words::rules::LEAST_WIDTH;
pub(crate) const LEAST_WIDTH_HELP: Say = words::rules::THE_LEAST_WIDTH_OF_THE;
pub(crate) const OVERHANG: Say = words::common::OVERHANG;
pub(crate) const OVERHANG_HELP: Say = words::rules::HOW_FAR_THE_EAVE_REACHES;
pub(crate) const WIND: Say = words::rules::WIND_MPH;
pub(crate) const WIND_HELP: Say = words::rules::BASIC_WIND_SPEED_FOR_THE;
pub(crate) const WIND_EXPOSURE: Say = words::common::EXPOSURE_2;
pub(crate) const WIND_EXPOSURE_HELP: Say = words::rules::BY_THE_GROUND_UPWIND_B;
pub(crate) const NOT_KNOWN: Say = words::common::NOT_KNOWN;
pub(crate) const EXPOSURE_B: Say = words::rules::B_TOWN_WOOD;
pub(crate) const EXPOSURE_C: Say = words::rules::C_OPEN_COUNTRY;
pub(crate) const EXPOSURE_D: Say = words::rules::D_OPEN_WATER;
pub(crate) const ELEVATION: Say = words::rules::ELEVATION;
pub(crate) const ELEVATION_HELP: Say = words::rules::OF_THE_GROUND_ABOVE_SEA;
pub(crate) const SNOW: Say = words::rules::SNOW_PSF;
pub(crate) const SNOW_HELP: Say = words::rules::GROUND_SNOW_LOAD_POUNDS_A;
pub(crate) const FASTENER: Say = words::rules::ONE_HOLDS_LB;
pub(crate) const FASTENER_HELP: Say = words::rules::WHAT_ONE_FASTENER_OF_THE;
pub(crate) const FASTENER_DECK: Say = words::rules::DECK_EACH_FT;
pub(crate) const FASTENER_DECK_HELP: Say = words::rules::DECK_UNDER_ONE_SUCH_FASTENER;
pub(crate) const DECK_PART: Say = words::rules::THE_DECK;
pub(crate) const COVERING_PART: Say = words::rules::THE_COVERING;
pub(crate) const DECK_THICKNESS: Say = words::rules::SHEATHING;
pub(crate) const DECK_THICKNESS_HELP: Say = words::rules::HOW_THICK_THE_SHEATHING_IS;
pub(crate) const DECK_KIND: Say = words::rules::MADE_OF;
pub(crate) const DECK_KIND_HELP: Say = words::rules::WHAT_THE_SHEATHING_IS_MADE;
pub(crate) const RAFTERS: Say = words::rules::RAFTERS_EVERY;
pub(crate) const RAFTERS_HELP: Say = words::rules::FROM_RAFTER_TO_RAFTER_MIDDLE;
pub(crate) const DECK_CONDITION: Say = words::rules::ITS_STATE;
pub(crate) const DECK_CONDITION_HELP: Say = words::rules::WHAT_STATE_THE_DECK_IS;
pub(crate) const DECK_SOUND: Say = words::rules::SOUND;
pub(crate) const DECK_REPAIR: Say = words::rules::NEEDS_REPAIR;
pub(crate) const DRIP_EDGE: Say = words::common::DRIP_EDGE;
pub(crate) const DRIP_EDGE_HELP: Say = words::rules::METAL_ALONG_EAVES_AND_RAKES;
pub(crate) const DRIP_IN_PLACE: Say = words::rules::THERE_AND_STAYS;
pub(crate) const DRIP_WITH_JOB: Say = words::rules::GOES_ON_WITH_THIS_JOB;
pub(crate) const DRIP_ABSENT: Say = words::common::NONE_2;
pub(crate) const COVERING_CLASS: Say = words::common::FIRE_CLASS;
pub(crate) const COVERING_CLASS_HELP: Say = words::rules::THE_CLASS_AGAINST_FIRE_OF;
pub(crate) const CLASS_BY_LAW: Say = words::rules::LAW_ASKS;
pub(crate) const CLASS_BY_LAW_HELP: Say = words::rules::THE_CLASS_THAT_THE_LAW;
pub(crate) const LOT_LINE: Say = words::rules::LOT_LINE;
pub(crate) const LOT_LINE_HELP: Say = words::rules::FROM_THE_NEAREST_EDGE_OF;
pub(crate) const WIND_ZONES: Say = words::rules::ZONES_OF_WIND_SUCTION;
pub(crate) const WIND_ZONES_HELP: Say = words::rules::ZONES_OF_COMPONENTS_AND_CLADDING;

pub(crate) fn wind_zone(zone: &chalkcourse_rules::wind::DrawnZone) -> String {
    words::rules::zone_psf(&zone.zone.name(), &format_args!("{:.1}", zone.psf))
}
pub(crate) fn wind_zones_said(drawn: &chalkcourse_rules::wind::Drawn) -> String {
    let mut words = chalkcourse_telling::wind::about(drawn);
    for refused in &chalkcourse_telling::wind::not_drawn(drawn) {
        words.push_str(words::rules::NOT_DRAWN.now());
        words.push_str(refused);
    }
    words.push_str(words::rules::A_SCREENING_DESIGN_BY_A.now());
    words
}

pub(crate) const BAD_NUMBER: Say = words::rules::TYPE_A_NUMBER_SUCH_AS;

pub(crate) fn out_of_range(least: f64, most: f64) -> String {
    words::rules::type_a_number_from_to(&least, &most)
}

pub(crate) const BAD_LENGTH_RANGE: Say = words::rules::THIS_LENGTH_CANT_BE_RIGHT;

// The rule book
pub(crate) const CANT_SAVE_BOOK: Say = words::rules::THE_RULE_BOOK_COULD_NOT;
pub(crate) const BOOK: Say = words::rules::BOOK;
pub(crate) const BOOK_DATE: Say = words::common::DATE;
pub(crate) const BASED_ON: Say = words::rules::BASED_ON;
pub(crate) const LIMITS: Say = words::rules::LIMITS;
pub(crate) const RULES: Say = words::rules::RULES;
pub(crate) const COMPARE: Say = words::common::COMPARE;
pub(crate) const SAVE_BOOK_SHORT: Say = words::common::SAVE_AS;
pub(crate) const LOAD_BOOK_SHORT: Say = words::common::LOAD;
pub(crate) const EDIT_BOOK: Say = words::rules::SHOW;
pub(crate) const EDIT_BOOK_HELP: Say = words::rules::EVERY_LIMIT_OF_THE_BOOK;
pub(crate) const CHANGE_SOURCE: Say = words::rules::CHANGE_THE_SOURCE;
pub(crate) const SOURCE: Say = words::common::SOURCE;
pub(crate) const YES: Say = words::common::YES;
pub(crate) const NO: Say = words::rules::NO;
pub(crate) const COMPARE_WITH: Say = words::rules::COMPARE_WITH;
pub(crate) const CHOOSE_BOOK: Say = words::rules::CHOOSE_A_BOOK;
pub(crate) const FROM_FILE: Say = words::rules::FROM_A_FILE;
pub(crate) const SAME_BOOKS: Say = words::rules::THE_TWO_BOOKS_SAY_THE;
pub(crate) const HERE: Say = words::rules::THIS_BOOK;
pub(crate) const THERE: Say = words::rules::THE_OTHER;
pub(crate) const NOTHING_THERE: Say = words::common::NOTHING;
pub(crate) const RULE_SWITCH_HELP: Say = words::rules::A_RULE_THAT_IS_OFF;
pub(crate) const BAD_SHARE: Say = words::rules::TYPE_A_SHARE_SUCH_AS;
pub(crate) const CHANGE_BOOK: Say = words::rules::CHOOSE_ANOTHER_RULE_BOOK;
pub(crate) const RENAME_BOOK: Say = words::rules::CHANGE_THE_BOOKS_HEADING;

pub(crate) fn change_limit(row: &LimitRow) -> String {
    words::rules::change_the_rule_book(&row.name.now().to_lowercase())
}
pub(crate) fn change_source(row: &LimitRow) -> String {
    words::rules::change_the_source_of(&row.name.now().to_lowercase())
}
pub(crate) fn switch_rule(title: &str, on: bool) -> String {
    words::rules::switch_the_rule(&if on { words::rules::ON.now() } else { words::rules::OFF.now() }, &title)
}

pub(crate) fn scheme(scheme: PathScheme) -> &'static str {
    match scheme {
        PathScheme::WholeRoof => words::rules::TWO_ON_THE_ROOF_ONE.now(),
        PathScheme::EachSlope => words::rules::ON_EACH_SLOPE_WITH_MODULES.now(),
    }
}
pub(crate) const SCHEMES: [PathScheme; 2] = [PathScheme::WholeRoof, PathScheme::EachSlope];
pub(crate) const STANDARDS: [LoadStandard; 2] = [LoadStandard::Asce716, LoadStandard::Asce722];

/// The weakness of a source, for whoever builds by it.
pub(crate) fn doubt(standing: Option<Standing>) -> Option<&'static str> {
    match standing? {
        Standing::FromMemory => Some(words::rules::IN_DOUBT_QUOTED_FROM_MEMORY.now()),
        Standing::LeftOpen => Some(words::rules::IN_DOUBT_THE_CODE_LEAVES.now()),
        Standing::Confirmed | Standing::Maker | Standing::Office | Standing::CommonPractice => None,
    }
}

/// The reliability of a source, in a list of choices.
pub(crate) fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Confirmed => words::rules::READ_IN_THE_TEXT.now(),
        Standing::LeftOpen => words::rules::THE_TEXT_LEAVES_IT_OPEN.now(),
        Standing::FromMemory => words::rules::FROM_MEMORY.now(),
        Standing::Maker => words::rules::THE_MAKERS_WORD.now(),
        Standing::Office => words::rules::THE_OFFICES_OWN.now(),
        Standing::CommonPractice => words::rules::COMMON_PRACTICE.now(),
    }
}

pub(crate) const STANDING: Say = words::rules::HOW_FAR_IT_CAN_BE;

/// For a limit that the book does not have.
pub(crate) const NOT_IN_BOOK: Say = words::rules::NONE_IN_THIS_BOOK;
pub(crate) const NO_LIMIT: Say = words::rules::NO_LIMIT_OF_ITS_OWN;

pub(crate) const BOOK_PARTS: Say = words::rules::PARTS_OF_THIS_BOOK;
pub(crate) const BOOK_PARTS_WHY: Say = words::rules::A_PART_THAT_THE_BOOK;
pub(crate) const PUT_IN_HELP: Say = words::rules::PUTS_THIS_PART_IN_AS;
pub(crate) const TAKE_OUT_HELP: Say = words::rules::TAKES_THIS_PART_OUT_WHAT;

pub(crate) fn put_in(part: Say) -> Said {
    later::rules::put_in(&Said::from(part).in_small_letters())
}
pub(crate) fn take_out(part: Say) -> Said {
    later::rules::take_out(&Said::from(part).in_small_letters())
}

pub(crate) fn differences(count: usize, other: &str) -> String {
    words::rules::fields_differ_from(count, &other)
}

/// The path of a field in words: "Fire access: least width of a pathway, source".
pub(crate) fn field_words(difference: &Difference, rows: &[LimitRow]) -> String {
    let known = rows.iter().find_map(|row| {
        let rest = difference.field.strip_prefix(&row.field)?;
        let rest = match rest {
            "" | ".value" => "",
            ".source" | ".source.text" => words::rules::ITS_SOURCE.now(),
            ".source.standing" => words::rules::HOW_FAR_ITS_SOURCE_CAN.now(),
            _ => return None,
        };
        Some(format!("{}: {}{rest}", row.part, row.name.now().to_lowercase()))
    });
    known.unwrap_or_else(|| difference.field.replace('_', " ").replace('.', ": "))
}

// What was checked
pub(crate) const ONLY_HELD: Say = words::rules::ONLY_WHAT_IS_HELD;
pub(crate) const ONLY_HELD_HELP: Say = words::rules::ONLY_FINDINGS_ON_THE_FACE;
pub(crate) const SHOW_ALL: Say = words::rules::SHOW_ALL;

pub(crate) fn severity_group(severity: Severity, count: usize) -> String {
    match severity {
        Severity::Stop => words::rules::to_stop_for(&count),
        Severity::Caution => words::rules::to_look_at(&count),
        Severity::Note => words::rules::to_know(&count),
    }
}
pub(crate) fn hidden_findings(hidden: usize) -> String {
    words::rules::findings_are_hidden_by_the(hidden)
}
pub(crate) fn checked_heading(checked: &[CheckedReport]) -> String {
    let on = checked.iter().filter(|rule| rule.on).count();
    words::rules::what_was_checked_of_rules(&on, &checked.len())
}
pub(crate) fn checked_against(checked: &[CheckedReport]) -> String {
    let book = checked.first().map_or("", |rule| rule.book.as_str());
    words::rules::against_these_rules_are_not(&book)
}
pub(crate) fn not_checked(why: Option<&str>) -> String {
    words::rules::not_checked(&why.unwrap_or_default())
}

pub(crate) fn pathway(path: &Pathway, units: Units) -> String {
    let width = Length::from_metres(path.width).show(units);
    if path.straight { words::rules::pathway(&width) } else { words::rules::pathway_winding(&width) }
}

// The checklist
pub(crate) const COPY: Say = words::common::COPY;
pub(crate) const COPIED: Say = words::rules::THE_CHECKLIST_IS_ON_THE;
pub(crate) const CHECKLIST_WHY: Say = words::rules::FROM_THE_RULE_BOOK_AND;

// Costs
pub(crate) const COSTS: Say = words::rules::COST_BY_PART_OF_THE;
pub(crate) const COSTS_BY_GROUP: Say = words::common::BY_GROUP;
pub(crate) const COSTS_BY_STAGE: Say = words::common::BY_STAGE_OF_WORK;
pub(crate) const CHART_STAGES: Say = words::rules::BAR_CHART_OF_THE_COST;
pub(crate) const COSTS_BY_ROWS: Say = words::rules::AS_ROWS_ARE_ADDED_FROM;
pub(crate) const COSTS_WHY: Say = words::rules::LINES_WITHOUT_A_PRICE_ARE;
pub(crate) const CHART_GROUPS: Say = words::rules::BAR_CHART_OF_THE_COST_BY;
pub(crate) const CHART_ROWS: Say = words::rules::BAR_CHART_OF_THE_TOTAL;

/// The accessible description of the sketch of a rule.
pub(crate) fn sketch_of(rule: &Rule) -> String {
    words::rules::sketch(&chalkcourse_telling::title(rule))
}

pub(crate) fn group_cost(group: &GroupCost, currency: &str) -> String {
    format!("{}: {}, {:.0} %", group.group.name(), show_sum(group.cost, currency), group.share * 100.0)
}
pub(crate) fn step_cost(step: &StepCost, currency: &str) -> String {
    format!("{}: {}", modules(step.modules), show_sum(step.cost, currency))
}
pub(crate) use chalkcourse_words::modules;

/// "As the house is drawn: 10' 6""
pub(crate) fn known_as_drawn(length: &str) -> String {
    words::rules::as_the_house_is_drawn(&length)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weak_sources_are_marked_and_confirmed_ones_are_not() {
        assert_eq!(doubt(Some(Standing::Confirmed)), None);
        assert_eq!(doubt(None), None);
        assert!(doubt(Some(Standing::FromMemory)).is_some_and(|d| d.contains("memory")));
        assert!(doubt(Some(Standing::LeftOpen)).is_some());
    }

    #[test]
    fn fields_of_a_comparison_are_named_as_in_the_list() {
        let book = chalkcourse_job::builtin_rule_book();
        let at = |field: &str| {
            let difference = Difference { field: field.to_owned(), one: None, other: None };
            field_words(&difference, &book.limits())
        };
        assert_eq!(
            at("fire_access.path_width.source.text"),
            "Fire access: least width of a pathway, its source"
        );
        assert_eq!(at("setbacks.rake"), "Setbacks, on the slope: from rake");
        assert_eq!(at("based_on"), "based on");
    }
}
