use crate::wind::Figure;
use chalkcourse_job::{Source, Standing};

/// By whose word something is asked.
#[derive(Clone, Debug, PartialEq)]
pub enum Authority {
    /// The source that a limit of the book carries.
    Source(Source),
    /// Limits of the book that each have a source of their own.
    EachItsOwn,
    /// The kit as a whole.
    Kit,
    /// Geometry: it can't be otherwise.
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
    /// The edition that the book follows does not ask for it.
    NotInEdition,
    /// The book leaves it out.
    LeftOut,
}

impl Authority {
    /// How far it can be relied on; `None` where nothing is asked, or each limit has its own.
    pub fn standing(&self) -> Option<Standing> {
        match self {
            Self::Source(source) => Some(source.standing),
            Self::Kit => Some(Standing::Maker),
            Self::Geometry => Some(Standing::Confirmed),
            Self::Person | Self::Waivers => Some(Standing::Office),
            Self::Practice => Some(Standing::CommonPractice),
            // That a flush array is no panel above a roof is a judgement.
            Self::Figure(_) => Some(Standing::FromMemory),
            Self::EachItsOwn | Self::NotInBook | Self::NotInEdition | Self::LeftOut => None,
        }
    }

    /// The source of a limit.
    pub(crate) fn of(source: &Source) -> Self {
        Self::Source(source.clone())
    }
}
