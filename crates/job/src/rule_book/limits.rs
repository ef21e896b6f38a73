//! Every limit of a rule book as a row, for display and editing: one traversal of the book serves both.

use super::{Limit, LoadStandard, PathScheme, RuleBook};
use crate::{Source, Standing};
use chalkcourse_geometry::{EdgeKind, Length, Pitch};
use chalkcourse_words::{Said, Say, later as words};
use std::collections::BTreeMap;

/// The value of a limit.
#[derive(Clone, Debug, PartialEq)]
pub enum LimitValue {
    /// A length.
    Length(Length),
    /// A pitch.
    Pitch(Pitch),
    /// A whole number.
    Count(u32),
    /// A fraction, 0 to 1.
    Share(f64),
    /// A load factor.
    Factor(f64),
    /// A pressure, pounds per square foot.
    Psf(f64),
    /// Required or not.
    Yes(bool),
    /// Where pathways are required.
    Scheme(PathScheme),
    /// The edition that loads are taken from.
    Standard(LoadStandard),
    /// Text.
    Words(String),
}

/// A limit of a book with its path and source.
#[derive(Clone, Debug, PartialEq)]
pub struct LimitRow {
    /// Its path in the file, like [`Difference::field`](super::Difference::field) without `.value`.
    pub field: String,
    /// The section of the book.
    pub part: Say,
    /// Its name.
    pub name: Said,
    /// Its value.
    pub value: LimitValue,
    /// Its source; `None` for a setback or clearance that the book does not have.
    pub source: Option<Source>,
}

/// Prefix of the source of a limit that was edited.
const AMENDED: &str = "amended by the office";

/// Access to the value and source of a limit during traversal.
trait Slot {
    fn value(&self) -> LimitValue;
    fn set(&mut self, value: &LimitValue) -> bool;
    fn source(&mut self) -> &mut Source;
}

macro_rules! slot {
    ($type:ty, $variant:ident) => {
        slot!($type, $variant, LimitValue::$variant);
    };
    ($type:ty, $variant:ident, $make:expr) => {
        impl Slot for Limit<$type> {
            fn value(&self) -> LimitValue {
                $make(self.value.clone())
            }
            fn set(&mut self, value: &LimitValue) -> bool {
                if let LimitValue::$variant(value) = value {
                    self.value = value.clone();
                    return true;
                }
                false
            }
            fn source(&mut self) -> &mut Source {
                &mut self.source
            }
        }
    };
}

slot!(Length, Length);
slot!(Pitch, Pitch);
slot!(u32, Count);
slot!(bool, Yes);
slot!(PathScheme, Scheme);
slot!(LoadStandard, Standard);
slot!(String, Words);

/// A number whose kind is determined by its place in the book.
struct Number<'a>(&'a mut Limit<f64>, fn(f64) -> LimitValue);

impl Slot for Number<'_> {
    fn value(&self) -> LimitValue {
        (self.1)(self.0.value)
    }
    fn set(&mut self, value: &LimitValue) -> bool {
        let (LimitValue::Share(number) | LimitValue::Factor(number) | LimitValue::Psf(number)) = value else {
            return false;
        };
        if (self.1)(*number) != *value {
            return false;
        }
        self.0.value = *number;
        true
    }
    fn source(&mut self) -> &mut Source {
        &mut self.0.source
    }
}

type Visit<'v> = dyn FnMut(String, Say, Said, &mut dyn Slot) + 'v;

impl RuleBook {
    /// Every limit of the book, in the order of its file. Setbacks and clearances that the book does not have are
    /// included as zero, without a source.
    pub fn limits(&self) -> Vec<LimitRow> {
        let mut book = self.clone();
        let mut rows = Vec::new();
        book.walk(&mut |field, part, name, slot| {
            let source = Some(slot.source().clone()).filter(is_there);
            rows.push(LimitRow { field, part, name, value: slot.value(), source });
        });
        rows
    }

    /// The book with one limit changed. Its source then says that it is the office's own, followed by the previous
    /// source: a changed number must not be attributed to a code.
    ///
    /// # Errors
    /// If there is no such limit, the value is of another kind, or the book would be inconsistent.
    pub fn with_limit(&self, field: &str, value: &LimitValue) -> Result<Self, Said> {
        self.changed(field, &mut |slot| {
            let before = slot.value();
            if before == *value {
                return true;
            }
            let source = slot.source();
            let text = match source.text.as_str() {
                "" => "added by the office".to_owned(),
                old if old.starts_with(AMENDED) => old.to_owned(),
                old => format!("{AMENDED}; before: {old}"),
            };
            *source = Source::new(text, Standing::Office);
            slot.set(value)
        })
    }

