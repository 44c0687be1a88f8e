// Reloads the page as soon as what is on show is no longer what it was made from. A browser
// allows few open lines to one place: of all pages that are seen only one listens, and tells
// the others.
(() => {
  "use strict";
  const { mark: made, write } = document.currentScript.dataset;
  // The key of the desk comes behind the address that the program names, and does not stay there.
  if (/^#[0-9a-f]{48}$/.test(location.hash)) {
    sessionStorage.setItem("desk-key", location.hash.slice(1));
    history.replaceState(null, "", location.pathname + location.search);
  }
  if (write && sessionStorage.getItem("desk-key")) {
    const link = document.createElement("a");
    link.className = "preview-desk";
    link.href = `/.preview/desk/?of=${encodeURIComponent(location.pathname.slice(1))}`;
    link.textContent = write;
    document.body.append(link);
  }
  const others = "BroadcastChannel" in window ? new BroadcastChannel("preview") : null;
  let line = null;
  let last = "";
  let leave = null;
  const heard = (mark) => {
    if (mark === made) { return; }
    hang();
    location.reload();
  };
  const listen = () => {
    line = new EventSource("/.preview/events");
    line.onmessage = (event) => {
      last = event.data;
      if (others) { others.postMessage(last); }
      heard(last);
    };
  };
  const hang = () => {
    if (line) { line.close(); }
    line = null;
    if (leave) { leave(); }
    leave = null;
  };
  // Whoever has the lock listens, and keeps it until the page is left or no longer seen.
  const wait = () => {
    if (line || leave) { return; }
    if (!others || !navigator.locks) { listen(); return; }
    const stop = new AbortController();
    leave = () => stop.abort();
    navigator.locks.request("preview", { signal: stop.signal }, () => new Promise((free) => {
      leave = free;
      listen();
    })).catch(() => {});
  };
  // A page that was not seen for a while asks with an empty word.
  const answer = (mark) => {
    if (mark) { heard(mark); } else if (line && last) { others.postMessage(last); }
  };
  if (others) { others.onmessage = (event) => answer(event.data); }
  const look = () => {
    if (document.hidden) { hang(); return; }
    wait();
    if (others) { others.postMessage(""); }
  };
  document.addEventListener("visibilitychange", look);
  window.addEventListener("pageshow", look);
  window.addEventListener("pagehide", hang);
  look();
})();
