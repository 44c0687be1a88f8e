//! Remedies that no machine can read out of their words, each done by hand as its words say: of
//! class files, pictures, the bench, sheets, cuts and turns, and the pantry's blocks. What comes
//! out is sound or asks the next question, the same is not asked again, no allergen is lost.
#![allow(
    clippy::disallowed_methods,
    clippy::too_many_lines,
    reason = "a picture is put into a copied course; tables are long"
)]

mod common;
#[path = "common/course_text.rs"]
mod course_text;
#[path = "common/english.rs"]
mod english;
#[path = "common/fault_list.rs"]
mod fault_list;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use course_text::{Course, printed};
use english::told;
use fault_list::{GROUND, changed, rows};

use tourier::edition::Edition;
use tourier::fault::{Fault, Severity};
use tourier::product::{Inputs, poor_prints};
use tourier::read::words_in;
use tourier::theme::Theme;

/// One slip in the sound course: its file, the sound words, the wrong ones.
type Slip<'a> = (&'a str, &'a str, &'a str);

/// One remedy: words of the help that it follows, the file, what stands there, what is written.
type Remedy<'a> = (&'a str, &'a str, &'a str, &'a str);

const EVENING: &str = "classes/evening.yaml";
const LOAF: &str = "recipes/loaf.md";
const BLOCK: &str = "recipes/block.md";
const PANTRY: &str = "pantry.yaml";

const KIT: &str = "kit: { mixer: 2, oven: 1, tray per oven: 2, instructor: 1 }";
const MAKES: &str = "makes:\n  - recipe: loaf\n    each: pair\n    pieces: 12\n";
const SESSIONS: &str =
    "sessions:\n  - 2027-03-02 10:00 to 16:00\n  - 2027-03-03 10:00 to 16:00\n";
const FIRST: &str = "sheet: 48 x 25 cm\nturn: letter\n~~~\n\n## Second";
const SECOND: &str = "## Second turn\n~~~ticket\nhands: 5 min\nsheet: 48 x 25 cm";

fn slipped(slip: Slip) -> Course {
    let mut course = Course::of(Path::new(GROUND));
    replace(&mut course, slip.0, slip.1, slip.2);
    course
}

fn replace(course: &mut Course, file: &str, from: &str, to: &str) {
    let text = course.text(file);
    assert!(text.contains(from), "{file} does not hold {from}");
    *text = text.replacen(from, to, 1);
}

/// The fault of this name whose help holds these words.
fn helped<'a>(faults: &'a [Fault], name: &str, words: &str) -> Option<&'a Fault> {
    let is_it = |fault: &&Fault| {
        fault.name == name && told(fault).help.is_some_and(|help| help.contains(words))
    };
    faults.iter().find(is_it)
}

/// Does each remedy and looks at what comes of it.
fn followed(name: &str, slip: Slip, remedies: &[Remedy]) {
    let ground = printed(&Course::of(Path::new(GROUND)).edition()).expect("sound");
    let course = slipped(slip);
    let edition = course.edition();
    let before = printed(&edition).unwrap_or(ground);
    for (words, file, from, to) in remedies {
        let fault = helped(&edition.faults, name, words);
        let all: Vec<_> = edition.faults.iter().map(told).collect();
        let fault = fault.unwrap_or_else(|| panic!("{name}: no help {words:?}: {all:?}"));
        let mut next = course.clone();
        replace(&mut next, file, from, to);
        leads_on(fault, &before, &next.edition(), to);
    }
}

/// What is left asks something else, or nothing; what is sound has all its allergens.
fn leads_on(fault: &Fault, before: &[String], after: &Edition, done: &str) {
    let name = fault.name;
    let same = |other: &Fault| (other.name, &other.message) == (name, &fault.message);
    let waits = after.faults.iter().any(|other| other.name == "not-filled-in");
    assert!(waits || !after.faults.iter().any(same), "{name}: {done} is asked again");
    let errors = after.faults.iter().filter(|other| other.severity == Severity::Error);
    for error in errors {
        assert!(error.help.is_some(), "{name}: {done}: no way on: {error:?}");
    }
    if let Some(after) = printed(after) {
        let lost: Vec<_> = before.iter().filter(|it| !after.contains(it)).collect();
        assert!(lost.is_empty(), "{name}: {done} loses {lost:?}");
    }
}

