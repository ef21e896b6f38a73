use super::Limit;
use crate::PenetrationKind;
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a shingle roof itself must be, by slope.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Roofing {
    /// No shingles on a lower slope.
    pub least_pitch: Limit<Pitch>,
    /// Below this pitch the underlayment is laid double.
    pub single_underlayment_from: Limit<Pitch>,
    /// How a double underlayment is laid, in words.
    #[serde(default)]
    pub double_underlayment: String,
    /// A penetration wider than this, along the eave, has a cricket on its ridge side.
    pub cricket_from: Limit<Length>,
    /// From a valley's line to the side flashing of an array, square to the line on the slope.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub valley_clear: Option<Limit<Length>>,
    /// From a hip's line to the side flashing of an array.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hip_clear: Option<Limit<Length>>,
    /// A roof with an edge nearer than this to a lot line needs a class against fire.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lot_line_within: Option<Limit<Length>>,
    /// Drip edge at eaves and rakes, in words; `None` where none is asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drip_edge: Option<Limit<String>>,
    /// Protection against ice dams; `None` where the climate asks none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ice_barrier: Option<IceBarrier>,
    /// The class of the roof against fire under and beyond the array, in words; `None` where none is asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fire_class: Option<Limit<String>>,
}

/// Membrane along the eaves against water that ice dams up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct IceBarrier {
    /// From the eave to this far inside the outer wall, in plan.
    pub inside_wall: Limit<Length>,
    /// From this pitch on it reaches also so far up the slope.
    pub steep_from: Limit<Pitch>,
    /// That length along the slope.
    pub steep_length: Limit<Length>,
}

impl Roofing {
    /// Whether a penetration of a kind, so wide along the eave in metres, has a cricket on its ridge side. Unit skylights go by
    /// their maker's flashing kit, and what a person leaves by has its own curb.
    pub fn asks_cricket(&self, kind: PenetrationKind, wide: f64) -> bool {
        // What was drawn to a tenth of a millimetre is that wide.
        const NEAR: f64 = 1e-4;
        !matches!(kind, PenetrationKind::Skylight | PenetrationKind::EscapeWindow)
            && wide > self.cricket_from.value.metres() + NEAR
    }

    pub(super) fn check(&self) -> Result<(), Said> {
        let ice = self.ice_barrier.as_ref();
        let lengths = [
            ("cricket_from", Some(self.cricket_from.value)),
            ("valley_clear", self.valley_clear.as_ref().map(|limit| limit.value)),
            ("hip_clear", self.hip_clear.as_ref().map(|limit| limit.value)),
            ("lot_line_within", self.lot_line_within.as_ref().map(|limit| limit.value)),
            ("ice_barrier.inside_wall", ice.map(|ice| ice.inside_wall.value)),
            ("ice_barrier.steep_length", ice.map(|ice| ice.steep_length.value)),
        ];
        match lengths.iter().find(|(_, l)| l.is_some_and(|l| !(0.0..100.0).contains(&l.metres()))) {
            Some((field, _)) => Err(words::rulebook::roofing_must_be_0_or(&field)),
            None => Ok(()),
        }
    }
}
