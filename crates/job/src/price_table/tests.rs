use super::*;
use crate::builtin_kit;
use chalkcourse_words::Said;
use std::str::FromStr;

fn decimal(text: &str) -> Decimal {
    Decimal::from_str(text).unwrap()
}

fn read_csv(text: &str) -> Result<PriceReading, Said> {
    price_list(&Table::from_csv(text, &COLUMNS)?, "Harbour Supply", &builtin_kit())
}

/// Prices of FH-101 and FH-102 in a list in USD, as written in its column.
fn two(one: &str, other: &str) -> Result<[Decimal; 2], String> {
    let text = format!("number;name;price\n;currency;USD\nFH-101;;{one}\nFH-102;;{other}\n");
    let list = read_csv(&text)?.list;
    Ok(["FH-101", "FH-102"].map(|part| list.prices[part].package))
}

#[test]
fn money_reads_as_its_column_is_written() {
    let check = |one: &str, other: &str, are: [&str; 2]| {
        assert_eq!(two(one, other).unwrap(), are.map(decimal), "{one} {other}");
    };
    check("184.50", "$1,184.5", ["184.50", "1184.5"]);
    check("1.205,00", "1.205", ["1205", "1205"]);
    check("12,50", "1 205,00", ["12.5", "1205"]);
    check("1'205.00", "85", ["1205", "85"]);
    check("USD 12.50", "1.205 USD", ["12.5", "1.205"]);
    let refused = |one: &str, other: &str, place: &str| {
        let wrong = two(one, other).unwrap_err();
        assert!(wrong.contains(place), "{one} {other}: {wrong}");
    };
    // 1205 or 1.205: nothing in the column decides which.
    refused("1.205", "85", "line 3");
    refused("85", "1,205", "line 4");
    refused("12.50", "12,50", "line 4");
    refused("€12.50", "3", "line 3");
    refused("EUR 12.50", "3", "line 3");
    refused("8.25 %", "3", "line 3");
    for wrong in ["twelve", "1.2.3", "NaN", "1e3", "12 50", "-"] {
        refused(wrong, "3", "line 3");
    }
}

#[test]
fn a_price_table_is_read() {
    let text = "number;name;price;untaxed;alternate for\n\
                ;currency;USD;;\n;tax %;7.25;;\n;delivery;85;;\n;date;2026-04-01;;\n\
                FH-101;Module;212.00;;\nFH-102;Foot;;;\nFH-401;Strip;48.00;yes;\nQX-9;Other module;205.5;;fh 101\n";
    let PriceReading { list, summary } = read_csv(text).unwrap();
    assert_eq!((list.name.as_str(), list.currency.as_str()), ("Harbour Supply", "USD"));
    assert_eq!((list.tax_percent, list.delivery), (Some(decimal("7.25")), Some(decimal("85"))));
    assert_eq!(list.prices.len(), 2, "a row without a price gives none");
    assert!(list.prices["FH-401"].untaxed);
    assert_eq!(list.prices["FH-101"].alternates[0].number, "QX-9");
    assert_eq!((summary.taken, summary.alternates), (2, 1));
    assert_eq!(summary.without_price, ["FH-102"]);
    assert!(summary.missing.contains(&"FH-102".to_owned()));
}

#[test]
fn a_tax_below_one_percent_needs_a_percent_sign() {
    let of = |tax: &str| {
        read_csv(&format!("number;name;price\n;currency;USD\n;tax %;{tax}\n"))
            .map(|it| it.list.tax_percent.unwrap())
    };
    assert_eq!(of("8.25").unwrap(), decimal("8.25"));
    assert_eq!(of("8,25 %").unwrap(), decimal("8.25"));
    assert_eq!(of("0.5 %").unwrap(), decimal("0.5"));
    assert_eq!(of("0").unwrap(), decimal("0"));
    assert!(of("0.0825").unwrap_err().now().contains("line 3"));
    assert!(of("120").is_err());
}

