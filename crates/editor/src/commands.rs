use crate::desk::Desk;
use crate::{Document, Selection, text};
use chalkcourse_geometry::Units;
use chalkcourse_plan::{Align, Spread};
use chalkcourse_words::Language;
use egui::{Key, KeyboardShortcut, Modifiers};

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

impl Tool {
    pub(crate) const ALL: [Self; 6] =
        [Self::Select, Self::DrawFace, Self::Penetration, Self::Block, Self::Tape, Self::Picture];

    /// The word on its button.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Select => text::TOOL_SELECT.now(),
            Self::DrawFace => text::TOOL_FACE.now(),
            Self::Penetration => text::TOOL_PENETRATION.now(),
            Self::Block => text::TOOL_BLOCK.now(),
            Self::Tape => text::TOOL_TAPE.now(),
            Self::Picture => text::TOOL_PICTURE.now(),
        }
    }
}

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
    pub(crate) const ALL: [Self; 6] =
        [Self::ByPart, Self::ByStage, Self::Workbook, Self::Csv, Self::Text, Self::Json];

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
    pub(crate) const ALL: [Self; 4] = [Self::Build, Self::Checklist, Self::Pallet, Self::Claim];

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
    pub(crate) const ALL: [Self; 3] = [Self::Svg, Self::GeoJson, Self::Glb];

    pub(crate) fn extension(self) -> &'static str {
        match self {
            Self::Svg => "svg",
            Self::GeoJson => "geojson",
            Self::Glb => "glb",
        }
    }
}

/// What can be done to the block that is held, in the order of the menu.
pub(crate) const ARRANGE: [Command; 10] = [
    Command::MakeRoom,
    Command::Mirror,
    Command::CopyToFace,
    Command::Split,
    Command::Join,
    Command::AlignTo(Align::Left),
    Command::AlignTo(Align::Right),
    Command::AlignTo(Align::Bottom),
    Command::Spread(Spread::Along),
    Command::Spread(Spread::Up),
];

/// Everything that a menu, a button or a key can ask for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Command {
    New,
    /// A first job, step by step.
    Lesson,
    /// Out of it again.
    LeaveLesson,
    /// The words of the trade.
    Glossary,
    Open,
    Save,
    SaveAs,
    Export(OrderFormat),
    Print(CrewSheet),
    /// The order's window.
    Order,
    /// Leftovers from a warehouse list.
    LoadStock,
    /// What was counted of a delivery.
    LoadCounts,
    /// Hold the order against that of another job.
    CompareJob,
    /// The price list of another supplier.
    AddOffer,
    ExportPlan(PlanFormat),
    /// The drawing on the clipboard, as it is seen.
    CopyPicture,
    /// The drawing on the clipboard, as lines.
    CopySvg,
    /// The steps since the job was opened, as edits on the clipboard.
    CopySteps,
    /// The same in a file.
    SaveSteps,
    Import,
    ImportFolder,
    RoofReport,
    LoadKit,
    LoadRuleBook,
    LoadPrices,
    RuleBook,
    SaveRuleBook,
    CompareRuleBook,
    Quit,
    Undo,
    Redo,
    /// The list of all steps.
    History,
    Delete,
    /// Hold all blocks and penetrations.
    HoldAll,
    Fill,
    MakeRoom,
    Mirror,
    CopyToFace,
    Split,
    Join,
    AlignTo(Align),
    Spread(Spread),
    Coursing,
    FitUp,
    Fit,
    PlanView,
    FaceOnView,
    /// The house in space.
    SolidView,
    /// The view for the homeowner, or out of it again.
    ShowHome,
    SavePicture,
    CoursesInPlan,
    Use(Tool),
    Theme,
    Show(Units),
    Cautions,
    Checklist,
    Pathways,
    /// The walls are drawn, and a whole roof is raised over them.
    RaiseRoof,
    /// A face from measurements.
    TapedFace,
    /// A picture from a file.
    LayPicture,
    WindZones,
    /// What the lines of the drawing mean.
    Lines,
    /// Say everything in a language.
    Speak(Language),
    /// Find a command by its words.
    Find,
    Keys,
}

