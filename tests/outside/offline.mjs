// Serves a published folder, looks at pages, stops the server, and looks again; then serves another edition.
//   node offline.mjs NODE_MODULES FOLDER OTHER PAGE UNSEEN        prints what was met as JSON
import fs from "node:fs";
import http from "node:http";
import path from "node:path";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, folder, other, seen, unseen] = process.argv.slice(2);
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const kinds = { ".html": "text/html", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml", ".woff2": "font/woff2", ".pdf": "application/pdf" };

function serve(root, port) {
  const server = http.createServer((ask, answer) => {
    const name = path.join(root, decodeURIComponent(new URL(ask.url, "http://x").pathname).replace(/\/$/, "/index.html"));
    if (!fs.existsSync(name)) return answer.writeHead(404).end();
    answer.writeHead(200, { "content-type": kinds[path.extname(name)] ?? "application/octet-stream", "cache-control": "no-store" });
    answer.end(fs.readFileSync(name));
  });
  return new Promise((done) => server.listen(port, "127.0.0.1", () => done(server)));
}
const stop = (server) => { server.closeAllConnections(); return new Promise((done) => server.close(done)); };
const keys = (page) => page.evaluate(async () => Object.fromEntries(await Promise.all((await caches.keys()).map(async (key) => [key, (await (await caches.open(key)).keys()).length]))));
const settle = (page) => page.waitForTimeout(600);

let server = await serve(folder, 0);
const { port } = server.address();
const home = `http://127.0.0.1:${port}/`;
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--headless", "--no-sandbox", "--disable-gpu"] });
const page = await (await browser.newContext()).newPage();
const elsewhere = [];
page.on("request", (r) => r.url().startsWith(home) || elsewhere.push(r.url()));

await page.goto(home + seen);
await page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
await settle(page);
const kept = await keys(page);
await stop(server);
const look = async (address) => { await page.goto(home + address); return { title: await page.title(), styled: await page.evaluate(() => getComputedStyle(document.querySelector(".touchline")).display), fonts: await page.evaluate(() => document.fonts.ready.then((all) => [...all].filter((f) => f.status === "loaded").length)) }; };
const away = { seen: await look(seen), again: await (async () => { await page.reload(); return page.title(); })(), front: await look(""), unseen: await look(unseen) };

server = await serve(other, port);
await page.goto(home + seen);
await page.evaluate(async () => { const known = await navigator.serviceWorker.ready; await known.update(); });
await settle(page);
await settle(page);
await page.reload();
const later = { kept: await keys(page), title: await page.title() };
await stop(server);
const still = { seen: await look(seen), front: await look("index.html") };
await browser.close();
console.log(JSON.stringify({ kept, away, later, still, elsewhere }));
