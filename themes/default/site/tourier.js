// What a page can do besides being read: it keeps what a student chose and ticked, sets
// clocks, keeps the screen awake if asked, and finds by text. Every page is complete
// without this file; what only works with it is hidden until it is here.
(() => {
  "use strict";
  const here = location.pathname;
  const all = (query, within = document) => [...within.querySelectorAll(query)];
  const one = (query, within = document) => within.querySelector(query);

  // A browser may refuse to store anything; then nothing is kept, and nothing breaks.
  const keep = (key, value) => {
    try { localStorage.setItem(key, value); } catch { return; }
  };
  const kept = (key) => {
    try { return localStorage.getItem(key); } catch { return null; }
  };

  // Units for the whole site, the batch and the time to be ready for each page.
  const choices = ["units", "batch", "ready"];
  const radios = (name) => all(`input[name="${name}"]`);
  const keyOf = (name) => (name === "units" ? "tourier units" : `tourier ${name} ${here}`);

  // Links such as #us, #x2 or #us,x2 choose; any other anchor is left to the browser.
  const asked = () => location.hash.slice(1).split(",");

  const choose = () => {
    for (const name of choices) {
      const linked = radios(name).find((radio) => asked().includes(radio.value));
      const stored = radios(name).find((radio) => radio.value === kept(keyOf(name)));
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
    history.replaceState(null, "", hash ? `#${hash}` : here + location.search);
  };

  // Ticks.
  const ticks = all("input[type=checkbox]");
  const ticksKey = `tourier ticks ${here}`;
  const untick = one("#untick");
  const ticked = () => ticks.filter((tick) => tick.checked);
  const saveTicks = () => {
    keep(ticksKey, ticked().map((tick) => tick.id).join(" "));
    if (untick) { untick.hidden = !ticked().length; }
  };

  document.addEventListener("change", (event) => {
    const input = event.target;
    if (choices.includes(input.name)) {
      keep(keyOf(input.name), input.value);
      link();
    } else if (ticks.includes(input)) {
      saveTicks();
    }
  });
  const before = (kept(ticksKey) || "").split(" ");
  for (const tick of ticks) {
    if (before.includes(tick.id)) { tick.checked = true; }
  }
  if (untick) {
    untick.hidden = !ticked().length;
    untick.addEventListener("click", () => {
      ticked().forEach((tick) => { tick.checked = false; });
      saveTicks();
      ticks[0].focus({ preventScroll: true });
    });
  }

  // Clocks: set on one page, seen on all; kept by the time at which they end.
  const board = one(".clocks");
  const list = one("ul", board);
  const told = one("[role=status]", board);
  const card = one("template", board);
  const title = document.title;
  let sound = null;

  const clocks = () => {
    try { return JSON.parse(kept("tourier clocks")) || []; } catch { return []; }
  };
  const setClocks = (value) => keep("tourier clocks", JSON.stringify(value));

  const left = (end) => {
    const seconds = Math.max(0, Math.round((end - Date.now()) / 1000));
    const two = (number) => String(number).padStart(2, "0");
    const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
    return `${hours ? `${hours}:${two(minutes)}` : minutes}:${two(seconds % 60)}`;
  };

  const ring = () => {
    if (navigator.vibrate) { navigator.vibrate([400, 200, 400]); }
    if (!sound) { return; }
    for (const at of [0, 0.5, 1]) {
      const [tone, level] = [sound.createOscillator(), sound.createGain()];
      tone.frequency.value = 880;
      level.gain.setValueAtTime(0.25, sound.currentTime + at);
      level.gain.exponentialRampToValueAtTime(0.001, sound.currentTime + at + 0.4);
      tone.connect(level).connect(sound.destination);
      tone.start(sound.currentTime + at);
      tone.stop(sound.currentTime + at + 0.45);
    }
  };

  const row = (clock) => {
    const item = card.content.cloneNode(true).firstElementChild;
    const [to, stop] = [one("a", item), one("button", item)];
    to.textContent = clock.name;
    to.href = clock.page;
    stop.textContent = stop.dataset.stop;
    stop.setAttribute("aria-label", `${stop.dataset.stop}: ${clock.name}`);
    stop.addEventListener("click", () => {
      setClocks(clocks().filter((other) => other.end !== clock.end));
      show();
    });
    item.dataset.end = clock.end;
    return item;
  };

  const tick = () => {
    let over = 0;
    for (const item of list.children) {
      const end = Number(item.dataset.end);
      const stop = one("button", item);
      const is = end <= Date.now();
      over += is;
      one(".left", item).textContent = is ? stop.dataset.over : left(end);
      if (is && !item.classList.contains("over")) {
        item.classList.add("over");
        told.textContent = `${one("a", item).textContent}: ${stop.dataset.over}`;
        ring();
      }
    }
    document.title = over ? `(${over}) ${title}` : title;
  };

  const show = () => {
    list.replaceChildren(...clocks().sort((a, b) => a.end - b.end).map(row));
    board.hidden = !list.children.length;
    tick();
  };

  for (const button of all("button.clock")) {
    button.hidden = false;
    button.addEventListener("click", () => {
      sound = sound || (window.AudioContext ? new AudioContext() : null);
      const step = button.closest(".step");
      const name = one("h3", step).lastChild.textContent.trim();
      const end = Date.now() + Number(button.dataset.minutes) * 60000;
      setClocks([...clocks(), { name, end, page: `${here}#${step.id}` }]);
      show();
      told.textContent = `${name}: ${left(end)}`;
    });
  }
  show();
  setInterval(tick, 1000);
  addEventListener("storage", show);

  // The screen stays awake, if asked and while the page is looked at.
  const awake = one("#awake");
  let lock = null;
  const hold = async () => {
    try { lock = await navigator.wakeLock.request("screen"); } catch { lock = null; }
    awake.setAttribute("aria-pressed", String(Boolean(lock)));
  };
  const isWanted = () => awake.getAttribute("aria-pressed") === "true";
  if (awake && navigator.wakeLock) {
    awake.hidden = false;
    awake.addEventListener("click", () => {
      if (!isWanted()) { hold(); return; }
      if (lock) { lock.release(); }
      awake.setAttribute("aria-pressed", "false");
    });
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible" && isWanted()) { hold(); }
    });
  }

  // Finding by text.
  const find = one("search.find");
  const plain = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  const worth = (words, pageTitle, text) => {
    const [high, low] = [` ${plain(pageTitle)}`, ` ${plain(text)}`];
    const all = words.map((word) =>
      (high.includes(` ${word}`) ? 10 : 0) + (low.includes(` ${word}`) ? 2 : 0)
      || (`${high}${low}`.includes(word) ? 1 : 0));
    return all.includes(0) ? 0 : all.reduce((sum, part) => sum + part, 0);
  };
  const hit = ([page, kind, pageTitle, text, language], word) => {
    const [item, to, note] = ["li", "a", "p"].map((name) => document.createElement(name));
    to.href = find.dataset.root + page;
    to.textContent = pageTitle;
    if (language) to.lang = language;
    const at = Math.max(0, plain(text).indexOf(word));
    const from = at > 50 ? text.indexOf(" ", at - 50) + 1 : 0;
    note.className = "small";
    note.textContent = `${kind} · ${from ? "… " : ""}${text.slice(from, from + 130)} …`;
    item.append(to, note);
    return item;
  };
  const search = (input) => {
    const words = plain(input.value).split(/[^\p{L}\p{N}]+/u).filter(Boolean);
    const ranked = (self.tourierPages || [])
      .map((page) => [words.length ? worth(words, page[2], page[3]) : 0, page])
      .filter(([points]) => points > 0)
      .sort(([a], [b]) => b - a);
    one(".hits", find).replaceChildren(...ranked.map(([, page]) => hit(page, words[0])));
    const status = one("[role=status]", find);
    const said = ranked.length ? status.dataset.some : status.dataset.none;
    status.textContent = words.length ? said.replace("{count}", ranked.length) : "";
  };
  if (find) {
    find.hidden = false;
    one("input", find).addEventListener("input", (event) => search(event.target));
    search(one("input", find));
  }

  // Kept on the device where the course offers it and the page comes from a server.
  const { offline, card: homeCard } = one("template[data-offline]")?.dataset ?? {};
  if (offline && location.protocol.startsWith("http")) {
    const screen = document.createElement("link");
    [screen.rel, screen.href] = ["manifest", homeCard];
    document.head.append(screen);
    if (navigator.serviceWorker) { navigator.serviceWorker.register(offline).catch(() => {}); }
  }

  choose();
  addEventListener("hashchange", choose);
  addEventListener("pageshow", choose);
})();
