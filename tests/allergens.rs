//! The allergens of the built-in pantry, row by row, and the names under which they go.
//!
//! Sources: Regulation (EU) 1169/2011, Annex II (the fourteen, with what it leaves out:
//! fully refined soybean oil, glucose syrups from wheat or barley, grain and nuts used for
//! distillates, sulphites up to 10 mg/kg); 21 USC 321(qq) with the FASTER Act (the nine),
//! and FDA, *Questions and Answers Regarding Food Allergens*, Edition 5 (January 2025),
//! Table 1 (the twelve tree nuts; milk of any ruminant, eggs of any bird).

#[path = "common/english.rs"]
mod english;

use std::collections::BTreeSet;

use tourier::edition::Edition;
use tourier::fault::Fault;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::pantry::Pantry;
use tourier::read::{Source, content, words_in};
use tourier::sheet::Units;
use tourier::theme::Theme;

/// One row: its names, the main one first, and its allergens; `None` is not known.
struct Row {
    names: Vec<String>,
    us: Option<BTreeSet<String>>,
    eu: Option<BTreeSet<String>>,
}

fn rows() -> Vec<Row> {
    let mut reader =
        csv::Reader::from_path("src/pantry/pantry.csv").expect("the pantry's table");
    let set = |field: &str| match field {
        "" => None,
        "none" => Some(BTreeSet::new()),
        names => Some(names.split("; ").map(str::to_owned).collect()),
    };
    let row = |row: csv::StringRecord| {
        let also = row[1].split("; ").filter(|name| !name.is_empty());
        Row {
            names: std::iter::once(&row[0]).chain(also).map(str::to_owned).collect(),
            us: set(&row[6]),
            eu: set(&row[7]),
        }
    };
    reader.records().map(|found| row(found.expect("sound CSV"))).collect()
}

/// Published lists of the names under which an allergen goes: allergen, names, source. Read
/// in stored copies of these pages; brand names and what only may hold it are left out.
const LISTS: &[(&str, &str, &str)] = &[
    (
        "milk",
        "milk; butter; butter fat; butter oil; butter acid; butter ester; buttermilk; casein; \
         casein hydrolysate; caseinates; cheese; cottage cheese; cream; curds; custard; \
         diacetyl; ghee; half-and-half; lactalbumin; lactalbumin phosphate; lactoferrin; \
         lactose; lactulose; goat's milk; milk protein hydrolysate; pudding; rennet casein; \
         sour cream; sour cream solids; sour milk solids; tagatose; whey; \
         whey protein hydrolysate; yogurt",
        HOW_TO_READ,
    ),
    (
        "egg",
        "albumin; albumen; egg; egg solids; egg white; egg yolk; eggnog; globulin; lysozyme; \
         mayonnaise; meringue; meringue powder; ovalbumin; ovovitellin; surimi",
        HOW_TO_READ,
    ),
    (
        "wheat",
        "bread crumbs; bulgur; cereal extract; club wheat; couscous; cracker meal; durum; \
         einkorn; emmer; farina; all purpose flour; bread flour; cake flour; graham flour; \
         pastry flour; self-rising flour; whole wheat flour; hydrolyzed wheat protein; kamut; \
         matzoh; matzoh meal; matzo; matzah; matza; pasta; seitan; semolina; \
         sprouted wheat; triticale; vital wheat gluten; wheat bran; wheat germ; wheat grass; \
         wheat malt; wheat starch; whole wheat berries",
        HOW_TO_READ,
    ),
    (
        "soybean",
        "edamame; miso; natto; shoyu; soy; soy albumin; soy cheese; soy fiber; soy flour; \
         soy grits; soy milk; soy nuts; soy sprouts; soy yogurt; soya; soybean curd; \
         soybean granules; soy protein; soy sauce; tamari; tempeh; \
         textured vegetable protein; tofu",
        HOW_TO_READ,
    ),
    (
        "crustacean shellfish",
        "crab; crawfish; crayfish; ecrevisse; lobster; langouste; langoustine; scampo; \
         tomalley; prawn; shrimp; crevette",
        HOW_TO_READ,
    ),
    ("celery", "celery stalks; celery leaves; celery seeds; celeriac; celery salt", FSA),
    ("spelt", "spelt", FSA),
    ("rye", "rye", FSA),
    ("barley", "barley", FSA),
    ("oat", "oats", FSA),
    ("wheat", "khorasan wheat; breadcrumbs; bread; cakes; couscous", FSA),
    ("crustacean shellfish", "crabs; lobster; prawns; scampi; shrimp paste", FSA),
    ("fish", "fish sauces; worcestershire sauce", FSA),
    ("lupin", "lupin seeds; lupin flour", FSA),
    ("milk", "milk powders; yoghurt", FSA),
    ("molluscs", "mussels; land snails; squid; whelks; oyster sauce", FSA),
    ("mustard", "liquid mustard; mustard powder; mustard seeds", FSA),
    ("almond", "almonds", FSA),
    ("hazelnut", "hazelnuts", FSA),
    ("walnut", "walnuts", FSA),
    ("cashew", "cashews", FSA),
    ("pecan", "pecan nuts", FSA),
    ("brazil nut", "brazil nuts", FSA),
    ("pistachio", "pistachio nuts", FSA),
    ("macadamia", "macadamia nuts", FSA),
    ("sesame", "sesame seeds; sesame oil; tahini; houmous", FSA),
    ("soybean", "bean curd; soya beans; miso paste; soya flour; tofu", FSA),
    ("sulphites", "sulphites; wine", FSA),
    (
        "fish",
        "flounder; cod",
        "21 USC 321(qq)(1), its examples; but bass, a word of music",
    ),
    ("crustacean shellfish", "crab; lobster; shrimp", "21 USC 321(qq)(1), its examples"),
    (
        "walnut",
        "black walnut; California walnut; English walnut; Persian walnut",
        "FDA Q&A, Edition 5, Table 1",
    ),
    ("hazelnut", "filbert", "FDA Q&A, Edition 5, Table 1"),
    ("pine nut", "pine nut; pinon nut", "FDA Q&A, Edition 5, Table 1"),
    ("milk", "lactose", "Regulation (EU) 1169/2011, Annex II (7)"),
];