#[test]
fn of_class_files() {
    let kit = |kit: &'static str| (EVENING, KIT, kit);
    let makes = |makes: &'static str| (EVENING, MAKES, makes);
    let cases: &[(&str, Slip, &[Remedy])] = &[
        (
            "class-empty",
            makes("makes: []\n"),
            &[("Write under `makes`", EVENING, "makes: []\n", MAKES)],
        ),
        (
            "class-empty",
            (EVENING, SESSIONS, "sessions: []\n"),
            &[(
                "as in `- 2027-03-02 18:00 to 21:00`",
                EVENING,
                "sessions: []\n",
                "sessions:\n  - 2027-03-02 18:00 to 21:00\n",
            )],
        ),
        (
            "class-pieces",
            (EVENING, "recipe: loaf\n", "recipe: block\n"),
            &[("Write `batches: 1` instead", EVENING, "pieces: 12", "batches: 1")],
        ),
        (
            "session-overlap",
            (EVENING, "03 10:00", "02 15:00"),
            &[("times of their own", EVENING, "02 15:00", "03 09:00")],
        ),
        (
            "long-session",
            (EVENING, "10:00 to 16:00", "21:00 to 18:00"),
            &[("as in `18:00 to 21:00`", EVENING, "21:00 to 18:00", "18:00 to 21:00")],
        ),
        (
            "unknown-step",
            (EVENING, "[mix]", "[rest]"),
            &[
                (
                    "Give it `hands: 5 min`",
                    LOAF,
                    "wait: 60 min",
                    "hands: 5 min\nwait: 60 min",
                ),
                ("show another step", EVENING, "[rest]", "[mix]"),
            ],
        ),
        (
            "unknown-step",
            (EVENING, "[mix]", "[plait it in four]"),
            &[("small letters with dashes", EVENING, "[plait it in four]", "[cut]")],
        ),
        (
            "unknown-step",
            (EVENING, "[mix]", "[mixx]"),
            &[("Did you mean `mix`?", EVENING, "[mixx]", "[mix]")],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 0, oven: 1, tray per oven: 2, instructor: 1 }"),
            &[
                ("Change the ticket", LOAF, "kit: 1 mixer\n", ""),
                ("or the kit", EVENING, "mixer: 0", "mixer: 1"),
            ],
        ),
        (
            "class-kit",
            kit("kit: { oven: 1, tray per oven: 2, instructor: 1 }"),
            &[("Add `mixer: …` to `kit`", EVENING, "{ oven: 1", "{ mixer: 2, oven: 1")],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 2, oven: 1, tray per oven: 2, bench tray: 0 }"),
            &[
                ("Say how many trays", EVENING, "bench tray: 0", "bench tray: 8"),
                ("leave the line out", EVENING, ", bench tray: 0", ""),
            ],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 2, oven: 0, instructor: 1 }"),
            &[
                // As it stands: the line that is there already is asked about next.
                (
                    "Add `oven: 2, tray per oven: 4`",
                    EVENING,
                    "oven: 0,",
                    "oven: 0, oven: 2, tray per oven: 4,",
                ),
                (
                    "oven: 2, tray per oven: 4",
                    EVENING,
                    "oven: 0",
                    "oven: 2, tray per oven: 4",
                ),
            ],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 2, instructor: 1 }"),
            &[(
                "Add `oven: 2, tray per oven: 4`",
                EVENING,
                "{ mixer: 2",
                "{ oven: 2, tray per oven: 4, mixer: 2",
            )],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 2, oven: 1, tray per oven: 2, instructor: 0 }"),
            &[
                ("Write `instructor: 1`", EVENING, "instructor: 0", "instructor: 1"),
                ("show nothing", EVENING, "demonstrate: [mix]\n", ""),
            ],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 2, oven: 1, tray per oven: 2, steam lance: 1 }"),
            &[(
                "Name it on the tickets",
                LOAF,
                "kit: 1 mixer",
                "kit: 1 mixer, 1 steam lance",
            )],
        ),
        (
            "class-kit",
            kit("kit: { mixr: 2, oven: 1, tray per oven: 2, instructor: 1 }"),
            &[("Did you mean `mixer`?", EVENING, "mixr", "mixer")],
        ),
        (
            "bad-value",
            makes("makes: loaf\n"),
            &[(
                "Begin each with `- recipe: crescents`",
                EVENING,
                "makes: loaf\n",
                "makes:\n  - recipe: crescents\n    each: pair\n    pieces: 12\n",
            )],
        ),
        (
            "bad-value",
            makes(
                "makes:\n  - recipe: loaf\n    each: pair\n    pieces: 12\n    batches: 1\n",
            ),
            &[
                ("Write one of the two", EVENING, "    batches: 1\n", ""),
                ("Write one of the two", EVENING, "    pieces: 12\n", ""),
            ],
        ),
        (
            "class-kit",
            kit("kit: { mixer: 2, mixers: 1, oven: 1, tray per oven: 2 }"),
            &[("Say once how many", EVENING, "mixers: 1, ", "")],
        ),
        (
            "bad-value",
            kit("kit: { mixer: two, oven: 1, tray per oven: 2 }"),
            &[("Write `mixer: 2`", EVENING, "mixer: two", "mixer: 2")],
        ),
    ];
    for (name, slip, remedies) in cases {
        followed(name, *slip, remedies);
    }
}

