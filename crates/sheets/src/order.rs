//! The order on paper.

use crate::page::{Column, Part, Row, Sheet};
use chalkcourse_geometry::Units;
use chalkcourse_job::Resolved;
use chalkcourse_plan::{By, Plan, order_header, standing};
use chalkcourse_takeoff::{Line, Takeoff, cost_of};
use chalkcourse_telling::order::{
    count_words, cut_lists, money_rows, need_words, packages_words, sections, show_money, state_words,
};
use chalkcourse_words as words;
use rust_decimal::Decimal;

/// The order by part or by stage of work: each line with how it was counted, then cut lists, crews, totals, unpriced parts,
/// findings, waivers and cautions. Letter paper.
pub(crate) fn order_sheet(job: &Resolved, plan: &Plan, by: By) -> Sheet {
    let (takeoff, units) = (&plan.takeoff, job.units);
    let header = order_header(job, plan);
    let mut sheet = Sheet {
        title: words::sheets::order_for(&job.name),
        under: vec![
            job.site.address.clone(),
            words::sheets::kit(&header.kit),
            words::sheets::rule_book(&header.rule_book),
            words::sheets::prices_all_amounts_in(&header.prices, &takeoff.currency),
        ],
        standing: standing(job, plan),
        foot: header.caution.clone(),
        landscape: false,
        parts: Vec::new(),
    };
    sheet.under.retain(|line| !line.trim().is_empty());
    let parts = &mut sheet.parts;
    if takeoff.lines.is_empty() {
        parts.push(Part::Text(words::common::NOTHING_TO_ORDER_NO_MODULE.now().to_owned()));
    }
    for (heading, lines) in sections(takeoff, by) {
        parts.push(Part::Heading(heading.to_owned()));
        parts.push(lines_table(heading, &lines, units));
    }
    if !takeoff.off.is_empty() {
        parts.push(Part::Heading(words::common::SWITCHED_OFF_NOT_ORDERED.now().to_owned()));
        let words = |line: &Line| state_words(line, units).unwrap_or_default();
        parts.push(Part::Table {
            columns: vec![
                Column::words(words::common::NUMBER.now(), 1.0),
                Column::words(words::common::WHAT.now(), 3.0),
                Column::words(words::sheets::WHY.now(), 3.0),
            ],
            rows: takeoff
                .off
                .iter()
                .map(|line| Row::Cells(vec![line.number.clone(), line.name.clone().into(), words(line)]))
                .collect(),
        });
    }
    parts.push(Part::Heading(words::sheets::TOTALS.now().to_owned()));
    parts.push(totals_table(takeoff));
    if !takeoff.unpriced.is_empty() {
        parts.push(Part::Caution(words::sheets::no_price_and_not_in(&takeoff.unpriced.join(", "))));
    }
    parts.extend(cuts(takeoff, units));
    parts.extend(crews(takeoff));
    for (heading, entries) in header.remarks(takeoff) {
        parts.push(Part::Heading(heading.into()));
        parts.extend(entries.iter().map(|entry| Part::Text(format!("– {entry}"))));
    }
    parts.push(Part::Caution(header.caution));
    sheet
}

fn lines_table(heading: &str, lines: &[&Line], units: Units) -> Part {
    let mut rows = Vec::new();
    for line in lines {
        let money = |amount: Option<Decimal>, none: &str| amount.map_or_else(|| none.to_owned(), show_money);
        let cost = if line.price.is_some() { words::sheets::TOO_LARGE.now() } else { "" };
        rows.push(Row::Cells(vec![
            line.number.clone(),
            line.name.clone().into(),
            need_words(line, units),
            packages_words(line, units),
            money(line.price, words::sheets::NO_PRICE.now()),
            money(line.cost, cost),
        ]));
        rows.extend(state_words(line, units).map(Row::Note));
        let counted = count_words(line, units);
        let apart = if counted.is_empty() { "" } else { "; " };
        rows.push(Row::Note(format!("{counted}{apart}{}", line.source)));
    }
    let mut cells = vec![String::new(); 6];
    cells[1] = heading.to_owned();
    cells[5] = show_money(cost_of(lines.iter().copied()));
    rows.push(Row::Sum(cells));
    Part::Table {
        columns: vec![
            Column::words(words::common::NUMBER.now(), 0.9),
            Column::words(words::common::WHAT.now(), 2.9),
            Column::words(words::common::NEED.now(), 1.7),
            Column::words(words::common::ORDER_2.now(), 1.7),
            Column::numbers(words::common::PRICE.now(), 0.9),
            Column::numbers(words::common::COST.now(), 1.0),
        ],
        rows,
    }
}

fn totals_table(takeoff: &Takeoff) -> Part {
    let total = if takeoff.unpriced.is_empty() {
        words::sheets::TOTAL.now().to_owned()
    } else {
        words::sheets::TOTAL_OF_THE_PARTS_THAT.now().to_owned()
    };
    let mut rows: Vec<Row> = money_rows(takeoff)
        .into_iter()
        .map(|(what, amount)| match amount {
            Some(amount) => Row::Cells(vec![what.to_owned(), show_money(amount)]),
            None => Row::Cells(vec![what.to_owned(), words::common::NOT_KNOWN.now().to_owned()]),
        })
        .collect();
    rows.push(Row::Sum(vec![total, format!("{} {}", takeoff.currency, show_money(takeoff.totals.total))]));
    Part::Table {
        columns: vec![Column::words("", 4.0), Column::numbers(words::sheets::AMOUNT.now(), 1.5)],
        rows,
    }
}

fn cuts(takeoff: &Takeoff, units: Units) -> Vec<Part> {
    let lists = cut_lists(takeoff, units);
    if lists.is_empty() {
        return Vec::new();
    }
    let mut rows = Vec::new();
    for (number, name, cuts) in lists {
        rows.push(Row::Cells(vec![number.to_owned(), name.to_string()]));
        rows.extend(cuts.into_iter().map(Row::Note));
    }
    let columns = vec![
        Column::words(words::common::NUMBER.now(), 1.0),
        Column::words(words::sheets::HOW_IT_IS_CUT.now(), 8.0),
    ];
    vec![Part::Heading(words::common::CUT_LIST.now().to_owned()), Part::Table { columns, rows }]
}

fn crews(takeoff: &Takeoff) -> Vec<Part> {
    if takeoff.crews.is_empty() {
        return Vec::new();
    }
    let rows = takeoff.crews.iter().map(|crew| {
        Row::Cells(vec![
            crew.crew.clone().into(),
            crew.people.to_string(),
            format!("{:.1}", crew.person_hours),
            format!("{:.1}", crew.hours),
        ])
    });
    let columns = vec![
        Column::words(words::sheets::CREW.now(), 4.0),
        Column::numbers(words::sheets::PEOPLE.now(), 1.0),
        Column::numbers(words::sheets::HOURS_OF_WORK.now(), 1.5),
        Column::numbers(words::sheets::HOURS_ON_THE_CLOCK.now(), 1.5),
    ];
    vec![Part::Heading(words::common::CREWS.now().to_owned()), Part::Table { columns, rows: rows.collect() }]
}
