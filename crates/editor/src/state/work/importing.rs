//! Reading a file or folder of buildings in the background.

use chalkcourse_exchange::{House, ImportError, Listing, find, list_until};
use chalkcourse_words::{speak, spoken};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// Buildings to choose from, and the chosen one.
#[derive(Debug)]
pub(crate) struct Importing {
    /// The file or folder.
    pub(crate) path: PathBuf,
    /// Its contents, once read.
    pub(crate) listing: Option<Listing>,
    /// Why nothing could be read, or the last one not be imported.
    pub(crate) wrong: String,
    /// Text that a building's name or id must contain to be shown.
    pub(crate) search: String,
    /// Index of the chosen building.
    pub(crate) chosen: Option<usize>,
    running: Option<Running>,
}

/// A thread in progress, and its result. It stops when dropped.
#[derive(Debug)]
struct Running {
    stop: Arc<AtomicBool>,
    answer: Receiver<Read>,
}

impl Drop for Running {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}

/// What was read.
#[derive(Debug)]
enum Read {
    Listing(Result<Listing, ImportError>),
    House(Box<Result<House, ImportError>>),
}

impl Importing {
    /// Starts to list the contents of a file or folder.
    pub(crate) fn start(ctx: &egui::Context, path: &Path) -> Self {
        let mut importing = Self {
            path: path.to_owned(),
            listing: None,
            wrong: String::new(),
            search: String::new(),
            chosen: None,
            running: None,
        };
        let from = path.to_owned();
        importing.run(ctx, move |stop| Read::Listing(list_until(&from, &|| stop.load(Ordering::Relaxed))));
        importing
    }

    /// Starts to read the whole chosen building.
    pub(crate) fn take(&mut self, ctx: &egui::Context) {
        let chosen = self.chosen.and_then(|index| self.listing.as_ref()?.buildings.get(index));
        let Some((file, id)) = chosen.map(|entry| (entry.file.clone(), entry.id.clone())) else { return };
        self.wrong.clear();
        self.run(ctx, move |_| Read::House(Box::new(find(&file, Some(&id)))));
    }

    fn run(&mut self, ctx: &egui::Context, read: impl FnOnce(&AtomicBool) -> Read + Send + 'static) {
        let (send, answer) = channel();
        let stop = Arc::new(AtomicBool::new(false));
        let (stopped, ctx) = (Arc::clone(&stop), ctx.clone());
        let language = spoken();
        std::thread::spawn(move || {
            speak(language);
            // Nobody is listening if the window was closed.
            let _ = send.send(read(&stopped));
            ctx.request_repaint();
        });
        self.running = Some(Running { stop, answer });
    }

    /// Whether a thread is working.
    pub(crate) fn is_reading(&self) -> bool {
        self.running.is_some()
    }

    /// Receives what was read; returns the building, once it was requested and is available.
    pub(crate) fn answer(&mut self) -> Option<House> {
        let read = match self.running.as_ref()?.answer.try_recv() {
            Ok(read) => read,
            Err(TryRecvError::Empty) => return None,
            Err(TryRecvError::Disconnected) => {
                self.running = None;
                self.wrong = chalkcourse_words::formats::READING_BROKE_OFF_TRY_AGAIN.now().to_owned();
                return None;
            }
        };
        self.running = None;
        match read {
            Read::Listing(Ok(listing)) => {
                self.chosen = (listing.buildings.len() == 1).then_some(0);
                self.listing = Some(listing);
            }
            Read::House(house) => match *house {
                Ok(house) => return Some(house),
                Err(error) => self.wrong = chalkcourse_words::sentence(&error.to_string()),
            },
            Read::Listing(Err(error)) => self.wrong = chalkcourse_words::sentence(&error.to_string()),
        }
        None
    }

    /// The buildings whose name or id matches the search.
    pub(crate) fn found(&self) -> Vec<usize> {
        let wanted = self.search.trim().to_lowercase();
        let buildings = self.listing.as_ref().map_or(&[][..], |listing| &listing.buildings);
        let fits = |text: &str| text.to_lowercase().contains(&wanted);
        (0..buildings.len()).filter(|&i| fits(&buildings[i].name) || fits(&buildings[i].id)).collect()
    }
}

/// Whether a path is for buildings rather than a job, by its name.
pub(crate) fn is_of_buildings(path: &Path) -> bool {
    let name = path.file_name().map(|name| name.to_string_lossy().to_lowercase()).unwrap_or_default();
    [".geojson", ".city.json", ".jsonl"].iter().any(|end| name.ends_with(end)) || path.is_dir()
}
