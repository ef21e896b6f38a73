//! Opening, saving, exporting and closing: file operations of the window.

use super::Editor;
use crate::canvas::Canvas;
use crate::dialogs::{Dialog, Reply, Then};
use crate::files::Answer;
use crate::panels::Panels;
use crate::solid_view::{self, SolidView};
use crate::state::{Ask, Change, CrewSheet, Lesson, OrderFormat, Pane, State};
use crate::windows::{Part, Windows};
use crate::{Document, Recovery, sample, text};
use chalkcourse_job::{Edit, load, load_kit, load_rule_book, save, save_rule_book, write_atomically};
use chalkcourse_plan::By;
use chalkcourse_sheets::Output;
use egui::{Context, ViewportCommand};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Instant;

impl Editor {
    /// Does something that discards the job, after the question about unsaved changes.
    pub(super) fn ask_or(&mut self, ctx: &Context, then: Then) {
        if self.document.history().is_unsaved() {
            self.dialog = Some(Dialog::Unsaved(then));
        } else {
            self.go_on(ctx, then);
        }
    }

    fn go_on(&mut self, ctx: &Context, then: Then) {
        match then {
            Then::New => self.put(Document::new(sample::empty(), None)),
            Then::Start => self.start(),
            Then::Lesson => {
                self.put(Document::new(sample::empty(), None));
                // Its last step is to open the order.
                self.state.desk.change(Change::Close(Pane::Order));
                self.state.lesson = Some(Lesson::default());
            }
            Then::AskOpen => {
                let start = self.suggested("");
                self.files.ask(ctx, Ask::Open, start);
            }
            Then::Open(path) => self.open(&path),
            Then::OpenSample => match sample::alder_court() {
                Ok(job) => self.put(Document::new(job, None)),
                Err(error) => self.wrong(text::CANT_OPEN.now(), error.to_string()),
            },
            Then::Recover(left) => match Recovery::read(&left) {
                Ok(job) => {
                    let mut document = Document::new(job, left.from.clone());
                    document.mark_unsaved();
                    self.put(document);
                    // Remove the old copy once the new one is on disk.
                    if let Some(recovery) = &mut self.recovery {
                        recovery.tick(self.document.settled(), left.from.as_deref(), Instant::now());
                        recovery.finish_writing();
                    }
                    Recovery::forget(&left);
                    self.state.said = text::RECOVERED_SAID.now().to_owned();
                }
                Err(error) => self.wrong(text::CANT_OPEN.now(), error.to_string()),
            },
            Then::Take(job, said) => self.take_building(*job, said),
            Then::Quit => {
                self.quitting = true;
                ctx.send_viewport_cmd(ViewportCommand::Close);
            }
        }
    }

    pub(super) fn reply(&mut self, ctx: &Context, reply: Reply) {
        let dialog = self.dialog.take();
        match reply {
            Reply::Close => {}
            Reply::Discard(then) => self.go_on(ctx, then),
            Reply::Save(then) => self.save(ctx, Some(then)),
            Reply::OpenCopy(left) => self.ask_or(ctx, Then::Recover(left)),
            Reply::DeleteCopy(gone) => {
                Recovery::forget(&gone);
                if let Some(Dialog::Recovered(left)) = dialog {
                    let left: Vec<_> = left.into_iter().filter(|l| *l != gone).collect();
                    self.dialog = (!left.is_empty()).then_some(Dialog::Recovered(left));
                }
            }
        }
    }

    /// Opens another job.
    pub(super) fn put(&mut self, document: Document) {
        let (courses, pathways, zones, lines, how) = (
            self.state.courses_in_plan,
            self.state.show_pathways,
            self.state.show_zones,
            self.state.show_lines,
            self.state.raise_as,
        );
        let (desk, no_side) = (std::mem::take(&mut self.state.desk), self.state.no_side);
        let order_table = std::mem::take(&mut self.state.order_table);
        self.document = document;
        self.state = State {
            courses_in_plan: courses,
            show_pathways: pathways,
            show_zones: zones,
            show_lines: lines,
            raise_as: how,
            desk,
            no_side,
            order_table,
            ..State::fresh(&self.document)
        };
        self.canvas = Canvas::default();
        self.panels = Panels::default();
        self.windows = Windows::default();
        self.solid = SolidView::default();
        if let Some(recovery) = &mut self.recovery {
            recovery.mark_safe(self.document.settled());
        }
    }

