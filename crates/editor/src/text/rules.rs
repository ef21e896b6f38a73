//! Words about the house, the rule book, what was checked, the checklist and what an order costs.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::{Difference, LimitRow, LoadStandard, PathScheme, Standing};
use chalkcourse_plan::{GroupCost, StepCost};
use chalkcourse_rules::{Pathway, Rule, Severity};
use chalkcourse_telling::CheckedReport;
use chalkcourse_words::{Say, pick, say, tell};

// Commands
pub(crate) const RULE_BOOK_WINDOW: Say = say("Rule book…", "Libro de reglas…");
pub(crate) const SAVE_RULE_BOOK: Say = say("Save the rule book as…", "Guardar el libro de reglas como…");
pub(crate) const COMPARE_WITH_FILE: Say =
    say("Compare with a rule book of yours…", "Comparar con un libro de reglas suyo…");
pub(crate) const CHECKLIST: Say = say("Crew checklist", "Lista de verificación");
pub(crate) const PATHWAYS: Say = say("Pathways for the fire service", "Pasos para los bomberos");

// The house and the place
pub(crate) const HOUSE: Say = say("House and place", "Casa y lugar");
pub(crate) const HOUSE_WHY: Say = say(
    "What rules need to know. What is not known is not assumed: the rules that need it say that they were not checked.",
    "Lo que las reglas necesitan saber. Lo que no se sabe no se supone: las reglas que lo necesitan \
        dicen que no se revisaron.",
);
pub(crate) const FIRE_PART: Say = say("Fire access", "Acceso de bomberos");
pub(crate) const SIZE_PART: Say = say("The house", "La casa");
pub(crate) const LOADS_PART: Say = say("Wind and snow", "Viento y nieve");
pub(crate) const HOLD_PART: Say = say("Fasteners of the array", "Fijaciones del arreglo");
pub(crate) const SPRINKLERS: Say = say("Sprinklers throughout", "Rociadores en todo");
pub(crate) const SPRINKLERS_HELP: Say = say(
    "An automatic sprinkler system in the whole house. Yes or no; most older houses have none (from memory). It lets a larger \
     array keep the smaller room beside the ridge. Source: IRC R324.6.2.1; the plans or the fire official.",
    "Un sistema automático de rociadores en toda la casa. Sí o no; la mayoría de las casas viejas no \
        lo tienen (de memoria). Deja que un arreglo más grande conserve el espacio menor junto a la \
        cumbrera. Fuente: IRC R324.6.2.1; los planos o el oficial de bomberos.",
);
pub(crate) const UNINHABITED: Say = say("Detached, nobody lives in it", "Separada, nadie vive en ella");
pub(crate) const UNINHABITED_HELP: Say = say(
    "A shed or carport that stands by itself. Yes or no; a house is none. Source: IRC R324.6, exceptions.",
    "Un cobertizo o cochera que está por su cuenta. Sí o no; una casa no lo es. Fuente: IRC R324.6, \
        excepciones.",
);
pub(crate) const STREETS: Say = say("Streets lie to", "Calles hacia");
pub(crate) const STREETS_HELP: Say = say(
    "The ways in which a street or driveway lies: degrees clockwise from north, or winds, with commas between: S, 90. \
     Most houses have one or two (from memory). Source: IRC R324.6.1; the site plan.",
    "Hacia dónde queda una calle o entrada de autos: grados desde el norte en el sentido del reloj, o \
        rumbos, separados por comas: S, 90. La mayoría de las casas tienen una o dos (de memoria). \
        Fuente: IRC R324.6.1; el plano del terreno.",
);
pub(crate) const NO_ROOF_WORK: Say = say("No roof work", "Nadie en el techo");
pub(crate) const NO_ROOF_WORK_HELP: Say = say(
    "Who of the fire service found that nobody will work on this roof, and when; empty where nobody did, as on most \
     houses. Source: IRC R324.6, exceptions; keep the letter with the permit.",
    "Qué persona de los bomberos determinó que nadie trabajará en este techo, y cuándo; vacío donde \
        nadie lo hizo, como en la mayoría de las casas. Fuente: IRC R324.6, excepciones; guarde la carta \
        con el permiso.",
);
pub(crate) const LISTING_READ: Say = say("Listing read by", "Leyó certificación");
pub(crate) const LISTING_READ_HELP: Say = say(
    "Who read the listing by which this roof-integrated array is exempt from fire access, and when; empty where nobody \
     did. Source: the product's listing, and the edition adopted where the house stands.",
    "Quién leyó la certificación que exime a este arreglo integrado del acceso de bomberos, y cuándo; \
        vacío donde nadie lo hizo. Fuente: la certificación del producto y la edición adoptada donde está \
        la casa.",
);
pub(crate) const EAVE_HEIGHT: Say = say("Eave height", "Altura del alero");
pub(crate) const EAVE_HEIGHT_HELP: Say = say(
    "From the ground to the eave, a length; 9 ft on one storey, 18 ft on two (from memory). Source: measured on site.",
    "Del suelo al alero, una longitud; 9 ft en un piso, 18 ft en dos (de memoria). Fuente: medido en \
        el sitio.",
);
pub(crate) const LEAST_WIDTH: Say = say("Least width", "Ancho mínimo");
pub(crate) const LEAST_WIDTH_HELP: Say = say(
    "The least width of the house in plan, a length; 24 to 40 ft are usual (from memory). It sets how wide the strips of high wind \
     suction are. Source: measured on site; ASCE/SEI 7, chapter 30.",
    "El ancho mínimo de la casa en planta, una longitud; de 24 a 40 ft es lo usual (de memoria). \
        Determina qué tan anchas son las franjas de succión fuerte del viento. Fuente: medido en el \
        sitio; ASCE/SEI 7, capítulo 30.",
);
pub(crate) const OVERHANG: Say = say("Overhang", "Voladizo");
pub(crate) const OVERHANG_HELP: Say = say(
    "How far the eave reaches beyond the outer wall, in plan; 12 to 24 in are usual (from memory). It sets how far up an ice barrier \
     goes. Source: measured on site; IRC R905.1.2.",
    "Cuánto sobresale el alero del muro exterior, en planta; de 12 a 24 in es lo usual (de memoria). \
        Determina hasta dónde sube la barrera contra hielo. Fuente: medido en el sitio; IRC R905.1.2.",
);
pub(crate) const WIND: Say = say("Wind, mph", "Viento, mph");
pub(crate) const WIND_HELP: Say = say(
    "Basic wind speed for the house's risk category, miles an hour, 3-second gust; often 105 to 120 inland and more by the \
     coast (from memory). Source: the maps of ASCE/SEI 7, chapter 26, or the building department.",
    "Velocidad básica del viento para la categoría de riesgo de la casa, millas por hora, ráfaga de 3 \
        segundos; a menudo de 105 a 120 tierra adentro y más junto a la costa (de memoria). Fuente: los \
        mapas de ASCE/SEI 7, capítulo 26, o el departamento de construcción.",
);
pub(crate) const WIND_EXPOSURE: Say = say("Exposure", "Exposición");
pub(crate) const WIND_EXPOSURE_HELP: Say = say(
    "By the ground upwind: B is town or wood, C open country, D flat by open water. Most houses in towns are B (from memory). Source: \
     ASCE/SEI 7, section 26.7.",
    "Según el terreno a barlovento: B es ciudad o bosque, C campo abierto, D llano junto a agua \
        abierta. La mayoría de las casas en ciudad son B (de memoria). Fuente: ASCE/SEI 7, sección 26.7.",
);
pub(crate) const NOT_KNOWN: Say = say("not known", "no se sabe");
pub(crate) const EXPOSURE_B: Say = say("B: town, wood", "B: ciudad, bosque");
pub(crate) const EXPOSURE_C: Say = say("C: open country", "C: campo abierto");
pub(crate) const EXPOSURE_D: Say = say("D: open water", "D: agua abierta");
pub(crate) const ELEVATION: Say = say("Elevation", "Elevación");
pub(crate) const ELEVATION_HELP: Say = say(
    "Of the ground above sea level, a length; left empty, the air counts as at sea level, the safe side. Source: a survey \
     map; ASCE/SEI 7, section 26.9.",
    "Del terreno sobre el nivel del mar, una longitud; vacía, el aire cuenta como al nivel del mar, el \
        lado seguro. Fuente: un mapa topográfico; ASCE/SEI 7, sección 26.9.",
);
pub(crate) const SNOW: Say = say("Snow, psf", "Nieve, psf");
pub(crate) const SNOW_HELP: Say = say(
    "Ground snow load, pounds a square foot, as the book's edition gives it; 0 in the south, 20 to 50 where winters are \
     cold (from memory). Source: ASCE/SEI 7, chapter 7, or the building department.",
    "Carga de nieve en el suelo, libras por pie cuadrado, como la da la edición del libro; 0 en el \
        sur, de 20 a 50 donde los inviernos son fríos (de memoria). Fuente: ASCE/SEI 7, capítulo 7, o el \
        departamento de construcción.",
);
pub(crate) const FASTENER: Say = say("One holds, lb", "Una aguanta, lb");
pub(crate) const FASTENER_HELP: Say = say(
    "What one fastener of the array holds against uplift, pounds, allowable: tested or listed. There is no typical value \
     to lean on. Source: the maker's listing or test report for this deck.",
    "Lo que una fijación del arreglo aguanta contra el levantamiento, libras, admisible: ensayado o \
        certificado. No hay un valor típico en que apoyarse. Fuente: la certificación o el informe de \
        ensayo del fabricante para este entablado.",
);
pub(crate) const FASTENER_DECK: Say = say("Deck each, ft²", "Área de una, ft²");
pub(crate) const FASTENER_DECK_HELP: Say = say(
    "Deck under one such fastener, square feet; 2 to 6 are usual (from memory). Source: the maker's layout of fasteners.",
    "Entablado que toca a cada fijación, pies cuadrados; de 2 a 6 es lo usual (de memoria). Fuente: el \
        plano de fijaciones del fabricante.",
);
pub(crate) const DECK_PART: Say = say("The deck", "El entablado");
pub(crate) const COVERING_PART: Say = say("The covering", "El recubrimiento");
pub(crate) const DECK_THICKNESS: Say = say("Sheathing", "Tablero");
pub(crate) const DECK_THICKNESS_HELP: Say = say(
    "How thick the sheathing is, a length; 7/16 to 5/8 in are usual (from memory). Source: measured at an edge or a vent.",
    "Qué grueso es el tablero, una longitud; de 7/16 a 5/8 in es lo usual (de memoria). Fuente: medido \
        en un borde o un respiradero.",
);
pub(crate) const DECK_KIND: Say = say("Made of", "Hecho de");
pub(crate) const DECK_KIND_HELP: Say = say(
    "What the sheathing is made of; OSB or plywood on most houses since the 1970s (from memory). Source: seen from below.",
    "De qué está hecho el tablero; OSB o contrachapado en la mayoría de las casas desde los años 1970 \
        (de memoria). Fuente: visto desde abajo.",
);
pub(crate) const RAFTERS: Say = say("Rafters every", "Vigas cada");
pub(crate) const RAFTERS_HELP: Say = say(
    "From rafter to rafter, middle to middle; 16 or 24 in are usual (from memory). Source: measured from below.",
    "De viga a viga, de centro a centro; 16 o 24 in es lo usual (de memoria). Fuente: medido desde abajo.",
);
pub(crate) const DECK_CONDITION: Say = say("Its state", "Su estado");
pub(crate) const DECK_CONDITION_HELP: Say = say(
    "What state the deck is in, once somebody looked at it from below or after tear-off. Source: common practice, no source.",
    "En qué estado está el entablado, una vez que alguien lo miró desde abajo o sin tejas. Fuente: \
        práctica común, sin fuente.",
);
pub(crate) const DECK_SOUND: Say = say("sound", "sano");
pub(crate) const DECK_REPAIR: Say = say("needs repair", "necesita reparación");
pub(crate) const DRIP_EDGE: Say = say("Drip edge", "Goterón");
pub(crate) const DRIP_EDGE_HELP: Say = say(
    "Metal along eaves and rakes that leads water off the deck. Source: IRC R905.2.8.5 (2018); seen on site.",
    "Metal a lo largo de aleros y bordes inclinados que aparta el agua del entablado. Fuente: IRC \
        R905.2.8.5 (2018); visto en el sitio.",
);
pub(crate) const DRIP_IN_PLACE: Say = say("there, and stays", "está, y se queda");
pub(crate) const DRIP_WITH_JOB: Say = say("goes on with this job", "se pone con esta obra");
pub(crate) const DRIP_ABSENT: Say = say("none", "ninguno");
pub(crate) const COVERING_CLASS: Say = say("Fire class", "Clase de fuego");
pub(crate) const COVERING_CLASS_HELP: Say = say(
    "The class against fire of the covering beyond the array; most fibreglass shingles are class A (from memory). Source: \
     the package of the shingles; UL 790 or ASTM E108.",
    "La clase contra fuego del recubrimiento fuera del arreglo; la mayoría de las tejas de fibra de \
        vidrio son clase A (de memoria). Fuente: el paquete de las tejas; UL 790 o ASTM E108.",
);
pub(crate) const CLASS_BY_LAW: Say = say("Law asks", "La ley pide");
pub(crate) const CLASS_BY_LAW_HELP: Say = say(
    "The class that the law asks for where the house stands; \u{201c}no class\u{201d} where it asks for none. Source: IRC R902.1 \
     (2018); the building department.",
    "La clase que pide la ley donde está la casa; \u{201c}ninguna clase\u{201d} donde no pide ninguna. \
        Fuente: IRC R902.1 (2018); el departamento de construcción.",
);
pub(crate) const LOT_LINE: Say = say("Lot line", "Lindero");
pub(crate) const LOT_LINE_HELP: Say = say(
    "From the nearest edge of the roof deck to a lot line, in plan. Nearer than 3 ft a class against fire is asked. Source: \
     IRC R902.1 (2018); the site plan.",
    "Del borde más cercano del entablado a un lindero, en planta. A menos de 3 ft se pide una clase \
        contra fuego. Fuente: IRC R902.1 (2018); el plano del terreno.",
);
pub(crate) const WIND_ZONES: Say = say("Zones of wind suction", "Zonas de succión del viento");
pub(crate) const WIND_ZONES_HELP: Say = say(
    "Zones of components and cladding by ASCE/SEI 7, with the outward pressure in each: a screening, never a design. It \
     needs wind, exposure, eave height and least width under House and place.",
    "Zonas de componentes y revestimientos según ASCE/SEI 7, con la presión hacia afuera en cada una: \
        una revisión preliminar, nunca un diseño. Necesita viento, exposición, altura del alero y ancho \
        mínimo en Casa y lugar.",
);

