//! A block on a deck as it was measured: how far out of square the deck is, whether a row closes, and where to snap the line.

use chalkcourse_geometry::fit_up::{
    Along, Bows, Closed, Deck, FitUpError, FourSided, Measured, RowToClose, Snap,
};
use chalkcourse_geometry::{DVec2, Length, RoofFace, distance_to_segment};
use chalkcourse_job::{Block, Resolved, TapedDeck};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{Given, Held, KeepOut, keep_outs};
use chalkcourse_words::{pick, putln};
use serde::Serialize;
use std::fmt::Write;

/// What is fitted to a deck.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FitUpAsked {
    /// What the tape says.
    pub measured: Measured,
    /// The base line above the eave, at its lower end, metres.
    pub up: f64,
    /// What it should be parallel to.
    pub along: Along,
    /// Modules in a row.
    pub modules: usize,
    /// Rows.
    pub rows: usize,
    /// A module along a row and up the slope, metres.
    pub module: (f64, f64),
    /// What is kept free beside the left and the right side, metres.
    pub beside: (f64, f64),
    /// How much a module may be larger or smaller, metres.
    pub module_varies: f64,
    /// How far a reveal may be set wrong, metres.
    pub reveal_varies: f64,
}

/// Sides and diagonals of a face with four corners as it is drawn, in the order of [`TapedDeck::sides`]. `None` with more
/// or fewer corners.
pub fn deck_as_drawn(face: &RoofFace) -> Option<[Length; 6]> {
    let [a, b, c, d] = FourSided::of(&face.frame.outer).filter(|_| face.sound)?.corners;
    let between = |p: DVec2, q: DVec2| Length::from_metres(p.distance(q));
    Some([between(a, b), between(d, c), between(a, d), between(b, c), between(a, c), between(b, d)])
}

/// A deck from what the tape read, and from the drawing where nothing was measured; `None` while something is missing.
pub fn deck_measured(taped: &TapedDeck, face: &RoofFace) -> Option<Measured> {
    let drawn = deck_as_drawn(face);
    let sides = taped.sides();
    let at = |nth: usize| -> Option<f64> {
        let typed = sides.get(nth).copied().flatten();
        typed.or_else(|| drawn.and_then(|drawn| drawn.get(nth).copied())).map(Length::metres)
    };
    let [eave, head, left, right] = taped.bows.map(Length::metres);
    Some(Measured {
        eave: at(0)?,
        head: at(1)?,
        left: at(2)?,
        right: at(3)?,
        rising: at(4)?,
        falling: at(5)?,
        bows: Bows { eave, head, left, right },
    })
}

impl FitUpAsked {
    /// A block of a job on a deck as measured, with its base line where it lies above the eave.
    pub fn of_block(job: &Resolved, block: &Block, measured: Measured) -> Self {
        let size = block.module_size(&job.kit);
        let layout = Layout::of(job);
        let eave = layout.face(block.face).map_or(0.0, |(_, on)| on.bounds.min.y);
        Self {
            measured,
            up: block.at.y - eave,
            along: Along::Eave,
            modules: block.columns as usize,
            rows: block.rows as usize,
            module: (size.x, size.y),
            beside: kept_beside(job, &layout, block),
            module_varies: 0.0,
            reveal_varies: 0.0,
        }
    }
}

/// How far modules stay off the left and the right side of a face with four corners: the most that any limit asks there.
fn kept_beside(job: &Resolved, layout: &Layout, block: &Block) -> (f64, f64) {
    let Some((index, face)) = layout.face(block.face) else { return (0.0, 0.0) };
    let Some(deck) = FourSided::of(&face.frame.outer) else { return (0.0, 0.0) };
    let [a, b, c, d] = deck.corners;
    let given = Given::as_laid(job, layout);
    let all = keep_outs(job, layout, index, &given);
    let beside = |from: DVec2, to: DVec2| {
        let along = |keep_out: &&KeepOut| {
            let mut spans = keep_out.edges.iter().filter_map(|edge| face.edges.get(*edge));
            keep_out.held == Held::Module
                && spans.any(|span| distance_to_segment((span.frame.0 + span.frame.1) / 2.0, from, to) < 1e-6)
        };
        all.iter().filter(along).map(|keep_out| keep_out.reach).fold(0.0, f64::max)
    };
    (beside(a, d), beside(b, c))
}

