// Reads marks and codes as the library does: what is accepted, refused and reckoned stands in the library’s
// own tables, which are filled in here when this file is published. This only runs them.
const homegroundMarks = (() => {
  "use strict";
  const rules = "{rules}";
  const pattern = (text, flags = "u") => new RegExp(text, flags);
  const ready = ([text, then]) => [pattern(text), then];
  const units = rules.units.map((lines) => lines.map(ready));
  const codes = rules.codes.map(ready);
  const noMark = pattern(rules.no_mark);
  const stands = [...rules.letters[1]];
  const letters = new Map([...rules.letters[0]].map((letter, at) => [letter, stands[at]]));

  const replaced = (text, [find, by]) => text.replace(pattern(find, "gu"), by);
  const fold = (text) => rules.folds.reduce(replaced, [...text].map((c) => letters.get(c) ?? c).join(""));

  // A whole number of steps of the task’s rule, null for an attempt without a mark, or why it is refused.
  function read(text, task) {
    const plain = replaced(fold(text), [rules.trim, ""]).toLowerCase();
    if (noMark.test(plain)) return null;
    for (const [line, then] of units[task.unit]) {
      const found = line.exec(plain);
      if (found) return typeof then === "string" ? then : steps(found, then, task);
    }
    return "no-number";
  }

  // One group is a number; of two, the first is whole minutes. Nothing passes through a binary fraction.
  function steps(found, size, { step, bias }) {
    const minutes = found.length > 2 ? BigInt(found[1]) : 0n;
    const [whole, part = ""] = found[found.length - 1].split(".");
    const scale = 10n ** BigInt(part.length);
    const above = (BigInt(whole + part) + 60n * minutes * scale) * BigInt(size);
    const below = scale * BigInt(Math.max(step, 1));
    if (bias.whole && above % below) return "not-whole";
    const made = (2n * above + BigInt(bias.halves) * below - BigInt(bias.less)) / (2n * below);
    return made > BigInt(rules.most) ? "too-large" : Number(made);
  }

  // As teachers’ programs read it; or as a language writes it, with its decimal mark and unit.
  function show(mark, { step, form }, point = ".", after = form.after) {
    const all = BigInt(Math.abs(mark)) * BigInt(step);
    const sign = mark < 0 ? "−" : "";
    const number = (amount) => {
      const scale = 10n ** BigInt(form.places);
      const scaled = (amount * scale) / BigInt(form.size);
      const part = String(scaled % scale).padStart(form.places, "0");
      return scaled / scale + (form.places ? point + part : "");
    };
    if (!form.clock) return sign + number(all) + after;
    const rest = all % 60000n;
    return `${sign}${all / 60000n}:${rest < 10000n ? "0" : ""}${number(rest)}`;
  }

  const best = (marks, { sign }) =>
    marks.filter(Number.isInteger).reduce((a, b) => (a === undefined || (b - a) * sign > 0 ? b : a), undefined);

  // How today’s best stands to the best before, and the personal best as it is now.
  function personal(earlier, today, task) {
    const [before, now] = [best(earlier, task), best(today, task)];
    if (before === undefined) return [now === undefined ? "none" : "first", now];
    if (now === undefined) return ["stands", before];
    const gain = Math.sign((now - before) * task.sign);
    return [rules.standings[gain + 1], gain > 0 ? now : before];
  }

  // Why a code is refused; nothing where it is one.
  const judgeCode = (code) => codes.find(([line]) => line.test(code))?.[1];
  const isPersonal = (words) => pattern(rules.personal).test(words);

  // The code at the end of a message (CRC-16/IBM-3740), over what mail leaves as it is.
  function check(text) {
    const counted = replaced(text, [rules.check.left_out, ""]).toLowerCase();
    let sum = rules.check.begin;
    for (const byte of new TextEncoder().encode(counted)) {
      sum ^= byte << 8;
      for (let bit = 0; bit < 8; bit++) sum = (sum & 0x8000 ? (sum << 1) ^ rules.check.polynomial : sum << 1) & 0xffff;
    }
    return sum.toString(16).toUpperCase().padStart(4, "0");
  }

  return { read, show, best, personal, judgeCode, isPersonal, check, hear: rules.hear, longest: rules.longest };
})();
