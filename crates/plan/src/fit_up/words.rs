//! A fit-up as text for the crew.

use super::{FitUp, FitUpAsked, RowFit};
use crate::{CAUTION, Standing, modules_words};
use chalkcourse_geometry::fit_up::{Along, Closed};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_job::Resolved;
use chalkcourse_words as words;
use std::fmt::Write;

/// One row in a sentence: whether it closes with its current reveal, or with which.
pub fn row_words(row: &RowFit, laid: f64, units: Units) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(units);
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let RowFit { row, modules, opening, closed } = row;
    let open = long(opening.1 - opening.0);
    let modules = modules_words(*modules);
    let head = words::fitup::row_to_fill(&row, &modules, &open);
    let tail = match (closed.closes, closed.too_long > 1e-9) {
        (true, false) => words::fitup::it_fits_with_its_reveal(&small(laid), &long(closed.spare.max(0.0))),
        (true, true) => {
            words::fitup::with_its_reveal_of_it(&small(laid), &small(closed.too_long), &small(closed.reveal))
        }
        (false, _) => words::fitup::it_does_not_close_even(&small(closed.reveal), &long(-closed.spare)),
    };
    format!("{head}; {tail}.")
}

/// How much the sizes in a row can vary, and whether it closes all the same.
pub fn row_errors(closed: &Closed, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    let yes = |closes: bool| {
        if closes { words::fitup::IT_CLOSES.now() } else { words::fitup::IT_DOES_NOT_CLOSE.now() }
    };
    words::fitup::sizes_and_reveals_can_add(
        &small(closed.worst),
        &yes(closed.closes_at_worst),
        &small(closed.likely),
        &yes(closed.closes_likely),
    )
}

/// What to do with the reveal of the block.
pub fn reveal_words(found: &FitUp, laid: f64, units: Units) -> String {
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(units);
    if (found.reveal - laid).abs() < 1e-9 {
        words::fitup::the_reveal_stays_at(&small(laid))
    } else {
        words::fitup::set_the_reveal_of_the(&small(found.reveal), &small(laid))
    }
}

/// A fit-up as text.
pub fn fit_up_text(job: &Resolved, asked: &FitUpAsked, found: &FitUp, standing: &Standing) -> String {
    let long = |metres: f64| Length::from_metres(metres).show(job.units);
    let small = |metres: f64| Length::from_metres(metres.abs()).show_small(job.units);
    let way =
        |metres: f64| if metres >= 0.0 { words::fitup::RIGHT_2.now() } else { words::fitup::LEFT_2.now() };
    let FitUp { deck, snap, rows, .. } = found;
    let mut text = standing.head();
    // Half a millimetre is below what can be read on a tape.
    let read = 0.5e-3;
    if deck.closing.abs() < read {
        text.push_str(words::fitup::DECK_THE_MEASURES_AGREE.now());
    } else {
        let _ = writeln!(
            text,
            "{}",
            words::fitup::deck_the_measures_disagree_by(&small(deck.closing), &small(deck.adjusted))
        );
    }
    for (end, racked) in
        [(words::fitup::LEFT.now(), deck.racked_left), (words::fitup::RIGHT.now(), deck.racked_right)]
    {
        let _ = if racked.abs() < read {
            writeln!(text, "{}", words::fitup::the_end_of_the_head(&end))
        } else {
            writeln!(text, "{}", words::fitup::the_end_of_the_head_stands(&end, &small(racked), &way(racked)))
        };
    }
    if deck.head_out_of_parallel.abs() < read {
        text.push_str(words::fitup::HEAD_AND_EAVE_ARE_PARALLEL_2.now());
    } else {
        let end = match deck.head_out_of_parallel > 0.0 {
            true => words::fitup::RIGHT.now(),
            false => words::fitup::LEFT.now(),
        };
        let _ = writeln!(
            text,
            "{}",
            words::fitup::the_head_is_farther_from_the(&small(deck.head_out_of_parallel), &end)
        );
    }
    let along = match asked.along {
        Along::Eave => words::fitup::PARALLEL_TO_THE_EAVE.now(),
        Along::Head => words::fitup::PARALLEL_TO_THE_HEAD.now(),
        Along::Between => words::fitup::HALFWAY_BETWEEN_EAVE_AND_HEAD.now(),
    };
    let _ = writeln!(
        text,
        "{}",
        words::fitup::base_line_snap_it_from(
            &along,
            &long(snap.at_left),
            &long(snap.at_right),
            &long(snap.at_middle)
        )
    );
    for row in rows {
        let _ = writeln!(
            text,
            "{}",
            words::fitup::it_may_reach_from_to(
                &row_words(row, asked.reveal, job.units),
                &long(row.opening.0),
                &long(row.opening.1),
                &row_errors(&row.closed, job.units)
            )
        );
    }
    let _ = writeln!(text, "{}", reveal_words(found, asked.reveal, job.units));
    let _ = writeln!(text, "{}", words::fitup::measure_each_line_from_one(&CAUTION.now()));
    text
}
