//! The commands, in the order of their menus.

use super::Entry;
use super::Mark::{Choice, Tick};
use super::Menu::{self, Edit, Export, File, Help, View};
use super::chord::Chord;
use crate::action::Action;
use crate::state::{Change, Pane, Toggle, TypeSize};
use crate::state::{CrewSheet, Look, OrderFormat, PlanFormat, State, Step, Tool};
use crate::{Document, Selection, text};
use chalkcourse_geometry::Units;
use chalkcourse_plan::{Align, Spread};
use chalkcourse_words::{Language, command};
use egui::Key;

/// How many times as near the drawing comes at a step.
const ZOOM: f64 = 1.25;

/// Makes the ids and the table of the same lines, so that neither has what the other lacks.
macro_rules! commands {
    ($($(#[$only:meta])? $id:ident => $entry:expr,)*) => {
        /// Everything that a menu, a button or a key can ask for.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub(crate) enum Command {
            $($(#[$only])? $id,)*
            /// A language: as many as there are files of them.
            Speak(Language),
        }

        pub(super) static TABLE: &[(Command, Entry)] = &[$($(#[$only])? (Command::$id, $entry),)*];
    };
}

commands! {
    New => Entry::new(text::NEW, command::NEW, (File, 1), Action::New).keys(&[Chord::ctrl(Key::N)]),
    Open => Entry::new(text::OPEN, command::OPEN, (File, 1), Action::AskOpen).keys(&[Chord::ctrl(Key::O)]),
    StartPage => Entry::new(text::START_PAGE, command::START_PAGE, (File, 2), Action::StartPage),
    OpenSample => Entry::new(text::OPEN_SAMPLE, command::SAMPLE, (File, 2), Action::OpenSample),
    Import => Entry::new(text::IMPORT, command::IMPORT, (File, 2), Action::AskImport)
        .keys(&[Chord::ctrl(Key::I)]),
    ImportFolder => Entry::new(
        text::IMPORT_FOLDER,
        command::IMPORT_FOLDER,
        (File, 2),
        Action::AskImportFolder,
    )
        .keys(&[Chord::ctrl_shift(Key::I)]),
    Save => Entry::new(text::SAVE, command::SAVE, (File, 3), Action::Save).keys(&[Chord::ctrl(Key::S)]),
    SaveAs => Entry::new(text::SAVE_AS, command::SAVE_AS, (File, 3), Action::SaveAs)
        .keys(&[Chord::ctrl_shift(Key::S)]),
    LayPicture => Entry::new(text::LAY_PICTURE, text::TOOL_PICTURE_HELP, (File, 5), Action::AskPicture),
    LoadKit => Entry::new(text::LOAD_KIT, command::LOAD_KIT, (File, 5), Action::LoadKit),
    LoadRuleBook =>
        Entry::new(text::LOAD_RULE_BOOK, command::LOAD_RULE_BOOK, (File, 5), Action::LoadRuleBook),
    LoadPrices => Entry::new(text::LOAD_PRICES, command::LOAD_PRICES, (File, 5), Action::LoadPrices),
    LoadStock => Entry::new(text::LOAD_STOCK, text::STOCK_HELP, (Menu::Order, 1), Action::LoadStock),
    LoadCounts => Entry::new(text::LOAD_COUNTS, text::LOAD_COUNTS_HELP, (Menu::Order, 1), Action::LoadCounts),
    AddOffer => Entry::new(text::ADD_SUPPLIER, command::ADD_OFFER, (Menu::Order, 1), Action::AddOffer),
    CompareJob => Entry::new(text::COMPARE_JOB, command::COMPARE_JOB, (Menu::Order, 1), Action::CompareJob),
    RuleBook => Entry::new(
        text::RULE_BOOK_WINDOW,
        command::RULE_BOOK,
        (File, 6),
        Action::Open(Pane::RuleBook),
    ),
    SaveRuleBook =>
        Entry::new(text::SAVE_RULE_BOOK, command::SAVE_RULE_BOOK, (File, 6), Action::SaveRuleBook),
    CompareRuleBook =>
        Entry::new(text::COMPARE_WITH_FILE, command::COMPARE_RULE_BOOK, (File, 6), Action::CompareRuleBook),
    Quit => Entry::new(text::QUIT, command::QUIT, (File, 7), Action::Quit).keys(&[Chord::ctrl(Key::Q)]),

    ExportByPart =>
        Entry::new(
            text::EXPORT_BY_PART,
            command::EXPORT_BY_PART,
            (Export, 1),
            Action::Export(OrderFormat::ByPart),
        ),
    ExportByStage =>
        Entry::new(
            text::EXPORT_BY_STAGE,
            command::EXPORT_BY_STAGE,
            (Export, 1),
            Action::Export(OrderFormat::ByStage),
        ),
    ExportWorkbook =>
        Entry::new(
            text::EXPORT_WORKBOOK,
            command::EXPORT_WORKBOOK,
            (Export, 1),
            Action::Export(OrderFormat::Workbook),
        ),
    ExportCsv => Entry::new(
        text::EXPORT_CSV,
        command::EXPORT_CSV,
        (Export, 1),
        Action::Export(OrderFormat::Csv),
    ),
    ExportText => Entry::new(
        text::EXPORT_TEXT,
        command::EXPORT_TEXT,
        (Export, 1),
        Action::Export(OrderFormat::Text),
    )
        .keys(&[Chord::ctrl(Key::E)]),
    ExportJson => Entry::new(
        text::EXPORT_JSON,
        command::EXPORT_JSON,
        (Export, 1),
        Action::Export(OrderFormat::Json),
    ),
    PrintBuild => Entry::new(
        text::PRINT_BUILD,
        command::PRINT_BUILD,
        (Export, 2),
        Action::Print(CrewSheet::Build),
    )
        .when(has_faces),
    PrintChecklist =>
        Entry::new(
            text::PRINT_CHECKLIST,
            command::PRINT_CHECKLIST,
            (Export, 2),
            Action::Print(CrewSheet::Checklist),
        ),
    PrintPallet =>
        Entry::new(text::PRINT_PALLET, command::PRINT_PALLET, (Export, 2), Action::Print(CrewSheet::Pallet)),
    PrintClaim => Entry::new(
        text::PRINT_CLAIM,
        command::PRINT_CLAIM,
        (Export, 2),
        Action::Print(CrewSheet::Claim),
    ),
    PrintWires => Entry::new(
        text::PRINT_WIRES,
        text::PRINT_WIRES_HELP,
        (Export, 2),
        Action::Print(CrewSheet::WireDiagram),
    )
        .when(has_circuits),
    PrintOneLine => Entry::new(
        text::PRINT_ONE_LINE,
        text::PRINT_ONE_LINE_HELP,
        (Export, 2),
        Action::Print(CrewSheet::OneLine),
    )
        .when(has_circuits),
    PrintHandover => Entry::new(
        text::PRINT_HANDOVER,
        text::PRINT_HANDOVER_HELP,
        (Export, 2),
        Action::Print(CrewSheet::Handover),
    )
        .when(has_circuits),
    PrintLabels => Entry::new(
        text::PRINT_LABELS,
        text::PRINT_LABELS_HELP,
        (Export, 2),
        Action::Print(CrewSheet::Labels),
    )
        .when(has_circuits),
    ExportSvg => Entry::new(
        text::EXPORT_SVG,
        command::EXPORT_SVG,
        (Export, 3),
        Action::ExportPlan(PlanFormat::Svg),
    )
        .when(has_faces),
    ExportGeoJson =>
        Entry::new(
            text::EXPORT_GEOJSON,
            command::EXPORT_GEOJSON,
            (Export, 3),
            Action::ExportPlan(PlanFormat::GeoJson),
        )
            .keys(&[Chord::ctrl(Key::G)])
            .when(has_faces),
    ExportGlb => Entry::new(
        text::EXPORT_GLB,
        command::EXPORT_GLB,
        (Export, 3),
        Action::ExportPlan(PlanFormat::Glb),
    )
        .keys(&[Chord::ctrl_shift(Key::G)])
        .when(has_faces),
    SaveSteps => Entry::new(
        text::SAVE_STEPS,
        command::SAVE_STEPS,
        (Export, 4),
        Action::SaveSteps).when(can_undo,
    ),

    Undo => Entry::new(text::UNDO, command::UNDO, (Edit, 1), Action::Undo)
        .keys(&[Chord::ctrl(Key::Z).also_undo_of_fields()])
        .when(can_undo)
        .lesson(Step::Finding),
    Redo => Entry::new(text::REDO, command::REDO, (Edit, 1), Action::Redo)
        .keys(&[Chord::ctrl_shift(Key::Z).also_undo_of_fields(), Chord::ctrl(Key::Y).also_undo_of_fields()])
        .when(can_redo),
    History => Entry::new(text::HISTORY, command::HISTORY, (Edit, 1), Action::Open(Pane::History))
        .keys(&[Chord::plain(Key::H)]),
    Delete => Entry::new(text::DELETE, command::DELETE, (Edit, 2), Action::Delete)
        .keys(&[Chord::plain(Key::Delete).of_drawing()])
        .when(holds_something),
    Copy => Entry::new(text::COPY_HELD, command::COPY, (Edit, 2), Action::Copy)
        .keys(&[Chord::ctrl(Key::C).also_of_fields()])
        .when(holds_pieces),
    Cut => Entry::new(text::CUT, command::CUT, (Edit, 2), Action::Cut)
        .keys(&[Chord::ctrl(Key::X).also_of_fields()])
        .when(holds_pieces),
    Paste => Entry::new(text::PASTE, command::PASTE, (Edit, 2), Action::Paste)
        .keys(&[Chord::ctrl(Key::V).also_of_fields()])
        .when(has_faces),
    Duplicate => Entry::new(text::DUPLICATE, command::DUPLICATE, (Edit, 2), Action::Duplicate)
        .keys(&[Chord::ctrl(Key::D)])
        .when(holds_pieces),
    HoldAll => Entry::new(text::HOLD_ALL, command::HOLD_ALL, (Edit, 2), Action::HoldAll)
        .keys(&[Chord::ctrl(Key::A).also_of_fields()])
        .when(has_things),
    CopyPicture => Entry::new(text::COPY_PICTURE, command::COPY_PICTURE, (Edit, 3), Action::CopyPicture)
        .keys(&[Chord::ctrl_shift(Key::C)]),
    CopySvg => Entry::new(text::COPY_SVG, command::COPY_SVG, (Edit, 3), Action::CopySvg).when(has_faces),
    CopySteps => Entry::new(
        text::COPY_STEPS,
        command::COPY_STEPS,
        (Edit, 3),
        Action::CopySteps).when(can_undo,
    ),
    Fill => Entry::new(text::FILL, command::FILL, (Edit, 4), Action::FillHeld)
        .keys(&[Chord::plain(Key::L)])
        .when(has_faces)
        .lesson(Step::Fill),
    MakeRoom => Entry::new(text::MAKE_ROOM, text::MAKE_ROOM_HELP, (Edit, 4), Action::MakeRoom)
        .keys(&[Chord::plain(Key::R)])
        .when(holds_block),
    Mirror => Entry::new(text::MIRROR, text::MIRROR_HELP, (Edit, 4), Action::Mirror)
        .keys(&[Chord::plain(Key::M)])
        .when(holds_block),
    CopyToFace => Entry::new(text::COPY_TO_FACE, command::COPY_TO_FACE, (Edit, 4), Action::CopyToFace)
        .keys(&[Chord::ctrl_shift(Key::D)])
        .when(holds_block),
    Split => Entry::new(text::SPLIT, command::SPLIT, (Edit, 4), Action::Split)
        .keys(&[Chord::plain(Key::K)])
        .when(holds_block),
    Join => Entry::new(text::JOIN, command::JOIN, (Edit, 4), Action::Join)
        .keys(&[Chord::plain(Key::J)])
        .when(holds_block),
    AlignLeft => Entry::new(text::ALIGN_LEFT, command::ALIGN, (Edit, 4), Action::AlignTo(Align::Left))
        .keys(&[Chord::ctrl(Key::ArrowLeft).also_of_fields()])
        .when(holds_block),
    AlignRight => Entry::new(text::ALIGN_RIGHT, command::ALIGN, (Edit, 4), Action::AlignTo(Align::Right))
        .keys(&[Chord::ctrl(Key::ArrowRight).also_of_fields()])
        .when(holds_block),
    AlignBottom => Entry::new(text::ALIGN_BOTTOM, command::ALIGN, (Edit, 4), Action::AlignTo(Align::Bottom))
        .keys(&[Chord::ctrl(Key::ArrowDown).also_of_fields()])
        .when(holds_block),
    SpreadAlong => Entry::new(text::SPREAD_ALONG, text::SPREAD_HELP, (Edit, 4), Action::Spread(Spread::Along))
        .keys(&[Chord::plain(Key::E)])
        .when(holds_block),
    SpreadUp => Entry::new(text::SPREAD_UP, text::SPREAD_HELP, (Edit, 4), Action::Spread(Spread::Up))
        .keys(&[Chord::shift(Key::E)])
        .when(holds_block),
    StringAutomatically => Entry::new(
        text::STRING_AUTOMATICALLY,
        text::STRING_AUTOMATICALLY_HELP,
        (Menu::Circuits, 1),
        Action::StringAutomatically,
    )
        .keys(&[Chord::shift(Key::G)])
        .when(has_blocks),
    HeldMenu => Entry::new(text::HELD_MENU, command::HELD_MENU, (Edit, 2), Action::HeldMenu)
        .keys(&[Chord::function_shift(Key::F10)]),
    SelectTool => Entry::new(text::TOOL_SELECT, text::SELECT_HELP, (Edit, 5), Action::Use(Tool::Select))
        .keys(&[Chord::plain(Key::S)]),
    DrawFace => Entry::new(text::TOOL_FACE, text::DRAW_FACE_HELP, (Edit, 5), Action::Use(Tool::DrawFace))
        .keys(&[Chord::plain(Key::D)]),
    PlacePenetration =>
        Entry::new(text::TOOL_PENETRATION, text::PENETRATION_HELP, (Edit, 5), Action::Use(Tool::Penetration))
            .keys(&[Chord::plain(Key::P)])
            .lesson(Step::Vent),
    PlaceBlock => Entry::new(text::TOOL_BLOCK, text::PLACE_BLOCK_HELP, (Edit, 5), Action::Use(Tool::Block))
        .keys(&[Chord::plain(Key::B)]),
    Tape => Entry::new(text::TOOL_TAPE, text::TAPE_HELP, (Edit, 5), Action::Use(Tool::Tape))
        .keys(&[Chord::plain(Key::T)]),
    Picture => Entry::new(text::TOOL_PICTURE, text::TOOL_PICTURE_HELP, (Edit, 5), Action::Use(Tool::Picture))
        .keys(&[Chord::plain(Key::U)]),
    RaiseRoof => Entry::new(text::RAISE_OVER_WALLS, text::RAISE_OVER_WALLS_HELP, (Edit, 5), Action::DrawWalls)
        .keys(&[Chord::shift(Key::W)])
        .lesson(Step::Roof),
    StringModules => Entry::new(
        text::TOOL_STRING,
        text::TOOL_STRING_HELP,
        (Menu::Circuits, 1),
        Action::Use(Tool::Circuit),
    )
        .keys(&[Chord::plain(Key::G)]),
    PlaceBox => Entry::new(
        text::TOOL_BOX,
        text::TOOL_BOX_HELP,
        (Menu::Circuits, 1),
        Action::Use(Tool::JunctionBox),
    )
        .keys(&[Chord::plain(Key::N)]),
    TapedFace =>
        Entry::new(text::TAPED_FACE, text::TAPED_FACE_HELP, (Edit, 5), Action::OpenOrClose(Pane::Taped))
            .keys(&[Chord::shift(Key::D)]),

    PlanView => Entry::new(text::PLAN_VIEW, text::PLAN_HELP, (View, 1), Action::Look(Look::Plan))
        .keys(&[Chord::plain(Key::Num1)]),
    FaceOnView => Entry::new(text::FACE_ON_VIEW, text::FACE_ON_HELP, (View, 1), Action::Look(Look::FaceOn))
        .keys(&[Chord::plain(Key::Num2)])
        .when(has_faces),
    House => Entry::new(text::SOLID_VIEW, text::SOLID_HELP, (View, 1), Action::OpenOrClose(Pane::House))
        .keys(&[Chord::plain(Key::Num3)]),
    ShowHome => Entry::new(text::SHOW_HOME, text::SHOW_HOME_HELP, (View, 1), Action::ShowHome)
        .keys(&[Chord::function(Key::F11)]),
    SavePicture => Entry::new(text::SAVE_PICTURE, text::SAVE_PICTURE_HELP, (View, 1), Action::SavePicture),
    Fit => Entry::new(text::FIT, text::FIT_HELP, (View, 1), Action::Fit).keys(&[Chord::plain(Key::F)]),
    Nearer => Entry::new(text::ZOOM_IN, command::NEARER, (View, 1), Action::Zoom(ZOOM))
        .keys(&[Chord::plain(Key::Plus), Chord::plain(Key::Equals)]),
    Farther => Entry::new(text::ZOOM_OUT, command::FARTHER, (View, 1), Action::Zoom(1.0 / ZOOM))
        .keys(&[Chord::plain(Key::Minus)]),
    RoofReport =>
        Entry::new(
            text::ROOF_REPORT,
            command::ROOF_REPORT,
            (View, 1),
            Action::OpenOrClose(Pane::RoofReport),
        )
            .keys(&[Chord::ctrl(Key::R)])
            .when(has_faces),
    Order => Entry::new(text::ORDER, text::ORDER_HELP, (View, 1), Action::OpenOrClose(Pane::Order))
        .keys(&[Chord::plain(Key::O)])
        .lesson(Step::Order),
    Coursing => Entry::new(
        text::COURSING,
        command::COURSING,
        (View, 2),
        Action::OpenOrClose(Pane::Coursing),
    )
        .keys(&[Chord::plain(Key::C)])
        .when(has_faces),
    FitUp => Entry::new(text::FIT_UP, command::FIT_UP, (View, 2), Action::OpenOrClose(Pane::FitUp))
        .keys(&[Chord::plain(Key::Q)])
        .when(has_faces),
    Circuits => Entry::new(
        text::CIRCUITS,
        text::CIRCUITS_HELP,
        (Menu::Circuits, 1),
        Action::OpenOrClose(Pane::Circuits),
    )
        .keys(&[Chord::plain(Key::I)]),
    NextPane => Entry::new(
        text::NEXT_PANE,
        text::NEXT_PANE_HELP,
        (Menu::Panes, 1),
        Action::Panes(Change::NextKeys { back: false }),
    )
        .keys(&[Chord::function(Key::F6)]),
    PreviousPane => Entry::new(
        text::PREVIOUS_PANE,
        text::PREVIOUS_PANE_HELP,
        (Menu::Panes, 1),
        Action::Panes(Change::NextKeys { back: true }),
    )
        .keys(&[Chord::function_shift(Key::F6)]),
    ClosePane => Entry::new(text::CLOSE_PANE, text::CLOSE_PANE_HELP, (Menu::Panes, 1), Action::ClosePane)
        .keys(&[Chord::ctrl(Key::W)]),
    OwnWindow => Entry::new(text::OWN_WINDOW, text::OWN_WINDOW_HELP, (Menu::Panes, 1), Action::OwnWindow)
        .keys(&[Chord::function_shift(Key::F5)]),
    ResetDesk => Entry::new(text::RESET_DESK, text::RESET_DESK_HELP, (Menu::Panes, 1), Action::Panes(Change::Reset)),
    SidePanel => Entry::new(
        text::SIDE_PANEL,
        text::SIDE_PANEL_HELP,
        (Menu::Panes, 1),
        Action::Toggle(Toggle::SidePanel),
    )
        .keys(&[Chord::function(Key::F9)])
        .mark(Tick(|_, state| !state.no_side)),
    CoursesInPlan =>
        Entry::new(
            text::COURSES_IN_PLAN,
            text::COURSES_IN_PLAN_HELP,
            (View, 3),
            Action::Toggle(Toggle::Courses),
        )
            .mark(Tick(|_, state| state.courses_in_plan)),
    Pathways => Entry::new(text::PATHWAYS, command::PATHWAYS, (View, 3), Action::Toggle(Toggle::Pathways))
        .mark(Tick(|_, state| state.show_pathways)),
    Lines => Entry::new(text::LINES_MEAN, command::LINES, (View, 3), Action::Toggle(Toggle::Lines))
        .keys(&[Chord::shift(Key::L)])
        .mark(Tick(|_, state| state.show_lines)),
    Wires => Entry::new(text::WIRES_LAYER, text::WIRES_LAYER_HELP, (Menu::Circuits, 1), Action::Toggle(Toggle::Wires))
        .keys(&[Chord::plain(Key::W)])
        .mark(Tick(|_, state| state.show_wires)),
    WindZones => Entry::new(
        text::WIND_ZONES,
        text::WIND_ZONES_HELP,
        (View, 3),
        Action::Toggle(Toggle::WindZones),
    )
        .mark(Tick(|_, state| state.show_zones)),
    FeetInches => Entry::new(
        text::FEET_INCHES,
        command::FEET_INCHES,
        (View, 4),
        Action::Show(Units::FeetInches),
    )
        .mark(Choice(|document, _| document.job().units == Units::FeetInches)),
    Metric => Entry::new(text::METRIC, command::METRIC, (View, 4), Action::Show(Units::Metric))
        .mark(Choice(|document, _| document.job().units == Units::Metric)),
    Theme => Entry::new(text::THEME, command::THEME, (View, 6), Action::ChangeTheme),
    Larger => Entry::new(text::LARGER, command::LARGER, (View, 6), Action::TypeSize(TypeSize::Larger))
        .keys(&[Chord::ctrl(Key::Plus), Chord::ctrl(Key::Equals)]),
    Smaller => Entry::new(text::SMALLER, command::SMALLER, (View, 6), Action::TypeSize(TypeSize::Smaller))
        .keys(&[Chord::ctrl(Key::Minus)]),
    UsualSize =>
        Entry::new(text::USUAL_SIZE, command::USUAL_SIZE, (View, 6), Action::TypeSize(TypeSize::Usual))
            .keys(&[Chord::ctrl(Key::Num0)]),

    Lesson => Entry::new(text::LESSON, command::LESSON, (Help, 1), Action::BeginLesson),
    LeaveLesson => Entry::new(text::LESSON_LEAVE, command::LEAVE_LESSON, (Help, 1), Action::LeaveLesson)
        .when(|_, state| state.lesson.is_some()),
    Find => Entry::new(text::FIND_COMMAND, command::FIND, (Help, 1), Action::FindCommand)
        .keys(&[Chord::ctrl(Key::F)]),
    Menus => Entry::new(text::GO_TO_MENUS, command::MENUS, (Help, 1), Action::GoToMenus)
        .keys(&[Chord::function(Key::F10)]),
    Keys => Entry::new(
        text::KEYS,
        command::KEYS,
        (Help, 1),
        Action::ShowKeys).keys(&[Chord::function(Key::F1)],
    ),
    Glossary => Entry::new(text::GLOSSARY, command::GLOSSARY, (Help, 1), Action::Open(Pane::Glossary)),
    Cautions => Entry::new(text::CAUTIONS, command::CAUTIONS, (Help, 1), Action::ShowCautions),
    Checklist => Entry::new(text::CHECKLIST, command::CHECKLIST, (Help, 1), Action::Open(Pane::Checklist)),
    // One more for the tests, which see it everywhere that a command is.
    #[cfg(test)]
    Rehearsal => Entry::new(
        chalkcourse_words::lesson::BONDING,
        chalkcourse_words::lesson::JOINING_ALL_METAL_SO_THAT,
        (Help, 2),
        Action::Say(String::new()),
    )
    .keys(&[Chord::ctrl(Key::Num9)]),
}

/// Any language; its title is its own name.
pub(super) static LANGUAGE: Entry = Entry::new(command::LANGUAGE, command::LANGUAGE, (View, 5), Action::Fit);

fn has_faces(document: &Document, _: &State) -> bool {
    !document.job().faces.is_empty()
}

fn has_things(document: &Document, _: &State) -> bool {
    !document.job().blocks.is_empty() || !document.job().penetrations.is_empty()
}

fn has_circuits(document: &Document, _: &State) -> bool {
    !document.job().circuits.is_empty()
}

fn has_blocks(document: &Document, _: &State) -> bool {
    !document.job().blocks.is_empty()
}

fn can_undo(document: &Document, _: &State) -> bool {
    document.history().undo_label().is_some()
}

fn can_redo(document: &Document, _: &State) -> bool {
    document.history().redo_label().is_some()
}

fn holds_something(_: &Document, state: &State) -> bool {
    state.selection != Selection::Nothing || !state.group.is_empty()
}

/// Something that can be copied.
fn holds_pieces(_: &Document, state: &State) -> bool {
    let held = &state.selection;
    held.block().is_some()
        || matches!(held, Selection::Penetration(_))
        || !state.group.blocks.is_empty()
        || !state.group.penetrations.is_empty()
}

fn holds_block(_: &Document, state: &State) -> bool {
    state.selection.block().is_some()
}
