use super::*;

#[test]
fn tags_of_languages() {
    assert_eq!(Language::from_tag("es"), Some(Language::SPANISH));
    assert_eq!(Language::from_tag("es-MX"), Some(Language::SPANISH));
    assert_eq!(Language::from_tag("ES_us.UTF-8"), Some(Language::SPANISH));
    assert_eq!(Language::from_tag("en_US@latin"), Some(Language::ENGLISH));
    assert_eq!(Language::from_tag("est"), None);
    assert_eq!(Language::from_tag(""), None);
}

/// The order of the variables is that of IEEE Std 1003.1, 8.2: LC_ALL, then LC_MESSAGES, then LANG; an empty one counts as not
/// set.
#[test]
fn the_desktop_language_is_found() {
    let desk = |set: &[(&str, &str)]| {
        Language::of_desk(|name| {
            set.iter().find(|(known, _)| *known == name).map(|(_, value)| (*value).to_owned())
        })
    };
    assert_eq!(desk(&[]), Language::ENGLISH);
    assert_eq!(desk(&[("LANG", "es_MX.UTF-8")]), Language::SPANISH);
    assert_eq!(desk(&[("LANG", "es_MX.UTF-8"), ("LC_MESSAGES", "en_US")]), Language::ENGLISH);
    assert_eq!(desk(&[("LANG", "es"), ("LC_MESSAGES", "en"), ("LC_ALL", "es")]), Language::SPANISH);
    assert_eq!(desk(&[("LANG", "es"), ("LC_ALL", "")]), Language::SPANISH);
    assert_eq!(desk(&[("LANG", "C.UTF-8")]), Language::ENGLISH);
}

#[test]
fn the_language_is_restored_even_after_a_panic() {
    let broken = std::panic::catch_unwind(|| speaking(Language::SPANISH, || std::panic::panic_any(())));
    assert!(broken.is_err());
    assert_eq!(spoken(), Language::ENGLISH);
}

#[test]
fn the_language_is_per_thread() {
    speaking(Language::SPANISH, || {
        let other = std::thread::spawn(spoken).join();
        assert_eq!(other.ok(), Some(Language::ENGLISH));
        assert_eq!(spoken(), Language::SPANISH);
    });
}

/// A language file with only a dozen messages; the others fall back to English.
const FRENCH: &str = include_str!("fr.ftl");

#[test]
fn a_third_language_is_one_file() {
    let french = Language::read(FRENCH).unwrap();
    assert_eq!((french.code(), french.name()), ("fr", "Français"));
    speaking(french, || {
        assert_eq!(crate::common::modules(0), "0 module");
        assert_eq!(crate::common::modules(2), "2 modules photovoltaïques");
    });
    let missing: Vec<_> = french.missing().collect();
    assert!(!missing.contains(&"common-modules"));
    assert_eq!(missing.len() + 1, IDS.len());
    for (nth, _) in IDS.iter().enumerate().filter(|(_, id)| missing.contains(id)) {
        assert_eq!(french.0.fixed(nth), Language::ENGLISH.0.fixed(nth));
    }
}

#[test]
fn language_errors_are_reported_with_their_line() {
    let broken = FRENCH.replace("[one]", "[one");
    let line = FRENCH.lines().position(|line| line.contains("[one]")).unwrap() + 1;
    let fault = Language::read(&broken).unwrap_err();
    assert!(fault.starts_with("line ") && !fault.starts_with("line 1:"), "{line}: {fault}");
    assert_eq!(Language::read("a = b").unwrap_err(), "say `language-code = …`");
}

/// A new language may start with a dozen messages; those that crews rely on today are complete.
#[test]
fn spanish_has_all_that_english_has() {
    assert_eq!(Language::SPANISH.missing().collect::<Vec<_>>(), [""; 0]);
    assert_eq!(Language::ENGLISH.missing().count(), 0);
}