/// Food Allergy Research & Education, *How to Read a Label*: the lists headed *avoid*.
const HOW_TO_READ: &str = "How to Read a Label";

/// Food Standards Agency (United Kingdom), its leaflet of the fourteen allergens.
const FSA: &str = "FSA, the fourteen allergens";

/// An ingredient of an author's own by each name of the published lists does not pass without
/// its allergen. The words that the program looks for are its own, in one place: this holds
/// them against lists that others made.
#[test]
fn no_name_of_the_published_lists_passes_as_none() {
    let mut passed = Vec::new();
    for (allergen, names, source) in LISTS {
        for name in names.split("; ") {
            let file = |path: &str, text: String| Source { path: path.into(), text };
            let entry = format!("\"{name}\":\n  allergens: none\n");
            let files =
                [file("course.yaml", "title: T\n".into()), file("pantry.yaml", entry)];
            let (content, _, _) = content(&files);
            let (_, faults) = Pantry::of(&content);
            let asked = |fault: &Fault| {
                let message = english::told(fault).message;
                let said = message.split("should hold ").nth(1).unwrap_or_default();
                let words = said.split(" by its name").next().unwrap_or_default();
                fault.name == "allergen-left-out"
                    && words.split(", ").any(|word| word == *allergen)
            };
            if !faults.iter().any(asked) {
                passed.push(format!("{name}: {allergen} ({source})"));
            }
        }
    }
    assert!(passed.is_empty(), "{} names:\n{}", passed.len(), passed.join("\n"));
}

