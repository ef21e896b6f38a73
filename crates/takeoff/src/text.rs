use crate::money::show_money;
use crate::totals::cost_of;
use crate::words::{number, waste_words};
use crate::{Header, Line, Takeoff, show_amount, text_cuts};
use chalkcourse_geometry::Units;
use chalkcourse_job::{Group, Stage};
use chalkcourse_words::{pick, put, tell};
use rust_decimal::Decimal;
use std::fmt::Write;

/// What an order is sorted by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum By {
    /// What a part belongs to.
    #[default]
    Group,
    /// The stage of work that it is needed for.
    Stage,
}

/// The order to read, by group: each part with how it was counted and what it costs, then cut lists, crews, totals, what has
/// no price, findings, waivers and cautions.
pub fn to_text(takeoff: &Takeoff, header: &Header, units: Units) -> String {
    to_text_by(takeoff, header, units, By::Group)
}

/// Lines under their headings, by group or by stage of work; headings without a line are left out.
pub fn sections(takeoff: &Takeoff, by: By) -> Vec<(&'static str, Vec<&Line>)> {
    let of = |keep: &dyn Fn(&Line) -> bool| takeoff.lines.iter().filter(|line| keep(line)).collect();
    let sections: Vec<(&str, Vec<&Line>)> = match by {
        By::Group => Group::ALL.iter().map(|&g| (g.name(), of(&|line| line.group == g))).collect(),
        By::Stage => Stage::ALL.iter().map(|&s| (s.name(), of(&|line| line.stage == s))).collect(),
    };
    sections.into_iter().filter(|(_, lines)| !lines.is_empty()).collect()
}

/// The order to read, by group or by stage of work.
pub fn to_text_by(takeoff: &Takeoff, header: &Header, units: Units, by: By) -> String {
    let mut out = String::new();
    let title = tell!("Order for {}", "Pedido para {}", plain(&header.job));
    let rule = "=".repeat(title.chars().count());
    let mut say = |line: &str| {
        out.push_str(line.trim_end());
        out.push('\n');
    };
    say(&title);
    say(&rule);
    for (what, name) in [
        (pick("Kit", "Kit"), &header.kit),
        (pick("Rule book", "Libro de reglas"), &header.rule_book),
        (pick("Prices", "Precios"), &header.prices),
    ] {
        say(&format!("{what}: {}", plain(name)));
    }
    if takeoff.lines.is_empty() {
        say("");
        say(pick(
            "Nothing to order: no module is placed, or the kit has no parts.",
            "Nada que pedir: no hay módulos colocados, o el kit no tiene piezas.",
        ));
    }
    let widths = Widths::of(takeoff, units);
    for (heading, lines) in sections(takeoff, by) {
        say("");
        say(heading);
        let cost = cost_of(lines.iter().copied());
        for line in lines {
            say(&widths.row(takeoff, line, units));
            if let Some(words) = line.state_words(units) {
                say(&format!("      {}", plain(&words)));
            }
            if let Some(words) = waste_words(line) {
                say(&tell!("      waste: {}", "      desperdicio: {}", plain(&words)));
            }
            for term in &line.terms {
                if term.need > 0.0 {
                    say(&format!("      {}", plain(&term.words(units))));
                }
            }
            say(&tell!("      source: {}", "      fuente: {}", plain(&line.source)));
        }
        say(&format!("  {heading}: {} {}", show_money(cost), plain(&takeoff.currency)));
    }
    if !takeoff.off.is_empty() {
        say("");
        say(pick("Switched off, not ordered", "Omitidos, no se piden"));
        for line in &takeoff.off {
            let words = line.state_words(units).unwrap_or_default();
            say(&format!("  {}  {}  {}", plain(&line.number), plain(&line.name), plain(&words)));
        }
    }
    for line in text_cuts::lines(takeoff, units) {
        say(&plain(&line));
    }
    say("");
    for (what, amount) in money_rows(takeoff) {
        let currency = plain(&takeoff.currency);
        let amount = amount.map_or_else(
            || pick("not known", "no se sabe").to_owned(),
            |amount| format!("{} {currency}", show_money(amount)),
        );
        say(&format!("{what}: {amount}"));
    }
    let total = format!("{} {}", show_money(takeoff.totals.total), plain(&takeoff.currency));
    if takeoff.unpriced.is_empty() {
        say(&tell!("Total: {total}", "Total: {total}"));
    } else {
        say(&tell!(
            "Total of the parts that have a price: {total}",
            "Total de las piezas con precio: {total}"
        ));
        let missing = takeoff.unpriced.iter().map(|n| plain(n)).collect::<Vec<_>>().join(", ");
        say(&tell!("NO PRICE, and not in the total: {missing}", "SIN PRECIO, y fuera del total: {missing}"));
    }
    for (heading, entries) in [
        (pick("To know about the count", "Conviene saber del conteo"), &takeoff.notes),
        (pick("Findings", "Hallazgos"), &header.findings),
        (pick("Waived findings", "Hallazgos dispensados"), &header.waivers),
    ] {
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

/// What stands between the lines and the total, in the order in which it adds up. `None` where the price list does not say.
pub fn money_rows(takeoff: &Takeoff) -> [(&'static str, Option<Decimal>); 7] {
    let totals = &takeoff.totals;
    [
        (pick("Goods", "Materiales"), Some(totals.goods)),
        (pick("Labour", "Mano de obra"), Some(totals.labour)),
        (pick("Sales tax", "Impuesto de venta"), totals.tax),
        (pick("Delivery", "Entrega"), totals.delivery),
        (pick("Cost", "Costo"), Some(totals.cost)),
        (pick("Overhead", "Gastos generales"), Some(totals.overhead)),
        (pick("Profit", "Ganancia"), Some(totals.profit)),
    ]
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
            need: widest(&|line| need_words(line, units)),
            order: widest(&|line| plain(&line.packages_words(units))),
        }
    }

    fn row(&self, takeoff: &Takeoff, line: &Line, units: Units) -> String {
        let mut row = String::new();
        // Writing to a string can't fail.
        let _ = put!(
            row,
            "  {:<number$}  {:<name$}  need {:<need$}  order {:<order$}",
            "  {:<number$}  {:<name$}  se necesita {:<need$}  pedir {:<order$}",
            plain(&line.number),
            plain(&line.name),
            need_words(line, units),
            plain(&line.packages_words(units)),
            number = self.number,
            name = self.name,
            need = self.need,
            order = self.order,
        );
        let _ = match (line.price, line.cost) {
            (Some(price), Some(cost)) => {
                let (price, cost) = (show_money(price), show_money(cost));
                put!(row, "  at {price} = {cost} {}", "  a {price} = {cost} {}", plain(&takeoff.currency))
            }
            (Some(price), None) => {
                let price = show_money(price);
                put!(
                    row,
                    "  at {price}: too many to reckon a cost",
                    "  a {price}: demasiados para calcular un costo"
                )
            }
            _ => put!(row, "  NO PRICE", "  SIN PRECIO"),
        };
        row
    }
}

/// What a line needs, in words: "60", "60, with 2 % waste 62".
pub fn need_words(line: &Line, units: Units) -> String {
    let need = show_amount(line.need, line.unit, units);
    if line.waste > 0.0 {
        let with = show_amount(line.with_waste, line.unit, units);
        tell!(
            "{need}, with {} % waste {with}",
            "{need}, con {} % de desperdicio {with}",
            number(line.waste * 100.0)
        )
    } else {
        need
    }
}
