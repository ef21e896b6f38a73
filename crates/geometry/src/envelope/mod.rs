//! The upper envelope of intersecting roofs: what is visible from above.
//!
//! Each part of a house contributes the faces of its own roof. Over every plan point the highest face is visible; where two faces
//! intersect there is a valley (or a hip), where one ends above another there is a wall.
//!
//! - `overlay` subdivides the plan into cells by all borders and by all lines where planes intersect
//! - this module assigns each cell its highest face and merges the cells of one face
//!
//! Each line between two pieces is on the border of both with the same nodes, so the pieces tile the ground covered by any part:
//! no area is lost or counted twice. What lies under the eaves of a higher part is hidden.

mod overlay;
#[cfg(test)]
mod tests;

use crate::rings::{Sets, chain, parts, tidy};
use crate::roof::free_kind;
use crate::{EdgeKind, Plane, Polygon, Rect, Tolerances};
use chalkcourse_words::later as words;
use glam::DVec2;
use overlay::Overlay;
use std::collections::{BTreeMap, HashMap};

/// Points closer than this, in metres, coincide: far below building accuracy, far above rounding.
const NEAR: f64 = 1e-6;

/// A face of one part.
#[derive(Clone, Debug, PartialEq)]
pub struct Surface {
    /// Index of the part: faces of one part never hide each other.
    pub part: usize,
    /// In plan, free of defects.
    pub outline: Polygon,
    /// Its plane.
    pub plane: Plane,
    /// False for something that rises through the roof but is not roof, such as the top of a chimney.
    pub deck: bool,
}

/// A visible piece of a face.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// Indices of its surfaces, lowest first: one, or several that are coplanar.
    pub surfaces: Vec<usize>,
    /// In plan: counter-clockwise, holes clockwise.
    pub outline: Polygon,
    /// Edge kinds that follow from the parts and can't be derived from the faces alone: a low wall, which would look like a
    /// height error, and the walls of non-deck surfaces. By ring and corner.
    pub kinds: BTreeMap<(usize, usize), EdgeKind>,
}

/// Why no envelope was found.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{}", words::roof::roofs_cant_be_told_apart(&format_args!("{:.3}", .near.x), &format_args!("{:.3}", .near.y)))]
pub struct Tangle {
    /// Where.
    pub near: DVec2,
}

/// The visible pieces of some surfaces, in the order of their first surface; non-deck surfaces are left out.
///
/// Corners closer than `tolerances.corner` are merged; a thinner piece is dropped.
///
/// # Errors
/// [`Tangle`] if rounding leaves no result that tiles the ground.
pub fn envelope(surfaces: &[Surface], tolerances: Tolerances) -> Result<Vec<Piece>, Tangle> {
    let mut pieces = Vec::new();
    for group in groups(surfaces) {
        let one_part = group.iter().all(|&i| surfaces[i].part == surfaces[group[0]].part);
        if one_part {
            pieces.extend(group.iter().filter(|&&i| surfaces[i].deck).map(|&i| Piece {
                surfaces: vec![i],
                outline: surfaces[i].outline.oriented(),
                kinds: BTreeMap::new(),
            }));
            continue;
        }
        let members: Vec<&Surface> = group.iter().map(|&i| &surfaces[i]).collect();
        let mut answer = seen(&members, NEAR, tolerances);
        for near in [NEAR * 16.0, NEAR / 16.0, NEAR * 200.0] {
            answer = answer.or_else(|_| seen(&members, near, tolerances));
        }
        for mut piece in answer? {
            piece.surfaces.iter_mut().for_each(|index| *index = group[*index]);
            pieces.push(piece);
        }
    }
    pieces.sort_by(|a, b| a.surfaces.cmp(&b.surfaces));
    Ok(pieces)
}

