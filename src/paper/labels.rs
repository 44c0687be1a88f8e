//! Labels for tubs, on sheets of labels named by the size of one.

use serde::Serialize;

use crate::measure::{Size, float};
use crate::sheet::{CourseSheet, Line, Look, Paper, Tub, TubLine, Units};
use crate::words::Words;

use super::setting::{bind, date};
use super::{Job, PaperFault, Press, data};

/// A sheet of equal labels, in the middle of its paper.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Grid {
    /// Labels side by side.
    columns: u32,
    /// Labels one below another.
    rows: u32,
    /// Width of one, mm.
    width: f64,
    /// Height of one, mm.
    height: f64,
    /// Between two columns, mm; rows touch.
    gap: f64,
}

/// Common sheets: paper, width and height of a label in hundredths of a millimetre, columns,
/// rows, gap between columns. Common practice, from memory.
type Common = (Paper, [u32; 2], [u32; 2], u32);
const COMMON: [Common; 11] = [
    (Paper::A4, [7000, 3700], [3, 8], 0),
    (Paper::A4, [7000, 4230], [3, 7], 0),
    (Paper::A4, [6350, 3810], [3, 7], 250),
    (Paper::A4, [9910, 3810], [2, 7], 250),
    (Paper::A4, [9910, 6770], [2, 4], 250),
    (Paper::A4, [10500, 5700], [2, 5], 0),
    (Paper::A4, [10500, 7400], [2, 4], 0),
    (Paper::Letter, [6668, 2540], [3, 10], 318),
    (Paper::Letter, [10160, 2540], [2, 10], 476),
    (Paper::Letter, [10160, 5080], [2, 5], 476),
    (Paper::Letter, [10160, 8467], [2, 3], 476),
];

/// A label smaller than this, mm, holds no amount that can be read at the bench.
const SMALLEST: (f64, f64) = (38.0, 18.0);

impl Grid {
    /// The sheet of labels of this size: a common one where the size is, else as many
    /// labels as the paper takes. `None` where a label is too small to read or larger than
    /// the paper.
    pub fn new(label: &Size, paper: Paper) -> Option<Self> {
        let [width, height] =
            [&label.length, &label.width].map(|side| float(&side.in_millimetres()));
        let hundredths = [width, height].map(|side| (side * 100.0).round());
        let same =
            |(on, size, ..): &&Common| *on == paper && size.map(f64::from) == hundredths;
        if let Some((_, _, [columns, rows], gap)) = COMMON.iter().find(same) {
            let gap = f64::from(*gap) / 100.0;
            return Some(Self { columns: *columns, rows: *rows, width, height, gap });
        }
        let (paper_width, paper_height) = paper.millimetres();
        let fit = |room: f64, side: f64| (room / side) as u32;
        let (columns, rows) = (fit(paper_width, width), fit(paper_height, height));
        let legible = width >= SMALLEST.0 && height >= SMALLEST.1;
        let grid = Self { columns, rows, width, height, gap: 0.0 };
        (legible && columns > 0 && rows > 0).then_some(grid)
    }
}

#[derive(Serialize)]
struct Labels<'a> {
    kind: &'static str,
    paper: Paper,
    look: &'a Look,
    title: String,
    language: &'a str,
    date: Option<[i16; 3]>,
    grid: Grid,
    labels: Vec<Label>,
}

/// What stands on one label.
#[derive(Serialize)]
struct Label {
    ingredient: String,
    note: Option<String>,
    /// In the chosen units.
    amount: String,
    /// The measure, and the weight in the other units.
    other: Vec<String>,
    /// Whose it is.
    whose: Option<String>,
    /// Recipe and section, or recipe and step.
    place: [String; 2],
    batch: Option<String>,
    edition: String,
}

impl Press {
    /// The data of labels, one for each thing that is weighed out for the jobs' recipes.
    pub fn labels_data(&self, jobs: &[Job], grid: Grid) -> Vec<u8> {
        let Some(first) = jobs.first() else { return Vec::new() };
        let title =
            if jobs.len() == 1 { &first.sheet.title } else { &first.course.title };
        let stock = Stock { course: first.course, words: first.words, grid };
        self.on_grid(stock, title, (first.paper, jobs.iter().flat_map(labels).collect()))
    }

    /// The data of labels for the tubs of a class: one for each weighing of each group, in
    /// the order of the groups.
    pub fn tub_labels_data(&self, class: &Tubs, units: Units, grid: Grid) -> Vec<u8> {
        let stock = Stock { course: class.course, words: class.words, grid };
        let labels = class.stations.iter().flat_map(|(who, tub)| {
            let weighed = tub.lines.iter().filter(|line| line.grams.is_some());
            weighed.map(|line| tub_label(class, (who, tub), (line, units)))
        });
        self.on_grid(stock, class.title, (class.paper, labels.collect()))
    }

    /// Labels for a class's tubs as PDF.
    ///
    /// # Errors
    /// As [`Press::print`].
    pub fn tub_labels(
        &self,
        class: &Tubs,
        units: Units,
        grid: Grid,
    ) -> Result<Vec<u8>, PaperFault> {
        self.print(&self.tub_labels_data(class, units, grid))
    }

