use crate::{CutList, Line, LineState, LineTerm};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Amount, Holds, Measure, Unit};
use chalkcourse_words::{Language, pick, spoken, tell};

/// A quantity as a person reads it: `58`, `22' 7 9/16"`, `253.04 sq ft`.
pub fn show_amount(amount: f64, unit: Unit, units: Units) -> String {
    match unit {
        Unit::Each => number(amount),
        Unit::Length => Length::from_metres(amount).show(units),
        Unit::Area => Holds::Area(amount).show(units),
        Unit::Time => Holds::Hours(amount).show(units),
        Unit::Mass => Holds::Kilograms(amount).show(units),
    }
}

/// With at most three decimals, and none that say nothing.
pub(crate) fn number(value: f64) -> String {
    let rounded = (value * 1000.0).round() / 1000.0;
    format!("{rounded}")
}

/// "boxes" for "box" where there is more than one.
pub(crate) fn plural(word: &str, count: f64) -> String {
    if (count - 1.0).abs() < 1e-9 {
        return word.to_owned();
    }
    match spoken() {
        Language::English => {
            let hisses = ["s", "x", "z", "ch", "sh"].iter().any(|end| word.ends_with(end));
            format!("{word}{}", if hisses { "es" } else { "s" })
        }
        // The noun takes it, not what is said of it: "tramo de riel", "tramos de riel".
        Language::Spanish => {
            let (noun, rest) = word.split_at(word.find(' ').unwrap_or(word.len()));
            let open = noun.ends_with(['a', 'e', 'i', 'o', 'u', 'á', 'é', 'ó']);
            format!("{noun}{}{rest}", if open { "s" } else { "es" })
        }
    }
}

pub(crate) fn packages(line: &Line, units: Units) -> String {
    let count = line.packages as f64;
    let package = plural(&line.package, count);
    if line.unit == Unit::Each && line.holds == 1.0 {
        return format!("{} {package}", line.packages);
    }
    tell!(
        "{} {package} of {}",
        "{} {package} de {}",
        line.packages,
        show_amount(line.holds, line.unit, units)
    )
}

/// What one of a measure is called. A length is told by its runs.
fn noun(measure: &Measure) -> &str {
    match measure {
        Measure::Module => pick("module", "módulo"),
        Measure::Block => pick("block", "bloque"),
        Measure::Row => pick("row", "fila"),
        Measure::Seam => pick("seam", "junta"),
        Measure::BaseRail => pick("run of base rail", "tramo de riel base"),
        Measure::Side => pick("side", "lado"),
        Measure::SideCourse => {
            pick("course up the sides, one more a side", "hilada a los lados, una más por lado")
        }
        Measure::Head => pick("run of head flashing", "tramo de tapajuntas superior"),
        Measure::HeadModule => pick("module under the head", "módulo bajo el tapajuntas superior"),
        Measure::HeadSupport => pick("head end and seam", "extremo o junta superior"),
        Measure::HeadCornerLeft => pick("left head corner", "esquina superior izquierda"),
        Measure::HeadCornerRight => pick("right head corner", "esquina superior derecha"),
        Measure::InsideCorner => pick("inside corner", "esquina interior"),
        Measure::BaseCornerLeft => pick("left base corner", "esquina inferior izquierda"),
        Measure::BaseCornerRight => pick("right base corner", "esquina inferior derecha"),
        Measure::Under => pick("area under the array", "área debajo del arreglo"),
        Measure::Around => pick("strip around the array", "franja alrededor del arreglo"),
        Measure::BondingPath => pick("bonding path", "trayecto de puesta a tierra"),
        Measure::Part(number) => number,
        Measure::Sticks(_) => {
            pick("stick of this length in the cut list", "tramo de este largo en la lista de cortes")
        }
        Measure::Joints(_) => pick("joint between two pieces", "junta entre dos piezas"),
        Measure::Job => pick("job", "obra"),
        Measure::Person => pick("person", "persona"),
        Measure::Deck => pick("face of deck", "faldón de entablado"),
        Measure::TearOff => pick(
            "face of old roofing, each layer counted",
            "faldón de recubrimiento viejo, contando cada capa",
        ),
        Measure::Shingled => pick("face of deck less the array", "faldón de entablado menos el arreglo"),
        Measure::SingleUnderlayment => {
            pick("face with one layer of underlayment", "faldón con una capa de membrana")
        }
        Measure::DoubleUnderlayment => {
            pick("face with two layers of underlayment", "faldón con dos capas de membrana")
        }
        Measure::LeakBarrier => pick("strip along the eaves", "franja a lo largo de los aleros"),
        Measure::AroundThrough => {
            pick("strip around what comes through", "franja alrededor de lo que atraviesa")
        }
        Measure::Edge(kind) => kind.name(),
        Measure::SideWall => pick("wall line up the slope", "encuentro con muro pendiente arriba"),
        Measure::SideWallCourse => pick(
            "course up the wall lines, one more a line",
            "hilada en los encuentros con muro, una más por línea",
        ),
        Measure::HeadWall => pick("wall line across the slope", "encuentro con muro a lo ancho"),
        Measure::Through(kind) => kind.name(),
        Measure::Pipe { .. } => pick("pipe of this size", "tubo de este tamaño"),
        Measure::CurbCourse => pick(
            "course beside chimneys and skylights, one more a side",
            "hilada junto a chimeneas y tragaluces, una más por lado",
        ),
        Measure::CurbWidth => pick(
            "lower or upper side of a chimney or skylight",
            "lado inferior o superior de una chimenea o tragaluz",
        ),
    }
}

