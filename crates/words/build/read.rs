//! Reads and checks a language file.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey};
use fluent_syntax::parser;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// Functions that a message may call: see the languages' guide.
const FUNCTIONS: [&str; 2] = ["DE", "A"];

/// The type of a variable.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Kind {
    /// Inserted as it is.
    Text,
    /// A phrase of the program's own, whose leading article a language may contract with the preceding word.
    Phrase,
    /// Selects the plural, and is inserted as formatted.
    Number,
}

pub(crate) struct Message {
    pub(crate) id: String,
    pub(crate) line: usize,
    /// Its source text.
    pub(crate) text: String,
    /// Variables in the order of their notes.
    pub(crate) noted: Vec<(String, Kind)>,
    used: BTreeSet<String>,
    selecting: BTreeSet<String>,
    drawn: BTreeSet<String>,
}

pub(crate) struct Language {
    pub(crate) path: String,
    pub(crate) code: String,
    pub(crate) name: String,
    pub(crate) messages: Vec<Message>,
}

/// What a pattern refers to.
#[derive(Default)]
struct Uses {
    variables: BTreeSet<String>,
    selecting: BTreeSet<String>,
    drawn: BTreeSet<String>,
    others: BTreeSet<String>,
    wrong: Vec<String>,
}

impl Uses {
    fn pattern(&mut self, pattern: &Pattern<&str>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.expression(expression);
            }
        }
    }

    fn expression(&mut self, expression: &Expression<&str>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline),
            Expression::Select { selector, variants } => {
                if let InlineExpression::VariableReference { id } = selector {
                    self.selecting.insert(id.name.to_owned());
                }
                self.inline(selector);
                for variant in variants {
                    if let VariantKey::NumberLiteral { value } = variant.key {
                        self.wrong.push(format!(
                            "[{value}] picks by number, which a shown number never is: write [one], [few] or *[other]"
                        ));
                    }
                    self.pattern(&variant.value);
                }
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<&str>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.variables.insert(id.name.to_owned());
            }
            InlineExpression::MessageReference { id, .. } => {
                self.others.insert(id.name.to_owned());
            }
            InlineExpression::TermReference { id, .. } => {
                self.others.insert(format!("-{}", id.name));
            }
            InlineExpression::FunctionReference { id, arguments } => {
                if !FUNCTIONS.contains(&id.name) {
                    self.wrong.push(format!(
                        "{} is no function here: there are {}",
                        id.name,
                        FUNCTIONS.join(", ")
                    ));
                }
                for argument in &arguments.positional {
                    if let InlineExpression::VariableReference { id } = argument {
                        self.drawn.insert(id.name.to_owned());
                    }
                    self.inline(argument);
                }
            }
            InlineExpression::Placeable { expression } => self.expression(expression),
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
        }
    }
}

/// The 1-based line where a message or term is defined.
fn line_of(text: &str, id: &str) -> usize {
    let defines = |line: &str| line.strip_prefix(id).is_some_and(|rest| rest.trim_start().starts_with('='));
    text.lines().position(defines).map_or(1, |at| at + 1)
}

/// Notes such as `$count (number) of what`.
fn noted(comment: &[&str]) -> Result<Vec<(String, Kind)>, String> {
    let notes = comment.iter().filter_map(|line| line.trim().strip_prefix('$'));
    notes
        .map(|note| {
            let mut words = note.split_whitespace();
            let name = words.next().unwrap_or_default().to_owned();
            match words.next() {
                Some("(text)") => Ok((name, Kind::Text)),
                Some("(phrase)") => Ok((name, Kind::Phrase)),
                Some("(number)") => Ok((name, Kind::Number)),
                _ => Err(format!("say what ${name} is: `# ${name} (text)`, `(phrase)` or `(number)`")),
            }
        })
        .collect()
}

