//! Notes from the bench belong to a recipe, and wait to be taken up into it.

use crate::fault::{Fault, nearest};
use crate::model::{Content, Note};
use crate::said;

/// Notes on no recipe.
pub(super) fn of_nothing(content: &Content) -> Vec<Fault> {
    let known = || content.recipes.iter().map(|recipe| recipe.name.as_str());
    let lost = content.notes.iter().filter(|notes| {
        !known().any(|name| name == notes.recipe) && !content.is_unread(&notes.recipe)
    });
    let fault = |notes: &crate::model::BenchNotes| {
        let name = &notes.recipe;
        let fault = Fault::caution(
            "note-of-nothing",
            &notes.place,
            said!("note-of-nothing", name),
        );
        match nearest(name, known()) {
            Some(near) => fault.help(said!("did-you-mean", near)),
            None => fault.help(said!("note-of-nothing-help")),
        }
    };
    lost.map(fault).collect()
}

/// Each note that is not yet taken up into its recipe.
pub fn open_notes(content: &Content) -> Vec<Fault> {
    let notes = content.notes.iter().flat_map(|of| {
        let open = |note: &&Note| note.taken_up.is_none();
        let own = of.notes.iter().enumerate();
        own.filter(move |(_, note)| open(note)).map(move |(at, note)| (of, at + 1, note))
    });
    let fault = |(of, number, note): (&crate::model::BenchNotes, usize, &Note)| {
        let recipe = &of.recipe;
        Fault::caution("note-open", &note.text.place, said!("note-open", recipe))
            .help(said!("note-open-help", recipe, number))
    };
    notes.map(fault).collect()
}
