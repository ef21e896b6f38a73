//! Words about the house in space, the sun over it, and the view for its owner.

use crate::Document;
use crate::commands::Command;
use chalkcourse_geometry::Units;
use chalkcourse_picture::Camera;
use chalkcourse_sunlight::{Date, Spot, Sun, SunDay};
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) const SOLID_VIEW: Say = say("House", "Casa");
pub(crate) const HOUSE_HINT: Say = say(
    "Drag to turn the house, with Shift to slide it; the wheel comes nearer. A click holds what is there.",
    "Arrastre para girar la casa, con Mayús para deslizarla; la rueda acerca. Un clic selecciona lo \
        que está ahí.",
);
pub(crate) const SOLID_HELP: Say = say(
    "The house in space: drag to turn, wheel to come nearer  (3)",
    "La casa en el espacio: arrastre para girar, rueda para acercar  (3)",
);
pub(crate) const SAVE_PICTURE: Say = say("Save picture…", "Guardar imagen…");
pub(crate) const CANT_SAVE_PICTURE: Say =
    say("The picture could not be written", "No se pudo escribir la imagen");
pub(crate) const SHOW_HOME: Say = say("Show to the homeowner", "Mostrar al dueño de la casa");
pub(crate) const NO_HOUSE_YET: Say = say(
    "There is no house to show yet: draw a face of the roof first.",
    "Todavía no hay casa que mostrar: dibuje primero un faldón del techo.",
);
pub(crate) const NO_PLACE_NO_SUN: Say = say(
    "Where the house stands is not known, so the light is even. Write its place under The job, The house.",
    "No se sabe dónde está la casa, así que la luz es pareja. Escriba su lugar en La obra, La casa.",
);
pub(crate) const TURN_LEFT: Say = say("Turn left", "Girar a la izquierda");
pub(crate) const TURN_RIGHT: Say = say("Turn right", "Girar a la derecha");
pub(crate) const EYE_UP: Say = say("Higher", "Más alto");
pub(crate) const EYE_DOWN: Say = say("Lower", "Más bajo");
pub(crate) const NEARER: Say = say("Nearer", "Más cerca");
pub(crate) const FARTHER: Say = say("Farther", "Más lejos");
pub(crate) const BEFORE: Say = say("Before", "Antes");
pub(crate) const AFTER: Say = say("After", "Después");
pub(crate) const BEFORE_HELP: Say =
    say("The house without the array, and with it", "La casa sin el arreglo, y con él");
pub(crate) const DAY: Say = say("Day", "Día");
pub(crate) const DAY_HELP: Say =
    say("The day that the sun is shown for", "El día para el que se muestra el sol");
pub(crate) const HOUR: Say = say("Hour", "Hora");
pub(crate) const HOUR_HELP: Say = say(
    "By the clock, 15:30; in summer set UTC to summer time",
    "Según el reloj, 15:30; en verano ponga UTC en horario de verano",
);
pub(crate) const UTC: Say = say("UTC", "UTC");
pub(crate) const UTC_HELP: Say = say(
    "How many hours the clock is ahead of UTC: −5 for New York in winter, −4 in summer",
    "Cuántas horas va el reloj adelante de UTC: −5 en Nueva York en invierno, −4 en verano",
);
/// Keys of the view, for the sheet of keys.
pub(crate) const HOUSE_KEYS: [(Say, Say); 2] = [
    (say("House: turn", "Casa: girar"), say("Arrow keys or drag", "Flechas o arrastre")),
    (
        say("House: slide, come nearer", "Casa: deslizar, acercar"),
        say("Shift + arrow keys, + and −", "Mayús + flechas, + y −"),
    ),
];

// For the homeowner
pub(crate) const FROM_ABOVE: Say = say("From above", "Desde arriba");
pub(crate) const LEAVE: Say = say("Leave  (Esc)", "Salir  (Esc)");
pub(crate) const HOME_COVERS: Say = say("What it covers", "Lo que cubre");
pub(crate) const HOME_COSTS: Say = say("What it costs", "Lo que cuesta");
pub(crate) const TO_BE_QUOTED: Say = say("To be quoted", "Por cotizar");
pub(crate) const PRICE_NOTE: Say = say(
    "As planned today; the written offer counts. What it yields and saves is not worked out here.",
    "Según el plan de hoy; vale la oferta por escrito. Lo que produce y ahorra no se calcula aquí.",
);
pub(crate) const HOME_NOT_DONE: Say = say(
    "Not ready to build: these findings are open",
    "No está lista para construir: estos hallazgos están abiertos",
);
pub(crate) const HOME_WAIVED: Say =
    say("Waived: accepted all the same", "Dispensado: se aceptó de todos modos");
pub(crate) const HOME_BARE_COST: Say =
    say("Bare cost: no overhead and no profit is in it", "Costo solo: sin gastos generales ni ganancia");
