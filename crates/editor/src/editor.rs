mod arrange;
mod clipboard;
mod filing;
mod fill;
mod importing;
mod order;
mod picture;

use crate::action::{Action, Actions};
use crate::canvas::{self, Gesture};
use crate::commands::{Command, Tool};
use crate::desk::{Desk, Pointed};
use crate::dialogs::{self, Dialog, Then};
use crate::files::{Ask, Files};
use crate::frame_times::FrameTimes;
use crate::importing::is_of_buildings;
use crate::settings::Settings;
use crate::view::{Space, View};
use crate::windows::RoofPart;
use crate::{Document, Recovery, Selection, panels, sample, show_home, solid_view, text, theme, windows};
use chalkcourse_job::{Edit, EditError, FindingKey, Resolved};
use chalkcourse_words::{Language, speak};
use egui::{Context, Frame, Margin, Panel, Ui, ViewportCommand};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// How the editor starts.
#[derive(Clone, Debug, Default)]
pub struct Options {
    /// The job to open; the sample where none is named.
    pub open: Option<PathBuf>,
    /// Ask for paths inside the window, not by the desktop's dialogs.
    pub typed_paths: bool,
    /// Where recovery copies are kept; none keeps none.
    pub recovery: Option<PathBuf>,
    /// The language of the desk: spoken until the person chooses another one.
    pub language: Language,
    /// Where to write how long frames take; none measures nothing.
    pub frame_times: Option<PathBuf>,
}

/// The whole window.
pub struct Editor {
    document: Document,
    desk: Desk,
    language: Language,
    settings: Settings,
    files: Files,
    dialog: Option<Dialog>,
    recovery: Option<Recovery>,
    recovery_folder: Option<PathBuf>,
    after_save: Option<Then>,
    quitting: bool,
    title: String,
    space: Option<Space>,
    /// What was lit when the drawing was painted.
    lit_when_painted: Option<String>,
    frame_times: Option<FrameTimes>,
    /// A finger was seen on the screen.
    fingers: bool,
}

