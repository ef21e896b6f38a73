use crate::hand::Hand;
use chalkcourse::{Options, Recovery};
use chalkcourse_job::load;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

/// Makes an unsaved change: a vent on the roof.
fn change(hand: &mut Hand) {
    hand.key(Key::P);
    hand.click_plan(2.0, 2.0);
    hand.key(Key::S);
    assert!(hand.editor().document().history().is_unsaved());
}

#[test]
fn unsaved_changes_are_asked_about_and_can_be_kept() {
    let mut hand = Hand::new();
    change(&mut hand);
    let job = hand.job();
    hand.chord(Modifiers::COMMAND, Key::N);
    assert!(hand.sees("Save the changes to “Alder Court”?"));
    hand.press("Cancel");
    assert_eq!(hand.job(), job);

    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("kept.chalk.json");
    hand.chord(Modifiers::COMMAND, Key::N);
    hand.harness.get_by_label("Don't save");
    hand.harness.get_all_by_label("Save").last().unwrap().click();
    hand.harness.run();
    hand.give_path(&path);
    assert_eq!(load(&path).unwrap(), job);
    assert!(hand.job().faces.is_empty(), "the new job came after saving");
}

#[test]
fn unsaved_changes_can_be_discarded() {
    let mut hand = Hand::new();
    change(&mut hand);
    hand.chord(Modifiers::COMMAND, Key::N);
    hand.press("Don't save");
    assert!(hand.job().faces.is_empty());
}

#[test]
fn an_unreadable_file_is_reported_and_the_job_stays_open() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("bad.chalk.json");
    std::fs::write(&path, "{\"format\": \"chalkcourse-job\", \"version\": 1,").unwrap();
    let mut hand = Hand::new();
    let job = hand.job();
    hand.chord(Modifiers::COMMAND, Key::O);
    hand.give_path(&path);
    assert!(hand.sees("This file can't be opened"));
    assert!(hand.sees("The job that is open was not touched."));
    hand.press("OK");
    assert_eq!(hand.job(), job);
}

#[test]
fn an_existing_file_is_replaced_only_on_confirmation() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("order.txt");
    std::fs::write(&path, "old").unwrap();
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::E);
    hand.give_path(&path);
    assert_eq!(std::fs::read_to_string(&path).unwrap(), "old");
    hand.press("Replace it");
    assert_ne!(std::fs::read_to_string(&path).unwrap(), "old");
}

/// Down from the path into the list, past folders first; Enter enters, Backspace goes back, Enter on a file opens it.
#[test]
fn a_job_is_chosen_from_a_list_by_keys() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir(folder.path().join("spring")).unwrap();
    let named = chalkcourse_job::Edit::SetName("Low House".to_owned());
    let job = chalkcourse_job::apply(&Hand::new().job(), &named).unwrap();
    chalkcourse_job::save(&job, &folder.path().join("low.chalk.json")).unwrap();
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::O);
    hand.give_path(folder.path());
    let rows = |hand: &Hand| -> Vec<String> {
        let rows = hand.harness.query_all_by(|node| node.role() == egui::accesskit::Role::Row);
        rows.filter_map(|row| row.accesskit_node().label()).collect()
    };
    let listed = rows(&hand);
    assert!(listed[0].starts_with("Folder spring") && listed[1].starts_with("low.chalk.json"), "{listed:?}");
    hand.key(Key::ArrowDown);
    hand.key(Key::Enter);
    assert!(hand.sees("Nothing of this kind lies here") || rows(&hand).is_empty());
    hand.key(Key::Backspace);
    assert_eq!(rows(&hand), listed);
    hand.key(Key::ArrowDown);
    hand.key(Key::Enter);
    assert_eq!(hand.job().name, "Low House");
    assert!(!hand.sees("Path of the file"));
}

#[test]
fn a_folder_is_made_for_a_file_to_write() {
    let folder = tempfile::tempdir().unwrap();
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::E);
    hand.give_path(folder.path());
    assert!(hand.sees("add a file name"));
    hand.press("New folder");
    hand.type_text("june");
    hand.key(Key::Enter);
    assert!(folder.path().join("june").is_dir());
    hand.give_path(&folder.path().join("june/order.txt"));
    assert!(folder.path().join("june/order.txt").exists());
}

#[test]
fn saving_again_asks_for_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("job.chalk.json");
    let mut hand = Hand::new();
    hand.chord(Modifiers::COMMAND, Key::S);
    hand.give_path(&path);
    change(&mut hand);
    hand.chord(Modifiers::COMMAND, Key::S);
    assert!(!hand.editor().document().history().is_unsaved());
    assert_eq!(load(&path).unwrap(), hand.job());
}

#[test]
fn work_survives_a_crash() {
    let folder = tempfile::tempdir().unwrap();
    let options =
        Options { typed_paths: true, recovery: Some(folder.path().to_owned()), ..Options::default() };
    let mut hand = Hand::with(options.clone());
    change(&mut hand);
    let job = hand.job();
    // The copy is written in the background, and exists a moment later.
    let copied = || {
        std::fs::read_dir(folder.path())
            .unwrap()
            .flatten()
            .any(|e| e.path().to_string_lossy().ends_with(".chalk.json"))
    };
    for _ in 0..200 {
        if copied() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    assert!(copied(), "no copy was written");
    // A crash: nothing is removed.
    drop(hand);
    assert_eq!(Recovery::left_behind(folder.path()).len(), 1);

    let mut next = Hand::with(options);
    assert!(next.sees("Unsaved work was kept"));
    next.press("Open this copy");
    assert_eq!(next.job(), job);
    assert!(next.editor().document().history().is_unsaved());
}
