// A picture that is dropped, pasted or chosen: words for it are asked for, and it is put into
// the step at the caret.
import { call, make, word } from "./calls.js";
import { ask, tell } from "./dialog.js";
import { form } from "./fields.js";
import { row } from "./step.js";

async function take(editor, file, spot) {
  const shown = make("img", { src: URL.createObjectURL(file), alt: "" });
  const open = form([{ key: "words", label: "desk-field-words", needed: true }]);
  if (!await ask(word("desk-picture"), [make("p", { textContent: word("desk-picture-about") }), shown, open.body], word("desk-picture-do"))) return;
  const words = open.read().words.replace(/\s+/g, " ");
  try {
    const { name } = await call(`picture/${encodeURIComponent(file.name || "picture")}`, file);
    if (!row(editor, "picture", `${name}, ${words}`, spot)) editor.change(spot, spot, `![${words.replace(/[[\]]/g, "")}](../media/${name})`);
  } catch (why) {
    tell(word("desk-picture"), [make("p", { textContent: why.message })]);
  }
  URL.revokeObjectURL(shown.src);
  editor.focus();
}

const pictures = (data) => [...(data?.files ?? [])].filter((file) => /^image\//.test(file.type));

/** Takes pictures that come to the text. */
export function pictured(editor, place, choosers) {
  const all = async (files, spot) => { for (const file of files) await take(editor, file, spot); };
  const heard = (event) => {
    const files = pictures(event.dataTransfer ?? event.clipboardData);
    if (!files.length) return;
    event.preventDefault();
    event.stopPropagation();
    const spot = event.dataTransfer ? editor.view.posAtCoords({ x: event.clientX, y: event.clientY }) : null;
    all(files, spot ?? editor.caret());
  };
  place.addEventListener("drop", heard, true);
  place.addEventListener("paste", heard, true);
  place.addEventListener("dragover", (event) => { if (event.dataTransfer?.types.includes("Files")) event.preventDefault(); }, true);
  for (const [button, chooser] of choosers) {
    button.addEventListener("click", () => chooser.click());
    chooser.addEventListener("change", () => { const files = [...chooser.files]; chooser.value = ""; all(files, editor.caret()); });
  }
}