impl Editor {
    /// A window on the job that the options name.
    pub fn new(ctx: &Context, options: Options, storage: Option<&dyn eframe::Storage>) -> Self {
        theme::install(ctx);
        let settings: Settings =
            storage.and_then(|storage| eframe::get_value(storage, Settings::KEY)).unwrap_or_default();
        if let Some(dark) = settings.dark {
            ctx.set_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light });
        }
        let language = settings.language.as_deref().and_then(Language::from_tag).unwrap_or(options.language);
        speak(language);
        let document = Document::new(sample::alder_court().unwrap_or_else(|_| sample::empty()), None);
        let mut editor = Self {
            desk: Desk { raise_as: settings.raise_as, ..Desk::fresh(&document) },
            document,
            language,
            settings,
            files: Files::new(options.typed_paths),
            dialog: None,
            recovery: None,
            recovery_folder: options.recovery,
            after_save: None,
            quitting: false,
            title: String::new(),
            space: None,
            lit_when_painted: None,
            frame_times: None,
            fingers: false,
        };
        if let Some(path) = &options.frame_times {
            match FrameTimes::create(path) {
                Ok(times) => editor.frame_times = Some(times),
                Err(error) => editor.desk.said = text::no_frame_times(path, &error),
            }
        }
        if let Some(folder) = &editor.recovery_folder {
            let left = Recovery::left_behind(folder);
            match Recovery::start(folder) {
                Ok(recovery) => editor.recovery = Some(recovery),
                Err(error) => editor.desk.said = text::no_recovery(&error),
            }
            if !left.is_empty() {
                editor.dialog = Some(Dialog::Recovered(left));
            }
        }
        if let Some(path) = options.open {
            editor.open(&path);
        }
        editor
    }

    /// The job that is open.
    pub fn document(&self) -> &Document {
        &self.document
    }

    /// What the person holds.
    pub fn selection(&self) -> Selection {
        self.desk.selection
    }

    /// Where a plan point is in the window, as drawn last.
    pub fn on_screen(&self, plan: chalkcourse_geometry::DVec2) -> Option<egui::Pos2> {
        self.space.as_ref().map(|space| space.screen_from_plan(plan))
    }

    /// The row of a list whose place is lit: the key of a finding, or the number of a part.
    pub fn lit(&self) -> Option<String> {
        match &self.desk.pointed {
            Pointed::Nothing => None,
            Pointed::Finding(key) | Pointed::Fix(key, _) => Some(key.to_string()),
            Pointed::Line(row) | Pointed::Term(row, _) | Pointed::Near(_, row) => Some(row.clone()),
        }
    }

    /// [`Self::lit`] as the drawing was painted last.
    pub fn lit_when_painted(&self) -> Option<String> {
        self.lit_when_painted.clone()
    }

    /// What the roof report lights on the drawing: the name of a face, or the word for a kind of edge.
    pub fn lit_on_roof(&self) -> Option<String> {
        let name = |id| self.document.job().face(id).map(|face| face.name.clone());
        match self.desk.windows.roof.pointed? {
            RoofPart::Face(id) => name(id),
            RoofPart::Edges(kind) | RoofPart::Line(kind, _) => Some(kind.name().to_owned()),
        }
    }

    /// From here on all words are in `language`; what follows from the job is said anew.
    fn speak(&mut self, language: Language) {
        speak(language);
        self.language = language;
        self.settings.language = Some(language.code().to_owned());
        self.document.reword();
        self.desk.fill.forget();
        self.desk.said.clear();
    }

    /// Why what is dragged stopped where it is, in words.
    pub fn guides(&self) -> Vec<&str> {
        self.desk.guides.iter().map(|guide| guide.words.as_str()).collect()
    }

    /// Whether something is worked out in the background.
    pub fn is_working(&self) -> bool {
        self.desk.making_room.is_some()
            || self.desk.fill.running().is_some()
            || self.desk.fill.is_asking()
            || self.desk.fixing.is_working()
    }

    /// The finding whose fix is drawn before it is done, by its key.
    pub fn previewed(&self) -> Option<&FindingKey> {
        self.desk.preview.as_ref().map(canvas::Preview::key)
    }

    /// The last thing that the status bar said.
    pub fn said(&self) -> &str {
        &self.desk.said
    }

    /// Draws the window and carries out what is asked for in it.
    pub fn show(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        speak(self.language);
        if !self.fingers && ctx.input(egui::InputState::has_touch_screen) {
            self.fingers = true;
            theme::for_fingers(&ctx);
        }
        self.answer_files(&ctx);
        self.answer_import(&ctx);
        self.answer_fill(&ctx);
        self.answer_room();
        self.mind_pictures(&ctx);
        self.mind_closing(&ctx);
        let mut actions = Actions::new();
        if !self.is_asking() {
            let drawing = self.is_drawing();
            actions.extend(Command::pressed(&ctx, drawing).into_iter().map(Action::Run));
            let dropped =
                ctx.input(|input| input.raw.dropped_files.first().map(|file| file.path().to_owned()));
            actions.extend(
                dropped.map(
                    |path| {
                        if is_picture(&path) { Action::LayPicture(path) } else { Action::Open(path) }
                    },
                ),
            );
        }
        if self.desk.showing {
            self.for_the_owner(ui, actions);
            return;
        }
        self.around(ui, &mut actions);
        self.carry_out(&ctx, actions);
        self.desk.fixing.go_on(&ctx, &self.document);
        egui::CentralPanel::no_frame().show(ui, |ui| self.drawing(ui));
        self.beside(&ctx);
        self.over(&ctx);
        self.keep_copy(&ctx);
        self.name_window(&ctx);
    }

    /// The window while the homeowner looks at it: none of the commands that work on the job is heard.
    fn for_the_owner(&mut self, ui: &mut Ui, asked: Actions) {
        let ctx = ui.ctx().clone();
        let leave = |action: &Action| matches!(action, Action::Run(Command::ShowHome));
        let mut actions: Actions = asked.into_iter().filter(leave).collect();
        show_home::show(ui, &self.document, &mut self.desk, &mut actions);
        self.carry_out(&ctx, actions);
        self.over(&ctx);
        self.keep_copy(&ctx);
    }

    /// Whether a dialog is over the window: then keys and pointer are not for the drawing.
    fn is_asking(&self) -> bool {
        self.dialog.is_some() || self.files.typed.is_some()
    }

    /// Whether a face is half drawn.
    fn is_drawing(&self) -> bool {
        self.desk.draft.as_ref().is_some_and(|draft| !draft.corners.is_empty())
    }

    fn around(&mut self, ui: &mut Ui, actions: &mut Actions) {
        let p = theme::of(ui);
        let frame = |x: i8, y: i8| Frame::new().fill(p.panel).inner_margin(Margin::symmetric(x, y));
        Panel::top("top bar").exact_size(if self.fingers { 52.0 } else { 46.0 }).frame(frame(10, 4)).show(
            ui,
            |ui| {
                panels::top_bar(ui, &self.document, &mut self.desk, &self.settings, actions);
            },
        );
        Panel::bottom("status").exact_size(if self.fingers { 46.0 } else { 34.0 }).frame(frame(12, 2)).show(
            ui,
            |ui| {
                panels::status(ui, &self.document, &self.desk, actions);
            },
        );
        Panel::right("side").default_size(344.0).size_range(300.0..=520.0).frame(frame(0, 0)).show(
            ui,
            |ui| {
                panels::side(ui, &self.document, &mut self.desk, &mut self.settings, actions);
            },
        );
        Panel::left("tools").exact_size(88.0).resizable(false).frame(frame(6, 4)).show(ui, |ui| {
            panels::tools(ui, &self.desk, actions);
        });
        // Two rows for an outline, all the while it is drawn: the drawing below must not jump.
        let row = if self.fingers { 46.0 } else { 40.0 };
        let rows = if self.desk.tool == Tool::DrawFace { 2.0 } else { 1.0 };
        Panel::top("draw bar").exact_size(row * rows).frame(frame(12, 2)).show(ui, |ui| {
            canvas::draw_bar(ui, &self.document, &mut self.desk, actions);
        });
    }

    fn drawing(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        if self.desk.view == View::Solid {
            let mut actions = Actions::new();
            let keys = !self.is_asking();
            solid_view::show(ui, &self.document, &mut self.desk, keys, &mut actions);
            self.carry_out(&ctx, actions);
            return;
        }
        let stage = canvas::stage(ui, &self.document, &mut self.desk);
        self.space = Some(stage.space);
        let mut actions = Actions::new();
        if !self.is_asking() {
            canvas::interact(ui, &stage, &self.document, &mut self.desk, &mut actions);
        }
        // What moved is painted in the same frame.
        self.carry_out(&ctx, actions);
        canvas::paint(ui, &stage, &self.document, &mut self.desk);
        self.lit_when_painted = self.lit();
        let mut actions = Actions::new();
        canvas::outline(ui, &stage, &self.document, &self.desk, &mut actions);
        canvas::dimensions(ui, &stage, &self.document, &mut self.desk, &mut actions);
        panels::lesson(ui, stage.space.area, &self.document, &mut self.desk, &mut actions);
        let alone = self.desk.lesson.is_none() && self.desk.tool == Tool::Select;
        if self.document.job().faces.is_empty() && alone {
            panels::first_steps(ui, stage.space.area, &mut actions);
        }
        self.carry_out(&ctx, actions);
    }

    /// Windows that stay open while one works on.
    fn beside(&mut self, ctx: &Context) {
        let mut actions = Actions::new();
        windows::show(ctx, &self.document, &mut self.desk, &mut actions);
        self.carry_out(ctx, actions);
    }

    /// Dialogs over the window.
    fn over(&mut self, ctx: &Context) {
        if let Some(dialog) = &self.dialog
            && let Some(reply) = dialogs::show(ctx, dialog, &self.document.job().name)
        {
            self.reply(ctx, reply);
            ctx.request_repaint();
        }
        if let Some((ask, path)) = dialogs::typed_path(ctx, &mut self.files) {
            self.use_path(ctx, ask, &path);
            ctx.request_repaint();
        } else if self.files.typed.is_none() && !self.files.is_open() {
            self.after_save = self.after_save.take().filter(|_| self.dialog.is_some());
        }
    }

    fn carry_out(&mut self, ctx: &Context, actions: Actions) {
        if actions.is_empty() {
            return;
        }
        for action in actions {
            match action {
                Action::Edit(label, edit) => self.edit(&label, &edit),
                Action::EditAndSelect(label, edit, selection) => {
                    self.edit(&label, &edit);
                    self.desk.selection = selection;
                }
                Action::Preview(label, edit) => {
                    // A drag into nonsense shows the last that made sense.
                    let shown = self.document.preview(&label, &edit);
                    let was_trouble = self.desk.trouble.take().is_some();
                    match shown {
                        Ok(()) if was_trouble => self.desk.said.clear(),
                        Ok(()) => {}
                        Err(error) => {
                            self.desk.trouble = trouble_of(&error, &edit);
                            self.desk.said = error.to_string();
                        }
                    }
                }
                Action::Commit => {
                    self.desk.trouble = None;
                    let before = Arc::clone(self.document.settled());
                    self.document.commit();
                    self.tell_what_went(&before);
                }
                Action::Abort => {
                    self.desk.trouble = None;
                    self.document.abort();
                }
                Action::Jump(step) => {
                    self.drop_gesture();
                    if self.document.jump(step) {
                        self.desk.said = text::jumped(&self.document);
                    }
                }
                Action::Select(selection) => {
                    self.desk.selection = selection;
                    self.desk.group = canvas::Group::default();
                }
                Action::Hold(group) => {
                    self.desk.selection = Selection::Nothing;
                    self.desk.group = group;
                }
                Action::Run(command) => self.run(ctx, command),
                Action::Open(path) if is_of_buildings(&path) => self.import(ctx, &path),
                Action::TakeBuilding => {
                    if let Some(import) = &mut self.desk.windows.import {
                        import.take(ctx);
                    }
                }
                Action::LayPicture(path) => self.lay_picture(ctx, &path),
                Action::Fill(faces) => self.fill(ctx, faces),
                Action::Open(path) => self.ask_or(ctx, Then::Open(path)),
                Action::OpenSample => self.ask_or(ctx, Then::OpenSample),
                Action::Say(words) => self.desk.said = words,
            }
        }
        self.desk.keep_in_step(&self.document);
        ctx.request_repaint();
    }

    fn edit(&mut self, label: &str, edit: &Edit) {
        let before = Arc::clone(self.document.settled());
        match self.document.edit(label, edit) {
            Ok(_) => {
                self.desk.said.clear();
                self.desk.trouble = None;
                self.tell_what_went(&before);
            }
            Err(error) => {
                self.desk.trouble = trouble_of(&error, edit);
                self.wrong(text::CANT_BE.now(), error.to_string());
            }
        }
    }

    /// What a person set and no longer has a place is told, not dropped in silence.
    fn tell_what_went(&mut self, before: &Resolved) {
        let lost = crate::parting::kinds_lost(before, self.document.settled());
        if lost > 0 {
            self.desk.said = text::kinds_lost(lost);
        }
    }

    fn wrong(&mut self, title: &str, words: String) {
        self.dialog = Some(Dialog::Wrong { title: title.to_owned(), words });
    }

    fn run(&mut self, ctx: &Context, command: Command) {
        match command {
            Command::New => self.ask_or(ctx, Then::New),
            Command::Lesson => self.ask_or(ctx, Then::Lesson),
            Command::LeaveLesson => self.desk.lesson = None,
            Command::Glossary => self.desk.windows.glossary = true,
            Command::Open => self.ask_or(ctx, Then::AskOpen),
            Command::Quit => self.ask_or(ctx, Then::Quit),
            Command::Save => self.save(ctx, None),
            Command::SaveAs => {
                let start = self.suggested("chalk.json");
                self.files.ask(ctx, Ask::SaveAs, start);
            }
            Command::Export(format) => {
                let start = self.suggested(&format!("order.{}", format.extension()));
                self.files.ask(ctx, Ask::Export(format), start);
            }
            Command::Order => {
                let windows = &mut self.desk.windows;
                windows.order.open = !windows.order.open;
                // It lies over the drawing: keys are for it until the drawing is pressed.
                windows.has_keys = windows.order.open;
            }
            Command::LoadStock => self.ask_data(ctx, Ask::Stock),
            Command::LoadCounts => self.ask_data(ctx, Ask::Counts),
            Command::CompareJob => self.ask_data(ctx, Ask::CompareJob),
            Command::AddOffer => self.ask_data(ctx, Ask::Offer),
            Command::Print(sheet) => {
                let start = self.suggested(sheet.ending());
                self.files.ask(ctx, Ask::Print(sheet), start);
            }
            Command::ExportPlan(format) => {
                let start = self.suggested(format.extension());
                self.files.ask(ctx, Ask::ExportPlan(format), start);
            }
            Command::CopyPicture => self.copy_picture(ctx),
            Command::CopySvg => self.copy_svg(ctx),
            Command::CopySteps => self.copy_steps(ctx),
            Command::SaveSteps => {
                let start = self.suggested("edits.json");
                self.files.ask(ctx, Ask::Steps, start);
            }
            Command::Import => self.ask_data(ctx, Ask::Import),
            Command::ImportFolder => self.ask_data(ctx, Ask::ImportFolder),
            Command::RoofReport => self.desk.windows.roof.open = !self.desk.windows.roof.open,
            Command::LoadKit => self.ask_data(ctx, Ask::Kit),
            Command::LoadRuleBook => self.ask_data(ctx, Ask::RuleBook),
            Command::LayPicture => self.ask_data(ctx, Ask::Picture),
            Command::LoadPrices => self.ask_data(ctx, Ask::Prices),
            // A face that is half drawn is no step yet: its last corner is what is taken back.
            Command::Undo if self.is_drawing() => {
                if let Some(draft) = &mut self.desk.draft {
                    draft.back();
                }
            }
            Command::Undo => {
                self.drop_gesture();
                self.desk.said = text::undone(self.document.undo().as_deref());
            }
            Command::Redo if self.desk.draft.as_mut().is_some_and(|draft| draft.again()) => {}
            Command::Redo => {
                self.drop_gesture();
                self.desk.said = text::redone(self.document.redo().as_deref());
            }
            Command::HoldAll => {
                let all = canvas::Group::all(self.document.job());
                self.carry_out(ctx, vec![Action::Hold(all)]);
            }
            // The key is not for what lies unseen behind a window that is worked in.
            Command::Delete if self.desk.windows.has_keys => {
                text::DELETE_ON_DRAWING.now().clone_into(&mut self.desk.said);
            }
            Command::Delete => {
                let delete = match self.desk.group.is_empty() {
                    true => canvas::delete(&self.document, self.desk.selection),
                    false => self.desk.group.deleted(self.document.job()),
                };
                self.carry_out(ctx, delete.into_iter().collect());
            }
            Command::Fill => {
                let held = self.desk.selection.face(self.document.job());
                self.fill(ctx, held.into_iter().collect());
            }
            Command::MakeRoom
            | Command::Mirror
            | Command::CopyToFace
            | Command::Split
            | Command::Join
            | Command::AlignTo(_)
            | Command::Spread(_) => self.arrange(ctx, command),
            Command::Coursing => self.desk.windows.coursing.open = !self.desk.windows.coursing.open,
            Command::FitUp => self.desk.windows.fit_up.open = !self.desk.windows.fit_up.open,
            Command::Fit => self.desk.fit = true,
            Command::PlanView => self.look(View::Plan),
            Command::FaceOnView => self.look_face_on(),
            Command::SolidView => {
                self.desk.take(Tool::Select);
                self.look(View::Solid);
            }
            Command::ShowHome => self.show_home(ctx),
            Command::SavePicture => {
                let start = self.suggested("png");
                self.files.ask(ctx, Ask::SavePicture, start);
            }
            Command::CoursesInPlan => self.desk.courses_in_plan = !self.desk.courses_in_plan,
            Command::Use(tool) => self.desk.take(tool),
            Command::Speak(language) => self.speak(language),
            Command::Theme => {
                let dark = ctx.theme() == egui::Theme::Light;
                self.settings.dark = Some(dark);
                ctx.set_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light });
            }
            Command::Show(units) => self.edit(text::CHANGE_UNITS.now(), &Edit::SetUnits(units)),
            Command::RuleBook => self.desk.windows.rule_book = true,
            Command::SaveRuleBook => self.save_rule_book(ctx),
            Command::CompareRuleBook => self.ask_data(ctx, Ask::CompareBook),
            Command::Checklist => self.desk.windows.checklist = true,
            Command::History => self.desk.windows.history = true,
            Command::Pathways => self.desk.show_pathways = !self.desk.show_pathways,
            Command::Lines => self.desk.show_lines = !self.desk.show_lines,
            Command::WindZones => self.desk.show_zones = !self.desk.show_zones,
            Command::Cautions => self.dialog = Some(Dialog::Cautions),
            Command::RaiseRoof => self.desk.draw_walls(),
            Command::TapedFace => self.desk.windows.taped = !self.desk.windows.taped,
            Command::Find => self.desk.windows.palette = Some(crate::windows::Palette::default()),
            Command::Keys => self.dialog = Some(Dialog::Keys),
        }
    }

    /// Opens the view for the homeowner, or leaves it.
    fn show_home(&mut self, ctx: &Context) {
        self.desk.showing = !self.desk.showing;
        self.desk.let_go();
        self.desk.solid.eye.fit = true;
        ctx.send_viewport_cmd(ViewportCommand::Fullscreen(self.desk.showing));
    }

    fn drop_gesture(&mut self) {
        if self.desk.gesture.is_some() {
            self.desk.gesture = Some(Gesture::Dropped);
            self.desk.guides.clear();
        }
    }

    fn look(&mut self, view: View) {
        if self.desk.view != view {
            self.desk.let_go();
            self.desk.view = view;
            self.desk.fit = true;
        }
    }

    /// The face that is held, or the one with a block on it, or the first one.
    fn look_face_on(&mut self) {
        let job = self.document.job();
        let face = self
            .desk
            .selection
            .face(job)
            .or_else(|| job.blocks.first().map(|block| block.face))
            .or_else(|| job.faces.first().map(|face| face.id));
        match face {
            Some(face) => {
                if self.desk.tool == Tool::DrawFace {
                    self.desk.take(Tool::Select);
                }
                self.look(View::FaceOn(face));
            }
            None => self.desk.said = text::NO_FACE_YET.now().to_owned(),
        }
    }

    fn name_window(&mut self, ctx: &Context) {
        let title = text::window_title(&self.document);
        if title != self.title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.title = title;
        }
    }
}

/// The place that an edit which was refused speaks of.
fn trouble_of(error: &EditError, edit: &Edit) -> Option<chalkcourse_geometry::DVec2> {
    match (error, edit) {
        (EditError::CantRaise { error, .. }, Edit::PutPart(part)) => {
            crate::parting::trouble_spot(error, &part.outline)
        }
        _ => None,
    }
}

/// Whether a dropped file is a picture by its name.
fn is_picture(path: &Path) -> bool {
    let known = Ask::Picture.extensions();
    path.extension().is_some_and(|given| known.iter().any(|known| given.eq_ignore_ascii_case(known)))
}

impl eframe::App for Editor {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        let began = self.frame_times.as_mut().map(|times| times.begin(frame.info().cpu_usage));
        self.show(ui);
        if let (Some(times), Some(began)) = (&mut self.frame_times, began) {
            times.end(began, self.desk.gesture.is_some());
        }
    }

    fn save(&mut self, storage: &mut dyn eframe::Storage) {
        self.settings.raise_as = self.desk.raise_as;
        eframe::set_value(storage, Settings::KEY, &self.settings);
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        if let Some(recovery) = self.recovery.take() {
            recovery.end();
        }
    }
}
