use super::front::{Front, Stuck};
use super::lines::Setup;
use super::{Footprint, Raised, RaisedFace, SideRef, Stands, Treatment};
use crate::rings::{Sets, chain, parts};
use crate::{Azimuth, Plane, Polygon};
use glam::DVec2;

/// Chains the traces of the water line into faces, and checks them. Every trace is on the border of the face to its left in one
/// direction and of the face to its right in the other; so the faces' winding numbers add up to the ground's own, and faces that
/// are simple and counter-clockwise tile it: nothing else needs to be proved.
pub(super) fn build(front: &Front, setup: &Setup, footprint: &Footprint) -> Result<Raised, Stuck> {
    let place = merge_nodes(front);
    let group = group_lines(front);
    let mut borders: Vec<Vec<(usize, usize)>> = vec![Vec::new(); front.lines.len()];
    let mut add = |line: usize, from: usize, to: usize| {
        if place[from] != place[to] {
            borders[group[line]].push((place[from], place[to]));
        }
    };
    for foot in &front.feet {
        add(foot.line, foot.from, foot.to);
    }
    for arc in &front.arcs {
        let (left, right) = (arc.left.map(|line| group[line]), arc.right.map(|line| group[line]));
        if left == right {
            continue;
        }
        if let Some(line) = arc.left {
            add(line, arc.from, arc.to);
        }
        if let Some(line) = arc.right {
            add(line, arc.to, arc.from);
        }
    }
    let mut raised = Raised { outline: setup.ground(), ..Raised::default() };
    let mut number: Vec<Option<usize>> = vec![None; front.nodes.len()];
    for (line, border) in borders.into_iter().enumerate().filter(|(_, border)| !border.is_empty()) {
        let mut sides: Vec<SideRef> =
            (0..front.lines.len()).filter(|&l| group[l] == line).map(|l| front.lines[l].owner).collect();
        sides.sort_unstable();
        sides.dedup();
        let Some(plane) = plane_of(sides[0], footprint, front.lines[line].normal) else { continue };
        let plan = |node: usize| front.nodes[node].plan;
        let outlines =
            parts(chain(border, plan), plan, 1e-6 * front.near).map_err(|at| Stuck::Knot { at })?;
        for rings in outlines {
            check(&rings, front, &plane, setup.centre)?;
            let corners: Vec<Vec<usize>> = rings
                .iter()
                .map(|ring| {
                    ring.iter()
                        .map(|&node| {
                            *number[node].get_or_insert_with(|| {
                                let plan = front.nodes[node].plan + setup.centre;
                                raised.nodes.push(plan.extend(front.nodes[node].height));
                                raised.nodes.len() - 1
                            })
                        })
                        .collect()
                })
                .collect();
            let mut outlines =
                corners.iter().map(|ring| ring.iter().map(|&n| raised.nodes[n].truncate()).collect());
            let outline = Polygon { outer: outlines.next().unwrap_or_default(), holes: outlines.collect() };
            raised.faces.push(RaisedFace { sides: sides.clone(), outline, corners, plane });
        }
    }
    raised.faces.sort_by_key(|face| face.sides[0]);
    let missing = (raised.plan_area() - raised.outline.area()).abs();
    if missing > 1e-9 * raised.outline.area() {
        return Err(Stuck::Knot { at: DVec2::ZERO });
    }
    raised.ground = stands(front, setup, footprint);
    Ok(raised)
}

/// For each node, the representative of all nodes at the same spot, preferably a corner of the ground.
fn merge_nodes(front: &Front) -> Vec<usize> {
    let mut sets = Sets::new(front.nodes.len());
    // A corner that stood still while the water rose has two heights: nodes on no face's border are not merged.
    for arc in front.arcs.iter().filter(|arc| arc.left.is_some() || arc.right.is_some()) {
        if front.nodes[arc.from].plan.distance_squared(front.nodes[arc.to].plan) <= front.near * front.near {
            sets.join(arc.from, arc.to);
        }
    }
    sets.flat()
}

