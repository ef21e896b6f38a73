//! The command line as people and scripts use it: output, exit status, files.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn sample(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../sample-roofs").join(name)
}

fn run(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_chalkcourse-cli")).args(arguments).output().expect("the program starts")
}

fn on(command: &str, name: &str, more: &[&str]) -> Output {
    let path = sample(name);
    let mut arguments = vec![command, path.to_str().expect("a path of words")];
    arguments.extend(more);
    run(&arguments)
}

fn text(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("UTF-8")
}

fn words_of_error(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).expect("UTF-8")
}

#[test]
fn check_is_fine_on_alder_court_and_stops_at_low_barn() {
    let fine = on("check", "alder-court.chalk.json", &[]);
    assert_eq!(fine.status.code(), Some(0), "{}", words_of_error(&fine));
    assert!(text(&fine).contains("0 to stop for") && text(&fine).contains("Planning aid only"));
    let stopped = on("check", "low-barn.chalk.json", &["--format", "json"]);
    assert_eq!(stopped.status.code(), Some(1));
    let report: serde_json::Value = serde_json::from_str(&text(&stopped)).expect("JSON");
    assert_eq!(report["format"], "chalkcourse-findings");
    assert_eq!(report["findings"][0]["code"], "pitch");
    assert_eq!(report["findings"][0]["severity"], "stop");
}

#[test]
fn a_finding_is_reported_with_its_fix_and_cleared_by_it() {
    let plain = on("check", "quarry-lane.chalk.json", &[]);
    assert!(!text(&plain).contains("    fix: "), "nobody asked for fixes");
    let asked = on("check", "quarry-lane.chalk.json", &["--fixes", "--format", "json"]);
    let report: serde_json::Value = serde_json::from_str(&text(&asked)).expect("JSON");
    let finding = &report["findings"][0];
    let (fix, key) = (finding["fix"].as_str().expect("words"), finding["key"].as_str().expect("a key"));
    // West of the valley; "left" means nothing in a sentence without a picture.
    assert!(fix.contains("of block South") && fix.ends_with("to the west"), "{fix}");

    let folder = tempfile::tempdir().unwrap();
    let to = folder.path().join("fixed.chalk.json");
    let save = ["--save", to.to_str().unwrap()];
    let one = on("fix", "quarry-lane.chalk.json", &[&["--finding", key][..], &save].concat());
    assert_eq!(one.status.code(), Some(0), "{}{}", text(&one), words_of_error(&one));
    assert!(text(&one).contains(fix) && text(&one).contains("findings to stop for 2 → 0"), "{}", text(&one));
    let checked = run(&["check", to.to_str().unwrap()]);
    assert_eq!(checked.status.code(), Some(0), "{}", text(&checked));

    let all = on("fix", "quarry-lane.chalk.json", &["--all", "--format", "json"]);
    let report: serde_json::Value = serde_json::from_str(&text(&all)).expect("JSON");
    assert_eq!(report["format"], "chalkcourse-applied");
    assert!(report["saved"].is_null() && report["edits"][0]["stops"]["after"] == 0, "{report}");

    let unknown = on("fix", "quarry-lane.chalk.json", &["--finding", "setback/roof"]);
    assert_eq!(unknown.status.code(), Some(2));
    assert!(words_of_error(&unknown).contains("nothing is found by the key setback/roof"));
    let none = on("fix", "low-barn.chalk.json", &["--finding", "underlayment/face-1"]);
    assert!(text(&none).contains("No fix is offered."), "{}", text(&none));
    let over = sample("quarry-lane.chalk.json");
    let over = on("fix", "quarry-lane.chalk.json", &["--all", "--save", over.to_str().unwrap()]);
    assert_eq!(over.status.code(), Some(2), "the job would be written over");
}

#[test]
fn check_reports_what_was_not_checked_and_why() {
    let plain = text(&on("check", "alder-court.chalk.json", &[]));
    let (checked, not_checked) = plain.split_once("What was not checked").expect("both parts");
    assert!(checked.contains("[setback]") && !not_checked.contains("[setback]"), "{plain}");
    assert!(not_checked.contains("[wind]") && not_checked.contains("because: "), "{not_checked}");
    let json: serde_json::Value =
        serde_json::from_str(&text(&on("check", "alder-court.chalk.json", &["--format", "json"])))
            .expect("JSON");
    let rules = json["checked"].as_array().expect("rules");
    let wind = rules.iter().find(|rule| rule["code"] == "wind").expect("the wind rule");
    assert!(wind["on"] == false && wind["why_not"].is_string(), "{wind}");
}

