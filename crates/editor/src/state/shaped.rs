//! Outlines by a few corners: a rectangle by two, an L or a T by a third; and their sizes as typed.

use chalkcourse_geometry::{DVec2, Length, LengthError, Units, dvec2};

/// The shape that the corners define.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Shaped {
    /// An outline, corner by corner.
    #[default]
    Corners,
    /// A rectangle by two opposite corners.
    Rectangle,
    /// A rectangle, and the inner corner of the notch.
    Ell,
    /// A rectangle, and one of the two inner corners, the other being its mirror image.
    Tee,
}

impl Shaped {
    pub(crate) const ALL: [Self; 4] = [Self::Corners, Self::Rectangle, Self::Ell, Self::Tee];

    /// Whether this many corners complete the shape.
    pub(crate) fn is_whole(self, corners: usize) -> bool {
        match self {
            Self::Corners => false,
            Self::Rectangle => corners >= 2,
            Self::Ell | Self::Tee => corners >= 3,
        }
    }

    /// The outline defined by the corners, in plan, with the first side along a unit vector; as much of it as they
    /// define. Empty for one drawn corner by corner. The notch is at the corner of the rectangle nearest to the
    /// pointer.
    pub(crate) fn outline(self, along: DVec2, corners: &[DVec2], to: Option<DVec2>) -> Vec<DVec2> {
        let (Self::Rectangle | Self::Ell | Self::Tee, [first, across, rest @ ..]) = (self, corners) else {
            return Vec::new();
        };
        let frame = Frame { first: *first, along };
        let size = frame.of(*across);
        let cut = |&inner: &DVec2| cut(size, frame.of(inner), frame.of(to.unwrap_or(inner)));
        let local = match rest.first().map(cut) {
            Some(cut) if self == Self::Ell => ell(size, &cut),
            Some(cut) if self == Self::Tee => tee(size, &cut),
            _ => vec![DVec2::ZERO, dvec2(size.x, 0.0), size, dvec2(0.0, size.y)],
        };
        local.into_iter().map(|p| frame.plan(p)).collect()
    }

    /// The next corner for a typed size, on the side of the pointer: the size of the whole rectangle, or that of the
    /// notch.
    pub(crate) fn sized(self, along: DVec2, corners: &[DVec2], to: DVec2, size: DVec2) -> Option<DVec2> {
        let sign = |value: f64| if value < 0.0 { -1.0 } else { 1.0 };
        match (self, corners) {
            (Self::Corners, _) | (_, []) => None,
            (_, [first]) => {
                let frame = Frame { first: *first, along };
                let way = frame.of(to);
                Some(frame.plan(dvec2(sign(way.x) * size.x, sign(way.y) * size.y)))
            }
            (_, [first, across, ..]) => {
                let frame = Frame { first: *first, along };
                let whole = frame.of(*across);
                let cut = cut(whole, frame.of(to), frame.of(to));
                let inner = |corner: f64, whole: f64, size: f64| {
                    if corner == 0.0 { sign(whole) * size } else { whole - sign(whole) * size }
                };
                let at = cut.corner;
                Some(frame.plan(dvec2(inner(at.x, whole.x, size.x), inner(at.y, whole.y, size.y))))
            }
        }
    }
}

/// The frame of a rectangle.
struct Frame {
    first: DVec2,
    along: DVec2,
}

impl Frame {
    fn of(&self, plan: DVec2) -> DVec2 {
        let from = plan - self.first;
        dvec2(from.dot(self.along), from.dot(self.along.perp()))
    }

    fn plan(&self, own: DVec2) -> DVec2 {
        self.first + self.along * own.x + self.along.perp() * own.y
    }
}

/// A notch of a rectangle: the corner removed, and the inner corner that replaces it.
struct Cut {
    corner: DVec2,
    inner: DVec2,
}

fn cut(size: DVec2, inner: DVec2, to: DVec2) -> Cut {
    let (low, high) = (size.min(DVec2::ZERO), size.max(DVec2::ZERO));
    let inner = inner.clamp(low, high);
    let nearest = |value: f64, end: f64| if (value - end).abs() < value.abs() { end } else { 0.0 };
    Cut { corner: dvec2(nearest(to.x, size.x), nearest(to.y, size.y)), inner }
}

