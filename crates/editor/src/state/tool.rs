/// A tool for the drawing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Tool {
    /// Select, drag, switch modules.
    #[default]
    Select,
    /// Draw a face corner by corner.
    DrawFace,
    /// Place a penetration.
    Penetration,
    /// Place a block.
    Block,
    /// Place what was copied.
    Paste,
    /// Measure.
    Tape,
    /// Put a picture under the plan.
    Picture,
    /// Join modules to circuits.
    Circuit,
    /// Place a junction box.
    JunctionBox,
}

/// What the pointer does with the picture.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum PictureMode {
    Move,
    Turn,
    #[default]
    Scale,
    Crop,
}

impl PictureMode {
    pub(crate) const ALL: [Self; 4] = [Self::Move, Self::Turn, Self::Scale, Self::Crop];

    /// Its index, from 0.
    pub(crate) fn index(self) -> usize {
        Self::ALL.iter().position(|mode| *mode == self).unwrap_or_default()
    }
}
