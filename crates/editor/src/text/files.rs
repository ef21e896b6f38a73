//! Sentences about files.

use crate::Document;
use crate::recovery::AbandonedCopy;
use crate::state::Ask;
use chalkcourse_job::FileError;
use chalkcourse_words::{self as words, Say};
use std::fmt::Display;
use std::path::Path;
use std::time::SystemTime;

pub(crate) fn ask_title(ask: Ask) -> &'static str {
    match ask {
        Ask::Open => words::files::OPEN_A_JOB.now(),
        Ask::SaveAs => words::files::SAVE_THE_JOB_AS.now(),
        Ask::Export(_) => words::files::WRITE_THE_ORDER_TO.now(),
        Ask::Print(_) => words::files::WRITE_THE_SHEET_TO.now(),
        Ask::ExportPlan(_) => words::files::WRITE_THE_PLAN_TO.now(),
        Ask::Import => words::files::IMPORT_A_BUILDING_FROM_A.now(),
        Ask::ImportFolder => words::files::IMPORT_A_BUILDING_FROM_A_FOLDER.now(),
        Ask::Kit => words::files::LOAD_A_KIT.now(),
        Ask::RuleBook => words::files::LOAD_A_RULE_BOOK.now(),
        Ask::SaveRuleBook => words::files::SAVE_THE_RULE_BOOK_AS.now(),
        Ask::CompareBook => words::files::COMPARE_WITH_A_RULE_BOOK.now(),
        Ask::Prices => words::files::LOAD_A_PRICE_LIST.now(),
        Ask::Stock => words::files::LOAD_A_WAREHOUSE_LIST.now(),
        Ask::Counts => words::files::LOAD_A_PALLET_LIST_WITH.now(),
        Ask::CompareJob => words::files::COMPARE_WITH_THE_ORDER_OF.now(),
        Ask::Offer => words::files::ADD_THE_PRICE_LIST_OF.now(),
        Ask::Picture => words::files::LAY_A_PICTURE_UNDER_THE.now(),
        Ask::SavePicture => words::files::SAVE_THE_PICTURE_AS.now(),
        Ask::Steps => words::files::WRITE_THE_STEPS_TO.now(),
    }
}

pub(crate) fn ask_button(ask: Ask) -> &'static str {
    match ask {
        Ask::Open => words::files::OPEN.now(),
        Ask::SaveAs | Ask::SaveRuleBook | Ask::SavePicture => words::common::SAVE.now(),
        Ask::CompareBook | Ask::CompareJob => words::common::COMPARE.now(),
        Ask::Export(_) | Ask::Print(_) | Ask::ExportPlan(_) | Ask::Steps => words::files::WRITE.now(),
        Ask::Import | Ask::ImportFolder => words::files::LIST.now(),
        Ask::Kit | Ask::RuleBook | Ask::Prices | Ask::Stock | Ask::Counts | Ask::Offer | Ask::Picture => {
            words::files::LOAD.now()
        }
    }
}

pub(crate) fn ask_filter(ask: Ask) -> &'static str {
    match ask {
        Ask::Open | Ask::SaveAs | Ask::CompareJob => words::files::CHALKCOURSE_JOB.now(),
        Ask::Export(_) => words::common::ORDER.now(),
        Ask::Print(_) => words::files::SHEET_TO_PRINT.now(),
        Ask::ExportPlan(_) => words::common::PLAN.now(),
        Ask::Import | Ask::ImportFolder => words::files::BUILDINGS.now(),
        Ask::Kit => words::common::KIT.now(),
        Ask::RuleBook | Ask::SaveRuleBook | Ask::CompareBook => words::common::RULE_BOOK.now(),
        Ask::Prices | Ask::Offer => words::common::PRICE_LIST.now(),
        Ask::Stock => words::files::WAREHOUSE_LIST.now(),
        Ask::Counts => words::common::PALLET_LIST.now(),
        Ask::Picture => words::files::PICTURE_PNG_OR_JPEG.now(),
        Ask::SavePicture => words::files::PNG_PICTURE.now(),
        Ask::Steps => words::files::EDITS.now(),
    }
}

