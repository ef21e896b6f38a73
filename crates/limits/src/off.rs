/// Why a limit gives nothing for a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OffReason {
    /// The rule book switches its rule off.
    Switched,
    /// The rule book has no setbacks.
    NoSetbacks,
    /// The rule book has no clearance for valleys and hips.
    NoRoomBesideLines,
    /// The kit gives no limits for its base rail.
    KitWithoutRail,
    /// The kit requires no room between blocks.
    NoRoomBetween,
    /// The rule book does not cover fire access.
    NoFireAccess,
    /// The edition behind its fire access does not require it.
    NotInEdition,
    /// That edition has no number for hips and valleys.
    NoNumberInEdition,
    /// The site is exempt from fire access.
    Exempt(Exemption),
    /// No escape window is marked on the roof.
    NoEscapeWindow,
}

/// Why a job is exempt from fire access. The site records who found or read it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Exemption {
    /// A detached, non-habitable building.
    Detached,
    /// The fire official rules out roof operations.
    NoRoofOperations,
    /// A roof-integrated array whose listing was read.
    Integrated,
}
