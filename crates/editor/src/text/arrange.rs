//! Words for filling faces and arranging blocks.

use crate::filling::Laying;
use chalkcourse_geometry::{DVec2, Length, Plane, Units};
use chalkcourse_job::Resolved;
use chalkcourse_job::{Kit, RowJoints};
use chalkcourse_plan::{Align, Cut, Fill, Measure, Seen, Spread};
use chalkcourse_words::{Say, pick, say, tell};

// Fill
pub(crate) const FILL: Say = say("Fill with modules", "Llenar con módulos");
pub(crate) const FILL_TAB: Say = say("Fill", "Llenar");
pub(crate) const FILL_THIS_FACE: Say = say("Fill this face", "Llenar este faldón");
pub(crate) const FILL_ALL: Say = say("Fill all faces", "Llenar todos los faldones");
pub(crate) const FILL_ALL_HELP: Say = say(
    "All faces that are steep enough for the kit, one after the other.  (L, with nothing selected)",
    "Todos los faldones con pendiente suficiente para el kit, uno tras otro.  (L, sin nada seleccionado)",
);
pub(crate) const FILL_HELP: Say = say(
    "The most modules that the rules allow. Locked blocks stay, the others on the face make way; undo takes it back.  (L)",
    "El mayor número de módulos que permiten las reglas. Los bloques fijados se quedan, los demás del \
        faldón dejan lugar; deshacer lo revierte.  (L)",
);
pub(crate) const FILL_HINT: Say = say(
    "Puts the most modules on a face that the rules of this job allow, proves it, and lists what holds it back. Select a face to \
     fill it alone.",
    "Pone en un faldón el mayor número de módulos que permiten las reglas de esta obra, lo demuestra y \
        enumera lo que lo limita. Seleccione un faldón para llenar solo ese.",
);
pub(crate) const WAY: Say = say("Laid as", "Colocados en");
pub(crate) const LIE_EITHER: Say = say("either way", "cualquier sentido");
pub(crate) const MOST_BLOCKS: Say = say("Blocks at most", "Bloques como máximo");
pub(crate) const MOST_BLOCKS_HELP: Say = say(
    "Every corner of a block is flashed: fewer blocks, fewer corners.",
    "Cada esquina de un bloque lleva tapajuntas: menos bloques, menos esquinas.",
);
pub(crate) const WORTH_HELP: Say = say(
    "What a module earns after what it costs itself. A run of flashing and a corner cost what the price list says, so a module that pays for neither is left out.",
    "Lo que gana un módulo después de lo que cuesta él mismo. Un tramo de tapajuntas y una esquina \
        cuestan lo que dice la lista de precios, así que se omite el módulo que no paga ninguno de los \
        dos.",
);
pub(crate) const BY_AREA: Say = say("Weigh by the area of the face", "Ponderar por el área del faldón");
pub(crate) const BY_AREA_HELP: Say = say(
    "A module counts whole on the largest face that is filled, half on one of half its area.",
    "Un módulo cuenta entero en el faldón más grande de los que se llenan, y la mitad en uno de la \
        mitad de su área.",
);
pub(crate) const SIZE_BY: Say = say("Size by", "Tamaño en");
pub(crate) const BY_MODULES: Say = say("modules", "módulos");
pub(crate) const BY_POWER: Say = say("kilowatts", "kilovatios");
pub(crate) const HOW_MANY: Say = say("How many modules", "Cuántos módulos");
pub(crate) const HOW_MUCH_POWER: Say = say("Kilowatts", "Kilovatios");
pub(crate) const HOW_MANY_HELP: Say = say(
    "On all faces that are filled together, with those in locked blocks there.",
    "En todos los faldones que se llenan juntos, contando los de sus bloques fijados.",
);
pub(crate) const LAID_TO_BE: Say = say("As", "Que sea");
pub(crate) const COMPACT: Say = say("compact as can be", "lo más compacto posible");
pub(crate) const CHEAPEST: Say = say("cheap as can be", "lo más barato posible");
pub(crate) const FILL_CHOSEN_HELP: Say = say(
    "The faces that are ticked in the list, one after the other.",
    "Los faldones marcados en la lista, uno tras otro.",
);
pub(crate) const NOTHING_YET: Say = say("No layout found yet.", "Aún no se halló ninguna disposición.");
pub(crate) const IMPROVING: Say = say(
    "Drawn on the roof, not placed yet. It goes on until this is proved best; Stop places what is there.",
    "Dibujado sobre el techo, todavía sin colocar. Sigue hasta demostrar que es lo mejor; Parar coloca \
        lo que hay.",
);
pub(crate) const ASKING: Say = say("Looking for what holds it back…", "Buscando lo que lo limita…");
pub(crate) const STOP_ASKING: Say = say("Stop looking", "Dejar de buscar");
pub(crate) const STOP_ASKING_HELP: Say = say(
    "Keep what was found of what holds the array back.",
    "Conservar lo que se halló sobre lo que limita el arreglo.",
);
pub(crate) const NOT_ASKED_YET: Say = say("Being looked for…", "Se está buscando…");
pub(crate) const NOT_FOUND_OUT: Say = say(
    "Not looked for to the end: fill the face again to know.",
    "No se buscó hasta el final: llene otra vez el faldón para saberlo.",
);
pub(crate) const ASKED_IN_PART: Say =
    say("Not looked for to the end: there may be more.", "No se buscó hasta el final: puede haber más.");
