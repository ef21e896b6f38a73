//! All that leaves the program about a job, in one list: window, command line and tests take each kind from here, so that a new
//! one stands in the tests of what must be on it as soon as it is there.

use crate::order::order_sheet;
use crate::{
    Sheet, SheetError, build_sheet, captioned, checklist_sheet, claim_sheet, face_drawing, order_workbook,
    page, pallet_sheet, plan_drawing, svg,
};
use chalkcourse_exchange::{house_to_glb, plan_to_geojson};
use chalkcourse_job::Resolved;
use chalkcourse_picture::Picture;
use chalkcourse_plan::{
    Application, By, FaceCourses, Fill, FitUp, FitUpAsked, Offers, Plan, Standing, applied_report,
    applied_text, checklist_text, claim_text, courses_text, fills_report, fills_text, findings_report,
    findings_text, fit_up_text, order_csv, order_json, order_text_by, pallet_csv, pallet_report, plan_report,
    plan_text, roof_report, roof_text, standing, told, with_standing,
};
use chalkcourse_solid::{Show, solid};
use chalkcourse_takeoff::{Comparison, Line, PriceComparison};
use chalkcourse_telling::order::{comparison, lines_for_spreadsheet, offers};
use serde::Serialize;

/// Something that leaves the program, before it is bytes.
#[derive(Debug)]
pub enum Made {
    /// Words to read, or a text for other programs.
    Text(String),
    /// Pages to print.
    Sheet(Sheet),
    /// The bytes of a file that is no text.
    File(Vec<u8>),
}