pub(crate) fn wind_zone(zone: &chalkcourse_rules::wind::DrawnZone) -> String {
    tell!("zone {}: {:.1} psf", "zona {}: {:.1} psf", zone.zone.name(), zone.psf)
}
pub(crate) fn wind_zones_said(drawn: &chalkcourse_rules::wind::Drawn) -> String {
    let mut words = chalkcourse_telling::wind::about(drawn);
    for refused in &chalkcourse_telling::wind::not_drawn(drawn) {
        words.push_str(pick("\nNot drawn: ", "\nSin dibujar: "));
        words.push_str(refused);
    }
    words.push_str(pick(
        "\nA screening. Design by a licensed engineer.",
        "\nRevisión preliminar. El diseño es de un ingeniero con licencia.",
    ));
    words
}

pub(crate) const BAD_NUMBER: Say = say("Type a number, such as 115.", "Escriba un número, por ejemplo 115.");

pub(crate) fn out_of_range(least: f64, most: f64) -> String {
    tell!("Type a number from {least} to {most}.", "Escriba un número de {least} a {most}.")
}

pub(crate) const BAD_LENGTH_RANGE: Say = say(
    "This length can't be right: it must be 0 or more and below 10 000 ft.",
    "Esta longitud no puede ser: debe ser 0 o más y menos de 10 000 ft.",
);

