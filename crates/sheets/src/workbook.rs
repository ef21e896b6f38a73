//! The order as a workbook (Office Open XML, ECMA-376), with formulas for all sums.

use crate::SheetError;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Group, Profit, Resolved, Stage};
use chalkcourse_plan::{NOT_TO_BUILD, Plan, Standing, order_header, standing};
use chalkcourse_takeoff::{Line, Takeoff};
use chalkcourse_telling::order::{count_words, cut_lists, money_rows, spreadsheet_unit, state_words};
use chalkcourse_words::{self as words, Say};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use rust_xlsxwriter::{Color, Format, FormatAlign, Formula, Workbook, Worksheet};

/// Name of the sheet with the lines. Formulas on other sheets refer to it, so it is a single word.
const ORDER: Say = words::common::ORDER;
/// Name of the sheet with notes.
const KNOWN: Say = words::sheets::TO_KNOW;
const COLUMNS: [(Say, f64); 18] = [
    (words::common::GROUP, 16.0),
    (words::sheets::STAGE, 13.0),
    (words::common::NUMBER, 11.0),
    (words::common::WHAT, 38.0),
    (words::common::NEED, 10.0),
    (words::sheets::UNIT, 7.0),
    (words::sheets::WASTE, 7.0),
    (words::sheets::WITH_WASTE, 11.0),
    (words::sheets::FROM_STOCK, 10.0),
    (words::sheets::PACKAGES, 9.5),
    (words::common::PACKAGE, 10.0),
    (words::sheets::HOLDS, 9.0),
    (words::common::PRICE, 11.0),
    (words::common::COST, 12.0),
    (words::sheets::TAXED, 7.0),
    (words::sheets::CHANGED_BY_HAND, 30.0),
    (words::sheets::HOW_IT_IS_COUNTED, 60.0),
    (words::common::SOURCE, 40.0),
];
const PACKAGES: u16 = 9;
const PRICE: u16 = 12;
const COST: u16 = 13;
/// Rows above the lines: title, what the order is for, table header.
const HEAD: u32 = 3;
const NO_PRICE: Say = words::common::NO_PRICE;
const NOT_KNOWN: Say = words::common::NOT_KNOWN;
const TAXED: Say = words::common::YES;
const COST_IN: Say = words::common::COST;

struct Formats {
    title: Format,
    soft: Format,
    head: Format,
    text: Format,
    amount: Format,
    whole: Format,
    percent: Format,
    money: Format,
    missing: Format,
    sum: Format,
    sum_money: Format,
}

impl Formats {
    fn new() -> Self {
        let base = || Format::new().set_align(FormatAlign::Top);
        let money = "#,##0.00";
        Self {
            title: Format::new().set_bold().set_font_size(14),
            soft: Format::new().set_font_color(Color::RGB(0x54_58_60)),
            head: Format::new()
                .set_bold()
                .set_text_wrap()
                .set_align(FormatAlign::Top)
                .set_border_bottom(rust_xlsxwriter::FormatBorder::Medium),
            text: base().set_text_wrap(),
            amount: base().set_num_format("#,##0.###"),
            whole: base().set_num_format("#,##0"),
            percent: base().set_num_format("0.0 %"),
            money: base().set_num_format(money),
            missing: base().set_bold().set_font_color(Color::RGB(0xa0_1c_1c)),
            sum: base().set_bold().set_border_top(rust_xlsxwriter::FormatBorder::Thin),
            sum_money: base()
                .set_bold()
                .set_num_format(money)
                .set_border_top(rust_xlsxwriter::FormatBorder::Thin),
        }
    }
}

/// The order as a workbook: the lines with their totals, the cost by stage and by group, the cut list, and a sheet of notes.
/// Costs and totals are formulas with the exact amounts cached for readers that do not recalculate; names are always text,
/// whatever they begin with. Page setup for printing is included.
///
/// # Errors
/// [`SheetError`] if the writer fails: with more lines than a workbook has rows.
pub(crate) fn order_workbook(job: &Resolved, plan: &Plan) -> Result<Vec<u8>, SheetError> {
    let formats = Formats::new();
    let mut workbook = Workbook::new();
    let takeoff = &plan.takeoff;
    let rows = Rows {
        first: HEAD,
        last: HEAD + u32::try_from(takeoff.lines.len()).unwrap_or(u32::MAX - HEAD).max(1) - 1,
    };
    let standing = standing(job, plan);
    order(workbook.add_worksheet(), job, takeoff, &formats, rows, &standing)?;
    costs(workbook.add_worksheet(), takeoff, &formats, rows)?;
    cuts(workbook.add_worksheet(), takeoff, job.units, &formats)?;
    notes_sheet(workbook.add_worksheet(), job, plan, &formats)?;
    if !standing.stops.is_empty() {
        for sheet in workbook.worksheets_mut() {
            // Header of each printed page; the stop findings do not all fit there.
            let see = words::sheets::see(&KNOWN.now());
            sheet.set_header(format!("&C&\"-,Bold\"{}: &\"-,Regular\"{see}", NOT_TO_BUILD.now()));
        }
    }
    Ok(workbook.save_to_buffer()?)
}

