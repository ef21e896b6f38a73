//! Unique names for new objects.

/// The word itself, or with the first free number from 2: "Dormer", "Dormer 2".
pub fn first_free(word: &str, taken: impl Fn(&str) -> bool) -> String {
    let mut names =
        std::iter::once(word.to_owned()).chain((2_u64..).map(|number| format!("{word} {number}")));
    names.find(|name| !taken(name)).unwrap_or_default()
}