// The rule book
pub(crate) const CANT_SAVE_BOOK: Say =
    say("The rule book could not be saved", "No se pudo guardar el libro de reglas");
pub(crate) const BOOK: Say = say("Book", "Libro");
pub(crate) const BOOK_DATE: Say = say("Date", "Fecha");
pub(crate) const BASED_ON: Say = say("Based on", "Basado en");
pub(crate) const LIMITS: Say = say("Limits", "Límites");
pub(crate) const RULES: Say = say("Rules", "Reglas");
pub(crate) const COMPARE: Say = say("Compare", "Comparar");
pub(crate) const SAVE_BOOK_SHORT: Say = say("Save as…", "Guardar como…");
pub(crate) const LOAD_BOOK_SHORT: Say = say("Load…", "Cargar…");
pub(crate) const EDIT_BOOK: Say = say("Show", "Mostrar");
pub(crate) const EDIT_BOOK_HELP: Say = say(
    "Every limit of the book, with its source; change, save and compare it.",
    "Cada límite del libro, con su fuente; cambiarlo, guardarlo y compararlo.",
);
pub(crate) const CHANGE_SOURCE: Say = say("Change the source", "Cambiar la fuente");
pub(crate) const SOURCE: Say = say("Source", "Fuente");
pub(crate) const YES: Say = say("yes", "sí");
pub(crate) const NO: Say = say("no", "no");
pub(crate) const COMPARE_WITH: Say = say("Compare with", "Comparar con");
pub(crate) const CHOOSE_BOOK: Say = say("choose a book", "elija un libro");
pub(crate) const FROM_FILE: Say = say("From a file…", "De un archivo…");
pub(crate) const SAME_BOOKS: Say = say("The two books say the same.", "Los dos libros dicen lo mismo.");
pub(crate) const HERE: Say = say("this book", "este libro");
pub(crate) const THERE: Say = say("the other", "el otro");
pub(crate) const NOTHING_THERE: Say = say("nothing", "nada");
pub(crate) const RULE_SWITCH_HELP: Say = say(
    "A rule that is off is told in every report of what was not checked.",
    "Una regla desactivada se menciona en cada informe de lo que no se revisó.",
);
pub(crate) const BAD_SHARE: Say =
    say("Type a share, such as 33 % or 0.33.", "Escriba una parte, por ejemplo 33 % o 0.33.");
