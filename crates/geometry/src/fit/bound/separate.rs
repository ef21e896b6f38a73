//! Finding cliques that hold more than 1 of weighted positions.

use super::clique::Clique;
use super::coverage::Hole;
use super::field::Field;
use glam::{DVec2, dvec2};

/// Cliques that exceed 1 by this much count.
const TOO_MUCH: f64 = 1e-5;

/// Positions whose v differ by less (metres) share a window of a leaning clique.
const SAME_LEVEL: f64 = 1e-6;

/// Points covered by modules with a total above 1; up to four points for the same positions.
pub(super) fn boxes(field: &Field, weighed: &[(&Hole, f64)]) -> Vec<Clique> {
    let mut found: Vec<(f64, Vec<usize>)> = Vec::new();
    let foot = |p: &Hole| p.at.y - field.kinds.get(p.kind).map_or(0.0, |kind| kind.drop);
    for row in weighed.iter().map(|(p, _)| foot(p)) {
        let band: Vec<usize> = (0..weighed.len())
            .filter(|&i| {
                let (p, _) = weighed[i];
                foot(p) <= row && row < p.at.y + reach(field, p).y
            })
            .collect();
        for &left in &band {
            let u = weighed[left].0.at.x;
            let members: Vec<usize> = band
                .iter()
                .copied()
                .filter(|&i| {
                    let (p, _) = weighed[i];
                    p.at.x <= u && u < p.at.x + reach(field, p).x
                })
                .collect();
            let weight: f64 = members.iter().map(|&i| weighed[i].1).sum();
            if weight > 1.0 + TOO_MUCH {
                found.push((weight, members));
            }
        }
    }
    found.sort_by(|p, q| q.0.total_cmp(&p.0).then_with(|| p.1.cmp(&q.1)));
    found.dedup();
    let mut cliques: Vec<Clique> = Vec::new();
    for (_, members) in found.iter().take(40) {
        let holes: Vec<&Hole> = members.iter().map(|&i| weighed[i].0).collect();
        for point in corners(field, &holes) {
            let clique = Clique::over(field, point);
            if !cliques.contains(&clique) {
                cliques.push(clique);
            }
        }
    }
    cliques
}

fn reach(field: &Field, hole: &Hole) -> DVec2 {
    field.kinds.get(hole.kind).map_or(DVec2::ZERO, |kind| kind.reach)
}

/// Points that all of some modules cover: as far left, right, down and up as possible to include what is next to them.
fn corners(field: &Field, holes: &[&Hole]) -> Vec<DVec2> {
    let span = |axis: usize| -> [f64; 2] {
        let over = |f: &dyn Fn(&Hole) -> f64, start: f64, pick: fn(f64, f64) -> f64| {
            holes.iter().map(|hole| f(hole)).fold(start, pick)
        };
        let drop = |hole: &Hole| field.kinds.get(hole.kind).map_or(0.0, |kind| kind.drop * axis as f64);
        // Lower sides belong to a clique, upper ones don't.
        let least = over(&|h| h.at[axis] - drop(h), f64::NEG_INFINITY, f64::max) + 1e-9;
        let most = over(&|h| h.at[axis] + reach(field, h)[axis], f64::INFINITY, f64::min);
        let low = over(&|h| h.bounds.min[axis] + reach(field, h)[axis], f64::INFINITY, f64::min);
        let high = over(&|h| h.bounds.max[axis] - drop(h), f64::NEG_INFINITY, f64::max);
        [low.clamp(least.min(most), most), high.clamp(least.min(most), most)]
    };
    let (us, vs) = (span(0), span(1));
    let mut points = Vec::new();
    for u in us {
        for v in vs {
            points.push(dvec2(u, v));
        }
    }
    points
}

/// For one size: bands one reach high in which the windows, one per level, as wide as the reach and shifted by at most
/// the lean, hold more than 1 in total.
pub(super) fn leaning(field: &Field, weighed: &[(&Hole, f64)]) -> Vec<Clique> {
    let Some(of) = field.kinds.first().map(|kind| kind.reach) else { return Vec::new() };
    let lean = field.lean;
    let mut found: Vec<(f64, Clique)> = Vec::new();
    for &(anchor, _) in weighed {
        let foot = anchor.at.y;
        let mut band: Vec<&(&Hole, f64)> =
            weighed.iter().filter(|(p, _)| foot <= p.at.y && p.at.y < foot + of.y).collect();
        band.sort_by(|(p, _), (q, _)| p.at.y.total_cmp(&q.at.y).then(p.at.x.total_cmp(&q.at.x)));
        let levels: Vec<&[&(&Hole, f64)]> = band.chunk_by(|p, q| q.0.at.y - p.0.at.y < SAME_LEVEL).collect();
        let starts = band.iter().flat_map(|(p, _)| [p.at.x, p.at.x - lean]);
        let mut best: Option<(f64, f64)> = None;
        for start in starts {
            let weight: f64 = levels.iter().map(|level| window(level, start, lean, of.x).0).sum();
            if weight > 1.0 + TOO_MUCH && best.is_none_or(|(most, _)| weight > most + 1e-9) {
                best = Some((weight, start));
            }
        }
        let Some((weight, start)) = best else { continue };
        let mut parts: Vec<(f64, f64)> = Vec::new();
        let mut below = foot;
        for level in levels {
            let Some((p, _)) = level.first() else { continue };
            let (_, at) = window(level, start, lean, of.x);
            parts.push((if parts.is_empty() { foot } else { (below + p.at.y) / 2.0 }, at));
            below = p.at.y;
        }
        found.push((weight, Clique::leaning(field, &parts, foot + of.y)));
    }
    found.sort_by(|p, q| q.0.total_cmp(&p.0));
    let mut cliques: Vec<Clique> = Vec::new();
    for (_, clique) in found {
        if !cliques.contains(&clique) {
            cliques.push(clique);
        }
    }
    cliques
}

/// The heaviest window on a level that begins between `start` and `start + lean`: its weight and where it begins.
fn window(level: &[&(&Hole, f64)], start: f64, lean: f64, width: f64) -> (f64, f64) {
    let begins = level.iter().map(|p| p.0.at.x).filter(|&u| start <= u && u <= start + lean);
    let mut best = (0.0, start);
    for begin in begins.chain([start, start + lean]) {
        let weight: f64 =
            level.iter().filter(|p| begin <= p.0.at.x && p.0.at.x < begin + width).map(|p| p.1).sum();
        if weight > best.0 {
            best = (weight, begin);
        }
    }
    best
}
