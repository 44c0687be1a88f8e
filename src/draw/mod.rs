//! Drawing: from the computed sheet to SVG. Every fold and cut is drawn to scale from the
//! recipe's own numbers; nothing is computed here but where things stand on the plate.
//!
//! `system` is the drawing system, one file each: `ink` (strokes, fills, class names),
//! `lettering` (type sizes, measured widths), `plate` (shapes and labels), `hatch`, `arrow`,
//! `dimension`, `svg` (writing), `raster` (PNG). On it stand the figures: `layers`, `pieces`,
//! `times` and `social`; `speech` says the same in words.
//!
//! A figure is 640 units wide and its labels are 20 units high: 10 px where it is shown
//! 320 px wide. Every shape carries a class that begins `d-`, and its look as attributes,
//! so that paper needs no more; a page has the looks once, in its style sheet. No identifiers, styles or scripts.

mod layers;
mod pieces;
mod social;
mod speech;
mod system;
mod times;

#[cfg(test)]
mod campaign;
#[cfg(test)]
mod sample;
#[cfg(test)]
mod tests;

pub use system::ink::style_rules;
pub use system::raster::{Unpainted, png};
pub use system::svg::{Drawing, Element};
#[cfg(test)]
pub(crate) use system::svg::{labelled, sized};
pub use times::chart::{PlanChart, SessionChart, plan_chart, plan_chart_wide};

use serde::Serialize;

use crate::measure::Label;
use crate::sheet::{
    CourseSheet, Cut, Demo, Fold, GrowthFact, LockInFact, Part, RollFact, ShapeFact,
    Sheet, Time, TrayFact, Units,
};
use crate::words::Words;

use system::plate::{Format, Plate, WIDE};
use system::voice::Voice;

/// One drawing in both unit systems.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// Its name among the figures of one recipe or technique: `first-turn`, `timeline`.
    pub name: String,
    /// The step that it belongs to.
    pub step: Option<String>,
    /// What it shows.
    pub kind: FigureKind,
    /// Its title.
    pub title: String,
    /// The same in words, enough to do it by ear.
    pub alt: Label,
    /// 640 units wide: upright, for a phone.
    pub upright: Forms,
    /// A timeline 1180 units wide, for a whole line of paper and wide pages; `None` for all
    /// else.
    pub wide: Option<Forms>,
    /// Upright, for paper; `None` where it was drawn for pages alone.
    pub paper: Option<OnPaper>,
}

/// An upright drawing as paper shows it: each form is drawn for its width, so that no label is
/// smaller than it may be there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OnPaper {
    /// For a column of a student sheet, at least 84 mm wide: 8 pt.
    pub column: Forms,
    /// For a whole line of large print, at least 174 mm wide: 18 pt.
    pub large: Forms,
    /// For a column of a bench card, at least 86 mm wide: 12 pt.
    pub card: Forms,
}

/// What a figure shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum FigureKind {
    /// How fat is locked into dough.
    LockIn,
    /// A fold.
    Turn,
    /// A cutting plan.
    Cut,
    /// Rolling out.
    Roll,
    /// A shape and how it is made.
    Shape,
    /// What lies on a tray.
    Tray,
    /// How the layers grow.
    Layers,
    /// What happens when.
    Timeline,
}

/// A drawing in both unit systems.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Forms {
    /// In metric units.
    pub metric: Drawing,
    /// In US customary units.
    pub us: Drawing,
}

impl Forms {
    /// The form in these units.
    pub fn of(&self, units: Units) -> &Drawing {
        match units {
            Units::Metric => &self.metric,
            Units::Us => &self.us,
        }
    }

    /// Both as SVG documents.
    pub fn svg(&self) -> Label {
        Label::new(self.metric.svg(), self.us.svg())
    }
}

impl FigureKind {
    /// Its name in the names of figures.
    pub fn word(self) -> &'static str {
        match self {
            Self::LockIn => "lock-in",
            Self::Turn => "turn",
            Self::Cut => "cut",
            Self::Roll => "roll",
            Self::Shape => "shape",
            Self::Tray => "tray",
            Self::Layers => "layers",
            Self::Timeline => "timeline",
        }
    }
}

/// What figures are drawn with, and whether for paper too.
#[derive(Clone, Copy)]
struct Brief<'w> {
    words: &'w Words,
    paper: bool,
}

impl<'w> Brief<'w> {
    fn for_paper(words: &'w Words) -> Self {
        Self { words, paper: true }
    }

    fn for_pages(words: &'w Words) -> Self {
        Self { words, paper: false }
    }
}

/// The figures of a recipe: its lock-in, its turns, its cutting plans, its timeline.
pub fn figures(sheet: &Sheet, words: &Words) -> Vec<Figure> {
    drawn(sheet, Brief::for_paper(words))
}

