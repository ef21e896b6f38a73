//! Finds what each side of a visible face borders: sides are matched by that, and not by position, when parts change.

use super::body::Body;
use super::surface::{Edge, Surface};
use crate::{Border, PartId, RoofPart};
use chalkcourse_geometry::{DVec2, Tolerances, distance_to_segment};
use std::collections::{BTreeSet, HashMap};
use std::sync::Arc;

/// Lines closer than this, in metres, coincide: twice the distance by which corners of pieces are merged.
const ALONG: f64 = 2e-3;

impl Edge {
    /// Whether part of a line lies on this edge, in its direction or, with `against`, in the opposite one.
    fn runs_along(&self, line: (DVec2, DVec2), against: bool) -> bool {
        let (a, b) = if against { (line.1, line.0) } else { line };
        let (c, d) = self.line;
        let far = |low: DVec2, high: DVec2, p: DVec2, q: DVec2| {
            p.min(q).cmpgt(high + ALONG).any() || p.max(q).cmplt(low - ALONG).any()
        };
        if far(c.min(d), c.max(d), a, b) {
            return false;
        }
        let unit = (d - c).normalize_or_zero();
        let (from, to) = ((a - c).dot(unit), (b - c).dot(unit));
        let (start, end) = (from.max(0.0), to.min(c.distance(d)));
        if end - start <= ALONG || to - from < 0.9 * a.distance(b) {
            return false;
        }
        let on = |t: f64| distance_to_segment(a.lerp(b, (t - from) / (to - from)), c, d) <= ALONG;
        on(start) && on(end)
    }
}

/// Sets what the sides of each piece border. `parts_of` has, for each piece, the parts whose faces are in it.
pub(super) fn find(
    pieces: &mut [Surface],
    parts_of: &[BTreeSet<PartId>],
    parts: &[RoofPart],
    bodies: &[Arc<Body>],
) {
    // Zero has two signs; normalise them.
    let of_line = |a: DVec2, b: DVec2| [a.x, a.y, b.x, b.y].map(|x| (x + 0.0).to_bits());
    let mut twins: HashMap<[u64; 4], usize> = HashMap::new();
    for (index, piece) in pieces.iter().enumerate() {
        twins.extend(piece.outline.sides().map(|(.., a, b)| (of_line(a, b), index)));
    }
    let edges: Vec<(PartId, Edge)> = parts
        .iter()
        .zip(bodies)
        .flat_map(|(part, body)| body.edges.iter().map(move |edge| (part.id, *edge)))
        .collect();
    let borders = pieces
        .iter()
        .zip(parts_of)
        .map(|(piece, own)| {
            let mut rings: Vec<Vec<Vec<Border>>> =
                piece.outline.rings().map(|ring| Vec::with_capacity(ring.len())).collect();
            for (ring, _, a, b) in piece.outline.sides() {
                let twin = twins.get(&of_line(b, a)).and_then(|&other| pieces.get(other));
                let list = of_side(piece, own, (a, b), twin, &edges, pieces);
                if let Some(ring) = rings.get_mut(ring) {
                    ring.push(list);
                }
            }
            rings
        })
        .collect::<Vec<_>>();
    for (piece, borders) in pieces.iter_mut().zip(borders) {
        piece.borders = borders;
    }
}

fn of_side(
    piece: &Surface,
    own: &BTreeSet<PartId>,
    line: (DVec2, DVec2),
    twin: Option<&Surface>,
    edges: &[(PartId, Edge)],
    pieces: &[Surface],
) -> Vec<Border> {
    let border = |&(part, edge): &(PartId, Edge)| Border::Edge { part, side: edge.side };
    let is_own = |part: &PartId| own.contains(part);
    let own_edges = edges.iter().filter(|(part, edge)| is_own(part) && edge.runs_along(line, false));
    let mut list: Vec<Border> = own_edges.map(border).collect();
    let others = || edges.iter().filter(|(_, edge)| edge.runs_along(line, true)).map(border);
    match twin {
        Some(twin) => {
            let gap = |p: DVec2| twin.plane.height_at(p) - piece.plane.height_at(p);
            let (start, end) = (gap(line.0), gap(line.1));
            if start.abs().max(end.abs()) <= Tolerances::default().height {
                list.push(Border::face(twin.from));
            } else if start + end > 0.0 {
                list.extend(others());
            }
            if list.is_empty() {
                list.push(Border::face(twin.from));
            }
        }
        None => {
            list.extend(others());
            if list.is_empty() {
                // The other face has different corners on this line.
                let out = (line.0 - line.1).perp().normalize_or_zero() * ALONG;
                let beyond = (line.0 + line.1) / 2.0 + out;
                let there = pieces.iter().find(|other| other.outline.contains(beyond));
                list.extend(there.map(|other| Border::face(other.from)));
            }
        }
    }
    list.sort_unstable();
    list.dedup();
    list
}
