//! Measured values and requirements of rules, typed by what they measure.

use crate::{DeckKind, FireClass, RowJoints};
use chalkcourse_geometry::{Length, Pitch};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An amount of something.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Quantity {
    /// There is nothing to measure: the condition holds or does not.
    Nothing,
    /// It is unknown, or can't be computed.
    Unknown,
    /// A true length, as on the slope.
    Length(Length),
    /// A length in plan.
    InPlan(Length),
    /// An area in plan, m².
    Area(f64),
    /// Rise over run.
    Pitch(Pitch),
    /// A fraction, 0 to 1.
    Share(f64),
    /// A count.
    Count(u32),
    /// A number of pathways, each of a width in plan.
    Pathways {
        /// How many.
        count: u32,
        /// Width of each.
        width: Length,
    },
    /// A force, pounds.
    Pounds(f64),
    /// Volts.
    Volts(f64),
    /// Amperes.
    Amps(f64),
    /// Watts.
    Watts(f64),
    /// Megohms.
    Megohms(f64),
    /// A fire class.
    Class(FireClass),
    /// A deck material.
    Deck(DeckKind),
}

/// A requirement on a quantity.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Required {
    /// A condition must hold; nothing is measured.
    So,
    /// At least this.
    AtLeast(Quantity),
    /// At most this.
    AtMost(Quantity),
    /// At least the first and at most the second.
    Between(Quantity, Quantity),
    /// This much must be free; the measured value is how far something extends into it.
    Free(Quantity),
    /// One of these decks.
    Deck(Vec<DeckKind>),
    /// Joints in one of these patterns; the measured value is the distance from the nearest.
    Joints(Vec<RowJoints>),
}

/// Limits that differ by less than a micrometre, or a millionth, are the same: they may be sums in a different order.
const SAME: f64 = 1e-6;

impl Quantity {
    /// Its number, where more is larger (a better class is more); `None` if it has none.
    fn number(self) -> Option<f64> {
        match self {
            Self::Nothing | Self::Unknown | Self::Deck(_) => None,
            Self::Length(length) | Self::InPlan(length) => Some(length.metres()),
            Self::Area(number)
            | Self::Share(number)
            | Self::Pounds(number)
            | Self::Volts(number)
            | Self::Amps(number)
            | Self::Watts(number)
            | Self::Megohms(number) => Some(number),
            Self::Pitch(pitch) => Some(pitch.slope()),
            Self::Count(count) | Self::Pathways { count, .. } => Some(f64::from(count)),
            Self::Class(class) => Some(-f64::from(class as u8)),
        }
    }

    /// A negligible amount of it: a tenth of a millimetre for a length, far below what a tape can show, and comparable
    /// amounts for the others on the scale of a roof.
    fn hair(self) -> f64 {
        match self {
            Self::Pitch(_) => 2e-5,
            _ => 1e-4,
        }
    }

    /// Whether another quantity is of the same kind and can be compared.
    fn is_alike(self, other: Self) -> bool {
        match (self, other) {
            (Self::Pathways { width: a, .. }, Self::Pathways { width: b, .. }) => {
                same(a.metres(), b.metres())
            }
            _ => std::mem::discriminant(&self) == std::mem::discriminant(&other),
        }
    }

    fn is_same(self, other: Self) -> bool {
        self.is_alike(other)
            && match (self.number(), other.number()) {
                (Some(a), Some(b)) => same(a, b),
                _ => self == other,
            }
    }
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() <= SAME * a.abs().max(b.abs()).max(1.0)
}

