//! Candidates of a label, best first. They depend on its thing alone, except for what is outside the drawing.

use crate::{Anchor, How, Placed, Try};
use chalkcourse_geometry::{DVec2, Rect, dvec2};

/// Offsets along a line to try, as fractions of it, from the preferred position.
const SLIDES: [f64; 9] = [0.0, -0.12, 0.12, -0.24, 0.24, -0.34, 0.34, -0.42, 0.42];
/// Margin of a label at each end of its line.
const ENDS: f64 = 3.0;
/// Grid steps within a shape, along its longer side.
const NET: u32 = 9;
/// Leader directions to try, in sixteenths of a turn from the best.
const FAN: [f64; 15] = [0.0, 1.0, -1.0, 2.0, -2.0, 3.0, -3.0, 4.0, -4.0, 5.0, -5.0, 6.0, -6.0, 7.0, -7.0];
/// Number of leader lengths to try.
const REACHES: u32 = 6;

/// Rotation of text along a line, never upside down.
pub fn upright(along: DVec2) -> f64 {
    let turn = along.y.atan2(along.x);
    let quarter = std::f64::consts::FRAC_PI_2;
    if turn > quarter + 1e-6 {
        turn - 2.0 * quarter
    } else if turn < -quarter + 1e-6 {
        turn + 2.0 * quarter
    } else {
        turn
    }
}

/// Extent of a rotated rectangle from its centre in a unit direction.
fn reach(half: DVec2, turn: f64, way: DVec2) -> f64 {
    let along = DVec2::from_angle(turn);
    half.x * along.dot(way).abs() + half.y * along.perp().dot(way).abs()
}

/// Calls `taken` for each candidate until it returns true.
pub(crate) fn each(
    anchor: &Anchor,
    look: &Try,
    nth: usize,
    clip: &Rect,
    mut taken: impl FnMut(Placed) -> bool,
) -> bool {
    let half = look.size / 2.0;
    let mut spot = |at: DVec2, turn: f64| taken(Placed { at, turn, half, nth, leader: None });
    match (anchor, look.how) {
        (Anchor::Fixed(at), How::Home | How::Overhanging) => spot(*at, 0.0),
        (Anchor::Fixed(at), How::Leader(most)) => {
            with_leader(half, nth, *at, dvec2(0.0, 1.0), most, |_| *at, &mut taken)
        }
        (Anchor::Around { thing, gap, sides }, How::Home | How::Overhanging) => {
            around(*thing, *gap, sides, half, &mut spot)
        }
        (Anchor::Around { thing, gap, sides }, How::Leader(most)) => {
            let way = sides.first().map_or(DVec2::Y, |&(x, y)| dvec2(f64::from(x), f64::from(y)));
            let from = thing.grown(gap.max(0.0) / 2.0);
            with_leader(half, nth, from.centre(), way, most, |at| from.nearest(at), &mut taken)
        }
        (Anchor::Along { from, to, beside, gap, turned, home }, how) => {
            let Some((a, b)) = within(*from, *to, &clip.grown(-1.0)) else { return false };
            let way = (*to - *from).normalize_or_zero();
            if let How::Leader(most) = how {
                let side = beside.iter().copied().find(|side| *side != 0.0).unwrap_or(1.0);
                return with_leader(
                    half,
                    nth,
                    a.lerp(b, *home),
                    way.perp() * side,
                    most,
                    |_| a.lerp(b, *home),
                    &mut taken,
                );
            }
            let turn = if *turned { upright(way) } else { 0.0 };
            let (long, room) = (a.distance(b), 2.0 * (reach(half, turn, way) + ENDS));
            beside.iter().any(|&side| {
                let at = |share: f64| {
                    let off = if side == 0.0 { 0.0 } else { reach(half, turn, way.perp()) + gap };
                    a.lerp(b, share) + way.perp() * (side * off)
                };
                if long < room {
                    return side != 0.0 && how == How::Overhanging && spot(at(0.5), turn);
                }
                let least = room / 2.0 / long;
                let mut before = f64::NAN;
                SLIDES.iter().any(|slide| {
                    let share = (home + slide).clamp(least, 1.0 - least);
                    let again = share == before;
                    before = share;
                    !again && spot(at(share), turn)
                })
            })
        }
        (Anchor::Within { rings, home }, How::Home | How::Overhanging) => {
            inside(rings, *home, half, clip, &mut spot)
        }
        (Anchor::Within { rings, home }, How::Leader(most)) => {
            let Some(around) = Rect::around(rings.iter().flatten().copied()) else { return false };
            let reach = around.size().min_element() / 2.0;
            with_leader(half, nth, *home, DVec2::Y, most + reach, |_| *home, &mut taken)
        }
    }
}

fn around(
    thing: Rect,
    gap: f64,
    sides: &[(i8, i8)],
    half: DVec2,
    spot: &mut impl FnMut(DVec2, f64) -> bool,
) -> bool {
    let out = thing.size() / 2.0 + half + DVec2::splat(gap);
    sides.iter().any(|&(x, y)| spot(thing.centre() + out * dvec2(f64::from(x), f64::from(y)), 0.0))
        // Slide along the side, staying over or under the thing.
        || sides.iter().filter(|side| side.0 == 0).any(|&(_, y)| {
            [0.5, -0.5].iter().any(|slide| {
                spot(thing.centre() + dvec2(half.x * slide, out.y * f64::from(y)), 0.0)
            })
        })
}

