//! Labels that the electrical code asks for: data that comes with the program. A job replaces a text by the label's code.

use crate::{CodeEdition, Source, Standing};
use chalkcourse_geometry::Length;
use serde::Deserialize;
use std::collections::BTreeMap;

/// The labels that the program knows.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CodeLabels {
    /// What they are.
    pub name: String,
    /// Each, in the order of the way from the array to the service.
    pub labels: Vec<CodeLabel>,
}

/// A label. Texts are those that are stuck on, the same in every language of the program.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CodeLabel {
    /// The code by which a job replaces its text.
    pub code: String,
    /// What it is asked for.
    pub of: LabelOf,
    /// Where it is stuck.
    pub place: LabelPlace,
    /// The section that asks for it, by edition; an edition that does not ask for it is not there.
    pub section: BTreeMap<CodeEdition, String>,
    /// Its text in the edition of 2017, and later unless another is said.
    pub says: LabelText,
    /// Its text from 2020 on, where that is another.
    #[serde(default)]
    pub since_2020: Option<LabelText>,
    /// How high the letters of its title are at least.
    pub letters: Length,
    /// How high those below it are.
    pub small_letters: Length,
    /// Its ground.
    pub ground: LabelGround,
    /// Whether it reflects.
    pub reflective: bool,
    /// How far its text can be relied on.
    pub standing: Standing,
}

/// The text of a label. `{dc-volts}`, `{dc-amps}`, `{ac-volts}` and `{ac-amps}` stand for those of the job.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LabelText {
    /// What stands in large letters.
    pub title: String,
    /// What stands below; empty for nothing.
    #[serde(default)]
    pub text: String,
}

/// What a label is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LabelOf {
    /// Any array.
    Any,
    /// Dc circuits that leave the array.
    Dc,
    /// Shutdown at the modules.
    Shutdown,
    /// A point of connection at the end of the bus opposite to the main.
    OppositeEnds,
    /// A point of connection by the sum of all breakers.
    SumOfBreakers,
}

/// Where a label is stuck.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LabelPlace {
    /// The disconnect of the whole system.
    SystemDisconnect,
    /// The dc disconnect.
    DcDisconnect,
    /// Raceways, boxes and fittings with dc circuits.
    DcRaceway,
    /// The switch that starts the shutdown.
    ShutdownSwitch,
    /// The point of connection.
    Connection,
    /// The breaker there.
    ConnectionBreaker,
    /// The service equipment.
    Service,
}

/// The ground of a label; letters are white on red and black on the others.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LabelGround {
    /// Red.
    Red,
    /// Orange.
    Orange,
    /// Yellow.
    Yellow,
}

impl CodeLabel {
    /// Who asks for it in an edition, and how far that can be relied on; `None` where that edition does not.
    pub fn source(&self, edition: CodeEdition) -> Option<Source> {
        let section = self.section.get(&edition)?;
        Some(Source::of_code(section, edition, self.standing))
    }

    /// Its text in an edition.
    pub fn says(&self, edition: CodeEdition) -> &LabelText {
        let later = self.since_2020.as_ref().filter(|_| edition != CodeEdition::Nec2017);
        later.unwrap_or(&self.says)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::builtin_labels;
    use std::collections::BTreeSet;

    /// The sections of each edition as the trade's notes have them, from memory; letters of 3/8 in, white on red at dc raceways.
    #[test]
    fn labels_by_edition() {
        let labels = &builtin_labels().labels;
        let codes: BTreeSet<&str> = labels.iter().map(|label| label.code.as_str()).collect();
        assert_eq!(codes.len(), labels.len(), "no code twice");
        let of = |code: &str| labels.iter().find(|label| label.code == code).unwrap();
        let raceway = of("dc-raceway");
        assert_eq!(raceway.says(CodeEdition::Nec2017).title, "WARNING: PHOTOVOLTAIC POWER SOURCE");
        assert_eq!(raceway.says(CodeEdition::Nec2020).title, "SOLAR PV DC CIRCUIT");
        assert!(raceway.ground == LabelGround::Red && raceway.reflective);
        let voltage = |edition| of("largest-dc-voltage").source(edition).unwrap().text;
        assert_eq!(voltage(CodeEdition::Nec2017), "NEC 690.53 (2017, from memory)");
        assert_eq!(voltage(CodeEdition::Nec2023), "NEC 690.7(D) (2023, from memory)");
        assert_eq!(of("ac-output").source(CodeEdition::Nec2023), None);
        assert!(labels.iter().all(|label| (label.letters.inches() - 0.375).abs() < 1e-9));
        for edition in [CodeEdition::Nec2017, CodeEdition::Nec2020, CodeEdition::Nec2023] {
            let asked = labels.iter().filter(|label| label.source(edition).is_some()).count();
            assert!(asked >= 9, "{edition:?}: {asked}");
        }
    }
}