pub(crate) const CHANGE_BOOK: Say = say("choose another rule book", "elegir otro libro de reglas");
pub(crate) const RENAME_BOOK: Say = say("change the book's heading", "cambiar el encabezado del libro");

pub(crate) fn change_limit(row: &LimitRow) -> String {
    tell!("change the rule book: {}", "cambiar el libro de reglas: {}", row.name.to_lowercase())
}
pub(crate) fn change_source(row: &LimitRow) -> String {
    tell!("change the source of: {}", "cambiar la fuente de: {}", row.name.to_lowercase())
}
pub(crate) fn switch_rule(title: &str, on: bool) -> String {
    tell!(
        "switch {} the rule: {title}",
        "{} la regla: {title}",
        if on { pick("on", "activar") } else { pick("off", "desactivar") }
    )
}

pub(crate) fn scheme(scheme: PathScheme) -> &'static str {
    match scheme {
        PathScheme::WholeRoof => {
            pick("two on the roof, one by each plane", "dos en el techo, uno por cada plano")
        }
        PathScheme::EachSlope => pick("on each slope with modules", "en cada vertiente con módulos"),
    }
}
pub(crate) const SCHEMES: [PathScheme; 2] = [PathScheme::WholeRoof, PathScheme::EachSlope];
pub(crate) const STANDARDS: [LoadStandard; 2] = [LoadStandard::Asce716, LoadStandard::Asce722];

