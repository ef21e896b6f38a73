//! Whose word a number is: a section of the code in the edition of the job, and how far it can be relied on.

use chalkcourse_job::{CodeEdition, Source, Standing};

/// A section of the NEC, with what is known of its text in each edition.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Section {
    /// Its number in the edition of 2017.
    pub in_2017: &'static str,
    /// Its number in that of 2020.
    pub in_2020: &'static str,
    /// Its number in that of 2023.
    pub in_2023: &'static str,
    /// How far the text of 2017 can be relied on. Later ones were not read in full: they are quoted from memory.
    pub standing: Standing,
}

impl Section {
    /// A section whose number is the same in all editions.
    pub const fn same(number: &'static str, standing: Standing) -> Self {
        Self::moved(number, number, standing)
    }

    /// A section that has another number from 2020 on.
    pub const fn moved(in_2017: &'static str, since_2020: &'static str, standing: Standing) -> Self {
        Self { in_2017, in_2020: since_2020, in_2023: since_2020, standing }
    }

    /// The source in an edition.
    pub fn of(self, edition: CodeEdition) -> Source {
        let (number, standing) = match edition {
            CodeEdition::Nec2017 => (self.in_2017, self.standing),
            CodeEdition::Nec2020 => (self.in_2020, Standing::FromMemory),
            CodeEdition::Nec2023 => (self.in_2023, Standing::FromMemory),
        };
        Source::of_code(number, edition, standing)
    }
}

/// Largest voltage of dc circuits.
pub const LARGEST_VOLTAGE: Section = Section::same("690.7", Standing::Confirmed);
/// Largest voltage of dc circuits of devices.
pub const DEVICE_VOLTAGE: Section = Section::same("690.7(B)", Standing::FromMemory);
/// Factors of the largest voltage by temperature.
pub const COLD_TABLE: Section = Section::same("table 690.7(A)", Standing::Confirmed);
/// Largest current of circuits of bare modules.
pub const MODULE_CURRENT: Section = Section::same("690.8(A)(1)", Standing::Confirmed);
/// Largest current of devices and inverters: what they are rated for.
pub const DEVICE_CURRENT: Section = Section::moved("690.8(A)", "690.8(A)(1), (A)(2)", Standing::FromMemory);
/// What conductors carry.
pub const CONDUCTOR_CURRENT: Section = Section::same("690.8(B)", Standing::Confirmed);
/// Overcurrent devices.
pub const OVERCURRENT: Section = Section::same("690.9(B)", Standing::Confirmed);
/// When no overcurrent device is asked for.
pub const NO_OVERCURRENT: Section =
    Section::moved("690.9(A), exception", "690.9(A)(1)", Standing::FromMemory);
/// Standard ratings.
pub const STANDARD_RATINGS: Section = Section::same("240.6(A)", Standing::FromMemory);
/// Overcurrent devices of conductors, small ones among them.
pub const PROTECTED: Section = Section::same("240.4(B), (D)", Standing::FromMemory);
/// Arc-fault protection.
pub const ARC_FAULT: Section = Section::same("690.11", Standing::Confirmed);
/// Ground-fault protection.
pub const GROUND_FAULT: Section = Section::same("690.41(B)", Standing::FromMemory);
/// Ampacities.
pub const AMPACITY: Section = Section::moved("table 310.15(B)(16)", "table 310.16", Standing::Confirmed);
/// Ampacities of single conductors in free air.
pub const AMPACITY_FREE: Section =
    Section::moved("table 310.15(B)(17)", "table 310.17", Standing::FromMemory);
/// Factors by the temperature around a conductor.
pub const AMBIENT: Section =
    Section::moved("table 310.15(B)(2)(a)", "table 310.15(B)(1)", Standing::FromMemory);
/// Factors by the number of conductors in a raceway.
pub const BUNDLE: Section =
    Section::moved("table 310.15(B)(3)(a)", "table 310.15(C)(1)", Standing::FromMemory);
