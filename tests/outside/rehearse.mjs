// A teacher at work: saves files of a pack under rehearsal and looks at what Chromium shows. Prints JSON.
//   node rehearse.mjs NODE_MODULES ADDRESS PACK SESSION [ROUNDS]
// With ROUNDS it only measures: milliseconds from save to the changed page, so many times.
import fs from "node:fs";
import path from "node:path";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, address, pack, session, rounds] = process.argv.slice(2);
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const axe = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];
const file = path.join(pack, session);
const pageOf = (name) => `${address}sessions/${name.replace(/\.yaml$/, ".html")}`;
const whole = fs.readFileSync(file, "utf8");
const titled = (title, text = whole) => text.replace(/^title: .*$/m, `title: ${title}`);

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: flags });
const context = await browser.newContext({ viewport: { width: 1000, height: 700 } });
const page = await context.newPage();
const met = { requests: [], console: [], times: [] };
page.on("request", (request) => met.requests.push(request.url()));
page.on("console", (message) => message.type() === "error" && met.console.push(message.text()));
page.on("pageerror", (fault) => met.console.push(String(fault)));

const heading = () => page.locator("main h1").first().innerText();
const until = (test, given) => page.waitForFunction(test, given, { polling: 5, timeout: 15000 });
const untilTitle = (title) => until((wanted) => document.querySelector("main h1")?.innerText.includes(wanted), title);
const panel = (state) => until((wanted) => document.querySelector("#rehearsal")?.className === wanted, state);
const rest = (ms) => new Promise((done) => setTimeout(done, ms));

async function timed(title) {
  const began = performance.now();
  fs.writeFileSync(file, titled(title));
  await untilTitle(title);
  return performance.now() - began;
}

await page.goto(pageOf(session), { waitUntil: "load" });
await rest(500);
for (let round = 0; round < Number(rounds ?? 5); round += 1) {
  met.times.push(await timed(`Round ${round} of saving`));
  await rest(150);
}

