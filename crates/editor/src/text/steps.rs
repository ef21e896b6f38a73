//! Labels of steps, and names for new objects.

use crate::Document;
use chalkcourse_job::{PastStep, PenetrationKind, Resolved, StepPosition};
use chalkcourse_words::{self as words, Put, Said, Say, later};

pub(crate) fn move_of(name: impl Put) -> Said {
    later::history::move_2(&name)
}
pub(crate) fn nudge_of(name: impl Put) -> Said {
    later::history::nudge(&name)
}
pub(crate) fn resize_of(name: impl Put) -> Said {
    later::history::resize(&name)
}
pub(crate) fn shift_of(name: impl Put) -> Said {
    later::history::shift_a_row_of(&name)
}
pub(crate) fn switch_of(name: impl Put) -> Said {
    later::history::switch_modules_of(&name)
}
pub(crate) fn change_of(name: impl Put) -> Said {
    later::history::change(&name)
}
pub(crate) fn place_of(name: impl Put) -> Said {
    later::history::place(&name)
}
pub(crate) fn draw_of(name: impl Put) -> Said {
    later::history::draw(&name)
}
pub(crate) fn delete_of(name: impl Put) -> Said {
    later::history::delete(&name)
}
pub(crate) fn move_corner_of(name: impl Put) -> Said {
    later::history::move_a_corner_of(&name)
}
pub(crate) fn add_corner_of(name: impl Put) -> Said {
    later::history::add_a_corner_to(&name)
}
pub(crate) fn cut_of(name: impl Put) -> Said {
    later::history::cut(&name)
}
pub(crate) fn paste_of(name: impl Put) -> Said {
    later::history::paste(&name)
}
pub(crate) fn duplicate_of(name: impl Put) -> Said {
    later::history::duplicate(&name)
}
pub(crate) fn delete_corner_of(name: impl Put) -> Said {
    later::history::delete_a_corner_of(&name)
}
pub(crate) const RENAME_JOB: Say = words::history::RENAME_THE_JOB;
pub(crate) const CHANGE_SITE: Say = words::history::CHANGE_THE_SITE;
pub(crate) const CHANGE_UNITS: Say = words::history::CHANGE_THE_UNITS;

pub(crate) fn undo_words(label: Option<&Said>) -> String {
    label.map_or_else(
        || words::history::NOTHING_TO_UNDO.now().to_owned(),
        |label| words::history::undo(&label),
    )
}
pub(crate) fn redo_words(label: Option<&Said>) -> String {
    label.map_or_else(
        || words::history::NOTHING_TO_REDO.now().to_owned(),
        |label| words::history::redo(&label),
    )
}
pub(crate) fn undone(label: Option<Said>) -> String {
    label.map_or_else(
        || words::history::NOTHING_TO_UNDO.now().to_owned(),
        |label| words::history::undone(&label),
    )
}
pub(crate) fn redone(label: Option<Said>) -> String {
    label.map_or_else(
        || words::history::NOTHING_TO_REDO.now().to_owned(),
        |label| words::history::done_again(&label),
    )
}

pub(crate) const HISTORY: Say = words::history::STEPS_TAKEN;
pub(crate) const HISTORY_WHY: Say = words::history::SINCE_THE_JOB_WAS_OPENED;

/// "3.  move A"
pub(crate) fn step_words(step: &PastStep<'_>) -> String {
    format!("{}.  {}", step.number + 1, step.label)
}

/// The relation of a step to the present job, as a note beside it.
pub(crate) fn step_note(step: &PastStep<'_>) -> String {
    let place = match step.place {
        StepPosition::Before => "",
        StepPosition::Now => words::history::NOW.now(),
        StepPosition::Ahead => words::history::UNDONE_2.now(),
        StepPosition::Aside => words::history::DONE_OTHERWISE_LATER.now(),
    };
    let saved = if step.saved { words::history::SAVED.now() } else { "" };
    [place, saved].into_iter().filter(|words| !words.is_empty()).collect::<Vec<_>>().join(", ")
}

pub(crate) fn jumped(document: &Document) -> String {
    let now = document.history().past().find(|step| step.place == StepPosition::Now);
    let words = now.map_or_else(String::new, |step| step_words(&step));
    words::history::back_at_step(&words)
}

/// "Face 3", a name that is not yet used in the job.
pub(crate) fn new_face_name(job: &Resolved) -> String {
    fresh(words::common::FACE.now(), |name| job.faces.iter().any(|face| face.name == name))
}

/// "Vent 2".
pub(crate) fn new_penetration_name(job: &Resolved, kind: PenetrationKind) -> String {
    fresh(super::kind(kind), |name| job.penetrations.iter().any(|p| p.name == name))
}

/// "B".
pub(crate) fn new_block_name(job: &Resolved) -> String {
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
