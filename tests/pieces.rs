//! What a piece weighs, what the flour is and how wet the dough is, for recipes that are not
//! one dough with one flour. Each has its worked values and the reasoning beside them; the
//! weights of a cup, an egg and so on do not come in: all lines are in grams.
//!
//! That everything which is cut, dropped, filled or panned counts is common practice, no
//! source; the numbers are by arithmetic.

use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::{Mass, exact};
use tourier::read::{Source, words_in};
use tourier::sheet::Sheet;
use tourier::theme::Theme;

/// The course and some recipes by file name, read and checked.
fn edition(recipes: &[(&str, String)]) -> Edition {
    in_course("", recipes)
}

fn in_course(course: &str, recipes: &[(&str, String)]) -> Edition {
    let source = |path: String, text: String| Source { path, text };
    let mut files =
        vec![source("course.yaml".into(), format!("title: c\nsummary: s\n{course}"))];
    files.extend(recipes.iter().map(|(name, text)| {
        let text = format!("---\ntitle: T\nsummary: s\n{text}");
        source(format!("recipes/{name}.md"), text)
    }));
    Edition::new(&files, Vec::new(), Vec::new())
}

fn sheet(recipes: &[(&str, String)]) -> Sheet {
    scaled(&edition(recipes), recipes[0].0, &Scaling::Batches(exact(1, 1)))
}

fn scaled(edition: &Edition, recipe: &str, scaling: &Scaling) -> Sheet {
    assert!(!edition.stops(), "{:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let recipe = edition.content.recipe(recipe).expect("the recipe is read");
    edition.sheet(recipe, scaling, &words).expect("it can be worked out")
}

fn note<'a>(sheet: &'a Sheet, name: &str) -> Option<&'a str> {
    let found = sheet.notes.iter().find(|note| note.name == name)?;
    Some(&found.text.metric)
}

/// A head with sections, each a name and its lines.
fn head(makes: &str, sections: &[(&str, &[&str])]) -> String {
    let mut text = format!("makes: {makes}\nformula:\n");
    for (name, lines) in sections {
        text.push_str(&format!("  {name}:\n"));
        lines.iter().for_each(|line| text.push_str(&format!("    - {line}\n")));
    }
    text + "---\n"
}

/// Steps, each a heading and the lines of its ticket.
fn steps(steps: &[(&str, &str)]) -> String {
    let step = |(title, ticket): &(&str, &str)| {
        format!("## {title}\n~~~ticket\n{ticket}\n~~~\n")
    };
    steps.iter().map(step).collect()
}

/// A recipe with what its sheet must say.
struct Case<'a> {
    what: &'a str,
    makes: &'a str,
    sections: &'a [(&'a str, &'a [&'a str])],
    steps: &'a [(&'a str, &'a str)],
    /// Grams of a piece.
    piece: Option<f64>,
    /// Percent.
    hydration: Option<f64>,
    /// Percent of the flour of some lines, by their number.
    percent: &'a [(usize, Option<f64>)],
}

