//! Everything derived from a job, in Spanish: the same facts, and no English words.
#![allow(clippy::unwrap_used, reason = "a helper of a test may stop it")]

use chalkcourse_job::{Resolved, builtin_kit, builtin_rule_books};
use chalkcourse_plan::{By, Offers, Plan, Seen, evaluate, fix_words, fixes};
use chalkcourse_sheets::{Made, Output, words};
use chalkcourse_telling::order::{packages_words, term_words};
use chalkcourse_tests::samples;
use chalkcourse_words::{Language, of_data, speaking};
use std::collections::BTreeSet;

/// Words that are in no Spanish sentence and in almost every English one.
const ENGLISH: [&str; 24] = [
    "the", "of", "and", "is", "are", "not", "from", "with", "this", "that", "for", "on", "by", "at", "to",
    "it", "which", "module", "modules", "row", "rows", "asks", "block", "face",
];

fn is_english(words: &str) -> bool {
    words.split(|c: char| !c.is_alphabetic()).any(|word| ENGLISH.contains(&word.to_lowercase().as_str()))
}

/// A job without names, under conditions that trigger everything the rules can find.
fn harsh(mut job: Resolved) -> Resolved {
    let book = std::sync::Arc::make_mut(&mut job.rule_book);
    for limit in book.setbacks.values_mut().chain(book.clearances.values_mut()) {
        limit.value = limit.value * 6.0;
    }
    book.courses_to_ridge.value = 40;
    book.hooked_share.value = 1.0;
    job
}

/// Parts, packages, crews and cautions of the shipped data, except for measures that read alike.
#[test]
fn built_in_data_is_in_spanish_too() {
    let (kit, books) = (builtin_kit(), builtin_rule_books());
    let parts = kit.parts.iter().flat_map(|part| [part.name.clone(), part.package.name.clone()]);
    let crews = kit.crews.iter().map(|crew| crew.name.clone());
    let cautions = books.iter().flat_map(|book| &book.cautions);
    let cautions = cautions.flat_map(|caution| [caution.about.clone(), caution.text.clone()]);
    let roofing = books.iter().filter_map(|book| book.roofing.as_ref());
    let roofing = roofing.flat_map(|roofing| {
        let limits = [&roofing.drip_edge, &roofing.fire_class].into_iter().flatten();
        limits
            .map(|limit| limit.value.clone())
            .chain([roofing.double_underlayment.clone()])
            .collect::<Vec<_>>()
    });
    let all: BTreeSet<String> = parts.chain(crews).chain(cautions).chain(roofing).collect();
    assert!(all.len() > 100);
    let missing: Vec<_> =
        all.iter().filter(|text| speaking(Language::SPANISH, || of_data(text)) == **text).collect();
    assert!(missing.is_empty(), "{missing:#?}");
}

/// Every sample, as it is and under limits that nearly everything breaks: no sentence of the rules, of the report of what was
/// checked, of the checklist or of the order has an English word other than names; sources are quoted.
#[test]
fn findings_checklist_and_order_are_in_spanish() {
    let mut english = BTreeSet::new();
    let mut codes = BTreeSet::new();
    for (name, job) in samples::all() {
        for job in [job.clone(), harsh(job)] {
            let plan: Plan = speaking(Language::SPANISH, || evaluate(&job));
            let names: Vec<&str> = job.faces.iter().map(|face| face.name.as_str()).collect();
            let mut hear = |words: &str| {
                let bare = names.iter().fold(words.to_owned(), |words, name| words.replace(name, "·"));
                if is_english(&bare) {
                    english.insert(format!("{name}: {words}"));
                }
            };
            for finding in &plan.findings {
                codes.insert(finding.rule);
                let told = speaking(Language::SPANISH, || chalkcourse_telling::report(&job, finding));
                [&told.message, &told.measured, &told.required].into_iter().for_each(|words| hear(words));
            }
            // One finding per rule: searching for fixes takes time.
            let mut rules = BTreeSet::new();
            for finding in plan.findings.iter().filter(|f| job.faces.len() < 50 && rules.insert(f.rule)) {
                let found = fixes(&job, &plan, &finding.key, &|| false);
                for (fix, seen) in found.offered().into_iter().zip([Seen::Text, Seen::Plan, Seen::FaceOn]) {
                    hear(&fix_words(&job, fix, seen).within(Language::SPANISH));
                }
            }
            for rule in speaking(Language::SPANISH, || chalkcourse_telling::checked(&job)) {
                hear(rule.title);
                rule.why_not.iter().for_each(|why| hear(why));
            }
            for line in speaking(Language::SPANISH, || chalkcourse_telling::checklist(&job, &plan.layout)) {
                hear(&line.about);
                hear(&line.text);
            }
            for line in &plan.takeoff.lines {
                hear(&line.name.within(Language::SPANISH));
                speaking(Language::SPANISH, || {
                    line.terms.iter().for_each(|term| hear(&term_words(term, job.units)));
                    hear(&packages_words(line, job.units));
                });
            }
            plan.takeoff.notes.iter().for_each(|note| hear(&note.within(Language::SPANISH)));
        }
    }
    assert!(english.is_empty(), "{english:#?}");
    assert!(codes.len() >= 6, "the harsh book finds too little to judge the words by: {codes:?}");
}

