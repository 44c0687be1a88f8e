// Questions and remarks over the desk.
import { at, make } from "./calls.js";

const dialog = at("dialog");
const button = at("dialog-do");
let answer = null;

function open(head, body, doing) {
  at("dialog-head").textContent = head;
  at("dialog-body").replaceChildren(...body);
  button.hidden = !doing;
  button.textContent = doing ?? "";
  if (!dialog.open) dialog.showModal();
}

/** Asks something: whether it is to be done. */
export function ask(head, body, doing) {
  open(head, body, doing);
  return new Promise((ready) => { answer = ready; });
}

/** Asks until `act` is done, with what was filled in, or until it is not wanted: what `act` gives, or null. */
export async function insist(head, body, doing, act) {
  const why = make("p", { className: "why" });
  why.setAttribute("role", "alert");
  while (await ask(head, [...body, why], doing)) {
    try { return await act(); } catch (undone) { why.textContent = undone.message; }
  }
  return null;
}

/** Shows something. */
export function tell(head, body) {
  open(head, body, null);
}

/** Closes what is open. */
export function close(done = false) {
  const ready = answer;
  answer = null;
  if (dialog.open) dialog.close();
  ready?.(done);
}

button.addEventListener("click", () => {
  const fields = [...dialog.querySelectorAll("input, select, textarea")];
  if (fields.every((field) => field.reportValidity())) close(true);
});
// It may have been opened again since.
dialog.addEventListener("close", () => { if (!dialog.open) close(false); });
