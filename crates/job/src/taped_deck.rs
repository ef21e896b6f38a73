use chalkcourse_geometry::{Length, SideId};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Tape measurements on the deck of a four-cornered face. What was not measured is as drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct TapedDeck {
    /// The sides of the face that were eave, head, left and right rake when it was measured; `None` for a part's face
    /// without four corners.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub of: Option<[SideId; 4]>,
    /// Along the eave, corner to corner.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub eave: Option<Length>,
    /// Along the head: the ridge or the upper edge.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub head: Option<Length>,
    /// Up the left rake.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub left: Option<Length>,
    /// Up the right rake.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub right: Option<Length>,
    /// From the left end of the eave up to the right end of the head.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rising: Option<Length>,
    /// From the right end of the eave up to the left end of the head.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub falling: Option<Length>,
    /// Bow of eave, head, left and right rake into the deck at their middle; negative if outwards.
    #[serde(skip_serializing_if = "is_straight")]
    pub bows: [Length; 4],
}

fn is_straight(bows: &[Length; 4]) -> bool {
    *bows == [Length::ZERO; 4]
}

impl TapedDeck {
    /// Eave, head, left and right rake, rising and falling diagonal.
    pub fn sides(&self) -> [Option<Length>; 6] {
        [self.eave, self.head, self.left, self.right, self.rising, self.falling]
    }

    /// The same with sides in the order of [`Self::sides`].
    pub fn with_sides(self, sides: [Option<Length>; 6]) -> Self {
        let [eave, head, left, right, rising, falling] = sides;
        Self { eave, head, left, right, rising, falling, ..self }
    }

    /// Whether nothing was measured.
    pub fn is_empty(&self) -> bool {
        Self { of: None, ..*self } == Self::default()
    }

    /// The same measurements after the roles of the sides changed, because the runoff direction did. `None` if these
    /// are not the four sides that were measured.
    pub fn turned(&self, now: [SideId; 4]) -> Option<Self> {
        let of = self.of?;
        let was = |side: SideId| of.iter().position(|known| *known == side);
        let order = [was(now[0])?, was(now[1])?, was(now[2])?, was(now[3])?];
        let sides = self.sides();
        // The rising diagonal starts at the corner of eave and left rake, or ends at the opposite one.
        let corner = [order[0].min(order[2]), order[0].max(order[2])];
        let still_rises = corner == [0, 2] || corner == [1, 3];
        let (rising, falling) =
            if still_rises { (self.rising, self.falling) } else { (self.falling, self.rising) };
        let [eave, head, left, right] = order.map(|nth| sides[nth]);
        Some(Self {
            of: Some(now),
            eave,
            head,
            left,
            right,
            rising,
            falling,
            bows: order.map(|nth| self.bows[nth]),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NAMES: [SideId; 4] = [SideId(3), SideId(5), SideId(6), SideId(4)];

    fn taped() -> TapedDeck {
        let lengths = [10.0, 11.0, 6.0, 7.0, 12.0, 13.0].map(|m| Some(Length::from_metres(m)));
        let bows = [1.0, 2.0, 3.0, 4.0].map(Length::from_mm);
        TapedDeck { of: Some(NAMES), bows, ..TapedDeck::default() }.with_sides(lengths)
    }

    /// Worked out by hand: with the eave where the left rake was, water runs to the left. Then the head was the right
    /// rake, the left rake (looking up the slope) was the head, the right rake the eave; the corner of eave and left
    /// rake is that of the old left rake and head, where the old falling diagonal starts.
    #[test]
    fn tape_readings_stay_with_their_sides_when_the_slope_turns() {
        let [eave, head, left, right] = NAMES;
        let turned = taped().turned([left, right, head, eave]).unwrap();
        let metres = turned.sides().map(|side| side.unwrap().metres());
        assert_eq!(metres, [6.0, 7.0, 11.0, 10.0, 13.0, 12.0]);
        assert_eq!(turned.bows.map(|bow| bow.mm().round()), [3.0, 4.0, 2.0, 1.0]);
        // Half a turn: the rising diagonal still rises.
        let half = taped().turned([head, eave, right, left]).unwrap();
        assert_eq!(half.sides().map(|side| side.unwrap().metres()), [11.0, 10.0, 7.0, 6.0, 12.0, 13.0]);
        assert_eq!(taped().turned(NAMES), Some(taped()));
        assert_eq!(taped().turned([eave, head, left, SideId(9)]), None);
    }
}