impl Required {
    /// Whether it is the same requirement as another.
    pub fn is_same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::AtLeast(a), Self::AtLeast(b))
            | (Self::AtMost(a), Self::AtMost(b))
            | (Self::Free(a), Self::Free(b)) => a.is_same(*b),
            (Self::Between(a, b), Self::Between(c, d)) => a.is_same(*c) && b.is_same(*d),
            _ => self == other,
        }
    }

    /// Whether the value now is no worse with respect to this requirement than the value then, within tolerance. Values
    /// that can't be compared are worse unless they are equal.
    pub fn is_no_worse(&self, now: Quantity, then: Quantity) -> bool {
        if !now.is_alike(then) {
            return false;
        }
        let (Some(a), Some(b)) = (now.number(), then.number()) else { return now == then };
        let hair = now.hair();
        let off = |from: Quantity, to: Quantity, number: f64| {
            let (from, to) = (from.number()?, to.number()?);
            Some(if number < from { number - from } else { (number - to).max(0.0) })
        };
        match self {
            Self::AtLeast(_) => a >= b - hair,
            Self::AtMost(_) | Self::Free(_) | Self::Joints(_) => a <= b + hair,
            // Too little and too much are different matters.
            Self::Between(from, to) => match (off(*from, *to, a), off(*from, *to, b)) {
                (Some(a), Some(b)) => a * b >= 0.0 && a.abs() <= b.abs() + hair,
                _ => false,
            },
            Self::So | Self::Deck(_) => (a - b).abs() <= hair,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inches(inches: f64) -> Quantity {
        Quantity::Length(Length::from_inches(inches))
    }

    fn check(required: &Required, then: Quantity, fine: &[Quantity], worse: &[Quantity]) {
        for now in fine {
            assert!(required.is_no_worse(*now, then), "{required:?}: {now:?} after {then:?}");
        }
        for now in worse {
            assert!(!required.is_no_worse(*now, then), "{required:?}: {now:?} after {then:?}");
        }
    }

    #[test]
    fn exceeding_a_limit_further_is_worse() {
        let foot = Required::AtLeast(inches(12.0));
        check(&foot, inches(11.0), &[inches(11.0), inches(11.5)], &[inches(10.9), inches(0.5)]);
        let foot = Required::AtMost(inches(12.0));
        check(&foot, inches(13.0), &[inches(13.0), inches(12.5)], &[inches(13.1)]);
        // Within tolerance is not worse.
        let hair = Quantity::Length(Length::from_inches(13.0) + Length::from_metres(0.9e-4));
        check(&foot, inches(13.0), &[hair], &[]);
    }

    #[test]
    fn a_range_has_two_sides() {
        let range = Required::Between(inches(1.0), inches(2.0));
        check(&range, inches(3.0), &[inches(2.5), inches(3.0)], &[inches(3.5), inches(0.5)]);
        check(&range, inches(0.5), &[inches(0.75)], &[inches(0.25), inches(2.1)]);
    }

    #[test]
    fn a_better_fire_class_counts_as_more() {
        let class = |class| Quantity::Class(class);
        let b = Required::AtLeast(class(FireClass::B));
        check(
            &b,
            class(FireClass::C),
            &[class(FireClass::C)],
            &[class(FireClass::Unrated), Quantity::Unknown],
        );
        check(&b, Quantity::Unknown, &[Quantity::Unknown], &[class(FireClass::C)]);
    }

    #[test]
    fn quantities_of_different_kinds_are_never_compared() {
        let plan = Quantity::InPlan(Length::from_inches(11.0));
        check(
            &Required::AtLeast(inches(12.0)),
            inches(11.0),
            &[],
            &[plan, Quantity::Nothing, Quantity::Count(9)],
        );
        let ways = |count, feet| Quantity::Pathways { count, width: Length::from_feet(feet) };
        check(&Required::AtLeast(ways(2, 3.0)), ways(1, 3.0), &[ways(1, 3.0)], &[ways(0, 3.0), ways(1, 4.0)]);
        let deck = Required::Deck(vec![DeckKind::Osb]);
        let of = Quantity::Deck;
        check(&deck, of(DeckKind::Boards), &[of(DeckKind::Boards)], &[of(DeckKind::SpacedBoards)]);
    }

    #[test]
    fn the_same_limit() {
        assert!(Required::AtLeast(inches(12.0)).is_same(&Required::AtLeast(inches(12.0 + 1e-9))));
        assert!(!Required::AtLeast(inches(12.0)).is_same(&Required::AtLeast(inches(12.1))));
        assert!(!Required::AtLeast(inches(12.0)).is_same(&Required::AtMost(inches(12.0))));
        assert!(Required::So.is_same(&Required::So));
        assert!(
            !Required::Joints(vec![RowJoints::Aligned])
                .is_same(&Required::Joints(vec![RowJoints::HalfLapped]))
        );
    }

    #[test]
    fn amounts_are_written_and_read_back_as_they_are() {
        for quantity in [
            Quantity::Nothing,
            Quantity::Unknown,
            inches(11.0 / 16.0),
            Quantity::Length(Length::from_metres(-0.012_345_678_9)),
            Quantity::InPlan(Length::from_metres(1.0 / 3.0)),
            Quantity::Area(0.1 + 0.2),
            Quantity::Pitch(Pitch::from_rise_in_12(2.9).unwrap()),
            Quantity::Share(1.0 / 3.0),
            Quantity::Count(2),
            Quantity::Pathways { count: 1, width: Length::from_feet(3.0) },
            Quantity::Pounds(212.34),
            Quantity::Volts(612.5),
            Quantity::Amps(17.375),
            Quantity::Watts(405.0),
            Quantity::Class(FireClass::C),
            Quantity::Deck(DeckKind::SpacedBoards),
        ] {
            let json = serde_json::to_string(&quantity).unwrap();
            assert_eq!(serde_json::from_str::<Quantity>(&json).unwrap(), quantity, "{json}");
        }
    }
}