const CASES: &[Case] = &[
    // 12 cups share 250 + 150 + 15 + 240 + 100 + 85 = 840 g; the milk is 240 / 250 of the
    // flour. The topping is put on.
    Case {
        what: "muffins in a dry and a wet section",
        makes: "12 muffins",
        sections: &[
            ("dry", &["250 g all-purpose flour", "150 g sugar", "15 g baking powder"]),
            ("wet", &["240 g whole milk", "100 g egg", "85 g butter"]),
            ("topping", &["60 g sugar"]),
        ],
        steps: &[
            ("Mix dry", "uses: dry\nhands: 2 min"),
            ("Mix wet", "uses: wet\nhands: 2 min"),
            ("Strew", "uses: topping\nhands: 1 min"),
            ("Bake", "bake: 200 °C, 20 min\nper tray: 12"),
        ],
        piece: Some(70.0),
        hydration: Some(96.0),
        percent: &[(0, Some(100.0)), (3, Some(96.0)), (6, None)],
    },
    // Two bowls that a third step brings together: the same 840 g.
    Case {
        what: "the same in two bowls",
        makes: "12 muffins",
        sections: &[
            ("dry", &["250 g all-purpose flour", "150 g sugar", "15 g baking powder"]),
            ("wet", &["240 g whole milk", "100 g egg", "85 g butter"]),
        ],
        steps: &[
            ("Mix dry", "uses: dry\nafter: []\nhands: 2 min"),
            ("Mix wet", "uses: wet\nafter: []\nhands: 2 min"),
            ("Combine", "after: [mix-dry, mix-wet]\nhands: 2 min"),
            ("Bake", "bake: 200 °C, 20 min"),
        ],
        piece: Some(70.0),
        hydration: Some(96.0),
        percent: &[(1, Some(60.0))],
    },
    // Choux: 250 + 100 + 150 + 250 = 750 g in 25 puffs; the cream is filled in after the
    // bake. Water over flour is 250 / 150; eggs are no plain liquid.
    Case {
        what: "choux paste with its eggs",
        makes: "25 puffs",
        sections: &[
            ("paste", &["250 g water", "100 g butter", "150 g bread flour"]),
            ("eggs", &["250 g egg"]),
            ("pastry cream", &["500 g whole milk", "100 g egg yolk", "40 g cornstarch"]),
        ],
        steps: &[
            ("Cook", "uses: paste\nhands: 10 min\ncore: 80 °C"),
            ("Beat in the eggs", "uses: eggs\nhands: 8 min"),
            ("Pipe", "hands: 10 s per piece"),
            ("Bake", "bake: 200 °C, 30 min"),
            ("Cook the cream", "uses: pastry cream\nhands: 10 min\ncool: custard"),
        ],
        piece: Some(30.0),
        hydration: Some(166.67),
        percent: &[(3, Some(166.667)), (4, None)],
    },
    // The same, its cream called something else and cooked first: with milk, egg and hardly
    // any flour it is a custard and no part of the paste.
    Case {
        what: "a cream cooked before the paste",
        makes: "25 puffs",
        sections: &[
            ("vanilla", &["500 g whole milk", "100 g egg yolk", "40 g cornstarch"]),
            ("paste", &["250 g water", "100 g butter", "150 g bread flour"]),
            ("eggs", &["250 g egg"]),
        ],
        steps: &[
            ("Cook the cream", "uses: vanilla\nhands: 10 min\ncool: custard"),
            ("Cook", "uses: paste\nhands: 10 min"),
            ("Beat in the eggs", "uses: eggs\nhands: 8 min"),
            ("Bake", "bake: 200 °C, 30 min"),
        ],
        piece: Some(30.0),
        hydration: Some(166.67),
        percent: &[(0, None), (6, Some(166.667))],
    },
    // Soaker 100 + 150, dough 500 + 300 + 10: 1060 g in 2 loaves; water 450 / 500.
    Case {
        what: "a soaker of seeds and water",
        makes: "2 loaves",
        sections: &[
            ("soaker", &["100 g sunflower seeds", "150 g water"]),
            ("dough", &["500 g bread flour", "300 g water", "10 g fine salt"]),
        ],
        steps: &[
            ("Soak", "uses: soaker\nhands: 2 min\nwait: 8 h"),
            ("Mix", "uses: dough\nhands: 10 min"),
            ("Divide", "hands: 1 min per piece"),
            ("Bake", "bake: 230 °C, 35 min"),
        ],
        piece: Some(530.0),
        hydration: Some(90.0),
        percent: &[(1, Some(30.0))],
    },
    // A liquid levain with a fifth of flour: 60 + 240; dough 540 + 200 + 12; 1052 g in 10.
    // Flour 600, water 440: 73.33 %.
    Case {
        what: "rolls with a liquid levain",
        makes: "10 rolls",
        sections: &[
            ("levain", &["60 g bread flour", "240 g water"]),
            ("dough", &["540 g bread flour", "200 g water", "12 g fine salt"]),
        ],
        steps: &[
            ("Feed", "uses: levain\nhands: 2 min\nwait: 12 h"),
            ("Mix", "uses: dough\nhands: 10 min"),
            ("Bake", "bake: 230 °C, 15 min"),
        ],
        piece: Some(105.2),
        hydration: Some(73.33),
        percent: &[(0, Some(10.0)), (1, Some(40.0)), (4, Some(2.0))],
    },
    // Milk and yeast first: 300 + 20 + 500 + 80 = 900 g in 18.
    Case {
        what: "a milk and yeast section",
        makes: "18 buns",
        sections: &[
            ("milk and yeast", &["300 g whole milk", "20 g fresh yeast"]),
            ("dough", &["500 g bread flour", "80 g butter"]),
            ("wash", &["50 g egg"]),
        ],
        steps: &[
            ("Dissolve", "uses: milk and yeast\nhands: 1 min"),
            ("Mix", "uses: dough\nhands: 10 min"),
            ("Brush", "uses: wash\nhands: 1 min"),
            ("Bake", "bake: 200 °C, 15 min"),
        ],
        piece: Some(50.0),
        hydration: Some(60.0),
        percent: &[(0, Some(60.0)), (4, None)],
    },
    // Brownies: chocolate and butter 400, eggs and sugar 500, flour 100: 1000 g, 20 pieces
    // cut from the slab after the bake; the frosting is put on.
    Case {
        what: "brownies in three bowls",
        makes: "20 brownies",
        sections: &[
            ("chocolate", &["200 g dark chocolate", "200 g butter"]),
            ("eggs", &["200 g egg", "300 g sugar"]),
            ("flour", &["100 g all-purpose flour"]),
            ("frosting", &["100 g icing sugar"]),
        ],
        steps: &[
            ("Melt", "uses: chocolate\nhands: 5 min"),
            ("Whisk", "uses: eggs\nhands: 5 min"),
            ("Fold", "uses: flour\nhands: 2 min"),
            ("Bake", "bake: 170 °C, 25 min"),
            ("Spread", "uses: frosting\nhands: 3 min"),
            ("Cut", "hands: 5 s per piece"),
        ],
        piece: Some(50.0),
        hydration: None,
        percent: &[(0, Some(200.0)), (5, None)],
    },
    // A custard tart without a cut: the pastry of 300 g is the piece, the custard is put in.
    Case {
        what: "a tart lined and filled",
        makes: "1 tart",
        sections: &[
            ("pastry", &["180 g all-purpose flour", "90 g butter", "30 g water"]),
            ("milk and eggs", &["300 g whole milk", "150 g egg"]),
        ],
        steps: &[
            ("Rub in", "uses: pastry\nhands: 5 min"),
            ("Chill and line", "wait: 1 h\nhands: 8 min"),
            ("Stir", "uses: milk and eggs\nhands: 3 min"),
            ("Bake", "bake: 150 °C, 40 min\ncool: custard"),
        ],
        piece: Some(300.0),
        hydration: Some(16.67),
        percent: &[(2, Some(16.667)), (3, None)],
    },
    // Meringues have no flour: 400 g in 20, no percentages, no hydration.
    Case {
        what: "meringues",
        makes: "20 meringues",
        sections: &[("meringue", &["130 g egg white", "270 g sugar"])],
        steps: &[
            ("Whip", "uses: meringue\nhands: 10 min"),
            ("Bake", "bake: 100 °C, 2 h"),
        ],
        piece: Some(20.0),
        hydration: None,
        percent: &[(0, None), (1, None)],
    },
    // Half of the butter goes in, the other half is brushed on after shaping: 500 + 300 + 50.
    Case {
        what: "half of the butter later",
        makes: "10 rolls",
        sections: &[("dough", &["500 g bread flour", "300 g water", "100 g butter"])],
        steps: &[
            ("Mix", "uses: bread flour, water, half of the butter\nhands: 10 min"),
            ("Round", "hands: 20 s per piece"),
            ("Brush", "uses: half of the butter\nhands: 2 min"),
            ("Bake", "bake: 200 °C, 15 min"),
        ],
        piece: Some(85.0),
        hydration: Some(60.0),
        percent: &[(2, Some(20.0))],
    },
    // A dough named in two steps is there once: 800 g in 10.
    Case {
        what: "a section named twice",
        makes: "10 rolls",
        sections: &[("dough", &["500 g bread flour", "300 g water"])],
        steps: &[
            ("Mix", "uses: dough\nhands: 10 min"),
            ("Round", "uses: dough\nhands: 20 s per piece"),
            ("Bake", "bake: 200 °C, 15 min"),
        ],
        piece: Some(80.0),
        hydration: Some(60.0),
        percent: &[],
    },
];

