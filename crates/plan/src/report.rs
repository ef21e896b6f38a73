//! A plan as text for the command line and as data for other programs. The numbers are the plan's own.

use crate::access::{PathwayReport, WindReport, pathway_reports, room_and_wind_text, wind_report};
use crate::base_line::{FromEdge, base_line};
use crate::standing::{Standing, open_words, standing, waived_words};
use crate::{Offers, Plan, Summary};
use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_job::{Orientation, Resolved, RuleBook};
use chalkcourse_rules::{Finding, Severity};
use chalkcourse_takeoff::{PalletRow, StageReady, pallet, stages_ready};
use chalkcourse_telling::order::{CAUTION, Header, OutputError, TakeoffData};
use chalkcourse_telling::{CheckedReport, FindingReport, checked};
use chalkcourse_words as words;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;
use std::fmt::Write;

/// A plan as data.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PlanReport<'a> {
    /// Always "chalkcourse-plan".
    pub format: &'static str,
    /// Version of this format.
    pub version: u32,
    /// Name of the job.
    pub job: &'a str,
    /// Caution.
    pub caution: &'static str,
    /// Where the job stands.
    #[serde(flatten)]
    pub standing: Standing,
    /// The job in numbers.
    pub summary: Summary,
    /// Faces in the order of the job.
    pub faces: Vec<FaceReport<'a>>,
    /// Roof lines by kind, each line once: total length on the slope, metres.
    pub lines_m: BTreeMap<EdgeKind, f64>,
    /// Blocks in the order of the job.
    pub blocks: Vec<BlockReport<'a>>,
    /// Findings of the rules.
    pub findings: Vec<FindingReport<'a>>,
    /// The order.
    pub takeoff: TakeoffData<'a>,
}

/// A face in a report.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FaceReport<'a> {
    /// Its number.
    pub id: u32,
    /// Its name.
    pub name: &'a str,
    /// Whether its outline is sound.
    pub sound: bool,
    /// Rise in 12.
    pub rise_in_12: f64,
    /// The direction of water runoff, degrees clockwise from north.
    pub downslope_degrees: f64,
    /// In m².
    pub plan_area_m2: f64,
    /// In m², on the slope.
    pub slope_area_m2: f64,
    /// Its edges.
    pub edges: Vec<EdgeReport>,
}

/// A segment of a face's border in a report.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct EdgeReport {
    /// Its kind.
    pub kind: EdgeKind,
    /// True length, metres.
    pub length_m: f64,
    /// Start and end in plan, metres.
    pub plan: [[f64; 2]; 2],
}

/// A block in a report.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct BlockReport<'a> {
    /// Its number.
    pub id: u32,
    /// Its name.
    pub name: &'a str,
    /// The number of its face.
    pub face: u32,
    /// Rows from the eave.
    pub rows: u32,
    /// Modules in a full row.
    pub columns: u32,
    /// Orientation of its modules.
    pub orientation: Orientation,
    /// Its modules.
    pub modules: Vec<ModuleReport>,
}

/// A module in a report.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct ModuleReport {
    /// Row from the eave, from 1.
    pub row: u32,
    /// Column from the left, from 1.
    pub column: u32,
    /// Lower left corner in the face's frame, metres.
    pub at_m: [f64; 2],
    /// Width and height on the deck, metres.
    pub size_m: [f64; 2],
}

/// Findings as data.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FindingsReport<'a> {
    /// Always "chalkcourse-findings".
    pub format: &'static str,
    /// Version of this format.
    pub version: u32,
    /// Name of the job.
    pub job: &'a str,
    /// The rule book that the job was checked against.
    pub rule_book: &'a str,
    /// What that book is based on.
    pub based_on: &'a str,
    /// Caution.
    pub caution: &'static str,
    /// Where the job stands.
    #[serde(flatten)]
    pub standing: Standing,
    /// Findings of the rules, most severe first.
    pub findings: Vec<FindingReport<'a>>,
    /// Pathways for the fire service, as found.
    pub pathways: Vec<PathwayReport>,
    /// Zones of wind suction and what is not computed; a screening.
    pub wind: WindReport,
    /// Every rule: whether it was checked, its source, and why it was not checked.
    pub checked: Vec<CheckedReport>,
}

