//! Amount lines in the languages, as cookbooks in them print them.

use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::read::{Source, words_in};
use tourier::sheet::Line;
use tourier::theme::Theme;

/// A course in a language with one recipe of these lines, each in its section.
fn edition(language: &str, lines: &[&str]) -> Edition {
    let source = |path: &str, text: String| Source { path: path.to_owned(), text };
    let formula: String = lines
        .iter()
        .enumerate()
        .map(|(at, line)| format!("  part {at}:\n    - \"{line}\"\n"))
        .collect();
    let course = format!("title: A\nsummary: B\nlanguage: {language}\n");
    let recipe = format!(
        "---\ntitle: A\nsummary: B\nmakes: 1 loaf\nformula:\n{formula}---\n\nA.\n\n## Mix\n~~~ticket\nhands: 5 min\n~~~\nB.\n"
    );
    let files = [source("course.yaml", course), source("recipes/a.md", recipe)];
    Edition::new(&files, Vec::new(), Vec::new())
}

/// The lines of the sheet.
fn read(language: &str, lines: &[&str]) -> Vec<Line> {
    let edition = edition(language, lines);
    let wrong = ["bad-amount", "unknown-ingredient", "no-density", "no-unit"];
    let faults: Vec<_> =
        edition.faults.iter().filter(|fault| wrong.contains(&fault.name)).collect();
    assert!(faults.is_empty(), "{language}: {faults:#?}");
    let words = words_in(&Theme::built_in(), language).expect("words");
    let recipe = edition.content.recipe("a").expect("a recipe");
    let sheet = edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words);
    sheet.expect("a sheet").formula
}

