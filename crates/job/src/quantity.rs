//! What a rule measured and what it asks, as amounts that know what they are amounts of.

use crate::{DeckKind, FireClass, RowJoints};
use chalkcourse_geometry::{Length, Pitch};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An amount of something.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Quantity {
    /// There is nothing to measure: it is so, or it is not.
    Nothing,
    /// Nobody knows it, or it can't be worked out.
    Unknown,
    /// A true length, as on the slope.
    Length(Length),
    /// A length in plan.
    InPlan(Length),
    /// An area in plan, m².
    Area(f64),
    /// Rise over run.
    Pitch(Pitch),
    /// A part of a whole, 0 to 1.
    Share(f64),
    /// So many.
    Count(u32),
    /// So many ways, each so wide in plan.
    Pathways {
        /// How many.
        count: u32,
        /// Each so wide.
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
    /// A class against fire.
    Class(FireClass),
    /// What a deck is made of.
    Deck(DeckKind),
}

/// What is asked of an amount.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Required {
    /// It is to be so; nothing is measured.
    So,
    /// No less.
    AtLeast(Quantity),
    /// No more.
    AtMost(Quantity),
    /// No less than the first and no more than the second.
    Between(Quantity, Quantity),
    /// So much is to be free; what is measured is how far something reaches into it.
    Free(Quantity),
    /// One of these decks.
    Deck(Vec<DeckKind>),
    /// Joints in one of these ways; what is measured is how far off the nearest they are.
    Joints(Vec<RowJoints>),
}

/// Limits that differ by less than a micrometre, or a millionth, are one limit: the same sum in another order.
const SAME: f64 = 1e-6;

impl Quantity {
    /// The number in it, larger for more (a better class is more); `None` where it has none.
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

    /// How much of it is nothing: a tenth of a millimetre of a length, far below what a tape can tell, and what that is of
    /// others on the scale of a roof.
    fn hair(self) -> f64 {
        match self {
            Self::Pitch(_) => 2e-5,
            _ => 1e-4,
        }
    }

    /// Whether another is an amount of the same thing, and so can be held against it.
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
    /// Whether it is the same limit as another.
    pub fn is_same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::AtLeast(a), Self::AtLeast(b))
            | (Self::AtMost(a), Self::AtMost(b))
            | (Self::Free(a), Self::Free(b)) => a.is_same(*b),
            (Self::Between(a, b), Self::Between(c, d)) => a.is_same(*c) && b.is_same(*d),
            _ => self == other,
        }
    }

    /// Whether what is measured now is no worse against this limit than what was measured then, by more than a hair. What can't
    /// be compared is worse unless it is the same.
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
            // Too little and too much are two matters.
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
    fn less_than_the_least_and_more_than_the_most_are_worse() {
        let foot = Required::AtLeast(inches(12.0));
        check(&foot, inches(11.0), &[inches(11.0), inches(11.5)], &[inches(10.9), inches(0.5)]);
        let foot = Required::AtMost(inches(12.0));
        check(&foot, inches(13.0), &[inches(13.0), inches(12.5)], &[inches(13.1)]);
        // A hair is not worse.
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
    fn a_better_class_is_more() {
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
    fn amounts_of_other_things_are_never_compared() {
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
