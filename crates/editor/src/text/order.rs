//! Words of the order's window.

use chalkcourse_job::PriceList;
use chalkcourse_takeoff::{Comparison, Offer, PriceComparison, Takeoff};
use chalkcourse_words::{Say, pick, say, tell};
use std::fmt::Display;

pub(crate) const ORDER: Say = say("Order", "Pedido");
pub(crate) const OPEN_ORDER: Say = say("Work on the order…", "Trabajar en el pedido…");
pub(crate) const ORDER_HELP: Say = say(
    "All lines of the order: change them, count what arrives, hold it against another",
    "Todos los renglones del pedido: cambiarlos, contar lo que llega, compararlos con otro",
);
pub(crate) const ORDER_LINES: Say = say("Lines", "Renglones");
pub(crate) const ORDER_MONEY: Say = say("Roof, money, stock", "Techo, dinero, existencias");
pub(crate) const ORDER_DELIVERY: Say = say("Delivery", "Entrega");
pub(crate) const ORDER_COMPARE: Say = say("Compare", "Comparar");
pub(crate) const LOAD_STOCK: Say = say("Load a warehouse list…", "Cargar una lista de almacén…");
pub(crate) const COMPARE_JOB: Say = say("With another job…", "Con otra obra…");
pub(crate) const ADD_SUPPLIER: Say = say("Add a price list…", "Agregar una lista de precios…");
pub(crate) const LOAD_COUNTS: Say = say("Load counts…", "Cargar conteos…");

pub(crate) fn order_total(takeoff: &Takeoff) -> String {
    format!("{} {:.2}", takeoff.currency, takeoff.totals.total)
}

// Lines
pub(crate) const COLUMN_NUMBER: Say = say("Number", "Número");
pub(crate) const COLUMN_WHAT: Say = say("What", "Qué");
pub(crate) const COLUMN_NEED: Say = say("Need", "Se necesita");
pub(crate) const COLUMN_ORDER: Say = say("Order", "Pedir");
pub(crate) const COLUMN_PACKAGE: Say = say("Package", "Paquete");
pub(crate) const COLUMN_PRICE: Say = say("Price", "Precio");
pub(crate) const COLUMN_COST: Say = say("Cost", "Costo");
pub(crate) const SORT_HELP: Say = say(
    "Sort by it; once more from the greatest down; once more as listed",
    "Ordenar por esto; otra vez, del mayor al menor; otra vez, como en la lista",
);
pub(crate) const FIND: Say = say("Find", "Buscar");
pub(crate) const FIND_LINE: Say = say("number or words", "número o palabras");
pub(crate) const NO_SUCH_LINE: Say = say("No line is like that.", "Ningún renglón es así.");
pub(crate) const SHOWN_LINES: Say = say("Which lines are listed", "Qué renglones se enumeran");
pub(crate) const SHOWN_BY_GROUP: Say = say("By group", "Por grupo");
pub(crate) const SHOWN_BY_STAGE: Say = say("By stage of work", "Por etapa de trabajo");
pub(crate) const SHOWN_PLAIN: Say = say("Without headings", "Sin encabezados");
pub(crate) const SHOWN_CHANGED: Say = say("Changed by hand", "Cambiados a mano");
pub(crate) const SHOWN_UNPRICED: Say = say("Without a price", "Sin precio");
pub(crate) const COPY_LINES: Say = say("Copy", "Copiar");
pub(crate) const COPY_LINES_HELP: Say = say(
    "Put the lines that are listed on the clipboard, for a spreadsheet",
    "Poner en el portapapeles los renglones enumerados, para una hoja de cálculo",
);
pub(crate) const ADD_LINE: Say = say("Add a line", "Agregar un renglón");
pub(crate) const ADD_LINE_HELP: Say =
    say("Something that the kit does not count", "Algo que el kit no cuenta");
pub(crate) const ON_ORDER_HELP: Say = say(
    "Order this line. A line that is off stays here, and every output tells it.",
    "Pedir este renglón. Un renglón omitido se queda aquí, y cada salida lo dice.",
);
pub(crate) const PACKAGES_HELP: Say = say(
    "Packages to order. Type another number to put it in place of the count; empty is the count again.",
    "Paquetes por pedir. Escriba otro número en lugar del contado; vacío es otra vez el contado.",
);
pub(crate) const PRICE_HELP: Say = say(
    "For one package, in this job's own copy of the price list. Empty: no price, and every output tells so.",
    "Por un paquete, en la copia de la lista de precios de esta obra. Vacío: sin precio, y cada salida \
        lo dice.",
);
pub(crate) const BAD_PACKAGES: Say = say("A whole number", "Un número entero");
pub(crate) const BAD_PRICE: Say = say("Such as 184.50", "Por ejemplo 184.50");
pub(crate) const CHANGED_PRICES: Say = say(", changed in this job", ", cambiado en esta obra");
pub(crate) const NEW_LINE: Say = say("New line", "Renglón nuevo");
pub(crate) const PIECE: Say = say("piece", "pieza");
pub(crate) const REASON: Say = say("Reason", "Razón");
pub(crate) const TAKE_INSTEAD: Say = say("Take instead", "Tomar en su lugar");
pub(crate) const LINE_WHAT: Say = say("What it is", "Qué es");
pub(crate) const LINE_PACKAGE: Say = say("A package is a", "Un paquete es");
pub(crate) const LINE_GROUP: Say = say("Group", "Grupo");
pub(crate) const LINE_STAGE: Say = say("Needed for", "Se necesita para");
pub(crate) const REMOVE_LINE: Say = say("Take the line away", "Quitar el renglón");