/// What a raceway on a roof is warmer.
pub const ROOFTOP: Section = Section::moved("310.15(B)(3)(c)", "310.15(B)(2)", Standing::Confirmed);
/// Temperatures of terminals.
pub const TERMINALS: Section = Section::same("110.14(C)", Standing::FromMemory);
/// Resistances.
pub const RESISTANCE: Section = Section::same("chapter 9 table 8", Standing::Confirmed);
/// How full a raceway may be.
pub const FILL: Section = Section::same("chapter 9 tables 1, 4, 5", Standing::FromMemory);
/// How full a box may be.
pub const BOX_FILL: Section = Section::same("314.16(B)", Standing::FromMemory);
/// Equipment grounding conductors.
pub const GROUNDING: Section = Section::same("690.45 and table 250.122", Standing::Confirmed);
/// Protection of thin grounding conductors.
pub const GROUNDING_PROTECTED: Section =
    Section::moved("690.46 and 250.120(C)", "250.120(C)", Standing::FromMemory);
/// Bonding of metal parts.
pub const BONDING: Section = Section::same("690.43", Standing::Confirmed);
/// Circuits of the array apart from others.
pub const APART: Section = Section::same("690.31(B)", Standing::FromMemory);
/// Plugs.
pub const PLUGS: Section = Section::same("690.33", Standing::FromMemory);
/// Dc circuits inside the building.
pub const INSIDE: Section = Section::moved("690.31(G)", "690.31(D)", Standing::Confirmed);
/// A point of connection on the load side: 120 % with breakers at opposite ends.
pub const OPPOSITE_ENDS: Section = Section {
    in_2017: "705.12(B)(2)(3)(b)",
    in_2020: "705.12(B)(3)(2)",
    in_2023: "705.12(B)(2)",
    standing: Standing::Confirmed,
};
/// The sum of all breakers.
pub const SUM_OF_BREAKERS: Section = Section {
    in_2017: "705.12(B)(2)(3)(c)",
    in_2020: "705.12(B)(3)(3)",
    in_2023: "705.12(B)(3)",
    standing: Standing::Confirmed,
};
/// The bus holds all: 100 %.
pub const WHOLE_BUS: Section = Section {
    in_2017: "705.12(B)(2)(3)(a)",
    in_2020: "705.12(B)(3)(1)",
    in_2023: "705.12(B)(1)",
    standing: Standing::FromMemory,
};
/// A panel that is fed in the middle.
pub const CENTRE_FED: Section = Section {
    in_2017: "705.12(B)(2)(3)(d)",
    in_2020: "705.12(B)(3)(4)",
    in_2023: "705.12(B)(4)",
    standing: Standing::FromMemory,
};
/// A connection to a feeder.
pub const FEEDER: Section = Section {
    in_2017: "705.12(B)(2)(1)",
    in_2020: "705.12(B)(1)",
    in_2023: "705.12(A)",
    standing: Standing::FromMemory,
};
/// A connection on the supply side.
pub const SUPPLY_SIDE: Section = Section::moved("705.12(A)", "705.11", Standing::FromMemory);
/// Rapid shutdown of the array.
pub const RAPID_SHUTDOWN: Section = Section::same("690.12(B)", Standing::Confirmed);
/// Rapid shutdown of conductors within the array.
pub const SHUTDOWN_WITHIN: Section = Section::same("690.12(B)(2)", Standing::Confirmed);

#[cfg(test)]
mod tests {
    use super::*;

    /// Section numbers as the trade's notes have them: 310.15(B)(16) became 310.16 in 2020; later editions were not read.
    #[test]
    fn a_section_is_of_its_edition() {
        let source = AMPACITY.of(CodeEdition::Nec2017);
        assert_eq!(
            (source.text.as_str(), source.standing),
            ("NEC table 310.15(B)(16) (2017)", Standing::Confirmed)
        );
        let later = AMPACITY.of(CodeEdition::Nec2023);
        assert_eq!(
            (later.text.as_str(), later.standing),
            ("NEC table 310.16 (2023, from memory)", Standing::FromMemory)
        );
        let texts = CodeEdition::ALL.map(|edition| OPPOSITE_ENDS.of(edition).text);
        let expected = [
            "NEC 705.12(B)(2)(3)(b) (2017)",
            "NEC 705.12(B)(3)(2) (2020, from memory)",
            "NEC 705.12(B)(2) (2023, from memory)",
        ];
        assert_eq!(texts, expected);
    }
}
