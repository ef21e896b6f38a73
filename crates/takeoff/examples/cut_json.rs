//! Solves cutting problems from standard input and prints the answers, both as JSON, for comparison with other solvers.

#![allow(clippy::print_stdout, reason = "an example program prints")]

use chalkcourse_takeoff::cutting::{Cutting, cut};
use serde::{Deserialize, Serialize};
use std::io::Read;
use std::time::Instant;

#[derive(Deserialize)]
struct Problem {
    pieces: Vec<(u32, u32)>,
    stocks: Vec<u32>,
    kerf: u32,
}

#[derive(Serialize)]
struct Solved {
    bought: u64,
    least: u64,
    sticks: usize,
    seconds: f64,
}

/// Far more than a drag can wait for.
const STEPS: u64 = 50_000_000;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    let problems: Vec<Problem> = serde_json::from_str(&text)?;
    let solved: Vec<Solved> = problems
        .into_iter()
        .map(|Problem { pieces, stocks, kerf }| {
            let start = Instant::now();
            let answer = cut(&Cutting { pieces, stocks, kerf }, STEPS);
            Solved {
                bought: answer.bought,
                least: answer.least,
                sticks: answer.sticks.len(),
                seconds: start.elapsed().as_secs_f64(),
            }
        })
        .collect();
    println!("{}", serde_json::to_string(&solved)?);
    Ok(())
}
