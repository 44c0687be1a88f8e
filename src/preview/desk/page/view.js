// What the text makes, beside it: the page of the text, or what is printed of it. A newer
// state is loaded behind the one that is seen and takes its place where that was scrolled to.
import { at, make, word } from "./calls.js";

const view = at("view");
const views = at("views");
let edition = null;
let page = "";
let shown = { path: "", frame: null };
let coming = null;
let wanted = "";
const hear = { step: () => {} };

/** The page that a text makes, below the site. */
export function pageOf(path) {
  const found = path.match(/^(recipes|techniques|classes)\/([^/]+)\.(md|yaml)$/);
  // Of a class the page that is the instructor's has the plan.
  if (found) return `${found[1] === "classes" ? "instructor/" : ""}${found[1]}/${found[2]}/`;
  return path === "glossary.yaml" ? "words/" : "";
}

// The sides of what is printed stand as pictures below its name.
const address = (path) => `/.preview/typed/${edition}/${path}${path.endsWith(".pdf") ? "/" : ""}`;

/** The handouts that the page names, by its own words. */
function offer(frame) {
  const links = [...frame.contentDocument.querySelectorAll('a[href$=".pdf"]')];
  const base = new URL(address(""), location).pathname;
  const found = new Map([[page, word("desk-page")]]);
  for (const link of links) {
    const path = decodeURIComponent(new URL(link.href).pathname);
    if (path.startsWith(base)) found.set(path.slice(base.length), (link.getAttribute("aria-label") || link.textContent).trim());
  }
  const now = views.value;
  views.replaceChildren(...[...found].map(([value, text]) => make("option", { value, text })));
  views.value = found.has(now) ? now : page;
}

/** Has the sides made of what is printed: first those that are seen, and all the others after them. */
async function sides(frame) {
  const all = [...frame.contentDocument.querySelectorAll("img[data-side]")];
  const take = (side) => { side.src = side.dataset.side; side.removeAttribute("data-side"); return side.decode().catch(() => {}); };
  const seen = ({ top, bottom }) => bottom > 0 && top < frame.contentWindow.innerHeight;
  await Promise.all(all.filter((side) => seen(side.getBoundingClientRect())).map(take));
  return () => all.filter((side) => side.dataset.side).forEach(take);
}

async function settled(frame, path) {
  const old = shown.frame;
  const same = shown.path === path && old?.contentWindow;
  let others = null;
  if (frame.contentDocument) {
    const back = () => frame.contentWindow.scrollTo({ top: same ? old.contentWindow.scrollY : 0, behavior: "instant" });
    back();
    if (path === page) offer(frame);
    if (path.endsWith(".pdf")) { others = await sides(frame); back(); }
  }
  frame.className = "";
  old?.remove();
  shown = { path, frame };
  at("paper").hidden = !path.endsWith(".pdf");
  at("paper").href = frame.dataset.paper;
  coming = null;
  others?.();
  view.dispatchEvent(new CustomEvent("shown"));
  if (wanted) { const next = wanted; wanted = ""; load(next); }
}

function load(path) {
  if (coming) { wanted = path; return; }
  const frame = make("iframe", { className: "next", title: word("desk-seen"), src: address(path) });
  // The edition may be another one when it is there.
  frame.dataset.paper = address(path).replace(/\/$/, "");
  coming = frame;
  frame.addEventListener("load", () => settled(frame, path), { once: true });
  view.querySelectorAll("p").forEach((it) => it.remove());
  view.append(frame);
}

/** Shows what is chosen as the newest edition has it. */
export function show(newest, path = page) {
  const fresh = path !== page;
  edition = newest;
  page = path;
  if (fresh) views.replaceChildren(make("option", { value: page, text: word("desk-page") }));
  if (edition !== null) load(views.value || page);
}

/** Says that there is nothing to see yet. */
export function none() {
  if (!shown.frame && !coming) view.replaceChildren(make("p", { textContent: word("desk-nothing") }));
}

/** Has the page show a step. */
export function reveal(step) {
  shown.frame?.contentWindow?.postMessage({ desk: "show", step }, location.origin);
}

/** Hears which step is tapped. */
export function onStep(listener) { hear.step = listener; }

views.addEventListener("change", () => load(views.value));
window.addEventListener("message", (event) => {
  if (event.origin !== location.origin || event.source !== shown.frame?.contentWindow) return;
  if (event.data?.desk === "step") hear.step(event.data.step);
});