#[test]
fn pathways_wind_and_the_checklist_are_reported() {
    let plain = text(&on("check", "alder-court.chalk.json", &[]));
    assert!(plain.contains("Pathways for the fire department\n  South: "), "{plain}");
    assert!(
        plain.contains("Wind suction, a screening") && plain.contains("not worked out: the job does not say")
    );
    let json: serde_json::Value =
        serde_json::from_str(&text(&on("check", "alder-court.chalk.json", &["--format", "json"])))
            .expect("JSON");
    assert!(json["pathways"].as_array().is_some_and(|paths| paths.len() >= 2), "{}", json["pathways"]);
    let list = text(&on("checklist", "alder-court.chalk.json", &[]));
    for words in ["Falls", "1926.501(b)(13)", "Live dc", "[ ] "] {
        assert!(list.contains(words), "{words}");
    }
}

#[test]
fn rule_books_are_compared_field_by_field() {
    let book = |name: &str| {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../assets/rule-books").join(name);
        path.to_str().expect("a path of words").to_owned()
    };
    let (one, other) = (book("tamsin-bluff-2026.json"), book("tamsin-bluff-older-fire-access.json"));
    let differ = text(&run(&["compare-books", &one, &other]));
    assert!(
        differ.contains("fire_access.scheme.value\n  one:   whole-roof\n  other: each-slope"),
        "{differ}"
    );
    assert!(text(&run(&["compare-books", &one, &one])).contains("\n0 fields differ"));
    let kit = book("../kits/fernhollow-deck-mount-2026.json");
    assert_eq!(run(&["compare-books", &one, &kit]).status.code(), Some(2));
}

#[test]
fn takeoff_agrees_in_three_formats() {
    let json: serde_json::Value =
        serde_json::from_str(&text(&on("takeoff", "alder-court.chalk.json", &["--format", "json"])))
            .expect("JSON");
    let csv = text(&on("takeoff", "alder-court.chalk.json", &["--format", "csv"]));
    let plain = text(&on("takeoff", "alder-court.chalk.json", &[]));
    let lines = json["data"]["takeoff"]["lines"].as_array().expect("lines");
    assert!(lines.len() > 10);
    for line in lines {
        let number = line["number"].as_str().expect("number");
        assert!(csv.contains(number) && plain.contains(number), "{number} is missing");
    }
    let modules = lines.iter().find(|line| line["number"] == "FH-101").expect("modules");
    assert_eq!(modules["packages"], 12);
}

#[test]
fn plan_goes_to_a_file() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("plan.json");
    let path_text = path.to_str().expect("a path of words");
    let done = on("plan", "quarry-lane.chalk.json", &["--format", "json", "--out", path_text]);
    assert_eq!(text(&done), "");
    let report: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(&path).expect("the file")).expect("JSON");
    assert_eq!(report["faces"].as_array().expect("faces").len(), 8);
    let nowhere = on("plan", "quarry-lane.chalk.json", &["--out", "/no/such/folder/plan.txt"]);
    assert_eq!(nowhere.status.code(), Some(2));
    assert!(words_of_error(&nowhere).contains("/no/such/folder/plan.txt"));
}

#[test]
fn unusable_input_is_reported_with_its_position() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("bad.chalk.json");
    let path_text = path.to_str().expect("a path of words");
    let good = std::fs::read_to_string(sample("alder-court.chalk.json")).expect("the sample");
    let check = |content: &[u8], words: &[&str]| {
        std::fs::write(&path, content).expect("written");
        let output = run(&["check", path_text]);
        assert_eq!(output.status.code(), Some(2));
        let said = words_of_error(&output);
        for word in words.iter().chain(&["bad.chalk.json"]) {
            assert!(said.contains(word), "{said:?} does not say {word:?}");
        }
    };
    check(b"", &["line 1"]);
    check(b"\xff\xfe", &["read"]);
    check(
        good.replace("\"pitch\": \"6:12\"", "\"pitch\": \"steep\"").as_bytes(),
        &["line", "faces[0].pitch", "6:12"],
    );
    let newer = good.replace(&format!("\"version\": {}", chalkcourse_job::JOB_VERSION), "\"version\": 9");
    check(newer.as_bytes(), &["version 9", "newer"]);
    check(good.replace("\"site\":", "\"cite\":").as_bytes(), &["cite"]);
    let missing = run(&["check", "/no/such/file.chalk.json"]);
    assert_eq!(missing.status.code(), Some(2));
    assert!(words_of_error(&missing).contains("/no/such/file.chalk.json"));
}

#[test]
fn schemas_are_printed_by_name() {
    let schema: serde_json::Value = serde_json::from_str(&text(&run(&["schema", "job"]))).expect("JSON");
    assert_eq!(schema["title"], "chalkcourse-job");
    let unknown = run(&["schema", "song"]);
    assert_eq!(unknown.status.code(), Some(2));
    assert!(words_of_error(&unknown).contains("rule-book"));
}

