// The desk: one text in the editor, what it makes beside it, its faults below.
import { at, call, make, word } from "./calls.js";
import { ask, tell } from "./dialog.js";
import { faults } from "./faults.js";
import { phrases } from "./phrases.js";
import * as drafts from "./drafts.js";
import * as view from "./view.js";
import { begin } from "./begin.js";
import { lesson } from "./class.js";
import { commits } from "./commits.js";
import { earlier } from "./earlier.js";
import { explains, offers } from "./offers.js";
import { pictured } from "./picture.js";
import { publish } from "./publish.js";
import { cut, step } from "./step.js";
import { swap } from "./swap.js";

// Letters that come closer together are sent as one.
const PAUSE = 20;
const state = at("state");
const text = { path: "", mark: null, saved: "", outline: [] };
let version = 0;
let busy = false;
let due = null;
let opening = 0;

for (const node of document.querySelectorAll("[data-word]")) node.textContent = word(node.dataset.word);
for (const node of document.querySelectorAll("[data-label]")) node.setAttribute("aria-label", word(node.dataset.label));

const editor = window.tourierEditor.create(at("editor"), {
  typed() { version += 1; document.body.dataset.typed = String(version); look(); later(); },
  moved: reveal,
  offers: (now, at) => offers(text.path, now, at),
  explains: (now, at) => explains(text.path, now, at),
}, phrases());

/** Has the page show the step of a line. */
function reveal(line) {
  const above = text.outline.filter((step) => step.line <= line).pop();
  if (above) view.reveal(above.name);
}

/** Whether the text is saved, said and kept for a reload. */
function look() {
  const off = editor.text() !== text.saved;
  state.textContent = word(off ? "desk-unsaved" : "desk-saved");
  state.classList.toggle("off", off);
  at("save").disabled = !off;
  return off;
}

/** Sends what is typed as soon as the answer before is there. */
function later() {
  clearTimeout(due);
  due = setTimeout(send, PAUSE);
}

async function send() {
  if (busy || !text.path) return;
  busy = true;
  const sent = version;
  const path = text.path;
  drafts.keep(text, editor);
  try {
    const answer = await call("type", { path, texts: { [path]: editor.text() } });
    if (path === text.path) took(answer, sent === version);
  } catch (why) {
    say(why.message);
  }
  busy = false;
  if (sent !== version || path !== text.path) later();
}

function took(answer, newest) {
  if (answer.outline) text.outline = answer.outline;
  if (newest) faults(editor, text.path, answer.findings, open);
  if (answer.edition === null) view.none();
  else {
    // There may have been no theme yet when the desk was opened.
    const theme = `/.preview/typed/${answer.edition}/assets/tourier.css`;
    if (!at("theme").sheet) at("theme").href = theme;
    view.show(answer.edition, view.pageOf(text.path));
  }
  if (newest) document.body.dataset.seen = String(version);
}

function say(message) {
  state.textContent = message;
  state.classList.add("off");
}

/** Saves; what somebody else wrote meanwhile is shown beside it and never written over. */
async function save() {
  const { path } = text;
  const mine = editor.text();
  state.textContent = word("desk-saving");
  try {
    const answer = await call("save", { path, text: mine, mark: text.mark });
    if (path !== text.path) return;
    if (answer.status === 409) { await both(answer, mine); return; }
    Object.assign(text, { mark: answer.mark, saved: mine });
    drafts.keep(text, editor);
    look();
    commits();
  } catch (why) {
    say(why.message);
  }
}

/** What stands on the disk and what is typed, side by side: what is kept is chosen here. */
async function both(stands, mine) {
  const sided = make("div", { className: "sided" });
  const about = make("p", { textContent: word("desk-other") });
  const pair = window.tourierEditor.beside(sided, text.path, stands.text ?? "", mine, phrases());
  const kept = await ask(word("desk-other-head"), [about, sided], word("desk-take-both"));
  const chosen = pair.text();
  pair.close();
  if (!kept) { look(); return; }
  Object.assign(text, { mark: stands.mark, saved: stands.text ?? "" });
  editor.replace(chosen);
  await save();
}