/// What a line comes to: so many grams; pieces; words in place of an amount.
enum Is {
    G(f64),
    Pieces,
    Free(&'static str),
}
use Is::{Free, G, Pieces};

fn check(language: &str, cases: &[(&str, &str, Is)]) {
    let lines: Vec<&str> = cases.iter().map(|(line, ..)| *line).collect();
    let read = read(language, &lines);
    for ((line, item, is), found) in cases.iter().zip(&read) {
        assert_eq!(found.key, *item, "{language}: {line}");
        match is {
            G(grams) => {
                let got = found.grams.expect(line);
                assert!((got - grams).abs() < 0.05, "{language}: {line}: {got} g");
            }
            Pieces => {
                assert!(found.count.is_some() && found.grams.is_some(), "{line}");
            }
            Free(words) => {
                assert_eq!((found.grams, &*found.metric), (None, *words), "{line}");
            }
        }
    }
}

/// Lines with grammes in full, jaunes d’œufs and œufs: J. Gouffé, *Le Livre de pâtisserie*
/// (1873), première partie, chapitre II, and page 97, pâte à biscuits ordinaires. The others:
/// common practice, no source.
#[test]
fn french_lines() {
    check(
        "fr",
        &[
            ("1 kilo 500 grammes de farine", "all-purpose flour", G(1500.0)),
            ("750 grammes de farine", "all-purpose flour", G(750.0)),
            ("4 jaunes d’œufs", "egg yolk", Pieces),
            ("200 grammes d’eau", "water", G(200.0)),
            ("16 œufs", "egg", Pieces),
            ("Une pincée de sel", "fine salt", Free("Une pincée")),
            ("1,5 kg de farine", "all-purpose flour", G(1500.0)),
            ("1 000 g de farine", "all-purpose flour", G(1000.0)),
            ("2 gros œufs", "egg", Pieces),
            ("15 cl de lait entier", "whole milk", G(154.7)),
            ("2 c. à s. d'eau", "water", G(30.0)),
            ("1 cuillère à café rase d’eau", "water", G(5.0)),
            ("un demi-litre d’eau", "water", G(500.0)),
            ("farine pour fleurer", "all-purpose flour", Free("pour fleurer")),
            ("sel, au goût", "fine salt", Free("au goût")),
            ("50 g de beurre fondu", "butter", G(50.0)),
            ("3 à 5 g de sel", "fine salt", G(4.0)),
            ("500 g bread flour", "bread flour", G(500.0)),
            ("a pinch of salt", "fine salt", Free("a pinch")),
        ],
    );
}

/// Lines with Pfd., Eidotter, ganzen Eiern: a confectioner's book of the nineteenth century
/// and a household cookbook of about 1900, read in stored copies. The others: common
/// practice, no source. A Pfund is 500 g, by German law from 1858 to 1884.
#[test]
fn german_lines() {
    check(
        "de",
        &[
            ("1kg Mehl", "all-purpose flour", G(1000.0)),
            ("250 g Butter", "butter", G(250.0)),
            ("8 ganzen Eiern", "egg", Pieces),
            ("1,25 Pfd. Mehl", "all-purpose flour", G(625.0)),
            ("1/4 Pfd. Zucker", "granulated sugar", G(125.0)),
            ("ein halbes Pfund Butter", "butter", G(250.0)),
            ("10 Eidotter", "egg yolk", Pieces),
            ("2 große Eier", "egg", Pieces),
            ("2 EL Wasser", "water", G(30.0)),
            ("1 gestrichener TL Wasser", "water", G(5.0)),
            ("1 Prise Salz", "fine salt", Free("1 Prise")),
            ("Mehl zum Bestäuben", "all-purpose flour", Free("zum Bestäuben")),
            ("Salz nach Geschmack", "fine salt", Free("nach Geschmack")),
            ("Butter für die Form", "butter", Free("für die Form")),
            ("50 g weiche Butter", "butter", G(50.0)),
            ("3 bis 5 g Salz", "fine salt", G(4.0)),
            ("500 g bread flour", "bread flour", G(500.0)),
        ],
    );
}

/// Half a litre, a hundred grams in words and a spoon: S. Calleja, *La mejor cocinera*, read
/// in stored copies. The others: common practice, no source.
#[test]
fn spanish_lines() {
    check(
        "es",
        &[
            ("medio litro de agua", "water", G(500.0)),
            ("cien gramos de mantequilla", "butter", G(100.0)),
            ("una cucharada de agua", "water", G(15.0)),
            ("2 cdas. de agua", "water", G(30.0)),
            ("1 cdta. rasa de agua", "water", G(5.0)),
            ("una pizca de sal", "fine salt", Free("una pizca")),
            ("harina para espolvorear", "all-purpose flour", Free("para espolvorear")),
            ("2 huevos grandes", "egg", Pieces),
            ("azúcar al gusto", "granulated sugar", Free("al gusto")),
            ("1,5 kg de harina", "all-purpose flour", G(1500.0)),
            ("50 g de mantequilla derretida", "butter", G(50.0)),
            ("500 g bread flour", "bread flour", G(500.0)),
        ],
    );
}

/// Common practice, no source; 合 and 杯 as in an old recipe for a custard that a stored page
/// prints. Cup and spoons of Japan: `measure/unit.rs`.
#[test]
fn japanese_lines() {
    check(
        "ja",
        &[
            ("強力粉 500g", "bread flour", G(500.0)),
            ("水 大さじ2", "water", G(30.0)),
            ("水 小さじ1", "water", G(5.0)),
            ("水 1カップ", "water", G(200.0)),
            ("水　１／２カップ", "water", G(100.0)),
            ("水一合", "water", G(180.0)),
            ("水大匙五杯半", "water", G(82.5)),
            ("卵 2個", "egg", Pieces),
            ("卵黄 1個分", "egg yolk", Pieces),
            ("塩 ひとつまみ", "fine salt", Free("ひとつまみ")),
            ("塩 少々", "fine salt", Free("少々")),
            ("打ち粉用強力粉 適量", "bread flour", Free("適量")),
            ("溶かしバター 50g", "butter", G(50.0)),
            ("バター（室温） 50g", "butter", G(50.0)),
            ("500 g bread flour", "bread flour", G(500.0)),
            ("500 g 強力粉", "bread flour", G(500.0)),
            ("強力粉 100グラム強", "bread flour", G(100.0)),
        ],
    );
}

/// What a measure was worth that changed with time and place is asked about, never guessed.
#[test]
fn old_measures_are_refused() {
    for (language, line) in [
        ("es", "media libra de queso"),
        ("de", "6 Lot Zucker"),
        ("fr", "une livre de farine"),
        ("fr", "1 verre de lait"),
        ("fr", "1 cuillère à soupe bombée de farine"),
        ("es", "una cucharada colmada de harina"),
        ("de", "1 gehäufter EL Mehl"),
        ("ja", "砂糖百六十匁"),
    ] {
        let edition = edition(language, &[line]);
        let refused = |name: &str| edition.faults.iter().any(|fault| fault.name == name);
        assert!(refused("bad-amount") || refused("unknown-ingredient"), "{line}");
    }
}

/// Of two between which a baker chooses, the allergens of both count in every language.
#[test]
fn the_allergens_of_either_count() {
    for (language, line) in [
        ("fr", "50 g de saindoux ou beurre"),
        ("de", "50 g Schmalz oder Butter"),
        ("es", "50 g de manteca de cerdo o mantequilla"),
    ] {
        let edition = edition(language, &[line]);
        let words = words_in(&Theme::built_in(), language).expect("words");
        let recipe = edition.content.recipe("a").expect("a recipe");
        let sheet = edition
            .sheet(recipe, &Scaling::Batches(exact(1, 1)), &words)
            .expect("a sheet");
        let lists = sheet.allergens.lists.iter();
        let mut eu = lists.filter(|list| list.law == "eu").flat_map(|list| &list.found);
        assert!(eu.any(|it| it.name == words.get("allergen-milk")), "{line}");
    }
}

/// The allergens as the regulations name them, each key with the words of the text.
///
/// French, German and Spanish: Regulation (EU) No 1169/2011, Annex II, in copies of the
/// official language versions and of lists that authorities and associations took from them
/// (fr: webecologie.com, lsta-meurice.be; de: freirecht.de, agriculture.public.lu; es:
/// consal.es). Japanese: the lists of the Consumer Affairs Agency as Hiroshima's food hygiene
/// association and Tokushima prefecture print them; what they have no word for (lupin,
/// molluscs, celery, mustard, sulphites, brazil nuts) is from memory and not tested.
const LAW: [(&str, &str, &str, &str, &str); 22] = [
    (
        "cereals-containing-gluten",
        "céréales contenant du gluten",
        "Glutenhaltiges Getreide",
        "cereales que contengan gluten",
        "",
    ),
    ("crustaceans", "crustacés", "Krebstiere", "crustáceos", ""),
    ("eggs", "œufs", "Eier", "huevos", "卵"),
    ("fish", "poissons", "Fische", "pescado", ""),
    ("peanuts", "arachides", "Erdnüsse", "cacahuetes", "落花生"),
    ("soybeans", "soja", "Sojabohnen", "soja", "大豆"),
    ("milk", "lait", "Milch", "leche", "乳"),
    ("nuts", "fruits à coque", "Schalenfrüchte", "frutos de cáscara", ""),
    ("celery", "céleri", "Sellerie", "apio", ""),
    ("mustard", "moutarde", "Senf", "mostaza", ""),
    ("sesame-seeds", "graines de sésame", "Sesamsamen", "granos de sésamo", "ごま"),
    (
        "sulphur-dioxide-and-sulphites",
        "anhydride sulfureux et sulfites",
        "Schwefeldioxid und Sulphite",
        "dióxido de azufre y sulfitos",
        "",
    ),
    ("lupin", "lupin", "Lupinen", "altramuces", ""),
    ("molluscs", "mollusques", "Weichtiere", "moluscos", ""),
    ("wheat", "blé", "Weizen", "trigo", "小麦"),
    ("almonds", "amandes", "Mandeln", "almendras", "アーモンド"),
    ("hazelnuts", "noisettes", "Haselnüsse", "avellanas", ""),
    ("walnuts", "noix", "Walnüsse", "nueces", "くるみ"),
    ("cashews", "noix de cajou", "Kaschunüsse", "anacardos", "カシューナッツ"),
    ("pecan-nuts", "noix de pécan", "Pecannüsse", "pacanas", ""),
    ("brazil-nuts", "noix du Brésil", "Paranüsse", "nueces de Brasil", ""),
    ("pistachio-nuts", "pistaches", "Pistazien", "alfóncigos", ""),
];

#[test]
fn allergens_are_named_as_the_regulations_name_them() {
    for (at, language) in ["fr", "de", "es", "ja"].into_iter().enumerate() {
        let words = words_in(&Theme::built_in(), language).expect("words");
        for (key, fr, de, es, ja) in LAW {
            let law = [fr, de, es, ja][at];
            let said = words.get(&format!("allergen-{key}")).to_owned();
            // An everyday word may stand in brackets behind the law's.
            let own = said.split([' ', '（']).next().map_or("", |first| first);
            let whole = said == law || said.starts_with(&format!("{law} ("));
            let whole = whole || (language == "ja" && own == law);
            assert!(law.is_empty() || whole, "{language}: {key} is {said}, not {law}");
        }
    }
}
