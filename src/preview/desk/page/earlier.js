// Saves that are kept: each beside what stands in the editor, with what differs in a reader's
// words, to be brought back.
import { call, make, word } from "./calls.js";
import { differs } from "./differs.js";
import { ask } from "./dialog.js";

const when = (time) => new Date(time).toLocaleString(document.documentElement.lang);

/** Offers the earlier saves of the text. */
export async function earlier(path, editor) {
  const kept = (await call("earlier", { path })).earlier;
  const list = make("ul", { className: "kept" });
  const shown = make("div", { ariaLive: "polite" });
  let chosen = null;
  const choose = async (one, button) => {
    list.querySelectorAll("button").forEach((it) => it.setAttribute("aria-pressed", String(it === button)));
    chosen = (await call("back", { path, name: one.name })).text;
    shown.replaceChildren(...await told(path, editor.text(), chosen));
  };
  for (const one of kept) {
    const button = make("button", { type: "button", className: "quiet", textContent: when(one.time) });
    button.setAttribute("aria-pressed", "false");
    button.addEventListener("click", () => choose(one, button));
    list.append(make("li", {}, button));
  }
  const about = make("p", { textContent: word(kept.length ? "desk-earlier-about" : "desk-earlier-none") });
  const back = await ask(word("desk-earlier"), [about, list, shown], kept.length ? word("desk-back") : null);
  if (back && chosen !== null) editor.replace(chosen);
  editor.focus();
}

/** What would change with it. */
async function told(path, old, chosen) {
  if (old === chosen) return [make("p", { textContent: word("desk-same") })];
  return differs(await call("differs", { path, old, new: chosen }));
}
