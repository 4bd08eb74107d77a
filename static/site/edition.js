// Tells whether a printed sheet is the current one, by the mark in its foot. Nothing is kept or sent.
(() => {
  "use strict";

  // Crockford's base 32: O counts as 0, I and L as 1.
  const bare = (typed) =>
    typed.toUpperCase().replace(/[\s-]/g, "").replace(/O/g, "0").replace(/[IL]/g, "1");

  const fill = (text, words) =>
    text.replace(/\{(\w+)\}/g, (whole, name) => (name in words ? words[name] : whole));

  for (const place of document.querySelectorAll("[data-edition]")) {
    const words = (name) => place.querySelector(`template[data-${name}]`).content.textContent.trim();
    const current = new Map();
    for (const shown of place.querySelectorAll("[data-mark]")) {
      current.set(shown.dataset.mark, shown.parentElement.querySelector("dt").textContent);
    }
    const ask = place.querySelector(".ask");
    const input = ask.querySelector("input");
    const answer = ask.querySelector("output");
    const judge = (mark) => {
      if (mark === "") return "";
      if (!/^[0-9A-HJKMNP-TV-Z]{4}$/.test(mark)) return mark.length < 4 ? "" : words("no-mark");
      if (current.has(mark)) return fill(words("current"), { sheet: current.get(mark), mark });
      return fill(words("changed"), { mark });
    };
    input.addEventListener("input", () => {
      answer.textContent = judge(bare(input.value));
    });
    ask.hidden = false;
  }
})();