/// What is weak about a source, for who builds by it.
pub(crate) fn doubt(standing: Option<Standing>) -> Option<&'static str> {
    match standing? {
        Standing::FromMemory => Some(pick(
            "In doubt: quoted from memory. Confirm it against the text.",
            "En duda: citado de memoria. Confírmelo con el texto.",
        )),
        Standing::LeftOpen => Some(pick(
            "In doubt: the code leaves it open. Ask the official.",
            "En duda: el código lo deja abierto. Pregunte al oficial.",
        )),
        Standing::Confirmed | Standing::Maker | Standing::Office | Standing::CommonPractice => None,
    }
}

/// How far a source can be relied on, in a list to choose from.
pub(crate) fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Confirmed => pick("read in the text", "leído en el texto"),
        Standing::LeftOpen => pick("the text leaves it open", "el texto lo deja abierto"),
        Standing::FromMemory => pick("from memory", "de memoria"),
        Standing::Maker => pick("the maker's word", "palabra del fabricante"),
        Standing::Office => pick("the office's own", "propio de la oficina"),
        Standing::CommonPractice => pick("common practice", "práctica común"),
    }
}

pub(crate) const STANDING: Say = say("How far it can be relied on", "Hasta dónde se puede confiar");

/// Where a limit stands that the book does not have.
pub(crate) const NOT_IN_BOOK: Say = say("none in this book", "ninguno en este libro");
pub(crate) const NO_LIMIT: Say = say(
    "No limit of its own: modules must stay on the face and off the hole.",
    "Sin límite propio: los módulos deben quedar en el faldón y fuera del hueco.",
);

