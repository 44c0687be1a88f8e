//! No amount is a float before it is shown: the rooms that compute know none.
#![allow(clippy::disallowed_methods, reason = "the sources are read")]

use std::fs;
use std::path::Path;

/// The rooms that compute. `measure` and `sheet` turn exact amounts into floats for
/// showing and drawing, and nothing comes back from there.
const EXACT: [&str; 8] =
    ["check", "dough", "formula", "model", "pantry", "read", "time", "work"];

/// Every line of code below a folder that names a float.
fn floats(folder: &Path, found: &mut Vec<String>) {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    for path in entries.map(|entry| entry.path()) {
        // Outlines of shaped pieces are curves for the eye; nothing that is said comes from
        // them.
        if path.ends_with("dough/shaping/outline") {
            continue;
        }
        if path.is_dir() {
            floats(&path, found);
            continue;
        }
        // Contrast of colours (WCAG 2.2) is no amount.
        if path.ends_with("check/look.rs") {
            continue;
        }
        let text = fs::read_to_string(&path).unwrap_or_default();
        // Tests may measure an exact result against a float.
        let text = text.split("#[cfg(test)]").next().unwrap_or_default();
        for (number, line) in text.lines().enumerate() {
            let code = line.split("//").next().unwrap_or_default();
            // The reader takes a number of a YAML head back to the text it came from.
            let code = code.replace("visit_f64: f64", "");
            let named = ["f64", "f32", ".float()", "float("];
            if named.iter().any(|word| code.contains(word)) {
                found.push(format!("{}:{}: {}", path.display(), number + 1, line.trim()));
            }
        }
    }
}

#[test]
fn no_float_before_an_amount_is_shown() {
    for room in EXACT {
        let folder = Path::new("src").join(room);
        assert!(folder.is_dir(), "there is no src/{room}");
        let mut found = Vec::new();
        floats(&folder, &mut found);
        assert!(found.is_empty(), "{}", found.join("\n"));
    }
}
