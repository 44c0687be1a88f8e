//! Drawings in a page: each different one once, with the classes of the batches and the
//! unit system that it serves. They carry no identifiers, so any number may stand there.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::draw::Figure;
use crate::measure::Label;

use super::html::Html;
use super::vary::{Batches, batch_classes, class_list, grouped, varied};

/// Drawings by recipe and batch key, or by technique and an empty key.
pub type FigureMap = BTreeMap<(String, String), Vec<Figure>>;

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
    /// The same in words.
    words: Html,
}

/// The drawings of a recipe, in the order of its first batch.
pub(super) fn of_recipe(
    figures: &FigureMap,
    recipe: &str,
    batches: &Batches,
) -> Vec<Drawing> {
    let at = |key: &str| figures.get(&(recipe.to_owned(), key.to_owned()));
    let sets: Vec<&[Figure]> =
        batches.keys.iter().map(|key| at(key).map_or(&[][..], Vec::as_slice)).collect();
    drawings(&batches.keys, &sets)
}

/// The drawings of a technique.
pub(super) fn of_technique(figures: &FigureMap, technique: &str) -> Vec<Drawing> {
    let set = figures.get(&(technique.to_owned(), String::new()));
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
    let same =
        |set: &&[Figure]| set.iter().find(|figure| figure.name == first.name).cloned();
    let found: Vec<Option<Figure>> = sets.iter().map(same).collect();
    let all = |read: fn(Figure) -> Label| -> Vec<Label> {
        found.iter().map(|figure| figure.clone().map(read).unwrap_or_default()).collect()
    };
    Drawing {
        name: first.name.clone(),
        step: first.step.clone(),
        kind: first.kind.clone(),
        title: first.title.clone(),
        svg: pictures(keys, &all(|figure| figure.svg)),
        words: varied(keys, &all(|figure| figure.alt)),
    }
}

/// The different pictures; one for both unit systems where they never differ.
fn pictures(keys: &[&str], svgs: &[Label]) -> Html {
    let us = svgs.iter().map(|svg| svg.us.as_str());
    if svgs.iter().all(|svg| svg.metric == svg.us) {
        return Html(system(keys, "", us));
    }
    let metric = svgs.iter().map(|svg| svg.metric.as_str());
    Html(system(keys, "m", metric) + &system(keys, "u", us))
}

/// The different pictures of one unit system, each with its classes.
fn system<'t>(keys: &[&str], unit: &str, svgs: impl Iterator<Item = &'t str>) -> String {
    let picture = |(svg, at): &(&str, Vec<&str>)| {
        let classes = class_list(&["picture", unit, &batch_classes(at, keys.len())]);
        format!("<div class=\"{classes}\">{}</div>", root(svg))
    };
    let all = grouped(keys, svgs);
    all.iter().filter(|(svg, _)| !svg.is_empty()).map(picture).collect()
}

/// The drawing from its first tag on: an XML declaration has no place within a page.
fn root(svg: &str) -> &str {
    svg.find("<svg").map_or("", |at| &svg[at..])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn figure(size: &str) -> Figure {
        let svg = |unit: &str| format!("<?xml version=\"1.0\"?><svg>{size}{unit}</svg>");
        Figure {
            name: "cut".into(),
            step: None,
            kind: "cut".into(),
            title: "Cut".into(),
            alt: Label::same(size),
            svg: Label::new(svg(" cm"), svg(" in")),
        }
    }

    #[test]
    fn each_form_stands_once() {
        let sets =
            [figure("small"), figure("large"), figure("large")].map(|one| vec![one]);
        let sets: Vec<&[Figure]> = sets.iter().map(Vec::as_slice).collect();
        let drawn = drawings(&["half", "x1", "x2"], &sets);
        assert_eq!(drawn.len(), 1);
        let html = &drawn[0].svg.0;
        assert_eq!(html.matches("<svg").count(), 4);
        assert!(!html.contains("<?xml"));
        let large = "<div class=\"picture u b b-x1 b-x2\"><svg>large in</svg></div>";
        assert!(html.contains(large));
    }
}