pub(crate) const SHOW_BARE_COST: Say =
    say("Show the bare cost all the same", "Mostrar el costo solo de todos modos");
pub(crate) const GOOD_TO_KNOW: Say = say("Good to know", "Conviene saber");
pub(crate) const HOME_CAUTIONS: [Say; 3] = [
    say(
        "This is a plan, not an offer and not a permit. The layout is confirmed on your roof and by the local building office.",
        "Esto es un plan, no una oferta ni un permiso. La disposición se confirma en su techo y con la \
        oficina local de construcción.",
    ),
    say(
        "A licensed engineer looks at the structure where that is required; a licensed electrician connects the array.",
        "Un ingeniero con licencia revisa la estructura donde se exige; un electricista con licencia \
        conecta el arreglo.",
    ),
    say(
        "Please stay off the roof. Modules are live whenever light falls on them.",
        "Por favor no suba al techo. Los módulos están energizados siempre que les da la luz.",
    ),
];

/// What a button of the view does.
pub(crate) fn solid_help(command: Command) -> &'static str {
    match command {
        Command::ShowHome => pick(
            "Full screen, in large type, without anything that is only for the office",
            "Pantalla completa, en letra grande, sin nada que sea solo de la oficina",
        ),
        _ => pick(
            "Write the picture as it is looked at to a PNG file",
            "Escribir la imagen como se ve en un archivo PNG",
        ),
    }
}

pub(crate) fn seen_from(camera: &Camera) -> String {
    tell!("Seen from the {}", "Visto desde el {}", camera.from.word())
}

/// The whole picture in a sentence or two, for those who can't see it.
pub(crate) fn house_words(document: &Document, camera: &Camera, sun: &str, before: bool) -> String {
    let high = match camera.above {
        above if above > 70.0 => pick("from above", "desde arriba"),
        above if above > 40.0 => pick("from high up", "desde muy alto"),
        above if above > 12.0 => pick("from a little above", "desde un poco arriba"),
        _ => pick("from the ground", "desde el suelo"),
    };
    let array = match (before, document.plan().summary.modules) {
        (true, _) => pick("without the array", "sin el arreglo").to_owned(),
        (false, 0) => pick("no modules on it", "sin módulos encima").to_owned(),
        (false, _) => with_modules(document),
    };
    tell!(
        "Roof seen from the {}, {high}, {array}. {sun}",
        "Techo visto desde el {}, {high}, {array}. {sun}",
        camera.from.word()
    )
}

/// "with 12 modules on South, 8 on North"
fn with_modules(document: &Document) -> String {
    let layout = &document.plan().layout;
    let counts: Vec<String> = layout
        .faces
        .iter()
        .enumerate()
        .filter_map(|(index, face)| {
            let on = layout.blocks.iter().filter(|block| block.face == index);
            let count: usize = on.map(|block| block.modules.len()).sum();
            (count > 0).then(|| tell!("{count} on {}", "{count} en {}", face.name))
        })
        .collect();
    match counts.len() {
        0..=6 => tell!("modules: {}", "módulos: {}", counts.join(", ")),
        faces => tell!(
            "{} modules on {faces} faces",
            "{} módulos en {faces} faldones",
            document.plan().summary.modules
        ),
    }
}

/// What stands in place of a picture where none can be drawn.
pub(crate) fn cant_draw(document: &Document) -> String {
    let summary = &document.plan().summary;
    tell!(
        "This machine can't draw the house just now. It has {} faces and {}; plan and face-on view show them.",
        "Esta máquina no puede dibujar la casa ahora mismo. Tiene {} faldones y {}; la planta y la vista \
        de frente los muestran.",
        document.job().faces.len(),
        with_modules_or_none(document, summary.modules)
    )
}

fn with_modules_or_none(document: &Document, modules: usize) -> String {
    if modules == 0 { pick("no modules", "sin módulos").to_owned() } else { with_modules(document) }
}

/// "21 June"
pub(crate) fn day(date: Date) -> String {
    const MONTHS: [Say; 12] = [
        say("January", "enero"),
        say("February", "febrero"),
        say("March", "marzo"),
        say("April", "abril"),
        say("May", "mayo"),
        say("June", "junio"),
        say("July", "julio"),
        say("August", "agosto"),
        say("September", "septiembre"),
        say("October", "octubre"),
        say("November", "noviembre"),
        say("December", "diciembre"),
    ];
    let month = MONTHS.get(date.month() as usize - 1).map_or("", |month| month.now());
    tell!("{} {month}", "{} de {month}", date.day())
}

/// "15:30"; an hour before midnight of the day before and after that of the day wraps.
pub(crate) fn clock(hour: f64) -> String {
    let minutes = if hour.is_finite() { (hour * 60.0).round() as i64 } else { 0 };
    let (hours, rest) = (minutes.div_euclid(60), minutes.rem_euclid(60));
    // midnight at the end of a day is 24:00, later hours are of the next day
    let hours = if hours == 24 && rest == 0 { 24 } else { hours.rem_euclid(24) };
    format!("{hours}:{rest:02}")
}

