//! Words about courses of shingles.

use crate::coursing::Among;
use chalkcourse_geometry::coursing::{Exposure, Laid, OnCourse};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_plan::Place;
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) const COURSING: Say = say("Courses and base rail", "Hiladas y riel base");
pub(crate) const COURSES_IN_PLAN_HELP: Say =
    say("Face-on they are drawn always.", "De frente se dibujan siempre.");
pub(crate) const BLOCK: Say = say("Block", "Bloque");
pub(crate) const NO_BLOCK_ON_FACE: Say = say(
    "No block lies on this face yet. Place one to see where its base rail falls among the courses.",
    "Todavía no hay bloque en este faldón. Coloque uno para ver dónde cae su riel base entre las hiladas.",
);
pub(crate) const NO_MODULES_AMONG: Say = say(
    "This block has no modules, or the outline of its face is not sound yet.",
    "Este bloque no tiene módulos, o el contorno de su faldón aún no es válido.",
);
pub(crate) const RAIL_ON_A_LINE: Say = say("Rail on a course line", "Riel sobre una línea de hilada");
pub(crate) const RAIL_IS_ON_A_LINE: Say =
    say("It is on one now. Others near it:", "Ya está sobre una. Otras cercanas:");
pub(crate) const MOVE_IT: Say = say("Move it", "Moverlo");
pub(crate) const USE_IT: Say = say("Use it", "Usarla");
pub(crate) const WHOLE_BY_EXPOSURE: Say = say(
    "An exposure that brings a course line to the rail and to the top",
    "Una exposición que lleva una línea de hilada al riel y al borde superior",
);
pub(crate) const LEAST_EXPOSURE: Say = say("Exposure from", "Exposición desde");
pub(crate) const MOST_EXPOSURE: Say = say("Exposure to", "Exposición hasta");
pub(crate) const SHINGLE_RANGE_HELP: Say = say(
    "What the shingle may be laid to: its package says so. 5\" to 5 5/8\" is usual (common practice, no source).",
    "A lo que se puede colocar la teja: lo dice su paquete. De 5\" a 5 5/8\" es lo usual (práctica \
        común, sin fuente).",
);
pub(crate) const NO_EXPOSURE: Say = say(
    "No exposure in this range brings a line to both to 1/16\": move the block, or allow another range.",
    "Ninguna exposición de este rango lleva una línea a ambos a 1/16\": mueva el bloque o permita otro rango.",
);

/// "South: courses"
pub(crate) fn courses_of(face: &str) -> String {
    tell!("change the courses of {face}", "cambiar las hiladas de {face}")
}
pub(crate) fn rail_to_line(block: &str, course: usize) -> String {
    tell!(
        "set the rail of {block} on course line {}",
        "poner el riel de {block} en la línea de hilada {}",
        course + 1
    )
}

/// "on course line 28", or "1 1/4" above course line 28"
pub(crate) fn on_line(on: &OnCourse, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    match on.course {
        line if on.above == 0.0 && line >= 0 => {
            tell!("on course line {}", "sobre la línea de hilada {}", line + 1)
        }
        line if line >= 0 => {
            tell!("{} above course line {}", "{} sobre la línea de hilada {}", small(on.above), line + 1)
        }
        _ => pick("below the first course line", "debajo de la primera línea de hilada").to_owned(),
    }
}

