//! What undo calls a step, and names for new things.

use chalkcourse_job::{Job, PenetrationKind};

pub(crate) fn move_of(name: &str) -> String {
    format!("move {name}")
}
pub(crate) fn nudge_of(name: &str) -> String {
    format!("nudge {name}")
}
pub(crate) fn resize_of(name: &str) -> String {
    format!("resize {name}")
}
pub(crate) fn shift_of(name: &str) -> String {
    format!("shift a row of {name}")
}
pub(crate) fn switch_of(name: &str) -> String {
    format!("switch modules of {name}")
}
pub(crate) fn change_of(name: &str) -> String {
    format!("change {name}")
}
pub(crate) fn place_of(name: &str) -> String {
    format!("place {name}")
}
pub(crate) fn draw_of(name: &str) -> String {
    format!("draw {name}")
}
pub(crate) fn delete_of(name: &str) -> String {
    format!("delete {name}")
}
pub(crate) fn move_corner_of(name: &str) -> String {
    format!("move a corner of {name}")
}
pub(crate) fn add_corner_of(name: &str) -> String {
    format!("add a corner to {name}")
}
pub(crate) fn delete_corner_of(name: &str) -> String {
    format!("delete a corner of {name}")
}
pub(crate) const RENAME_JOB: &str = "rename the job";
pub(crate) const CHANGE_SITE: &str = "change the site";
pub(crate) const CHANGE_UNITS: &str = "change the units";

pub(crate) fn undo_words(label: Option<&str>) -> String {
    label.map_or_else(|| "Nothing to undo".to_owned(), |label| format!("Undo: {label}"))
}
pub(crate) fn redo_words(label: Option<&str>) -> String {
    label.map_or_else(|| "Nothing to redo".to_owned(), |label| format!("Redo: {label}"))
}
pub(crate) fn undone(label: Option<&str>) -> String {
    label.map_or_else(|| "Nothing to undo".to_owned(), |label| format!("Undone: {label}"))
}
pub(crate) fn redone(label: Option<&str>) -> String {
    label.map_or_else(|| "Nothing to redo".to_owned(), |label| format!("Done again: {label}"))
}

/// "Face 3", a name that the job does not have yet.
pub(crate) fn new_face_name(job: &Job) -> String {
    fresh("Face", |name| job.faces.iter().any(|face| face.name == name))
}

/// "Vent 2".
pub(crate) fn new_penetration_name(job: &Job, kind: PenetrationKind) -> String {
    fresh(super::kind(kind), |name| job.penetrations.iter().any(|p| p.name == name))
}

/// "B".
pub(crate) fn new_block_name(job: &Job) -> String {
    chalkcourse_plan::new_block_name(job)
}

fn fresh(word: &str, taken: impl Fn(&str) -> bool) -> String {
    let mut number = 1_u32;
    loop {
        let name = format!("{word} {number}");
        if !taken(&name) {
            return name;
        }
        number += 1;
    }
}
