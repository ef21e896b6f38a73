//! What undo calls a step, and names for new things.

use crate::Document;
use chalkcourse_job::{Past, PastPlace, PenetrationKind, Resolved};
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) fn move_of(name: &str) -> String {
    tell!("move {name}", "mover {name}")
}
pub(crate) fn nudge_of(name: &str) -> String {
    tell!("nudge {name}", "empujar {name}")
}
pub(crate) fn resize_of(name: &str) -> String {
    tell!("resize {name}", "cambiar el tamaño de {name}")
}
pub(crate) fn shift_of(name: &str) -> String {
    tell!("shift a row of {name}", "correr una fila de {name}")
}
pub(crate) fn switch_of(name: &str) -> String {
    tell!("switch modules of {name}", "conmutar módulos de {name}")
}
pub(crate) fn change_of(name: &str) -> String {
    tell!("change {name}", "cambiar {name}")
}
pub(crate) fn place_of(name: &str) -> String {
    tell!("place {name}", "colocar {name}")
}
pub(crate) fn draw_of(name: &str) -> String {
    tell!("draw {name}", "dibujar {name}")
}
pub(crate) fn delete_of(name: &str) -> String {
    tell!("delete {name}", "borrar {name}")
}
pub(crate) fn move_corner_of(name: &str) -> String {
    tell!("move a corner of {name}", "mover una esquina de {name}")
}
pub(crate) fn add_corner_of(name: &str) -> String {
    tell!("add a corner to {name}", "agregar una esquina a {name}")
}
pub(crate) fn delete_corner_of(name: &str) -> String {
    tell!("delete a corner of {name}", "borrar una esquina de {name}")
}
pub(crate) const RENAME_JOB: Say = say("rename the job", "renombrar la obra");
pub(crate) const CHANGE_SITE: Say = say("change the site", "cambiar el sitio");
pub(crate) const CHANGE_UNITS: Say = say("change the units", "cambiar las unidades");

pub(crate) fn undo_words(label: Option<&str>) -> String {
    label.map_or_else(
        || pick("Nothing to undo", "Nada que deshacer").to_owned(),
        |label| tell!("Undo: {label}", "Deshacer: {label}"),
    )
}
pub(crate) fn redo_words(label: Option<&str>) -> String {
    label.map_or_else(
        || pick("Nothing to redo", "Nada que rehacer").to_owned(),
        |label| tell!("Redo: {label}", "Rehacer: {label}"),
    )
}
pub(crate) fn undone(label: Option<&str>) -> String {
    label.map_or_else(
        || pick("Nothing to undo", "Nada que deshacer").to_owned(),
        |label| tell!("Undone: {label}", "Deshecho: {label}"),
    )
}
pub(crate) fn redone(label: Option<&str>) -> String {
    label.map_or_else(
        || pick("Nothing to redo", "Nada que rehacer").to_owned(),
        |label| tell!("Done again: {label}", "Hecho otra vez: {label}"),
    )
}

pub(crate) const HISTORY: Say = say("Steps taken", "Pasos dados");
pub(crate) const HISTORY_WHY: Say = say(
    "Since the job was opened, in the order of time. Press one to go there; nothing is lost until you close the job.",
    "Desde que se abrió la obra, en orden de tiempo. Oprima uno para ir ahí; nada se pierde hasta cerrar la obra.",
);

/// "3.  move A"
pub(crate) fn step_words(step: &Past<'_>) -> String {
    format!("{}.  {}", step.number + 1, step.label)
}

/// Where a step stands, in a word beside it.
pub(crate) fn step_note(step: &Past<'_>) -> String {
    let place = match step.place {
        PastPlace::Before => "",
        PastPlace::Now => pick("now", "ahora"),
        PastPlace::Ahead => pick("undone", "deshecho"),
        PastPlace::Aside => pick("done otherwise later", "después se hizo otra cosa"),
    };
    let saved = if step.saved { pick("saved", "guardado") } else { "" };
    [place, saved].into_iter().filter(|words| !words.is_empty()).collect::<Vec<_>>().join(", ")
}

pub(crate) fn jumped(document: &Document) -> String {
    let now = document.history().past().find(|step| step.place == PastPlace::Now);
    let words = now.map_or_else(String::new, |step| step_words(&step));
    tell!("Back at step {words}", "De vuelta en el paso {words}")
}

/// "Face 3", a name that the job does not have yet.
pub(crate) fn new_face_name(job: &Resolved) -> String {
    fresh(pick("Face", "Faldón"), |name| job.faces.iter().any(|face| face.name == name))
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
