//! Words about the house, the rule book, what was checked, the checklist and what an order costs.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Difference, LimitRow, LoadStandard, NOT_IN_BOOK, PathScheme};
use chalkcourse_plan::{GroupCost, StepCost};
use chalkcourse_rules::{Checked, Pathway, Rule, Severity};

// Commands
pub(crate) const RULE_BOOK_WINDOW: &str = "Rule book…";
pub(crate) const SAVE_RULE_BOOK: &str = "Save the rule book as…";
pub(crate) const COMPARE_WITH_FILE: &str = "Compare with a rule book of yours…";
pub(crate) const CHECKLIST: &str = "Crew checklist";
pub(crate) const PATHWAYS: &str = "Pathways for the fire service";

// The house and the place
pub(crate) const HOUSE: &str = "House and place";
pub(crate) const HOUSE_WHY: &str = "What rules need to know. What is not known is not assumed: the rules that need it say that they were not checked.";
pub(crate) const FIRE_PART: &str = "Fire access";
pub(crate) const SIZE_PART: &str = "The house";
pub(crate) const LOADS_PART: &str = "Wind and snow";
pub(crate) const HOLD_PART: &str = "Fasteners of the array";
pub(crate) const SPRINKLERS: &str = "Sprinklers throughout";
pub(crate) const SPRINKLERS_HELP: &str = "An automatic sprinkler system in the whole house. Yes or no; most older houses have none (from memory). It lets a larger \
     array keep the smaller room beside the ridge. Source: IRC R324.6.2.1; the plans or the fire official.";
pub(crate) const UNINHABITED: &str = "Detached, nobody lives in it";
pub(crate) const UNINHABITED_HELP: &str =
    "A shed or carport that stands by itself. Yes or no; a house is none. Source: IRC R324.6, exceptions.";
pub(crate) const STREETS: &str = "Streets lie to";
pub(crate) const STREETS_HELP: &str = "The ways in which a street or driveway lies: degrees clockwise from north, or winds, with commas between: S, 90. \
     Most houses have one or two (from memory). Source: IRC R324.6.1; the site plan.";
pub(crate) const NO_ROOF_WORK: &str = "No roof work";
pub(crate) const NO_ROOF_WORK_HELP: &str = "Who of the fire service found that nobody will work on this roof, and when; empty where nobody did, as on most \
     houses. Source: IRC R324.6, exceptions; keep the letter with the permit.";
pub(crate) const LISTING_READ: &str = "Listing read by";
pub(crate) const LISTING_READ_HELP: &str = "Who read the listing by which this roof-integrated array is exempt from fire access, and when; empty where nobody \
     did. Source: the product's listing, and the edition adopted where the house stands.";
pub(crate) const EAVE_HEIGHT: &str = "Eave height";
pub(crate) const EAVE_HEIGHT_HELP: &str = "From the ground to the eave, a length; 9 ft on one storey, 18 ft on two (from memory). Source: measured on site.";
pub(crate) const LEAST_WIDTH: &str = "Least width";
pub(crate) const LEAST_WIDTH_HELP: &str = "The least width of the house in plan, a length; 24 to 40 ft are usual (from memory). It sets how wide the strips of high wind \
     suction are. Source: measured on site; ASCE/SEI 7, chapter 30.";
pub(crate) const OVERHANG: &str = "Overhang";
pub(crate) const OVERHANG_HELP: &str = "How far the eave reaches beyond the outer wall, in plan; 12 to 24 in are usual (from memory). It sets how far up an ice barrier \
     goes. Source: measured on site; IRC R905.1.2.";
pub(crate) const WIND: &str = "Wind, mph";
pub(crate) const WIND_HELP: &str = "Basic wind speed for the house's risk category, miles an hour, 3-second gust; often 105 to 120 inland and more by the \
     coast (from memory). Source: the maps of ASCE/SEI 7, chapter 26, or the building department.";
pub(crate) const WIND_EXPOSURE: &str = "Exposure";
pub(crate) const WIND_EXPOSURE_HELP: &str = "By the ground upwind: B is town or wood, C open country, D flat by open water. Most houses in towns are B (from memory). Source: \
     ASCE/SEI 7, section 26.7.";
pub(crate) const NOT_KNOWN: &str = "not known";
pub(crate) const EXPOSURE_B: &str = "B: town, wood";
pub(crate) const EXPOSURE_C: &str = "C: open country";
pub(crate) const EXPOSURE_D: &str = "D: open water";
pub(crate) const ELEVATION: &str = "Elevation";
pub(crate) const ELEVATION_HELP: &str = "Of the ground above sea level, a length; left empty, the air counts as at sea level, the safe side. Source: a survey \
     map; ASCE/SEI 7, section 26.9.";
