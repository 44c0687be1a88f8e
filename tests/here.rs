//! What stands at a place in a text: what may be written there, in sound texts, in lines half
//! typed, and at any byte of texts that do not read.
#![allow(clippy::disallowed_methods, reason = "the course is read from disk")]

use std::path::Path;

use tourier::edition::Edition;
use tourier::here::{Offer, OfferKind, Spot, offers};
use tourier::read::Shape;
use tourier::store;

/// The demonstration course.
fn course() -> Edition {
    let folder = Path::new("content");
    let (sources, mut faults) = store::load(folder).expect("the course is read");
    let (media, found) = store::media(folder).expect("the pictures are read");
    faults.extend(found);
    Edition::new(&sources, media, faults)
}

/// What is offered where `|` stands in a text, and the text without it.
fn at(edition: &Edition, file: &str, marked: &str) -> (Vec<Offer>, String) {
    let place = marked.find('|').expect("a place is marked");
    let text = marked.replacen('|', "", 1);
    let spot = Spot { file, text: &text, at: place };
    (offers(spot, edition), text)
}

/// The text with an offer taken.
fn taken(text: &str, offer: &Offer) -> String {
    let mut text = text.to_owned();
    text.replace_range(offer.place.clone(), &offer.text);
    text
}

const HEAD: &str = "---\ntitle: t\nsummary: s\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n  roll-in:\n    - 250 g butter\n---\n";