pub(crate) const STOP: Say = say("Stop", "Parar");
pub(crate) const STOP_HELP: Say = say(
    "Take the best that was found so far, where it is better than what is there.",
    "Tomar lo mejor que se halló hasta ahora, si es mejor que lo que hay.",
);
pub(crate) const SEARCHED: Say = say("What was searched", "Lo que se buscó");
pub(crate) const HOLDS_BACK: Say = say("What holds it back", "Lo que lo limita");
pub(crate) const NOTHING_HOLDS: Say =
    say("Nothing but the size of the face.", "Nada más que el tamaño del faldón.");
pub(crate) const NO_FACE_TO_FILL: Say = say(
    "There is no face to fill yet: draw one first.",
    "Todavía no hay faldón que llenar: dibuje uno primero.",
);
pub(crate) const FILL_DROPPED: Say = say(
    "The roof changed while it was being filled, so the answer was dropped. Fill it again.",
    "El techo cambió mientras se llenaba, así que se descartó la respuesta. Llénelo otra vez.",
);
pub(crate) const FILL_STOPPED: Say = say(
    "Stopped before anything better than what is there was found: the blocks are as they were.",
    "Se paró antes de hallar algo mejor que lo que hay: los bloques están como estaban.",
);
pub(crate) const FILL_BROKE: Say = say(
    "Filling broke off by itself: a fault of this program. The job is as it was; try another way of laying.",
    "El llenado se interrumpió solo: es una falla de este programa. La obra está como estaba; pruebe \
        otra manera de colocar.",
);

