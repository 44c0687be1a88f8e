// Calls to the program, with the key that its own address carries; and the words of the course.

const words = JSON.parse(document.getElementById("words").textContent);

/** A word or sentence by its key; what stands in braces is put in. */
export function word(key, values = {}) {
  return (words[key] ?? key).replace(/\{ ?\$?([a-z]+) ?\}/g, (all, name) => values[name] ?? all);
}

/** The key: it comes behind the address, and does not stay there. */
function key() {
  const said = location.hash.slice(1);
  if (said) {
    sessionStorage.setItem("desk-key", said);
    history.replaceState(null, "", location.pathname + location.search);
  }
  return sessionStorage.getItem("desk-key") ?? "";
}

const own = key();

/** That a call was not done, in words. */
export class Undone extends Error {
  constructor(status, said) {
    super(said || word("desk-lost"));
    this.status = status;
  }
}

/** Has the program do something: `{ status, ...answer }`. */
export async function call(name, data = {}) {
  const body = data instanceof Blob ? data : JSON.stringify(data);
  let answer;
  try {
    answer = await fetch(`do/${name}`, { method: "POST", headers: { "X-Desk-Key": own }, body });
  } catch {
    throw new Undone(0, word("desk-away"));
  }
  const told = answer.headers.get("Content-Type") === "application/json" ? await answer.json() : { said: (await answer.text()).trim() };
  if (!answer.ok && answer.status !== 409) throw new Undone(answer.status, told.said);
  return { status: answer.status, ...told };
}

/** An element with what is in it. */
export function make(name, about = {}, ...inside) {
  const { data, ...own } = about;
  const made = Object.assign(document.createElement(name), own);
  Object.assign(made.dataset, data);
  made.append(...inside);
  return made;
}

export const at = (id) => document.getElementById(id);
