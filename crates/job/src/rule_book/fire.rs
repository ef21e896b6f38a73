use super::Limit;
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Where fire service pathways are required.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum PathScheme {
    /// Two on the whole roof, on separate planes, and one for each plane with modules (IRC R324.6, IFC from 2018).
    WholeRoof,
    /// On each slope with modules: one on a hip roof, two on a roof with a single ridge (IFC 605.11, 2012 and 2015).
    EachSlope,
}

/// Fire access on the roof. All widths are measured in plan, which is on the safe side where a code does not say.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FireAccess {
    /// The code and edition.
    pub edition: String,
    /// Where pathways are required.
    pub scheme: Limit<PathScheme>,
    /// Least width of a pathway.
    pub path_width: Limit<Length>,
    /// Whether a pathway is required on a side of the roof that faces a street or driveway.
    pub street_side: Limit<bool>,
    /// Roofs of this pitch or less are exempt.
    pub exempt_to: Limit<Pitch>,
    /// Setback on both sides of a level ridge.
    pub ridge: RidgeRoom,
    /// Clear width on both sides of a hip or valley with modules on both sides; editions from 2018 have none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hip_or_valley: Option<Limit<Length>>,
    /// The least width of the strip below an escape window that must be free of modules; `None` if the edition has
    /// none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub below_escape: Option<Limit<Length>>,
    /// Whether arrays that are roof coverings are exempt if the site says that their listing supports it. Off unless
    /// the office has read its own edition: the source says what is in doubt.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub integrated_exempt: Option<Limit<bool>>,
}

/// The ridge setback, by how much of the roof is covered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RidgeRoom {
    /// For an array that covers up to the share.
    pub up_to_share: Limit<Length>,
    /// For a larger array.
    pub beyond: Limit<Length>,
    /// Plan area of the array divided by plan area of the whole roof, 0 to 1.
    pub share: Limit<f64>,
    /// The share for a house with sprinklers.
    pub share_with_sprinklers: Limit<f64>,
}

impl FireAccess {
    pub(super) fn check(&self) -> Result<(), Said> {
        let lengths = [
            ("path_width", Some(self.path_width.value)),
            ("ridge.up_to_share", Some(self.ridge.up_to_share.value)),
            ("ridge.beyond", Some(self.ridge.beyond.value)),
            ("hip_or_valley", self.hip_or_valley.as_ref().map(|limit| limit.value)),
            ("below_escape", self.below_escape.as_ref().map(|limit| limit.value)),
        ];
        for (field, length) in lengths {
            if length.is_some_and(|length| !(0.0..100.0).contains(&length.metres())) {
                return Err(words::rulebook::fire_access_must_be_0(&field));
            }
        }
        for (field, share) in
            [("share", &self.ridge.share), ("share_with_sprinklers", &self.ridge.share_with_sprinklers)]
        {
            if !(0.0..=1.0).contains(&share.value) {
                return Err(words::rulebook::fire_access_ridge_is_a(&field, &share.value));
            }
        }
        Ok(())
    }
}