/// Rows whose allergens the name does not tell, or tells in part, with what the laws say:
/// name, US list, EU list, reason.
const HIDDEN: &[(&str, &str, &str, &str)] = &[
    (
        "worcestershire sauce",
        "fish",
        "fish; cereals containing gluten:barley",
        "anchovies, malt vinegar",
    ),
    ("marzipan", "tree nuts:almond", "nuts:almonds", "almonds"),
    ("almond paste", "tree nuts:almond", "nuts:almonds", "almonds"),
    (
        "praline paste",
        "tree nuts:hazelnut; tree nuts:almond",
        "nuts:hazelnuts; nuts:almonds",
        "either nut",
    ),
    (
        "gianduja",
        "milk; soybeans; tree nuts:hazelnut",
        "milk; soybeans; nuts:hazelnuts",
        "hazelnuts",
    ),
    (
        "hazelnut spread",
        "milk; soybeans; tree nuts:hazelnut",
        "milk; soybeans; nuts:hazelnuts",
        "milk powder, lecithin",
    ),
    ("amaretti", "egg; tree nuts:almond", "eggs; nuts:almonds", "almonds and egg white"),
    (
        "pesto",
        "milk; tree nuts:pine nut; tree nuts:cashew",
        "milk; nuts:cashews",
        "cheese and nuts; Annex II names no pine nut",
    ),
    (
        "mixed nuts",
        "tree nuts:almond; tree nuts:hazelnut; tree nuts:walnut; tree nuts:cashew; tree nuts:pecan; tree nuts:Brazil nut; tree nuts:pistachio; tree nuts:macadamia; peanuts",
        "nuts:almonds; nuts:hazelnuts; nuts:walnuts; nuts:cashews; nuts:pecan nuts; nuts:Brazil nuts; nuts:pistachio nuts; nuts:macadamia nuts; peanuts",
        "whatever is in it",
    ),
    ("black walnut", "tree nuts:walnut", "nuts:walnuts", "FDA Table 1 names it"),
    ("pine nut", "tree nuts:pine nut", "none", "FDA Table 1; not in Annex II"),
    ("chestnut", "none", "none", "off the US list since January 2025"),
    (
        "desiccated coconut",
        "none",
        "sulphur dioxide and sulphites",
        "off the US list since January 2025; often sulphited",
    ),
    (
        "rolled oats",
        "none",
        "cereals containing gluten:oats",
        "no oats in 21 USC 321(qq)",
    ),
    ("oat milk", "none", "cereals containing gluten:oats", "no oats in 21 USC 321(qq)"),
    ("rye flour", "none", "cereals containing gluten:rye", "no rye in 21 USC 321(qq)"),
    ("malt syrup", "none", "cereals containing gluten:barley", "barley malt"),
    ("malted barley flour", "none", "cereals containing gluten:barley", "barley malt"),
    (
        "diastatic malt",
        "wheat",
        "cereals containing gluten:barley; cereals containing gluten:wheat",
        "often cut with wheat flour",
    ),
    (
        "malt vinegar",
        "none",
        "cereals containing gluten:barley",
        "brewed from malt, not distilled",
    ),
    (
        "malted milk powder",
        "milk; wheat",
        "milk; cereals containing gluten:wheat; cereals containing gluten:barley",
        "wheat flour and malt",
    ),
    ("beer", "none", "cereals containing gluten:barley", "brewed from malt"),
    (
        "wheat beer",
        "wheat",
        "cereals containing gluten:wheat; cereals containing gluten:barley",
        "brewed from wheat and malt",
    ),
    (
        "yeast extract",
        "none",
        "cereals containing gluten:barley; celery",
        "brewer's yeast",
    ),
    (
        "spelt flour",
        "wheat",
        "cereals containing gluten:wheat; cereals containing gluten:spelt",
        "a wheat",
    ),
    (
        "khorasan flour",
        "wheat",
        "cereals containing gluten:wheat; cereals containing gluten:khorasan wheat",
        "a wheat",
    ),
    (
        "triticale flour",
        "wheat",
        "cereals containing gluten:wheat; cereals containing gluten:rye",
        "a cross of wheat and rye: hybridised strains",
    ),
    ("semolina", "wheat", "cereals containing gluten:wheat", "durum"),
    ("couscous", "wheat", "cereals containing gluten:wheat", "durum"),
    ("beef suet", "wheat", "cereals containing gluten:wheat", "floured"),
    ("vegetable suet", "wheat", "cereals containing gluten:wheat", "floured"),
    (
        "soy sauce",
        "wheat; soybeans",
        "cereals containing gluten:wheat; soybeans",
        "brewed from both",
    ),
    (
        "oyster sauce",
        "wheat; soybeans",
        "cereals containing gluten:wheat; soybeans; molluscs",
        "oysters in soy sauce",
    ),
    ("fish sauce", "fish", "fish", "anchovies"),
    (
        "surimi",
        "fish; crustacean shellfish; wheat; egg; soybeans",
        "fish; crustaceans; cereals containing gluten:wheat; eggs; soybeans",
        "fish, often with crab and binders",
    ),
    (
        "prawn",
        "crustacean shellfish",
        "crustaceans; sulphur dioxide and sulphites",
        "a crustacean, often sulphited",
    ),
    ("squid", "none", "molluscs", "no molluscs in 21 USC 321(qq)"),
    ("celeriac", "none", "celery", "a celery"),
    ("celery seed", "none", "celery", "a celery"),
    ("mustard powder", "none", "mustard", "no mustard in 21 USC 321(qq)"),
    ("mayonnaise", "egg", "eggs; mustard", "egg yolk, mustard"),
    ("lupin flour", "none", "lupin", "no lupin in 21 USC 321(qq)"),
    ("tahini", "sesame", "sesame seeds", "sesame"),
    ("halva", "sesame", "sesame seeds", "sesame"),
    ("hummus", "sesame", "sesame seeds", "tahini"),
    ("lecithin", "soybeans", "soybeans", "of soya unless it says otherwise"),
    ("vegetable oil", "none", "none", "fully refined soybean oil: left out by both"),
    ("peanut oil", "peanuts", "peanuts", "Annex II leaves no peanut oil out"),
    ("sesame oil", "sesame", "sesame seeds", "not refined"),
    ("marshmallow cream", "egg", "eggs", "egg white"),
    ("royal icing sugar", "egg", "eggs", "dried egg white"),
    ("advocaat", "egg", "eggs", "egg yolk"),
    ("cream liqueur", "milk", "milk", "cream"),
    ("duck egg", "egg", "eggs", "FDA: eggs of any bird"),
    ("goat's milk", "milk", "milk", "FDA: milk of any ruminant"),
    ("grana padano", "milk; egg", "milk; eggs", "lysozyme from egg"),
    ("browned butter", "milk", "milk", "its solids are milk"),
    ("clarified butter", "milk", "milk", "milk fat with traces of protein"),
    ("golden raisin", "none", "sulphur dioxide and sulphites", "bleached"),
    ("dried apricot", "none", "sulphur dioxide and sulphites", "sulphured"),
    ("dried apple", "none", "sulphur dioxide and sulphites", "sulphured"),
    ("glacé cherry", "none", "sulphur dioxide and sulphites", "usual above 10 mg/kg"),
    ("candied peel", "none", "sulphur dioxide and sulphites", "usual above 10 mg/kg"),
    (
        "crystallised ginger",
        "none",
        "sulphur dioxide and sulphites",
        "usual above 10 mg/kg",
    ),
    ("red wine", "none", "sulphur dioxide and sulphites", "usual above 10 mg/kg"),
    ("sherry", "none", "sulphur dioxide and sulphites", "usual above 10 mg/kg"),
    ("red wine vinegar", "none", "sulphur dioxide and sulphites", "usual above 10 mg/kg"),
    ("whisky", "none", "none", "grain for a distillate: left out by Annex II"),
    ("vodka", "none", "none", "grain for a distillate: left out by Annex II"),
    ("nutmeg", "none", "none", "no nut"),
    ("butternut squash", "none", "none", "no nut"),
    ("buckwheat flour", "none", "none", "no wheat"),
    ("aubergine", "none", "none", "no egg"),
    ("cocoa butter", "none", "none", "no milk"),
    ("cream of tartar", "none", "none", "no milk"),
];