pub(crate) fn way(way: Laying) -> &'static str {
    match way {
        Laying::SlidingRows => pick("all that the kit allows", "todo lo que permite el kit"),
        Laying::OneGrid => pick("one grid", "una sola cuadrícula"),
        Laying::HalfLapped => pick("half-lapped rows", "filas a media pieza"),
        Laying::OnCourses => pick("rows on the courses, one block", "filas sobre las hiladas, un bloque"),
        Laying::WholeBlocks => pick("whole blocks", "bloques enteros"),
        Laying::ByWorth => pick("by worth", "por valor"),
        Laying::ToNumber => pick("to a number", "hasta un número"),
    }
}
/// "The kit: modules landscape or portrait; joints of rows free, aligned or half-lapped; base rail anywhere."
pub(crate) fn kit_allows(kit: &Kit) -> String {
    let ways: Vec<&str> = kit.orientations.iter().map(|way| way.name()).collect();
    let joints: Vec<&str> = kit
        .laying
        .joints
        .iter()
        .map(|joints| match joints {
            RowJoints::Free => pick("free", "libres"),
            RowJoints::Aligned => pick("in line", "alineadas"),
            RowJoints::HalfLapped => pick("half-lapped", "a media pieza"),
        })
        .collect();
    let rail = if kit.laying.base_rail.anywhere {
        pick("anywhere", "en cualquier lugar")
    } else {
        pick("by the courses", "según las hiladas")
    };
    tell!(
        "The kit allows modules {}, joints of rows {}, the base rail {rail}.",
        "El kit permite módulos {}, juntas de filas {}, el riel base {rail}.",
        ways.join(pick(" or ", " o ")),
        joints.join(pick(" or ", " o "))
    )
}
pub(crate) fn worth_of_module(currency: &str) -> String {
    tell!("A module's worth, {currency}", "Valor de un módulo, {currency}")
}
/// A number above 0.
///
/// # Errors
/// Words for the person.
pub(crate) fn positive_number(text: &str) -> Result<f64, &'static str> {
    match text.trim().parse::<f64>() {
        Ok(number) if number.is_finite() && number > 0.0 && number < 1e9 => Ok(number),
        _ => Err(pick(
            "Type a number above 0, such as 12.5.",
            "Escriba un número mayor que 0, por ejemplo 12.5.",
        )),
    }
}
pub(crate) fn some_faces(chosen: usize) -> String {
    match chosen {
        0 => pick("Choose several faces", "Elegir varios faldones").to_owned(),
        1 => pick("1 face chosen", "1 faldón elegido").to_owned(),
        n => tell!("{n} faces chosen", "{n} faldones elegidos"),
    }
}
pub(crate) fn fill_chosen(chosen: usize) -> String {
    if chosen == 1 {
        pick("Fill the chosen face", "Llenar el faldón elegido").to_owned()
    } else {
        tell!("Fill {chosen} chosen faces", "Llenar {chosen} faldones elegidos")
    }
}
/// "So far 49 of at most 52"
pub(crate) fn so_far(fills: &[Fill]) -> String {
    tell!("So far {}", "Hasta ahora {}", of_most(fills))
}
/// "25 of at most 26", where no layout of any kind has more; a narrower claim is told with its kind alone.
fn of_most(fills: &[Fill]) -> String {
    let modules: usize = fills.iter().map(|fill| fill.modules).sum();
    let most: Option<usize> = fills.iter().map(Fill::most).sum();
    match most {
        Some(most) => tell!("{modules} of at most {most}", "{modules} de {most} como máximo"),
        None => chalkcourse_words::modules(modules),
    }
}
/// What was found against the most that there can be, from 0 to 1.
pub(crate) fn share_found(fills: &[Fill]) -> f32 {
    let of = |what: fn(&Fill) -> usize| fills.iter().map(what).sum::<usize>() as f32;
    of(|fill| fill.modules) / of(|fill| fill.bound).max(1.0)
}
pub(crate) const SHARE_FOUND_HELP: Say = say(
    "What was found against the most that there can be: at its end nothing is left to find. How long that takes nobody can say \
     beforehand; Stop places what there is.",
    "Lo hallado frente a lo máximo que puede haber: al final no queda nada por hallar. Cuánto tarda nadie puede decirlo de \
     antemano; Parar coloca lo que hay.",
);