#[test]
fn a_footprint_becomes_a_job() {
    let folder = tempfile::tempdir().expect("a folder");
    let (footprint, job) = (folder.path().join("mill.geojson"), folder.path().join("mill.chalk.json"));
    let paths = (footprint.to_str().expect("words"), job.to_str().expect("words"));
    // 0.0002° by 0.0001° at 39° N: 17.3 × 11.1 m
    let square = r#"{"type":"Polygon","coordinates":[[[-84.5,39.0],[-84.4998,39.0],[-84.4998,39.0001],[-84.5,39.0001],[-84.5,39.0]]]}"#;
    std::fs::write(&footprint, square).expect("written");
    let done =
        run(&["raise", paths.0, "--out", paths.1, "--pitch", "8:12", "--gables", "--overhang", "1 ft"]);
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    assert!(text_of_lines(&done, "ridge").is_some() && text_of_lines(&done, "hip").is_none());
    let plan = run(&["plan", paths.1, "--format", "json"]);
    let report: serde_json::Value = serde_json::from_str(&text(&plan)).expect("JSON");
    assert_eq!(report["faces"].as_array().expect("faces").len(), 2);

    let job: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(paths.1).expect("the job")).expect("JSON");
    assert_eq!(job["data"]["parts"].as_array().map(Vec::len), Some(1), "a live part");
    assert!(job["data"]["faces"][0].get("outline").is_none(), "faces follow from it");
    let mixed = ["--side", "1=4:12,eave=10 ft,overhang=2 ft", "--side", "2=gable"];
    let done = run(&[&["raise", paths.0, "--out", paths.1, "--pitch", "8:12"][..], &mixed].concat());
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    assert!(text(&done).contains("4:12") && text(&done).contains("8:12"), "{}", text(&done));
    for (side, word) in [("9=gable", "no such side"), ("2=up", "up"), ("gable", "write it as")] {
        let wrong = run(&["raise", paths.0, "--out", paths.1, "--side", side]);
        assert_eq!(wrong.status.code(), Some(2));
        assert!(words_of_error(&wrong).contains(word), "{}", words_of_error(&wrong));
    }

    let wrong = run(&["raise", paths.0, "--out", paths.1, "--pitch", "steep"]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(words_of_error(&wrong).contains("steep"));
    std::fs::write(&footprint, "{\"type\":\"Point\",\"coordinates\":[0,0]}").expect("written");
    let nothing = run(&["raise", paths.0, "--out", paths.1]);
    assert_eq!(nothing.status.code(), Some(2));
    assert!(words_of_error(&nothing).contains("mill.geojson"), "{}", words_of_error(&nothing));
}

fn text_of_lines(output: &Output, kind: &str) -> Option<String> {
    text(output).lines().find(|line| line.trim_start().starts_with(&format!("{kind} "))).map(str::to_owned)
}

#[test]
fn a_filled_roof_comes_with_its_proof() {
    let filled =
        on("fit", "alder-court.chalk.json", &["--mode", "one-grid", "--face", "South", "--format", "json"]);
    assert_eq!(filled.status.code(), Some(0), "{}", words_of_error(&filled));
    let report: serde_json::Value = serde_json::from_str(&text(&filled)).expect("JSON");
    let face = &report["faces"][0];
    assert!(face["modules"].as_u64() > Some(12) && face["modules"].as_u64() <= face["bound"].as_u64());
    assert!(face["claim"].as_str().is_some_and(|claim| claim.starts_with("one grid, base rail anywhere: ")));
    let upright = on("fit", "alder-court.chalk.json", &["--lie", "portrait", "--face", "South", "--brief"]);
    assert_eq!(upright.status.code(), Some(2));
    assert!(words_of_error(&upright).contains("does not let modules lie portrait"));
    let level = on("fit", "alder-court.chalk.json", &["--lie", "landscape", "--face", "South", "--brief"]);
    assert!(text(&level).contains(", landscape, "), "{}", text(&level));
    let unknown = on("fit", "alder-court.chalk.json", &["--face", "Moon"]);
    assert_eq!(unknown.status.code(), Some(2));
    assert!(words_of_error(&unknown).contains("South"));
    let flat = on("fit", "low-barn.chalk.json", &[]);
    assert_eq!(flat.status.code(), Some(2));
    assert!(words_of_error(&flat).contains("4:12"));
}

/// The tape reading is stored with the face; a value given on the command line takes precedence.
#[test]
fn a_deck_is_fitted_as_the_job_has_it_measured() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("taped.chalk.json");
    let sample = std::fs::read_to_string(sample("alder-court.chalk.json")).expect("the sample");
    let mut job: serde_json::Value = serde_json::from_str(&sample).expect("JSON");
    let face = &mut job["data"]["faces"][0];
    // As a face of a part its corners come from the part; its tape readings are its own.
    face["taped"] = serde_json::json!({ "rising": "62' 4\"" });
    std::fs::write(&path, job.to_string()).expect("a file");
    let file = path.to_str().expect("a path of words");
    let kept = run(&["fit-up", file]);
    assert_eq!(kept.status.code(), Some(0), "{}", words_of_error(&kept));
    let given = run(&["fit-up", file, "--diagonals", "62' 4\"", "62' 3 1/2\""]);
    let drawn = on("fit-up", "alder-court.chalk.json", &[]);
    assert!(text(&drawn).contains("square"), "{}", text(&drawn));
    assert_ne!(text(&kept), text(&drawn), "what was measured counts for nothing");
    assert_ne!(text(&kept), text(&given), "what is given does not go before it");
}

