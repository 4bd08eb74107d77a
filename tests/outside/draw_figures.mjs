// Draws SVG files in Chromium, each to a PNG beside it: node draw_figures.mjs NODE_MODULES FILE…
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, ...files] = process.argv.slice(2);
const { chromium } = createRequire(pathToFileURL(`${modules}/`))("playwright-core");
const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run"];
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: flags });
const page = await browser.newPage({ viewport: { width: 1200, height: 800 } });
for (const file of files) {
  await page.goto(pathToFileURL(file).href);
  const [width, height] = await page.evaluate(() =>
    ["width", "height"].map((side) => Number(document.documentElement.getAttribute(side))));
  await page.setViewportSize({ width, height });
  await page.screenshot({ path: file.replace(/svg$/, "png"), omitBackground: true });
}
await browser.close();
