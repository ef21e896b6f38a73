//! Sheets to print, and workbooks.
//!
//! - [`Output`]: all that leaves the program about a job, in one list: order, pallet list, claim, checklist and plan to build from on
//!   paper, the order as a workbook, drawings, the house as a picture with what must stand on it, texts and what other programs read
//! - [`plan_drawing`], [`face_drawing`]: drawings of lines, areas and words
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
mod output;
mod page;
mod svg;
mod workbook;

use build::build_sheet;
use caption::captioned;
use crew::{checklist_sheet, claim_sheet, pallet_sheet};
pub use drawing::{Drawing, Ink, Shape, edge_line, face_drawing, plan_drawing};
pub use output::{Made, Output};
pub use page::{Column, Part, Row, Sheet, pdf, words};
use svg::svg;
use workbook::order_workbook;

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
    /// There is nothing to draw yet.
    #[error("{}", tell!("no face is drawn yet", "todavía no se dibuja ningún faldón"))]
    NoRoof,
    /// Asked for a text of what is none.
    #[error("{}", tell!("this output is no text: it is written to a file", "esta salida no es texto: se escribe en un archivo"))]
    NoText,
    /// The order could not be written.
    #[error(transparent)]
    Order(#[from] chalkcourse_takeoff::OutputError),
    /// A number of a report is not finite, or the like.
    #[error("{}", tell!("the report could not be written: {_0}", "no se pudo escribir el informe: {_0}"))]
    Report(#[from] serde_json::Error),
    /// The plan has no place on the globe.
    #[error(transparent)]
    GeoJson(#[from] chalkcourse_exchange::GeoJsonOutError),
    /// There is no house.
    #[error(transparent)]
    Gltf(#[from] chalkcourse_exchange::GltfError),
    /// A picture can't hold what must stand on it.
    #[error(transparent)]
    Caption(#[from] chalkcourse_picture::CaptionError),
    /// A picture has no pixels.
    #[error(transparent)]
    Png(#[from] chalkcourse_picture::PngError),
    /// The writer of workbooks gave up.
    #[error("{}", tell!("the workbook could not be written: {_0}", "no se pudo escribir el libro de cálculo: {_0}"))]
    Workbook(#[from] rust_xlsxwriter::XlsxError),
}