    /// The book with another source for a limit.
    ///
    /// # Errors
    /// If there is no such limit, or the source is empty.
    pub fn with_source(&self, field: &str, source: &Source) -> Result<Self, Said> {
        if source.text.trim().is_empty() {
            return Err(words::rulebook::SAY_WHERE_THE_LIMIT_COMES.into());
        }
        self.changed(field, &mut |slot| {
            *slot.source() = Source::new(source.text.trim(), source.standing);
            true
        })
    }

    fn changed(&self, field: &str, change: &mut dyn FnMut(&mut dyn Slot) -> bool) -> Result<Self, Said> {
        let mut book = self.clone();
        let mut done = None;
        book.walk(&mut |at, _, _, slot| {
            if at == field {
                done = Some(change(slot));
            }
        });
        match done {
            None => {
                return Err(words::rulebook::this_rule_book_has_no(&field));
            }
            Some(false) => {
                return Err(words::rulebook::the_limit_is_of_another(&field));
            }
            Some(true) => {}
        }
        book.setbacks.retain(|_, limit| is_there(&limit.source));
        for limits in [&mut book.clearances, &mut book.clearances_above, &mut book.clearances_below] {
            limits.retain(|_, limit| is_there(&limit.source));
        }
        book.check()?;
        Ok(book)
    }

