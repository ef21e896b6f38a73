//! The order as JSON. The file has its own types, so that it stays as it is when the program's own types change.

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

/// The format name in a takeoff file.
pub const TAKEOFF_FORMAT: &str = "chalkcourse-takeoff";
/// The version of the takeoff format that this program writes.
pub const TAKEOFF_VERSION: u32 = 3;

/// The order for another program, as its [schema](takeoff_schema) says. Lengths are metres, areas square metres, money
/// decimals as texts; words are in `units`.
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
    /// Which kind of file this is.
    format: &'a str,
    /// Version of that kind.
    version: u32,
    /// What it holds.
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
    /// Findings that nobody waived.
    findings: &'a [String],
    /// Waived findings, with the reason.
    waivers: &'a [String],
    /// What to be careful about.
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
    /// Where each measure is taken. Terms of many lines share one, by its index.
    measures: Vec<MeasureData>,
    /// What amounts of money are in.
    currency: &'a str,
    /// The sum of the lines that have a price.
    #[schemars(with = "String")]
    priced_total: Decimal,
    /// From the lines to what the job is sold for.
    totals: &'a Totals,
    /// Numbers of the parts that are needed and have no price: the total is without them.
    unpriced: &'a [String],
    /// Work by crew.
    crews: &'a [CrewTime],
    /// What the count had to assume or could not do.
    #[schemars(with = "Vec<String>")]
    notes: &'a [Said],
}

/// One part on the order.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LineData<'a> {
    /// The maker's number.
    number: &'a str,
    /// What it is.
    #[schemars(with = "String")]
    name: &'a Said,
    /// Where it stands on the order.
    group: Group,
    /// The first stage of work at which some of it is needed.
    stage: Stage,
    /// Who does it, where it is work.
    crew: Option<&'a str>,
    /// What it is counted in; "length" is metres, "area" square metres, "time" hours, "mass" kilograms.
    unit: Unit,
    /// What the layout asks for.
    need: f64,
    /// Share that is lost: 0.05 is 5 %.
    waste: f64,
    /// By whose word that is.
    waste_from: &'a WasteFrom,
    /// The share that the faces' own cuts make waste of, where that can be worked out.
    waste_by_geometry: Option<f64>,
    /// Need and waste; pieces are whole.
    with_waste: f64,
    /// How much of that is taken from stock in hand.
    from_stock: f64,
    /// Whether that is the office's own gear.
    own: bool,
    /// What a package is called.
    #[schemars(with = "String")]
    package: Said,
    /// How much is in a package.
    holds: f64,
    /// Packages as counted.
    counted: u64,
    /// Packages to order.
    packages: u64,
    /// How much is in all of them.
    ordered: f64,
    /// Whether a person changed it.
    state: &'a LineState,
    /// The alternate that is taken in its place: number and name.
    alternate: Option<[&'a str; 2]>,
    /// Whether sales tax is on it.
    taxed: bool,
    /// For one package; null where the price list has none.
    #[schemars(with = "Option<String>")]
    price: Option<Decimal>,
    /// For all of them.
    #[schemars(with = "Option<String>")]
    cost: Option<Decimal>,
    /// How the need came about; the need is their sum, and pieces are whole.
    terms: Vec<TermData<'a>>,
    /// By whose word the count is.
    #[schemars(with = "String")]
    source: &'a Said,
}

/// One term of a need.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct TermData<'a> {
    /// Of what.
    of: &'a Measure,
    /// How much for each.
    each: &'a Amount,
    /// At which stage of work it is needed.
    stage: Stage,
    /// What it adds to the need.
    need: f64,
    /// How it was worked out, in words.
    words: String,
    /// Index of its measure, which has the places.
    measure: usize,
    /// How much of the need comes from each of these places.
    shares: Vec<f64>,
    /// How sticks are cut, where it is a cut list.
    #[serde(skip_serializing_if = "Option::is_none")]
    cuts: Option<CutsData>,
    /// How rolls are laid, where it is of roll goods.
    #[serde(skip_serializing_if = "Option::is_none")]
    laid: Option<LaidData>,
}

/// A cut list.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct CutsData {
    /// Length of all sticks, metres.
    bought: f64,
    /// What any way of cutting has to buy at least, metres.
    least: f64,
    /// Whether nothing less could be bought.
    proved: bool,
    /// Sticks that are cut alike.
    sticks: Vec<StickData>,
}

/// Sticks that are cut alike.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct StickData {
    /// How many.
    count: usize,
    /// Which length of stock: 0 is the part's own, n the n-th other one.
    stock: usize,
    /// Length of a stick, metres.
    length: f64,
    /// Pieces of each, metres.
    pieces: Vec<f64>,
    /// What is left of each, metres.
    left: f64,
}

/// Rolls as laid.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct LaidData {
    /// Rolls that were begun.
    rolls: u64,
    /// Length that comes off the rolls, metres.
    length: f64,
    /// Strips: index of the place, lower edge, left and right end in the frame of its face, metres.
    strips: Vec<(usize, f64, f64, f64)>,
}

/// A measure of the whole job.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct MeasureData {
    /// What is measured.
    of: Measure,
    /// What it is measured in.
    unit: Unit,
    /// How much in all.
    total: f64,
    /// Where.
    places: Vec<PlaceData>,
}

/// One place that a quantity comes from.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct PlaceData {
    /// Number of the face in its job; null where a quantity is for the job as a whole.
    face: Option<u32>,
    /// Number of the block in its job; null where the quantity comes from the roof itself.
    block: Option<u32>,
    /// Which of its kind, for people.
    label: String,
    /// How much is measured here.
    amount: f64,
    /// Where on the face, in its frame (u along the eave, v up the slope), metres.
    shape: ShapeData,
}

/// Where a place is.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
enum ShapeData {
    /// A spot.
    Point([f64; 2]),
    /// A way.
    Path(Vec<[f64; 2]>),
    /// A rectangle: lower left and upper right corner.
    Rect([[f64; 2]; 2]),
    /// An area, as rectangles that do not overlap one another.
    Area(Vec<[[f64; 2]; 2]>),
    /// Areas of any outline: rings, the outer one first, then holes.
    Outlines(Vec<Vec<Vec<[f64; 2]>>>),
    /// The job as a whole.
    Whole,
}

impl<'a> TakeoffData<'a> {
    /// An order, its words in `units`.
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