/// A rectangle from 0 to a size with a notch at one corner: the ring, starting at the opposite corner.
fn ell(size: DVec2, &Cut { corner, inner }: &Cut) -> Vec<DVec2> {
    let far = size - corner;
    vec![
        far,
        dvec2(corner.x, far.y),
        dvec2(corner.x, inner.y),
        inner,
        dvec2(inner.x, corner.y),
        dvec2(far.x, corner.y),
    ]
}

/// A rectangle with a notch at a corner, and its mirror image at the other end of a side: of the two sides there, the
/// one that keeps the wider stem.
fn tee(size: DVec2, cut: &Cut) -> Vec<DVec2> {
    let stem = size.abs() - 2.0 * (cut.inner - cut.corner).abs();
    let turned = stem.y > stem.x;
    let swap = |p: DVec2| if turned { dvec2(p.y, p.x) } else { p };
    let (size, corner, inner) = (swap(size), swap(cut.corner), swap(cut.inner));
    let other = size.x - inner.x;
    let (from, to) = (inner.x.min(other), inner.x.max(other));
    let (left, right) = (size.x.min(0.0), size.x.max(0.0));
    let far = size.y - corner.y;
    let around = [
        dvec2(left, far),
        dvec2(right, far),
        dvec2(right, inner.y),
        dvec2(to, inner.y),
        dvec2(to, corner.y),
        dvec2(from, corner.y),
        dvec2(from, inner.y),
        dvec2(left, inner.y),
    ];
    around.map(swap).to_vec()
}

