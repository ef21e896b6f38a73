//! Just so many modules on all faces together, as compact or as cheap as can be.
//!
//! Each face gives the least cost of every number that it holds; how many each face carries is then chosen over all
//! faces at once. Both are exact, so the sum is.

use super::made::{self, Maker};
use super::outline::{Outline, outline};
use super::{
    Basis, Fill, FillError, Laid, Measure, MeasureOf, Mode, Site, Size, Target, Way, fill_edit, lay,
    path_is_clear,
};
use crate::room::Fire;
use chalkcourse_geometry::fit::{StackCosts, Stacks, Tile, Want, fit_stacks};
use chalkcourse_job::{FaceId, Orientation, Resolved, apply};
use chalkcourse_limits::Share;
use chalkcourse_words::{pick, tell};

/// More than this is a slip of the hand.
const MOST: usize = 10_000;

/// One way to carry some number of modules on a face.
struct Choice {
    stacks: Stacks,
    orientation: Orientation,
    tile: Tile,
    fire: Fire,
    path: String,
    /// With what a block costs by itself.
    cost: f64,
    least: f64,
}

/// What a face offers: by number of modules, from 1.
struct Offer {
    face: FaceId,
    choices: Vec<Option<Choice>>,
    most: usize,
    finished: bool,
    fire: Fire,
    way: String,
    searched: String,
}

/// How many modules a size is.
fn modules(job: &Resolved, size: Size) -> Result<usize, FillError> {
    let number = match size {
        Size::Modules(modules) => modules as f64,
        Size::Kilowatts(kilowatts) => (kilowatts * 1000.0 / job.kit.module.watts - 1e-9).ceil(),
    };
    if (1.0..=MOST as f64).contains(&number) {
        Ok(number as usize)
    } else {
        Err(FillError::Asked(tell!(
            "an array of {number} modules was asked for: give a size from 1 to {MOST} modules",
            "se pidió un arreglo de {number} módulos: dé un tamaño de 1 a {MOST} módulos"
        )))
    }
}

/// Fills faces with just so many modules together.
pub(super) fn fill(
    job: &Resolved,
    faces: &[FaceId],
    target: Target,
    roof: Share,
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
    let number = asked - locked;
    let mut offers = Vec::new();
    for &face in faces {
        offers.push(offer(job, face, target, roof, number, faces.len() == 1, stop)?);
    }
    let cost = |choice: &Choice| choice.cost;
    let least = |choice: &Choice| choice.least;
    let all_finished = offers.iter().all(|offer| offer.finished);
    let Some((_, shares)) = share(&offers, number, &cost) else {
        let most: usize = offers.iter().map(|offer| offer.most).sum();
        if all_finished || most < number {
            return Err(FillError::TooFew { asked, most: most + locked, sure: all_finished });
        }
        return Err(FillError::Stopped(asked));
    };
    let total: f64 = picked(&offers, &shares).map(cost).sum();
    let bound = if all_finished { total } else { share(&offers, number, &least).map_or(0.0, |(sum, _)| sum) };
    let proved = total - bound <= 1e-7 * (1.0 + total);
    let mut so_far = job.clone();
    let mut fills = Vec::new();
    for (offer, &share) in offers.iter().zip(&shares) {
        let fill = made_of(&so_far, offer, share, (number, locked), target.way, proved);
        if let Ok(next) = apply(&so_far, &fill_edit(&so_far, &fill)) {
            so_far = next;
        }
        fills.push(fill);
    }
    Ok(fills)
}

/// How many go in after all, where more were asked for. Room beside a ridge that grows with the array makes one clear room
/// hold more than may be laid in it, so that what a single pass tells is an upper end alone; below the right number every
/// number goes in, since a module at the head of a stack may be left away.
pub(super) fn most_that_fit(
    target: Target,
    told: FillError,
    fill: impl Fn(Mode) -> Result<Vec<Fill>, FillError>,
) -> FillError {
    let FillError::TooFew { asked, most, sure: true } = told else { return told };
    let (mut fits, mut above) = (0, most + 1);
    while above - fits > 1 {
        let number = if above > most { most } else { usize::midpoint(fits, above) };
        match fill(Mode::ToNumber(Target { size: Size::Modules(number), ..target })) {
            Ok(_) => fits = number,
            // Locked blocks hold what they hold.
            Err(FillError::Locked { locked, .. }) => fits = fits.max(locked.min(above - 1)),
            Err(FillError::TooFew { sure: true, .. }) => above = number,
            Err(_) => return FillError::TooFew { asked, most, sure: false },
        }
    }
    FillError::TooFew { asked, most: fits, sure: true }
}

fn picked<'a>(offers: &'a [Offer], shares: &'a [usize]) -> impl Iterator<Item = &'a Choice> {
    offers.iter().zip(shares).filter_map(|(offer, &share)| offer.choices.get(share.checked_sub(1)?)?.as_ref())
}

