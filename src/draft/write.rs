//! The draft as text: head, steps, and what the author has to settle.

use crate::edition::Edition;
use crate::fault::Severity;
use crate::read::Source;
use crate::said;
use crate::statement::Statement;
use crate::words::Words;

use super::Draft;
use super::lines::{Section, Trial, quoted};
use super::steps::{Plan, Step};
use super::written::Written;

/// Puts a draft together and reads it back. Where an ingredient that stands by its own name in a
/// step is not understood, sections are used whole and ingredients are plain words.
pub(super) fn draft(
    written: &Written,
    formula: Vec<Section>,
    mut plan: Plan,
    trial: &Trial,
) -> Draft {
    let mut doubts = written.besides.clone();
    let head = head(written, &formula, trial, &mut doubts);
    doubts.append(&mut plan.doubts);
    let words = &trial.words;
    let mut doubts: Vec<String> = doubts.iter().map(|doubt| words.tell(doubt)).collect();
    let name = name(&written.title);
    let text = text(&head, &doubts, &plan, words);
    let wrong = errors(&text, &name, trial);
    if wrong.is_empty() {
        return Draft { name, text, doubts };
    }
    plainly(&formula, &mut plan);
    let text = self::text(&head, &doubts, &plan, words);
    let wrong = errors(&text, &name, trial);
    if wrong.is_empty() {
        return Draft { name, text, doubts };
    }
    doubts.extend(wrong);
    Draft { name, text: self::text(&head, &doubts, &plan, words), doubts }
}

/// Every section whole in the first step that used something of it; no ingredient live.
fn plainly(formula: &[Section], plan: &mut Plan) {
    for step in &mut plan.steps {
        step.uses.clear();
        step.live
            .retain(|(_, live)| live.starts_with(|sign: char| !sign.is_alphabetic()));
    }
    if let Some(first) = plan.steps.first_mut() {
        let taken = formula
            .iter()
            .filter(|section| section.lines.iter().any(|line| line.found.is_ok()));
        first.uses.extend(taken.map(|section| section.name.clone()));
    }
}

/// The errors that the program finds in a draft.
fn errors(text: &str, name: &str, trial: &Trial) -> Vec<String> {
    let file = Source { path: format!("recipes/{name}.md"), text: text.to_owned() };
    let edition = Edition::new(&trial.with([file.clone()]), Vec::new(), Vec::new());
    let own = edition.faults.iter().filter(|fault| {
        fault.severity == Severity::Error && *fault.place.file == *file.path
    });
    own.map(|fault| {
        let line = edition.texts.position(&fault.place).line.to_string();
        trial.words.tell(&said!("draft-line-wrong", line, said = fault.message))
    })
    .collect()
}

/// The head up to what has to be settled.
fn head(
    written: &Written,
    formula: &[Section],
    trial: &Trial,
    doubts: &mut Vec<Statement>,
) -> String {
    let title = if written.title.is_empty() {
        doubts.push(said!("draft-no-title"));
        "Draft"
    } else {
        &written.title
    };
    let summary = written.summary.split(". ").next().unwrap_or_default();
    let summary = if summary.is_empty() {
        doubts.push(said!("draft-no-summary"));
        title
    } else {
        summary
    };
    let makes = makes(written, trial, doubts);
    let mut head = format!(
        "title: {}\nsummary: {}\nmakes: {}\nformula:\n",
        quoted(title),
        quoted(summary),
        quoted(&makes)
    );
    for section in formula {
        section_text(section, &mut head, doubts);
    }
    head
}

fn section_text(section: &Section, head: &mut String, doubts: &mut Vec<Statement>) {
    let taken = section.lines.iter().any(|line| line.found.is_ok());
    let mark = if taken { "" } else { "# " };
    *head += &format!("  {mark}{}:\n", section.name);
    for line in &section.lines {
        match &line.found {
            Ok(_) => *head += &format!("    - {}\n", quoted(&line.text)),
            Err(why) => {
                *head += &format!("    # - {}\n", quoted(&line.text));
                doubts.push(said!("draft-left-out", line = line.text, why));
            }
        }
        doubts.extend(line.doubt.clone());
    }
}

