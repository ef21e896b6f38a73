//! The architecture matches DEVELOPERS.md, and shipped data matches its schemas.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_job::load;
use chalkcourse_tests::{samples, top};
use std::collections::BTreeSet;
use std::fs;
use std::process::Command;

/// The crate table of DEVELOPERS.md, in its order.
fn crate_table() -> Vec<String> {
    let text = fs::read_to_string(top().join("DEVELOPERS.md")).expect("DEVELOPERS.md");
    let from = text.find("| crate |").expect("the crate table");
    text[from..]
        .lines()
        .skip(2)
        .map_while(|line| line.strip_prefix("| ")?.split(" |").next().map(str::to_owned))
        .collect()
}

#[test]
fn the_crate_table_is_the_workspace() {
    let folders: BTreeSet<String> = fs::read_dir(top().join("crates"))
        .expect("crates/")
        .map(|entry| entry.expect("entry").file_name().to_string_lossy().into_owned())
        .collect();
    let table = crate_table();
    assert_eq!(table.iter().cloned().collect::<BTreeSet<_>>(), folders);
    assert_eq!(table.len(), folders.len(), "a crate stands twice in the table");
}

/// The crates that a package links according to cargo, without dev-dependencies.
fn links(package: &str) -> Vec<String> {
    let output = Command::new(env!("CARGO"))
        .args([
            "tree",
            "--offline",
            "--edges",
            "normal,build",
            "--prefix",
            "none",
            "--format",
            "{p}",
            "--package",
            package,
        ])
        .current_dir(top())
        .output()
        .expect("cargo tree");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("text");
    text.lines().filter_map(|line| line.split(' ').next().map(str::to_owned)).collect()
}

#[test]
fn dependencies_run_one_way_and_only_the_editor_reaches_the_screen() {
    let table = crate_table();
    let package = |crate_name: &str| match crate_name {
        "editor" => "chalkcourse".to_owned(),
        name => format!("chalkcourse-{name}"),
    };
    for (index, name) in table.iter().enumerate() {
        let linked = links(&package(name));
        for below in &table[index + 1..] {
            assert!(!linked.contains(&package(below)), "{name} depends on {below}, which stands below it");
        }
        let screen = linked.iter().any(|l| l == "egui" || l == "eframe" || l == "winit");
        assert_eq!(screen, name == "editor", "{name}");
    }
}

#[test]
fn sample_files_match_their_source_and_schema() {
    let schema =
        jsonschema::validator_for(&chalkcourse_job::job_schema().to_value()).expect("the schema itself");
    for (name, job) in samples::all() {
        let path = top().join("sample-roofs").join(name);
        let file = load(&path).expect("a sample opens");
        assert!(file == job, "{name} is out of date: run the example write-samples");
        let text = fs::read_to_string(&path).expect("text");
        let value: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        let wrong: Vec<String> =
            schema.iter_errors(&value).map(|e| format!("{}: {e}", e.instance_path())).collect();
        assert!(wrong.is_empty(), "{name}: {wrong:?}");
    }
}

#[test]
fn schema_files_are_what_the_program_prints() {
    for (name, schema) in chalkcourse_plan::schemas() {
        let path = top().join("assets/schemas").join(format!("{name}.schema.json"));
        let text = fs::read_to_string(&path).unwrap_or_default();
        assert!(text == format!("{schema:#}\n"), "{name} is out of date: run the example write-samples");
    }
}

#[test]
fn built_in_data_files_match_their_schemas() {
    let files = [
        ("kits/fernhollow-deck-mount-2026.json", chalkcourse_job::kit_schema()),
        ("rule-books/tamsin-bluff-2026.json", chalkcourse_job::rule_book_schema()),
        ("price-lists/fernhollow-2026.json", chalkcourse_job::price_list_schema()),
    ];
    for (name, schema) in files {
        let schema = jsonschema::validator_for(&schema.to_value()).expect("the schema itself");
        let text = fs::read_to_string(top().join("assets").join(name)).expect("text");
        let mut value: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        let wrong: Vec<String> =
            schema.iter_errors(&value).map(|e| format!("{}: {e}", e.instance_path())).collect();
        assert!(wrong.is_empty(), "{name}: {wrong:?}");
        value["data"]["surprise"] = 1.into();
        assert!(!schema.is_valid(&value), "{name}: an unknown field passes the schema");
    }
}

/// Exports about a job are made in one place, so that nothing leaves without its stops, waivers and cautions: neither the command
/// line nor the window calls the maker of an output directly.
#[test]
fn outputs_are_made_in_one_place() {
    let list = fs::read_to_string(top().join("crates/sheets/src/output.rs")).expect("the list of outputs");
    let used = list.split("outputs! {").next().expect("what it uses");
    let makers: BTreeSet<&str> = used
        .split(|c: char| !c.is_alphanumeric() && c != '_')
        .filter(|word| {
            let ends = [
                "_text",
                "_csv",
                "_json",
                "_report",
                "_sheet",
                "_workbook",
                "_drawing",
                "_glb",
                "_geojson",
                "_by",
            ];
            ends.iter().any(|end| word.ends_with(end))
                || ["svg", "captioned", "lines_for_spreadsheet"].contains(word)
        })
        // The window lists what it reports, and an import reports it with its other messages.
        .filter(|word| *word != "roof_report")
        .collect();
    assert!(makers.len() > 20, "{makers:?}");
    let mut around = Vec::new();
    for folder in ["crates/cli/src", "crates/editor/src"] {
        let mut open = vec![top().join(folder)];
        while let Some(at) = open.pop() {
            for entry in fs::read_dir(&at).expect("folder").map(|entry| entry.expect("entry").path()) {
                if entry.is_dir() {
                    open.push(entry);
                    continue;
                }
                let text = fs::read_to_string(&entry).expect("source");
                around.extend(
                    makers
                        .iter()
                        .filter(|maker| {
                            ["::", " ", "(", "&", "!"]
                                .iter()
                                .any(|before| text.contains(&format!("{before}{maker}(")))
                        })
                        .map(|maker| format!("{}: {maker}", entry.display())),
                );
            }
        }
    }
    assert!(around.is_empty(), "{around:#?}");
}

/// Building dimensions are looked up in `layout::known`, so that what a part of the house already says is not asked for again: no
/// rule, limit or count reads the entered eave height, least width or overhang directly.
#[test]
fn building_dimensions_are_looked_up_in_one_place() {
    for folder in ["limits", "rules", "telling", "takeoff", "plan", "sheets", "exchange"] {
        let mut open = vec![top().join("crates").join(folder).join("src")];
        while let Some(at) = open.pop() {
            for entry in fs::read_dir(&at).expect("folder").map(|entry| entry.expect("entry").path()) {
                if entry.is_dir() {
                    open.push(entry);
                    continue;
                }
                // The takeoff's memo keeps the entered values to see whether they changed.
                let text = fs::read_to_string(&entry).expect("source");
                let code = text.split("#[cfg(test)]").next().unwrap_or_default();
                for field in ["eave_height", "least_width", "overhang"] {
                    let asks = code.contains(&format!("building.{field}"))
                        && !entry.ends_with("takeoff/src/memo.rs");
                    assert!(!asks, "{} reads building.{field} by itself", entry.display());
                }
            }
        }
    }
}
