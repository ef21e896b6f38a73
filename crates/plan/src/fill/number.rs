//! An exact number of modules on all faces together, as compact or as cheap as possible.
//!
//! Each face gives the least cost for every number of modules that it can hold; the split between the faces is then
//! chosen over all of them at once. Both are exact, so the total is.

use super::corridor::Corridor;
use super::judge::Judge;
use super::made::{self, Maker};
use super::outline::{Outline, outline};
use super::search::Pace;
use super::{
    Basis, Fill, FillError, FillKind, Measure, MeasureOf, Mode, Site, Size, Target, Way, lay, shares, trim,
};
use crate::room::{Fire, path_strips};
use chalkcourse_geometry::fit::{StackCosts, Stacks, Tile, Want, fit_stacks};
use chalkcourse_job::{FaceId, Orientation, Resolved};
use chalkcourse_limits::Share;
use chalkcourse_words::{Said, later as words};

/// More than this is a typing error.
const MOST: usize = 10_000;

/// One way to lay some number of modules on a face.
struct Choice {
    stacks: Stacks,
    orientation: Orientation,
    tile: Tile,
    fire: Fire,
    /// Including the fixed cost of a block.
    cost: f64,
    least: f64,
}

/// What a face offers, by number of modules, from 1.
struct Offer {
    face: FaceId,
    choices: Vec<Option<Choice>>,
    finished: bool,
    fire: Fire,
    way: Said,
    searched: Option<Said>,
}

/// The number of modules for a size.
fn modules(job: &Resolved, size: Size) -> Result<usize, FillError> {
    let number = match size {
        Size::Modules(modules) => modules as f64,
        Size::Kilowatts(kilowatts) => (kilowatts * 1000.0 / job.kit.module.watts - 1e-9).ceil(),
    };
    if (1.0..=MOST as f64).contains(&number) {
        Ok(number as usize)
    } else {
        Err(FillError::FillContext(words::fill::an_array_of_modules_was(&number, &MOST)))
    }
}

/// Fills faces with an exact number of modules together.
///
/// First one grid on each face, which is proved least; if that has a stop, beside corridors that may be left free. If
/// no such layout has as many, modules are taken from the fullest layouts of the usual search.
pub(super) fn fill(
    job: &Resolved,
    faces: &[FaceId],
    target: Target,
    stop: &dyn Fn() -> bool,
) -> Result<Vec<Fill>, FillError> {
    let asked = modules(job, target.size)?;
    let locked: usize = job
        .blocks
        .iter()
        .filter(|block| block.locked && faces.contains(&block.face))
        .map(|block| block.cells().count())
        .sum();
    if locked > asked {
        return Err(FillError::Locked { asked, locked });
    }
    let asking = Asking { judge: &Judge::of(job, faces), faces, target, number: asked - locked, locked };
    for (share, beside) in
        [(Share::Within, false), (Share::Within, true), (Share::Beyond, false), (Share::Beyond, true)]
    {
        match asking.in_grids(share, beside, stop)? {
            Grids::Pass(fills) => return Ok(fills),
            Grids::Stopped => {}
            // Leaving more free does not give more room.
            Grids::NoRoom => break,
        }
        if stop() {
            return Err(FillError::Stopped(asked));
        }
    }
    asking.take_of_the_fullest(stop)
}

/// The result of one grid on each face.
enum Grids {
    /// The number was reached, and the layout passes.
    Pass(Vec<Fill>),
    /// The number was reached, but the rules find a stop.
    Stopped,
    /// There is no room for the number.
    NoRoom,
}

/// The request.
struct Asking<'a> {
    judge: &'a Judge,
    faces: &'a [FaceId],
    target: Target,
    /// The number of new modules.
    number: usize,
    locked: usize,
}

