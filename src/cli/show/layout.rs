//! One fault as an instructor reads it: the place in words, the line with its words
//! between marks, what is wrong, what to do, the fault's name last.

use std::fmt::Write;

use anstyle::{AnsiColor, Style};
use textwrap::core::display_width;

use crate::fault::{Fault, Severity, Texts};
use crate::said;
use crate::words::Words;

/// The marks around the words at fault; they need no column to stand under, so a line may
/// be wrapped, read aloud or copied.
const MARKS: [char; 2] = ['»', '«'];
/// How far the author's line and what is to be typed stand in.
const INDENT: &str = "    ";

/// A terminal narrower than this wraps the lines itself.
const NARROWEST: usize = 20;
/// Longer lines than this are hard to read.
const WIDEST: usize = 100;

/// How wide the lines are, and whether they are painted.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Layout {
    width: usize,
    painted: bool,
}

impl Layout {
    /// For the terminal behind standard error, however narrow; where there is none, for
    /// the width of a page.
    pub(crate) fn of_terminal() -> Self {
        let width = terminal_size::terminal_size_of(std::io::stderr())
            .map_or(72, |(width, _)| usize::from(width.0));
        Self { width: width.clamp(NARROWEST, WIDEST), painted: true }
    }

    /// For a page that wraps its lines itself.
    pub(crate) fn plain() -> Self {
        Self { width: 100, painted: false }
    }

    /// A fault in words, without a line's end behind the last.
    pub(crate) fn render(&self, fault: &Fault, texts: &Texts, words: &Words) -> String {
        let told = fault.told(words);
        let mut out = String::new();
        let at = texts.position(&fault.place);
        let text = texts.text(&fault.place.file);
        let somewhere = fault.place.end() > 0 && !text.is_empty();
        let file = visible(&fault.place.file);
        let place = if somewhere {
            words.tell(&said!("fault-place", file, line = at.line))
        } else {
            file
        };
        self.lines(&mut out, "", &self.paint(&place, Style::new().bold()));
        if somewhere {
            self.author(&mut out, fault, text);
        }
        let (word, colour) = match fault.severity {
            Severity::Error => ("fault-error", AnsiColor::Red),
            Severity::Caution => ("fault-caution", AnsiColor::Yellow),
        };
        let word = self
            .paint(words.get(word), Style::new().bold().fg_color(Some(colour.into())));
        self.lines(&mut out, "  ", &format!("{word} {}", sentence(&told.message, words)));
        if let Some(help) = &told.help {
            let word = self.paint(words.get("fault-help"), Style::new().bold());
            let (said, typed) = help.split_once('\n').unwrap_or((help, ""));
            self.lines(&mut out, "  ", &format!("{word} {}", visible(said)));
            for line in typed.lines() {
                let _ = writeln!(out, "{INDENT}  {}", visible(line));
            }
        }
        self.lines(&mut out, "  ", &self.paint(fault.name, Style::new().dimmed()));
        out.truncate(out.trim_end().len());
        out
    }

    /// The author's line, its words between the marks, cut to the width around them.
    fn author(&self, out: &mut String, fault: &Fault, text: &str) {
        let end = text.floor_char_boundary(fault.place.end());
        let mut start = text.floor_char_boundary(fault.place.start().min(end));
        if start == text.len() {
            // Behind the last line there is nothing to show: its end is meant.
            start = text.trim_end_matches('\n').len();
        }
        let end = end.max(start);
        let from = text[..start].rfind('\n').map_or(0, |at| at + 1);
        let to = text[start..].find('\n').map_or(text.len(), |at| start + at);
        let before = visible(text[from..start].trim_start_matches([' ', '\t']));
        let marked = visible(text[start..end.min(to)].trim_end());
        let after = visible(text[end.min(to)..to].trim_end());
        let room = self.width.saturating_sub(INDENT.len() + 2);
        let marked = shortened(&marked, room);
        let left = room.saturating_sub(display_width(&marked));
        let tail = display_width(&after).min(left.div_ceil(2));
        let before = last(&before, left - tail);
        let after = first(&after, left - display_width(&before));
        let style = Style::new().bold().underline();
        let [open, close] = MARKS;
        let marked = self.paint(&format!("{open}{marked}{close}"), style);
        let _ = writeln!(out, "\n{INDENT}{before}{marked}{after}\n");
    }

    /// Words wrapped to the width, each line set in by `indent`.
    fn lines(&self, out: &mut String, indent: &str, words: &str) {
        let options = textwrap::Options::new(self.width)
            .initial_indent(indent)
            .subsequent_indent(indent)
            .break_words(true);
        let _ = writeln!(out, "{}", textwrap::fill(words, options));
    }

    fn paint(&self, words: &str, style: Style) -> String {
        if !self.painted {
            return words.to_owned();
        }
        format!("{}{words}{}", style.render(), style.render_reset())
    }
}

/// A message as a sentence.
fn sentence(message: &str, words: &Words) -> String {
    let message = visible(message);
    let ended = message.ends_with(['.', '?', '!', ':', '…', '。', '？', '！']);
    if ended { message } else { words.tell(&said!("fault-sentence", message)) }
}

