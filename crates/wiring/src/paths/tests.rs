use super::bound::Bound;
use super::forest::Forest;
use super::question::Question;
use super::*;

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

/// Landscape modules of 1.722 × 1.134 m in rows, some missing, rows shifted; leads that reach 1.85 m, extension leads of 1 and 2 m.
fn array(chance: &mut Chance, points: usize, home: bool) -> Problem {
    let columns = 2 + chance.below(5);
    let mut places: Vec<(i64, i64)> = Vec::new();
    let mut row = 0;
    while places.len() < points {
        let shift = [0, 0, 8_625, 4_000][chance.below(4) as usize];
        for column in 0..columns {
            if places.len() < points && chance.below(6) > 0 {
                places.push((column as i64 * 17_250 + shift, row * 11_370));
            }
        }
        row += 1;
    }
    let way = |a: (i64, i64), b: (i64, i64)| ((a.0 - b.0).abs() + (a.1 - b.1).abs()) as u32;
    let link = |a, b| {
        let length = way(a, b);
        let short = length.saturating_sub(18_500);
        Some(Link { leads: short.div_ceil(20_000), length })
    };
    let links = places
        .iter()
        .map(|a| places.iter().map(|b| if a == b { None } else { link(*a, *b) }).collect())
        .collect();
    let exit = (chance.below(60_000) as i64, row * 11_370 + 3_000);
    let home = places.iter().map(|a| if home { way(*a, exit) } else { 0 }).collect();
    Problem {
        links,
        home,
        both_ends: chance.below(3) > 0,
        least: 1,
        most: points,
        orders: vec![(0..points).collect()],
    }
}

/// The best of all divisions, each weighed: paths, extension leads, length. Every subset's best order by dynamic programming over
/// subsets (Held and Karp, 1962), then all divisions of all subsets.
fn of_all(problem: &Problem) -> Option<(usize, u64, u64)> {
    let points = problem.home.len();
    let sets = 1 << points;
    let add = |a: (u64, u64), b: (u64, u64)| (a.0 + b.0, a.1 + b.1);
    let mut best = vec![vec![None::<(u64, u64)>; points]; sets];
    for set in 1..sets {
        for last in (0..points).filter(|last| set >> last & 1 == 1) {
            let before: usize = set & !(1 << last);
            best[set][last] = if before == 0 {
                Some((0, if problem.both_ends { u64::from(problem.home[last]) } else { 0 }))
            } else {
                let from = (0..points).filter(|from| before >> from & 1 == 1).filter_map(|from| {
                    let link = problem.links[from][last]?;
                    Some(add(best[before][from]?, (u64::from(link.leads), u64::from(link.length))))
                });
                from.min()
            };
        }
    }
    let path = |set: usize| {
        let size = (set as u64).count_ones() as usize;
        let fits = (problem.least.max(1)..=problem.most).contains(&size);
        let ends =
            (0..points).filter_map(|last| Some(add(best[set][last]?, (0, u64::from(problem.home[last])))));
        ends.min().filter(|_| fits)
    };
    let paths: Vec<Option<(u64, u64)>> =
        (0..sets).map(|set| if set == 0 { None } else { path(set) }).collect();
    let mut all: Vec<Option<(usize, u64, u64)>> = vec![None; sets];
    all[0] = Some((0, 0, 0));
    for set in 1..sets {
        let lowest = set & set.wrapping_neg();
        let mut part = set;
        while part > 0 {
            if part & lowest != 0
                && let (Some(path), Some(rest)) = (paths[part], all[set & !part])
            {
                let sum = (rest.0 + 1, rest.1 + path.0, rest.2 + path.1);
                all[set] = Some(all[set].map_or(sum, |there| there.min(sum)));
            }
            part = (part - 1) & set;
        }
    }
    all[sets - 1]
}

