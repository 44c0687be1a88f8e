//! Prose as XHTML.

use serde_json::Value;

use super::{Term, Writer, escape, items, text_of};

impl Writer<'_> {
    /// Blocks; headings in them take this level.
    pub(super) fn prose(&mut self, blocks: &Value, level: u8) -> String {
        items(blocks).map(|block| self.block(block, level)).collect()
    }

    fn block(&mut self, it: &Value, level: u8) -> String {
        let content = &it["content"];
        match text_of(&it["kind"]) {
            "paragraph" => format!("<p>{}</p>", self.inlines(content)),
            "heading" => format!("<h{level}>{}</h{level}>", self.inlines(content)),
            "list" => self.list(it, level),
            "quote" => format!("<blockquote>{}</blockquote>", self.prose(content, level)),
            "caution" => {
                let head = self.word("caution");
                let said = self.prose(content, level);
                format!(
                    "<aside class=\"note\"><p><strong>{head}</strong></p>{said}</aside>"
                )
            }
            "level" => {
                let head = self.word(&format!("level-{}", text_of(&it["level"])));
                let said = self.prose(content, level);
                format!("<aside><p><strong>{head}</strong></p>{said}</aside>")
            }
            "foreign" => {
                let language = escape(text_of(&it["language"]));
                let said = self.prose(content, level);
                format!("<div lang=\"{language}\" xml:lang=\"{language}\">{said}</div>")
            }
            "code" => format!("<pre><code>{}</code></pre>", escape(text_of(&it["text"]))),
            "table" => self.table(it),
            "rule" => "<hr/>".to_owned(),
            _ => String::new(),
        }
    }

    fn list(&mut self, it: &Value, level: u8) -> String {
        let lines: String = items(&it["items"])
            .map(|item| {
                let id = self.symptom(item);
                let id = id.map_or(String::new(), |id| format!(" id=\"{id}\""));
                format!("<li{id}>{}</li>", self.prose(item, level))
            })
            .collect();
        let ticks = it["ticks"].as_bool().unwrap_or(false);
        match it["start"].as_u64() {
            None if ticks => format!("<ul class=\"ticks\">{lines}</ul>"),
            None => format!("<ul>{lines}</ul>"),
            Some(start) => format!("<ol start=\"{start}\">{lines}</ol>"),
        }
    }

    /// Notes what a point begins with in bold, for the index; its anchor.
    fn symptom(&mut self, item: &Value) -> Option<String> {
        let lead = &item[0]["content"][0];
        // Points of techniques are no trouble.
        let of_recipe = self.here.starts_with("recipes-");
        if !of_recipe
            || text_of(&item[0]["kind"]) != "paragraph"
            || text_of(&lead["kind"]) != "strong"
        {
            return None;
        }
        let term: String =
            items(&lead["content"]).map(|it| text_of(&it["text"])).collect();
        let id = format!("point-{}", self.terms.len());
        let place = format!("{}#{id}", self.here);
        self.terms.push(Term { words: term, place, spoken: String::new() });
        Some(id)
    }

    fn table(&mut self, it: &Value) -> String {
        let mut out = "<table>".to_owned();
        for (at, row) in items(&it["rows"]).enumerate() {
            let (cell, end) =
                if at == 0 { ("th scope=\"col\"", "th") } else { ("td", "td") };
            let cells: String = items(row)
                .map(|it| format!("<{cell}>{}</{end}>", self.inlines(it)))
                .collect();
            out += &format!("<tr>{cells}</tr>");
        }
        out + "</table>"
    }

    pub(super) fn inlines(&mut self, content: &Value) -> String {
        items(content).map(|it| self.inline(it)).collect()
    }

    fn inline(&mut self, it: &Value) -> String {
        let content = &it["content"];
        match text_of(&it["kind"]) {
            "text" => escape(text_of(&it["text"])),
            "live" => format!("<strong>{}</strong>", escape(text_of(&it["value"]))),
            "emphasis" => format!("<em>{}</em>", self.inlines(content)),
            "strong" => format!("<strong>{}</strong>", self.inlines(content)),
            "code" => format!("<code>{}</code>", escape(text_of(&it["text"]))),
            "break" => "<br/>".to_owned(),
            "picture" => self.image(it),
            "link" => {
                let body = self.inlines(content);
                match self.target(text_of(&it["to"])) {
                    Some(to) => format!("<a href=\"{}\">{body}</a>", escape(&to)),
                    None => body,
                }
            }
            _ => String::new(),
        }
    }

    /// Where a link leads: to another page of the book, or outward.
    fn target(&self, to: &str) -> Option<String> {
        match to.strip_prefix("page:") {
            Some(name) => self.files.get(name).cloned(),
            None => (!to.is_empty()).then(|| to.to_owned()),
        }
    }

    /// The pictures of a step; where they say what is right and wrong, so does a sign with
    /// words below each.
    pub(super) fn pictures(&mut self, all: &Value) -> String {
        let mut out = String::new();
        for it in items(all) {
            let image = self.image(it);
            let Some(sight) = it["sight"].as_str() else {
                out += &format!("<p>{image}</p>");
                continue;
            };
            let (sign, head) = (
                if sight == "right" { "\u{2713}" } else { "\u{2717}" },
                self.word(&format!("sight-{sight}")),
            );
            let alt = escape(text_of(&it["alt"]));
            out += &format!(
                "<figure>{image}<figcaption>{sign} <strong>{head}</strong> {alt}</figcaption></figure>"
            );
        }
        out
    }

    /// A picture of the instructor's; its words where it is not there.
    pub(super) fn image(&mut self, it: &Value) -> String {
        let (file, alt) = (text_of(&it["file"]), escape(text_of(&it["alt"])));
        if file.is_empty() {
            return format!("<em>{alt}</em>");
        }
        self.shown.insert(file.to_owned());
        format!("<img src=\"{}\" alt=\"{alt}\"/>", escape(file))
    }
}
