use crate::wind::Figure;
use chalkcourse_job::{Source, Standing};

/// Where a requirement comes from.
#[derive(Clone, Debug, PartialEq)]
pub enum Authority {
    /// A limit of the book, with its own source.
    Source(Source),
    /// Several limits of the book, each with its own source.
    EachItsOwn,
    /// The kit as a whole.
    Kit,
    /// Geometry: there is no alternative.
    Geometry,
    /// A person, for this one thing.
    Person,
    /// Common practice, no source.
    Practice,
    /// A figure of a load standard, with the array taken as roof covering.
    Figure(Figure),
    /// The job's own waivers.
    Waivers,
    /// The book has no such section.
    NotInBook,
    /// The edition that the book follows does not require it.
    NotInEdition,
    /// The book omits it.
    LeftOut,
}

impl Authority {
    /// How reliable it is; `None` if nothing is required, or each limit has its own source.
    pub fn standing(&self) -> Option<Standing> {
        match self {
            Self::Source(source) => Some(source.standing),
            Self::Kit => Some(Standing::Maker),
            Self::Geometry => Some(Standing::Confirmed),
            Self::Person | Self::Waivers => Some(Standing::Office),
            Self::Practice => Some(Standing::CommonPractice),
            // Treating a flush array as roof covering, not as panels above a roof, is a judgement.
            Self::Figure(_) => Some(Standing::FromMemory),
            Self::EachItsOwn | Self::NotInBook | Self::NotInEdition | Self::LeftOut => None,
        }
    }

    /// The source of a limit.
    pub(crate) fn of(source: &Source) -> Self {
        Self::Source(source.clone())
    }
}