/// The city model sample: © 3D BAG by tudelft3d and 3DGI, CC BY 4.0.
fn city_model() -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/data/3dbag-sample.city.jsonl");
    path.to_str().expect("a path of words").to_owned()
}

#[test]
fn buildings_are_listed_and_one_becomes_a_job() {
    let folder = tempfile::tempdir().expect("a folder");
    let job = folder.path().join("house.chalk.json");
    let job = job.to_str().expect("words");
    let model = city_model();
    let listed = text(&run(&["import", &model, "--list"]));
    assert!(listed.contains("NL.IMBAG.Pand.0503100000004048") && listed.contains("7 buildings"), "{listed}");
    assert!(listed.contains("out of the plane"), "what is left out is told: {listed}");
    let json: serde_json::Value =
        serde_json::from_str(&text(&run(&["import", &model, "--list", "--format", "json"]))).expect("JSON");
    assert_eq!(json["buildings"].as_array().expect("buildings").len(), 7);
    let made = run(&["import", &model, "--building", "NL.IMBAG.Pand.0503100000002181", "--out", job]);
    assert_eq!(made.status.code(), Some(0), "{}", words_of_error(&made));
    assert!(text(&made).contains("Edges, true length") && text(&made).contains("was left out"));
    let roof: serde_json::Value =
        serde_json::from_str(&text(&run(&["roof", job, "--format", "json"]))).expect("JSON");
    assert_eq!(roof["format"], "chalkcourse-roof");
    assert_eq!(roof["faces"].as_array().expect("faces").len(), 5);
    let none = run(&["import", &model, "--out", job]);
    assert_eq!(none.status.code(), Some(2));
    assert!(words_of_error(&none).contains("--building"));
    let unknown = run(&["import", &model, "--building", "moon", "--out", job]);
    assert!(words_of_error(&unknown).contains("moon"));
}

#[test]
fn the_roof_report_of_alder_court() {
    let plain = text(&on("roof", "alder-court.chalk.json", &[]));
    // 60 × 30 ft at 6:12 (closed form)
    assert!(plain.contains("2012.5 ft²") && plain.contains("20.12"), "{plain}");
    assert!(plain.contains("ridge") && plain.contains("rake"), "{plain}");
}

#[test]
fn sheets_about_the_wires_are_exported() {
    let folder = tempfile::tempdir().expect("a folder");
    for (format, ending, begins) in [
        ("wire-diagram", "pdf", "%PDF-"),
        ("wire-diagram", "SVG", "<svg"),
        ("handover", "pdf", "%PDF-"),
        ("labels", "pdf", "%PDF-"),
        ("one-line", "pdf", "%PDF-"),
        ("one-line", "svg", "<svg"),
    ] {
        let path = folder.path().join(format!("{format}.{ending}"));
        let out = path.to_str().expect("words");
        let done = on("export", "alder-court.chalk.json", &["--as", format, "--out", out]);
        assert_eq!(done.status.code(), Some(0), "{format}: {}", words_of_error(&done));
        assert!(std::fs::read(&path).expect("the file").starts_with(begins.as_bytes()), "{format}.{ending}");
    }
}

#[test]
fn a_plan_is_exported_for_maps_and_for_3d_programs() {
    let folder = tempfile::tempdir().expect("a folder");
    let (map, house) = (folder.path().join("a.geojson"), folder.path().join("a.glb"));
    let paths = (map.to_str().expect("words"), house.to_str().expect("words"));
    let mut job = chalkcourse_job::load(&sample("alder-court.chalk.json")).expect("the sample");
    job.site.place = None;
    let placeless = folder.path().join("placeless.chalk.json");
    chalkcourse_job::save(&job, &placeless).expect("room for it");
    let nowhere = run(&["export", placeless.to_str().expect("words"), "--as", "geojson", "--out", paths.0]);
    assert_eq!(nowhere.status.code(), Some(2));
    assert!(words_of_error(&nowhere).contains("--at"));
    let done =
        on("export", "alder-court.chalk.json", &["--as", "geojson", "--out", paths.0, "--at", "39.1,-84.5"]);
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    let map: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(&map).expect("the file")).expect("JSON");
    assert_eq!(map["type"], "FeatureCollection");
    let done = on("export", "alder-court.chalk.json", &["--as", "glb", "--out", paths.1]);
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    assert!(std::fs::read(&house).expect("the file").starts_with(b"glTF\x02\0\0\0"));
    let wrong =
        on("export", "alder-court.chalk.json", &["--as", "geojson", "--out", paths.0, "--at", "91,0"]);
    assert!(words_of_error(&wrong).contains("latitude"));
}