impl Command {
    /// All that a key or the sheet of keys can name.
    const WITH_KEYS: [Self; 47] = [
        Self::New,
        Self::Open,
        Self::SaveAs,
        Self::Save,
        Self::Export(OrderFormat::Text),
        Self::CopyPicture,
        Self::ExportPlan(PlanFormat::Glb),
        Self::ExportPlan(PlanFormat::GeoJson),
        Self::ImportFolder,
        Self::Import,
        Self::RoofReport,
        Self::Order,
        Self::Quit,
        Self::Redo,
        Self::Undo,
        Self::History,
        Self::Delete,
        Self::HoldAll,
        Self::Lines,
        Self::Fill,
        Self::MakeRoom,
        Self::Mirror,
        Self::CopyToFace,
        Self::Split,
        Self::Join,
        Self::AlignTo(Align::Left),
        Self::AlignTo(Align::Right),
        Self::AlignTo(Align::Bottom),
        Self::Spread(Spread::Up),
        Self::Spread(Spread::Along),
        Self::Coursing,
        Self::FitUp,
        Self::Fit,
        Self::PlanView,
        Self::FaceOnView,
        Self::SolidView,
        Self::ShowHome,
        Self::Use(Tool::Select),
        Self::TapedFace,
        Self::RaiseRoof,
        Self::Use(Tool::DrawFace),
        Self::Use(Tool::Penetration),
        Self::Use(Tool::Block),
        Self::Use(Tool::Tape),
        Self::Use(Tool::Picture),
        Self::Find,
        Self::Keys,
    ];

    /// All that has no key.
    const WITHOUT_KEYS: [Self; 36] = [
        Self::Export(OrderFormat::ByPart),
        Self::Export(OrderFormat::ByStage),
        Self::Export(OrderFormat::Workbook),
        Self::Export(OrderFormat::Csv),
        Self::Export(OrderFormat::Json),
        Self::Lesson,
        Self::LeaveLesson,
        Self::Glossary,
        Self::Print(CrewSheet::Build),
        Self::ExportPlan(PlanFormat::Svg),
        Self::CopySvg,
        Self::CopySteps,
        Self::SaveSteps,
        Self::Print(CrewSheet::Checklist),
        Self::Print(CrewSheet::Pallet),
        Self::Print(CrewSheet::Claim),
        Self::LoadStock,
        Self::LoadCounts,
        Self::CompareJob,
        Self::AddOffer,
        Self::LoadKit,
        Self::LoadRuleBook,
        Self::LoadPrices,
        Self::RuleBook,
        Self::SaveRuleBook,
        Self::CompareRuleBook,
        Self::SavePicture,
        Self::LayPicture,
        Self::CoursesInPlan,
        Self::Pathways,
        Self::WindZones,
        Self::Checklist,
        Self::Cautions,
        Self::Theme,
        Self::Show(Units::FeetInches),
        Self::Show(Units::Metric),
    ];

    /// Every command there is, but for the one that finds them.
    pub(crate) fn every() -> impl Iterator<Item = Self> {
        let languages = Language::ALL.map(Self::Speak);
        let all = Self::WITH_KEYS.into_iter().chain(Self::WITHOUT_KEYS).chain(languages);
        all.filter(|command| *command != Self::Find)
    }

    /// Whether there is something to do it to.
    pub(crate) fn can(self, document: &Document, desk: &Desk) -> bool {
        match self {
            Self::LeaveLesson => desk.lesson.is_some(),
            Self::Undo | Self::CopySteps | Self::SaveSteps => document.history().undo_label().is_some(),
            Self::Redo => document.history().redo_label().is_some(),
            Self::Delete => desk.selection != Selection::Nothing || !desk.group.is_empty(),
            Self::HoldAll => !document.job().blocks.is_empty() || !document.job().penetrations.is_empty(),
            Self::Fill
            | Self::FaceOnView
            | Self::RoofReport
            | Self::Coursing
            | Self::FitUp
            | Self::CopySvg
            | Self::Print(CrewSheet::Build)
            | Self::ExportPlan(_) => !document.job().faces.is_empty(),
            _ if ARRANGE.contains(&self) => desk.selection.block().is_some(),
            _ => true,
        }
    }

