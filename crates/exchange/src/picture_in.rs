//! Backdrop pictures: PNG and JPEG, decoded within limits.

use chalkcourse_words as words;
use image::{DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits};
use std::io::Cursor;

/// Maximum pixels of a picture to decode: 8000 × 8000.
const MOST_PIXELS: u64 = 64_000_000;
/// Maximum width and height of a picture to decode, pixels.
const MOST_SIDE: u32 = 32_000;
/// Maximum memory of the decoder, bytes.
const MOST_MEMORY: u64 = 512 << 20;

/// Why the bytes can't be used as a backdrop, and what to do.
#[derive(Debug, thiserror::Error)]
pub enum PictureInError {
    /// Another format, or not a picture at all.
    #[error("{}", words::formats::IT_IS_NEITHER_A_PNG.now().to_owned())]
    OtherFormat,
    /// Its header claims more pixels than are decoded here.
    #[error("{}", words::formats::it_is_pixels_more_than(&width, &height, &(MOST_PIXELS / 1_000_000)))]
    TooManyPixels {
        /// Width, pixels.
        width: u32,
        /// Height, pixels.
        height: u32,
    },
    /// The decoder failed.
    #[error("{}", words::formats::the_file_is_damaged_save(&_0))]
    Broken(#[from] ImageError),
}

/// Decodes a PNG or JPEG, rotated as its EXIF orientation says. The size is checked before anything is decoded.
///
/// # Errors
/// What is wrong with the bytes, and what to do.
pub fn picture_from_bytes(bytes: &[u8]) -> Result<DynamicImage, PictureInError> {
    let mut reader =
        ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(ImageError::IoError)?;
    if !matches!(reader.format(), Some(ImageFormat::Png | ImageFormat::Jpeg)) {
        return Err(PictureInError::OtherFormat);
    }
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_SIDE);
    limits.max_image_height = Some(MOST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder()?;
    let (width, height) = decoder.dimensions();
    if u64::from(width) * u64::from(height) > MOST_PIXELS || decoder.total_bytes() > MOST_MEMORY {
        return Err(PictureInError::TooManyPixels { width, height });
    }
    let orientation = decoder.orientation()?;
    let mut image = DynamicImage::from_decoder(decoder)?;
    image.apply_orientation(orientation);
    if image.width() == 0 || image.height() == 0 { Err(PictureInError::OtherFormat) } else { Ok(image) }
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
        assert_eq!(picture_from_bytes(&png(7, 5)).unwrap().width(), 7);
        let mut bytes = Vec::new();
        DynamicImage::new_rgb8(16, 9).write_to(&mut Cursor::new(&mut bytes), ImageFormat::Jpeg).unwrap();
        assert_eq!(picture_from_bytes(&bytes).unwrap().height(), 9);
    }

    /// The size is in the header (PNG specification, IHDR chunk: width and height first), and only the header is read.
    #[test]
    fn a_header_that_claims_too_much_is_refused_before_decoding() {
        let mut bytes = png(1, 1);
        let header = bytes.windows(4).position(|w| w == b"IHDR").unwrap();
        bytes[header + 4..header + 8].copy_from_slice(&20_000_u32.to_be_bytes());
        bytes[header + 8..header + 12].copy_from_slice(&20_000_u32.to_be_bytes());
        let crc = crc32(&bytes[header..header + 17]);
        bytes[header + 17..header + 21].copy_from_slice(&crc.to_be_bytes());
        let words = picture_from_bytes(&bytes).unwrap_err().to_string();
        assert!(words.contains("20000 × 20000") && words.contains("64"), "{words}");
    }

    /// The CRC of a PNG chunk (PNG specification, annex D).
    fn crc32(bytes: &[u8]) -> u32 {
        !bytes.iter().fold(!0_u32, |crc, byte| {
            (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
                (crc >> 1) ^ if crc & 1 == 1 { 0xedb8_8320 } else { 0 }
            })
        })
    }

    #[test]
    fn anything_but_a_picture_is_reported() {
        assert!(picture_from_bytes(b"GIF89a............").unwrap_err().to_string().contains("PNG"));
        assert!(picture_from_bytes(b"").is_err());
        let whole = png(40, 40);
        for end in 0..whole.len() - 1 {
            let _ = picture_from_bytes(&whole[..end]);
        }
        assert!(picture_from_bytes(&whole[..whole.len() / 2]).is_err());
    }
}