#[test]
fn of_the_bench_and_the_mixer() {
    let long = "sheet: 160 x 8 cm\nturn: letter\n~~~\n\n## Second";
    followed(
        "bench-too-short",
        (BLOCK, FIRST, long),
        &[
            ("roll it shorter and wider", BLOCK, "160 x 8 cm", "51 x 25 cm"),
            // Half of the dough on half of the area.
            ("Divide the dough in two", BLOCK, "160 x 8 cm", "80 x 8 cm"),
        ],
    );
    followed(
        "mixer-too-small",
        ("course.yaml", "mixer: 4 kg", "mixer: 0.5 kg"),
        &[("make the formula smaller", LOAF, "500 g bread flour", "90 g bread flour")],
    );
}

#[test]
fn of_blocks_sheets_and_turns() {
    let first = |sheet: &str| FIRST.replace("48 x 25 cm", sheet);
    let second = |sheet: &str| SECOND.replace("48 x 25 cm", sheet);
    let block = "sheet: 18 x 18 cm";
    for (slip, remedies) in [
        (
            (BLOCK, block, "sheet: 24 x 24 cm"),
            vec![
                ("Make the block smaller", BLOCK, "24 x 24 cm", "18 x 18 cm"),
                ("or the sheet bigger", BLOCK, "27 x 27 cm", "36 x 36 cm"),
            ],
        ),
        (
            (BLOCK, block, "sheet: 19 x 19 cm"),
            vec![("5 mm", BLOCK, "19 x 19 cm", "18 x 18 cm")],
        ),
    ] {
        followed("block-does-not-fit", slip, &remedies);
    }
    followed(
        "fat-unlike-dough",
        (BLOCK, block, "sheet: 9 x 9 cm"),
        &[
            ("Beat the fat out wider", BLOCK, "sheet: 9 x 9 cm", block),
            ("or roll the dough so", BLOCK, "27 x 27 cm", "16 x 16 cm"),
        ],
    );
    followed(
        "part-too-short",
        (BLOCK, FIRST, "sheet: 24 x 20 cm\nturn: 12\n~~~\n\n## Second"),
        &[
            ("Roll the sheet longer", BLOCK, "24 x 20 cm", "48 x 25 cm"),
            ("fold it in fewer parts", BLOCK, "turn: 12", "turn: letter"),
        ],
    );
    let narrow = second("60 x 12 cm");
    followed(
        "sheet-gets-narrower",
        (BLOCK, SECOND, &narrow),
        &[
            ("Write a wider sheet", BLOCK, "60 x 12 cm", "60 x 16 cm"),
            ("fold the one before it narrower", BLOCK, "48 x 25 cm", "44 x 25 cm"),
        ],
    );
    let same = format!("{SECOND}\nroll: same way");
    followed(
        "seams-not-turned",
        (BLOCK, SECOND, &same),
        &[
            ("Take this line out", BLOCK, "\nroll: same way", ""),
            (
                "or accept it",
                BLOCK,
                "loss: 2 %\n",
                "loss: 2 %\naccept: { seams-not-turned: \"it is shown\" }\n",
            ),
        ],
    );
    let turns = |count: usize| -> String {
        let turn = |at| {
            format!(
                "## Turn {at}\n~~~ticket\nhands: 5 min\nsheet: 48 x 25 cm\nturn: letter\n~~~\n\n"
            )
        };
        (0..count).map(turn).collect()
    };
    let whole =
        "## Second turn\n~~~ticket\nhands: 5 min\nsheet: 48 x 25 cm\nturn: letter\n~~~\n";
    followed(
        "fat-layer-too-thin",
        (BLOCK, whole, &turns(7)),
        &[("leave a turn out", BLOCK, &turns(7), &turns(3))],
    );
    followed(
        "too-many-turns",
        (BLOCK, whole, &turns(13)),
        &[("With three to six", BLOCK, &turns(13), &turns(3))],
    );
    let thick = first("27 x 14 cm");
    followed(
        "sheet-too-thick",
        (BLOCK, FIRST, &thick),
        &[("of this area", BLOCK, "27 x 14 cm", "48 x 25 cm")],
    );
}

