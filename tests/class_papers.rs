//! The papers of the demonstration's classes: who makes what, and what is printed for whom.
#![allow(clippy::disallowed_methods, reason = "the course is read")]

use std::path::Path;

use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::lists::{order_csv, order_text};
use tourier::model::Each;
use tourier::plan::{Station, Who, stations};
use tourier::read;
use tourier::sheet::Units;
use tourier::sheet::making::order;
use tourier::store;
use tourier::theme::Theme;
use tourier::words::Words;

fn edition() -> Edition {
    let (sources, found) =
        store::load(Path::new("content")).expect("the demonstration course");
    Edition::new(&sources, Vec::new(), found)
}

fn words() -> Words {
    let theme = Theme::built_in();
    read::words_in(&theme, "en").expect("the words")
}

fn of(edition: &Edition, each: Option<Each>) -> Vec<Station> {
    let class = edition.content.classes.iter().find(|class| class.name == "evening-3");
    let mut class = class.expect("the class").clone();
    if let Some(each) = each {
        class.makes.truncate(1);
        class.makes[0].each = each;
    }
    stations(&class, edition.book()).expect("stations")
}

#[test]
fn each_group_makes_the_dough_before_what_it_goes_into() {
    let edition = edition();
    let stations = of(&edition, None);
    let who: Vec<Who> = stations.iter().map(|station| station.who).collect();
    assert_eq!(who[..2], [Who::Group(0), Who::Group(1)]);
    assert_eq!((who.len(), who[7]), (8, Who::Instructor));
    for station in &stations {
        let [dough, bake] = &station.portions[..] else { panic!("{station:?}") };
        assert_eq!((&*dough.recipe, &*bake.recipe), ("layered-dough", "crescents"));
        assert_eq!(bake.scaling, Scaling::Pieces(10));
        // The dough card is for what the bake's card weighs out as dough.
        let Scaling::Total(mass) = &dough.scaling else { panic!("{dough:?}") };
        assert!((mass.float() - 620.0).abs() < 1e-9, "{}", mass.float());
    }
}

#[test]
fn where_every_baker_makes_it_a_card_says_for_how_many() {
    let stations = of(&edition(), Some(Each::Baker));
    assert_eq!(stations.len(), 7);
    assert!(stations.iter().flat_map(|it| &it.portions).all(|portion| portion.each == 2));
}

/// What is said in the text and in the table is the same, and is a sum: packs and shelf
/// less what is needed is what is left.
#[test]
fn text_and_table_of_an_order_agree_and_add_up() {
    let edition = edition();
    let mut rows = 0;
    // Bakers and pieces of all sizes, so that needs are no whole grams.
    for (class, pieces) in edition
        .content
        .classes
        .iter()
        .flat_map(|class| (5..12).map(move |it| (class, it)))
    {
        let mut class = class.clone();
        for making in &mut class.makes {
            if let tourier::model::Much::Pieces(count) = &mut making.much {
                *count = pieces;
            }
        }
        let words = words();
        let order = order(&class, edition.book(), &words).expect("an order");
        let text = order_text(&order, Units::Metric, &words);
        let table = order_csv(&order, &words);
        for line in order.lines.iter().filter(|line| !line.as_needed) {
            let name = &line.ingredient;
            let row = table.lines().find(|row| row.starts_with(&format!("{name},")));
            let cells: Vec<&str> = row.expect("a row").split(',').collect();
            let said =
                text.lines().find(|row| row.split("  ").any(|it| it.trim() == name));
            let said = said.expect("a line");
            // What is counted says its weight behind.
            let said_so = [format!(" {} g ", cells[1]), format!("({} g)", cells[1])];
            assert!(said_so.iter().any(|it| said.contains(it)), "{said}: {cells:?}");
            let (Some(packs), Some(pack)) = (line.packs, line.pack_g) else { continue };
            let number = |cell: &str| cell.parse::<f64>().expect("a number");
            let left = packs as f64 * pack + number(cells[2]) - number(cells[1]);
            assert!((left - number(cells[5])).abs() < 1e-9, "{cells:?}");
            assert!(
                said.ends_with(&format!(" {} g left", cells[5])),
                "{said}: {cells:?}"
            );
            rows += 1;
        }
    }
    assert!(rows > 20, "{rows}");
}

#[test]
fn the_weigh_out_reads_in_both_units() {
    let edition = edition();
    let class = edition.content.classes.iter().find(|class| class.name == "evening-3");
    let order = order(class.expect("the class"), edition.book(), &words());
    let order = order.expect("an order");
    let flour = order.lines.iter().find(|line| line.ingredient == "bread flour");
    let flour = flour.expect("flour");
    // 1 lb is 453.59237 g (NIST SP 811, appendix B.8).
    let pounds = flour.need_g / 453.592_37;
    let whole = format!("{} lb", pounds.floor());
    assert!(flour.us.need.starts_with(&whole), "{} of {pounds}", flour.us.need);
    let tub = &order.tubs[0].lines[0];
    let ounces = tub.grams.expect("a weight") / 28.349_523_125;
    // 620 g of 1244 g of dough, which hold 560 g of flour before 2 % are lost: 280 g; and 5 %
    // of spare.
    assert!((10.3..10.4).contains(&ounces), "{ounces} {}", tub.us);
    let said = tub.us.strip_suffix(" oz").and_then(|said| said.parse::<f64>().ok());
    assert!(said.is_some_and(|said| (said / ounces - 1.0).abs() < 0.01), "{}", tub.us);
}