pub(crate) const SNOW: &str = "Snow, psf";
pub(crate) const SNOW_HELP: &str = "Ground snow load, pounds a square foot, as the book's edition gives it; 0 in the south, 20 to 50 where winters are \
     cold (from memory). Source: ASCE/SEI 7, chapter 7, or the building department.";
pub(crate) const FASTENER: &str = "One holds, lb";
pub(crate) const FASTENER_HELP: &str = "What one fastener of the array holds against uplift, pounds, allowable: tested or listed. There is no typical value \
     to lean on. Source: the maker's listing or test report for this deck.";
pub(crate) const FASTENER_DECK: &str = "Deck each, ft²";
pub(crate) const FASTENER_DECK_HELP: &str = "Deck under one such fastener, square feet; 2 to 6 are usual (from memory). Source: the maker's layout of fasteners.";
pub(crate) const DECK_PART: &str = "The deck";
pub(crate) const COVERING_PART: &str = "The covering";
pub(crate) const DECK_THICKNESS: &str = "Sheathing";
pub(crate) const DECK_THICKNESS_HELP: &str = "How thick the sheathing is, a length; 7/16 to 5/8 in are usual (from memory). Source: measured at an edge or a vent.";
pub(crate) const DECK_KIND: &str = "Made of";
pub(crate) const DECK_KIND_HELP: &str = "What the sheathing is made of; OSB or plywood on most houses since the 1970s (from memory). Source: seen from below.";
pub(crate) const RAFTERS: &str = "Rafters every";
pub(crate) const RAFTERS_HELP: &str = "From rafter to rafter, middle to middle; 16 or 24 in are usual (from memory). Source: measured from below.";
pub(crate) const DECK_CONDITION: &str = "Its state";
pub(crate) const DECK_CONDITION_HELP: &str = "What state the deck is in, once somebody looked at it from below or after tear-off. Source: common practice, no source.";
pub(crate) const DECK_SOUND: &str = "sound";
pub(crate) const DECK_REPAIR: &str = "needs repair";
pub(crate) const DRIP_EDGE: &str = "Drip edge";
pub(crate) const DRIP_EDGE_HELP: &str =
    "Metal along eaves and rakes that leads water off the deck. Source: IRC R905.2.8.5 (2018); seen on site.";
pub(crate) const DRIP_IN_PLACE: &str = "there, and stays";
pub(crate) const DRIP_WITH_JOB: &str = "goes on with this job";
pub(crate) const DRIP_ABSENT: &str = "none";
pub(crate) const COVERING_CLASS: &str = "Fire class";
pub(crate) const COVERING_CLASS_HELP: &str = "The class against fire of the covering beyond the array; most fibreglass shingles are class A (from memory). Source: \
     the package of the shingles; UL 790 or ASTM E108.";
pub(crate) const CLASS_BY_LAW: &str = "Law asks";
pub(crate) const CLASS_BY_LAW_HELP: &str = "The class that the law asks for where the house stands; \u{201c}no class\u{201d} where it asks for none. Source: IRC R902.1 \
     (2018); the building department.";
pub(crate) const LOT_LINE: &str = "Lot line";
pub(crate) const LOT_LINE_HELP: &str = "From the nearest edge of the roof deck to a lot line, in plan. Nearer than 3 ft a class against fire is asked. Source: \
     IRC R902.1 (2018); the site plan.";
pub(crate) const WIND_ZONES: &str = "Zones of wind suction";
pub(crate) const WIND_ZONES_HELP: &str = "Zones of components and cladding by ASCE/SEI 7, with the outward pressure in each: a screening, never a design. It \
     needs wind, exposure, eave height and least width under House and place.";

pub(crate) fn wind_zone(zone: &chalkcourse_rules::wind::DrawnZone) -> String {
    format!("zone {}: {:.1} psf", zone.zone.name(), zone.psf)
}
pub(crate) fn wind_zones_said(drawn: &chalkcourse_rules::wind::Drawn) -> String {
    let mut words = drawn.about.clone();
    for refused in &drawn.refused {
        words.push_str("\nNot drawn: ");
        words.push_str(refused);
    }
    words.push_str("\nA screening. Design by a licensed engineer.");
    words
}

pub(crate) const BAD_NUMBER: &str = "Type a number, such as 115.";

