//! The roofing itself.

use crate::names::{Names, asked, limit, measured, sentence};
use crate::{RuleWords, Told};
use chalkcourse_job::{FireClass, Quantity};
use chalkcourse_rules::{ClassAsked, Covering, Finding};
use chalkcourse_words::{of_data, pick, say, tell};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "shingle-slope",
        title: say("Shingles lie on slopes that shed water", "Las tejas están en pendientes que escurren"),
        reason: say(
            "Lapped shingles let water in where it stands or is blown back.",
            "Las tejas solapadas dejan entrar el agua donde se estanca o el viento la empuja.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "underlayment",
        title: say("Low slopes have a double underlayment", "Las pendientes bajas llevan membrana doble"),
        reason: say(
            "Water runs slowly on a low slope and finds its way under shingles.",
            "El agua corre despacio en una pendiente baja y halla por dónde pasar bajo las tejas.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "cricket",
        title: say(
            "Wide penetrations have a cricket behind them",
            "Las penetraciones anchas tienen detrás un desviador de agua",
        ),
        reason: say(
            "Water and snow pile up behind what is wide, and find their way in.",
            "El agua y la nieve se acumulan detrás de lo que es ancho, y hallan por dónde entrar.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "drip-edge",
        title: say("Eaves and rakes have a drip edge", "Aleros y bordes inclinados tienen goterón"),
        reason: say(
            "Without it water runs back under the shingles and rots the edge of the deck.",
            "Sin él el agua regresa por debajo de las tejas y pudre el borde del entablado.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "fire-class",
        title: say(
            "Array and covering have the class against fire that is asked",
            "Arreglo y recubrimiento tienen la clase contra fuego que se pide",
        ),
        reason: say(
            "Burning brands from a fire next door must not set the roof on fire.",
            "Las brasas de un incendio vecino no deben prender el techo.",
        ),
        geometry: None,
    },
    RuleWords {
        code: "deck-condition",
        title: say(
            "The deck is sound before an array goes on it",
            "El entablado está sano antes de poner un arreglo",
        ),
        reason: say(
            "Screws hold only in firm wood, and nobody gets at the deck again for decades.",
            "Los tornillos solo agarran en madera firme, y nadie vuelve a llegar al entablado en décadas.",
        ),
        geometry: None,
    },
];

/// "3:12".
fn pitch(quantity: Quantity) -> String {
    if let Quantity::Pitch(pitch) = quantity { pitch.to_string() } else { String::new() }
}

pub(crate) fn slope(names: &Names<'_>, finding: &Finding) -> Told {
    let measured = pitch(finding.measured);
    let required = crate::names::at_least(&pitch(limit(&finding.required)));
    Told {
        message: tell!(
            "{} is {measured}; asphalt shingles need {required}. Choose another roof covering there.",
            "{} tiene {measured}; las tejas asfálticas necesitan {required}. Elija ahí otro recubrimiento.",
            sentence(&names.face_of(finding))
        ),
        measured,
        required,
    }
}

pub(crate) fn underlayment(names: &Names<'_>, finding: &Finding) -> Told {
    let how = names.job.rule_book.roofing.as_ref().map_or("", |roofing| roofing.double_underlayment.as_str());
    let measured = pitch(finding.measured);
    Told {
        message: tell!(
            "{} is {measured}, less than {}: lay its underlayment double. {}",
            "{} tiene {measured}, menos de {}: coloque doble su membrana. {}",
            sentence(&names.face_of(finding)),
            pitch(limit(&finding.required)),
            of_data(how)
        ),
        measured,
        required: pick("double underlayment", "membrana doble").into(),
    }
}

pub(crate) fn cricket(names: &Names<'_>, finding: &Finding) -> Told {
    let (wide, required) = (names.length(measured(finding)), names.length(asked(finding)));
    let it = finding.place.penetration.and_then(|id| names.job.penetration(id));
    let (kind, name) = it.map_or(("", ""), |it| (it.kind.with_article(), it.name.as_str()));
    Told {
        message: tell!(
            "{} “{}” is {wide} wide along the eave, more than {required}: build a cricket or saddle on its ridge side, and \
             keep the array out of it.",
            "{} “{}” mide {wide} de ancho a lo largo del alero, más de {required}: construya un desviador \
             de agua del lado de la cumbrera, y no ponga arreglo sobre él.",
            sentence(kind),
            name
        ),
        measured: tell!("{wide} wide", "{wide} de ancho"),
        required: tell!("a cricket beyond {required}", "un desviador a partir de {required}"),
    }
}

pub(crate) fn drip_edge(names: &Names<'_>) -> Told {
    let roofing = names.job.rule_book.roofing.as_ref();
    let how = roofing.and_then(|roofing| roofing.drip_edge.as_ref()).map_or("", |limit| limit.value.as_str());
    Told {
        message: tell!(
            "The roof has no drip edge at its eaves and rakes. {}",
            "El techo no tiene goterón en sus aleros y bordes inclinados. {}",
            of_data(how)
        ),
        measured: pick("none", "ninguno").into(),
        required: pick("a drip edge at eaves and rakes", "goterón en aleros y bordes inclinados").into(),
    }
}

pub(crate) fn fire_class(names: &Names<'_>, finding: &Finding, of: Covering, why: ClassAsked) -> Told {
    let class = |quantity| if let Quantity::Class(class) = quantity { Some(class) } else { None };
    let measured =
        class(finding.measured).map_or(pick("not known", "no se sabe"), FireClass::name).to_owned();
    let asked = class(limit(&finding.required)).map_or("", FireClass::name);
    let required = tell!("{} or better", "{} o mejor", asked);
    let what = match of {
        Covering::Array => pick("the array", "el arreglo"),
        Covering::Beyond => pick("the covering beyond the array", "el recubrimiento fuera del arreglo"),
    };
    let why = match why {
        ClassAsked::LotLine(within) => {
            let within = names.length(within.metres());
            tell!(
                "an edge of the roof is less than {within} from a lot line",
                "un borde del techo está a menos de {within} de un lindero"
            )
        }
        ClassAsked::Law => pick("the law asks for it here", "aquí lo pide la ley").to_owned(),
    };
    Told {
        message: tell!(
            "{} has {measured} against fire, and {required} is needed: {why}.",
            "{} tiene {measured} contra fuego, y se necesita {required}: {why}.",
            sentence(what)
        ),
        measured,
        required,
    }
}

pub(crate) fn deck_condition() -> Told {
    Told {
        message: pick(
            "Parts of the deck are soft, split or wet: replace that sheathing before the membrane and the array go on.",
            "Partes del entablado están blandas, rajadas o mojadas: reemplace esos tableros antes de poner la \
             membrana y el arreglo.",
        )
        .into(),
        measured: pick("needs repair", "necesita reparación").into(),
        required: pick("a sound deck", "un entablado sano").into(),
    }
}
