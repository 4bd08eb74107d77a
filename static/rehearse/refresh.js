// Only in a rehearsal: waits until this page has changed, loads it anew and keeps its place.
(() => {
  "use strict";
  const mark = document.currentScript.dataset.mark;
  const store = "homeground-rehearsal ";
  const read = (key) => {
    try { return JSON.parse(sessionStorage.getItem(store + key)); } catch { return null; }
  };
  const write = (key, value) => {
    try { sessionStorage.setItem(store + key, JSON.stringify(value)); } catch { /* then it is not kept */ }
  };
  const all = (names) => [...document.querySelectorAll(names)];
  const own = "main details, main input, main select";

  // Where the reader is: how far down, what is open and chosen, and what has the focus.
  const keep = () => {
    const state = (node) => (node.matches("details") ? node.open : node.type === "checkbox" || node.type === "radio" ? node.checked : node.value);
    write(location.pathname, { x: scrollX, y: scrollY, states: all(own).map(state), focus: document.activeElement?.id ?? "" });
  };
  const restore = () => {
    const kept = read(location.pathname);
    try { sessionStorage.removeItem(store + location.pathname); } catch { /* nothing was kept */ }
    if (!kept) { return; }
    const nodes = all(own);
    // With another number of them, none can be told from another.
    if (nodes.length === kept.states.length) {
      nodes.forEach((node, at) => {
        const was = kept.states[at];
        if (node.matches("details")) { node.open = was; }
        else if (typeof was === "boolean") { if (node.checked !== was) { node.click(); } }
        else if (node.value !== was) { node.value = was; node.dispatchEvent(new Event("input", { bubbles: true })); }
      });
    }
    if (kept.focus) { document.getElementById(kept.focus)?.focus({ preventScroll: true }); }
    scrollTo({ left: kept.x, top: kept.y, behavior: "instant" });
  };

  // The panel stays folded or open as it was left, until there is another reason to look.
  const panel = document.querySelector("#rehearsal");
  const fold = panel?.querySelector("details");
  const left = read("panel");
  if (fold && left && left.state === panel.className) { fold.open = left.open; }
  fold?.addEventListener("toggle", () => write("panel", { state: panel.className, open: fold.open }));

  let script = null;
  const ask = () => {
    if (script || document.hidden) { return; }
    script = document.createElement("script");
    script.src = `/-rehearse/wait.js?page=${encodeURIComponent(decodeURIComponent(location.pathname))}&mark=${mark}`;
    // The rehearsal may have been stopped and begun again.
    script.onerror = () => { done(); setTimeout(ask, 1000); };
    document.head.append(script);
  };
  const done = () => { script?.remove(); script = null; };
  window.homegroundRehearsal = (isChanged) => {
    done();
    if (isChanged) { keep(); location.reload(); } else { ask(); }
  };
  document.addEventListener("visibilitychange", ask);
  // The browser would else go to where it thinks the reader was.
  if ("scrollRestoration" in history) { history.scrollRestoration = "manual"; }
  restore();
  // A question that is held would hold up the page while it loads.
  if (document.readyState === "complete") { ask(); } else { addEventListener("load", ask); }
})();
