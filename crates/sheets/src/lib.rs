//! Sheets to print, and workbooks.
//!
//! - [`Output`]: all that leaves the program about a job, in one list: order, pallet list, claim, checklist and plan to build from on
//!   paper, the order as a workbook, drawings, the house as a picture with what must stand on it, texts and what other programs read
//! - [`plan_drawing`], [`face_drawing`]: drawings of lines, areas and words
//! - [`Sheet`], [`pdf`]: any text and tables on paper; [`words`]: what it says, page by page
//!
//! All are functions from a job and its plan to the bytes of a file; nothing here counts or judges. Every sheet carries the cautions,
//! and says of a job that something stops, on each page, that it is not to be built.

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
    #[error("{}", chalkcourse_words::sheets::THE_LETTERS_OF_THE_SHEET.now().to_owned())]
    Letters,
    /// A page has no room left beside its caution.
    #[error("{}", chalkcourse_words::sheets::A_PAGE_CANT_HOLD_ITS.now().to_owned())]
    NoRoom,
    /// The writer of print files gave up.
    #[error("{}", chalkcourse_words::sheets::the_sheet_could_not_be(&_0))]
    Pdf(String),
    /// There is nothing to draw yet.
    #[error("{}", chalkcourse_words::sheets::NO_FACE_IS_DRAWN_YET.now().to_owned())]
    NoRoof,
    /// Asked for a text of what is none.
    #[error("{}", chalkcourse_words::sheets::THIS_OUTPUT_IS_NO_TEXT.now().to_owned())]
    NoText,
    /// The order could not be written.
    #[error(transparent)]
    Order(#[from] chalkcourse_telling::order::OutputError),
    /// A number of a report is not finite, or the like.
    #[error("{}", chalkcourse_words::sheets::the_report_could_not_be(&_0))]
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
    #[error("{}", chalkcourse_words::sheets::the_workbook_could_not_be(&_0))]
    Workbook(#[from] rust_xlsxwriter::XlsxError),
}
