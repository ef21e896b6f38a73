//! The order as JSON. The file format has types of its own, so that it does not change when the program's types do.

use super::words::term_words;
use super::{Header, OutputError};
use chalkcourse_geometry::{DVec2, Polygon, Rect, Units};
use chalkcourse_job::{Amount, Group, Measure, Stage, Unit};
use chalkcourse_takeoff::{
    CrewTime, CutList, LaidOut, Line, LineState, LineTerm, MeasuredPlace, MeasuredShape, Takeoff, Totals,
    WasteFrom,
};
use chalkcourse_words::Said;
use rust_decimal::Decimal;
use schemars::{JsonSchema, Schema};
use serde::Serialize;
use std::sync::Arc;

/// The format name of a takeoff file.
pub const TAKEOFF_FORMAT: &str = "chalkcourse-takeoff";
/// The version of the takeoff format written by this program.
pub const TAKEOFF_VERSION: u32 = 3;

/// The order as JSON, per its [schema](takeoff_schema). Lengths are metres, areas square metres, money decimals as strings; words
/// are in `units`.
///
/// # Errors
/// [`OutputError::Json`] for a number that JSON can't hold.
pub fn to_json(takeoff: &Takeoff, header: &Header, units: Units) -> Result<String, OutputError> {
    let file = File {
        format: TAKEOFF_FORMAT,
        version: TAKEOFF_VERSION,
        data: Data {
            job: &header.job,
            kit: &header.kit,
            rule_book: &header.rule_book,
            prices: &header.prices,
            findings: &header.findings,
            waivers: &header.waivers,
            caution: &header.caution,
            takeoff: TakeoffData::of(takeoff, units),
        },
    };
    let mut text = serde_json::to_string_pretty(&file)?;
    text.push('\n');
    Ok(text)
}

/// The JSON Schema (2020-12) of a takeoff file.
pub fn takeoff_schema() -> Schema {
    let mut schema = schemars::schema_for!(File<'static>);
    schema.insert("title".to_owned(), TAKEOFF_FORMAT.into());
    schema
}

#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct File<'a> {
    /// The kind of file.
    format: &'a str,
    /// The version of the format.
    version: u32,
    /// The order and its header.
    data: Data<'a>,
}

#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct Data<'a> {
    /// The job.
    job: &'a str,
    /// The kit and its issue.
    kit: &'a str,
    /// The rule book.
    rule_book: &'a str,
    /// The price list and its date.
    prices: &'a str,
    /// Findings that are not waived.
    findings: &'a [String],
    /// Waived findings, with the reason.
    waivers: &'a [String],
    /// The caution.
    caution: &'a str,
    /// What to order.
    takeoff: TakeoffData<'a>,
}

/// What to order.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(rename = "Takeoff")]
pub struct TakeoffData<'a> {
    /// One for each part that is needed.
    lines: Vec<LineData<'a>>,
    /// Lines that a person switched off.
    off: Vec<LineData<'a>>,
    /// Where each quantity is measured. Terms of several lines share a measure by its index.
    measures: Vec<MeasureData>,
    /// The currency of all amounts.
    currency: &'a str,
    /// Sum of the lines that have a price.
    #[schemars(with = "String")]
    priced_total: Decimal,
    /// From the line costs to the price of the job.
    totals: &'a Totals,
    /// Numbers of the parts that are needed and have no price; the total excludes them.
    unpriced: &'a [String],
    /// Hours by crew.
    crews: &'a [CrewTime],
    /// What the count had to assume or could not do.
    #[schemars(with = "Vec<String>")]
    notes: &'a [Said],
}

