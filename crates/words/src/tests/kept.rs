use super::{HALF, KEPT, kept, key};
use crate::told::{number, text};
use crate::{Count, Language};
use fluent_bundle::{FluentArgs, FluentValue};
use std::ptr;

fn args(values: impl IntoIterator<Item = FluentValue<'static>>) -> FluentArgs<'static> {
    values.into_iter().zip(["a", "b", "c"]).map(|(value, name)| (name, value)).collect()
}

#[test]
fn what_was_told_is_told_again_without_asking() {
    let values = args([text(&"Garage"), number(3_usize)]);
    let tell = || kept(ptr::null(), 7, &values, || "as told first".into());
    assert_eq!(tell(), "as told first");
    assert_eq!(kept(ptr::null(), 7, &values, || unreachable!("it is kept")), "as told first");
}

#[test]
fn all_that_a_text_depends_on_tells_it_apart() {
    let shown = |value: f64| number(Count { number: value, shown: "1".into() });
    let all = [
        args([]),
        args([text(&"")]),
        args([text(&""), text(&"")]),
        args([text(&"ab"), text(&"c")]),
        args([text(&"a"), text(&"bc")]),
        args([text(&"1")]),
        args([number(1_usize)]),
        args([number(11_usize)]),
        // One text, and another plural.
        args([shown(1.25)]),
        args([shown(0.75)]),
    ];
    let address = |language: Language| ptr::from_ref(language.0).cast();
    let mut keys = Vec::new();
    for values in &all {
        for language in Language::ALL {
            keys.extend([3, 4].map(|nth| key(address(language), nth, values).unwrap()));
        }
    }
    let count = keys.len();
    keys.sort();
    keys.dedup();
    assert_eq!(keys.len(), count);
}

#[test]
fn a_thread_keeps_so_many_and_no_more() {
    let tell = |nth: usize| kept(ptr::null(), nth, &args([]), || nth.to_string());
    for nth in 0..5 * HALF {
        assert_eq!(tell(nth), nth.to_string());
        // Shown all the time: never formatted again.
        assert_eq!(kept(ptr::null(), 0, &args([]), || "forgotten".into()), "0");
        let count = KEPT.with_borrow(|kept| (kept.newer.len(), kept.older.len()));
        assert!(count.0 <= HALF && count.1 <= HALF, "{count:?}");
    }
    assert_eq!(kept(ptr::null(), 1, &args([]), || "forgotten".into()), "forgotten");
}
