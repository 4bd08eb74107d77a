// The choices on the front page with script: how many sessions each answer leaves, what to leave out where
// nothing fits, the answers in the address (#age-8&minutes-30), and the list read out as it changes.
(() => {
  "use strict";
  const form = document.querySelector(".choose");
  const shown = document.querySelector(".shown");
  if (!form || !shown) return;
  const wordsOf = (element, name) => (element.dataset[name] || "").split(" ").filter(Boolean);
  const entries = [...document.querySelectorAll(".entry")].map((element) => ({
    element, fits: new Set(wordsOf(element, "fits")), needs: new Set(wordsOf(element, "needs")), isFound: true,
  }));
  const answers = [...form.querySelectorAll("input[id]:not([type=search])")];
  const find = form.querySelector("[type=search]");
  const relax = document.querySelector(".relax");

  const isBox = (answer) => answer.type === "checkbox";
  const allows = (entry, answer) => (isBox(answer) ? !entry.needs.has(answer.id) : entry.fits.has(answer.id));
  const given = () => answers.filter((answer) => answer.checked);
  const fitting = (asked) => entries.filter((entry) => entry.isFound && asked.every((answer) => allows(entry, answer)));
  const labelOf = (answer) => answer.nextElementSibling;
  const named = (answer) => `${answer.closest("fieldset").querySelector("legend").firstChild.textContent.trim()} ${labelOf(answer).textContent}`;

  function count(asked) {
    for (const answer of answers) {
      const others = asked.filter((other) => (isBox(answer) ? other !== answer : other.name !== answer.name || isBox(other)));
      const number = fitting([...others, answer]).length;
      labelOf(answer).dataset.count = number;
      answer.classList.toggle("none", !number);
    }
  }

  // Each answer that alone stands in the way, with how many sessions come back without it.
  function offer(asked, isNone) {
    relax.replaceChildren();
    if (!isNone) return;
    const ways = asked.map((answer) => [answer, fitting(asked.filter((other) => other !== answer)).length]);
    for (const [answer, number] of ways.filter(([, number]) => number).sort((a, b) => b[1] - a[1]).slice(0, 4)) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = relax.dataset.says.replace("{answer}", named(answer)).replace("{count}", number);
      button.addEventListener("click", () => { undo(answer); change(); find.focus({ preventScroll: true }); });
      relax.append(button);
    }
  }
  function undo(answer) {
    if (isBox(answer)) answer.checked = false;
    else form.querySelector(`input[name="${answer.name}"]:not([id])`).checked = true;
  }

  function show() {
    const asked = given();
    const fit = new Set(fitting(asked));
    for (const entry of entries) entry.element.hidden = !fit.has(entry);
    const isNone = fit.size === 0;
    shown.querySelector("b").textContent = isNone ? shown.dataset.none : fit.size;
    shown.classList.toggle("none", isNone);
    count(asked);
    offer(asked, isNone);
  }

  function write() {
    const parts = given().map((answer) => answer.id);
    if (find.value.trim()) parts.push(`find=${encodeURIComponent(find.value.trim())}`);
    const address = parts.length ? `#${parts.join("&")}` : location.pathname.replace(/.*\//, "") || "./";
    history.replaceState(null, "", address);
  }

  // Says whether the address held any answer.
  function read() {
    const parts = location.hash.slice(1).split("&");
    const ids = new Set(parts);
    const chosen = answers.filter((answer) => ids.has(answer.id));
    const sought = parts.find((part) => part.startsWith("find="));
    if (!chosen.length && !sought) return false;
    form.reset();
    for (const answer of chosen) answer.checked = true;
    try { find.value = sought ? decodeURIComponent(sought.slice(5)) : ""; } catch { find.value = ""; }
    const more = form.querySelector(".more");
    if (chosen.some((answer) => more.contains(answer))) more.open = true;
    return true;
  }

  function change() {
    show();
    write();
  }

  form.classList.add("counted");
  shown.classList.add("counted");
  shown.append(document.createElement("b"));
  form.addEventListener("change", (event) => { if (event.target !== find) change(); });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("reset", () => setTimeout(() => { tellSearch(); change(); }));
  addEventListener("hashchange", () => { if (read()) { tellSearch(); show(); } });
  // The search tells which places of the list it found; nothing for all of them.
  document.addEventListener("homeground:found", ({ detail: { places } }) => {
    entries.forEach((entry, place) => { entry.isFound = !places || places.has(place); });
    change();
  });
  function tellSearch() {
    find.dispatchEvent(new Event("input"));
  }
  read();
  show();
  // search.js runs after this; what the address asks it to look for waits until it listens.
  document.addEventListener("DOMContentLoaded", () => { if (find.value) tellSearch(); });
})();
