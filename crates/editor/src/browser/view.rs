//! Layout of the file dialog: frequent folders on the left, the list beside them, the path below.

use super::listing::Entry;
use super::{Browser, Next, Place, places};
use crate::dialogs::{modal, title_of};
use crate::state::Ask;
use crate::widgets::tree::{self, ToldRow};
use crate::widgets::{LittleButton, list_steps, quiet, stepped};
use crate::{text, theme};
use egui::{
    Align, Align2, Button, Context, Event, EventFilter, Id, Key, Layout, Modifiers, Pos2, Rect, RichText,
    Role, ScrollArea, Sense, TextEdit, Ui, Vec2, WidgetInfo,
};
use std::path::PathBuf;

const WIDTH: f32 = 720.0;
/// Width of the frequent folders, height of a row, and widths of the size and time columns, in points.
const PLACES: f32 = 150.0;
const ROW: f32 = 24.0;
const SIZE: f32 = 76.0;
const TIME: f32 = 158.0;
const INSET: f32 = 3.0;
const LIST: &str = "files and folders";
const PATH: &str = "path";

/// Shows the dialog while it is open. Returns the path once a usable one was chosen.
pub(crate) fn show(ctx: &Context, open: &mut Option<Browser>, recent: &[PathBuf]) -> Option<(Ask, PathBuf)> {
    let browser = open.as_mut()?;
    let mut next = Next::Stay;
    let mut cancel = false;
    modal(ctx, "files").show(ctx, |ui| {
        let room = ctx.content_rect().size();
        ui.set_width(WIDTH.min(room.x - 60.0));
        title_of(ui, text::ask_title(browser.ask));
        bar(ui, browser);
        let height = (room.y - 330.0).clamp(96.0, 320.0);
        ui.horizontal_top(|ui| {
            ui.allocate_ui(Vec2::new(PLACES, height), |ui| {
                ui.set_min_size(Vec2::new(PLACES, height));
                place_list(ui, browser, recent, height);
            });
            let (room, down) = (Vec2::new(ui.available_width(), height), Layout::top_down(Align::Min));
            ui.allocate_ui_with_layout(room, down, |ui| {
                ui.set_min_size(room);
                next = list(ui, browser);
            });
        });
        narrow(ui, browser);
        if path_field(ui, browser) {
            next = browser.done();
        }
        if !browser.wrong.is_empty() {
            ui.label(RichText::new(&browser.wrong).color(theme::of(ui).stop));
        }
        quiet(ui, text::BROWSE_KEYS.now());
        ui.add_space(theme::GAP * 2.0);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let words = match (browser.replace, browser.ask) {
                (true, _) => text::REPLACE.now(),
                (_, Ask::ImportFolder) => text::USE_FOLDER.now(),
                (_, ask) => text::ask_button(ask),
            };
            if ui.add(Button::new(words).fill(theme::of(ui).accent_ground)).clicked() {
                next = browser.done();
            }
            cancel |= ui.button(text::CANCEL.now()).clicked();
        });
    });
    cancel |= ctx.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape));
    match next {
        _ if cancel => *open = None,
        Next::Use(path) => return open.take().map(|browser| (browser.ask, path)),
        Next::Stay => {}
    }
    None
}

/// The bar with the up button, the listed folder, and the button to create one.
fn bar(ui: &mut Ui, browser: &mut Browser) {
    ui.horizontal(|ui| {
        let above = browser.folder().parent().is_some();
        let by_key = ui.input_mut(|input| input.consume_key(Modifiers::ALT, Key::ArrowUp));
        let up = ui.add_enabled(above, Button::new(text::BROWSE_UP.now()));
        if up.on_hover_text(text::BROWSE_UP_HELP.now()).clicked() || by_key {
            browser.up();
        }
        if browser.ask.writes() {
            match &mut browser.new_folder {
                None => {
                    if ui.button(text::NEW_FOLDER.now()).clicked() {
                        browser.new_folder = Some(String::new());
                    }
                }
                Some(name) => {
                    let field = TextEdit::singleline(name).desired_width(150.0);
                    let field = ui.add(field.hint_text(text::NAME_OF_FOLDER.now()));
                    let field = field.accessible_name(text::NAME_OF_FOLDER.now());
                    let entered = field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
                    if name.is_empty() && !field.lost_focus() {
                        field.request_focus();
                    }
                    if ui.button(text::MAKE_FOLDER.now()).clicked() || entered {
                        browser.make_folder();
                    }
                }
            }
        }
        let words = RichText::new(browser.folder().display().to_string()).strong();
        ui.add(egui::Label::new(words).truncate());
    });
    ui.add_space(theme::GAP);
}

