//! The papers of the demonstration's classes: who makes what, and what is printed for whom.
#![allow(clippy::disallowed_methods, reason = "the course is read")]

use std::path::Path;

use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::lists::{Station, order, stations};
use tourier::model::Each;
use tourier::store;

fn edition() -> Edition {
    let (sources, found) =
        store::load(Path::new("content")).expect("the demonstration course");
    Edition::new(&sources, Vec::new(), found)
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
    let names: Vec<&str> = stations.iter().map(|station| station.who.as_str()).collect();
    assert_eq!(names[..2], ["pair 1", "pair 2"]);
    assert_eq!((names.len(), names[7]), (8, "instructor"));
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

#[test]
fn the_weigh_out_reads_in_both_units() {
    let edition = edition();
    let class = edition.content.classes.iter().find(|class| class.name == "evening-3");
    let order = order(class.expect("the class"), edition.book()).expect("an order");
    let flour = order.lines.iter().find(|line| line.ingredient == "bread flour");
    let flour = flour.expect("flour");
    // 1 lb is 453.59237 g (NIST SP 811, appendix B.8).
    let pounds = flour.need_g / 453.592_37;
    let whole = format!("{} lb", pounds.floor());
    assert!(flour.us.need.starts_with(&whole), "{} of {pounds}", flour.us.need);
    let tub = &order.tubs[0].lines[0];
    let ounces = tub.grams.expect("a weight") / 28.349_523_125;
    // 620 g of 1244 g of dough, which hold 560 g of flour before 2 % are lost: 280 g.
    assert!((9.75..10.0).contains(&ounces) && tub.us == "9.9 oz", "{ounces} {}", tub.us);
}
