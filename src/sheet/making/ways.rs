//! The ways of a recipe in words: what each changes, and what it is made without.
//!
//! *Made without* says what was left out and no more: never *free of*, and no diet's name.
//! What is claimed to be without gluten has limits by law (21 CFR 101.91; Commission
//! Implementing Regulation (EU) 828/2014) that a kitchen with flour in the air cannot promise.

use crate::formula::{Without, in_ways, lines_of, weigh, without};
use crate::measure::Label;
use crate::model::{Change, InWay, Recipe, Swap};
use crate::work::Work;

use super::super::{Note, WayOf, WaySheet, WithoutFact};
use super::{Context, content, lines, notes};

/// Every swap that a recipe is offered with.
pub(super) fn ways(work: &Work, context: Context) -> Vec<WaySheet> {
    let swaps = work.recipe.swaps.iter();
    swaps.filter_map(|swap| way(swap, work, context)).collect()
}

fn way(swap: &Swap, work: &Work, context: Context) -> Option<WaySheet> {
    let name = swap.name.value.as_str();
    let made = in_ways(work.recipe, &[name], context.book).ok()?;
    let all = swap.changes.iter().map(|change| told(change, &made, work, context));
    let is_page = |recipe: &&Recipe| {
        let way = recipe.way.as_ref();
        way.is_some_and(|it| it.of == work.recipe.name && it.names == [name])
    };
    let page = context.book.content.recipes.iter().find(is_page);
    Some(WaySheet {
        name: name.to_owned(),
        changes: all.collect(),
        without: law(without(&made, context.book), context),
        page: page.map(|recipe| recipe.name.clone()),
    })
}

/// What the recipe of a sheet is a way of.
pub(super) fn of(work: &Work, context: Context) -> Option<WayOf> {
    let InWay { of, names } = work.recipe.way.as_ref()?;
    let written = context.book.content.recipe(of)?;
    Some(WayOf {
        recipe: of.clone(),
        title: written.title.value.clone(),
        names: names.clone(),
        has_page: context
            .book
            .content
            .recipes
            .iter()
            .any(|it| it.name == work.recipe.name),
        without: law(without(work.recipe, context.book), context),
    })
}

/// A change: `140 g oat drink for whole milk`, `without walnuts`, `30 g water`.
fn told(change: &Change, made: &Recipe, work: &Work, context: Context) -> Label {
    let (key, line, old) = match change {
        Change::Instead { line, of } => ("way-instead", Some(line), of.name.as_str()),
        Change::Beside { line, section } => ("way-beside", Some(line), &*section.value),
        Change::Without(of) => ("way-without", None, of.name.as_str()),
    };
    let new = line.map(|line| {
        let title = line.ingredient.value.title();
        let formula = weigh(made, context.book);
        let own = lines_of(title, &formula).into_iter().map(|at| &formula.lines[at]);
        let mut own = own.filter(|found| found.line.place == line.place);
        let amount =
            own.next().and_then(|line| lines::share_of(line, &work.factor, context));
        match amount {
            None => Label::same(title),
            Some(amount) => amount.map(|amount| {
                context.words.fill("amount-of", &[("amount", amount), ("name", title)])
            }),
        }
    });
    let new = new.unwrap_or_default();
    notes::fill(key, &[("new", &new), ("old", &Label::same(old))], context)
}

/// The names of the laws.
fn law(without: Without, context: Context) -> WithoutFact {
    let named = |names: Vec<String>| -> Vec<String> {
        names.iter().map(|name| content::law(name, context)).collect()
    };
    let lists = without.lists.into_iter();
    let lists = lists.filter(|(law, _)| content::is_listed(law, context));
    WithoutFact { lists: lists.map(|(law, it)| (law.to_owned(), named(it))).collect() }
}

/// What the sheet says of ways: of a recipe as written each swap, of a way what it is made
/// without; and that traces can be in what is made so.
pub(super) fn remarks(work: &Work, context: Context) -> Vec<Note> {
    let offered = ways(work, context);
    let own = of(work, context).and_then(|way| sentence(&way.without, context));
    let claims = own.is_some()
        || offered.iter().any(|way| sentence(&way.without, context).is_some());
    let mut notes: Vec<Note> = offered
        .iter()
        .map(|way| Note { name: "way".to_owned(), text: offer(way, context) })
        .collect();
    if claims {
        let kit = context.words.get("made-without-kit");
        let said = own.map_or_else(|| kit.to_owned(), |own| format!("{own} {kit}"));
        notes.push(Note { name: "made-without".to_owned(), text: Label::same(said) });
    }
    notes
}

/// `Another way, oat drink: 140 g oat drink for whole milk. Made without milk.`
fn offer(way: &WaySheet, context: Context) -> Label {
    let joined = |of: &dyn Fn(&Label) -> String| {
        way.changes.iter().map(of).collect::<Vec<_>>().join("; ")
    };
    let changes =
        Label::new(joined(&|it| it.metric.clone()), joined(&|it| it.us.clone()));
    let values = [("name", &Label::same(&*way.name)), ("changes", &changes)];
    let text = notes::fill("note-way", &values, context);
    match sentence(&way.without, context) {
        Some(without) => text.map(|text| format!("{text} {without}")),
        None => text,
    }
}

/// `Made without milk and eggs.`, by the first law that the course asks for, else by the law
/// of its first units.
fn sentence(without: &WithoutFact, context: Context) -> Option<String> {
    let course = context.book.content.course.as_ref();
    let eu = course.is_none_or(|course| course.metric_first);
    let asked = course.and_then(|course| course.laws.first());
    let usual = if eu { "eu" } else { "us" };
    let law = asked.map_or(usual, |law| law.value.as_str());
    let names = without.lists.get(law).into_iter().flatten();
    let names: Vec<&str> = names.map(String::as_str).collect();
    let fill =
        || context.words.fill("made-without", &[("names", &context.words.names(&names))]);
    (!names.is_empty()).then(fill)
}