/// A plan as data.
pub fn plan_report<'a>(job: &'a Resolved, plan: &'a Plan) -> PlanReport<'a> {
    let faces = job
        .faces
        .iter()
        .zip(&plan.layout.roof.faces)
        .map(|(face, on_roof)| FaceReport {
            id: face.id.0,
            name: &face.name,
            sound: on_roof.sound,
            rise_in_12: face.pitch.rise_in_12(),
            downslope_degrees: face.downslope.degrees(),
            plan_area_m2: on_roof.plan_area,
            slope_area_m2: on_roof.slope_area,
            edges: on_roof
                .edges
                .iter()
                .map(|edge| EdgeReport {
                    kind: edge.kind,
                    length_m: edge.length,
                    plan: [edge.plan.0.to_array(), edge.plan.1.to_array()],
                })
                .collect(),
        })
        .collect();
    let blocks = job
        .blocks
        .iter()
        .filter_map(|block| {
            let placed = plan.layout.block(block.id)?;
            Some(BlockReport {
                id: block.id.0,
                name: &block.name,
                face: block.face.0,
                rows: block.rows,
                columns: block.columns,
                orientation: block.orientation,
                modules: placed
                    .modules
                    .iter()
                    .map(|module| ModuleReport {
                        row: module.cell.row + 1,
                        column: module.cell.column + 1,
                        at_m: module.rect.min.to_array(),
                        size_m: module.rect.size().to_array(),
                    })
                    .collect(),
            })
        })
        .collect();
    PlanReport {
        format: "chalkcourse-plan",
        version: 1,
        job: &job.name,
        caution: CAUTION.now(),
        standing: standing(job, plan),
        summary: plan.summary,
        faces,
        lines_m: plan.lines(),
        blocks,
        findings: plan.told(job),
        takeoff: TakeoffData::of(&plan.takeoff, job.units),
    }
}

/// Findings as data, with the fixes that were searched.
pub fn findings_report<'a>(job: &'a Resolved, plan: &'a Plan, offers: &Offers) -> FindingsReport<'a> {
    let mut findings = plan.told(job);
    for finding in &mut findings {
        finding.fix = offers.words(job, finding.key);
    }
    FindingsReport {
        format: "chalkcourse-findings",
        version: 1,
        job: &job.name,
        rule_book: &job.rule_book.name,
        based_on: &job.rule_book.based_on,
        caution: CAUTION.now(),
        standing: standing(job, plan),
        findings,
        pathways: pathway_reports(job, plan),
        wind: wind_report(job, plan),
        checked: checked(job),
    }
}

/// The word for a severity, as used in lists.
pub fn severity_word(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => words::report::STOP.now(),
        Severity::Caution => words::report::CAUTION.now(),
        Severity::Note => words::report::NOTE.now(),
    }
}

/// One finding as lines of text: severity and code, message, source, waiver, key.
fn finding_text(job: &Resolved, finding: &Finding, offers: &Offers) -> String {
    let told = chalkcourse_telling::report(job, finding);
    let mut text = format!("{} [{}] {}\n", severity_word(finding.severity), finding.rule, told.message);
    let _ = writeln!(text, "{}", words::report::source(&told.source));
    if let Some(fix) = offers.words(job, &finding.key) {
        let _ = writeln!(text, "{}", words::report::fix(&fix));
    }
    if let Some(lapsed) = &told.lapsed {
        let _ = writeln!(text, "{}", words::report::waiver_lapsed(&lapsed));
    }
    if let Some(waiver) = &finding.waived {
        let _ = writeln!(text, "{}", words::report::waived_by_on(&waiver.by, &waiver.date, &waiver.reason));
    }
    let _ = writeln!(text, "{}", words::report::key(&finding.key));
    text
}

/// Findings as text, with the fixes that were searched.
pub fn findings_text(job: &Resolved, plan: &Plan, offers: &Offers) -> String {
    let book = &job.rule_book;
    let mut text = words::report::rule_book(&job.name, &book.name, &book.date, &book.based_on);
    text.push_str(&standing(job, plan).verdict());
    for finding in &plan.findings {
        text.push_str(&finding_text(job, finding, offers));
        text.push('\n');
    }
    let count =
        |severity| plan.findings.iter().filter(|f| f.severity == severity && f.waived.is_none()).count();
    let waived = plan.findings.iter().filter(|f| f.waived.is_some()).count();
    let _ = writeln!(
        text,
        "{}",
        words::report::to_stop_for_to_look(
            &count(Severity::Stop),
            &count(Severity::Caution),
            &count(Severity::Note),
            &waived
        )
    );
    text.push_str(&room_and_wind_text(job, plan));
    text.push_str(&checked_text(&checked(job)));
    let _ = writeln!(text, "\n{}", CAUTION.now());
    text
}

/// What was checked and what was not, as text.
fn checked_text(rules: &[CheckedReport]) -> String {
    let (on, off): (Vec<&CheckedReport>, Vec<&CheckedReport>) = rules.iter().partition(|rule| rule.on);
    let mut text = words::report::WHAT_WAS_CHECKED.now().to_owned();
    for rule in on {
        let _ = writeln!(text, "{}", words::report::source_2(&rule.title, &rule.code, &rule.source));
    }
    text.push_str(words::report::WHAT_WAS_NOT_CHECKED.now());
    if off.is_empty() {
        text.push_str(words::report::EVERY_RULE_OF_THIS_PROGRAM.now());
    }
    for rule in off {
        let why = rule.why_not.as_deref().unwrap_or_default();
        let _ = writeln!(text, "{}", words::report::because(&rule.title, &rule.code, &why));
    }
    text
}

