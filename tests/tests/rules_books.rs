//! The shipped rule books: each can be read, and matches its edition.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a helper of a test may stop it")]

use chalkcourse_job::{LoadStandard, PathScheme, RuleBook, load_rule_book};
use chalkcourse_tests::top;
use std::collections::BTreeMap;

fn books() -> BTreeMap<String, RuleBook> {
    let folder = top().join("assets/rule-books");
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    files
        .map(|path| {
            let book = load_rule_book(&path).unwrap_or_else(|error| panic!("{error}"));
            (path.file_stem().unwrap().to_string_lossy().into_owned(), book)
        })
        .collect()
}

/// IRC R324.6 (2018, 2021, 2024): 36 in pathways, 18 and 36 in beside the ridge, 33 %, with sprinklers 66 % (from memory), exempt
/// to 2:12. IFC 605.11 (2012, 2015): 3 ft, 18 in beside hips and valleys, on each slope.
#[test]
fn fire_access_by_edition() {
    let books = books();
    assert_eq!(books.len(), 4);
    for (name, book) in &books {
        let fire = book.fire_access.as_ref().unwrap();
        let ridge = &fire.ridge;
        let old = name.ends_with("older-fire-access");
        let inches = |length: chalkcourse_geometry::Length| (length.inches() * 16.0).round() / 16.0;
        assert_eq!(inches(fire.path_width.value), 36.0, "{name}");
        assert_eq!(fire.exempt_to.value.rise_in_12(), 2.0, "{name}");
        assert_eq!(inches(ridge.beyond.value), 36.0, "{name}");
        assert_eq!(inches(ridge.up_to_share.value), if old { 36.0 } else { 18.0 }, "{name}");
        assert_eq!(ridge.share.value, if old { 1.0 } else { 0.33 }, "{name}");
        assert_eq!(ridge.share_with_sprinklers.value, if old { 1.0 } else { 0.66 }, "{name}");
        assert_eq!(
            fire.hip_or_valley.as_ref().map(|limit| inches(limit.value)),
            old.then_some(18.0),
            "{name}"
        );
        assert_eq!(fire.scheme.value == PathScheme::EachSlope, old, "{name}");
        // In doubt, and so off until an office has read its own edition.
        assert!(fire.integrated_exempt.as_ref().is_none_or(|limit| !limit.value), "{name}");
    }
    let standard = |name: &str| books[name].loads.as_ref().unwrap().standard.value;
    assert_eq!(standard("tamsin-bluff-2021-codes"), LoadStandard::Asce716);
    assert_eq!(standard("tamsin-bluff-2024-codes"), LoadStandard::Asce722);
}

/// Two books of one office differ only in what their editions change.
#[test]
fn what_two_editions_change() {
    let books = books();
    let differences = books["tamsin-bluff-2026"].differences(&books["tamsin-bluff-2021-codes"]);
    assert!(!differences.is_empty());
    for difference in differences {
        let of_the_book = ["name", "based_on"].contains(&difference.field.as_str());
        assert!(of_the_book || difference.field.starts_with("fire_access."), "{difference:?}");
    }
}
