//! A recipe and a technique as pages of the book.

use serde_json::Value;

use super::{Writer, escape, items, text_of};

/// The language of a heading, where it is not the book's.
pub(super) fn spoken(it: &Value) -> String {
    let language = it["title_in"].as_str().map(escape);
    let told = |tag| format!(" lang=\"{tag}\" xml:lang=\"{tag}\"");
    language.map(told).unwrap_or_default()
}

impl Writer<'_> {
    pub(super) fn recipe(&mut self, it: &Value) -> String {
        let spoken = spoken(it);
        let mut out = format!(
            "<section epub:type=\"chapter\"><h1{spoken}>{}</h1><p{spoken}><em>{}</em></p>",
            escape(text_of(&it["title"])),
            escape(text_of(&it["summary"]))
        );
        if it["picture"].is_object() {
            out += &format!("<p>{}</p>", self.image(&it["picture"]));
        }
        out += &self.pairs(&it["glance"]);
        out += &self.contains(&it["contains"]);
        out += &self.prose(&it["opening"], 2);
        out += &format!("<h2>{}</h2>", self.word("ingredients"));
        out += &self.formula(it);
        for inner in items(&it["included"]) {
            let comma = self.word("comma");
            let title = match self::spoken(inner) {
                spoken if spoken.is_empty() => escape(text_of(&inner["title"])),
                spoken => {
                    format!("<span{spoken}>{}</span>", escape(text_of(&inner["title"])))
                }
            };
            out +=
                &format!("<h2>{title}{comma}{}</h2>", escape(text_of(&inner["makes"])));
            out += &self.formula(inner);
            out += &self.chapters(&inner["method"]["before"], 3);
            out += &self.chapters(&inner["method"]["steps"], 3);
        }
        out += &self.chapters(&it["method"]["before"], 2);
        out += &format!("<h2>{}</h2>", self.word("method"));
        out += &self.chapters(&it["method"]["steps"], 3);
        out += &self.cautions(&it["cautions"]);
        out += &self.chapters(&it["method"]["after"], 2);
        out += &self.drawings(&it["drawings"]);
        out + "</section>"
    }

    pub(super) fn technique(&mut self, it: &Value) -> String {
        let spoken = spoken(it);
        let mut out = format!(
            "<section epub:type=\"chapter\"><h1{spoken}>{}</h1><p{spoken}><em>{}</em></p>",
            escape(text_of(&it["title"])),
            escape(text_of(&it["summary"]))
        );
        out += &self.prose(&it["content"], 2);
        out += &self.drawings(&it["drawings"]);
        out + "</section>"
    }

    /// Terms and values.
    fn pairs(&self, rows: &Value) -> String {
        let rows = items(rows).map(|row| {
            let [term, value] = [&row[0], &row[1]].map(|it| escape(text_of(it)));
            format!("<li>{term} <strong>{value}</strong></li>")
        });
        match rows.collect::<String>().as_str() {
            "" => String::new(),
            rows => format!("<ul>{rows}</ul>"),
        }
    }

    /// The allergens, each once, what only one list names after that list's name; what is
    /// not known.
    fn contains(&self, it: &Value) -> String {
        let named = |list: &Value| {
            let names = items(list).map(|one| {
                let more = items(&one["kinds"]).chain(items(&one["from"]));
                let more: Vec<String> = more.map(|it| escape(text_of(it))).collect();
                let more = match more.join(", ") {
                    more if more.is_empty() => more,
                    more => format!(" ({more})"),
                };
                format!("<strong>{}</strong>{more}", escape(text_of(&one["name"])))
            });
            names.collect::<Vec<_>>().join("; ")
        };
        let mut parts = vec![named(&it["both"])];
        parts.extend(
            items(&it["apart"]).filter(|list| items(&list[1]).next().is_some()).map(
                |list| format!("{}: {}", escape(text_of(&list[0])), named(&list[1])),
            ),
        );
        parts.retain(|part| !part.is_empty());
        let all = if parts.is_empty() {
            self.word("none")
        } else {
            parts.join(&self.word("semicolon"))
        };
        let mut out = format!(
            "<div class=\"contains\"><p><strong>{}</strong> {all}.</p>",
            self.word("contains")
        );
        for (key, list) in
            [("unknown", &it["unknown"]), ("read-on-pack", &it["read_on_pack"])]
        {
            let names: Vec<String> = items(list).map(|it| escape(text_of(it))).collect();
            if !names.is_empty() {
                out += &format!(
                    "<p><strong>{}</strong>: {}.</p>",
                    self.word(key),
                    names.join(", ")
                );
            }
        }
        out + &format!("<p>{}</p></div>", self.word("check-labels"))
    }

    fn formula(&mut self, it: &Value) -> String {
        let (formula, mut out) = (&it["formula"], String::new());
        for section in items(&formula["sections"]) {
            let lines: String = items(&section["lines"]).map(line).collect();
            let heads = ["ingredient", "weight", "measure", "percent"]
                .map(|key| format!("<th scope=\"col\">{}</th>", self.word(key)));
            let name = escape(text_of(&section["name"]));
            out += &format!(
                "<table><caption>{name} {}</caption><tr>{}</tr>{lines}</table>",
                escape(text_of(&section["total"])),
                heads.concat()
            );
        }
        let said = items(&formula["sums"]).chain(std::iter::once(&it["water"]));
        let said = said.chain(items(&formula["notes"])).map(text_of);
        out.extend(
            said.filter(|it| !it.is_empty()).map(|it| format!("<p>{}</p>", escape(it))),
        );
        out
    }

    fn chapters(&mut self, chapters: &Value, level: u8) -> String {
        let one = |it: &Value| {
            if text_of(&it["kind"]) == "step" {
                return self.step(it, level);
            }
            let title = escape(text_of(&it["title"]));
            let said = self.prose(&it["content"], level + 1);
            format!("<h{level}{}>{title}</h{level}>{said}", spoken(it))
        };
        items(chapters).map(one).collect()
    }

    fn step(&mut self, it: &Value, level: u8) -> String {
        let mut out = format!(
            "<h{level}{}>{} {}</h{level}>",
            spoken(it),
            it["number"],
            escape(text_of(&it["title"]))
        );
        let rows = items(&it["ticket"]).map(|row| {
            let [term, value] = [&row[1], &row[2]].map(|it| escape(text_of(it)));
            format!("<li>{term} <strong>{value}</strong></li>")
        });
        out += &match rows.collect::<String>() {
            rows if rows.is_empty() => rows,
            rows => format!("<ul>{rows}</ul>"),
        };
        let uses: Vec<String> = items(&it["uses"]).map(used).collect();
        if !uses.is_empty() {
            out += &format!("<p>{} {}</p>", self.word("uses"), uses.join(", "));
        }
        out += &self.prose(&it["prose"], level + 1);
        out += &items(&it["others"]).map(|other| self.other(other)).collect::<String>();
        if let Some(number) = it["as_drawn"].as_u64() {
            let said = self.word("as-drawn").replace("{number}", &number.to_string());
            out += &format!("<p>{said}</p>");
        }
        if let Some(until) = it["until"].as_str() {
            let head = self.word("until");
            out += &format!(
                "<p class=\"note\"><strong>{head}</strong> {}</p>",
                escape(until)
            );
        }
        out += &self.pictures(&it["pictures"]);
        out + &self.drawings(&it["drawings"])
    }

    /// Another way to do a step.
    fn other(&self, it: &Value) -> String {
        let row = |row: &Value| {
            let [term, value] = [&row[1], &row[2]].map(|it| escape(text_of(it)));
            format!("<li>{term} <strong>{value}</strong></li>")
        };
        let rows: String = items(&it["ticket"]).map(row).collect();
        let until = it["until"].as_str().map_or_else(String::new, |until| {
            format!("<li>{} {}</li>", self.word("until"), escape(until))
        });
        let name = escape(text_of(&it["name"]));
        format!("<p><strong>{name}</strong></p><ul>{rows}{until}</ul>")
    }

    fn cautions(&self, list: &Value) -> String {
        let lines: String =
            items(list).map(|it| format!("<li>{}</li>", escape(text_of(it)))).collect();
        match lines.as_str() {
            "" => String::new(),
            lines => format!("<h2>{}</h2><ul>{lines}</ul>", self.word("safety")),
        }
    }

    fn drawings(&mut self, list: &Value) -> String {
        let drawn = items(list).map(|it| {
            let (file, alt) = (text_of(&it["svg"]), escape(text_of(&it["alt"])));
            self.shown.insert(file.to_owned());
            let title = escape(text_of(&it["title"]));
            format!(
                "<figure><img src=\"{file}\" alt=\"{alt}\"/><figcaption>{title}</figcaption></figure>"
            )
        });
        drawn.collect()
    }
}

/// A line of the formula.
fn line(row: &Value) -> String {
    let note = match text_of(&row["note"]) {
        "" => String::new(),
        note => format!(", {}", escape(note)),
    };
    let cells = ["first", "measure", "percent"]
        .map(|key| format!("<td>{}</td>", escape(text_of(&row[key]))));
    let name = escape(text_of(&row["ingredient"]));
    format!("<tr><th scope=\"row\">{name}{note}</th>{}</tr>", cells.concat())
}

/// What goes in at a step: `1 large egg (50 g)`.
fn used(it: &Value) -> String {
    let more: Vec<String> = [&it["weight"], &it["each"]]
        .into_iter()
        .map(text_of)
        .filter(|more| !more.is_empty())
        .map(escape)
        .collect();
    let more =
        if more.is_empty() { String::new() } else { format!(" ({})", more.join("; ")) };
    let [amount, name] = [&it["amount"], &it["name"]].map(|it| escape(text_of(it)));
    format!("<strong>{amount}</strong> {name}{more}")
}