fn place_list(ui: &mut Ui, browser: &mut Browser, recent: &[PathBuf], height: f32) {
    let places = browser.places.get_or_insert_with(|| places(recent)).clone();
    ui.vertical(|ui| {
        quiet(ui, text::PLACES.now());
        ScrollArea::vertical().id_salt("places").max_height(height - 24.0).show(ui, |ui| {
            ui.with_layout(Layout::top_down_justified(Align::Min), |ui| {
                for Place { folder, is_home } in places.iter() {
                    let (name, help) = match is_home {
                        true => (text::HOME_FOLDER.now().to_owned(), folder.display().to_string()),
                        false => {
                            (text::own_name(folder), format!("{}\n{}", text::JOB_FOLDER, folder.display()))
                        }
                    };
                    let button = Button::selectable(browser.folder() == folder, name).truncate();
                    if ui.add(button).on_hover_text(help).clicked() {
                        browser.go_to(folder);
                    }
                }
            });
        });
    });
}

/// Column headings.
fn heads(ui: &mut Ui) {
    let (rect, _) = ui.allocate_exact_size(Vec2::new(ui.available_width(), 18.0), Sense::hover());
    let p = theme::of(ui);
    let end = rect.right() - INSET - 6.0;
    for (x, align, words) in [
        (rect.left() + INSET + 26.0, Align2::LEFT_CENTER, text::COLUMN_FILE),
        (end - TIME, Align2::RIGHT_CENTER, text::COLUMN_SIZE),
        (end, Align2::RIGHT_CENTER, text::COLUMN_CHANGED),
    ] {
        let at = Pos2::new(x, rect.center().y);
        ui.painter().text(at, align, words.now(), theme::font(theme::size::SMALL), p.quiet);
    }
}

/// The list of entries. Returns the result of clicking one.
fn list(ui: &mut Ui, browser: &mut Browser) -> Next {
    let id = Id::unique(LIST);
    heads(ui);
    let area = ui.available_rect_before_wrap();
    let p = theme::of(ui);
    let node = ui.interact(area, id.with("keys"), Sense::focusable_noninteractive());
    let name = text::list_of(browser.folder());
    node.widget_info(|| WidgetInfo::labeled(Role::Group, true, &name));
    ui.painter().rect(area, 4.0, p.field, egui::Stroke::new(1.0, p.border), egui::StrokeKind::Inside);
    let mut next = by_keys(ui, browser, node.id, area.height());
    let moved = next.1;
    let entries = browser.shown();
    let mut pressed = None;
    if let Some(why) = &browser.listing.trouble {
        ui.painter().text(
            area.center(),
            Align2::CENTER_CENTER,
            text::cant_read_folder(why),
            theme::font(theme::size::BODY),
            p.stop,
        );
    } else if entries.is_empty() {
        let words = match browser.filter.trim() {
            "" => text::NOTHING_HERE.now().to_owned(),
            typed => text::no_name_with(typed),
        };
        ui.painter().text(
            area.center(),
            Align2::CENTER_CENTER,
            words,
            theme::font(theme::size::BODY),
            p.quiet,
        );
    }
    let inner = area.shrink(INSET);
    ui.scope_builder(egui::UiBuilder::new().max_rect(inner), |ui| {
        tree::table(ui, id, (&name, entries.len()), |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            let mut scroll = ScrollArea::vertical().id_salt("list").auto_shrink([false, false]);
            if let Some(at) = browser.at.filter(|_| moved) {
                let seen = inner.height();
                // Centre it, so that the entries around it are visible.
                scroll = scroll.vertical_scroll_offset((at as f32 * ROW - (seen - ROW) / 2.0).max(0.0));
            }
            scroll.show_viewport(ui, |ui, seen| {
                ui.set_height(entries.len() as f32 * ROW);
                let top = ui.min_rect().top();
                for (index, entry) in entries.iter().enumerate() {
                    let corner = Pos2::new(ui.min_rect().left(), top + index as f32 * ROW);
                    let at = Rect::from_min_size(corner, Vec2::new(ui.available_width(), ROW));
                    let in_sight =
                        (index as f32 + 1.0) * ROW >= seen.top() && index as f32 * ROW <= seen.bottom();
                    let here = browser.at == Some(index);
                    if let Some(press) = row(ui, (index, entry), here, at, in_sight) {
                        pressed = Some((index, press));
                    }
                }
            });
        });
    });
    ui.advance_cursor_after_rect(area);
    match pressed {
        Some((index, Press::Enter)) => next.0 = browser.enter(index),
        Some((index, Press::Choose)) => browser.select_entry(index),
        None => {}
    }
    next.0
}