#[test]
fn of_cuts_divisions_and_trays() {
    let cases: &[(&str, Slip, &[Remedy])] = &[
        (
            "cut-does-not-fit",
            (LOAF, "sheet: 40 x 30 cm\n", ""),
            &[(
                "a `sheet: 54 x 48 cm`",
                LOAF,
                "cut: squares",
                "sheet: 54 x 48 cm\ncut: squares",
            )],
        ),
        (
            "cut-does-not-fit",
            (LOAF, "squares 10 cm", "squares 50 cm"),
            &[
                ("Make the pieces smaller", LOAF, "squares 50 cm", "squares 10 cm"),
                ("or the sheet bigger", LOAF, "40 x 30 cm", "60 x 52 cm"),
            ],
        ),
        (
            "cut-does-not-fit",
            (LOAF, "squares 10 cm", "squares 1 mm"),
            &[("Look at the units", LOAF, "squares 1 mm", "squares 10 cm")],
        ),
        (
            "cut-count",
            (LOAF, "makes: 12 rolls", "makes: 14 rolls"),
            &[
                ("or `makes`", LOAF, "makes: 14 rolls", "makes: 12 rolls"),
                ("Change the sheet", LOAF, "sheet: 40 x 30 cm", "sheet: 70 x 20 cm"),
            ],
        ),
        (
            "divided-off",
            (
                LOAF,
                "uses: dough\nkit",
                "uses: dough\ndivide: half for rolls, 2/3 for knots\nkit",
            ),
            &[
                ("Give one part `the rest`", LOAF, "2/3 for knots", "the rest for knots"),
                ("change the others", LOAF, "2/3 for knots", "half for knots"),
            ],
        ),
        (
            "tray-too-full",
            (LOAF, "fan: 190 °C", "fan: 190 °C\nper tray: 12"),
            &[("or shape smaller pieces", LOAF, "squares 10 cm", "squares 5 cm")],
        ),
        (
            "shape-misfit",
            (LOAF, "cut: squares 10 cm\n", "cut: squares 10 cm\nshape: crescent\n"),
            &[
                (
                    "Change the cut",
                    LOAF,
                    "squares 10 cm",
                    "triangles, base 9 cm, height 15 cm",
                ),
                ("or the shape", LOAF, "shape: crescent", "shape: envelope"),
            ],
        ),
        (
            "unused-ingredient",
            (LOAF, "uses: dough\nkit", "kit"),
            &[("Add `uses: dough` to", LOAF, "kit: 1", "uses: dough\nkit: 1")],
        ),
    ];
    for (name, slip, remedies) in cases {
        followed(name, *slip, remedies);
    }
}

