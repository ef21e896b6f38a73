/// Why a limit gives nothing for a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Off {
    /// The rule book has its rule switched off.
    Switched,
    /// The rule book has no setbacks.
    NoSetbacks,
    /// The rule book asks no room beside valleys and hips.
    NoRoomBesideLines,
    /// The kit does not say where its base rail may be.
    KitWithoutRail,
    /// The kit asks no room between blocks.
    NoRoomBetween,
    /// The rule book does not go into fire access.
    NoFireAccess,
    /// The edition on which its fire access is based does not ask for it.
    NotInEdition,
    /// That edition has no number for hips and valleys.
    NoNumberInEdition,
    /// The site is exempt from fire access.
    Exempt(Exemption),
    /// No escape window is marked on the roof.
    NoEscapeWindow,
}

/// Why fire access is not asked of a job. Who found or read it, the site says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Exemption {
    /// A detached building in which nobody lives.
    Detached,
    /// The fire official found no roof operations.
    NoRoofOperations,
    /// A roof-integrated array whose listing somebody read.
    Integrated,
}
