//! Actions carried out: the one place where anything changes.

use super::Editor;
use crate::action::{Action, Actions};
use crate::dialogs::{Dialog, Then};
use crate::state::{
    Ask, Change, Group, Look, OutlineFor, Pane, Selection, Toggle, Tool, View, is_of_buildings,
};
use crate::{edits, text};
use chalkcourse_job::{Edit, EditError, Resolved};
use chalkcourse_words::Said;
use egui::{Context, ViewportCommand};
use std::sync::Arc;

impl Editor {
    /// Carries out what was asked for, in order: the one way in which anything changes.
    pub(super) fn carry_out(&mut self, ctx: &Context, actions: Actions) {
        if actions.is_empty() {
            return;
        }
        let shown = actions.iter().all(Action::is_of_pointer);
        for action in actions {
            self.act(ctx, action);
        }
        self.state.keep_in_step(&self.document);
        if !shown {
            ctx.request_repaint();
        }
    }

    pub(super) fn act(&mut self, ctx: &Context, action: Action) {
        match action {
            Action::Edit(label, edit) => self.edit(label, &edit),
            Action::EditAndSelect(label, edit, selection) => {
                self.edit(label, &edit);
                self.state.selection = selection;
            }
            Action::Preview(label, edit) => {
                // A drag into nonsense shows the last that made sense.
                let shown = self.document.preview(label, &edit);
                let was_trouble = self.state.trouble.take().is_some();
                match shown {
                    Ok(()) if was_trouble => self.state.said.clear(),
                    Ok(()) => {}
                    Err(error) => {
                        self.state.trouble = trouble_of(&error, &edit);
                        self.state.said = error.to_string();
                    }
                }
            }
            Action::Commit => {
                self.state.trouble = None;
                let before = Arc::clone(self.document.settled());
                self.document.commit();
                self.tell_what_went(&before);
            }
            Action::Abort => {
                self.state.trouble = None;
                if let Some(label) = self.document.abort() {
                    self.state.said = text::given_up(&label);
                }
            }
            Action::Jump(step) => {
                self.canvas.drop_gesture();
                if self.document.jump(step) {
                    self.state.said = text::jumped(&self.document);
                }
            }
            Action::Select(selection) => {
                self.state.selection = selection;
                self.state.group = Group::default();
            }
            Action::Hold(group) => {
                self.state.selection = Selection::Nothing;
                self.state.group = group;
            }
            Action::OpenFile(path) if is_of_buildings(&path) => self.import(ctx, &path),
            Action::TakeBuilding => {
                if let Some(import) = &mut self.windows.import {
                    import.take(ctx);
                }
            }
            Action::LayPicture(path) => self.lay_picture(ctx, &path),
            Action::Fill(faces) => self.fill(ctx, faces),
            Action::OpenFile(path) => self.ask_or(ctx, Then::Open(path)),
            Action::OpenSample => self.ask_or(ctx, Then::OpenSample),
            Action::Say(words) => self.state.said = words,
            Action::New => self.ask_or(ctx, Then::New),
            Action::StartPage => self.ask_or(ctx, Then::Start),
            Action::BeginLesson => self.ask_or(ctx, Then::Lesson),
            Action::LeaveLesson => self.state.lesson = None,
            Action::AskOpen => self.ask_or(ctx, Then::AskOpen),
            Action::Quit => self.ask_or(ctx, Then::Quit),
            Action::Save => self.save(ctx, None),
            Action::SaveAs => {
                let start = self.suggested("chalk.json");
                self.files.ask(ctx, Ask::SaveAs, start);
            }
            Action::Export(format) => {
                let start = self.suggested(&format!("order.{}", format.extension()));
                self.files.ask(ctx, Ask::Export(format), start);
            }
            Action::LoadStock => self.ask_data(ctx, Ask::Stock),
            Action::LoadCounts => self.ask_data(ctx, Ask::Counts),
            Action::CompareJob => self.ask_data(ctx, Ask::CompareJob),
            Action::AddOffer => self.ask_data(ctx, Ask::Offer),
            Action::Print(sheet) => {
                let start = self.suggested(sheet.ending());
                self.files.ask(ctx, Ask::Print(sheet), start);
            }
            Action::ExportPlan(format) => {
                let start = self.suggested(format.extension());
                self.files.ask(ctx, Ask::ExportPlan(format), start);
            }
            Action::CopyPicture => self.copy_picture(ctx),
            Action::CopySvg => self.copy_svg(ctx),
            Action::CopySteps => self.copy_steps(ctx),
            Action::SaveSteps => {
                let start = self.suggested("edits.json");
                self.files.ask(ctx, Ask::Steps, start);
            }
            Action::AskImport => self.ask_data(ctx, Ask::Import),
            Action::AskImportFolder => self.ask_data(ctx, Ask::ImportFolder),
            Action::LoadKit => self.ask_data(ctx, Ask::Kit),
            Action::LoadRuleBook => self.ask_data(ctx, Ask::RuleBook),
            Action::AskPicture => self.ask_data(ctx, Ask::Picture),
            Action::LoadPrices => self.ask_data(ctx, Ask::Prices),
            // A face that is half drawn is no step yet: its last corner is what is taken back.
            Action::Undo if self.canvas.step_back(self.state.tool) => {}
            Action::Undo => {
                self.canvas.drop_gesture();
                self.state.said = text::undone(self.document.undo());
            }
            Action::Redo if self.canvas.step_again(self.state.tool) => {}
            Action::Redo => {
                self.canvas.drop_gesture();
                self.state.said = text::redone(self.document.redo());
            }
            Action::HoldAll => {
                let all = Group::all(self.document.job());
                self.carry_out(ctx, vec![Action::Hold(all)]);
            }
            // The key is for the pane that has the keyboard.
            Action::Delete if !matches!(self.state.desk.keys(), Pane::Drawing | Pane::House) => {
                text::DELETE_ON_DRAWING.now().clone_into(&mut self.state.said);
            }
            Action::Delete => {
                let delete = match self.state.group.is_empty() {
                    true => edits::delete(&self.document, self.state.selection),
                    false => edits::group::deleted(&self.state.group, self.document.job()),
                };
                self.carry_out(ctx, delete.into_iter().collect());
            }
            Action::Copy => _ = self.copy_held(ctx),
            Action::Cut => self.cut_held(ctx),
            Action::Paste => ctx.send_viewport_cmd(ViewportCommand::RequestPaste),
            Action::PasteText(text) => self.paste(&text),
            Action::Duplicate => self.duplicate(ctx),
            Action::FillHeld => {
                let held = self.state.selection.face(self.document.job());
                self.fill(ctx, held.into_iter().collect());
            }
            Action::MakeRoom
            | Action::Mirror
            | Action::CopyToFace
            | Action::Split
            | Action::Join
            | Action::AlignTo(_)
            | Action::Spread(_) => self.arrange(ctx, &action),
            Action::Fit => self.fit_all(),
            Action::Zoom(factor) => {
                self.state.camera = self.state.camera.zoomed(factor, self.state.camera.centre);
                self.state.fitted_to = None;
            }
            Action::GoTo(thing) => self.go_to(ctx, thing),
            Action::Look(Look::Plan) => self.look(View::Plan),
            Action::Look(Look::FaceOn) => self.look_face_on(),
            Action::Look(Look::At(face)) => {
                self.state.view = View::FaceOn(face);
                self.state.fit = true;
                self.carry_out(ctx, vec![Action::Select(Selection::Face(face))]);
            }
            Action::ShowHome => self.show_home(ctx),
            Action::SavePicture => {
                let start = self.suggested("png");
                self.files.ask(ctx, Ask::SavePicture, start);
            }
            Action::Toggle(what) => self.toggle(what),
            Action::Use(tool) => self.take(tool),
            Action::Speak(language) => self.speak(language),
            Action::TypeSize(size) => ctx.set_zoom_factor(size.from(ctx.zoom_factor())),
            Action::ChangeTheme => {
                let dark = ctx.theme() == egui::Theme::Light;
                self.settings.dark = Some(dark);
                ctx.set_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light });
            }
            Action::Show(units) => self.edit(text::CHANGE_UNITS.now(), &Edit::SetUnits(units)),
            Action::SaveRuleBook => self.save_rule_book(ctx),
            Action::CompareRuleBook => self.ask_data(ctx, Ask::CompareBook),
            Action::ShowCautions => self.dialog = Some(Dialog::Cautions),
            Action::DrawWalls => {
                self.canvas.let_go();
                self.state.draw_walls();
            }
            Action::Open(pane) => self.state.desk.change(Change::Open(pane)),
            Action::OpenOrClose(pane) => self.state.desk.change(Change::OpenOrClose(pane)),
            Action::Panes(change) => {
                self.by_keys |= matches!(change, Change::NextKeys { .. });
                self.state.desk.change(change);
            }
            Action::ClosePane => self.of_pane_with_keys(Change::Close),
            Action::OwnWindow => self.of_pane_with_keys(Change::OwnWindow),
            Action::GoToMenus => self.go_to_menus(ctx),
            Action::HeldMenu => {
                self.by_keys = true;
                self.canvas.open_menu();
            }
            Action::FindCommand => self.windows.find_command(),
            Action::CloseTopWindow => self.windows.close_top(),
            Action::ShowList(list) => self.state.list = list,
            Action::OpenLine(line) => self.state.opened_line = line,
            Action::OrderTable(table) => self.state.order_table = table,
            Action::Person(name) => self.settings.person = name,
            Action::PenetrationKind(kind) => self.state.penetration_kind = Some(kind),
            Action::PartPreset(part) => self.state.part = part,
            Action::OutlineFor(what) => self.state.draw(what),
            Action::Shape(shaped) => self.state.shaped = shaped,
            Action::RaiseAs(how) => self.state.raise_as = Some(how),
            Action::Trouble(at) => self.state.trouble = at,
            Action::FillAs(asked) => self.state.fill.asked = asked,
            Action::StopFill => self.state.fill.stop(),
            Action::StopHoldBack => self.state.fill.stop_asking(),
            Action::StopMakingRoom => {
                if let Some(making) = &self.state.making_room {
                    making.stop();
                }
            }
            Action::StringAutomatically => self.string_automatically(ctx),
            Action::StopStringing => self.state.stringing.stop(),
            Action::OpenFinding(key) => self.state.fixing.open(&key),
            Action::ReadPictureAgain => self.state.pictures.again(),
            Action::SkipStep => {
                if let Some(lesson) = &mut self.state.lesson {
                    lesson.skip();
                }
            }
            Action::See(camera, fitted_to) => {
                (self.state.camera, self.state.fitted_to) = (camera, fitted_to);
            }
            Action::Hover(thing, at) => (self.state.hover, self.state.pointer) = (thing, at),
            Action::Point(pointed) => self.state.pointed = pointed,
            Action::LookAtFinding(key, now) => self.state.fixing.look_at(&key, now),
            Action::Ghost(ghost) => self.state.ghost = ghost,
            Action::MarkCourses(courses) => self.state.courses = courses,
            Action::LightRoof(part) => self.state.lit_roof = part,
            Action::Fitted => self.state.fit = false,
            Action::ShowKeys => self.dialog = Some(Dialog::Keys),
        }
    }

    pub(super) fn edit(&mut self, label: impl Into<Said>, edit: &Edit) {
        let before = Arc::clone(self.document.settled());
        match self.document.edit(label, edit) {
            Ok(_) => {
                self.state.said.clear();
                self.state.trouble = None;
                self.tell_what_went(&before);
            }
            Err(error) => {
                self.state.trouble = trouble_of(&error, edit);
                self.wrong(text::CANT_BE.now(), error.to_string());
            }
        }
    }

    /// What a person set and no longer has a place is told, not dropped in silence.
    pub(super) fn tell_what_went(&mut self, before: &Resolved) {
        let lost = crate::edits::parting::kinds_lost(before, self.document.settled());
        if lost > 0 {
            self.state.said = text::kinds_lost(lost);
        }
    }

    pub(super) fn wrong(&mut self, title: &str, words: String) {
        self.dialog = Some(Dialog::Wrong { title: title.to_owned(), words });
    }

    pub(super) fn toggle(&mut self, what: Toggle) {
        let shown = match what {
            Toggle::Courses => &mut self.state.courses_in_plan,
            Toggle::Pathways => &mut self.state.show_pathways,
            Toggle::Lines => &mut self.state.show_lines,
            Toggle::Wires => &mut self.state.show_wires,
            Toggle::WindZones => &mut self.state.show_zones,
            Toggle::SidePanel => &mut self.state.no_side,
        };
        *shown = !*shown;
    }

    /// Opens the view for the homeowner, or leaves it.
    pub(super) fn show_home(&mut self, ctx: &Context) {
        self.state.showing = !self.state.showing;
        self.let_go();
        self.solid.eye.fit = true;
        ctx.send_viewport_cmd(ViewportCommand::Fullscreen(self.state.showing));
    }

    /// Takes a tool up.
    pub(crate) fn take(&mut self, tool: Tool) {
        self.canvas.let_go();
        self.state.take(tool);
        if tool == Tool::DrawFace {
            self.state.draw(OutlineFor::usual(self.document.job()));
        }
    }

    /// Drops what is half done on the drawing.
    pub(super) fn let_go(&mut self) {
        self.canvas.let_go();
        self.state.trouble = None;
    }

    /// All of the roof in the drawing, and of the house beside it.
    fn fit_all(&mut self) {
        self.state.fit = true;
        self.solid.eye.fit = true;
    }

    /// Changes the pane that has the keyboard.
    fn of_pane_with_keys(&mut self, change: impl FnOnce(Pane) -> Change) {
        match self.state.desk.keys() {
            Pane::Drawing => text::NO_PANE_HAS_KEYS.now().clone_into(&mut self.state.said),
            pane => self.state.desk.change(change(pane)),
        }
    }

    pub(super) fn look(&mut self, view: View) {
        if self.state.view != view {
            self.let_go();
            self.state.view = view;
            self.state.fit = true;
        }
    }

    /// The face that is held, or the one with a block on it, or the first one.
    pub(super) fn look_face_on(&mut self) {
        let job = self.document.job();
        let face = self
            .state
            .selection
            .face(job)
            .or_else(|| job.blocks.first().map(|block| block.face))
            .or_else(|| job.faces.first().map(|face| face.id));
        match face {
            Some(face) => {
                if self.state.tool == Tool::DrawFace {
                    self.take(Tool::Select);
                }
                self.look(View::FaceOn(face));
            }
            None => self.state.said = text::NO_FACE_YET.now().to_owned(),
        }
    }
}

/// The place that an edit which was refused speaks of.
fn trouble_of(error: &EditError, edit: &Edit) -> Option<chalkcourse_geometry::DVec2> {
    match (error, edit) {
        (EditError::CantRaise { error, .. }, Edit::PutPart(part)) => {
            crate::edits::parting::trouble_spot(error, &part.outline)
        }
        _ => None,
    }
}