/// The side of the hip roof of 60 × 30 ft at 6:12: 675 ft² in plan (closed form), with a check that misses by 1/2 in.
#[test]
fn a_taped_face_becomes_a_job() {
    let folder = tempfile::tempdir().expect("a folder");
    let (first, second) = (folder.path().join("hip.chalk.json"), folder.path().join("both.chalk.json"));
    let (first, second) = (first.to_str().expect("words"), second.to_str().expect("words"));
    let trapezoid = ["--trapezoid", "60'", "22' 6\"", "30'", "22-6", "--pitch", "12 in over 24 in"];
    let done = run(&[&["tape"], &trapezoid[..], &["--out", first]].concat());
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    assert!(text(&done).contains("675.0 ft² in plan at 6:12"), "{}", text(&done));
    assert!(text(&done).contains("Nothing checks these readings"));
    let rectangle =
        ["--rectangle", "40'", "30'", "--line", "1-3=50' 1/2\"", "--name", "Porch", "--add-to", first];
    let done = run(&[&["tape"], &rectangle[..], &["--out", second]].concat());
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    assert!(text(&done).contains("Closing error 1/4\" with 1 spare"), "{}", text(&done));
    let job = chalkcourse_job::load(Path::new(second)).expect("a job");
    let names: Vec<&str> = job.faces.iter().map(|face| face.name.as_str()).collect();
    assert_eq!(names, ["Face 1", "Porch"]);

    for (arguments, words) in [
        (vec!["--triangle", "30'", "10'", "12'"], "8' (2.438 m) less"),
        (vec!["--rectangle", "40'", "30'", "--line", "1-3=51'"], "miss by"),
        (vec!["--rectangle", "40'", "30'", "--line", "1..3=51'"], "write it as"),
        (vec!["--rectangle", "forty", "30'"], "corner 1 to 2"),
        (vec![], "--triangle"),
    ] {
        let refused = run(&[&["tape"], &arguments[..], &["--out", first]].concat());
        assert_eq!(refused.status.code(), Some(2), "{arguments:?}");
        assert!(words_of_error(&refused).contains(words), "{arguments:?}: {}", words_of_error(&refused));
    }
}

#[test]
fn the_order_and_the_crews_sheets_go_to_files() {
    let folder = tempfile::tempdir().expect("a folder");
    for (command, format, begins) in [
        ("takeoff", "xlsx", "PK"),
        ("takeoff", "pdf", "%PDF-"),
        ("receive", "pdf", "%PDF-"),
        ("receive", "claim-pdf", "%PDF-"),
        ("checklist", "pdf", "%PDF-"),
    ] {
        let path = folder.path().join(format!("{command}.{format}"));
        let path_text = path.to_str().expect("a path of words");
        let done = on(command, "alder-court.chalk.json", &["--format", format, "--out", path_text]);
        assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
        assert!(text(&done).contains(path_text), "{}", text(&done));
        assert!(std::fs::read(&path).expect("the file").starts_with(begins.as_bytes()), "{command} {format}");
        let nowhere = on(command, "alder-court.chalk.json", &["--format", format]);
        assert_eq!(nowhere.status.code(), Some(2));
        assert!(words_of_error(&nowhere).contains("--out"), "{}", words_of_error(&nowhere));
    }
}

#[test]
fn two_orders_are_compared() {
    let path = |name| sample(name).to_str().expect("a path of words").to_owned();
    let (alder, quarry) = (path("alder-court.chalk.json"), path("quarry-lane.chalk.json"));
    assert!(text(&run(&["compare-orders", &alder, &alder])).contains("alike, line by line"));
    let told = text(&run(&["compare-orders", &alder, &quarry]));
    let (before, after) = told.split_once("Less").expect("more and less");
    assert!(
        before.contains("FH-110  Base rail, 8 ft stick  need 3 → 5, order 3 → 5 sticks  +77.50 USD"),
        "{told}"
    );
    assert!(after.contains("FH-214"), "less of the shingles: {told}");
    let total = told.lines().find(|line| line.starts_with("Total:")).expect("the total");
    assert!(total.contains("14,930.39 → 15,861.13 USD, +930.74"), "{total}");
}

