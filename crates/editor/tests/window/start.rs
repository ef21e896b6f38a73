use std::process::Command;

/// Without a display the program prints one line that mentions the command line program, and does not panic.
#[cfg(all(unix, not(target_os = "macos")))]
#[test]
fn without_a_display_one_line_says_what_to_do() {
    let output = Command::new(env!("CARGO_BIN_EXE_chalkcourse"))
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .output()
        .unwrap();
    let said = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert_eq!(said.lines().count(), 1, "{said}");
    assert!(said.contains("chalkcourse-cli"), "{said}");
    assert!(output.stdout.is_empty());
}

#[test]
fn an_unknown_option_is_refused_with_the_usage() {
    let output = Command::new(env!("CARGO_BIN_EXE_chalkcourse")).arg("--fly").output().unwrap();
    let said = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2));
    assert!(said.contains("--fly") && said.contains("usage"), "{said}");
}