fn nouns(measure: &Measure, count: f64) -> String {
    if (count - 1.0).abs() < 1e-9 {
        return noun(measure).to_owned();
    }
    match measure {
        Measure::BaseRail => pick("runs of base rail", "tramos de riel base").to_owned(),
        Measure::Head => pick("runs of head flashing", "tramos de tapajuntas superior").to_owned(),
        Measure::HeadModule => {
            pick("modules under the head", "módulos bajo el tapajuntas superior").to_owned()
        }
        Measure::HeadSupport => pick("head ends and seams", "extremos y juntas superiores").to_owned(),
        Measure::SideCourse => {
            pick("courses up the sides, one more a side", "hiladas a los lados, una más por lado").to_owned()
        }
        Measure::Under => pick("areas under the array", "áreas debajo del arreglo").to_owned(),
        Measure::Around => pick("strips around the array", "franjas alrededor del arreglo").to_owned(),
        Measure::Sticks(_) => {
            pick("sticks of this length in the cut list", "tramos de este largo en la lista de cortes")
                .to_owned()
        }
        Measure::Joints(_) => pick("joints between two pieces", "juntas entre dos piezas").to_owned(),
        Measure::Person => pick("people", "personas").to_owned(),
        Measure::Deck => pick("faces of deck", "faldones de entablado").to_owned(),
        Measure::TearOff => pick(
            "faces of old roofing, each layer counted",
            "faldones de recubrimiento viejo, contando cada capa",
        )
        .to_owned(),
        Measure::Shingled => {
            pick("faces of deck less the array", "faldones de entablado menos el arreglo").to_owned()
        }
        Measure::SingleUnderlayment => {
            pick("faces with one layer of underlayment", "faldones con una capa de membrana").to_owned()
        }
        Measure::DoubleUnderlayment => {
            pick("faces with two layers of underlayment", "faldones con dos capas de membrana").to_owned()
        }
        Measure::LeakBarrier => pick("strips along the eaves", "franjas a lo largo de los aleros").to_owned(),
        Measure::AroundThrough => {
            pick("strips around what comes through", "franjas alrededor de lo que atraviesa").to_owned()
        }
        Measure::SideWall => {
            pick("wall lines up the slope", "encuentros con muro pendiente arriba").to_owned()
        }
        Measure::SideWallCourse => pick(
            "courses up the wall lines, one more a line",
            "hiladas en los encuentros con muro, una más por línea",
        )
        .to_owned(),
        Measure::HeadWall => pick("wall lines across the slope", "encuentros con muro a lo ancho").to_owned(),
        Measure::Pipe { .. } => pick("pipes of this size", "tubos de este tamaño").to_owned(),
        Measure::CurbCourse => pick(
            "courses beside chimneys and skylights, one more a side",
            "hiladas junto a chimeneas y tragaluces, una más por lado",
        )
        .to_owned(),
        Measure::CurbWidth => pick(
            "lower and upper sides of chimneys and skylights",
            "lados inferiores y superiores de chimeneas y tragaluces",
        )
        .to_owned(),
        // A part keeps its number as it is.
        Measure::Part(number) => number.clone(),
        _ => plural(noun(measure), count),
    }
}

/// "3 rolls"
fn many(word: &str, count: f64) -> String {
    format!("{} {}", number(count), plural(word, count))
}

/// How good a cut list is.
fn of_proof(cuts: &CutList, units: Units) -> String {
    let bought = Length::from_metres(cuts.bought).show(units);
    if cuts.proved {
        tell!("{bought} bought, proved least", "se compran {bought}, demostrado lo mínimo")
    } else {
        let more = Length::from_metres(cuts.bought - cuts.least).show(units);
        tell!(
            "{bought} bought, at most {more} more than the least",
            "se compran {bought}, como máximo {more} más que lo mínimo"
        )
    }
}

