//! What stops a job, what was waived and the cautions stand on all that leaves the program, whole, in each language.
#![allow(clippy::unwrap_used, reason = "a helper of a test may stop it")]

mod random_jobs;

use calamine::{Data, Reader, Xlsx};
use chalkcourse_job::{Edit, Resolved, apply};
use chalkcourse_plan::{
    By, CAUTION, NOT_TO_BUILD, Offers, Plan, checklist_text, courses_text, coursing, evaluate, findings_text,
    order_csv, order_json, order_text, plan_text, standing,
};
use chalkcourse_sheets::{
    Sheet, build_sheet, checklist_sheet, claim_sheet, order_sheet, order_workbook, pallet_sheet, pdf,
    plan_drawing, svg, words,
};
use chalkcourse_tests::samples;
use chalkcourse_words::{Language, speaking};
use proptest::prelude::*;
use random_jobs::jobs;
use std::io::Cursor;

/// Letters and figures alone: lines break anywhere, and files write some signs in other ways.
fn letters(text: &str) -> String {
    text.chars().filter(|c| c.is_alphanumeric()).collect()
}

fn has(text: &str, sentence: &str, what: &str) {
    assert!(letters(text).contains(&letters(sentence)), "{what} lacks: {sentence}\n{text}");
}

/// A job with its first finding waived.
fn one_waived(job: &Resolved) -> Resolved {
    let plan = evaluate(job);
    let Some(finding) = plan.findings.first() else { return job.clone() };
    let waiver = finding.waiver("seen on the roof".into(), "Tamsin".into(), "2026-03-01".into());
    apply(job, &Edit::Waive(waiver)).unwrap_or_else(|_| job.clone())
}

fn sheets(job: &Resolved, plan: &Plan) -> [(&'static str, Sheet); 6] {
    [
        ("the order", order_sheet(job, plan, By::Group)),
        ("the order by stage", order_sheet(job, plan, By::Stage)),
        ("the pallet list", pallet_sheet(job, plan)),
        ("the claim", claim_sheet(job, plan)),
        ("the checklist", checklist_sheet(job, plan)),
        ("the plan to build from", build_sheet(job, plan)),
    ]
}

fn stands_on_all(job: &Resolved) {
    let plan = evaluate(job);
    let stand = standing(job, &plan);
    let (caution, not) = (CAUTION.now(), NOT_TO_BUILD.now());
    for (what, sheet) in sheets(job, &plan) {
        let pages = words(&sheet).unwrap();
        for page in &pages {
            let page = page.join(" ");
            has(&page, caution, what);
            match stand.stops.first() {
                Some(first) => {
                    has(&page, not, what);
                    has(&page, first, what);
                }
                None => assert!(!page.contains(not), "{what}: {page}"),
            }
        }
        let all = pages.concat().join(" ");
        stand.stops.iter().chain(&stand.waived).for_each(|sentence| has(&all, sentence, what));
        assert!(pdf(&sheet).unwrap().starts_with(b"%PDF-"), "{what}");
    }
    let mut texts = vec![
        ("the checklist as text", checklist_text(job, &plan)),
        ("the findings", findings_text(job, &plan, &Offers::default())),
        ("the plan", plan_text(job, &plan)),
        ("the order as text", order_text(job, &plan)),
        ("the order as CSV", order_csv(job, &plan).unwrap()),
        ("the order as JSON", order_json(job, &plan).unwrap()),
    ];
    if let Some(drawing) = plan_drawing(job, &plan) {
        let text = svg(&drawing, &stand);
        let shown = text.lines().filter(|line| line.starts_with("<text"));
        let shown = shown.filter_map(|line| line.split_once('>')?.1.strip_suffix("</text>"));
        let shown = shown.collect::<Vec<_>>().join(" ");
        stand.waived.iter().for_each(|waived| has(&plain(&shown), waived, "the drawing"));
        assert_eq!(shown.contains(not), !stand.stops.is_empty());
        texts.push(("the drawing", shown));
    }
    for (what, text) in &texts {
        let text = plain(text);
        has(&text, caution, what);
        stand.stops.iter().for_each(|stop| has(&text, stop, what));
    }
    for face in &job.faces {
        if let Ok(told) = coursing(job, face.id, None) {
            has(&courses_text(job, &[told]), caution, "the courses");
        }
    }
    let all = cells(&order_workbook(job, &plan).unwrap());
    has(&all, caution, "the workbook");
    stand.stops.iter().chain(&stand.waived).for_each(|sentence| has(&all, sentence, "the workbook"));
    assert_eq!(all.contains(not), !stand.stops.is_empty());
}

/// Signs that XML and JSON write in another way, as they are read.
fn plain(text: &str) -> String {
    text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&").replace("\\\"", "\"")
}

/// All texts of a workbook.
fn cells(bytes: &[u8]) -> String {
    let mut book = Xlsx::new(Cursor::new(bytes)).unwrap();
    let mut all = Vec::new();
    for name in book.sheet_names() {
        let sheet = book.worksheet_range(&name).unwrap();
        all.extend(sheet.rows().flatten().filter_map(|cell| match cell {
            Data::String(text) => Some(text.clone()),
            _ => None,
        }));
    }
    all.join(" ")
}

#[test]
fn every_sample_says_where_it_stands() {
    for (_, job) in samples::all() {
        if job.faces.len() > 40 {
            continue;
        }
        for language in [Language::English, Language::Spanish] {
            speaking(language, || {
                stands_on_all(&job);
                stands_on_all(&one_waived(&job));
            });
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 16, ..ProptestConfig::default() })]
    #[test]
    fn every_job_says_where_it_stands(job in jobs(), spanish in any::<bool>()) {
        let language = if spanish { Language::Spanish } else { Language::English };
        speaking(language, || {
            stands_on_all(&job);
            stands_on_all(&one_waived(&job));
        });
    }
}
