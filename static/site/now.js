// “Do it now”: a session one step at a time – before you start, each part, then marks and review. The step
// is the page’s fragment (#now-2), so that the way back and a reload work by themselves.
(() => {
  "use strict";
  const start = document.querySelector(".now-start");
  const pattern = document.getElementById("now");
  if (!start || !pattern) return;
  const main = document.getElementById("content");
  const steps = [[".before"], ...[...document.querySelectorAll(".part")].map((part) => [`#${part.id}`]), [".finish", ".parts ~ :not(.adapt, .now-foot)"]]
    .map((names) => names.join());
  // What a step shows is looked for each time: other add-ons may have put more beside it.
  const thingsOf = (step) => [...document.querySelectorAll(steps[step - 1])];
  const frame = pattern.content.cloneNode(true);
  const [head, foot] = [frame.querySelector(".now-head"), frame.querySelector(".now-foot")];
  const place = head.querySelector("[data-place]");
  const [back, next, dots] = [".now-back", ".now-next", ".now-dots"].map((name) => foot.querySelector(name));
  dots.append(...steps.map(() => document.createElement("i")));

  // The step asked for, from 1; 0 for the whole page.
  const asked = () => Number((/^#now-(\d+)$/.exec(location.hash) || [0, 0])[1]);

  function lead(link, step) {
    link.hidden = step < 1 || step > steps.length;
    link.href = `#now-${step}`;
  }

  function show(step) {
    const isOn = step >= 1 && step <= steps.length;
    document.body.classList.toggle("doing", isOn);
    for (const thing of document.querySelectorAll("main > .now, .parts > .now")) thing.classList.remove("now");
    const things = isOn ? thingsOf(step) : [];
    for (const thing of things) thing.classList.add("now");
    if (!isOn) {
      head.remove();
      foot.remove();
    } else {
      main.prepend(head);
      main.append(foot);
      place.textContent = place.dataset.place.replace("{n}", step).replace("{of}", steps.length);
      [...dots.children].forEach((dot, at) => dot.classList.toggle("now", at < step));
      lead(back, step - 1);
      lead(next, step + 1);
      const title = things[0].querySelector("h2") || things[0];
      title.tabIndex = -1;
      title.focus({ preventScroll: true });
      scrollTo(0, 0);
    }
    document.dispatchEvent(new CustomEvent("homeground:step", { detail: { part: things[0] || null } }));
  }

  for (const at of steps.keys()) {
    const [thing] = thingsOf(at + 1);
    const kind = thing.matches(".part") && thing.querySelector(".pace");
    if (!kind) continue;
    const link = start.querySelector("a").cloneNode(true);
    link.href = `#now-${at + 1}`;
    link.className = "now-here";
    link.setAttribute("aria-describedby", (thing.querySelector("h2").id = `${thing.id}-title`));
    kind.append(link);
  }
  // “Easier” and “harder” at hand: one press each, near the timer.
  for (const part of document.querySelectorAll(".part")) {
    const levels = document.createElement("div");
    levels.className = "now-levels";
    for (const level of part.querySelectorAll(".levels > div")) {
      const details = document.createElement("details");
      const [summary, text] = [document.createElement("summary"), document.createElement("p")];
      summary.textContent = level.querySelector("dt").textContent;
      text.append(...[...level.querySelector("dd").cloneNode(true).childNodes]);
      [details.className, details.name] = [level.className, `${part.id}-level`];
      details.append(summary, text);
      levels.append(details);
    }
    if (levels.childElementCount) part.querySelector("header").after(levels);
  }
  addEventListener("hashchange", () => { if (asked() || document.body.classList.contains("doing")) show(asked()); });
  // Escape leaves, unless something on the page has use for it.
  addEventListener("keydown", (event) => { if (event.key === "Escape" && asked()) location.hash = "content"; });
  start.querySelector("a").href = "#now-1";
  start.hidden = false;
  if (asked()) show(asked());
})();
