//! The print room: sets, booklets and labels, looked at as pages.

use typst::layout::{Abs, Frame, FrameItem};

use crate::measure::{Length, Size, exact};
use crate::sheet::{HandoutKind, LessonSheet, Paper, Units};
use crate::theme::Theme;

use super::fixture::Fixture;
use super::press::inputs;
use super::tests::{pages, printed, text};
use super::{Grid, Job, PaperFault, Press};

fn press() -> Press {
    Press::new(&Theme::built_in())
}

fn student(fixture: &Fixture) -> Job<'_> {
    fixture.job(HandoutKind::Student, Units::Metric, Paper::A4)
}

fn taught() -> Fixture {
    let mut fixture = Fixture::new();
    fixture.course.lessons = vec![LessonSheet {
        title: "One dough, three shapes".into(),
        summary: String::new(),
        recipes: vec![fixture.sheet.recipe.clone()],
        techniques: Vec::new(),
    }];
    fixture
}

#[test]
fn a_set_has_a_cover_and_each_handout_counts_its_own_pages() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), taught());
    let alone = pages(&press, &student(&fixture))?.pages().len();
    let jobs = [student(&fixture), student(&fixture)];
    let set = press.pages(&press.set_data(&jobs, false))?;
    assert_eq!(set.pages().len(), 1 + 2 * alone);
    let words = text(&set);
    assert!(words.contains("Onedough,threeshapes"), "{words}");
    let last = format!("{alone}of{alone}");
    assert_eq!(words.matches(&last).count(), 2, "{last}");
    press.print(&press.set_data(&jobs, false)).map(|_| ())
}

#[test]
fn a_booklet_holds_every_page_once() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), taught());
    let job = student(&fixture);
    let data = press.set_data(&[job], true);
    let halves = press.pages(&data)?;
    let size = halves.pages()[0].frame.size();
    assert!(size.x.approx_eq(Abs::mm(148.5)) && size.y.approx_eq(Abs::mm(210.0)));
    for it in printed(&halves) {
        assert!(it.right <= size.x - Abs::mm(12.9), "{}", it.text);
    }
    let booklet = press.booklet(&data, &job)?;
    assert!(booklet == press.booklet(&data, &job)?, "the same bytes twice");
    Ok(())
}

#[test]
fn labels_lie_on_their_grid() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let mm = |over| Length::centimetres(exact(over, 10));
    let grid = Grid::new(&Size::new(mm(70), mm(37)), Paper::A4).expect("a common sheet");
    let data = press.labels_data(&[student(&fixture)], grid);
    let document = press.pages(&data)?;
    let weighed =
        fixture.sheet.formula.iter().filter(|line| line.grams.is_some()).count();
    assert_eq!(document.pages().len(), weighed.div_ceil(24));
    // Every label's words stay inside a column of 70 mm and a row of 37 mm.
    for it in printed(&document) {
        let column = |x: Abs| (x / Abs::mm(70.0)) as u32;
        assert_eq!(column(it.left), column(it.right), "{}", it.text);
    }
    press.print(&data).map(|_| ())
}

/// The pictures of a page.
fn images(frame: &Frame) -> usize {
    let count = |item: &FrameItem| match item {
        FrameItem::Group(group) => images(&group.frame),
        FrameItem::Image(..) => 1,
        _ => 0,
    };
    frame.items().map(|(_, item)| count(item)).sum()
}

#[test]
fn the_course_may_choose_accent_and_logo() -> Result<(), PaperFault> {
    let (press, mut fixture) = (press(), Fixture::new());
    let plain = images(&pages(&press, &student(&fixture))?.pages()[0].frame);
    fixture.course.look.accent = Some("#7a2e1f".into());
    fixture.course.look.logo = Some(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 20 10\"><path d=\"M0 0h20v10z\"/></svg>".into(),
    );
    let own = pages(&press, &student(&fixture))?;
    assert_eq!(images(&own.pages()[0].frame), plain + 1);
    press.print(&press.data(&student(&fixture))).map(|_| ())
}

#[test]
fn a_page_for_a_few_lines_is_saved_where_it_can_be() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let data = press.data(&student(&fixture));
    let mut closer = inputs(&data);
    closer.insert("snug".into(), typst::foundations::Value::Bool(true));
    let closer = super::press::set(&press.world(closer)?)?;
    assert!(closer.pages().len() <= press.pages(&data)?.pages().len());
    Ok(())
}
