//! The window of Chalkcourse: draw faces, drag blocks, see findings and quantities as the mouse moves.
//!
//! In layers; each imports those above it and none below (checked by `.ci/import-circles`):
//!
//! - `state`: the document, the selection, the view, background work, settings. It knows no view
//! - `text`: the words; `theme`: colours, type and spacing; `recovery`, `files`: recovery copies, asking for paths
//! - `action`: all requests by parts of the window: the only way in which anything changes
//! - `edits`: commands on blocks, faces and parts, as actions
//! - `commands`: the table of all commands; menus, keys, palette, list of keys, help and lesson are generated from it
//! - `widgets`: fields, signs and sketches for all views
//! - `canvas` (the drawing and its tools), `panels` (around it), `windows` (beside it), `solid_view`, `show_home`,
//!   `start_page`, `dialogs`: the views. Each reads the state, has its own caches, and emits actions; none imports
//!   another, except for the picture of the house
//! - `editor`: the window as a whole; carries out actions

mod action;
mod browser;
mod canvas;
mod commands;
mod dialogs;
mod editor;
mod edits;
mod files;
mod frame_times;
mod panels;
mod recovery;
mod sample;
mod show_home;
mod solid_view;
mod start_page;
mod state;
mod text;
mod theme;
mod widgets;
mod windows;

pub use editor::{Editor, Options};
pub use recovery::{Recovery, recovery_folder};
pub use state::{Document, PartPlace, Selection};
pub use theme::ground;
