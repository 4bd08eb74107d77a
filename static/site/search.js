// The search on the front page. The words lie in a script of their own, fetched at the first search: a page
// opened by double click can load a script from its folder, but no other file.
(() => {
  "use strict";
  const field = document.getElementById("find");
  if (!field) return;
  const address = document.currentScript.dataset.words;
  const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  // Letters that Unicode keeps whole, and what people type for them.
  const OTHERS = { "ß": "ss", "ł": "l", "ø": "o", "đ": "d", "ħ": "h", "ı": "i", "æ": "ae", "œ": "oe", "þ": "th", "ð": "d", "ى": "ي", "ی": "ي", "ک": "ك", "ہ": "ه", "ة": "ه", "ـ": "" };
  let index = null;

  // One form for a word however it is written: no accents, no case (Unicode NFKD without its marks).
  const fold = (text) => text.normalize("NFKD").toLowerCase().replace(/\p{M}/gu, "").replace(/[ßłøđħıæœþðىیکہةـ]/g, (letter) => OTHERS[letter]);
  const split = (text) => fold(text).split(/[^\p{L}\p{N}]+/u).filter(Boolean);

  function placesOf(written) {
    const places = [];
    let [step, weight, last] = [0, 1, 0];
    for (const letter of written) {
      const value = LETTERS.indexOf(letter);
      step += (value % 32) * weight;
      weight *= 32;
      if (value < 32) {
        last += step;
        places.push(last);
        [step, weight] = [0, 1];
      }
    }
    return places;
  }

  function readIndex(text) {
    let word = [];
    return text.trimEnd().split("\n").map((line) => {
      const [rest, written] = line.slice(1).split("\t");
      word = [...word.slice(0, LETTERS.indexOf(line[0])), ...rest];
      return { word: fold(word.join("")), places: placesOf(written) };
    });
  }

  function load() {
    index = index || new Promise((done, fail) => {
      const script = document.createElement("script");
      script.src = address;
      script.addEventListener("load", () => done(readIndex(self.homegroundWords)));
      script.addEventListener("error", fail);
      document.head.append(script);
    });
    return index;
  }

  // Sessions that hold every word, or words that begin so.
  function look(entries, sought) {
    const sets = sought.map((start) => new Set(entries.filter(({ word }) => word.startsWith(start)).flatMap(({ places }) => places)));
    return sets.reduce((one, other) => new Set([...one].filter((place) => other.has(place))));
  }

  let latest = 0;
  async function search() {
    const turn = (latest += 1);
    const sought = split(field.value);
    const places = sought.length ? look(await load(), sought) : null;
    if (turn === latest) document.dispatchEvent(new CustomEvent("homeground:found", { detail: { places } }));
  }
  // Where the words can’t be fetched, the list stays whole.
  field.addEventListener("input", () => search().catch(() => { index = null; }));
  field.closest("[hidden]").hidden = false;
})();
