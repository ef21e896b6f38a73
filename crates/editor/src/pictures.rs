//! The picture under the plan: read and decoded in the background, kept as a texture while the job has it.

use crate::text;
use chalkcourse_job::{Underlay, read_picture, sha256};
use egui::{ColorImage, Context, TextureHandle, TextureOptions};
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits};
use std::io::Cursor;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// No picture with more pixels is decoded: 8000 × 8000.
const MOST_PIXELS: u64 = 64_000_000;
/// No picture is decoded that is wider or higher.
const MOST_SIDE: u32 = 32_000;
/// The most memory that a decoder may take, bytes.
const MOST_MEMORY: u64 = 512 << 20;
/// A larger picture is drawn smaller: every screen takes a texture of this side.
const MOST_TEXTURE: u32 = 4096;

/// A picture that was read.
struct Read {
    sha256: String,
    pixels: [u32; 2],
    image: ColorImage,
}

/// What there is of the picture now.
#[derive(Default)]
enum State {
    /// The job has none.
    #[default]
    None,
    /// It is read and decoded.
    Reading(Receiver<Result<Read, String>>),
    /// It is there.
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

/// The picture under the plan as it is on the desk.
#[derive(Debug, Default)]
pub(crate) struct Pictures {
    path: PathBuf,
    state: State,
    /// A person asked for this one: it is laid once it is read.
    wanted: bool,
}

/// A picture that a person asked for, once it is read.
pub(crate) struct Wanted {
    pub(crate) path: PathBuf,
    pub(crate) found: Result<(String, [u32; 2]), String>,
}

impl Pictures {
    /// Reads a picture that a person asks for.
    pub(crate) fn ask(&mut self, ctx: &Context, path: &Path) {
        self.read(ctx, path.to_owned());
        self.wanted = true;
    }

    /// Reads what the job has, where that is not what is here.
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
        let reading = std::thread::Builder::new().name("picture".to_owned()).spawn(move || {
            // Nobody listens where the window was closed or another picture was asked for.
            let _ = send.send(read(&from));
            ctx.request_repaint();
        });
        self.path = path;
        self.state = match reading {
            Ok(_) => State::Reading(answer),
            Err(error) => State::Wrong(error.to_string()),
        };
    }

    /// Takes what was read. Something, once, where a person asked for it.
    pub(crate) fn answer(&mut self, ctx: &Context) -> Option<Wanted> {
        let State::Reading(answer) = &self.state else { return None };
        let read = match answer.try_recv() {
            Err(TryRecvError::Empty) => return None,
            Err(TryRecvError::Disconnected) => Err(text::PICTURE_BROKE.to_owned()),
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

    /// The texture to draw, where it is there and has the shape that the job knows.
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

    /// What the person must know of the picture: it is missing, can't be read, or is another one by now.
    pub(crate) fn trouble(&self, underlay: &Underlay) -> Option<String> {
        match &self.state {
            State::Wrong(words) if self.is_of(underlay) => Some(words.clone()),
            State::Ready { pixels, .. } if self.is_of(underlay) && !same_shape(*pixels, underlay.pixels) => {
                Some(text::PICTURE_OTHER_SHAPE.to_owned())
            }
            State::Ready { sha256, .. } if self.is_of(underlay) && *sha256 != underlay.sha256 => {
                Some(text::PICTURE_CHANGED.to_owned())
            }
            _ => None,
        }
    }

    /// The picture that is in the file now, where it is not the one that the job knows.
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

/// Another picture in the place of one: as wide on the ground, about the same middle.
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

/// Whether two sizes have one aspect: then one picture lies where the other did.
fn same_shape(one: [u32; 2], other: [u32; 2]) -> bool {
    let [a, b, c, d] = [one[0], one[1], other[0], other[1]].map(f64::from);
    (a * d - b * c).abs() <= 0.01 * a * d
}

/// Reads and decodes a picture within limits.
fn read(path: &Path) -> Result<Read, String> {
    let bytes = read_picture(path).map_err(|error| error.to_string())?;
    let decoded = decode(&bytes).map_err(|words| text::not_decoded(path, &words))?;
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

/// A PNG or JPEG, upright as its camera said. Its size is looked at before anything is decoded.
fn decode(bytes: &[u8]) -> Result<DynamicImage, String> {
    let mut reader =
        ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(|error| error.to_string())?;
    if !matches!(reader.format(), Some(ImageFormat::Png | ImageFormat::Jpeg)) {
        return Err(text::NEITHER_PNG_NOR_JPEG.to_owned());
    }
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_SIDE);
    limits.max_image_height = Some(MOST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(|error| error.to_string())?;
    let (width, height) = decoder.dimensions();
    if u64::from(width) * u64::from(height) > MOST_PIXELS || decoder.total_bytes() > MOST_MEMORY {
        return Err(text::too_many_pixels(width, height, MOST_PIXELS));
    }
    let orientation = decoder.orientation().map_err(|error| error.to_string())?;
    let mut image = DynamicImage::from_decoder(decoder).map_err(|error| error.to_string())?;
    image.apply_orientation(orientation);
    if image.width() == 0 || image.height() == 0 {
        Err(text::NEITHER_PNG_NOR_JPEG.to_owned())
    } else {
        Ok(image)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn png(width: u32, height: u32) -> Vec<u8> {
        let mut bytes = Vec::new();
        DynamicImage::new_luma8(width, height)
            .write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png)
            .unwrap();
        bytes
    }

    #[test]
    fn png_and_jpeg_are_decoded() {
        assert_eq!(decode(&png(7, 5)).unwrap().width(), 7);
        let mut bytes = Vec::new();
        DynamicImage::new_rgb8(16, 9).write_to(&mut Cursor::new(&mut bytes), ImageFormat::Jpeg).unwrap();
        assert_eq!(decode(&bytes).unwrap().height(), 9);
    }

    /// The size stands in the header (PNG specification, IHDR chunk: width and height first): it alone is looked at.
    #[test]
    fn a_header_that_claims_too_much_is_refused_before_decoding() {
        let mut bytes = png(1, 1);
        let header = bytes.windows(4).position(|w| w == b"IHDR").unwrap();
        bytes[header + 4..header + 8].copy_from_slice(&20_000_u32.to_be_bytes());
        bytes[header + 8..header + 12].copy_from_slice(&20_000_u32.to_be_bytes());
        let crc = crc32(&bytes[header..header + 17]);
        bytes[header + 17..header + 21].copy_from_slice(&crc.to_be_bytes());
        let words = decode(&bytes).unwrap_err();
        assert!(words.contains("20000 × 20000") && words.contains("64"), "{words}");
    }

    /// The check sum of a PNG chunk (PNG specification, annex D).
    fn crc32(bytes: &[u8]) -> u32 {
        !bytes.iter().fold(!0_u32, |crc, byte| {
            (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
                (crc >> 1) ^ if crc & 1 == 1 { 0xedb8_8320 } else { 0 }
            })
        })
    }

    #[test]
    fn what_is_no_picture_is_told() {
        assert!(decode(b"GIF89a............").unwrap_err().contains("PNG"));
        assert!(decode(b"").is_err());
        let whole = png(40, 40);
        for end in 0..whole.len() - 1 {
            let _ = decode(&whole[..end]);
        }
        assert!(decode(&whole[..whole.len() / 2]).is_err());
    }

    #[test]
    fn one_aspect_in_two_sizes_is_one_shape() {
        assert!(same_shape([400, 300], [800, 600]) && same_shape([401, 300], [800, 600]));
        assert!(!same_shape([400, 300], [300, 400]));
    }
}
