//! The recovery copy: written during work, removed on a normal exit, offered after a crash.
//!
//! Each running instance holds a lock on its own file in the folder; a copy whose lock is free belongs to an instance
//! that crashed.

use chalkcourse_job::{FileError, Resolved, job_to_text, load, write_atomically};
use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant, SystemTime};

/// The folder for recovery copies: in the user's data folder.
pub fn recovery_folder() -> Option<PathBuf> {
    eframe::storage_dir("chalkcourse").map(|folder| folder.join("recovery"))
}

const JOB: &str = "chalk.json";
const LOCK: &str = "lock";
const FROM: &str = "from";

/// A copy left by an earlier instance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AbandonedCopy {
    /// The copy.
    pub copy: PathBuf,
    /// The name of its job, if it can be read.
    pub name: Option<String>,
    /// The file that the job was opened from.
    pub from: Option<PathBuf>,
    /// When it was written.
    pub written: Option<SystemTime>,
}

/// The recovery copy of this instance.
#[derive(Debug)]
pub struct Recovery {
    stem: PathBuf,
    /// Held while the program runs.
    lock: File,
    /// The job that the copy contains, or that needs no copy.
    safe: Option<Arc<Resolved>>,
    last: Option<Instant>,
    writer: Option<std::thread::JoinHandle<Result<(), FileError>>>,
}

impl Recovery {
    /// Least time between two copies.
    pub const INTERVAL: Duration = Duration::from_secs(10);

    /// Claims a file name in a folder, which is created if necessary. Stale locks without a copy are removed.
    ///
    /// # Errors
    /// The system's error; the program then works without a recovery copy.
    pub fn start(folder: &Path) -> std::io::Result<Self> {
        fs::create_dir_all(folder)?;
        clear_locks(folder);
        let moment = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH).map_or(0, |d| d.as_nanos());
        let stem = folder.join(format!("{}-{moment}", std::process::id()));
        let lock = File::create(with(&stem, LOCK))?;
        lock.lock()?;
        Ok(Self { stem, lock, safe: None, last: None, writer: None })
    }

    /// Copies of instances that are gone, newest first.
    pub fn left_behind(folder: &Path) -> Vec<AbandonedCopy> {
        let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
        let mut left: Vec<AbandonedCopy> = entries
            .flatten()
            .map(|entry| entry.path())
            .filter_map(|path| {
                let name = path.file_name()?.to_str()?;
                let stem = folder.join(name.strip_suffix(&format!(".{JOB}"))?);
                if is_locked(&with(&stem, LOCK)) {
                    return None;
                }
                let written = fs::metadata(&path).and_then(|m| m.modified()).ok();
                let from = fs::read_to_string(with(&stem, FROM)).ok().map(PathBuf::from);
                let name = load(&path).ok().map(|job| job.name.clone());
                Some(AbandonedCopy { copy: path, name, from, written })
            })
            .collect();
        left.sort_by_key(|copy| std::cmp::Reverse(copy.written));
        left
    }

    /// Removes a copy left behind, with its lock.
    pub fn forget(left: &AbandonedCopy) {
        if let Some(stem) = left.copy.to_str().and_then(|path| path.strip_suffix(&format!(".{JOB}"))) {
            remove(Path::new(stem));
        }
    }

    /// Reads a copy left behind.
    ///
    /// # Errors
    /// [`FileError`] as for any job file.
    pub fn read(left: &AbandonedCopy) -> Result<Resolved, FileError> {
        load(&left.copy)
    }

    /// Writes a copy if the job is not safe and the last copy is old enough. Returns the time until the next call is
    /// due; `None` if all is safe.
    pub fn tick(&mut self, job: &Arc<Resolved>, from: Option<&Path>, now: Instant) -> Option<Duration> {
        if self.safe.as_ref().is_some_and(|safe| Arc::ptr_eq(safe, job)) {
            return None;
        }
        let wait = self.last.map_or(Duration::ZERO, |last| {
            Self::INTERVAL.saturating_sub(now.saturating_duration_since(last))
        });
        if wait > Duration::ZERO {
            return Some(wait);
        }
        self.write(job, from);
        self.last = Some(now);
        None
    }

    /// Records that a job needs no copy: it is saved, or as opened.
    pub fn mark_safe(&mut self, job: &Arc<Resolved>) {
        self.finish_writing();
        let _ = fs::remove_file(with(&self.stem, JOB));
        let _ = fs::remove_file(with(&self.stem, FROM));
        self.safe = Some(Arc::clone(job));
        self.last = None;
    }

    /// A normal exit: nothing is left behind.
    pub fn end(mut self) {
        self.finish_writing();
        remove(&self.stem);
        let _ = self.lock.unlock();
    }

    /// Waits until the copy is on disk.
    pub fn finish_writing(&mut self) {
        if let Some(writer) = self.writer.take() {
            // Failing to write a copy must not interrupt work; the next change tries again.
            if !matches!(writer.join(), Ok(Ok(()))) {
                self.safe = None;
            }
        }
    }

    fn write(&mut self, job: &Arc<Resolved>, from: Option<&Path>) {
        self.finish_writing();
        let (job_copy, from) = (Arc::clone(job), from.map(Path::to_owned));
        let stem = self.stem.clone();
        let writer = std::thread::Builder::new().name("recovery copy".to_owned()).spawn(move || {
            let text = job_to_text(&job_copy)?;
            write_atomically(&with(&stem, JOB), text.as_bytes())?;
            match from {
                Some(from) => write_atomically(&with(&stem, FROM), from.to_string_lossy().as_bytes()),
                None => Ok(()),
            }
        });
        self.writer = writer.ok();
        self.safe = Some(Arc::clone(job));
    }
}