    /// Visits every limit. Missing setbacks and clearances are added temporarily.
    fn walk(&mut self, visit: &mut Visit<'_>) {
        fn all<K: Ord + Copy>(
            map: &mut BTreeMap<K, Limit<Length>>,
            kinds: &[K],
            mut one: impl FnMut(K, &mut Limit<Length>),
        ) {
            for &kind in kinds {
                let none = || Limit { value: Length::ZERO, source: Source::new("", Standing::Office) };
                one(kind, map.entry(kind).or_insert_with(none));
            }
        }
        all(&mut self.setbacks, &EdgeKind::ALL, |kind, limit| {
            visit(
                format!("setbacks.{}", key(kind)),
                words::rulebook::SETBACKS_ON_THE_SLOPE,
                words::rulebook::from(&kind.name()),
                limit,
            );
        });
        all(&mut self.clearances, &crate::PenetrationKind::ALL, |kind, limit| {
            visit(
                format!("clearances.{}", key(kind)),
                words::rulebook::CLEARANCES_ON_THE_SLOPE,
                words::rulebook::to(&kind.name()),
                limit,
            );
        });
        for (field, side, limits) in [
            ("clearances_above", words::rulebook::ABOVE, &mut self.clearances_above),
            ("clearances_below", words::rulebook::BELOW, &mut self.clearances_below),
        ] {
            all(limits, &crate::PenetrationKind::ALL, |kind, limit| {
                visit(
                    format!("{field}.{}", key(kind)),
                    words::rulebook::CLEARANCES_BY_SIDE_WHERE_MORE,
                    Said::joined([side.into(), Said::own(" "), kind.name().into()]),
                    limit,
                );
            });
        }
        let part = words::rulebook::THE_ARRAY;
        visit(
            "courses_to_ridge".into(),
            part,
            words::rulebook::FULL_COURSES_LEFT_TO_THE.into(),
            &mut self.courses_to_ridge,
        );
        let hooked = &mut Number(&mut self.hooked_share, LimitValue::Share);
        visit("hooked_share".into(), part, words::rulebook::SHARE_OF_A_LOWER_EDGE.into(), hooked);
        if let Some(fire) = &mut self.fire_access {
            let mut one = |field: &str, name: Say, slot: &mut dyn Slot| {
                visit(format!("fire_access.{field}"), words::common::FIRE_ACCESS, name.into(), slot);
            };
            one("scheme", words::rulebook::PATHWAYS, &mut fire.scheme);
            one("path_width", words::rulebook::LEAST_WIDTH_OF_A_PATHWAY, &mut fire.path_width);
            one("street_side", words::rulebook::ONE_ON_THE_STREET_SIDE, &mut fire.street_side);
            one("exempt_to", words::rulebook::EXEMPT_UP_TO_A_PITCH, &mut fire.exempt_to);
            one(
                "ridge.up_to_share",
                words::rulebook::BESIDE_A_RIDGE_SMALLER_ARRAY,
                &mut fire.ridge.up_to_share,
            );
            one("ridge.beyond", words::rulebook::BESIDE_A_RIDGE_LARGER_ARRAY, &mut fire.ridge.beyond);
            one(
                "ridge.share",
                words::rulebook::SMALLER_ARRAY_SHARE_OF_THE,
                &mut Number(&mut fire.ridge.share, LimitValue::Share),
            );
            let sprinklers = &mut Number(&mut fire.ridge.share_with_sprinklers, LimitValue::Share);
            one("ridge.share_with_sprinklers", words::rulebook::THE_SAME_WITH_SPRINKLERS, sprinklers);
            if let Some(limit) = &mut fire.hip_or_valley {
                one("hip_or_valley", words::rulebook::BESIDE_A_HIP_OR_VALLEY, limit);
            }
            if let Some(limit) = &mut fire.below_escape {
                one("below_escape", words::rulebook::FREE_BELOW_AN_ESCAPE_WINDOW, limit);
            }
            if let Some(limit) = &mut fire.integrated_exempt {
                one("integrated_exempt", words::rulebook::ROOF_INTEGRATED_IS_EXEMPT, limit);
            }
        }
        if let Some(roofing) = &mut self.roofing {
            let mut one = |field: &str, name: Say, slot: &mut dyn Slot| {
                visit(format!("roofing.{field}"), words::common::ROOFING, name.into(), slot);
            };
            one("least_pitch", words::rulebook::LEAST_PITCH_FOR_SHINGLES, &mut roofing.least_pitch);
            one(
                "single_underlayment_from",
                words::rulebook::ONE_UNDERLAYMENT_FROM,
                &mut roofing.single_underlayment_from,
            );
            one("cricket_from", words::rulebook::CRICKET_BEHIND_WIDER_THAN, &mut roofing.cricket_from);
            if let Some(limit) = &mut roofing.valley_clear {
                one("valley_clear", words::rulebook::SIDE_FLASHING_TO_A_VALLEYS, limit);
            }
            if let Some(limit) = &mut roofing.hip_clear {
                one("hip_clear", words::rulebook::SIDE_FLASHING_TO_A_HIPS, limit);
            }
            if let Some(limit) = &mut roofing.lot_line_within {
                one("lot_line_within", words::rulebook::FIRE_CLASS_WHERE_A_LOT, limit);
            }
            if let Some(limit) = &mut roofing.drip_edge {
                one("drip_edge", words::common::DRIP_EDGE, limit);
            }
            if let Some(ice) = &mut roofing.ice_barrier {
                one(
                    "ice_barrier.inside_wall",
                    words::rulebook::ICE_BARRIER_INSIDE_THE_WALL,
                    &mut ice.inside_wall,
                );
                one("ice_barrier.steep_from", words::rulebook::ICE_BARRIER_STEEP_FROM, &mut ice.steep_from);
                one(
                    "ice_barrier.steep_length",
                    words::rulebook::ICE_BARRIER_STEEP_LENGTH,
                    &mut ice.steep_length,
                );
            }
            if let Some(limit) = &mut roofing.fire_class {
                one("fire_class", words::common::FIRE_CLASS, limit);
            }
        }
        if let Some(loads) = &mut self.loads {
            let mut one = |field: &str, name: Say, slot: &mut dyn Slot| {
                visit(format!("loads.{field}"), words::common::WIND_AND_SNOW, name.into(), slot);
            };
            one("standard", words::rulebook::EDITION, &mut loads.standard);
            one(
                "wind_factor",
                words::rulebook::WIND_FACTOR,
                &mut Number(&mut loads.wind_factor, LimitValue::Factor),
            );
            one(
                "dead_factor",
                words::rulebook::DEAD_LOAD_FACTOR,
                &mut Number(&mut loads.dead_factor, LimitValue::Factor),
            );
            let least = &mut Number(&mut loads.least_pressure_psf, LimitValue::Psf);
            one("least_pressure_psf", words::rulebook::LEAST_PRESSURE, least);
        }
    }
}

