// The faults of the course: at their places in the text, and in a list below it.
import { at, make, word } from "./calls.js";

/** Shows them; `open(path, spot)` goes to one in another text. */
export function faults(editor, path, all, open) {
  const here = all.filter((one) => one.file === path);
  editor.mark(here.map((one) => ({
    from: one.from, to: one.to, severity: one.severity === "error" ? "error" : "warning",
    message: one.help ? `${one.message}\n${one.help}` : one.message,
    actions: (one.mendings ?? []).map((mend) => ({ name: mend.said, apply: () => put(editor, mend) })),
  })));
  const errors = all.filter((one) => one.severity === "error").length;
  const counted = [["desk-errors", errors], ["desk-cautions", all.length - errors]];
  const said = counted.filter(([, count]) => count).map(([key, count]) => word(key, { count }));
  at("faults-head").textContent = said.length ? said.join(" · ") : word("desk-sound");
  const grave = (one) => (one.severity === "error" ? 0 : 1);
  const order = [...here, ...all.filter((one) => one.file !== path)].sort((one, other) => grave(one) - grave(other));
  at("faults").replaceChildren(...order.slice(0, 50).map((one) => line(editor, path, one, open)));
}

function put(editor, mend) {
  editor.change(mend.from, mend.to, mend.text);
  editor.focus();
}

function line(editor, path, one, open) {
  const place = one.file === path ? word("desk-line", { line: one.line }) : `${one.file}:${one.line}`;
  const where = make("button", { type: "button", className: "where", textContent: `${place} ${one.message}` });
  where.addEventListener("click", () => (one.file ? open(one.file, { at: one.from }) : null));
  const parts = [where];
  if (one.help) parts.push(make("p", { className: "help", textContent: one.help }));
  if (one.file === path) {
    for (const mend of one.mendings ?? []) {
      const button = make("button", { type: "button", className: "quiet mend", textContent: mend.said });
      button.addEventListener("click", () => put(editor, mend));
      parts.push(button);
    }
  }
  return make("li", { className: `told-${one.severity}` }, ...parts);
}