/// What follows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FitUp {
    /// The deck.
    pub deck: Deck,
    /// Where to snap the base line.
    pub snap: Snap,
    /// From where to where a block with square sides may reach along the eave, metres.
    pub opening: (f64, f64),
    /// Whether and how a row closes in it.
    pub closed: Closed,
}

/// Works out how a block goes on a deck as measured, with the reveals that the kit allows.
///
/// # Errors
/// A measure that is no length, measures that make no deck, or a row that is none.
pub fn fit_up(job: &Resolved, asked: &FitUpAsked) -> Result<FitUp, FitUpError> {
    let deck = asked.measured.solve()?;
    let snap = deck.snap(asked.up, asked.along);
    let reveals = (job.kit.reveal.least.metres(), job.kit.reveal.most.metres());
    let rows = asked.rows.max(1) as f64;
    let high = rows * asked.module.1 + (rows - 1.0) * reveals.1;
    let lowest = snap.at_left.min(snap.at_right);
    let (left, right) = deck.opening(lowest, high);
    let opening = (left + asked.beside.0, right - asked.beside.1);
    let row = RowToClose {
        modules: asked.modules,
        module: asked.module.0,
        module_varies: asked.module_varies,
        reveals,
        reveal_varies: asked.reveal_varies,
        opening: opening.1 - opening.0,
    };
    Ok(FitUp { deck, snap, opening, closed: row.close()? })
}

