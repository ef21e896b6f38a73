//! Stop findings, waivers and cautions are on every export, in full, in each language: on every kind of [`Output`].
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may stop at the first surprise")]

mod random_jobs;

use calamine::{Data, Reader, Xlsx};
use chalkcourse_job::{Edit, GeoPoint, Resolved, apply};
use chalkcourse_picture::{Camera, Caption, CaptionError, Detail, Light, Look, Picture, Scene, Shot};
use chalkcourse_plan::{
    By, CAUTION, FitUpAsked, Mode, NOT_TO_BUILD, Offers, Plan, Standing, apply_script, compare,
    compare_prices, coursing, deck_measured, evaluate, fill, fit_up, standing,
};
use chalkcourse_rules::Severity;
use chalkcourse_sheets::{Made, Output, SheetError, words};
use chalkcourse_solid::{Show, solid};
use chalkcourse_telling::{lapse_words, message};
use chalkcourse_tests::samples;
use chalkcourse_words::{Language, speaking};
use proptest::prelude::*;
use random_jobs::jobs;
use std::collections::BTreeSet;
use std::io::Cursor;

/// Letters and digits alone: lines break anywhere, and files escape some characters.
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

/// The sentences that an output must contain: of every open stop, and of every waived finding with who waived it and why.
fn sentences(job: &Resolved, plan: &Plan) -> Vec<String> {
    let mut all = vec![CAUTION.now().to_owned()];
    for finding in &plan.findings {
        if let Some(waiver) = &finding.waived {
            all.extend([
                message(job, finding),
                waiver.by.clone(),
                waiver.date.clone(),
                waiver.reason.clone(),
            ]);
        } else if finding.severity == Severity::Stop {
            all.push(message(job, finding));
            all.extend(lapse_words(job, finding));
        }
    }
    all
}

/// Reads an output as its recipient would, and looks for everything that must be on it.
fn check_output(output: &Output<'_>, made: Made, job: &Resolved, plan: &Plan) {
    let (stand, not) = (standing(job, plan), NOT_TO_BUILD.now());
    let what = output.code();
    let all = match (made, output) {
        (Made::Sheet(sheet), _) => {
            let pages = words(&sheet).unwrap();
            for page in pages.iter().map(|page| page.join(" ")) {
                has(&page, CAUTION.now(), what);
                stand.stops.iter().take(1).for_each(|first| has(&page, first, what));
                assert_eq!(page.contains(not), !stand.stops.is_empty(), "{what}: {page}");
            }
            assert!(chalkcourse_sheets::pdf(&sheet).unwrap().starts_with(b"%PDF-"), "{what}");
            pages.concat().join(" ")
        }
        (Made::File(bytes), Output::OrderWorkbook) => cells(&bytes),
        (Made::File(bytes), Output::Picture(drawn)) => return reads(&bytes, drawn, &stand),
        (Made::File(bytes), Output::PictureBefore(drawn)) => {
            return reads(&bytes, drawn, &Standing::default());
        }
        // Text in a container is stored as it is.
        (Made::File(bytes), _) => plain(&String::from_utf8_lossy(&bytes)),
        (
            Made::Text(text),
            Output::PlanDrawing
            | Output::FaceDrawing(_)
            | Output::WireDiagramDrawing
            | Output::OneLineDrawing,
        ) => {
            let lines = text.lines().filter(|line| line.starts_with("<text"));
            let shown = lines.filter_map(|line| line.split_once('>')?.1.strip_suffix("</text>"));
            plain(&shown.collect::<Vec<_>>().join(" "))
        }
        (Made::Text(text), _) => plain(&text),
    };
    for sentence in sentences(job, plan) {
        has(&all, &sentence, what);
    }
    let for_programs = what.ends_with("json") || matches!(output, Output::OrderCsv | Output::Glb);
    if !for_programs {
        assert_eq!(all.contains(not), !stand.stops.is_empty(), "{what}: {all}");
    }
}