/// Rows that differ by maker in what can hurt: never said to hold nothing.
const UNKNOWN: &[&str] = &[
    "baking powder",
    "gluten-free flour",
    "vegan butter",
    "stock cube",
    "vegetable stock",
    "mincemeat",
    "fondant icing",
    "sprinkles",
    "custard powder",
    "marshmallow",
    "gelatine powder",
    "food colouring",
    "salami",
    "black pudding",
    "bread improver",
    "cooking spray",
    "almond extract",
    "glucose syrup",
    "barbecue sauce",
    "muesli",
];

fn plain(said: &Option<BTreeSet<String>>) -> String {
    let Some(said) = said else { return "not known".into() };
    let words: Vec<_> = said.iter().cloned().collect();
    if words.is_empty() { "none".into() } else { words.join("; ") }
}

#[test]
fn what_a_name_does_not_tell_is_listed() {
    let rows = rows();
    let find = |name: &str| {
        let found = rows.iter().find(|row| row.names[0] == name);
        found.unwrap_or_else(|| panic!("no row `{name}`"))
    };
    let sorted = |list: &str| {
        let mut words: Vec<_> = list.split("; ").collect();
        words.sort_unstable();
        words.join("; ")
    };
    let mut wrong = Vec::new();
    for (name, us, eu, why) in HIDDEN {
        let row = find(name);
        for (said, wanted) in [(&row.us, us), (&row.eu, eu)] {
            if plain(said) != sorted(wanted) {
                wrong.push(format!("{name}: {} for {wanted} ({why})", plain(said)));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    for name in UNKNOWN {
        let row = find(name);
        assert!(row.us.is_none() || row.eu.is_none(), "{name}");
    }
}

/// The laws' own names, and no others: 21 USC 321(qq); FDA Q&A, Edition 5, Table 1;
/// Regulation (EU) 1169/2011, Annex II.
#[test]
fn every_allergen_is_one_of_the_laws() {
    const US: &str = "milk; egg; fish; crustacean shellfish; wheat; peanuts; soybeans; \
        sesame; tree nuts:almond; tree nuts:hazelnut; tree nuts:walnut; tree nuts:cashew; \
        tree nuts:pecan; tree nuts:Brazil nut; tree nuts:pistachio; tree nuts:macadamia; \
        tree nuts:pine nut";
    const EU: &str = "milk; eggs; fish; crustaceans; peanuts; soybeans; celery; mustard; \
        sesame seeds; sulphur dioxide and sulphites; lupin; molluscs; \
        cereals containing gluten:wheat; cereals containing gluten:spelt; \
        cereals containing gluten:khorasan wheat; cereals containing gluten:rye; \
        cereals containing gluten:barley; cereals containing gluten:oats; nuts:almonds; \
        nuts:hazelnuts; nuts:walnuts; nuts:cashews; nuts:pecan nuts; nuts:Brazil nuts; \
        nuts:pistachio nuts; nuts:macadamia nuts";
    for row in rows() {
        for (said, law) in [(&row.us, US), (&row.eu, EU)] {
            for entry in said.iter().flatten() {
                assert!(
                    law.split("; ").any(|of| of == entry),
                    "{}: {entry}",
                    row.names[0]
                );
            }
        }
    }
}

/// A course that asks for the list of Australia and New Zealand gets it, by that law's names and
/// nothing else of it on paper and page; facts keep the lists that scripts read. Food Standards
/// Code, Schedule 9, S9—3 (F2021C00195): rye is named and under gluten, celery is not declared.
#[test]
fn a_course_chooses_its_law() {
    let file = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
    let formula = "formula:\n  dough:\n    - 500 g dark rye flour\n    - 20 g hazelnut\n    - 30 g butter\n    - 10 g celery\n";
    let recipe = format!("---\ntitle: t\nsummary: s\nmakes: 1 loaf\n{formula}---\n");
    let files = [
        file("course.yaml", "title: c\nsummary: s\nallergen lists: au-nz\n"),
        file("recipes/t.md", &recipe),
    ];
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    let words = words_in(&Theme::built_in(), "en").expect("words");
    let recipe = edition.content.recipe("t").expect("a recipe");
    let sheet = edition
        .sheet(recipe, &Scaling::Batches(exact(1, 1)), &words)
        .expect("it is worked out");
    let asked = edition.course(&words).expect("a course").laws;
    let shown = sheet.allergens.shown(&asked, Units::Metric);
    assert_eq!(shown.len(), 1);
    let names: Vec<&str> = shown[0].found.iter().map(|it| it.name.as_str()).collect();
    assert_eq!(names, ["gluten", "milk", "hazelnut"]);
    assert_eq!(shown[0].found[0].kinds, ["rye"]);
    let facts = serde_json::to_value(&sheet.allergens).expect("JSON");
    assert_eq!(facts["au-nz"], serde_json::json!(["gluten", "milk", "hazelnut"]));
    assert_eq!(facts["us"], serde_json::json!(["milk", "tree nuts"]));
    assert!(facts["eu"].as_array().is_some_and(|eu| eu.len() == 4), "{facts}");
}

/// A law that is rows of the table has its words in every language, and the schema offers it.
#[test]
fn every_law_has_its_words_and_is_offered() {
    let theme = Theme::built_in();
    let schema = tourier::read::schema(tourier::read::Shape::Course);
    for law in tourier::pantry::laws() {
        let offered = format!("\"{}\"", law.key);
        assert!(schema.contains(&offered), "{offered} is not offered");
        for language in ["en", "fr", "de", "es", "ja"] {
            let words = words_in(&theme, language).expect("the words");
            for of in ["page-allergens", "handout-list"] {
                let key = format!("{of}-{}", law.key);
                assert!(words.find(&key).is_some(), "{language}: {key}");
            }
        }
    }
}