pub(crate) fn of_state(line: &Line, units: Units) -> Option<String> {
    let because = |why: &str| if why.trim().is_empty() { String::new() } else { format!(": {why}") };
    let mut words = Vec::new();
    match &line.state {
        LineState::Counted => {}
        LineState::Overridden { why } => {
            let counted = many(&line.package, line.counted as f64);
            words.push(tell!(
                "OVERRIDDEN, counted {counted}{}",
                "CAMBIADO, se contaron {counted}{}",
                because(why)
            ));
        }
        LineState::Added { why } => words.push(tell!("ADDED by hand{}", "AGREGADO a mano{}", because(why))),
        LineState::Off { why } => words.push(tell!("OFF{}", "OMITIDO{}", because(why))),
    }
    if line.from_stock > 0.0 {
        words.push(tell!(
            "{} from stock in hand",
            "{} de existencias",
            show_amount(line.from_stock, line.unit, units)
        ));
    }
    if let Some((number, name)) = &line.alternate {
        words.push(tell!("alternate {number}, {name}", "alterna {number}, {name}"));
    }
    (!words.is_empty()).then(|| words.join("; "))
}

pub(crate) fn of_term(term: &LineTerm, units: Units) -> String {
    let runs = term.places.len() as f64;
    let measured = match term.of_unit {
        Unit::Each if matches!(term.of, Measure::Part(_)) => {
            tell!("{} of {}", "{} de {}", number(term.measured), noun(&term.of))
        }
        Unit::Each => format!("{} {}", number(term.measured), nouns(&term.of, term.measured)),
        unit => {
            format!("{} {}, {}", number(runs), nouns(&term.of, runs), show_amount(term.measured, unit, units))
        }
    };
    match &term.each {
        &Amount::Count(1.0) => measured,
        Amount::Count(count) => format!("{measured} × {}", number(*count)),
        Amount::Length(length) if term.of_unit == Unit::Each => {
            format!("{measured} × {}", length.show_small(units))
        }
        Amount::Length(length) => {
            tell!("{measured}: {} each", "{measured}: {} cada uno", length.show_small(units))
        }
        Amount::Pieces { length, lap } if *lap == Length::ZERO => {
            tell!(
                "{measured}: pieces of {} end to end",
                "{measured}: piezas de {} una tras otra",
                length.show(units)
            )
        }
        Amount::Pieces { length, lap } => {
            tell!(
                "{measured}: pieces of {}, each lapping {}",
                "{measured}: piezas de {}, cada una solapa {}",
                length.show(units),
                lap.show_small(units)
            )
        }
        Amount::Spaced(spacing) if term.of_unit == Unit::Area => {
            tell!(
                "{measured}: one every {} both ways",
                "{measured}: una cada {} en ambos sentidos",
                spacing.show_small(units)
            )
        }
        Amount::Spaced(spacing) => {
            tell!(
                "{measured}: one every {} and one at each run's end",
                "{measured}: una cada {} y una al final de cada tramo",
                spacing.show_small(units)
            )
        }
        Amount::Rate { take, of } => {
            let of = match of {
                Holds::Pieces(pieces) if *pieces == 1.0 => pick("each", "cada uno").to_owned(),
                of => tell!("each {}", "cada {}", of.show(units)),
            };
            tell!("{measured}: {} for {of}", "{measured}: {} por {of}", take.show(units))
        }
        Amount::Width(width) => tell!(
            "{measured}: a strip {} wide",
            "{measured}: una franja de {} de ancho",
            width.show_small(units)
        ),
        Amount::Cut(sticks) => {
            let lap = if sticks.lap == Length::ZERO {
                String::new()
            } else {
                tell!(", each lapping {}", ", cada uno solapa {}", sticks.lap.show_small(units))
            };
            let lengths: Vec<String> = std::iter::once(sticks.length)
                .chain(sticks.also.iter().map(|other| other.length))
                .map(|length| length.show(units))
                .collect();
            let proof = term.cuts.as_ref().map_or_else(String::new, |cuts| of_proof(cuts, units));
            tell!(
                "{measured}: cut from sticks of {}{lap}; {proof}",
                "{measured}: cortado de tramos de {}{lap}; {proof}",
                lengths.join(pick(" and ", " y "))
            )
        }
        Amount::Laid(roll) => {
            let (strips, rolls) = term.laid.as_ref().map_or((0, 0), |laid| (laid.strips.len(), laid.rolls));
            let double = if roll.starter { pick(", double", ", doble") } else { "" };
            tell!(
                "{measured}: laid in {strips} strips {} wide lapping {}{double}, {} at ends; {} begun",
                "{measured}: colocado en {strips} franjas de {} de ancho que solapan {}{double}, {} en los \
        extremos; {} empezados",
                roll.width.show_small(units),
                roll.side_lap.show_small(units),
                roll.end_lap.show_small(units),
                many(pick("roll", "rollo"), rolls as f64),
            )
        }
    }
}
