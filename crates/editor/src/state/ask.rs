use super::{CrewSheet, OrderFormat, PlanFormat};

/// What a path is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ask {
    Open,
    SaveAs,
    Export(OrderFormat),
    Print(CrewSheet),
    ExportPlan(PlanFormat),
    /// The steps since the job was opened, as edits.
    Steps,
    /// A file of buildings; a folder will do too where it is typed.
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
    /// To lay under the plan.
    Picture,
    /// Of the house in space.
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

    /// Whether a folder is as good as a file.
    pub(crate) fn takes_folder(self) -> bool {
        matches!(self, Self::Import | Self::ImportFolder)
    }

    /// What such files end in.
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
