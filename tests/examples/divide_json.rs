//! Divides arrays from standard input into circuits and prints the answers, both as JSON, for comparison with other solvers.

#![allow(clippy::print_stdout, reason = "an example program prints")]

use chalkcourse_tests::arrays::Array;
use chalkcourse_wiring::paths::{Effort, divide};
use serde::Serialize;
use std::io::Read;
use std::time::Instant;

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
    for array in arrays {
        let problem = array.problem();
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