/// First and last row of the lines, 0-based.
#[derive(Clone, Copy)]
struct Rows {
    first: u32,
    last: u32,
}

impl Rows {
    /// A column of the lines as a range for a formula on any sheet.
    fn of(self, column: char) -> String {
        format!("{}!${column}${}:${column}${}", ORDER.now(), self.first + 1, self.last + 1)
    }
}

fn float(amount: Decimal) -> f64 {
    amount.to_f64().unwrap_or(f64::MAX)
}

/// A formula with its cached result.
fn with_result(formula: impl AsRef<str>, amount: Decimal) -> Formula {
    Formula::new(formula).set_result(amount.to_string())
}

/// Page setup: paper, margins, header and footer.
fn to_print(sheet: &mut Worksheet, name: &str, repeat: Option<u32>) -> Result<(), SheetError> {
    sheet.set_name(name)?;
    // 1 is US letter (ECMA-376, part 1, 18.3.1.63).
    sheet
        .set_paper_size(1)
        .set_landscape()
        .set_print_fit_to_pages(1, 0)
        .set_margins(0.4, 0.4, 0.5, 0.6, 0.3, 0.3);
    sheet.set_footer(words::sheets::L_A_RPAGE_P_OF.now());
    if let Some(row) = repeat {
        sheet.set_repeat_rows(row, row)?;
        sheet.set_freeze_panes(row + 1, 0)?;
    }
    Ok(())
}

fn order(
    sheet: &mut Worksheet,
    job: &Resolved,
    takeoff: &Takeoff,
    formats: &Formats,
    rows: Rows,
    standing: &Standing,
) -> Result<(), SheetError> {
    to_print(sheet, ORDER.now(), Some(HEAD - 1))?;
    let title = words::sheets::order_for(&job.name);
    let title = if standing.stops.is_empty() { title } else { format!("{}: {title}", NOT_TO_BUILD.now()) };
    sheet.write_string_with_format(0, 0, title, &formats.title)?;
    let about =
        words::sheets::amounts_in_planning_aid_only(&job.prices.name, &job.prices.date, &takeoff.currency);
    sheet.write_string_with_format(1, 0, about, &formats.soft)?;
    for (column, (title, width)) in (0..).zip(COLUMNS) {
        sheet.set_column_width(column, width)?;
        sheet.write_string_with_format(HEAD - 1, column, title.now(), &formats.head)?;
    }
    for (row, line) in (HEAD..).zip(&takeoff.lines) {
        write_line(sheet, row, line, job.units, formats)?;
    }
    if !takeoff.lines.is_empty() {
        sheet.autofilter(HEAD - 1, 0, rows.last, COLUMNS.len() as u16 - 1)?;
    }
    totals(sheet, job, takeoff, formats, rows)
}