// The start page
pub(crate) const START_TITLE: Say = words::start::WHAT_DO_YOU_WANT;
pub(crate) const GO_ON: Say = words::start::GO_ON_WITH_THE_LAST;
pub(crate) const OPEN_LATELY: Say = words::start::JOBS_THAT_WERE_OPEN;
pub(crate) const BEGIN: Say = words::start::NEW_ROOF;
pub(crate) const NOT_THERE: Say = words::start::NOT_THERE_ANY_MORE;
pub(crate) const TRY_ROOF: Say = words::start::TRY_A_FINISHED_ROOF;

/// The name of the job, with a mark for unsaved changes.
pub(crate) fn title_of(document: &Document) -> String {
    let mark = if document.history().is_unsaved() { words::files::NOT_SAVED.now() } else { "" };
    format!("{}{mark}", document.job().name)
}

pub(crate) fn window_title(document: &Document) -> String {
    let mark = if document.history().is_unsaved() { "*" } else { "" };
    format!("{}{mark} – Chalkcourse", document.job().name)
}

pub(crate) fn unsaved_title(name: &str) -> String {
    words::files::save_the_changes_to(&name)
}

pub(crate) fn job_untouched(error: &FileError) -> String {
    words::files::the_job_that_is_open(&error)
}

pub(crate) fn saved_to(path: &Path) -> String {
    words::files::saved_to(&path.display())
}

pub(crate) fn exported_to(path: &Path) -> String {
    words::files::order_written_to(&path.display())
}

pub(crate) fn taken(what: &str) -> String {
    words::files::done_undo_takes_it_back(&what.trim_end_matches('…'))
}

pub(crate) fn no_recovery(error: &impl Display) -> String {
    words::files::no_recovery_copies_are_kept(&error)
}
pub(crate) fn no_frame_times(path: &Path, error: &impl Display) -> String {
    words::files::frames_are_not_timed_cant(&path.display(), &error)
}

/// A recovery copy, in a line.
pub(crate) fn copy_words(left: &AbandonedCopy) -> String {
    let written = left
        .written
        .map_or_else(|| words::files::KEPT.now().to_owned(), |at| words::files::kept_on(&moment(at)));
    let name = left.name.as_deref().unwrap_or(words::files::A_JOB_WHOSE_COPY_CANT.now());
    match &left.from {
        Some(from) => words::files::from(&name, &written, &from.display()),
        None => words::files::never_saved_to_a_file(&name, &written),
    }
}

/// A name that is valid on every file system.
pub(crate) fn file_stem(name: &str) -> String {
    let clean: String =
        name.trim().to_lowercase().chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).collect();
    let words: Vec<&str> = clean.split('-').filter(|word| !word.is_empty()).collect();
    if words.is_empty() {
        words::common::JOB.now().to_owned()
    } else {
        words.join("-").chars().take(80).collect()
    }
}

/// A date as "2026-11-25".
pub(crate) fn today(now: SystemTime) -> String {
    let (year, month, day) = civil(seconds(now).div_euclid(86_400));
    format!("{year:04}-{month:02}-{day:02}")
}

/// The last component of a path; the whole path if it has none.
pub(crate) fn own_name(path: &Path) -> String {
    path.file_name().map_or_else(|| path.display().to_string(), |name| name.to_string_lossy().into_owned())
}

