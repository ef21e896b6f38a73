//! Points and references as written in a script: lengths with units, corners by number, objects by name.

use chalkcourse_geometry::raise::SideRef;
use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_words::{Said, later as words};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::de::{Deserialize, Deserializer, Error, IgnoredAny, SeqAccess, Visitor};
use std::borrow::Cow;
use std::fmt;
use std::str::FromStr;

/// Two lengths: x east and y north in plan, or along the eave and up the slope on a face. Each is a number of metres or
/// a string with a unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Point(pub(super) DVec2);

/// One coordinate.
struct Coordinate(f64);

impl<'de> Deserialize<'de> for Coordinate {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Either;
        impl Visitor<'_> for Either {
            type Value = Coordinate;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a number of metres, or a length with its unit, such as \"12 ft 4 in\"")
            }
            fn visit_f64<E: Error>(self, metres: f64) -> Result<Coordinate, E> {
                Ok(Coordinate(metres))
            }
            fn visit_u64<E: Error>(self, metres: u64) -> Result<Coordinate, E> {
                Ok(Coordinate(metres as f64))
            }
            fn visit_i64<E: Error>(self, metres: i64) -> Result<Coordinate, E> {
                Ok(Coordinate(metres as f64))
            }
            fn visit_str<E: Error>(self, text: &str) -> Result<Coordinate, E> {
                let text = serde::de::value::StrDeserializer::<E>::new(text);
                Length::deserialize(text).map(|length| Coordinate(length.metres()))
            }
        }
        deserializer.deserialize_any(Either)
    }
}

impl<'de> Deserialize<'de> for Point {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Pair;
        impl<'de> Visitor<'de> for Pair {
            type Value = Point;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("two lengths, such as [\"12 ft 4 in\", \"6 ft\"] or, in metres, [3.76, 1.83]")
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut two: A) -> Result<Point, A::Error> {
                let mut next = |at| two.next_element()?.ok_or_else(|| Error::invalid_length(at, &self));
                let (Coordinate(x), Coordinate(y)) = (next(0)?, next(1)?);
                match two.next_element::<IgnoredAny>()? {
                    None => Ok(Point(dvec2(x, y))),
                    Some(_) => Err(Error::invalid_length(3, &self)),
                }
            }
        }
        deserializer.deserialize_seq(Pair)
    }
}

impl JsonSchema for Point {
    fn schema_name() -> Cow<'static, str> {
        "Point".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let one = json_schema!({ "anyOf": [
            { "type": "number", "description": "Metres." },
            generator.subschema_for::<Length>(),
        ] });
        json_schema!({
            "type": "array",
            "description": "Two lengths: x east and y north in plan, or along the eave and up the slope on a face. A bare number is metres.",
            "items": one,
            "minItems": 2,
            "maxItems": 2
        })
    }
}

/// A corner of an outline, or the side from it to the next one. The outline is ring 0, the n-th hole or courtyard ring
/// n; indices start at 0 here, and at 1 in text: `3` is the third corner of the outline, `"2.1"` the first of the first
/// courtyard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Spot(pub SideRef);

impl FromStr for Spot {
    type Err = Said;

    fn from_str(text: &str) -> Result<Self, Said> {
        let number = |text: &str| text.trim().parse::<usize>().ok().and_then(|number| number.checked_sub(1));
        let (ring, corner) = text.split_once('.').unwrap_or(("1", text));
        match (number(ring), number(corner)) {
            (Some(ring), Some(side)) => Ok(Self(SideRef { ring, side })),
            _ => Err(words::job::CORNERS_AND_SIDES_COUNT_FROM.into()),
        }
    }
}

impl fmt::Display for Spot {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            SideRef { ring: 0, side } => write!(f, "{}", side + 1),
            SideRef { ring, side } => write!(f, "{}.{}", ring + 1, side + 1),
        }
    }
}

impl<'de> Deserialize<'de> for Spot {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Either;
        impl Visitor<'_> for Either {
            type Value = Spot;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a corner's number from 1, or \"2.1\" for the first of the first courtyard")
            }
            fn visit_u64<E: Error>(self, number: u64) -> Result<Spot, E> {
                self.visit_str(&number.to_string())
            }
            fn visit_str<E: Error>(self, text: &str) -> Result<Spot, E> {
                text.parse().map_err(E::custom)
            }
        }
        deserializer.deserialize_any(Either)
    }
}

impl JsonSchema for Spot {
    fn schema_name() -> Cow<'static, str> {
        "Spot".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A corner, or the side from it to the next one, counted from 1: 3 is the third of the outline, \"2.1\" the first of the first courtyard.",
            "anyOf": [
                { "type": "integer", "minimum": 1 },
                { "type": "string", "pattern": "^[1-9][0-9]*(\\.[1-9][0-9]*)?$" },
            ]
        })
    }
}

/// A part, face, penetration or block, by id or by name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum ObjectRef {
    /// By id.
    Number(u32),
    /// By name.
    Name(String),
}

impl fmt::Display for ObjectRef {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Number(number) => write!(f, "{number}"),
            Self::Name(name) => write!(f, "{name:?}"),
        }
    }
}

impl<'de> Deserialize<'de> for ObjectRef {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Either;
        impl Visitor<'_> for Either {
            type Value = ObjectRef;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a number of the job, or a name")
            }
            fn visit_u64<E: Error>(self, number: u64) -> Result<ObjectRef, E> {
                u32::try_from(number)
                    .map(ObjectRef::Number)
                    .map_err(|_| E::invalid_value(serde::de::Unexpected::Unsigned(number), &self))
            }
            fn visit_str<E: Error>(self, name: &str) -> Result<ObjectRef, E> {
                Ok(ObjectRef::Name(name.to_owned()))
            }
        }
        deserializer.deserialize_any(Either)
    }
}

impl JsonSchema for ObjectRef {
    fn schema_name() -> Cow<'static, str> {
        "Which".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A thing of the job by its number, or by its name.",
            "anyOf": [{ "type": "integer", "minimum": 0 }, { "type": "string" }]
        })
    }
}