#[test]
fn pieces_weigh_what_is_mixed_or_shaped_together() {
    for case in CASES {
        let text = head(case.makes, case.sections) + &steps(case.steps);
        let sheet = sheet(&[("t", text)]);
        assert_eq!(sheet.scale.piece_g, case.piece, "{}", case.what);
        assert_eq!(sheet.totals.hydration_percent, case.hydration, "{}", case.what);
        for (line, percent) in case.percent {
            assert_eq!(sheet.formula[*line].percent, *percent, "{}: {line}", case.what);
        }
    }
}

/// Rye in three stages, each a recipe that the next one takes in. The first sour: 50 g of
/// flour, 75 g of water (125 g). The second takes all of it: 150 g of flour, 180 g of water
/// (455 g). The dough takes all of that: 600 g of flour, 460 g of water, 16 g of salt. Flour
/// 50 + 150 + 600 = 800, water 75 + 180 + 460 = 715: 89.375 %. By arithmetic.
fn three_stages(makes: &str) -> Vec<(&'static str, String)> {
    let mix = |uses: &str| steps(&[("Mix", &format!("uses: {uses}\nhands: 5 min"))]);
    let first = head("125 g", &[("sour", &["50 g dark rye flour", "75 g water"])]);
    let second = head(
        "455 g",
        &[("sour", &["125 g [first](first.md)", "150 g dark rye flour", "180 g water"])],
    );
    let dough = head(
        makes,
        &[
            ("sour", &["455 g [second](second.md)"]),
            ("dough", &["600 g dark rye flour", "460 g water", "16 g fine salt"]),
        ],
    );
    let bake = steps(&[("Bake", "bake: 230 °C, 50 min")]);
    vec![
        ("bread", dough + &mix("sour, dough") + &bake),
        ("second", second + &mix("sour")),
        ("first", first + &mix("sour")),
    ]
}

