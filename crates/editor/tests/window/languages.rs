//! The window in Spanish: every word of it, in the states that a user gets to.

use crate::hand::Hand;
use chalkcourse::Options;
use chalkcourse_words::Language;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};
use std::collections::BTreeSet;

/// Words that occur in no Spanish sentence and in almost every English one.
const ENGLISH: [&str; 40] = [
    "the", "of", "and", "is", "are", "not", "from", "with", "this", "that", "for", "on", "by", "at", "to",
    "it", "which", "module", "modules", "row", "rows", "block", "face", "faces", "roof", "none", "nothing",
    "left", "right", "draw", "save", "open", "move", "add", "take", "find", "close", "ridge", "eave",
    "press",
];

/// All text that is stored in files and not translated: names, addresses, notes, sources.
fn texts_of(value: &serde_json::Value, all: &mut Vec<String>) {
    match value {
        serde_json::Value::String(text) if text.contains(' ') || text.len() > 3 => all.push(text.clone()),
        serde_json::Value::Array(values) => values.iter().for_each(|value| texts_of(value, all)),
        serde_json::Value::Object(fields) => fields.values().for_each(|value| texts_of(value, all)),
        _ => {}
    }
}

/// Text on the screen that is still English.
fn english(hand: &Hand) -> BTreeSet<String> {
    let mut data = Vec::new();
    texts_of(&serde_json::to_value(hand.job().decided()).unwrap(), &mut data);
    data.sort_by_key(|text| std::cmp::Reverse(text.len()));
    let mut found = BTreeSet::new();
    for node in hand.harness.query_all_by(|_| true) {
        let node = node.accesskit_node();
        // The toolkits name the border and the close button of a window, and the arrows beside many tabs, in English
        // only.
        let theirs = ["Close window", "Scroll tabs left", "Scroll tabs right"];
        let own = node.role() == egui::accesskit::Role::Splitter
            || node.label().is_some_and(|label| theirs.contains(&label.as_str()));
        if own {
            continue;
        }
        for words in [node.label(), node.value(), node.description()].into_iter().flatten() {
            // A line of a wrapped source.
            if data.iter().any(|text| text.contains(words.trim())) {
                continue;
            }
            let mut rest = words.clone();
            for text in &data {
                rest = rest.replace(text.as_str(), "·");
            }
            let mut each = rest.split(|c: char| !c.is_alphabetic()).map(str::to_lowercase);
            if each.any(|word| ENGLISH.contains(&word.as_str())) {
                found.insert(words);
            }
        }
    }
    found
}

fn look(hand: &Hand, place: &str, all: &mut BTreeSet<String>) {
    all.extend(english(hand).into_iter().map(|words| format!("{place}: {words}")));
}

#[test]
fn no_english_is_left_in_the_spanish_window() {
    let options = Options { typed_paths: true, language: Language::SPANISH, ..Options::default() };
    let mut hand = Hand::with(options);
    let mut all = BTreeSet::new();
    assert!(hand.sees("Archivo") && !hand.sees("File"));
    look(&hand, "start", &mut all);
    for name in ["Archivo", "Edición", "Ver", "Ayuda"] {
        hand.press(name);
        look(&hand, name, &mut all);
        hand.key(Key::Escape);
    }
    for key in [Key::D, Key::P, Key::B, Key::T, Key::U, Key::S] {
        hand.key(key);
        look(&hand, &format!("tool {key:?}"), &mut all);
    }
    hand.key(Key::F1);
    look(&hand, "keys", &mut all);
    hand.key(Key::Escape);
    hand.chord(Modifiers::COMMAND, Key::F);
    look(&hand, "palette", &mut all);
    hand.key(Key::Escape);
    for (name, modifiers, key) in [
        ("courses", Modifiers::NONE, Key::C),
        ("fit-up", Modifiers::NONE, Key::Q),
        ("roof report", Modifiers::COMMAND, Key::R),
    ] {
        hand.chord(modifiers, key);
        look(&hand, name, &mut all);
        (0..3).for_each(|_| hand.key(Key::Escape));
    }
    hand.chord(Modifiers::SHIFT, Key::D);
    look(&hand, "taped face", &mut all);
    hand.press("Cerrar");
    hand.key(Key::O);
    for tab in ["Techo, dinero, existencias", "Entrega", "Comparar", "Renglones"] {
        hand.harness.query_all_by_label(tab).next().unwrap_or_else(|| panic!("no {tab}")).click();
        hand.harness.run();
        look(&hand, tab, &mut all);
    }
    hand.key(Key::Escape);
    hand.key(Key::L);
    hand.settle();
    look(&hand, "filled", &mut all);
    hand.chord(Modifiers::COMMAND, Key::Z);
    look(&hand, "undone", &mut all);
    for key in [Key::Num2, Key::Num3, Key::Num1] {
        hand.key(key);
        look(&hand, &format!("view {key:?}"), &mut all);
    }
    hand.key(Key::F11);
    look(&hand, "for the owner", &mut all);
    hand.key(Key::Escape);
    hand.chord(Modifiers::COMMAND, Key::N);
    look(&hand, "empty", &mut all);
    hand.press("Muéstreme, paso a paso");
    for step in 1..=7 {
        look(&hand, &format!("lesson {step}"), &mut all);
        if step < 7 {
            hand.press("Saltar este paso");
        }
    }
    hand.press("Ayuda");
    hand.press("Palabras del oficio");
    look(&hand, "glossary", &mut all);
    hand.key(Key::H);
    look(&hand, "steps taken", &mut all);
    assert!(all.is_empty(), "{} texts: {all:#?}", all.len());
}

