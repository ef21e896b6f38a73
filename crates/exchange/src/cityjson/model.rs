//! The parts of CityJSON that a roof needs. Everything else is skipped without being stored.

use super::nested::Nested;
use chalkcourse_words as words;
use serde::Deserialize;
use serde::de::{Deserializer, IgnoredAny, MapAccess, SeqAccess, Visitor};
use std::collections::BTreeMap;
use std::fmt;

/// Maximum objects in one JSON text; a city tile has some thousands.
const MOST_OBJECTS: usize = 200_000;

#[derive(Debug, Deserialize)]
pub(super) struct Document {
    #[serde(rename = "type")]
    pub(super) kind: String,
    pub(super) version: Option<String>,
    pub(super) transform: Option<Transform>,
    pub(super) metadata: Option<Metadata>,
    #[serde(rename = "CityObjects", default, deserialize_with = "objects")]
    pub(super) objects: BTreeMap<String, Object>,
    #[serde(default)]
    pub(super) vertices: Vec<[f64; 3]>,
}

#[derive(Clone, Copy, Debug, Deserialize)]
pub(super) struct Transform {
    pub(super) scale: [f64; 3],
    pub(super) translate: [f64; 3],
}

#[derive(Debug, Deserialize)]
pub(super) struct Metadata {
    #[serde(rename = "referenceSystem")]
    pub(super) system: Option<String>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Object {
    #[serde(rename = "type")]
    pub(super) kind: String,
    #[serde(default)]
    pub(super) attributes: Option<Attributes>,
    #[serde(default)]
    pub(super) geometry: Option<Vec<Geometry>>,
    #[serde(default)]
    pub(super) parents: First,
}

#[derive(Debug, Default, Deserialize)]
pub(super) struct Attributes {
    #[serde(default)]
    pub(super) name: First,
}

#[derive(Debug, Deserialize)]
pub(super) struct Geometry {
    #[serde(rename = "type")]
    pub(super) kind: String,
    #[serde(default)]
    pub(super) lod: First,
    #[serde(default)]
    pub(super) boundaries: Nested,
    #[serde(default)]
    pub(super) semantics: Option<Semantics>,
}

#[derive(Debug, Deserialize)]
pub(super) struct Semantics {
    pub(super) surfaces: Vec<Semantic>,
    #[serde(default)]
    pub(super) values: Nested,
}

#[derive(Debug, Deserialize)]
pub(super) struct Semantic {
    #[serde(rename = "type")]
    pub(super) kind: String,
}

/// A string, a number as a string, or the first string of a list; `None` for anything else.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct First(pub(super) Option<String>);

impl<'de> Deserialize<'de> for First {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Any;
        impl<'de> Visitor<'de> for Any {
            type Value = First;

            fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
                f.write_str("a text or a list of texts")
            }
            fn visit_str<E>(self, text: &str) -> Result<First, E> {
                Ok(First(Some(text.chars().take(200).collect())))
            }
            fn visit_u64<E>(self, number: u64) -> Result<First, E> {
                Ok(First(Some(number.to_string())))
            }
            fn visit_i64<E>(self, number: i64) -> Result<First, E> {
                Ok(First(Some(number.to_string())))
            }
            fn visit_f64<E>(self, number: f64) -> Result<First, E> {
                Ok(First(Some(number.to_string())))
            }
            fn visit_bool<E>(self, _: bool) -> Result<First, E> {
                Ok(First(None))
            }
            fn visit_unit<E>(self) -> Result<First, E> {
                Ok(First(None))
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<First, A::Error> {
                let first = items.next_element::<First>()?.unwrap_or_default();
                while items.next_element::<IgnoredAny>()?.is_some() {}
                Ok(first)
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<First, A::Error> {
                while map.next_entry::<IgnoredAny, IgnoredAny>()?.is_some() {}
                Ok(First(None))
            }
        }
        deserializer.deserialize_any(Any)
    }
}

fn objects<'de, D: Deserializer<'de>>(deserializer: D) -> Result<BTreeMap<String, Object>, D::Error> {
    struct Objects;
    impl<'de> Visitor<'de> for Objects {
        type Value = BTreeMap<String, Object>;

        fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
            f.write_str("city objects by their id")
        }
        fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
            let mut objects = BTreeMap::new();
            while let Some((id, object)) = map.next_entry()? {
                objects.insert(id, object);
                if objects.len() > MOST_OBJECTS {
                    return Err(serde::de::Error::custom(words::formats::more_than_city_objects_cut(
                        &MOST_OBJECTS,
                    )));
                }
            }
            Ok(objects)
        }
    }
    deserializer.deserialize_map(Objects)
}