#[test]
fn three_stages_of_rye_are_one_dough() {
    let sheet = sheet(&three_stages("2 loaves"));
    assert_eq!(sheet.totals.hydration_percent, Some(89.38));
    assert_eq!(sheet.totals.flour_g, 800.0);
    // 455 + 600 + 460 + 16 = 1531 g in two.
    assert_eq!(sheet.scale.piece_g, Some(765.5));
    // Salt: 16 / 800.
    assert_eq!(sheet.formula[3].percent, Some(2.0));
}

/// A stage with so little flour that no share of it would tell: 20 g in 120 g. Flour 520,
/// water 100 + 280: 73.08 %.
#[test]
fn a_thin_stage_counts_as_well() {
    let thin = head("120 g", &[("culture", &["20 g bread flour", "100 g water"])])
        + &steps(&[("Stir", "uses: culture\nhands: 1 min")]);
    let dough = head(
        "4 loaves",
        &[("dough", &["120 g [thin](thin.md)", "500 g bread flour", "280 g water"])],
    ) + &steps(&[("Mix", "uses: dough\nhands: 9 min")]);
    let sheet = sheet(&[("t", dough), ("thin", thin)]);
    assert_eq!(sheet.totals.hydration_percent, Some(73.08));
    assert_eq!(sheet.scale.piece_g, Some(225.0));
}

/// `2 %` is of all flour, with the flour inside an included levain: 2 % of 540 + 60.
#[test]
fn percent_lines_count_the_flour_of_what_is_included() {
    let levain = head("120 g", &[("levain", &["60 g bread flour", "60 g water"])])
        + &steps(&[("Stir", "uses: levain\nhands: 1 min")]);
    let dough = |levain: &str| {
        head("4 loaves", &[("dough", &["540 g bread flour", levain, "2 % fine salt"])])
            + &steps(&[("Mix", "uses: dough\nhands: 9 min")])
    };
    let weighed =
        sheet(&[("t", dough("120 g [levain](levain.md)")), ("levain", levain.clone())]);
    assert_eq!(weighed.formula[2].grams, Some(12.0));
    // Written as a share of the flour it is a part of: 20 % of 600 g.
    let shared = sheet(&[("t", dough("20 % [levain](levain.md)")), ("levain", levain)]);
    assert_eq!(shared.formula[1].grams, Some(120.0));
    assert_eq!(shared.formula[2].grams, Some(12.0));
    assert_eq!(shared.formula[2].percent, Some(2.0));
}