/// The block that a help prints, put into the pantry as it stands, waits to be filled in; filled
/// in as the pack would have it, it passes, and every allergen is still there.
#[test]
fn of_the_pantry_s_blocks() {
    let filled = [
        ("density:", "density: 0.5 g/ml"),
        ("density: 1 tbsp =", "density: 1 tbsp = 7 g"),
        ("density: 1 each =", "density: 1 each = 40 g"),
        ("allergens:", "allergens: milk, hazelnut, wheat"),
    ];
    for (name, slip) in [
        ("unknown-ingredient", (LOAF, "- 300 g water", "- 300 g zorbo paste")),
        ("unknown-ingredient", (LOAF, "- 300 g water", "- 300 g hazelnut zorbo")),
        ("no-density", (PANTRY, "  density: 0.45 g/ml\n", "")),
        ("no-unit", (LOAF, "- 1 tbsp bread spice", "- 2 bread spice")),
        ("allergens-unknown", (PANTRY, "  allergens: none\n", "")),
        (
            "allergen-left-out",
            (PANTRY, "bread spice:\n", "bread spice:\n  also: nut spice\n"),
        ),
    ] {
        let course = slipped(slip);
        let edition = course.edition();
        let fault = helped(&edition.faults, name, ":\n");
        let all: Vec<_> = edition.faults.iter().map(told).collect();
        let fault = fault.unwrap_or_else(|| panic!("{name}: no block: {all:?}"));
        let help = told(fault).help.expect("a help");
        let block = help.split_once(":\n").expect("a block").1;
        let lines: Vec<&str> = block
            .lines()
            .take_while(|line| line.trim_end().ends_with([':', '=']))
            .collect();
        assert!(lines.len() > 1, "{name}: {block}");
        let mut next = course.clone();
        pasted(next.text(PANTRY), &lines);
        let after = next.edition();
        let waits = after.faults.iter().any(|other| other.name == "not-filled-in");
        assert!(waits, "{name}: passes as it stands: {lines:?}");
        let own = next.text(PANTRY);
        let fill = |line: &str| {
            let asked = filled.iter().find(|(key, _)| *key == line.trim());
            asked.map_or_else(|| line.to_owned(), |(_, right)| format!("  {right}"))
        };
        let lines_filled = own.lines().filter(|line| line.trim() != "like:").map(fill);
        *own = lines_filled.collect::<Vec<_>>().join("\n") + "\n";
        let after = next.edition();
        let ground = printed(&Course::of(Path::new(GROUND)).edition()).expect("sound");
        leads_on(fault, &ground, &after, block);
        let sum = printed(&after);
        let told: Vec<_> = after.faults.iter().map(told).collect();
        assert!(sum.is_some(), "{name}: filled in, it asks on: {told:?} {lines:?}");
        let asked = lines.contains(&"  allergens:");
        let hazelnut =
            sum.is_some_and(|sum| sum.iter().any(|it| it.contains("hazelnut")));
        assert!(hazelnut || !asked, "{name}: what was filled in is lost");
    }
}

/// A block put into the pantry, under its name where that stands there.
fn pasted(pantry: &mut String, lines: &[&str]) {
    let (name, below) = lines.split_first().expect("a name");
    let mut kept: Vec<&str> = pantry.lines().collect();
    let at = kept.iter().position(|line| line == name).unwrap_or_else(|| {
        kept.push(name);
        kept.len() - 1
    });
    let end = kept[at + 1..].iter().position(|line| !line.starts_with(' '));
    let end = end.map_or(kept.len(), |end| at + 1 + end);
    let own: BTreeSet<&str> =
        below.iter().filter_map(|line| line.split(':').next()).collect();
    let stays = kept[at + 1..end].iter();
    let stays =
        stays.filter(|line| line.split(':').next().is_none_or(|key| !own.contains(key)));
    let entry: Vec<&str> = below.iter().chain(stays).copied().collect();
    kept.splice(at + 1..end, entry);
    *pantry = kept.join("\n") + "\n";
}

