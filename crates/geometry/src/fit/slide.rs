//! The shortest move of a group of rectangles after which none overlaps anything.
//!
//! Every rectangle forbids the moves that would bring it onto a border or a blocked shape: its forbidden positions
//! minus its current position. The remaining moves are cut into trapezoids, and the point in those closest to zero is
//! the result: exact, for moves in any direction.

use super::blocked::{foot_patches, patches};
use super::kernel::{Allowed, FitError, Tile, check};
use super::room::slabs;
use crate::Rect;
use glam::{DVec2, dvec2};

/// A part of what is moved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Its rectangle.
    pub rect: Rect,
    /// Whether it is in the lowest row, and has the [`Foot`](super::Foot).
    pub lowest: bool,
}

/// The shortest move after which each of `parts` fits; zero if all fit already; `None` if no move helps, or if `stop`
/// returned true before the end.
///
/// # Errors
/// An invalid part, tolerance or corner.
pub fn least_slide(
    allowed: &Allowed,
    parts: &[Part],
    stop: &dyn Fn() -> bool,
) -> Result<Option<DVec2>, FitError> {
    let corners = allowed.region.iter().flat_map(|shape| shape.outer.iter().copied());
    let Some(bounds) = Rect::around(corners) else { return Ok(None) };
    let t = allowed.tolerance;
    let (mut from, mut to) = (DVec2::splat(f64::NEG_INFINITY), DVec2::splat(f64::INFINITY));
    let mut forbidden = Vec::new();
    for Part { rect: part, lowest } in parts {
        if stop() {
            return Ok(None);
        }
        let tile = Tile { size: part.size(), gap: DVec2::ZERO };
        check(allowed, &tile)?;
        let mut least = bounds.min - t;
        let mut patches = patches(allowed, &tile, bounds);
        if let Some(foot) = allowed.foot.as_ref().filter(|_| *lowest) {
            least.y += foot.within.map_or(0.0, |_| foot.depth);
            patches.extend(foot_patches(allowed, foot, &tile, bounds));
        }
        from = from.max(least - part.min);
        to = to.min(bounds.max + t - part.max);
        forbidden.extend(patches.into_iter().map(|patch| patch.shifted(-part.min)));
    }
    if parts.is_empty() {
        return Ok(Some(DVec2::ZERO));
    }
    let mut best: Option<DVec2> = None;
    for slab in slabs(&forbidden, from.to_array(), to.to_array()) {
        for gap in &slab.gaps {
            let corners = [
                dvec2(gap.a[0], slab.lo),
                dvec2(gap.b[0], slab.lo),
                dvec2(gap.b[1], slab.hi),
                dvec2(gap.a[1], slab.hi),
            ];
            let nearest = nearest(&corners);
            if best.is_none_or(|best| nearest.length() < best.length()) {
                best = Some(nearest);
            }
        }
    }
    Ok(best)
}

/// The effect of rounding on twice the area over a side of zero length, in square metres.
const ROUNDING: f64 = 1e-10;

/// The point of a convex polygon, corners in order, that is nearest to the origin.
fn nearest(corners: &[DVec2; 4]) -> DVec2 {
    let sides = || (0..4).map(|i| (corners[i], corners[(i + 1) % 4]));
    // Where two patches cross, the upper or lower edge of a gap has no width, and rounding may reverse that side: its
    // sign means nothing, so it must not exclude the origin.
    if sides().all(|(a, b)| (b - a).perp_dot(-a) >= -ROUNDING) {
        return DVec2::ZERO;
    }
    let on_side = |(a, b): (DVec2, DVec2)| {
        let along = b - a;
        let share = if along.length_squared() > 0.0 {
            (-a.dot(along) / along.length_squared()).clamp(0.0, 1.0)
        } else {
            0.0
        };
        a + along * share
    };
    sides().map(on_side).fold(corners[0], |best, p| if p.length() < best.length() { p } else { best })
}

#[cfg(test)]
mod tests {
    use super::super::brute::{Dice, face, random_face, rectangle, stands};
    use super::super::kernel::{Constraint, FINE};
    use super::super::tests::never;
    use super::*;
    use crate::Polygon;

