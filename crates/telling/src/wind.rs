//! Wind suction, a screening: findings, zones and figures in words.

use crate::names::{Names, asked, measured, sentence};
use crate::{RuleWords, Told};
use chalkcourse_job::{Kit, LoadWay};
use chalkcourse_rules::wind::{Drawn, Figure, Refused, RoofShape, Zone};
use chalkcourse_rules::{Finding, Section, WhyNot};
use chalkcourse_words::{of_data, pick, say, tell};

pub(crate) const RULES: &[RuleWords] = &[RuleWords {
    code: "wind",
    title: say(
        "Fasteners hold against wind uplift (screening)",
        "Las fijaciones aguantan el levantamiento del viento (revisión preliminar)",
    ),
    reason: say(
        "A corner of a roof is lifted by several times its weight in a storm.",
        "En una tormenta la esquina de un techo se levanta con varias veces su peso.",
    ),
    geometry: None,
}];

/// "ASCE/SEI 7-22 figure 30.3-2B".
pub fn figure(figure: Figure) -> String {
    let (standard, number) = (figure.standard.name(), figure.number);
    match figure.towards {
        Some(other) => tell!(
            "{standard} figures {number} and {other}, between 27° and 45°",
            "{standard} figuras {number} y {other}, entre 27° y 45°"
        ),
        None => tell!("{standard} figure {number}", "{standard} figura {number}"),
    }
}

/// Why a case is not worked out.
pub fn refused(refused: Refused) -> String {
    match refused {
        Refused::Slope(degrees) => tell!(
            "a slope of {degrees:.1}° is outside the figures known here (more than 7° up to 45°): ask a licensed engineer",
            "una pendiente de {degrees:.1}° está fuera de las figuras que se conocen aquí (más de 7° hasta \
             45°): pregunte a un ingeniero con licencia"
        ),
        Refused::Edge(kind) => tell!(
            "the figures are for plain gable and hip roofs, and this one has a {}: ask a licensed engineer",
            "las figuras son para techos simples de dos y cuatro aguas, y este tiene {}: pregunte a un \
             ingeniero con licencia",
            kind.name()
        ),
        Refused::NotInSources(standard, shape, degrees) => {
            let (standard, shape) = (
                standard.name(),
                match shape {
                    RoofShape::Hip => pick("hip roof", "un techo de cuatro aguas"),
                    RoofShape::Gable => pick("gable roof", "un techo de dos aguas"),
                },
            );
            tell!(
                "the coefficients of {standard} for a {shape} of {degrees:.1}° are not among the sources of this program: ask a licensed \
                 engineer",
                "los coeficientes de {standard} para {shape} de {degrees:.1}° no están entre las fuentes de este \
                 programa: pregunte a un ingeniero con licencia"
            )
        }
        Refused::NoZone => {
            pick("no zone of the figure reaches this block", "ninguna zona de la figura llega a este bloque")
                .into()
        }
    }
}

/// What the pressures of drawn zones follow from.
pub fn about(drawn: &Drawn) -> String {
    let Ok((conditions, square_feet)) = &drawn.from else { return pick("Wind", "Viento").into() };
    tell!(
        "{}: mean roof height {:.1} ft, qh·Kd {:.2} psf, edge zones {:.1} ft wide, effective wind area {square_feet} ft²",
        "{}: altura media del techo {:.1} ft, qh·Kd {:.2} psf, zonas de borde de {:.1} ft de ancho, área \
         efectiva de viento {square_feet} ft²",
        conditions.standard.name(),
        conditions.height_ft,
        conditions.q_kd_psf,
        conditions.zone_width_ft
    )
}

/// Why faces have no zones, each reason once.
pub fn not_drawn(drawn: &Drawn) -> Vec<String> {
    let whole = drawn.from.as_ref().err().map(|why| match why {
        WhyNot::NotInBook(Section::Wind) => {
            pick("the rule book does not go into wind", "el libro de reglas no trata el viento").to_owned()
        }
        WhyNot::NotKnown(unknown) => crate::why_not::not_known(unknown),
        _ => pick("the wind is not worked out", "el viento no se calculó").to_owned(),
    });
    whole.into_iter().chain(drawn.refused.iter().map(|it| refused(*it))).collect()
}

