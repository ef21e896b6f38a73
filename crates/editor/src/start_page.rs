//! The start page: continue the last job, open a recent one, or start a new one.

use crate::action::{Action, Actions};
use crate::commands::Command;
use crate::state::Settings;
use crate::theme;
use crate::{solid_view, text};
use chalkcourse_job::load;
use chalkcourse_picture::Picture;
use egui::{
    Align, Align2, Button, ColorImage, Context, Layout, Pos2, Rect, RichText, Role, ScrollArea, Sense,
    Stroke, StrokeKind, TextureHandle, TextureOptions, Ui, Vec2, WidgetInfo,
};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};

/// Size of a house picture, in points; that of the last job is twice as wide.
const SMALL: Vec2 = Vec2::new(184.0, 116.0);
const LARGE: Vec2 = Vec2::new(376.0, 236.0);
/// Width of the column with new jobs.
const BEGIN: f32 = 260.0;

/// What is known about recent jobs.
#[derive(Default)]
pub(crate) struct StartPage {
    looks: Option<Receiver<(PathBuf, Look)>>,
    known: BTreeMap<PathBuf, Known>,
    /// The theme that pictures were made for.
    dark: Option<bool>,
}

impl std::fmt::Debug for StartPage {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("StartPage").field("known", &self.known.keys()).finish_non_exhaustive()
    }
}

/// The result of looking into a file.
enum Look {
    /// The name of the job, and its house if it has one.
    Job(String, Option<Picture>),
    Gone,
}

enum Known {
    Job { name: String, house: Option<TextureHandle> },
    Gone,
}

impl StartPage {
    /// Looks into the files on a separate thread, once, and again for another theme.
    fn look(&mut self, ctx: &Context, recent: &[PathBuf], dark: bool) {
        if self.dark != Some(dark) {
            self.dark = Some(dark);
            let (send, looks) = channel();
            let (paths, ctx) = (recent.to_vec(), ctx.clone());
            let size = LARGE * ctx.pixels_per_point();
            let size = [size.x as usize, size.y as usize];
            let spawned = std::thread::Builder::new().name("start page".to_owned()).spawn(move || {
                for path in paths {
                    let look = match load(&path) {
                        Ok(job) => Look::Job(job.name.clone(), solid_view::small(&job, size, dark)),
                        Err(_) => Look::Gone,
                    };
                    if send.send((path, look)).is_err() {
                        return;
                    }
                    ctx.request_repaint();
                }
            });
            // Without a thread the page only shows file names.
            self.looks = spawned.is_ok().then_some(looks);
        }
        let Some(looks) = &self.looks else { return };
        for (path, look) in looks.try_iter() {
            let known = match look {
                Look::Gone => Known::Gone,
                Look::Job(name, house) => {
                    let house = house.map(|picture| {
                        let image = ColorImage::from_rgba_unmultiplied(picture.size, &picture.rgba);
                        ctx.load_texture(path.to_string_lossy(), image, TextureOptions::LINEAR)
                    });
                    Known::Job { name, house }
                }
            };
            self.known.insert(path, known);
        }
    }
}

/// Shows the page.
pub(crate) fn page(ui: &mut Ui, own: &mut StartPage, settings: &Settings, actions: &mut Actions) {
    own.look(&ui.ctx().clone(), &settings.recent, ui.visuals().dark_mode);
    let p = theme::of(ui);
    let area = ui.available_rect_before_wrap();
    ui.painter().rect_filled(area, 0.0, p.ground);
    ScrollArea::vertical().auto_shrink([false, false]).show(ui, |ui| {
        let wide = (ui.available_width() - 80.0).clamp(300.0, LARGE.x + BEGIN + 200.0);
        let left = ((ui.available_width() - wide) / 2.0).max(20.0);
        ui.add_space(theme::GAP * 9.0);
        ui.horizontal_top(|ui| {
            ui.add_space(left);
            ui.vertical(|ui| {
                ui.set_width(wide);
                ui.label(RichText::new(text::START_TITLE.now()).size(theme::size::TITLE));
                ui.add_space(theme::GAP * 5.0);
                let side_by_side = wide >= LARGE.x + BEGIN + theme::GAP * 8.0;
                let around = match side_by_side {
                    true => Layout::left_to_right(Align::Min),
                    // With large text in a narrow window, below each other.
                    false => Layout::top_down(Align::Min),
                };
                ui.with_layout(around, |ui| {
                    if let Some(last) = settings.recent.first() {
                        ui.vertical(|ui| {
                            heading(ui, text::GO_ON.now());
                            job(ui, own, last, LARGE, actions);
                        });
                        ui.add_space(theme::GAP * 8.0);
                    }
                    ui.vertical(|ui| {
                        heading(ui, text::BEGIN.now());
                        begin(ui, actions);
                    });
                });
                let before = settings.recent.get(1..).unwrap_or_default();
                if !before.is_empty() {
                    ui.add_space(theme::GAP * 7.0);
                    heading(ui, text::OPEN_LATELY.now());
                    ui.horizontal_wrapped(|ui| {
                        ui.spacing_mut().item_spacing = Vec2::splat(theme::GAP * 4.0);
                        for path in before {
                            job(ui, own, path, SMALL, actions);
                        }
                    });
                }
                ui.add_space(theme::GAP * 8.0);
            });
        });
    });
}

