//! Regenerates `sample-roofs/` and `assets/schemas/`: run it after changing the built-in kit, rule book or price list,
//! or a file format. With the argument `findings` it also regenerates the expected findings of each sample in
//! `tests/data/findings/`: review every difference before you commit it.

use chalkcourse_job::save;
use chalkcourse_tests::{samples, top};
use std::process::ExitCode;

fn main() -> ExitCode {
    let write = || -> Result<(), Box<dyn std::error::Error>> {
        for (name, job) in samples::all() {
            save(&job, &top().join("sample-roofs").join(name))?;
        }
        if std::env::args().any(|argument| argument == "findings") {
            for (name, job) in samples::all() {
                let path = top().join("tests/data/findings").join(name.replace(".chalk.", ".findings."));
                chalkcourse_job::write_atomically(&path, chalkcourse_tests::findings_of(&job)?.as_bytes())?;
            }
        }
        for (name, schema) in chalkcourse_plan::schemas() {
            let path = top().join("assets/schemas").join(format!("{name}.schema.json"));
            chalkcourse_job::write_atomically(&path, format!("{schema:#}\n").as_bytes())?;
        }
        Ok(())
    };
    match write() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            use std::io::Write;
            let _ = writeln!(std::io::stderr(), "{error}");
            ExitCode::FAILURE
        }
    }
}
