// A text that is new: a recipe, a technique or a class, from a few answers, as ordinary text.
import { call, make, word } from "./calls.js";
import { insist } from "./dialog.js";
import { form, lines, plain, yaml } from "./fields.js";

const FOLDERS = { recipe: ["recipes", "md"], technique: ["techniques", "md"], class: ["classes", "yaml"] };

const recipe = [
  { key: "title", label: "desk-field-title", needed: true },
  { key: "summary", label: "desk-field-summary", needed: true },
  { key: "makes", label: "desk-field-makes", hint: "12 rolls", needed: true },
  { key: "formula", label: "desk-field-formula", kind: "lines", hint: "500 g bread flour\n340 g water\n10 g fine salt", needed: true },
  { key: "steps", label: "desk-field-steps", kind: "lines" },
];
const technique = recipe.slice(0, 2);
const lesson = (recipes) => [
  recipe[0],
  { key: "sessions", label: "desk-field-sessions", kind: "lines", rows: 2, hint: "2027-03-02 18:00 to 21:00", needed: true },
  { key: "bakers", label: "desk-field-bakers", kind: "number", value: "8", needed: true },
  { key: "work", label: "desk-field-work", kind: "choice", offers: [["pairs", "pairs"], ["alone", "alone"]] },
  { key: "recipe", label: "desk-field-recipe", kind: "choice", offers: recipes.map((name) => [name, name]) },
  { key: "pieces", label: "desk-field-pieces", kind: "number", value: "12", needed: true },
  { key: "kit", label: "desk-field-kit", value: "mixer: 3, oven: 2, tray per oven: 3, fridge tray: 8, proofer tray: 8, instructor: 1" },
];

const head = (said) => `---\ntitle: ${yaml(said.title)}\nsummary: ${yaml(said.summary)}\n`;

const WRITE = {
  recipe(said) {
    const formula = lines(said.formula).map((line) => `    - ${line}\n`).join("");
    const steps = lines(said.steps).map((step, at) => `\n## ${step}\n~~~ticket\n${at ? "" : "uses: dough\n"}hands: 5 min\n~~~\n`).join("");
    return `${head(said)}makes: ${yaml(said.makes)}\nformula:\n  dough:\n${formula}---\n${steps}`;
  },
  technique: (said) => `${head(said)}---\n\n`,
  class(said) {
    const sessions = lines(said.sessions).map((line) => `  - ${line}\n`).join("");
    const each = said.work === "pairs" ? "pair" : "baker";
    return `title: ${yaml(said.title)}\nsessions:\n${sessions}bakers: ${said.bakers}\nwork in: ${said.work}\nmakes:\n  - recipe: ${said.recipe}\n    each: ${each}\n    pieces: ${said.pieces}\nkit: { ${said.kit} }\n`;
  },
};

/** Asks what is to be begun, and begins it: the path of the new text. */
export async function begin(texts) {
  const recipes = texts.filter((path) => /^recipes\/[^/]+\.md$/.test(path)).map((path) => path.slice(8, -3));
  const kinds = { recipe, technique, class: lesson(recipes) };
  const offers = Object.keys(kinds).map((kind) => [kind, word(`desk-kind-${kind}`)]);
  const kind = form([{ key: "kind", label: "desk-kind", kind: "choice", offers }], () => fill());
  const rest = make("div");
  let open = null;
  const fill = () => { open = form(kinds[kind.read().kind]); rest.replaceChildren(open.body); };
  fill();
  return insist(word("desk-begin"), [kind.body, rest], word("desk-begin-do"), () => {
    const chosen = kind.read().kind;
    return place(texts, chosen, open.read());
  });
}

/** Puts a new text where there is none: its path. */
async function place(texts, chosen, said) {
  const [folder, ending] = FOLDERS[chosen];
  const text = WRITE[chosen](said);
  const taken = [...texts];
  for (;;) {
    const path = free(taken, folder, plain(said.title) || chosen, ending);
    const { status } = await call("save", { path, text, mark: null });
    if (status !== 409) return path;
    // Somebody took that name meanwhile.
    taken.push(path);
  }
}

/** The first name that no text has yet. */
function free(texts, folder, stem, ending) {
  for (let count = 1; ; count += 1) {
    const path = `${folder}/${stem}${count > 1 ? `-${count}` : ""}.${ending}`;
    if (!texts.includes(path)) return path;
  }
}
