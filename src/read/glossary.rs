//! `glossary.yaml`: the words of the trade that the course explains.

use crate::fault::{Fault, FileName, Placed};
use crate::model::Entry;
use crate::said;

use super::fields::{Fields, entries_of};
use super::mark::mark;
use super::prose;
use super::recipe::yes;
use super::yaml::Node;

/// Reads the words from the text of `file`: `word: meaning`, or a word with `means` and
/// `also`.
pub(super) fn read(file: &FileName, text: &str, faults: &mut Vec<Fault>) -> Vec<Entry> {
    let entries = entries_of(file, text, faults);
    entries.into_iter().filter_map(|(word, node)| entry(word, node, faults)).collect()
}

fn entry(
    word: Placed<String>,
    node: Placed<Node>,
    faults: &mut Vec<Fault>,
) -> Option<Entry> {
    let (also, everyday, means) = match node.value {
        Node::Text(text) => (Vec::new(), false, Placed::new(text, node.place)),
        Node::Empty | Node::List(_) | Node::Map(_) => {
            let mut fields = Fields::new(node, &["also", "means", "everyday"], faults);
            let also = fields.list("also").unwrap_or_default();
            let means = fields.needed("means", said!("example-meaning"));
            let everyday = fields.parsed("everyday", "yes", yes);
            fields.finish();
            (also, everyday.is_some_and(|everyday| everyday.value), means)
        }
    };
    let prose = prose::read(&means.value, &means.place, faults);
    let (meaning, links) = (prose.blocks, prose.links);
    let mark = mark(&[&word.value, &means.value]);
    (!meaning.is_empty()).then_some(Entry { word, also, everyday, meaning, links, mark })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_is_explained_in_one_line_or_with_its_forms() {
        let text = "rest: A pause.\nretard:\n  means: A slow rise in the cold.\n  also: [retarded]\n";
        let mut faults = Vec::new();
        let read = read(&"glossary.yaml".into(), text, &mut faults);
        let words: Vec<&str> =
            read.iter().map(|entry| entry.word.value.as_str()).collect();
        assert_eq!(words, ["rest", "retard"]);
        assert_eq!(read[1].also[0].value, "retarded");
        assert!(faults.is_empty(), "{faults:?}");
    }
}