/// For each line, the first one with the same plane whose face is joined to its own.
fn group_lines(front: &Front) -> Vec<usize> {
    let mut sets = Sets::new(front.lines.len());
    for arc in &front.arcs {
        if let (Some(left), Some(right)) = (arc.left, arc.right)
            && left != right
            && front.lines[left].same_plane(&front.lines[right], front.near)
        {
            sets.join(left, right);
        }
    }
    sets.flat()
}

fn plane_of(at: SideRef, footprint: &Footprint, normal: DVec2) -> Option<Plane> {
    let side = footprint.sides.get(at.ring)?.get(at.side)?;
    let Treatment::Slope(pitch) = side.treatment else { return None };
    let corners = footprint.outline.rings().nth(at.ring)?;
    let datum = corners.get(at.side)?.extend(side.eave_height);
    // An azimuth in degrees loses the last digits of a direction; the four cardinal directions stay exact.
    let downslope = Azimuth::of(-normal);
    Some(Plane { datum, pitch, downslope })
}

/// Tolerance of a corner from the plane of its face, in metres.
const OFF_PLANE: f64 = 1e-6;

/// Checks that a face is simple and lies on its plane.
fn check(rings: &[Vec<usize>], front: &Front, plane: &Plane, centre: DVec2) -> Result<(), Stuck> {
    for &node in rings.iter().flatten() {
        let node = front.nodes[node];
        if (plane.height_at(node.plan + centre) - node.height).abs() > OFF_PLANE {
            return Err(Stuck::Knot { at: node.plan });
        }
    }
    let mut sides: Vec<(usize, usize)> = rings
        .iter()
        .flat_map(|ring| (0..ring.len()).map(|i| (ring[i], ring[(i + 1) % ring.len()])))
        .collect();
    let plan = |node: usize| front.nodes[node].plan;
    let left = |side: &(usize, usize)| plan(side.0).x.min(plan(side.1).x);
    sides.sort_by(|a, b| left(a).total_cmp(&left(b)));
    for (i, one) in sides.iter().enumerate() {
        let right = plan(one.0).x.max(plan(one.1).x);
        for two in sides[i + 1..].iter().take_while(|two| left(two) <= right) {
            let shared = one.0 == two.0 || one.0 == two.1 || one.1 == two.0 || one.1 == two.1;
            if !shared && let Some(at) = cross(plan(one.0), plan(one.1), plan(two.0), plan(two.1), front.near)
            {
                return Err(Stuck::Knot { at });
            }
        }
    }
    Ok(())
}

/// Where two sides cross, each extending past the other by more than `near`.
fn cross(a: DVec2, b: DVec2, c: DVec2, d: DVec2, near: f64) -> Option<DVec2> {
    let beside = |p: DVec2, q: DVec2, r: DVec2| (q - p).normalize_or_zero().perp_dot(r - p);
    let (c_off, d_off) = (beside(a, b, c), beside(a, b, d));
    let (a_off, b_off) = (beside(c, d, a), beside(c, d, b));
    let clear = |p: f64, q: f64| p * q < 0.0 && p.abs().min(q.abs()) > 4.0 * near;
    (clear(c_off, d_off) && clear(a_off, b_off)).then(|| c.lerp(d, c_off / (c_off - d_off)))
}

fn stands(front: &Front, setup: &Setup, footprint: &Footprint) -> Vec<Vec<Stands>> {
    let is_wall = |at: SideRef| footprint.sides[at.ring][at.side].treatment == Treatment::Wall;
    let on_line = |line: usize| {
        let on = front.lines[line].owner;
        Stands { on, wall: front.lines[line].run == 0.0 && is_wall(on) }
    };
    setup.rings.iter().map(|ring| ring.iter().map(|start| on_line(start.line)).collect()).collect()
}