/// The shortest order by trying all of them.
fn by_trying(problem: &Problem, order: &mut Vec<usize>, at: usize) -> (u64, u64) {
    if at == order.len() {
        let first = if problem.both_ends { problem.home[order[0]] } else { 0 };
        let ends = first + problem.home[order[at - 1]];
        return order.windows(2).fold((0, u64::from(ends)), |sum, pair| {
            let link = problem.links[pair[0]][pair[1]].unwrap();
            (sum.0 + u64::from(link.leads), sum.1 + u64::from(link.length))
        });
    }
    let mut best = (u64::MAX, u64::MAX);
    for other in at..order.len() {
        order.swap(at, other);
        best = best.min(by_trying(problem, order, at + 1));
        order.swap(at, other);
    }
    best
}

/// An answer holds each point once, keeps the limits, and costs what it says.
fn holds(problem: &Problem, answer: &Answer) {
    let mut all: Vec<usize> = answer.paths.concat();
    all.sort_unstable();
    assert_eq!(all, (0..problem.home.len()).collect::<Vec<_>>());
    let (mut leads, mut length) = (0, 0);
    for path in &answer.paths {
        assert!((problem.least..=problem.most).contains(&path.len()), "{path:?}");
        let first = if problem.both_ends { problem.home[path[0]] } else { 0 };
        length += u64::from(first + problem.home[path[path.len() - 1]]);
        for pair in path.windows(2) {
            let link = problem.links[pair[0]][pair[1]].unwrap();
            leads += u64::from(link.leads);
            length += u64::from(link.length);
        }
    }
    assert_eq!((leads, length), (answer.leads, answer.length));
    assert!(answer.least_leads <= leads && answer.least_length <= length, "{answer:?}");
}

#[test]
fn the_order_of_a_circuit_is_the_best_of_all_orders() {
    let mut chance = Chance(7);
    for points in [1, 2, 3, 4, 5, 6, 7, 7, 7, 8, 8, 8, 8, 8, 9] {
        for home in [false, true] {
            let problem = Problem { least: points, ..array(&mut chance, points, home) };
            let answer = divide(&problem, Effort::WHOLE).unwrap();
            holds(&problem, &answer);
            let best = by_trying(&problem, &mut (0..points).collect(), 0);
            assert_eq!((answer.leads, answer.length), best, "{problem:?}");
            assert_eq!((answer.least_leads, answer.least_length), best, "proved");
        }
    }
}

#[test]
fn divisions_are_the_best_of_all_divisions() {
    let mut chance = Chance(20_261_128);
    let (mut proved, mut all) = (0, 0);
    for round in 0..120 {
        let points = 3 + chance.below(9) as usize;
        let mut problem = array(&mut chance, points, round % 3 > 0);
        problem.most = 1 + chance.below(points as u64) as usize;
        problem.least = 1 + chance.below(problem.most as u64) as usize;
        let best = of_all(&problem);
        for effort in [Effort::FIRST, Effort::WHOLE] {
            let Some(answer) = divide(&problem, effort) else {
                // Of any number of paths none fits, or more than the fewest by count.
                assert!(problem.fewest().is_none(), "{problem:?}");
                continue;
            };
            let best = best.unwrap();
            holds(&problem, &answer);
            assert_eq!(answer.paths.len(), best.0);
            assert!(answer.fewest_paths);
            assert!(answer.least_leads <= best.1 && answer.least_length <= best.2, "{answer:?} {best:?}");
            if effort == Effort::WHOLE {
                assert_eq!((answer.leads, answer.length), (best.1, best.2), "{problem:?}");
                all += 1;
                proved += usize::from((answer.least_leads, answer.least_length) == (best.1, best.2));
            }
        }
    }
    assert!(all > 60 && proved == all, "{proved} of {all}");
}

