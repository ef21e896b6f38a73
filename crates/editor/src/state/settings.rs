use super::OrderTable;
use chalkcourse_plan::RaiseAs;
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// Settings kept between sessions, with nothing about a job.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub(crate) struct Settings {
    /// Recent jobs, newest first.
    pub(crate) recent: Vec<PathBuf>,
    /// Dark or light; `None` follows the desktop.
    pub(crate) dark: Option<bool>,
    /// The language code; `None` follows the desktop.
    pub(crate) language: Option<String>,
    /// The name of the person who accepts findings.
    pub(crate) person: String,
    /// Display settings of the order's table.
    pub(crate) order_table: OrderTable,
    /// Whether the side panel is hidden.
    pub(crate) no_side: bool,
    /// The last settings for raising a roof.
    pub(crate) raise_as: Option<RaiseAs>,
}

impl Settings {
    pub(crate) const KEY: &str = "chalkcourse-settings";
    const MOST_RECENT: usize = 8;

    /// Moves a file to the top of the recent ones.
    pub(crate) fn used(&mut self, path: &Path) {
        let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
        self.recent.retain(|recent| *recent != path);
        self.recent.insert(0, path);
        self.recent.truncate(Self::MOST_RECENT);
    }
}

/// A change of the text size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum TypeSize {
    Larger,
    Smaller,
    Usual,
}

impl TypeSize {
    /// The new scale; 1 is the default. In steps of 0.1, from 0.6 to 3.
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
    fn recent_jobs_are_newest_first_without_duplicates() {
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
