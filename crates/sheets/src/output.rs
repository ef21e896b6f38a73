//! The list of every export of a job. Window, command line and tests all take the kinds from here, so a new one is covered by the
//! content tests as soon as it is added.

use crate::order::order_sheet;
use crate::{
    Figure, Sheet, SheetError, build_sheet, captioned, checklist_sheet, claim_sheet, face_drawing,
    handover_sheet, labels_sheet, one_line_sheet, one_line_svg, order_workbook, page, pallet_sheet,
    plan_drawing, svg, wire_diagram_sheet, wire_diagram_svg,
};
use chalkcourse_exchange::{house_to_glb, plan_to_geojson};
use chalkcourse_job::Resolved;
use chalkcourse_picture::Picture;
use chalkcourse_plan::{
    Application, By, FaceCourses, Fill, FitUp, FitUpAsked, Offers, Plan, Standing, applied_report,
    applied_text, checklist_text, claim_text, courses_text, fills_report, fills_text, findings_report,
    findings_text, fit_up_text, order_csv, order_json, order_text_by, pallet_csv, pallet_report, plan_report,
    plan_text, roof_report, roof_text, standing, told, wires_report, wires_text, with_standing,
};
use chalkcourse_solid::{Show, solid};
use chalkcourse_takeoff::{Comparison, Line, PriceComparison};
use chalkcourse_telling::order::{CAUTION, comparison, lines_for_spreadsheet, offers};
use chalkcourse_wiring::Stringing;
use serde::Serialize;

/// An export before encoding.
#[derive(Debug)]
pub enum Made {
    /// Plain text, JSON, CSV and the like.
    Text(String),
    /// Pages to print.
    Sheet(Sheet),
    /// The bytes of a binary file.
    File(Vec<u8>),
}