fn write_line(
    sheet: &mut Worksheet,
    row: u32,
    line: &Line,
    units: Units,
    formats: &Formats,
) -> Result<(), SheetError> {
    let (unit, scale) = spreadsheet_unit(line.unit, units);
    let counted = count_words(line, units);
    let state = state_words(line, units).unwrap_or_default();
    for (column, text) in [
        (0, line.group.name().now()),
        (1, line.stage.name().now()),
        (2, &line.number),
        (3, &line.name.now()),
        (5, unit),
        (10, &line.package.name().now()),
        (14, if line.taxed { TAXED.now() } else { "no" }),
        (15, &state),
        (16, &counted),
        (17, &line.source.now()),
    ] {
        sheet.write_string_with_format(row, column, text, &formats.text)?;
    }
    for (column, amount) in [(4, line.need), (7, line.with_waste), (8, line.from_stock), (11, line.holds)] {
        // To a thousandth, like the other outputs, without floating-point noise.
        let amount = (amount * scale * 1000.0).round() / 1000.0;
        sheet.write_number_with_format(row, column, amount, &formats.amount)?;
    }
    sheet.write_number_with_format(row, 6, line.waste, &formats.percent)?;
    sheet.write_number_with_format(row, PACKAGES, line.packages as f64, &formats.whole)?;
    match line.price {
        Some(price) => sheet.write_number_with_format(row, PRICE, float(price), &formats.money)?,
        None => sheet.write_string_with_format(row, PRICE, NO_PRICE.now(), &formats.missing)?,
    };
    let at = row + 1;
    let none = NO_PRICE.now();
    let formula = Formula::new(format!("IF(ISNUMBER(M{at}),ROUND(J{at}*M{at},2),\"{none}\")"));
    let result = line.cost.map_or_else(|| none.to_owned(), |cost| cost.to_string());
    let format = if line.cost.is_some() { &formats.money } else { &formats.missing };
    sheet.write_formula_with_format(row, COST, formula.set_result(result), format)?;
    Ok(())
}

/// The steps from the lines to the total, each a formula of the ones above.
fn totals(
    sheet: &mut Worksheet,
    job: &Resolved,
    takeoff: &Takeoff,
    formats: &Formats,
    rows: Rows,
) -> Result<(), SheetError> {
    let (group, cost, taxed) = (rows.of('A'), rows.of('N'), rows.of('O'));
    let labour = Group::Labour.name();
    let sums = &takeoff.totals;
    let first = rows.last + 2;
    // The cell of a step, as a formula refers to it.
    let at = |step: u32| format!("N{}", first + step + 1);
    let percent = |base: String, percent: Decimal| format!("ROUND({base}*{percent}/100,2)");
    let pricing = &job.order.pricing;
    let base = format!("({}+{})", at(4), at(5));
    let profit = match pricing.profit {
        Profit::None => "0".to_owned(),
        Profit::Markup { percent: share } => percent(base, share),
        Profit::Margin { percent: share } => format!("ROUND({base}*{share}/(100-{share}),2)"),
    };
    let formulas = [
        format!("SUMIF({group},\"<>{labour}\",{cost})"),
        format!("SUMIF({group},\"{labour}\",{cost})"),
        percent(
            format!("SUMIF({taxed},\"{}\",{cost})", TAXED.now()),
            job.prices.tax_percent.unwrap_or_default(),
        ),
        sums.delivery.unwrap_or_default().to_string(),
        format!("SUM({}:{})", at(0), at(3)),
        percent(at(4), pricing.overhead_percent),
        profit,
    ];
    let steps = money_rows(takeoff).into_iter().zip(formulas);
    for (row, ((what, amount), formula)) in (first..).zip(steps) {
        sheet.write_string_with_format(row, PRICE, what, &formats.text)?;
        match amount {
            Some(amount) => {
                sheet.write_formula_with_format(row, COST, with_result(formula, amount), &formats.money)?
            }
            None => sheet.write_string_with_format(row, COST, NOT_KNOWN.now(), &formats.missing)?,
        };
    }
    let last = first + 7;
    let total = format!("{}+{}+{}", at(4), at(5), at(6));
    sheet.write_string_with_format(last, PRICE, words::common::total(&takeoff.currency), &formats.sum)?;
    sheet.write_formula_with_format(last, COST, with_result(total, sums.total), &formats.sum_money)?;
    if !takeoff.unpriced.is_empty() {
        let words = words::sheets::no_price_and_not_in(&takeoff.unpriced.join(", "));
        sheet.write_string_with_format(last + 1, 0, words, &formats.missing)?;
    }
    Ok(())
}

