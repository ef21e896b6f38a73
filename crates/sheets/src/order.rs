//! The order on paper.

use crate::page::{Column, Part, Row, Sheet};
use chalkcourse_geometry::Units;
use chalkcourse_job::Resolved;
use chalkcourse_plan::{By, Plan, order_header, standing};
use chalkcourse_takeoff::{Line, Takeoff, cost_of, cut_lists, money_rows, need_words, sections, show_money};
use chalkcourse_words::{pick, tell};
use rust_decimal::Decimal;

/// What to order, by part or by stage of work: each line with how it was counted, then cut lists, crews, totals, what has no
/// price, findings, waivers and cautions. A PDF file on letter paper.
pub(crate) fn order_sheet(job: &Resolved, plan: &Plan, by: By) -> Sheet {
    let (takeoff, units) = (&plan.takeoff, job.units);
    let header = order_header(job, plan);
    let mut sheet = Sheet {
        title: tell!("Order for {}", "Pedido para {}", job.name),
        under: vec![
            job.site.address.clone(),
            tell!("Kit: {}", "Kit: {}", header.kit),
            tell!("Rule book: {}", "Libro de reglas: {}", header.rule_book),
            tell!(
                "Prices: {}; all amounts in {}",
                "Precios: {}; todos los montos en {}",
                header.prices,
                takeoff.currency
            ),
        ],
        standing: standing(job, plan),
        foot: header.caution.clone(),
        parts: Vec::new(),
    };
    sheet.under.retain(|line| !line.trim().is_empty());
    let parts = &mut sheet.parts;
    if takeoff.lines.is_empty() {
        parts.push(Part::Text(
            pick(
                "Nothing to order: no module is placed, or the kit has no parts.",
                "Nada que pedir: no hay módulos colocados, o el kit no tiene piezas.",
            )
            .to_owned(),
        ));
    }
    for (heading, lines) in sections(takeoff, by) {
        parts.push(Part::Heading(heading.to_owned()));
        parts.push(lines_table(heading, &lines, units));
    }
    if !takeoff.off.is_empty() {
        parts.push(Part::Heading(pick("Switched off, not ordered", "Omitidos, no se piden").to_owned()));
        let words = |line: &Line| line.state_words(units).unwrap_or_default();
        parts.push(Part::Table {
            columns: vec![
                Column::words(pick("Number", "Número"), 1.0),
                Column::words(pick("What", "Qué"), 3.0),
                Column::words(pick("Why", "Por qué"), 3.0),
            ],
            rows: takeoff
                .off
                .iter()
                .map(|line| Row::Cells(vec![line.number.clone(), line.name.clone(), words(line)]))
                .collect(),
        });
    }
    parts.push(Part::Heading(pick("Totals", "Totales").to_owned()));
    parts.push(totals_table(takeoff));
    if !takeoff.unpriced.is_empty() {
        parts.push(Part::Caution(tell!(
            "NO PRICE, and not in the total: {}",
            "SIN PRECIO, y fuera del total: {}",
            takeoff.unpriced.join(", ")
        )));
    }
    parts.extend(cuts(takeoff, units));
    parts.extend(crews(takeoff));
    for (heading, entries) in [
        (pick("To know about the count", "Conviene saber del conteo"), &takeoff.notes),
        (pick("Findings", "Hallazgos"), &header.findings),
        (pick("Waived findings", "Hallazgos dispensados"), &header.waivers),
    ] {
        if !entries.is_empty() {
            parts.push(Part::Heading(heading.to_owned()));
            parts.extend(entries.iter().map(|entry| Part::Text(format!("– {entry}"))));
        }
    }
    parts.push(Part::Caution(header.caution.clone()));
    sheet
}

fn lines_table(heading: &str, lines: &[&Line], units: Units) -> Part {
    let mut rows = Vec::new();
    for line in lines {
        let money = |amount: Option<Decimal>, none: &str| amount.map_or_else(|| none.to_owned(), show_money);
        let cost = if line.price.is_some() { pick("too large", "demasiado") } else { "" };
        rows.push(Row::Cells(vec![
            line.number.clone(),
            line.name.clone(),
            need_words(line, units),
            line.packages_words(units),
            money(line.price, pick("NO PRICE", "SIN PRECIO")),
            money(line.cost, cost),
        ]));
        rows.extend(line.state_words(units).map(Row::Note));
        let counted = line.count_words(units);
        let apart = if counted.is_empty() { "" } else { "; " };
        rows.push(Row::Note(format!("{counted}{apart}{}", line.source)));
    }
    let mut cells = vec![String::new(); 6];
    cells[1] = heading.to_owned();
    cells[5] = show_money(cost_of(lines.iter().copied()));
    rows.push(Row::Sum(cells));
    Part::Table {
        columns: vec![
            Column::words(pick("Number", "Número"), 0.9),
            Column::words(pick("What", "Qué"), 2.9),
            Column::words(pick("Need", "Se necesita"), 1.7),
            Column::words(pick("Order", "Pedir"), 1.7),
            Column::numbers(pick("Price", "Precio"), 0.9),
            Column::numbers(pick("Cost", "Costo"), 1.0),
        ],
        rows,
    }
}

fn totals_table(takeoff: &Takeoff) -> Part {
    let total = if takeoff.unpriced.is_empty() {
        pick("Total", "Total").to_owned()
    } else {
        pick("Total of the parts that have a price", "Total de las piezas con precio").to_owned()
    };
    let mut rows: Vec<Row> = money_rows(takeoff)
        .into_iter()
        .map(|(what, amount)| match amount {
            Some(amount) => Row::Cells(vec![what.to_owned(), show_money(amount)]),
            None => Row::Cells(vec![what.to_owned(), pick("not known", "no se sabe").to_owned()]),
        })
        .collect();
    rows.push(Row::Sum(vec![total, format!("{} {}", takeoff.currency, show_money(takeoff.totals.total))]));
    Part::Table { columns: vec![Column::words("", 4.0), Column::numbers(pick("Amount", "Monto"), 1.5)], rows }
}

fn cuts(takeoff: &Takeoff, units: Units) -> Vec<Part> {
    let lists = cut_lists(takeoff, units);
    if lists.is_empty() {
        return Vec::new();
    }
    let mut rows = Vec::new();
    for (number, name, cuts) in lists {
        rows.push(Row::Cells(vec![number.to_owned(), name.to_owned()]));
        rows.extend(cuts.into_iter().map(Row::Note));
    }
    let columns = vec![
        Column::words(pick("Number", "Número"), 1.0),
        Column::words(pick("How it is cut", "Cómo se corta"), 8.0),
    ];
    vec![Part::Heading(pick("Cut list", "Lista de cortes").to_owned()), Part::Table { columns, rows }]
}

fn crews(takeoff: &Takeoff) -> Vec<Part> {
    if takeoff.crews.is_empty() {
        return Vec::new();
    }
    let rows = takeoff.crews.iter().map(|crew| {
        Row::Cells(vec![
            crew.crew.clone(),
            crew.people.to_string(),
            format!("{:.1}", crew.person_hours),
            format!("{:.1}", crew.hours),
        ])
    });
    let columns = vec![
        Column::words(pick("Crew", "Cuadrilla"), 4.0),
        Column::numbers(pick("People", "Personas"), 1.0),
        Column::numbers(pick("Hours of work", "Horas de trabajo"), 1.5),
        Column::numbers(pick("Hours on the clock", "Horas de reloj"), 1.5),
    ];
    vec![Part::Heading(pick("Crews", "Cuadrillas").to_owned()), Part::Table { columns, rows: rows.collect() }]
}
