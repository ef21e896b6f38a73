//! Simulated mouse and keyboard input.

use crate::painter::Painter;
use chalkcourse::{Editor, Options};
use chalkcourse_geometry::{DVec2, Length, dvec2};
use chalkcourse_job::Resolved;
use egui::{Event, Key, Modifiers, PointerButton, Pos2};
use egui_kittest::kittest::Queryable;
use egui_kittest::{Harness, HarnessBuilder};
use std::path::Path;
use std::time::{Duration, Instant};

pub(crate) struct Hand {
    pub(crate) harness: Harness<'static, Option<Editor>>,
}

impl Hand {
    /// A window with the sample and in-window file dialogs.
    pub(crate) fn new() -> Self {
        Self::with(Options { typed_paths: true, ..Options::default() })
    }

    pub(crate) fn with(options: Options) -> Self {
        Self::of(options, Harness::builder().with_size([1280.0, 800.0]))
    }

    /// One that can be rendered to a picture, with the dark theme.
    pub(crate) fn painted(options: Options) -> Self {
        let builder = Harness::builder().with_size([1120.0, 700.0]).with_theme(egui::Theme::Dark);
        Self::of(options, builder.renderer(Painter::default()))
    }

    /// A window of a size, with the sample.
    pub(crate) fn sized(width: f32, height: f32) -> Self {
        let options = Options { typed_paths: true, ..Options::default() };
        Self::of(options, Harness::builder().with_size([width, height]))
    }

    /// A window of a size that starts with stored settings.
    pub(crate) fn kept((width, height): (f32, f32), kept: &Kept) -> Self {
        // Later starts begin with a start page, unless a job is given.
        let sample = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../sample-roofs/alder-court.chalk.json");
        let options = Options { typed_paths: true, open: Some(sample), ..Options::default() };
        Self::beginning(options, Harness::builder().with_size([width, height]), Some(kept.clone()))
    }

    /// Ends the program; returns the settings that it stores.
    pub(crate) fn end(mut self) -> Kept {
        let mut kept = Kept::default();
        eframe::App::save(self.harness.state_mut().as_mut().unwrap(), &mut kept);
        kept
    }

    /// The window of a returning user.
    pub(crate) fn remembering(options: Options, memory: Kept) -> Self {
        Self::beginning(options, Harness::builder().with_size([1280.0, 800.0]), Some(memory))
    }

    fn of(options: Options, builder: HarnessBuilder<Option<Editor>>) -> Self {
        Self::beginning(options, builder, None)
    }

    fn beginning(options: Options, builder: HarnessBuilder<Option<Editor>>, kept: Option<Kept>) -> Self {
        let mut harness = builder.with_max_steps(60).with_step_dt(1.0 / 60.0).build_ui_state(
            move |ui, editor: &mut Option<Editor>| {
                // The real window is cleared to it.
                let ground = chalkcourse::ground(ui.visuals());
                ui.painter().rect_filled(ui.max_rect(), 0.0, ground);
                let storage = kept.as_ref().map(|kept| kept as &dyn eframe::Storage);
                editor.get_or_insert_with(|| Editor::new(ui.ctx(), options.clone(), storage)).show(ui);
            },
            None,
        );
        harness.run();
        Self { harness }
    }

    /// A window with an empty job.
    pub(crate) fn empty() -> Self {
        let mut hand = Self::new();
        hand.chord(Modifiers::COMMAND, Key::N);
        assert!(hand.job().faces.is_empty());
        hand
    }

    /// Switches to the drawing tool, for a single face corner by corner.
    pub(crate) fn draw_face(&mut self) {
        self.key(Key::D);
        self.press("Face");
    }

    /// A clipboard event, as sent by the window system.
    pub(crate) fn clipboard(&mut self, event: Event) {
        self.harness.event(event);
        self.harness.step();
    }

    pub(crate) fn editor(&self) -> &Editor {
        self.harness.state().as_ref().unwrap()
    }

    pub(crate) fn job(&self) -> Resolved {
        (**self.editor().document().job()).clone()
    }

    pub(crate) fn at(&self, plan: DVec2) -> Pos2 {
        self.editor().on_screen(plan).unwrap()
    }

    pub(crate) fn click(&mut self, pos: Pos2) {
        self.harness.hover_at(pos);
        self.harness.run();
        for pressed in [true, false] {
            let modifiers = Modifiers::NONE;
            self.harness.event(Event::PointerButton {
                pos,
                button: PointerButton::Primary,
                pressed,
                modifiers,
            });
        }
        self.harness.run();
        // Two clicks in quick succession would be a double click.
        self.harness.run_steps(30);
    }

    pub(crate) fn click_plan(&mut self, x: f64, y: f64) {
        let pos = self.at(dvec2(x, y));
        self.click(pos);
    }

