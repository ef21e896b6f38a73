//! Fits from standard input to standard output, for `tests/peers/fit_against_references.py`: a list of cases
//! in, a list of answers out. With `repeat` an answer carries the seconds of its fastest run.

use chalkcourse_geometry::fit::{
    Aim, Allowed, Base, BlockRules, Cell, Constraint, Costs, FINE, RowRules, StackCosts, Tile, Want,
    fit_blocks, fit_number, fit_rows, fit_stacks, fit_worth,
};
use chalkcourse_geometry::{DVec2, Polygon, Rect};
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
struct Case {
    #[serde(default)]
    region: Vec<Polygon>,
    #[serde(default)]
    blocked: Vec<Polygon>,
    tile: Option<Tile>,
    #[serde(default)]
    cells: Vec<(usize, usize, f64)>,
    task: Task,
    #[serde(default)]
    repeat: usize,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Task {
    Rows(RowRules),
    Blocks(BlockRules),
    Worth(Costs),
    Number(usize, Aim),
    Stacks(StacksTask),
}

/// Stacks by value, or with a fixed number of modules.
#[derive(Deserialize)]
struct StacksTask {
    base: Base,
    costs: StackCosts,
    value: f64,
    number: Option<usize>,
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let cases: Vec<Case> = serde_json::from_reader(std::io::stdin())?;
    let mut answers = Vec::new();
    for case in &cases {
        let mut answer = run(case)?;
        let mut fastest = f64::INFINITY;
        for _ in 0..case.repeat {
            let start = std::time::Instant::now();
            answer = run(case)?;
            fastest = fastest.min(start.elapsed().as_secs_f64());
        }
        if let (true, Some(fields)) = (case.repeat > 0, answer.as_object_mut()) {
            fields.insert("seconds".to_owned(), json!(fastest));
        }
        answers.push(answer);
    }
    serde_json::to_writer(std::io::stdout(), &answers)?;
    Ok(())
}

fn run(case: &Case) -> Result<Value, Box<dyn std::error::Error>> {
    let blocked = case.blocked.iter().enumerate().map(|(i, s)| Constraint { id: i, shape: s.clone() });
    let allowed =
        Allowed { region: case.region.clone(), blocked: blocked.collect(), foot: None, tolerance: FINE };
    let tile = case.tile.unwrap_or(Tile { size: DVec2::ONE, gap: DVec2::ZERO });
    let cell = |&(column, row, value): &(usize, usize, f64)| {
        let at = DVec2::new(column as f64, row as f64) * tile.pitch();
        Cell { column, row, rect: Rect::at(at, tile.size), value }
    };
    let cells: Vec<Cell> = case.cells.iter().map(cell).collect();
    let go_on = || false;
    Ok(match &case.task {
        Task::Rows(rules) => {
            let fit = fit_rows(&allowed, &tile, rules, &go_on)?;
            let placed: Vec<DVec2> = fit.placed.iter().map(|p| p.rect.min).collect();
            json!({ "count": fit.count(), "bound": fit.bound, "placed": placed, "proof": fit.proof })
        }
        Task::Blocks(rules) => {
            let found = fit_blocks(&allowed, &tile, rules, &go_on)?;
            let rects: Vec<Rect> = found.blocks.iter().map(|b| b.rect).collect();
            json!({ "count": found.count, "bound": found.bound, "blocks": rects })
        }
        Task::Worth(costs) => json!(fit_worth(&cells, costs, &go_on)?),
        Task::Stacks(StacksTask { base, costs, value, number }) => {
            let want = number.map_or(Want::Worth(*value), |n| Want::Numbers(n, n));
            let found = fit_stacks(&allowed, &tile, *base, costs, want, &go_on)?;
            let best = found.found.first().ok_or("no such number of tiles stands anywhere")?;
            let worth =
                |cost: f64| if number.is_some() { -cost } else { value * best.placed.len() as f64 - cost };
            json!({ "worth": worth(best.cost), "bound": worth(best.least), "count": best.placed.len(), "sets": found.sets })
        }
        Task::Number(number, aim) => json!(fit_number(&cells, *number, aim, &go_on)?),
    })
}
