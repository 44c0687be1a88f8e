// What is typed and not yet saved, with all that can be undone, kept in this browser across
// a reload.

const name = (path) => `desk-text ${path}`;

/** Keeps a text as it stands in the editor. */
export function keep(text, editor) {
  if (!text.path) return;
  const left = { mark: text.mark, text: editor.text(), state: editor.state() };
  const keep = (what) => localStorage.setItem(name(text.path), JSON.stringify(what));
  // Where there is no room for all that can be undone, there is some for the text.
  try { keep(left); } catch { try { keep({ ...left, state: undefined }); } catch { /* full */ } }
  try { localStorage.setItem("desk-last", text.path); } catch { /* full */ }
}

/** A text as it was left; nothing where it never was open here. */
export function left(path) {
  try { return JSON.parse(localStorage.getItem(name(path))); } catch { return null; }
}

/** The text that was open last, if there still is one. */
export function last(texts) {
  const path = localStorage.getItem("desk-last");
  return texts.includes(path) ? path : undefined;
}
