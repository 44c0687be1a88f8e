// Keeps what a student chose: units for the whole site, batch and ticks for each page.
// The page is complete without this file.
(() => {
  "use strict";
  const here = location.pathname;
  const choices = ["units", "batch"];

  // A browser may refuse to store anything; then nothing is kept, and nothing breaks.
  const keep = (key, value) => {
    try { localStorage.setItem(key, value); } catch { return; }
  };
  const kept = (key) => {
    try { return localStorage.getItem(key); } catch { return null; }
  };

  const radios = (name) => [...document.querySelectorAll(`input[name="${name}"]`)];
  const keyOf = (name) => (name === "units" ? "tourier units" : `tourier ${name} ${here}`);

  // Links such as #us, #x2 or #us,x2 choose; any other anchor is left to the browser.
  const asked = () => location.hash.slice(1).split(",");

  const choose = () => {
    for (const name of choices) {
      const all = radios(name);
      const linked = all.find((radio) => asked().includes(radio.value));
      const stored = all.find((radio) => radio.value === kept(keyOf(name)));
      const radio = linked || stored;
      if (radio) { radio.checked = true; }
    }
  };

  const link = () => {
    const chosen = choices.flatMap((name) =>
      radios(name).filter((radio) => radio.checked && !radio.defaultChecked));
    const hash = chosen.map((radio) => radio.value).join(",");
    const values = choices.flatMap(radios).map((radio) => radio.value);
    const elsewhere = location.hash && !asked().some((value) => values.includes(value));
    if (!hash && elsewhere) { return; }
    history.replaceState(null, "", hash ? `#${hash}` : location.pathname + location.search);
  };

  const ticks = [...document.querySelectorAll("input[type=checkbox]")];
  const ticksKey = `tourier ticks ${here}`;
  const saveTicks = () =>
    keep(ticksKey, ticks.filter((tick) => tick.checked).map((tick) => tick.id).join(" "));

  document.addEventListener("change", (event) => {
    const input = event.target;
    if (choices.includes(input.name)) {
      keep(keyOf(input.name), input.value);
      link();
    } else if (ticks.includes(input)) {
      saveTicks();
    }
  });

  const ticked = (kept(ticksKey) || "").split(" ");
  for (const tick of ticks) {
    if (ticked.includes(tick.id)) { tick.checked = true; }
  }
  choose();
  addEventListener("hashchange", choose);
  addEventListener("pageshow", choose);
})();
