// Families at home in Chromium: keyboard alone, two children, a class that sends, no storage, right to left.
//   node marks_at_home.mjs NODE_MODULES SITE CLASS.json
// SITE is a published pack; CLASS.json has children with their marks by day and their answers. Prints JSON.
import fs from "node:fs";
import http from "node:http";
import path from "node:path";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, site, classFile] = process.argv.slice(2);
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const axe = fs.readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];
const SESSION = "sessions/athletics/brook-leap.html";

const types = { html: "text/html; charset=utf-8", css: "text/css", js: "text/javascript", svg: "image/svg+xml", woff2: "font/woff2" };
const server = http.createServer((request, response) => {
  const file = path.join(site, decodeURIComponent(new URL(request.url, "http://x").pathname));
  if (!file.startsWith(site) || !fs.existsSync(file)) return response.writeHead(404).end();
  response.writeHead(200, { "content-type": types[file.split(".").pop()] ?? "application/octet-stream" });
  response.end(fs.readFileSync(file));
});
await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
const origin = `http://127.0.0.1:${server.address().port}`;
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: flags });
const met = { leaves: [], console: [], requests: 0 };

async function open(options = {}, prepare) {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, ...options });
  const page = await context.newPage();
  // Every request of any kind; one that carries something, or goes elsewhere, would leave.
  context.on("request", (request) => {
    met.requests++;
    const isOwn = request.url().startsWith("file:") || request.url().startsWith(`${origin}/`) || request.url().startsWith("blob:");
    const carries = request.method() !== "GET" || request.postData() || (new URL(request.url()).search && isOwn);
    if (!isOwn || carries) met.leaves.push(`${request.method()} ${request.url()}`);
  });
  page.on("websocket", (socket) => met.leaves.push(socket.url()));
  page.on("console", (m) => ["error", "warning"].includes(m.type()) && met.console.push(m.text()));
  page.on("pageerror", (fault) => met.console.push(String(fault)));
  if (prepare) await context.addInitScript(prepare);
  return page;
}

// Type that comes late would move what is about to be pressed.
const visit = (page, address) => page.goto(address).then(() => page.evaluate(() => document.fonts.ready.then(() => {})));
const stored = (page) => page.evaluate(() => localStorage.getItem("homeground.marks.1"));
const useCode = async (page, code) => {
  if (!(await page.isVisible("#home-code"))) await page.click(".another summary");
  await page.fill("#home-code", code);
  await page.press("#home-code", "Enter");
};
const write = async (page, at, text) => {
  await page.fill(`#try-0-${at}`, text);
  await page.press(`#try-0-${at}`, "Tab");
};
const chooseDay = (page, day) => page.fill(".home-task [type=date]", day);

// Tab until something holds; how often it took, or nothing after many.
async function tabTo(page, holds, most = 150) {
  for (let count = 1; count <= most; count++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate(holds)) return count;
  }
  return null;
}

async function byKeyboard() {
  const page = await open();
  await visit(page, pathToFileURL(path.join(site, "index.html")).href);
  const link = await tabTo(page, () => document.activeElement.href?.includes("brook-leap"), 400);
  await Promise.all([page.waitForURL(/brook-leap/), page.keyboard.press("Enter")]);
  const field = await tabTo(page, () => document.activeElement.id === "home-code", 400);
  await page.keyboard.type("k07");
  await page.keyboard.press("Enter");
  const first = await tabTo(page, () => document.activeElement.id === "try-0-0");
  await page.keyboard.type("1,475 m");
  await page.keyboard.press("Tab");
  const found = { tabs: [link, field, first], kept: await stored(page), says: await page.textContent("#try-0-0-read") };
  await page.reload();
  found.after = [await page.inputValue("#try-0-0"), await page.isChecked("[value=k07]"), await page.textContent("[data-is=best]")];
  await page.context().close();
  return found;
}

