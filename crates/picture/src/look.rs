use chalkcourse_solid::Kind;

/// A colour: red, green, blue, sRGB.
pub type Rgb = [u8; 3];

/// The colours of a picture: materials in white light, and the background.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// The sky at the top of the picture, and at the bottom.
    pub sky: [Rgb; 2],
    /// The highlight of what is held, if anything is.
    pub held: Rgb,
    /// The materials, in the order of [`Kind::ALL`].
    pub materials: [Rgb; Kind::ALL.len()],
}

impl Default for Look {
    /// Grey shingles and pale walls on dry grass under a bright sky.
    fn default() -> Self {
        Self {
            sky: [[0xbf, 0xd4, 0xe6], [0xee, 0xf1, 0xee]],
            held: [0xff, 0xb3, 0x3b],
            materials: Kind::ALL.map(|kind| match kind {
                Kind::Roof => [0x8a, 0x86, 0x80],
                Kind::Fascia => [0xe8, 0xe4, 0xda],
                Kind::Soffit => [0xcf, 0xca, 0xbf],
                Kind::Wall => [0xdf, 0xd3, 0xbd],
                Kind::Ground => [0xa9, 0xb3, 0x8d],
                Kind::Module => [0x16, 0x24, 0x38],
                Kind::ModuleSide => [0x2a, 0x2d, 0x31],
                Kind::Flashing => [0x5f, 0x62, 0x66],
                Kind::Penetration => [0x9a, 0x9a, 0x98],
                Kind::Chimney => [0xa0, 0x62, 0x50],
                Kind::Glass => [0x7f, 0x9c, 0xb0],
            }),
        }
    }
}

impl Look {
    /// The colour of a material.
    pub fn material(&self, kind: Kind) -> Rgb {
        let index = Kind::ALL.iter().position(|&k| k == kind).unwrap_or(0);
        self.materials.get(index).copied().unwrap_or([0x80; 3])
    }
}

/// Linear light from an sRGB colour (IEC 61966-2-1; from memory).
pub(crate) fn linear(colour: Rgb) -> [f32; 3] {
    colour.map(|c| {
        let c = f32::from(c) / 255.0;
        if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
    })
}

/// Size of the lookup table from light to colour.
const STEPS: usize = 4096;

/// Lookup table from linear light to sRGB.
pub(crate) struct Tone([u8; STEPS + 1]);

impl Tone {
    pub(crate) fn new() -> Self {
        let mut table = [0; STEPS + 1];
        for (step, out) in table.iter_mut().enumerate() {
            let light = step as f32 / STEPS as f32;
            let shown =
                if light <= 0.003_130_8 { light * 12.92 } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 };
            *out = (shown * 255.0).round().clamp(0.0, 255.0) as u8;
        }
        Self(table)
    }

    pub(crate) fn shown(&self, light: [f32; 3]) -> Rgb {
        light.map(|l| {
            // NaN becomes 0
            let step = (l.clamp(0.0, 1.0) * STEPS as f32) as usize;
            self.0.get(step).copied().unwrap_or(0)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn light_and_colour_are_inverse() {
        let tone = Tone::new();
        for c in 0..=255u8 {
            let back = tone.shown(linear([c; 3]))[0];
            assert!(back.abs_diff(c) <= 1, "{c} comes back as {back}");
        }
        assert_eq!(tone.shown([f32::NAN, -1.0, 9.0]), [0, 0, 255]);
    }
}
