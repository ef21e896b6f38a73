use chalkcourse_geometry::Length;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a tape reads on the deck of a face with four corners. What was not measured is as drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct TapedDeck {
    /// Along the eave, from corner to corner.
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
    /// How far eave, head, left and right rake bow into the deck at their middle; below 0 out of it.
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

    /// With sides in the order of [`Self::sides`].
    pub fn with_sides(self, sides: [Option<Length>; 6]) -> Self {
        let [eave, head, left, right, rising, falling] = sides;
        Self { eave, head, left, right, rising, falling, ..self }
    }

    /// Whether nothing was measured.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}
