//! Optional parts of a rule book: adding them from the built-in books, and removing them.

use crate::{RuleBook, builtin_rule_books};
use chalkcourse_words::{Say, later as words};
use serde_json::Value;

/// An optional part of a rule book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OptionalPart {
    /// Its path in the file, such as `fire_access.hip_or_valley`.
    pub field: &'static str,
    /// What it is about.
    pub name: Say,
}

const fn part(field: &'static str, name: Say) -> OptionalPart {
    OptionalPart { field, name }
}

impl OptionalPart {
    /// All optional parts; a part precedes those nested in it.
    pub const ALL: [Self; 12] = [
        part("fire_access", words::common::FIRE_ACCESS),
        part("fire_access.hip_or_valley", words::rulebook::ROOM_BESIDE_HIPS_AND_VALLEYS),
        part("fire_access.below_escape", words::rulebook::ROOM_BELOW_ESCAPE_WINDOWS),
        part("fire_access.integrated_exempt", words::rulebook::EXEMPTION_OF_ROOF_INTEGRATED_ARRAYS),
        part("roofing", words::common::ROOFING),
        part("roofing.valley_clear", words::rulebook::SIDE_FLASHING_TO_VALLEYS),
        part("roofing.hip_clear", words::rulebook::SIDE_FLASHING_TO_HIPS),
        part("roofing.lot_line_within", words::rulebook::FIRE_CLASS_NEAR_A_LOT),
        part("roofing.drip_edge", words::common::DRIP_EDGE),
        part("roofing.ice_barrier", words::common::ICE_BARRIER),
        part("roofing.fire_class", words::common::FIRE_CLASS),
        part("loads", words::common::WIND_AND_SNOW),
    ];

    fn steps(self) -> impl Iterator<Item = &'static str> {
        self.field.split('.')
    }

    fn of(self, book: &Value) -> Option<&Value> {
        self.steps().try_fold(book, |value, step| value.get(step)).filter(|value| !value.is_null())
    }

    fn inside(self) -> Option<&'static str> {
        self.field.rsplit_once('.').map(|(outer, _)| outer)
    }
}

impl RuleBook {
    /// The optional parts that the book lacks and that could be added to it now.
    pub fn missing_parts(&self) -> Vec<OptionalPart> {
        let book = serde_json::to_value(self).unwrap_or(Value::Null);
        let there = |part: OptionalPart| part.of(&book).is_some();
        let outer_there =
            |field: &str| OptionalPart::ALL.into_iter().find(|part| part.field == field).is_some_and(there);
        OptionalPart::ALL
            .into_iter()
            .filter(|part| !there(*part) && part.inside().is_none_or(outer_there))
            .collect()
    }

    /// The optional parts that the book has.
    pub fn optional_parts(&self) -> Vec<OptionalPart> {
        let book = serde_json::to_value(self).unwrap_or(Value::Null);
        OptionalPart::ALL.into_iter().filter(|part| part.of(&book).is_some()).collect()
    }

    /// The book with a part added, as in the first built-in book that has it.
    ///
    /// # Errors
    /// If no built-in book has it, or its enclosing part is missing.
    pub fn with_part(&self, part: OptionalPart) -> Result<Self, String> {
        let from = builtin_rule_books()
            .iter()
            .filter_map(|book| part.of(&serde_json::to_value(&**book).ok()?).cloned())
            .next()
            .ok_or_else(|| words::rulebook::no_book_that_comes_with(&part.name))?;
        self.changed_at(part, |fields, name| {
            fields.insert(name.to_owned(), from);
        })
    }

    /// The book without a part.
    ///
    /// # Errors
    /// If the book does not have the part.
    pub fn without_part(&self, part: OptionalPart) -> Result<Self, String> {
        self.changed_at(part, |fields, name| {
            fields.remove(name);
        })
    }

    fn changed_at(
        &self,
        part: OptionalPart,
        change: impl FnOnce(&mut serde_json::Map<String, Value>, &str),
    ) -> Result<Self, String> {
        let none = || words::rulebook::this_rule_book_has_no_place(&part.name);
        let mut book = serde_json::to_value(self).map_err(|error| error.to_string())?;
        let mut steps: Vec<&str> = part.steps().collect();
        let name = steps.pop().ok_or_else(none)?;
        let mut at = &mut book;
        for step in steps {
            at = at.get_mut(step).ok_or_else(none)?;
        }
        change(at.as_object_mut().ok_or_else(none)?, name);
        let book: Self = serde_json::from_value(book).map_err(|error| error.to_string())?;
        book.check()?;
        Ok(book)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::builtin_rule_book;

    #[test]
    fn every_optional_part_can_be_removed_and_added() {
        for book in builtin_rule_books() {
            for part in book.optional_parts() {
                let less = book.without_part(part).unwrap();
                assert!(less.missing_parts().contains(&part), "{}", part.field);
                let again = less.with_part(part).unwrap();
                assert!(again.optional_parts().contains(&part));
            }
            for part in book.missing_parts() {
                let more = book.with_part(part).unwrap();
                assert_eq!(&more.without_part(part).unwrap(), &**book, "{}", part.field);
            }
        }
    }

    #[test]
    fn nested_parts_need_their_enclosing_part() {
        let fire = OptionalPart::ALL[0];
        let less = builtin_rule_book().without_part(fire).unwrap();
        assert!(less.fire_access.is_none());
        assert!(less.missing_parts().iter().all(|part| !part.field.starts_with("fire_access.")));
        assert!(less.with_part(OptionalPart::ALL[1]).is_err());
    }
}
