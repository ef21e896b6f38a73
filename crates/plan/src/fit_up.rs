//! Fitting a block to a deck as measured: how far out of square the deck is, whether each row closes, and where to snap
//! the base line.

mod words;

pub use words::{fit_up_text, reveal_words, row_errors, row_words};

use chalkcourse_geometry::fit_up::{
    Along, Bows, Closed, Deck, FitUpError, FourSided, Measured, RowToClose, Snap,
};
use chalkcourse_geometry::{DVec2, Length, RoofFace, distance_to_segment};
use chalkcourse_job::{Block, Resolved, TapedDeck};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{ConstrainedPart, KeepOut, KeepOutContext, keep_outs};
use serde::Serialize;

/// Input of a fit-up.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FitUpAsked {
    /// The tape readings.
    pub measured: Measured,
    /// Height of the base line above the eave, at its lower end, metres.
    pub up: f64,
    /// What the base line should be parallel to.
    pub along: Along,
    /// Modules in each row from the eave up, counted from its first to its last; 0 for an empty row.
    pub rows: Vec<usize>,
    /// The block's reveal, metres.
    pub reveal: f64,
    /// Size of a module along the row and up the slope, metres.
    pub module: (f64, f64),
    /// What is kept free beside the left and the right side, metres.
    pub beside: (f64, f64),
    /// Tolerance of module sizes, metres.
    pub module_varies: f64,
    /// Tolerance of reveals, metres.
    pub reveal_varies: f64,
}

/// Sides and diagonals of a four-cornered face as drawn, in the order of [`TapedDeck::sides`]. `None` for other faces.
pub fn deck_as_drawn(face: &RoofFace) -> Option<[Length; 6]> {
    let [a, b, c, d] = FourSided::of(&face.frame.outer).filter(|_| face.sound)?.corners;
    let between = |p: DVec2, q: DVec2| Length::from_metres(p.distance(q));
    Some([between(a, b), between(d, c), between(a, d), between(b, c), between(a, c), between(b, d)])
}

/// A deck from the tape readings, completed from the drawing; `None` while something is missing.
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
    /// A block of a job on a deck as measured, with its base line as far above the eave as drawn.
    pub fn of_block(job: &Resolved, block: &Block, measured: Measured) -> Self {
        let size = block.module_size(&job.kit);
        let layout = Layout::of(job);
        let eave = layout.face(block.face).map_or(0.0, |(_, on)| on.bounds.min.y);
        Self {
            measured,
            up: block.at.y - eave,
            along: Along::Eave,
            rows: rows_of(&layout, block),
            reveal: block.reveal.metres(),
            module: (size.x, size.y),
            beside: kept_beside(job, &layout, block),
            module_varies: 0.0,
            reveal_varies: 0.0,
        }
    }
}

/// Modules of each row of a block from its first to its last, from the eave up; 0 for a row that is switched off.
fn rows_of(layout: &Layout, block: &Block) -> Vec<usize> {
    let modules = layout.block(block.id).map(|placed| placed.modules.as_slice()).unwrap_or_default();
    (0..block.rows)
        .map(|row| {
            let columns = modules.iter().filter(|module| module.cell.row == row).map(|m| m.cell.column);
            let ends = columns.fold(None, |ends: Option<(u32, u32)>, column| {
                Some(ends.map_or((column, column), |(first, last)| (first.min(column), last.max(column))))
            });
            ends.map_or(0, |(first, last)| (last - first + 1) as usize)
        })
        .collect()
}

/// How far modules keep off the left and the right side of a four-cornered face: the largest of all limits there.
fn kept_beside(job: &Resolved, layout: &Layout, block: &Block) -> (f64, f64) {
    let Some((index, face)) = layout.face(block.face) else { return (0.0, 0.0) };
    let Some(deck) = FourSided::of(&face.frame.outer) else { return (0.0, 0.0) };
    let [a, b, c, d] = deck.corners;
    let given = KeepOutContext::as_laid(job, layout);
    let all = keep_outs(job, layout, index, &given);
    let beside = |from: DVec2, to: DVec2| {
        let along = |keep_out: &&KeepOut| {
            let mut spans = keep_out.edges.iter().filter_map(|edge| face.edges.get(*edge));
            keep_out.held == ConstrainedPart::Module
                && spans.any(|span| distance_to_segment((span.frame.0 + span.frame.1) / 2.0, from, to) < 1e-6)
        };
        all.iter().filter(along).map(|keep_out| keep_out.reach).fold(0.0, f64::max)
    };
    (beside(a, d), beside(b, c))
}

