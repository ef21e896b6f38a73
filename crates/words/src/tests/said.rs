use super::*;
use crate::{common, later, modules, noted, silent, speaking};

#[test]
fn deferred_and_immediate_texts_agree() {
    for language in Language::ALL {
        for count in [0, 1, 2] {
            let said = later::common::modules(count);
            assert_eq!(said.within(language), speaking(language, || modules(count)));
        }
        let (now, said) = speaking(language, || {
            (common::face_4(&common::THE_JOB), later::common::face_4(&common::THE_JOB))
        });
        assert_eq!(said.within(language), now, "a message in a message");
        assert_eq!(Said::from(common::THE_JOB).within(language), common::THE_JOB.within(language));
    }
}

#[test]
fn own_texts_are_kept_and_data_texts_looked_up() {
    let (data, english) = (crate::DATA[0], crate::DATA[0].within(Language::ENGLISH));
    for language in Language::ALL {
        assert_eq!(Said::own(english).within(language), english);
        assert_eq!(Said::of_data(english).within(language), data.within(language));
        let placed = Said::from(common::THE_JOB).after("parts[3]: ");
        assert_eq!(placed.within(language), format!("parts[3]: {}", common::THE_JOB.within(language)));
        assert_eq!(Said::of_data("Not known to anyone").within(language), "Not known to anyone");
    }
}

#[test]
fn packages_are_counted_by_the_name_that_a_kit_has_for_one() {
    let told = |count: f64, name: &str, language| Said::packages(count, name).within(language).into_owned();
    assert_eq!(told(1.0, "box", Language::ENGLISH), "1 box");
    assert_eq!(told(3.0, "box", Language::ENGLISH), "3 boxes");
    assert_eq!(told(3.0, "box", Language::SPANISH), "3 cajas");
    for language in Language::ALL {
        assert_eq!(told(3.0, "Kiste", language), "3 × Kiste");
    }
}

#[test]
fn parts_are_joined_with_a_separator() {
    let list = |names: &[&str]| String::from(Said::listed(names.iter().map(|name| Said::own(*name)), ", "));
    assert_eq!([list(&[]), list(&["a"]), list(&["a", "b", "c"])], ["", "a", "a, b, c"]);
    assert_eq!(Count::shown(0.5, "1/2").as_text(), "1/2");
}

#[test]
fn silent_detects_formatting() {
    let (said, heard) = silent(|| later::common::modules(3_usize));
    assert_eq!(heard, None);
    assert_eq!(silent(|| said.to_string()), ("3 modules".to_owned(), Some("common-modules")));
    assert_eq!(silent(|| common::THE_JOB.now()).1, Some("common-the-job"));
    assert_eq!(silent(|| Said::own("x").to_string()).1, None);
}

#[test]
fn case_changes_follow_the_language() {
    let face = || Said::from(common::FACE);
    assert_eq!(face().in_small_letters().within(Language::SPANISH), "faldón");
    assert_eq!(face().in_small_letters().with_capital().within(Language::ENGLISH), "Face");
    let (_, heard) = silent(|| face().in_small_letters().with_capital());
    assert_eq!(heard, None);
    assert_eq!([sentence("ángulo"), sentence(""), sentence(&"x y")], ["Ángulo", "", "X y"]);
    assert_eq!(Said::default().now(), "");
}

#[test]
fn what_was_told_is_told_again() {
    let (told, messages) = noted(|| format!("{}{}", modules(3_usize), common::THE_JOB.now()));
    assert_eq!(messages.count(), (2, 1));
    assert_eq!(messages.again(), told.len());
    // What is told after it is noted no more.
    assert_eq!(noted(|| ()).1.count(), (0, 0));
}
