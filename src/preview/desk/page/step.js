// A step and its ticket, and a cut, asked for in fields; written into the text as one types, so
// that the page beside shows what it comes to.
import { make, word } from "./calls.js";
import { ask, tell } from "./dialog.js";
import { form, lines } from "./fields.js";

/** The step around a letter: where its heading, its ticket and its end are. */
export function stepAt(text, at) {
  const heads = [...text.matchAll(/^## .*$/gm)].map((found) => found.index);
  const start = heads.filter((head) => head <= at).pop();
  if (start === undefined) return null;
  const end = heads.find((head) => head > start) ?? text.length;
  const part = text.slice(start, end);
  const found = part.match(/^(~{3,}|`{3,})\s*ticket[ \t]*\n([\s\S]*?)^\1[ \t]*$/m);
  const rows = found && start + found.index + found[0].indexOf("\n") + 1;
  return { start, end, after: start + part.indexOf("\n") + 1 || end, rows, close: found && rows + found[2].length };
}

/** Writes a row of a step's ticket: over the one of that key, or as a new one. */
export function row(editor, key, value, at = editor.caret()) {
  const text = editor.text();
  const step = stepAt(text, at);
  if (!step) return false;
  if (step.rows === null) { editor.change(step.after, step.after, `~~~ticket\n${key}: ${value}\n~~~\n`); return true; }
  const found = text.slice(step.rows, step.close).match(new RegExp(`^${key}:.*\\n`, "m"));
  const from = found ? step.rows + found.index : step.close;
  editor.change(from, found ? from + found[0].length : from, value ? `${key}: ${value}\n` : "");
  return true;
}

const ROWS = [
  ["hands", "12 min"], ["wait", "90 min (75 min to 2 h)"], ["where", "bench"], ["at", "22 °C"], ["uses", "dough"],
  ["sheet", "60 x 20 cm"], ["lock-in", "envelope"], ["turn", "book"], ["bake", "230 °C, 35 min"], ["core", "96 °C"], ["until", ""],
];

/** Asks for a step and writes it behind the one at the caret. */
export async function step(editor) {
  const fields = [{ key: "title", label: "desk-field-step", needed: true }, ...ROWS.map(([key, hint]) => ({ key, label: `desk-row-${key}`, hint })), { key: "prose", label: "desk-field-prose", kind: "lines" }];
  const open = form(fields);
  if (!await ask(word("desk-step"), [open.body], word("desk-step-do"))) { editor.focus(); return; }
  const said = open.read();
  const text = editor.text();
  const at = stepAt(text, editor.caret())?.end ?? text.length;
  const ticket = ROWS.filter(([key]) => said[key]).map(([key]) => `${key}: ${said[key]}\n`).join("");
  const before = text.slice(0, at).endsWith("\n\n") || !at ? "" : text.slice(0, at).endsWith("\n") ? "\n" : "\n\n";
  const prose = lines(said.prose).join("\n\n");
  editor.change(at, at, `${before}## ${said.title}\n${ticket ? `~~~ticket\n${ticket}~~~\n` : ""}${prose ? `${prose}\n` : ""}${text.slice(at) ? "\n" : ""}`);
  editor.focus();
}

const CUTS = {
  triangles: ["base", "height"], rectangles: ["long", "wide"], squares: ["side"], rounds: ["across"], strips: ["wide"],
};
const SIZES = { base: 10, height: 24, long: 12, wide: 8, side: 10, across: 7 };

function cutOf(said) {
  const { kind } = said;
  if (kind === "triangles") return `triangles, base ${said.base} cm, height ${said.height} cm`;
  if (kind === "rectangles") return `rectangles ${said.long} x ${said.wide} cm`;
  return `${kind} ${said[CUTS[kind][0]]} cm`;
}

/** The cut of the step at the caret, in fields beside the page: the drawing there moves as
 *  the sizes change. */
export function cut(editor, place) {
  const spot = editor.caret();
  if (!stepAt(editor.text(), spot)) { tell(word("desk-cut"), [make("p", { textContent: word("desk-no-step") })]); return; }
  const offers = Object.keys(CUTS).map((kind) => [kind, word(`desk-cut-${kind}`)]);
  const rest = make("div", { className: "fields" });
  const head = form([{ key: "sheet", label: "desk-row-sheet", hint: "57 x 25 cm" }, { key: "kind", label: "desk-cut-kind", kind: "choice", offers }], () => { sizes(); write(); });
  let open = null;
  const write = () => {
    const said = { ...head.read(), ...open.read() };
    if (!Object.values(open.read()).every(Boolean)) return;
    row(editor, "cut", cutOf(said), spot);
    if (said.sheet) row(editor, "sheet", said.sheet, spot);
  };
  let kind = "";
  const sizes = () => {
    if (kind === head.read().kind) return;
    kind = head.read().kind;
    open = form(CUTS[kind].map((key) => ({ key, label: `desk-size-${key}`, kind: "number", value: String(SIZES[key]) })), write);
    rest.replaceChildren(open.body);
  };
  sizes();
  const end = make("button", { type: "button", className: "quiet", textContent: word("desk-close") });
  end.addEventListener("click", () => { place.replaceChildren(); place.hidden = true; editor.focus(); });
  place.replaceChildren(make("h2", { textContent: word("desk-cut") }), head.body, rest, end);
  place.hidden = false;
  place.querySelector("input").focus();
  const sheet = editor.text().slice(stepAt(editor.text(), spot)?.rows ?? 0).match(/^sheet: (.*)$/m);
  if (sheet) place.querySelector("input").value = sheet[1];
  write();
}