fn rolls() -> Vec<(&'static str, String)> {
    let head = head(
        "12 rolls",
        &[
            ("dough", &["600 g bread flour", "360 g water", "12 g fine salt"]),
            ("wash", &["50 g egg"]),
        ],
    );
    let steps = steps(&[
        ("Mix", "uses: dough\nhands: 10 min"),
        ("Round", "hands: 20 s per piece"),
        ("Brush", "uses: wash\nhands: 2 min"),
        ("Bake", "bake: 220 °C, 15 min\nper tray: 8"),
    ]);
    vec![("rolls", head + &steps)]
}

/// 972 g of dough for 12 rolls of 81 g. Pieces of 2 oz (56.7 g): as many as written, or
/// 50, each of exactly that; 50 take 2834.95 g of dough, 2.9166 times as written.
#[test]
fn pieces_of_a_weight_are_as_many_as_asked() {
    let edition = edition(&rolls());
    let two_ounces = || Mass::ounces(&exact(2, 1));
    for (pieces, count) in [(None, 12), (Some(50), 50), (Some(13), 13)] {
        let wanted = Scaling::PieceWeight { pieces, weight: two_ounces() };
        let sheet = scaled(&edition, "rolls", &wanted);
        assert_eq!(sheet.scale.pieces, Some(count));
        assert_eq!(sheet.scale.makes.metric, format!("{count} rolls"));
        assert_eq!(sheet.scale.piece_g, Some(56.7));
        let piece = sheet.scale.piece.as_ref().map(|piece| piece.us.as_str());
        assert_eq!(piece, Some("2 oz"));
        let dough: f64 = sheet.formula.iter().take(3).filter_map(|line| line.grams).sum();
        let needed = 56.699_046_25 * f64::from(u32::try_from(count).unwrap_or(0));
        assert!((dough - needed).abs() < 0.01, "{dough} for {needed}");
        let trays = sheet.bakes[0].trays;
        assert_eq!(trays, count.div_ceil(8));
    }
}

/// 12 rolls of 81 g are 972 g; 13 from the same dough are 74.77 g each, shown as 74 g, and
/// 13 × 0.77 = 10 g are left over. By arithmetic.
#[test]
fn what_is_shown_times_the_pieces_is_there() {
    let edition = edition(&rolls());
    let once = scaled(&edition, "rolls", &Scaling::Batches(exact(1, 1)));
    assert_eq!(
        once.scale.piece.as_ref().map(|piece| piece.metric.as_str()),
        Some("81 g")
    );
    let more = exact(13, 12);
    let total = scaled(&edition, "rolls", &Scaling::Batches(more));
    assert_eq!(total.scale.pieces, Some(13));
    for factor in [(1, 1), (1, 2), (13, 10), (7, 3), (29, 10), (41, 8)] {
        let factor = exact(factor.0, factor.1);
        let sheet = scaled(&edition, "rolls", &Scaling::Batches(factor));
        let piece = sheet.scale.piece.as_ref().expect("it has a weight");
        let grams: f64 = piece.metric.trim_end_matches(" g").parse().expect("grams");
        let pieces =
            f64::from(u32::try_from(sheet.scale.pieces.unwrap_or(0)).unwrap_or(0));
        let dough: f64 = sheet.formula.iter().take(3).filter_map(|line| line.grams).sum();
        assert!(grams * pieces <= dough + 0.01, "{grams} × {pieces} of {dough}");
        let left = dough - grams * pieces;
        assert_eq!(
            note(&sheet, "left-over").is_some(),
            left >= 1.0 || us_left(&sheet, dough)
        );
    }
}

