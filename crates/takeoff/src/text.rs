use crate::words::number;
use crate::{Header, Line, Takeoff, show_amount};
use chalkcourse_geometry::Units;
use chalkcourse_job::Group;
use std::fmt::Write;

/// The order to read: by group, each part with how it was counted and what it costs, then the total, what has no price,
/// findings, waivers and cautions.
pub fn to_text(takeoff: &Takeoff, header: &Header, units: Units) -> String {
    let mut out = String::new();
    let title = format!("Order for {}", plain(&header.job));
    let rule = "=".repeat(title.chars().count());
    let mut say = |line: &str| {
        out.push_str(line.trim_end());
        out.push('\n');
    };
    say(&title);
    say(&rule);
    for (what, name) in [("Kit", &header.kit), ("Rule book", &header.rule_book), ("Prices", &header.prices)] {
        say(&format!("{what}: {}", plain(name)));
    }
    if takeoff.lines.is_empty() {
        say("");
        say("Nothing to order: no module is placed, or the kit has no parts.");
    }
    let widths = Widths::of(takeoff, units);
    for group in Group::ALL {
        let lines: Vec<&Line> = takeoff.lines.iter().filter(|line| line.group == group).collect();
        if lines.is_empty() {
            continue;
        }
        say("");
        say(group.name());
        for line in lines {
            say(&widths.row(takeoff, line, units));
            for term in &line.terms {
                if term.need > 0.0 {
                    say(&format!("      {}", plain(&term.words(units))));
                }
            }
            say(&format!("      source: {}", plain(&line.source)));
        }
    }
    say("");
    let total = format!("{} {}", takeoff.priced_total, plain(&takeoff.currency));
    if takeoff.unpriced.is_empty() {
        say(&format!("Total: {total}"));
    } else {
        say(&format!("Total of the parts that have a price: {total}"));
        let missing = takeoff.unpriced.iter().map(|n| plain(n)).collect::<Vec<_>>().join(", ");
        say(&format!("NO PRICE, and not in the total: {missing}"));
    }
    for (heading, entries) in [("Findings", &header.findings), ("Waived findings", &header.waivers)] {
        if !entries.is_empty() {
            say("");
            say(heading);
            for entry in entries {
                say(&format!("  - {}", plain(entry)));
            }
        }
    }
    say("");
    say(&plain(&header.caution));
    out
}

/// Without characters that move a terminal's cursor or start a line.
pub(crate) fn plain(text: &str) -> String {
    text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect()
}

/// Widths of the columns, in characters.
struct Widths {
    number: usize,
    name: usize,
    need: usize,
    order: usize,
}

impl Widths {
    fn of(takeoff: &Takeoff, units: Units) -> Self {
        let widest = |text: &dyn Fn(&Line) -> String| {
            takeoff.lines.iter().map(|line| text(line).chars().count()).max().unwrap_or(0)
        };
        Self {
            number: widest(&|line| plain(&line.number)),
            name: widest(&|line| plain(&line.name)),
            need: widest(&|line| need(line, units)),
            order: widest(&|line| plain(&line.packages_words(units))),
        }
    }

    fn row(&self, takeoff: &Takeoff, line: &Line, units: Units) -> String {
        let mut row = String::new();
        // Writing to a string can't fail.
        let _ = write!(
            row,
            "  {:<number$}  {:<name$}  need {:<need$}  order {:<order$}",
            plain(&line.number),
            plain(&line.name),
            need(line, units),
            plain(&line.packages_words(units)),
            number = self.number,
            name = self.name,
            need = self.need,
            order = self.order,
        );
        let _ = match (line.price, line.cost) {
            (Some(price), Some(cost)) => write!(row, "  at {price} = {cost} {}", plain(&takeoff.currency)),
            (Some(price), None) => write!(row, "  at {price}: too many to reckon a cost"),
            _ => write!(row, "  NO PRICE"),
        };
        row
    }
}

/// "60, 62 with 2 % waste".
fn need(line: &Line, units: Units) -> String {
    let need = show_amount(line.need, line.unit, units);
    if line.waste > 0.0 {
        let with = show_amount(line.with_waste, line.unit, units);
        format!("{need}, with {} % waste {with}", number(line.waste * 100.0))
    } else {
        need
    }
}
