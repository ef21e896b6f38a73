//! The one pipeline: a job gives a plan, with everything that follows from it. Nothing is stored twice, and the
//! window, the sheets and the command line read the same plan.
//!
//! [`evaluate`] is pure and total. [`Evaluator`] gives the same answer and remembers the roof between calls, since
//! a block that is dragged leaves the roof and most cut lists as they were.

mod access;
mod applied;
mod arrange;
mod base_line;
mod cost;
mod coursing;
mod fill;
mod fit_up;
mod fixes;
mod raised;
mod report;
mod roof_report;
mod room;
mod seen;
mod standing;
mod wires_report;

pub use access::{PathwayReport, WindFaceReport, WindReport};
pub use applied::{
    Application, AppliedReport, AppliedStep, BeforeAfter, applied_report, applied_text, apply_script,
};
pub use arrange::{
    Align, Cut, Slide, Spread, align, copy_to_face, distribute, join, make_room, mirror, new_block_name,
    other_slope, slide_clear, split,
};
pub use base_line::{BaseLine, FromEdge, base_line};
pub use cost::{GroupCost, StepCost, cost_by_group, cost_by_rows};
pub use coursing::{
    BlockCourses, CoursedPlace, CoursesError, FaceCourses, base_edit, block_span, courses_text, coursing,
    cut_words, exposure_edit, whole_words,
};
pub use fill::{
    Cost, Fill, FillError, FillsReport, HeldBack, Measure, MeasureOf, Mode, Near, NearStop, Size, Target,
    Way, Win, Worth, fill, fill_edit, fill_improving, fills_report, fills_text, hold_back, lying,
};
pub use fit_up::{
    FitUp, FitUpAsked, RowFit, deck_as_drawn, deck_measured, fit_up, fit_up_text, reveal_words, row_errors,
    row_words,
};
pub use fixes::{Change, Fix, Fixes, Offers, Step, fix_words, fixes, open_findings};
pub use raised::{Ends, RaiseAs, part_over, raise_roof};
pub use report::{
    BlockReport, EdgeReport, FaceReport, FindingsReport, ModuleReport, PalletReport, PlanReport, area_text,
    books_text, checklist_text, claim_text, findings_report, findings_text, modules_words, order_csv,
    order_header, order_json, order_text_by, pallet_csv, pallet_report, plan_report, plan_text, rows_words,
    severity_word, with_standing,
};
pub use room::What;
pub use seen::Seen;
pub use standing::{NOT_TO_BUILD, Standing, Told, is_bare_cost, standing, told};

pub use roof_report::{
    EdgeRow, Heights, LineRow, RoofFaceRow, RoofReport, heights_text, roof_report, roof_text,
};

pub use wires_report::{
    CircuitReport, ConnectionReport, DropReport, ElectricalReport, OvercurrentReport, StretchReport,
    StrungReport, WindowReport, WiresReport, claim_words, unknown_wires, wires_report, wires_text,
};

pub use chalkcourse_takeoff::{compare, compare_prices, pallet, stages_ready};
pub use chalkcourse_telling::order::{By, CAUTION};

use chalkcourse_geometry::Roof;
use chalkcourse_job::{Face, Resolved};
use chalkcourse_layout::{Layout, assemble};
use chalkcourse_rules::{Checker, Finding, RuleRun};
use chalkcourse_takeoff::Takeoff;
use chalkcourse_wiring::Wires;
use std::sync::Arc;

/// What follows from a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// What stands where.
    pub layout: Layout,
    /// What the rules found, the most severe first.
    pub findings: Vec<Finding>,
    /// What to order.
    pub takeoff: Takeoff,
    /// The circuits as wired.
    pub wires: Wires,
    /// The job in numbers.
    pub summary: Summary,
}