/// What is left open, where a fill is not proved.
pub(crate) fn gap(fill: &Fill) -> Option<String> {
    if fill.proved {
        return None;
    }
    Some(match &fill.measure {
        Some(Measure { value, bound, .. }) => {
            tell!(
                "Not proved: between {value:.2} and {bound:.2} something better may exist.",
                "Sin demostrar: entre {value:.2} y {bound:.2} puede haber algo mejor."
            )
        }
        None => {
            let open = fill.bound.saturating_sub(fill.modules);
            let modules = if open == 1 { pick("module", "módulo") } else { pick("modules", "módulos") };
            tell!(
                "Not proved: up to {open} more {modules} may be possible.",
                "Sin demostrar: quizá quepan hasta {open} {modules} más."
            )
        }
    })
}
pub(crate) fn cost_named(words: &str) -> String {
    tell!("Costs modules: {words}", "Cuesta módulos: {words}")
}
pub(crate) fn win_named(words: &str) -> String {
    tell!("Would win: {words}", "Ganaría: {words}")
}
pub(crate) fn near_named(words: &str) -> String {
    tell!("Nearly fits: {words}", "Casi cabe: {words}")
}
pub(crate) fn move_named(words: &str) -> String {
    format!("{}: {words}", super::MOVE_IT)
}
pub(crate) fn move_help(searched: &str) -> String {
    tell!(
        "Do this; undo takes it back. Then fill the face again. {}",
        "Hacer esto; deshacer lo revierte. Después llene otra vez el faldón. {}",
        sentence(searched)
    )
}
pub(crate) fn fill_face(name: &str) -> String {
    tell!("Fill {name}", "Llenar {name}")
}
pub(crate) fn filling(names: &[&str], seconds: f64) -> String {
    let since = if seconds < 1.0 { String::new() } else { format!(", {seconds:.0} s") };
    match names {
        [one] => tell!("Filling {one}{since}…", "Llenando {one}{since}…"),
        _ => tell!("Filling {} faces{since}…", "Llenando {} faldones{since}…", names.len()),
    }
}
pub(crate) fn fill_of(job: &Resolved, fills: &[Fill]) -> String {
    let name =
        |fill: &Fill| job.face(fill.face).map_or(pick("a face", "un faldón"), |face| face.name.as_str());
    match fills {
        [fill] => tell!("fill {}", "llenar {}", name(fill)),
        _ => tell!("fill {} faces", "llenar {} faldones", fills.len()),
    }
}
pub(crate) fn filled(fills: &[Fill]) -> String {
    match fills {
        [_] => tell!("Filled: {}", "Llenado: {}", of_most(fills)),
        _ => tell!("Filled {} faces: {}", "Llenados {} faldones: {}", fills.len(), of_most(fills)),
    }
}
/// "Face South: 25 of at most 25"
pub(crate) fn fill_row(name: &str, fill: &Fill) -> String {
    format!("{}: {}", super::face_heading(name), of_most(std::slice::from_ref(fill)))
}
/// "At 2 places one more module is stopped by …"
pub(crate) fn near_row(words: &str, places: usize) -> String {
    match places {
        1 => sentence(words),
        places => tell!("At {places} places {words}", "En {places} lugares {words}"),
    }
}
/// The first letter large.
pub(crate) fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

// Arrange
pub(crate) const MAKE_ROOM: Say = say("Make room", "Hacer lugar");
pub(crate) const MAKE_ROOM_HELP: Say = say(
    "Move it the least distance that clears its findings.  (R)",
    "Moverlo la menor distancia que resuelve sus hallazgos.  (R)",
);
pub(crate) const NOTHING_IN_THE_WAY: Say = say("Nothing is in its way.", "Nada le estorba.");
pub(crate) const NO_ROOM: Say = say(
    "No move was found that clears this block: make it smaller, or move what is in its way.",
    "No se halló ningún movimiento que libre este bloque: hágalo más pequeño o mueva lo que le estorba.",
);
pub(crate) const ROOM_DROPPED: Say = say(
    "The roof changed while room was looked for, so the answer was dropped. Press R again.",
    "El techo cambió mientras se buscaba lugar, así que se descartó la respuesta. Oprima R otra vez.",
);
pub(crate) const ROOM_STOPPED: Say = say(
    "Stopped before a place was found: the block is as it was.",
    "Se paró antes de hallar un lugar: el bloque está como estaba.",
);
pub(crate) const ROOM_BROKE: Say = say(
    "The search for room broke off by itself: a fault of this program. The job is as it was.",
    "La búsqueda de lugar se interrumpió sola: es una falla de este programa. La obra está como estaba.",
);
pub(crate) const ROOM_STOP_HELP: Say = say(
    "End the search with the nearest place found so far.",
    "Terminar la búsqueda con el lugar más cercano hallado hasta ahora.",
);
pub(crate) const MIRROR: Say = say("Mirror", "Reflejar");
pub(crate) const MIRROR_HELP: Say = say(
    "A mirror image on the slope beyond the ridge.  (M)",
    "Una imagen reflejada en la vertiente al otro lado de la cumbrera.  (M)",
);
pub(crate) const NO_OTHER_SLOPE: Say =
    say("Its face shares no ridge with another face.", "Su faldón no comparte cumbrera con otro.");