async function twoChildren() {
  const page = await open({ acceptDownloads: true, permissions: ["clipboard-read", "clipboard-write"] });
  await visit(page, `${origin}/${SESSION}`);
  const found = { refused: {}, early: await page.$$eval(".known, .ways, .earlier", (all) => all.filter((one) => one.checkVisibility()).length) };
  found.answersBefore = await page.$$eval(".review details", (all) => all.filter((one) => one.checkVisibility()).length);
  for (const name of ["Anna Smith", "anna smith", "ليلى حسن", "a.b@c.example", "07700 900123", "14/05/2016", ""]) {
    await useCode(page, name);
    found.refused[name] = [await page.textContent("#home-code-fault"), await stored(page)];
  }
  // A mark before there is a code waits for it.
  await write(page, 0, "120");
  found.waiting = [await stored(page), await page.textContent(".cheer")];
  await useCode(page, "K07");
  await write(page, 1, "126");
  await useCode(page, "K12");
  found.fresh = await page.inputValue("#try-0-0");
  await write(page, 0, "99,5");
  await page.check("[value=K07]");
  found.back = [await page.inputValue("#try-0-0"), await page.inputValue("#try-0-1"), await page.textContent("[data-is=today]")];
  await write(page, 1, "nonsense");
  found.fault = [await page.getAttribute("#try-0-1", "aria-invalid"), await page.textContent("#try-0-1-read"), await page.textContent("[data-is=today]")];
  await write(page, 1, "162");
  found.corrected = await page.textContent("[data-is=today]");
  // An answer first, then ours; an address in it is not kept.
  const answer = page.locator(".home-answer textarea").first();
  await answer.fill("From the line");
  await answer.press("Tab");
  found.answersAfter = await page.$$eval(".review details", (all) => all.filter((one) => one.checkVisibility()).length);
  const second = page.locator(".home-answer textarea").nth(1);
  await second.fill("write to a.b@c.example");
  await second.press("Tab");
  found.personal = (await stored(page)).includes("example");
  found.text = await page.inputValue("#home-text");
  await page.click("[data-do=copy]");
  found.copied = await page.evaluate(() => navigator.clipboard.readText());
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("[data-do=file]")]);
  found.file = [download.suggestedFilename(), fs.readFileSync(await download.path(), "utf8")];
  found.both = await stored(page);
  await page.emulateMedia({ media: "print" });
  found.printed = await page.$$eval("table[data-record] tbody td", (cells) => cells.filter((c) => c.checkVisibility()).map((c) => c.textContent));
  await page.emulateMedia({ media: "screen" });
  page.on("dialog", (dialog) => dialog.accept());
  await page.click("[data-do=delete]");
  found.deletedOne = await stored(page);
  await page.check("[value=K12]");
  await page.click("[data-do=delete]");
  found.deletedAll = await page.evaluate(() => [localStorage.length, sessionStorage.length, document.cookie]);
  await page.context().close();
  return found;
}

async function sendAsClass() {
  const children = JSON.parse(fs.readFileSync(classFile, "utf8"));
  const page = await open();
  const texts = [];
  for (const { code, days, answers, sent } of children) {
    await page.clock.setFixedTime(new Date(`${sent}:00`));
    await visit(page, `${origin}/${SESSION}`);
    await useCode(page, code);
    for (const [day, tries] of Object.entries(days)) {
      await chooseDay(page, day);
      for (const [at, text] of tries.entries()) await write(page, at, text);
    }
    for (const [at, text] of answers.entries()) {
      const field = page.locator(".home-answer textarea").nth(at);
      await field.fill(text);
      await field.press("Tab");
    }
    texts.push(await page.inputValue("#home-text"));
  }
  await page.context().close();
  return texts;
}

async function withoutStorage() {
  const refuse = () => { Storage.prototype.setItem = () => { throw new DOMException("refused", "SecurityError"); }; };
  const page = await open({}, refuse);
  await visit(page, `${origin}/${SESSION}`);
  await useCode(page, "K07");
  await write(page, 0, "131");
  const found = { says: await page.isVisible(".keeps-not"), hides: await page.isVisible(".keeps"), best: await page.textContent("[data-is=best]"), text: await page.inputValue("#home-text") };
  await page.reload();
  found.after = await page.inputValue("#try-0-0");
  await page.context().close();
  return found;
}

async function look(file, colorScheme, width) {
  const page = await open({ colorScheme, viewport: { width, height: 800 } });
  await visit(page, pathToFileURL(path.join(site, file)).href);
  await useCode(page, "K07");
  await chooseDay(page, "2026-05-04");
  await write(page, 0, "١٣١");
  await chooseDay(page, "2026-05-11");
  await write(page, 0, "۱۴۷");
  await write(page, 1, "far");
  await useCode(page, "Anna Smith");
  await page.locator(".home-answer textarea").first().fill("one");
  await page.evaluate(() => document.querySelectorAll("details").forEach((d) => { d.open = true; }));
  const own = { file, colorScheme, width, scroll: await page.evaluate(() => document.documentElement.scrollWidth) };
  own.change = await page.textContent("[data-is=change]");
  // Nothing to touch is smaller than WCAG 2.2 (2.5.8) asks, 24 by 24 pixels.
  own.small = await page.$$eval(".home-who button, .home-task button, .home-task input, .home-send button", (all) =>
    all.filter((one) => one.checkVisibility()).map((one) => one.getBoundingClientRect()).filter((box) => box.height < 24 || box.width < 24).length);
  await page.evaluate(axe);
  const seen = await page.evaluate((values) => axe.run(document, { preload: false, runOnly: { type: "tag", values } }), tags);
  own.rules = seen.passes.length;
  own.violations = seen.violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 140)} ${v.nodes[0].failureSummary?.slice(0, 160)}`);
  await page.context().close();
  return own;
}

async function withoutScript() {
  const page = await open({ javaScriptEnabled: false });
  await visit(page, pathToFileURL(path.join(site, SESSION)).href);
  const found = { table: await page.isVisible("table[data-record]"), home: await page.locator(".home-who").count(), answers: await page.locator(".review details").count() };
  await page.context().close();
  return found;
}

met.keyboard = await byKeyboard();
met.two = await twoChildren();
met.class = await sendAsClass();
met.refusing = await withoutStorage();
met.plain = await withoutScript();
met.looks = [];
for (const file of [SESSION, "ar/sessions/gymnastics/still-as-stones.html"])
  for (const [scheme, width] of [["light", 360], ["dark", 1280]]) met.looks.push(await look(file, scheme, width));
await browser.close();
server.close();
console.log(JSON.stringify(met));
