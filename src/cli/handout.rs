//! `tourier handout`: one PDF at any scale; a whole course, a booklet, labels.

use crate::edition::{Edition, Further};
use crate::formula::Scaling;
use crate::measure::Size;
use crate::model::{Class, Recipe};
use crate::paper::{Book, Grid, Inner, Job, PaperFault, Press};
use crate::product::{Plate, Supplies};
use crate::read::size_of;
use crate::said;
use crate::sheet::{CourseSheet, HandoutKind, Level, Paper, TechniqueSheet, Units};
use crate::store;
use crate::words::Words;

use super::args::HandoutArgs;
use super::class_set;
use super::together::{Recipes, names};
use super::{Call, Done, Stop, further, nowhere, open, say, stop_clean, words};

/// Stands for every recipe of the course.
const ALL: &str = "all";

/// How it is to be printed.
#[derive(Clone, Copy)]
pub(super) struct Print {
    pub(super) kind: HandoutKind,
    pub(super) units: Units,
    pub(super) paper: Paper,
}

/// Prints the handouts and says where they are.
pub(super) fn run(call: &Call, options: &HandoutArgs) -> Done {
    stop_clean(call, said!("handout-none-written"))?;
    let (mut edition, theme) = open(call)?;
    super::stand(call, &edition)?;
    let first = words(&theme, &edition)?;
    let names = names(call, &mut edition, &options.recipe, &options.scaling.with)?;
    let further = further(&theme, &edition)?;
    let asked = options.language.as_deref();
    let (edition, words) = in_language(asked, (&edition, &first), &further)?;
    let Some(course) = edition.course(words) else { return Err(Stop::Faults) };
    let press = Press::new(&theme).showing(&edition.content.media);
    let levels: Vec<Level> = options.level.iter().copied().map(Into::into).collect();
    let supplies = Supplies { edition, course: &course, words, levels: &levels };
    let shop = Shop { call, supplies, press: &press };
    if let Some(class) = class(edition, &names) {
        return class_set::run(&shop, class, options);
    }
    let recipes = if names[..] == [ALL] {
        let scaling = options.scaling.scaling()?;
        let all = in_lessons(edition, &course)?;
        all.into_iter().map(|recipe| (recipe, scaling.clone())).collect()
    } else {
        known(edition, &names)?;
        Recipes::new(call, edition, &names, &options.scaling)?.sized()?
    };
    let mut plates = recipes
        .iter()
        .map(|(recipe, scaling)| plate(supplies, recipe, scaling))
        .collect::<Result<Vec<_>, _>>()?;
    // Where several recipes are printed, what goes into others has a sheet of its own.
    if let ([(recipe, scaling)], [plate]) = (&*recipes, &mut *plates) {
        plate.included = Inner::all(edition.included(recipe, scaling, words), words);
    }
    let print = print(options, &course);
    let how = (print.kind, print.units, print.paper);
    let job = |plate| supplies.job(plate, how);
    let jobs: Vec<Job> = plates.iter().map(job).collect();
    let whole = options.recipe == ALL && !options.booklet && options.labels.is_none();
    if whole && print.kind == HandoutKind::Student {
        let techniques = edition.techniques(words);
        let book = Book { jobs: &jobs, techniques: &in_order(&techniques, &course) };
        let data = press.book_data(&book);
        put(call, (ALL, "book"), &print, (options, press.print(&data)))?;
        let epub = press.epub(&data, words.get("handout-book-access"));
        let what = format!("book-{}", print.units.word());
        return save(call, (ALL, &what, "epub"), (options, epub));
    }
    let name = names.join("+");
    let (what, pdf) = typeset(&press, &jobs, options)?;
    put(call, (&name, &what), &print, (options, pdf))
}

/// The edition in the language that was asked for, with its words.
fn in_language<'e>(
    asked: Option<&str>,
    first: (&'e Edition, &'e Words),
    further: &'e [Further],
) -> Result<(&'e Edition, &'e Words), Stop> {
    let all = further.iter().map(|it| (&it.edition, &it.words));
    let all: Vec<_> = std::iter::once(first).chain(all).collect();
    let Some(asked) = asked else { return Ok(first) };
    let found = all.iter().find(|(_, words)| words.language == asked);
    found.copied().ok_or_else(|| {
        let known: Vec<&str> = all.iter().map(|(_, it)| it.language.as_str()).collect();
        nowhere(said!("kind-language"), asked, &known)
    })
}

/// The techniques in the order in which the lessons teach them.
fn in_order<'t>(
    techniques: &'t [TechniqueSheet],
    course: &CourseSheet,
) -> Vec<&'t TechniqueSheet> {
    let mut order: Vec<&TechniqueSheet> = Vec::new();
    for name in course.lessons.iter().flat_map(|lesson| &lesson.techniques) {
        let known = techniques.iter().find(|it| it.technique == *name);
        order.extend(
            known.filter(|it| order.iter().all(|one| one.technique != it.technique)),
        );
    }
    order
}

