//! Asking for a path: by the desktop's dialog on a separate thread, or by the in-window dialog if there is none.

use crate::browser::Browser;
use crate::state::Ask;
use crate::text;
use chalkcourse_words::{speak, spoken};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::{Duration, Instant};

/// The result of a dialog.
pub(crate) enum Answer {
    Path(Ask, PathBuf),
    Cancelled,
}

/// If a desktop dialog is cancelled faster than a user could, there is no dialog service.
const TOO_FAST: Duration = Duration::from_millis(400);

/// The path dialogs.
#[derive(Debug)]
pub(crate) struct Files {
    /// Always use the in-window dialog.
    typed_only: bool,
    /// The in-window dialog, while it is open.
    pub(crate) typed: Option<Browser>,
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
    /// Path dialogs of the desktop, or always in the window.
    pub(crate) fn new(typed_only: bool) -> Self {
        Self { typed_only, typed: None, waiting: None }
    }

    /// Opens a dialog that starts at a path, unless one is open.
    pub(crate) fn ask(&mut self, ctx: &egui::Context, ask: Ask, start: PathBuf) {
        if self.is_open() {
            return;
        }
        if self.typed_only {
            self.browse(ask, &start);
            return;
        }
        let (send, answer) = channel();
        let (ctx, from) = (ctx.clone(), start.clone());
        let language = spoken();
        let dialog = std::thread::Builder::new().name("file dialog".to_owned()).spawn(move || {
            speak(language);
            // The window may be gone by now, and with it the receiver.
            let _ = send.send(system_dialog(ask, &from));
            ctx.request_repaint();
        });
        match dialog {
            Ok(_) => self.waiting = Some(Waiting { ask, start, since: Instant::now(), answer }),
            Err(_) => self.browse(ask, &start),
        }
    }

    /// Whether a dialog is open.
    pub(crate) fn is_open(&self) -> bool {
        self.typed.is_some() || self.waiting.is_some()
    }

    /// The result of the desktop's dialog, once it is closed.
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
                self.browse(ask, &start);
                None
            }
            None => Some(Answer::Cancelled),
        }
    }

    fn browse(&mut self, ask: Ask, start: &Path) {
        self.typed = Some(Browser::new(ask, start));
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
