//! An amount with its unit, as written in data files and tables.

use crate::Unit;
use chalkcourse_geometry::{Length, Units};
use chalkcourse_words::{Said, later as words};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::borrow::Cow;

/// Square metres in a square foot, exactly: 0.3048².
const SQUARE_FOOT: f64 = 0.3048 * 0.3048;
/// Kilograms in a pound, exactly (international pound, 1959 agreement; NIST SP 811 appendix B).
const POUND: f64 = 0.453_592_37;

/// How much is in a package. In a data file a bare number means pieces; everything else has its unit: `25`, `"100 ft"`,
/// `"200 sq ft"`, `"20 sq m"`, `"1 h"`, `"4000 lb"`, `"250 kg"`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Holds {
    /// Pieces.
    Pieces(f64),
    /// A length.
    Length(Length),
    /// An area in square metres.
    Area(f64),
    /// Labour, in person-hours.
    Hours(f64),
    /// A mass in kilograms.
    Kilograms(f64),
}

/// Makes an amount of a unit.
type Make = fn(f64) -> Holds;

impl Holds {
    /// The number of pieces, metres, square metres, hours or kilograms.
    pub fn amount(self) -> f64 {
        match self {
            Self::Pieces(amount) | Self::Area(amount) | Self::Hours(amount) | Self::Kilograms(amount) => {
                amount
            }
            Self::Length(length) => length.metres(),
        }
    }

    /// The unit.
    pub fn unit(self) -> Unit {
        match self {
            Self::Pieces(_) => Unit::Each,
            Self::Length(_) => Unit::Length,
            Self::Area(_) => Unit::Area,
            Self::Hours(_) => Unit::Time,
            Self::Kilograms(_) => Unit::Mass,
        }
    }

    /// Parses a table cell, where everything is text: a bare number means pieces.
    pub fn parse_cell(text: &str) -> Result<Self, Said> {
        match text.trim().parse::<f64>() {
            Ok(pieces) if pieces.is_finite() => Ok(Self::Pieces(pieces)),
            _ => Self::parse(text),
        }
    }

    fn parse(text: &str) -> Result<Self, Said> {
        let lower = text.trim().to_ascii_lowercase();
        let units: [(&str, Make); 5] = [
            ("sq ft", |number| Self::Area(number * SQUARE_FOOT)),
            ("sq m", Self::Area),
            ("h", Self::Hours),
            ("lb", |number| Self::Kilograms(number * POUND)),
            ("kg", Self::Kilograms),
        ];
        let made = units.iter().find_map(|(unit, make)| {
            let number = lower.strip_suffix(unit)?.trim().parse::<f64>().ok()?;
            number.is_finite().then(|| make(number))
        });
        if let Some(made) = made {
            return Ok(made);
        }
        match Length::deserialize(de::value::StrDeserializer::<de::value::Error>::new(text)) {
            Ok(length) => Ok(Self::Length(length)),
            Err(error) => Err(words::job::other_amounts_are_written_as(&format_args!("{error}"))),
        }
    }

    /// A text in one of two units that parses to exactly the same number.
    fn text_in(amount: f64, scale: f64, scaled: &str, plain: &str) -> String {
        let there = (amount / scale * 1e6).round() / 1e6;
        if there * scale == amount { format!("{there} {scaled}") } else { format!("{amount} {plain}") }
    }

    /// For display: `25`, `100'`, `200 sq ft`.
    pub fn show(self, units: Units) -> String {
        match (self, units) {
            (Self::Pieces(pieces), _) => format!("{pieces}"),
            (Self::Length(length), _) => length.show(units),
            (Self::Area(area), Units::FeetInches) => {
                format!("{} sq ft", (area / SQUARE_FOOT * 100.0).round() / 100.0)
            }
            (Self::Area(area), Units::Metric) => format!("{} m²", (area * 100.0).round() / 100.0),
            (Self::Hours(hours), _) => format!("{} h", (hours * 100.0).round() / 100.0),
            (Self::Kilograms(mass), Units::FeetInches) => {
                format!("{} lb", (mass / POUND * 10.0).round() / 10.0)
            }
            (Self::Kilograms(mass), Units::Metric) => format!("{} kg", (mass * 10.0).round() / 10.0),
        }
    }
}

impl Serialize for Holds {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Pieces(pieces) => pieces.serialize(serializer),
            Self::Length(length) => length.serialize(serializer),
            Self::Area(area) => Self::text_in(*area, SQUARE_FOOT, "sq ft", "sq m").serialize(serializer),
            Self::Hours(hours) => format!("{hours} h").serialize(serializer),
            Self::Kilograms(mass) => Self::text_in(*mass, POUND, "lb", "kg").serialize(serializer),
        }
    }
}

impl<'de> Deserialize<'de> for Holds {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Visitor;
        impl de::Visitor<'_> for Visitor {
            type Value = Holds;
            fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(
                    "a number of pieces, a length such as \"100 ft\", or an area such as \"200 sq ft\"",
                )
            }
            fn visit_f64<E: de::Error>(self, pieces: f64) -> Result<Holds, E> {
                Ok(Holds::Pieces(pieces))
            }
            fn visit_u64<E: de::Error>(self, pieces: u64) -> Result<Holds, E> {
                Ok(Holds::Pieces(pieces as f64))
            }
            fn visit_i64<E: de::Error>(self, pieces: i64) -> Result<Holds, E> {
                Ok(Holds::Pieces(pieces as f64))
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<Holds, E> {
                Holds::parse(text).map_err(E::custom)
            }
        }
        deserializer.deserialize_any(Visitor)
    }
}

impl JsonSchema for Holds {
    fn schema_name() -> Cow<'static, str> {
        "Holds".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": ["number", "string"],
            "description": "How much: a number of pieces, a length (\"100 ft\"), an area (\"200 sq ft\", \"20 sq m\"), hours (\"1 h\") or a mass (\"250 lb\", \"100 kg\").",
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reads(json: &str, expect: Holds) {
        let holds: Holds = serde_json::from_str(json).unwrap();
        assert_eq!(holds, expect);
        let back: Holds = serde_json::from_str(&serde_json::to_string(&holds).unwrap()).unwrap();
        assert_eq!(back, holds, "{json} does not come back");
    }

    #[test]
    fn pieces_lengths_and_areas_read_and_come_back() {
        reads("25", Holds::Pieces(25.0));
        reads("2.5", Holds::Pieces(2.5));
        reads("\"30.5 m\"", Holds::Length(Length::from_metres(30.5)));
        reads("\"200 sq ft\"", Holds::Area(200.0 * SQUARE_FOOT));
        reads("\"18.6 Sq M\"", Holds::Area(18.6));
        reads("\"1.5 h\"", Holds::Hours(1.5));
        reads("\"250 lb\"", Holds::Kilograms(250.0 * POUND));
        reads("\"80.25 kg\"", Holds::Kilograms(80.25));
    }

    #[test]
    fn nonsense_is_refused_with_what_to_write() {
        for json in ["\"many\"", "\"12\"", "\"x sq ft\"", "\"inf sq m\"", "true"] {
            let error = serde_json::from_str::<Holds>(json).unwrap_err().to_string();
            assert!(error.contains("200 sq ft"), "{json}: {error}");
        }
    }
}