    pub(super) fn open(&mut self, path: &Path) {
        match load(path) {
            Ok(job) => {
                self.put(Document::new(job, Some(path.to_owned())));
                self.settings.used(path);
            }
            Err(error) => {
                self.settings.recent.retain(|recent| recent != path);
                self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error));
            }
        }
    }

    pub(super) fn save(&mut self, ctx: &Context, then: Option<Then>) {
        match self.document.path().map(Path::to_owned) {
            Some(path) => {
                if self.save_to(&path)
                    && let Some(then) = then
                {
                    self.go_on(ctx, then);
                }
            }
            None => {
                let start = self.suggested("chalk.json");
                self.files.ask(ctx, Ask::SaveAs, start);
                self.after_save = then;
            }
        }
    }

    fn save_to(&mut self, path: &Path) -> bool {
        match save(self.document.settled(), path) {
            Ok(()) => {
                self.document.mark_saved(path.to_owned());
                self.settings.used(path);
                if let Some(recovery) = &mut self.recovery {
                    recovery.mark_safe(self.document.settled());
                }
                self.state.said = text::saved_to(path);
                true
            }
            Err(error) => {
                self.wrong(text::CANT_SAVE.now(), error.to_string());
                false
            }
        }
    }

    pub(super) fn ask_data(&mut self, ctx: &Context, ask: Ask) {
        let start = self.suggested("");
        self.files.ask(ctx, ask, start);
    }

    /// Asks where to save the job's rule book: by default beside the job, with the book's name.
    pub(super) fn save_rule_book(&mut self, ctx: &Context) {
        let name = text::file_stem(&self.document.job().rule_book.name);
        let start = self.suggested("").join(format!("{name}.json"));
        self.files.ask(ctx, Ask::SaveRuleBook, start);
    }

    pub(super) fn answer_files(&mut self, ctx: &Context) {
        match self.files.poll() {
            Some(Answer::Path(ask, path)) => self.use_path(ctx, ask, &path),
            Some(Answer::Cancelled) => self.after_save = None,
            None => {}
        }
    }

    pub(super) fn use_path(&mut self, ctx: &Context, ask: Ask, path: &Path) {
        match ask {
            Ask::Open => self.open(path),
            Ask::SaveAs => {
                let then = self.after_save.take();
                if self.save_to(path)
                    && let Some(then) = then
                {
                    self.go_on(ctx, then);
                }
            }
            Ask::Export(format) => self.write(order(&self.document, format), text::CANT_EXPORT.now(), path),
            Ask::Print(sheet) => self.write(crew_sheet(&self.document, sheet), text::CANT_PRINT.now(), path),
            Ask::ExportPlan(format) => self.export_plan(format, path),
            Ask::Steps => {
                let bytes = self.steps_text().map(String::into_bytes);
                self.write(bytes, text::CANT_COPY_STEPS.now(), path);
            }
            Ask::Import | Ask::ImportFolder => self.import(ctx, path),
            Ask::SavePicture => self.save_picture(ctx, path),
            Ask::Kit => {
                let kit = load_kit(path).map(|kit| Edit::SetKit(Arc::new(kit)));
                self.take_data(text::LOAD_KIT.now(), kit);
            }
            Ask::RuleBook => {
                let book = load_rule_book(path).map(|book| Edit::SetRuleBook(Arc::new(book)));
                self.take_data(text::LOAD_RULE_BOOK.now(), book);
            }
            Ask::CompareBook => match load_rule_book(path) {
                Ok(book) => {
                    self.windows.other = Some(Arc::new(book));
                    self.windows.part = Part::Compare;
                    self.state.desk.change(Change::Open(Pane::RuleBook));
                }
                Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
            },
            Ask::SaveRuleBook => match save_rule_book(&self.document.settled().rule_book, path) {
                Ok(()) => self.state.said = text::saved_to(path),
                Err(error) => self.wrong(text::CANT_SAVE_BOOK.now(), error.to_string()),
            },
            Ask::Stock => self.load_stock(path),
            Ask::Counts => self.load_counts(path),
            Ask::CompareJob => self.compare_job(path),
            Ask::Offer => self.add_offer(path),
            Ask::Picture => self.lay_picture(ctx, path),
            Ask::Prices => self.load_prices(path),
        }
    }

    fn take_data(&mut self, label: &str, data: Result<Edit, chalkcourse_job::FileError>) {
        match data {
            Ok(edit) => {
                self.edit(label, &edit);
                self.state.said = text::taken(label);
            }
            Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
        }
    }

    fn write(&mut self, bytes: Result<Vec<u8>, String>, title: &str, path: &Path) {
        match bytes.and_then(|bytes| write_atomically(path, &bytes).map_err(|error| error.to_string())) {
            Ok(()) => self.state.said = text::exported_to(path),
            Err(words) => self.wrong(title, words),
        }
    }

    fn save_picture(&mut self, ctx: &Context, path: &Path) {
        let dark = ctx.theme() == egui::Theme::Dark;
        let written = solid_view::png(&self.document, &self.solid, dark)
            .and_then(|bytes| write_atomically(path, &bytes).map_err(|error| error.to_string()));
        match written {
            Ok(()) => self.state.said = text::saved_to(path),
            Err(words) => self.wrong(text::CANT_SAVE_PICTURE.now(), words),
        }
    }

    /// The initial path of a dialog: beside the job, with its name.
    pub(super) fn suggested(&self, extension: &str) -> PathBuf {
        let folder = self
            .document
            .path()
            .and_then(Path::parent)
            .map(Path::to_owned)
            .or_else(|| self.settings.recent.first().and_then(|p| p.parent()).map(Path::to_owned))
            .or_else(|| std::env::current_dir().ok())
            .unwrap_or_default();
        if extension.is_empty() {
            return folder.join("");
        }
        match self.document.path().filter(|_| extension == "chalk.json") {
            Some(path) => path.to_owned(),
            None => folder.join(format!("{}.{extension}", text::file_stem(&self.document.job().name))),
        }
    }

    /// Asks about unsaved changes before the window closes.
    pub(super) fn confirm_closing(&mut self, ctx: &Context) {
        if ctx.input(|input| input.viewport().close_requested())
            && !self.quitting
            && self.document.history().is_unsaved()
        {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.dialog = Some(Dialog::Unsaved(Then::Quit));
        }
    }

    pub(super) fn keep_copy(&mut self, ctx: &Context) {
        let Some(recovery) = &mut self.recovery else { return };
        if self.document.history().is_unsaved()
            && let Some(wait) = recovery.tick(self.document.settled(), self.document.path(), Instant::now())
        {
            ctx.request_repaint_after(wait);
        }
    }
}

