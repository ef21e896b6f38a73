use crate::amount::share;
use crate::measure::Counted;
use crate::{Place, json, words};
use chalkcourse_geometry::Units;
use chalkcourse_job::{Amount, Group, Measure, Term, Unit};
use rust_decimal::Decimal;
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::{Serialize, Serializer};
use std::borrow::Cow;
use std::sync::Arc;

/// What to order, line by line. As JSON it is the `takeoff` of a [`to_json`](crate::to_json) file.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Takeoff {
    /// One for each part that is needed, in the order of the kit.
    pub lines: Vec<Line>,
    /// What amounts of money are in.
    pub currency: String,
    /// The job's units, for words in JSON.
    pub units: Units,
    /// The sum of the lines that have a price.
    pub priced_total: Decimal,
    /// Numbers of the parts that are needed and have no price: the total is without them.
    pub unpriced: Vec<String>,
}

/// One part on the order.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: String,
    /// Where it stands on the order.
    pub group: Group,
    /// What it is counted in.
    pub unit: Unit,
    /// What the layout asks for: pieces, metres or square metres. It is the sum of the terms; pieces are whole.
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
    pub price: Option<Decimal>,
    /// For all of them.
    pub cost: Option<Decimal>,
    /// How the need came about.
    pub terms: Vec<LineTerm>,
    /// By whose word the count is.
    pub source: String,
}

/// One term of a need, with the places that it comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct LineTerm {
    /// Of what.
    pub of: Measure,
    /// What that is measured in.
    pub of_unit: Unit,
    /// How much is measured in all places together.
    pub measured: f64,
    /// How much for each.
    pub each: Amount,
    /// What the part is counted in.
    pub unit: Unit,
    /// What the term adds to the need: the sum of the [shares](Self::share) of its places.
    pub need: f64,
    /// Where on the roof. Shared between all parts that count the same thing.
    pub places: Arc<Vec<Place>>,
}

impl LineTerm {
    pub(crate) fn new(term: &Term, unit: Unit, counted: &Counted) -> Self {
        let need = counted.places.iter().map(|place| share(&term.each, counted.unit, place.amount)).sum();
        Self {
            of: term.of.clone(),
            of_unit: counted.unit,
            measured: counted.total,
            each: term.each.clone(),
            unit,
            need,
            places: Arc::clone(&counted.places),
        }
    }

    /// How much of the need comes from one of the places: pieces, metres or square metres of the part.
    pub fn share(&self, place: &Place) -> f64 {
        share(&self.each, self.of_unit, place.amount)
    }

    /// How the need was worked out, in words: "12 modules × 5".
    pub fn words(&self, units: Units) -> String {
        words::of_term(self, units)
    }
}

impl Line {
    /// What to put on the truck, in words: "3 boxes of 25", "2 rolls of 100'".
    pub fn packages_words(&self, units: Units) -> String {
        words::packages(self, units)
    }
}

impl Serialize for Takeoff {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        json::TakeoffData::of(self, self.units).serialize(serializer)
    }
}

impl JsonSchema for Takeoff {
    fn schema_name() -> Cow<'static, str> {
        "Takeoff".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        json::TakeoffData::json_schema(generator)
    }
}