/// Waivers are tied to the key of a finding, and orders to the number of a part: neither may change with the language.
#[test]
fn keys_numbers_and_amounts_are_the_same_in_both_languages() {
    for (name, job) in samples::all() {
        let job = harsh(job);
        let facts = |language| {
            speaking(language, || {
                let plan = evaluate(&job);
                let keys: Vec<String> = plan.findings.iter().map(|found| found.key.to_string()).collect();
                let lines: Vec<_> =
                    plan.takeoff.lines.iter().map(|line| (line.number.clone(), line.packages)).collect();
                (keys, lines, plan.takeoff.totals.total)
            })
        };
        assert_eq!(facts(Language::ENGLISH), facts(Language::SPANISH), "{name}");
    }
}

/// Wording that builders misunderstood. "Vivo" is alive and "energizado" is live; "apagar" a module is to switch it off, and
/// "quitar" is to take it out; "falta" is missing, and "se necesita" is needed; bonding is "unión" and not "puesta a tierra"; a
/// hoist is a "malacate". Common practice of Spanish-speaking crews in the United States, no source.
#[test]
fn spanish_uses_the_words_of_people_who_build() {
    let wrong = ["vivo", "vivos", "viva", "vivas", "apagar", "apague", "grúa", "puesta"];
    for (name, job) in samples::all() {
        if job.faces.len() > 40 {
            continue;
        }
        for job in [job.clone(), harsh(job)] {
            speaking(Language::SPANISH, || {
                let plan = evaluate(&job);
                let offers = Offers::of(&job, &plan);
                let mut texts = vec![
                    Output::Findings(&offers).text(&job, &plan).unwrap(),
                    Output::Order(By::Stage).text(&job, &plan).unwrap(),
                    Output::Claim.text(&job, &plan).unwrap(),
                ];
                for sheet in [Output::BuildSheet, Output::ChecklistSheet, Output::PalletSheet] {
                    let Made::Sheet(sheet) = sheet.made(&job, &plan).unwrap() else { continue };
                    texts.push(words(&sheet).unwrap().concat().join(" "));
                }
                for text in texts {
                    // Sources are quotations.
                    let said = text.lines().filter(|line| !line.trim_start().starts_with("fuente:"));
                    for line in said {
                        let mut heard = line.split(|c: char| !c.is_alphabetic()).map(str::to_lowercase);
                        let found = heard.find(|word| wrong.contains(&word.as_str()));
                        assert_eq!(found, None, "{name}: {line}");
                        assert!(!line.contains("falta ") || line.contains("Entrega"), "{name}: {line}");
                    }
                }
            });
        }
    }
}

/// The workbook has no English label in Spanish; sources are quotations, and stay in their column.
#[test]
fn the_workbook_is_in_spanish_too() {
    let (_, job) = samples::all().into_iter().find(|(name, _)| name.contains("quarry")).unwrap();
    let names: Vec<&str> = job.faces.iter().map(|face| face.name.as_str()).collect();
    let plan: Plan = speaking(Language::SPANISH, || evaluate(&job));
    let bytes = speaking(Language::SPANISH, || Output::OrderWorkbook.bytes(&job, &plan)).unwrap();
    let mut book: calamine::Xlsx<_> = calamine::Reader::new(std::io::Cursor::new(bytes.as_slice())).unwrap();
    let mut english = BTreeSet::new();
    for sheet in calamine::Reader::sheet_names(&book) {
        let cells = calamine::Reader::worksheet_range(&mut book, &sheet).unwrap();
        for row in cells.rows() {
            for (column, cell) in row.iter().enumerate() {
                let calamine::Data::String(text) = cell else { continue };
                // Names of kit, book and prices are data; the source of a line is in the last column of its sheet.
                let data =
                    [&job.kit.name, &job.rule_book.name, &job.prices.name, &job.name, &job.site.address];
                let bare = data.iter().fold(text.clone(), |text, name| text.replace(name.as_str(), "·"));
                let bare = names.iter().fold(bare, |text, name| text.replace(name, "·"));
                let is_source = column == 17;
                if !is_source && (is_english(&bare) || LABELS.contains(&bare.as_str())) {
                    english.insert(format!("{sheet}: {text}"));
                }
            }
        }
    }
    assert!(english.is_empty(), "{english:#?}");
}

/// English labels of the workbook that are a single word, or that the word list does not recognise.
const LABELS: [&str; 24] = [
    "Group",
    "Stage",
    "Number",
    "What",
    "Need",
    "Unit",
    "Waste",
    "With waste",
    "From stock",
    "Packages",
    "Package",
    "Holds",
    "Price",
    "Cost",
    "Taxed",
    "Changed by hand",
    "How it is counted",
    "Source",
    "Goods",
    "Labor",
    "Overhead",
    "Job",
    "Address",
    "Caution",
];