/// Whether the weight in ounces leaves a gram or more.
fn us_left(sheet: &Sheet, dough: f64) -> bool {
    let piece =
        sheet.scale.piece.as_ref().map(|piece| piece.us.clone()).unwrap_or_default();
    let (whole, part) = piece.trim_end_matches(" oz").split_at(1);
    let part = match part {
        "" => 0.0,
        "⅛" => 0.125,
        "¼" => 0.25,
        "⅜" => 0.375,
        "½" => 0.5,
        "⅝" => 0.625,
        "¾" => 0.75,
        "⅞" => 0.875,
        other => format!("0{other}").parse().expect("a decimal"),
    };
    let ounces: f64 = whole.parse::<f64>().expect("a digit") + part;
    let pieces = f64::from(u32::try_from(sheet.scale.pieces.unwrap_or(0)).unwrap_or(0));
    dough - ounces * 28.349_523_125 * pieces >= 1.0
}

/// 12 oz of water at 110 °F of 82 oz in all, flour and room 72 °F, friction 20 °F, dough
/// 78 °F: 3 × 78 − 164 = 70 °F for all, so (82 × 70 − 12 × 110) / 70 = 63.14 °F for the
/// rest. The line is shown with its temperature. By arithmetic.
#[test]
fn water_that_is_warm_already_is_shown_and_reckoned_with() {
    let head = head(
        "4 loaves",
        &[(
            "dough",
            &[
                "140 oz bread flour",
                "12 oz water at 110 °F",
                "70 oz water",
                "2 oz instant yeast",
            ],
        )],
    );
    let head = head.replace("---\n", "dough temperature: 78 °F\n---\n");
    let text = head + &steps(&[("Mix", "uses: dough\nhands: 10 min")]);
    let room = "room: {temperature: 72 °F, flour: 72 °F, tap: 55 °F, friction: 20 °F}\n";
    let edition = in_course(room, &[("t", text)]);
    let sheet = scaled(&edition, "t", &Scaling::Batches(exact(1, 1)));
    let water = sheet.water.as_ref().expect("there is water to find");
    assert_eq!(water.water.us, "63 °F");
    let at = sheet.formula[1].at.as_ref().expect("its own temperature");
    assert_eq!((at.metric.as_str(), at.us.as_str()), ("at 43 °C", "at 110 °F"));
    assert_eq!(sheet.formula[2].at, None);
    let tourier::sheet::Part::Step(step) = &sheet.parts[0] else { panic!("a step") };
    assert!(
        step.ingredients[1].amount.us.ends_with("at 110 °F"),
        "{:?}",
        step.ingredients
    );
}

/// A starter of 50 + 50 goes into a levain of 100 + 150, and a second preferment of
/// 100 + 100 stands beside it; the dough adds 750 + 400. All flour: 1000. The levain with
/// its starter: 150 of flour (15 %), 200 of water (133.33 %). By arithmetic.
#[test]
fn preferments_may_be_several_and_made_from_one_another() {
    let head = head(
        "4 loaves",
        &[
            ("starter", &["50 g bread flour", "50 g water"]),
            ("levain", &["100 g bread flour", "150 g water"]),
            ("sponge", &["100 g bread flour", "100 g water"]),
            ("dough", &["750 g bread flour", "400 g water"]),
        ],
    );
    let head =
        head.replace("---\n", "preferment: starter, levain from starter, sponge\n---\n");
    let text = head
        + &steps(&[
            ("Refresh", "uses: starter\nhands: 2 min"),
            ("Build", "uses: levain\nhands: 2 min"),
            ("Stir", "uses: sponge\nhands: 2 min"),
            ("Mix", "uses: dough\nhands: 10 min"),
        ]);
    let sheet = sheet(&[("t", text)]);
    let shown: Vec<(&str, f64, f64)> = sheet
        .preferments
        .iter()
        .map(|it| (it.section.as_str(), it.flour_percent, it.hydration_percent))
        .collect();
    assert_eq!(
        shown,
        [("starter", 5.0, 100.0), ("levain", 15.0, 133.33), ("sponge", 10.0, 100.0)]
    );
    // Both ways they reconcile to the gram: 700 g of water in all.
    for preferment in &sheet.preferments {
        let water = preferment.overall.iter().find(|line| line.ingredient == "water");
        let water = water.map(|line| line.preferment_g + line.dough_g);
        assert_eq!(water, Some(700.0), "{}", preferment.section);
    }
    assert_eq!(sheet.totals.hydration_percent, Some(70.0));
}