    fn slide(allowed: &Allowed, parts: &[Rect]) -> Option<DVec2> {
        let parts: Vec<Part> = parts.iter().map(|&rect| Part { rect, lowest: true }).collect();
        least_slide(allowed, &parts, &never).unwrap()
    }

    #[test]
    fn past_a_box_and_past_a_round_by_hand() {
        let mut allowed = face(rectangle(0.0, 0.0, 10.0, 6.0), vec![rectangle(4.0, 2.0, 1.0, 1.0)]);
        let part = Rect::at(dvec2(2.0, 1.5), dvec2(2.25, 1.2));
        let by = slide(&allowed, &[part]).unwrap();
        assert!(by.distance(dvec2(-0.25, 0.0)) < 1e-8, "{by}");
        // A corner 0.3 and 0.4 into a quarter of a large polygon around (5, 3) of radius 1: straight out along that
        // line.
        let turn = std::f64::consts::TAU / 720.0;
        let round = (0..720).map(|i| dvec2(5.0, 3.0) + DVec2::from_angle(turn * f64::from(i))).collect();
        allowed.blocked = vec![Constraint { id: 0, shape: Polygon::new(round) }];
        let corner = dvec2(5.0 - 0.3, 3.0 - 0.4);
        let part = Rect { min: corner - dvec2(1.0, 1.0), max: corner };
        let by = slide(&allowed, &[part]).unwrap();
        assert!((by.length() - 0.5).abs() < 1e-4 && by.distance(dvec2(-0.3, -0.4)) < 0.01, "{by}");
    }

    #[test]
    fn what_stands_stays_and_what_is_too_large_has_no_slide() {
        let allowed = face(rectangle(0.0, 0.0, 4.0, 3.0), vec![]);
        assert_eq!(slide(&allowed, &[Rect::at(dvec2(1.0, 1.0), dvec2(1.0, 1.0))]), Some(DVec2::ZERO));
        assert_eq!(slide(&allowed, &[Rect::at(dvec2(1.0, 1.0), dvec2(4.1, 1.0))]), None);
        assert_eq!(slide(&allowed, &[]), Some(DVec2::ZERO));
        let two = [Rect::at(dvec2(-9.0, 0.0), dvec2(1.0, 1.0)), Rect::at(dvec2(-5.5, 0.5), dvec2(1.0, 1.0))];
        assert_eq!(slide(&allowed, &two), None, "further apart than the face is wide");
    }

    #[test]
    fn no_sampled_slide_is_less_and_the_answer_stands() {
        let (mut found, mut none) = (0, 0);
        for seed in 1..400 {
            let mut dice = Dice::new(seed);
            let allowed = random_face(&mut dice, 7.0, 4.5);
            let size = dvec2(dice.between(0.4, 1.4), dice.between(0.4, 1.2));
            let at = dvec2(dice.between(-1.0, 6.0), dice.between(-1.0, 4.0));
            let parts: Vec<Rect> = (0..1 + dice.below(3))
                .map(|k| Rect::at(at + dvec2(k as f64 * 0.2, k as f64 * (size.y + 0.01)), size))
                .collect();
            let by = slide(&allowed, &parts);
            let stand = |by: DVec2, slack: f64| {
                parts.iter().all(|part| {
                    let tile = Tile { size: part.size(), gap: DVec2::ZERO };
                    stands(&allowed, &tile, part.min + by, slack)
                })
            };
            let reach = by.map_or(8.0, |by| by.length());
            if let Some(by) = by {
                found += 1;
                assert!(stand(by, FINE * 2.0), "seed {seed}: {by}");
            } else {
                none += 1;
            }
            for _ in 0..40 {
                let way = DVec2::from_angle(dice.between(0.0, std::f64::consts::TAU));
                let tried = way * (reach - 1e-7) * dice.between(0.0, 1.0).sqrt();
                assert!(reach < 1e-6 || !stand(tried, FINE), "seed {seed}: {tried} stands, found {by:?}");
            }
        }
        assert!(found > 200 && none > 20, "{found} found, {none} without");
    }
}
