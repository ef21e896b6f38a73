//! Import of buildings, and export of the plan, in open formats.

use super::Editor;
use crate::dialogs::Then;
use crate::state::{Importing, PlanFormat};
use crate::{Document, edits, text};
use chalkcourse_exchange::House;
use chalkcourse_job::{Resolved, apply, write_atomically};
use chalkcourse_sheets::Output;
use egui::Context;
use std::path::Path;
use std::sync::Arc;

impl Editor {
    /// Opens the list of the buildings of a file or folder.
    pub(super) fn import(&mut self, ctx: &Context, path: &Path) {
        self.windows.import = Some(Importing::start(ctx, path));
    }

    /// Adds an imported building to the job: as a step if the job has no faces, otherwise as a new job.
    pub(super) fn answer_import(&mut self, ctx: &Context) {
        let Some(house) = self.windows.import.as_mut().and_then(Importing::answer) else { return };
        match self.with_building(&house) {
            Err(words) => {
                if let Some(import) = &mut self.windows.import {
                    import.wrong = text::sentence(&words);
                }
            }
            Ok(None) => {
                self.windows.import = None;
                self.state.fit = true;
                self.state.said = text::imported(&house);
            }
            Ok(Some(job)) => self.ask_or(ctx, Then::Take(Box::new(job), text::imported(&house))),
        }
    }

    /// A new job with a building, if this one already has a roof.
    fn with_building(&mut self, house: &House) -> Result<Option<Resolved>, String> {
        let how = self.state.raise_as.unwrap_or_else(edits::usual_roof);
        let words = |error: &dyn std::fmt::Display| error.to_string();
        let now = Arc::clone(self.document.settled());
        if now.faces.is_empty() {
            let edit = house.edit(&now, &how).map_err(|error| words(&error))?;
            self.document.edit(text::import_of(house), &edit).map_err(|error| words(&error))?;
            self.state.keep_in_step(&self.document);
            return Ok(None);
        }
        let (kit, book, prices) = (Arc::clone(&now.kit), Arc::clone(&now.rule_book), Arc::clone(&now.prices));
        let mut job = Resolved::new(house.name.clone(), kit, book, prices);
        job.units = now.units;
        let edit = house.edit(&job, &how).map_err(|error| words(&error))?;
        apply(&job, &edit).map(Some).map_err(|error| words(&error))
    }

    /// Opens a job with an imported building.
    pub(super) fn take_building(&mut self, job: Resolved, said: String) {
        let mut document = Document::new(job, None);
        document.mark_unsaved();
        self.put(document);
        self.state.said = said;
    }

    /// Writes the plan for maps, or the house for 3-D programs: the same bytes that the command line writes.
    pub(super) fn export_plan(&mut self, format: PlanFormat, path: &Path) {
        let output = match format {
            PlanFormat::Svg => Output::PlanDrawing,
            PlanFormat::GeoJson => Output::GeoJson,
            PlanFormat::Glb => Output::Glb,
        };
        let written = super::filing::bytes(&self.document, output)
            .and_then(|bytes| write_atomically(path, &bytes).map_err(|error| error.to_string()));
        match written {
            Ok(()) => self.state.said = text::plan_exported_to(path),
            Err(words) => self.wrong(text::CANT_EXPORT_PLAN.now(), text::sentence(&words)),
        }
    }
}
