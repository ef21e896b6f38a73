//! Room for the fire service.

use crate::names::{Names, asked, limit, measured, sentence, the_edge};
use crate::{RuleWords, Told};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::Quantity;
use chalkcourse_rules::Finding;
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "fire-ridge",
        title: say("The ridge is clear for the fire service", "La cumbrera está libre para los bomberos"),
        reason: say(
            "Fire fighters open the roof along the ridge to let heat and smoke out.",
            "Los bomberos abren el techo a lo largo de la cumbrera para dejar salir calor y humo.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "fire-paths",
        title: say(
            "Two pathways lead to the ridge, on separate planes",
            "Dos pasos llevan a la cumbrera, en planos separados",
        ),
        reason: say(
            "Who works on a roof needs a way up, and another way down.",
            "Quien trabaja en un techo necesita un camino para subir, y otro para bajar.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "fire-plane-path",
        title: say("Each plane with modules has a pathway", "Cada plano con módulos tiene un paso"),
        reason: say(
            "Whoever must reach the array or the ridge above it needs a way up beside it.",
            "Quien debe llegar al arreglo o a la cumbrera de arriba necesita un camino junto a él.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "fire-street",
        title: say(
            "One pathway is on a street or driveway side",
            "Un paso está del lado de la calle o entrada de autos",
        ),
        reason: say(
            "A ladder is raised where an engine can stand.",
            "Una escalera se levanta donde puede pararse un camión.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "fire-hip-valley",
        title: say(
            "A hip or valley between modules is clear",
            "Una limatesa o limahoya entre módulos está libre",
        ),
        reason: say(
            "A hip between two arrays is a way up, and a valley a way along.",
            "Una limatesa entre dos arreglos es un camino hacia arriba, y una limahoya un camino a lo largo.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "fire-escape",
        title: say(
            "The roof below an escape window is free",
            "El techo debajo de una ventana de escape está libre",
        ),
        reason: say(
            "Who climbs out of a window, and who comes to help, needs a way on the roof below it.",
            "Quien sale por una ventana, y quien llega a ayudar, necesita un camino en el techo debajo de ella.",
        ),
        geometry: None,
    },
];

fn in_plan(names: &Names<'_>, finding: &Finding, near: &str) -> (String, String) {
    let required = names.length(asked(finding));
    (
        tell!("{near} in plan", "{near} en planta"),
        tell!("at least {required} in plan", "al menos {required} en planta"),
    )
}

pub(crate) fn ridge(names: &Names<'_>, finding: &Finding, share: f64) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let message = tell!(
        "{} leaves {near} beside the ridge of {}, in plan; the array covers {:.1} % of the plan roof area, for which the \
         code asks {required}.",
        "{} deja {near} junto a la cumbrera de {}, en planta; el arreglo cubre {:.1} % del área del \
         techo en planta, para lo cual el código pide {required}.",
        sentence(&names.block_of(finding)),
        names.face_of(finding),
        share * 100.0
    );
    let (measured, required) = in_plan(names, finding, &near);
    Told { message, measured, required }
}

pub(crate) fn hip_valley(names: &Names<'_>, finding: &Finding, kind: EdgeKind) -> Told {
    let (near, required) = (names.too_short(measured(finding)), names.length(asked(finding)));
    let the_kind = the_edge(kind);
    let message = tell!(
        "{} leaves {near} beside the {the_kind} of {}, in plan, with modules on the other side too; the code asks {required}.",
        "{} deja {near} junto a {the_kind} de {}, en planta, con módulos también del otro lado; el \
         código pide {required}.",
        sentence(&names.block_of(finding)),
        names.face_of(finding)
    );
    let (measured, required) = in_plan(names, finding, &near);
    Told { message, measured, required }
}

pub(crate) fn escape(names: &Names<'_>, finding: &Finding) -> Told {
    let (wide, over) = (names.length(asked(finding)), names.too_much(measured(finding)));
    Told {
        message: tell!(
            "{} lies {over} into the strip below {}, which is kept free {wide} wide down to the lower edge.",
            "{} está {over} dentro de la franja bajo {}, que se mantiene libre con {wide} de ancho hasta \
             el borde inferior.",
            sentence(&names.block_of(finding)),
            names.penetration(finding.place.penetration)
        ),
        measured: tell!("{over} into it", "{over} adentro"),
        required: tell!("{wide} free below the window", "{wide} libres bajo la ventana"),
    }
}

/// How wide pathways are to be.
fn width(names: &Names<'_>, finding: &Finding) -> String {
    match limit(&finding.required) {
        Quantity::Pathways { width, .. } => names.length(width.metres()),
        _ => String::new(),
    }
}

fn no_ridge_to_go_to() -> String {
    pick("no ridge to go to", "no hay cumbrera a la cual ir").into()
}

fn two_wide(width: &str) -> String {
    tell!("2, each {width} wide in plan", "2, cada uno de {width} de ancho en planta")
}

fn found_words(found: f64) -> String {
    tell!("{found} found", "hallados: {found}")
}

pub(crate) fn paths(names: &Names<'_>, finding: &Finding, opens: bool, room_for: u32) -> Told {
    let (found, width) = (measured(finding), width(names, finding));
    let none = if opens {
        ""
    } else if f64::from(room_for) < asked(finding) {
        pick(
            " The roof as drawn has no room for two, whatever is laid: draw its other planes, or ask the fire official.",
            " El techo como está dibujado no tiene lugar para dos, se coloque lo que se coloque: dibuje sus otros planos, o \
             pregunte al oficial de bomberos.",
        )
    } else {
        pick(
            " No removal of modules opens them: ask the fire official.",
            " Quitar módulos no los abre: pregunte al oficial de bomberos.",
        )
    };
    Told {
        message: tell!(
            "{found} of 2 pathways of {width} lead from the lowest edge to the ridge on separate planes.{none}",
            "{found} de 2 pasos de {width} llevan del borde más bajo a la cumbrera en planos separados.{none}"
        ),
        measured: found_words(found),
        required: two_wide(&width),
    }
}

pub(crate) fn no_ridge(names: &Names<'_>, finding: &Finding) -> Told {
    let width = width(names, finding);
    Told {
        message: tell!(
            "No plane of this roof has a ridge: the code asks for two pathways of {width} from the lowest edge to the ridge and does \
             not say what holds here. It is not judged: ask the fire official.",
            "Ningún plano de este techo tiene cumbrera: el código pide dos pasos de {width} del borde más bajo \
             a la cumbrera y no dice qué vale aquí. No se juzga: pregunte al oficial de bomberos."
        ),
        measured: no_ridge_to_go_to(),
        required: two_wide(&width),
    }
}

pub(crate) fn plane_path(names: &Names<'_>, finding: &Finding, opens: bool) -> Told {
    let (found, asked, width) = (measured(finding), asked(finding), width(names, finding));
    let on = sentence(&names.face_of(finding));
    let none = if opens {
        ""
    } else {
        pick(
            " No removal of modules along one strip opens it: leave room beside the array.",
            " Quitar módulos en una sola franja no lo abre: deje lugar junto al arreglo.",
        )
    };
    Told {
        message: tell!(
            "{on} has {found} of {asked} pathways of {width} from its lowest edge to the ridge.{none}",
            "{on} tiene {found} de {asked} pasos de {width} de su borde más bajo a la cumbrera.{none}"
        ),
        measured: found_words(found),
        required: tell!("{asked}, {width} wide in plan", "{asked}, de {width} de ancho en planta"),
    }
}

pub(crate) fn no_ridge_beside(names: &Names<'_>, finding: &Finding) -> Told {
    let (on, width) = (sentence(&names.face_of(finding)), width(names, finding));
    Told {
        message: tell!(
            "{on} has no ridge, and no plane beside it has one: the code asks for a pathway from the lowest edge to the ridge and \
             does not say what holds here. It is not judged: ask the fire official.",
            "{on} no tiene cumbrera, y ningún plano junto a él la tiene: el código pide un paso del borde más \
             bajo a la cumbrera y no dice qué vale aquí. No se juzga: pregunte al oficial de bomberos."
        ),
        measured: no_ridge_to_go_to(),
        required: tell!(
            "a pathway {width} wide from the lowest edge to the ridge",
            "un paso de {width} de ancho del borde más bajo a la cumbrera"
        ),
    }
}

pub(crate) fn street(names: &Names<'_>) -> Told {
    let ways: Vec<&str> = names.job.site.building.street_sides.iter().map(|side| side.wind()).collect();
    Told {
        message: tell!(
            "No pathway lies on the street or driveway side ({}). Leave one on a plane that falls towards it, or along the edge of the \
             roof on that side.",
            "Ningún paso está del lado de la calle o entrada de autos ({}). Deje uno en un plano que caiga \
             hacia ella, o a lo largo del borde del techo de ese lado.",
            ways.join(", ")
        ),
        measured: pick("none on that side", "ninguno de ese lado").into(),
        required: pick("one on that side", "uno de ese lado").into(),
    }
}