    fn on_grid(
        &self,
        Stock { course, words, grid }: Stock,
        title: &str,
        (paper, labels): (Paper, Vec<Label>),
    ) -> Vec<u8> {
        let labels = Labels {
            kind: "labels",
            paper,
            look: &course.look,
            title: words.fill("handout-labels", &[("title", title)]),
            language: &course.language,
            date: course.date.as_deref().and_then(date),
            grid,
            labels,
        };
        data::cleaned(&labels, self.glyphs()).to_string().into_bytes()
    }

    /// Labels as PDF.
    ///
    /// # Errors
    /// As [`Press::print`].
    pub fn labels(&self, jobs: &[Job], grid: Grid) -> Result<Vec<u8>, PaperFault> {
        self.print(&self.labels_data(jobs, grid))
    }
}

/// What every label of a sheet shares.
struct Stock<'a> {
    course: &'a CourseSheet,
    words: &'a Words,
    grid: Grid,
}

/// The tubs of a class.
#[derive(Clone, Copy)]
pub struct Tubs<'a> {
    /// The class's title.
    pub title: &'a str,
    /// The course it belongs to.
    pub course: &'a CourseSheet,
    /// The words of the course's language.
    pub words: &'a Words,
    /// The paper of the labels.
    pub paper: Paper,
    /// Whose tub, and what goes into it, in order.
    pub stations: &'a [(String, &'a Tub)],
}

fn tub_label(
    class: &Tubs,
    (who, tub): (&str, &Tub),
    (line, units): (&TubLine, Units),
) -> Label {
    let weights = [bind(&line.metric), bind(&line.us)];
    let [amount, second] = first_of(weights, units);
    Label {
        ingredient: line.ingredient.clone(),
        note: None,
        amount,
        other: Vec::from_iter(class.course.both_units.then_some(second)),
        whose: Some(who.to_owned()),
        place: [tub.title.clone(), line.title.clone()],
        batch: None,
        edition: class.title.to_owned(),
    }
}

/// Metric and US weight, the chosen one first.
fn first_of([metric, us]: [String; 2], units: Units) -> [String; 2] {
    match units {
        Units::Metric => [metric, us],
        Units::Us => [us, metric],
    }
}

fn labels<'a>(job: &'a Job) -> impl Iterator<Item = Label> + 'a {
    let weighed = |line: &&Line| line.grams.is_some();
    job.sheet.formula.iter().filter(weighed).map(|line| label(job, line))
}

fn label(job: &Job, line: &Line) -> Label {
    let weights = [bind(&line.metric), bind(&line.us_weight)];
    let [amount, second] = first_of(weights, job.units);
    let measure = line.count.as_deref().or(line.us_measure.as_deref()).map(bind);
    let batch = (job.batch_key != "x1").then(|| job.sheet.scale.batch.clone());
    Label {
        ingredient: line.ingredient.clone(),
        note: line.note.clone(),
        amount,
        other: measure.into_iter().chain([second]).collect(),
        whose: job.whose.map(str::to_owned),
        place: [job.sheet.title.clone(), line.section.clone()],
        batch,
        edition: job.course.edition.clone().unwrap_or_default(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Exact, Length, exact};

    fn mm(width: (i64, i64), height: (i64, i64)) -> Size {
        let side = |(over, under)| Length::centimetres(exact(over, under * 10));
        Size::new(side(width), side(height))
    }

    #[test]
    fn a_common_size_names_its_sheet() {
        let grid =
            Grid::new(&mm((635, 10), (381, 10)), Paper::A4).expect("a common sheet");
        assert_eq!((grid.columns, grid.rows, grid.gap), (3, 7, 2.5));
        let inch = |over, under| Length::inches(&Exact::new(over, under));
        let label = Size::new(inch(21.into(), 8.into()), inch(1.into(), 1.into()));
        let grid = Grid::new(&label, Paper::Letter).expect("a common sheet");
        assert_eq!((grid.columns, grid.rows), (3, 10));
    }

    #[test]
    fn every_common_sheet_lies_on_its_paper() {
        for (paper, size, [columns, rows], gap) in COMMON {
            let (width, height) = paper.millimetres();
            let [label, tall] = size.map(|side| f64::from(side) / 100.0);
            let gaps = f64::from(gap) / 100.0 * f64::from(columns - 1);
            assert!(label * f64::from(columns) + gaps <= width + 0.01, "{size:?}");
            assert!(tall * f64::from(rows) <= height + 0.01, "{size:?}");
        }
    }

    #[test]
    fn another_size_fills_the_paper_and_a_bad_one_is_refused() {
        let grid = Grid::new(&mm((50, 1), (30, 1)), Paper::A4).expect("it fits");
        assert_eq!((grid.columns, grid.rows), (4, 9));
        assert_eq!(Grid::new(&mm((20, 1), (10, 1)), Paper::A4), None);
        assert_eq!(Grid::new(&mm((300, 1), (100, 1)), Paper::A4), None);
    }
}
