mod act;
mod arrange;
mod clipboard;
mod desk;
mod filing;
mod fill;
mod focus;
mod going;
mod importing;
mod order;
mod picture;
mod pieces;
mod starting;
mod stringing;

use crate::action::{Action, Actions};
use crate::browser;
use crate::canvas::{self, Canvas, EscFor};
use crate::commands;
use crate::dialogs::{self, Dialog, Then};
use crate::files::Files;
use crate::frame_times::FrameTimes;
use crate::panels::{self, Panels};
use crate::solid_view::SolidView;
use crate::start_page::StartPage;
use crate::state::{Ask, Pane, PaneTree, Pointed, RoofPart, Settings, Space, State, Tool};
use crate::windows::{self, Windows};
use crate::{Document, Recovery, Selection, sample, show_home, text, theme};
use chalkcourse_job::FindingKey;
use chalkcourse_words::{Language, speak};
use egui::{Context, FocusDirection, Frame, Id, Margin, Panel, Ui, ViewportCommand};
use std::path::{Path, PathBuf};

/// Startup options of the editor.
#[derive(Clone, Debug, Default)]
pub struct Options {
    /// The job to open. By default the start page; on the first start the sample.
    pub open: Option<PathBuf>,
    /// Ask for paths inside the window instead of by the desktop's dialogs.
    pub typed_paths: bool,
    /// Where to keep recovery copies, if anywhere.
    pub recovery: Option<PathBuf>,
    /// The desktop's language: used until the user chooses another.
    pub language: Language,
    /// Where to write frame times, if they are measured.
    pub frame_times: Option<PathBuf>,
}

/// The main window.
pub struct Editor {
    document: Document,
    state: State,
    canvas: Canvas,
    panels: Panels,
    windows: Windows,
    solid: SolidView,
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
    /// What was highlighted when the drawing was painted.
    lit_when_painted: Option<String>,
    frame_times: Option<FrameTimes>,
    /// Whether touch input was seen.
    fingers: bool,
    /// Whether a menu was open, or something other than the drawing had the focus, when this frame started.
    esc_is_taken: bool,
    /// What had the focus when the last frame ended: Esc applies to that first, and the toolkit has already taken the
    /// focus from it.
    focused: Option<Id>,
    /// Whether the user navigates by keyboard.
    by_keys: bool,
    /// The direction of the last Tab key, and whether the focus moves again in the next frame.
    tab_way: Option<FocusDirection>,
    passing: Option<FocusDirection>,
    /// The state of the start page.
    start_page: StartPage,
}