/// How many modules each face carries so that the sum costs least.
fn share(offers: &[Offer], number: usize, cost: &dyn Fn(&Choice) -> f64) -> Option<(f64, Vec<usize>)> {
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

/// What a face offers. Alone it is asked for the whole number only.
fn offer(
    job: &Resolved,
    face: FaceId,
    target: Target,
    roof: Share,
    number: usize,
    alone: bool,
    stop: &dyn Fn() -> bool,
) -> Result<Offer, FillError> {
    let mode = Mode::ToNumber(target);
    let site = Site::of(job, face, mode, !alone)?;
    lay::joints(job, mode)?;
    let base = lay::base(job, &site.layout, site.index, mode);
    let maker = Maker { job, face };
    let mut offer = Offer {
        face,
        choices: Vec::new(),
        most: 0,
        finished: true,
        fire: Fire { share: roof, path: site.paths().first().copied().flatten(), beyond: !alone },
        way: tell!("one grid, {}", "una sola cuadrícula, {}", made::base_words(job, base)),
        searched: String::new(),
    };
    offer.choices.resize_with(number, || None);
    let from = if alone { number } else { 1 };
    let mut best_clear = false;
    let (mut sets, mut ruled_out) = (0, 0);
    for path in site.paths() {
        let fire = Fire { share: roof, path, beyond: !alone };
        let allowed = site.allowed(fire);
        let words = site.path_words(path);
        for (orientation, tile) in maker.tiles() {
            let Outline { costs, block } = match target.way {
                Way::Cheapest => outline(job, &tile, site.exposure())?,
                Way::Compact => Outline { costs: StackCosts::length_around(&tile), block: 0.0 },
            };
            let found = fit_stacks(&allowed, &tile, base, &costs, Want::Numbers(from, number), stop)?;
            offer.most = offer.most.max(found.most);
            offer.finished &= found.finished;
            (sets, ruled_out) = (sets + found.sets, ruled_out + found.ruled_out);
            for stacks in found.found {
                let (cost, least) = (stacks.cost + block, stacks.least + block);
                let Some(slot) = stacks.placed.len().checked_sub(1).and_then(|n| offer.choices.get_mut(n))
                else {
                    continue;
                };
                if slot.as_ref().is_none_or(|had| cost < had.cost) {
                    let path = words.clone();
                    *slot = Some(Choice { stacks, orientation, tile, fire, path, cost, least });
                }
            }
        }
        // A strip that does not keep the plane's pathway clear is of use only where none does.
        let clear = offer.choices.iter().flatten().next_back().is_some_and(|choice| {
            let blocks = maker.block(0, choice.orientation, choice.tile, &choice.stacks.placed);
            let basis = Basis { fire, way: String::new(), laid: Laid::Stacks };
            let trial = maker.fill(blocks.into_iter().collect(), 0, 0, false, String::new(), basis);
            path_is_clear(job, &trial)
        });
        best_clear |= clear;
    }
    if !best_clear {
        offer.way += pick(
            "; no strip keeps the plane's pathway clear",
            "; ninguna franja deja libre el paso del plano",
        );
    }
    offer.searched = tell!(
        "one grid on each face at every offset, every upper module carried by the one below it, from one base line; every share \
         between the faces; on this face {sets} different sets of places, {ruled_out} ranges of offsets ruled out by a bound{}{}",
        "una cuadrícula en cada faldón con cada desfase, cada módulo superior apoyado en el de abajo, \
        desde una línea base; cada reparto entre los faldones; en este faldón {sets} conjuntos distintos \
        de lugares, {ruled_out} rangos de desfases descartados por una cota{}{}",
        if target.way == Way::Cheapest {
            pick(
                "; flashing by the metre and by the corner, before whole packages",
                "; tapajuntas por metro y por esquina, antes de paquetes enteros",
            )
        } else {
            ""
        },
        if offer.finished { "" } else { pick("; stopped before the end", "; parado antes del final") }
    );
    Ok(offer)
}

/// The fill of a face with its share.
fn made_of(
    job: &Resolved,
    offer: &Offer,
    share: usize,
    (number, locked): (usize, usize),
    way: Way,
    proved: bool,
) -> Fill {
    let maker = Maker { job, face: offer.face };
    let choice = share.checked_sub(1).and_then(|n| offer.choices.get(n)?.as_ref());
    let blocks = choice
        .and_then(|choice| maker.block(0, choice.orientation, choice.tile, &choice.stacks.placed))
        .into_iter()
        .collect();
    let how = match way {
        Way::Compact => pick("most compact", "más compactos"),
        Way::Cheapest => pick("cheapest", "más baratos"),
    };
    let stays = if locked > 0 {
        tell!(" beside {locked} locked", " además de {locked} fijados")
    } else {
        String::new()
    };
    let path = choice.map_or("", |choice| choice.path.as_str());
    let words = tell!(
        "the {how} {number}{stays} on all faces, {}{path}",
        "los {number} {how}{stays} en todos los faldones, {}{path}",
        offer.way
    );
    let fire = choice.map_or(offer.fire, |choice| choice.fire);
    let basis = Basis { fire, way: words, laid: Laid::Stacks };
    let bound = offer.most.max(share);
    let mut fill = maker.fill(blocks, share, bound, proved, offer.searched.clone(), basis);
    let of = match way {
        Way::Compact => MeasureOf::LengthAround,
        Way::Cheapest => MeasureOf::FlashingCost,
    };
    let (value, bound) = choice.map_or((0.0, 0.0), |choice| (choice.cost, choice.least));
    fill.measure = Some(Measure { of, value, bound });
    made::claim(job, &mut fill);
    fill
}
