//! Decomposes shapes into convex pieces: trapezoids with horizontal sides, of the inside or the outside of rings.

use crate::{Polygon, signed_area};
use glam::{DVec2, dvec2};

/// Convex pieces of a blocked shape; a shape without area blocks as the line or point that it is.
pub(crate) fn convex_pieces(shape: &Polygon, tolerance: f64) -> Vec<Vec<DVec2>> {
    let flat = signed_area(&shape.outer).abs() <= tolerance * tolerance;
    if shape.outer.is_empty() || (shape.holes.is_empty() && (flat || is_convex(&shape.outer))) {
        return vec![shape.outer.clone()];
    }
    let sides: Vec<_> = shape.oriented().sides().map(|(_, _, a, b)| (a, b)).collect();
    trapezoids(&sides, None, tolerance)
}

fn is_convex(ring: &[DVec2]) -> bool {
    let n = ring.len();
    let side = |i: usize| ring[(i + 1) % n] - ring[i % n];
    let sign = signed_area(ring).signum();
    let turns = (0..n).all(|i| side(i).perp_dot(side(i + 1)) * sign >= 0.0);
    // A star polygon turns one way too, but goes up and down more than once.
    let rising: Vec<bool> = (0..n).map(side).filter(|s| s.y != 0.0).map(|s| s.y > 0.0).collect();
    let changes = (0..rising.len()).filter(|&i| rising[i] != rising[(i + 1) % rising.len()]).count();
    turns && changes <= 2
}

/// Decomposes the inside of oriented rings into trapezoids with horizontal sides, or, with `outside` (minimum and maximum u), the
/// outside between those limits. Anything narrower than the tolerance throughout is left out.
pub(crate) fn trapezoids(
    sides: &[(DVec2, DVec2)],
    outside: Option<(f64, f64)>,
    tolerance: f64,
) -> Vec<Vec<DVec2>> {
    let mut levels: Vec<f64> = sides.iter().map(|s| s.0.y).collect();
    levels.sort_unstable_by(f64::total_cmp);
    levels.dedup();
    let mut cutter = Cutter { sides, outside, tolerance, open: Vec::new(), done: Vec::new() };
    for pair in levels.windows(2) {
        cutter.band(pair[0], pair[1], 0);
    }
    cutter.close_all();
    cutter.done
}

struct Cutter<'a> {
    sides: &'a [(DVec2, DVec2)],
    outside: Option<(f64, f64)>,
    tolerance: f64,
    /// Trapezoids still growing upwards: left side, right side (`None`: the limit), from, to.
    open: Vec<(Option<usize>, Option<usize>, f64, f64)>,
    done: Vec<Vec<DVec2>>,
}

impl Cutter<'_> {
    fn u_at(&self, side: Option<usize>, v: f64, limit: f64) -> f64 {
        let Some(&(a, b)) = side.and_then(|s| self.sides.get(s)) else { return limit };
        if v == a.y {
            a.x
        } else if v == b.y {
            b.x
        } else {
            a.x + (b.x - a.x) * ((v - a.y) / (b.y - a.y))
        }
    }

    fn band(&mut self, lo: f64, hi: f64, depth: usize) {
        if hi - lo <= 1e-12 {
            return;
        }
        let mut order: Vec<(f64, usize)> = Vec::new();
        for (i, &(a, b)) in self.sides.iter().enumerate() {
            if a.y.min(b.y) <= lo && a.y.max(b.y) >= hi {
                order.push((self.u_at(Some(i), (lo + hi) / 2.0, 0.0), i));
            }
        }
        order.sort_unstable_by(|p, q| p.0.total_cmp(&q.0));
        for pair in order.windows(2) {
            let (i, j) = (Some(pair[0].1), Some(pair[1].1));
            let low = self.u_at(j, lo, 0.0) - self.u_at(i, lo, 0.0);
            let high = self.u_at(j, hi, 0.0) - self.u_at(i, hi, 0.0);
            if depth < 40 && low.min(high) < -1e-12 {
                // These two cross within the band: split it there, and nothing crosses within the parts.
                let at = lo + (hi - lo) * (low / (low - high)).clamp(0.0, 1.0);
                if at - lo > 1e-12 && hi - at > 1e-12 {
                    self.band(lo, at, depth + 1);
                    self.band(at, hi, depth + 1);
                    return;
                }
            }
        }
        let mut winding = 0;
        let mut left: Option<usize> = None;
        let mut found = Vec::new();
        for &(_, i) in &order {
            let was_inside = if self.outside.is_some() { winding > 0 } else { winding != 0 };
            winding += if self.sides[i].0.y > self.sides[i].1.y { 1 } else { -1 };
            let is_inside = if self.outside.is_some() { winding > 0 } else { winding != 0 };
            if was_inside != is_inside {
                if was_inside != self.outside.is_some() {
                    found.push((left, Some(i)));
                }
                left = Some(i);
            }
        }
        if self.outside.is_some() {
            found.push((left, None));
        }
        self.grow(&found, lo, hi);
    }

    fn grow(&mut self, found: &[(Option<usize>, Option<usize>)], lo: f64, hi: f64) {
        let mut next = Vec::with_capacity(found.len());
        for &(left, right) in found {
            let below = self.open.iter().position(|o| (o.0, o.1) == (left, right) && lo - o.3 <= 1e-12);
            let from = below.map_or(lo, |i| self.open.swap_remove(i).2);
            next.push((left, right, from, hi));
        }
        self.close_all();
        self.open = next;
    }

    fn close_all(&mut self) {
        let (least, greatest) = self.outside.unwrap_or((0.0, 0.0));
        for (left, right, lo, hi) in std::mem::take(&mut self.open) {
            let corners = [
                dvec2(self.u_at(left, lo, least), lo),
                dvec2(self.u_at(right, lo, greatest), lo),
                dvec2(self.u_at(right, hi, greatest), hi),
                dvec2(self.u_at(left, hi, least), hi),
            ];
            let width = (corners[1].x - corners[0].x).max(corners[2].x - corners[3].x);
            if width > self.tolerance && hi - lo > self.tolerance {
                self.done.push(corners.to_vec());
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shape(points: &[(f64, f64)]) -> Polygon {
        Polygon::new(points.iter().map(|&(x, y)| dvec2(x, y)).collect())
    }

    #[test]
    fn pieces_have_the_area_of_the_shape() {
        let mut notched = shape(&[(0.0, 0.0), (6.0, 0.0), (6.0, 5.0), (3.0, 2.0), (0.0, 5.0)]);
        notched.holes.push(shape(&[(2.0, 0.5), (3.0, 0.6), (2.5, 1.5)]).outer);
        let area: f64 = convex_pieces(&notched, 1e-9).iter().map(|p| signed_area(p).abs()).sum();
        assert!((area - notched.area()).abs() < 1e-12, "{area}");
        assert_eq!(convex_pieces(&shape(&[(0.0, 0.0), (1.0, 0.0), (0.0, 1.0)]), 1e-9).len(), 1);
    }

    #[test]
    fn a_star_is_not_taken_for_convex() {
        let star: Vec<DVec2> =
            (0..5).map(|i| DVec2::from_angle(std::f64::consts::TAU * 0.4 * f64::from(i))).collect();
        assert!(!is_convex(&star));
    }
}
