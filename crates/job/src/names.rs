//! Names for new things that nothing else has.

/// The word itself, or with the first number from 2 that is free: "Dormer", "Dormer 2".
pub fn first_free(word: &str, taken: impl Fn(&str) -> bool) -> String {
    let mut names =
        std::iter::once(word.to_owned()).chain((2_u64..).map(|number| format!("{word} {number}")));
    names.find(|name| !taken(name)).unwrap_or_default()
}