/// A fit-up as a person reads it.
pub fn fit_up_text(job: &Resolved, asked: &FitUpAsked, found: &FitUp) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(job.units);
    let way = |metres: f64| if metres >= 0.0 { pick("right", "derecha") } else { pick("left", "izquierda") };
    let FitUp { deck, snap, opening, closed } = found;
    let mut text = String::new();
    let _ = putln!(
        text,
        "Deck: the measures close to {}; spread over all six, none changes by more than {}",
        "Entablado: las medidas cierran a {}; repartido entre las seis, ninguna cambia más de {}",
        small(deck.closing),
        small(deck.adjusted)
    );
    for (end, racked) in
        [(pick("left", "izquierdo"), deck.racked_left), (pick("right", "derecho"), deck.racked_right)]
    {
        let _ = putln!(
            text,
            "  the {end} end of the head stands {} to the {} of square to the eave",
            "  el extremo {end} de arriba está {} a la {} de la escuadra con el alero",
            small(racked),
            way(racked)
        );
    }
    let _ = putln!(
        text,
        "  the head is {} farther from the eave at its {} end",
        "  el borde superior está {} más lejos del alero en su extremo {}",
        small(deck.head_out_of_parallel),
        way(deck.head_out_of_parallel)
    );
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
    let _ = putln!(
        text,
        "Row of {}: {} to fill between {} and {} from the left end of the eave",
        "Fila de {}: {} por llenar entre {} y {} del extremo izquierdo del alero",
        asked.modules,
        long(opening.1 - opening.0),
        long(opening.0),
        long(opening.1)
    );
    let verdict = match (closed.closes, closed.closes_likely, closed.closes_at_worst) {
        (false, ..) => pick(
            "it does not close: take a module out or move what stops it",
            "no cierra: quite un módulo o mueva lo que la detiene",
        ),
        (true, false, _) => pick(
            "it closes with modules as on the sheet, but not with the sizes that are likely",
            "cierra con módulos como en la ficha, pero no con los tamaños probables",
        ),
        (true, true, false) => pick(
            "it closes with the sizes that are likely, not with the worst",
            "cierra con los tamaños probables, no con los peores",
        ),
        (true, true, true) => pick("it closes even with the worst", "cierra aun con los peores"),
    };
    let over = if closed.spare >= 0.0 {
        pick("over at the sides", "sobran a los lados")
    } else {
        pick("missing", "faltan")
    };
    let _ = putln!(
        text,
        "  {verdict}; set the reveal to {}: {} {over}",
        "  {verdict}; ponga la separación en {}: {} {over}",
        small(closed.reveal),
        small(closed.spare)
    );
    let _ = putln!(
        text,
        "  sizes and reveals can add up to {} either way at worst, {} as the root of the sum of squares",
        "  tamaños y separaciones pueden sumar {} hacia cualquier lado en el peor caso, {} como raíz de la \
        suma de cuadrados",
        small(closed.worst),
        small(closed.likely)
    );
    let _ = putln!(
        text,
        "Measure each line from one datum, and check the first module of a row before the next.\n\n{}",
        "Mida cada línea desde un solo origen, y compruebe el primer módulo de una fila antes del \
        siguiente.\n\n{}",
        crate::CAUTION.now()
    );
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::fit_up::Bows;
    use chalkcourse_job::{builtin_kit, builtin_prices, builtin_rule_book};

    fn asked(rising: f64, falling: f64) -> FitUpAsked {
        FitUpAsked {
            measured: Measured {
                eave: 9.0,
                head: 9.0,
                left: 5.0,
                right: 5.0,
                rising,
                falling,
                bows: Bows::default(),
            },
            up: 0.5,
            along: Along::Eave,
            modules: 5,
            rows: 3,
            module: (1.722, 1.134),
            beside: (0.15, 0.15),
            module_varies: 0.001,
            reveal_varies: 0.0005,
        }
    }

    #[test]
    fn a_square_deck_closes_by_hand() {
        let job = Resolved::new("deck".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let diagonal = 9.0_f64.hypot(5.0);
        let found = fit_up(&job, &asked(diagonal, diagonal)).unwrap();
        assert!(found.deck.racked_left.abs() < 1e-9 && found.deck.closing.abs() < 1e-9);
        assert!((found.opening.0 - 0.15).abs() < 1e-9 && (found.opening.1 - 8.85).abs() < 1e-9);
        // 8.7 m less 5 of 1.722 m are 90 mm for 4 reveals of at most 1/4 in, 6.35 mm: 64.6 mm are over.
        assert!((found.closed.reveal - 0.00635).abs() < 1e-12);
        assert!((found.closed.spare - (0.09 - 4.0 * 0.00635)).abs() < 1e-9);
        // 5 modules of 1 mm and 4 reveals of half a millimetre: 7 mm at worst, √(5 + 1) = 2.449 mm likely.
        assert!((found.closed.worst - 0.007).abs() < 1e-12);
        assert!((found.closed.likely - 6.0_f64.sqrt() * 1e-3).abs() < 1e-12);
        assert!(found.closed.closes_at_worst);
        let text = fit_up_text(&job, &asked(diagonal, diagonal), &found);
        assert!(text.contains("it closes even with the worst"), "{text}");
    }

    #[test]
    fn a_racked_deck_narrows_the_row() {
        let job = Resolved::new("deck".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        // A parallelogram that leans right by 100 mm: d² = (9 ± 0.1)² + h² with h² = 25 - 0.01.
        let (rising, falling) = ((9.1_f64.powi(2) + 24.99).sqrt(), (8.9_f64.powi(2) + 24.99).sqrt());
        let found = fit_up(&job, &asked(rising, falling)).unwrap();
        assert!((found.deck.racked_left - 0.1).abs() < 1e-9 && (found.deck.racked_right - 0.1).abs() < 1e-9);
        // The block is 3.4147 m high from 0.5 m up: its left side stands clear at its head, its right at its foot.
        let (high, tall) = (3.0 * 1.134 + 2.0 * 0.00635, 24.99_f64.sqrt());
        assert!((found.opening.0 - (0.15 + 0.1 * (0.5 + high) / tall)).abs() < 1e-9);
        assert!((found.opening.1 - (8.85 + 0.1 * 0.5 / tall)).abs() < 1e-9);
        assert!(fit_up(&job, &FitUpAsked { modules: 0, ..asked(rising, falling) }).is_err());
        assert!(fit_up(&job, &asked(30.0, 30.0)).is_err());
    }
}