/// Reads 15:30, 15.5 and 15.
pub(crate) fn parse_clock(text: &str) -> Option<f64> {
    let hour = match text.trim().split_once(':') {
        Some((hours, minutes)) => {
            hours.trim().parse::<f64>().ok()? + minutes.trim().parse::<f64>().ok()? / 60.0
        }
        None => text.trim().parse().ok()?,
    };
    (0.0..=24.0).contains(&hour).then_some(hour)
}

pub(crate) fn sun_words(date: Date, hour: f64, sun: &Sun) -> String {
    let when = format!("{}, {}", day(date), clock(hour));
    if sun.is_up() {
        tell!(
            "{when}: sun in the {}, {:.0}° high.",
            "{when}: sol en el {}, a {:.0}° de altura.",
            sun.azimuth.word(),
            sun.elevation
        )
    } else {
        tell!("{when}: the sun is down.", "{when}: el sol está bajo el horizonte.")
    }
}

pub(crate) fn sun_day(day: &SunDay) -> String {
    match day {
        SunDay::Rises { rise, noon, set } => {
            tell!(
                "Sunrise {}, highest {}, sunset {}",
                "Salida {}, punto más alto {}, puesta {}",
                clock(*rise),
                clock(*noon),
                clock(*set)
            )
        }
        SunDay::Up { noon } => tell!(
            "The sun stays up all day; highest {}",
            "El sol no se pone en todo el día; punto más alto {}",
            clock(*noon)
        ),
        SunDay::Down { noon } => tell!(
            "The sun stays down all day; nearest to rising {}",
            "El sol no sale en todo el día; más cerca de salir {}",
            clock(*noon)
        ),
    }
}

pub(crate) fn spot(spot: &Spot) -> String {
    let side = |degrees: f64, plus: &str, minus: &str| {
        format!("{:.4}° {}", degrees.abs(), if degrees < 0.0 { minus } else { plus })
    };
    tell!(
        "At {}, {}",
        "A {}, {}",
        side(spot.latitude, pick("north", "norte"), pick("south", "sur")),
        side(spot.longitude, pick("east", "este"), pick("west", "oeste"))
    )
}

/// Rows of what the array covers: a number and what it is.
pub(crate) fn home_facts(document: &Document) -> Vec<(String, String)> {
    let summary = &document.plan().summary;
    let share = if summary.slope_area > 0.0 { summary.array_area / summary.slope_area * 100.0 } else { 0.0 };
    let (scale, unit) = match document.job().units {
        Units::FeetInches => (1.0 / (0.3048 * 0.3048), pick("sq ft", "ft²")),
        Units::Metric => (1.0, "m²"),
    };
    vec![
        (
            summary.modules.to_string(),
            if summary.modules == 1 { pick("module", "módulo") } else { pick("modules", "módulos") }
                .to_owned(),
        ),
        (format!("{:.1} kW", summary.kilowatts), pick("rated power", "potencia nominal").to_owned()),
        (
            format!("{:.0} {unit}", summary.array_area * scale),
            pick("covered by the array", "cubierto por el arreglo").to_owned(),
        ),
        (format!("{share:.0} %"), pick("of the roof", "del techo").to_owned()),
    ]
}

/// The price, where all of it has one.
pub(crate) fn home_price(document: &Document) -> Option<String> {
    let takeoff = &document.plan().takeoff;
    let complete = takeoff.unpriced.is_empty() && !takeoff.lines.is_empty();
    complete.then(|| {
        format!("{} {}", takeoff.currency, thousands(&format!("{:.0}", takeoff.totals.total.round())))
    })
}

/// Digits in groups of three.
fn thousands(digits: &str) -> String {
    let mut out = String::new();
    for (index, digit) in digits.chars().enumerate() {
        let left = digits.len() - index;
        if index > 0 && left.is_multiple_of(3) && digit.is_ascii_digit() {
            out.push(',');
        }
        out.push(digit);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_are_read_back_as_they_are_shown() {
        for (hour, shown) in
            [(0.0, "0:00"), (15.5, "15:30"), (23.999, "24:00"), (24.0, "24:00"), (-1.5, "22:30")]
        {
            assert_eq!(clock(hour), shown);
        }
        assert_eq!(parse_clock("15:30"), Some(15.5));
        assert_eq!(parse_clock("6"), Some(6.0));
        for wrong in ["", "25:00", "x", "nan"] {
            assert_eq!(parse_clock(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn large_numbers_are_grouped() {
        assert_eq!(thousands("987"), "987");
        assert_eq!(thousands("12345678"), "12,345,678");
    }
}
