// What may be written at the caret, and what the word there is, as the program knows it.
import { call } from "./calls.js";

/** What may be written at a letter. */
export async function offers(path, text, at) {
  const { offers: all } = await call("offers", { path, text, at }).catch(() => ({ offers: [] }));
  if (!all?.length) return null;
  const from = Math.min(...all.map((one) => one.from));
  const option = (one, place) => ({
    label: one.label, detail: one.about ?? undefined, boost: Math.max(-99, 99 - place),
    apply: (view, _, start, end) => {
      const insert = one.text;
      view.dispatch({ changes: { from: one.from, to: Math.max(end, one.to), insert }, selection: { anchor: one.from + insert.length } });
    },
  });
  return { from, options: all.map(option) };
}

/** What the word at a letter is. */
export async function explains(path, text, at) {
  const said = await call("explains", { path, text, at }).catch(() => null);
  return said?.lines?.length ? said : null;
}
