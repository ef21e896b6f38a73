//! Sheets to print, and workbooks.
//!
//! - [`order_pdf`], [`order_workbook`]: what to order, by part or by stage of work
//! - [`pallet_pdf`], [`claim_pdf`]: the list to count on, and what to tell the supplier
//! - [`build_pdf`]: the plan that a crew builds from; [`plan_drawing`], [`face_drawing`], [`svg`]: its drawings
//! - [`checklist_pdf`]: what a crew goes through before and during the work
//! - [`captioned`]: a picture of the house with what must stand on it
//! - [`Sheet`], [`pdf`]: any text and tables on paper; [`words`]: what it says, page by page
//!
//! All are functions from a job and its plan to the bytes of a file; nothing here counts or judges. Every sheet carries the cautions,
//! and says of a job that something stops, on each page, that it is not to be built.

use chalkcourse_words::tell;
mod build;
mod caption;
mod crew;
mod drawing;
mod labels;
mod letters;
mod order;
mod page;
mod svg;
mod workbook;

pub use build::{build_pdf, build_sheet};
pub use caption::captioned;
pub use crew::{checklist_pdf, checklist_sheet, claim_pdf, claim_sheet, pallet_pdf, pallet_sheet};
pub use drawing::{Drawing, Ink, Shape, edge_line, face_drawing, plan_drawing};
pub use order::{order_pdf, order_sheet};
pub use page::{Column, Part, Row, Sheet, pdf, words};
pub use svg::svg;
pub use workbook::order_workbook;

/// Why a sheet could not be written.
#[derive(Debug, thiserror::Error)]
pub enum SheetError {
    /// A letter form is not as it should be.
    #[error("{}", tell!("the letters of the sheet can't be read", "no se pueden leer las letras de la hoja"))]
    Letters,
    /// A page has no room left beside its caution.
    #[error("{}", tell!("a page can't hold its caution and anything beside it", "una página no alcanza para su advertencia y algo más"))]
    NoRoom,
    /// The writer of print files gave up.
    #[error("{}", tell!("the sheet could not be written: {_0}", "no se pudo escribir la hoja: {_0}"))]
    Pdf(String),
    /// The writer of workbooks gave up.
    #[error("{}", tell!("the workbook could not be written: {_0}", "no se pudo escribir el libro de cálculo: {_0}"))]
    Workbook(#[from] rust_xlsxwriter::XlsxError),
}
