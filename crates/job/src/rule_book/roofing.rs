use super::Limit;
use crate::PenetrationKind;
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Requirements on a shingle roof itself, by slope.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Roofing {
    /// The least pitch for shingles.
    pub least_pitch: Limit<Pitch>,
    /// Below this pitch the underlayment must be double.
    pub single_underlayment_from: Limit<Pitch>,
    /// How a double underlayment is laid, in words.
    #[serde(default)]
    pub double_underlayment: String,
    /// A penetration wider than this, along the eave, needs a cricket on its ridge side.
    pub cricket_from: Limit<Length>,
    /// Clear distance from a valley to the side flashing of an array, perpendicular to the valley on the slope.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub valley_clear: Option<Limit<Length>>,
    /// Clear distance from a hip to the side flashing of an array.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hip_clear: Option<Limit<Length>>,
    /// A roof with an edge closer than this to a lot line needs a fire class.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lot_line_within: Option<Limit<Length>>,
    /// Drip edge at eaves and rakes, in words; `None` if not required.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drip_edge: Option<Limit<String>>,
    /// Protection against ice dams; `None` if not required in the climate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ice_barrier: Option<IceBarrier>,
    /// The required fire class of the roof under and beyond the array, in words; `None` if not required.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fire_class: Option<Limit<String>>,
}

/// Membrane along the eaves against water backed up by ice dams.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct IceBarrier {
    /// From the eave to this far inside the outer wall, in plan.
    pub inside_wall: Limit<Length>,
    /// From this pitch up it also extends a length up the slope.
    pub steep_from: Limit<Pitch>,
    /// That length along the slope.
    pub steep_length: Limit<Length>,
}

impl Roofing {
    /// Whether a penetration of a kind and a width along the eave in metres needs a cricket on its ridge side. Unit
    /// skylights use the manufacturer's flashing kit, and escape windows have their own curb.
    pub fn asks_cricket(&self, kind: PenetrationKind, wide: f64) -> bool {
        // Tolerance of the width as drawn.
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
