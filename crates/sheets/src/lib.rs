//! Printed sheets, workbooks and every other export.
//!
//! - [`Output`]: the list of all exports of a job: order, pallet list, claim, checklist and build sheet on paper, the order as a
//!   workbook, drawings, pictures of the house with their captions, text, and formats for other software
//! - [`plan_drawing`], [`face_drawing`]: drawings of lines, areas and labels
//! - [`WireDiagram`]: what a wire diagram shows, block by block
//! - [`Sheet`], [`pdf`]: text and tables on paper; [`words`]: the text of a sheet, page by page
//!
//! All are functions from a job and its plan to the bytes of a file; nothing here counts or judges. Every sheet carries the
//! cautions, and if a finding stops the job, every page says that it is not to be built.

mod build;
mod caption;
mod crew;
mod drawing;
mod handover;
mod labels;
mod letters;
mod one_line;
mod order;
mod output;
mod page;
mod stickers;
mod svg;
mod wire_diagram;
mod wire_words;
mod workbook;

use build::build_sheet;
use caption::captioned;
use crew::{checklist_sheet, claim_sheet, pallet_sheet};
pub use drawing::{Drawing, Ink, Shape, edge_line, face_drawing, plan_drawing};
use handover::handover_sheet;
use one_line::{one_line_sheet, one_line_svg};
pub use output::{Made, Output};
pub use page::{Column, Part, Row, Sheet, StickOn, pdf, words};
use stickers::labels_sheet;
use svg::{Figure, svg};
pub use wire_diagram::{
    BlockWires, DrawnBox, DrawnEnd, DrawnGround, DrawnLink, DrawnModule, End, LinkPart, WireDiagram,
    circuit_line,
};
use wire_diagram::{wire_diagram_sheet, wire_diagram_svg};
use workbook::order_workbook;

/// Why a sheet could not be written.
#[derive(Debug, thiserror::Error)]
pub enum SheetError {
    /// The font could not be read.
    #[error("{}", chalkcourse_words::sheets::THE_LETTERS_OF_THE_SHEET.now().to_owned())]
    Letters,
    /// The caution leaves no room for content on a page.
    #[error("{}", chalkcourse_words::sheets::A_PAGE_CANT_HOLD_ITS.now().to_owned())]
    NoRoom,
    /// The PDF writer failed.
    #[error("{}", chalkcourse_words::sheets::the_sheet_could_not_be(&_0))]
    Pdf(String),
    /// Nothing is drawn yet.
    #[error("{}", chalkcourse_words::sheets::NO_FACE_IS_DRAWN_YET.now().to_owned())]
    NoRoof,
    /// Text was requested of an output that is not text.
    #[error("{}", chalkcourse_words::sheets::THIS_OUTPUT_IS_NO_TEXT.now().to_owned())]
    NoText,
    /// The order could not be written.
    #[error(transparent)]
    Order(#[from] chalkcourse_telling::order::OutputError),
    /// A report could not be serialized, e.g. because of a non-finite number.
    #[error("{}", chalkcourse_words::sheets::the_report_could_not_be(&_0))]
    Report(#[from] serde_json::Error),
    /// The plan is not georeferenced.
    #[error(transparent)]
    GeoJson(#[from] chalkcourse_exchange::GeoJsonOutError),
    /// There is no house to export.
    #[error(transparent)]
    Gltf(#[from] chalkcourse_exchange::GltfError),
    /// The captions do not fit on the picture.
    #[error(transparent)]
    Caption(#[from] chalkcourse_picture::CaptionError),
    /// A picture has no pixels.
    #[error(transparent)]
    Png(#[from] chalkcourse_picture::PngError),
    /// The workbook writer failed.
    #[error("{}", chalkcourse_words::sheets::the_workbook_could_not_be(&_0))]
    Workbook(#[from] rust_xlsxwriter::XlsxError),
}
