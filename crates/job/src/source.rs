//! The source of a requirement, and how reliable it is.

use crate::CodeEdition;
use schemars::JsonSchema;
use serde::de::{MapAccess, Visitor, value::MapAccessDeserializer};
use serde::{Deserialize, Deserializer, Serialize, de};

/// The source of a limit or a count. Files of earlier versions only have the text: the standing is derived from it
/// once, when they are read, and stored from then on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Source {
    /// A section of a code, a listing, or "common practice, no source"; a quotation, the same in every language.
    pub text: String,
    /// How reliable it is.
    pub standing: Standing,
}

/// How reliable a source is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Standing {
    /// Read in the published text that it names.
    Confirmed,
    /// Read there, but the text is open to interpretation; the safe one was taken.
    LeftOpen,
    /// Quoted from memory: to be checked against the text.
    FromMemory,
    /// The manufacturer's statement about its own kit.
    Maker,
    /// The office's own requirement.
    Office,
    /// Common practice, not published.
    CommonPractice,
}

impl Standing {
    /// All variants, in display order.
    pub const ALL: [Self; 6] =
        [Self::Confirmed, Self::LeftOpen, Self::FromMemory, Self::Maker, Self::Office, Self::CommonPractice];
}

impl Source {
    /// A source with its standing.
    pub fn new(text: impl Into<String>, standing: Standing) -> Self {
        Self { text: text.into(), standing }
    }

    /// A section of the National Electrical Code in an edition.
    pub fn of_code(section: &str, edition: CodeEdition, standing: Standing) -> Self {
        let mark = if standing == Standing::FromMemory { ", from memory" } else { "" };
        Self::new(format!("NEC {section} ({}{mark})", edition.year()), standing)
    }

    /// A source in a file from before standings were stored.
    fn brought_over(text: &str) -> Self {
        /// Phrases that determine the standing of an old text; the first match counts.
        const SIGNS: [(Standing, &[&str]); 5] = [
            (Standing::Office, &["amended by the office", "added by the office", "the office's own"]),
            (Standing::FromMemory, &["from memory", "must be held against"]),
            (Standing::LeftOpen, &["does not say"]),
            (Standing::CommonPractice, &["common practice"]),
            (
                Standing::Confirmed,
                &["IRC", "IFC", "IBC", "ASCE", "CFR", "NEC", "NFPA", "ASTM", "UL ", "handbook", "edition"],
            ),
        ];
        let of_maker = || ["the kit", "an allowance, the kit"].iter().any(|sign| text.starts_with(sign));
        let fits = |signs: &[&str]| signs.iter().any(|sign| text.contains(sign));
        let standing = match SIGNS.into_iter().find(|(_, signs)| fits(signs)) {
            Some((Standing::Confirmed, _)) if of_maker() => Standing::Maker,
            Some((standing, _)) => standing,
            None if of_maker() => Standing::Maker,
            // Anything else that an office wrote for its own limit is its own requirement.
            None => Standing::Office,
        };
        Self::new(text, standing)
    }
}

impl<'de> Deserialize<'de> for Source {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct Whole {
            text: String,
            standing: Standing,
        }
        struct Either;
        impl<'de> Visitor<'de> for Either {
            type Value = Source;
            fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str("a source as {\"text\": …, \"standing\": …}, or its text alone")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<Source, E> {
                Ok(Source::brought_over(text))
            }
            fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<Source, A::Error> {
                let Whole { text, standing } = Whole::deserialize(MapAccessDeserializer::new(map))?;
                Ok(Source { text, standing })
            }
        }
        deserializer.deserialize_any(Either)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_old_source_text_is_given_its_standing_once() {
        use Standing::{CommonPractice, Confirmed, FromMemory, LeftOpen, Maker, Office};
        for (text, standing) in [
            ("IRC R905.2.8.5 (2018)", Confirmed),
            ("29 CFR 1926.502(d), from memory", FromMemory),
            ("IRC R324.6.1 (2018): at least 36 in wide. The code does not say whether in plan", LeftOpen),
            ("common practice, no source: hip caps lap over both faces by about 5 in", CommonPractice),
            ("an allowance, the kit. NEC 690.31(G) (2017): labels at most 10 ft apart", Maker),
            ("IRC R905.2.8.2 (2018): metal lining; laps of 6 in are the kit's", Confirmed),
            ("amended by the office; before: IRC R903.2.2 (from memory)", Office),
            ("county amendment 12", Office),
        ] {
            let old: Source = serde_json::from_value(text.into()).unwrap();
            assert_eq!(old, Source::new(text, standing));
            // Written with its standing it is read back unchanged, whatever the text says.
            let new = Source::new(text, Confirmed);
            let back: Source = serde_json::from_str(&serde_json::to_string(&new).unwrap()).unwrap();
            assert_eq!(back, new);
        }
    }

    #[test]
    fn half_a_source_is_refused() {
        for json in ["{\"text\": \"IRC\"}", "{\"text\": \"IRC\", \"standing\": \"sure\"}", "7"] {
            assert!(serde_json::from_str::<Source>(json).is_err(), "{json}");
        }
    }
}