/// The crew's checklist, to copy or print.
pub fn checklist_text(job: &Resolved, plan: &Plan) -> String {
    let mut text = words::report::crew_checklist_after_the_rule(&job.name, &job.rule_book.name);
    for line in standing(job, plan).lines() {
        let _ = writeln!(text, "{line}");
    }
    let mut about = String::new();
    for line in chalkcourse_telling::checklist(job, &plan.layout) {
        if line.about != about {
            let _ = writeln!(text, "\n{}", line.about);
            about.clone_from(&line.about);
        }
        let _ = writeln!(text, "{}", words::report::source_3(&line.text, &line.source.text));
    }
    let _ = writeln!(text, "\n{}", CAUTION.now());
    text
}

/// The fields in which two rule books differ, as text.
pub fn books_text(one: &RuleBook, other: &RuleBook) -> String {
    let differences = one.differences(other);
    let mut text = words::report::one_other(&one.name, &one.date, &other.name, &other.date);
    let _ = writeln!(text, "{}", words::report::fields_differ(differences.len()));
    for difference in &differences {
        let said =
            |value: &Option<String>| value.clone().unwrap_or_else(|| words::common::NOTHING.now().to_owned());
        let _ = writeln!(
            text,
            "{}",
            words::report::one_other_2(&difference.field, &said(&difference.one), &said(&difference.other))
        );
    }
    text
}

/// A plan as text.
pub fn plan_text(job: &Resolved, plan: &Plan) -> String {
    let mut text = format!("{}\n", job.name);
    if !job.site.address.is_empty() {
        let _ = writeln!(text, "{}", job.site.address);
    }
    text.push_str(&standing(job, plan).verdict());
    let summary = &plan.summary;
    let _ = writeln!(
        text,
        "{}",
        words::report::kw_kg_of_modules_roof(
            &modules_words(summary.modules),
            &format_args!("{:.2}", summary.kilowatts),
            &format_args!("{:.0}", summary.modules_kg),
            &area_text(summary.plan_area, job.units),
            &area_text(summary.slope_area, job.units),
            &area_text(summary.array_area, job.units)
        )
    );
    for (face, on_roof) in job.faces.iter().zip(&plan.layout.roof.faces) {
        let state = if on_roof.sound { "" } else { words::report::OUTLINE_IS_WRONG_SEE_THE.now() };
        let _ = writeln!(
            text,
            "{}",
            words::report::falls_in_plan_on_the(
                &format_args!("{:<16}", face.name),
                &format_args!("{:>6}", face.pitch.to_string()),
                &format_args!("{:<9}", face.downslope.to_string()),
                &format_args!("{:>12}", area_text(on_roof.plan_area, job.units)),
                &format_args!("{:>12}", area_text(on_roof.slope_area, job.units)),
                &state
            )
        );
    }
    text.push_str(words::report::LINES_OF_THE_ROOF.now());
    for (kind, metres) in plan.lines() {
        let _ = writeln!(text, "  {:<16} {:>14}", kind.name(), Length::from_metres(metres).show(job.units));
    }
    text.push_str(words::report::BLOCKS.now());
    for block in &job.blocks {
        let Some(placed) = plan.layout.block(block.id) else { continue };
        let face = job.face(block.face).map_or("", |face| face.name.as_str());
        let line = plan.layout.roof.faces.get(placed.face).and_then(|on_roof| base_line(on_roof, placed));
        let Some(line) = line else {
            let _ = writeln!(
                text,
                "{}",
                words::report::on_all_modules_are_switched(&format_args!("{:<16}", block.name), &face)
            );
            continue;
        };
        let from = |from: Option<FromEdge>| {
            let known = from.map(|from| {
                let length = Length::from_metres(from.length()).show(job.units);
                words::common::from_the(&length, &from.kind.name())
            });
            known.unwrap_or_else(|| words::common::NOT_KNOWN.now().to_owned())
        };
        let _ = writeln!(
            text,
            "{}",
            words::report::on_base_rail_its_left(
                &format_args!("{:<16}", block.name),
                &face,
                &rows_words(block.rows as usize, block.columns as usize),
                &modules_words(placed.modules.len()),
                &from(line.up),
                &from(line.along)
            )
        );
    }
    let _ = writeln!(text, "{}", words::report::FINDINGS);
    if plan.findings.is_empty() {
        text.push_str(words::report::NONE_AGAINST_THIS_RULE_BOOK.now());
    }
    for finding in &plan.findings {
        text.push_str(&finding_text(job, finding, &Offers::default()));
    }
    let _ = writeln!(text, "\n{}", CAUTION.now());
    text
}

