//! Notes from the bench: a plain text beside its recipe, a line a note, each with its day.
//! Lines that begin with `#`, and empty ones, are the author's own.

use jiff::civil::Date;

use crate::fault::{Fault, FileName, Place, Placed};
use crate::model::{BenchNotes, Note};
use crate::said;

/// How the name of a text of notes ends, after the recipe's own name.
pub(crate) const BENCH: &str = ".bench.txt";
/// Says of a note that the recipe has it now: `2027-03-09 taken up: bake 2 min longer`.
const TAKEN_UP: &str = "taken up:";
/// A note has no more signs than this.
const LONGEST: usize = 500;

/// Whether a path below the content folder is that of notes.
pub(crate) fn is_bench(path: &str) -> bool {
    path.strip_prefix("recipes/").is_some_and(|file| file.ends_with(BENCH))
}

/// Reads the notes on a recipe from the text of `file`.
pub(crate) fn bench(
    file: &FileName,
    text: &str,
    recipe: &str,
    faults: &mut Vec<Fault>,
) -> BenchNotes {
    let (mut notes, mut at): (Vec<Note>, usize) = (Vec::new(), 0);
    for line in text.split_inclusive('\n') {
        let bare = line.trim_start_matches('\u{feff}').trim();
        let start = at + line.find(bare).unwrap_or(0);
        let place = Place::new(file, start, start + bare.len());
        at += line.len();
        if bare.is_empty() || bare.starts_with('#') {
            continue;
        }
        match dated(bare) {
            Some((on, said)) => take(&mut notes, on, Placed::new(said.to_owned(), place)),
            None => faults.push(
                Fault::caution("note-without-day", &place, said!("note-without-day"))
                    .help(said!("note-without-day-help")),
            ),
        }
    }
    BenchNotes { recipe: recipe.to_owned(), notes, place: Place::file(file) }
}

/// A note more, or that those are taken up which say the same.
fn take(notes: &mut Vec<Note>, on: Date, text: Placed<String>) {
    let Some(same) = text.value.strip_prefix(TAKEN_UP) else {
        return notes.push(Note { on, text, taken_up: None });
    };
    let own = notes.iter_mut().filter(|note| note.text.value == same.trim());
    own.for_each(|note| note.taken_up = note.taken_up.or(Some(on)));
}

/// `2027-03-03 baked 2 min longer`: its day and the rest.
fn dated(line: &str) -> Option<(Date, &str)> {
    let (day, said) = line.split_once(char::is_whitespace)?;
    let said = said.trim();
    Some((day.parse().ok()?, said)).filter(|_| day.len() == 10 && !said.is_empty())
}

/// A note as a line of its text; `None` where it says nothing, or more than a note does.
pub fn note_line(on: Date, said: &str) -> Option<String> {
    let plain = |sign: char| if sign.is_control() { ' ' } else { sign };
    let said: String = said.chars().map(plain).collect();
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    let sound = !said.is_empty() && said.chars().count() <= LONGEST;
    sound.then(|| format!("{on} {said}"))
}

/// The line that says that a note is taken up.
pub fn taken_up_line(on: Date, note: &Note) -> String {
    format!("{on} {TAKEN_UP} {}", note.text.value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    fn read(text: &str) -> (Vec<Note>, Vec<&'static str>) {
        let mut faults = Vec::new();
        let found = bench(&"recipes/a.bench.txt".into(), text, "a", &mut faults);
        (found.notes, faults.iter().map(|fault| fault.name).collect())
    }

    #[test]
    fn a_note_is_a_day_and_words() {
        let (notes, faults) = read(
            "\u{feff}# mine\n\n2027-03-03 baked 2 min longer\r\n2027-03-04  10 g less salt",
        );
        let texts: Vec<_> = notes.iter().map(|note| &*note.text.value).collect();
        assert_eq!(texts, ["baked 2 min longer", "10 g less salt"]);
        assert_eq!(notes[0].on, date(2027, 3, 3));
        assert!(notes.iter().all(|note| note.taken_up.is_none()) && faults.is_empty());
    }

    #[test]
    fn what_is_taken_up_is_told_by_its_words() {
        let first = read("2027-03-03 colder\n").0.remove(0);
        let line = taken_up_line(date(2027, 3, 9), &first);
        let (notes, _) = read(&format!(
            "2027-03-02 warmer\n2027-03-03 colder\n{line}\n2027-03-10 colder\n"
        ));
        let taken: Vec<_> = notes.iter().map(|note| note.taken_up).collect();
        // One that is made again later is open again.
        assert_eq!(taken, [None, Some(date(2027, 3, 9)), None]);
    }

    #[test]
    fn a_line_without_its_day_is_said() {
        for line in
            ["baked longer", "2027-03-03", "2027-13-03 a", "20270303 a", "3 March a"]
        {
            assert_eq!(read(line).1, ["note-without-day"], "{line}");
        }
    }

    #[test]
    fn any_words_make_one_line_that_reads_back() {
        let on = date(2027, 3, 3);
        for said in ["a\nb\tc", "  # x ", "a\u{7}b", "2027-03-04 b", "é 日本"] {
            let line = note_line(on, said).expect("words");
            let (notes, faults) = read(&line);
            assert_eq!((notes.len(), faults.len()), (1, 0), "{line:?}");
            assert_eq!(note_line(on, &notes[0].text.value), Some(line));
        }
        assert_eq!(note_line(on, " \n "), None);
        assert_eq!(note_line(on, &"a".repeat(501)), None);
    }
}
