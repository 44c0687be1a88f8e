// Questions and remarks over the desk.
import { at } from "./calls.js";

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
dialog.addEventListener("close", () => close(false));