pub(crate) fn lines_copied(count: usize) -> String {
    tell!("{count} lines are on the clipboard.", "{count} renglones están en el portapapeles.")
}
pub(crate) fn order_this(number: &str) -> String {
    tell!("Order {number}", "Pedir {number}")
}
pub(crate) fn packages_of(number: &str) -> String {
    tell!("Packages of {number}", "Paquetes de {number}")
}
pub(crate) fn price_of(number: &str) -> String {
    tell!("Price of {number}", "Precio de {number}")
}
pub(crate) fn switch_line(number: &str, was_off: bool) -> String {
    format!("{} {number}", if was_off { pick("Order", "Pedir") } else { pick("Leave out", "Omitir") })
}
pub(crate) fn give_reason(number: &str) -> String {
    tell!("Reason for {number}", "Razón de {number}")
}
pub(crate) fn as_counted(packages: u64) -> String {
    tell!("As counted: {packages}", "Como se contó: {packages}")
}
pub(crate) fn waste_of(number: &str) -> String {
    tell!("Waste of {number}", "Desperdicio de {number}")
}
pub(crate) fn own_gear_of(number: &str) -> String {
    tell!("Own {number}", "{number} propio")
}
pub(crate) fn take_alternate(number: &str) -> String {
    tell!("Another part for {number}", "Otra pieza por {number}")
}
pub(crate) fn no_alternate(price: impl Display) -> String {
    tell!("the kit's own, {price:.2}", "la del kit, {price:.2}")
}
pub(crate) fn change_line(number: &str) -> String {
    tell!("Line {number}", "Renglón {number}")
}
pub(crate) fn remove_line(number: &str) -> String {
    tell!("Take line {number} away", "Quitar el renglón {number}")
}

// Roof, money, stock
pub(crate) const ROOF_WORK: Say = say("The roof", "El techo");
pub(crate) const COVERED_ANEW: Say = say("Covered anew", "Se cubre de nuevo");
pub(crate) const SCOPE_WHOLE: Say = say("the whole roof", "el techo entero");
pub(crate) const SCOPE_ARRAY_FACES: Say = say("faces with modules", "los faldones con módulos");
pub(crate) const SCOPE_ARRAY_ONLY: Say = say("nothing but the array", "nada más que el arreglo");
pub(crate) const SCOPE_FACES: Say =
    say("some faces, as the job's file says", "algunos faldones, como dice el archivo de la obra");
pub(crate) const LAYERS: Say = say("Old layers to strip", "Capas viejas por quitar");
pub(crate) const BAD_LAYERS: Say = say("0 to 5 layers", "De 0 a 5 capas");
pub(crate) const WASTE_AS: Say = say("Waste as for", "Desperdicio como en");
pub(crate) const WASTE_AS_DRAWN: Say = say("the roof as drawn", "el techo como está dibujado");
pub(crate) const OWN_WASTE: Say = say("Waste, %", "Desperdicio, %");
pub(crate) const OWN_WASTE_WHY: Say = say("By whose word", "Según quién");
pub(crate) const OWN_WASTE_HELP: Say = say(
    "The office's own share, in place of the kit's. Empty: as the kit says.",
    "La parte propia de la oficina, en lugar de la del kit. Vacío: como dice el kit.",
);
pub(crate) const BAD_WASTE: Say = say("0 to 100 %", "De 0 a 100 %");
pub(crate) const OWN_GEAR: Say = say("The office has its own", "La oficina tiene el suyo");
pub(crate) const OWN_GEAR_HELP: Say = say(
    "It comes back from the job: it is on the list to bring along, and nothing is bought.",
    "Vuelve de la obra: está en la lista para llevar, y no se compra nada.",
);
pub(crate) const WITH_ORDER: Say = say("Taken with the order", "Se toma con el pedido");
pub(crate) const PRICE_LIST: Say = say("Price list", "Lista de precios");
pub(crate) const TAX_PERCENT: Say = say("Sales tax, %", "Impuesto de venta, %");
pub(crate) const DELIVERY: Say = say("Delivery", "Entrega");
pub(crate) const UNKNOWN_HELP: Say = say(
    "Empty: not known, which every output tells. It is never taken for zero.",
    "Vacío: no se sabe, y cada salida lo dice. Nunca se toma por cero.",
);
pub(crate) const PRICES_READ: Say =
    say("What became of the price list", "Qué se hizo de la lista de precios");
