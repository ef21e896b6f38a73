use crate::amount::{self, share};
use crate::cutlist::CutList;
use crate::rolls::LaidOut;
use crate::{MeasuredPlace, Totals};
use chalkcourse_geometry::Units;
use chalkcourse_job::{Amount, Group, Measure, RoofKind, Stage, Unit};
use chalkcourse_words::{Count, Said};
use rust_decimal::Decimal;
use schemars::JsonSchema;
use serde::{Serialize, Serializer};
use std::sync::Arc;

/// An order, line by line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Takeoff {
    /// One for each part that is ordered, in the order of the kit, then those a person added.
    pub lines: Vec<Line>,
    /// Lines that a person switched off: as counted, but with nothing ordered.
    pub off: Vec<Line>,
    /// Currency of the amounts.
    pub currency: String,
    /// The job's units.
    pub units: Units,
    /// Sum of the lines that have a price.
    pub priced_total: Decimal,
    /// From line costs to the price of the job.
    pub totals: Totals,
    /// Numbers of the parts that are needed and have no price; the total excludes them.
    pub unpriced: Vec<String>,
    /// Hours by crew.
    pub crews: Vec<CrewTime>,
    /// What the count had to assume or could not do.
    pub notes: Vec<Said>,
}

/// The hours of one crew.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CrewTime {
    /// The crew.
    #[schemars(with = "String")]
    pub crew: Said,
    /// Crew size.
    pub people: u32,
    /// Person-hours of all of them together.
    pub person_hours: f64,
    /// Elapsed hours.
    pub hours: f64,
}

/// One line of the order.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: Said,
    /// Its group on the order.
    pub group: Group,
    /// The first stage of work that needs some of it.
    pub stage: Stage,
    /// The crew, for labour.
    pub crew: Option<String>,
    /// Unit of the quantities.
    pub unit: Unit,
    /// What the layout needs: pieces, metres, square metres, hours or kilograms. It is the sum of the terms; pieces are whole.
    pub need: f64,
    /// Waste share: 0.05 is 5 %.
    pub waste: f64,
    /// Source of the waste share.
    pub waste_from: WasteFrom,
    /// Waste share from cuts at the edges of the faces as drawn, if it can be calculated. For information, never used for the
    /// order, since breakage and miscuts are not in it.
    pub waste_by_geometry: Option<f64>,
    /// Need plus waste; pieces are whole.
    pub with_waste: f64,
    /// How much of that is taken from stock in hand.
    pub from_stock: f64,
    /// Whether the stock is the office's own gear, which comes back.
    pub own: bool,
    /// What a package is called.
    pub package: PackageName,
    /// Quantity in a package.
    pub holds: f64,
    /// Packages as calculated.
    pub counted: u64,
    /// Packages to order.
    pub packages: u64,
    /// Quantity in all packages ordered.
    pub ordered: f64,
    /// Whether a person changed the line.
    pub state: LineState,
    /// The alternate taken in its place: number and name.
    pub alternate: Option<(String, String)>,
    /// Price of one package; `None` if the price list has none.
    pub price: Option<Decimal>,
    /// Whether sales tax applies.
    pub taxed: bool,
    /// Cost of all packages, to the cent.
    pub cost: Option<Decimal>,
    /// How the need was counted.
    pub terms: Vec<LineTerm>,
    /// Source of the count.
    pub source: Said,
}

/// What a package is called.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PackageName {
    name: String,
    by_person: bool,
}

impl PackageName {
    /// A name from a kit, which has translations.
    pub fn of_kit(name: impl Into<String>) -> Self {
        Self { name: name.into(), by_person: false }
    }

    /// A name that a person gave.
    pub fn own(name: impl Into<String>) -> Self {
        Self { name: name.into(), by_person: true }
    }

    /// The singular.
    pub fn name(&self) -> Said {
        if self.by_person { Said::own(&self.name) } else { Said::of_data(&self.name) }
    }

    /// With a count; a person's own name takes no plural.
    pub fn counted(&self, count: impl Into<Count>) -> Said {
        if self.by_person {
            Said::own(count.into().times(&self.name))
        } else {
            Said::packages(count, &self.name)
        }
    }
}

impl Serialize for PackageName {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        self.name().serialize(to)
    }
}

/// Source of a waste share.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum WasteFrom {
    /// The kit's, the same on every roof.
    #[default]
    Kit,
    /// The kit's, by type of roof.
    Roof {
        /// The type of roof.
        kind: RoofKind,
        /// Whether a person chose the type; otherwise it is derived from the drawing.
        chosen: bool,
    },
    /// The office's own.
    Office {
        /// The office's reason.
        why: String,
    },
}

/// Whether and how a person changed a line.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum LineState {
    /// Unchanged.
    #[default]
    Counted,
    /// A person changed the number of packages.
    Overridden {
        /// Why.
        why: String,
    },
    /// A person added the line.
    Added {
        /// Why.
        why: String,
    },
    /// A person switched it off.
    Off {
        /// Why.
        why: String,
    },
}

/// One term of a need, with the places it comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct LineTerm {
    /// What is measured.
    pub of: Measure,
    /// Unit of the measure.
    pub of_unit: Unit,
    /// Amount measured in all places together.
    pub measured: f64,
    /// Amount per unit measured.
    pub each: Amount,
    /// The stage of work that needs it.
    pub stage: Stage,
    /// Whether it is only a spare, which nothing waits for.
    pub spare: bool,
    /// Unit of the part.
    pub unit: Unit,
    /// Contribution to the need: the sum of the [shares](Self::shares) of its places.
    pub need: f64,
    /// Places on the roof. Shared between all parts that count the same thing.
    pub places: Arc<Vec<MeasuredPlace>>,
    /// The cut list, if the term is one.
    pub cuts: Option<Arc<CutList>>,
    /// The strips, for roll goods.
    pub laid: Option<Arc<LaidOut>>,
}

impl LineTerm {
    /// Share of the need from each place, in the part's unit and the order of the places.
    pub fn shares(&self) -> impl Iterator<Item = f64> + '_ {
        let pooled = match (&self.cuts, &self.laid) {
            (Some(cuts), _) => Some(cuts.shares.as_slice()),
            (_, Some(laid)) => Some(laid.shares.as_slice()),
            _ => None,
        };
        self.places.iter().enumerate().map(move |(index, place)| match pooled {
            Some(shares) => shares.get(index).copied().unwrap_or(0.0),
            None => share(&self.each, self.of_unit, place.amount),
        })
    }
}

impl Line {
    /// Stages that need some of it, in order, each with the packages that must be on site by then: the cumulative need of all
    /// terms so far, without waste, less stock; no more than a person ordered.
    pub fn needed_by_stage(&self) -> Vec<(Stage, u64)> {
        let built_in = || self.terms.iter().filter(|term| term.need > 0.0 && !term.spare);
        let mut stages: Vec<Stage> = built_in().map(|term| term.stage).collect();
        if stages.is_empty() {
            // Added by hand, or work without a term: all of it is needed.
            return if self.packages > 0 { vec![(self.stage, self.packages)] } else { Vec::new() };
        }
        stages.sort_unstable();
        stages.dedup();
        let by = |stage: Stage| {
            let terms = built_in().filter(|term| term.stage <= stage);
            let need = terms.map(|term| term.need).sum::<f64>() - self.from_stock;
            (amount::whole(need / self.holds) as u64).min(self.packages)
        };
        stages.into_iter().map(|stage| (stage, by(stage))).filter(|(_, packages)| *packages > 0).collect()
    }
}