/// A choice in the view menu, stored in the settings: findings are shown in the new language, the job is unchanged.
#[test]
fn the_language_changes_at_once_and_changes_nothing_else() {
    let mut hand = Hand::new();
    let before = hand.job();
    let keys = |hand: &Hand| {
        hand.editor().document().plan().findings.iter().map(|found| found.key.clone()).collect::<Vec<_>>()
    };
    let (known, total) = (keys(&hand), hand.editor().document().plan().takeoff.totals.total);
    hand.press("View");
    hand.press("Español");
    assert!(hand.sees("Hallazgos") && !hand.sees("Findings"));
    assert_eq!(hand.job(), before);
    assert_eq!((keys(&hand), hand.editor().document().plan().takeoff.totals.total), (known, total));
    hand.press("Ver");
    hand.press("English");
    assert!(hand.sees("Findings") && !hand.sees("Hallazgos"));
}

/// A third language is a single file: of a dozen messages here; all others are shown in English.
#[test]
fn a_language_of_a_dozen_messages_falls_back_to_english() {
    let french = "language-name = Français\nlanguage-code = fr\nwindow-file = Fichier\nwindow-edit = Édition\n\
        window-help = Aide\nwindow-open-job = Ouvrir un chantier…\ncommon-save = Enregistrer\nwindow-undo = Annuler\n\
        common-gable = pignon\ncommon-hip = arêtier\ncommon-rake = rive\ncommon-side = côté\n";
    let french = Language::read(french).unwrap();
    let mut hand = Hand::with(Options { typed_paths: true, language: french, ..Options::default() });
    assert!(hand.sees("Fichier") && hand.sees("Édition") && hand.sees("Aide"));
    assert!(!hand.sees("File") && hand.sees("View"));
    hand.press("Fichier");
    assert!(hand.sees("Ouvrir un chantier…") && hand.sees("Open the sample"));
}

/// Earlier results stay, and are shown in the new language: the claim of a fill, and the labels of steps.
#[test]
fn claims_and_steps_are_shown_in_the_current_language() {
    let mut hand = Hand::new();
    hand.click_plan(1.5, 1.0);
    hand.key(Key::L);
    hand.settle();
    let label = |hand: &Hand| hand.editor().document().history().undo_label().unwrap().clone();
    let claim = |hand: &Hand, words: &str| hand.harness.query_all_by_label_contains(words).count();
    assert!(claim(&hand, "proved)") > 0 && label(&hand).to_string().starts_with("fill "));
    hand.press("View");
    hand.press("Español");
    assert!(claim(&hand, "demostra") > 0, "the claim is forgotten, or still in English");
    assert_eq!(claim(&hand, "proved)"), 0);
    let spanish = label(&hand);
    assert!(spanish.to_string().starts_with("llenar "), "{spanish}");
    hand.key(Key::H);
    assert!(hand.sees(&spanish.to_string()), "the list of steps is in the language of before");
}
