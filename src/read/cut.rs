//! Cuts, turns and lock-ins as an instructor writes them.

use crate::model::{CutPlan, LockIn, Meet, Rolling, Shape, Turn};

use super::quantity::{length, size};

/// A turn: `book` (double, 4), `letter` (single, 3), `half` (2), or a number of parts up
/// to 12; for a book also where its ends meet: `book, ends meet at 1/3`.
pub(crate) fn turn(text: &str) -> Option<Turn> {
    let (parts, meet) = match text.split_once(',') {
        Some((parts, meet)) => (parts, Some(self::meet(meet)?)),
        None => (text, None),
    };
    let turn = Turn::in_parts(self::parts(parts)?);
    match meet {
        Some(meet) => (turn.parts == 4).then_some(Turn { meet, ..turn }),
        None => Some(turn),
    }
}

/// `ends meet at 1/3`: from an eighth to seven eighths of the length, so that a flap is left
/// on both sides.
fn meet(text: &str) -> Option<Meet> {
    let (over, under) = text.trim().strip_prefix("ends meet at ")?.split_once('/')?;
    let meet =
        Meet { over: over.trim().parse().ok()?, under: under.trim().parse().ok()? };
    let (over, under) = (u64::from(meet.over), u64::from(meet.under));
    (under > 0 && 8 * over >= under && 8 * over <= 7 * under).then_some(meet)
}

/// Which way a block is rolled: `quarter turn`, `same way`.
pub(crate) fn rolling(text: &str) -> Option<Rolling> {
    match text.trim() {
        "quarter turn" => Some(Rolling::QuarterTurn),
        "same way" => Some(Rolling::SameWay),
        _ => None,
    }
}

fn parts(text: &str) -> Option<u32> {
    let parts = match text.trim() {
        "book" | "double" => 4,
        "letter" | "single" => 3,
        "half" => 2,
        number => number.trim_end_matches("parts").trim().parse().ok()?,
    };
    (2..=12).contains(&parts).then_some(parts)
}

/// A lock-in and whether the fat is outside: `envelope`, `letter`, `book`, `inverted book`.
pub(crate) fn inverted_lock_in(text: &str) -> Option<(LockIn, bool)> {
    match text.trim().strip_prefix("inverted") {
        Some(kind) => Some((lock_in(kind)?, true)),
        None => Some((lock_in(text)?, false)),
    }
}

/// Turns after one another: `book, book, letter`. At most eight: more than two million
/// layers are flour and fat again.
pub(crate) fn turns(text: &str) -> Option<Vec<Turn>> {
    let turns: Option<Vec<Turn>> =
        text.split(',').map(|word| turn(word.trim())).collect();
    turns.filter(|turns| turns.len() <= 8)
}

/// A lock-in: `envelope`, `letter`, `book`.
pub(crate) fn lock_in(text: &str) -> Option<LockIn> {
    match text.trim() {
        "envelope" => Some(LockIn::Envelope),
        "letter" => Some(LockIn::Letter),
        "book" => Some(LockIn::Book),
        _ => None,
    }
}

/// A cut: `triangles, base 9 cm, height 24 cm`, `rectangles 12 x 8 cm`, `squares 10 cm`,
/// `rounds 7 cm`, `strips 3 cm`, `grid, 3 strips, 2 across, each on the diagonal`.
pub(crate) fn cut(text: &str) -> Option<CutPlan> {
    let text = text.trim();
    let (word, rest) = text.split_at(text.find([',', ' ']).unwrap_or(text.len()));
    let rest = rest.trim_start_matches([',', ' ']);
    match word {
        "triangles" => triangles(rest).map(CutPlan::Shape),
        "rectangles" => size(rest).map(|size| CutPlan::Shape(Shape::Rectangles(size))),
        "squares" => length(rest).map(|side| CutPlan::Shape(Shape::Squares(side))),
        "rounds" => length(rest).map(|across| CutPlan::Shape(Shape::Rounds(across))),
        "strips" => length(rest).map(CutPlan::Strips),
        "grid" => grid(rest),
        _ => None,
    }
}

fn triangles(text: &str) -> Option<Shape> {
    let (mut base, mut height) = (None, None);
    for part in text.split(',') {
        match part.trim().split_once(' ')? {
            ("base", size) => base = length(size),
            ("height", size) => height = length(size),
            _ => return None,
        }
    }
    Some(Shape::Triangles { base: base?, height: height? })
}

fn grid(text: &str) -> Option<CutPlan> {
    let (mut strips, mut across, mut diagonal) = (1, 1, false);
    for part in text.split(',') {
        let part = part.trim();
        let count = part.split(' ').next()?.parse();
        match (part, count) {
            ("each on the diagonal", _) => diagonal = true,
            (_, Ok(count)) if part.ends_with("strips") || part.ends_with("strip") => {
                strips = count;
            }
            (_, Ok(count)) if part.ends_with("across") => across = count,
            _ => return None,
        }
    }
    let sound = (1..=200).contains(&strips) && (1..=200).contains(&across);
    sound.then_some(CutPlan::Grid { strips, across, diagonal })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_cut_reads() {
        for text in [
            "triangles, base 9 cm, height 24 cm",
            "rectangles 12 x 8 cm",
            "squares 10 cm",
            "rounds 7 cm",
            "strips 3 cm",
            "grid, 3 strips, 2 across",
        ] {
            assert!(cut(text).is_some(), "{text}");
        }
        let diagonal = CutPlan::Grid { strips: 3, across: 2, diagonal: true };
        assert_eq!(cut("grid, 3 strips, 2 across, each on the diagonal"), Some(diagonal));
        for text in ["", "hearts 3 cm", "triangles, base 9 cm", "grid, 0 strips"] {
            assert_eq!(cut(text), None, "{text}");
        }
    }

    #[test]
    fn turns_have_words_and_numbers() {
        assert_eq!(turn("double"), Some(Turn::in_parts(4)));
        for (word, parts) in [("book", 4), ("letter", 3), ("single", 3), ("half", 2)] {
            assert_eq!(turn(word), Some(Turn::in_parts(parts)));
        }
        assert_eq!(turn("2"), Some(Turn::in_parts(2)));
        assert_eq!(turn("12"), Some(Turn::in_parts(12)));
        let third = Meet { over: 1, under: 3 };
        let off_centre = Turn { meet: third, ..Turn::in_parts(4) };
        assert_eq!(turn("book, ends meet at 1/3"), Some(off_centre));
        for text in [
            "letter, ends meet at 1/3",
            "book, ends meet at 1/9",
            "book, ends meet at 8/9",
            "book, ends meet at 1/0",
            "book, at 1/3",
            "book, book",
        ] {
            assert_eq!(turn(text), None, "{text}");
        }
        assert_eq!(rolling("same way"), Some(Rolling::SameWay));
        assert_eq!(rolling("sideways"), None);
        assert_eq!(turn("13"), None);
        assert_eq!(turn("3"), Some(Turn::in_parts(3)));
        assert_eq!(turn("5 parts"), Some(Turn::in_parts(5)));
        assert_eq!(turn("1"), None);
        assert_eq!(inverted_lock_in("inverted book"), Some((LockIn::Book, true)));
        assert_eq!(inverted_lock_in("letter"), Some((LockIn::Letter, false)));
        assert_eq!(inverted_lock_in("inverted"), None);
    }
}