/** Opens a text, as it was left where it was left unsaved. */
async function open(path, spot) {
  opening += 1;
  if (path !== text.path) {
    const asked = opening;
    const stands = await call("open", { path });
    // Another one was chosen meanwhile.
    if (asked !== opening) return;
    drafts.keep(text, editor);
    const left = drafts.left(path);
    Object.assign(text, { path, mark: stands.mark, saved: stands.text ?? "", outline: [] });
    at("texts").value = path;
    at("class").hidden = !/^classes\/[^/]+\.yaml$/.test(path);
    at("swap").hidden = !/^recipes\/[^/]+\.md$/.test(path);
    const unsaved = left && left.text !== text.saved;
    const same = unsaved && left.mark === stands.mark;
    editor.open(path, same ? left.text : text.saved, left?.state);
    version += 1;
    Object.assign(document.body.dataset, { typed: String(version), path });
    look();
    send();
    if (unsaved && !same) await both(stands, left.text);
  }
  if (spot) editor.go(spot);
}

/** The texts of the course, to choose from. */
async function list(chosen) {
  const { texts } = await call("texts");
  const groups = new Map();
  for (const path of texts) {
    const folder = path.includes("/") ? path.slice(0, path.lastIndexOf("/")) : "";
    groups.set(folder, [...(groups.get(folder) ?? []), path]);
  }
  const option = (path) => make("option", { value: path, text: path.slice(path.lastIndexOf("/") + 1) });
  const group = ([folder, paths]) => (folder ? make("optgroup", { label: folder }, ...paths.map(option)) : paths.map(option));
  at("texts").replaceChildren(...[...groups].map(group).flat());
  return chosen ?? textOf(texts) ?? drafts.last(texts) ?? texts.find((path) => path.startsWith("recipes/")) ?? texts[0];
}

/** The text of the page that the desk was come by from. */
function textOf(texts) {
  const of = new URLSearchParams(location.search).get("of");
  return of === null ? undefined : texts.find((path) => of && view.pageOf(path) === of.replace(/index\.html$/, ""));
}

/** Which side is seen where there is room for one. */
function side(page) {
  document.body.classList.toggle("sees-page", page);
  at("side-page").setAttribute("aria-pressed", String(page));
  at("side-text").setAttribute("aria-pressed", String(!page));
}

at("view").addEventListener("shown", () => reveal(editor.line()));
view.onStep((name) => {
  const step = text.outline.find((one) => one.name === name);
  if (step) { side(false); editor.go({ line: step.line }); }
});
at("texts").addEventListener("change", (event) => {
  open(event.target.value).catch((why) => { event.target.value = text.path; say(why.message); });
});
at("save").addEventListener("click", save);
at("earlier").addEventListener("click", () => earlier(text.path, editor));
at("new").addEventListener("click", async () => {
  try {
    const path = await begin([...at("texts").options].map((option) => option.value));
    if (!path) return;
    await list(path);
    await open(path, { at: 0 });
  } catch (why) { say(why.message); }
});
at("step").addEventListener("click", () => step(editor));
at("cut").addEventListener("click", () => cut(editor, at("panel")));
at("swap").addEventListener("click", () => swap(editor));
at("class").addEventListener("click", () => lesson(editor, [...at("texts").options].map((option) => option.value)));
at("publish").addEventListener("click", () => publish(look()));
pictured(editor, at("editor"), [[at("picture"), at("chooser")], [at("camera"), at("lens")]]);
commits();
at("side-text").addEventListener("click", () => side(false));
at("side-page").addEventListener("click", () => side(true));
document.addEventListener("keydown", (event) => {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s") { event.preventDefault(); save(); }
});
window.addEventListener("beforeunload", (event) => {
  drafts.keep(text, editor);
  if (look()) event.preventDefault();
});
// What others save is seen: a text that nothing was typed into follows the disk.
new EventSource("/.preview/events").addEventListener("message", async () => {
  const { path } = text;
  if (!path) return;
  const stands = await call("open", { path }).catch(() => null);
  if (!stands || path !== text.path || stands.mark === text.mark) return;
  if (editor.text() !== text.saved) { say(word("desk-other-head")); return; }
  Object.assign(text, { mark: stands.mark, saved: stands.text ?? "" });
  editor.replace(text.saved);
});

list().then(open).catch((why) => { say(why.message); tell(word("desk-title"), [make("p", { textContent: why.message })]); });
