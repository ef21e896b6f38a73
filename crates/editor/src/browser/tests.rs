use super::*;
use crate::state::OrderFormat;
use std::fs;

/// A folder with a job, a subfolder of jobs, and a written order.
fn folder() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    fs::create_dir(folder.path().join("jobs")).unwrap();
    for name in ["one.chalk.json", "order.txt", "jobs/two.chalk.json"] {
        fs::write(folder.path().join(name), "{}").unwrap();
    }
    folder
}

fn names(browser: &Browser) -> Vec<&str> {
    browser.shown().into_iter().map(|entry| entry.name.as_str()).collect()
}

#[test]
fn a_job_is_reached_through_folders() {
    let folder = folder();
    let mut browser = Browser::new(Ask::Open, &folder.path().join(""));
    assert_eq!(names(&browser), ["jobs", "one.chalk.json"]);
    assert_eq!(browser.enter(0), Next::Stay);
    assert_eq!(names(&browser), ["two.chalk.json"]);
    assert_eq!(browser.folder(), folder.path().join("jobs"));
    assert_eq!(browser.enter(0), Next::Use(folder.path().join("jobs/two.chalk.json")));
    browser.up();
    assert_eq!((browser.folder(), browser.at), (folder.path(), Some(0)), "where one came from is come to");
    // A typed folder is entered.
    browser.typed = folder.path().join("jobs").to_string_lossy().into_owned();
    assert_eq!(browser.done(), Next::Stay);
    assert_eq!((browser.folder(), browser.wrong.as_str()), (&*folder.path().join("jobs"), ""));
}

#[test]
fn the_list_follows_the_path_and_completes_it() {
    let folder = folder();
    let mut browser = Browser::new(Ask::Open, &folder.path().join(""));
    browser.typed.push('j');
    assert!(browser.complete());
    assert!(browser.typed.ends_with("jobs/") || browser.typed.ends_with("jobs\\"), "{}", browser.typed);
    assert_eq!(names(&browser), ["two.chalk.json"]);
    assert!(browser.complete());
    assert!(browser.typed.ends_with("two.chalk.json"));
    assert!(!browser.complete());
    browser.typed = folder.path().join("one").to_string_lossy().into_owned();
    browser.path_edited();
    assert_eq!(names(&browser), ["jobs", "one.chalk.json"]);
}

#[test]
fn a_missing_file_is_reported_in_the_dialog() {
    let folder = folder();
    let mut browser = Browser::new(Ask::Open, &folder.path().join("three.chalk.json"));
    assert_eq!(browser.done(), Next::Stay);
    assert!(browser.wrong.contains("three.chalk.json"), "{}", browser.wrong);
    browser.typed = folder.path().join("none/three.chalk.json").to_string_lossy().into_owned();
    assert_eq!(browser.done(), Next::Stay);
    assert!(browser.wrong.contains("There is no folder"), "{}", browser.wrong);
    browser.typed.clear();
    assert_eq!(browser.done(), Next::Stay);
    assert!(!browser.wrong.is_empty());
}

#[test]
fn a_file_to_write_keeps_its_name_from_folder_to_folder() {
    let folder = folder();
    let start = folder.path().join("order.txt");
    let mut browser = Browser::new(Ask::Export(OrderFormat::Text), &start);
    assert_eq!(names(&browser), ["jobs", "order.txt"]);
    assert_eq!(browser.enter(0), Next::Stay);
    let there = folder.path().join("jobs/order.txt");
    assert_eq!(browser.typed, there.to_string_lossy());
    assert_eq!(browser.done(), Next::Use(there));
    // An existing file is only replaced on the second confirmation, and not if another was selected in between.
    browser.up();
    assert_eq!(browser.done(), Next::Stay);
    assert!(browser.replace);
    browser.select_entry(1);
    assert!(!browser.replace);
    assert_eq!(browser.done(), Next::Stay);
    assert_eq!(browser.done(), Next::Use(start));
}

#[test]
fn a_folder_is_created_and_entered() {
    let folder = folder();
    let mut browser = Browser::new(Ask::SaveAs, &folder.path().join("new.chalk.json"));
    for bad in ["", "a/b", "..", "jobs"] {
        browser.new_folder = Some(bad.to_owned());
        browser.make_folder();
        assert!(!browser.wrong.is_empty(), "{bad}");
        browser.wrong.clear();
    }
    browser.new_folder = Some(" spring ".to_owned());
    browser.make_folder();
    let there = folder.path().join("spring");
    assert!(there.is_dir());
    assert_eq!(browser.folder(), there);
    assert_eq!(browser.done(), Next::Use(there.join("new.chalk.json")));
}

#[test]
fn a_folder_of_buildings_is_imported_as_a_whole() {
    let folder = folder();
    let mut browser = Browser::new(Ask::ImportFolder, &folder.path().join(""));
    assert_eq!(names(&browser), ["jobs"]);
    browser.select_entry(0);
    assert_eq!(browser.done(), Next::Use(folder.path().join("jobs")));
}

#[test]
fn frequent_folders_are_listed_once() {
    let recent: Vec<PathBuf> =
        ["/a/1.json", "/a/2.json", "/b/3.json"].into_iter().map(PathBuf::from).collect();
    let places = places(&recent);
    let of = |folder: &str| places.iter().filter(|place| place.folder == Path::new(folder)).count();
    assert_eq!((of("/a"), of("/b")), (1, 1));
}

#[test]
fn clearing_the_filter_clears_the_keyboard_selection() {
    let folder = folder();
    let mut browser = Browser::new(Ask::Open, &folder.path().join(""));
    browser.filter = "one".into();
    assert_eq!(names(&browser), ["one.chalk.json"]);
    browser.select_entry(0);
    browser.show_all();
    assert_eq!((names(&browser).len(), browser.at), (2, None));
}