/// Groups of surfaces whose grounds may overlap, part by part.
fn groups(surfaces: &[Surface]) -> Vec<Vec<usize>> {
    let mut bounds: BTreeMap<usize, Rect> = BTreeMap::new();
    for surface in surfaces {
        let Some(own) = surface.outline.bounds() else { continue };
        let all = bounds.entry(surface.part).or_insert(own);
        *all = Rect { min: all.min.min(own.min), max: all.max.max(own.max) };
    }
    let list: Vec<(usize, Rect)> = bounds.into_iter().collect();
    let mut sets = Sets::new(list.len());
    for (i, (_, one)) in list.iter().enumerate() {
        for (j, (_, two)) in list.iter().enumerate().skip(i + 1) {
            if one.overlap(two).min_element() > -0.01 {
                sets.join(i, j);
            }
        }
    }
    let flat = sets.flat();
    let group_of: HashMap<usize, usize> =
        list.iter().zip(flat).map(|((part, _), set)| (*part, set)).collect();
    let mut groups: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (index, surface) in surfaces.iter().enumerate() {
        if let Some(&set) = group_of.get(&surface.part) {
            groups.entry(set).or_default().push(index);
        }
    }
    groups.into_values().collect()
}

/// The top of a cell: the first surface there, and the first of all in its plane.
#[derive(Clone, Copy, PartialEq)]
struct Top {
    surface: usize,
    plane: usize,
}

fn seen(surfaces: &[&Surface], near: f64, tolerances: Tolerances) -> Result<Vec<Piece>, Tangle> {
    let planes = same_planes(surfaces, near);
    let overlay = Overlay::of(surfaces, &planes, near);
    let bounds: Vec<Option<Rect>> = surfaces.iter().map(|surface| surface.outline.bounds()).collect();
    let height = |i: usize, p: DVec2| surfaces[i].plane.height_at(p);
    let top_at = |p: DVec2| -> Option<Top> {
        let mut best: Option<Top> = None;
        for (i, surface) in surfaces.iter().enumerate() {
            let there = bounds[i].is_some_and(|b| p.cmpge(b.min).all() && p.cmple(b.max).all());
            if !there
                || best.is_some_and(|top| planes[i] == top.plane || height(i, p) <= height(top.surface, p))
            {
                continue;
            }
            if surface.outline.contains(p) {
                best = Some(Top { surface: i, plane: planes[i] });
            }
        }
        best
    };
    let tops: Vec<Option<Top>> = overlay.cells().map(top_at).collect();
    let left = |edge: usize| tops[overlay.cell_of(edge)];
    let plane_left = |edge: usize| left(edge).map(|top| top.plane);
    // A line with the same on both sides is not a roof line.
    let shown: Vec<usize> =
        (0..overlay.edges()).filter(|&edge| plane_left(edge) != plane_left(edge ^ 1)).collect();
    let straight = straightened(&overlay, &shown, plane_left, near);
    let mut borders: BTreeMap<usize, Vec<(usize, usize)>> = BTreeMap::new();
    let mut beside = Beside::new();
    for (from, to, edge) in straight {
        beside.insert((from, to), (left(edge), left(edge ^ 1)));
        if let Some(plane) = plane_left(edge) {
            borders.entry(plane).or_default().push((from, to));
        }
    }
    let plan = |node: usize| overlay.nodes[node];
    let mut found: Vec<(Vec<usize>, Vec<Vec<usize>>)> = Vec::new();
    let mut covered = 0.0;
    for (plane, border) in borders {
        for rings in parts(chain(border, plan), plan, 1e-6 * near).map_err(|near| Tangle { near })? {
            covered += area_of(&rings, plan);
            let mut of: Vec<usize> = rings
                .iter()
                .flat_map(|ring| (0..ring.len()).map(|i| (ring[i], ring[(i + 1) % ring.len()])))
                .filter_map(|side| beside.get(&side)?.0.map(|top| top.surface))
                .collect();
            of.sort_unstable();
            of.dedup();
            if surfaces[plane].deck && !of.is_empty() {
                found.push((of, rings));
            }
        }
    }
    let ground: f64 = overlay.ground(|cell| tops[cell].is_some());
    if (covered - ground).abs() > 1e-9 * ground.max(1.0) {
        return Err(Tangle { near: plan(0) });
    }
    let rings: Vec<&[Vec<usize>]> = found.iter().map(|(_, rings)| rings.as_slice()).collect();
    Ok(tidy(&overlay.nodes, &rings, tolerances.corner)
        .into_iter()
        .map(|(index, outline, corners)| {
            let of = found[index].0.clone();
            let kinds = kinds_of(&corners, &beside, surfaces, plan, tolerances);
            Piece { surfaces: of, outline, kinds }
        })
        .collect())
}

