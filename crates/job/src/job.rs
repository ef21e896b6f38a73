use crate::{
    Block, DecidedFace, Deck, DripEdge, Face, FireClass, FromPart, Kit, OrderChoices, Penetration, PriceList,
    RoofPart, RuleBook, Underlay, Waiver,
};
use chalkcourse_geometry::raise::SideRef;
use chalkcourse_geometry::{Azimuth, Length, Units};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
        #[serde(transparent)]
        pub struct $name(pub u32);

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                write!(f, "{}", self.0)
            }
        }
    };
}

id!(
    /// Number of a face in its job.
    FaceId
);
id!(
    /// Number of a part of the house in its job.
    PartId
);
id!(
    /// Number of a penetration in its job.
    PenetrationId
);
id!(
    /// Number of a block in its job.
    BlockId
);

/// Everything that a person decided or measured for one roof, and nothing that follows from it.
// `F` is a face as it is held: `DecidedFace` with what was decided about it, as a file has it; `Face` in `Resolved`, which works
// out the rest. The sentence above stands in the schema too.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, bound(serialize = "F: Serialize", deserialize = "F: Deserialize<'de>"))]
#[schemars(rename = "Job")]
pub struct Job<F = DecidedFace> {
    /// What people call the job.
    pub name: String,
    /// Where it is.
    #[serde(default)]
    pub site: Site,
    /// How lengths are shown and typed.
    #[serde(default)]
    pub units: Units,
    /// Parts of the house, whose faces follow from them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<RoofPart>,
    /// Roof faces: drawn ones, and those of parts with what a person decided about them.
    pub faces: Vec<F>,
    /// Faces of parts that have no ground at present, because another part hides it or their side became a gable. They
    /// keep number, name and courses until they come back, and blocks wait on them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub resting: Vec<F>,
    /// What comes through the roof.
    #[serde(default)]
    pub penetrations: Vec<Penetration>,
    /// Blocks of modules.
    #[serde(default)]
    pub blocks: Vec<Block>,
    /// Findings that a person accepted, with the reason.
    #[serde(default)]
    pub waivers: Vec<Waiver>,
    /// A picture under the plan.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub underlay: Option<Underlay>,
    /// The maker's kit.
    pub kit: Arc<Kit>,
    /// The office's rule book.
    pub rule_book: Arc<RuleBook>,
    /// The supplier's prices.
    pub prices: Arc<PriceList>,
    /// What was decided about the order, and what arrived.
    #[serde(default, skip_serializing_if = "is_usual")]
    pub order: Arc<OrderChoices>,
    /// The next free number for a part, face, penetration or block.
    pub next_id: u32,
}

fn is_usual(order: &Arc<OrderChoices>) -> bool {
    **order == OrderChoices::default()
}

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

impl<F> Job<F> {
    /// A job without a roof.
    pub fn new(name: String, kit: Arc<Kit>, rule_book: Arc<RuleBook>, prices: Arc<PriceList>) -> Self {
        Self {
            name,
            site: Site::default(),
            units: Units::default(),
            parts: Vec::new(),
            faces: Vec::new(),
            resting: Vec::new(),
            penetrations: Vec::new(),
            blocks: Vec::new(),
            waivers: Vec::new(),
            underlay: None,
            kit,
            rule_book,
            prices,
            order: Arc::default(),
            next_id: 1,
        }
    }

    /// The same with each face held otherwise.
    pub(crate) fn with_faces<G>(self, how: impl FnMut(F) -> G) -> Job<G> {
        let Self {
            name,
            site,
            units,
            parts,
            faces,
            resting,
            penetrations,
            blocks,
            waivers,
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
        } = self;
        let mut how = how;
        Job {
            name,
            site,
            units,
            parts,
            faces: faces.into_iter().map(&mut how).collect(),
            resting: resting.into_iter().map(&mut how).collect(),
            penetrations,
            blocks,
            waivers,
            underlay,
            kit,
            rule_book,
            prices,
            order,
            next_id,
        }
    }
    /// The part of that number.
    pub fn part(&self, id: PartId) -> Option<&RoofPart> {
        self.parts.iter().find(|part| part.id == id)
    }
    /// The penetration of that number.
    pub fn penetration(&self, id: PenetrationId) -> Option<&Penetration> {
        self.penetrations.iter().find(|penetration| penetration.id == id)
    }
    /// The block of that number.
    pub fn block(&self, id: BlockId) -> Option<&Block> {
        self.blocks.iter().find(|block| block.id == id)
    }
}

impl Job<Face> {
    /// The face of that number.
    pub fn face(&self, id: FaceId) -> Option<&Face> {
        self.faces.iter().find(|face| face.id == id)
    }
    /// The faces on one side of a part, as pieces from left to right.
    pub fn faces_on(&self, part: PartId, side: u32) -> impl Iterator<Item = &Face> {
        let on = move |from: FromPart| (from.part, from.side) == (part, side);
        let mut pieces: Vec<&Face> = self.faces.iter().filter(|face| face.from.is_some_and(on)).collect();
        pieces.sort_by_key(|face| face.from);
        pieces.into_iter()
    }
    /// The part and the place of its side that a face comes from; `None` for a drawn one.
    pub fn side_of(&self, face: FaceId) -> Option<(&RoofPart, SideRef)> {
        let from = self.face(face)?.from?;
        let part = self.part(from.part)?;
        Some((part, part.place_of(from.side)?))
    }
    /// A part with all parts that its ground overlaps, and those that theirs does.
    pub fn parts_joined_to(&self, id: PartId) -> Vec<PartId> {
        let mut joined: Vec<&RoofPart> = self.part(id).into_iter().collect();
        let mut next = 0;
        while let Some(&one) = joined.get(next) {
            next += 1;
            for other in &self.parts {
                if !joined.iter().any(|there| there.id == other.id) && one.may_meet(other) {
                    joined.push(other);
                }
            }
        }
        joined.iter().map(|part| part.id).collect()
    }
}
