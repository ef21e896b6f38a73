//! Words for places on the globe, and for buildings that come in and go out in open formats.

pub(crate) const PLACE: &str = "Latitude, longitude";
pub(crate) const PLACE_HELP: &str = "Of the plan's origin, in degrees of WGS 84, as maps give them: 39.1, -84.5. Needed to write the plan as GeoJSON.";
pub(crate) const BAD_PLACE: &str =
    "Latitude from -85 to 85, a comma, then longitude from -180 to 180, in degrees: 39.1, -84.5.";
