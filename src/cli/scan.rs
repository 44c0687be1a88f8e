//! A scan code for a terminal, black on white whatever the terminal's own colours are: codes
//! that are light on dark are not read by every phone.

use std::fmt::Write;

use qrcode::{Color, EcLevel, QrCode};

/// Modules of white around the code (ISO/IEC 18004, 6.3.8).
const QUIET: usize = 4;
/// Black letters on white, of the colours that no terminal shows in others of its own.
const BLACK_ON_WHITE: &str = "\x1b[38;5;16;48;5;231m";
const PLAIN: &str = "\x1b[0m";

/// The code that says `text`, two modules a letter; nothing where it is too long for one, or
/// where nothing may be coloured: without its white it could not be read.
pub(super) fn code(text: &str) -> String {
    let colored = anstream::stdout().current_choice() != anstream::ColorChoice::Never;
    let code = QrCode::with_error_correction_level(text, EcLevel::L);
    code.ok().filter(|_| colored).map(|code| drawn(&code)).unwrap_or_default()
}

fn drawn(code: &QrCode) -> String {
    let width = code.width();
    let colors = code.to_colors();
    let side = width + 2 * QUIET;
    let is_dark = |x: usize, y: usize| {
        let inside = QUIET..QUIET + width;
        inside.contains(&x)
            && inside.contains(&y)
            && colors[(y - QUIET) * width + x - QUIET] == Color::Dark
    };
    let mut text = String::new();
    for y in (0..side).step_by(2) {
        let row = (0..side).map(|x| match (is_dark(x, y), is_dark(x, y + 1)) {
            (true, true) => '█',
            (true, false) => '▀',
            (false, true) => '▄',
            (false, false) => ' ',
        });
        // Writing to a String cannot fail.
        let _ = writeln!(text, "{BLACK_ON_WHITE}{}{PLAIN}", row.collect::<String>());
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The modules that the letters show, read back from the text alone.
    fn read(text: &str) -> Vec<Vec<bool>> {
        let mut rows = Vec::new();
        for line in text.lines() {
            let line = line.strip_prefix(BLACK_ON_WHITE).expect("black on white");
            let line = line.strip_suffix(PLAIN).expect("and plain again");
            let upper = line.chars().map(|it| matches!(it, '█' | '▀')).collect();
            let lower = line.chars().map(|it| matches!(it, '█' | '▄')).collect();
            rows.extend([upper, lower]);
        }
        rows
    }

    #[test]
    fn every_module_is_shown_with_white_around() {
        let code = QrCode::with_error_correction_level("http://127.0.0.2/", EcLevel::L);
        let code = code.expect("a code");
        let (rows, width) = (read(&drawn(&code)), code.width());
        assert!(rows.iter().all(|row| row.len() == width + 2 * QUIET));
        for (y, row) in rows.iter().enumerate() {
            for (x, dark) in row.iter().enumerate() {
                let inside = (QUIET..QUIET + width).contains(&x)
                    && (QUIET..QUIET + width).contains(&y);
                let there = inside && code[(x - QUIET, y - QUIET)] == Color::Dark;
                assert_eq!(*dark, there, "{x}, {y}");
            }
        }
    }
}