/// Whether a limit is in the book: during traversal, a missing one has an empty source.
fn is_there(source: &Source) -> bool {
    !source.text.is_empty()
}

/// The name of a kind in a file.
fn key(kind: impl serde::Serialize) -> String {
    serde_json::to_value(kind).ok().and_then(|word| word.as_str().map(str::to_owned)).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{builtin_rule_book, builtin_rule_books};
    use serde_json::Value;

    /// Paths of everything in a file that has a value and a source.
    fn in_file(path: &str, value: &Value, found: &mut Vec<String>) {
        let Some(fields) = value.as_object() else { return };
        if fields.contains_key("value") && fields.contains_key("source") {
            found.push(path.to_owned());
        }
        for (name, inner) in fields {
            let inner_path = if path.is_empty() { name.clone() } else { format!("{path}.{name}") };
            in_file(&inner_path, inner, found);
        }
    }

    #[test]
    fn every_limit_of_built_in_books_is_listed() {
        for book in builtin_rule_books() {
            let mut expected = Vec::new();
            in_file("", &serde_json::to_value(&**book).unwrap(), &mut expected);
            expected.sort();
            let rows = book.limits().into_iter().filter(|row| row.source.is_some());
            let mut fields: Vec<_> = rows.map(|row| row.field).collect();
            fields.sort();
            assert_eq!(fields, expected, "{}", book.name);
        }
    }

    #[test]
    fn a_changed_limit_no_longer_quotes_the_code_as_its_own() {
        let book = builtin_rule_book();
        let nine = LimitValue::Length(Length::from_inches(9.0));
        let own = book.with_limit("setbacks.rake", &nine).unwrap();
        assert_eq!(own.setback(EdgeKind::Rake), Length::from_inches(9.0));
        let fields: Vec<_> = book.differences(&own).into_iter().map(|d| d.field).collect();
        assert_eq!(
            fields,
            ["setbacks.rake.source.standing", "setbacks.rake.source.text", "setbacks.rake.value"]
        );
        let source = &own.setbacks[&EdgeKind::Rake].source;
        assert!(source.text.starts_with("amended") && source.text.contains("step flashing"), "{source:?}");
        assert_eq!(source.standing, Standing::Office);
        // Changing it again does not repeat the prefix.
        let again = own.with_limit("setbacks.rake", &LimitValue::Length(Length::from_inches(8.0))).unwrap();
        assert_eq!(again.setbacks[&EdgeKind::Rake].source, *source);
        assert_eq!(&own.with_limit("setbacks.rake", &nine).unwrap(), &own);
    }

    #[test]
    fn every_limit_can_be_set_to_itself_and_nothing_changes() {
        for book in builtin_rule_books() {
            for row in book.limits() {
                assert_eq!(&book.with_limit(&row.field, &row.value).unwrap(), &**book, "{}", row.field);
            }
        }
    }

    #[test]
    fn a_missing_setback_is_added_by_setting_it() {
        let mut book = (*builtin_rule_book()).clone();
        book.setbacks.remove(&EdgeKind::Hip);
        let row = book.limits().into_iter().find(|row| row.field == "setbacks.hip").unwrap();
        assert_eq!((row.value, row.source), (LimitValue::Length(Length::ZERO), None));
        let six = LimitValue::Length(Length::from_inches(6.0));
        let own = book.with_limit("setbacks.hip", &six).unwrap();
        assert_eq!(own.setback(EdgeKind::Hip), Length::from_inches(6.0));
        assert_eq!(own.setbacks.len(), book.setbacks.len() + 1);
    }

    #[test]
    fn nonsense_is_refused() {
        let book = builtin_rule_book();
        let share = |value| book.with_limit("hooked_share", &LimitValue::Share(value));
        assert!(share(1.0).is_ok() && share(1.01).is_err() && share(f64::NAN).is_err());
        assert!(book.with_limit("hooked_share", &LimitValue::Psf(0.5)).is_err());
        assert!(book.with_limit("setbacks.moon", &LimitValue::Count(1)).is_err());
        let source = |text: &str| Source::new(text, Standing::Confirmed);
        assert!(book.with_source("setbacks.rake", &source("  ")).is_err());
        let own = book.with_source("setbacks.rake", &source(" county amendment 12 ")).unwrap();
        assert_eq!(own.setbacks[&EdgeKind::Rake].source, source("county amendment 12"));
    }
}