/// What a click on an entry requests.
enum Press {
    /// Entering or taking it.
    Enter,
    Choose,
}

/// The row of a folder or file; `here` if selected by keyboard. Returns what a click on it requests.
fn row(ui: &mut Ui, (index, entry): (usize, &Entry), here: bool, at: Rect, in_sight: bool) -> Option<Press> {
    let id = Id::unique((LIST, &entry.path));
    if tree::is_read(ui) {
        let told = ToldRow {
            words: &text::entry_words(&entry.name, entry.is_folder, entry.size, entry.changed),
            index,
            selected: here,
            at,
        };
        let asked = tree::row(ui, id, &told);
        if here {
            tree::set_active_row(ui, Id::unique(LIST).with("keys"), id);
        }
        if asked.press {
            return Some(Press::Enter);
        }
        if asked.show {
            return Some(Press::Choose);
        }
    }
    if !in_sight {
        return None;
    }
    let response = ui.interact(at, id.with("press"), Sense::CLICK);
    let p = theme::of(ui);
    let fill = match (here, response.hovered()) {
        (true, _) => p.accent_ground,
        (_, true) => p.button_hover,
        _ => egui::Color32::TRANSPARENT,
    };
    let painter = ui.painter().with_clip_rect(ui.clip_rect().intersect(at));
    painter.rect_filled(at, 3.0, fill);
    let font = theme::font(theme::size::BODY);
    let middle = at.center().y;
    sign(&painter, Pos2::new(at.left() + 12.0, middle), entry.is_folder, p);
    let end = at.right() - 6.0;
    let words = painter.with_clip_rect(painter.clip_rect().intersect(at.with_max_x(end - TIME - SIZE - 8.0)));
    words.text(Pos2::new(at.left() + 26.0, middle), Align2::LEFT_CENTER, &entry.name, font.clone(), p.text);
    if let Some(size) = entry.size {
        let at = Pos2::new(end - TIME, middle);
        painter.text(at, Align2::RIGHT_CENTER, text::size_words(size), font.clone(), p.quiet);
    }
    if let Some(changed) = entry.changed {
        painter.text(Pos2::new(end, middle), Align2::RIGHT_CENTER, text::moment(changed), font, p.quiet);
    }
    if response.double_clicked() {
        return Some(Press::Enter);
    }
    if response.clicked() {
        ui.memory_mut(|memory| memory.request_focus(Id::unique(LIST).with("keys")));
        return Some(Press::Choose);
    }
    None
}

fn sign(painter: &egui::Painter, at: Pos2, is_folder: bool, p: &theme::Palette) {
    let stroke = egui::Stroke::new(1.3, p.quiet);
    let square = |w: f32, h: f32| Rect::from_center_size(at, Vec2::new(w, h));
    if is_folder {
        let body = square(14.0, 10.0);
        painter.rect(body, 1.5, p.face, stroke, egui::StrokeKind::Inside);
        painter.hline(body.left()..=body.left() + 6.0, body.top() - 1.5, stroke);
    } else {
        painter.rect_stroke(square(10.0, 13.0), 1.0, stroke, egui::StrokeKind::Inside);
    }
}

