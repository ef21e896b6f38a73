use super::super::string_up;
use super::*;
use crate::testing::{bare, block, gable, junction, kit};
use chalkcourse_job::Kit;

/// Numbers by chance that are the same in each run (Steele, Lea and Flood's splitmix, 2014).
struct Chance(u64);

impl Chance {
    fn below(&mut self, most: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % most
    }
}

fn with(kit: Kit, count: u32) -> Resolved {
    let mut job = gable();
    job.kit = Arc::new(kit);
    job.blocks = vec![block(3, 1, (0.2, 0.5), 1, count)];
    job
}

fn held(job: &Resolved) -> (Stringing, Vec<HeldBack>) {
    let layout = Layout::of(job);
    let made = string_up(job, &layout, None, Effort::WHOLE).unwrap();
    let held = held_back(job, &layout, &made, None);
    (made, held)
}

/// 500 V are 11 modules of 41.746 V at −22 °C, 600 V 14: twelve would be one string on an inverter that takes more, fifteen would not, by
/// the code's 600 V. By hand.
#[test]
fn an_inverter_with_a_higher_voltage() {
    let mut kit = bare();
    kit.wiring.as_mut().unwrap().inverters[0].most_volts = 500.0;
    let (made, held) = held(&with(kit.clone(), 12));
    assert_eq!(made.groups[0].circuits, 2);
    let change = Change::Most { modules: 12, instead: 11, by: LimitedBy::InverterVolts };
    let gives = Gives::Circuits { circuits: 1, instead: 2 };
    assert_eq!(held, [HeldBack { modules: 12, change, gives }]);
    assert_eq!(super::tests::held(&with(kit, 15)).1, [], "600 V in dwellings");
    assert_eq!(super::tests::held(&with(bare(), 15)).1, [], "no kit changes the code");
}

/// A branch of 13 by its breaker: fourteen would be one branch on a larger one.
#[test]
fn a_larger_breaker() {
    let (_, held) = held(&with(kit(1), 14));
    let change = Change::Most { modules: 14, instead: 13, by: LimitedBy::Breaker };
    let gives = Gives::Circuits { circuits: 1, instead: 2 };
    assert_eq!(held, [HeldBack { modules: 14, change, gives }]);
}

/// Power and current of a string both hold 14: no change of one of them alone takes fewer.
#[test]
fn two_limits_that_are_one() {
    assert_eq!(held(&with(kit(0), 16)).1, []);
}

/// Six modules and devices that want eight in a string: two more, or devices that do with six.
#[test]
fn too_few_modules() {
    let (_, held) = held(&gable());
    let fits = Gives::Fits { circuits: 1 };
    let least = Change::Least { modules: 6, instead: 8, by: LimitedBy::DeviceCount };
    assert_eq!(
        held,
        [
            HeldBack { modules: 6, change: least, gives: fits },
            HeldBack { modules: 6, change: Change::Modules { modules: 8 }, gives: fits },
        ]
    );
}

/// Leads of 1 m less 0.15 m together reach 1.85 m. Two rows of three, 2.5 m apart up the slope: the way from row to row takes an extension
/// lead, and with leads of 1.33 m, that reach 2.51 m, it takes none. By hand.
#[test]
fn longer_leads() {
    let mut job = gable();
    set_window(&mut job, 1, 14);
    job.blocks = vec![block(3, 1, (0.5, 0.3), 1, 3), block(4, 1, (0.5, 2.8), 1, 3)];
    let (made, held) = held(&job);
    assert_eq!((made.groups[0].circuits, made.groups[0].leads), (1, 1));
    let [HeldBack { modules: 6, change: Change::Leads { each, apart, reach }, gives }] = held[..] else {
        panic!("{held:?}")
    };
    assert_eq!(gives, Gives::Leads { leads: 0, instead: 1 });
    assert!(
        (each - 1.33).abs() < 1e-9 && (apart - 2.5).abs() < 1e-3 && (reach - 1.85).abs() < 1e-9,
        "{held:?}"
    );
}

fn set_window(job: &mut Resolved, least: u32, most: u32) {
    let wiring = Arc::make_mut(&mut job.kit).wiring.as_mut().unwrap();
    let ModuleDevice::Dc(device) = &mut wiring.device else { panic!() };
    (device.least_in_string, device.most_in_string) = (least, most);
}

fn set_leads(job: &mut Resolved, each: f64) {
    let wiring = Arc::make_mut(&mut job.kit).wiring.as_mut().unwrap();
    (wiring.leads.positive, wiring.leads.negative) = (Length::from_metres(each), Length::from_metres(each));
}

