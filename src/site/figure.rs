//! Drawings in a page: each different one once, with the classes of the batches and the
//! unit system that it serves. They carry no identifiers, so any number may stand there.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::draw::Figure;
use crate::measure::Label;

use super::html::Html;
use super::overlay::{Sheet, overlaid};
use super::vary::{Batches, varied};

/// Drawings by technique.
pub type FigureMap = BTreeMap<String, Vec<Figure>>;

/// A drawing, ready to stand in a page.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Drawing {
    /// Its name.
    pub(super) name: String,
    /// The step it belongs to.
    pub(super) step: Option<String>,
    /// What it shows.
    pub(super) kind: String,
    /// Its title.
    title: String,
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
pub(super) fn of_technique(figures: &FigureMap, technique: &str) -> Vec<Drawing> {
    let set = figures.get(technique);
    drawings(&[""], &[set.map_or(&[][..], Vec::as_slice)])
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
    let all = |read: fn(&Figure) -> Label| -> Vec<Label> {
        found.iter().map(|figure| figure.map(read).unwrap_or_default()).collect()
    };
    let drawn = |svgs: &[Label]| pictures(&first.title, keys, svgs);
    let wide = || drawn(&all(|figure| figure.wide.clone().unwrap_or_default()));
    Drawing {
        name: first.name.clone(),
        step: first.step.clone(),
        kind: first.kind.clone(),
        title: first.title.clone(),
        svg: drawn(&all(|figure| figure.svg.clone())),
        wide: (first.kind == "timeline").then(wide),
        words: varied(keys, &all(|figure| figure.alt.clone())),
    }
}

/// The pictures of all batches in both unit systems.
fn pictures(title: &str, keys: &[&str], svgs: &[Label]) -> Html {
    let sheets = keys.iter().zip(svgs).flat_map(|(key, svg)| {
        [
            Sheet { unit: "m", key, svg: &svg.metric },
            Sheet { unit: "u", key, svg: &svg.us },
        ]
    });
    Html(overlaid(title, &sheets.collect::<Vec<_>>(), keys))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drawing_is_named_after_the_first_batch_that_has_it() {
        let figure = |name: &str| Figure {
            name: name.into(),
            step: None,
            kind: "cut".into(),
            title: name.to_uppercase(),
            alt: Label::same("words"),
            svg: Label::same("<svg></svg>"),
            wide: None,
        };
        let sets = [vec![figure("cut")], vec![figure("cut"), figure("trim")]];
        let drawn = drawings(&["x1", "x2"], &[&sets[0], &sets[1]]);
        let names: Vec<&str> = drawn.iter().map(|one| one.name.as_str()).collect();
        assert_eq!(names, ["cut", "trim"]);
        assert_eq!(
            drawn[0].svg.0,
            "<div class=\"picture\"><svg aria-label=\"CUT\"></svg></div>"
        );
        assert_eq!(
            drawn[1].svg.0,
            "<div class=\"picture b b-x2\"><svg aria-label=\"TRIM\"></svg></div>"
        );
        assert_eq!(drawn[1].words.0, "<span class=\"b b-x2\">words</span>");
    }
}
