// Opens pages by file:// in Chromium on a phone's width, light and dark, and prints what it met as JSON.
//   node browser.mjs NODE_MODULES PAGE…
import fs from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, ...pages] = process.argv.slice(2);
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const axe = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

async function visit(browser, file, colorScheme) {
  const context = await browser.newContext({ colorScheme, viewport: { width: 360, height: 780 }, deviceScaleFactor: 1 });
  const page = await context.newPage();
  const met = { file, colorScheme, console: [], elsewhere: [], violations: [] };
  page.on("console", (m) => ["error", "warning"].includes(m.type()) && met.console.push(m.text()));
  page.on("pageerror", (fault) => met.console.push(String(fault)));
  page.on("requestfailed", (r) => met.console.push(`failed: ${r.url()}`));
  page.on("request", (r) => r.url().startsWith("file:") || met.elsewhere.push(r.url()));
  await page.goto(pathToFileURL(file).href, { waitUntil: "load" });
  await page.evaluate(() => document.fonts.ready.then(() => {}));
  met.font = await page.evaluate(() => [...document.fonts].filter((f) => f.status === "loaded").length);
  // Folded answers are part of the page too.
  await page.evaluate(() => document.querySelectorAll("details").forEach((d) => { d.open = true; }));
  met.width = await page.evaluate(() => document.documentElement.scrollWidth);
  await page.evaluate(axe);
  const found = await page.evaluate((values) => axe.run(document, { preload: false, runOnly: { type: "tag", values } }), tags);
  met.rules = found.passes.length;
  met.violations = found.violations.map((v) => `${v.id}: ${v.nodes.length} × ${v.nodes[0].html.slice(0, 120)} (${v.nodes[0].any.concat(v.nodes[0].all, v.nodes[0].none)[0]?.message ?? v.help})`);
  await context.close();
  return met;
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: flags });
const all = [];
for (const file of pages) for (const scheme of ["light", "dark"]) all.push(await visit(browser, file, scheme));
await browser.close();
console.log(JSON.stringify(all));