pub(crate) const ON_TOP: Say = say("On top of the cost", "Además del costo");
pub(crate) const OVERHEAD: Say = say("Overhead, % of the cost", "Gastos generales, % del costo");
pub(crate) const PROFIT: Say = say("Profit", "Ganancia");
pub(crate) const PROFIT_NONE: Say = say("none", "ninguna");
pub(crate) const PROFIT_MARKUP: Say = say("markup: % of the cost", "recargo: % del costo");
pub(crate) const PROFIT_MARGIN: Say = say("margin: % of the price", "margen: % del precio");
pub(crate) const PROFIT_PERCENT: Say = say("Profit, %", "Ganancia, %");
pub(crate) const STOCK: Say = say("Stock in hand", "Existencias");
pub(crate) const STOCK_HELP: Say = say(
    "A warehouse list: CSV with the columns number, amount, and maybe note",
    "Una lista de almacén: CSV con las columnas number, amount y quizá note",
);
pub(crate) const STOCK_EMPTY: Say = say(
    "None. What lies in the warehouse is used before anything is bought.",
    "Ninguna. Lo que hay en el almacén se usa antes de comprar.",
);
pub(crate) const ADD_STOCK: Say = say("Add what is left", "Agregar lo que sobra");
pub(crate) const STOCK_AMOUNT_HELP: Say =
    say("Such as 40, 100 ft, 200 sq ft", "Por ejemplo 40, 100 ft, 200 sq ft");
pub(crate) const STOCK_NOTE: Say = say("Where it lies", "Dónde está");
pub(crate) const REMOVE: Say = say("Remove", "Quitar");

pub(crate) fn list_words(list: &PriceList) -> String {
    tell!(
        "{}, {}; {} prices in {}",
        "{}, {}; {} precios en {}",
        list.name,
        list.date,
        list.prices.len(),
        list.currency
    )
}
pub(crate) fn no_such_part(number: &str) -> String {
    tell!("The kit has no part {}.", "El kit no tiene la pieza {}.", number.trim())
}
pub(crate) fn stock_part(nth: usize) -> String {
    tell!("Part of leftover {nth}", "Pieza del sobrante {nth}")
}
pub(crate) fn stock_amount(nth: usize) -> String {
    tell!("Amount of leftover {nth}", "Cantidad del sobrante {nth}")
}
pub(crate) fn stock_note(nth: usize) -> String {
    tell!("Note of leftover {nth}", "Nota del sobrante {nth}")
}

// Delivery
pub(crate) const NOTHING_ON_ORDER: Say = say("Nothing is on order.", "No hay nada pedido.");
pub(crate) const REST_CAME: Say = say("The rest came whole", "El resto llegó completo");
pub(crate) const REST_CAME_HELP: Say = say(
    "All lines that nobody has counted yet are there, and none is damaged",
    "Todos los renglones que nadie ha contado están ahí, y ninguno está dañado",
);
pub(crate) const LOAD_COUNTS_HELP: Say = say(
    "A pallet list with the column counted filled in, as CSV",
    "Una lista de tarimas con la columna counted llena, como CSV",
);
pub(crate) const PRINT_LIST: Say = say("Print the list…", "Imprimir la lista…");
pub(crate) const PRINT_THE_CLAIM: Say = say("Print the claim…", "Imprimir el reclamo…");
pub(crate) const COPY_CLAIM: Say = say("Copy the claim", "Copiar el reclamo");
pub(crate) const CLAIM_COPIED: Say =
    say("The claim is on the clipboard.", "El reclamo está en el portapapeles.");
pub(crate) const CHANGE_DELIVERY: Say = say("About the delivery", "Sobre la entrega");
pub(crate) const DELIVERY_DATE: Say = say("Date", "Fecha");
pub(crate) const DELIVERY_BY: Say = say("Counted by", "Contó");
pub(crate) const DELIVERY_NOTE: Say = say("Note", "Nota");
pub(crate) const COLUMN_ORDERED: Say = say("Ordered", "Pedido");
pub(crate) const COLUMN_CAME: Say = say("Came", "Llegó");
pub(crate) const COLUMN_DAMAGED: Say = say("Damaged", "Dañado");
pub(crate) const COLUMN_NOTE: Say = say("Note", "Nota");
pub(crate) const COLUMN_STATE: Say = say("State", "Estado");
pub(crate) const ALL_CAME_HELP: Say =
    say("All of it is there, and none is damaged", "Está todo, y nada está dañado");