/// Reads a picture: the drawing carries exactly the glyphs of each sentence, rendered independently on a white ground.
fn reads(bytes: &[u8], drawn: &Picture, stand: &Standing) {
    let read = pixels(bytes);
    let caption = |lines: Vec<String>| Caption {
        across: if stand.stops.is_empty() { String::new() } else { NOT_TO_BUILD.now().to_owned() },
        strong: stand.stops.len() + stand.waived.len(),
        lines,
    };
    let mut lines: Vec<String> =
        stand.stops.iter().map(|it| format!("{}: {it}", NOT_TO_BUILD.now())).collect();
    let waived = if NOT_TO_BUILD.now().starts_with("NOT") { "WAIVED" } else { "DISPENSADO" };
    lines.extend(stand.waived.iter().map(|it| format!("{waived}: {it}")));
    lines.push(CAUTION.now().to_owned());
    assert!(shows(&read, drawn, &caption(lines.clone())), "the picture lacks a sentence");
    // And the comparison is sensitive: with a word left out the picture differs.
    let last = lines.last_mut().unwrap();
    *last = last.split_once(' ').unwrap().1.to_owned();
    assert!(!shows(&read, drawn, &caption(lines)), "any words would do");
}

fn pixels(bytes: &[u8]) -> Vec<u8> {
    let mut reader = png::Decoder::new(Cursor::new(bytes)).read_info().unwrap();
    let mut pixels = vec![0; reader.output_buffer_size().unwrap()];
    reader.next_frame(&mut pixels).unwrap();
    pixels
}

/// Whether a picture has every full-ink pixel of a caption.
fn shows(read: &[u8], drawn: &Picture, caption: &Caption) -> bool {
    let mut white = drawn.clone();
    white.rgba.fill(255);
    let set = white.captioned(caption).unwrap();
    let inks = [[150, 20, 20, 255], [40, 44, 52, 255]];
    let mut letters =
        set.rgba.chunks(4).zip(read.chunks(4)).filter(|(set, _)| inks.iter().any(|ink| ink == set));
    letters.all(|(set, read)| set == read)
}

/// Unescapes XML and JSON.
fn plain(text: &str) -> String {
    text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .replace("\\\"", "\"")
        .replace("\\n", "\n")
}

/// All text cells of a workbook.
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