pub(crate) fn out_of_range(least: f64, most: f64) -> String {
    format!("Type a number from {least} to {most}.")
}

pub(crate) const BAD_LENGTH_RANGE: &str =
    "This length can't be right: it must be 0 or more and below 10 000 ft.";

// The rule book
pub(crate) const CANT_SAVE_BOOK: &str = "The rule book could not be saved";
pub(crate) const BOOK: &str = "Book";
pub(crate) const BOOK_DATE: &str = "Date";
pub(crate) const BASED_ON: &str = "Based on";
pub(crate) const LIMITS: &str = "Limits";
pub(crate) const RULES: &str = "Rules";
pub(crate) const COMPARE: &str = "Compare";
pub(crate) const SAVE_BOOK_SHORT: &str = "Save as…";
pub(crate) const LOAD_BOOK_SHORT: &str = "Load…";
pub(crate) const EDIT_BOOK: &str = "Show";
pub(crate) const EDIT_BOOK_HELP: &str =
    "Every limit of the book, with its source; change, save and compare it.";
pub(crate) const CHANGE_SOURCE: &str = "Change the source";
pub(crate) const SOURCE: &str = "Source";
pub(crate) const YES: &str = "yes";
pub(crate) const NO: &str = "no";
pub(crate) const COMPARE_WITH: &str = "Compare with";
pub(crate) const CHOOSE_BOOK: &str = "choose a book";
pub(crate) const FROM_FILE: &str = "From a file…";
pub(crate) const SAME_BOOKS: &str = "The two books say the same.";
pub(crate) const HERE: &str = "this book";
pub(crate) const THERE: &str = "the other";
pub(crate) const NOTHING_THERE: &str = "nothing";
pub(crate) const RULE_SWITCH_HELP: &str =
    "A rule that is off is told in every report of what was not checked.";
pub(crate) const BAD_SHARE: &str = "Type a share, such as 33 % or 0.33.";
pub(crate) const CHANGE_BOOK: &str = "choose another rule book";
pub(crate) const RENAME_BOOK: &str = "change the book's heading";

pub(crate) fn change_limit(row: &LimitRow) -> String {
    format!("change the rule book: {}", row.name.to_lowercase())
}
pub(crate) fn change_source(row: &LimitRow) -> String {
    format!("change the source of: {}", row.name.to_lowercase())
}
pub(crate) fn switch_rule(title: &str, on: bool) -> String {
    format!("switch {} the rule: {title}", if on { "on" } else { "off" })
}

pub(crate) fn scheme(scheme: PathScheme) -> &'static str {
    match scheme {
        PathScheme::WholeRoof => "two on the roof, one by each plane",
        PathScheme::EachSlope => "on each slope with modules",
    }
}
pub(crate) const SCHEMES: [PathScheme; 2] = [PathScheme::WholeRoof, PathScheme::EachSlope];
pub(crate) const STANDARDS: [LoadStandard; 2] = [LoadStandard::Asce716, LoadStandard::Asce722];

/// What is weak about a source; none where a text was read.
pub(crate) fn doubt(source: &str) -> Option<&'static str> {
    [
        (NOT_IN_BOOK, "No limit of its own: modules must stay on the face and off the hole."),
        ("from memory", "In doubt: quoted from memory. Confirm it against the text."),
        ("does not say", "In doubt: the code leaves it open. Ask the official."),
        ("must be held against", "In doubt: read in another edition. Confirm it."),
    ]
    .into_iter()
    .find_map(|(sign, words)| source.contains(sign).then_some(words))
}

pub(crate) const BOOK_PARTS: &str = "Parts of this book";
pub(crate) const BOOK_PARTS_WHY: &str = "A part that the book does not have is not checked, and every report says so. A part that is put in comes with the \
     numbers and sources of the program's own books: read them, and change what your place has amended.";
pub(crate) const PUT_IN_HELP: &str = "Puts this part in as the program's own books have it";
pub(crate) const TAKE_OUT_HELP: &str = "Takes this part out: what it asks is no longer checked";

pub(crate) fn put_in(part: &str) -> String {
    format!("Put in: {}", part.to_lowercase())
}
pub(crate) fn take_out(part: &str) -> String {
    format!("Take out: {}", part.to_lowercase())
}

pub(crate) fn differences(count: usize, other: &str) -> String {
    match count {
        1 => format!("1 field differs from “{other}”."),
        count => format!("{count} fields differ from “{other}”."),
    }
}

