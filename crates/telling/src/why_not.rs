use chalkcourse_job::Resolved;
use chalkcourse_rules::{Exemption, Section, Unknown, WhyNot};
use chalkcourse_words::{pick, tell};

/// Why a rule is not checked for a job.
pub fn why_not(job: &Resolved, why: &WhyNot) -> String {
    let site = &job.site.building;
    let words = match why {
        WhyNot::Off => {
            return tell!(
                "switched off in the rule book “{}”",
                "desactivada en el libro de reglas “{}”",
                job.rule_book.name
            );
        }
        WhyNot::Exempt(Exemption::NoRoofOperations) => {
            return tell!(
                "exempt: the fire official found no roof operations ({})",
                "exento: el oficial de bomberos determinó que no habrá trabajo en el techo ({})",
                site.no_roof_operations.trim()
            );
        }
        WhyNot::Exempt(Exemption::Integrated) => {
            return tell!(
                "exempt: roof-integrated array, its listing read by {}; the exemption is in doubt",
                "exento: arreglo integrado al techo, su certificación la leyó {}; la exención está en duda",
                site.integrated_listing_read_by.trim()
            );
        }
        WhyNot::NotKnown(unknown) => return not_known(unknown),
        WhyNot::Exempt(Exemption::Detached) => pick(
            "exempt: a detached building in which nobody lives",
            "exento: un edificio separado en el que nadie vive",
        ),
        WhyNot::NotInBook(section) => not_in_book(*section),
        WhyNot::NotInEdition => pick("this edition does not ask for it", "esta edición no lo pide"),
        WhyNot::NoNumberInEdition => pick(
            "this edition has no number for hips and valleys",
            "esta edición no tiene número para limatesas y limahoyas",
        ),
        WhyNot::EachSlopeInstead => pick(
            "this edition asks for pathways on each slope with modules instead",
            "esta edición pide en su lugar pasos en cada vertiente con módulos",
        ),
        WhyNot::LeftOut => pick("this book does not ask for it", "este libro no lo pide"),
        WhyNot::KitWithoutRail => pick(
            "the kit does not say where its base rail may be",
            "el kit no dice dónde puede estar su riel base",
        ),
        WhyNot::KitWithoutDeck => {
            pick("the kit does not say what deck it needs", "el kit no dice qué entablado necesita")
        }
        WhyNot::NoRoomBetween => {
            pick("the kit asks no room between blocks", "el kit no pide espacio entre bloques")
        }
        WhyNot::LaidAnyhow => pick(
            "the kit lets rows slide and the base rail lie anywhere",
            "el kit deja correr las filas y poner el riel base en cualquier lugar",
        ),
        WhyNot::NoEscapeWindow => {
            pick("no escape window is marked on the roof", "no hay ventana de escape marcada en el techo")
        }
    };
    words.to_owned()
}

fn not_in_book(section: Section) -> &'static str {
    match section {
        Section::Setbacks => pick("the rule book has no setbacks", "el libro de reglas no tiene retiros"),
        Section::FireAccess => pick(
            "the rule book does not go into fire access",
            "el libro de reglas no trata el acceso de bomberos",
        ),
        Section::Roofing => {
            pick("the rule book does not go into roofing", "el libro de reglas no trata el recubrimiento")
        }
        Section::ValleysAndHips => {
            pick("the rule book has no such limit", "el libro de reglas no tiene ese límite")
        }
        Section::Wind => pick("the rule book does not go into wind", "el libro de reglas no trata el viento"),
    }
}

pub(crate) fn not_known(unknown: &[Unknown]) -> String {
    let whole = match unknown {
        [Unknown::DeckCondition] => pick(
            "the job does not say what state the deck is in",
            "la obra no dice en qué estado está el entablado",
        ),
        [Unknown::DripEdge] => {
            pick("the job does not say whether there is a drip edge", "la obra no dice si hay goterón")
        }
        [Unknown::FireClass] => pick(
            "the job does not say which class the law asks for, nor how far the lot line is",
            "la obra no dice qué clase pide la ley, ni a qué distancia está el lindero",
        ),
        [Unknown::Street] => pick(
            "the job does not say on which side the street or driveway lies",
            "la obra no dice de qué lado está la calle o entrada de autos",
        ),
        list => {
            let names: Vec<&str> = list.iter().map(|it| unknown_name(*it)).collect();
            return tell!("the job does not say: {}", "la obra no dice: {}", names.join(", "));
        }
    };
    whole.to_owned()
}

/// What a job does not say, in a list.
pub(crate) fn unknown_name(unknown: Unknown) -> &'static str {
    match unknown {
        Unknown::SheathingThickness => pick("how thick the sheathing is", "qué grueso es el tablero"),
        Unknown::SheathingKind => pick("what it is made of", "de qué está hecho"),
        Unknown::RafterSpacing => pick("how far apart the rafters are", "qué tan separadas están las vigas"),
        Unknown::DeckCondition => pick("what state the deck is in", "en qué estado está el entablado"),
        Unknown::DripEdge => pick("whether there is a drip edge", "si hay goterón"),
        Unknown::FireClass => pick("the class against fire", "la clase contra fuego"),
        Unknown::Street => pick("where the street lies", "dónde está la calle"),
        Unknown::WindSpeed => pick("basic wind speed", "velocidad básica del viento"),
        Unknown::Exposure => pick("exposure", "exposición"),
        Unknown::EaveHeight => pick("eave height", "altura del alero"),
        Unknown::LeastWidth => pick("least width of the building", "ancho mínimo del edificio"),
        Unknown::FastenerHold => pick("what a fastener holds", "lo que aguanta una fijación"),
        Unknown::DeckUnderFastener => pick("deck under a fastener", "entablado por fijación"),
    }
}