#[test]
fn suppliers_are_compared_to_the_cent() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let file = |name: &str| top.join(name).to_str().expect("a path of words").to_owned();
    let told = text(&on(
        "suppliers",
        "alder-court.chalk.json",
        &[&file("assets/price-lists/fernhollow-2026.json"), &file("tests/data/harbour-supply.xlsx")],
    ));
    assert!(told.contains("total 14,930.39 USD"), "{told}");
    assert!(told.contains("NO PRICE, and not in the total: FH-107, FH-130"), "{told}");
    assert!(told.contains("delivery 95.00, total 14,681.19 USD"), "{told}");
    // 2 boxes at 47.90 in the workbook.
    assert!(told.contains("FH-105  Bracket for a module device  2 packages: 93.00*  95.80"), "{told}");
}

#[test]
fn a_delivery_is_counted_and_claimed() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("a path of words").to_owned();
    let (list, saved) = (path("pallet.csv"), path("counted.chalk.json"));
    assert!(on("receive", "alder-court.chalk.json", &["--format", "csv", "--out", &list]).status.success());
    let counted: String = std::fs::read_to_string(&list)
        .expect("the list")
        .lines()
        .map(|line| match line {
            l if l.starts_with("\"FH-101\"") => "\"FH-101\",\"Module, 405 W\",\"On the ground\",\"module\",\"12\",\"11\",\"1\",\"\",\"\",\"glass broken\"\n".to_owned(),
            l => format!("{l}\n"),
        })
        .collect();
    std::fs::write(&list, counted).expect("the list goes back");
    let claim = on("receive", "alder-court.chalk.json", &["--counts", &list, "--save", &saved]);
    assert!(claim.status.success(), "{}", words_of_error(&claim));
    let told = text(&claim);
    assert!(told.contains("FH-101") && told.contains("glass broken"), "{told}");
    let again = text(&run(&["receive", &saved]));
    assert_eq!(again, told, "what was counted is saved with the job");
}

#[test]
fn leftovers_are_used_first_and_lines_switched_off() {
    let folder = tempfile::tempdir().expect("a folder");
    let stock = folder.path().join("rack.csv");
    std::fs::write(&stock, "number,amount,note\nFH-121,40,\"rack 2, left\"\n").expect("the list");
    let arguments =
        ["--stock", stock.to_str().expect("a path"), "--off", "FH-301=crew has them", "--format", "json"];
    let order: serde_json::Value =
        serde_json::from_str(&text(&on("takeoff", "alder-court.chalk.json", &arguments))).expect("JSON");
    let lines = order["data"]["takeoff"]["lines"].as_array().expect("lines");
    let step = lines.iter().find(|line| line["number"] == "FH-121").expect("step flashing");
    // 74 with waste minus 40 on the rack is 34: two boxes of 25, not three.
    assert_eq!((&step["from_stock"], &step["packages"]), (&40.0.into(), &2.into()), "{step}");
    assert!(lines.iter().all(|line| line["number"] != "FH-301"));
}

/// A folder with a job and an edit script, and the paths of both.
fn with_edits(edits: &str) -> (tempfile::TempDir, String, String) {
    let folder = tempfile::tempdir().expect("a folder");
    let (job, file) = (folder.path().join("job.chalk.json"), folder.path().join("edits.json"));
    std::fs::copy(sample("alder-court.chalk.json"), &job).expect("copied");
    std::fs::write(&file, edits).expect("written");
    let words = |path: &Path| path.to_str().expect("a path of words").to_owned();
    let (job, file) = (words(&job), words(&file));
    (folder, job, file)
}

#[test]
fn an_edit_script_is_applied_and_reported() {
    let (folder, job, file) = with_edits(
        r#"[{"add-penetration": {"name": "Bath fan", "kind": "vent", "face": "South", "at": ["10 ft", "6 ft"]}},
            {"change-building": {"wind_mph": 115}},
            {"set-name": "Alder"}]"#,
    );
    let before = std::fs::read(&job).expect("the job");
    let dry = run(&["apply", &job, &file]);
    let told = text(&dry);
    assert!(told.contains("penetration") && told.contains("“Bath fan” added"), "{told}");
    assert!(told.contains("building.wind_mph none → 115.0") && told.contains("Nothing was saved"), "{told}");
    assert_eq!(std::fs::read(&job).expect("the job"), before);
    let to = folder.path().join("after.chalk.json").to_str().expect("words").to_owned();
    let done = run(&["apply", &job, &file, "--save", &to, "--format", "json"]);
    let report: serde_json::Value = serde_json::from_str(&text(&done)).expect("JSON");
    assert_eq!((&report["format"], &report["saved"]), (&"chalkcourse-applied".into(), &to.as_str().into()));
    let first = &report["edits"][0];
    assert_eq!(
        (&first["changes"][0]["what"], &first["changes"][0]["how"]),
        (&"penetration".into(), &"added".into())
    );
    let id = first["changes"][0]["id"].as_u64().expect("the new number");
    assert_eq!(first["modules"]["before"], first["modules"]["after"]);
    let after: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(&to).expect("the job")).expect("JSON");
    let there = after["data"]["penetrations"].as_array().expect("penetrations");
    assert!(there.iter().any(|one| one["id"] == id && one["name"] == "Bath fan"));
    assert_eq!((&after["data"]["name"], std::fs::read(&job).expect("the job")), (&"Alder".into(), before));
    // The exit status follows from the findings of the final job.
    let stops = report["edits"][2]["stops"]["after"].as_u64().expect("a number");
    assert_eq!(done.status.code(), Some(i32::from(stops > 0)), "{report}");
}