/// The header of the order: open findings and waivers, in words.
pub fn order_header(job: &Resolved, plan: &Plan) -> Header {
    let line =
        |finding: &Finding| format!("{}: {}", severity_word(finding.severity), open_words(job, finding));
    let (waived, open): (Vec<&Finding>, Vec<&Finding>) =
        plan.findings.iter().partition(|f| f.waived.is_some());
    let waivers = waived.into_iter().filter_map(|finding| waived_words(job, finding)).collect();
    Header { findings: open.into_iter().map(line).collect(), waivers, ..Header::of(job) }
}

/// The order as text, by group or by stage of work.
pub fn order_text_by(job: &Resolved, plan: &Plan, by: chalkcourse_telling::order::By) -> String {
    let order =
        chalkcourse_telling::order::to_text_by(&plan.takeoff, &order_header(job, plan), job.units, by);
    standing(job, plan).verdict() + &order
}

/// The order as CSV, with no cell that a spreadsheet would take for a formula.
///
/// # Errors
/// [`OutputError`] if it can't be written.
pub fn order_csv(job: &Resolved, plan: &Plan) -> Result<String, OutputError> {
    chalkcourse_telling::order::to_csv(&plan.takeoff, &order_header(job, plan), job.units)
}

/// The order as JSON, with the places that each quantity comes from.
///
/// # Errors
/// [`OutputError`] if it can't be written.
pub fn order_json(job: &Resolved, plan: &Plan) -> Result<String, OutputError> {
    chalkcourse_telling::order::to_json(&plan.takeoff, &order_header(job, plan), job.units)
}

/// The pallet list as CSV, followed by open stops, waivers and the caution.
///
/// # Errors
/// [`OutputError`] if it can't be written.
pub fn pallet_csv(job: &Resolved, plan: &Plan) -> Result<String, OutputError> {
    let mut below = standing(job, plan).lines();
    below.push(CAUTION.now().to_owned());
    chalkcourse_telling::order::pallet_csv(&pallet(&plan.takeoff, &job.order.delivery), &below)
}

/// What is to be delivered, and which stages can start with what has arrived.
#[derive(Clone, Debug, Serialize)]
pub struct PalletReport {
    /// The pallet list.
    pub pallet: Vec<PalletRow>,
    /// Stage by stage.
    pub stages: Vec<StageReady>,
}

/// The pallet list as data.
pub fn pallet_report(job: &Resolved, plan: &Plan) -> PalletReport {
    let pallet = pallet(&plan.takeoff, &job.order.delivery);
    PalletReport { stages: stages_ready(&pallet), pallet }
}

/// The claim to the supplier about a delivery, with where the job stands.
pub fn claim_text(job: &Resolved, plan: &Plan) -> String {
    let rows = pallet(&plan.takeoff, &job.order.delivery);
    let claim = chalkcourse_telling::order::claim_text(&job.name, &job.order.delivery, &rows);
    with_standing(job, plan, &claim)
}

/// A text about a job, with where the job stands above and the caution below.
pub fn with_standing(job: &Resolved, plan: &Plan, text: &str) -> String {
    format!("{}{text}\n{}\n", standing(job, plan).head(), CAUTION.now())
}

/// "3 rows of 4"
pub fn rows_words(rows: usize, each: usize) -> String {
    words::report::rows_of(rows, &each)
}

/// "12 modules"
pub fn modules_words(modules: usize) -> String {
    words::common::modules(modules)
}

/// An area in square feet (and squares of 100 ft² for a roof) or square metres.
pub fn area_text(square_metres: f64, units: Units) -> String {
    match units {
        Units::FeetInches => format!("{:.1} ft²", square_metres / (0.3048 * 0.3048)),
        Units::Metric => format!("{square_metres:.2} m²"),
    }
}

impl Plan {
    /// Roof lines by kind, each line once: total length on the slope, metres.
    pub fn lines(&self) -> BTreeMap<EdgeKind, f64> {
        let mut lines = BTreeMap::new();
        for line in self.layout.roof.lines() {
            *lines.entry(line.kind).or_insert(0.0) += line.length;
        }
        lines
    }

    /// Findings as report entries, for data output and lists.
    pub fn told(&self, job: &Resolved) -> Vec<FindingReport<'_>> {
        self.findings.iter().map(|finding| chalkcourse_telling::report(job, finding)).collect()
    }

    /// The worst severity of the open findings.
    pub fn worst(&self) -> Option<Severity> {
        self.findings.iter().filter(|finding| finding.waived.is_none()).map(|finding| finding.severity).min()
    }
}