/// The same for pages alone: most of the batches that a page offers are never printed.
pub fn page_figures(sheet: &Sheet, words: &Words) -> Vec<Figure> {
    drawn(sheet, Brief::for_pages(words))
}

fn drawn(sheet: &Sheet, brief: Brief<'_>) -> Vec<Figure> {
    let mut figures = Vec::new();
    if let Some(lamination) = &sheet.lamination {
        // The drawings show fat on dough; with the fat outside the ticket's words stand alone.
        let lock_in = lamination.lock_in.iter();
        figures.extend(
            lock_in.map(|fact| lock_in_figure(fact, title(sheet, &fact.step), brief)),
        );
        let folds = lamination.folds.iter();
        figures.extend(folds.map(|fold| turn_figure(fold, fold.title.clone(), brief)));
    }
    let cuts = sheet.cuts.iter();
    figures.extend(cuts.map(|cut| cut_figure(cut, title(sheet, &cut.step), brief)));
    figures.extend(handwork(sheet, brief));
    if !sheet.time.steps.is_empty() {
        figures.push(timeline_figure(&sheet.time, &sheet.recipe, None, brief));
    }
    distinguish(&mut figures);
    figures
}

/// Rolling, shaping, trays and the growth of the layers.
fn handwork(sheet: &Sheet, brief: Brief<'_>) -> Vec<Figure> {
    let work = &sheet.handwork;
    let rolls = work.rolls.iter();
    let rolls = rolls.map(|fact| roll_figure(fact, title(sheet, &fact.step), brief));
    let shapes = work.shapes.iter();
    let shapes = shapes.map(|fact| shape_figure(fact, title(sheet, &fact.step), brief));
    let trays = work.trays.iter();
    let trays = trays.map(|fact| tray_figure(fact, title(sheet, &fact.step), brief));
    let growth = work.growth.iter().map(|fact| growth_figure(fact, brief));
    rolls.chain(shapes).chain(trays).chain(growth).collect()
}

/// The timeline of a recipe. `ready` is the minute of the day at which it is to be done,
/// where that is known: the axis then shows the clock, else the time since the start.
pub fn timeline(sheet: &Sheet, ready: Option<u64>, words: &Words) -> Figure {
    let brief = Brief::for_pages(words);
    timeline_figure(&sheet.time, &sheet.recipe, ready, brief)
}

/// One drawing of a technique, its `number`th from 1.
pub fn demo(demo: &Demo, number: usize, words: &Words) -> Figure {
    let brief = Brief::for_pages(words);
    let mut figure = match demo {
        Demo::LockIn(fact) => {
            lock_in_figure(fact, words.get("drawing-lock-in").to_owned(), brief)
        }
        Demo::Fold(fold) => {
            let own = Some(fold.title.clone()).filter(|title| !title.is_empty());
            let title = own.unwrap_or_else(|| words.get("drawing-turn").to_owned());
            turn_figure(fold, title, brief)
        }
        Demo::Cut(cut) => cut_figure(cut, words.get("drawing-cut").to_owned(), brief),
        Demo::Roll(fact) => {
            roll_figure(fact, words.get("drawing-roll").to_owned(), brief)
        }
        Demo::Shape(fact) => {
            let key = format!("drawing-shape-{}", fact.shape.replace(' ', "-"));
            let known = fact.own_words.is_empty();
            let title = if known { words.get(&key) } else { &fact.shape };
            shape_figure(fact, title.to_owned(), brief)
        }
        Demo::Tray(fact) => {
            tray_figure(fact, words.get("drawing-tray").to_owned(), brief)
        }
        Demo::Growth(fact) => growth_figure(fact, brief),
    };
    figure.name = format!("{}-{number}", figure.kind.word());
    figure.step = None;
    figure
}

/// The picture for link previews as an SVG document, 1200 × 630.
pub fn social(sheet: &Sheet, course: &CourseSheet, words: &Words) -> String {
    let plate = social::social(sheet, course);
    let alternative = words.fill(
        "drawing-alt-social",
        &[("title", &sheet.title), ("course", &course.title)],
    );
    Drawing::new(&plate, &sheet.title, &alternative).svg()
}

fn lock_in_figure(fact: &LockInFact, title: String, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::lock_in(fact, voice));
    let draw = |form, voice: Voice<'_>| layers::lock_in::lock_in(fact, form, voice);
    figure(FigureKind::LockIn, &fact.step, title, alt, brief, draw)
}

fn turn_figure(fold: &Fold, title: String, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::turn(fold, voice));
    let draw = |form, voice: Voice<'_>| layers::turn::turn(fold, form, voice);
    figure(FigureKind::Turn, &fold.step, title, alt, brief, draw)
}

