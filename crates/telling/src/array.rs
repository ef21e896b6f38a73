//! Whether blocks may lie where they lie.

use crate::names::{Names, asked, at_least, at_most, measured, number, sentence, the_edge};
use crate::why_not::unknown_name;
use crate::{RuleWords, Told};
use chalkcourse_geometry::{EdgeKind, Length, Pitch};
use chalkcourse_job::{BlockId, DeckKind, Quantity, Required, RowJoints, Subject};
use chalkcourse_rules::{Against, Beside, Finding, NoDeck, Unknown};
use chalkcourse_words::{modules, pick, say, tell};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "no-deck",
        title: say(
            "Blocks lie on a face whose outline holds together",
            "Los bloques están en un faldón de contorno válido",
        ),
        reason: say(
            "Nothing can be placed, measured or counted on an outline that folds over itself.",
            "Nada se puede colocar, medir ni contar en un contorno que se cruza a sí mismo.",
        ),
        geometry: Some(say(
            "geometry: no deck can be measured there",
            "geometría: ahí no se puede medir ningún entablado",
        )),
    },
    RuleWords {
        code: "pitch",
        title: say(
            "Faces are steep enough for the kit",
            "Los faldones tienen pendiente suficiente para el kit",
        ),
        reason: say(
            "Lapped flashing sheds water only where it runs off fast enough.",
            "Los tapajuntas solapados solo escurren donde el agua corre lo bastante rápido.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "off-face",
        title: say("Modules lie on their face", "Los módulos están sobre su faldón"),
        reason: say(
            "A module is screwed to the deck under it: where there is no deck there is no module.",
            "Un módulo se atornilla al entablado de abajo: donde no hay entablado no hay módulo.",
        ),
        geometry: Some(say("geometry: no deck is there", "geometría: ahí no hay entablado")),
    },
    RuleWords {
        code: "overlap",
        title: say("No module lies on another", "Ningún módulo está encima de otro"),
        reason: say("Two modules can't have one place.", "Dos módulos no pueden tener un mismo lugar."),
        geometry: Some(say(
            "geometry: two modules can't have one place",
            "geometría: dos módulos no pueden tener un mismo lugar",
        )),
    },
    RuleWords {
        code: "setback",
        title: say("Modules keep each edge's setback", "Los módulos respetan el retiro de cada borde"),
        reason: say(
            "Edges need room: for drip edge, starter and flashing, for water, for a foot, for the fire service.",
            "Los bordes necesitan lugar: para goterón, hilada inicial y tapajuntas, para el agua, para un pie, \
        para los bomberos.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "clearance",
        title: say(
            "Modules keep clear of what comes through the roof",
            "Los módulos se apartan de lo que atraviesa el techo",
        ),
        reason: say(
            "A boot, a curb or a chimney needs its own flashing, and room to mend it.",
            "Una bota, un marco o una chimenea necesita sus propios tapajuntas, y lugar para repararlos.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "valley-hip",
        title: say(
            "Flashing keeps off valleys and hips",
            "Los tapajuntas se apartan de limahoyas y limatesas",
        ),
        reason: say(
            "A nail in a valley lining lets water in, and flashing under hip caps lifts them.",
            "Un clavo en el forro de una limahoya deja entrar agua, y un tapajuntas bajo las tapas de limatesa \
        las levanta.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "ridge-course",
        title: say(
            "Full courses are left between the head flashing and the ridge",
            "Quedan hiladas enteras entre el tapajuntas superior y la cumbrera",
        ),
        reason: say(
            "The course above laps the head flashing, and the ridge cap needs a course to lie on.",
            "La hilada de arriba cubre el tapajuntas superior, y la tapa de cumbrera necesita una hilada en \
        que apoyarse.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "base-rail",
        title: say(
            "The base rail is where the kit lets it be",
            "El riel base está donde el kit lo deja estar",
        ),
        reason: say(
            "The rail carries the block: it needs deck under all of it, room for the starter below, and room to grow.",
            "El riel lleva el bloque: necesita entablado debajo de todo, lugar para la hilada inicial debajo y \
        lugar para dilatarse.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "deck",
        title: say(
            "The deck is one that the kit may be screwed to",
            "El entablado es de los que admiten los tornillos del kit",
        ),
        reason: say(
            "All that holds the array are screws in the deck.",
            "Lo único que sostiene el arreglo son tornillos en el entablado.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "hook",
        title: say("Modules hook into the row below", "Los módulos se enganchan en la fila de abajo"),
        reason: say(
            "The row below holds a module; where nothing is below, nothing holds it.",
            "La fila de abajo sostiene un módulo; donde no hay nada debajo, nada lo sostiene.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "laying",
        title: say(
            "Rows and base rail are laid as the kit says",
            "Las filas y el riel base se colocan como dice el kit",
        ),
        reason: say(
            "Modules interlock only in the ways that they were made for, and a rail between courses can't be flashed.",
            "Los módulos se enlazan solo como fueron hechos para hacerlo, y un riel entre hiladas no se puede \
        impermeabilizar.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "reveal",
        title: say("The reveal is within the kit's range", "La separación está en el rango del kit"),
        reason: say(
            "Modules need room to grow in the sun, and seals a gap that they can close.",
            "Los módulos necesitan lugar para dilatarse al sol, y los sellos un espacio que puedan cerrar.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "between-blocks",
        title: say(
            "Blocks leave room for each other's flashing",
            "Los bloques dejan lugar para los tapajuntas del otro",
        ),
        reason: say(
            "Side flashing of two blocks must not overlap, and someone must be able to mend it.",
            "Los tapajuntas laterales de dos bloques no deben encimarse, y alguien debe poder repararlos.",
        ),
        geometry: None,
    },
];

pub(crate) fn no_deck(names: &Names<'_>, finding: &Finding, state: NoDeck) -> Told {
    let what = match state {
        NoDeck::Defective => tell!(
            "{}, whose outline does not hold together. Mend the outline first",
            "{}, cuyo contorno no es válido. Corrija primero el contorno",
            names.face_of(finding)
        ),
        NoDeck::Resting => {
            let rests = names.job.resting.iter().find(|face| Some(face.id) == finding.place.face);
            tell!(
                "face {}, which is gone: its side of the house has no roof there now. Put the block on another face, or \
                 bring the face back",
                "el faldón {}, que ya no existe: su lado de la casa no tiene techo ahora. Ponga el bloque en otro \
                 faldón, o recupere el faldón",
                rests.map_or("", |face| face.name.as_str())
            )
        }
        NoDeck::Absent => pick(
            "a face that the job does not have. Put the block on another face",
            "un faldón que la obra no tiene. Ponga el bloque en otro faldón",
        )
        .to_owned(),
    };
    let measured = match state {
        NoDeck::Defective => pick("an outline with defects", "un contorno con defectos"),
        NoDeck::Resting | NoDeck::Absent => pick("no face", "ningún faldón"),
    };
    Told {
        message: tell!(
            "{} lies on {what}; nothing on it is checked until then.",
            "{} está en {what}; hasta entonces no se revisa nada de él.",
            sentence(&names.block_of(finding))
        ),
        measured: measured.into(),
        required: pick("a face with a sound outline", "un faldón con contorno válido").into(),
    }
}

pub(crate) fn pitch(names: &Names<'_>, finding: &Finding) -> Told {
    let words = |pitch: Pitch| format!("{pitch} ({:.1}°)", pitch.degrees());
    let words = |quantity| if let Quantity::Pitch(it) = quantity { words(it) } else { String::new() };
    let (measured, required) = (words(finding.measured), words(crate::names::limit(&finding.required)));
    Told {
        message: tell!(
            "{} lies on {}, which is {measured}; the kit asks {required} or more. This kit can't go on this face: choose a \
             steeper face, or another kit that its maker allows here.",
            "{} está en {}, con pendiente {measured}; el kit pide {required} o más. Este kit no puede ir en \
             este faldón: elija un faldón más inclinado, u otro kit que su fabricante admita aquí.",
            sentence(&names.block_of(finding)),
            names.face_of(finding)
        ),
        measured,
        required: at_least(&required),
    }
}

pub(crate) fn off_face(
    names: &Names<'_>,
    finding: &Finding,
    edge: Option<EdgeKind>,
    count: usize,
    of: usize,
) -> Told {
    let over = names.too_much(measured(finding));
    let reach = if count == of {
        pick("lies", "está").to_owned()
    } else {
        tell!("lies with {}", "está con {}", modules(count))
    };
    let edge = match edge {
        Some(kind) => the_edge(kind),
        None => pick("border", "el contorno"),
    };
    Told {
        message: tell!(
            "{} {reach} up to {over} over the {edge} of {}.",
            "{} {reach} hasta {over} fuera de {edge} de {}.",
            sentence(&names.block_of(finding)),
            names.face_of(finding)
        ),
        measured: tell!("{over} over", "{over} fuera"),
        required: pick("all on the face", "todo sobre el faldón").into(),
    }
}

pub(crate) fn overlap(names: &Names<'_>, finding: &Finding, block: BlockId, other: BlockId) -> Told {
    let deep = names.too_much(measured(finding));
    Told {
        message: tell!(
            "{} lies up to {deep} over {}.",
            "{} está hasta {deep} encima de {}.",
            sentence(&names.block(block)),
            names.block(other)
        ),
        measured: tell!("{deep} over", "{deep} encima"),
        required: pick("beside each other", "uno junto a otro").into(),
    }
}

pub(crate) fn overlap_within(names: &Names<'_>, finding: &Finding, count: usize) -> Told {
    let deep = names.too_much(measured(finding));
    Told {
        message: tell!(
            "{} of {} are shifted up to {deep} over the module before them in their row.",
            "{} de {} están corridos hasta {deep} sobre el módulo anterior de su fila.",
            sentence(&modules(count)),
            names.block_of(finding)
        ),
        measured: tell!("{deep} over", "{deep} encima"),
        required: pick("beside each other", "uno junto a otro").into(),
    }
}

/// Of a limit that has no words of its own: its code stands for what it is.
pub(crate) fn too_near(names: &Names<'_>, finding: &Finding, against: Against) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let from = match against {
        Against::Side { kind, .. } | Against::Hole { kind, .. } => {
            tell!("the {} of {}", "{} de {}", the_edge(kind), names.face_of(finding))
        }
        Against::Border => tell!("the border of {}", "el contorno de {}", names.face_of(finding)),
        Against::Penetration(id) => names.penetration(Some(id)),
        Against::Block(id) => names.block(id),
        Against::Pathway => pick("a pathway", "un paso").to_owned(),
    };
    Told {
        message: tell!(
            "{} is {near} from {from}; the limit “{}” asks {required}.",
            "{} está a {near} de {from}; el límite “{}” pide {required}.",
            sentence(&names.block_of(finding)),
            finding.rule
        ),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn setback(names: &Names<'_>, finding: &Finding, kind: EdgeKind) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let (the_kind, on) = (the_edge(kind), names.face_of(finding));
    let is = if measured(finding) > 0.0 {
        tell!("is {near} from the {the_kind} of {on}", "está a {near} de {the_kind} de {on}")
    } else {
        tell!("lies on or over the {the_kind} of {on}", "está sobre o más allá de {the_kind} de {on}")
    };
    Told {
        message: tell!(
            "{} {is}; the book asks {required}.",
            "{} {is}; el libro pide {required}.",
            sentence(&names.block_of(finding))
        ),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn clearance(names: &Names<'_>, finding: &Finding, side: Beside, own: bool) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let the_penetration = names.penetration(finding.place.penetration);
    let is = match side {
        Beside::Around if measured(finding) > 0.0 => {
            tell!("is {near} from {the_penetration}", "está a {near} de {the_penetration}")
        }
        Beside::Around => tell!("lies on {the_penetration}", "está encima de {the_penetration}"),
        Beside::Above => {
            tell!("is {near} above {the_penetration}", "está {near} arriba de {the_penetration}")
        }
        Beside::Below => {
            tell!("is {near} below {the_penetration}", "está {near} debajo de {the_penetration}")
        }
    };
    let whose =
        if own { pick("it is to have", "debe tener") } else { pick("the book asks", "el libro pide") };
    Told {
        message: tell!(
            "{} {is}; {whose} {required}.",
            "{} {is}; {whose} {required}.",
            sentence(&names.block_of(finding))
        ),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn valley_hip(names: &Names<'_>, finding: &Finding, kind: EdgeKind, flashing: Length) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let the_kind = the_edge(kind);
    let comes = if measured(finding) > 0.0 {
        tell!("comes within {near} of the {the_kind}", "llega a {near} de {the_kind}")
    } else {
        tell!("lies on the {the_kind}", "está sobre {the_kind}")
    };
    Told {
        message: tell!(
            "The side flashing of {}, {} wide, {comes} of {}; the book asks {required}.",
            "El tapajuntas lateral de {}, de {} de ancho, {comes} de {}; el libro pide {required}.",
            names.block_of(finding),
            names.length(flashing.metres()),
            names.face_of(finding)
        ),
        measured: sentence(&near),
        required: at_least(&required),
    }
}

pub(crate) fn ridge_course(names: &Names<'_>, finding: &Finding, courses: u32, exposure: Length) -> Told {
    let room = measured(finding);
    let required = tell!(
        "{courses} whole {} ({} on its lines)",
        "{courses} {} ({} en sus líneas)",
        if courses == 1 { pick("course", "hilada entera") } else { pick("courses", "hiladas enteras") },
        names.length(asked(finding))
    );
    let (left, measured) = if room > 0.0 {
        // What is over above the last course line is part of what is asked, and of no course.
        let over = asked(finding) - f64::from(courses) * exposure.metres();
        let whole = ((room - over) / exposure.metres() + 1e-6).floor().max(0.0);
        let measured = match whole {
            0.0 => tell!(
                "{} (no whole course on the lines)",
                "{} (ninguna hilada entera en las líneas)",
                names.too_short(room)
            ),
            1.0 => tell!(
                "{} (1 whole course on the lines)",
                "{} (1 hilada entera en las líneas)",
                names.too_short(room)
            ),
            whole => tell!(
                "{} ({whole} whole courses on the lines)",
                "{} ({whole} hiladas enteras en las líneas)",
                names.too_short(room)
            ),
        };
        (tell!("{measured} is left", "Quedan {measured}"), measured)
    } else {
        (pick("Nothing is left", "No queda nada").to_owned(), pick("nothing", "nada").to_owned())
    };
    Told {
        message: tell!(
            "{left} between the head flashing of {} and the ridge of {}; the book asks {required}.",
            "{left} entre el tapajuntas superior de {} y la cumbrera de {}; el libro pide {required}.",
            names.block_of(finding),
            names.face_of(finding)
        ),
        measured: sentence(&measured),
        required,
    }
}

pub(crate) fn rail_above_eave(names: &Names<'_>, finding: &Finding) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    Told {
        message: tell!(
            "The base rail of {} is {near} above the eave of {}; the kit asks {required}.",
            "El riel base de {} está {near} arriba del alero de {}; el kit pide {required}.",
            names.block_of(finding),
            names.face_of(finding)
        ),
        measured: near,
        required: at_least(&required),
    }
}

pub(crate) fn rail_off_deck(names: &Names<'_>, finding: &Finding) -> Told {
    let over = names.too_much(measured(finding));
    Told {
        message: tell!(
            "The base rail of {} reaches {over} beyond the deck of {}. Move the block until there is deck under all of it.",
            "El riel base de {} sobresale {over} del entablado de {}. Mueva el bloque hasta que haya \
             entablado debajo de todo.",
            names.block_of(finding),
            names.face_of(finding)
        ),
        measured: tell!("{over} beyond", "sobresale {over}"),
        required: pick("all on the deck", "todo sobre el entablado").into(),
    }
}

pub(crate) fn rail_too_long(names: &Names<'_>, finding: &Finding) -> Told {
    let (long, required) = (names.too_much(measured(finding)), names.length(asked(finding)));
    Told {
        message: sentence(&tell!(
            "the base rail of {} is {long} long without a break; the kit lets it be {required}. Split the block, or leave a gap \
             in the rail where the maker shows it.",
            "el riel base de {} mide {long} sin interrupción; el kit permite {required}. Divida el bloque, \
             o deje un espacio en el riel donde lo muestra el fabricante.",
            names.block_of(finding)
        )),
        measured: long,
        required: at_most(&required),
    }
}

/// The sheathing is, spans or is made of what the kit does not take.
fn deck(what: &str, measured: String, required: String) -> Told {
    let message = tell!(
        "The sheathing {what} {measured}; the kit asks {required}. Ask the maker, or add to the deck before the array goes on.",
        "El tablero {what} {measured}; el kit pide {required}. Pregunte al fabricante, o refuerce el \
         entablado antes de poner el arreglo."
    );
    Told { message, measured, required }
}

pub(crate) fn deck_too_thin(names: &Names<'_>, finding: &Finding) -> Told {
    let thick = tell!("{} thick", "{} de grueso", names.too_short(measured(finding)));
    deck(pick("is", "tiene"), thick, at_least(&names.length(asked(finding))))
}

pub(crate) fn deck_of_kind(finding: &Finding) -> Told {
    let kind = if let Quantity::Deck(kind) = finding.measured { kind.name() } else { "" };
    let allowed: Vec<&str> = match &finding.required {
        Required::Deck(kinds) => kinds.iter().map(|kind| DeckKind::name(*kind)).collect(),
        _ => Vec::new(),
    };
    deck(pick("is of", "es de"), kind.to_owned(), allowed.join(pick(" or ", " u ")))
}

pub(crate) fn deck_span(names: &Names<'_>, finding: &Finding) -> Told {
    let most = at_most(&names.length(asked(finding)));
    deck(pick("spans", "salva"), names.too_much(measured(finding)), most)
}

pub(crate) fn deck_unknown(unknown: &[Unknown]) -> Told {
    let unknown: Vec<&str> = unknown.iter().map(|it| unknown_name(*it)).collect();
    Told {
        message: tell!(
            "Of the deck the job does not say {}: that was not checked.",
            "Del entablado la obra no dice {}: eso no se revisó.",
            unknown.join(", ")
        ),
        measured: pick("not known", "no se sabe").into(),
        required: pick("a measurement on site", "una medida en el sitio").into(),
    }
}

/// The row of a block that a finding is about, from 1.
fn row_of(finding: &Finding) -> u32 {
    if let Subject::Row(_, row) = finding.key.subject { row } else { 0 }
}

pub(crate) fn hook(names: &Names<'_>, finding: &Finding, count: usize) -> Told {
    let hooked = format!("{:.0} %", (measured(finding) * 100.0).floor());
    let required = format!("{:.0} %", (asked(finding) * 100.0).ceil());
    let hooks = if count == 1 {
        pick("1 module hooks", "1 módulo se engancha").to_owned()
    } else {
        tell!("{} hook", "{} se enganchan", modules(count))
    };
    Told {
        message: tell!(
            "In row {} of {} {hooks} into the row below by {hooked} of the lower edge at the least; the book asks {required}.",
            "En la fila {} de {} {hooks} en la fila de abajo con {hooked} del borde inferior como mínimo; el \
             libro pide {required}.",
            row_of(finding),
            names.block_of(finding)
        ),
        measured: tell!("{hooked} of the lower edge", "{hooked} del borde inferior"),
        required: at_least(&required),
    }
}

pub(crate) fn joints(names: &Names<'_>, finding: &Finding, aside: Length) -> Told {
    let ways: Vec<&str> = match &finding.required {
        Required::Joints(ways) => ways.iter().map(|way| joints_name(*way)).collect(),
        _ => Vec::new(),
    };
    let (aside, required) = (names.length(aside.metres()), ways.join(pick(" or ", " o ")));
    Told {
        message: tell!(
            "The joints of row {} of {} are {aside} aside of those below; the kit lays them {required}.",
            "Las juntas de la fila {} de {} están {aside} corridas de las de abajo; el kit las coloca \
             {required}.",
            row_of(finding),
            names.block_of(finding)
        ),
        measured: tell!("{aside} aside", "{aside} corridas"),
        required,
    }
}

fn joints_name(joints: RowJoints) -> &'static str {
    match joints {
        RowJoints::Free => pick("anywhere", "en cualquier lugar"),
        RowJoints::Aligned => pick("in line", "en línea"),
        RowJoints::HalfLapped => pick("half a module aside", "medio módulo corridas"),
    }
}

/// "3/16" to 1/4"".
fn range(names: &Names<'_>, finding: &Finding) -> String {
    let Required::Between(from, to) = finding.required else { return String::new() };
    tell!("{} to {}", "de {} a {}", names.length(number(from)), names.length(number(to)))
}

pub(crate) fn rail_among_courses(names: &Names<'_>, finding: &Finding, exposure: Length) -> Told {
    let above = names.length(measured(finding).rem_euclid(exposure.metres()));
    let required = range(names, finding);
    Told {
        message: tell!(
            "The base rail of {} is {above} above a course line; the kit allows {required}.",
            "El riel base de {} está {above} arriba de una línea de hilada; el kit permite {required}.",
            names.block_of(finding)
        ),
        measured: tell!("{above} above a course line", "{above} arriba de una línea de hilada"),
        required,
    }
}

pub(crate) fn reveal(names: &Names<'_>, finding: &Finding) -> Told {
    let has = measured(finding);
    let measured = if has < asked(finding) { names.too_short(has) } else { names.too_much(has) };
    let allowed = range(names, finding);
    Told {
        message: tell!(
            "The reveal of {} is {measured}; the kit allows {allowed}.",
            "La separación de {} es {measured}; el kit permite {allowed}.",
            names.block_of(finding)
        ),
        measured,
        required: allowed,
    }
}

pub(crate) fn between_blocks(names: &Names<'_>, finding: &Finding, block: BlockId, other: BlockId) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    Told {
        message: tell!(
            "{} is {near} from {}; the kit asks {required} for the flashing of both.",
            "{} está a {near} de {}; el kit pide {required} para los tapajuntas de ambos.",
            sentence(&names.block(block)),
            names.block(other)
        ),
        measured: near,
        required: at_least(&required),
    }
}