/// One line of the order.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LineData<'a> {
    /// The maker's number.
    number: &'a str,
    /// What it is.
    #[schemars(with = "String")]
    name: &'a Said,
    /// Its group on the order.
    group: Group,
    /// The first stage of work that needs some of it.
    stage: Stage,
    /// The crew, for labour.
    crew: Option<&'a str>,
    /// Unit of the quantities: "length" is metres, "area" square metres, "time" hours, "mass" kilograms.
    unit: Unit,
    /// What the layout needs.
    need: f64,
    /// Waste share: 0.05 is 5 %.
    waste: f64,
    /// Source of the waste share.
    waste_from: &'a WasteFrom,
    /// Waste share from cuts at the edges of the faces alone, if it can be calculated.
    waste_by_geometry: Option<f64>,
    /// Need plus waste; pieces are whole.
    with_waste: f64,
    /// How much of that is taken from stock in hand.
    from_stock: f64,
    /// Whether the stock is the office's own gear.
    own: bool,
    /// What a package is called.
    #[schemars(with = "String")]
    package: Said,
    /// Quantity in a package.
    holds: f64,
    /// Packages as calculated.
    counted: u64,
    /// Packages to order.
    packages: u64,
    /// Quantity in all packages ordered.
    ordered: f64,
    /// Whether a person changed the line.
    state: &'a LineState,
    /// The alternate taken in its place: number and name.
    alternate: Option<[&'a str; 2]>,
    /// Whether sales tax applies.
    taxed: bool,
    /// Price of one package; null if the price list has none.
    #[schemars(with = "Option<String>")]
    price: Option<Decimal>,
    /// Cost of all packages.
    #[schemars(with = "Option<String>")]
    cost: Option<Decimal>,
    /// How the need was counted; it is the sum of the terms, and pieces are whole.
    terms: Vec<TermData<'a>>,
    /// Source of the count.
    #[schemars(with = "String")]
    source: &'a Said,
}

/// One term of a need.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct TermData<'a> {
    /// What is measured.
    of: &'a Measure,
    /// Amount per unit measured.
    each: &'a Amount,
    /// The stage of work that needs it.
    stage: Stage,
    /// Its contribution to the need.
    need: f64,
    /// The calculation in words.
    words: String,
    /// Index of its measure, which holds the places.
    measure: usize,
    /// Share of the need that comes from each place.
    shares: Vec<f64>,
    /// The cut list, if the term is one.
    #[serde(skip_serializing_if = "Option::is_none")]
    cuts: Option<CutsData>,
    /// The strips, for roll goods.
    #[serde(skip_serializing_if = "Option::is_none")]
    laid: Option<LaidData>,
}

/// A cut list.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct CutsData {
    /// Total length of the sticks, metres.
    bought: f64,
    /// Lower bound on the length that any cutting plan has to buy, metres.
    least: f64,
    /// Whether the plan is proved optimal.
    proved: bool,
    /// Identical sticks, grouped.
    sticks: Vec<StickData>,
}

/// A group of identical sticks.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct StickData {
    /// How many.
    count: usize,
    /// Index of the stock length: 0 is the part's own, n the n-th other one.
    stock: usize,
    /// Length of a stick, metres.
    length: f64,
    /// Pieces cut from each, metres.
    pieces: Vec<f64>,
    /// Offcut of each, metres.
    left: f64,
}

/// Rolls as laid.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LaidData {
    /// Rolls started.
    rolls: u64,
    /// Length used off the rolls, metres.
    length: f64,
    /// Strips: index of the place, lower edge, left and right end in the frame of its face, metres.
    strips: Vec<(usize, f64, f64, f64)>,
}

/// A quantity measured over the whole job.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct MeasureData {
    /// What is measured.
    of: Measure,
    /// Unit of the measure.
    unit: Unit,
    /// How much in all.
    total: f64,
    /// The places it adds up from.
    places: Vec<PlaceData>,
}

/// One place where a quantity arises.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PlaceData {
    /// Number of the face in its job; null for a quantity of the job as a whole.
    face: Option<u32>,
    /// Number of the block in its job; null for a quantity of the roof itself.
    block: Option<u32>,
    /// Which of its kind, as a label.
    label: String,
    /// Amount measured here.
    amount: f64,
    /// Position on the face, in its frame (u along the eave, v up the slope), metres.
    shape: ShapeData,
}

/// Geometry of a place.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
enum ShapeData {
    /// A point.
    Point([f64; 2]),
    /// A polyline.
    Path(Vec<[f64; 2]>),
    /// A rectangle: lower left and upper right corner.
    Rect([[f64; 2]; 2]),
    /// An area, as non-overlapping rectangles.
    Area(Vec<[[f64; 2]; 2]>),
    /// Areas of arbitrary outline, as rings: the outer one first, then holes.
    Outlines(Vec<Vec<Vec<[f64; 2]>>>),
    /// The whole job, no particular place.
    Whole,
}