#[test]
#[expect(clippy::too_many_lines, reason = "a table")]
fn what_may_be_written_is_offered_and_goes_where_it_belongs() {
    let edition = course();
    let recipe = "recipes/new.md";
    let body =
        |text: &str| format!("{HEAD}## Mix\n~~~ticket\nuses: dough\n~~~\nMix.\n\n{text}");
    for (file, marked, kind, label, result) in [
        (
            recipe,
            "---\nti|\n---\n".to_owned(),
            OfferKind::Key,
            "title",
            "---\ntitle: \n---\n",
        ),
        (
            recipe,
            "---\ntitle: t\ndough |\n".to_owned(),
            OfferKind::Key,
            "dough temperature",
            "dough temperature: \n",
        ),
        (
            recipe,
            "---\nincluded: |\n---\n".to_owned(),
            OfferKind::Value,
            "by name only",
            "included: by name only\n",
        ),
        (
            recipe,
            "---\nformula:\n  dough:\n    - 500 g bre|\n---\n".to_owned(),
            OfferKind::Ingredient,
            "bread flour",
            "- 500 g bread flour\n",
        ),
        (
            recipe,
            "---\nformula:\n  dough:\n    - 500 g lay|\n---\n".to_owned(),
            OfferKind::Recipe,
            "Layered dough",
            "- 500 g [layered dough](layered-dough.md)\n",
        ),
        (
            recipe,
            "---\nformula:\n  dough:\n    - 2 c| bread flour\n---\n".to_owned(),
            OfferKind::Unit,
            "cup",
            "- 2 cup bread flour\n",
        ),
        (
            recipe,
            "---\nformula:\n  dough:\n    - 2 l| egg\n---\n".to_owned(),
            OfferKind::Unit,
            "large",
            "- 2 large egg\n",
        ),
        (
            recipe,
            "---\npreferment: |\nformula:\n  poolish:\n    - 100 g water\n---\n"
                .to_owned(),
            OfferKind::Section,
            "poolish",
            "preferment: poolish\n",
        ),
        (
            recipe,
            "---\npicture: ro|\n---\n".to_owned(),
            OfferKind::Picture,
            "roll-up.jpg",
            "picture: roll-up.jpg\n",
        ),
        (
            recipe,
            body("## Fold\n~~~ticket\nwh|\n~~~\n"),
            OfferKind::Row,
            "where",
            "where: \n~~~",
        ),
        (recipe, body("## Fold\n~~~ticket\nwh|"), OfferKind::Row, "where", "where: "),
        (
            recipe,
            body("## Fold\n~~~ticket\nwhere: fr|\n~~~\n"),
            OfferKind::Place,
            "fridge",
            "where: fridge\n",
        ),
        (
            recipe,
            body("## Fold\n~~~ticket\nturn: |\n~~~\n"),
            OfferKind::Value,
            "letter",
            "turn: letter\n",
        ),
        (
            recipe,
            body("## Fold\n~~~ticket\nafter: m|\n~~~\n"),
            OfferKind::Step,
            "mix",
            "after: mix\n",
        ),
        (
            recipe,
            body("## Fold\n~~~ticket\nuses: dough, but|\n~~~\n"),
            OfferKind::Ingredient,
            "butter",
            "uses: dough, butter\n",
        ),
        (
            recipe,
            body("## Fold\n~~~ticket\nshape: pin|\n~~~\n"),
            OfferKind::Shape,
            "pinwheel",
            "shape: pinwheel\n",
        ),
        (recipe, body("Take {rol|"), OfferKind::Live, "roll-in", "Take {roll-in}"),
        (
            recipe,
            body("See [x](../tech|"),
            OfferKind::Technique,
            "cutting",
            "[x](../techniques/cutting.md",
        ),
        (
            recipe,
            body("See [x](cut|)"),
            OfferKind::Technique,
            "cutting",
            "[x](../techniques/cutting.md)",
        ),
        (
            recipe,
            body("![x](|)"),
            OfferKind::Picture,
            "roll-up.jpg",
            "![x](../media/roll-up.jpg)",
        ),
        (
            "course.yaml",
            "lessons:\n  - title: a\n    recipes: [tin-loaf, cre|]\n".to_owned(),
            OfferKind::Recipe,
            "crescents",
            "recipes: [tin-loaf, crescents]\n",
        ),
        (
            "course.yaml",
            "means: { su|: granulated sugar }\n".to_owned(),
            OfferKind::Key,
            "sugar",
            "means: { sugar: granulated sugar }\n",
        ),
        (
            "course.yaml",
            "lang|: en\n".to_owned(),
            OfferKind::Key,
            "language",
            "language: en\n",
        ),
        (
            "pantry.yaml",
            "my mix:\n  li|\n".to_owned(),
            OfferKind::Key,
            "like",
            "  like: \n",
        ),
        (
            "pantry.yaml",
            "my mix:\n  allergens: milk, e|\n".to_owned(),
            OfferKind::Allergen,
            "egg",
            "allergens: milk, egg\n",
        ),
        (
            "classes/a.yaml",
            "makes:\n  - recipe: cr|\n".to_owned(),
            OfferKind::Recipe,
            "crescents",
            "recipe: crescents\n",
        ),
        (
            "classes/a.yaml",
            "makes:\n  - recipe: crescents\ndemonstrate: [roll-|]\n".to_owned(),
            OfferKind::Step,
            "roll-up",
            "[roll-up]\n",
        ),
        (
            "classes/a.yaml",
            "makes:\n  - recipe: crescents\ntalk: 5 min before firs|\n".to_owned(),
            OfferKind::Step,
            "first-turn",
            "before first-turn\n",
        ),
        (
            "techniques/a.md",
            "---\ndrawing:\n  - lock|\n---\n".to_owned(),
            OfferKind::Key,
            "lock-in",
            "  - lock-in: \n",
        ),
        (
            "in/fr/recipes/crescents.md",
            "---\ntitle: a\n---\n## b\n~~~ticket\ntranslates: ba|\n~~~\n".to_owned(),
            OfferKind::Step,
            "bake",
            "translates: bake\n",
        ),
    ] {
        let (offers, text) = at(&edition, file, &marked);
        let found =
            offers.iter().find(|offer| offer.kind == kind && offer.label == label);
        let names: Vec<_> =
            offers.iter().take(8).map(|it| (it.kind, &it.label)).collect();
        let offer =
            found.unwrap_or_else(|| panic!("{marked}\noffers no {label}: {names:?}"));
        let written = taken(&text, offer);
        assert!(written.contains(result), "{marked}\nbecame\n{written}");
    }
}

#[test]
fn what_is_there_already_is_not_offered_again() {
    let edition = course();
    let (offers, _) = at(&edition, "recipes/a.md", "---\ntitle: a\nt|\n---\n");
    assert!(offers.iter().any(|offer| offer.label == "tin"));
    assert!(offers.iter().all(|offer| offer.label != "title"));
    let (units, _) =
        at(&edition, "recipes/a.md", "---\nformula:\n  - 2 | bread spice\n---\n");
    assert!(
        units.iter().all(|offer| offer.kind != OfferKind::Unit || offer.label != "large")
    );
}

