//! Checks what fills claim against independent layouts on many houses: which claims are beaten, and how wide the gaps
//! are.
//!
//! ```sh
//! cargo run --release -p chalkcourse-tests --example claims -- --usual 1-200 --odd 1-100 --awkward 1-100 --real --rounds 40
//! ```
//!
//! `--keep FOLDER` keeps independent layouts that beat the fill. `--write FOLDER` writes the houses as small jobs
//! instead, for `tests/peers/claims_against_highs.py`. `--more` also checks fills to a number, fills by worth, and the
//! cut lists of the order.
//!
//! Prints a line for each face whose claim is beaten or whose gap is wide, for each filled job with a stop from
//! `check`, and the gaps on usual houses. With `--rounds 0` no independent layouts are made.

#![allow(clippy::print_stdout, clippy::expect_used, reason = "a program for a terminal")]

use chalkcourse_job::{Face, FaceId, Resolved};
use chalkcourse_tests::climb::{Budget, FoundLayout, Strict, climb};
use chalkcourse_tests::houses::{self, House};
use chalkcourse_tests::{kept, top, verdict};
use std::collections::BTreeMap;
use std::path::PathBuf;

struct Options {
    rounds: usize,
    keep: Option<PathBuf>,
    write: Option<PathBuf>,
    strict: Vec<Strict>,
    verbose: bool,
    more: bool,
}

#[derive(Default)]
struct Table {
    faces: usize,
    beaten: BTreeMap<Strict, usize>,
    more_than_laid: BTreeMap<Strict, usize>,
    stopped: usize,
    jobs: usize,
    gaps: BTreeMap<usize, usize>,
    wide_gaps: usize,
    seconds: (f64, f64),
    /// By kind of question: how often asked, and how often beaten.
    more: BTreeMap<&'static str, (usize, usize)>,
}

fn main() {
    let mut options = Options {
        rounds: 40,
        keep: None,
        write: None,
        strict: vec![Strict::Kit, Strict::Stops],
        verbose: false,
        more: false,
    };
    let mut jobs: Vec<(String, Vec<(String, Resolved)>)> = Vec::new();
    let mut words = std::env::args().skip(1);
    while let Some(word) = words.next() {
        let mut next = || words.next().expect("a value after the option");
        let house = |of: fn(u64) -> House, name: &str, seeds: String| -> Vec<(String, Resolved)> {
            let (from, to) = seeds.split_once('-').map_or((seeds.as_str(), seeds.as_str()), |pair| pair);
            let (from, to): (u64, u64) = (from.parse().expect("a number"), to.parse().expect("a number"));
            (from..=to)
                .map(|seed| {
                    let house = of(seed);
                    (format!("{name} {seed} {:?}", house.kind), house.job)
                })
                .collect()
        };
        match word.as_str() {
            "--usual" => jobs.push(("usual".into(), house(houses::usual, "usual", next()))),
            "--odd" => jobs.push(("odd".into(), house(houses::odd, "odd", next()))),
            "--awkward" => jobs.push(("awkward".into(), house(houses::awkward, "awkward", next()))),
            "--real" => {
                let file = top().join("tests/data/3dbag-sample.city.jsonl");
                for fire in [false, true] {
                    jobs.push((format!("real, fire {fire}"), houses::real(&file, fire)));
                }
            }
            "--rounds" => options.rounds = next().parse().expect("a number"),
            "--keep" => options.keep = Some(next().into()),
            "--write" => options.write = Some(next().into()),
            "--kit" => options.strict = vec![Strict::Kit],
            "--more" => options.more = true,
            "--verbose" => options.verbose = true,
            other => panic_words(other),
        }
    }
    for (name, jobs) in jobs {
        if let Some(folder) = &options.write {
            for (name, job) in &jobs {
                let file = format!("{}.chalk.json", name.replace([' ', '.'], "-").to_lowercase());
                chalkcourse_job::save(&kept::small(job), &folder.join(file))
                    .expect("the folder can be written to");
            }
            continue;
        }
        let mut table = Table::default();
        for (name, job) in &jobs {
            judge(name, job, &options, &mut table);
        }
        print(&name, &table);
    }
}

#[expect(clippy::panic, reason = "a program for a terminal")]
fn panic_words(word: &str) -> ! {
    panic!("no such option: {word}")
}

fn judge(name: &str, job: &Resolved, options: &Options, table: &mut Table) {
    let start = std::time::Instant::now();
    let before = verdict::open(job).stops;
    for face in verdict::steep_enough(job) {
        let Some(on) = job.face(face) else { continue };
        // Skip faces smaller than a square yard: no module fits.
        if on.outline.area() < 1.0 {
            continue;
        }
        judge_face(name, job, on, options, table);
    }
    if options.more {
        judge_cuts(name, job, table);
    }
    let begun = std::time::Instant::now();
    if let Ok((claims, after)) = verdict::claims(job, &verdict::steep_enough(job)) {
        table.jobs += 1;
        let stops: Vec<String> = verdict::open(&after).stops.difference(&before).cloned().collect();
        if !stops.is_empty() {
            table.stopped += 1;
            println!(
                "STOPPED {name}: {} modules, {}",
                claims.iter().map(|c| c.laid).sum::<usize>(),
                stops.join(" ")
            );
        }
    }
    table.seconds.0 += begun.elapsed().as_secs_f64();
    table.seconds.1 += start.elapsed().as_secs_f64();
}