fn with(stem: &Path, extension: &str) -> PathBuf {
    let mut path = stem.as_os_str().to_owned();
    path.push(".");
    path.push(extension);
    PathBuf::from(path)
}

fn remove(stem: &Path) {
    for extension in [JOB, FROM, LOCK] {
        let _ = fs::remove_file(with(stem, extension));
    }
}

/// Removes locks of instances that ended without a copy. A recent one may be about to be taken.
fn clear_locks(folder: &Path) {
    const YOUNG: Duration = Duration::from_secs(60);
    let Ok(entries) = fs::read_dir(folder) else { return };
    for path in entries.flatten().map(|entry| entry.path()) {
        let stem = path.with_extension("");
        let old = fs::metadata(&path)
            .and_then(|m| m.modified())
            .is_ok_and(|at| at.elapsed().is_ok_and(|age| age > YOUNG));
        if path.extension().is_some_and(|e| e == LOCK)
            && old
            && !with(&stem, JOB).exists()
            && !is_locked(&path)
        {
            let _ = fs::remove_file(&path);
        }
    }
}

/// Whether a running instance holds this lock.
fn is_locked(path: &Path) -> bool {
    File::open(path).is_ok_and(|file| match file.try_lock() {
        Ok(()) => false,
        Err(fs::TryLockError::WouldBlock) => true,
        Err(fs::TryLockError::Error(_)) => false,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;

    #[test]
    fn a_copy_is_written_at_most_every_ten_seconds_and_offered_after_a_crash() {
        let folder = tempfile::tempdir().unwrap();
        let mut recovery = Recovery::start(folder.path()).unwrap();
        let first = Arc::new(sample::alder_court().unwrap());
        let start = Instant::now();
        assert_eq!(recovery.tick(&first, Some(Path::new("/jobs/a.json")), start), None);
        let second = Arc::new(first.with(|job| job.name = "Alder Court, changed".to_owned()));
        let soon = start + Duration::from_secs(4);
        assert_eq!(recovery.tick(&second, None, soon), Some(Duration::from_secs(6)));
        assert_eq!(recovery.tick(&second, None, start + Recovery::INTERVAL), None);
        recovery.finish_writing();
        assert!(Recovery::left_behind(folder.path()).is_empty(), "a copy in use was offered");
        // A crash: the lock is released with the process, the files stay.
        drop(recovery);
        let left = Recovery::left_behind(folder.path());
        assert_eq!(left.len(), 1);
        assert_eq!(Recovery::read(&left[0]).unwrap(), *second);
        assert_eq!(left[0].from.as_deref(), Some(Path::new("/jobs/a.json")));
        Recovery::forget(&left[0]);
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 0);
    }

    #[test]
    fn a_normal_exit_leaves_nothing_behind() {
        let folder = tempfile::tempdir().unwrap();
        let mut recovery = Recovery::start(folder.path()).unwrap();
        let job = Arc::new(sample::alder_court().unwrap());
        recovery.tick(&job, None, Instant::now());
        recovery.end();
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 0);
    }

    #[test]
    fn a_saved_job_needs_no_copy() {
        let folder = tempfile::tempdir().unwrap();
        let mut recovery = Recovery::start(folder.path()).unwrap();
        let job = Arc::new(sample::alder_court().unwrap());
        recovery.tick(&job, None, Instant::now());
        recovery.mark_safe(&job);
        assert_eq!(recovery.tick(&job, None, Instant::now()), None);
        drop(recovery);
        assert!(Recovery::left_behind(folder.path()).is_empty());
    }
}