pub(crate) const CAN_START: Say = say("What can start", "Lo que puede empezar");
pub(crate) const CAN: Say = say("can start", "puede empezar");

pub(crate) fn counted_so_far(counted: usize, of: usize) -> String {
    tell!("{counted} of {of} lines counted", "{counted} de {of} renglones contados")
}
pub(crate) fn count_part(number: &str) -> String {
    tell!("Count {number}", "Contar {number}")
}
pub(crate) fn counts_taken(lines: usize) -> String {
    tell!("{lines} lines are counted.", "{lines} renglones están contados.")
}
pub(crate) fn all_came(number: &str) -> String {
    tell!("All of {number} came", "Llegó todo lo de {number}")
}
pub(crate) fn came_of(number: &str) -> String {
    tell!("Came of {number}", "Llegaron de {number}")
}
pub(crate) fn damaged_of(number: &str) -> String {
    tell!("Damaged of {number}", "Dañados de {number}")
}
pub(crate) fn note_of(number: &str) -> String {
    tell!("Note of {number}", "Nota de {number}")
}
pub(crate) fn too_many_damaged(came: u64) -> String {
    tell!("At most {came}", "Como máximo {came}")
}
pub(crate) fn waits_for(parts: &[String]) -> String {
    match parts {
        [] => pick("waits", "espera").to_owned(),
        [one] => tell!("waits for {one}", "espera {one}"),
        [first, rest @ ..] => tell!("waits for {first}, and {} more", "espera {first} y {} más", rest.len()),
    }
}

// Compare
pub(crate) const COMPARE_ORDERS: Say = say("Another order", "Otro pedido");
pub(crate) const COMPARE_ORDERS_WHY: Say = say(
    "Keep the order as it is now, go on with the job, and see here what is more, what is less, and what it costs. Or hold it against another job.",
    "Conserve el pedido como está ahora, siga con la obra y vea aquí qué es más, qué es menos y cuánto \
        cuesta. O compárelo con otra obra.",
);
pub(crate) const KEEP_THIS: Say = say("Keep this order to compare", "Conservar este pedido para comparar");
pub(crate) const KEEP_THIS_HELP: Say = say(
    "What changes from here on shows below; it is not saved with the job",
    "Lo que cambie desde ahora se muestra abajo; no se guarda con la obra",
);
pub(crate) const ORDERS_ALIKE: Say =
    say("The two orders are alike, line by line.", "Los dos pedidos son iguales, renglón por renglón.");
pub(crate) const COMPARE_SUPPLIERS: Say = say("Other suppliers", "Otros proveedores");
pub(crate) const COMPARE_SUPPLIERS_WHY: Say = say(
    "Add the price list of another supplier to see this order at its prices, line by line.",
    "Agregue la lista de precios de otro proveedor para ver este pedido a sus precios, renglón por renglón.",
);
pub(crate) const FORGET_SUPPLIERS: Say = say("Take them away", "Quitarlas");

pub(crate) fn as_it_was(job: &str) -> String {
    tell!("{job}, as it was", "{job}, como estaba")
}
pub(crate) fn compared_with(name: &str) -> String {
    tell!("From {name} to the job as it is:", "De {name} a la obra como está:")
}
pub(crate) fn total_moved(found: &Comparison) -> String {
    format!("{:.2} → {:.2} {}, {:+.2}", found.before, found.after, found.currency, found.more)
}
pub(crate) fn from_to(from: &str, to: &str) -> String {
    if from == to { to.to_owned() } else { format!("{from} → {to}") }
}
pub(crate) fn offer_words(offer: &Offer) -> String {
    format!("{}, {}: {:.2} {}", offer.list, offer.date, offer.total, offer.currency)
}
pub(crate) fn offer_sums(offer: &Offer) -> String {
    tell!(
        "lines {:.2}, sales tax {}, delivery {}; lines that all have {:.2}",
        "renglones {:.2}, impuesto de venta {}, entrega {}; renglones que todos tienen {:.2}",
        offer.lines,
        super::money(offer.tax),
        super::money(offer.delivery),
        offer.in_common
    )
}
pub(crate) fn cheapest_words(found: &PriceComparison) -> String {
    tell!(
        "Each line where it is cheapest (•): {:.2}",
        "Cada renglón donde es más barato (•): {:.2}",
        found.cheapest
    )
}
pub(crate) fn cheapest(cost: impl Display) -> String {
    format!("• {cost:.2}")
}
