//! The window of Chalkcourse: `chalkcourse [--typed-paths] [--frame-times CSV] [FILE]`.

use chalkcourse::{Editor, Options};
use chalkcourse_words::Language;
use std::ffi::OsString;
use std::path::PathBuf;
use std::process::ExitCode;

const USAGE: &str = "usage: chalkcourse [--typed-paths] [--frame-times CSV] [FILE]\n  FILE               a job to open; without one the start page, the first time the sample \"Alder Court\"\n  \
                     --typed-paths      ask for file names inside the window, not by the desktop's dialogs\n  \
                     --frame-times CSV  write how long each frame takes";

fn main() -> ExitCode {
    match options(std::env::args_os().skip(1)) {
        Ok(Some(options)) => run(options),
        Ok(None) => say(USAGE, ExitCode::SUCCESS),
        Err(wrong) => say(&format!("{wrong}\n{USAGE}"), ExitCode::from(2)),
    }
}

fn options(mut args: impl Iterator<Item = OsString>) -> Result<Option<Options>, String> {
    let language = Language::of_desk(|name| std::env::var(name).ok());
    let mut options = Options { recovery: chalkcourse::recovery_folder(), language, ..Options::default() };
    let mut only_files = false;
    while let Some(arg) = args.next() {
        match arg.to_str() {
            Some("--") if !only_files => only_files = true,
            Some("--help" | "-h") if !only_files => return Ok(None),
            Some("--typed-paths") if !only_files => options.typed_paths = true,
            Some("--frame-times") if !only_files => match args.next() {
                Some(path) => options.frame_times = Some(PathBuf::from(path)),
                None => return Err("chalkcourse: --frame-times needs the file to write".into()),
            },
            Some(flag) if !only_files && flag.starts_with('-') => {
                return Err(format!("chalkcourse: there is no option {flag}"));
            }
            _ if options.open.is_some() => return Err("chalkcourse: name one job file, not several".into()),
            _ => options.open = Some(PathBuf::from(arg)),
        }
    }
    Ok(Some(options))
}

fn run(options: Options) -> ExitCode {
    let no_window = |why: &str| {
        say(
            &format!(
                "chalkcourse: no window can be opened ({why}); use chalkcourse-cli for the same work without a display"
            ),
            ExitCode::FAILURE,
        )
    };
    if cfg!(all(unix, not(target_os = "macos"))) {
        let set = |name| std::env::var_os(name).is_some_and(|value| !value.is_empty());
        if !set("DISPLAY") && !set("WAYLAND_DISPLAY") && !set("WAYLAND_SOCKET") {
            return no_window("neither DISPLAY nor WAYLAND_DISPLAY is set");
        }
    }
    let native = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_title("Chalkcourse")
            .with_app_id("chalkcourse")
            .with_icon(icon())
            .with_inner_size([1280.0, 800.0])
            .with_min_inner_size([900.0, 560.0]),
        // There are no gradients that would need it, and without a graphics card each pixel is costly.
        dithering: false,
        ..Default::default()
    };
    let started = eframe::run_native(
        "chalkcourse",
        native,
        Box::new(move |cc| Ok(Box::new(Editor::new(&cc.egui_ctx, options, cc.storage)))),
    );
    match started {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => no_window(&error.to_string()),
    }
}

/// The program's icon for the desktop.
fn icon() -> egui::IconData {
    let png = include_bytes!("../../../assets/desktop/chalkcourse-256.png");
    eframe::icon_data::from_png_bytes(png).unwrap_or_default()
}

#[expect(clippy::print_stderr, reason = "this is what the program says where it has no window")]
fn say(words: &str, code: ExitCode) -> ExitCode {
    eprintln!("{words}");
    code
}
