/// Why a limit gives nothing for a job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Off {
    /// The rule book has its rule switched off.
    Switched,
    /// The rule book has no such limit.
    NotInBook,
    /// The kit has none.
    NotInKit,
    /// The rule book does not go into fire access.
    NoFireAccess,
    /// The edition on which its fire access is based does not ask for it.
    NotInEdition,
    /// Exempt: a detached building in which nobody lives.
    Detached,
    /// Exempt: the fire official found no roof operations; as the site says it.
    NoRoofOperations(String),
    /// Exempt: a roof-integrated array, and who read its listing.
    Integrated(String),
    /// No escape window is marked on the roof.
    NoEscapeWindow,
}