/// What it makes, in words that are read.
fn makes(written: &Written, trial: &Trial, doubts: &mut Vec<Statement>) -> String {
    let mut told: Vec<&str> = written.makes.iter().map(String::as_str).collect();
    // `50 rolls` says more than `50`.
    told.sort_by_key(|text| !text.contains(char::is_alphabetic));
    for text in &told {
        let plain = leads(text);
        let number = plain.trim_end_matches('.');
        let serves = text.to_lowercase().starts_with("serv")
            || text.to_lowercase().contains("servings ");
        let candidates =
            [number.to_owned(), format!("{number} servings"), format!("{number} pieces")];
        let from = if number.chars().all(|sign| sign.is_ascii_digit()) && !serves {
            2
        } else {
            0
        };
        if let Some(good) =
            candidates[from..].iter().find(|makes| makes.len() < 80 && trial.makes(makes))
        {
            if from == 2 {
                doubts.push(said!("draft-of-what", number, good));
            }
            return good.clone();
        }
    }
    doubts.push(match told.first() {
        Some(told) => said!("draft-makes-unread", told),
        None => said!("draft-makes-untold"),
    });
    "1 batch".into()
}

/// `Makes about 24 rolls` without its leading words.
fn leads(text: &str) -> &str {
    let mut rest = text.trim();
    let leads = [
        "number of servings",
        "sufficient to make",
        "sufficient for",
        "makes",
        "yields",
        "yield",
        "serves",
        "servings",
        "portions",
        "about",
        "approximately",
        "approx.",
        ":",
        "-",
        "—",
    ];
    while let Some(next) = leads.iter().find_map(|lead| {
        let (head, tail) = rest.split_at_checked(lead.len())?;
        head.eq_ignore_ascii_case(lead).then(|| tail.trim())
    }) {
        rest = next;
    }
    rest
}

/// The whole file.
fn text(head: &str, doubts: &[String], plan: &Plan, words: &Words) -> String {
    let mut text = format!("---\n{head}");
    if !doubts.is_empty() {
        text += &format!("# {}\nto settle:\n", words.get("draft-settle-each"));
        for doubt in doubts {
            text += &format!("  - {}\n", quoted(doubt));
        }
    }
    text += "---\n";
    for step in &plan.steps {
        text += &step_text(step);
    }
    text
}

fn step_text(step: &Step) -> String {
    let mut text = format!("\n## {}\n~~~ticket\n", plain(&step.title));
    if !step.uses.is_empty() {
        text += &format!("uses: {}\n", step.uses.join(", "));
    }
    for (key, value) in &step.rows {
        text += &format!("{key}: {value}\n");
    }
    text += "~~~\n";
    let mut at = 0;
    let mut prose = String::new();
    for ((start, end), live) in &step.live {
        if *start < at {
            continue;
        }
        prose += &plain(&step.text[at..*start]);
        prose += &format!("{{{live}}}");
        at = *end;
    }
    prose += &plain(&step.text[at..]);
    let first = prose.starts_with(['#', '>', '-', '+', '~', '=', '|', ':']);
    let numbered = prose.find(['.', ')']).is_some_and(|at| {
        (1..10).contains(&at) && prose[..at].chars().all(|sign| sign.is_ascii_digit())
    });
    if numbered {
        prose = prose.replacen('.', "\\.", 1).replacen(')', "\\)", 1);
    }
    text + if first { "\\" } else { "" } + &prose + "\n"
}

/// A stranger's words so that Markdown takes none of its signs for a mark.
fn plain(text: &str) -> String {
    let mut plain = String::new();
    for sign in text.chars() {
        if matches!(sign, '\\' | '`' | '*' | '_' | '{' | '}' | '[' | ']' | '<' | '&') {
            plain.push('\\');
        }
        plain.push(sign);
    }
    plain
}

/// A file's name from a title: `Soda bread` is `soda-bread`.
fn name(title: &str) -> String {
    let mut name = String::new();
    for sign in title.to_lowercase().chars().take(80) {
        let sign = match sign {
            'é' | 'è' | 'ê' | 'ë' => 'e',
            'à' | 'á' | 'â' | 'ä' | 'å' => 'a',
            'ö' | 'ó' | 'ô' | 'ø' => 'o',
            'ü' | 'ú' | 'û' => 'u',
            'ç' => 'c',
            'ñ' => 'n',
            sign => sign,
        };
        if sign.is_ascii_alphanumeric() {
            name.push(sign);
        } else if !name.is_empty() && !name.ends_with('-') && sign != '\'' && sign != '’'
        {
            name.push('-');
        }
    }
    let name = name.trim_end_matches('-');
    if name.is_empty() { "draft".into() } else { name.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_leads() {
        assert_eq!(name("Gâteau, “Fine” & Baker's!"), "gateau-fine-bakers");
        assert_eq!(name("粉"), "draft");
        assert_eq!(leads("Makes about 24 rolls"), "24 rolls");
        assert_eq!(leads("Yield: 2 loaves"), "2 loaves");
    }

    #[test]
    fn marks_stay_text() {
        assert_eq!(plain("a <b> {c} [d](e) *f*"), "a \\<b> \\{c\\} \\[d\\](e) \\*f\\*");
    }
}