/// The way of uplift from a module into the deck, part by part: what the kit's listing says that it carries, or that it says nothing, and
/// what follows. `None` for a kit that says nothing of what holds its modules down.
pub fn load_path(kit: &Kit) -> Option<String> {
    let hold = kit.hold_down.as_ref()?;
    let screw = kit.part(&hold.part).map_or_else(|| hold.part.clone(), |part| of_data(&part.name));
    let a_foot = kit.fasteners_a_foot()?;
    let mut words = vec![tell!(
        "{screw}: {} lb each, {a_foot} a foot",
        "{screw}: {} lb cada uno, {a_foot} por pata",
        hold.pounds
    )];
    words.extend(hold.path.iter().map(|it| {
        let what = of_data(&it.what);
        match (it.way, it.pounds) {
            (LoadWay::Through, Some(pounds)) => {
                tell!(
                    "{what}: {pounds} lb a foot, no foot holds more",
                    "{what}: {pounds} lb por pata, ninguna pata aguanta más"
                )
            }
            (LoadWay::Through, None) => tell!(
                "{what}: the listing says nothing, ask the maker before you rely on this",
                "{what}: la certificación no dice nada, pregunte al fabricante antes de confiar en esto"
            ),
            (LoadWay::Beside, Some(pounds)) => tell!(
                "{what}: {pounds} lb a foot, which helps and is counted for nothing",
                "{what}: {pounds} lb por pata, ayuda y no se cuenta"
            ),
            (LoadWay::Beside, None) => tell!(
                "{what}: the listing says nothing, counted for nothing",
                "{what}: la certificación no dice nada, no se cuenta"
            ),
        }
    }));
    Some(tell!(
        "Load path by the kit's listing: {}.",
        "Camino de la carga según la certificación del kit: {}.",
        words.join("; ")
    ))
}

pub(crate) fn lifted(names: &Names<'_>, finding: &Finding, zone: Zone, by: Figure, psf: f64) -> Told {
    let (pounds, holds) = (measured(finding).ceil(), asked(finding));
    let path = load_path(&names.job.kit).unwrap_or_else(|| {
        pick(
            "The kit says nothing of what holds its modules down: only the fastener that was typed is counted.",
            "El kit no dice qué sujeta sus módulos: solo se cuenta la fijación que se escribió.",
        )
        .to_owned()
    });
    Told {
        message: tell!(
            "{} reaches zone {} ({}): {psf:.1} psf outward, {pounds:.0} lb on a fastener, which is said to hold {holds:.0} lb. Keep out of \
             the edge zones, or set more fasteners: the order counts those that hold. {path} Have it designed by a licensed engineer.",
            "{} llega a la zona {} ({}): {psf:.1} psf hacia afuera, {pounds:.0} lb en una fijación, que según se \
             dice aguanta {holds:.0} lb. No entre en las zonas de borde, o ponga más fijaciones: el pedido \
             cuenta las que aguantan. {path} Encargue el diseño a un ingeniero con licencia.",
            sentence(&names.block_of(finding)),
            zone.name(),
            figure(by)
        ),
        measured: tell!("{pounds:.0} lb a fastener", "{pounds:.0} lb por fijación"),
        required: tell!("at most {holds:.0} lb", "como máximo {holds:.0} lb"),
    }
}

pub(crate) fn not_screened(names: &Names<'_>, finding: &Finding, why: Refused) -> Told {
    let (name, why) = (sentence(&names.block_of(finding)), refused(why));
    Told {
        message: tell!("{name} is not screened for wind: {why}.", "El viento en {name} no se revisó: {why}."),
        measured: pick("not worked out", "sin calcular").into(),
        required: pick("a case that the sources have", "un caso que las fuentes tengan").into(),
    }
}