// Folders and files
pub(crate) const PLACES: Say = words::browse::PLACES;
pub(crate) const BROWSE_UP: Say = words::browse::UP;
pub(crate) const BROWSE_UP_HELP: Say = words::browse::UP_HELP;
pub(crate) const HOME_FOLDER: Say = words::browse::HOME;
pub(crate) const JOB_FOLDER: Say = words::browse::JOB_FOLDER;
pub(crate) const BROWSE_FILTER: Say = words::browse::FILTER;
pub(crate) const ALL_KINDS: Say = words::browse::ALL_KINDS;
pub(crate) const ALL_KINDS_HELP: Say = words::browse::ALL_KINDS_HELP;
pub(crate) const NEW_FOLDER: Say = words::browse::NEW_FOLDER;
pub(crate) const NAME_OF_FOLDER: Say = words::browse::NAME_OF_FOLDER;
pub(crate) const MAKE_FOLDER: Say = words::browse::MAKE;
pub(crate) const BAD_FOLDER_NAME: Say = words::browse::BAD_NAME;
pub(crate) const COLUMN_FILE: Say = words::browse::NAME;
pub(crate) const COLUMN_SIZE: Say = words::browse::SIZE;
pub(crate) const COLUMN_CHANGED: Say = words::browse::CHANGED;
pub(crate) const NOTHING_HERE: Say = words::browse::EMPTY;
pub(crate) const USE_FOLDER: Say = words::browse::USE_FOLDER;
pub(crate) const BROWSE_KEYS: Say = words::browse::KEYS;
pub(crate) fn list_of(folder: &Path) -> String {
    words::browse::list_of(&folder.display())
}
pub(crate) fn no_name_with(typed: &str) -> String {
    words::browse::no_match(&typed)
}
pub(crate) fn cant_read_folder(why: &str) -> String {
    words::browse::cant_read(&why)
}
pub(crate) fn cant_make_folder(why: &impl Display) -> String {
    words::browse::cant_make(&why)
}
pub(crate) fn no_folder(folder: &Path) -> String {
    words::browse::no_folder(&folder.display())
}
pub(crate) fn no_file(file: &Path) -> String {
    words::browse::no_file(&file.display())
}

/// A folder or file in a line, for screen readers.
pub(crate) fn entry_words(
    name: &str,
    is_folder: bool,
    size: Option<u64>,
    changed: Option<SystemTime>,
) -> String {
    let name = if is_folder { words::browse::folder_named(&name) } else { name.to_owned() };
    [Some(name), size.map(size_words), changed.map(moment)]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(", ")
}

/// A human-readable file size: "812 B", "12 kB", "3.4 MB" (SI: 1 kB is 1,000 B).
pub(crate) fn size_words(bytes: u64) -> String {
    let rounded = |unit: u64, name: &str| {
        let whole = bytes as f64 / unit as f64;
        if whole < 9.95 { format!("{whole:.1} {name}") } else { format!("{whole:.0} {name}") }
    };
    match bytes {
        0..1_000 => format!("{bytes} B"),
        1_000..1_000_000 => rounded(1_000, "kB"),
        1_000_000..1_000_000_000 => rounded(1_000_000, "MB"),
        _ => rounded(1_000_000_000, "GB"),
    }
}

pub(crate) fn moment(at: SystemTime) -> String {
    let of_day = seconds(at).rem_euclid(86_400);
    format!("{} {:02}:{:02} UTC", today(at), of_day / 3600, of_day / 60 % 60)
}

fn seconds(at: SystemTime) -> i64 {
    let since = |d: std::time::Duration| i64::try_from(d.as_secs()).unwrap_or(i64::MAX);
    match at.duration_since(SystemTime::UNIX_EPOCH) {
        Ok(after) => since(after),
        Err(before) => -since(before.duration()),
    }
}

/// Days since 1970-01-01 to year, month and day of the Gregorian calendar: computed with years that start in March, so
/// that the leap day is the last of its year.
fn civil(days: i64) -> (i64, i64, i64) {
    let days = days + 719_468;
    let era = days.div_euclid(146_097);
    let of_era = days.rem_euclid(146_097);
    let year = (of_era - of_era / 1_460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year + year / 4 - year / 100);
    let month = (5 * of_year + 2) / 153;
    let day = of_year - (153 * month + 2) / 5 + 1;
    let month = if month < 10 { month + 3 } else { month - 9 };
    (year + era * 400 + i64::from(month <= 2), month, day)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::time::Duration;

    /// Days in POSIX time: 0 is 1970-01-01, 951 782 400 s is 2000-02-29 (IEEE Std 1003.1, seconds since the Epoch).
    #[test]
    fn days_of_the_calendar() {
        let day = |seconds| today(SystemTime::UNIX_EPOCH + Duration::from_secs(seconds));
        assert_eq!(day(0), "1970-01-01");
        assert_eq!(day(951_782_400), "2000-02-29");
        assert_eq!(day(951_868_800), "2000-03-01");
        assert_eq!(day(1_798_675_199), "2026-12-30");
    }

    #[test]
    fn names_of_files() {
        assert_eq!(file_stem("Alder Court"), "alder-court");
        assert_eq!(file_stem("  a/b\\c: \"d\"  "), "a-b-c-d");
        assert_eq!(file_stem("???"), "job");
    }
}