/// The bound holds and the search through all that could be better finds the best, whatever poor answer they are told: neither relies
/// on a good one.
#[test]
fn bound_and_exact_search_stand_by_themselves() {
    let mut chance = Chance(17);
    let (mut near, mut all, mut tight) = (0.0, 0, 0);
    for _ in 0..100 {
        let points = 4 + chance.below(7) as usize;
        let mut problem = array(&mut chance, points, true);
        problem.most = points.div_ceil(1 + chance.below(3) as usize);
        problem.least = 1 + chance.below(problem.most as u64) as usize;
        let (Some((count, leads, length)), Some(fewest)) = (of_all(&problem), problem.fewest()) else {
            continue;
        };
        assert_eq!(count, fewest);
        let lead = problem.lead_weight();
        let best = lead * leads as i64 + length as i64;
        let costs = Costs::of(&problem, lead, true, false);
        let of_leads = Costs::of(&problem, 1, false, false);
        let of_length = Costs::of(&problem, 0, true, false);
        // A lead weighed more than all length; and at a price of its own, for no more of them than the best has.
        let whole = || Question::of(&problem, count, &costs, None, best * 2);
        let priced = || {
            let counted = Some((&of_leads, leads as i64));
            Question::of(&problem, count, &of_length, counted, length as i64 * 2)
        };
        for (memory, rounds) in [(1, 120), (3, 120), (6, 120), (3, 3)] {
            for (mut question, aim) in [(whole(), best), (priced(), length as i64)] {
                let forest = Forest::of(&mut question, rounds);
                assert!(forest.least <= aim, "{} of {aim}: {problem:?}", forest.least);
                let bound = Bound::of(&question, forest.prices, memory, rounds);
                assert!(bound.least <= aim, "{} of {aim}: {problem:?}", bound.least);
                // Steps that go out of hand leave no digits for what a bound is made of.
                let dearest = bound.prices.points.iter().fold(0.0, |most: f64, price| most.max(price.abs()));
                assert!(dearest <= 1e3 * question.good as f64, "{dearest} for {}", question.good);
                if memory == 6 {
                    near += bound.least as f64 / aim as f64;
                    all += 1;
                }
                let off = question.good - aim;
                bound.leave_out(&mut question);
                let find = |question: &Question, good| exact::exact(question, &bound, &costs, good, 400_000);
                // Nothing that the best answer has was left out, and by what was told to be known it is better.
                let found = find(&question, best + off).unwrap().unwrap();
                assert_eq!(costs.of_all(&found), best, "{problem:?}");
                question.good = aim;
                assert_eq!(find(&question, best), Some(None), "nothing is better");
            }
        }
        let least = parts::least_leads(&problem, &problem.orders);
        assert!(least <= leads as i64, "{least} of {leads}: {problem:?}");
        tight += u32::from(least == leads as i64 && leads > 0);
    }
    assert!(all > 60 && near / f64::from(all) > 0.9, "{near} of {all}");
    assert!(tight > 3, "{tight} are the fewest leads by parts alone");
}

/// Orders are cut at the best places: as good as trying all cuts.
#[test]
fn the_best_cuts_of_an_order() {
    let mut chance = Chance(5);
    for _ in 0..30 {
        let points = 5 + chance.below(6) as usize;
        let mut problem = array(&mut chance, points, true);
        (problem.least, problem.most) = (2, 4);
        let Some(count) = problem.fewest() else { continue };
        let costs = Costs::of(&problem, problem.lead_weight(), true, false);
        let order = problem.orders[0].clone();
        let mut best = i64::MAX;
        // Each bit says whether the order is cut before that point.
        for cuts in 0_u32..1 << (points - 1) {
            let mut paths = vec![vec![order[0]]];
            for (before, point) in order.iter().skip(1).enumerate() {
                if cuts >> before & 1 == 1 {
                    paths.push(Vec::new());
                }
                paths.last_mut().unwrap().push(*point);
            }
            if paths.len() == count && paths.iter().all(|path| (2..=4).contains(&path.len())) {
                best = best.min(costs.of_all(&paths));
            }
        }
        let cut = search::cut(&problem, &costs, &order, count).unwrap();
        assert_eq!(costs.of_all(&cut), best);
        assert_eq!(cut.concat(), order);
    }
}