#[test]
fn spellings_titles_and_unknown_numbers_are_reported() {
    let text = "Harbour Supply, spring\n\nnumber,name,price\n,currency,USD\nfh-101,Module,212\nFH 102,Foot,3.5\n\
                ,Flashing,\nFH-130,Head,18\nFH-130,Head,18\nZZ-1,Hat,4\n";
    let PriceReading { list, summary } = read_csv(text).unwrap();
    assert_eq!(list.prices["FH-101"].package, decimal("212"));
    assert_eq!(
        summary.respelled,
        [("fh-101", "FH-101"), ("FH 102", "FH-102")].map(|(a, b)| (a.into(), b.into()))
    );
    assert_eq!(summary.unknown, ["ZZ-1"]);
    assert_eq!((summary.taken, summary.titles, summary.left_alone()), (3, 2, 3));
    assert_eq!(summary.twice, ["FH-130"]);
    let words = summary.said().to_string();
    assert!(words.starts_with("3 prices taken, 1 unknown to the kit, 3 left alone\n"), "{words}");
    assert!(words.contains("fh-101 as FH-101") && words.contains("ZZ-1"), "{words}");
    assert!(!summary.is_plain());
}

#[test]
fn table_errors_name_the_line() {
    let check = |text: &str, words: &str| {
        let wrong = read_csv(text).unwrap_err();
        assert!(wrong.now().contains(words), "{wrong}");
    };
    check("number,name,price\n,currency,USD\nA,,1\nA,,2\n", "line 4");
    check("number,name,price\n,currency,USD\nFH-101,,1\nfh-101,,2\n", "line 4");
    check("number,name,price\n,currency,USD\nA,,x\n", "line 3");
    check("number,name,price\nA,,1\n", "currency");
    check("number,name,price\n,colour,red\n", "tax %");
    check("part,price\n", "\"number\"");
    // An unquoted decimal comma spills into the next cell.
    check("number,name,price\n,currency,USD\nFH-101,,12,50\n", "line 3");
    check("number,name,price,untaxed\n,currency,USD\nFH-101,,12,50\n", "line 3");
}

/// 8.25 % in a workbook is 0.0825 with a format (Office Open XML, ECMA-376 part 1, 18.8.30, from memory).
#[test]
fn a_workbook_is_read_by_its_cell_formats() {
    let workbook = |tax_format: &str| {
        let mut book = rust_xlsxwriter::Workbook::new();
        book.add_worksheet().set_name("About us").unwrap().write_string(0, 0, "Harbour Supply").unwrap();
        let sheet = book.add_worksheet();
        sheet.set_name("Prices & more").unwrap();
        sheet.write_string(0, 1, "Prices of the spring").unwrap();
        for (column, name) in (1..).zip(["Number", "Name", "Price"]) {
            sheet.write_string(2, column, name).unwrap();
        }
        sheet.write_string(3, 2, "currency").unwrap();
        sheet.write_string(3, 3, "USD").unwrap();
        sheet.write_string(4, 2, "tax %").unwrap();
        let format = rust_xlsxwriter::Format::new().set_num_format(tax_format);
        sheet.write_number_with_format(4, 3, 0.0825, &format).unwrap();
        sheet.write_string(5, 1, "FH-101").unwrap();
        sheet.write_number(5, 3, 1205.1 + 0.2).unwrap();
        sheet.write_string(6, 2, "date").unwrap();
        let day = rust_xlsxwriter::ExcelDateTime::from_ymd(2026, 4, 1).unwrap();
        let format = rust_xlsxwriter::Format::new().set_num_format("d mmm yyyy");
        sheet.write_datetime_with_format(6, 3, &day, &format).unwrap();
        let bytes = book.save_to_buffer().unwrap();
        price_list(&Table::from_workbook(&bytes, &COLUMNS)?, "x", &builtin_kit())
    };
    for format in ["0.00%", "0.0 %", "0.000%"] {
        let PriceReading { list, summary } = workbook(format).unwrap();
        assert_eq!(list.tax_percent, Some(decimal("8.25")), "{format}");
        assert_eq!(list.prices["FH-101"].package, decimal("1205.3"));
        assert_eq!(list.date, "2026-04-01");
        assert_eq!(summary.other_sheets, ["About us"]);
        assert_eq!(summary.titles, 1);
    }
    assert!(workbook("0.0000").unwrap_err().now().contains("row 5"));
}