fn heading(ui: &mut Ui, words: &str) {
    ui.label(RichText::new(words).color(theme::of(ui).quiet));
    ui.add_space(theme::GAP);
}

/// Ways to start, the usual one first.
fn begin(ui: &mut Ui, actions: &mut Actions) {
    let p = theme::of(ui);
    ui.allocate_ui_with_layout(Vec2::new(BEGIN, 0.0), Layout::top_down_justified(Align::Min), |ui| {
        ui.set_width(BEGIN);
        ui.spacing_mut().button_padding.y = theme::GAP * 2.0;
        for (nth, (command, words)) in [
            (Command::RaiseRoof, text::RAISE_OVER_WALLS),
            (Command::New, text::NEW),
            (Command::Open, text::OPEN),
            (Command::Import, text::IMPORT),
            (Command::OpenSample, text::TRY_ROOF),
            (Command::Lesson, text::LESSON_SHOW),
        ]
        .into_iter()
        .enumerate()
        {
            let mut button = Button::new(words.now());
            if nth == 0 {
                button = button.fill(p.accent_ground);
            }
            if command.key().is_some() {
                button = button.shortcut_text(command.key_words(ui.ctx()));
            }
            if ui.add(button).on_hover_text(command.help()).clicked() {
                actions.push(command.action());
            }
        }
    });
}

/// A job with its picture; a click opens it.
fn job(ui: &mut Ui, own: &StartPage, path: &Path, size: Vec2, actions: &mut Actions) {
    let p = theme::of(ui);
    let file = text::own_name(path);
    let known = own.known.get(path);
    let (name, house, gone) = match known {
        Some(Known::Job { name, house }) => (name.clone(), house.as_ref(), false),
        Some(Known::Gone) => (file, None, true),
        None => (file, None, false),
    };
    let folder = path.parent().map(|folder| folder.display().to_string()).unwrap_or_default();
    let under = if gone { text::NOT_THERE.now().to_owned() } else { folder };
    let foot = 48.0;
    let sense = if gone { Sense::hover() } else { Sense::click() };
    let (rect, response) = ui.allocate_exact_size(size + Vec2::new(0.0, foot), sense);
    response.widget_info(|| WidgetInfo::labeled(Role::Button, !gone, format!("{name}, {under}")));
    if !ui.is_rect_visible(rect) {
        return;
    }
    let picture = Rect::from_min_size(rect.min, size);
    let painter = ui.painter().with_clip_rect(rect);
    let fill = if response.hovered() && !gone { p.button_hover } else { p.panel };
    painter.rect_filled(rect, 6.0, fill);
    if let Some(house) = house {
        let whole = Rect::from_min_max(Pos2::ZERO, Pos2::new(1.0, 1.0));
        painter.image(house.id(), picture.shrink(1.0), whole, egui::Color32::WHITE);
    }
    let line = if response.has_focus() { theme::focus(p) } else { Stroke::new(1.0, p.border) };
    ui.painter().rect_stroke(rect, 6.0, line, StrokeKind::Inside);
    let at = picture.left_bottom() + Vec2::new(10.0, 7.0);
    words(&painter, at, &name, theme::font(theme::size::BODY), p.text, size.x - 20.0);
    words(
        &painter,
        at + Vec2::new(0.0, 19.0),
        &under,
        theme::font(theme::size::SMALL),
        p.quiet,
        size.x - 20.0,
    );
    if response.on_hover_text(path.display().to_string()).clicked() {
        actions.push(Action::OpenFile(path.to_owned()));
    }
}

/// One line, truncated with an ellipsis if necessary.
fn words(
    painter: &egui::Painter,
    at: Pos2,
    words: &str,
    font: egui::FontId,
    color: egui::Color32,
    wide: f32,
) {
    let mut job = egui::text::LayoutJob::simple_singleline(words.to_owned(), font, color);
    job.wrap = egui::text::TextWrapping::truncate_at_width(wide);
    let galley = painter.layout_job(job);
    let at = Align2::LEFT_TOP.anchor_size(at, galley.size()).min;
    painter.galley(at, galley, color);
}
