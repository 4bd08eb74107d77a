// Runs the reading script of a published page in node, and prints what it says of each question as JSON.
//   node marks_reading.mjs SCRIPT QUESTIONS.json
import fs from "node:fs";
import vm from "node:vm";

const [script, questions] = process.argv.slice(2);
const room = vm.createContext({ TextEncoder });
const own = vm.runInContext(`${fs.readFileSync(script, "utf8")}\nhomegroundMarks`, room);

const answer = ({ what, text, task, mark, earlier, today }) => {
  if (what === "returned") {
    const found = own.read(text, task);
    return Number.isInteger(found) ? [found, own.show(found, task)] : found;
  }
  if (what === "show") return own.show(mark, task);
  if (what === "personal best") {
    const [standing, best] = own.personal(earlier, today, task);
    return [standing, best ?? null];
  }
  if (what === "judge code") return own.judgeCode(text.trim()) ?? null;
  if (what === "check code") return own.check(text);
  throw new Error(what);
};
console.log(JSON.stringify(JSON.parse(fs.readFileSync(questions, "utf8")).map(answer)));