/// Makes every kind of output of a job and reads it; returns the kinds that could be made. A fill is made if requested.
fn check_all_outputs(job: &Resolved, filled: bool) -> BTreeSet<&'static str> {
    let plan = evaluate(job);
    let offers = Offers::default();
    let lines: Vec<_> = plan.takeoff.lines.iter().take(3).collect();
    let compared = compare(&plan.takeoff, &plan.takeoff);
    let prices = compare_prices(&plan.takeoff, &[&job.prices, &job.prices]);
    let courses: Vec<_> = job.faces.iter().filter_map(|face| coursing(job, face.id, None).ok()).collect();
    let deck = job.blocks.first().and_then(|block| {
        let (_, on) = plan.layout.face(block.face)?;
        let asked = FitUpAsked::of_block(job, block, deck_measured(&job.face(block.face)?.taped_now(), on)?);
        Some((fit_up(job, &asked).ok()?, asked))
    });
    let done = apply_script(job, &chalkcourse_job::Script::default(), &chalkcourse_job::NoFiles, false);
    let scene = Scene::of(&solid(job, &plan.layout, Show::default()));
    let picture = (!scene.corners().is_empty()).then(|| {
        let size = [960, 640];
        let camera = Camera::default().fitted(&scene.corners(), 1.5);
        let shot = Shot {
            camera,
            size,
            light: Light::Even,
            look: Look::default(),
            detail: Detail::Quick,
            held: None,
        };
        scene.draw(&shot)
    });
    let mut outputs = vec![
        Output::Findings(&offers),
        Output::FindingsJson(&offers),
        Output::Plan,
        Output::PlanJson,
        Output::Roof,
        Output::RoofJson,
        Output::Order(By::Group),
        Output::Order(By::Stage),
        Output::OrderCsv,
        Output::OrderJson,
        Output::OrderWorkbook,
        Output::OrderSheet(By::Group),
        Output::OrderSheet(By::Stage),
        Output::OrderLines(&lines),
        Output::Compared(&compared),
        Output::ComparedJson(&compared),
        Output::Suppliers(&prices),
        Output::SuppliersJson(&prices),
        Output::PalletSheet,
        Output::PalletCsv,
        Output::PalletJson,
        Output::Claim,
        Output::ClaimSheet,
        Output::Checklist,
        Output::ChecklistSheet,
        Output::BuildSheet,
        Output::PlanDrawing,
        Output::Courses(&courses),
        Output::CoursesJson(&courses),
        Output::Deck("said of a deck"),
        Output::Fills(&[]),
        Output::FillsJson(&[]),
        Output::Applied(&done),
        Output::AppliedJson(&done, None),
        Output::Wires(None),
        Output::WiresJson(None),
        Output::WireDiagram,
        Output::OneLine,
        Output::OneLineDrawing,
        Output::Handover,
        Output::Labels,
        Output::WireDiagramDrawing,
        Output::GeoJson,
        Output::Glb,
    ];
    outputs.extend((0..job.faces.len()).map(Output::FaceDrawing));
    if let Some((found, asked)) = &deck {
        outputs.extend([Output::FitUp(asked, found), Output::FitUpJson(found)]);
    }
    if let Some(picture) = &picture {
        outputs.extend([Output::Picture(picture), Output::PictureBefore(picture)]);
    }
    let mut made = BTreeSet::new();
    for output in &outputs {
        match output.made(job, &plan) {
            Ok(it) => {
                check_output(output, it, job, &plan);
                made.insert(output.code());
            }
            // Nothing to make it of, or no room: no sentence is cut.
            Err(
                SheetError::NoRoof
                | SheetError::GeoJson(_)
                | SheetError::Gltf(_)
                | SheetError::Caption(CaptionError::NoRoom(..)),
            ) => {}
            Err(wrong) => panic!("{}: {wrong}", output.code()),
        }
    }
    if filled {
        claim_of_a_fill(job);
    }
    made
}

/// The plan of a fill is that of the job with it in place; its claim is stated in full.
fn claim_of_a_fill(job: &Resolved) {
    let steep = job.faces.iter().find(|face| face.pitch >= job.kit.least_pitch);
    let Some(face) = steep else { return };
    let fills = fill(job, &[face.id], Mode::OneGrid, &|| false).unwrap();
    let next = apply(job, &chalkcourse_plan::fill_edit(job, &fills[0])).unwrap();
    let plan = evaluate(&next);
    for output in [Output::Fills(&fills), Output::FillsJson(&fills)] {
        let made = output.made(&next, &plan).unwrap();
        let Made::Text(text) = &made else { panic!("{}", output.code()) };
        has(&plain(text), &fills[0].claim.now(), output.code());
        check_output(&output, made, &next, &plan);
    }
}

#[test]
fn every_output_of_every_sample_states_stops_waivers_and_cautions() {
    for (name, mut job) in samples::all() {
        if job.faces.len() > 40 {
            continue;
        }
        // Off the globe there is no longitude.
        job.site.place = Some(GeoPoint { latitude: 39.1, longitude: -84.5 });
        for language in [Language::ENGLISH, Language::SPANISH] {
            speaking(language, || {
                let made = check_all_outputs(&job, true);
                if name.contains("alder-court") {
                    let known: BTreeSet<&str> = Output::CODES.iter().copied().collect();
                    assert_eq!(made, known, "a kind of output that nothing looks at");
                }
                check_all_outputs(&one_waived(&job), false);
            });
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 16, ..ProptestConfig::default() })]
    #[test]
    fn every_output_of_every_job_states_stops_waivers_and_cautions(job in jobs(), spanish in any::<bool>()) {
        let language = if spanish { Language::SPANISH } else { Language::ENGLISH };
        speaking(language, || {
            check_all_outputs(&job, false);
            check_all_outputs(&one_waived(&job), false);
        });
    }
}
