// A swap of a recipe, asked for in fields and written into its head: what may be taken in place
// of what, under a name.
import { make, word } from "./calls.js";
import { ask, tell } from "./dialog.js";
import { form, lines, yaml } from "./fields.js";

/** Where the head of a text ends: the letter at which its last `---` begins; `null` without one. */
function headEnd(text) {
  const found = text.match(/^---[ \t]*\n([\s\S]*?\n)?(?=---[ \t]*(?:\n|$))/);
  return found && found[0].length;
}

/** Where a swap of this name is written, and what goes before it; `null` where the head has them in another form. */
function place(text, end) {
  const head = text.slice(0, end);
  const key = head.match(/^swaps:(.*)\n/m);
  if (!key) return { at: end, before: "swaps:\n" };
  if (key[1].replace(/#.*/, "").trim()) return null;
  const from = key.index + key[0].length;
  const block = head.slice(from).match(/^(?:[ \t]+.*\n|[ \t]*\n)*/)[0].replace(/(?:[ \t]*\n)+$/, "\n");
  return { at: from + (block === "\n" ? 0 : block.length), before: "" };
}

/** Asks for a swap and writes it into the head. */
export async function swap(editor) {
  const end = headEnd(editor.text());
  const spot = end === null ? null : place(editor.text(), end);
  if (!spot) { tell(word("desk-swap"), [make("p", { textContent: word("desk-no-swap") })]); return; }
  const fields = [
    { key: "name", label: "desk-field-swap", hint: "oat drink", needed: true },
    { key: "lines", label: "desk-field-swaps", kind: "lines", rows: 3, hint: "140 g oat drink for whole milk\n10 g water in dough\nwithout walnuts", needed: true },
  ];
  const open = form(fields);
  if (await ask(word("desk-swap"), [open.body], word("desk-swap-do"))) {
    const said = open.read();
    const written = lines(said.lines).map((line) => `    - ${yaml(line)}\n`).join("");
    editor.change(spot.at, spot.at, `${spot.before}  ${yaml(said.name)}:\n${written}`);
  }
  editor.focus();
}