fn judge_face(name: &str, job: &Resolved, face: &Face, options: &Options, table: &mut Table) {
    let begun = std::time::Instant::now();
    let claims = match verdict::claims(job, &[face.id]) {
        Ok((claims, _)) => claims,
        Err(error) => {
            println!("{name}, {}: not filled: {error}", face.name);
            return;
        }
    };
    table.seconds.0 += begun.elapsed().as_secs_f64();
    let Some(claim) = claims.into_iter().next() else { return };
    table.faces += 1;
    let gap = claim.most.saturating_sub(claim.laid);
    *table.gaps.entry(gap).or_default() += 1;
    if gap > 1 && gap * 20 > claim.most {
        table.wide_gaps += 1;
        println!("WIDE {name}, {}: {}", face.name, claim.words);
    }
    if options.rounds == 0 {
        return;
    }
    if options.verbose {
        println!("{name}, {}: {}", face.name, claim.words);
    }
    for &strict in &options.strict {
        let budget = Budget { rounds: options.rounds, corridors: 6, enough: usize::MAX };
        let hand = climb(job, face.id, strict, budget, 1);
        if hand.modules > claim.laid {
            *table.more_than_laid.entry(strict).or_default() += 1;
            keep(options, name, face.id, strict, &hand);
        }
        if hand.modules > claim.most {
            *table.beaten.entry(strict).or_default() += 1;
            let fire = if job.rule_book.fire_access.is_some() { "fire" } else { "" };
            println!(
                "BEATEN {name}, {} {strict:?} {fire}: {} by hand, claim: {}",
                face.name, hand.modules, claim.words
            );
        } else if options.verbose {
            println!("    {strict:?} {} by hand", hand.modules);
        }
        if options.more && strict == Strict::Kit {
            judge_numbers(name, job, face, hand.modules, table);
        }
    }
}

/// Checks fills to a number that the independent layout reached, and the worth bound against the worth of that layout.
fn judge_numbers(name: &str, job: &Resolved, face: &Face, by_hand: usize, table: &mut Table) {
    if by_hand == 0 {
        return;
    }
    for number in [by_hand, by_hand.div_ceil(2)] {
        let said = verdict::number(job, &[face.id], number);
        let wrong = match &said {
            verdict::Number::Laid(laid) => *laid != number,
            verdict::Number::TooMany(most) => *most < number,
            verdict::Number::Refused(_) => true,
        };
        count(table, if number == by_hand { "number: all" } else { "number: half" }, wrong);
        if wrong {
            println!("NUMBER {name}, {}: {number} can be laid, said {said:?}", face.name);
        }
    }
    // Worth so much that flashing costs are negligible beside a module.
    let module = 1e7;
    if let Some(most) = verdict::most_worth(job, face.id, module) {
        let wrong = most < module * (by_hand as f64 - 0.5);
        count(table, "worth", wrong);
        if wrong {
            println!("WORTH {name}, {}: {by_hand} by hand, at most {:.2}", face.name, most / module);
        }
    }
}

fn judge_cuts(name: &str, job: &Resolved, table: &mut Table) {
    for cuts in verdict::least_cuts(job) {
        let mut dice = chalkcourse_tests::dice::Dice::new(3);
        let found = chalkcourse_tests::splits::split(&cuts.runs, &cuts.sticks, 400, &mut dice);
        let beaten = found.filter(|found| found.bought < cuts.bought - 1e-6);
        count(table, "cut list", beaten.is_some());
        if let Some(found) = beaten {
            let feet = |metres: f64| metres / 0.3048;
            println!(
                "CUTS {name}, {}: {:.0} ft by hand, proved least {:.0} ft",
                cuts.part,
                feet(found.bought),
                feet(cuts.bought)
            );
        }
    }
}

fn count(table: &mut Table, what: &'static str, wrong: bool) {
    let (asked, beaten) = table.more.entry(what).or_default();
    *asked += 1;
    *beaten += usize::from(wrong);
}

fn keep(options: &Options, name: &str, face: FaceId, strict: Strict, hand: &FoundLayout) {
    let Some(folder) = &options.keep else { return };
    let file = format!("{}-face-{face}-{strict:?}.chalk.json", name.replace([' ', '.'], "-").to_lowercase());
    if let Err(error) = chalkcourse_job::save(&kept::small(&hand.job), &folder.join(file)) {
        println!("not kept: {error}");
    }
}

fn print(name: &str, table: &Table) {
    println!("== {name}: {} faces of {} jobs", table.faces, table.jobs);
    for strict in [Strict::Kit, Strict::Stops] {
        println!(
            "   {strict:?}: claim beaten on {}, more by hand than was laid on {}",
            table.beaten.get(&strict).unwrap_or(&0),
            table.more_than_laid.get(&strict).unwrap_or(&0)
        );
    }
    println!("   filled jobs that check stops: {}", table.stopped);
    let closed = table.gaps.get(&0).copied().unwrap_or_default();
    println!(
        "   gap 0 on {closed} of {} ({:.0} %), wider than one module and 1 in 20 on {}; gaps {:?}",
        table.faces,
        100.0 * closed as f64 / table.faces.max(1) as f64,
        table.wide_gaps,
        table.gaps
    );
    for (what, (asked, beaten)) in &table.more {
        println!("   {what}: {beaten} of {asked} wrong");
    }
    println!("   {:.1} s of it filling, {:.1} s in all", table.seconds.0, table.seconds.1);
}