/// The result of a fit-up.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FitUp {
    /// The deck.
    pub deck: Deck,
    /// Where to snap the base line.
    pub snap: Snap,
    /// Each row with modules, from the eave up.
    pub rows: Vec<RowFit>,
    /// The reveal for the block, metres: as laid, or the smallest that a row needs to close.
    pub reveal: f64,
}

/// A row in the opening at its height.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RowFit {
    /// Which row, 1 at the eave.
    pub row: usize,
    /// Modules from its first to its last.
    pub modules: usize,
    /// The left and right end of the opening, metres along the eave.
    pub opening: (f64, f64),
    /// Whether and how it closes.
    pub closed: Closed,
}

impl FitUp {
    /// Whether every row closes with the modules of the layout.
    pub fn closes(&self) -> bool {
        self.rows.iter().all(|row| row.closed.closes)
    }
}

/// Fits a block to a deck as measured: each row in the opening at its own height, with its current reveal, or a smaller
/// one down to the kit's least if it would be too long.
///
/// # Errors
/// If a measurement is not a length, the measurements make no deck, or a row is invalid.
pub fn fit_up(job: &Resolved, asked: &FitUpAsked) -> Result<FitUp, FitUpError> {
    let deck = asked.measured.solve()?;
    let snap = deck.snap(asked.up, asked.along);
    let lowest = snap.at_left.min(snap.at_right);
    let close = |row: usize, modules: usize| {
        let up = lowest + row as f64 * (asked.module.1 + asked.reveal);
        let (left, right) = deck.opening(up, asked.module.1);
        let opening = (left + asked.beside.0, right - asked.beside.1);
        let to_close = RowToClose {
            modules,
            module: asked.module.0,
            module_varies: asked.module_varies,
            reveal: asked.reveal,
            least: job.kit.reveal.least.metres(),
            reveal_varies: asked.reveal_varies,
            opening: opening.1 - opening.0,
        };
        Ok(RowFit { row: row + 1, modules, opening, closed: to_close.close()? })
    };
    let some = asked.rows.iter().any(|modules| *modules > 0);
    let rows: Vec<RowFit> = asked
        .rows
        .iter()
        .enumerate()
        // For a block without modules the first row reports the error.
        .filter(|(row, modules)| **modules > 0 || !some && *row == 0)
        .map(|(row, modules)| close(row, *modules))
        .collect::<Result<_, FitUpError>>()?;
    let closing = rows.iter().filter(|row| row.closed.closes).map(|row| row.closed.reveal);
    let reveal = closing.fold(asked.reveal, f64::min);
    Ok(FitUp { deck, snap, rows, reveal })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Standing;
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
            rows: vec![5, 5, 5],
            reveal: 0.003,
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
        assert_eq!(found.rows.len(), 3);
        for row in &found.rows {
            assert!((row.opening.0 - 0.15).abs() < 1e-9 && (row.opening.1 - 8.85).abs() < 1e-9);
            // 8.7 m − 5 × 1.722 m are 90 mm; 4 reveals of 3 mm stay as they are, 78 mm are spare.
            assert!(row.closed.reveal == 0.003 && (row.closed.spare - 0.078).abs() < 1e-9);
            // 5 modules of 1 mm and 4 reveals of half a millimetre: 7 mm at worst, √(5 + 1) = 2.449 mm likely.
            assert!((row.closed.worst - 0.007).abs() < 1e-12);
            assert!((row.closed.likely - 6.0_f64.sqrt() * 1e-3).abs() < 1e-12);
            assert!(row.closed.closes_at_worst);
        }
        assert!(found.closes() && found.reveal == 0.003);
        let text = fit_up_text(&job, &asked(diagonal, diagonal), &found, &Standing::default());
        assert!(text.contains("it fits with its reveal") && text.contains("The reveal stays"), "{text}");
    }

    /// A row of four in 58 ft does not get wider reveals.
    #[test]
    fn a_reveal_is_not_widened_to_fill_a_deck() {
        let job = Resolved::new("deck".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let (wide, high) = (60.0 * 0.3048, 5.0);
        let diagonal = f64::hypot(wide, high);
        let measured = Measured {
            eave: wide,
            head: wide,
            rising: diagonal,
            falling: diagonal,
            ..asked(1.0, 1.0).measured
        };
        let asked = FitUpAsked {
            measured,
            beside: (0.3048, 0.3048),
            rows: vec![4, 4, 4],
            reveal: 0.003_175,
            ..asked(diagonal, diagonal)
        };
        let found = fit_up(&job, &asked).unwrap();
        assert!(found.rows.iter().all(|row| row.closed.reveal == 0.003_175));
        let text = fit_up_text(&job, &asked, &found, &Standing::default());
        assert!(text.contains("Row 1, 4 modules: 58' to fill; it fits with its reveal of 1/8\""), "{text}");
    }

    /// On a gable end that narrows upwards each row has its own opening: lower rows are not judged by the highest.
    #[test]
    fn each_row_has_the_opening_at_its_own_height() {
        let job = Resolved::new("deck".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        // Symmetric: eave 9, head 5, 4 up: rakes √(2² + 4²), diagonals √(7² + 4²). Each side comes in by half the
        // height.
        let (rake, diagonal) = (20.0_f64.sqrt(), 65.0_f64.sqrt());
        let measured = Measured {
            head: 5.0,
            left: rake,
            right: rake,
            rising: diagonal,
            falling: diagonal,
            ..asked(1.0, 1.0).measured
        };
        let rows =
            FitUpAsked { measured, beside: (0.0, 0.0), rows: vec![4, 0, 3], up: 0.0, ..asked(1.0, 1.0) };
        let found = fit_up(&job, &rows).unwrap();
        let wide = |row: &RowFit| row.opening.1 - row.opening.0;
        // By hand: the first row ends 1.134 up: 9 − 1.134 = 7.866; the third 2 · 1.137 + 1.134 = 3.408 up: 5.592.
        assert_eq!(found.rows.iter().map(|row| (row.row, row.modules)).collect::<Vec<_>>(), [(1, 4), (3, 3)]);
        assert!((wide(&found.rows[0]) - 7.866).abs() < 1e-9 && (wide(&found.rows[1]) - 5.592).abs() < 1e-9);
        assert!(found.closes());
        // Four of 1.722 m are 6.888 m: they close in the first row but not in the third.
        let found = fit_up(&job, &FitUpAsked { rows: vec![4, 0, 4], ..rows }).unwrap();
        assert!(found.rows[0].closed.closes && !found.rows[1].closed.closes && !found.closes());
        let text = fit_up_text(&job, &rows, &found, &Standing::default());
        assert!(
            text.contains("Row 3, 4 modules") && text.contains("take a module out of this row"),
            "{text}"
        );
        // Three reveals of 3 mm in 6.888 + 0.006 m: too long by 3 mm, closes with 2 mm.
        let tight = FitUpAsked { beside: (0.0, 7.866 - 6.894), rows: vec![4], ..rows };
        let found = fit_up(&job, &tight).unwrap();
        assert!((found.reveal - 0.002).abs() < 1e-9 && (found.rows[0].closed.too_long - 0.003).abs() < 1e-9);
        assert!(
            fit_up_text(&job, &tight, &found, &Standing::default()).contains("Set the reveal of the block")
        );
    }

    #[test]
    fn a_racked_deck_narrows_the_row() {
        let job = Resolved::new("deck".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        // A parallelogram that leans right by 100 mm: d² = (9 ± 0.1)² + h² with h² = 25 − 0.01.
        let (rising, falling) = ((9.1_f64.powi(2) + 24.99).sqrt(), (8.9_f64.powi(2) + 24.99).sqrt());
        let found = fit_up(&job, &asked(rising, falling)).unwrap();
        assert!((found.deck.racked_left - 0.1).abs() < 1e-9 && (found.deck.racked_right - 0.1).abs() < 1e-9);
        // A row 1.134 m high is limited at its head on the left side, at its foot on the right.
        let tall = 24.99_f64.sqrt();
        for (nth, row) in found.rows.iter().enumerate() {
            let foot = 0.5 + nth as f64 * (1.134 + 0.003);
            assert!((row.opening.0 - (0.15 + 0.1 * (foot + 1.134) / tall)).abs() < 1e-9);
            assert!((row.opening.1 - (8.85 + 0.1 * foot / tall)).abs() < 1e-9);
        }
        assert!(fit_up(&job, &FitUpAsked { rows: vec![0], ..asked(rising, falling) }).is_err());
        assert!(fit_up(&job, &asked(30.0, 30.0)).is_err());
    }
}
