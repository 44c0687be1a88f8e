//! Which fillings and batters are custards: recipes as printed, and whether the program asks
//! how each is cooled. What it should ask follows from what the thing is: milk or cream set
//! with egg spoils like them (FDA Food Code 3-501.14 and 3-501.16), a batter bakes to bread.
//! Where a batter has so little flour that it is both, the caution stays: from a third of flour
//! over milk, cream and egg on it is none (common practice, no source).

#[path = "common/english.rs"]
mod english;

use tourier::edition::Edition;
use tourier::read::Source;

/// How the thing is cooked.
#[derive(Clone, Copy)]
enum Cooked {
    /// In the oven, in one dish.
    Baked,
    /// In the oven, in a lining of pastry.
    InPastry,
    /// Stirred on the stove, to a core.
    Stirred,
    /// On a griddle or in a pan, piece by piece.
    Fried,
}

use Cooked::{Baked, Fried, InPastry, Stirred};

/// What is made, its lines as printed, how it is cooked, whether its cooling is asked about,
/// and where it is printed. Read in stored copies.
const TABLE: &[(&str, &[&str], Cooked, bool, &str)] = &[
    (
        "cup custard",
        &["1 quart whole milk", "4 eggs", "1/2 cup sugar", "1/8 tsp nutmeg"],
        Baked,
        true,
        "C. A. Lyford, A Book of Recipes for the Cooking School, 1921",
    ),
    (
        "flan",
        &["1 quart whole milk", "12 egg yolks", "6 oz sugar"],
        Baked,
        true,
        "E. Acton, Modern Cookery, 1845: French custards",
    ),
    (
        "flan in a crust",
        &["2 eggs", "1/8 tsp fine salt", "3 tbsp sugar", "1 1/2 cups whole milk"],
        InPastry,
        true,
        "The Epicurean, custard pie",
    ),
    (
        "quiche",
        &[
            "3 eggs",
            "1 egg yolk",
            "20 cl whole milk",
            "20 cl heavy cream",
            "30 g butter",
            "200 g smoked bacon",
        ],
        InPastry,
        true,
        "Monsieur de France, quiche lorraine",
    ),
    (
        "clafoutis",
        &[
            "500 g cherries",
            "30 g butter",
            "100 g all-purpose flour",
            "100 g sugar",
            "40 cl whole milk",
            "4 eggs",
            "a pinch of fine salt",
            "2 tbsp kirsch",
        ],
        Baked,
        true,
        "Périberry, clafoutis du Périgord: 17 % of flour",
    ),
    (
        "almond frangipane",
        &[
            "4 oz ground almonds",
            "4 oz sugar",
            "1 1/2 tbsp all-purpose flour",
            "4 oz butter",
            "2 large eggs",
            "1 tbsp almond extract",
        ],
        InPastry,
        false,
        "Back to Basics: crème frangipane, modern: almonds, butter and no milk",
    ),
    (
        "frangipan tart",
        &[
            "4 eggs",
            "1 1/2 oz butter",
            "1 1/2 oz sugar",
            "1/4 oz all-purpose flour",
            "1/2 pint whole milk",
        ],
        InPastry,
        true,
        "Mrs Beeton's Book of Household Management, 1907, no. 1705: no almond, but milk",
    ),
    (
        "frangipan cream",
        &[
            "9 oz sugar",
            "9 oz all-purpose flour",
            "4 large eggs",
            "8 large egg yolks",
            "6 1/2 cups whole milk",
            "2 oz amaretti",
            "3 1/2 oz butter",
        ],
        Stirred,
        true,
        "A. Escoffier, as given in Back to Basics: 13 % of flour",
    ),
    (
        "pastry cream",
        &[
            "1 lb icing sugar",
            "4 oz all-purpose flour",
            "12 egg yolks",
            "1 quart whole milk",
        ],
        Stirred,
        true,
        "A. Escoffier, A Guide to Modern Cookery, 1907, no. 2401",
    ),
    (
        "griddle cakes",
        &[
            "3 c. all-purpose flour",
            "5 tsp baking powder",
            "1 tsp fine salt",
            "1/4 c. sugar",
            "1 egg",
            "2-1/4 c. whole milk",
            "2 Tb. butter, melted",
        ],
        Fried,
        false,
        "Woman's Institute Library of Cookery, volume 1, 1918",
    ),
    (
        "wheat griddle cakes",
        &[
            "3 cups all-purpose flour",
            "1 tsp fine salt",
            "3 tsp baking powder",
            "3 eggs",
            "3 cups whole milk",
            "1 tbsp butter, melted",
        ],
        Fried,
        false,
        "The White House Cook Book, 1887",
    ),
    (
        "baked pancake",
        &["250 g all-purpose flour", "500 g whole milk", "150 g egg"],
        Baked,
        false,
        "the usual batter, from memory",
    ),
    (
        "whortleberry pudding",
        &["1 pint whole milk", "2 eggs", "6 oz all-purpose flour", "1 pint blueberries"],
        Baked,
        true,
        "Mrs Beeton's Book of Household Management, 1907: 25 % of flour",
    ),
    (
        "butter cake",
        &[
            "200 g all-purpose flour",
            "200 g sugar",
            "200 g butter",
            "200 g egg",
            "60 g whole milk",
            "8 g baking powder",
        ],
        Baked,
        false,
        "the usual proportions, from memory",
    ),
];

/// The recipe of one row, as an author would write it.
fn course(name: &str, lines: &[&str], cooked: Cooked) -> Edition {
    let mut head = format!("---\ntitle: {name}\nsummary: s\nmakes: 1 dish\nformula:\n");
    let mut body = String::new();
    if matches!(cooked, InPastry) {
        head.push_str("  pastry:\n    - 200 g all-purpose flour\n    - 100 g butter\n    - 45 g water\n");
        body.push_str("## Line\n~~~ticket\nuses: pastry\nhands: 10 min\n~~~\n");
    }
    head.push_str("  mixture:\n");
    lines.iter().for_each(|line| head.push_str(&format!("    - {line}\n")));
    body.push_str("## Mix\n~~~ticket\nuses: mixture\nhands: 10 min\n~~~\n");
    body.push_str(match cooked {
        Baked | InPastry => "## Bake\n~~~ticket\nbake: 170 °C, 40 min\n~~~\n",
        Stirred => "## Cook\n~~~ticket\nhands: 8 min\ncore: 85 °C\n~~~\n",
        Fried => "## Fry\n~~~ticket\nhands: 2 min per piece\ncore: 85 °C\n~~~\n",
    });
    let files = [
        Source {
            path: "course.yaml".into(),
            text: "title: c\ncup: imperial\n".to_owned(),
        },
        Source { path: "recipes/t.md".into(), text: format!("{head}---\n{body}") },
    ];
    Edition::new(&files, Vec::new(), Vec::new())
}

#[test]
fn each_is_asked_about_as_it_should_be() {
    let mut wrong = Vec::new();
    for (name, lines, cooked, is_custard, source) in TABLE {
        let edition = course(name, lines, *cooked);
        let faults = || edition.faults.iter();
        let unread =
            faults().find(|fault| fault.severity == tourier::fault::Severity::Error);
        if let Some(fault) = unread {
            wrong.push(format!("{name}: {}", english::told(fault).message));
        }
        let asked = faults().any(|fault| fault.name == "cooling-missing");
        if asked != *is_custard {
            wrong.push(format!("{name} ({source}): asked {asked}"));
        }
        // What has no milk to keep cold is not said to be held warm either.
        if !is_custard && faults().any(|fault| fault.name == "held-warm") {
            wrong.push(format!("{name}: held warm"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
