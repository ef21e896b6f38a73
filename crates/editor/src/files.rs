//! Asking for a path: by the desktop's dialog on a thread of its own, or in the window where there is none.

use crate::outputs::{CrewSheet, OrderFormat, PlanFormat};
use crate::text;
use chalkcourse_words::{speak, spoken};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::{Duration, Instant};

/// What a path is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ask {
    Open,
    SaveAs,
    Export(OrderFormat),
    Print(CrewSheet),
    ExportPlan(PlanFormat),
    /// The steps since the job was opened, as edits.
    Steps,
    /// A file of buildings; a folder will do too where it is typed.
    Import,
    ImportFolder,
    Kit,
    RuleBook,
    SaveRuleBook,
    CompareBook,
    Prices,
    /// A warehouse list.
    Stock,
    /// A pallet list with counts.
    Counts,
    /// The order of another job.
    CompareJob,
    /// Prices of another supplier.
    Offer,
    /// To lay under the plan.
    Picture,
    /// Of the house in space.
    SavePicture,
}

impl Ask {
    /// Whether a file will be written there.
    pub(crate) fn writes(self) -> bool {
        matches!(
            self,
            Self::SaveAs
                | Self::SaveRuleBook
                | Self::SavePicture
                | Self::Export(_)
                | Self::Print(_)
                | Self::ExportPlan(_)
                | Self::Steps
        )
    }

    /// Whether a folder is as good as a file.
    pub(crate) fn takes_folder(self) -> bool {
        matches!(self, Self::Import | Self::ImportFolder)
    }

    /// What such files end in.
    pub(crate) fn extensions(self) -> &'static [&'static str] {
        match self {
            Self::Export(OrderFormat::Text) => &["txt"],
            Self::Export(OrderFormat::Csv) => &["csv"],
            Self::Export(OrderFormat::Workbook) => &["xlsx"],
            Self::Export(OrderFormat::ByPart | OrderFormat::ByStage) | Self::Print(_) => &["pdf"],
            Self::ExportPlan(PlanFormat::Svg) => &["svg"],
            Self::ExportPlan(PlanFormat::GeoJson) => &["geojson", "json"],
            Self::ExportPlan(PlanFormat::Glb) => &["glb"],
            Self::Import | Self::ImportFolder => &["geojson", "json", "jsonl"],
            Self::Picture => &["png", "jpg", "jpeg"],
            Self::SavePicture => &["png"],
            Self::Stock => &["csv", "json"],
            Self::Counts => &["csv"],
            Self::Prices | Self::Offer => &["json", "csv", "xlsx", "ods"],
            _ => &["json"],
        }
    }
}

/// A path that is typed in the window.
#[derive(Clone, Debug)]
pub(crate) struct TypedPath {
    pub(crate) ask: Ask,
    pub(crate) path: String,
    pub(crate) wrong: String,
    /// The person was told that the file is there, and may replace it.
    pub(crate) replace: bool,
}

/// What came of a dialog.
pub(crate) enum Answer {
    Path(Ask, PathBuf),
    Cancelled,
}

/// A dialog of the desktop that gives up faster than a hand can is none: there is no service for it.
const TOO_FAST: Duration = Duration::from_millis(400);

/// The path dialogs.
#[derive(Debug)]
pub(crate) struct Files {
    /// Ask in the window always.
    typed_only: bool,
    /// The dialog in the window, while it is open.
    pub(crate) typed: Option<TypedPath>,
    waiting: Option<Waiting>,
}

#[derive(Debug)]
struct Waiting {
    ask: Ask,
    start: PathBuf,
    since: Instant,
    answer: Receiver<Option<PathBuf>>,
}

impl Files {
    /// Path dialogs, of the desktop or always in the window.
    pub(crate) fn new(typed_only: bool) -> Self {
        Self { typed_only, typed: None, waiting: None }
    }

    /// Opens a dialog that starts at a path. One at a time.
    pub(crate) fn ask(&mut self, ctx: &egui::Context, ask: Ask, start: PathBuf) {
        if self.is_open() {
            return;
        }
        if self.typed_only {
            self.type_path(ask, &start);
            return;
        }
        let (send, answer) = channel();
        let (ctx, from) = (ctx.clone(), start.clone());
        let language = spoken();
        let dialog = std::thread::Builder::new().name("file dialog".to_owned()).spawn(move || {
            speak(language);
            // The window may be gone by now: then nobody wants the answer.
            let _ = send.send(system_dialog(ask, &from));
            ctx.request_repaint();
        });
        match dialog {
            Ok(_) => self.waiting = Some(Waiting { ask, start, since: Instant::now(), answer }),
            Err(_) => self.type_path(ask, &start),
        }
    }

    /// Whether a dialog is open.
    pub(crate) fn is_open(&self) -> bool {
        self.typed.is_some() || self.waiting.is_some()
    }

    /// What came of the desktop's dialog, once it has.
    pub(crate) fn poll(&mut self) -> Option<Answer> {
        let waiting = self.waiting.as_ref()?;
        let answer = match waiting.answer.try_recv() {
            Err(TryRecvError::Empty) => return None,
            Err(TryRecvError::Disconnected) => None,
            Ok(answer) => answer,
        };
        let Waiting { ask, start, since, .. } = self.waiting.take()?;
        match answer {
            Some(path) => Some(Answer::Path(ask, path)),
            None if since.elapsed() < TOO_FAST => {
                self.typed_only = true;
                self.type_path(ask, &start);
                None
            }
            None => Some(Answer::Cancelled),
        }
    }

    fn type_path(&mut self, ask: Ask, start: &Path) {
        let path = start.to_string_lossy().into_owned();
        self.typed = Some(TypedPath { ask, path, wrong: String::new(), replace: false });
    }
}

fn system_dialog(ask: Ask, start: &Path) -> Option<PathBuf> {
    let mut dialog = rfd::FileDialog::new()
        .set_title(text::ask_title(ask))
        .add_filter(text::ask_filter(ask), ask.extensions());
    if let Some(folder) = start.parent().filter(|folder| folder.is_dir()) {
        dialog = dialog.set_directory(folder);
    }
    if ask.writes() {
        if let Some(name) = start.file_name() {
            dialog = dialog.set_file_name(name.to_string_lossy());
        }
        dialog.save_file()
    } else if ask == Ask::ImportFolder {
        dialog.pick_folder()
    } else {
        dialog.pick_file()
    }
}
