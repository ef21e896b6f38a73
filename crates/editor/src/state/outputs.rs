//! File outputs of the window: their kinds, and their extensions.

/// Formats of an order.
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

/// Sheets for the crew.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum CrewSheet {
    /// The roof with the lines to snap.
    Build,
    Checklist,
    /// For counting the delivery.
    Pallet,
    /// What was short, damaged or surplus.
    Claim,
    /// Each block with its wires.
    WireDiagram,
    /// From modules to the service panel.
    OneLine,
    /// For the electrician.
    Handover,
    /// The labels of the code.
    Labels,
}

impl CrewSheet {
    /// The suffix after the job's name.
    pub(crate) fn ending(self) -> &'static str {
        match self {
            Self::Build => "plan.pdf",
            Self::Checklist => "checklist.pdf",
            Self::Pallet => "pallet.pdf",
            Self::Claim => "claim.pdf",
            Self::WireDiagram => "wires.pdf",
            Self::OneLine => "one-line.pdf",
            Self::Handover => "handover.pdf",
            Self::Labels => "labels.pdf",
        }
    }
}

/// Formats of the plan.
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
