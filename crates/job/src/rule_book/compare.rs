use super::RuleBook;
use serde_json::Value;

/// One field in which two rule books differ.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Difference {
    /// The path of the field, such as `setbacks.rake.value`.
    pub field: String,
    /// The value in the first book, if any.
    pub one: Option<String>,
    /// The value in the second, if any.
    pub other: Option<String>,
}

impl RuleBook {
    /// All fields in which another book differs, ordered by name.
    pub fn differences(&self, other: &Self) -> Vec<Difference> {
        let value = |book: &Self| serde_json::to_value(book).unwrap_or(Value::Null);
        let mut differences = Vec::new();
        compare("", Some(&value(self)), Some(&value(other)), &mut differences);
        differences.sort_by(|a, b| a.field.cmp(&b.field));
        differences
    }
}

fn compare(field: &str, one: Option<&Value>, other: Option<&Value>, differences: &mut Vec<Difference>) {
    if one == other {
        return;
    }
    let inner = |name: &str| if field.is_empty() { name.to_owned() } else { format!("{field}.{name}") };
    match (one, other) {
        (Some(Value::Object(a)), Some(Value::Object(b))) => {
            let names = a.keys().chain(b.keys().filter(|name| !a.contains_key(*name)));
            names.for_each(|name| compare(&inner(name), a.get(name), b.get(name), differences));
        }
        (Some(Value::Array(a)), Some(Value::Array(b))) => (0..a.len().max(b.len()))
            .for_each(|i| compare(&inner(&(i + 1).to_string()), a.get(i), b.get(i), differences)),
        _ => {
            let text = |value: &Value| value.as_str().map_or_else(|| value.to_string(), str::to_owned);
            differences.push(Difference {
                field: field.to_owned(),
                one: one.map(text),
                other: other.map(text),
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::builtin_rule_book;
    use chalkcourse_geometry::{EdgeKind, Length};

    #[test]
    fn equal_books_have_no_differences() {
        let book = builtin_rule_book();
        assert!(book.differences(&book).is_empty());
        let mut own = (*book).clone();
        if let Some(rake) = own.setbacks.get_mut(&EdgeKind::Rake) {
            rake.value = Length::from_inches(10.0);
        }
        own.fire_access = None;
        let fields: Vec<_> = book.differences(&own).into_iter().map(|d| (d.field, d.one, d.other)).collect();
        assert_eq!(fields.len(), 2);
        assert!(fields[0].0 == "fire_access" && fields[0].2.is_none(), "{fields:?}");
        assert_eq!(fields[1], ("setbacks.rake.value".into(), Some("12 in".into()), Some("10 in".into())));
    }
}
