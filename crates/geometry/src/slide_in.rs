//! The shortest translation that brings a rectangle inside an outline.

use crate::{DVec2, Polygon, Rect, signed_area};

/// How far a rectangle may extend over a side and still count as inside, metres: far below measuring accuracy, far above
/// rounding.
const HAIR: f64 = 1e-7;

/// Whether a rectangle is entirely inside an outline and outside its holes; touching is allowed.
pub fn holds(outline: &Polygon, rect: Rect) -> bool {
    let inside = rect.grown(-HAIR);
    inside.size().min_element() > 0.0
        && outline.sides().all(|(_, _, a, b)| !passes_through(a, b, inside))
        && outline.contains(rect.centre())
}

/// The shortest translation, metres, after which an outline [`holds`] a rectangle; zero if it already does, `None` if it fits
/// nowhere.
///
/// The feasible translations are bounded by lines: along each side of the outline a corner of the rectangle touches it, and at
/// each re-entrant corner a side of the rectangle touches that. The shortest one is zero, the foot of the perpendicular on such a
/// line, or an intersection of two.
pub fn slide_in(outline: &Polygon, rect: Rect) -> Option<DVec2> {
    if holds(outline, rect) {
        return Some(DVec2::ZERO);
    }
    let lines = lines(&outline.oriented(), rect);
    let feet = lines.iter().map(|line| line.way * line.at);
    let crossings = lines.iter().enumerate().flat_map(|(nth, one)| {
        lines.iter().skip(nth + 1).filter_map(move |other| {
            let turn = one.way.perp_dot(other.way);
            let cross = DVec2::new(
                one.at * other.way.y - other.at * one.way.y,
                one.way.x * other.at - other.way.x * one.at,
            );
            (turn.abs() > 1e-9).then(|| cross / turn)
        })
    });
    let mut shifts: Vec<DVec2> = feet.chain(crossings).filter(|by| by.is_finite()).collect();
    shifts.sort_by(|a, b| a.length_squared().total_cmp(&b.length_squared()));
    shifts.into_iter().find(|by| holds(outline, rect.moved(*by)))
}

/// The translations `by` with `way · by = at`; `way` is a unit vector.
struct Line {
    way: DVec2,
    at: f64,
}

fn lines(outline: &Polygon, rect: Rect) -> Vec<Line> {
    let corners = rect.corners();
    let mut lines = Vec::new();
    for ring in outline.rings() {
        // Outlines run counter-clockwise and holes clockwise: the inside is to the left.
        let before = ring.iter().cycle().skip(ring.len().saturating_sub(1));
        for ((&a, &b), &from) in ring.iter().zip(ring.iter().cycle().skip(1)).zip(before) {
            let Some(way) = (b - a).try_normalize().map(DVec2::perp) else { continue };
            let least = corners.iter().map(|corner| way.dot(*corner)).fold(f64::INFINITY, f64::min);
            lines.push(Line { way, at: way.dot(a) - least });
            if signed_area(&[from, a, b]) < 0.0 {
                lines.extend([rect.min.x, rect.max.x].map(|x| Line { way: DVec2::X, at: a.x - x }));
                lines.extend([rect.min.y, rect.max.y].map(|y| Line { way: DVec2::Y, at: a.y - y }));
            }
        }
    }
    lines
}

