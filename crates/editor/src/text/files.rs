//! Sentences about files.

use crate::Document;
use crate::files::Ask;
use crate::recovery::Left;
use chalkcourse_job::FileError;
use std::fmt::Display;
use std::path::Path;
use std::time::SystemTime;

pub(crate) fn ask_title(ask: Ask) -> &'static str {
    match ask {
        Ask::Open => "Open a job",
        Ask::SaveAs => "Save the job as",
        Ask::Export(_) => "Write the order to",
        Ask::Print(_) => "Write the sheet to",
        Ask::ExportPlan(_) => "Write the plan to",
        Ask::Import => "Import a building from a file or folder",
        Ask::ImportFolder => "Import a building from a folder",
        Ask::Kit => "Load a kit",
        Ask::RuleBook => "Load a rule book",
        Ask::SaveRuleBook => "Save the rule book as",
        Ask::CompareBook => "Compare with a rule book",
        Ask::Prices => "Load a price list",
        Ask::Stock => "Load a warehouse list",
        Ask::Counts => "Load a pallet list with counts",
        Ask::CompareJob => "Compare with the order of a job",
        Ask::Offer => "Add the price list of a supplier",
        Ask::Picture => "Lay a picture under the plan",
        Ask::SavePicture => "Save the picture as",
    }
}

pub(crate) fn ask_button(ask: Ask) -> &'static str {
    match ask {
        Ask::Open => "Open",
        Ask::SaveAs | Ask::SaveRuleBook | Ask::SavePicture => "Save",
        Ask::CompareBook | Ask::CompareJob => "Compare",
        Ask::Export(_) | Ask::Print(_) | Ask::ExportPlan(_) => "Write",
        Ask::Import | Ask::ImportFolder => "List",
        Ask::Kit | Ask::RuleBook | Ask::Prices | Ask::Stock | Ask::Counts | Ask::Offer | Ask::Picture => {
            "Load"
        }
    }
}

pub(crate) fn ask_filter(ask: Ask) -> &'static str {
    match ask {
        Ask::Open | Ask::SaveAs | Ask::CompareJob => "Chalkcourse job",
        Ask::Export(_) => "Order",
        Ask::Print(_) => "Sheet to print",
        Ask::ExportPlan(_) => "Plan",
        Ask::Import | Ask::ImportFolder => "Buildings",
        Ask::Kit => "Kit",
        Ask::RuleBook | Ask::SaveRuleBook | Ask::CompareBook => "Rule book",
        Ask::Prices | Ask::Offer => "Price list",
        Ask::Stock => "Warehouse list",
        Ask::Counts => "Pallet list",
        Ask::Picture => "Picture (PNG or JPEG)",
        Ask::SavePicture => "PNG picture",
    }
}

/// The name of the job, with a mark while it differs from the file.
pub(crate) fn title_of(document: &Document) -> String {
    let mark = if document.history().is_unsaved() { "  (not saved)" } else { "" };
    format!("{}{mark}", document.job().name)
}

pub(crate) fn window_title(document: &Document) -> String {
    let mark = if document.history().is_unsaved() { "*" } else { "" };
    format!("{}{mark} – Chalkcourse", document.job().name)
}

pub(crate) fn unsaved_title(name: &str) -> String {
    format!("Save the changes to “{name}”?")
}

pub(crate) fn job_untouched(error: &FileError) -> String {
    format!("{error}\n\nThe job that is open was not touched.")
}

pub(crate) fn saved_to(path: &Path) -> String {
    format!("Saved to {}", path.display())
}

pub(crate) fn exported_to(path: &Path) -> String {
    format!("Order written to {}", path.display())
}

pub(crate) fn taken(what: &str) -> String {
    format!("{}: done. Undo takes it back.", what.trim_end_matches('…'))
}

pub(crate) fn no_recovery(error: &impl Display) -> String {
    format!("No recovery copies are kept: {error}")
}
pub(crate) fn no_frame_times(path: &Path, error: &impl Display) -> String {
    format!("Frames are not timed: {} can't be written ({error})", path.display())
}

/// A copy that was left behind, in a line.
pub(crate) fn copy_words(left: &Left) -> String {
    let written = left.written.map_or_else(|| "kept".to_owned(), |at| format!("kept on {}", moment(at)));
    let name = left.name.as_deref().unwrap_or("A job whose copy can't be read");
    match &left.from {
        Some(from) => format!("{name}, {written}; from {}", from.display()),
        None => format!("{name}, {written}; never saved to a file"),
    }
}

/// A name that every file system takes.
pub(crate) fn file_stem(name: &str) -> String {
    let clean: String =
        name.trim().to_lowercase().chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).collect();
    let words: Vec<&str> = clean.split('-').filter(|word| !word.is_empty()).collect();
    if words.is_empty() { "job".to_owned() } else { words.join("-").chars().take(80).collect() }
}

/// A day as "2026-11-25".
pub(crate) fn today(now: SystemTime) -> String {
    let (year, month, day) = civil(seconds(now).div_euclid(86_400));
    format!("{year:04}-{month:02}-{day:02}")
}

fn moment(at: SystemTime) -> String {
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

/// Days from 1970-01-01 to year, month and day of the Gregorian calendar: counted in years that begin in March, so
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

    /// Days told by POSIX time: 0 is 1970-01-01, 951 782 400 s is 2000-02-29 (IEEE Std 1003.1, seconds since the Epoch).
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
