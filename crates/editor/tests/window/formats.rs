use crate::hand::Hand;
use chalkcourse_geometry::{Azimuth, EdgeKind};
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;
use std::path::{Path, PathBuf};

/// © 3D BAG by tudelft3d and 3DGI, CC BY 4.0.
fn city_model() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/data/3dbag-sample.city.jsonl")
}

/// Waits for the reading thread.
fn until(hand: &mut Hand, done: impl Fn(&Hand) -> bool) {
    let begun = std::time::Instant::now();
    hand.harness.step();
    while !done(hand) {
        assert!(begun.elapsed().as_secs() < 20, "nothing came of it");
        std::thread::sleep(std::time::Duration::from_millis(10));
        hand.harness.step();
    }
    hand.harness.run();
}

fn list(hand: &mut Hand, path: &Path) {
    hand.chord(Modifiers::COMMAND, Key::I);
    hand.give_path_and_wait(path);
    until(hand, |hand| hand.sees("Take this building"));
}

#[test]
fn a_building_is_imported_from_a_city_model_as_one_step() {
    let mut hand = Hand::empty();
    list(&mut hand, &city_model());
    assert!(hand.sees("7 buildings"));
    hand.harness.get_by_label("Find").focus();
    hand.harness.run();
    hand.type_text("2181");
    assert!(hand.sees("1 of 7"));
    hand.harness.get_by_label_contains("Building NL.IMBAG.Pand.0503100000002181").click();
    hand.harness.run();
    assert!(hand.sees("out of the plane"), "what is left out is told before it is taken");
    hand.harness.get_by_label("Take this building").click();
    until(&mut hand, |hand| !hand.job().faces.is_empty());
    assert_eq!((hand.job().faces.len(), hand.job().name.as_str()), (5, "NL.IMBAG.Pand.0503100000002181"));
    assert!(hand.editor().said().contains("2 things to look at"), "{}", hand.editor().said());
    hand.chord(Modifiers::COMMAND, Key::Z);
    assert!(hand.job().faces.is_empty());
}

#[test]
fn a_footprint_of_a_folder_becomes_a_new_job_after_the_question() {
    let folder = tempfile::tempdir().unwrap();
    let square = r#"{"type":"Feature","properties":{"name":"Mill"},"geometry":{"type":"Polygon","coordinates":[[[-84.5,39.0],[-84.4998,39.0],[-84.4998,39.0001],[-84.5,39.0001],[-84.5,39.0]]]}}"#;
    std::fs::write(folder.path().join("mill.geojson"), square).unwrap();
    std::fs::write(folder.path().join("song.json"), "{}").unwrap();
    let mut hand = Hand::new();
    let kit = hand.job().kit.clone();
    list(&mut hand, folder.path());
    assert!(hand.sees("song.json"), "a file that can't be read is told");
    assert!(hand.sees("footprint"));
    hand.harness.get_by_label("Take this building").click();
    until(&mut hand, |hand| hand.job().name == "Mill");
    let job = hand.job();
    assert!(job.kit == kit && hand.editor().document().history().is_unsaved());
    assert_eq!(job.faces.len(), 2, "gables, as is usual");
    let place = job.site.place.expect("a place on the globe");
    assert!((place.latitude - 39.000_05).abs() < 1e-9 && (place.longitude + 84.4999).abs() < 1e-9);
}

#[test]
fn a_file_that_stretches_lengths_beyond_repair_is_refused_in_words() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.city.json");
    let text = r#"{"type":"CityJSON","version":"2.0","transform":{"scale":[1,1,1],"translate":[0,0,0]},"metadata":{"referenceSystem":"https://www.opengis.net/def/crs/EPSG/0/4979"},"CityObjects":{},"vertices":[]}"#;
    std::fs::write(&path, text).unwrap();
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::I);
    hand.give_path_and_wait(&path);
    until(&mut hand, |hand| hand.sees("degrees"));
    assert!(hand.sees("EPSG:4979"));
}

#[test]
fn the_roof_report_highlights_the_hovered_row() {
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::R);
    // 60 × 30 ft at 6:12: 2,012.46 ft² on the slope, 20.12 squares, a ridge of 60 ft (closed forms).
    assert!(hand.sees("On the slope: 2012.5 ft²"));
    assert!(hand.sees("Squares of 100 ft², no waste: 20.12"));
    assert!(hand.sees("ridge: 60'"));
    assert_eq!(hand.editor().lit_on_roof(), None);
    let ridge = hand.harness.get_by_label_contains("ridge: 60'").rect().center();
    hand.harness.hover_at(ridge);
    hand.harness.run();
    assert_eq!(hand.editor().lit_on_roof(), Some(EdgeKind::Ridge.name().into()));
    hand.click(ridge);
    assert!(hand.sees("1, level at"), "the lines of the kind are listed");
    let south = hand.job().faces.iter().find(|face| face.downslope == Azimuth::SOUTH).unwrap().clone();
    let row = hand.harness.get_by_label_contains(&format!("{}: 1006", south.name)).rect().center();
    hand.harness.hover_at(row);
    hand.harness.run();
    assert_eq!(hand.editor().lit_on_roof(), Some(south.name.clone()));
    hand.click(row);
    assert_eq!(hand.editor().selection(), chalkcourse::Selection::Face(south.id));
    hand.chord(Modifiers::COMMAND, Key::R);
    assert!(!hand.sees("Squares of 100 ft²"));
}

#[test]
fn the_plan_is_exported_as_geojson_and_gltf() {
    let folder = tempfile::tempdir().unwrap();
    let (map, house) = (folder.path().join("a.geojson"), folder.path().join("a.glb"));
    let mut nowhere = Hand::new().job();
    nowhere.site.place = None;
    let job = folder.path().join("nowhere.chalk.json");
    chalkcourse_job::save(&nowhere, &job).unwrap();
    let mut hand = Hand::with(chalkcourse::Options {
        open: Some(job),
        typed_paths: true,
        ..chalkcourse::Options::default()
    });
    hand.chord(Modifiers::COMMAND, Key::G);
    hand.give_path(&map);
    assert!(hand.sees("give latitude and longitude"), "without a place it is refused in words");
    hand.press("OK");
    hand.chord(Modifiers::COMMAND | Modifiers::SHIFT, Key::G);
    hand.give_path(&house);
    assert!(std::fs::read(&house).unwrap().starts_with(b"glTF"));
    assert!(hand.editor().said().contains("a.glb"));
}