fn cut_figure(cut: &Cut, title: String, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::cut(cut, voice));
    let draw = |form, voice: Voice<'_>| pieces::cut::cut(cut, form, voice);
    figure(FigureKind::Cut, &cut.step, title, alt, brief, draw)
}

fn roll_figure(fact: &RollFact, title: String, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::roll(fact, voice));
    let draw = |form, voice: Voice<'_>| layers::roll::roll(fact, form, voice);
    figure(FigureKind::Roll, &fact.step, title, alt, brief, draw)
}

fn shape_figure(fact: &ShapeFact, title: String, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::shape(fact, voice));
    let draw =
        |form: Format, voice: Voice<'_>| pieces::shape::shape(fact, form.width(), voice);
    figure(FigureKind::Shape, &fact.step, title, alt, brief, draw)
}

fn tray_figure(fact: &TrayFact, title: String, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::tray(fact, voice));
    let draw = |form, voice: Voice<'_>| pieces::tray::tray(fact, form, voice);
    figure(FigureKind::Tray, &fact.step, title, alt, brief, draw)
}

fn growth_figure(fact: &GrowthFact, brief: Brief<'_>) -> Figure {
    let alt = both(brief.words, |voice| speech::growth(fact, voice));
    let title = brief.words.get("drawing-growth-title").to_owned();
    let draw = |form, voice: Voice<'_>| layers::growth::growth(fact, form, voice);
    let own = figure(FigureKind::Layers, &fact.step, title, alt, brief, draw);
    Figure { name: "layers".to_owned(), ..own }
}

fn timeline_figure(
    time: &Time,
    recipe: &str,
    ready: Option<u64>,
    brief: Brief<'_>,
) -> Figure {
    let alt = both(brief.words, |voice| speech::timeline(time, voice));
    let drawn = |width, voice: Voice<'_>| {
        times::timeline::timeline(time, (recipe, width, ready), voice)
    };
    let wide = both(brief.words, |voice| drawn(WIDE, voice));
    let title = brief.words.get("drawing-timeline").to_owned();
    let draw = |form: Format, voice: Voice<'_>| drawn(form.width(), voice);
    let own = figure(FigureKind::Timeline, "timeline", title, alt, brief, draw);
    Figure { step: None, ..own }.widened(&wide)
}

/// A figure in its upright forms.
fn figure(
    kind: FigureKind,
    step: &str,
    title: String,
    [metric, us]: [String; 2],
    brief: Brief<'_>,
    draw: impl Fn(Format, Voice<'_>) -> Plate,
) -> Figure {
    let alt = Label::new(metric, us);
    let form = |form| forms(&both(brief.words, |voice| draw(form, voice)), &title, &alt);
    Figure {
        name: step.to_owned(),
        step: Some(step.to_owned()),
        kind,
        upright: form(Format::Page),
        wide: None,
        paper: brief.paper.then(|| OnPaper {
            column: form(Format::Column),
            large: form(Format::Large),
            card: form(Format::Card),
        }),
        title,
        alt,
    }
}

impl Figure {
    /// The figure with its wide form.
    fn widened(self, plates: &[Plate; 2]) -> Self {
        let wide = Some(forms(plates, &self.title, &self.alt));
        Self { wide, ..self }
    }
}

/// Plates in both unit systems as drawings.
fn forms([metric, us]: &[Plate; 2], title: &str, alt: &Label) -> Forms {
    Forms {
        metric: Drawing::new(metric, title, &alt.metric),
        us: Drawing::new(us, title, &alt.us),
    }
}

/// The same in metric and in US customary units.
fn both<T>(words: &Words, make: impl Fn(Voice<'_>) -> T) -> [T; 2] {
    [Units::Metric, Units::Us].map(|units| make(Voice { words, units }))
}

/// A step's heading; its name where the sheet has no such step.
fn title(sheet: &Sheet, step: &str) -> String {
    let own = sheet.parts.iter().find_map(|part| match part {
        Part::Step(own) => (own.step == step).then_some(&own.title),
        Part::Prose { .. } => None,
    });
    let timed = || sheet.time.steps.iter().find(|timed| timed.step == step);
    own.or_else(|| timed().map(|timed| &timed.title))
        .map_or(step, String::as_str)
        .to_owned()
}

/// Gives a second figure of the same name its kind, and a number where that is not enough.
fn distinguish(figures: &mut [Figure]) {
    for index in 1..figures.len() {
        let taken = |name: &str| figures[..index].iter().any(|other| other.name == name);
        let (own, kind) = (&figures[index].name, figures[index].kind);
        let numbered = (1..).map(|number| match number {
            1 => own.clone(),
            2 => format!("{own}-{}", kind.word()),
            _ => format!("{own}-{}-{}", kind.word(), number - 1),
        });
        if let Some(name) = numbered.take(figures.len() + 2).find(|name| !taken(name)) {
            figures[index].name = name;
        }
    }
}
