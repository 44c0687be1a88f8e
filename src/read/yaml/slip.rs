//! The slip behind YAML that does not read. The engine stops where it can no longer go on,
//! which may be many lines below the quote that was never closed: so each line that looks
//! amiss is mended, one at a time, and the one with which the whole reads is named.

use std::ops::Range;

use crate::said;
use crate::statement::Statement;

/// A text larger than this is not mended.
const LARGEST: usize = 64 << 10;
/// So many ways of mending are tried.
const MOST: usize = 200;

/// One slip of the hand.
pub(super) struct Slip {
    /// The words at fault, in bytes of the text.
    pub(super) at: Range<usize>,
    /// What is wrong.
    pub(super) message: Statement,
    /// What would be right.
    pub(super) help: Statement,
    /// The bytes of the text that are replaced, and by what.
    pub(super) mending: (Range<usize>, String),
}

impl Slip {
    /// One whose mending is not chosen yet.
    fn new(at: Range<usize>, message: Statement, help: Statement) -> Self {
        Self { at, message, help, mending: (0..0, String::new()) }
    }
}

/// A way to mend a line: these bytes of the text replaced.
struct Mend {
    replaced: Range<usize>,
    by: String,
    slip: Slip,
}

/// The slip whose mending lets `text` be read, as `reads` has it. What no text means comes
/// first, from the first line on; then what the lines around byte `near` may mean, where the
/// engine stopped.
pub(super) fn find(
    (text, near): (&str, usize),
    reads: impl Fn(&str) -> bool,
) -> Option<Slip> {
    if text.len() > LARGEST {
        return None;
    }
    let mut at = 0;
    let mut above = "";
    let (mut sure, mut likely) = (Vec::new(), Vec::new());
    for line in text.split_inclusive('\n') {
        let found = ways(line.trim_end(), at, above);
        sure.extend(found.0);
        likely.extend(found.1);
        if !line.trim().is_empty() {
            above = line;
        }
        at += line.len();
    }
    let helps = |mend: &Mend| {
        let (before, after) = (&text[..mend.replaced.start], &text[mend.replaced.end..]);
        reads(&[before, &mend.by, after].concat())
    };
    likely.sort_by_key(|mend| mend.slip.at.start.abs_diff(near));
    let tried = sure.into_iter().take(MOST).chain(likely.into_iter().take(MOST));
    tried
        .into_iter()
        .find(helps)
        .map(|mend| Slip { mending: (mend.replaced, mend.by), ..mend.slip })
}

/// The ways to mend a line that begins at byte `at`: those for what no text means, and the
/// others.
fn ways(line: &str, at: usize, above: &str) -> (Vec<Mend>, Vec<Mend>) {
    let bare = line.trim_start();
    if bare.is_empty() || bare.starts_with('#') {
        return (Vec::new(), Vec::new());
    }
    let inner = at + (line.len() - bare.len());
    let sure = [quote(line, at), bracket(line, at), dash(bare, inner)];
    let likely = [colon(bare, inner), within(bare, inner), column(line, at, above)];
    (sure.into_iter().flatten().collect(), likely.into_iter().flatten().collect())
}

/// The value behind `- ` and behind `key: `, and where it begins.
fn value(line: &str) -> (usize, &str) {
    let bare = line.trim_start().trim_start_matches("- ").trim_start();
    let from = line.len() - bare.len();
    match bare.find(": ") {
        Some(found) if !bare.starts_with(['"', '\'']) => {
            let rest = bare[found + 2..].trim_start();
            (line.len() - rest.len(), rest)
        }
        _ => (from, bare),
    }
}

/// A quote that nothing closes in its line.
fn quote(line: &str, at: usize) -> Option<Mend> {
    let (from, value) = value(line);
    let mark = ['"', '\''].into_iter().find(|mark| value.starts_with(*mark))?;
    let inner = value[1..].replace("\\\\", "").replace("\\\"", "").replace("''", "");
    if inner.contains(mark) {
        return None;
    }
    let close = mark.to_string();
    let help = said!("yaml-open-quote-help", close);
    Some(unclosed(at + from..at + line.len(), mark, said!("yaml-open-quote"), help))
}