/// Parses a size: "30' x 48'", "30 by 48", "9.2 m × 14 m".
///
/// # Errors
/// The error of one of the lengths; `None` if there are not two.
pub(crate) fn size_typed(typed: &str, units: Units) -> Result<DVec2, Option<LengthError>> {
    let between = |c: char| matches!(c, 'x' | 'X' | '×' | '*');
    let typed = typed.replace(" by ", " x ").replace(" por ", " x ");
    let parts: Vec<&str> = typed.split(between).collect();
    let [wide, deep] = parts.as_slice() else { return Err(None) };
    let length = |text: &str| Length::parse(text, units).map(Length::metres).map_err(Some);
    Ok(dvec2(length(wide)?, length(deep)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::{Polygon, out_of_square};

    const FIRST: DVec2 = dvec2(3.0, -2.0);

    fn area(corners: &[DVec2]) -> f64 {
        let outline = Polygon::new(corners.to_vec());
        assert!(outline.defects(1e-6).is_empty(), "{corners:?}");
        assert_eq!(out_of_square(corners), None, "{corners:?}");
        outline.area()
    }

    /// Each direction to drag a rectangle, aligned with the compass or not: its area is the product of its sides; that
    /// of an L is less by the notch, that of a T by two.
    #[test]
    fn areas_follow_from_the_sides() {
        for turned in [0.0, 0.4, 2.0] {
            let along = DVec2::from_angle(turned);
            let at = |x: f64, y: f64| FIRST + along * x + along.perp() * y;
            for (x, y) in [(12.0, 8.0), (-12.0, 8.0), (12.0, -8.0), (-12.0, -8.0)] {
                let two = [FIRST, at(x, y)];
                assert!((area(&Shaped::Rectangle.outline(along, &two, None)) - 96.0).abs() < 1e-9);
                for inner in [
                    at(x * 0.25, y * 0.25),
                    at(x * 0.75, y * 0.25),
                    at(x * 0.25, y * 0.75),
                    at(x * 0.75, y * 0.75),
                ] {
                    let three = [FIRST, at(x, y), inner];
                    let ell = Shaped::Ell.outline(along, &three, None);
                    assert!((area(&ell) - (96.0 - 6.0)).abs() < 1e-9, "{ell:?}");
                    assert!(
                        ell.iter().any(|p| p.distance(inner) < 1e-9),
                        "the inner corner is where it was set"
                    );
                    let tee = Shaped::Tee.outline(along, &three, None);
                    assert!((area(&tee) - (96.0 - 12.0)).abs() < 1e-9, "{tee:?}");
                    assert!(tee.iter().any(|p| p.distance(inner) < 1e-9));
                }
            }
        }
    }

    /// By hand, 12 by 8: a notch of 4 by 2 leaves a stem of 4 below; 5 by 1 leaves one of 6 at the side.
    #[test]
    fn a_tee_has_its_stem_in_the_middle() {
        let of = |inner: DVec2| Shaped::Tee.outline(DVec2::X, &[DVec2::ZERO, dvec2(12.0, 8.0), inner], None);
        let below = of(dvec2(4.0, 2.0));
        assert!(below.iter().any(|p| p.distance(dvec2(8.0, 0.0)) < 1e-9), "{below:?}");
        assert!(below.iter().any(|p| p.distance(dvec2(12.0, 2.0)) < 1e-9), "{below:?}");
        let aside = of(dvec2(5.0, 1.0));
        assert!(aside.iter().any(|p| p.distance(dvec2(0.0, 7.0)) < 1e-9), "{aside:?}");
        assert!(aside.iter().any(|p| p.distance(dvec2(5.0, 8.0)) < 1e-9), "{aside:?}");
    }

    #[test]
    fn a_typed_size_is_on_the_side_of_the_pointer() {
        let size = dvec2(12.0, 8.0);
        let across = |to| Shaped::Rectangle.sized(DVec2::X, &[FIRST], to, size).unwrap();
        assert_eq!(across(FIRST + dvec2(0.1, 0.1)), FIRST + size);
        assert_eq!(across(FIRST + dvec2(-5.0, 0.1)), FIRST + dvec2(-12.0, 8.0));
        assert_eq!(across(FIRST - dvec2(1.0, 1.0)), FIRST - size);
        // The notch is at the nearest corner.
        for (x, y) in [(12.0, 8.0), (-12.0, -8.0)] {
            let two = [FIRST, FIRST + dvec2(x, y)];
            let inner = |u: f64, v: f64| {
                let to = FIRST + dvec2(x * u, y * v);
                Shaped::Ell.sized(DVec2::X, &two, to, dvec2(4.0, 3.0)).unwrap() - FIRST
            };
            let one = f64::signum(x);
            assert_eq!(inner(0.9, 0.9), dvec2(x - one * 4.0, y - one * 3.0));
            assert_eq!(inner(0.1, 0.9), dvec2(one * 4.0, y - one * 3.0));
            assert_eq!(inner(0.1, 0.1), dvec2(one * 4.0, one * 3.0));
        }
        assert_eq!(Shaped::Corners.sized(DVec2::X, &[FIRST], FIRST, size), None);
        assert_eq!(Shaped::Rectangle.sized(DVec2::X, &[], FIRST, size), None);
    }

    /// The notch may be more than half: which corner it is at depends on the pointer, not on the inner corner.
    #[test]
    fn a_notch_wider_than_half() {
        let (two, to) = ([DVec2::ZERO, dvec2(12.0, -8.0)], dvec2(11.0, -7.0));
        let inner = Shaped::Ell.sized(DVec2::X, &two, to, dvec2(9.0, 5.0)).unwrap();
        assert_eq!(inner, dvec2(3.0, -3.0));
        let ell = Shaped::Ell.outline(DVec2::X, &[two[0], two[1], inner], Some(to));
        assert!((area(&ell) - (96.0 - 45.0)).abs() < 1e-9, "{ell:?}");
        assert!(ell.contains(&DVec2::ZERO) && !ell.contains(&two[1]), "{ell:?}");
    }

    #[test]
    fn sizes_are_read() {
        let feet = |a: f64, b: f64| dvec2(a, b) * 0.3048;
        for typed in ["30 x 48", "30' × 48'", "30 by 48", "30' X 576 in", "30' * 48'"] {
            assert!(
                size_typed(typed, Units::FeetInches).unwrap().distance(feet(30.0, 48.0)) < 1e-9,
                "{typed}"
            );
        }
        assert!(matches!(size_typed("30", Units::FeetInches), Err(None)));
        assert!(matches!(size_typed("30 x 48 x 2", Units::FeetInches), Err(None)));
        assert!(matches!(size_typed("30 x wide", Units::FeetInches), Err(Some(_))));
        assert!(matches!(size_typed("x", Units::FeetInches), Err(Some(_))));
    }
}
