//! Pictures that texts ask for are in the media folder.

use crate::fault::{Fault, Placed, nearest};
use crate::model::Content;
use crate::said;

/// Pictures that are not there.
pub(super) fn missing(content: &Content) -> Vec<Fault> {
    let recipes = content.recipes.iter().flat_map(|recipe| recipe.pictures());
    let techniques = content.techniques.iter().flat_map(|one| &one.pictures);
    recipes.chain(techniques).filter_map(|file| fault(file, content)).collect()
}

fn fault(file: &Placed<String>, content: &Content) -> Option<Fault> {
    let known = || content.media.iter().map(|medium| medium.name.as_str());
    if known().any(|name| name == file.value) || content.is_unread(&file.value) {
        return None;
    }
    let near = nearest(&file.value, known());
    let message = said!("missing-picture", picture = file.value);
    let fault = Fault::error("missing-picture", &file.place, message);
    Some(
        fault.meant(&file.value, near, || {
            said!("missing-picture-help", picture = file.value)
        }),
    )
}
