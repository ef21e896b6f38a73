//! Parts of a rule book that may be missing: put in from the books that come with the program, and taken out.

use super::RuleBook;
use crate::builtin_rule_books;
use chalkcourse_words::{Say, say, tell};
use serde_json::Value;

/// A part of a rule book that may be missing.
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
    /// All of them; a part comes before what lies in it.
    pub const ALL: [Self; 12] = [
        part("fire_access", say("Fire access", "Acceso de bomberos")),
        part(
            "fire_access.hip_or_valley",
            say("Room beside hips and valleys", "Espacio junto a limatesas y limahoyas"),
        ),
        part("fire_access.below_escape", say("Room below escape windows", "Espacio bajo ventanas de escape")),
        part(
            "fire_access.integrated_exempt",
            say("Exemption of roof-integrated arrays", "Exención de arreglos integrados al techo"),
        ),
        part("roofing", say("Roofing", "Recubrimiento")),
        part("roofing.valley_clear", say("Side flashing to valleys", "Tapajuntas lateral a limahoyas")),
        part("roofing.hip_clear", say("Side flashing to hips", "Tapajuntas lateral a limatesas")),
        part(
            "roofing.lot_line_within",
            say("Fire class near a lot line", "Clase de fuego cerca de un lindero"),
        ),
        part("roofing.drip_edge", say("Drip edge", "Goterón")),
        part("roofing.ice_barrier", say("Ice barrier", "Barrera contra hielo")),
        part("roofing.fire_class", say("Fire class", "Clase de fuego")),
        part("loads", say("Wind and snow", "Viento y nieve")),
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
    /// The parts that the book does not have, of those that could be put in as it is now.
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

    /// The parts that the book has and could do without.
    pub fn optional_parts(&self) -> Vec<OptionalPart> {
        let book = serde_json::to_value(self).unwrap_or(Value::Null);
        OptionalPart::ALL.into_iter().filter(|part| part.of(&book).is_some()).collect()
    }

    /// The book with a part as the first of the books has it that come with the program and have it.
    ///
    /// # Errors
    /// No book has it, or this one has nothing to put it in.
    pub fn with_part(&self, part: OptionalPart) -> Result<Self, String> {
        let from = builtin_rule_books()
            .iter()
            .filter_map(|book| part.of(&serde_json::to_value(&**book).ok()?).cloned())
            .next()
            .ok_or_else(|| {
                tell!(
                    "no book that comes with the program has {}",
                    "ningún libro incluido en el programa tiene {}",
                    part.name
                )
            })?;
        self.changed_at(part, |fields, name| {
            fields.insert(name.to_owned(), from);
        })
    }

    /// The book without a part.
    ///
    /// # Errors
    /// The book has no such part.
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
        let none = || {
            tell!(
                "this rule book has no place for {}",
                "este libro de reglas no tiene lugar para {}",
                part.name
            )
        };
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
    fn every_part_can_be_taken_out_and_put_in_again() {
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
    fn what_lies_in_a_part_that_is_missing_waits_for_it() {
        let fire = OptionalPart::ALL[0];
        let less = builtin_rule_book().without_part(fire).unwrap();
        assert!(less.fire_access.is_none());
        assert!(less.missing_parts().iter().all(|part| !part.field.starts_with("fire_access.")));
        assert!(less.with_part(OptionalPart::ALL[1]).is_err());
    }
}