pub(crate) const BOOK_PARTS: Say = say("Parts of this book", "Partes de este libro");
pub(crate) const BOOK_PARTS_WHY: Say = say(
    "A part that the book does not have is not checked, and every report says so. A part that is put in comes with the \
     numbers and sources of the program's own books: read them, and change what your place has amended.",
    "Una parte que el libro no tiene no se revisa, y cada informe lo dice. Una parte que se agrega \
        viene con los números y fuentes de los libros propios del programa: léalos, y cambie lo que su \
        localidad haya enmendado.",
);
pub(crate) const PUT_IN_HELP: Say = say(
    "Puts this part in as the program's own books have it",
    "Agrega esta parte como la tienen los libros propios del programa",
);
pub(crate) const TAKE_OUT_HELP: Say = say(
    "Takes this part out: what it asks is no longer checked",
    "Quita esta parte: lo que pide ya no se revisa",
);

pub(crate) fn put_in(part: &str) -> String {
    tell!("Put in: {}", "Agregar: {}", part.to_lowercase())
}
pub(crate) fn take_out(part: &str) -> String {
    tell!("Take out: {}", "Quitar: {}", part.to_lowercase())
}

pub(crate) fn differences(count: usize, other: &str) -> String {
    match count {
        1 => tell!("1 field differs from “{other}”.", "1 campo difiere de “{other}”."),
        count => tell!("{count} fields differ from “{other}”.", "{count} campos difieren de “{other}”."),
    }
}

/// The path of a field in words: "Fire access: least width of a pathway, source".
pub(crate) fn field_words(difference: &Difference, rows: &[LimitRow]) -> String {
    let known = rows.iter().find_map(|row| {
        let rest = difference.field.strip_prefix(&row.field)?;
        let rest = match rest {
            "" | ".value" => "",
            ".source" | ".source.text" => pick(", its source", ", su fuente"),
            ".source.standing" => {
                pick(", how far its source can be relied on", ", hasta dónde se puede confiar en su fuente")
            }
            _ => return None,
        };
        Some(format!("{}: {}{rest}", row.part, row.name.to_lowercase()))
    });
    known.unwrap_or_else(|| difference.field.replace('_', " ").replace('.', ": "))
}

// What was checked
pub(crate) const ONLY_HELD: Say = say("Only what is held", "Solo lo seleccionado");
pub(crate) const ONLY_HELD_HELP: Say = say(
    "Only findings on the face, block or penetration that is selected",
    "Solo hallazgos del faldón, bloque o penetración seleccionado",
);
pub(crate) const SHOW_ALL: Say = say("Show all", "Mostrar todos");

pub(crate) fn severity_group(severity: Severity, count: usize) -> String {
    match severity {
        Severity::Stop => tell!("{count} to stop for", "{count} por los que parar"),
        Severity::Caution => tell!("{count} to look at", "{count} por revisar"),
        Severity::Note => tell!("{count} to know", "{count} por saber"),
    }
}
pub(crate) fn hidden_findings(hidden: usize) -> String {
    match hidden {
        1 => pick("1 finding is hidden by the filter.", "El filtro oculta 1 hallazgo.").to_owned(),
        hidden => {
            tell!("{hidden} findings are hidden by the filter.", "El filtro oculta {hidden} hallazgos.")
        }
    }
}
pub(crate) fn checked_heading(checked: &[CheckedReport]) -> String {
    let on = checked.iter().filter(|rule| rule.on).count();
    tell!("What was checked: {on} of {} rules", "Lo que se revisó: {on} de {} reglas", checked.len())
}
pub(crate) fn checked_against(checked: &[CheckedReport]) -> String {
    let book = checked.first().map_or("", |rule| rule.book.as_str());
    tell!(
        "Against {book}. These rules are not all that can be wrong.",
        "Según {book}. Estas reglas no son todo lo que puede estar mal."
    )
}
pub(crate) fn not_checked(why: Option<&str>) -> String {
    tell!("Not checked: {}", "Sin revisar: {}", why.unwrap_or_default())
}

