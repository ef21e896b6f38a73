//! Divides arrays from standard input into circuits and prints the answers, both as JSON, for comparison with other solvers.

#![allow(clippy::print_stdout, reason = "an example program prints")]

use chalkcourse_wiring::paths::{Effort, Link, Problem, divide};
use serde::{Deserialize, Serialize};
use std::io::Read;
use std::time::Instant;

/// Places of modules in tenths of a millimetre, how far leads reach, the one length of extension leads, and the box.
#[derive(Deserialize)]
struct Array {
    places: Vec<(i64, i64)>,
    reach: u32,
    extension: u32,
    home: (i64, i64),
    least: usize,
    most: usize,
}

#[derive(Serialize)]
struct Divided {
    paths: usize,
    leads: u64,
    least_leads: u64,
    length: u64,
    least_length: u64,
    seconds: f64,
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    let arrays: Vec<Array> = serde_json::from_str(&text)?;
    let effort = if std::env::args().any(|word| word == "first") { Effort::FIRST } else { Effort::WHOLE };
    let mut all = Vec::new();
    for Array { places, reach, extension, home, least, most } in arrays {
        let way = |a: (i64, i64), b: (i64, i64)| (a.0.abs_diff(b.0) + a.1.abs_diff(b.1)) as u32;
        let link = |a: (i64, i64), b: (i64, i64)| {
            let length = way(a, b);
            (a != b).then(|| Link { leads: length.saturating_sub(reach).div_ceil(extension), length })
        };
        let problem = Problem {
            links: places.iter().map(|a| places.iter().map(|b| link(*a, *b)).collect()).collect(),
            home: places.iter().map(|a| way(*a, home)).collect(),
            both_ends: true,
            least,
            most,
            orders: vec![(0..places.len()).collect()],
        };
        let start = Instant::now();
        let answer = divide(&problem, effort);
        let seconds = start.elapsed().as_secs_f64();
        all.push(answer.map(|answer| Divided {
            paths: answer.paths.len(),
            leads: answer.leads,
            least_leads: answer.least_leads,
            length: answer.length,
            least_length: answer.least_length,
            seconds,
        }));
    }
    println!("{}", serde_json::to_string(&all)?);
    Ok(())
}
