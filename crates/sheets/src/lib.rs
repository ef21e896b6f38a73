//! Sheets to print, and workbooks.
//!
//! - [`order_pdf`], [`order_workbook`]: what to order, by part or by stage of work
//! - [`pallet_pdf`], [`claim_pdf`]: the list to count on, and what to tell the supplier
//! - [`build_pdf`]: the plan that a crew builds from; [`plan_drawing`], [`face_drawing`], [`svg`]: its drawings
//! - [`checklist_pdf`]: what a crew goes through before and during the work
//! - [`Sheet`], [`pdf`]: any text and tables on paper
//!
//! All are functions from a job and its plan to the bytes of a file; nothing here counts or judges. Every sheet carries the cautions.

use chalkcourse_words::tell;
mod build;
mod crew;
mod drawing;
mod letters;
mod order;
mod page;
mod svg;
mod workbook;

pub use build::build_pdf;
pub use crew::{checklist_pdf, claim_pdf, pallet_pdf};
pub use drawing::{Drawing, Ink, Shape, edge_line, face_drawing, plan_drawing};
pub use order::order_pdf;
pub use page::{Column, Part, Row, Sheet, pdf};
pub use svg::svg;
pub use workbook::order_workbook;

/// Why a sheet could not be written.
#[derive(Debug, thiserror::Error)]
pub enum SheetError {
    /// A letter form is not as it should be.
    #[error("{}", tell!("the letters of the sheet can't be read", "no se pueden leer las letras de la hoja"))]
    Letters,
    /// The writer of print files gave up.
    #[error("{}", tell!("the sheet could not be written: {_0}", "no se pudo escribir la hoja: {_0}"))]
    Pdf(String),
    /// The writer of workbooks gave up.
    #[error("{}", tell!("the workbook could not be written: {_0}", "no se pudo escribir el libro de cálculo: {_0}"))]
    Workbook(#[from] rust_xlsxwriter::XlsxError),
}
