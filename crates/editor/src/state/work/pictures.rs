//! The picture under the plan: read and decoded in the background, kept as a texture while the job has it.

use chalkcourse_exchange::picture_from_bytes;
use chalkcourse_job::{Underlay, read_picture, sha256};
use chalkcourse_words::{self as words, speak, spoken};
use egui::{ColorImage, Context, TextureHandle, TextureOptions};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// A larger picture is scaled down: all systems support textures of this size.
const MOST_TEXTURE: u32 = 4096;

/// A picture that was read.
struct Read {
    sha256: String,
    pixels: [u32; 2],
    image: ColorImage,
}

/// The state of the picture.
#[derive(Default)]
enum State {
    /// The job has none.
    #[default]
    None,
    /// It is being read and decoded.
    Reading(Receiver<Result<Read, String>>),
    /// It is available.
    Ready { texture: TextureHandle, sha256: String, pixels: [u32; 2] },
    /// It can't be shown, for this reason.
    Wrong(String),
}

impl std::fmt::Debug for State {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::None => "None",
            Self::Reading(_) => "Reading",
            Self::Ready { .. } => "Ready",
            Self::Wrong(_) => "Wrong",
        })
    }
}

/// The picture under the plan.
#[derive(Debug, Default)]
pub(crate) struct Pictures {
    path: PathBuf,
    state: State,
    /// Whether the user requested it: then it is placed once it is read.
    wanted: bool,
}

/// A picture requested by the user, once it is read.
pub(crate) struct Wanted {
    pub(crate) path: PathBuf,
    pub(crate) found: Result<(String, [u32; 2]), String>,
}

impl Pictures {
    /// Reads a picture requested by the user.
    pub(crate) fn ask(&mut self, ctx: &Context, path: &Path) {
        self.read(ctx, path.to_owned());
        self.wanted = true;
    }

    /// Reads the picture of the job, if it is not the current one.
    pub(crate) fn keep_in_step(&mut self, ctx: &Context, underlay: Option<&Underlay>) {
        if self.wanted {
            return;
        }
        match underlay {
            None => *self = Self::default(),
            Some(underlay) => {
                let path = Path::new(&underlay.path);
                if matches!(self.state, State::None) || self.path != path {
                    self.read(ctx, path.to_owned());
                }
            }
        }
    }

    /// Reads the same file again.
    pub(crate) fn again(&mut self) {
        self.state = State::None;
    }

    fn read(&mut self, ctx: &Context, path: PathBuf) {
        let (send, answer) = channel();
        let (ctx, from) = (ctx.clone(), path.clone());
        let language = spoken();
        let reading = std::thread::Builder::new().name("picture".to_owned()).spawn(move || {
            speak(language);
            // Nobody is listening if the window was closed or another picture was requested.
            let _ = send.send(read(&from));
            ctx.request_repaint();
        });
        self.path = path;
        self.state = match reading {
            Ok(_) => State::Reading(answer),
            Err(error) => State::Wrong(error.to_string()),
        };
    }

    /// Receives what was read; returns it, once, if the user requested it.
    pub(crate) fn answer(&mut self, ctx: &Context) -> Option<Wanted> {
        let State::Reading(answer) = &self.state else { return None };
        let read = match answer.try_recv() {
            Err(TryRecvError::Empty) => return None,
            Err(TryRecvError::Disconnected) => {
                Err(words::picture::READING_THE_PICTURE_BROKE_OFF.now().to_owned())
            }
            Ok(read) => read,
        };
        let found = match read {
            Ok(Read { sha256, pixels, image }) => {
                let texture = ctx.load_texture("picture under the plan", image, TextureOptions::LINEAR);
                self.state = State::Ready { texture, sha256: sha256.clone(), pixels };
                Ok((sha256, pixels))
            }
            Err(words) => {
                self.state = State::Wrong(words.clone());
                Err(words)
            }
        };
        let wanted = std::mem::take(&mut self.wanted);
        if wanted && found.is_err() {
            // The job's own picture comes back.
            self.state = State::None;
        }
        wanted.then(|| Wanted { path: self.path.clone(), found })
    }

    /// The texture to draw, if it is available and has the size recorded in the job.
    pub(crate) fn texture(&self, underlay: &Underlay) -> Option<&TextureHandle> {
        match &self.state {
            State::Ready { texture, pixels, .. }
                if self.is_of(underlay) && same_shape(*pixels, underlay.pixels) =>
            {
                Some(texture)
            }
            _ => None,
        }
    }

    /// A problem with the picture: it is missing, can't be read, or has changed.
    pub(crate) fn trouble(&self, underlay: &Underlay) -> Option<String> {
        match &self.state {
            State::Wrong(words) if self.is_of(underlay) => Some(words.clone()),
            State::Ready { pixels, .. } if self.is_of(underlay) && !same_shape(*pixels, underlay.pixels) => {
                Some(words::picture::THE_FILE_HOLDS_A_PICTURE.now().to_owned())
            }
            State::Ready { sha256, .. } if self.is_of(underlay) && *sha256 != underlay.sha256 => {
                Some(words::picture::THE_FILE_HOLDS_ANOTHER_PICTURE.now().to_owned())
            }
            _ => None,
        }
    }

    /// The picture that is in the file now, if it differs from the one in the job.
    pub(crate) fn changed(&self, underlay: &Underlay) -> Option<Underlay> {
        match &self.state {
            State::Ready { sha256, pixels, .. } if self.is_of(underlay) && *sha256 != underlay.sha256 => {
                Some(replaced(underlay, &underlay.path, sha256, *pixels))
            }
            _ => None,
        }
    }

    /// Whether it is being read.
    pub(crate) fn is_reading(&self) -> bool {
        matches!(self.state, State::Reading(_))
    }

    fn is_of(&self, underlay: &Underlay) -> bool {
        self.path == Path::new(&underlay.path)
    }
}

/// Replaces a picture by another: with the same width on the ground and the same centre.
pub(crate) fn replaced(underlay: &Underlay, path: &str, sha256: &str, pixels: [u32; 2]) -> Underlay {
    let wide = underlay.size().x;
    Underlay {
        path: path.to_owned(),
        sha256: sha256.to_owned(),
        pixels,
        metres_per_pixel: wide / f64::from(pixels[0].max(1)),
        ..underlay.clone()
    }
}

/// Whether two sizes have the same aspect ratio: then one picture can replace the other.
fn same_shape(one: [u32; 2], other: [u32; 2]) -> bool {
    let [a, b, c, d] = [one[0], one[1], other[0], other[1]].map(f64::from);
    (a * d - b * c).abs() <= 0.01 * a * d
}

/// Reads and decodes a picture within limits.
fn read(path: &Path) -> Result<Read, String> {
    let bytes = read_picture(path).map_err(|error| error.to_string())?;
    let decoded = picture_from_bytes(&bytes).map_err(|wrong| format!("{}: {wrong}", path.display()))?;
    let pixels = [decoded.width(), decoded.height()];
    let small = if pixels.iter().any(|&side| side > MOST_TEXTURE) {
        decoded.thumbnail(MOST_TEXTURE, MOST_TEXTURE)
    } else {
        decoded
    };
    let rgba = small.into_rgba8();
    let size = [rgba.width() as usize, rgba.height() as usize];
    Ok(Read {
        sha256: sha256(&bytes),
        pixels,
        image: ColorImage::from_rgba_unmultiplied(size, rgba.as_raw()),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_with_equal_aspect_have_the_same_shape() {
        assert!(same_shape([400, 300], [800, 600]) && same_shape([401, 300], [800, 600]));
        assert!(!same_shape([400, 300], [300, 400]));
    }
}
