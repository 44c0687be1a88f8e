//! The allergens of the built-in pantry, row by row and name by name.
//!
//! Sources: Regulation (EU) 1169/2011, Annex II (the fourteen, with what it leaves out:
//! fully refined soybean oil, glucose syrups from wheat or barley, grain and nuts used for
//! distillates, sulphites up to 10 mg/kg); 21 USC 321(qq) with the FASTER Act (the nine),
//! and FDA, *Questions and Answers Regarding Food Allergens*, Edition 5 (January 2025),
//! Table 1 (the twelve tree nuts; milk of any ruminant, eggs of any bird).

use std::collections::BTreeSet;

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

/// What a word in a name stands for: words, a US entry, an EU entry (both by how they
/// begin, nothing where that law does not list it).
const WORDS: &[(&str, &str, &str)] = &[
    (
        "milk cream crème creme butter buttermilk cheese yogurt yoghurt whey ghee curd quark \
      kefir dulce casein lactose ricotta mascarpone cheddar parmesan mozzarella feta brie \
      custard toffee caramel caramelised-milk",
        "milk",
        "milk",
    ),
    ("egg eggs yolk meringue mayonnaise albumen eggnog", "egg", "eggs"),
    (
        "fish salmon cod haddock tuna anchovy sardine herring kipper mackerel trout caviar \
      roe bacalhau surimi",
        "fish",
        "fish",
    ),
    ("prawn shrimp crab lobster", "crustacean shellfish", "crustaceans"),
    ("mussel oyster clam squid octopus snail scallop calamari", "", "molluscs"),
    (
        "wheat spelt durum semolina couscous bulgur farro emmer einkorn khorasan triticale \
      panko bread breadcrumb brioche pasta macaroni spaghetti noodle cracker matzo filo \
      phyllo tortilla gluten seitan biscuit cake muesli",
        "wheat",
        "cereals containing gluten:",
    ),
    ("rye pumpernickel", "", "cereals containing gluten:rye"),
    (
        "barley malt malted beer ale stout porter lager",
        "",
        "cereals containing gluten:barley",
    ),
    ("oat oats oatmeal porridge", "", "cereals containing gluten:oats"),
    ("peanut groundnut", "peanuts", "peanuts"),
    ("soy soya soybean tofu miso edamame tamari shoyu", "soybeans", "soybeans"),
    ("sesame tahini halva hummus za'atar", "sesame", "sesame seeds"),
    ("almond marzipan amaretto amaretti frangipane", "tree nuts:almond", "nuts:almonds"),
    ("hazelnut filbert cobnut gianduja praline", "tree nuts:hazelnut", "nuts:hazelnuts"),
    ("walnut", "tree nuts:walnut", "nuts:walnuts"),
    ("cashew", "tree nuts:cashew", "nuts:cashews"),
    ("pecan", "tree nuts:pecan", "nuts:pecan nuts"),
    ("pistachio", "tree nuts:pistachio", "nuts:pistachio nuts"),
    ("macadamia", "tree nuts:macadamia", "nuts:macadamia nuts"),
    ("brazil", "tree nuts:Brazil nut", "nuts:Brazil nuts"),
    ("pignoli pine", "tree nuts:pine nut", ""),
    ("nut nuts nutmeat", "tree nuts:", "nuts:"),
    ("celery celeriac", "", "celery"),
    ("mustard", "", "mustard"),
    (
        "wine cider champagne prosecco cava sherry port madeira marsala vermouth",
        "",
        "sulphur dioxide and sulphites",
    ),
    ("lupin lupine", "", "lupin"),
];

/// Parts of longer words that hold an allergen's word: looked for anywhere in a name.
const PARTS: [&str; 8] =
    ["nut", "egg", "wheat", "butter", "milk", "cream", "malt", "fish"];

