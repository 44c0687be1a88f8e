//! Drawings in a page: each different one once, with the classes of the batches and the
//! unit system that it serves. They carry no identifiers, so any number may stand there.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::draw::{Figure, FigureKind, Forms};
use crate::measure::Label;

use super::html::Html;
use super::overlay::{Sheet, overlaid};
use super::vary::{Batches, varied};

/// Drawings by technique.
pub type FigureMap = BTreeMap<String, Vec<Figure>>;

/// Whoever has the techniques' drawings; they may be made only when a page shows them.
pub trait Drawn: Sync {
    /// The drawings of a technique, by its file name.
    fn of(&self, technique: &str) -> &[Figure];
}

impl Drawn for FigureMap {
    fn of(&self, technique: &str) -> &[Figure] {
        self.get(technique).map_or(&[], Vec::as_slice)
    }
}

/// A drawing, ready to stand in a page.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Drawing {
    /// Its name.
    pub(super) name: String,
    /// The step it belongs to.
    pub(super) step: Option<String>,
    /// What it shows.
    pub(super) kind: FigureKind,
    /// Its title.
    title: String,
    /// The title's language, where it is not the page's.
    pub(super) title_in: Option<String>,
    /// The drawings of every batch and both unit systems.
    svg: Html,
    /// The same for wide screens; a timeline alone has more to show on them.
    wide: Option<Html>,
    /// The same in words.
    words: Html,
}

/// The drawings of a recipe, given by batch key, in the order of its first batch.
pub(super) fn of_recipe(
    figures: &[(String, Vec<Figure>)],
    batches: &Batches,
) -> Vec<Drawing> {
    let at = |key: &str| figures.iter().find(|(batch, _)| batch == key);
    let own = |key: &&str| at(key).map_or(&[][..], |(_, drawn)| drawn);
    let sets: Vec<&[Figure]> = batches.keys.iter().map(own).collect();
    drawings(&batches.keys, &sets)
}

/// The drawings of a technique.
pub(super) fn of_technique(figures: &dyn Drawn, technique: &str) -> Vec<Drawing> {
    drawings(&[""], &[figures.of(technique)])
}

fn drawings(keys: &[&str], sets: &[&[Figure]]) -> Vec<Drawing> {
    let mut seen = BTreeSet::new();
    let all = sets.iter().flat_map(|set| set.iter());
    all.filter(|figure| seen.insert(figure.name.as_str()))
        .map(|figure| drawing(keys, sets, figure))
        .collect()
}

/// The drawing named as `first` is, at every batch that has it.
fn drawing(keys: &[&str], sets: &[&[Figure]], first: &Figure) -> Drawing {
    let named = |figure: &&Figure| figure.name == first.name;
    let found: Vec<Option<&Figure>> =
        sets.iter().map(|set| set.iter().find(named)).collect();
    let words = found.iter().map(|figure| figure.map(|it| it.alt.clone()));
    let words: Vec<Label> = words.map(Option::unwrap_or_default).collect();
    let drawn = |read: fn(&Figure) -> Option<&Forms>| {
        let forms = keys.iter().zip(&found);
        let forms = forms.filter_map(|(key, figure)| Some((*key, read((*figure)?)?)));
        pictures(&first.title, keys, forms)
    };
    Drawing {
        name: first.name.clone(),
        step: first.step.clone(),
        kind: first.kind,
        title: first.title.clone(),
        title_in: None,
        svg: drawn(|figure| Some(&figure.upright)),
        wide: (first.kind == FigureKind::Timeline)
            .then(|| drawn(|figure| figure.wide.as_ref())),
        words: varied(keys, &words),
    }
}

/// The pictures of all batches in both unit systems.
fn pictures<'a>(
    title: &str,
    keys: &[&str],
    forms: impl Iterator<Item = (&'a str, &'a Forms)>,
) -> Html {
    let sheets = forms.flat_map(|(key, forms)| {
        [
            Sheet { unit: "m", key, drawing: &forms.metric },
            Sheet { unit: "u", key, drawing: &forms.us },
        ]
    });
    Html(overlaid(title, &sheets.collect::<Vec<_>>(), keys))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::draw::labelled;

    #[test]
    fn a_drawing_is_named_after_the_first_batch_that_has_it() {
        let form = || labelled(9.0, "5");
        let both = || Forms { metric: form(), us: form() };
        let figure = |name: &str| Figure {
            name: name.into(),
            step: None,
            kind: FigureKind::Cut,
            title: name.to_uppercase(),
            alt: Label::same("words"),
            upright: both(),
            wide: None,
            paper: None,
        };
        let sets = [vec![figure("cut")], vec![figure("cut"), figure("trim")]];
        let drawn = drawings(&["x1", "x2"], &[&sets[0], &sets[1]]);
        let names: Vec<&str> = drawn.iter().map(|one| one.name.as_str()).collect();
        assert_eq!(names, ["cut", "trim"]);
        for (at, classes, label) in [(0, "picture", "CUT"), (1, "picture b b-x2", "TRIM")]
        {
            let svg = &drawn[at].svg.0;
            assert!(svg.starts_with(&format!("<div class=\"{classes}\"><svg ")), "{svg}");
            assert!(svg.contains(&format!(" aria-label=\"{label}\">")), "{svg}");
        }
        assert_eq!(drawn[1].words.0, "<span class=\"b b-x2\">words</span>");
    }
}