/// Keyboard control of the list: the result, and whether another entry was selected.
fn by_keys(ui: &Ui, browser: &mut Browser, node: Id, high: f32) -> (Next, bool) {
    if !ui.memory(|memory| memory.has_focus(node)) {
        return (Next::Stay, false);
    }
    let filter = EventFilter { vertical_arrows: true, ..EventFilter::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(node, filter));
    let pressed = |key| ui.input_mut(|input| input.count_and_consume_key(Modifiers::NONE, key)) as isize;
    if pressed(Key::Backspace) > 0 {
        browser.up();
        return (Next::Stay, true);
    }
    if pressed(Key::Enter) > 0 {
        return browser.at.map_or((Next::Stay, false), |at| (browser.enter(at), true));
    }
    let page = ((high / ROW) as isize - 1).max(1);
    let by = list_steps(ui, page);
    let shown = browser.shown();
    let Some(last) = shown.len().checked_sub(1) else { return (Next::Stay, false) };
    let to = if by != 0 {
        Some(stepped(browser.at, by, last))
    } else {
        // A letter selects the next name that starts with it.
        let typed = ui.input(|input| {
            input.events.iter().find_map(|event| {
                if let Event::Text(text) = event { Some(text.to_lowercase()) } else { None }
            })
        });
        let after = browser.at.map_or(0, |at| at + 1);
        typed.and_then(|typed| {
            let around = (after..=last).chain(0..after.min(last + 1));
            let mut with = around.filter(|at| shown.get(*at).is_some_and(|entry| entry.begins_with(&typed)));
            with.next()
        })
    };
    let Some(to) = to else { return (Next::Stay, false) };
    browser.select_entry(to);
    (Next::Stay, true)
}

/// The filter controls.
fn narrow(ui: &mut Ui, browser: &mut Browser) {
    ui.add_space(theme::GAP);
    ui.horizontal(|ui| {
        let label = ui.label(text::BROWSE_FILTER.now());
        let field = TextEdit::singleline(&mut browser.filter).desired_width(150.0);
        if ui.add(field).labelled_by(label.id).changed() {
            browser.at = None;
        }
        if browser.ask != Ask::ImportFolder {
            let all = ui.checkbox(&mut browser.all_kinds, text::ALL_KINDS.now());
            if all.on_hover_text(text::ALL_KINDS_HELP.now()).changed() {
                browser.at = None;
            }
        }
        if !browser.filter.is_empty() && ui.little_button(text::SHOW_ALL.now()).clicked() {
            browser.show_all();
        }
    });
}

/// The path field. Returns true when Enter was pressed in it.
fn path_field(ui: &mut Ui, browser: &mut Browser) -> bool {
    let id = Id::unique(PATH);
    let list = Id::unique(LIST).with("keys");
    let has = ui.memory(|memory| memory.has_focus(id));
    if has {
        // Tab completes the path if possible, and otherwise moves to the next field.
        let filter = EventFilter { tab: true, horizontal_arrows: true, vertical_arrows: true, escape: false };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
        let pressed = |modifiers, key| ui.input_mut(|input| input.consume_key(modifiers, key));
        if pressed(Modifiers::SHIFT, Key::Tab) {
            ui.memory_mut(|memory| memory.move_focus(egui::FocusDirection::Previous));
        } else if pressed(Modifiers::NONE, Key::Tab) {
            if browser.complete() {
                to_end(ui, id, &browser.typed);
            } else {
                ui.memory_mut(|memory| memory.move_focus(egui::FocusDirection::Next));
            }
        } else if pressed(Modifiers::NONE, Key::ArrowDown) {
            ui.memory_mut(|memory| memory.request_focus(list));
            browser.select_entry(browser.at.unwrap_or(0));
        }
    }
    let label = ui.label(text::PATH.now());
    let field = TextEdit::singleline(&mut browser.typed).desired_width(f32::INFINITY).id(id).lock_focus(true);
    let field = ui.add(field).labelled_by(label.id);
    if field.changed() {
        browser.path_edited();
    }
    if field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter)) {
        return true;
    }
    if ui.memory(|memory| memory.focused().is_none()) && !ui.input(|input| input.key_pressed(Key::Escape)) {
        field.request_focus();
    }
    false
}

/// Puts the cursor of a field at the end.
fn to_end(ui: &Ui, field: Id, typed: &str) {
    let Some(mut state) = egui::text_edit::TextEditState::load(ui.ctx(), field) else { return };
    let end = egui::text::CCursor::new(typed.chars().count());
    state.cursor.set_char_range(Some(egui::text::CCursorRange::one(end)));
    state.store(ui.ctx(), field);
}