async function teach() {
  // The place: how far down, what is open, what has the focus.
  await page.evaluate(() => { document.querySelectorAll("main details").forEach((d, at) => { d.open = at % 2 === 0; }); });
  await page.evaluate(() => scrollTo(0, 640));
  met.placeBefore = await page.evaluate(() => [Math.round(scrollY), [...document.querySelectorAll("main details")].map((d) => d.open)]);
  // What add-ons made: buttons of timers and marks.
  const made = () => page.evaluate(() => [...document.querySelectorAll("main button")].filter((b) => b.getClientRects().length).length);
  met.buttonsBefore = await made();
  await page.evaluate(() => { window.staysInPlace = true; });
  await timed("The place is kept");
  await rest(300);
  met.inPlace = await page.evaluate(() => window.staysInPlace === true);
  await page.waitForFunction((wanted) => [...document.querySelectorAll("main button")].filter((b) => b.getClientRects().length).length === wanted, met.buttonsBefore, { timeout: 5000 }).catch(() => {});
  met.buttonsAfter = await made();
  met.placeAfter = await page.evaluate(() => [Math.round(scrollY), [...document.querySelectorAll("main details")].map((d) => d.open)]);
  met.focus = await page.evaluate(() => document.activeElement.tagName);

  // Editors that write beside the file and put it in its place.
  fs.writeFileSync(`${file}.new`, titled("Saved by renaming"));
  fs.renameSync(`${file}.new`, file);
  await untilTitle("Saved by renaming");
  met.renamed = await heading();

  // Broken: the last good page stays, under what is wrong.
  const broken = titled("Never shown").replace(/^summary:/m, "\"<script>window.bad=1</script><img src=x onerror=window.bad=2>\": 1\nsummary:");
  fs.writeFileSync(file, broken);
  await panel("problems");
  met.broken = { heading: await heading(), text: await page.locator("#rehearsal").innerText(), bad: await page.evaluate(() => window.bad ?? null), focus: await page.evaluate(() => document.activeElement.tagName) };
  met.violations = [];
  for (const colorScheme of ["light", "dark"]) {
    await page.emulateMedia({ colorScheme });
    await page.evaluate(axe);
    const found = await page.evaluate(() => axe.run("#rehearsal", { preload: false, runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"] } }));
    met.rules = found.passes.length;
    met.violations.push(...found.violations.map((v) => `${colorScheme} ${v.id}: ${v.nodes[0].html.slice(0, 120)}`));
  }
  // Folded away, it stays folded while nothing else is wrong.
  await page.locator("#rehearsal summary").first().click();
  fs.writeFileSync(file, `${broken}\n# more\n`);
  await rest(800);
  met.folded = await page.evaluate(() => !document.querySelector("#rehearsal details").open);
  fs.writeFileSync(file, titled("Cut short").slice(0, 300));
  await rest(800);
  met.cut = { heading: await heading(), state: await page.evaluate(() => document.querySelector("#rehearsal").className) };
  fs.writeFileSync(file, titled("Mended"));
  await untilTitle("Mended");
  await panel("sound");
  met.mended = await page.locator("#rehearsal summary").innerText();

  // A file that comes and goes.
  const fresh = path.join(path.dirname(session), "brand-new.yaml");
  await page.goto(`${address}index.html`, { waitUntil: "load" });
  fs.writeFileSync(path.join(pack, fresh), titled("Brand new one"));
  await until(() => document.body.innerText.includes("Brand new one"));
  met.added = true;
  await page.goto(pageOf(fresh), { waitUntil: "load" });
  met.addedHeading = await heading();
  fs.unlinkSync(path.join(pack, fresh));
  await untilTitle("no such page");
  met.removed = await heading();
  met.removedStatus = (await page.goto(pageOf(fresh), { waitUntil: "load" })).status();

  // What all sessions share.
  await page.goto(pageOf(session), { waitUntil: "load" });
  const shared = path.join(pack, "pack.yaml");
  const words = fs.readFileSync(shared, "utf8");
  fs.writeFileSync(shared, words.replace(/^school: .*$/m, "school: Saltmarsh Trial School"));
  await until(() => document.querySelector(".touchline").innerText.includes("Saltmarsh Trial School"));
  met.shared = true;
  fs.writeFileSync(shared, "title: [\n");
  await panel("problems");
  met.sharedBroken = await page.evaluate(() => [document.querySelector(".touchline").innerText, document.querySelector("#rehearsal").textContent]);
  fs.writeFileSync(shared, words);
  await panel("sound");

  // A neighbour’s file that a session is borrowed from.
  await page.goto(pageOf("gymnastics/wading-bird.yaml"), { waitUntil: "load" });
  const lent = path.join(pack, "_neighbours/saltmarsh/gymnastics/wading-bird.yaml");
  const lentWords = fs.readFileSync(lent, "utf8");
  fs.writeFileSync(lent, lentWords.replace(/^summary: .*$/m, "summary: The lender has said it anew."));
  await until(() => document.querySelector("main").innerText.includes("The lender has said it anew."));
  met.lent = true;
  fs.writeFileSync(lent, lentWords);
  await until(() => !document.querySelector("main").innerText.includes("The lender has said it anew."));

  // Its picture too: another one of the lender’s is put in its place.
  const width = () => page.evaluate(() => document.querySelector("main figure img").naturalWidth);
  const shown = path.join(pack, "_neighbours/saltmarsh/gymnastics/pictures/one-leg.png");
  const old = fs.readFileSync(shown);
  await page.locator("main figure img").scrollIntoViewIfNeeded();
  await until(() => document.querySelector("main figure img").naturalWidth > 0);
  met.pictureBefore = await width();
  fs.writeFileSync(shown, fs.readFileSync(path.join(path.dirname(new URL(import.meta.url).pathname), "../../src/inspect/sound/pictures/hop.png")));
  await until((was) => { const img = document.querySelector("main figure img"); return img.naturalWidth > 0 && img.naturalWidth !== was; }, met.pictureBefore);
  met.pictureAfter = await width();
  fs.writeFileSync(shown, old);
  await until((was) => document.querySelector("main figure img").naturalWidth === was, met.pictureBefore);

  const teacher = await page.goto(`${address}for-teachers/index.html`, { waitUntil: "load" });
  met.teachers = [teacher.status(), await heading()];
}

if (!rounds) { await teach(); }
fs.writeFileSync(file, whole);
await browser.close();
console.log(JSON.stringify(met));