/// Writes a PDF and says where it is.
pub(super) fn put(
    call: &Call,
    (name, what): (&str, &str),
    print: &Print,
    (options, pdf): (&HandoutArgs, Result<Vec<u8>, PaperFault>),
) -> Done {
    let end = [what, print.units.word(), print.paper.word()].join("-");
    save(call, (name, &end, "pdf"), (options, pdf))
}

/// Writes a file and says where it is.
fn save(
    call: &Call,
    (name, what, ending): (&str, &str, &str),
    (options, made): (&HandoutArgs, Result<Vec<u8>, PaperFault>),
) -> Done {
    let bytes = made.map_err(|fault| {
        call.note(&said!("cli-error", message = fault.said()));
        Stop::Faults
    })?;
    let path = options.to.join(format!("{name}-{what}.{ending}"));
    let folder = options.to.display().to_string();
    let waiting = || call.note(&said!("handout-waiting", folder));
    store::save(&path, &bytes, &waiting)?;
    say(format!("{}\n", path.display()).as_bytes())
}

/// What everything is printed with.
pub(super) struct Shop<'a> {
    pub(super) call: &'a Call,
    pub(super) supplies: Supplies<'a>,
    pub(super) press: &'a Press,
}

/// The class of this name, where no recipe has it.
fn class<'a>(edition: &'a Edition, names: &[String]) -> Option<&'a Class> {
    let content = &edition.content;
    let [name] = names else { return None };
    let is_other = name == ALL || content.recipe(name).is_some();
    content.class(name).filter(|_| !is_other)
}

/// That there are recipes of these names.
fn known(edition: &Edition, names: &[String]) -> Done {
    let content = &edition.content;
    let Some(name) = names.iter().find(|name| content.recipe(name).is_none()) else {
        return Ok(());
    };
    let recipes = content.recipes.iter().map(|recipe| recipe.name.as_str());
    let classes = content.classes.iter().map(|class| class.name.as_str());
    let known: Vec<&str> = recipes.chain(classes).chain([ALL]).collect();
    Err(nowhere(said!("kind-recipe-or-class"), name, &known))
}

/// Every recipe, in the order of the lessons.
fn in_lessons<'a>(
    edition: &'a Edition,
    course: &CourseSheet,
) -> Result<Vec<&'a Recipe>, Stop> {
    let content = &edition.content;
    let mut order: Vec<&Recipe> = Vec::new();
    for name in course.lessons.iter().flat_map(|lesson| &lesson.recipes) {
        let new =
            content.recipe(name).filter(|it| order.iter().all(|one| one.name != it.name));
        order.extend(new);
    }
    if order.is_empty() {
        return Err(Stop::Use(said!("handout-no-recipe")));
    }
    Ok(order)
}

/// A recipe worked out at a size.
fn plate(supplies: Supplies, recipe: &Recipe, scaling: &Scaling) -> Result<Plate, Stop> {
    let plate = Plate::new(supplies.edition, recipe, scaling, supplies.words);
    plate.map_err(|reason| {
        Stop::Use(said!("scale-cannot", name = recipe.name, reason = reason.said()))
    })
}

/// What was asked for, and the course's own way where nothing was.
pub(super) fn print(options: &HandoutArgs, course: &CourseSheet) -> Print {
    let units = if course.metric_first { Units::Metric } else { Units::Us };
    let paper = if course.a4_first { Paper::A4 } else { Paper::Letter };
    Print {
        kind: options.kind.map_or(HandoutKind::Student, Into::into),
        units: options.units.map_or(units, Into::into),
        paper: options.paper.map_or(paper, Into::into),
    }
}

/// The word for what is printed, for its name, and its PDF.
fn typeset(
    press: &Press,
    jobs: &[Job],
    options: &HandoutArgs,
) -> Result<(String, Result<Vec<u8>, PaperFault>), Stop> {
    let Some(first) = jobs.first() else { return Err(Stop::Faults) };
    let kind = first.kind.word();
    if let Some(size) = &options.labels {
        return Ok(("labels".to_owned(), press.labels(jobs, grid(size, first.paper)?)));
    }
    if options.booklet {
        if first.kind != HandoutKind::Student {
            return Err(Stop::Use(said!("handout-no-booklet")));
        }
        let data = press.set_data(jobs, true);
        return Ok((format!("{kind}-booklet"), press.booklet(&data, first)));
    }
    let data = match jobs {
        [one] => press.data(one),
        many => press.set_data(many, false),
    };
    Ok((kind.to_owned(), press.print(&data)))
}

/// The sheet of labels of a size as typed.
pub(super) fn grid(text: &str, paper: Paper) -> Result<Grid, Stop> {
    let size: Size = size_of(text)
        .ok_or_else(|| Stop::Use(said!("labels-unreadable", size = text)))?;
    Grid::new(&size, paper).ok_or_else(|| Stop::Use(said!("labels-unfit", size = text)))
}
