//! What the window writes: the kinds of files, and how each ends.

/// What an order is written as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum OrderFormat {
    Text,
    Csv,
    Json,
    Workbook,
    /// To print, by part.
    ByPart,
    /// To print, by stage of work.
    ByStage,
}

impl OrderFormat {
    pub(crate) fn extension(self) -> &'static str {
        match self {
            Self::Text => "txt",
            Self::Csv => "csv",
            Self::Json => "json",
            Self::Workbook => "xlsx",
            Self::ByPart | Self::ByStage => "pdf",
        }
    }
}

/// What a crew prints.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum CrewSheet {
    /// The roof with the lines to snap.
    Build,
    Checklist,
    /// To count the delivery on.
    Pallet,
    /// What was short, damaged or over.
    Claim,
}

impl CrewSheet {
    /// What the file is called after the job's name.
    pub(crate) fn ending(self) -> &'static str {
        match self {
            Self::Build => "plan.pdf",
            Self::Checklist => "checklist.pdf",
            Self::Pallet => "pallet.pdf",
            Self::Claim => "claim.pdf",
        }
    }
}

/// What the plan is written as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PlanFormat {
    Svg,
    GeoJson,
    Glb,
}

impl PlanFormat {
    pub(crate) fn extension(self) -> &'static str {
        match self {
            Self::Svg => "svg",
            Self::GeoJson => "geojson",
            Self::Glb => "glb",
        }
    }
}