/// Whether a segment passes through a rectangle.
fn passes_through(a: DVec2, b: DVec2, rect: Rect) -> bool {
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    let way = b - a;
    for (start, along, low, high) in
        [(a.x, way.x, rect.min.x, rect.max.x), (a.y, way.y, rect.min.y, rect.max.y)]
    {
        if along == 0.0 {
            if start <= low || start >= high {
                return false;
            }
            continue;
        }
        let (one, other) = ((low - start) / along, (high - start) / along);
        from = from.max(one.min(other));
        to = to.min(one.max(other));
    }
    from < to
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dvec2;

    fn outline(corners: &[(f64, f64)]) -> Polygon {
        Polygon::new(corners.iter().map(|&(x, y)| dvec2(x, y)).collect())
    }

    fn at(x: f64, y: f64, width: f64, height: f64) -> Rect {
        Rect::at(dvec2(x, y), dvec2(width, height))
    }

    fn near(got: Option<DVec2>, want: (f64, f64)) {
        let got = got.unwrap();
        assert!(got.distance(dvec2(want.0, want.1)) < 1e-6, "{got} is not {want:?}");
    }

    #[test]
    fn a_rectangle_inside_stays() {
        let square = outline(&[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]);
        near(slide_in(&square, at(0.0, 3.0, 2.0, 2.0)), (0.0, 0.0));
        near(slide_in(&square, at(9.0, -1.0, 2.0, 2.0)), (-1.0, 1.0));
        assert_eq!(slide_in(&square, at(0.0, 0.0, 10.5, 2.0)), None);
    }

    /// On a hip face a rectangle that crosses the hip moves square to it: by hand for sides at 45°.
    #[test]
    fn across_a_hip_it_moves_square_to_the_hip() {
        let hip = outline(&[(0.0, 0.0), (20.0, 0.0), (10.0, 10.0)]);
        // The corner (2, 4) is √2 beyond the line y = x.
        near(slide_in(&hip, at(2.0, 2.0, 2.0, 2.0)), (1.0, -1.0));
    }

    #[test]
    fn around_an_inner_corner_it_takes_the_shorter_way() {
        let ell = outline(&[(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (4.0, 4.0), (4.0, 10.0), (0.0, 10.0)]);
        near(slide_in(&ell, at(3.5, 3.0, 2.0, 2.0)), (0.0, -1.0));
        near(slide_in(&ell, at(2.5, 5.0, 2.0, 2.0)), (-0.5, 0.0));
    }

    #[test]
    fn it_leaves_a_hole_by_the_nearest_side() {
        let mut court = outline(&[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]);
        court.holes.push([(4.0, 4.0), (6.0, 4.0), (6.0, 6.0), (4.0, 6.0)].map(|(x, y)| dvec2(x, y)).to_vec());
        near(slide_in(&court, at(4.5, 2.5, 1.0, 2.0)), (0.0, -0.5));
        near(slide_in(&court, at(4.25, 4.25, 1.0, 1.0)), (-1.25, 0.0));
    }

    /// No feasible translation on a fine grid is shorter, on random stars and rectangles.
    #[test]
    fn no_shorter_shift_is_feasible() {
        let mut seed = 7_u64;
        let mut chance = || {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (seed >> 33) as f64 / f64::from(1_u32 << 31)
        };
        let mut moved = 0;
        for _ in 0..60 {
            let star: Vec<DVec2> = (0..7)
                .map(|nth| DVec2::from_angle(f64::from(nth) * 0.897_6) * (2.0 + 4.0 * chance()))
                .collect();
            let star = Polygon::new(star);
            let rect = at(chance() * 8.0 - 4.0, chance() * 8.0 - 4.0, 0.3 + chance(), 0.3 + chance());
            let found = slide_in(&star, rect);
            let steps =
                (-60..=60).flat_map(|x| (-60..=60).map(move |y| dvec2(f64::from(x), f64::from(y)) * 0.1));
            let least = steps
                .filter(|by| holds(&star, rect.moved(*by)))
                .map(DVec2::length)
                .fold(f64::INFINITY, f64::min);
            let Some(found) = found else {
                assert!(least.is_infinite(), "it fits at {least} and nothing was found");
                continue;
            };
            assert!(holds(&star, rect.moved(found)));
            assert!(found.length() <= least + 1e-6, "{} where {least} will do", found.length());
            moved += usize::from(found.length() > 0.0);
        }
        assert!(moved > 20, "only {moved} had to move");
    }
}
