//! Sentences about files.

use crate::Document;
use crate::files::Ask;
use crate::recovery::Left;
use chalkcourse_job::FileError;
use chalkcourse_words::{pick, tell};
use std::fmt::Display;
use std::path::Path;
use std::time::SystemTime;

pub(crate) fn ask_title(ask: Ask) -> &'static str {
    match ask {
        Ask::Open => pick("Open a job", "Abrir una obra"),
        Ask::SaveAs => pick("Save the job as", "Guardar la obra como"),
        Ask::Export(_) => pick("Write the order to", "Escribir el pedido en"),
        Ask::Print(_) => pick("Write the sheet to", "Escribir la hoja en"),
        Ask::ExportPlan(_) => pick("Write the plan to", "Escribir la planta en"),
        Ask::Import => {
            pick("Import a building from a file or folder", "Importar un edificio de un archivo o carpeta")
        }
        Ask::ImportFolder => pick("Import a building from a folder", "Importar un edificio de una carpeta"),
        Ask::Kit => pick("Load a kit", "Cargar un kit"),
        Ask::RuleBook => pick("Load a rule book", "Cargar un libro de reglas"),
        Ask::SaveRuleBook => pick("Save the rule book as", "Guardar el libro de reglas como"),
        Ask::CompareBook => pick("Compare with a rule book", "Comparar con un libro de reglas"),
        Ask::Prices => pick("Load a price list", "Cargar una lista de precios"),
        Ask::Stock => pick("Load a warehouse list", "Cargar una lista de almacén"),
        Ask::Counts => pick("Load a pallet list with counts", "Cargar una lista de tarimas con conteos"),
        Ask::CompareJob => pick("Compare with the order of a job", "Comparar con el pedido de una obra"),
        Ask::Offer => pick("Add the price list of a supplier", "Agregar la lista de precios de un proveedor"),
        Ask::Picture => pick("Lay a picture under the plan", "Poner una imagen bajo la planta"),
        Ask::SavePicture => pick("Save the picture as", "Guardar la imagen como"),
        Ask::Steps => pick("Write the steps to", "Escribir los pasos en"),
    }
}

pub(crate) fn ask_button(ask: Ask) -> &'static str {
    match ask {
        Ask::Open => pick("Open", "Abrir"),
        Ask::SaveAs | Ask::SaveRuleBook | Ask::SavePicture => pick("Save", "Guardar"),
        Ask::CompareBook | Ask::CompareJob => pick("Compare", "Comparar"),
        Ask::Export(_) | Ask::Print(_) | Ask::ExportPlan(_) | Ask::Steps => pick("Write", "Escribir"),
        Ask::Import | Ask::ImportFolder => pick("List", "Enumerar"),
        Ask::Kit | Ask::RuleBook | Ask::Prices | Ask::Stock | Ask::Counts | Ask::Offer | Ask::Picture => {
            pick("Load", "Cargar")
        }
    }
}

pub(crate) fn ask_filter(ask: Ask) -> &'static str {
    match ask {
        Ask::Open | Ask::SaveAs | Ask::CompareJob => pick("Chalkcourse job", "Obra de Chalkcourse"),
        Ask::Export(_) => pick("Order", "Pedido"),
        Ask::Print(_) => pick("Sheet to print", "Hoja para imprimir"),
        Ask::ExportPlan(_) => pick("Plan", "Planta"),
        Ask::Import | Ask::ImportFolder => pick("Buildings", "Edificios"),
        Ask::Kit => pick("Kit", "Kit"),
        Ask::RuleBook | Ask::SaveRuleBook | Ask::CompareBook => pick("Rule book", "Libro de reglas"),
        Ask::Prices | Ask::Offer => pick("Price list", "Lista de precios"),
        Ask::Stock => pick("Warehouse list", "Lista de almacén"),
        Ask::Counts => pick("Pallet list", "Lista de tarimas"),
        Ask::Picture => pick("Picture (PNG or JPEG)", "Imagen (PNG o JPEG)"),
        Ask::SavePicture => pick("PNG picture", "Imagen PNG"),
        Ask::Steps => pick("Edits", "Ediciones"),
    }
}

/// The name of the job, with a mark while it differs from the file.
pub(crate) fn title_of(document: &Document) -> String {
    let mark = if document.history().is_unsaved() { pick("  (not saved)", "  (sin guardar)") } else { "" };
    format!("{}{mark}", document.job().name)
}

pub(crate) fn window_title(document: &Document) -> String {
    let mark = if document.history().is_unsaved() { "*" } else { "" };
    format!("{}{mark} – Chalkcourse", document.job().name)
}

pub(crate) fn unsaved_title(name: &str) -> String {
    tell!("Save the changes to “{name}”?", "¿Guardar los cambios de “{name}”?")
}

pub(crate) fn job_untouched(error: &FileError) -> String {
    tell!("{error}\n\nThe job that is open was not touched.", "{error}\n\nLa obra abierta no se tocó.")
}

pub(crate) fn saved_to(path: &Path) -> String {
    tell!("Saved to {}", "Guardado en {}", path.display())
}

pub(crate) fn exported_to(path: &Path) -> String {
    tell!("Order written to {}", "Pedido escrito en {}", path.display())
}

pub(crate) fn taken(what: &str) -> String {
    tell!("{}: done. Undo takes it back.", "{}: hecho. Deshacer lo revierte.", what.trim_end_matches('…'))
}

pub(crate) fn no_recovery(error: &impl Display) -> String {
    tell!("No recovery copies are kept: {error}", "No se guardan copias de recuperación: {error}")
}
pub(crate) fn no_frame_times(path: &Path, error: &impl Display) -> String {
    tell!(
        "Frames are not timed: {} can't be written ({error})",
        "No se miden los cuadros: no se puede escribir {} ({error})",
        path.display()
    )
}

/// A copy that was left behind, in a line.
pub(crate) fn copy_words(left: &Left) -> String {
    let written = left.written.map_or_else(
        || pick("kept", "guardada").to_owned(),
        |at| tell!("kept on {}", "guardada el {}", moment(at)),
    );
    let name = left
        .name
        .as_deref()
        .unwrap_or(pick("A job whose copy can't be read", "Una obra cuya copia no se puede leer"));
    match &left.from {
        Some(from) => tell!("{name}, {written}; from {}", "{name}, {written}; de {}", from.display()),
        None => tell!(
            "{name}, {written}; never saved to a file",
            "{name}, {written}; nunca guardada en un archivo"
        ),
    }
}

/// A name that every file system takes.
pub(crate) fn file_stem(name: &str) -> String {
    let clean: String =
        name.trim().to_lowercase().chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).collect();
    let words: Vec<&str> = clean.split('-').filter(|word| !word.is_empty()).collect();
    if words.is_empty() { pick("job", "obra").to_owned() } else { words.join("-").chars().take(80).collect() }
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
