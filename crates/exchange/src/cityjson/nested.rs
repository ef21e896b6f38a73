//! Nested arrays of numbers, stored flat at four bytes per token, so that memory stays close to the file's own size.

use serde::de::{Deserialize, DeserializeSeed, Deserializer, SeqAccess, Visitor};
use std::fmt;

const OPEN: u32 = u32::MAX;
const CLOSE: u32 = u32::MAX - 1;
const NULL: u32 = u32::MAX - 2;

/// Arbitrarily nested arrays of numbers or nulls, as written.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Nested(Vec<u32>);

/// A polygon in 3D as vertex indices: the outline first, then holes.
pub(super) type Rings = Vec<Vec<u32>>;

impl Nested {
    /// All numbers in order; null is `None`.
    pub(super) fn leaves(&self) -> Vec<Option<u32>> {
        let leaves = self.0.iter().filter(|&&token| token != OPEN && token != CLOSE);
        leaves.map(|&token| (token != NULL).then_some(token)).collect()
    }

    /// The polygons of an array of the given nesting depth (3 for a surface: polygons of rings of numbers). `None` if the depth
    /// is not uniform.
    pub(super) fn polygons(&self, depth: usize) -> Option<Vec<Rings>> {
        let mut polygons: Vec<Rings> = Vec::new();
        let mut level = 0usize;
        for &token in &self.0 {
            match token {
                OPEN => {
                    level += 1;
                    if level + 1 == depth {
                        polygons.push(Vec::new());
                    } else if level == depth {
                        polygons.last_mut()?.push(Vec::new());
                    } else if level > depth {
                        return None;
                    }
                }
                CLOSE => level = level.checked_sub(1)?,
                number => {
                    if level != depth || number == NULL {
                        return None;
                    }
                    polygons.last_mut()?.last_mut()?.push(number);
                }
            }
        }
        Some(polygons)
    }
}

impl<'de> Deserialize<'de> for Nested {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let mut tokens = Vec::new();
        Item(&mut tokens).deserialize(deserializer)?;
        Ok(Self(tokens))
    }
}

/// Reads one item, appending to the tokens.
struct Item<'a>(&'a mut Vec<u32>);

impl<'de> DeserializeSeed<'de> for Item<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Item<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("arrays of whole numbers from 0")
    }

    fn visit_unit<E>(self) -> Result<(), E> {
        self.0.push(NULL);
        Ok(())
    }

    fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<(), E> {
        let number = u32::try_from(number).ok().filter(|&number| number < NULL);
        self.0.push(number.ok_or_else(|| E::custom("a number too large for any list"))?);
        Ok(())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<(), A::Error> {
        self.0.push(OPEN);
        while items.next_element_seed(Item(self.0))?.is_some() {}
        self.0.push(CLOSE);
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Nested {
        serde_json::from_str(text).unwrap()
    }

    #[test]
    fn polygons_come_out_at_their_depth() {
        let surface = read("[[[0,1,2],[3,4,5]],[[6,7,8]]]");
        let polygons = surface.polygons(3).unwrap();
        assert_eq!(polygons, vec![vec![vec![0, 1, 2], vec![3, 4, 5]], vec![vec![6, 7, 8]]]);
        let solid = read("[[[[0,1,2]]],[[[3,4,5]],[[6,7,8]]]]");
        assert_eq!(solid.polygons(4).unwrap().len(), 3);
        for wrong in ["[[0,1,2]]", "[[[[0]]]]", "[[[null]]]", "7", "[0,[[1]]]"] {
            assert_eq!(read(wrong).polygons(3), None, "{wrong}");
        }
        assert_eq!(read("[]").polygons(3), Some(Vec::new()));
    }

    #[test]
    fn leaves_keep_their_order_and_what_is_no_number_is_refused() {
        assert_eq!(read("[[0,null],[2]]").leaves(), [Some(0), None, Some(2)]);
        for wrong in ["[\"0\"]", "[-1]", "[0.5]", "[4294967295]", "{}"] {
            assert!(serde_json::from_str::<Nested>(wrong).is_err(), "{wrong}");
        }
        // the parser's own guard against stack overflow: 128 levels
        let deep = format!("{}{}", "[".repeat(4_000), "]".repeat(4_000));
        assert!(serde_json::from_str::<Nested>(&deep).is_err());
    }
}
