// In a page beside the desk: a tap on a step goes to its line, and the step at the caret is
// shown.
(() => {
  "use strict";
  if (window.parent === window) { return; }
  const step = (node) => node.closest && node.closest("section.step[id]");
  document.addEventListener("click", (event) => {
    const found = step(event.target);
    if (!found || event.target.closest("a, button, input, label, summary")) { return; }
    window.parent.postMessage({ desk: "step", step: found.id.replace(/^step-/, "") }, location.origin);
  });
  window.addEventListener("message", (event) => {
    if (event.origin !== location.origin || event.source !== window.parent || event.data.desk !== "show") { return; }
    const found = document.getElementById(`step-${event.data.step}`);
    if (!found) { return; }
    const box = found.getBoundingClientRect();
    if (box.top < 0 || box.top > window.innerHeight * 0.6) { found.scrollIntoView({ block: "start", behavior: "instant" }); }
  });
})();
