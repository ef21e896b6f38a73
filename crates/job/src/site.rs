//! Where the job is, and what rules need to know of the house and the place.

use crate::{Deck, DripEdge, FireClass};
use chalkcourse_geometry::{Azimuth, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Where the job is.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// As on an envelope.
    #[serde(default)]
    pub address: String,
    /// What the crew must know before they drive up.
    #[serde(default)]
    pub notes: String,
    /// What rules need to know of the house and the place.
    #[serde(default, skip_serializing_if = "Building::is_unknown")]
    pub building: Building,
    /// Where on the globe the plan has its origin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<GeoPoint>,
}

/// A point on the globe, in degrees of WGS 84.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GeoPoint {
    /// North of the equator, -85 to 85.
    pub latitude: f64,
    /// East of Greenwich, -180 to 180.
    pub longitude: f64,
}

impl GeoPoint {
    /// Whether both numbers are degrees where people build: up to 85° of latitude, so that no pole is near.
    pub fn is_on_globe(self) -> bool {
        (-85.0..=85.0).contains(&self.latitude) && (-180.0..=180.0).contains(&self.longitude)
    }
}

/// What rules need to know of the house and the place. What is not known is not assumed: the rules that need it say
/// that they were not checked.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Building {
    /// An automatic sprinkler system throughout.
    pub sprinklers: bool,
    /// A detached building in which nobody lives: a shed, a carport.
    pub detached_uninhabited: bool,
    /// The fire official found that no one will work on this roof: who, and when. Empty where not.
    pub no_roof_operations: String,
    /// Who read the listing by which this roof-integrated array is exempt from fire access. Empty where nobody did.
    pub integrated_listing_read_by: String,
    /// The ways in which a street or driveway lies, degrees clockwise from north.
    pub street_sides: Vec<Azimuth>,
    /// From the ground to the eave.
    pub eave_height: Option<Length>,
    /// The least width of the building in plan.
    pub least_width: Option<Length>,
    /// How far the eave reaches beyond the outer wall, in plan.
    pub overhang: Option<Length>,
    /// Basic wind speed for the building's risk category, miles an hour, 3-second gust.
    pub wind_mph: Option<f64>,
    /// Exposure to wind.
    pub exposure: Option<Exposure>,
    /// Ground above sea level.
    pub elevation: Option<Length>,
    /// Ground snow load, pounds a square foot, as the edition of the rule book gives it.
    pub ground_snow_psf: Option<f64>,
    /// What one fastener of the array holds against uplift, pounds: tested or listed, as its maker gives it.
    pub fastener_pounds: Option<f64>,
    /// Deck under one such fastener, square feet.
    pub fastener_square_feet: Option<f64>,
    /// The deck as somebody found it.
    pub deck: Deck,
    /// Drip edge at eaves and rakes.
    pub drip_edge: Option<DripEdge>,
    /// The class against fire of the covering beyond the array.
    pub covering_class: Option<FireClass>,
    /// The class that the law asks for where the house stands.
    pub class_by_law: Option<FireClass>,
    /// From the nearest edge of the roof deck to a lot line, in plan.
    pub lot_line: Option<Length>,
}

/// Exposure to wind by the roughness of the ground upwind (ASCE/SEI 7 section 26.7).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Exposure {
    /// Town, suburb, wood.
    B,
    /// Open country.
    C,
    /// Flat, by open water.
    D,
}

impl Building {
    /// Whether nothing was said.
    pub fn is_unknown(&self) -> bool {
        *self == Self::default()
    }
}