/// Candidates with a leader, nearest first, best direction first; `from` gives the start of the leader.
fn with_leader(
    half: DVec2,
    nth: usize,
    at: DVec2,
    best: DVec2,
    most: f64,
    from: impl Fn(DVec2) -> DVec2,
    taken: &mut impl FnMut(Placed) -> bool,
) -> bool {
    (1..=REACHES).any(|step| {
        let far = most * f64::from(step) / f64::from(REACHES);
        FAN.iter().any(|sixteenths| {
            let way = DVec2::from_angle(sixteenths * std::f64::consts::TAU / 16.0)
                .rotate(best.normalize_or(DVec2::Y));
            let border = (half / way.abs().max(DVec2::splat(1e-9))).min_element();
            let middle = at + way * (far + border);
            let start = from(middle);
            let end = start.clamp(middle - half, middle + half);
            taken(Placed { at: middle, turn: 0.0, half, nth, leader: Some((start, end)) })
        })
    })
}

/// Grid candidates whose whole rectangle is inside a shape, nearest to the preferred position first.
fn inside(
    rings: &[Vec<DVec2>],
    home: DVec2,
    half: DVec2,
    clip: &Rect,
    spot: &mut impl FnMut(DVec2, f64) -> bool,
) -> bool {
    let Some(all) = Rect::around(rings.iter().flatten().copied()) else { return false };
    let seen = Rect { min: all.min.max(clip.min) + half, max: all.max.min(clip.max) - half };
    let room = seen.size();
    if room.min_element() < 0.0 {
        return false;
    }
    let fits = |at: DVec2| holds(rings, &Rect { min: at - half, max: at + half });
    let best = home.clamp(seen.min, seen.max);
    if fits(best) && spot(best, 0.0) {
        return true;
    }
    let step = room.max_element() / f64::from(NET - 1);
    let count = |side: f64| if step > 0.0 { (side / step).floor() as u32 + 1 } else { 1 };
    let mut places: Vec<DVec2> = (0..count(room.y))
        .flat_map(|row| (0..count(room.x)).map(move |column| dvec2(f64::from(column), f64::from(row))))
        .map(|at| seen.min + at * step)
        .filter(|at| fits(*at))
        .collect();
    // A stable sort.
    places.sort_by(|a, b| a.distance_squared(best).total_cmp(&b.distance_squared(best)));
    places.into_iter().any(|at| spot(at, 0.0))
}

/// Whether a rectangle is inside a shape: its centre is, and no side of the shape enters it.
fn holds(rings: &[Vec<DVec2>], rect: &Rect) -> bool {
    let sides = || rings.iter().flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)));
    let middle = rect.centre();
    let crossed = sides()
        .filter(|(a, b)| (a.y > middle.y) != (b.y > middle.y))
        .filter(|(a, b)| a.x + (b.x - a.x) * (middle.y - a.y) / (b.y - a.y) > middle.x)
        .count();
    crossed % 2 == 1 && sides().all(|(a, b)| within(*a, *b, rect).is_none())
}

/// A segment clipped to a rectangle; `None` if it stays outside, or only touches the border.
pub(crate) fn within(a: DVec2, b: DVec2, rect: &Rect) -> Option<(DVec2, DVec2)> {
    let at = |share: f64| a + (b - a) * share;
    rect.clip(a, b).filter(|(from, to)| from < to).map(|(from, to)| (at(from), at(to)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn labels_are_never_upside_down() {
        for degrees in (0..360).map(f64::from) {
            let turn = upright(DVec2::from_angle(degrees.to_radians()));
            assert!(turn.cos() > -1e-5, "{degrees}: {turn}");
            let off = (turn.to_degrees() - degrees).rem_euclid(180.0);
            assert!(off.min(180.0 - off) < 1e-9, "{degrees} is along another line than {turn}");
        }
    }

    #[test]
    fn a_line_is_clipped_to_the_drawing() {
        let rect = Rect::at(dvec2(0.0, 0.0), dvec2(10.0, 10.0));
        // By hand: from (−5, 0) to (15, 10) is y = (x + 5) / 2, inside from x = 0 to 10: (0, 2.5) and (10, 7.5).
        let (a, b) = within(dvec2(-5.0, 0.0), dvec2(15.0, 10.0), &rect).unwrap();
        assert!((a - dvec2(0.0, 2.5)).length() < 1e-12 && (b - dvec2(10.0, 7.5)).length() < 1e-12);
        assert!(within(dvec2(-5.0, 0.0), dvec2(-1.0, 9.0), &rect).is_none());
        assert!(within(dvec2(0.0, 11.0), dvec2(9.0, 11.0), &rect).is_none(), "level and above");
    }

    #[test]
    fn a_rectangle_is_inside_an_l_or_not() {
        let l = [(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (4.0, 4.0), (4.0, 10.0), (0.0, 10.0)];
        let rings = vec![l.map(|(x, y)| dvec2(x, y)).to_vec()];
        let at = |x: f64, y: f64| {
            holds(&rings, &Rect { min: dvec2(x - 1.0, y - 1.0), max: dvec2(x + 1.0, y + 1.0) })
        };
        assert!(at(2.0, 2.0) && at(8.0, 2.0) && at(2.0, 8.0));
        assert!(!at(7.0, 7.0), "in the hollow");
        assert!(!at(4.0, 6.0) && !at(9.5, 2.0), "over the border");
    }
}