fn costs(sheet: &mut Worksheet, takeoff: &Takeoff, formats: &Formats, rows: Rows) -> Result<(), SheetError> {
    to_print(sheet, words::sheets::COST_BY_STAGE.now(), None)?;
    sheet.set_column_width(0, 26)?.set_column_width(1, 14)?;
    let stages: Vec<(&str, Decimal)> = takeoff
        .cost_by_stage()
        .into_iter()
        .map(|(stage, cost): (Stage, _)| (stage.name().now(), cost))
        .collect();
    let groups: Vec<(&str, Decimal)> = takeoff
        .cost_by_group()
        .into_iter()
        .map(|(group, cost): (Group, _)| (group.name().now(), cost))
        .collect();
    let mut row = 0;
    for (title, column, sums) in
        [(words::common::BY_STAGE_OF_WORK.now(), 'B', stages), (words::common::BY_GROUP.now(), 'A', groups)]
    {
        sheet.write_string_with_format(row, 0, title, &formats.head)?;
        sheet.write_string_with_format(
            row,
            1,
            format!("{}, {}", COST_IN.now(), takeoff.currency),
            &formats.head,
        )?;
        let first = row + 1;
        for (name, cost) in &sums {
            row += 1;
            let formula = format!("SUMIF({},A{},{})", rows.of(column), row + 1, rows.of('N'));
            sheet.write_string_with_format(row, 0, *name, &formats.text)?;
            sheet.write_formula_with_format(row, 1, with_result(formula, *cost), &formats.money)?;
        }
        row += 1;
        let sum = if sums.is_empty() { "0".to_owned() } else { format!("SUM(B{}:B{row})", first + 1) };
        sheet.write_string_with_format(row, 0, words::sheets::GOODS_AND_LABOUR.now(), &formats.sum)?;
        let lines = with_result(sum, takeoff.priced_total);
        sheet.write_formula_with_format(row, 1, lines, &formats.sum_money)?;
        row += 3;
    }
    Ok(())
}

fn cuts(sheet: &mut Worksheet, takeoff: &Takeoff, units: Units, formats: &Formats) -> Result<(), SheetError> {
    to_print(sheet, words::common::CUT_LIST.now(), Some(0))?;
    for (column, (title, width)) in (0..).zip([
        (words::common::NUMBER.now(), 12.0),
        (words::common::WHAT.now(), 38.0),
        (words::sheets::HOW_IT_IS_CUT.now(), 90.0),
    ]) {
        sheet.set_column_width(column, width)?;
        sheet.write_string_with_format(0, column, title, &formats.head)?;
    }
    let lists = cut_lists(takeoff, units);
    let cuts = lists.into_iter().flat_map(|(number, name, cuts)| {
        cuts.into_iter().map(move |cut| [number.to_owned(), name.to_string(), cut])
    });
    for (row, cells) in (1..).zip(cuts) {
        for (column, cell) in (0..).zip(cells) {
            sheet.write_string_with_format(row, column, cell, &formats.text)?;
        }
    }
    Ok(())
}

/// The notes sheet: sources of the order, assumptions, findings, waivers, cautions.
fn notes_sheet(
    sheet: &mut Worksheet,
    job: &Resolved,
    plan: &Plan,
    formats: &Formats,
) -> Result<(), SheetError> {
    to_print(sheet, KNOWN.now(), None)?;
    sheet.set_column_width(0, 22)?.set_column_width(1, 110)?;
    let header = order_header(job, plan);
    let off = plan.takeoff.off.iter().map(|line| {
        format!("{}, {}: {}", line.number, line.name, state_words(line, job.units).unwrap_or_default())
    });
    let mut rows: Vec<(&str, String)> = vec![
        (words::sheets::JOB.now(), header.job.clone()),
        (words::common::ADDRESS.now(), job.site.address.clone()),
        (words::common::KIT.now(), header.kit.clone()),
        (words::common::RULE_BOOK.now(), header.rule_book.clone()),
        (words::common::PRICES.now(), header.prices.clone()),
        (words::sheets::CURRENCY.now(), plan.takeoff.currency.clone()),
    ];
    rows.extend(off.map(|line| (words::sheets::NOT_ORDERED.now(), line)));
    rows.extend(
        plan.takeoff.notes.iter().map(|note| (words::sheets::ABOUT_THE_COUNT.now(), note.to_string())),
    );
    rows.extend(standing(job, plan).stops.into_iter().map(|stop| (NOT_TO_BUILD.now(), stop)));
    rows.extend(header.findings.iter().map(|finding| (words::sheets::FINDING.now(), finding.clone())));
    rows.extend(header.waivers.iter().map(|waiver| (words::common::WAIVED.now(), waiver.clone())));
    rows.push((words::sheets::CAUTION.now(), header.caution));
    for (row, (what, text)) in (0..).zip(rows) {
        sheet.write_string_with_format(row, 0, what, &formats.sum)?;
        sheet.write_string_with_format(row, 1, text, &formats.text)?;
    }
    Ok(())
}
