// Chooses and searches on front pages and prints which sessions are left, and walks to a session by keys.
//   node choosing.mjs NODE_MODULES PLAN.json
// PLAN: { choices: [{ url, ids, script }], searches: [{ url, text }], walk: { url } }
import fs from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, list] = process.argv.slice(2);
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const plan = JSON.parse(fs.readFileSync(list, "utf8"));
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--headless", "--no-sandbox", "--disable-gpu"] });
const contexts = { true: await browser.newContext(), false: await browser.newContext({ javaScriptEnabled: false }) };
const left = () => [...document.querySelectorAll(".entry")].filter((e) => e.getClientRects().length).map((e) => e.querySelector("h3 a").getAttribute("href"));

async function choose(page, { url, ids }) {
  await page.goto("about:blank");
  await page.goto(url);
  // A style sheet can open the folded questions no more than a keyboard can press what is folded.
  await page.evaluate(() => { document.querySelector(".more").open = true; });
  for (const id of ids) await page.check(`#${id}`, { force: true });
  return { left: await page.evaluate(left), said: await page.textContent(".shown"), relax: await page.$$eval(".relax button", (all) => all.map((b) => b.textContent)), address: new URL(page.url()).hash };
}

const all = { choices: [], searches: [], counts: null, back: null };
const pages = { true: await contexts.true.newPage(), false: await contexts.false.newPage() };
for (const choice of plan.choices) all.choices.push(await choose(pages[choice.script], choice));

let open = "";
for (const { url, text } of plan.searches) {
  if (url !== open) { await pages.true.goto("about:blank"); await pages.true.goto(open = url); }
  await pages.true.evaluate(() => { self.met = new Promise((done) => document.addEventListener("homeground:found", () => setTimeout(done), { once: true })); });
  await pages.true.fill("#find", text);
  await pages.true.evaluate(() => self.met);
  all.searches.push(await pages.true.evaluate(left));
}

// What the address holds is chosen again when it is opened.
await pages.true.goto("about:blank");
await pages.true.goto(plan.walk.url + "#age-8&find=balance");
await pages.true.waitForTimeout(300);
all.back = { left: await pages.true.evaluate(left), age: await pages.true.isChecked("#age-8"), text: await pages.true.inputValue("#find") };

// By keys alone: from the top of the front page to the last step of a session.
const page = await contexts.true.newPage();
await page.goto(plan.walk.url);
const isOn = (name) => page.evaluate((selector) => document.activeElement.matches(selector), name);
const ring = () => page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
async function tabTo(name) {
  for (let presses = 0; presses < 150; presses += 1) {
    await page.keyboard.press("Tab");
    if (await isOn(name)) return { presses, ring: await ring() };
  }
  return null;
}
const walk = { entry: await tabTo(".entry h3 a") };
await Promise.all([page.waitForNavigation(), page.keyboard.press("Enter")]);
walk.start = await tabTo(".now-start a");
await page.keyboard.press("Enter");
walk.steps = [];
for (let step = 0; step < 30; step += 1) {
  // The step is shown once the address has changed.
  // The address changes first; what is told follows.
  await page.waitForFunction((at) => location.hash === `#now-${at}` && document.querySelector("[data-place]")?.textContent.includes(String(at)), step + 1);
  walk.steps.push(await page.evaluate(() => ({ hash: location.hash, focus: document.activeElement.textContent, place: document.querySelector("[data-place]").textContent })));
  const next = await tabTo(".now-next");
  if (!next) break;
  await page.keyboard.press("Enter");
}
walk.last = await page.evaluate(() => !!document.querySelector(".review.now"));
await page.keyboard.press("Escape");
walk.left = await page.waitForFunction(() => !document.body.classList.contains("doing")).then(() => true);
all.walk = walk;
await browser.close();
console.log(JSON.stringify(all));
