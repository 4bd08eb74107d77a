// Only in a rehearsal: waits until this page has changed, puts the new one in its place and keeps the reader’s.
(() => {
  "use strict";
  const own = document.currentScript;
  let mark = own.dataset.mark;
  const store = "homeground-rehearsal ";
  const read = (key) => {
    try { return JSON.parse(sessionStorage.getItem(store + key)); } catch { return null; }
  };
  const write = (key, value) => {
    try { sessionStorage.setItem(store + key, JSON.stringify(value)); } catch { /* then it is not kept */ }
  };
  const all = (names) => [...document.querySelectorAll(names)];
  const kept = "main details, main input, main select";

  // What add-ons listen to outside the page’s body, and what ticks for them, goes with the page that they were for.
  const ticking = new Set();
  const tick = window.setInterval.bind(window);
  window.setInterval = (...how) => {
    const id = tick(...how);
    ticking.add(id);
    return id;
  };
  let life = new AbortController();
  for (const target of [window, document, self.speechSynthesis]) {
    if (!target) { continue; }
    const listen = target.addEventListener.bind(target);
    target.addEventListener = (kind, act, how) => {
      const more = typeof how === "object" && how ? how : { capture: Boolean(how) };
      listen(kind, act, { signal: life.signal, ...more });
    };
  }

  // Where the reader is: how far down, what is open and chosen, and what has the focus.
  const place = () => {
    const state = (node) => (node.matches("details") ? node.open : node.type === "checkbox" || node.type === "radio" ? node.checked : node.value);
    return { x: scrollX, y: scrollY, states: all(kept).map(state), focus: document.activeElement?.id ?? "" };
  };
  const open = (was) => {
    const nodes = all(kept);
    // With another number of them, none can be told from another.
    if (nodes.length === was.states.length) {
      nodes.forEach((node, at) => { if (node.matches("details")) { node.open = was.states[at]; } });
    }
    scrollTo({ left: was.x, top: was.y, behavior: "instant" });
  };
  const restore = (was) => {
    const nodes = all(kept);
    if (nodes.length === was.states.length) {
      nodes.forEach((node, at) => {
        const state = was.states[at];
        if (node.matches("details")) { node.open = state; }
        else if (typeof state === "boolean") { if (node.checked !== state) { node.click(); } }
        else if (node.value !== state) { node.value = state; node.dispatchEvent(new Event("input", { bubbles: true })); }
      });
    }
    if (was.focus) { document.getElementById(was.focus)?.focus({ preventScroll: true }); }
    scrollTo({ left: was.x, top: was.y, behavior: "instant" });
  };

  // The panel stays folded or open as it was left, until there is another reason to look.
  const fold = () => {
    const panel = document.querySelector("#rehearsal");
    const details = panel?.querySelector("details");
    const left = read("panel");
    if (details && left && left.state === panel.className) { details.open = left.open; }
    details?.addEventListener("toggle", () => write("panel", { state: panel.className, open: details.open }));
  };

  const loads = (page) => [...page.head.querySelectorAll("link[rel=stylesheet], script[src]")].filter((node) => !node.dataset.again)
    .map((node) => node.getAttribute("href") ?? node.getAttribute("src")).join(" ");

  // Puts another page’s body in place of this one’s, and begins its add-ons anew; false where the two load other
  // things.
  const put = (text, pictures) => {
    const page = new DOMParser().parseFromString(text, "text/html");
    // A browser keeps a picture by its address.
    if (pictures !== own.dataset.pictures) {
      for (const img of page.querySelectorAll("img[src]")) { img.setAttribute("src", `${img.getAttribute("src")}?${pictures}`); }
    }
    const root = ({ documentElement: { lang, dir } }) => `${lang} ${dir}`;
    if (loads(page) !== loads(document) || root(page) !== root(document)) { return false; }
    const was = place();
    life.abort();
    life = new AbortController();
    self.speechSynthesis?.cancel();
    ticking.forEach((id) => clearInterval(id));
    ticking.clear();
    document.title = page.title;
    document.body.replaceWith(document.adoptNode(page.body));
    open(was);
    fold();
    for (const old of all("script[data-again]")) { old.remove(); }
    // What only defines something for others is there already.
    const isAddOn = ({ src }) => !src.includes("/-rehearse/") && !src.endsWith("/marks-reading.js");
    const addOns = all("head script[src]").filter(isAddOn);
    let left = addOns.length;
    const done = () => { left -= 1; if (left <= 0) { restore(was); ask(); } };
    for (const node of addOns) {
      const again = document.createElement("script");
      for (const { name, value } of node.attributes) { if (name !== "defer") { again.setAttribute(name, value); } }
      again.dataset.again = "1";
      again.async = false;
      again.onload = done;
      again.onerror = done;
      document.head.append(again);
    }
    if (!addOns.length) { done(); }
    return true;
  };

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
  window.homegroundRehearsal = (news) => {
    done();
    if (!news) { ask(); return; }
    mark = news.mark;
    if (news.page && put(news.page, news.pictures)) { return; }
    write(location.pathname, place());
    location.reload();
  };
  EventTarget.prototype.addEventListener.call(document, "visibilitychange", ask);
  // The browser would else go to where it thinks the reader was.
  if ("scrollRestoration" in history) { history.scrollRestoration = "manual"; }
  fold();
  const was = read(location.pathname);
  try { sessionStorage.removeItem(store + location.pathname); } catch { /* nothing was kept */ }
  // When the add-ons have begun; and a question that is held would hold up the page while it loads.
  const begin = () => { if (was) { restore(was); } ask(); };
  if (document.readyState === "complete") { begin(); } else { EventTarget.prototype.addEventListener.call(window, "load", begin); }
})();
