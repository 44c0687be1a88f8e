//! The print room: sets, booklets and labels, looked at as pages.

use typst::layout::{Abs, Frame, FrameItem};

use crate::measure::{Length, Size, exact};
use crate::sheet::{
    CourseSheet, ForWhom, HandoutKind, LessonSheet, Paper, Tub, TubLine, Units,
};
use crate::theme::Theme;

use super::fixture::Fixture;
use super::tests::{pages, printed, text};
use super::{Grid, Job, PaperFault, Press, Printing, SetCover, Tubs};

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
fn a_class_set_says_whose_each_card_is_and_what_to_print_how_often()
-> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let sheet = student(&fixture);
    let card = fixture.job(HandoutKind::Bench, Units::Metric, Paper::A4);
    let jobs = [
        sheet,
        Job { whose: Some("pair 1"), ..card },
        Job { whose: Some("pair 2"), makers: 2, ..card },
    ];
    let part = |title: &str, (first, last), copies| Printing {
        title: title.into(),
        first,
        last,
        copies,
    };
    let cover = SetCover {
        title: "An evening".into(),
        line: "For 4 bakers".into(),
        lists: vec![(String::new(), vec!["Tuesday".into()])],
        parts: vec![part("Sheet", (0, 0), 14), part("Cards", (1, 2), 1)],
    };
    let alone = pages(&press, &sheet)?.pages().len();
    let set = press.pages(&press.covered(&jobs, &cover, false))?;
    assert_eq!(set.pages().len(), 1 + alone + 2);
    let words = text(&set);
    let (first, last) = (alone + 2, alone + 3);
    assert!(words.contains(&format!("Cards{first}–{last}1")), "{words}");
    assert!(words.contains("Pair1Evening") && words.contains("Pair2:foreachof2bakers"));
    press.print(&press.covered(&jobs, &cover, false)).map(|_| ())
}

#[test]
fn every_tub_of_every_group_has_a_label_for_each_weighing() -> Result<(), PaperFault> {
    let (press, fixture) = (press(), Fixture::new());
    let line = |ingredient: &str, grams: Option<f64>| TubLine {
        recipe: "crescents".into(),
        step: "mix".into(),
        title: "Mix the dough".into(),
        ingredient: ingredient.into(),
        grams,
        metric: "318 g".into(),
        us: "11¼ oz".into(),
    };
    let lines = vec![line("bread flour", Some(318.0)), line("dusting flour", None)];
    let (recipe, title) = ("crescents".into(), "Crescents".into());
    let tub = Tub { recipe, title, each: ForWhom::Group, sets: 2, lines };
    let stations = [("pair 1".to_owned(), &tub), ("pair 2".to_owned(), &tub)];
    let mm = |over| Length::centimetres(exact(over, 10));
    let grid = Grid::new(&Size::new(mm(70), mm(37)), Paper::A4).expect("a common sheet");
    let single = CourseSheet { both_units: false, ..fixture.course.clone() };
    let labels = |course, words| Tubs {
        title: "An evening",
        course,
        words,
        paper: Paper::A4,
        stations: &stations,
    };
    let data =
        press.tub_labels_data(&labels(&fixture.course, &fixture.words), Units::Us, grid);
    let words = text(&press.pages(&data)?);
    assert_eq!(words.matches("breadflour").count(), 2, "{words}");
    assert!(words.contains("Pair1breadflour11¼oz318gCrescents·Mixthedough"), "{words}");
    assert!(!words.contains("dusting"), "what has no weight needs no tub");
    let tubs = labels(&single, &fixture.words);
    let data = press.tub_labels_data(&tubs, Units::Us, grid);
    assert!(!text(&press.pages(&data)?).contains("318g"));
    Ok(())
}

#[test]
fn the_other_units_may_be_left_out() -> Result<(), PaperFault> {
    let (press, mut fixture) = (press(), Fixture::new());
    for (units, column) in [(Units::Metric, "USweight"), (Units::Us, "Metric")] {
        fixture.course.both_units = true;
        let job = fixture.job(HandoutKind::Student, units, Paper::A4);
        assert!(text(&pages(&press, &job)?).contains(column));
        fixture.course.both_units = false;
        let job = fixture.job(HandoutKind::Student, units, Paper::A4);
        assert!(!text(&pages(&press, &job)?).contains(column));
    }
    Ok(())
}
