// What is not yet committed, where the course lies in a git repository. It is only shown.
import { at, call, make, word } from "./calls.js";
import { tell } from "./dialog.js";

const button = at("uncommitted");
let files = [];

/** Asks again what is not committed; nothing is shown where there is no repository. */
export async function commits() {
  try {
    files = (await call("uncommitted")).files ?? [];
  } catch {
    files = [];
  }
  button.hidden = !files.length;
  button.textContent = word("desk-uncommitted", { count: files.length });
}

button.addEventListener("click", () => {
  const one = ({ path, stands }) => make("li", { textContent: `${path} (${stands})` });
  const about = make("p", { textContent: word("desk-uncommitted-about") });
  tell(word("desk-uncommitted", { count: files.length }), [about, make("ul", {}, ...files.map(one))]);
});
