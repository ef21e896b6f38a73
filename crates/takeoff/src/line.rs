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

/// What to order, line by line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Takeoff {
    /// One for each part that is ordered, in the order of the kit, then what a person added.
    pub lines: Vec<Line>,
    /// Lines that a person switched off: what they would have been, with nothing ordered.
    pub off: Vec<Line>,
    /// What amounts of money are in.
    pub currency: String,
    /// The job's units.
    pub units: Units,
    /// The sum of the lines that have a price.
    pub priced_total: Decimal,
    /// From the lines to what the job is sold for.
    pub totals: Totals,
    /// Numbers of the parts that are needed and have no price: the total is without them.
    pub unpriced: Vec<String>,
    /// Work by crew.
    pub crews: Vec<CrewTime>,
    /// What the count had to assume or could not do.
    pub notes: Vec<Said>,
}

/// The work of one crew.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CrewTime {
    /// The crew.
    #[schemars(with = "String")]
    pub crew: Said,
    /// How many they are.
    pub people: u32,
    /// Hours of all of them together.
    pub person_hours: f64,
    /// Hours on the clock.
    pub hours: f64,
}

/// One part on the order.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The maker's number.
    pub number: String,
    /// What it is.
    pub name: Said,
    /// Where it stands on the order.
    pub group: Group,
    /// The first stage of work at which some of it is needed.
    pub stage: Stage,
    /// Who does it, where it is work.
    pub crew: Option<String>,
    /// What it is counted in.
    pub unit: Unit,
    /// What the layout asks for: pieces, metres, square metres, hours or kilograms. It is the sum of the terms; pieces
    /// are whole.
    pub need: f64,
    /// Share that is lost: 0.05 is 5 %.
    pub waste: f64,
    /// By whose word that is.
    pub waste_from: WasteFrom,
    /// The share that the faces as drawn make waste of, by their own cuts, where that can be worked out: to be seen, never
    /// ordered by, since breakage and what a crew cuts amiss are not in it.
    pub waste_by_geometry: Option<f64>,
    /// Need and waste; pieces are whole.
    pub with_waste: f64,
    /// How much of that is taken from stock in hand.
    pub from_stock: f64,
    /// Whether that is the office's own gear, which comes back.
    pub own: bool,
    /// What a package is called.
    pub package: PackageName,
    /// How much is in a package.
    pub holds: f64,
    /// Packages as counted.
    pub counted: u64,
    /// Packages to order.
    pub packages: u64,
    /// How much is in all of them.
    pub ordered: f64,
    /// Whether a person changed it.
    pub state: LineState,
    /// The alternate that is taken in its place: number and name.
    pub alternate: Option<(String, String)>,
    /// For one package; none where the price list has none.
    pub price: Option<Decimal>,
    /// Whether sales tax is on it.
    pub taxed: bool,
    /// For all of them, to the cent.
    pub cost: Option<Decimal>,
    /// How the need came about.
    pub terms: Vec<LineTerm>,
    /// By whose word the count is.
    pub source: Said,
}

/// What a package is called.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PackageName {
    name: String,
    by_person: bool,
}

impl PackageName {
    /// One that a kit names: languages know it.
    pub fn of_kit(name: impl Into<String>) -> Self {
        Self { name: name.into(), by_person: false }
    }

    /// One that a person named.
    pub fn own(name: impl Into<String>) -> Self {
        Self { name: name.into(), by_person: true }
    }

    /// One of it.
    pub fn name(&self) -> Said {
        if self.by_person { Said::own(&self.name) } else { Said::of_data(&self.name) }
    }

    /// So many: what a person wrote takes no plural.
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

/// By whose word a share of waste is.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum WasteFrom {
    /// The kit's, on every roof.
    #[default]
    Kit,
    /// The kit's, by kind of roof.
    Roof {
        /// As which kind.
        kind: RoofKind,
        /// Whether a person chose it; else it is as drawn.
        chosen: bool,
    },
    /// The office's own.
    Office {
        /// By whose word.
        why: String,
    },
}

/// Whether a line is as counted.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum LineState {
    /// As counted.
    #[default]
    Counted,
    /// A person put another number of packages.
    Overridden {
        /// Why.
        why: String,
    },
    /// A person put the line on the order.
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
    /// At which stage of work it is needed.
    pub stage: Stage,
    /// Whether it is to have one in hand: nothing waits for it.
    pub spare: bool,
    /// What the part is counted in.
    pub unit: Unit,
    /// What the term adds to the need: the sum of the [shares](Self::shares) of its places.
    pub need: f64,
    /// Where on the roof. Shared between all parts that count the same thing.
    pub places: Arc<Vec<MeasuredPlace>>,
    /// How sticks are cut, where the term is a cut list.
    pub cuts: Option<Arc<CutList>>,
    /// How rolls are laid, where the term is of roll goods.
    pub laid: Option<Arc<LaidOut>>,
}

impl LineTerm {
    /// How much of the need comes from each of the places: in the part's unit, in the order of the places.
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
    /// Stages at which some of it is needed, first to last, each with packages that must be there by then: what all terms up to it
    /// need, without waste, less what is taken from stock; no more than a person ordered.
    pub fn needed_by_stage(&self) -> Vec<(Stage, u64)> {
        let built_in = || self.terms.iter().filter(|term| term.need > 0.0 && !term.spare);
        let mut stages: Vec<Stage> = built_in().map(|term| term.stage).collect();
        if stages.is_empty() {
            // Put on by hand, or work without a term: all of it is needed.
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