fn area_of(rings: &[Vec<usize>], plan: impl Fn(usize) -> DVec2) -> f64 {
    rings.iter().map(|ring| crate::signed_area(&ring.iter().map(|&n| plan(n)).collect::<Vec<_>>())).sum()
}

/// For each surface, the first one in the same plane. Deck and non-deck are never in the same plane.
fn same_planes(surfaces: &[&Surface], near: f64) -> Vec<usize> {
    let gradient = |s: &Surface| s.plane.downslope.unit() * s.plane.pitch.slope();
    let same = |a: &Surface, b: &Surface| {
        let away = a.plane.height_at(b.plane.datum.truncate()) - b.plane.datum.z;
        let spread = a.plane.datum.truncate().distance(b.plane.datum.truncate()).max(1.0);
        a.deck == b.deck && gradient(a).distance(gradient(b)) * spread <= 0.1 * near && away.abs() <= near
    };
    let mut first: Vec<usize> = Vec::with_capacity(surfaces.len());
    for (i, surface) in surfaces.iter().enumerate() {
        let known = (0..i).find(|&j| first[j] == j && same(surfaces[j], surface));
        first.push(known.unwrap_or(i));
    }
    first
}

/// Visible half-edges with the nodes removed where a line runs straight through: from, to, and a half-edge of the stretch.
fn straightened(
    overlay: &Overlay,
    shown: &[usize],
    plane_left: impl Fn(usize) -> Option<usize>,
    near: f64,
) -> Vec<(usize, usize, usize)> {
    let mut leaving: HashMap<usize, Vec<usize>> = HashMap::new();
    for &edge in shown {
        leaving.entry(overlay.from(edge)).or_default().push(edge);
    }
    // A node where exactly two visible lines meet in one direction is redundant.
    let runs_through = |node: usize| -> Option<[usize; 2]> {
        let &[a, b] = leaving.get(&node)?.as_slice() else { return None };
        let (p, q, r) = (overlay.nodes[overlay.to(a)], overlay.nodes[node], overlay.nodes[overlay.to(b)]);
        let along = (r - p).normalize_or_zero();
        let straight =
            (q - p).perp_dot(along).abs() <= near && (q - p).dot(along) > 0.0 && (r - q).dot(along) > 0.0;
        // The same two faces are beside both stretches.
        let alike = plane_left(a ^ 1) == plane_left(b) && plane_left(a) == plane_left(b ^ 1);
        (straight && alike).then_some([a, b])
    };
    let mut stretches = Vec::with_capacity(shown.len());
    for &first in shown {
        if runs_through(overlay.from(first)).is_some() {
            continue;
        }
        let mut at = first;
        let mut steps = 0;
        while let Some([a, b]) = runs_through(overlay.to(at)) {
            at = if a == at ^ 1 { b } else { a };
            steps += 1;
            if steps > shown.len() {
                break;
            }
        }
        stretches.push((overlay.from(first), overlay.to(at), first));
    }
    stretches
}

/// The tops to the left and right of a stretch, by its end nodes.
type Beside = HashMap<(usize, usize), (Option<Top>, Option<Top>)>;

/// Edge kinds that can't be derived from the faces alone.
fn kinds_of(
    corners: &[Vec<usize>],
    beside: &Beside,
    surfaces: &[&Surface],
    plan: impl Fn(usize) -> DVec2,
    tolerances: Tolerances,
) -> BTreeMap<(usize, usize), EdgeKind> {
    let mut kinds = BTreeMap::new();
    for (ring, nodes) in corners.iter().enumerate() {
        for (side, &from) in nodes.iter().enumerate() {
            let to = nodes[(side + 1) % nodes.len()];
            let Some(&(Some(own), Some(other))) = beside.get(&(from, to)) else { continue };
            let (own, other) = (surfaces[own.surface], surfaces[other.surface]);
            let (a, b) = (plan(from), plan(to));
            let gap = |p| other.plane.height_at(p) - own.plane.height_at(p);
            let (start, end) = (gap(a), gap(b));
            let (greatest, above) = (start.abs().max(end.abs()), start + end > 0.0);
            if greatest <= tolerances.height || (other.deck && greatest > tolerances.step) {
                continue;
            }
            let kind = if above { EdgeKind::WallLine } else { free_kind(&own.plane, (a, b), ring > 0) };
            kinds.insert((ring, side), kind);
        }
    }
    kinds
}
