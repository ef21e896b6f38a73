//! A cache of formatted messages: a window shows the same ones in each frame, and formatting one takes microseconds.

use fluent_bundle::{FluentArgs, FluentValue};
use std::cell::RefCell;
use std::collections::HashMap;
use std::mem;

/// At most twice as many are kept: when the newer half is full, the older half, which was not used since, is dropped.
const HALF: usize = 4_096;

#[derive(Default)]
struct Kept {
    newer: HashMap<Vec<u8>, String>,
    older: HashMap<Vec<u8>, String>,
}

thread_local! {
    static KEPT: RefCell<Kept> = RefCell::default();
}

impl Kept {
    fn find(&mut self, key: &[u8]) -> Option<String> {
        if let Some(text) = self.newer.get(key) {
            return Some(text.clone());
        }
        let (key, text) = self.older.remove_entry(key)?;
        self.keep(key, text.clone());
        Some(text)
    }

    fn keep(&mut self, key: Vec<u8>, text: String) {
        if self.newer.len() >= HALF {
            self.older = mem::take(&mut self.newer);
        }
        self.newer.insert(key, text);
    }
}

/// The text of message `nth` of a language, found by its address: from the cache if it has these values, otherwise from
/// `tell`.
pub(crate) fn kept(
    language: *const (),
    nth: usize,
    values: &FluentArgs<'_>,
    tell: impl FnOnce() -> String,
) -> String {
    let Some(key) = key(language, nth, values) else { return tell() };
    if let Some(text) = KEPT.with_borrow_mut(|kept| kept.find(&key)) {
        return text;
    }
    let text = tell();
    KEPT.with_borrow_mut(|kept| kept.keep(key, text.clone()));
    text
}

/// Everything that the text depends on. `None` for values that messages never have.
fn key(language: *const (), nth: usize, values: &FluentArgs<'_>) -> Option<Vec<u8>> {
    let mut key = Vec::with_capacity(64);
    key.extend(language.addr().to_le_bytes());
    key.extend(nth.to_le_bytes());
    for (_, value) in values.iter() {
        // Include the length of each text, so that two sets of values never have the same key.
        let (number, text) = match value {
            FluentValue::String(text) => (None, text.as_ref()),
            FluentValue::Number(number) => {
                (Some(number.value.to_bits()), number.options.currency.as_deref().unwrap_or_default())
            }
            _ => return None,
        };
        key.push(u8::from(number.is_some()));
        key.extend(number.unwrap_or_default().to_le_bytes());
        key.extend(text.len().to_le_bytes());
        key.extend(text.as_bytes());
    }
    Some(key)
}

#[cfg(test)]
#[path = "tests/kept.rs"]
mod tests;