/// Names in which such a word means something else: phrase, the words it excuses, why.
/// The phrase is cut out before the words are looked for, so that "coconut and nut" is
/// still nut.
const EXCEPTIONS: &[(&str, &str, &str)] = &[
    ("coconut milk", "milk", "pressed from the fruit"),
    ("coconut cream", "cream", "pressed from the fruit"),
    ("creamed coconut", "cream", "ground to a cream"),
    ("coconut", "nut", "no listed nut: FDA since January 2025, Annex II never"),
    ("cocoanut", "nut", "coconut in old spelling"),
    ("chestnut", "nut", "no listed nut: FDA since January 2025, Annex II never"),
    ("hickory nut", "nut", "no listed nut: FDA since January 2025, Annex II never"),
    ("pine nut", "nut", "listed in the US, not in Annex II"),
    ("peanut", "nut", "a pulse, listed by itself"),
    ("groundnut", "nut", "a peanut, listed by itself"),
    ("monkey nut", "nut", "a peanut, listed by itself"),
    ("peanut butter", "butter", "ground peanuts"),
    ("creamy peanut", "cream", "of its texture"),
    ("almond butter", "butter", "ground almonds"),
    ("cashew butter", "butter", "ground cashews"),
    ("hazelnut butter", "butter", "ground hazelnuts"),
    ("pistachio butter", "butter", "ground pistachios"),
    ("sesame butter", "butter", "ground sesame"),
    ("apple butter", "butter", "boiled apples"),
    ("cocoa butter", "butter", "the fat of the bean"),
    ("butternut", "butter nut", "a squash"),
    ("nutmeg", "nut", "the kernel of a spice, no nut"),
    ("nutritional", "nut", "of nutrition"),
    ("ginger nut", "nut", "a biscuit"),
    ("gingernut", "nut", "a biscuit"),
    ("buckwheat", "wheat", "no cereal"),
    ("eggplant", "egg", "an aubergine"),
    ("reggiano", "egg", "of the town of Reggio"),
    ("schmaltz", "malt", "chicken fat"),
    ("isomalt", "malt", "a sugar alcohol from beet"),
    ("crab apple", "crab", "an apple"),
    ("almond milk", "milk", "pressed from the nut"),
    ("oat milk", "milk", "pressed from the grain"),
    ("rice milk", "milk", "pressed from the grain"),
    ("soy milk", "milk", "pressed from the bean"),
    ("soya milk", "milk", "pressed from the bean"),
    ("soybean oil", "soybean", "fully refined: left out by both laws"),
    ("soya oil", "soya", "fully refined: left out by both laws"),
    ("cream of tartar", "cream", "a salt of tartaric acid"),
    ("cream tartar", "cream", "a salt of tartaric acid"),
    ("cream cracker", "cream", "of how its dough is worked"),
    ("cream-style corn", "cream", "of its texture; the note says check"),
    ("cream style corn", "cream", "of its texture; the note says check"),
    ("creamed corn", "cream", "of its texture; the note says check"),
    ("marshmallow cream", "cream", "beaten sugar and egg white"),
    ("marshmallow creme", "creme", "beaten sugar and egg white"),
    ("crème de cassis", "crème", "a liqueur without cream"),
    ("crème de menthe", "crème", "a liqueur without cream"),
    ("creme de menthe", "creme", "a liqueur without cream"),
    ("bean curd", "curd", "of soya"),
    ("cake covering", "cake", "what covers it"),
    ("cake yeast", "cake", "pressed to a block"),
    ("yeast cake", "cake", "pressed to a block"),
    ("cake compressed", "cake", "pressed to a block"),
    ("bread soda", "bread", "sodium bicarbonate"),
    ("bread machine yeast", "bread", "what it is for"),
    ("corn tortilla", "tortilla", "of maize"),
    ("ratafia biscuit", "biscuit", "almonds, sugar and egg white"),
    ("rye whiskey", "rye", "grain used for a distillate: Annex II leaves it out"),
    ("sweet cider", "cider", "apple juice"),
    ("apple cider", "cider", "apple juice in the US"),
    ("rice wine", "wine", "brewed from rice, without added sulphites"),
    ("port salut", "port", "a cheese"),
];

fn begins(said: &Option<BTreeSet<String>>, with: &str) -> bool {
    with.is_empty()
        || said
            .as_ref()
            .is_none_or(|said| said.iter().any(|entry| entry.starts_with(with)))
}

fn words(name: &str) -> Vec<String> {
    let parts = name.split(|c: char| !(c.is_alphanumeric() || c == '\''));
    parts.map(|word| word.trim_end_matches("'s").to_owned()).collect()
}

/// Whether a name holds a word, singular or plural, or holds it as a part.
fn holds(name: &str, word: &str) -> bool {
    let whole =
        |w: &String| w == word || *w == format!("{word}s") || *w == format!("{word}es");
    words(name).iter().any(whole) || PARTS.contains(&word) && name.contains(word)
}

/// A name without the phrases in which `word` means something else, and which those were.
fn excuse(name: &str, word: &str) -> (String, Vec<usize>) {
    let (mut rest, mut used) = (name.to_owned(), Vec::new());
    for (at, (phrase, of, _)) in EXCEPTIONS.iter().enumerate() {
        if of.split(' ').any(|of| of == word) && rest.contains(phrase) {
            rest = rest.replace(phrase, " ");
            used.push(at);
        }
    }
    (rest, used)
}

/// Every word of an allergen in the name or a by-name of a row is an allergen of that row,
/// or the row says that its allergens are not known, or stands in the reasoned list.
#[test]
fn a_name_that_holds_an_allergens_word_carries_it() {
    let (mut missing, mut used) = (Vec::new(), BTreeSet::new());
    for row in rows() {
        for name in &row.names {
            for (list, us, eu) in WORDS {
                for word in list.split_whitespace() {
                    if begins(&row.us, us) && begins(&row.eu, eu) || !holds(name, word) {
                        continue;
                    }
                    let (rest, excused) = excuse(name, word);
                    used.extend(excused);
                    if holds(&rest, word) {
                        missing.push(format!("{name} ({}): {word}", row.names[0]));
                    }
                }
            }
        }
    }
    assert!(missing.is_empty(), "{} names:\n{}", missing.len(), missing.join("\n"));
    let idle: Vec<_> = (0..EXCEPTIONS.len()).filter(|at| !used.contains(at)).collect();
    assert!(idle.is_empty(), "exceptions that except nothing: {idle:?}");
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
