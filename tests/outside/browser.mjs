// Opens pages in Chromium as a list of visits asks, and prints what each met as JSON.
//   node browser.mjs NODE_MODULES VISITS.json
// A visit: { url, width, scheme, script, axe, steps }; `steps` are expressions run in the page one after another.
import fs from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, list] = process.argv.slice(2);
const visits = JSON.parse(fs.readFileSync(list, "utf8"));
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const axe = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

const said = (v) => `${v.id}: ${v.nodes.length} × ${v.nodes[0].html.slice(0, 120)} (${v.nodes[0].any.concat(v.nodes[0].all, v.nodes[0].none)[0]?.message ?? v.help})`;

async function meet(page, visit) {
  const met = { ...visit, console: [], elsewhere: [], violations: [], rules: 0 };
  const home = new URL(visit.url);
  const isOwn = (url) => ["data:", "blob:"].includes(url.protocol) || (url.protocol === home.protocol && url.host === home.host);
  page.removeAllListeners();
  // What the page before still waits for, such as its icon, is broken off now and is none of this visit’s. A fragment alone
  // would not load the page anew either.
  await page.goto("about:blank");
  // That workers are kept out of these visits is our own doing: check_offline.py has them in.
  page.on("console", (m) => ["error", "warning"].includes(m.type()) && !/blocked by Playwright/.test(m.text()) && met.console.push(m.text()));
  page.on("pageerror", (fault) => met.console.push(String(fault)));
  page.on("requestfailed", (r) => met.console.push(`failed: ${r.url()}`));
  page.on("request", (r) => isOwn(new URL(r.url())) || met.elsewhere.push(r.url()));
  await page.setViewportSize({ width: visit.width, height: 780 });
  await page.emulateMedia({ colorScheme: visit.scheme });
  await page.goto(visit.url, { waitUntil: "load" });
  await page.evaluate(() => document.fonts.ready.then(() => {}));
  for (const step of visit.steps ?? []) met.answer = await page.evaluate(step);
  met.font = await page.evaluate(() => [...document.fonts].filter((f) => f.status === "loaded").length);
  // Folded answers are part of the page too; of those that exclude one another the last stays open.
  await page.evaluate(() => document.querySelectorAll("details").forEach((d) => { d.open = true; }));
  met.overflow = await page.evaluate(() => document.documentElement.scrollWidth);
  met.text = await page.evaluate(() => (document.querySelector("main") ?? document.body).innerText.length);
  if (visit.axe) {
    await page.evaluate(axe);
    const found = await page.evaluate((values) => axe.run(document, { preload: false, runOnly: { type: "tag", values } }), tags);
    met.rules = found.passes.length;
    met.violations = found.violations.map(said);
  }
  return met;
}

// Pages are shared among the visits of a worker: opening one costs more than leading it elsewhere.
async function work(browser, queue, all) {
  const pages = {};
  for (let visit = queue.shift(); visit; visit = queue.shift()) {
    const key = visit.script !== false;
    pages[key] ??= await (await browser.newContext({ javaScriptEnabled: key, deviceScaleFactor: 1, serviceWorkers: "block", reducedMotion: "reduce" })).newPage();
    all.push(await meet(pages[key], visit));
  }
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: flags });
const all = [];
await Promise.all(Array.from({ length: 3 }, () => work(browser, visits, all)));
await browser.close();
console.log(JSON.stringify(all));
