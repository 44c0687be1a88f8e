//! `tourier handout`: one PDF at any scale.

use crate::draw::figures;
use crate::paper::{Job, Press};
use crate::sheet::{HandoutKind, Paper, Units};
use crate::store;

use super::args::{Args, HandoutArgs};
use super::{Done, Stop, open, recipe, words};

/// Prints one handout and says where it is.
pub(super) fn run(args: &Args, options: &HandoutArgs) -> Done {
    let (edition, theme) = open(args)?;
    let words = words(&theme, &edition)?;
    let recipe = recipe(&edition, &options.recipe)?;
    let sheet =
        edition.sheet(recipe, &options.scaling.scaling()?, &words).map_err(|reason| {
            Stop::Use(format!("`{}` cannot be scaled so: {reason}", recipe.name))
        })?;
    let Some(course) = edition.course() else { return Err(Stop::Faults) };
    let units = if course.metric_first { Units::Metric } else { Units::Us };
    let paper = if course.a4_first { Paper::A4 } else { Paper::Letter };
    let (kind, units, paper): (HandoutKind, Units, Paper) = (
        options.kind.into(),
        options.units.map_or(units, Into::into),
        options.paper.map_or(paper, Into::into),
    );
    let press = Press::new(&theme);
    let figures = figures(&sheet, &words);
    let job = Job {
        sheet: &sheet,
        course: &course,
        figures: &figures,
        words: &words,
        kind,
        units,
        paper,
        batch_key: "x1",
    };
    let pdf = press.print(&press.data(&job)).map_err(|fault| {
        anstream::eprintln!("error: {fault}");
        Stop::Faults
    })?;
    let words = [kind.word(), units.word(), paper.word()].join("-");
    let path = options.to.join(format!("{}-{words}.pdf", recipe.name));
    store::save(&path, &pdf)?;
    println!("{}", path.display());
    Ok(())
}
