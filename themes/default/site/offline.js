// Keeps the course on this device. Above stand, made with the pages: `edition`, which
// stands for all of them; `files`, the exact SHA-256 of every page and asset; and `seen`,
// pictures that are kept when they are first looked at. An edition is kept whole or not
// at all: one file that is not exactly the one named leaves the last edition in place.
"use strict";

const root = new URL("./", self.location);
const mine = `tourier ${root.pathname} `;
const store = mine + edition;
const known = { ...files, ...seen };

// What is kept is known by its address and its hash, so that an unchanged file is taken
// over from the last edition.
const key = (path) => `${new URL(path, root)}?${known[path]}`;

const hex = (bytes) =>
  [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("");

const fetched = async (path) => {
  const answer = await fetch(new URL(path, root), { cache: "no-cache" });
  const bytes = await answer.clone().arrayBuffer();
  const hash = hex(await crypto.subtle.digest("SHA-256", bytes));
  if (!answer.ok || hash !== files[path]) { throw new Error(`${path} is not the one of this edition`); }
  return answer;
};

const keep = async () => {
  const cache = await caches.open(store);
  for (const path of Object.keys(files)) {
    const kept = await caches.match(key(path));
    await cache.put(key(path), kept || await fetched(path));
  }
};

const forget = async () => {
  const old = (await caches.keys()).filter((name) => name.startsWith(mine) && name !== store);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
};

// A file of this site by the address asked for: a folder stands for its index.
const named = (url) => {
  if (url.origin !== root.origin || !url.pathname.startsWith(root.pathname)) { return null; }
  const path = decodeURIComponent(url.pathname.slice(root.pathname.length));
  return path === "" || path.endsWith("/") ? `${path}index.html` : path;
};

const look = async (path, request) => {
  const cache = await caches.open(store);
  const kept = await cache.match(key(path));
  if (kept) { return kept; }
  const answer = await fetch(request);
  if (answer.ok && path in seen) { await cache.put(key(path), answer.clone()); }
  return answer;
};

// What is not kept comes from the site; with no connection a page that is not kept is
// answered with the page that says where everything else is.
const ask = async (request) => {
  try {
    return await fetch(request);
  } catch (error) {
    const missing = request.mode === "navigate" && await caches.match(key("404.html"));
    if (missing) { return missing; }
    throw error;
  }
};

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(forget()));
self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") { return; }
  const path = named(new URL(event.request.url));
  if (path === null) { return; }
  event.respondWith(path in known ? look(path, event.request) : ask(event.request));
});