/// How a block lies among the courses, in sentences.
pub(crate) fn laid(laid: &Laid, among: &Among, units: Units) -> [String; 3] {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let up = Length::from_metres(among.span.bottom - among.courses.eave).show(units);
    let base = if laid.base.above == 0.0 {
        tell!(
            "Base rail line {up} up from the eave, {}.",
            "Línea del riel base a {up} del alero, {}.",
            on_line(&laid.base, units)
        )
    } else {
        tell!(
            "Base rail line {up} up from the eave, {}: {} of a course shows below it.",
            "Línea del riel base a {up} del alero, {}: debajo se ven {} de una hilada.",
            on_line(&laid.base, units),
            small(laid.cut_at_base)
        )
    };
    let head = if laid.cut_at_head == 0.0 {
        pick(
            "The head flashing ends on a course line: the first course above it is whole.",
            "El tapajuntas superior termina en una línea de hilada: la primera hilada arriba es entera.",
        )
        .to_owned()
    } else {
        tell!(
            "A cut course shows {} above the head flashing, up to the next course line.",
            "Una hilada cortada muestra {} sobre el tapajuntas superior, hasta la próxima línea de hilada.",
            small(laid.cut_at_head)
        )
    };
    let courses = if laid.whole_to_top == 1 {
        pick("course", "hilada entera")
    } else {
        pick("courses", "hiladas enteras")
    };
    let top = if laid.left_at_top == 0.0 {
        tell!(
            "{} whole {courses} above the array; the last one is whole.",
            "{} {courses} sobre el arreglo; la última es entera.",
            laid.whole_to_top
        )
    } else {
        tell!(
            "{} whole {courses} above the array; {} is left above them below the top.",
            "{} {courses} sobre el arreglo; quedan {} sobre ellas bajo el borde superior.",
            laid.whole_to_top,
            small(laid.left_at_top)
        )
    };
    [base, head, top]
}

/// "Course line 29, 1 3/4" up: 3" of a cut course at the head, 9 whole courses above"
pub(crate) fn base_place(place: &Place, by: f64, units: Units) -> String {
    let Place { base: place, clear } = place;
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let way = if by > 0.0 { pick("up", "arriba") } else { pick("down", "abajo") };
    let courses = if place.whole_to_top == 1 {
        pick("course", "hilada entera")
    } else {
        pick("courses", "hiladas enteras")
    };
    tell!(
        "Course line {}, {} {way}: {} of a cut course at the head, {} whole {courses} above{}",
        "Línea de hilada {}, {} {way}: {} de hilada cortada en la parte superior, {} {courses} arriba{}",
        place.course + 1,
        small(by),
        small(place.cut_at_head),
        place.whole_to_top,
        if *clear { "" } else { pick("; the rules are against it", "; las reglas no lo permiten") }
    )
}
pub(crate) fn no_base_place(least: u32) -> String {
    let courses = if least == 1 {
        pick("whole course", "hilada entera")
    } else {
        pick("whole courses", "hiladas enteras")
    };
    tell!(
        "No course line leaves {least} {courses} above this block, as the rule book asks.",
        "Ninguna línea deja {least} {courses} sobre este bloque, como pide el libro de reglas."
    )
}
/// "5 3/8": 27 courses below the rail, 3" cut at the head and 9 whole above, 1/32" off at most"
pub(crate) fn exposure_proposal(exposure: &Exposure, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres).show_small(units);
    let off = if exposure.miss() < chalkcourse_geometry::coursing::READ {
        pick("as even as a tape reads", "tan parejo como se lee en la cinta").to_owned()
    } else {
        tell!("{} off at most", "{} de diferencia como máximo", small(exposure.miss()))
    };
    tell!(
        "{}: {} below the rail, {} cut at the head and {} whole above, {off}",
        "{}: {} bajo el riel, {} cortados y {} enteras arriba, {off}",
        small(exposure.exposure),
        exposure.below,
        small(exposure.cut_at_head),
        exposure.above
    )
}

// On the drawing
pub(crate) const MARK_HEAD_WHOLE: Say =
    say("head flashing ends on a course line", "el tapajuntas superior termina en una línea de hilada");
pub(crate) fn mark_of_rail(on: &str) -> String {
    tell!("base rail {on}", "riel base {on}")
}
pub(crate) fn mark_of_head(left: &str) -> String {
    tell!(
        "head flashing ends here: {left} of a cut course above it",
        "aquí termina el tapajuntas superior: {left} de hilada cortada encima"
    )
}
pub(crate) fn mark_of_top(whole: usize, left: &str, cut: bool) -> String {
    let courses =
        if whole == 1 { pick("course", "hilada entera") } else { pick("courses", "hiladas enteras") };
    if cut {
        tell!("{whole} whole {courses} and {left}", "{whole} {courses} y {left}")
    } else {
        tell!("{whole} whole {courses}", "{whole} {courses}")
    }
}
