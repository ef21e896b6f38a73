//! The window of Chalkcourse: draw faces, drag blocks, see findings and quantities while the mouse moves.
//!
//! In layers; each imports those above it and none below (`.ci/import-circles` holds it):
//!
//! - `state`: the document, what is held, what is looked at, work in the background, settings. It knows no view
//! - `text`: the words; `theme`: colours, type and spacing; `recovery`, `files`: losing nothing, asking for paths
//! - `action`: all that a part of the window may ask for: the one way in which anything changes
//! - `edits`: what a person asks of a block, a face, a part, as actions
//! - `commands`: one table of all commands; menus, keys, palette, sheet of keys, help and lesson are made from it
//! - `widgets`: fields, signs and sketches that all views use
//! - `canvas` (the drawing and its tools), `panels` (around it), `windows` (beside it), `solid_view`, `show_home`,
//!   `start_page`, `dialogs`: the views. Each reads the state, has its own caches, and pushes actions; none imports another but for the picture of the house
//! - `editor`: the window as a whole; carries actions out

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