/// The path of a field in words: "Fire access: least width of a pathway, source".
pub(crate) fn field_words(difference: &Difference, rows: &[LimitRow]) -> String {
    let known = rows.iter().find_map(|row| {
        let rest = difference.field.strip_prefix(&row.field)?;
        let rest = match rest {
            "" | ".value" => "",
            ".source" => ", its source",
            _ => return None,
        };
        Some(format!("{}: {}{rest}", row.part, row.name.to_lowercase()))
    });
    known.unwrap_or_else(|| difference.field.replace('_', " ").replace('.', ": "))
}

// What was checked
pub(crate) const ONLY_HELD: &str = "Only what is held";
pub(crate) const ONLY_HELD_HELP: &str = "Only findings on the face, block or penetration that is selected";
pub(crate) const SHOW_ALL: &str = "Show all";

pub(crate) fn severity_group(severity: Severity, count: usize) -> String {
    match severity {
        Severity::Stop => format!("{count} to stop for"),
        Severity::Caution => format!("{count} to look at"),
        Severity::Note => format!("{count} to know"),
    }
}
pub(crate) fn hidden_findings(hidden: usize) -> String {
    match hidden {
        1 => "1 finding is hidden by the filter.".to_owned(),
        hidden => format!("{hidden} findings are hidden by the filter."),
    }
}
pub(crate) fn checked_heading(checked: &[Checked]) -> String {
    let on = checked.iter().filter(|rule| rule.on).count();
    format!("What was checked: {on} of {} rules", checked.len())
}
pub(crate) fn checked_against(checked: &[Checked]) -> String {
    let book = checked.first().map_or("", |rule| rule.book.as_str());
    format!("Against {book}. These rules are not all that can be wrong.")
}
pub(crate) fn not_checked(why: Option<&str>) -> String {
    format!("Not checked: {}", why.unwrap_or_default())
}

pub(crate) fn pathway(path: &Pathway, units: Units) -> String {
    let width = Length::from_metres(path.width).show(units);
    if path.straight { format!("pathway {width}") } else { format!("pathway {width}, winding") }
}

// The checklist
pub(crate) const COPY: &str = "Copy";
pub(crate) const COPIED: &str = "The checklist is on the clipboard.";
pub(crate) const CHECKLIST_WHY: &str = "From the rule book and the roof as drawn. It prints with the job; it does not replace the crew's own plan.";

// Costs
pub(crate) const COSTS: &str = "Cost by part of the order";
pub(crate) const COSTS_BY_GROUP: &str = "By group";
pub(crate) const COSTS_BY_STAGE: &str = "By stage of work";
pub(crate) const CHART_STAGES: &str = "Bar chart of the cost by stage of work";
pub(crate) const COSTS_BY_ROWS: &str = "As rows are added from the eave up";
pub(crate) const COSTS_WHY: &str =
    "Lines without a price are left out. Groups and stages are before tax and delivery; the total has all.";
pub(crate) const CHART_GROUPS: &str = "Bar chart of the cost by group";
pub(crate) const CHART_ROWS: &str = "Bar chart of the total by number of modules";

/// For who can't see the small drawing of a rule.
pub(crate) fn sketch_of(rule: &Rule) -> String {
    format!("Sketch: {}", rule.title)
}

pub(crate) fn group_cost(group: &GroupCost, currency: &str) -> String {
    format!("{}: {currency} {:.2}, {:.0} %", group.group.name(), group.cost, group.share * 100.0)
}
pub(crate) fn step_cost(step: &StepCost, currency: &str) -> String {
    format!("{}: {currency} {:.2}", modules(step.modules), step.cost)
}
pub(crate) fn modules(count: usize) -> String {
    if count == 1 { "1 module".to_owned() } else { format!("{count} modules") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn doubt_is_told_and_a_text_that_was_read_has_none() {
        assert_eq!(doubt("IRC R905.2.8.5 (2018)"), None);
        assert!(doubt("IRC R903.2.2 (from memory): a cricket").is_some_and(|d| d.contains("memory")));
        assert!(doubt("IRC R324.6.1 (2018). The code does not say whether in plan").is_some());
    }

    #[test]
    fn fields_of_a_comparison_are_named_as_in_the_list() {
        let book = chalkcourse_job::builtin_rule_book();
        let at = |field: &str| {
            let difference = Difference { field: field.to_owned(), one: None, other: None };
            field_words(&difference, &book.limits())
        };
        assert_eq!(at("fire_access.path_width.source"), "Fire access: least width of a pathway, its source");
        assert_eq!(at("setbacks.rake"), "Setbacks, on the slope: from rake");
        assert_eq!(at("based_on"), "based on");
    }
}
