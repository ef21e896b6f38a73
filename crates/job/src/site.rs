//! The site of the job, and facts about the building that rules need.

use crate::{Deck, DripEdge, FireClass};
use chalkcourse_geometry::{Azimuth, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The site of the job.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// Postal address.
    #[serde(default)]
    pub address: String,
    /// What the crew must know before they arrive.
    #[serde(default)]
    pub notes: String,
    /// Facts about the building that rules need.
    #[serde(default, skip_serializing_if = "Building::is_unknown")]
    pub building: Building,
    /// Geographic position of the origin of the plan.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<GeoPoint>,
}

/// A geographic position, in degrees of WGS 84.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GeoPoint {
    /// North of the equator, -85 to 85.
    pub latitude: f64,
    /// East of Greenwich, -180 to 180.
    pub longitude: f64,
}

impl GeoPoint {
    /// Whether both numbers are valid degrees where people build: up to 85° of latitude, away from the poles.
    pub fn is_on_globe(self) -> bool {
        (-85.0..=85.0).contains(&self.latitude) && (-180.0..=180.0).contains(&self.longitude)
    }
}

/// Facts about the building and the site that rules need. What is unknown is not assumed: rules that need it report
/// that they were not checked.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Building {
    /// An automatic sprinkler system throughout.
    pub sprinklers: bool,
    /// A detached, uninhabited building: a shed, a carport.
    pub detached_uninhabited: bool,
    /// Who determined, as fire official, that no one will work on this roof, and when. Empty if nobody did.
    pub no_roof_operations: String,
    /// Who read the listing by which this roof-integrated array is exempt from fire access. Empty if nobody did.
    pub integrated_listing_read_by: String,
    /// Directions in which a street or driveway is, degrees clockwise from north.
    pub street_sides: Vec<Azimuth>,
    /// Height of the eave above the ground.
    pub eave_height: Option<Length>,
    /// The least width of the building in plan.
    pub least_width: Option<Length>,
    /// Overhang of the eave beyond the outer wall, in plan.
    pub overhang: Option<Length>,
    /// Basic wind speed for the building's risk category, miles per hour, 3-second gust.
    pub wind_mph: Option<f64>,
    /// Wind exposure.
    pub exposure: Option<Exposure>,
    /// Ground elevation above sea level.
    pub elevation: Option<Length>,
    /// Ground snow load, pounds per square foot, as defined by the edition of the rule book.
    pub ground_snow_psf: Option<f64>,
    /// Uplift capacity of one fastener of the array, pounds: tested or listed, as given by its manufacturer.
    pub fastener_pounds: Option<f64>,
    /// Deck area per such fastener, square feet.
    pub fastener_square_feet: Option<f64>,
    /// The deck as found on site.
    pub deck: Deck,
    /// Drip edge at eaves and rakes.
    pub drip_edge: Option<DripEdge>,
    /// Fire class of the covering beyond the array.
    pub covering_class: Option<FireClass>,
    /// The fire class required by law at the site.
    pub class_by_law: Option<FireClass>,
    /// Distance in plan from the nearest edge of the roof deck to a lot line.
    pub lot_line: Option<Length>,
}

/// Wind exposure by upwind surface roughness (ASCE/SEI 7 section 26.7).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Exposure {
    /// Urban, suburban or wooded.
    B,
    /// Open country.
    C,
    /// Flat, by open water.
    D,
}

impl Building {
    /// Whether nothing was entered.
    pub fn is_unknown(&self) -> bool {
        *self == Self::default()
    }
}