#[test]
fn inputs_are_not_overwritten_unless_requested() {
    let (_folder, job, file) = with_edits(r#"{"set-name": "Renamed"}"#);
    let before = std::fs::read(&job).expect("the job");
    let over_job = run(&["apply", &job, &file, "--save", &job]);
    assert_eq!(over_job.status.code(), Some(2));
    assert!(words_of_error(&over_job).contains("--in-place"), "{}", words_of_error(&over_job));
    let over_edits = run(&["apply", &job, &file, "--save", &file]);
    assert!(words_of_error(&over_edits).contains("write over the edits"));
    let elsewhere = run(&["apply", &job, &file, "--save", &format!("{job}.other"), "--in-place"]);
    assert!(words_of_error(&elsewhere).contains("another file"), "{}", words_of_error(&elsewhere));
    assert_eq!(std::fs::read(&job).expect("the job"), before);
    assert!(!Path::new(&format!("{job}.other")).exists());
    let done = run(&["apply", &job, &file, "--save", &job, "--in-place"]);
    assert_eq!(done.status.code(), Some(0), "{}", words_of_error(&done));
    assert!(std::fs::read_to_string(&job).expect("the job").contains("Renamed"));
    assert_eq!(std::fs::read(format!("{job}.previous")).expect("the version before"), before);
}

#[test]
fn a_failing_edit_saves_nothing_or_is_skipped() {
    let (folder, job, file) =
        with_edits(r#"[{"set-name": "One"}, {"remove-block": "Nowhere"}, {"set-units": "metric"}]"#);
    let to = folder.path().join("after.chalk.json").to_str().expect("words").to_owned();
    let stopped = run(&["apply", &job, &file, "--save", &to]);
    assert_eq!(stopped.status.code(), Some(2));
    let said = words_of_error(&stopped);
    assert!(said.contains("edits.json") && said.contains("edit 2 (remove-block)"), "{said}");
    assert!(said.contains("no block \"Nowhere\"") && text(&stopped).contains("NOT DONE"), "{said}");
    assert!(!Path::new(&to).exists() && text(&stopped).contains("Nothing was saved"));
    let going = run(&["apply", &job, &file, "--save", &to, "--keep-going"]);
    assert_eq!(going.status.code(), Some(2), "what was left out is told");
    let after: serde_json::Value =
        serde_json::from_str(&std::fs::read_to_string(&to).expect("the job")).expect("JSON");
    assert_eq!((&after["data"]["name"], &after["data"]["units"]), (&"One".into(), &"metric".into()));
    let unreadable = with_edits(r#"[{"set-name": "One"}, {"jump": 1}]"#);
    let said = words_of_error(&run(&["apply", &unreadable.1, &unreadable.2]));
    assert!(said.contains("edit 2 of 2") && said.contains("move-corner"), "{said}");
}

#[test]
fn edits_come_through_a_pipe_and_onto_a_new_job() {
    use std::io::Write;
    use std::process::Stdio;
    let folder = tempfile::tempdir().expect("a folder");
    let to = folder.path().join("house.chalk.json").to_str().expect("words").to_owned();
    let edits = r#"[
        {"add-part": {"name": "House", "corners": [[0, 0], ["40 ft", 0], ["40 ft", "28 ft"], [0, "28 ft"]], "eave_height": "9 ft",
                      "treatment": {"slope": "6:12"}, "overhang": "1 ft"}},
        {"change-side": {"part": "House", "side": 2, "treatment": "gable"}},
        {"change-side": {"part": "House", "side": 4, "treatment": "gable"}},
        {"add-block": {"face": "South", "at": ["8 ft", "3 ft"], "rows": 2, "columns": 3}},
        {"switch-modules": {"block": "A", "off": [{"row": 2, "place": 3}]}}]"#;
    let mut child = Command::new(env!("CARGO_BIN_EXE_chalkcourse-cli"))
        .args(["--language", "es", "apply", "new", "-", "--save", &to])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    child.stdin.take().expect("a pipe").write_all(edits.as_bytes()).expect("piped");
    let done = child.wait_with_output().expect("it ends");
    let told = text(&done);
    // In Spanish the faces have Spanish names, and "South" is not one of them.
    assert_eq!(done.status.code(), Some(2), "{told}");
    assert!(words_of_error(&done).contains("\"Sur\""), "{}", words_of_error(&done));
    let labelled =
        format!(r#"{{"format": "chalkcourse-edits", "version": 1, "language": "en", "data": {edits}}}"#);
    let file = folder.path().join("edits.json");
    std::fs::write(&file, labelled).expect("written");
    let file = file.to_str().expect("words");
    let done = run(&["--language", "es", "apply", "new", file, "--save", &to]);
    assert!(
        text(&done).contains("5 módulos") && text(&done).contains("Guardado"),
        "{}",
        words_of_error(&done)
    );
    let plan = run(&["plan", &to, "--format", "json"]);
    let report: serde_json::Value = serde_json::from_str(&text(&plan)).expect("JSON");
    assert_eq!(report["faces"].as_array().expect("faces").len(), 2);
    assert_eq!(report["summary"]["modules"], 5);
    let schema: serde_json::Value =
        serde_json::from_str(&text(&run(&["apply", "--print-schema"]))).expect("JSON");
    assert_eq!(schema["title"], "chalkcourse-edits");
    assert_eq!(run(&["apply", &to]).status.code(), Some(2), "edits are wanted");
}

/// Seven modules are one too few for the kit's devices, which want eight in a string: the nearest change is told, in words and as JSON.
#[test]
fn what_holds_a_stringing_back_is_told() {
    let text_of_job = std::fs::read_to_string(sample("alder-court.chalk.json")).unwrap();
    let mut job: serde_json::Value = serde_json::from_str(&text_of_job).expect("JSON");
    job["data"]["blocks"][0]["rows"] = 1.into();
    job["data"]["blocks"][0]["columns"] = 7.into();
    let folder = tempfile::tempdir().unwrap();
    let seven = folder.path().join("seven.chalk.json");
    std::fs::write(&seven, job.to_string()).unwrap();
    let seven = seven.to_str().expect("a path of words");
    let told = text(&run(&["wires", seven, "--string-automatically"]));
    for words in
        ["7 modules were left", "With 7 modules as the fewest in a circuit instead of 8", "; 8 would."]
    {
        assert!(told.contains(words), "{words}: {told}");
    }
    let json = text(&run(&["wires", seven, "--string-automatically", "--format", "json"]));
    let report: serde_json::Value = serde_json::from_str(&json).expect("JSON");
    assert_eq!(report["held_back"][0]["change"]["least"]["modules"], 7);
    assert_eq!(report["held_back"][0]["gives"]["fits"]["circuits"], 1);
    let unasked = text(&run(&["wires", seven, "--format", "json"]));
    let report: serde_json::Value = serde_json::from_str(&unasked).expect("JSON");
    assert_eq!(report["held_back"].as_array().map(Vec::len), Some(0));
}

#[test]
fn circuits_are_strung_told_and_saved() {
    let folder = tempfile::tempdir().unwrap();
    let wired = folder.path().join("wired.chalk.json");
    let to = wired.to_str().expect("a path of words");
    let plain = on("wires", "alder-court.chalk.json", &[]);
    assert!(text(&plain).contains("no circuit is drawn yet"), "{}", text(&plain));
    let strung = on("wires", "alder-court.chalk.json", &["--string-automatically", "--save", to]);
    assert_eq!(strung.status.code(), Some(0), "{}", words_of_error(&strung));
    for words in
        ["Circuit 1: 12 modules, 4.86 kW", "one circuit; no extension lead;", "planning aid", "Not checked:"]
    {
        assert!(text(&strung).to_lowercase().contains(&words.to_lowercase()), "{words}: {}", text(&strung));
    }
    let again = run(&["wires", to, "--format", "json"]);
    let report: serde_json::Value = serde_json::from_str(&text(&again)).expect("JSON");
    assert_eq!(report["format"], "chalkcourse-wires");
    assert_eq!(report["circuits"][0]["modules"].as_array().map(Vec::len), Some(12));
    assert_eq!(report["circuits"][0]["highest_volts"], 480.0);
    assert_eq!(report["window"]["most"], 14);
    let refused = run(&["wires", to, "--string-automatically", "--save", to]);
    assert_eq!(refused.status.code(), Some(2), "the job itself is not written over unasked");
    let unknown = folder.path().join("edits.json");
    std::fs::write(&unknown, r#"{"change-wiring": {"inverters": null}}"#).unwrap();
    let bare = folder.path().join("bare.chalk.json");
    let (unknown, bare) = (unknown.to_str().expect("words"), bare.to_str().expect("words"));
    assert_eq!(run(&["apply", to, unknown, "--save", bare]).status.code(), Some(0));
    let told = run(&["wires", bare, "--string-automatically"]);
    assert_eq!(told.status.code(), Some(2));
    assert!(words_of_error(&told).contains("which inverter it has"), "{}", words_of_error(&told));
}
