// Does a session part by part with a clock that the check turns, and prints what the timer showed and told.
//   node doing.mjs NODE_MODULES PLAN.json
// PLAN: [{ url, parts: [{ step, looks: [milliseconds …] }] }]
import fs from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const [modules, list] = process.argv.slice(2);
const require = createRequire(pathToFileURL(`${modules}/`));
const { chromium } = require("playwright-core");
const plan = JSON.parse(fs.readFileSync(list, "utf8"));
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--headless", "--no-sandbox", "--disable-gpu"] });

// What a device would do, written down instead: sound, buzz, voice, the lamp.
function listen() {
  self.told = { beeps: 0, buzzes: 0, spoken: [], lamp: 0, voices: [{ localService: true, lang: "en-GB" }] };
  const nothing = () => {};
  class Sound {
    currentTime = 0;
    resume = nothing;
    createOscillator() { return { frequency: {}, connect: (next) => next, start: () => { self.told.beeps += 1; }, stop: nothing }; }
    createGain() { return { gain: { setValueAtTime: nothing, exponentialRampToValueAtTime: nothing }, connect: (next) => next }; }
  }
  self.AudioContext = Sound;
  const put = (on, name, value) => Object.defineProperty(on, name, { value, configurable: true });
  put(navigator, "vibrate", () => { self.told.buzzes += 1; return true; });
  put(navigator, "wakeLock", { request: async () => { self.told.lamp += 1; return { release: async () => { self.told.lamp -= 1; } }; } });
  put(self, "SpeechSynthesisUtterance", class { constructor(text) { this.text = text; } });
  put(self, "speechSynthesis", { getVoices: () => self.told.voices, addEventListener: nothing, cancel: nothing, speak: (words) => self.told.spoken.push(words.text) });
}

const shown = () => ({
  left: document.querySelector(".timer-left").textContent,
  what: document.querySelector(".timer-what b").textContent,
  round: document.querySelector("[data-round]").textContent,
  state: document.querySelector(".timer").dataset.state,
  says: document.querySelector(".timer-says").textContent,
  ticked: document.querySelectorAll(".now .rounds input:checked").length,
});

async function doPart(page, url, part) {
  await page.goto("about:blank");
  await page.goto(`${url}#now-${part.step}`);
  const met = { title: await page.textContent(".part.now h2"), looks: [] };
  if (part.voice) for (const name of ["voice", "buzz"]) await page.check(`.timer input[name=${name}]`);
  met.before = await page.evaluate(shown);
  await page.click(".timer-go");
  let gone = 0;
  for (const look of part.looks) {
    // A jump stands for a browser that slept; where every sound counts the clock runs.
    await (part.voice ? page.clock.runFor(look - gone) : page.clock.fastForward(look - gone));
    gone = look;
    met.looks.push(await page.evaluate(shown));
    if (part.pauses) {
      await page.click(".timer-go");
      await page.clock.runFor(61000);
      met.looks.push({ ...await page.evaluate(shown), lamp: await page.evaluate(() => self.told.lamp) });
      await page.click(".timer-go");
    }
  }
  met.told = await page.evaluate(() => self.told);
  return met;
}

const all = [];
for (const { url, parts } of plan) {
  const page = await browser.newPage({ viewport: { width: 360, height: 780 } });
  await page.addInitScript(listen);
  await page.clock.install({ time: new Date("2026-06-01T10:00:00") });
  // Time stands still but where the check turns it.
  await page.clock.pauseAt(new Date("2026-06-01T10:00:01"));
  for (const part of parts) all.push(await doPart(page, url, part));
  await page.close();
}
await browser.close();
console.log(JSON.stringify(all));