/// The text with every sign that acts on the terminal or hides itself shown as a sign.
fn visible(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '\t' => out.push(' '),
            '\0'..='\x1f' => out.extend(char::from_u32(0x2400 + sign as u32)),
            '\x7f' => out.push('␡'),
            '\u{80}'..='\u{9f}'
            | '\u{ad}'
            | '\u{61c}'
            | '\u{200b}'..='\u{200f}'
            | '\u{2028}'..='\u{202e}'
            | '\u{2060}'..='\u{2069}'
            | '\u{feff}' => {
                let _ = write!(out, "<U+{:04X}>", sign as u32);
            }
            sign => out.push(sign),
        }
    }
    out
}

/// The first columns of a text, with a sign where more follows.
fn first(text: &str, columns: usize) -> String {
    if display_width(text) <= columns {
        return text.to_owned();
    }
    let kept = fitting(text.chars(), columns.saturating_sub(1));
    kept.into_iter().collect::<String>() + "…"
}

/// The last columns of a text, with a sign where more stands before.
fn last(text: &str, columns: usize) -> String {
    if display_width(text) <= columns {
        return text.to_owned();
    }
    let kept = fitting(text.chars().rev(), columns.saturating_sub(1));
    "…".chars().chain(kept.into_iter().rev()).collect()
}

/// Both ends of a text that has more columns than there are.
fn shortened(text: &str, columns: usize) -> String {
    if display_width(text) <= columns {
        return text.to_owned();
    }
    let end = columns / 3;
    let tail = fitting(text.chars().rev(), end.saturating_sub(1));
    first(text, columns - end) + &tail.into_iter().rev().collect::<String>()
}

/// As many signs, from the first on, as have room in so many columns.
fn fitting(signs: impl Iterator<Item = char>, columns: usize) -> Vec<char> {
    let mut used = 0;
    signs
        .take_while(|sign| {
            used += display_width(sign.encode_utf8(&mut [0; 4]));
            used <= columns
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Place;
    use crate::statement::Lines;

    /// A fault in a text, at the words.
    fn shown(text: &str, words: &str, width: usize) -> String {
        let mut texts = Texts::default();
        let file = texts.insert("recipes/loaf.md", text);
        let start = text.find(words).expect("the words stand in the text");
        let place = Place::new(&file, start, start + words.len());
        let entry = "- 5 g salt";
        let fault = Fault::error("bad-amount", &place, said!("no-amount"))
            .help(said!("bare-name-help", entry = Lines(entry)));
        Layout { width, painted: false }.render(&fault, &texts, &crate::cli::english())
    }

    #[test]
    fn a_fault_reads_as_sentences() {
        let text = "formula:\n  dough:\n    - some flour, white\n";
        let expected = "recipes/loaf.md, line 3\n\n    - »some flour«, white\n\n  \
                        Error: no amount can be read here.\n  \
                        What to do: Say in `course.yaml` what it means in this\n  \
                        course:\n      - 5 g salt\n  bad-amount";
        assert_eq!(shown(text, "some flour", 60), expected);
    }

    #[test]
    fn a_long_line_is_cut_around_its_words() {
        let text = format!("{} wrong {}", "left ".repeat(80), "right ".repeat(80));
        for width in [40, 60, 100] {
            let out = shown(&text, "wrong", width);
            assert!(out.contains("»wrong«"), "{out}");
            assert!(out.lines().all(|line| display_width(line) <= width), "{out}");
        }
        let wide = "粉".repeat(200);
        let out = shown(&wide, &wide, 60);
        assert!(out.lines().all(|line| display_width(line) <= 60), "{out}");
    }

    /// Every line at any width, but for what is to be typed as it stands.
    #[test]
    fn nothing_is_wider_than_the_terminal_nor_raw() {
        let texts = [
            "    - 粉粉粉粉粉粉粉粉粉粉 wrong 粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉粉",
            "\t\t- 5 g\twrong\tflour,\tsifted\ttwice\tand\tkept\tdry\tand\tcool\tand\tdark",
            "    - 5 g \u{1b}[31mwrong\u{202e}flour\u{200f}\u{7}\u{9b}2J and \u{2066}more\u{2069} of it",
            "wrong",
            "    - e\u{301}e\u{301}e\u{301} wrong 👩‍🍳👩‍🍳👩‍🍳 للخبز دقيق أبيض ناعم للخبز دقيق أبيض ناعم",
            "    - a-word-that-never-ends-and-goes-on-and-on-and-on-for-more-than-a-line-wrong",
        ];
        for text in texts {
            for width in [20, 40, 80, 200] {
                let out = shown(text, "wrong", width);
                let own = out.lines().filter(|line| !line.starts_with("      "));
                for line in own {
                    assert!(display_width(line) <= width, "{width}: {line}");
                }
                let acts = |sign: char| {
                    (sign.is_control() && sign != '\n')
                        || matches!(sign, '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
                };
                assert!(!out.contains(acts), "{width}: {out:?}");
                assert!(out.contains("»wrong«"), "{width}: {out}");
            }
        }
    }

    #[test]
    fn signs_that_act_are_shown_as_signs() {
        let out = shown("a \u{1b}[2J \u{202e}b\u{7} c\n", "b\u{7}", 60);
        assert!(out.contains("a ␛[2J <U+202E>»b␇« c"), "{out}");
    }

    #[test]
    fn a_fault_of_a_whole_file_has_no_line() {
        let place = Place::file("course.yaml");
        let fault = Fault::caution("missing-file", &place, said!("missing-course"));
        let out =
            Layout::plain().render(&fault, &Texts::default(), &crate::cli::english());
        assert_eq!(
            out,
            "course.yaml\n  Caution: there is no `course.yaml`.\n  missing-file"
        );
    }
}