/// The order in a format: the same bytes that the command line writes.
fn order(document: &Document, format: OrderFormat) -> Result<Vec<u8>, String> {
    let output = match format {
        OrderFormat::Text => Output::Order(By::Group),
        OrderFormat::Csv => Output::OrderCsv,
        OrderFormat::Json => Output::OrderJson,
        OrderFormat::Workbook => Output::OrderWorkbook,
        OrderFormat::ByPart => Output::OrderSheet(By::Group),
        OrderFormat::ByStage => Output::OrderSheet(By::Stage),
    };
    bytes(document, output)
}

fn crew_sheet(document: &Document, sheet: CrewSheet) -> Result<Vec<u8>, String> {
    let output = match sheet {
        CrewSheet::Build => Output::BuildSheet,
        CrewSheet::Checklist => Output::ChecklistSheet,
        CrewSheet::Pallet => Output::PalletSheet,
        CrewSheet::Claim => Output::ClaimSheet,
        CrewSheet::WireDiagram => Output::WireDiagram,
        CrewSheet::OneLine => Output::OneLine,
        CrewSheet::Handover => Output::Handover,
        CrewSheet::Labels => Output::Labels,
    };
    bytes(document, output)
}

/// An output of the open job: the same bytes that the command line writes.
pub(super) fn bytes(document: &Document, output: Output<'_>) -> Result<Vec<u8>, String> {
    output.bytes(document.job(), document.plan()).map_err(|error| error.to_string())
}