/// The fewest circuits, then the fewest extension leads: all orders of all modules, each cut everywhere (by the fewest of what was cut
/// before). `None` where no cuts fit.
fn by_trying(job: &Resolved) -> Option<(usize, usize)> {
    let (layout, wiring) = (Layout::of(job), job.kit.wiring.as_ref().unwrap());
    let ModuleDevice::Dc(device) = &wiring.device else { panic!() };
    let limits = device.least_in_string as usize..=device.most_in_string as usize;
    let all = devices(job, &layout);
    let link = |a: &Device, b: &Device| {
        let apart = way(&layout.roof, (a.face, a.point), (b.face, b.point))?;
        fewest_leads(apart, &wiring.leads).map(|leads| leads.len())
    };
    let links: Vec<Vec<Option<usize>>> =
        all.iter().map(|a| all.iter().map(|b| link(a, b)).collect()).collect();
    let mut best = None;
    let mut order: Vec<usize> = (0..all.len()).collect();
    permute(&mut order, 0, &mut |order| {
        let mut cut: Vec<Option<(usize, usize)>> = vec![Some((0, 0))];
        for end in 1..=order.len() {
            let mut here: Option<(usize, usize)> = None;
            for start in 0..end {
                let inside: Option<usize> =
                    order[start..end].windows(2).map(|pair| links[pair[0]][pair[1]]).sum();
                if let (Some((circuits, leads)), Some(inside), true) =
                    (cut[start], inside, limits.contains(&(end - start)))
                {
                    let sum = (circuits + 1, leads + inside);
                    here = Some(here.map_or(sum, |best| best.min(sum)));
                }
            }
            cut.push(here);
        }
        if let Some(found) = cut[order.len()] {
            best = Some(best.map_or(found, |best: (usize, usize)| best.min(found)));
        }
    });
    best
}

fn permute(order: &mut Vec<usize>, at: usize, with: &mut impl FnMut(&[usize])) {
    if at == order.len() {
        with(order);
        return;
    }
    for other in at..order.len() {
        order.swap(at, other);
        permute(order, at + 1, with);
        order.swap(at, other);
    }
}

/// Blocks here and there, up to seven modules: what each fact says comes about with its change and not without, by trying all; and a
/// change that is less does not do it.
#[test]
fn each_change_does_what_it_says() {
    let mut chance = Chance(2_611);
    let (mut of_circuits, mut of_leads, mut of_fits, mut of_counts) = (0, 0, 0, 0);
    for _ in 0..60 {
        let mut job = gable();
        job.boxes = vec![junction(9, 6.0, 5.0)];
        let mut place = || (chance.below(60) as f64 / 10.0, 0.2 + chance.below(40) as f64 / 10.0);
        job.blocks = vec![block(3, 1, place(), 1, 3), block(4, 1, place(), 2, 1), block(5, 1, place(), 1, 2)];
        job.blocks.truncate(2 + chance.below(2) as usize);
        let least = 1 + chance.below(5) as u32;
        set_window(&mut job, least, least + chance.below(4) as u32);
        let now = by_trying(&job);
        let (made, held) = held(&job);
        let told = made.groups.first().map(|group| (group.circuits, group.leads as usize));
        assert_eq!((now, made.groups.len() + made.left.len()), (told, 1));
        let count = devices(&job, &Layout::of(&job)).len();
        for fact in held {
            let mut changed = job.clone();
            let mut less = job.clone();
            let ModuleDevice::Dc(device) = job.kit.wiring.as_ref().unwrap().device else { panic!() };
            let (least, most) = (device.least_in_string, device.most_in_string);
            match fact.change {
                Change::Most { modules, instead, by } => {
                    assert_eq!((instead, by), (most, LimitedBy::DeviceCount));
                    set_window(&mut changed, least, modules);
                    set_window(&mut less, least, modules - 1);
                }
                Change::Least { modules, instead, by } => {
                    assert_eq!((instead, by), (least, LimitedBy::DeviceCount));
                    set_window(&mut changed, modules, most);
                    set_window(&mut less, modules + 1, most);
                }
                Change::Leads { each, .. } => {
                    set_leads(&mut changed, each);
                    set_leads(&mut less, each - 0.01);
                }
                Change::Modules { modules } => {
                    let fits =
                        |n: usize| (1..=n).any(|k| (k * least as usize..=k * most as usize).contains(&n));
                    assert!(fits(modules) && !fits(count), "{fact:?}");
                    let (from, to) = (modules.min(count), modules.max(count));
                    assert!((from + 1..to).all(|between| !fits(between)), "{fact:?}");
                    of_counts += 1;
                    continue;
                }
            }
            let (then, almost) = (by_trying(&changed), by_trying(&less));
            match fact.gives {
                Gives::Circuits { circuits, instead } => {
                    assert_eq!((now.unwrap().0, then.unwrap().0), (instead, circuits), "{fact:?}");
                    assert!(circuits < instead && almost.is_none_or(|found| found.0 >= instead), "{fact:?}");
                    of_circuits += 1;
                }
                Gives::Leads { leads, instead } => {
                    let (now, then, almost) = (now.unwrap(), then.unwrap(), almost.unwrap());
                    assert_eq!((now.0, now.1 as u64), (then.0, instead), "{fact:?}");
                    assert_eq!(then.1 as u64, leads, "{fact:?}");
                    assert!(leads < instead && almost.1 as u64 > leads, "{fact:?} {almost:?}");
                    of_leads += 1;
                }
                Gives::Fits { circuits } => {
                    assert!(now.is_none() && almost.is_none(), "{fact:?}");
                    assert_eq!(then.map(|found| found.0), Some(circuits), "{fact:?}");
                    of_fits += 1;
                }
            }
        }
    }
    let tried = (of_circuits, of_leads, of_fits, of_counts);
    assert!(tried.0 > 8 && tried.1 > 8 && tried.2 > 8 && tried.3 > 8, "{tried:?}");
}