/// Every key and every fixed value of every schema is offered where it may stand.
#[test]
fn every_key_of_every_schema_is_offered() {
    let edition = course();
    let file = |shape: Shape| match shape {
        Shape::Course => ("course.yaml", "|\n"),
        Shape::Pantry => ("pantry.yaml", "a:\n  |\n"),
        Shape::Glossary => ("glossary.yaml", "a:\n  |\n"),
        Shape::Class => ("classes/a.yaml", "|\n"),
        Shape::Recipe => ("recipes/a.md", "---\n|\n---\n"),
        Shape::Technique => ("techniques/a.md", "---\n|\n---\n"),
        Shape::Translation => ("in/fr/recipes/a.md", "---\n|\n---\n"),
    };
    let mut seen = 0;
    for shape in Shape::ALL {
        let schema: serde_json::Value =
            serde_json::from_str(tourier::read::schema(shape)).expect("a schema");
        let (path, marked) = file(shape);
        let pointer = match shape {
            Shape::Pantry => "/additionalProperties/properties",
            Shape::Glossary => "/additionalProperties/anyOf/1/properties",
            Shape::Course
            | Shape::Class
            | Shape::Recipe
            | Shape::Technique
            | Shape::Translation => "/properties",
        };
        let (found, _) = at(&edition, path, marked);
        for (key, inner) in
            schema.pointer(pointer).and_then(|it| it.as_object()).expect("keys")
        {
            assert!(found.iter().any(|offer| offer.label == *key), "{path}: {key}");
            let there = marked.replacen('|', &format!("{key}: |"), 1);
            let (values, _) = at(&edition, path, &there);
            for value in
                inner.get("enum").and_then(|it| it.as_array()).into_iter().flatten()
            {
                let Some(value) = value.as_str() else { continue };
                assert!(
                    values.iter().any(|it| it.label == value),
                    "{path}: {key}: {value}"
                );
                seen += 1;
            }
        }
    }
    assert!(seen > 20, "values were tried: {seen}");
}

/// Every example in the schema of tickets reads, and is offered.
#[test]
fn examples_of_tickets_read() {
    let edition = course();
    let schema: serde_json::Value =
        serde_json::from_str(tourier::read::schema(Shape::Recipe)).expect("a schema");
    let rows = schema.pointer("/$defs/ticket/properties").and_then(|it| it.as_object());
    let mut seen = 0;
    for (key, row) in rows.expect("rows") {
        let examples =
            row.get("examples").or(row.get("enum")).and_then(|it| it.as_array());
        for example in examples.into_iter().flatten().filter_map(|it| it.as_str()) {
            let ticket =
                |value: &str| format!("{HEAD}## Mix\n~~~ticket\n{key}: {value}\n~~~\n");
            let (found, _) = at(&edition, "recipes/a.md", &ticket("|"));
            assert!(found.iter().any(|offer| offer.text == example), "{key}: {example}");
            let text = ticket(example);
            let source = tourier::read::Source { path: "recipes/a.md".into(), text };
            let (_, _, faults) = tourier::read::content(&[source]);
            let bad = faults
                .iter()
                .find(|fault| ["bad-value", "bad-ticket"].contains(&fault.name));
            assert!(bad.is_none(), "{key}: {example}: {bad:?}");
            seen += 1;
        }
    }
    assert!(seen > 40, "examples were tried: {seen}");
}

/// At every byte of every text of the course, and of each cut off there, there is an answer
/// that can be written.
#[test]
fn every_byte_has_an_answer() {
    let edition = course();
    let texts: Vec<(String, String)> = edition
        .texts
        .all()
        .map(|(file, text)| (file.to_owned(), text.to_owned()))
        .collect();
    let mut count = 0;
    for (file, text) in &texts {
        // A prime step, so that words are met at each of their letters.
        for at in (0..=text.len()).step_by(41) {
            let end =
                (at..=text.len()).find(|at| text.is_char_boundary(*at)).expect("the end");
            for text in [text.as_str(), &text[..end]] {
                for offer in offers(Spot { file, text, at }, &edition) {
                    let place = offer.place.clone();
                    assert!(text.get(place.clone()).is_some(), "{file} {at}: {offer:?}");
                    count += 1;
                }
            }
        }
    }
    assert!(count > 1000, "there were offers: {count}");
}
