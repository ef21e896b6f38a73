use chalkcourse_geometry::{DVec2, Rect};
use chalkcourse_job::{BlockId, Group, Measure, Unit};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::Serialize;
use std::sync::Arc;

/// What to order, line by line.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct Takeoff {
    /// One for each part that is needed, in the order of the kit.
    pub lines: Vec<Line>,
    /// What amounts are in.
    pub currency: String,
    /// The sum of the lines that have a price.
    #[schemars(with = "String")]
    pub priced_total: Decimal,
    /// Numbers of the parts that are needed and have no price: the total is without them.
    pub unpriced: Vec<String>,
}

/// One part on the order.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Line {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Where it stands on the order.
    pub group: Group,
    /// What it is counted in.
    pub unit: Unit,
    /// What the layout asks for: pieces, metres or square metres.
    pub need: f64,
    /// Share that is lost: 0.05 is 5 %.
    pub waste: f64,
    /// Need and waste; pieces are whole.
    pub with_waste: f64,
    /// What a package is called.
    pub package: String,
    /// How much is in a package.
    pub holds: f64,
    /// Packages to order.
    pub packages: u64,
    /// How much is in all of them.
    pub ordered: f64,
    /// For one package; none where the price list has none.
    #[schemars(with = "Option<String>")]
    pub price: Option<Decimal>,
    /// For all of them.
    #[schemars(with = "Option<String>")]
    pub cost: Option<Decimal>,
    /// How the need came about; the need is their sum.
    pub terms: Vec<LineTerm>,
    /// By whose word the count is.
    pub source: String,
}

/// One term of a need, with the places that it comes from.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LineTerm {
    /// Of what.
    pub of: Measure,
    /// What it adds to the need.
    pub need: f64,
    /// How it was worked out, in words: "12 modules × 5".
    pub words: String,
    /// Where on the roof. Shared between all parts that count the same thing.
    #[schemars(with = "Vec<Place>")]
    pub places: Arc<Vec<Place>>,
}

/// One place that a quantity comes from.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Place {
    /// The block.
    pub block: BlockId,
    /// Which of its kind, for people: "row 2, column 3", "head, row 3".
    pub label: String,
    /// How much is counted here: 1 for a piece, metres, square metres.
    pub amount: f64,
    /// Where on the block's face, in its frame, metres.
    #[schemars(skip)]
    pub shape: PlaceShape,
}

/// Where a place is, in the frame of the block's face, metres.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PlaceShape {
    /// A spot.
    #[serde(serialize_with = "as_pair")]
    Point(DVec2),
    /// A way.
    #[serde(serialize_with = "as_pairs")]
    Path(Vec<DVec2>),
    /// A rectangle.
    Rect(Rect),
}

fn as_pair<S: serde::Serializer>(point: &DVec2, serializer: S) -> Result<S::Ok, S::Error> {
    point.to_array().serialize(serializer)
}

fn as_pairs<S: serde::Serializer>(points: &[DVec2], serializer: S) -> Result<S::Ok, S::Error> {
    points.iter().map(|p| p.to_array()).collect::<Vec<_>>().serialize(serializer)
}
