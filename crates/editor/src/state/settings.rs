use super::OrderTable;
use chalkcourse_plan::RaiseAs;
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// What the program remembers between two starts. Nothing of a job is in it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Settings {
    /// Jobs opened or saved last, the newest first.
    pub(crate) recent: Vec<PathBuf>,
    /// Dark or light; none follows the desktop.
    pub(crate) dark: Option<bool>,
    /// The language, by its two letters; none follows the desktop.
    pub(crate) language: Option<String>,
    /// Who accepts findings.
    pub(crate) person: String,
    /// How the lines of the order are shown.
    pub(crate) order_table: OrderTable,
    /// The panel at the right is put away.
    pub(crate) no_side: bool,
    /// How the last roof was raised.
    pub(crate) raise_as: Option<RaiseAs>,
}

impl Settings {
    pub(crate) const KEY: &str = "chalkcourse-settings";
    const MOST_RECENT: usize = 8;

    /// Puts a file to the top of the recent ones.
    pub(crate) fn used(&mut self, path: &Path) {
        let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
        self.recent.retain(|recent| *recent != path);
        self.recent.insert(0, path);
        self.recent.truncate(Self::MOST_RECENT);
    }
}

/// How large all that is read is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum TypeSize {
    Larger,
    Smaller,
    Usual,
}

impl TypeSize {
    /// The size from the one before; 1 is the usual one. Steps of a tenth, from six tenths to three times.
    pub(crate) fn from(self, before: f32) -> f32 {
        let tenths = (before * 10.0).round();
        match self {
            Self::Larger => ((tenths + 1.0) / 10.0).min(3.0),
            Self::Smaller => ((tenths - 1.0) / 10.0).max(0.6),
            Self::Usual => 1.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_newest_is_first_and_once() {
        let mut settings = Settings::default();
        for number in 0..12 {
            settings.used(Path::new(&format!("/jobs/{number}.json")));
        }
        settings.used(Path::new("/jobs/7.json"));
        assert_eq!(settings.recent.len(), 8);
        assert_eq!(settings.recent[0], Path::new("/jobs/7.json"));
        assert_eq!(settings.recent.iter().filter(|p| p.ends_with("7.json")).count(), 1);
    }
}
