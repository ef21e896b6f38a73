use crate::Picture;
use chalkcourse_words as words;

/// Why no file was made.
#[derive(Debug, thiserror::Error)]
pub enum PngError {
    /// The picture has no pixels.
    #[error("{}", words::picture::a_picture_of_pixels_cant(&_0, &_1))]
    Empty(usize, usize),
    /// The encoder failed.
    #[error("{}", words::picture::the_picture_cant_be_written(&_0))]
    Encoding(#[from] png::EncodingError),
}

impl Picture {
    /// The picture as a PNG file (ISO/IEC 15948), sRGB, 8 bits.
    ///
    /// # Errors
    /// [`PngError`] for a picture without pixels.
    pub fn to_png(&self) -> Result<Vec<u8>, PngError> {
        let [width, height] = self.size;
        let (Ok(w), Ok(h)) = (u32::try_from(width), u32::try_from(height)) else {
            return Err(PngError::Empty(width, height));
        };
        if w == 0 || h == 0 {
            return Err(PngError::Empty(width, height));
        }
        let mut bytes = Vec::new();
        let mut encoder = png::Encoder::new(&mut bytes, w, h);
        encoder.set_color(png::ColorType::Rgba);
        encoder.set_depth(png::BitDepth::Eight);
        let mut writer = encoder.write_header()?;
        writer.write_image_data(&self.rgba)?;
        writer.finish()?;
        Ok(bytes)
    }
}