pub(crate) const COPY_TO: Say = say("Copy to face", "Copiar a un faldón");
pub(crate) const COPY_TO_FACE: Say = say("Copy to a face…", "Copiar a un faldón…");
pub(crate) const NO_OTHER_FACE: Say = say("There is no other face.", "No hay otro faldón.");
pub(crate) const NO_COPY: Say = say(
    "It can't be copied there: mend the outlines of both faces first.",
    "No se puede copiar ahí: corrija primero los contornos de ambos faldones.",
);
pub(crate) const SPLIT: Say = say("Split", "Dividir");
pub(crate) const NO_SPLIT: Say =
    say("A cut there leaves nothing on one side.", "Un corte ahí no deja nada en un lado.");
pub(crate) const JOIN: Say = say("Join", "Unir");
pub(crate) const NOT_FLUSH: Say = say(
    "No block is flush with it: they must touch, lie the same way, and have the same reveal and rows in line.",
    "Ningún bloque está al ras con él: deben tocarse, tener el mismo sentido, la misma separación y \
        las filas en línea.",
);
pub(crate) const ALIGN: Say = say("Align", "Alinear");
pub(crate) const NOT_ALIGNED: Say = say(
    "There is no other block with modules on this face.",
    "No hay otro bloque con módulos en este faldón.",
);
pub(crate) const SELECT_A_BLOCK: Say = say("Select a block first.", "Seleccione primero un bloque.");