pub(crate) fn pathway(path: &Pathway, units: Units) -> String {
    let width = Length::from_metres(path.width).show(units);
    if path.straight {
        tell!("pathway {width}", "paso {width}")
    } else {
        tell!("pathway {width}, winding", "paso {width}, sinuoso")
    }
}

// The checklist
pub(crate) const COPY: Say = say("Copy", "Copiar");
pub(crate) const COPIED: Say =
    say("The checklist is on the clipboard.", "La lista de verificación está en el portapapeles.");
pub(crate) const CHECKLIST_WHY: Say = say(
    "From the rule book and the roof as drawn. It prints with the job; it does not replace the crew's own plan.",
    "Del libro de reglas y del techo como se dibujó. Se imprime con la obra; no reemplaza el plan \
        propio de la cuadrilla.",
);

// Costs
pub(crate) const COSTS: Say = say("Cost by part of the order", "Costo por parte del pedido");
pub(crate) const COSTS_BY_GROUP: Say = say("By group", "Por grupo");
pub(crate) const COSTS_BY_STAGE: Say = say("By stage of work", "Por etapa de trabajo");
pub(crate) const CHART_STAGES: Say =
    say("Bar chart of the cost by stage of work", "Gráfica de barras del costo por etapa de trabajo");
pub(crate) const COSTS_BY_ROWS: Say =
    say("As rows are added from the eave up", "Al agregar filas desde el alero");
pub(crate) const COSTS_WHY: Say = say(
    "Lines without a price are left out. Groups and stages are before tax and delivery; the total has all.",
    "Se omiten los renglones sin precio. Grupos y etapas son antes de impuesto y entrega; el total lo \
        tiene todo.",
);
pub(crate) const CHART_GROUPS: Say =
    say("Bar chart of the cost by group", "Gráfica de barras del costo por grupo");
pub(crate) const CHART_ROWS: Say =
    say("Bar chart of the total by number of modules", "Gráfica de barras del total por número de módulos");

/// For who can't see the small drawing of a rule.
pub(crate) fn sketch_of(rule: &Rule) -> String {
    tell!("Sketch: {}", "Croquis: {}", chalkcourse_telling::title(rule))
}

pub(crate) fn group_cost(group: &GroupCost, currency: &str) -> String {
    format!("{}: {currency} {:.2}, {:.0} %", group.group.name(), group.cost, group.share * 100.0)
}
pub(crate) fn step_cost(step: &StepCost, currency: &str) -> String {
    format!("{}: {currency} {:.2}", modules(step.modules), step.cost)
}
pub(crate) use chalkcourse_words::modules;

/// "As the house is drawn: 10' 6""
pub(crate) fn known_as_drawn(length: &str) -> String {
    tell!("As the house is drawn: {length}", "Según la casa dibujada: {length}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn doubt_is_told_and_what_was_read_has_none() {
        assert_eq!(doubt(Some(Standing::Confirmed)), None);
        assert_eq!(doubt(None), None);
        assert!(doubt(Some(Standing::FromMemory)).is_some_and(|d| d.contains("memory")));
        assert!(doubt(Some(Standing::LeftOpen)).is_some());
    }

    #[test]
    fn fields_of_a_comparison_are_named_as_in_the_list() {
        let book = chalkcourse_job::builtin_rule_book();
        let at = |field: &str| {
            let difference = Difference { field: field.to_owned(), one: None, other: None };
            field_words(&difference, &book.limits())
        };
        assert_eq!(
            at("fire_access.path_width.source.text"),
            "Fire access: least width of a pathway, its source"
        );
        assert_eq!(at("setbacks.rake"), "Setbacks, on the slope: from rake");
        assert_eq!(at("based_on"), "based on");
    }
}