impl Editor {
    /// A window with the job given by the options.
    pub fn new(ctx: &Context, options: Options, storage: Option<&dyn eframe::Storage>) -> Self {
        theme::install(ctx);
        let remembered: Option<Settings> =
            storage.and_then(|storage| eframe::get_value(storage, Settings::KEY));
        // The first start opens the sample; later ones show recent jobs.
        let begins = remembered.is_some() && options.open.is_none();
        let settings = remembered.unwrap_or_default();
        if let Some(dark) = settings.dark {
            ctx.set_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light });
        }
        let language = settings.language.as_deref().and_then(Language::from_tag).unwrap_or(options.language);
        speak(language);
        let desk = PaneTree::kept(storage.and_then(|storage| eframe::get_value(storage, PaneTree::KEY)));
        let document = Document::new(sample::alder_court().unwrap_or_else(|_| sample::empty()), None);
        let mut editor = Self {
            state: State {
                raise_as: settings.raise_as,
                no_side: settings.no_side,
                order_table: settings.order_table.clone(),
                desk,
                ..State::fresh(&document)
            },
            document,
            canvas: Canvas::default(),
            panels: Panels::default(),
            windows: Windows::default(),
            solid: SolidView::default(),
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
            esc_is_taken: false,
            focused: None,
            by_keys: false,
            tab_way: None,
            passing: None,
            start_page: StartPage::default(),
        };
        if let Some(path) = &options.frame_times {
            match FrameTimes::create(path) {
                Ok(times) => editor.frame_times = Some(times),
                Err(error) => editor.state.said = text::no_frame_times(path, &error),
            }
        }
        if begins {
            editor.start();
        }
        if let Some(folder) = &editor.recovery_folder {
            let left = Recovery::left_behind(folder);
            match Recovery::start(folder) {
                Ok(recovery) => editor.recovery = Some(recovery),
                Err(error) => editor.state.said = text::no_recovery(&error),
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

    /// The open job.
    pub fn document(&self) -> &Document {
        &self.document
    }

    /// The selection.
    pub fn selection(&self) -> Selection {
        self.state.selection
    }

    /// Where a plan point was last drawn in the window.
    pub fn on_screen(&self, plan: chalkcourse_geometry::DVec2) -> Option<egui::Pos2> {
        self.space.as_ref().map(|space| space.screen_from_plan(plan))
    }

    /// The list row whose place is highlighted: the key of a finding, or the number of a part.
    pub fn lit(&self) -> Option<String> {
        match &self.state.pointed {
            Pointed::Nothing => None,
            Pointed::Finding(key) | Pointed::Fix(key, _) => Some(key.to_string()),
            Pointed::Line(row) | Pointed::Term(row, _) => Some(row.clone()),
            Pointed::Near(_, line) => Some(line.to_string()),
        }
    }

    /// [`Self::lit`] as of the last painting of the drawing.
    pub fn lit_when_painted(&self) -> Option<String> {
        self.lit_when_painted.clone()
    }

    /// What the roof report highlights on the drawing: the name of a face, or the word for a kind of edge.
    pub fn lit_on_roof(&self) -> Option<String> {
        let name = |id| self.document.job().face(id).map(|face| face.name.clone());
        match self.windows.roof.pointed? {
            RoofPart::Face(id) => name(id),
            RoofPart::Edges(kind) | RoofPart::Line(kind, _) => Some(kind.name().into()),
        }
    }

    /// Switches the language. Plans, claims and steps are independent of it; an error message is dropped.
    fn speak(&mut self, language: Language) {
        speak(language);
        self.language = language;
        self.settings.language = Some(language.code().to_owned());
        self.state.fill.said.clear();
        self.state.stringing.said.clear();
        self.state.said.clear();
    }

    /// Where keys aim, in plan; none while they don't.
    pub fn aimed_at(&self) -> Option<chalkcourse_geometry::DVec2> {
        self.canvas.aimed_at()
    }

    /// Whether circuits are drawn.
    pub fn shows_circuits(&self) -> bool {
        canvas::shows_circuits(&self.state)
    }

    /// Why the dragged object stopped where it is, in words.
    pub fn guides(&self) -> Vec<&str> {
        self.canvas.why_there()
    }

    /// Whether background work is in progress.
    pub fn is_working(&self) -> bool {
        self.state.making_room.is_some()
            || self.state.stringing.running().is_some()
            || self.state.fill.running().is_some()
            || self.state.fill.is_asking()
            || self.state.fixing.is_working()
    }

    /// The finding whose fix is being previewed, by its key.
    pub fn previewed(&self) -> Option<&FindingKey> {
        self.canvas.previewed()
    }

    /// The last message of the status bar.
    pub fn said(&self) -> &str {
        &self.state.said
    }

    /// Draws the window and carries out the requested actions.
    pub fn show(&mut self, ui: &mut Ui) {
        self.frame(ui);
        let ctx = ui.ctx().clone();
        self.focused = ctx.memory(egui::Memory::focused);
        self.ring_focus(&ctx);
    }

    fn frame(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        speak(self.language);
        if !self.fingers && ctx.input(egui::InputState::has_touch_screen) {
            self.fingers = true;
            theme::for_fingers(&ctx);
        }
        self.esc_is_taken = commands::is_elsewhere(self.focused) || egui::Popup::is_any_open(&ctx);
        self.go_on_passing(&ctx);
        self.walk_menu(&ctx);
        self.answer_files(&ctx);
        self.answer_import(&ctx);
        self.answer_fill(&ctx);
        self.answer_room();
        self.answer_stringing();
        self.update_pictures(&ctx);
        self.confirm_closing(&ctx);
        let mut actions = Actions::new();
        if !self.is_asking() {
            if !self.state.showing {
                self.esc_leaves_pane(&ctx);
            }
            let drawing = self.canvas.has_steps(self.state.tool);
            actions.extend(commands::pressed(&ctx, drawing));
            let dropped =
                ctx.input(|input| input.raw.dropped_files.first().map(|file| file.path().to_owned()));
            actions.extend(dropped.map(|path| {
                if is_picture(&path) { Action::LayPicture(path) } else { Action::OpenFile(path) }
            }));
        }
        if self.state.showing {
            self.homeowner_frame(ui, actions);
            self.name_window(&ctx);
            return;
        }
        if self.state.starting {
            self.at_start(ui, actions);
            return;
        }
        self.around(ui, &mut actions);
        self.carry_out(&ctx, actions);
        self.state.fixing.go_on(&ctx, &self.document);
        egui::CentralPanel::no_frame().show(ui, |ui| self.panes(ui));
        self.questions(&ctx);
        self.over(&ctx);
        self.keep_copy(&ctx);
        self.name_window(&ctx);
    }

    /// The window in the homeowner's view: no commands on the job are handled.
    fn homeowner_frame(&mut self, ui: &mut Ui, asked: Actions) {
        let ctx = ui.ctx().clone();
        let leave = |action: &Action| matches!(action, Action::ShowHome);
        let mut actions: Actions = asked.into_iter().filter(leave).collect();
        show_home::home_view(ui, &self.document, &mut self.solid, &mut actions);
        self.carry_out(&ctx, actions);
        self.over(&ctx);
        self.keep_copy(&ctx);
    }

    /// Whether a dialog is open: then keys and pointer don't apply to the drawing.
    fn is_asking(&self) -> bool {
        self.dialog.is_some() || self.files.typed.is_some()
    }

    /// The menus and the controls beside them.
    fn top_bar(&self, ui: &mut Ui, actions: &mut Actions) {
        let frame = Frame::new().fill(theme::of(ui).panel).inner_margin(Margin::symmetric(10, 4));
        let high = if self.fingers { 52.0 } else { 46.0 };
        Panel::top("top bar").exact_size(high).frame(frame).show(ui, |ui| {
            panels::top_bar(ui, &self.document, &self.state, &self.settings, actions);
        });
    }

    fn around(&mut self, ui: &mut Ui, actions: &mut Actions) {
        // The row under the pointer in the order's pane is known from the previous frame.
        let line = self.windows.pointed_line(&self.state).cloned();
        self.state.pointed = line.map_or(Pointed::Nothing, Pointed::Line);
        let p = theme::of(ui);
        let frame = |x: i8, y: i8| Frame::new().fill(p.panel).inner_margin(Margin::symmetric(x, y));
        self.top_bar(ui, actions);
        Panel::bottom("status").exact_size(if self.fingers { 46.0 } else { 34.0 }).frame(frame(12, 2)).show(
            ui,
            |ui| {
                panels::status_bar(ui, &self.document, &self.state, actions);
            },
        );
        if !self.state.no_side {
            let most = (ui.available_width() * 0.55).max(344.0);
            let side = Panel::right("side").default_size(344.0).size_range(300.0..=most);
            side.frame(frame(0, 0)).show(ui, |ui| {
                panels::side_panel(
                    ui,
                    &self.document,
                    &self.state,
                    &mut self.panels,
                    &self.settings,
                    actions,
                );
            });
        }
        Panel::left("tools").exact_size(88.0).resizable(false).frame(frame(6, 4)).show(ui, |ui| {
            panels::tool_buttons(ui, &self.state, actions);
        });
    }

    /// The strip over the drawing.
    fn draw_bar(&mut self, ui: &mut Ui) {
        let mut actions = Actions::new();
        let frame = Frame::new().fill(theme::of(ui).panel).inner_margin(Margin::symmetric(12, 2));
        // Always two rows while an outline is drawn: the drawing below must not jump.
        let row = if self.fingers { 46.0 } else { 40.0 };
        let rows = f32::from(self.canvas.rows_of_bar(self.state.tool));
        Panel::top("draw bar").exact_size(row * rows).frame(frame).show(ui, |ui| {
            canvas::draw_bar(ui, &self.document, &self.state, &mut self.canvas, &mut actions);
        });
        self.carry_out(&ui.ctx().clone(), actions);
    }

    fn drawing(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        self.draw_bar(ui);
        let mut actions = Actions::new();
        let esc = match (self.esc_is_taken, self.windows.asks()) {
            (true, _) => EscFor::Another,
            (_, true) => EscFor::Window,
            _ => EscFor::Drawing,
        };
        let keys = self.state.desk.keys() == Pane::Drawing;
        self.solid.eye.fit |= self.state.fit;
        let mut stage = canvas::stage(ui, &self.document, &self.state, (keys, esc), &mut actions);
        self.canvas.aim(&mut stage, &mut actions);
        self.space = Some(stage.space);
        if !self.is_asking() {
            let (state, own) = (&self.state, &mut self.canvas);
            canvas::interact(ui, &stage, &self.document, state, own, &mut actions);
        }
        // Paint what was moved in the same frame.
        self.carry_out(&ctx, actions);
        canvas::paint(ui, &stage, &self.document, &self.state, &mut self.canvas);
        self.lit_when_painted = self.lit();
        self.watch_lesson(&ctx);
        let mut actions = Actions::new();
        canvas::tell_things(ui, &stage, &self.document, &self.state, &mut actions);
        canvas::dimension_fields(ui, &stage, &self.document, &self.state, &mut self.canvas, &mut actions);
        panels::lesson_card(ui, stage.space.area, &self.state, &mut actions);
        let alone = self.state.lesson.is_none() && self.state.tool == Tool::Select;
        if self.document.job().faces.is_empty() && alone {
            panels::first_steps_card(ui, stage.space.area, &mut actions);
        }
        self.carry_out(&ctx, actions);
    }

    /// Advances the lesson after its step was done.
    fn watch_lesson(&mut self, ctx: &Context) {
        let Some(before) = self.state.lesson else { return };
        let mut lesson = before;
        lesson.watch(&self.document, self.state.desk.is_open(Pane::Order));
        if lesson != before {
            self.state.lesson = Some(lesson);
            ctx.request_repaint();
        }
    }

    /// Non-modal windows with questions.
    fn questions(&mut self, ctx: &Context) {
        let mut actions = Actions::new();
        windows::questions(ctx, &self.document, &self.state, &mut self.windows, &mut actions);
        self.carry_out(ctx, actions);
    }

    /// Dialogs over the window.
    fn over(&mut self, ctx: &Context) {
        if let Some(dialog) = &self.dialog
            && let Some(reply) = dialogs::dialog_over(ctx, dialog, &self.document.job().name)
        {
            self.reply(ctx, reply);
            ctx.request_repaint();
        }
        if let Some((ask, path)) = browser::show(ctx, &mut self.files.typed, &self.settings.recent) {
            self.use_path(ctx, ask, &path);
            ctx.request_repaint();
        } else if self.files.typed.is_none() && !self.files.is_open() {
            self.after_save = self.after_save.take().filter(|_| self.dialog.is_some());
        }
    }

    fn name_window(&mut self, ctx: &Context) {
        let title = text::window_title(&self.document);
        if title != self.title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.title = title;
        }
        desk::name_window(ctx, &self.title);
    }
}

/// Whether a dropped file is a picture, by its extension.
fn is_picture(path: &Path) -> bool {
    let known = Ask::Picture.extensions();
    path.extension().is_some_and(|given| known.iter().any(|known| given.eq_ignore_ascii_case(known)))
}

impl eframe::App for Editor {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        let began = self.frame_times.as_mut().map(|times| times.begin(frame.info().cpu_usage));
        self.show(ui);
        if let (Some(times), Some(began)) = (&mut self.frame_times, began) {
            times.end(began, self.canvas.is_dragging());
        }
    }

    fn clear_color(&self, visuals: &egui::Visuals) -> [f32; 4] {
        theme::ground(visuals).to_normalized_gamma_f32()
    }

    fn save(&mut self, storage: &mut dyn eframe::Storage) {
        self.settings.raise_as = self.state.raise_as;
        self.settings.no_side = self.state.no_side;
        self.settings.order_table = self.state.order_table.clone();
        eframe::set_value(storage, Settings::KEY, &self.settings);
        eframe::set_value(storage, PaneTree::KEY, &self.state.desk);
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        if let Some(recovery) = self.recovery.take() {
            recovery.end();
        }
    }
}