/// Declares the kinds of output and the list of all their codes together.
macro_rules! outputs {
    ($life:lifetime; $($(#[$words:meta])+ $name:ident $(($($of:ty),+))? = $code:literal,)+) => {
        /// A kind of output, with its arguments other than job and plan.
        #[derive(Clone, Copy, Debug)]
        pub enum Output<$life> {
            $($(#[$words])+ $name $(($($of),+))?,)+
        }

        impl<$life> Output<$life> {
            /// The codes of all kinds.
            pub const CODES: &'static [&'static str] = &[$($code),+];

            /// Language-independent code of the kind.
            pub const fn code(&self) -> &'static str {
                match self {
                    $(Self::$name { .. } => $code,)+
                }
            }
        }
    };
}

outputs! { 'a;
    /// Findings of the rule book, with the fixes that were worked out.
    Findings(&'a Offers) = "findings",
    /// The same as JSON.
    FindingsJson(&'a Offers) = "findings-json",
    /// Roof, blocks, findings.
    Plan = "plan",
    /// The same as JSON, with the order.
    PlanJson = "plan-json",
    /// Roof measurements.
    Roof = "roof",
    /// The same as JSON.
    RoofJson = "roof-json",
    /// The order as text.
    Order(By) = "order",
    /// The order as CSV.
    OrderCsv = "order-csv",
    /// The order as JSON.
    OrderJson = "order-json",
    /// The order as a workbook (Office Open XML, ECMA-376).
    OrderWorkbook = "order-workbook",
    /// The order on paper.
    OrderSheet(By) = "order-sheet",
    /// Selected order lines, for pasting into a spreadsheet.
    OrderLines(&'a [&'a Line]) = "order-lines",
    /// The differences from another order.
    Compared(&'a Comparison) = "compared",
    /// The same as JSON.
    ComparedJson(&'a Comparison) = "compared-json",
    /// The order at the prices of several suppliers.
    Suppliers(&'a PriceComparison) = "suppliers",
    /// The same as JSON.
    SuppliersJson(&'a PriceComparison) = "suppliers-json",
    /// The pallet list with checkboxes, on paper.
    PalletSheet = "pallet-sheet",
    /// The pallet list to fill in, as CSV.
    PalletCsv = "pallet-csv",
    /// The pallet list and which stages can start, as JSON.
    PalletJson = "pallet-json",
    /// The claim to the supplier.
    Claim = "claim",
    /// The same on paper.
    ClaimSheet = "claim-sheet",
    /// The crew's checklist.
    Checklist = "checklist",
    /// The same on paper.
    ChecklistSheet = "checklist-sheet",
    /// The build sheet.
    BuildSheet = "build-sheet",
    /// The roof plan as a drawing (SVG 1.1).
    PlanDrawing = "plan-drawing",
    /// A face, by index in the job, drawn to scale (SVG 1.1).
    FaceDrawing(usize) = "face-drawing",
    /// The courses of faces.
    Courses(&'a [FaceCourses]) = "courses",
    /// The same as JSON.
    CoursesJson(&'a [FaceCourses]) = "courses-json",
    /// A block fitted up on a deck as measured.
    FitUp(&'a FitUpAsked, &'a FitUp) = "fit-up",
    /// The same as JSON.
    FitUpJson(&'a FitUp) = "fit-up-json",
    /// Report on a deck as measured that has no block yet.
    Deck(&'a str) = "deck",
    /// Results and claims of fills; the plan is the job's with all of them in place.
    Fills(&'a [Fill]) = "fills",
    /// The same as JSON.
    FillsJson(&'a [Fill]) = "fills-json",
    /// Results of an edit script; job and plan are those after it.
    Applied(&'a Application) = "applied",
    /// The same as JSON, with the file the job was saved to.
    AppliedJson(&'a Application, Option<&'a str>) = "applied-json",
    /// The house as a picture (PNG).
    Picture(&'a Picture) = "picture",
    /// The house before the array (PNG); carries no stop caption.
    PictureBefore(&'a Picture) = "picture-before",
    /// Circuits, with what is proved of those made automatically.
    Wires(Option<&'a Stringing>) = "wires",
    /// The same as JSON.
    WiresJson(Option<&'a Stringing>) = "wires-json",
    /// Each block face-on with its wires, on paper.
    WireDiagram = "wire-diagram",
    /// The same as a drawing (SVG 1.1).
    WireDiagramDrawing = "wire-diagram-drawing",
    /// The one-line diagram with all conductors, on paper.
    OneLine = "one-line",
    /// The same as a drawing (SVG 1.1).
    OneLineDrawing = "one-line-drawing",
    /// What a meter should show, and fields to fill in, for the electrician.
    Handover = "handover",
    /// The labels that the code asks for, to cut out, with where each goes.
    Labels = "labels",
    /// Faces, penetrations and modules georeferenced (GeoJSON, RFC 7946).
    GeoJson = "geojson",
    /// The house as a 3D model (glTF 2.0).
    Glb = "glb",
}

impl Output<'_> {
    /// Makes the output.
    ///
    /// # Errors
    /// [`SheetError`]: why it can't be made.
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
                Made::Text(svg(&Figure::of(&[(String::new(), drawing)], &[CAUTION.now()]), &stand()))
            }
            Self::FaceDrawing(index) => {
                let drawing = face_drawing(job, plan, index).ok_or(SheetError::NoRoof)?;
                Made::Text(svg(&Figure::of(&[(String::new(), drawing)], &[CAUTION.now()]), &stand()))
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
            Self::Wires(strung) => Made::Text(wires_text(job, plan, strung)),
            Self::WiresJson(strung) => {
                json(&told("chalkcourse-wires", job, plan, wires_report(job, plan, strung)))?
            }
            Self::WireDiagram => Made::Sheet(wire_diagram_sheet(job, plan)),
            Self::WireDiagramDrawing => Made::Text(wire_diagram_svg(job, plan)),
            Self::OneLine => Made::Sheet(one_line_sheet(job, plan)?),
            Self::OneLineDrawing => Made::Text(one_line_svg(job, plan)?),
            Self::Handover => Made::Sheet(handover_sheet(job, plan)),
            Self::Labels => Made::Sheet(labels_sheet(job, plan)),
            Self::GeoJson => Made::Text(plan_to_geojson(job, &plan.layout, &stand())?),
            Self::Glb => Made::File(house_to_glb(job, &solid(job, &plan.layout, Show::default()), &stand())?),
        })
    }

    /// The bytes of the file.
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

    /// The text of the output.
    ///
    /// # Errors
    /// As [`Output::made`], and [`SheetError::NoText`] for an output that is not text.
    pub fn text(&self, job: &Resolved, plan: &Plan) -> Result<String, SheetError> {
        match self.made(job, plan)? {
            Made::Text(text) => Ok(text),
            Made::Sheet(_) | Made::File(_) => Err(SheetError::NoText),
        }
    }
}

/// Faces under a common key.
#[derive(Serialize)]
struct Faces<'a> {
    faces: &'a [FaceCourses],
}

/// Lines to add below tabular output.
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
