// Publishing: how far it has come, and what was made.
import { call, make, word } from "./calls.js";
import { differs } from "./differs.js";
import { ask } from "./dialog.js";

const LOOK = 250;

/** Publishes what is saved. */
export async function publish(unsaved) {
  const about = make("p", { textContent: word(unsaved ? "desk-publish-unsaved" : "desk-publish-about") });
  const change = make("div", { ariaLive: "polite" });
  const told = call("would-change").then(differs, (why) => [make("p", { textContent: why.message })]);
  told.then((lines) => change.replaceChildren(...lines));
  const head = make("h3", { textContent: word("desk-would-change") });
  if (!await ask(word("desk-publish"), [about, head, change], word("desk-publish-do"))) return;
  const bar = make("progress", { max: 1, value: 0, ariaLabel: word("desk-publish") });
  const said = make("ul", { role: "status" });
  const over = ask(word("desk-publish"), [bar, said], null);
  let open = true;
  over.then(() => { open = false; });
  try {
    let now = await call("publish");
    while (now.running && open) {
      if (now.all) { bar.max = now.all; bar.value = now.done; }
      await new Promise((ready) => setTimeout(ready, LOOK));
      now = await call("progress");
    }
    if (now.running) return;
    bar.max = 1;
    bar.value = now.stands ? 1 : 0;
    said.replaceChildren(...now.said.map((line) => make("li", { textContent: line })));
  } catch (why) {
    said.replaceChildren(make("li", { textContent: why.message }));
  }
}
