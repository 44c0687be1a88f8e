// What differs between two states of the course, in a reader's words.
import { make, word } from "./calls.js";

/** The answer of a call that compares, as it is shown. */
export function differs({ known, sound, changes }) {
  const line = (key) => [make("p", { textContent: word(key) })];
  if (!known) return line("desk-publish-first");
  if (!sound) return line("desk-unsound");
  if (!changes.length) return line("desk-same-read");
  return changes.flatMap((entry) => [
    make("h3", { textContent: [entry.title, entry.became].filter(Boolean).join(": ") }),
    make("ul", {}, ...entry.lines.map((text) => make("li", { textContent: text }))),
  ]);
}
