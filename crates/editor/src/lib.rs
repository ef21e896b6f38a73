//! The window of Chalkcourse: draw faces, drag blocks, see findings and quantities while the mouse moves.
//!
//! - [`Editor`]: the whole window; `main` gives it to eframe, tests drive it without a display
//! - `document`: the job with its history and the plan that follows from it; the only way that a job changes
//! - `desk`: what a person sees and holds (tool, selection, view); nothing of it is saved with the job
//! - `canvas`: the drawing: hits, snaps, gestures and painting
//! - `panels`: everything around the drawing
//! - `solid_view`, `show_home`: the house in space, and the view for its owner
//! - `importing`: buildings out of files in open formats, read in the background
//! - `arranging`, `filling`: what is done to blocks by name, and filling faces; `background`: work that the window does not wait for
//! - `frame_times`: how long frames take, for whoever measures
//! - `taping`: a face from measurements, as typed
//! - `parting`: a new part of the house from a drawn footprint
//! - `pictures`: the picture under the plan, read in the background
//! - `files`, `recovery`, `dialogs`: opening, saving, and losing nothing
//! - `text`: the words; `theme`: colours, type and spacing
//!
//! Parts of the window read the document and emit actions; the editor carries them out.

mod action;
mod arranging;
mod background;
mod canvas;
mod commands;
mod coursing;
mod desk;
mod dialogs;
mod document;
mod editor;
mod fields;
mod files;
mod filling;
mod fixing;
mod frame_times;
mod importing;
mod lesson;
mod outputs;
mod panels;
mod parting;
mod pictures;
mod recovery;
mod sample;
mod selection;
mod settings;
mod show_home;
mod sketch;
mod solid_view;
mod squaring;
mod taping;
mod text;
mod theme;
mod tool;
mod view;
mod windows;

pub use document::Document;
pub use editor::{Editor, Options};
pub use recovery::{Recovery, recovery_folder};
pub use selection::{PartPlace, Selection};
