//! `tourier handout CLASS`: everything that a class hands out, as one PDF: student sheets
//! of what is made, and bench cards for each group with its own amounts; labels for its
//! tubs.

use crate::model::Class;
use crate::paper::Tubs;
use crate::plan::Unclear;
use crate::product::{Bundle, Supplies};
use crate::said;
use crate::sheet::{HandoutKind, making};

use super::args::HandoutArgs;
use super::handout::{Print, Shop, grid, print, put};
use super::together::own_size;
use super::{Done, Stop};

/// Prints the set, or the labels.
pub(super) fn run(shop: &Shop, class: &Class, options: &HandoutArgs) -> Done {
    own_size(&options.scaling)?;
    let mut print = print(options, shop.supplies.course);
    let cannot = |reason: Unclear| cannot(class, reason);
    let asked = shop.supplies.levels;
    let levels = if asked.is_empty() { &class.levels } else { asked };
    let supplies = Supplies { levels, ..shop.supplies };
    let bundle = Bundle::new(class, supplies).map_err(cannot)?;
    if let Some(size) = &options.labels {
        return labels(shop, class, &bundle, (options, &print, size));
    }
    let kinds = kinds(options, &mut print)?;
    let (jobs, cover) = bundle.jobs(&kinds, print.units, print.paper);
    if options.booklet {
        let Some(first) = jobs.first() else { return Err(Stop::Faults) };
        let data = shop.press.covered(&jobs, &cover, true);
        let pdf = shop.press.booklet(&data, first);
        return put(shop.call, (&class.name, "student-booklet"), &print, (options, pdf));
    }
    let what = if let [one] = kinds[..] { one.word() } else { "set" };
    let pdf = shop.press.print(&shop.press.covered(&jobs, &cover, false));
    put(shop.call, (&class.name, what), &print, (options, pdf))
}

fn cannot(class: &Class, reason: Unclear) -> Stop {
    Stop::Use(said!("handout-cannot", name = class.name, reason = reason.said()))
}

/// Prints the labels of a class's tubs.
fn labels(
    shop: &Shop,
    class: &Class,
    bundle: &Bundle,
    (options, print, size): (&HandoutArgs, &Print, &str),
) -> Done {
    let (book, words) = (shop.supplies.edition.book(), shop.supplies.words);
    let order =
        making::order(class, book, words).map_err(|reason| cannot(class, reason))?;
    let tubs = bundle.tubs(&order.tubs);
    let (title, paper) = (class.title.value.as_str(), print.paper);
    let course = shop.supplies.course;
    let tubs = Tubs { title, course, words, paper, stations: &tubs };
    let pdf = shop.press.tub_labels(&tubs, print.units, grid(size, print.paper)?);
    put(shop.call, (&class.name, "labels"), print, (options, pdf))
}

/// The kinds of handout in the set.
fn kinds(options: &HandoutArgs, print: &mut Print) -> Result<Vec<HandoutKind>, Stop> {
    let chosen = options.kind.map(HandoutKind::from);
    if options.booklet && !matches!(chosen, None | Some(HandoutKind::Student)) {
        return Err(Stop::Use(said!("handout-no-booklet")));
    }
    print.kind = chosen.unwrap_or(HandoutKind::Student);
    Ok(match chosen {
        None if options.booklet => vec![HandoutKind::Student],
        None => vec![HandoutKind::Student, HandoutKind::Bench],
        Some(kind) => vec![kind],
    })
}