/// A flour without a weight leaves no percentages, and the sheet says why.
#[test]
fn flour_without_a_weight_is_said() {
    let head = head(
        "2 loaves",
        &[("dough", &["150 g dark rye flour", "bread flour, as needed", "500 g water"])],
    );
    let text = head + &steps(&[("Mix", "uses: dough\nhands: 10 min")]);
    let edition = edition(&[("t", text)]);
    assert!(edition.faults.iter().any(|fault| fault.name == "weight-open"));
    let sheet = scaled(&edition, "t", &Scaling::Batches(exact(1, 1)));
    assert!(sheet.formula.iter().all(|line| line.percent.is_none()));
    assert_eq!(sheet.totals.hydration_percent, None);
    assert_eq!((sheet.scale.piece_g, sheet.totals.flour_g), (None, 0.0));
    let said = note(&sheet, "open-weight").expect("it is said");
    assert!(said.contains("bread flour"), "{said}");
}

/// `1 batch` is what is shown as one, and nothing is called more.
#[test]
fn batches_are_counted_as_shown() {
    let edition = edition(&rolls());
    let said = |factor| scaled(&edition, "rolls", &Scaling::Batches(factor)).scale.batch;
    assert_eq!(said(exact(1001, 1000)), "1 batch");
    assert_eq!(said(exact(1, 1)), "1 batch");
    assert_eq!(said(exact(101, 100)), "1.01 batches");
    assert_eq!(said(exact(1, 2)), "½ batch");
}

/// 12 squares of 10 cm from 40 × 30 cm weigh 70 g; twice as heavy they are squares of
/// 10 × √2 = 14.14 cm from 56.57 × 42.43 cm, as thick as before, and as many; at half the
/// weight 7.07 cm. By arithmetic.
#[test]
fn heavier_pieces_that_are_cut_grow_at_their_thickness() {
    let head = head("12 squares", &[("dough", &["500 g bread flour", "340 g water"])]);
    let text =
        head + &steps(&[
            ("Mix", "uses: dough\nhands: 10 min"),
            ("Roll", "hands: 5 min\nsheet: 40 x 30 cm"),
            ("Cut", "hands: 5 min\nsheet: 40 x 30 cm\ncut: squares 10 cm"),
            ("Bake", "bake: 200 °C, 15 min"),
        ]) + "\n";
    let text =
        text.replace("## Bake", "Cut {40 x 30 cm} into squares of {10 cm}.\n## Bake");
    let edition = edition(&[("t", text)]);
    for (grams, side, sheet_side) in
        [(70_i32, 10.0, 40.0), (140, 14.142, 56.569), (35, 7.071, 28.284)]
    {
        let weight = Mass::grams(exact(grams.into(), 1));
        let wanted = Scaling::PieceWeight { pieces: None, weight };
        let sheet = scaled(&edition, "t", &wanted);
        assert_eq!((sheet.scale.pieces, sheet.cuts[0].pieces), (Some(12), 12));
        let cut = &sheet.cuts[0];
        assert!((cut.base_cm - side).abs() < 0.01, "{}", cut.base_cm);
        assert!(
            (cut.sheet_length_cm - sheet_side).abs() < 0.02,
            "{}",
            cut.sheet_length_cm
        );
        assert!((cut.piece_g - f64::from(grams)).abs() < 0.1, "{}", cut.piece_g);
        let tourier::sheet::Part::Step(roll) = &sheet.parts[1] else { panic!("a step") };
        let tourier::sheet::Part::Step(cutting) = &sheet.parts[2] else {
            panic!("a step")
        };
        let row = |step: &tourier::sheet::StepSheet, key: &str| {
            let row = step.ticket.iter().find(|row| row.key.word() == key);
            row.map(|row| row.value.metric.clone()).unwrap_or_default()
        };
        assert_eq!(row(roll, "sheet"), row(cutting, "sheet"));
        assert_eq!(row(roll, "thickness"), row(cutting, "thickness"));
        assert!(
            row(cutting, "cut").contains(&cut.piece.metric),
            "{}",
            row(cutting, "cut")
        );
        // What the prose says follows.
        let said = serde_json::to_string(&cutting.prose).expect("JSON");
        assert!(
            said.contains(&cut.piece.metric) && said.contains(&cut.size.metric),
            "{said}"
        );
    }
}