/// Pictures named wrongly, without words, missing.
#[test]
fn of_pictures_named_in_a_text() {
    let shown = "![a brown loaf](../media/loaf.png)";
    let cases: &[(&str, &str, &[Remedy])] = &[
        (
            "bad-picture",
            "![a brown loaf](../../loaf.png)",
            &[(
                "`![what it shows](../media/",
                LOAF,
                "../../loaf.png",
                "../media/loaf.png",
            )],
        ),
        (
            "picture-without-words",
            "![](../media/loaf.png)",
            &[("Say it in a few words", LOAF, "![]", "![both hands roll it away]")],
        ),
        (
            "missing-picture",
            "![a brown loaf](../media/loaff.png)",
            &[("Did you mean `loaf.png`?", LOAF, "loaff.png", "loaf.png")],
        ),
    ];
    for (name, bad, remedies) in cases {
        followed(name, (LOAF, shown, bad), remedies);
    }
    // A ticket's picture, likewise.
    let own = |row: &'static str| (LOAF, "hands: 5 min\nsheet", row);
    followed(
        "picture-without-words",
        own("hands: 5 min\npicture: loaf.png\nsheet"),
        &[(
            "in a ticket `picture: roll-up.jpg, both hands",
            LOAF,
            "picture: loaf.png",
            "picture: loaf.png, both hands roll it away",
        )],
    );
}

/// Pictures that are put somewhere, saved again, or kept from paper.
#[test]
fn of_picture_files() {
    let sound = fs::read(format!("{GROUND}/media/loaf.png")).expect("a picture");
    for row in rows() {
        let (name, course) = match row.name.as_str() {
            "missing-picture" | "unreadable-picture" => {
                (row.name.as_str(), changed(&row))
            }
            _ => continue,
        };
        if name == "missing-picture" {
            let text = fs::read_to_string(course.join(LOAF)).expect("a recipe");
            let far = text.replace("loaves.png", "crumb-of-the-second-day.png");
            fs::write(course.join(LOAF), far).expect("written");
        }
        let before = Course::of(&course).edition();
        let words =
            if name == "missing-picture" { "Put the picture at" } else { "JPEG or PNG" };
        let all: Vec<_> = before.faults.iter().map(told).collect();
        let fault = helped(&before.faults, name, words);
        let fault = fault.unwrap_or_else(|| panic!("{name}: {all:?}"));
        let file = match name {
            "missing-picture" => "media/crumb-of-the-second-day.png",
            _ => "media/loaf.png",
        };
        fs::write(course.join(file), &sound).expect("written");
        let after = Course::of(&course).edition();
        leads_on(fault, &[], &after, file);
        assert!(printed(&after).is_some(), "{name}");
    }
    for (name, file) in [("coarse-picture", "small.png"), ("faint-picture", "pale.png")] {
        let mut course = slipped((LOAF, "media/loaf.png", &format!("media/{file}")));
        let found = poor(&course.edition());
        let fault = helped(&found, name, "`print: no`").expect("it is found");
        let mut better = course.clone();
        replace(&mut better, LOAF, file, "loaf.png");
        replace(&mut course, LOAF, "makes: 12 rolls\n", "makes: 12 rolls\nprint: no\n");
        for next in [better, course] {
            let next = next.edition();
            assert!(printed(&next).is_some(), "{name}");
            assert!(!poor(&next).iter().any(|other| other.name == fault.name), "{name}");
        }
    }
}

/// What only shows when a sheet is set in type.
fn poor(edition: &Edition) -> Vec<Fault> {
    let theme = Theme::built_in();
    let words = words_in(&theme, "en").expect("they read");
    let inputs = Inputs::new(edition, &words, &theme).filter(|_| !edition.stops());
    poor_prints(&inputs.expect("a sound course"))
}