#[test]
fn what_fits_no_number_of_paths_has_no_answer() {
    let mut chance = Chance(3);
    let problem = Problem { least: 5, most: 6, ..array(&mut chance, 9, true) };
    assert_eq!(problem.fewest(), None);
    assert_eq!(divide(&problem, Effort::FIRST), None);
    let none = Problem { most: 0, ..problem };
    assert_eq!(divide(&none, Effort::FIRST), None);
}

#[test]
fn no_points_make_no_path() {
    let problem = Problem {
        links: Vec::new(),
        home: Vec::new(),
        both_ends: true,
        least: 1,
        most: 9,
        orders: Vec::new(),
    };
    assert_eq!(divide(&problem, Effort::FIRST).unwrap().paths, Vec::<Vec<usize>>::new());
}

#[test]
fn points_that_nothing_joins_are_paths_of_their_own() {
    let mut problem = array(&mut Chance(4), 6, true);
    for (from, row) in problem.links.iter_mut().enumerate() {
        for (to, link) in row.iter_mut().enumerate() {
            *link = link.filter(|_| (from < 3) == (to < 3));
        }
    }
    let answer = divide(&problem, Effort::WHOLE).unwrap();
    holds(&problem, &answer);
    assert_eq!((answer.paths.len(), answer.fewest_paths), (2, false));
}

#[test]
fn the_same_answer_each_time() {
    let problem = Problem { least: 5, most: 10, ..array(&mut Chance(9), 24, true) };
    assert_eq!(divide(&problem, Effort::FIRST), divide(&problem, Effort::FIRST));
}

/// Prints how near and how quick answers are: `cargo test -p chalkcourse-wiring -- --ignored how_near --nocapture`.
#[test]
#[ignore = "a table to read, not a check"]
fn how_near() {
    let mut chance = Chance(60);
    let block = |chance: &mut Chance, rows: u64, columns: u64| {
        let mut problem = array(chance, 1, true);
        let places: Vec<(u64, u64)> =
            (0..rows).flat_map(|r| (0..columns).map(move |c| (c * 17_250, r * 11_370))).collect();
        let way = |a: (u64, u64), b: (u64, u64)| (a.0.abs_diff(b.0) + a.1.abs_diff(b.1)) as u32;
        let link =
            |a, b| Link { leads: way(a, b).saturating_sub(18_500).div_ceil(20_000), length: way(a, b) };
        problem.links =
            places.iter().map(|a| places.iter().map(|b| (a != b).then(|| link(*a, *b))).collect()).collect();
        problem.home = places.iter().map(|a| way(*a, (40_000, 80_000))).collect();
        problem.orders = vec![(0..places.len()).collect()];
        problem
    };
    for (rows, columns, least, most) in
        [(3, 4, 8, 25), (4, 6, 8, 12), (5, 8, 8, 25), (5, 12, 8, 25), (6, 10, 1, 13)]
    {
        for effort in [Effort::FIRST, Effort::WHOLE] {
            let problem = Problem { least, most, ..block(&mut chance, rows, columns) };
            table(&problem, effort);
        }
    }
    for (points, least, most) in
        [(12, 8, 25), (24, 8, 12), (24, 8, 25), (40, 1, 13), (60, 8, 25), (60, 1, 13)]
    {
        for effort in [Effort::FIRST, Effort::WHOLE] {
            let problem = Problem { least, most, ..array(&mut chance, points, true) };
            table(&problem, effort);
        }
    }
}

fn table(problem: &Problem, effort: Effort) {
    let begun = std::time::Instant::now();
    let Some(answer) = divide(problem, effort) else { return println!("no answer") };
    let Answer { leads, least_leads, length, least_length, .. } = answer;
    println!(
        "{} by {} to {}: {} paths, leads {leads} of {least_leads}, {length}, gap {:.2} %, {:.0?}",
        problem.home.len(),
        problem.least,
        problem.most,
        answer.paths.len(),
        (length - least_length) as f64 / length as f64 * 100.0,
        begun.elapsed()
    );
}