/// The job in numbers.
#[derive(Clone, Copy, Debug, Default, PartialEq, serde::Serialize, schemars::JsonSchema)]
pub struct Summary {
    /// Modules on the roof.
    pub modules: usize,
    /// Rated power of the array, in kilowatts.
    pub kilowatts: f64,
    /// Mass of the modules, in kilograms.
    pub modules_kg: f64,
    /// Plan area of the roof, in m².
    pub plan_area: f64,
    /// Area on the slope, in m².
    pub slope_area: f64,
    /// Area of the deck under the arrays, in m².
    pub array_area: f64,
}

/// Works out everything that follows from a job.
pub fn evaluate(job: &Resolved) -> Plan {
    on_roof(job, Arc::new(assemble(job)), &mut Memory::default())
}

/// [`evaluate`] with a memory of the last roof, and of what the rules found on it.
#[derive(Debug, Default)]
pub struct Evaluator {
    last: Option<(Vec<Face>, Arc<Roof>)>,
    roofs: u64,
    memory: Memory,
}

impl Evaluator {
    /// The same plan as [`evaluate`] gives.
    pub fn evaluate(&mut self, job: &Resolved) -> Plan {
        let roof = match &self.last {
            Some((faces, roof)) if *faces == job.faces => Arc::clone(roof),
            _ => {
                let roof = Arc::new(assemble(job));
                self.last = Some((job.faces.clone(), Arc::clone(&roof)));
                self.roofs += 1;
                roof
            }
        };
        on_roof(job, roof, &mut self.memory)
    }

    /// What the rules were run for in the last plan: for a test of what was not.
    pub fn rule_runs(&self) -> &[RuleRun] {
        self.memory.checker.runs()
    }

    /// How many times a roof was put together: for a test of what was not.
    pub fn roofs_assembled(&self) -> u64 {
        self.roofs
    }
}

/// What is remembered from plan to plan.
#[derive(Debug, Default)]
struct Memory {
    layout: chalkcourse_layout::Memo,
    checker: Checker,
    takeoff: chalkcourse_takeoff::Memo,
}

fn on_roof(job: &Resolved, roof: Arc<Roof>, memory: &mut Memory) -> Plan {
    let layout = Layout::on_roof_with(job, roof, &mut memory.layout);
    let wires = Wires::of(job, &layout);
    let findings = memory.checker.check_wired(job, &layout, &wires);
    let takeoff = chalkcourse_takeoff::take_off_with(job, &layout, &wires, &mut memory.takeoff);
    let modules = layout.blocks.iter().map(|block| block.modules.len()).sum();
    let summary = Summary {
        modules,
        kilowatts: modules as f64 * job.kit.module.watts / 1000.0,
        modules_kg: modules as f64 * job.kit.module.mass_kg,
        plan_area: layout.roof.plan_area(),
        slope_area: layout.roof.slope_area(),
        // an empty sum of floats is -0
        array_area: layout.blocks.iter().map(|block| block.area_under()).sum::<f64>() + 0.0,
    };
    Plan { layout, findings, takeoff, wires, summary }
}

/// The JSON Schemas of all files that the program reads or writes, by name.
pub fn schemas() -> Vec<(&'static str, serde_json::Value)> {
    vec![
        ("job", chalkcourse_job::job_schema().to_value()),
        ("kit", chalkcourse_job::kit_schema().to_value()),
        ("rule-book", chalkcourse_job::rule_book_schema().to_value()),
        ("price-list", chalkcourse_job::price_list_schema().to_value()),
        ("pieces", chalkcourse_job::pieces_schema().to_value()),
        ("edits", chalkcourse_job::edits_schema().to_value()),
        ("applied", schemars::schema_for!(AppliedReport).to_value()),
        ("findings", schemars::schema_for!(FindingsReport).to_value()),
        ("takeoff", chalkcourse_telling::order::takeoff_schema().to_value()),
        ("plan", schemars::schema_for!(PlanReport).to_value()),
        ("wires", schemars::schema_for!(WiresReport).to_value()),
        ("roof", schemars::schema_for!(RoofReport).to_value()),
    ]
}
