//! Prose as HTML: a small writer that knows nothing but the model's blocks, so nothing
//! else can get into a page.

use crate::measure::Label;
use crate::media::Medium;
use crate::sheet::{Block, Inline};
use crate::words::Words;

use super::glossary::{GlossaryLinks, PAGE};
use super::html::{Html, address, escape};
use super::picture::{Spot, picture};
use super::vary::varied;

/// How prose is written on one page.
pub(super) struct Writer<'a> {
    /// The way to the site's root: empty or `../../`.
    pub(super) root: &'a str,
    /// Batch keys.
    pub(super) keys: &'a [&'a str],
    /// The level of a heading in the prose: 2 to 6.
    pub(super) level: u8,
    /// The fixed words.
    pub(super) words: &'a Words,
    /// The pictures.
    pub(super) media: &'a [Medium],
    /// The words of the trade that this page may still link; none where it links none.
    pub(super) glossary: Option<&'a GlossaryLinks<'a>>,
}

impl Writer<'_> {
    /// The same prose at every batch size, first the one whose text is taken; the sizes
    /// differ in nothing but their live values.
    pub(super) fn write(&self, sizes: &[&[Block<Label>]]) -> Html {
        self.of_step(None, sizes)
    }

    /// The same, where it is that of a step, whose parts can be ticked.
    pub(super) fn of_step(&self, step: Option<&str>, sizes: &[&[Block<Label>]]) -> Html {
        let values = sizes.iter().map(|blocks| values(blocks)).collect();
        let mut run = Run { step, values, next: 0, ticks: 0, out: String::new() };
        for block in sizes.first().copied().unwrap_or_default() {
            self.block(block, &mut run);
        }
        Html(run.out)
    }

    fn block(&self, block: &Block<Label>, run: &mut Run) {
        match block {
            Block::Paragraph { content } => self.paragraph(content, run),
            Block::Heading { content } => {
                self.within(&format!("h{}", self.level.clamp(2, 6)), content, run);
            }
            Block::List { start, ticks, items } => {
                let ticked = run.step.filter(|_| *ticks);
                self.list(*start, (ticked, items), run);
            }
            Block::Quote { content } => {
                self.around("<blockquote>", "</blockquote>", content, run);
            }
            Block::Caution { content } => {
                let open = format!(
                    "<div class=\"caution\"><p class=\"mark\">{}</p>",
                    escape(self.words.get("page-caution"))
                );
                self.around(&open, "</div>", content, run);
            }
            Block::Level { level, content } => {
                let open = format!(
                    "<details class=\"level\"><summary>{}</summary>",
                    escape(self.words.get(&format!("page-level-{}", level.name())))
                );
                self.around(&open, "</details>", content, run);
            }
            Block::Foreign { language, content } => {
                let open = format!("<div lang=\"{}\">", escape(language));
                self.around(&open, "</div>", content, run);
            }
            Block::Code { text } => {
                run.out.push_str(&format!("<pre><code>{}</code></pre>", escape(text)));
            }
            Block::Table { rows } => self.table(rows, run),
            Block::Rule => run.out.push_str("<hr>"),
        }
    }

    /// A paragraph; its first word of the trade that the page has not linked yet leads to
    /// what it means.
    fn paragraph(&self, content: &[Inline<Label>], run: &mut Run) {
        run.out.push_str("<p>");
        let mut glossary = self.glossary;
        for inline in content {
            if let (Inline::Text { text }, Some(words)) = (inline, glossary) {
                if self.explained(text, words, run) {
                    glossary = None;
                }
            } else {
                self.inline(inline, run);
            }
        }
        run.out.push_str("</p>");
    }

    /// Writes text with a link from a word of the trade; whether there was one.
    fn explained(&self, text: &str, words: &GlossaryLinks, run: &mut Run) -> bool {
        let Some(found) = words.find(text) else {
            run.out.push_str(&escape(text));
            return false;
        };
        let [before, word, after] =
            [&text[..found.start], &text[found.start..found.end], &text[found.end..]]
                .map(escape);
        let (root, name) = (self.root, escape(found.name));
        run.out.push_str(&format!(
            "{before}<a class=\"trade\" href=\"{root}{PAGE}#{name}\">{word}</a>{after}"
        ));
        true
    }

    fn inlines(&self, content: &[Inline<Label>], run: &mut Run) {
        for inline in content {
            self.inline(inline, run);
        }
    }

    fn inline(&self, inline: &Inline<Label>, run: &mut Run) {
        match inline {
            Inline::Text { text } => run.out.push_str(&escape(text)),
            Inline::Live { value } => run.live(self.keys, value),
            Inline::Emphasis { content } => self.within("em", content, run),
            Inline::Strong { content } => self.within("strong", content, run),
            Inline::Code { text } => {
                run.out.push_str(&format!("<code>{}</code>", escape(text)));
            }
            Inline::Link { to, content } => self.link(to, content, run),
            Inline::Picture { file, alt } => {
                run.out
                    .push_str(&picture(self.media, [file, alt], self.root, Spot::Text).0);
            }
            Inline::Break => run.out.push_str("<br>"),
        }
    }

    /// A link, or only its text where the address may not be followed.
    fn link(&self, to: &str, content: &[Inline<Label>], run: &mut Run) {
        match address(to, self.root) {
            Some(address) => {
                run.out.push_str(&format!("<a href=\"{}\">", escape(&address)));
                self.inlines(content, run);
                run.out.push_str("</a>");
            }
            None => self.inlines(content, run),
        }
    }

    fn within(&self, tag: &str, content: &[Inline<Label>], run: &mut Run) {
        run.out.push_str(&format!("<{tag}>"));
        self.inlines(content, run);
        run.out.push_str(&format!("</{tag}>"));
    }

    fn around(&self, open: &str, close: &str, content: &[Block<Label>], run: &mut Run) {
        run.out.push_str(open);
        self.blocks(content, run);
        run.out.push_str(close);
    }

    fn blocks(&self, content: &[Block<Label>], run: &mut Run) {
        for block in content {
            self.block(block, run);
        }
    }

    fn list(
        &self,
        start: Option<u64>,
        (ticked, items): (Option<&str>, &[Vec<Block<Label>>]),
        run: &mut Run,
    ) {
        let (open, close) = match start {
            None if ticked.is_some() => ("<ul class=\"parts\">".to_owned(), "</ul>"),
            None => ("<ul>".to_owned(), "</ul>"),
            Some(1) => ("<ol>".to_owned(), "</ol>"),
            // HTML numbers are 32 bits wide.
            Some(first) => {
                (format!("<ol start=\"{}\">", first.min(i32::MAX as u64)), "</ol>")
            }
        };
        run.out.push_str(&open);
        for item in items {
            run.out.push_str("<li>");
            match (ticked, item.as_slice()) {
                (Some(step), [Block::Paragraph { content }, more @ ..]) => {
                    self.to_tick(step, content, run);
                    self.blocks(more, run);
                }
                (None, [Block::Paragraph { content }]) => self.inlines(content, run),
                (_, item) => self.blocks(item, run),
            }
            run.out.push_str("</li>");
        }
        run.out.push_str(close);
    }

    /// A part of a step with its box.
    fn to_tick(&self, step: &str, content: &[Inline<Label>], run: &mut Run) {
        run.ticks += 1;
        let id = format!("part-{}-{}", run.ticks, escape(step));
        run.out.push_str(&format!(
            "<span class=\"tick\"><input type=\"checkbox\" id=\"{id}\"><label for=\"{id}\">"
        ));
        self.inlines(content, run);
        run.out.push_str("</label></span>");
    }

    fn table(&self, rows: &[Vec<Vec<Inline<Label>>>], run: &mut Run) {
        let name = escape(self.words.get("page-table"));
        run.out.push_str(&format!(
            "<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"{name}\"><table>"
        ));
        for (number, row) in rows.iter().enumerate() {
            let cell = if number == 0 { "th" } else { "td" };
            run.out.push_str(["<tbody><tr>", "<thead><tr>"][usize::from(number == 0)]);
            row.iter().for_each(|content| self.within(cell, content, run));
            run.out
                .push_str(["</tr></tbody>", "</tr></thead>"][usize::from(number == 0)]);
        }
        run.out.push_str("</table></div>");
    }
}

