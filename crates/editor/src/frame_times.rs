//! Frame times, written to a file while the window runs: for measurements only.

use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::Path;
use std::time::Instant;

/// Writes a line per frame: when it started (seconds since the start), how long the window's own work took (input, the
/// plan, painting; milliseconds), the processor time of the whole frame including the toolkit (tessellation and
/// submission to the graphics driver; milliseconds), and whether something was being dragged.
#[derive(Debug)]
pub(crate) struct FrameTimes {
    out: BufWriter<File>,
    start: Instant,
    /// The previous frame, whose total time is known when the next one starts.
    last: Option<Last>,
}

#[derive(Clone, Copy, Debug)]
struct Last {
    began: f64,
    own: f64,
    dragging: bool,
}

impl FrameTimes {
    /// Creates the file.
    ///
    /// # Errors
    /// If the file can't be written.
    pub(crate) fn create(path: &Path) -> std::io::Result<Self> {
        let mut out = BufWriter::new(File::create(path)?);
        writeln!(out, "began_s,own_ms,frame_ms,dragging")?;
        Ok(Self { out, start: Instant::now(), last: None })
    }

    /// At the start of a frame; `whole` is the total time of the previous one, in seconds, if the toolkit knows it.
    pub(crate) fn begin(&mut self, whole: Option<f32>) -> Instant {
        if let Some(Last { began, own, dragging }) = self.last.take() {
            let whole = whole.map_or(own, |seconds| f64::from(seconds) * 1000.0);
            // A full disk ends the measurements, but not the program.
            let _ = writeln!(self.out, "{began:.4},{own:.3},{whole:.3},{}", u8::from(dragging));
        }
        Instant::now()
    }

    /// At the end of the window's own work in a frame.
    pub(crate) fn end(&mut self, began: Instant, dragging: bool) {
        let own = began.elapsed().as_secs_f64() * 1000.0;
        let began = began.duration_since(self.start).as_secs_f64();
        self.last = Some(Last { began, own, dragging });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_frame_has_a_line_with_its_total_time() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("frames.csv");
        let mut times = FrameTimes::create(&path).unwrap();
        let began = times.begin(None);
        times.end(began, false);
        let began = times.begin(Some(0.0125));
        times.end(began, true);
        times.begin(None);
        drop(times);
        let text = std::fs::read_to_string(&path).unwrap();
        let lines: Vec<&str> = text.lines().collect();
        assert_eq!(lines.len(), 3, "{text}");
        assert!(lines[1].ends_with(",12.500,0"), "{text}");
        let last: Vec<&str> = lines[2].split(',').collect();
        assert_eq!((last.len(), last[1], last[3]), (4, last[2], "1"), "{text}");
    }
}
