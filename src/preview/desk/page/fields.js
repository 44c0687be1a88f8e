// Fields of a form, each with its words.
import { make, word } from "./calls.js";

/** A field and its label: `{ key, label, kind, value, hint, needed, offers, set }`. */
function field(one) {
  const id = `field-${one.key}`;
  const about = { id, name: one.key, value: one.value ?? "", required: Boolean(one.needed) };
  let input;
  if (one.kind === "lines") input = make("textarea", { ...about, rows: one.rows ?? 5 });
  else if (one.kind === "choice") {
    input = make("select", { id, name: one.key }, ...one.offers.map(([value, text]) => make("option", { value, text })));
    if (one.value) input.value = one.value;
  } else input = make("input", { ...about, type: one.kind ?? "text" });
  if (one.hint) input.placeholder = one.hint;
  return make("label", { htmlFor: id }, make("span", { textContent: word(one.label) }), input);
}

/** A form of such fields; `read` gives what stands in them. */
export function form(fields, onInput = () => {}) {
  const body = make("div", { className: "fields" }, ...fields.map(field));
  const read = () => Object.fromEntries([...body.querySelectorAll("input, select, textarea")].map((it) => [it.name, it.value.trim()]));
  body.addEventListener("input", () => onInput(read()));
  return { body, read };
}

/** The lines of a field, without empty ones. */
export const lines = (text) => text.split("\n").map((line) => line.trim()).filter(Boolean);

/** A name as files of a course have them. */
export const plain = (title) => title.normalize("NFKD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");

/** A value of YAML as it can stand behind a key. */
export const yaml = (text) => (/^[\p{L}\p{N}][^:#\n]*$/u.test(text) && !/^(?:true|false|yes|no|null|~|[\d.,]+)$/i.test(text) ? text : JSON.stringify(text));