pub(crate) fn language(path: &Path) -> Result<Language, Vec<String>> {
    let shown = path.display().to_string().replace("../../", "");
    let text = fs::read_to_string(path).map_err(|fault| vec![format!("{shown}: {fault}")])?;
    let tree = parser::parse(text.as_str()).map_err(|(_, faults)| {
        let line = |at: usize| text.get(..at).map_or(1, |before| before.matches('\n').count() + 1);
        faults
            .iter()
            .map(|fault| format!("{shown}:{}: {}", line(fault.pos.start), fault.kind))
            .collect::<Vec<_>>()
    })?;

    let mut faults = Vec::new();
    let mut uses_of = BTreeMap::new();
    let mut messages = Vec::new();
    let mut own = BTreeMap::new();
    for entry in &tree.body {
        let (id, value, comment, attributes) = match entry {
            Entry::Message(it) => {
                (it.id.name.to_owned(), it.value.as_ref(), it.comment.as_ref(), &it.attributes)
            }
            Entry::Term(it) => {
                (format!("-{}", it.id.name), Some(&it.value), it.comment.as_ref(), &it.attributes)
            }
            _ => continue,
        };
        let line = line_of(&text, &id);
        let mut fault = |words: String| faults.push(format!("{shown}:{line}: `{id}`: {words}"));
        let (mut uses, mut noted_here) = (Uses::default(), Vec::new());
        match value {
            Some(pattern) => uses.pattern(pattern),
            None => fault("give it a text after `=`".to_owned()),
        }
        if !attributes.is_empty() {
            fault("attributes are not read: make a message of each".to_owned());
        }
        match noted(comment.map_or(&[], |comment| comment.content.as_slice())) {
            Ok(notes) => noted_here = notes,
            Err(words) => fault(words),
        }
        for words in &uses.wrong {
            fault(words.clone());
        }
        if uses_of.insert(id.clone(), std::mem::take(&mut uses.others)).is_some() {
            fault("this id is there twice: give one of them another".to_owned());
        }
        let shown_text = value.map_or_else(String::new, |pattern| plain(pattern).unwrap_or_default());
        if let "language-name" | "language-code" = id.as_str() {
            own.insert(id, shown_text);
        } else if !id.starts_with('-') {
            let text = text.lines().skip(line - 1).take_while(|at| !at.trim().is_empty());
            messages.push(Message {
                id,
                line,
                text: source(text),
                noted: noted_here,
                used: uses.variables,
                selecting: uses.selecting,
                drawn: uses.drawn,
            });
        }
    }
    for (id, others) in &uses_of {
        for other in others.iter().filter(|other| !uses_of.contains_key(*other)) {
            faults.push(format!(
                "{shown}:{}: `{id}` uses `{other}`, which this file has not",
                line_of(&text, id)
            ));
        }
    }
    let mut own = |id: &str| {
        let text = own.remove(id).filter(|text| !text.is_empty());
        if text.is_none() {
            faults.push(format!(
                "{shown}:1: say `{id} = …`, one plain text: what the language calls itself, and its tag"
            ));
        }
        text.unwrap_or_default()
    };
    let (name, code) = (own("language-name"), own("language-code"));
    if path.file_stem().is_none_or(|stem| *stem != *code) {
        faults
            .push(format!("{shown}:1: `language-code` is {code}: name the file {code}.ftl, or say its code"));
    }
    if faults.is_empty() { Ok(Language { path: shown, code, name, messages }) } else { Err(faults) }
}

/// The text of a pattern that is a single plain text.
fn plain(pattern: &Pattern<&str>) -> Option<String> {
    match pattern.elements.as_slice() {
        [PatternElement::TextElement { value }] => Some((*value).to_owned()),
        _ => None,
    }
}

/// The lines of a message up to the next one.
fn source<'a>(lines: impl Iterator<Item = &'a str>) -> String {
    let own = |(nth, line): &(usize, &str)| *nth == 0 || line.starts_with([' ', '}']);
    lines.enumerate().take_while(own).map(|(_, line)| line).collect::<Vec<_>>().join("\n")
}

impl Language {
    fn at(&self, message: &Message) -> String {
        format!("{}:{}: `{}`", self.path, message.line, message.id)
    }

    /// Errors in the reference language.
    pub(crate) fn faults_of_first(&self) -> Vec<String> {
        let mut faults = Vec::new();
        for message in &self.messages {
            let noted: BTreeSet<_> = message.noted.iter().map(|(name, _)| name.clone()).collect();
            for name in message.used.difference(&noted) {
                faults.push(format!(
                    "{}: note `# ${name} (text)`, `(phrase)` or `(number)` above it",
                    self.at(message)
                ));
            }
            faults.extend(self.wrong_kinds(message, &message.noted));
            if message.id.split_once('-').is_none() {
                faults.push(format!("{}: begin with its area, as `takeoff-…`", self.at(message)));
            }
        }
        faults
    }

    /// Errors of a language against the reference language.
    pub(crate) fn faults_beside(&self, first: &Self) -> Vec<String> {
        let theirs: BTreeMap<_, _> = first.messages.iter().map(|message| (&message.id, message)).collect();
        let mut faults = Vec::new();
        for message in &self.messages {
            let Some(english) = theirs.get(&message.id) else {
                faults.push(format!(
                    "{} is not in {}: take it away, or write its id as there",
                    self.at(message),
                    first.path
                ));
                continue;
            };
            let known: Vec<_> = english.noted.iter().map(|(name, _)| format!("${name}")).collect();
            for name in
                message.used.iter().filter(|used| !english.noted.iter().any(|(name, _)| name == *used))
            {
                let known = if known.is_empty() { "none".to_owned() } else { known.join(", ") };
                faults.push(format!("{} uses ${name}; English has {known}", self.at(message)));
            }
            faults.extend(self.wrong_kinds(message, &english.noted));
        }
        faults
    }

    fn wrong_kinds(&self, message: &Message, noted: &[(String, Kind)]) -> Vec<String> {
        let is = |name: &String, kinds: &[Kind]| {
            noted.iter().any(|(noted, kind)| noted == name && kinds.contains(kind))
        };
        let at = self.at(message);
        let selecting = message.selecting.iter().filter(|name| !is(name, &[Kind::Number]));
        let selecting =
            selecting.map(|name| format!("{at} selects by ${name}, which is no number: note it `(number)`"));
        let drawn = message.drawn.iter().filter(|name| is(name, &[Kind::Text]));
        let drawn = drawn.map(|name| {
            format!(
                "{at} draws ${name} together: names stay as they are; note it `(phrase)` where it is none"
            )
        });
        selecting.chain(drawn).collect()
    }
}
