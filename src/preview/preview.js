// Reloads the page as soon as what is on show is no longer what it was made from. It
// listens only while the page is seen: a browser allows few open lines to one place.
(() => {
  "use strict";
  const made = document.currentScript.dataset.mark;
  let line = null;
  const hang = () => {
    if (line) { line.close(); }
    line = null;
  };
  const listen = () => {
    if (line) { return; }
    line = new EventSource("/.preview/events");
    line.onmessage = (event) => {
      if (event.data === made) { return; }
      hang();
      location.reload();
    };
  };
  const look = () => (document.hidden ? hang() : listen());
  document.addEventListener("visibilitychange", look);
  window.addEventListener("pageshow", look);
  look();
})();