impl Asking<'_> {
    /// The least cost with one grid on each face, ignoring pathways or beside a straight one on each face.
    fn in_grids(&self, share: Share, beside: bool, stop: &dyn Fn() -> bool) -> Result<Grids, FillError> {
        let mut offers = Vec::new();
        for &face in self.faces {
            offers.push(self.offer(face, share, beside, stop)?);
        }
        let (cost, least) = (|choice: &Choice| choice.cost, |choice: &Choice| choice.least);
        let all_finished = offers.iter().all(|offer| offer.finished);
        let Some((total, shares)) = share_out(&offers, self.number, &cost) else { return Ok(Grids::NoRoom) };
        let bound = if all_finished {
            total
        } else {
            share_out(&offers, self.number, &least).map_or(0.0, |(sum, _)| sum)
        };
        // Beside another corridor it might cost less.
        let proved = !beside && total - bound <= 1e-7 * (1.0 + total);
        let mut so_far = self.judge.bare.clone();
        let mut fills = Vec::new();
        for (offer, &share) in offers.iter().zip(&shares) {
            let fill = self.made_of(&so_far, offer, share, proved);
            so_far = self.judge.with(&so_far, &fill).0;
            fills.push(fill);
        }
        // Check with the larger ridge setback.
        let passes = self.judge.stops(&so_far, Share::Beyond).is_empty();
        Ok(if passes { Grids::Pass(fills) } else { Grids::Stopped })
    }

    /// The requested number of modules from the fullest layouts.
    fn take_of_the_fullest(&self, stop: &dyn Fn() -> bool) -> Result<Vec<Fill>, FillError> {
        let Self { judge, faces, target, number, locked } = *self;
        let mut fills = shares::fill(judge, faces, Mode::SlidingRows, Pace::Whole, stop)?;
        let found: usize = fills.iter().map(|fill| fill.modules).sum();
        let most: usize = fills.iter().map(|fill| fill.bound).sum();
        if found < number {
            let (asked, found, most) = (number + locked, found + locked, most + locked);
            return Err(if most < asked {
                FillError::TooFew { asked, found, most }
            } else {
                FillError::NotFound { asked, found, most }
            });
        }
        let mut over = found - number;
        for at in (0..fills.len()).rev() {
            let others = fills.iter().enumerate().filter(|(other, _)| *other != at);
            let job = others.fold(judge.bare.clone(), |job, (_, fill)| judge.with(&job, fill).0);
            let Some(fill) = fills.get_mut(at) else { continue };
            let site = Site::of(judge, &job, fill.face, Mode::SlidingRows, faces.len() > 1)?;
            let before = fill.modules;
            *fill = trim::to_number(&site, fill, before - over.min(before));
            over = over.saturating_sub(before - fill.modules);
            fill.proved = false;
            fill.basis.way = Some(words::fill::on_all_faces_taken_from(&number, &stays(locked)));
            made::claim(judge, &job, fill, Mode::ToNumber(target));
        }
        // Removing a module removes those it supports, so that fewer than requested may be left.
        let left: usize = fills.iter().map(|fill| fill.modules).sum();
        if left == number {
            Ok(fills)
        } else {
            Err(FillError::NotFound { asked: number + locked, found, most })
        }
    }

    /// What a face offers. A single face is only asked for the whole number.
    fn offer(
        &self,
        face: FaceId,
        share: Share,
        beside: bool,
        stop: &dyn Fn() -> bool,
    ) -> Result<Offer, FillError> {
        let (number, alone) = (self.number, self.faces.len() == 1);
        let mode = Mode::ToNumber(self.target);
        let site = Site::of(self.judge, &self.judge.bare, face, mode, !alone)?;
        lay::joints(site.job, mode)?;
        let (maker, base) = (site.maker(), site.base());
        let mut offer = Offer {
            face,
            choices: Vec::new(),
            finished: true,
            fire: site.fire(share, Vec::new()),
            way: words::fill::one_grid(&made::base_words(site.job, base)),
            searched: None,
        };
        offer.choices.resize_with(number, || None);
        let from = if alone { number } else { 1 };
        let mut ways: Vec<Corridor> = vec![Vec::new()];
        if beside {
            let strips = path_strips(site.job, &site.layout, site.index);
            if !strips.is_empty() {
                ways = strips.into_iter().map(|strip| vec![strip]).collect();
            }
        }
        let (mut sets, mut ruled_out) = (0, 0);
        for kept in ways {
            let fire = site.fire(share, kept);
            let allowed = site.allowed(&fire);
            for (orientation, tile) in maker.tiles() {
                let Outline { costs, block } = match self.target.way {
                    Way::Cheapest => outline(site.job, &tile, site.exposure())?,
                    Way::Compact => Outline { costs: StackCosts::length_around(&tile), block: 0.0 },
                };
                let found = fit_stacks(&allowed, &tile, base, &costs, Want::Numbers(from, number), stop)?;
                offer.finished &= found.finished;
                (sets, ruled_out) = (sets + found.sets, ruled_out + found.ruled_out);
                for stacks in found.found {
                    let (cost, least) = (stacks.cost + block, stacks.least + block);
                    let Some(slot) =
                        stacks.placed.len().checked_sub(1).and_then(|n| offer.choices.get_mut(n))
                    else {
                        continue;
                    };
                    if slot.as_ref().is_none_or(|had| cost < had.cost) {
                        *slot = Some(Choice { stacks, orientation, tile, fire: fire.clone(), cost, least });
                    }
                }
            }
        }
        offer.searched = Some(self.searched(sets, ruled_out, offer.finished));
        Ok(offer)
    }

    fn searched(&self, sets: usize, ruled_out: usize, finished: bool) -> Said {
        words::fill::one_grid_on_each_face(
            &sets,
            &ruled_out,
            &(self.target.way == Way::Cheapest).then_some(words::fill::FLASHING_BY_THE_METRE_AND),
            &(!finished).then_some(words::fill::STOPPED_BEFORE_THE_END_2),
        )
    }

    /// The fill of a face with its share.
    fn made_of(&self, job: &Resolved, offer: &Offer, share: usize, proved: bool) -> Fill {
        let (maker, number) = (Maker { job, face: offer.face }, self.number);
        let choice = share.checked_sub(1).and_then(|n| offer.choices.get(n)?.as_ref());
        let blocks = choice
            .and_then(|choice| maker.block(0, choice.orientation, choice.tile, &choice.stacks.placed))
            .into_iter()
            .collect();
        let how = match self.target.way {
            Way::Compact => words::fill::MOST_COMPACT,
            Way::Cheapest => words::fill::CHEAPEST,
        };
        let words = words::fill::the_on_all_faces(&how, &number, &stays(self.locked), &offer.way);
        let fire = choice.map_or(&offer.fire, |choice| &choice.fire).clone();
        let basis = Basis { fire, way: Some(words), laid: FillKind::Stacks, every: false };
        let mut fill =
            maker.fill(blocks, share, share, proved, offer.searched.clone().unwrap_or_default(), basis);
        let of = match self.target.way {
            Way::Compact => MeasureOf::LengthAround,
            Way::Cheapest => MeasureOf::FlashingCost,
        };
        let (value, bound) = choice.map_or((0.0, 0.0), |choice| (choice.cost, choice.least));
        fill.measure = Some(Measure { of, value, bound, any: None });
        made::claim(self.judge, job, &mut fill, Mode::ToNumber(self.target));
        fill
    }
}