/// Declares the kinds of output and the list of all their codes together.
macro_rules! outputs {
    ($life:lifetime; $($(#[$words:meta])+ $name:ident $(($($of:ty),+))? = $code:literal,)+) => {
        /// A kind of output, with what it tells beyond a job and its plan.
        #[derive(Clone, Copy, Debug)]
        pub enum Output<$life> {
            $($(#[$words])+ $name $(($($of),+))?,)+
        }

        impl<$life> Output<$life> {
            /// The codes of all kinds that there are.
            pub const CODES: &'static [&'static str] = &[$($code),+];

            /// A name for the kind, in no language.
            pub const fn code(&self) -> &'static str {
                match self {
                    $(Self::$name { .. } => $code,)+
                }
            }
        }
    };
}

outputs! { 'a;
    /// What the rule book finds, with the fixes that were worked out.
    Findings(&'a Offers) = "findings",
    /// The same for other programs.
    FindingsJson(&'a Offers) = "findings-json",
    /// Roof, blocks, findings.
    Plan = "plan",
    /// The same for other programs, with the order.
    PlanJson = "plan-json",
    /// The roof in numbers.
    Roof = "roof",
    /// The same for other programs.
    RoofJson = "roof-json",
    /// What to order.
    Order(By) = "order",
    /// The order for a spreadsheet.
    OrderCsv = "order-csv",
    /// The order for other programs.
    OrderJson = "order-json",
    /// The order as a workbook (Office Open XML, ECMA-376).
    OrderWorkbook = "order-workbook",
    /// The order on paper.
    OrderSheet(By) = "order-sheet",
    /// Some lines of the order, to paste into a spreadsheet.
    OrderLines(&'a [&'a Line]) = "order-lines",
    /// What the order has more or less than another.
    Compared(&'a Comparison) = "compared",
    /// The same for other programs.
    ComparedJson(&'a Comparison) = "compared-json",
    /// The order at several suppliers.
    Suppliers(&'a PriceComparison) = "suppliers",
    /// The same for other programs.
    SuppliersJson(&'a PriceComparison) = "suppliers-json",
    /// The pallet list to tick.
    PalletSheet = "pallet-sheet",
    /// The pallet list to fill in.
    PalletCsv = "pallet-csv",
    /// The pallet list and what can start, for other programs.
    PalletJson = "pallet-json",
    /// What to tell the supplier.
    Claim = "claim",
    /// The same on paper.
    ClaimSheet = "claim-sheet",
    /// What a crew goes through.
    Checklist = "checklist",
    /// The same on paper.
    ChecklistSheet = "checklist-sheet",
    /// The plan to build from.
    BuildSheet = "build-sheet",
    /// The plan as a drawing (SVG 1.1).
    PlanDrawing = "plan-drawing",
    /// A face by its place in the job, true to size (SVG 1.1).
    FaceDrawing(usize) = "face-drawing",
    /// Courses of faces.
    Courses(&'a [FaceCourses]) = "courses",
    /// The same for other programs.
    CoursesJson(&'a [FaceCourses]) = "courses-json",
    /// A block on a deck as measured.
    FitUp(&'a FitUpAsked, &'a FitUp) = "fit-up",
    /// The same for other programs.
    FitUpJson(&'a FitUp) = "fit-up-json",
    /// What a deck as measured says where no block is on it yet.
    Deck(&'a str) = "deck",
    /// What fills found, with what they claim; the plan is that of the job with all of them in place.
    Fills(&'a [Fill]) = "fills",
    /// The same for other programs.
    FillsJson(&'a [Fill]) = "fills-json",
    /// What a script of edits did; job and plan are those after it.
    Applied(&'a Application) = "applied",
    /// The same for other programs, with the file that the job went to.
    AppliedJson(&'a Application, Option<&'a str>) = "applied-json",
    /// The house as a picture (PNG).
    Picture(&'a Picture) = "picture",
    /// The house as it was before, without the array: nothing stops it.
    PictureBefore(&'a Picture) = "picture-before",
    /// Faces, penetrations and modules on the globe (RFC 7946).
    GeoJson = "geojson",
    /// The house in space (glTF 2.0).
    Glb = "glb",
}

impl Output<'_> {
    /// Makes it.
    ///
    /// # Errors
    /// [`SheetError`]: what can't be made, and why.
    pub fn made(&self, job: &Resolved, plan: &Plan) -> Result<Made, SheetError> {
        let stand = || standing(job, plan);
        Ok(match *self {
            Self::Findings(offers) => Made::Text(findings_text(job, plan, offers)),
            Self::FindingsJson(offers) => json(&findings_report(job, plan, offers))?,
            Self::Plan => Made::Text(plan_text(job, plan)),
            Self::PlanJson => json(&plan_report(job, plan))?,
            Self::Roof => Made::Text(roof_text(job, plan)),
            Self::RoofJson => json(&roof_report(job, plan))?,
            Self::Order(by) => Made::Text(order_text_by(job, plan, by)),
            Self::OrderCsv => Made::Text(order_csv(job, plan)?),
            Self::OrderJson => Made::Text(order_json(job, plan)?),
            Self::OrderWorkbook => Made::File(order_workbook(job, plan)?),
            Self::OrderSheet(by) => Made::Sheet(order_sheet(job, plan, by)),
            Self::OrderLines(lines) => Made::Text(lines_for_spreadsheet(lines, job.units, &below(&stand()))),
            Self::Compared(orders) => Made::Text(with_standing(job, plan, &comparison(orders))),
            Self::ComparedJson(comparison) => json(&told("chalkcourse-compared", job, plan, comparison))?,
            Self::Suppliers(prices) => Made::Text(with_standing(job, plan, &offers(prices))),
            Self::SuppliersJson(comparison) => json(&told("chalkcourse-suppliers", job, plan, comparison))?,
            Self::PalletSheet => Made::Sheet(pallet_sheet(job, plan)),
            Self::PalletCsv => Made::Text(pallet_csv(job, plan)?),
            Self::PalletJson => json(&told("chalkcourse-pallet", job, plan, pallet_report(job, plan)))?,
            Self::Claim => Made::Text(claim_text(job, plan)),
            Self::ClaimSheet => Made::Sheet(claim_sheet(job, plan)),
            Self::Checklist => Made::Text(checklist_text(job, plan)),
            Self::ChecklistSheet => Made::Sheet(checklist_sheet(job, plan)),
            Self::BuildSheet => Made::Sheet(build_sheet(job, plan)),
            Self::PlanDrawing => {
                let drawing = plan_drawing(job, plan).ok_or(SheetError::NoRoof)?;
                Made::Text(svg(&drawing, &stand()))
            }
            Self::FaceDrawing(index) => {
                let drawing = face_drawing(job, plan, index).ok_or(SheetError::NoRoof)?;
                Made::Text(svg(&drawing, &stand()))
            }
            Self::Courses(faces) => Made::Text(courses_text(job, faces, &stand())),
            Self::CoursesJson(faces) => json(&told("chalkcourse-courses", job, plan, Faces { faces }))?,
            Self::FitUp(asked, found) => Made::Text(fit_up_text(job, asked, found, &stand())),
            Self::FitUpJson(found) => json(&told("chalkcourse-fit-up", job, plan, found))?,
            Self::Deck(said) => Made::Text(with_standing(job, plan, said)),
            Self::Fills(fills) => Made::Text(fills_text(job, fills, plan)),
            Self::FillsJson(fills) => json(&fills_report(job, fills, plan))?,
            Self::Applied(done) => Made::Text(applied_text(done)),
            Self::AppliedJson(done, saved) => json(&applied_report(done, saved.map(str::to_owned)))?,
            Self::Picture(picture) => Made::File(captioned(picture.clone(), &stand())?.to_png()?),
            Self::PictureBefore(picture) => {
                Made::File(captioned(picture.clone(), &Standing::default())?.to_png()?)
            }
            Self::GeoJson => Made::Text(plan_to_geojson(job, &plan.layout, &stand())?),
            Self::Glb => Made::File(house_to_glb(job, &solid(job, &plan.layout, Show::default()), &stand())?),
        })
    }

    /// The bytes of its file.
    ///
    /// # Errors
    /// As [`Output::made`].
    pub fn bytes(&self, job: &Resolved, plan: &Plan) -> Result<Vec<u8>, SheetError> {
        match self.made(job, plan)? {
            Made::Text(text) => Ok(text.into_bytes()),
            Made::Sheet(sheet) => page::pdf(&sheet),
            Made::File(bytes) => Ok(bytes),
        }
    }

    /// Its text.
    ///
    /// # Errors
    /// As [`Output::made`], and [`SheetError::NoText`] for what is none.
    pub fn text(&self, job: &Resolved, plan: &Plan) -> Result<String, SheetError> {
        match self.made(job, plan)? {
            Made::Text(text) => Ok(text),
            Made::Sheet(_) | Made::File(_) => Err(SheetError::NoText),
        }
    }
}

/// Faces under their name.
#[derive(Serialize)]
struct Faces<'a> {
    faces: &'a [FaceCourses],
}

/// What stands below lines that are cells.
fn below(standing: &Standing) -> Vec<String> {
    let mut lines = standing.lines();
    lines.push(chalkcourse_plan::CAUTION.now().to_owned());
    lines
}

fn json(report: &impl Serialize) -> Result<Made, SheetError> {
    let mut text = serde_json::to_string_pretty(report)?;
    text.push('\n');
    Ok(Made::Text(text))
}
