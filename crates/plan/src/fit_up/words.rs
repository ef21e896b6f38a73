//! A fit-up as a crew reads it.

use super::{FitUp, FitUpAsked, RowFit};
use crate::{CAUTION, Standing, modules_words};
use chalkcourse_geometry::fit_up::{Along, Closed};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::Resolved;
use chalkcourse_words::{pick, putln, tell};
use std::fmt::Write;

/// What is to be said of one row, in a sentence: whether it closes with the reveal that it has, or with which.
pub fn row_words(row: &RowFit, laid: f64, units: Units) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(units);
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let RowFit { row, modules, opening, closed } = row;
    let open = long(opening.1 - opening.0);
    let modules = modules_words(*modules);
    let head = tell!("Row {row}, {modules}: {open} to fill", "Fila {row}, {modules}: {open} por llenar");
    let tail = match (closed.closes, closed.too_long > 1e-9) {
        (true, false) => tell!(
            "it fits with its reveal of {}, {} is over at the sides",
            "cabe con su separación de {}, sobran {} a los lados",
            small(laid),
            long(closed.spare.max(0.0))
        ),
        (true, true) => tell!(
            "with its reveal of {} it is {} too long; it closes with {}",
            "con su separación de {} sobran {} de largo; cierra con {}",
            small(laid),
            small(closed.too_long),
            small(closed.reveal)
        ),
        (false, _) => tell!(
            "it does not close: even with the least reveal of {} it is {} too long; take a module out of this row or move what \
             stops it",
            "no cierra: aun con la separación mínima de {} sobran {} de largo; quite un módulo de esta fila o mueva lo que la \
             detiene",
            small(closed.reveal),
            long(-closed.spare)
        ),
    };
    format!("{head}; {tail}.")
}

/// How far a row can err, and whether it closes all the same.
pub fn row_errors(closed: &Closed, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let yes = |closes: bool| {
        if closes { pick("it closes", "cierra") } else { pick("it does not close", "no cierra") }
    };
    tell!(
        "Sizes and reveals can add up to {} either way at worst: {}; {} as the root of the sum of squares: {}.",
        "Tamaños y separaciones pueden sumar {} hacia cualquier lado en el peor caso: {}; {} como raíz de la suma de cuadrados: {}.",
        small(closed.worst),
        yes(closed.closes_at_worst),
        small(closed.likely),
        yes(closed.closes_likely)
    )
}

/// What to do with the reveal of the block.
pub fn reveal_words(found: &FitUp, laid: f64, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    if (found.reveal - laid).abs() < 1e-9 {
        tell!("The reveal stays at {}.", "La separación queda en {}.", small(laid))
    } else {
        tell!(
            "Set the reveal of the block to {} instead of {}: a row is too long with that.",
            "Ponga la separación del bloque en {} en lugar de {}: con esa una fila sobra.",
            small(found.reveal),
            small(laid)
        )
    }
}

/// A fit-up as a person reads it.
pub fn fit_up_text(job: &Resolved, asked: &FitUpAsked, found: &FitUp, standing: &Standing) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(job.units);
    let way = |metres: f64| if metres >= 0.0 { pick("right", "derecha") } else { pick("left", "izquierda") };
    let FitUp { deck, snap, rows, .. } = found;
    let mut text = standing.head();
    // Half a millimetre is below what a tape is read to.
    let read = 0.5e-3;
    if deck.closing.abs() < read {
        text.push_str(pick("Deck: the measures agree\n", "Entablado: las medidas concuerdan\n"));
    } else {
        let _ = putln!(
            text,
            "Deck: the measures disagree by {}; spread over all six, none changes by more than {}",
            "Entablado: las medidas discrepan en {}; repartido entre las seis, ninguna cambia más de {}",
            small(deck.closing),
            small(deck.adjusted)
        );
    }
    for (end, racked) in
        [(pick("left", "izquierdo"), deck.racked_left), (pick("right", "derecho"), deck.racked_right)]
    {
        let _ = if racked.abs() < read {
            putln!(
                text,
                "  the {end} end of the head is square to the eave",
                "  el extremo {end} de arriba está a escuadra con el alero"
            )
        } else {
            putln!(
                text,
                "  the {end} end of the head stands {} to the {} of square to the eave",
                "  el extremo {end} de arriba está {} a la {} de la escuadra con el alero",
                small(racked),
                way(racked)
            )
        };
    }
    if deck.head_out_of_parallel.abs() < read {
        text.push_str(pick(
            "  head and eave are parallel\n",
            "  el borde superior y el alero son paralelos\n",
        ));
    } else {
        let end = match deck.head_out_of_parallel > 0.0 {
            true => pick("right", "derecho"),
            false => pick("left", "izquierdo"),
        };
        let _ = putln!(
            text,
            "  the head is {} farther from the eave at its {end} end",
            "  el borde superior está {} más lejos del alero en su extremo {end}",
            small(deck.head_out_of_parallel)
        );
    }
    let along = match asked.along {
        Along::Eave => pick("parallel to the eave", "paralela al alero"),
        Along::Head => pick("parallel to the head", "paralela al borde superior"),
        Along::Between => {
            pick("halfway between eave and head", "a media distancia entre alero y borde superior")
        }
    };
    let _ = putln!(
        text,
        "Base line, {along}: snap it from {} up at the left to {} up at the right, both from the string along the eave; {} from the edge \
         at its middle",
        "Línea base, {along}: trácela de {} arriba a la izquierda a {} arriba a la derecha, ambas desde el \
        cordel del alero; {} desde el borde en su centro",
        long(snap.at_left),
        long(snap.at_right),
        long(snap.at_middle)
    );
    for row in rows {
        let _ = putln!(
            text,
            "{} It may reach from {} to {} from the left end of the eave.\n  {}",
            "{} Puede llegar de {} a {} del extremo izquierdo del alero.\n  {}",
            row_words(row, asked.reveal, job.units),
            long(row.opening.0),
            long(row.opening.1),
            row_errors(&row.closed, job.units)
        );
    }
    let _ = writeln!(text, "{}", reveal_words(found, asked.reveal, job.units));
    let _ = putln!(
        text,
        "Measure each line from one datum, and check the first module of a row before the next.\n\n{}",
        "Mida cada línea desde un solo origen, y compruebe el primer módulo de una fila antes del \
        siguiente.\n\n{}",
        CAUTION.now()
    );
    text
}