impl<'a> TakeoffData<'a> {
    /// An order, with its words in `units`.
    pub fn of(takeoff: &'a Takeoff, units: Units) -> Self {
        let mut seen: Vec<(&Measure, &Arc<Vec<MeasuredPlace>>)> = Vec::new();
        let mut measures = Vec::new();
        let mut term = |term: &'a LineTerm| {
            let known =
                seen.iter().position(|(of, places)| **of == term.of && Arc::ptr_eq(places, &term.places));
            let measure = known.unwrap_or_else(|| {
                seen.push((&term.of, &term.places));
                measures.push(MeasureData {
                    of: term.of.clone(),
                    unit: term.of_unit,
                    total: term.measured,
                    places: term.places.iter().map(PlaceData::of).collect(),
                });
                measures.len() - 1
            });
            TermData {
                stage: term.stage,
                of: &term.of,
                each: &term.each,
                need: term.need,
                words: term_words(term, units),
                measure,
                shares: term.shares().collect(),
                cuts: term.cuts.as_deref().map(CutsData::of),
                laid: term.laid.as_deref().map(LaidData::of),
            }
        };
        let mut line = |line: &'a Line| LineData::of(line, line.terms.iter().map(&mut term).collect());
        let lines = takeoff.lines.iter().map(&mut line).collect();
        let off = takeoff.off.iter().map(&mut line).collect();
        Self {
            lines,
            off,
            measures,
            currency: &takeoff.currency,
            priced_total: takeoff.priced_total,
            totals: &takeoff.totals,
            unpriced: &takeoff.unpriced,
            crews: &takeoff.crews,
            notes: &takeoff.notes,
        }
    }
}

impl<'a> LineData<'a> {
    fn of(line: &'a Line, terms: Vec<TermData<'a>>) -> Self {
        Self {
            number: &line.number,
            name: &line.name,
            group: line.group,
            stage: line.stage,
            crew: line.crew.as_deref(),
            unit: line.unit,
            need: line.need,
            waste: line.waste,
            waste_from: &line.waste_from,
            waste_by_geometry: line.waste_by_geometry,
            with_waste: line.with_waste,
            from_stock: line.from_stock,
            own: line.own,
            package: line.package.name(),
            holds: line.holds,
            counted: line.counted,
            packages: line.packages,
            ordered: line.ordered,
            state: &line.state,
            alternate: line.alternate.as_ref().map(|(number, name)| [number.as_str(), name.as_str()]),
            taxed: line.taxed,
            price: line.price,
            cost: line.cost,
            terms,
            source: &line.source,
        }
    }
}

impl CutsData {
    fn of(cuts: &CutList) -> Self {
        let sticks = cuts.alike().into_iter().map(|(count, stick)| StickData {
            count,
            stock: stick.stock,
            length: stick.length,
            pieces: stick.pieces.iter().map(|piece| piece.length).collect(),
            left: stick.left,
        });
        Self { bought: cuts.bought, least: cuts.least, proved: cuts.proved, sticks: sticks.collect() }
    }
}

impl LaidData {
    fn of(laid: &LaidOut) -> Self {
        let strips = laid.strips.iter().map(|strip| (strip.place, strip.low, strip.from, strip.to));
        Self { rolls: laid.rolls, length: laid.length, strips: strips.collect() }
    }
}

impl PlaceData {
    fn of(place: &MeasuredPlace) -> Self {
        let rect = |rect: &Rect| [rect.min.to_array(), rect.max.to_array()];
        let shape = match &place.shape {
            MeasuredShape::Point(at) => ShapeData::Point(at.to_array()),
            MeasuredShape::Path(path) => ShapeData::Path(path.iter().map(DVec2::to_array).collect()),
            MeasuredShape::Rect(at) => ShapeData::Rect(rect(at)),
            MeasuredShape::Area(rects) => ShapeData::Area(rects.iter().map(rect).collect()),
            MeasuredShape::Outlines(outlines) => {
                let ring = |ring: &[DVec2]| ring.iter().map(DVec2::to_array).collect();
                let rings = |outline: &Polygon| outline.rings().map(ring).collect();
                ShapeData::Outlines(outlines.iter().map(rings).collect())
            }
            MeasuredShape::Whole => ShapeData::Whole,
        };
        Self {
            face: place.face.map(|face| face.0),
            block: place.block.map(|block| block.0),
            label: place.label().into(),
            amount: place.amount,
            shape,
        }
    }
}
