use chalkcourse_job::Resolved;
use chalkcourse_rules::{Exemption, KitGap, Section, Unknown, WhyNot};
use chalkcourse_words as words;

/// Why a rule is not checked for a job.
pub fn why_not(job: &Resolved, why: &WhyNot) -> String {
    let site = &job.site.building;
    let words = match why {
        WhyNot::Off => {
            return words::rules::switched_off_in_the_rule(&job.rule_book.name);
        }
        WhyNot::Exempt(Exemption::NoRoofOperations) => {
            return words::rules::exempt_the_fire_official_found(&site.no_roof_operations.trim());
        }
        WhyNot::Exempt(Exemption::Integrated) => {
            return words::rules::exempt_roof_integrated_array_its(&site.integrated_listing_read_by.trim());
        }
        WhyNot::NotKnown(unknown) => return not_known(unknown),
        WhyNot::KitSilent(gaps) => {
            let names: Vec<&str> = gaps.iter().map(|gap| gap_name(*gap)).collect();
            return words::wires::kit_silent(&names.join(", "));
        }
        WhyNot::NoBox => words::wires::NO_BOX.now(),
        WhyNot::NoRaceway => words::wires::NO_RACEWAY.now(),
        WhyNot::NoReading => words::wires::NO_READING.now(),
        WhyNot::Exempt(Exemption::Detached) => words::rules::EXEMPT_A_DETACHED_BUILDING_IN.now(),
        WhyNot::NotInBook(section) => not_in_book(*section),
        WhyNot::NotInEdition => words::rules::THIS_EDITION_DOES_NOT_ASK.now(),
        WhyNot::NoNumberInEdition => words::rules::THIS_EDITION_HAS_NO_NUMBER.now(),
        WhyNot::EachSlopeInstead => words::rules::THIS_EDITION_ASKS_FOR_PATHWAYS.now(),
        WhyNot::LeftOut => words::rules::THIS_BOOK_DOES_NOT_ASK.now(),
        WhyNot::KitWithoutRail => words::rules::THE_KIT_DOES_NOT_SAY.now(),
        WhyNot::KitWithoutDeck => words::rules::THE_KIT_DOES_NOT_SAY_WHAT.now(),
        WhyNot::NoRoomBetween => words::rules::THE_KIT_ASKS_NO_ROOM.now(),
        WhyNot::LaidAnyhow => words::rules::THE_KIT_LETS_ROWS_SLIDE.now(),
        WhyNot::KitWithoutWiring => words::wires::KIT_WITHOUT_WIRING.now(),
        WhyNot::NotWired => words::wires::NO_CIRCUIT_YET.now(),
        WhyNot::WithDevices => words::wires::WITH_DEVICES.now(),
        WhyNot::WithoutDevices => words::wires::WITHOUT_DEVICES.now(),
        WhyNot::BranchesInstead => words::wires::BRANCHES_INSTEAD.now(),
        WhyNot::NoEscapeWindow => words::rules::NO_ESCAPE_WINDOW_IS_MARKED.now(),
    };
    words.to_owned()
}

/// Something that a kit does not say of its wires, as an item of a list.
fn gap_name(gap: KitGap) -> &'static str {
    match gap {
        KitGap::LeadGauge => words::wires::GAP_LEAD_GAUGE.now(),
        KitGap::HomeRun => words::wires::GAP_HOME_RUN.now(),
        KitGap::RunDown => words::wires::GAP_RUN_DOWN.now(),
        KitGap::Raceway => words::wires::GAP_RACEWAY.now(),
        KitGap::OwnArea => words::wires::GAP_OWN_AREA.now(),
        KitGap::BoxVolume => words::wires::GAP_BOX_VOLUME.now(),
        KitGap::BoxFlashing => words::wires::GAP_BOX_FLASHING.now(),
        KitGap::Grounding => words::wires::GAP_GROUNDING.now(),
        KitGap::Bonding => words::wires::GAP_BONDING.now(),
        KitGap::ArcFault => words::wires::GAP_ARC_FAULT.now(),
        KitGap::GroundFault => words::wires::GAP_GROUND_FAULT.now(),
    }
}

fn not_in_book(section: Section) -> &'static str {
    match section {
        Section::Setbacks => words::rules::THE_RULE_BOOK_HAS_NO.now(),
        Section::FireAccess => words::rules::THE_RULE_BOOK_DOES_NOT.now(),
        Section::Roofing => words::rules::THE_RULE_BOOK_DOES_NOT_GO.now(),
        Section::ValleysAndHips => words::rules::THE_RULE_BOOK_HAS_NO_SUCH.now(),
        Section::Wind => words::rules::THE_RULE_BOOK_DOES_NOT_GO_INTO.now(),
    }
}

pub(crate) fn not_known(unknown: &[Unknown]) -> String {
    let whole = match unknown {
        [Unknown::DeckCondition] => words::rules::THE_JOB_DOES_NOT_SAY.now(),
        [Unknown::DripEdge] => words::rules::THE_JOB_DOES_NOT_SAY_WHETHER.now(),
        [Unknown::FireClass] => words::rules::THE_JOB_DOES_NOT_SAY_WHICH.now(),
        [Unknown::Street] => words::rules::THE_JOB_DOES_NOT_SAY_ON.now(),
        list => {
            let names: Vec<&str> = list.iter().map(|it| unknown_name(*it)).collect();
            return words::rules::the_job_does_not_say_2(&names.join(", "));
        }
    };
    whole.to_owned()
}

/// Something a job leaves unstated, as an item of a list.
pub(crate) fn unknown_name(unknown: Unknown) -> &'static str {
    match unknown {
        Unknown::SheathingThickness => words::rules::HOW_THICK_THE_SHEATHING_IS_2.now(),
        Unknown::SheathingKind => words::rules::WHAT_IT_IS_MADE_OF.now(),
        Unknown::RafterSpacing => words::rules::HOW_FAR_APART_THE_RAFTERS.now(),
        Unknown::DeckCondition => words::rules::WHAT_STATE_THE_DECK_IS_IN.now(),
        Unknown::DripEdge => words::rules::WHETHER_THERE_IS_A_DRIP.now(),
        Unknown::FireClass => words::rules::THE_CLASS_AGAINST_FIRE.now(),
        Unknown::Street => words::rules::WHERE_THE_STREET_LIES.now(),
        Unknown::WindSpeed => words::rules::BASIC_WIND_SPEED.now(),
        Unknown::Exposure => words::common::EXPOSURE.now(),
        Unknown::EaveHeight => words::rules::EAVE_HEIGHT.now(),
        Unknown::LeastWidth => words::rules::LEAST_WIDTH_OF_THE_BUILDING.now(),
        Unknown::FastenerHold => words::rules::WHAT_A_FASTENER_HOLDS.now(),
        Unknown::Inverter => words::wires::UNKNOWN_INVERTER.now(),
        Unknown::LowestTemperature => words::wires::UNKNOWN_LOWEST.now(),
        Unknown::HottestCell => words::wires::UNKNOWN_HOTTEST.now(),
        Unknown::HighestTemperature => words::wires::UNKNOWN_HIGHEST.now(),
        Unknown::AtticTemperature => words::wires::UNKNOWN_ATTIC.now(),
        Unknown::Service => words::wires::UNKNOWN_SERVICE.now(),
        Unknown::OtherBreakers => words::wires::UNKNOWN_OTHER_BREAKERS.now(),
        Unknown::WayDown => words::wires::UNKNOWN_WAY_DOWN.now(),
        Unknown::DeckUnderFastener => words::rules::DECK_UNDER_A_FASTENER.now(),
    }
}
