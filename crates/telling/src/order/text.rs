use super::money::show_money;
use super::words::{packages_words, state_words, term_words, waste_words};
use super::{Header, cuts};
use chalkcourse_geometry::Units;
use chalkcourse_job::{Group, Stage};
use chalkcourse_takeoff::{Line, Takeoff, cost_of, number, show_amount};
use chalkcourse_words as words;
use rust_decimal::Decimal;
use std::fmt::Write;

/// How an order is grouped.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum By {
    /// By the group of the part.
    #[default]
    Group,
    /// By the stage of work that needs it.
    Stage,
}

/// The order as text, by group: each part with how it was counted and what it costs, then cut lists, crews, totals, unpriced
/// parts, findings, waivers and cautions.
pub fn to_text(takeoff: &Takeoff, header: &Header, units: Units) -> String {
    to_text_by(takeoff, header, units, By::Group)
}

/// Lines under their headings, by group or by stage of work; headings without lines are left out.
pub fn sections(takeoff: &Takeoff, by: By) -> Vec<(&'static str, Vec<&Line>)> {
    let of = |keep: &dyn Fn(&Line) -> bool| takeoff.lines.iter().filter(|line| keep(line)).collect();
    let sections: Vec<(&str, Vec<&Line>)> = match by {
        By::Group => Group::ALL.iter().map(|&g| (g.name().now(), of(&|line| line.group == g))).collect(),
        By::Stage => Stage::ALL.iter().map(|&s| (s.name().now(), of(&|line| line.stage == s))).collect(),
    };
    sections.into_iter().filter(|(_, lines)| !lines.is_empty()).collect()
}

/// The order as text, by group or by stage of work.
pub fn to_text_by(takeoff: &Takeoff, header: &Header, units: Units, by: By) -> String {
    let mut out = String::new();
    let title = words::takeoff::order_for(&plain(&header.job));
    let rule = "=".repeat(title.chars().count());
    let mut say = |line: &str| {
        out.push_str(line.trim_end());
        out.push('\n');
    };
    say(&title);
    say(&rule);
    for (what, name) in [
        (words::common::KIT.now(), &header.kit),
        (words::common::RULE_BOOK.now(), &header.rule_book),
        (words::common::PRICES.now(), &header.prices),
    ] {
        say(&format!("{what}: {}", plain(name)));
    }
    if takeoff.lines.is_empty() {
        say("");
        say(words::common::NOTHING_TO_ORDER_NO_MODULE.now());
    }
    let widths = Widths::of(takeoff, units);
    for (heading, lines) in sections(takeoff, by) {
        say("");
        say(heading);
        let cost = cost_of(lines.iter().copied());
        for line in lines {
            say(&widths.row(takeoff, line, units));
            if let Some(words) = state_words(line, units) {
                say(&format!("      {}", plain(&words)));
            }
            if let Some(words) = waste_words(line) {
                say(&words::takeoff::waste(&plain(&words)));
            }
            for term in &line.terms {
                if term.need > 0.0 {
                    say(&format!("      {}", plain(&term_words(term, units))));
                }
            }
            say(&words::takeoff::source(&plain(&line.source.now())));
        }
        say(&format!("  {heading}: {} {}", show_money(cost), plain(&takeoff.currency)));
    }
    if !takeoff.off.is_empty() {
        say("");
        say(words::common::SWITCHED_OFF_NOT_ORDERED.now());
        for line in &takeoff.off {
            let words = state_words(line, units).unwrap_or_default();
            say(&format!("  {}  {}  {}", plain(&line.number), plain(&line.name.now()), plain(&words)));
        }
    }
    for line in cuts::lines(takeoff, units) {
        say(&plain(&line));
    }
    say("");
    for (what, amount) in money_rows(takeoff) {
        let currency = plain(&takeoff.currency);
        let amount = amount.map_or_else(
            || words::common::NOT_KNOWN.now().to_owned(),
            |amount| format!("{} {currency}", show_money(amount)),
        );
        say(&format!("{what}: {amount}"));
    }
    let total = format!("{} {}", show_money(takeoff.totals.total), plain(&takeoff.currency));
    if takeoff.unpriced.is_empty() {
        say(&words::takeoff::total(&total));
    } else {
        say(&words::takeoff::total_of_the_parts_that(&total));
        let missing = takeoff.unpriced.iter().map(|n| plain(n)).collect::<Vec<_>>().join(", ");
        say(&words::takeoff::no_price_and_not_in_the(&missing));
    }
    for (heading, entries) in header.remarks(takeoff) {
        say("");
        say(heading.now());
        for entry in entries {
            say(&format!("  - {}", plain(&entry)));
        }
    }
    say("");
    say(&plain(&header.caution));
    out
}

/// The amounts between the lines and the total, in the order they add up. `None` where the price list does not give one.
pub fn money_rows(takeoff: &Takeoff) -> [(&'static str, Option<Decimal>); 7] {
    let totals = &takeoff.totals;
    [
        (words::takeoff::GOODS.now(), Some(totals.goods)),
        (words::common::LABOUR.now(), Some(totals.labour)),
        (words::takeoff::SALES_TAX.now(), totals.tax),
        (words::common::DELIVERY.now(), totals.delivery),
        (words::common::COST.now(), Some(totals.cost)),
        (words::takeoff::OVERHEAD.now(), Some(totals.overhead)),
        (words::common::PROFIT.now(), Some(totals.profit)),
    ]
}

/// Strips control characters, which could move a terminal's cursor or start a new line.
pub(super) fn plain(text: &str) -> String {
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
            name: widest(&|line| plain(&line.name.now())),
            need: widest(&|line| need_words(line, units)),
            order: widest(&|line| plain(&packages_words(line, units))),
        }
    }

    fn row(&self, takeoff: &Takeoff, line: &Line, units: Units) -> String {
        let mut row = String::new();
        // Writing to a string can't fail.
        let _ = write!(
            row,
            "{}",
            words::takeoff::need_order_2(
                &format_args!("{:<number$}", plain(&line.number), number = self.number),
                &format_args!("{:<name$}", plain(&line.name.now()), name = self.name),
                &format_args!("{:<need$}", need_words(line, units), need = self.need),
                &format_args!("{:<order$}", plain(&packages_words(line, units)), order = self.order)
            )
        );
        let _ = match (line.price, line.cost) {
            (Some(price), Some(cost)) => {
                let (price, cost) = (show_money(price), show_money(cost));
                write!(row, "{}", words::takeoff::at(&price, &cost, &plain(&takeoff.currency)))
            }
            (Some(price), None) => {
                let price = show_money(price);
                write!(row, "{}", words::takeoff::at_too_many_to_reckon(&price))
            }
            _ => write!(row, "{}", words::takeoff::NO_PRICE),
        };
        row
    }
}

/// The need of a line in words: "60", "60, with 2 % waste 62".
pub fn need_words(line: &Line, units: Units) -> String {
    let need = show_amount(line.need, line.unit, units);
    if line.waste > 0.0 {
        let with = show_amount(line.with_waste, line.unit, units);
        words::takeoff::with_waste(&need, &number(line.waste * 100.0), &with)
    } else {
        need
    }
}
