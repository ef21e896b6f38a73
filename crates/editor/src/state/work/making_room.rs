use super::{News, Work};
use chalkcourse_job::{BlockId, Resolved};
use chalkcourse_plan::{Slide, slide_clear};
use chalkcourse_words as words;
use std::sync::Arc;

/// A background search for the shortest move that clears a block.
#[derive(Debug)]
pub(crate) struct MakingRoom {
    job: Arc<Resolved>,
    block: BlockId,
    work: Work<Option<Slide>>,
}

impl MakingRoom {
    /// Starts the search.
    pub(crate) fn begin(ctx: &egui::Context, job: Arc<Resolved>, block: BlockId) -> Self {
        let asked = Arc::clone(&job);
        let work = Work::begin(ctx, move |stop, _| slide_clear(&asked, block, stop));
        Self { job, block, work }
    }

    /// The block to make room for.
    pub(crate) fn block(&self) -> BlockId {
        self.block
    }

    /// Ends the search with what was found so far.
    pub(crate) fn stop(&self) {
        self.work.stop();
    }

    /// After it has ended: its job, its block, and the move, or a message on why there is no result.
    #[expect(clippy::type_complexity, reason = "taken apart at once, in one place")]
    pub(crate) fn answer(&self) -> Option<(Arc<Resolved>, BlockId, Result<Option<Slide>, &'static str>)> {
        let found = match self.work.news() {
            News::None | News::SoFar(_) => return None,
            News::Done(None) if self.work.stopped() => Err(words::arrange::STOPPED_BEFORE_A_PLACE_WAS.now()),
            News::Done(found) => Ok(found),
            News::Broke => Err(words::arrange::THE_SEARCH_FOR_ROOM_BROKE.now()),
        };
        Some((Arc::clone(&self.job), self.block, found))
    }
}
