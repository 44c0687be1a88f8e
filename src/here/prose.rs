//! Prose: live values in braces, links, pictures, and words of the trade.

use std::ops::Range;

use crate::said;

use super::offer::{Offer, OfferKind, fits};
use super::{Here, names};

/// A word of the trade is offered from so many letters on.
const LETTERS: usize = 3;

/// What may be written in prose.
pub(super) fn offers(here: Here, range: Range<usize>) -> Vec<Offer> {
    let at = here.spot.at;
    let before = here.typed(&range);
    let line = &before[before.rfind('\n').map_or(0, |n| n + 1)..];
    if let Some(open) = line.rfind('{').filter(|open| !line[*open..].contains('}')) {
        return live(here, at - (line.len() - open) + 1);
    }
    if let Some(open) = line.rfind("](").filter(|open| !line[*open..].contains(')')) {
        let start = at - (line.len() - open) + "](".len();
        let is_picture =
            line[..open].rfind('[').is_some_and(|n| line[..n].ends_with('!'));
        return if is_picture { pictures(here, start) } else { links(here, start) };
    }
    words(here, line)
}

/// From byte `start` to the spot, and on to the sign that ends it where it stands there.
fn up_to(here: Here, start: usize, ends: char) -> Range<usize> {
    let rest = here.spot.text[here.spot.at..].lines().next().unwrap_or("");
    let more = rest.find(ends).unwrap_or(0);
    start..here.spot.at + more
}

/// What braces may hold: sections, what the formula names, the number of pieces.
fn live(here: Here, start: usize) -> Vec<Offer> {
    let place = up_to(here, start, '}');
    let closed = here.spot.text[place.end..].starts_with('}');
    let typed = here.typed(&place);
    let mut all = names::sections(here);
    all.extend(names::written(here));
    all.push("pieces".to_owned());
    all.sort();
    all.dedup();
    let offers = all.iter().filter(|name| fits(typed, name));
    let text = |name: &str| if closed { name.to_owned() } else { format!("{name}}}") };
    offers
        .map(|name| {
            Offer::whole(OfferKind::Live, name, place.clone()).written(text(name))
        })
        .collect()
}

/// The folder of the file, and the way from there to the content folder.
fn way_up(file: &str) -> (&str, String) {
    let folder = file.rsplit_once('/').map_or("", |(folder, _)| folder);
    (folder, "../".repeat(file.matches('/').count()))
}

fn links(here: Here, start: usize) -> Vec<Offer> {
    let place = up_to(here, start, ')');
    let (folder, up) = way_up(here.spot.file);
    let address = |to: &str, name: &str| {
        if to == folder { format!("{name}.md") } else { format!("{up}{to}/{name}.md") }
    };
    let typed = here.typed(&place);
    let to = |folder: &str, offers: Vec<Offer>| -> Vec<Offer> {
        let offers = offers.into_iter().map(|it| {
            let text = address(folder, &it.text);
            it.written(text)
        });
        offers.filter(|it| fits(typed, &it.label) || it.text.starts_with(typed)).collect()
    };
    let mut found = to("recipes", names::recipes(here, &place));
    found.extend(to("techniques", names::techniques(here, &place)));
    found
}

fn pictures(here: Here, start: usize) -> Vec<Offer> {
    let place = up_to(here, start, ')');
    let (_, up) = way_up(here.spot.file);
    let typed = here.typed(&place).to_owned();
    let offers = names::pictures(here, &place).into_iter().map(|it| {
        let text = format!("{up}media/{}", it.text);
        it.written(text)
    });
    offers.filter(|it| fits(&typed, &it.label) || it.text.starts_with(&typed)).collect()
}

/// Words of the trade that begin as the word being typed does.
fn words(here: Here, line: &str) -> Vec<Offer> {
    let word = line.len()
        - line.trim_end_matches(|sign: char| sign.is_alphanumeric() || sign == '-').len();
    let typed = &line[line.len() - word..];
    if typed.chars().count() < LETTERS {
        return Vec::new();
    }
    let place = here.spot.at - word..here.spot.at;
    let entries = here.edition.content.glossary.iter();
    let forms = entries.flat_map(|entry| {
        std::iter::once(&entry.word)
            .chain(&entry.also)
            .map(move |form| (entry, &form.value))
    });
    let begun =
        forms.filter(|(_, form)| form.to_lowercase().starts_with(&typed.to_lowercase()));
    begun
        .map(|(entry, form)| {
            let offer = Offer::whole(OfferKind::Word, form, place.clone());
            let word = &entry.word.value;
            Offer { about: Some(said!("here-word", word)), ..offer }
        })
        .collect()
}
