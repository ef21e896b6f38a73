//! Malicious files: valid ones mutated at random (the same on every run), known tricks, and whatever the fuzzers found
//! (`tests/data/hostile`, see `tests/fuzz/`).

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use chalkcourse_tests::{hostile, top};
use std::path::PathBuf;
use std::time::{Duration, Instant};

/// Time limit for one small file, in a debug build on a busy machine.
const PATIENCE: Duration = Duration::from_secs(10);

fn run(name: &str, import: hostile::Importer, bytes: &[u8]) {
    let begun = Instant::now();
    import(bytes);
    let took = begun.elapsed();
    assert!(took < PATIENCE, "{name}: {took:?} for {} bytes", bytes.len());
}

fn seeds(name: &str) -> Vec<PathBuf> {
    let folder = top().join("tests/fuzz/seeds").join(name);
    let mut files: Vec<PathBuf> =
        std::fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    assert!(!files.is_empty(), "{}", folder.display());
    files
}

/// Pseudo-random numbers, the same on every run (xorshift of Marsaglia, 2003).
struct Dice(u64);

impl Dice {
    fn below(&mut self, n: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % n.max(1) as u64) as usize
    }
}

const WORDS: [&str; 14] = [
    "null",
    "-1",
    "1e308",
    "-0.0",
    "1e-320",
    "0",
    "4294967295",
    "\"\"",
    "[]",
    "{}",
    "true",
    "[[[",
    "99999999999",
    "\u{0}",
];

/// A file mutated in a few places: cut, duplicated or overwritten.
fn mutated(dice: &mut Dice, whole: &[u8]) -> Vec<u8> {
    let mut bytes = whole.to_vec();
    for _ in 0..=dice.below(4) {
        let at = dice.below(bytes.len() + 1);
        let end = (at + dice.below(24)).min(bytes.len());
        match dice.below(5) {
            0 => bytes.truncate(at),
            1 => drop(bytes.drain(at..end)),
            2 => {
                let piece = bytes[at..end].to_vec();
                bytes.splice(at..at, piece);
            }
            3 => drop(bytes.splice(at..end, WORDS[dice.below(WORDS.len())].bytes())),
            // replace a number by another one
            _ => {
                if let Some(digit) = bytes[at..].iter().position(u8::is_ascii_digit) {
                    let end = bytes[at + digit..].iter().take_while(|b| b.is_ascii_digit()).count();
                    bytes.splice(at + digit..at + digit + end, WORDS[1 + dice.below(6)].bytes());
                }
            }
        }
    }
    bytes
}

#[test]
fn mutated_files_end_in_an_error_or_a_roof() {
    let mut dice = Dice(0x5eed_0fc4_a1c0_de01);
    for (name, import) in hostile::ALL {
        for seed in seeds(name) {
            let whole = std::fs::read(&seed).unwrap();
            run(name, import, &whole);
            for _ in 0..120 {
                run(name, import, &mutated(&mut dice, &whole));
            }
        }
    }
}

#[test]
fn known_tricks_do_no_harm() {
    let deep = format!("{}{}", "[".repeat(200_000), "]".repeat(200_000));
    let deep_objects = "{\"geometry\":".repeat(100_000);
    let wide = format!("{{\"type\":\"FeatureCollection\",\"features\":[{}]}}", vec!["{}"; 100_000].join(","));
    let long = format!("\"{}\"", "a".repeat(5_000_000));
    let many: Vec<String> =
        (0..60_000).map(|i| format!("[{},{}]", f64::from(i) * 1e-6, f64::from(i % 2) * 1e-6)).collect();
    let comb = format!("{{\"type\":\"Polygon\",\"coordinates\":[[{}]]}}", many.join(","));
    let head = r#"{"type":"CityJSON","version":"2.0","transform":{"scale":[1,1,1],"translate":[0,0,0]},"vertices":[[0,0,0]],"#;
    let nulls = format!(
        r#"{head}"CityObjects":{{"a":{{"type":"Building","geometry":[{{"type":"Solid","lod":"2","boundaries":[[{}]],"semantics":{{"surfaces":[{{"type":"RoofSurface"}}],"values":[[0]]}}}}]}}}}}}"#,
        vec!["[[0,0,0]]"; 50_000].join(",")
    );
    let objects: Vec<String> =
        (0..50_000).map(|i| format!(r#""{i}":{{"type":"Building","parents":["{}"]}}"#, i + 1)).collect();
    let chain = format!("{head}\"CityObjects\":{{{}}}}}", objects.join(","));
    for (name, import) in hostile::ALL {
        for trick in [&deep, &deep_objects, &wide, &long, &comb, &nulls, &chain] {
            run(name, import, trick.as_bytes());
        }
        run(name, import, b"\xef\xbb\xbf{}");
        run(name, import, &[0xff; 64]);
    }
}

#[test]
fn fuzzer_findings_stay_fixed() {
    for (name, import) in hostile::ALL {
        let Ok(folder) = std::fs::read_dir(top().join("tests/data/hostile").join(name)) else { continue };
        for entry in folder {
            let path = entry.unwrap().path();
            run(&path.display().to_string(), import, &std::fs::read(&path).unwrap());
        }
    }
}
