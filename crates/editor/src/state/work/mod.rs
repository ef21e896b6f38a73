//! Background work on a separate thread, which can be stopped.

mod filling;
mod fixing;
mod importing;
mod making_room;
mod pictures;
mod stringing;

pub(crate) use filling::{Asked, Filling, How, Laying, same_roof};
pub(crate) use fixing::Fixing;
pub(crate) use importing::{Importing, is_of_buildings};
pub(crate) use making_room::MakingRoom;
pub(crate) use pictures::{Pictures, replaced};
pub(crate) use stringing::{StringingUp, same_wires};

use chalkcourse_words::{speak, spoken};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// A message of the thread.
#[derive(Debug)]
enum Told<T> {
    SoFar(T),
    Done(T),
}

/// Work in progress. It stops when dropped.
#[derive(Debug)]
pub(crate) struct Work<T> {
    stop: Arc<AtomicBool>,
    told: Receiver<Told<T>>,
}

/// News since the last call.
#[derive(Debug, PartialEq)]
pub(crate) enum News<T> {
    /// Nothing new.
    None,
    /// The best result so far; work continues.
    SoFar(T),
    /// The final result.
    Done(T),
    /// The thread ended without a result.
    Broke,
}

impl<T> Drop for Work<T> {
    fn drop(&mut self) {
        self.stop();
    }
}

/// Requests a frame when a thread ends, for whatever reason.
struct Repaint(egui::Context);

impl Drop for Repaint {
    fn drop(&mut self) {
        self.0.request_repaint();
    }
}

impl<T: Send + 'static> Work<T> {
    /// Starts work that polls whether to stop, and may report the best result so far. A frame is drawn for each report.
    pub(crate) fn begin(
        ctx: &egui::Context,
        work: impl FnOnce(&dyn Fn() -> bool, &mut dyn FnMut(T)) -> T + Send + 'static,
    ) -> Self {
        let (send, told) = channel();
        let stop = Arc::new(AtomicBool::new(false));
        let (asked, ctx) = (Arc::clone(&stop), ctx.clone());
        let language = spoken();
        std::thread::spawn(move || {
            speak(language);
            let _repaint = Repaint(ctx.clone());
            // Dropped before that frame is requested, so that the end is visible in it.
            let send = send;
            // Nobody is listening if the window was closed or other work was started.
            let tell = |news| {
                let _ = send.send(news);
                ctx.request_repaint();
            };
            let answer = work(&|| asked.load(Ordering::Relaxed), &mut |best| tell(Told::SoFar(best)));
            tell(Told::Done(answer));
        });
        Self { stop, told }
    }
}

impl<T> Work<T> {
    /// Asks for the best result so far.
    pub(crate) fn stop(&self) {
        self.stop.store(true, Ordering::Relaxed);
    }

    /// Whether it was asked to stop.
    pub(crate) fn stopped(&self) -> bool {
        self.stop.load(Ordering::Relaxed)
    }

    /// The latest news; earlier ones are dropped.
    pub(crate) fn news(&self) -> News<T> {
        let mut news = News::None;
        loop {
            match self.told.try_recv() {
                Ok(Told::SoFar(best)) => news = News::SoFar(best),
                Ok(Told::Done(answer)) => return News::Done(answer),
                Err(TryRecvError::Empty) => return news,
                Err(TryRecvError::Disconnected) => return News::Broke,
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::time::Duration;

    fn wait<T: PartialEq>(work: &Work<T>, enough: impl Fn(&News<T>) -> bool) -> News<T> {
        for _ in 0..2_000 {
            let news = work.news();
            if enough(&news) {
                return news;
            }
            std::thread::sleep(Duration::from_millis(2));
        }
        panic!("no news");
    }

    #[test]
    fn work_reports_progress_and_can_be_stopped() {
        let work = Work::begin(&egui::Context::default(), |stop, tell| {
            tell(1);
            while !stop() {
                std::thread::sleep(Duration::from_millis(1));
            }
            2
        });
        assert_eq!(wait(&work, |news| *news != News::None), News::SoFar(1));
        assert_eq!(work.news(), News::None);
        work.stop();
        assert_eq!(wait(&work, |news| *news != News::None), News::Done(2));
    }

    #[test]
    fn a_failed_thread_is_reported() {
        let work: Work<u8> = Work::begin(&egui::Context::default(), |_, _| panic!("on purpose"));
        assert_eq!(wait(&work, |news| *news != News::None), News::Broke);
    }
}