    /// A click at a plan point with modifiers.
    pub(crate) fn click_holding(&mut self, (x, y): (f64, f64), modifiers: Modifiers) {
        let pos = self.at(dvec2(x, y));
        self.harness.event_modifiers(Event::PointerMoved(pos), modifiers);
        self.harness.run_steps(2);
        for pressed in [true, false] {
            let button = PointerButton::Primary;
            self.harness.event_modifiers(Event::PointerButton { pos, button, pressed, modifiers }, modifiers);
        }
        self.harness.run_steps(30);
    }

    /// Points at a plan point, and types a length in that direction.
    pub(crate) fn type_toward(&mut self, (x, y): (f64, f64), typed: &str) {
        let pos = self.at(dvec2(x, y));
        self.harness.hover_at(pos);
        self.harness.run();
        self.type_text(typed);
        self.key(Key::Enter);
    }

    pub(crate) fn double_click(&mut self, pos: Pos2) {
        self.harness.hover_at(pos);
        self.harness.run();
        for pressed in [true, false, true, false] {
            let modifiers = Modifiers::NONE;
            self.harness.event(Event::PointerButton {
                pos,
                button: PointerButton::Primary,
                pressed,
                modifiers,
            });
            self.harness.step();
        }
        self.harness.run();
    }

    /// Presses at one point and moves to another; the button stays down.
    pub(crate) fn drag(&mut self, from: Pos2, to: Pos2) {
        self.harness.hover_at(from);
        self.harness.run();
        self.harness.drag_at(from);
        self.harness.run_steps(2);
        self.harness.hover_at(from + (to - from) * 0.5);
        self.harness.run_steps(2);
        self.harness.hover_at(to);
        self.harness.run_steps(2);
    }

    pub(crate) fn drop(&mut self, at: Pos2) {
        self.harness.drop_at(at);
        self.harness.run();
    }

    pub(crate) fn key(&mut self, key: Key) {
        self.chord(Modifiers::NONE, key);
    }

    pub(crate) fn chord(&mut self, modifiers: Modifiers, key: Key) {
        self.harness.key_press_modifiers(modifiers, key);
        self.harness.run();
    }

    /// Keys pressed in the same frame.
    pub(crate) fn keys_at_once(&mut self, keys: &[Key]) {
        for &key in keys {
            let modifiers = Modifiers::NONE;
            let event = Event::Key { key, physical_key: None, pressed: true, repeat: false, modifiers };
            self.harness.input_mut().events.push(event);
        }
        self.harness.step();
    }

    pub(crate) fn type_text(&mut self, text: &str) {
        self.harness.event(Event::Text(text.to_owned()));
        self.harness.run();
    }

    pub(crate) fn press(&mut self, label: &str) {
        self.harness.get_by_label(label).click();
        self.harness.run();
    }

    /// Runs frames until no background work is in progress.
    pub(crate) fn settle(&mut self) {
        let began = Instant::now();
        self.harness.step();
        while self.editor().is_working() {
            assert!(began.elapsed() < Duration::from_secs(120), "the work does not end");
            std::thread::sleep(Duration::from_millis(5));
            self.harness.step();
        }
        self.harness.run();
    }

    /// Runs frames until a condition holds.
    pub(crate) fn wait_until(&mut self, so: impl Fn(&Self) -> bool) {
        let began = Instant::now();
        while !so(self) {
            assert!(began.elapsed() < Duration::from_secs(60), "it does not come");
            std::thread::sleep(Duration::from_millis(10));
            self.harness.step();
        }
        self.harness.run();
    }

    pub(crate) fn sees(&self, words: &str) -> bool {
        self.harness.query_all_by_label_contains(words).next().is_some()
    }

    /// Fills in the in-window path dialog, where background work follows.
    pub(crate) fn give_path_and_wait(&mut self, path: &std::path::Path) {
        assert!(self.sees("Path of the file"), "no path is asked for");
        self.chord(Modifiers::COMMAND, Key::A);
        self.harness.event(Event::Text(path.to_str().unwrap().to_owned()));
        self.harness.step();
        self.harness.key_press(Key::Enter);
        self.harness.step();
    }

    /// Fills in the in-window path dialog.
    pub(crate) fn give_path(&mut self, path: &std::path::Path) {
        assert!(self.sees("Path of the file"), "no path is asked for");
        self.chord(Modifiers::COMMAND, Key::A);
        self.type_text(path.to_str().unwrap());
        self.key(Key::Enter);
    }
}

/// Settings storage without a file.
#[derive(Clone, Debug, Default)]
pub(crate) struct Kept(pub(crate) std::collections::HashMap<String, String>);

impl eframe::Storage for Kept {
    fn get_string(&self, key: &str) -> Option<String> {
        self.0.get(key).cloned()
    }

    fn set_string(&mut self, key: &str, value: String) {
        self.0.insert(key.to_owned(), value);
    }

    fn remove_string(&mut self, key: &str) {
        self.0.remove(key);
    }

    fn flush(&mut self) {}
}

pub(crate) fn feet(feet: f64) -> f64 {
    Length::from_feet(feet).metres()
}
