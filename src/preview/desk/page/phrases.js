// The editor component's own words, by what it calls them.
import { word } from "./calls.js";

/** The words in the language of the course. */
export function phrases() {
  return {
    text: word("desk-text"), theirs: word("desk-theirs"), ours: word("desk-ours"),
    Find: word("desk-find"), Replace: word("desk-replace"), next: word("desk-find-next"), previous: word("desk-find-before"),
    all: word("desk-find-all"), "match case": word("desk-find-case"), regexp: word("desk-find-pattern"), "by word": word("desk-find-word"),
    replace: word("desk-replace-one"), "replace all": word("desk-replace-all"), close: word("desk-close"),
    Diagnostics: word("desk-faults"), "No diagnostics": word("desk-sound"), Completions: word("desk-offers"),
    "Revert this chunk": word("desk-take-theirs"), "current match": word("desk-find-here"), "on line": word("desk-find-line"),
    "replaced match on line $": word("desk-replaced"), "replaced $ matches": word("desk-replaced-all"), "Go to line": word("desk-go"), go: word("desk-go"),
    "Selection deleted": word("desk-deleted"), "Control character": word("desk-control"), "Folded lines": "", "Unfolded lines": "",
  };
}
