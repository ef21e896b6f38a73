/// A tool for the drawing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Tool {
    /// Hold, drag, switch.
    #[default]
    Select,
    /// Draw a face corner by corner.
    DrawFace,
    /// Place a penetration.
    Penetration,
    /// Place a block.
    Block,
    /// Measure.
    Tape,
    /// Lay a picture under the plan.
    Picture,
}