    /// The words in a menu.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::New => text::NEW.now(),
            Self::Lesson => text::LESSON.now(),
            Self::LeaveLesson => text::LESSON_LEAVE.now(),
            Self::Glossary => text::GLOSSARY.now(),
            Self::Open => text::OPEN.now(),
            Self::Save => text::SAVE.now(),
            Self::SaveAs => text::SAVE_AS.now(),
            Self::Export(OrderFormat::Text) => text::EXPORT_TEXT.now(),
            Self::Export(OrderFormat::Csv) => text::EXPORT_CSV.now(),
            Self::Export(OrderFormat::Json) => text::EXPORT_JSON.now(),
            Self::Export(OrderFormat::Workbook) => text::EXPORT_WORKBOOK.now(),
            Self::Export(OrderFormat::ByPart) => text::EXPORT_BY_PART.now(),
            Self::Export(OrderFormat::ByStage) => text::EXPORT_BY_STAGE.now(),
            Self::Order => text::ORDER.now(),
            Self::LoadStock => text::LOAD_STOCK.now(),
            Self::LoadCounts => text::LOAD_COUNTS.now(),
            Self::CompareJob => text::COMPARE_JOB.now(),
            Self::AddOffer => text::ADD_SUPPLIER.now(),
            Self::CopyPicture => text::COPY_PICTURE.now(),
            Self::CopySvg => text::COPY_SVG.now(),
            Self::CopySteps => text::COPY_STEPS.now(),
            Self::SaveSteps => text::SAVE_STEPS.now(),
            Self::Print(CrewSheet::Build) => text::PRINT_BUILD.now(),
            Self::ExportPlan(PlanFormat::Svg) => text::EXPORT_SVG.now(),
            Self::Print(CrewSheet::Checklist) => text::PRINT_CHECKLIST.now(),
            Self::Print(CrewSheet::Pallet) => text::PRINT_PALLET.now(),
            Self::Print(CrewSheet::Claim) => text::PRINT_CLAIM.now(),
            Self::ExportPlan(PlanFormat::GeoJson) => text::EXPORT_GEOJSON.now(),
            Self::ExportPlan(PlanFormat::Glb) => text::EXPORT_GLB.now(),
            Self::Import => text::IMPORT.now(),
            Self::ImportFolder => text::IMPORT_FOLDER.now(),
            Self::RoofReport => text::ROOF_REPORT.now(),
            Self::LoadKit => text::LOAD_KIT.now(),
            Self::LoadRuleBook => text::LOAD_RULE_BOOK.now(),
            Self::LoadPrices => text::LOAD_PRICES.now(),
            Self::RuleBook => text::RULE_BOOK_WINDOW.now(),
            Self::SaveRuleBook => text::SAVE_RULE_BOOK.now(),
            Self::CompareRuleBook => text::COMPARE_WITH_FILE.now(),
            Self::Quit => text::QUIT.now(),
            Self::Undo => text::UNDO.now(),
            Self::Redo => text::REDO.now(),
            Self::History => text::HISTORY.now(),
            Self::Delete => text::DELETE.now(),
            Self::HoldAll => text::HOLD_ALL.now(),
            Self::Fill => text::FILL.now(),
            Self::MakeRoom => text::MAKE_ROOM.now(),
            Self::Mirror => text::MIRROR.now(),
            Self::CopyToFace => text::COPY_TO_FACE.now(),
            Self::Split => text::SPLIT.now(),
            Self::Join => text::JOIN.now(),
            Self::AlignTo(to) => text::align_command(to),
            Self::Spread(way) => text::spread(way),
            Self::Coursing => text::COURSING.now(),
            Self::FitUp => text::FIT_UP.now(),
            Self::Fit => text::FIT.now(),
            Self::PlanView => text::PLAN_VIEW.now(),
            Self::FaceOnView => text::FACE_ON_VIEW.now(),
            Self::SolidView => text::SOLID_VIEW.now(),
            Self::ShowHome => text::SHOW_HOME.now(),
            Self::SavePicture => text::SAVE_PICTURE.now(),
            Self::CoursesInPlan => text::COURSES_IN_PLAN.now(),
            Self::Use(tool) => tool.name(),
            Self::Theme => text::THEME.now(),
            Self::Show(Units::FeetInches) => text::FEET_INCHES.now(),
            Self::Show(Units::Metric) => text::METRIC.now(),
            Self::Cautions => text::CAUTIONS.now(),
            Self::Checklist => text::CHECKLIST.now(),
            Self::Pathways => text::PATHWAYS.now(),
            Self::RaiseRoof => text::RAISE_OVER_WALLS.now(),
            Self::TapedFace => text::TAPED_FACE.now(),
            Self::LayPicture => text::LAY_PICTURE.now(),
            Self::WindZones => text::WIND_ZONES.now(),
            Self::Lines => text::LINES_MEAN.now(),
            Self::Speak(language) => language.name(),
            Self::Find => text::FIND_COMMAND.now(),
            Self::Keys => text::KEYS.now(),
        }
    }

    /// Its key, where it has one.
    pub(crate) fn key(self) -> Option<KeyboardShortcut> {
        let (modifiers, key) = match self {
            Self::New => (Modifiers::COMMAND, Key::N),
            Self::Open => (Modifiers::COMMAND, Key::O),
            Self::Save => (Modifiers::COMMAND, Key::S),
            Self::SaveAs => (Modifiers::COMMAND | Modifiers::SHIFT, Key::S),
            Self::Export(OrderFormat::Text) => (Modifiers::COMMAND, Key::E),
            Self::CopyPicture => (Modifiers::COMMAND | Modifiers::SHIFT, Key::C),
            Self::ExportPlan(PlanFormat::GeoJson) => (Modifiers::COMMAND, Key::G),
            Self::ExportPlan(PlanFormat::Glb) => (Modifiers::COMMAND | Modifiers::SHIFT, Key::G),
            Self::Import => (Modifiers::COMMAND, Key::I),
            Self::ImportFolder => (Modifiers::COMMAND | Modifiers::SHIFT, Key::I),
            Self::RoofReport => (Modifiers::COMMAND, Key::R),
            Self::Order => (Modifiers::NONE, Key::O),
            Self::Quit => (Modifiers::COMMAND, Key::Q),
            Self::Undo => (Modifiers::COMMAND, Key::Z),
            Self::Redo => (Modifiers::COMMAND | Modifiers::SHIFT, Key::Z),
            Self::History => (Modifiers::NONE, Key::H),
            Self::Delete => (Modifiers::NONE, Key::Delete),
            Self::HoldAll => (Modifiers::COMMAND, Key::A),
            Self::Lines => (Modifiers::SHIFT, Key::L),
            Self::Fill => (Modifiers::NONE, Key::L),
            Self::MakeRoom => (Modifiers::NONE, Key::R),
            Self::Mirror => (Modifiers::NONE, Key::M),
            Self::CopyToFace => (Modifiers::COMMAND, Key::D),
            Self::Split => (Modifiers::NONE, Key::K),
            Self::Join => (Modifiers::NONE, Key::J),
            Self::AlignTo(Align::Left) => (Modifiers::COMMAND, Key::ArrowLeft),
            Self::AlignTo(Align::Right) => (Modifiers::COMMAND, Key::ArrowRight),
            Self::AlignTo(Align::Bottom) => (Modifiers::COMMAND, Key::ArrowDown),
            Self::Spread(Spread::Along) => (Modifiers::NONE, Key::E),
            Self::Spread(Spread::Up) => (Modifiers::SHIFT, Key::E),
            Self::Coursing => (Modifiers::NONE, Key::C),
            Self::FitUp => (Modifiers::NONE, Key::Q),
            Self::Fit => (Modifiers::NONE, Key::F),
            Self::PlanView => (Modifiers::NONE, Key::Num1),
            Self::FaceOnView => (Modifiers::NONE, Key::Num2),
            Self::SolidView => (Modifiers::NONE, Key::Num3),
            Self::ShowHome => (Modifiers::NONE, Key::F11),
            Self::Use(Tool::Select) => (Modifiers::NONE, Key::S),
            Self::RaiseRoof => (Modifiers::NONE, Key::W),
            Self::TapedFace => (Modifiers::SHIFT, Key::D),
            Self::Use(Tool::DrawFace) => (Modifiers::NONE, Key::D),
            Self::Use(Tool::Penetration) => (Modifiers::NONE, Key::P),
            Self::Use(Tool::Block) => (Modifiers::NONE, Key::B),
            Self::Use(Tool::Tape) => (Modifiers::NONE, Key::T),
            Self::Use(Tool::Picture) => (Modifiers::NONE, Key::U),
            Self::Find => (Modifiers::COMMAND, Key::F),
            Self::Keys => (Modifiers::NONE, Key::F1),
            _ => return None,
        };
        Some(KeyboardShortcut::new(modifiers, key))
    }

    /// Every command that has a key, for the sheet of keys.
    pub(crate) fn with_keys() -> impl Iterator<Item = (Self, KeyboardShortcut)> {
        Self::WITH_KEYS.into_iter().filter_map(|command| Some((command, command.key()?)))
    }

    /// What the keys of this frame ask for. Keys without Ctrl are letters to a field that is typed in, and undo there
    /// is the field's own, except for the length of a side that is being drawn.
    pub(crate) fn pressed(ctx: &egui::Context, drawing: bool) -> Vec<Self> {
        let typing = ctx.text_edit_focused();
        let fields_own = |command: Self| {
            typing
                && (!drawing && matches!(command, Self::Undo | Self::Redo)
                    || matches!(command, Self::AlignTo(_) | Self::HoldAll))
        };
        let mut asked: Vec<Self> = ctx.input_mut(|input| {
            Self::with_keys()
                .filter(|(_, key)| {
                    !typing || key.modifiers.command || matches!(key.logical_key, Key::F1 | Key::F11)
                })
                .filter(|(command, _)| !fields_own(*command))
                .filter(|(_, key)| input.consume_shortcut(key))
                .map(|(command, _)| command)
                .collect()
        });
        if !fields_own(Self::Redo) && ctx.input_mut(|input| input.consume_key(Modifiers::COMMAND, Key::Y)) {
            asked.push(Self::Redo);
        }
        asked
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_command_is_told_apart_by_its_name() {
        let mut names: Vec<&str> = Command::every().map(Command::name).collect();
        assert!(Command::WITHOUT_KEYS.iter().all(|command| command.key().is_none()));
        let all = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), all);
    }

    #[test]
    fn no_key_asks_for_two_things() {
        let keys: Vec<_> = Command::with_keys().map(|(_, key)| key).collect();
        assert_eq!(keys.len(), Command::WITH_KEYS.len());
        for (i, key) in keys.iter().enumerate() {
            assert!(!keys[..i].contains(key), "{key:?} is taken twice");
        }
    }
}
