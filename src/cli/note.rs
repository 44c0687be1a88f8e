//! `tourier note`: what was noted of a recipe at the bench, kept beside it until its next
//! edition takes it up.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use crate::edition::Edition;
use crate::evening::{here, zone};
use crate::model::{BenchNotes, Note};
use crate::read::{self, BENCH, note_line, taken_up_line};
use crate::said;
use crate::statement::Statement;
use crate::store::{LineFile, line_text, note_path};

use super::args::NoteArgs;
use super::{Call, Done, Stop, nowhere, open, stem};

/// Says that notes are taken up.
const TAKEN_UP: &str = "taken up";

/// Keeps a note, says that notes are taken up, or shows them.
pub(super) fn run(call: &Call, options: &NoteArgs) -> Done {
    // At the bench, a slip elsewhere in the course is no reason not to keep a note.
    let (edition, _) = open(call)?;
    let recipe = recipe(&edition, stem(&options.recipe))?;
    let path = note_path(&call.content, recipe);
    let said = options.said.trim();
    if said.is_empty() {
        return show(call, &notes(&line_text(&path)?, recipe));
    }
    let on = day(&edition, options.on.as_deref())?;
    let too_long = said!("note-unkept", recipe);
    let new = note_line(on, said).ok_or(Stop::Use(too_long))?;
    let mut file = LineFile::open(&path)?;
    let lines = match numbers(said) {
        None => vec![new],
        Some(which) => taken(&notes(&file.text, recipe), which, on)?,
    };
    lines.iter().try_for_each(|line| file.keep(line))?;
    let open = open_in(&notes(&file.text, recipe));
    let shown = path.display().to_string();
    call.say(&said!("note-kept", file = shown, open))
}

/// The recipe of this name; one that cannot be read now is one too.
fn recipe<'a>(edition: &'a Edition, name: &'a str) -> Result<&'a str, Stop> {
    let content = &edition.content;
    let written = content.recipes.iter().filter(|recipe| recipe.way.is_none());
    let known: Vec<&str> = written.map(|recipe| recipe.name.as_str()).collect();
    if known.contains(&name) || content.is_unread(name) {
        return Ok(name);
    }
    Err(nowhere(said!("kind-recipe"), name, &known))
}

fn notes(text: &str, recipe: &str) -> BenchNotes {
    // What does not read as a note is said by `proof`.
    let file = format!("recipes/{recipe}{BENCH}");
    read::bench(&file.as_str().into(), text, recipe, &mut Vec::new())
}

fn open_in(notes: &BenchNotes) -> usize {
    notes.notes.iter().filter(|note| note.taken_up.is_none()).count()
}

/// `taken up 1, 3`: which notes; none named for all of them. `None` where a note is meant.
fn numbers(said: &str) -> Option<Vec<usize>> {
    let rest = said.strip_prefix(TAKEN_UP)?;
    let apart = |sign: char| sign == ',' || sign.is_whitespace();
    let parts = rest.split(apart).filter(|part| !part.is_empty());
    parts.map(|part| part.parse().ok()).collect()
}

/// The lines that take these notes up.
fn taken(notes: &BenchNotes, which: Vec<usize>, on: Date) -> Result<Vec<String>, Stop> {
    let all = &notes.notes;
    let recipe = &notes.recipe;
    let open = |note: &&Note| note.taken_up.is_none();
    if which.is_empty() {
        return Ok(all.iter().filter(open).map(|note| taken_up_line(on, note)).collect());
    }
    let line = |number: usize| {
        let note = number.checked_sub(1).and_then(|at| all.get(at)).ok_or_else(|| {
            Stop::Use(said!("note-no-number", recipe, number, count = all.len()))
        })?;
        if note.taken_up.is_some() {
            return Err(Stop::Use(said!("note-taken-before", number)));
        }
        Ok(taken_up_line(on, note))
    };
    which.into_iter().map(line).collect()
}

/// Shows every note with its number.
fn show(call: &Call, notes: &BenchNotes) -> Done {
    if notes.notes.is_empty() {
        return call.say(&said!("note-none", recipe = notes.recipe));
    }
    let all = notes.notes.iter().enumerate();
    all.map(|(at, note)| line(at + 1, note)).try_for_each(|line| call.say(&line))
}

fn line(number: usize, note: &Note) -> Statement {
    let (on, text) = (note.on.to_string(), note.text.value.as_str());
    match note.taken_up {
        None => said!("note-line", number, on, text),
        Some(taken) => {
            said!("note-line-taken", number, on, text, taken = taken.to_string())
        }
    }
}

/// The day that is said, else this machine's, in the course's zone where it names one.
fn day(edition: &Edition, said: Option<&str>) -> Result<Date, Stop> {
    if let Some(said) = said {
        return said.parse().map_err(|_| Stop::Use(said!("note-no-day", said)));
    }
    let anywhere = || jiff::Timestamp::now().to_zoned_datetime(TimeZone::UTC).datetime();
    Ok(zone(edition).and_then(here).unwrap_or_else(anywhere).date())
}
