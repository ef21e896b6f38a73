//! Whose word a number is: a section of the code in the edition of the job, and how far it can be relied on.

use chalkcourse_job::{CodeEdition, Source, Standing};

/// A section of the NEC, with what is known of its text in each edition.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Section {
    /// Its number in the edition of 2017.
    pub in_2017: &'static str,
    /// Its number from 2020 on.
    pub since_2020: &'static str,
    /// How far the text of 2017 can be relied on. Later ones were not read in full: they are quoted from memory.
    pub standing: Standing,
}

impl Section {
    /// A section whose number is the same in all editions.
    pub const fn same(number: &'static str, standing: Standing) -> Self {
        Self { in_2017: number, since_2020: number, standing }
    }

    /// The source in an edition.
    pub fn of(self, edition: CodeEdition) -> Source {
        let (number, standing) = match edition {
            CodeEdition::Nec2017 => (self.in_2017, self.standing),
            CodeEdition::Nec2020 | CodeEdition::Nec2023 => (self.since_2020, Standing::FromMemory),
        };
        let mark = if standing == Standing::FromMemory { ", from memory" } else { "" };
        Source::new(format!("NEC {} ({}{})", number, edition.year(), mark), standing)
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
pub const DEVICE_CURRENT: Section =
    Section { in_2017: "690.8(A)", since_2020: "690.8(A)(1), (A)(2)", standing: Standing::FromMemory };
/// What conductors carry.
pub const CONDUCTOR_CURRENT: Section = Section::same("690.8(B)", Standing::Confirmed);
/// Overcurrent devices.
pub const OVERCURRENT: Section = Section::same("690.9(B)", Standing::Confirmed);
/// When no overcurrent device is asked for.
pub const NO_OVERCURRENT: Section =
    Section { in_2017: "690.9(A), exception", since_2020: "690.9(A)(1)", standing: Standing::FromMemory };
/// Standard ratings.
pub const STANDARD_RATINGS: Section = Section::same("240.6(A)", Standing::FromMemory);
/// Small conductors.
pub const SMALL_CONDUCTORS: Section = Section::same("240.4(D)", Standing::FromMemory);
/// Arc-fault protection.
pub const ARC_FAULT: Section = Section::same("690.11", Standing::Confirmed);
/// Ampacities.
pub const AMPACITY: Section =
    Section { in_2017: "table 310.15(B)(16)", since_2020: "table 310.16", standing: Standing::Confirmed };
/// Factors by the temperature around a conductor.
pub const AMBIENT: Section = Section {
    in_2017: "table 310.15(B)(2)(a)",
    since_2020: "table 310.15(B)(1)",
    standing: Standing::FromMemory,
};
/// Factors by the number of conductors in a raceway.
pub const BUNDLE: Section = Section {
    in_2017: "table 310.15(B)(3)(a)",
    since_2020: "table 310.15(C)(1)",
    standing: Standing::FromMemory,
};
/// What a raceway on a roof is warmer.
pub const ROOFTOP: Section =
    Section { in_2017: "310.15(B)(3)(c)", since_2020: "310.15(B)(2)", standing: Standing::Confirmed };
/// Temperatures of terminals.
pub const TERMINALS: Section = Section::same("110.14(C)", Standing::FromMemory);
/// Resistances.
pub const RESISTANCE: Section = Section::same("chapter 9 table 8", Standing::Confirmed);
/// Equipment grounding conductors.
pub const GROUNDING: Section = Section::same("690.45 and table 250.122", Standing::Confirmed);
/// Bonding of metal parts.
pub const BONDING: Section = Section::same("690.43", Standing::Confirmed);
/// A point of connection on the load side: 120 % with breakers at opposite ends.
pub const OPPOSITE_ENDS: Section =
    Section { in_2017: "705.12(B)(2)(3)(b)", since_2020: "705.12(B)(3)(2)", standing: Standing::Confirmed };
/// The sum of all breakers.
pub const SUM_OF_BREAKERS: Section =
    Section { in_2017: "705.12(B)(2)(3)(c)", since_2020: "705.12(B)(3)(3)", standing: Standing::Confirmed };
/// The bus holds all: 100 %.
pub const WHOLE_BUS: Section =
    Section { in_2017: "705.12(B)(2)(3)(a)", since_2020: "705.12(B)(3)(1)", standing: Standing::FromMemory };
/// A connection on the supply side.
pub const SUPPLY_SIDE: Section =
    Section { in_2017: "705.12(A)", since_2020: "705.11", standing: Standing::FromMemory };
/// Rapid shutdown of the array.
pub const RAPID_SHUTDOWN: Section = Section::same("690.12", Standing::Confirmed);

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
    }
}
