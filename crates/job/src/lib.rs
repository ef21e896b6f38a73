//! The job: everything that a person decided or measured, and nothing derived from it.
//!
//! - [`Job`] and its objects: faces as drawn, penetrations, blocks, waivers
//! - [`RoofPart`]: a part of the house; [`Resolved`]: a job with the faces derived from its parts
//! - [`Kit`], [`RuleBook`], [`PriceList`]: data files that a job carries with it; each limit with its [`Source`]
//! - [`FindingKey`], [`Quantity`], [`Waiver`]: what identifies a finding, its measured values, and its acceptance
//! - [`Circuit`], [`JunctionBox`], [`WiringChoices`]: decisions about the wiring
//! - [`Underlay`]: a picture under the plan
//! - [`Edit`], [`apply`]: the only way to change a job
//! - [`Script`]: edits from outside, in full or in short form; [`differences`] reports what they changed
//! - [`Pieces`]: blocks and penetrations on the clipboard
//! - [`History`]: undo as earlier states; a gesture is one step
//! - [`load`], [`save`]: JSON with a format name and a version, written so that a crash loses nothing
//!
//! This crate does no geometry of its own: faces of parts are derived by [`raise`](chalkcourse_geometry::raise), so
//! that a [`FaceId`] means the same everywhere. It does no checking against rules, and no display.

mod block;
mod book_parts;
mod check;
mod circuits;
mod code_labels;
mod data;
mod data_file;
mod deck;
mod disk;
mod edit;
mod edit_error;
mod edition;
mod face;
mod file;
mod finding_key;
mod history;
mod holds;
mod id;
mod job;
mod kit;
mod missing;
mod names;
mod order;
mod orientation;
mod part;
mod penetration;
mod percent_cells;
mod pieces;
mod price_reading;
mod price_table;
mod prices;
mod quantity;
mod resolved;
mod rule_book;
mod script;
mod service;
mod site;
mod source;
mod table;
mod taped_deck;
mod torque;
mod underlay;
mod unit;
mod waiver;
mod wiring;
mod written_number;

pub use block::{Block, Cell, RowShift};
pub use book_parts::OptionalPart;
pub use code_labels::{CodeLabel, CodeLabels, LabelGround, LabelOf, LabelPlace, LabelText};
pub use data::{
    builtin_kit, builtin_kits, builtin_labels, builtin_prices, builtin_rule_book, builtin_rule_books,
    kit_from_text, kit_schema, load_counts, load_kit, load_prices, load_rule_book, load_stock,
    price_list_schema, prices_from_bytes, rule_book_from_text, rule_book_schema, save_rule_book,
};
pub use deck::{Deck, DeckCondition, DeckKind, DeckLimits, DripEdge, FireClass, FireListing, RailLimits};
pub use disk::{FileError, write_atomically};
pub use edit::{Edit, apply};
pub use edit_error::EditError;
pub use edition::CodeEdition;
pub use face::{Courses, DecidedFace, Face, Ground, Overrule};
pub use file::{JOB_FORMAT, JOB_VERSION, job_from_text, job_schema, job_to_text, load, previous_path, save};
pub use finding_key::{FindingKey, KeyError, Matter, Subject, WAIVER};
pub use history::{History, PastStep, StepPosition};
pub use holds::Holds;
pub use id::{BlockId, BoxId, CircuitId, FaceId, PartId, PenetrationId};
pub use job::Job;
pub use kit::{
    AcDevice, Amount, BaseRail, Bonding, BoxStands, ChimneyPart, Choice, Clearances, ConductorChoice, Crew,
    CricketPart, DcDevice, DeviceInput, Electrical, ExtensionLead, Fastener, Flashing, Gauge, Group,
    HoldDown, HomeRun, Insulation, Inverter, Kit, KitWiring, Laying, Leads, LoadWay, Measure, ModuleDevice,
    ModuleSpec, OnPath, OtherStick, Package, Part, Raceway, RacewayKind, RevealRange, Roll, RoofKind,
    RowJoints, Stage, Sticks, Term, TorqueSetting, TradeSize, Waste,
};
pub use missing::Missing;
pub use names::first_free;
pub use order::{
    AddedLine, Delivery, Leftover, OrderChoices, Override, OwnWaste, Pricing, Profit, Received, RoofScope,
    RoofWork, WasteAs, counts_from_csv, stock_from_csv,
};
pub use orientation::Orientation;
pub use part::{Border, FromPart, PartKind, PartSide, PlanMove, RoofPart, SideBorders};
pub use penetration::{Penetration, PenetrationKind, Shape};
pub use pieces::{PIECES_FORMAT, Piece, Pieces, pieces_from_text, pieces_schema, pieces_to_text};
pub use price_reading::{PriceReading, PriceSummary};
pub use prices::{Alternate, Price, PriceList};
pub use quantity::{Quantity, Required};
pub use resolved::{PartProblem, PartTrouble, Resolved, resolve};
pub use rule_book::{
    Caution, Difference, FireAccess, IceBarrier, Limit, LimitRow, LimitValue, LoadStandard, Loads,
    PathScheme, RidgeRoom, Roofing, RuleBook,
};
pub use script::{
    DifferenceKind, EDITS_FORMAT, FieldDifference, Folder, JobDifference, NoFiles, ObjectKind, Script, Shelf,
    Spot, Step, StepError, StepErrorKind, differences, edits_schema, edits_to_text, script_from_text,
};
pub use service::{Connection, Reading, Service};
pub use site::{Building, Exposure, GeoPoint, Site};
pub use source::{Source, Standing};
pub use taped_deck::TapedDeck;
pub use torque::Torque;
pub use underlay::{Crop, MOST_PICTURE_BYTES, PictureError, Underlay, read_picture, sha256};
pub use unit::Unit;
pub use waiver::{Accepted, Lapse, Waiver};
pub use wiring::{
    Circuit, Current, InverterInput, JunctionBox, Leg, LiesIn, ModuleAt, OtherConductors, WiringChoices,
};
pub use written_number::amount_from_text;