pub(crate) fn making_room(name: &str) -> String {
    tell!("Making room for {name}…", "Haciendo lugar para {name}…")
}
/// "Block A moved 3 1/2" to the right: the least that clears it, proved"
pub(crate) fn moved_clear(name: &str, by: DVec2, proved: bool, units: Units) -> String {
    let sure = if proved {
        pick("the least that clears it, proved", "lo mínimo que lo libra, demostrado")
    } else {
        pick("the least that was found, not proved", "lo mínimo que se halló, sin demostrar")
    };
    tell!("{name} moved {}: {sure}", "{name} se movió {}: {sure}", way_words(by, units))
}
/// "3 1/2" to the right and 1" up the slope"
pub(crate) fn way_words(by: DVec2, units: Units) -> String {
    let part = |metres: f64, plus: &str, minus: &str| {
        let words = if metres > 0.0 { plus } else { minus };
        (metres.abs() > 1e-6)
            .then(|| format!("{} {words}", Length::from_metres(metres.abs()).show_small(units)))
    };
    let parts = [
        part(by.x, pick("to the right", "a la derecha"), pick("to the left", "a la izquierda")),
        part(by.y, pick("up the slope", "cuesta arriba"), pick("down the slope", "cuesta abajo")),
    ];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    if parts.is_empty() { pick("not at all", "nada").to_owned() } else { parts.join(pick(" and ", " y ")) }
}
pub(crate) fn spread(spread: Spread) -> &'static str {
    match spread {
        Spread::Along => pick("Spread along the eave", "Repartir a lo largo del alero"),
        Spread::Up => pick("Spread up the slope", "Repartir cuesta arriba"),
    }
}
pub(crate) fn spread_of(face: &str) -> String {
    tell!("spread the blocks of {face}", "repartir los bloques de {face}")
}
pub(crate) const SPREAD: Say = say("Spread", "Repartir");
pub(crate) const SPREAD_HELP: Say = say(
    "Equal gaps between the blocks of this face; the first and the last stay.",
    "Espacios iguales entre los bloques de este faldón; el primero y el último se quedan.",
);
pub(crate) const NOT_SPREAD: Say = say(
    "Nothing to spread: it takes three blocks on the face that are not locked, with room between the outer ones, and gaps that differ.",
    "Nada que repartir: se necesitan tres bloques del faldón que no estén fijados, con lugar entre los \
        extremos y espacios distintos.",
);
pub(crate) fn align_command(to: Align) -> &'static str {
    match to {
        Align::Left => pick("Left end with the nearest block", "Extremo izquierdo con el bloque más cercano"),
        Align::Right => pick("Right end with the nearest block", "Extremo derecho con el bloque más cercano"),
        Align::Bottom => pick("Base rail with the nearest block", "Riel base con el bloque más cercano"),
    }
}
pub(crate) fn copy_title(name: &str) -> String {
    tell!("Copy {name} to", "Copiar {name} a")
}
pub(crate) fn mirror_to(face: &str) -> String {
    tell!("Mirror to {face}", "Reflejar en {face}")
}
/// Where a block is cut, as a person sees its face: rows and columns count from the left end of the eave, wherever that is on the
/// screen.
pub(crate) fn cut(cut: Cut, plane: &Plane, seen: Seen) -> String {
    let (line, way) = match cut {
        Cut::AboveRows(rows) => (tell!("row {rows}", "la fila {rows}"), DVec2::Y),
        Cut::RightOfColumns(columns) => (tell!("column {columns}", "la columna {columns}"), DVec2::X),
    };
    let shown = seen.on_screen(plane, way);
    let side = if shown.x > 0.5 {
        pick("right of", "a la derecha de")
    } else if shown.x < -0.5 {
        pick("left of", "a la izquierda de")
    } else if shown.y > 0.0 {
        pick("above", "sobre")
    } else {
        pick("below", "debajo de")
    };
    format!("{side} {line}")
}
pub(crate) fn align_to(to: Align, name: &str) -> String {
    match to {
        Align::Left => tell!("left end with {name}", "extremo izquierdo con {name}"),
        Align::Right => tell!("right end with {name}", "extremo derecho con {name}"),
        Align::Bottom => tell!("base rail with {name}", "riel base con {name}"),
    }
}
pub(crate) fn room_for(name: &str) -> String {
    tell!("make room for {name}", "hacer lugar para {name}")
}
pub(crate) fn mirror_of(name: &str) -> String {
    tell!("mirror {name}", "reflejar {name}")
}
pub(crate) fn copy_of(name: &str) -> String {
    tell!("copy {name}", "copiar {name}")
}
pub(crate) fn split_of(name: &str) -> String {
    tell!("split {name}", "dividir {name}")
}
pub(crate) fn join_of(name: &str) -> String {
    tell!("join {name}", "unir {name}")
}
pub(crate) fn align_of(name: &str) -> String {
    tell!("align {name}", "alinear {name}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Azimuth, Pitch};

    /// In plan, north up, the right end of a north face's eave is on the left of the screen, and its ridge is below.
    #[test]
    fn cuts_are_named_as_they_are_seen() {
        let pitch = Pitch::from_rise_in_12(6.0).unwrap();
        let falling_to = |degrees| Plane {
            datum: chalkcourse_geometry::dvec3(0.0, 0.0, 0.0),
            pitch,
            downslope: Azimuth::from_degrees(degrees),
        };
        let (column, row) = (Cut::RightOfColumns(2), Cut::AboveRows(1));
        for (degrees, seen, columns, rows) in [
            (180.0, Seen::Plan, "right of column 2", "above row 1"),
            (0.0, Seen::Plan, "left of column 2", "below row 1"),
            (90.0, Seen::Plan, "above column 2", "left of row 1"),
            (0.0, Seen::FaceOn, "right of column 2", "above row 1"),
        ] {
            let plane = falling_to(degrees);
            assert_eq!((cut(column, &plane, seen), cut(row, &plane, seen)), (columns.into(), rows.into()));
        }
    }
}
