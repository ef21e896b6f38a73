use super::{CrewSheet, OrderFormat, PlanFormat};

/// The purpose of a path.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ask {
    Open,
    SaveAs,
    Export(OrderFormat),
    Print(CrewSheet),
    ExportPlan(PlanFormat),
    /// The steps since the job was opened, as an edit script.
    Steps,
    /// A file of buildings; a typed folder is accepted too.
    Import,
    ImportFolder,
    Kit,
    RuleBook,
    SaveRuleBook,
    CompareBook,
    Prices,
    /// A warehouse list.
    Stock,
    /// A pallet list with counts.
    Counts,
    /// The order of another job.
    CompareJob,
    /// Prices of another supplier.
    Offer,
    /// A picture for under the plan.
    Picture,
    /// A picture of the 3-D view.
    SavePicture,
}

impl Ask {
    /// Whether a file will be written there.
    pub(crate) fn writes(self) -> bool {
        matches!(
            self,
            Self::SaveAs
                | Self::SaveRuleBook
                | Self::SavePicture
                | Self::Export(_)
                | Self::Print(_)
                | Self::ExportPlan(_)
                | Self::Steps
        )
    }

    /// Whether a folder is accepted in place of a file.
    pub(crate) fn takes_folder(self) -> bool {
        matches!(self, Self::Import | Self::ImportFolder)
    }

    /// Accepted file extensions.
    pub(crate) fn extensions(self) -> &'static [&'static str] {
        match self {
            Self::Export(OrderFormat::Text) => &["txt"],
            Self::Export(OrderFormat::Csv) => &["csv"],
            Self::Export(OrderFormat::Workbook) => &["xlsx"],
            Self::Export(OrderFormat::ByPart | OrderFormat::ByStage) | Self::Print(_) => &["pdf"],
            Self::ExportPlan(PlanFormat::Svg) => &["svg"],
            Self::ExportPlan(PlanFormat::GeoJson) => &["geojson", "json"],
            Self::ExportPlan(PlanFormat::Glb) => &["glb"],
            Self::Import | Self::ImportFolder => &["geojson", "json", "jsonl"],
            Self::Picture => &["png", "jpg", "jpeg"],
            Self::SavePicture => &["png"],
            Self::Stock => &["csv", "json"],
            Self::Counts => &["csv"],
            Self::Prices | Self::Offer => &["json", "csv", "xlsx", "ods"],
            _ => &["json"],
        }
    }
}