/// What is written so far, and the live values at every size, taken in reading order.
struct Run<'a> {
    /// The step whose words they are.
    step: Option<&'a str>,
    values: Vec<Vec<Label>>,
    next: usize,
    /// How many parts of a step have boxes to tick so far.
    ticks: usize,
    out: String,
}

impl Run<'_> {
    /// Writes the next value at every size; `here` where a size has none.
    fn live(&mut self, keys: &[&str], here: &Label) {
        let at = |values: &Vec<Label>| values.get(self.next).unwrap_or(here).clone();
        let labels: Vec<Label> = self.values.iter().map(at).collect();
        self.next += 1;
        self.out.push_str(&varied(keys, &labels).0);
    }
}

fn values(blocks: &[Block<Label>]) -> Vec<Label> {
    let mut values = Vec::new();
    for block in blocks {
        block.visit(&mut |inline| {
            if let Inline::Live { value } = inline {
                values.push(value.clone());
            }
        });
    }
    values
}

/// The words of some prose without any marks, metric, for search engines.
pub(super) fn plain(blocks: &[Block<Label>]) -> String {
    let mut out = String::new();
    for block in blocks {
        if !out.is_empty() {
            out.push(' ');
        }
        block.visit(&mut |inline| match inline {
            Inline::Text { text } | Inline::Code { text } => out.push_str(text),
            Inline::Live { value } => out.push_str(&value.metric),
            Inline::Break => out.push(' '),
            Inline::Emphasis { .. }
            | Inline::Strong { .. }
            | Inline::Link { .. }
            | Inline::Picture { .. } => {}
        });
    }
    out.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sheet::{Block, Inline, TradeWord};

    const KEYS: [&str; 2] = ["x1", "x2"];

    fn write(sizes: &[&[Block<Label>]]) -> String {
        let words = Words::default();
        let trade = [TradeWord {
            everyday: false,
            name: "bench".into(),
            word: "bench".into(),
            also: Vec::new(),
            meaning: Vec::new(),
        }];
        Writer {
            root: "../../",
            keys: &KEYS[..sizes.len()],
            level: 4,
            words: &words,
            media: &[],
            glossary: Some(&GlossaryLinks::new(&trade)),
        }
        .write(sizes)
        .0
    }

    fn text(text: &str) -> Inline<Label> {
        Inline::Text { text: text.into() }
    }

    fn paragraph(content: Vec<Inline<Label>>) -> Block<Label> {
        Block::Paragraph { content }
    }

    #[test]
    fn typed_marks_stay_text() {
        let block = paragraph(vec![text("<script>alert('x')</script> {{ a }} & {b}")]);
        let shown =
            "<p>&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; {{ a }} &amp; {b}</p>";
        assert_eq!(write(&[&[block]]), shown);
    }

    #[test]
    fn live_values_follow_the_size() {
        let at = |grams: &str| {
            let value = Inline::Live { value: Label::same(grams) };
            vec![paragraph(vec![
                text("Add "),
                Inline::Strong { content: vec![value] },
                text("."),
            ])]
        };
        let (one, two) = (at("100 g"), at("200 g"));
        let shown = "<p>Add <strong><span class=\"b b-x1\">100 g</span>\
                     <span class=\"b b-x2\">200 g</span></strong>.</p>";
        assert_eq!(write(&[&one, &two]), shown);
    }

    #[test]
    fn a_harmful_link_is_only_its_text() {
        let link = |to: &str| Inline::Link { to: to.into(), content: vec![text("here")] };
        let block =
            paragraph(vec![link("javascript:alert(1)"), text(" "), link("techniques/a")]);
        let shown = "<p>here <a href=\"../../techniques/a/index.html\">here</a></p>";
        assert_eq!(write(&[&[block]]), shown);
    }

    #[test]
    fn a_word_of_the_trade_is_explained_once() {
        let twice = || paragraph(vec![text("On the bench & the bench.")]);
        let link = "<a class=\"trade\" href=\"../../words/index.html#bench\">bench</a>";
        let shown = format!(
            "<p>On the {link} &amp; the bench.</p><p>On the bench &amp; the bench.</p>"
        );
        assert_eq!(write(&[&[twice(), twice()]]), shown);
    }

    #[test]
    fn lists_and_tables_are_whole() {
        let item = vec![paragraph(vec![text("one")])];
        let list = Block::List { start: Some(3), ticks: false, items: vec![item] };
        let table =
            Block::Table { rows: vec![vec![vec![text("a")]], vec![vec![text("b")]]] };
        let shown = "<ol start=\"3\"><li>one</li></ol><div class=\"wide\" role=\"group\" \
                     tabindex=\"0\" aria-label=\"page-table\"><table><thead><tr>\
                     <th>a</th></tr></thead><tbody><tr><td>b</td></tr></tbody></table></div>";
        assert_eq!(write(&[&[list, table]]), shown);
        assert_eq!(
            plain(&[paragraph(vec![text("a  b"), Inline::Break, text("c")])]),
            "a b c"
        );
    }
}