/// What is opened at the start of `at` and wants `close` at its end.
fn unclosed(at: Range<usize>, close: char, message: Statement, help: Statement) -> Mend {
    Mend {
        replaced: at.end..at.end,
        by: close.to_string(),
        slip: Slip::new(at, message, help),
    }
}

/// A bracket that nothing closes in its line.
fn bracket(line: &str, at: usize) -> Option<Mend> {
    let (from, value) = value(line);
    let (open, close) =
        [('[', ']'), ('{', '}')].into_iter().find(|it| value.starts_with(it.0))?;
    if value.matches(open).count() <= value.matches(close).count() {
        return None;
    }
    let end = close.to_string();
    let help = said!("yaml-open-bracket-help", end);
    Some(unclosed(at + from..at + line.len(), close, said!("yaml-open-bracket"), help))
}

/// `-500 g flour`.
fn dash(bare: &str, at: usize) -> Option<Mend> {
    let rest = bare.strip_prefix('-').filter(|rest| !rest.starts_with([' ', '-']))?;
    (!rest.is_empty()).then(|| Mend {
        replaced: at + 1..at + 1,
        by: " ".into(),
        slip: Slip::new(
            at..at + bare.len(),
            said!("yaml-no-space"),
            said!("yaml-write-item", rest),
        ),
    })
}

/// `title:Loaf`, `title Loaf`.
fn colon(bare: &str, at: usize) -> Option<Mend> {
    let item = bare.strip_prefix("- ").unwrap_or(bare);
    let from = at + (bare.len() - item.len());
    let said = |found: usize, gap: usize| {
        let (key, value) = (item[..found].trim_end(), item[found + gap..].trim_start());
        let right = format!("{key}: {value}").trim_end().to_owned();
        let message = if gap == 1 && item[found..].starts_with(':') {
            said!("yaml-no-space-colon")
        } else {
            said!("yaml-no-colon")
        };
        Mend {
            replaced: from..from + item.len(),
            by: right.clone(),
            slip: Slip::new(from..from + item.len(), message, said!("yaml-write", right)),
        }
    };
    if item.contains(": ") || item.ends_with(':') {
        return None;
    }
    match item.find(':') {
        Some(found) if !item[found..].starts_with("://") => Some(said(found, 1)),
        _ if item.len() < bare.len() => None,
        _ => Some(said(item.find(' ').unwrap_or(item.len()), 0)),
    }
}

/// `- butter: cold`, `summary: Dark: the crust`, a value that begins with a sign of YAML.
fn within(bare: &str, at: usize) -> Option<Mend> {
    let (from, text) = {
        let item = bare.strip_prefix("- ").map(str::trim_start);
        let text = item.or_else(|| Some(bare.split_once(": ")?.1.trim_start()))?;
        (bare.len() - text.len(), text)
    };
    let odd =
        text.starts_with(['[', '{', '*', '&', '!', '%', '@', '`', '|', '>', '"', '\'']);
    if !text.contains(": ") && !odd {
        return None;
    }
    let right = format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""));
    Some(Mend {
        replaced: at + from..at + bare.len(),
        by: right.clone(),
        slip: Slip::new(
            at + from..at + bare.len(),
            said!("yaml-odd-value"),
            said!("yaml-odd-value-help", right),
        ),
    })
}

/// A line that begins at another column than the one above it.
fn column(line: &str, at: usize, above: &str) -> Option<Mend> {
    let bare = line.trim_start();
    let wanted = above.len() - above.trim_start().len();
    let found = line.len() - bare.len();
    (found != wanted && !above.trim().is_empty()).then(|| Mend {
        replaced: at..at + found,
        by: above[..wanted].to_owned(),
        slip: Slip::new(
            at + found..at + line.len(),
            said!("yaml-column"),
            said!("yaml-column-help"),
        ),
    })
}
