//! Groups tiles into blocks: those closer to each other than two blocks may be belong to one.

use super::super::kernel::Placed;
use super::super::stretch::joined;
use super::phases::is_base;
use super::yard::Yard;
use crate::Rect;
use glam::DVec2;

/// Positions closer than this (metres) count as one.
const SAME: f64 = 1e-7;

/// The blocks of some tiles, lowest first; `None` if they are invalid: tiles of one block that are not on common lines,
/// too close to each other, without enough of the row below under them, or with a base where none may be.
pub(super) fn groups(yard: &Yard<'_>, spots: &[DVec2]) -> Option<Vec<Vec<Placed>>> {
    let (size, pitch, apart) = (yard.tile.size, yard.tile.pitch(), yard.rules.apart);
    let mut order: Vec<DVec2> = spots.to_vec();
    order.sort_by(|p, q| p.y.total_cmp(&q.y).then(p.x.total_cmp(&q.x)));
    let mut of: Vec<usize> = (0..order.len()).collect();
    for i in 0..order.len() {
        for j in i + 1..order.len() {
            let by = order[j] - order[i];
            if by.y > size.y + apart {
                break;
            }
            if (by.abs() - size).max(DVec2::ZERO).length() < apart - SAME {
                let (p, q) = (root(&mut of, i), root(&mut of, j));
                let (low, high) = (p.min(q), p.max(q));
                of[high] = low;
            }
        }
    }
    let mut blocks: Vec<(usize, Vec<DVec2>)> = Vec::new();
    for (i, spot) in order.iter().enumerate() {
        let first = root(&mut of, i);
        match blocks.iter_mut().find(|(of, _)| *of == first) {
            Some((_, block)) => block.push(*spot),
            None => blocks.push((first, vec![*spot])),
        }
    }
    blocks.into_iter().map(|(_, block)| laid(yard, &block, pitch)).collect()
}

fn root(of: &mut [usize], mut at: usize) -> usize {
    while of[at] != at {
        of[at] = of[of[at]];
        at = of[at];
    }
    at
}

/// The tiles of one block, by rows from below and from the left.
fn laid(yard: &Yard<'_>, spots: &[DVec2], pitch: DVec2) -> Option<Vec<Placed>> {
    let size = yard.tile.size;
    let base = spots.first()?.y;
    if !is_base(yard.rules.base, base, yard.room.tolerance) {
        return None;
    }
    let mut placed: Vec<Placed> = Vec::with_capacity(spots.len());
    let mut below: Vec<DVec2> = Vec::new();
    for (n, line) in spots.chunk_by(|p, q| q.y - p.y < SAME).enumerate() {
        let row = ((line.first()?.y - base) / pitch.y).round();
        if (line.first()?.y - base - row * pitch.y).abs() > SAME || row as usize != n {
            // Off the lines of the block, or above a row without tiles, which can't hold anything.
            return None;
        }
        let mut line = line.to_vec();
        line.sort_by(|p, q| p.x.total_cmp(&q.x));
        let too_near = line.windows(2).any(|pair| pair[1].x - pair[0].x < pitch.x - SAME);
        let under = joined(below.iter().map(|p| (p.x, p.x + size.x)).collect(), yard.tile.gap.x + 1e-6);
        let held = |u: f64| -> f64 {
            under.iter().map(|&(a, b)| ((u + size.x).min(b) - u.max(a)).max(0.0)).sum::<f64>() / size.x
        };
        if too_near || (n > 0 && line.iter().any(|p| held(p.x) < yard.rules.hooked - 1e-6)) {
            return None;
        }
        placed.extend(line.iter().enumerate().map(|(column, &p)| Placed {
            row: n,
            column,
            rect: Rect::at(p, size),
        }));
        below = line;
    }
    Some(placed)
}
