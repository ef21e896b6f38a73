//! Snapping of a shifted row.

use super::super::hit::row_rect;
use super::{Guide, Pull, Scene, guide, upright};
use crate::text;
use chalkcourse_geometry::Length;
use chalkcourse_job::{Block, Resolved};

/// The snapped shift of a row, and the guides: aligned with the row below, offset by half a module, or as far as it and
/// the row above still hook. Shifts are those of whole rows, relative to the block's corner.
pub(crate) fn snapped(scene: Scene, start: &Block, row: u32, wanted: f64) -> (f64, Vec<Guide>) {
    let half = start.spacing(&scene.job.kit).x / 2.0;
    let below = row.checked_sub(1).map_or(0.0, |below| start.shift(below).metres());
    let steps = ((wanted - below) / half).round();
    let mut by = wanted;
    let mut words = String::new();
    if (wanted - below - steps * half).abs() <= scene.reach {
        by = below + steps * half;
        let halves = steps.abs() as u64;
        words = text::row_steps(row, halves);
    }
    let least = scene.job.rule_book.hooked_share.value - 1e-4;
    let from = start.shift(row).metres();
    let hooks = |by: f64| hooked(&start.with_shift(row, Length::from_metres(by)), scene.job, row) >= least;
    if hooks(from) && !hooks(by) {
        // Bisect to where it just hooks enough.
        let (mut good, mut bad) = (from, by);
        for _ in 0..40 {
            let middle = (good + bad) / 2.0;
            if hooks(middle) { good = middle } else { bad = middle }
        }
        by = good;
        words = text::ROW_STILL_HOOKS.now().to_owned();
    }
    let Some((_, face)) = scene.layout.face(start.face).filter(|_| !words.is_empty()) else {
        return (by, Vec::new());
    };
    let bounds = row_rect(scene.job, &start.with_shift(row, Length::from_metres(by)), row);
    let line = upright(bounds, bounds.min.x);
    (by, vec![guide(&face.plane, Pull { by, line, words })])
}

/// The smallest share of the lower edge that hooks into the row below, over the modules of a row and of the one above
/// it.
fn hooked(block: &Block, job: &Resolved, row: u32) -> f64 {
    let size = block.module_size(&job.kit).x;
    let spans = |row: u32| -> Vec<(f64, f64)> {
        let cells = block.cells().filter(move |cell| cell.row == row);
        let mut spans: Vec<(f64, f64)> = Vec::new();
        for from in cells.map(|cell| block.corner_of(cell, &job.kit).x) {
            match spans.last_mut() {
                // A reveal between two modules is not a gap for the one above.
                Some(last) if from - last.1 <= block.reveal.metres() + 5e-4 => last.1 = from + size,
                _ => spans.push((from, from + size)),
            }
        }
        spans
    };
    let share = |row: u32| {
        let Some(below) = row.checked_sub(1).map(spans) else { return 1.0 };
        let modules = block.cells().filter(|cell| cell.row == row);
        modules
            .map(|cell| {
                let from = block.corner_of(cell, &job.kit).x;
                let over = below.iter().map(|span| (span.1.min(from + size) - span.0.max(from)).max(0.0));
                over.sum::<f64>() / size
            })
            .fold(1.0, f64::min)
    };
    let above = if row + 1 < block.rows { share(row + 1) } else { 1.0 };
    share(row).min(above)
}
