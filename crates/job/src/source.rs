//! By whose word something is asked, and how far that word can be relied on.

use schemars::JsonSchema;
use serde::de::{MapAccess, Visitor, value::MapAccessDeserializer};
use serde::{Deserialize, Deserializer, Serialize, de};

/// Where a limit or a count comes from. Files of earlier programs have the text alone: their standing follows from it once,
/// when they are read, and is data from then on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Source {
    /// The section of a code, a listing, or "common practice, no source"; a quotation, and the same in every language.
    pub text: String,
    /// How far it can be relied on.
    pub standing: Standing,
}

/// How far a source can be relied on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Standing {
    /// Read in the published text that it names.
    Confirmed,
    /// Read there, but the text leaves open what it means; the safe reading was taken.
    LeftOpen,
    /// Quoted from memory: to be held against the text.
    FromMemory,
    /// The maker's word for its own kit.
    Maker,
    /// The office's own word.
    Office,
    /// Common practice; nothing published says so.
    CommonPractice,
}

impl Standing {
    /// All of them, as a list shows them.
    pub const ALL: [Self; 6] =
        [Self::Confirmed, Self::LeftOpen, Self::FromMemory, Self::Maker, Self::Office, Self::CommonPractice];
}

impl Source {
    /// A source with its standing.
    pub fn new(text: impl Into<String>, standing: Standing) -> Self {
        Self { text: text.into(), standing }
    }

    /// The source of a file from before standings were kept.
    fn brought_over(text: &str) -> Self {
        /// What tells the standing of an old text, the first that fits.
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
            // Whatever else an office wrote beside its own limit is its own word.
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
    fn a_text_alone_is_given_its_standing_once() {
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
            // Written with its standing it is read back as it is, whatever the text says.
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
