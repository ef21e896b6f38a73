use chalkcourse_geometry::{Length, Units};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::borrow::Cow;

/// Square metres in a square foot, exactly: 0.3048².
const SQUARE_FOOT: f64 = 0.3048 * 0.3048;

/// How much is in a package. In a data file a bare number is pieces; a length and an area carry their unit:
/// `25`, `"100 ft"`, `"200 sq ft"`, `"20 sq m"`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Holds {
    /// Pieces.
    Pieces(f64),
    /// A length.
    Length(Length),
    /// An area in square metres.
    Area(f64),
}

impl Holds {
    /// Pieces, metres or square metres.
    pub fn amount(self) -> f64 {
        match self {
            Self::Pieces(pieces) => pieces,
            Self::Length(length) => length.metres(),
            Self::Area(area) => area,
        }
    }

    fn parse(text: &str) -> Result<Self, String> {
        let lower = text.trim().to_ascii_lowercase();
        let areas = [("sq ft", SQUARE_FOOT), ("sq m", 1.0)];
        if let Some((number, scale)) =
            areas.iter().find_map(|(unit, scale)| Some((lower.strip_suffix(unit)?, scale)))
        {
            return match number.trim().parse::<f64>() {
                Ok(number) if number.is_finite() => Ok(Self::Area(number * scale)),
                _ => Err(format!("can't read {text:?} as an area: write it as \"200 sq ft\" or \"20 sq m\"")),
            };
        }
        match Length::deserialize(de::value::StrDeserializer::<de::value::Error>::new(text)) {
            Ok(length) => Ok(Self::Length(length)),
            Err(error) => Err(format!("{error}; an area is written as \"200 sq ft\" or \"20 sq m\"")),
        }
    }

    /// The text of an area that reads back as the same number.
    fn area_text(area: f64) -> String {
        let feet = (area / SQUARE_FOOT * 1000.0).round() / 1000.0;
        if feet * SQUARE_FOOT == area { format!("{feet} sq ft") } else { format!("{area} sq m") }
    }

    /// As a person reads it: `25`, `100'`, `200 sq ft`.
    pub fn show(self, units: Units) -> String {
        match (self, units) {
            (Self::Pieces(pieces), _) => format!("{pieces}"),
            (Self::Length(length), _) => length.show(units),
            (Self::Area(area), Units::FeetInches) => {
                format!("{} sq ft", (area / SQUARE_FOOT * 100.0).round() / 100.0)
            }
            (Self::Area(area), Units::Metric) => format!("{} m²", (area * 100.0).round() / 100.0),
        }
    }
}

impl Serialize for Holds {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Pieces(pieces) => pieces.serialize(serializer),
            Self::Length(length) => length.serialize(serializer),
            Self::Area(area) => Self::area_text(*area).serialize(serializer),
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
            "description": "How much is in a package: a number of pieces, a length (\"100 ft\") or an area (\"200 sq ft\", \"20 sq m\").",
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
    }

    #[test]
    fn nonsense_is_refused_with_what_to_write() {
        for json in ["\"many\"", "\"12\"", "\"x sq ft\"", "\"inf sq m\"", "true"] {
            let error = serde_json::from_str::<Holds>(json).unwrap_err().to_string();
            assert!(error.contains("200 sq ft"), "{json}: {error}");
        }
    }
}
