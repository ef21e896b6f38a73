//! Finds the cells of a workbook with a percent format: the number behind "8.25 %" is 0.0825, which the workbook reader
//! does not report.
//!
//! Source: Office Open XML, ECMA-376 part 1, 18.8.30 (`numFmt`; 9 and 10 are percent), 18.8.45 (`xf`), 18.3.1.4 (`c`), from memory.

use quick_xml::events::{BytesStart, Event};
use quick_xml::{Reader, XmlVersion};
use std::collections::{HashMap, HashSet};
use std::io::Read as _;

/// Most bytes of an unpacked part of a workbook.
const MOST: u64 = 64 << 20;

/// Rows and columns, from 0, of the cells of a sheet with a percent format. Empty for other kinds of files.
pub(crate) fn of_sheet(bytes: &[u8], sheet: &str) -> HashSet<(u32, u32)> {
    read(bytes, sheet).unwrap_or_default()
}

type Parts<'a> = zip::ZipArchive<std::io::Cursor<&'a [u8]>>;

fn read(bytes: &[u8], sheet: &str) -> Option<HashSet<(u32, u32)>> {
    let mut parts = zip::ZipArchive::new(std::io::Cursor::new(bytes)).ok()?;
    let styles = percent_styles(&part(&mut parts, "xl/styles.xml")?);
    if styles.is_empty() {
        return None;
    }
    let mut id = None;
    each(&part(&mut parts, "xl/workbook.xml")?, |tag, _| {
        if tag.local_name().as_ref() == b"sheet" && attribute(tag, b"name").as_deref() == Some(sheet) {
            id = attribute(tag, b"id");
        }
    });
    let id = id?;
    let mut target = None;
    each(&part(&mut parts, "xl/_rels/workbook.xml.rels")?, |tag, _| {
        if attribute(tag, b"Id").as_deref() == Some(&id) {
            target = attribute(tag, b"Target");
        }
    });
    let target = target?;
    let path = target.strip_prefix('/').map_or_else(|| format!("xl/{target}"), str::to_owned);
    let mut found = HashSet::new();
    each(&part(&mut parts, &path)?, |tag, _| {
        let style = attribute(tag, b"s").and_then(|style| style.parse::<usize>().ok()).unwrap_or(0);
        if tag.local_name().as_ref() == b"c" && styles.contains(&style) {
            found.extend(attribute(tag, b"r").and_then(|name| place(&name)));
        }
    });
    Some(found)
}

fn part(parts: &mut Parts<'_>, path: &str) -> Option<String> {
    let mut text = String::new();
    parts.by_name(path).ok()?.take(MOST).read_to_string(&mut text).ok()?;
    Some(text)
}

/// Visits the tags of a text, each with the local name of its parent.
fn each(text: &str, mut see: impl FnMut(&BytesStart<'_>, Option<&[u8]>)) {
    let mut reader = Reader::from_str(text);
    let mut around: Vec<Vec<u8>> = Vec::new();
    loop {
        match reader.read_event() {
            Ok(Event::Start(tag)) => {
                see(&tag, around.last().map(Vec::as_slice));
                around.push(tag.local_name().as_ref().to_vec());
            }
            Ok(Event::Empty(tag)) => see(&tag, around.last().map(Vec::as_slice)),
            Ok(Event::End(_)) => {
                around.pop();
            }
            Ok(Event::Eof) | Err(_) => return,
            Ok(_) => {}
        }
    }
}

/// An attribute by its local name.
fn attribute(tag: &BytesStart<'_>, name: &[u8]) -> Option<String> {
    let found = tag.attributes().flatten().find(|it| it.key.local_name().as_ref() == name)?;
    Some(found.normalized_value(XmlVersion::Implicit1_0).ok()?.into_owned())
}

/// Indices of the cell styles with a percent format.
fn percent_styles(styles: &str) -> HashSet<usize> {
    let mut formats: HashMap<String, bool> =
        [("9".to_owned(), true), ("10".to_owned(), true)].into_iter().collect();
    let mut found = HashSet::new();
    let mut nth = 0;
    each(styles, |tag, around| match (tag.local_name().as_ref(), around) {
        (b"numFmt", _) => {
            if let (Some(id), Some(code)) = (attribute(tag, b"numFmtId"), attribute(tag, b"formatCode")) {
                formats.insert(id, is_percent(&code));
            }
        }
        (b"xf", Some(b"cellXfs")) => {
            let id = attribute(tag, b"numFmtId").unwrap_or_default();
            if formats.get(&id) == Some(&true) {
                found.insert(nth);
            }
            nth += 1;
        }
        _ => {}
    });
    found
}

/// Whether a format has a percent sign that is neither quoted nor escaped.
fn is_percent(code: &str) -> bool {
    let (mut quoted, mut escaped) = (false, false);
    for c in code.chars() {
        match (escaped, c) {
            (true, _) => escaped = false,
            (false, '\\') => escaped = true,
            (false, '"') => quoted = !quoted,
            (false, '%') if !quoted => return true,
            _ => {}
        }
    }
    false
}

/// Row and column, from 0, of a cell name: `B3` is (2, 1).
fn place(name: &str) -> Option<(u32, u32)> {
    let letters = name.find(|c: char| c.is_ascii_digit())?;
    let (column, row) = name.split_at(letters);
    let mut at = 0_u32;
    for letter in column.bytes() {
        let value = letter.is_ascii_uppercase().then(|| u32::from(letter - b'A') + 1)?;
        at = at.checked_mul(26)?.checked_add(value)?;
    }
    Some((row.parse::<u32>().ok()?.checked_sub(1)?, at.checked_sub(1)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cell_names_and_percent_formats_are_parsed() {
        assert_eq!(place("B3"), Some((2, 1)));
        assert_eq!(place("AA10"), Some((9, 26)));
        for wrong in ["", "3", "b3", "B0", "B", "ZZZZZZZZ1", "B99999999999"] {
            assert_eq!(place(wrong), None, "{wrong}");
        }
        assert!(is_percent("0.00 %") && is_percent("#,##0%;[Red]-0%"));
        assert!(!is_percent("0.00\" %\"") && !is_percent("0\\%") && !is_percent("0.00"));
    }
}