/// The note about locked modules that stay.
fn stays(locked: usize) -> Option<Said> {
    (locked > 0).then(|| words::fill::beside_locked(&locked))
}

/// How many modules each face gets so that the total cost is least.
fn share_out(offers: &[Offer], number: usize, cost: &dyn Fn(&Choice) -> f64) -> Option<(f64, Vec<usize>)> {
    let mut sums: Vec<f64> = vec![f64::INFINITY; number + 1];
    *sums.first_mut()? = 0.0;
    let mut taken: Vec<Vec<usize>> = Vec::new();
    for offer in offers {
        let mut next = sums.clone();
        let mut took = vec![0; number + 1];
        for (share, choice) in (1..).zip(&offer.choices) {
            let Some(choice) = choice else { continue };
            let more = cost(choice);
            for (whole, (sum, took)) in next.iter_mut().zip(&mut took).enumerate().skip(share) {
                let with = sums.get(whole - share).copied().unwrap_or(f64::INFINITY) + more;
                if with < *sum {
                    (*sum, *took) = (with, share);
                }
            }
        }
        sums = next;
        taken.push(took);
    }
    let sum = sums.last().copied().filter(|sum| sum.is_finite())?;
    let mut left = number;
    let mut shares = vec![0; offers.len()];
    for (share, took) in shares.iter_mut().zip(&taken).rev() {
        *share = took.get(left).copied().unwrap_or(0);
        left -= *share;
    }
    Some((sum, shares))
}
