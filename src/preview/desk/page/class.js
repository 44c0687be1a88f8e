// A class that exists, in fields: what stands there is shown, and what is changed is written back, line by line.
import { call, make, word } from "./calls.js";
import { insist, tell } from "./dialog.js";
import { form, lines } from "./fields.js";

const WORK = ["alone", "pairs", "threes", "fours", "fives"];
const EACH = { alone: "baker", pairs: "pair", threes: "three", fours: "four", fives: "five" };

// The keys of the text, by the names of their fields.
const ONE = { title: "title", bakers: "bakers", work: "work in", spare: "spare" };
const MANY = { sessions: "sessions", kit: "kit", shelf: "on the shelf" };

/** What may be chosen, with what stands there even where it is none of it. */
const choice = (all, stands) => [...new Set([...all, stands ?? ""])].map((one) => [one, one]);

function fields(stands) {
  const one = (key, about = {}) => (ONE[key] in stands ? [{ key, label: `desk-field-${key}`, value: stands[ONE[key]], ...about }] : []);
  const many = (key, about = {}) => (MANY[key] in stands ? [{ key, label: `desk-field-${key}`, kind: "lines", value: stands[MANY[key]].join("\n"), ...about }] : []);
  return {
    first: [
      ...one("title", { needed: true }),
      ...many("sessions", { rows: 3, hint: "2027-03-02 18:00 to 21:00", needed: true }),
      ...one("bakers", { needed: true }),
      ...one("work", { kind: "choice", offers: choice(WORK, stands["work in"] || "pairs") }),
    ],
    last: [
      ...many("kit", { hint: "mixer: 3\noven: 2\ntray per oven: 3" }),
      ...one("spare", { hint: "5 %" }),
      ...many("shelf", { rows: 3, hint: "butter: 500 g" }),
    ],
  };
}

/** The fields of one thing that is made. */
function making(row, recipes, work) {
  return form([
    { key: "recipe", label: "desk-field-recipe", kind: "choice", value: row.recipe, offers: choice(["", ...recipes], row.recipe) },
    { key: "each", label: "desk-field-each", kind: "choice", value: row.each, offers: choice(["", EACH[work] ?? "group", "group", "baker", "demonstration"], row.each) },
    { key: "pieces", label: "desk-field-pieces", value: row.pieces },
    { key: "batches", label: "desk-field-batches", value: row.batches },
    { key: "with", label: "desk-field-with", value: row.with },
  ]);
}

/** What is made, thing by thing; another one can be added. */
function makings(stands, recipes, work) {
  const group = make("fieldset", {}, make("legend", { textContent: word("desk-field-makes-class") }));
  const rows = [];
  const more = make("button", { type: "button", className: "quiet", id: "making-more", textContent: word("desk-making-more") });
  const add = (row) => {
    const one = making(row, recipes, work);
    // Each field has a name of its own in the page.
    for (const label of one.body.querySelectorAll("label")) {
      label.htmlFor += `-${rows.length}`;
      label.lastChild.id = label.htmlFor;
    }
    rows.push(one);
    more.before(one.body);
    return one;
  };
  group.append(more);
  stands.forEach(add);
  more.addEventListener("click", () => add({}).body.querySelector("select").focus());
  return { body: group, read: () => rows.map((one) => one.read()) };
}

/** The stretch in which two texts differ. */
function between(old, text) {
  const shorter = Math.min(old.length, text.length);
  let from = 0;
  while (from < shorter && old[from] === text[from]) from += 1;
  let behind = 0;
  while (behind < shorter - from && old.at(-1 - behind) === text.at(-1 - behind)) behind += 1;
  return [from, old.length - behind, text.slice(from, text.length - behind)];
}

/** Shows what stands in the class, and writes what is changed. */
export async function lesson(editor, texts) {
  const text = editor.text();
  let stands;
  try {
    stands = await call("form", { text });
  } catch (why) {
    tell(word("desk-class"), [make("p", { textContent: why.message })]);
    return;
  }
  const recipes = texts.filter((path) => /^recipes\/[^/]+\.md$/.test(path)).map((path) => path.slice(8, -3));
  const { first, last } = fields(stands.fields);
  const [above, below] = [form(first), form(last)];
  const made = stands.fields.makes ? makings(stands.fields.makes, recipes, stands.fields["work in"] || "pairs") : null;
  const body = [above.body, ...(made ? [made.body] : []), below.body];
  if (stands.beyond.length) body.push(make("p", { textContent: word("desk-form-beyond", { keys: stands.beyond.join(", ") }) }));
  const written = await insist(word("desk-class"), body, word("desk-class-do"), async () => {
    const read = { ...above.read(), ...below.read() };
    const said = made ? { makes: made.read() } : {};
    for (const [name, key] of Object.entries(ONE)) if (name in read) said[key] = read[name];
    for (const [name, key] of Object.entries(MANY)) if (name in read) said[key] = lines(read[name]);
    // What nobody said stays unsaid.
    if (!stands.fields["work in"] && said["work in"] === "pairs") said["work in"] = "";
    // The text follows the disk while the fields are filled in.
    if (editor.text() !== text) throw new Error(word("desk-form-other"));
    return (await call("fill", { text, fields: said })).text;
  });
  if (written !== null && written !== text) editor.change(...between(text, written));
  editor.focus();
}
