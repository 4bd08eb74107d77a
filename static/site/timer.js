// The timer of a part: work, rest and rounds with big figures; sound, buzz and voice by choice. It asks the
// clock how much time has gone each time it looks, so that a browser that sleeps loses nothing.
(() => {
  "use strict";
  const pattern = document.getElementById("timer");
  if (!pattern) return;
  const KINDS = ["explain", "set-up", "work", "rest", "recover"];
  const LOOK = 100;
  const ways = { sound: true, buzz: false, voice: false, ...remembered() };
  let run = null;

  // The choices of ways stay for this visit, and nowhere else.
  function remembered() {
    try { return JSON.parse(sessionStorage.getItem("homeground timer")); } catch { return null; }
  }
  function remember() {
    try { sessionStorage.setItem("homeground timer", JSON.stringify(ways)); } catch { /* no place to keep it */ }
  }

  // “60 30 30 30 4 60” → the stretches of time one after another; rest lies only between rounds.
  function stretchesOf(times) {
    const [explain, setUp, work, rest, rounds, recover] = times.split(" ").map(Number);
    const all = [{ kind: 0, seconds: explain }, { kind: 1, seconds: setUp }];
    for (let round = 1; round <= rounds; round += 1) {
      all.push({ kind: 2, seconds: work, round, rounds });
      if (round < rounds) all.push({ kind: 3, seconds: rest, round, rounds });
    }
    all.push({ kind: 4, seconds: recover });
    return all.filter((stretch) => stretch.seconds > 0);
  }

  // Where a run stands after some milliseconds: which stretch, and the whole seconds left of it.
  function standing(stretches, gone) {
    let left = gone;
    for (const [at, stretch] of stretches.entries()) {
      if (left < stretch.seconds * 1000) return { at, left: Math.ceil((stretch.seconds * 1000 - left) / 1000) };
      left -= stretch.seconds * 1000;
    }
    return { at: stretches.length, left: 0 };
  }

  const clock = (seconds) => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  const gone = () => run.before + (run.since === null ? 0 : Date.now() - run.since);

  let sounds = null;
  function beep(pitch, seconds) {
    if (!ways.sound || !self.AudioContext) return;
    sounds = sounds || new AudioContext();
    sounds.resume();
    const [tone, volume, now] = [sounds.createOscillator(), sounds.createGain(), sounds.currentTime];
    tone.frequency.value = pitch;
    volume.gain.setValueAtTime(0.25, now);
    volume.gain.exponentialRampToValueAtTime(0.001, now + seconds);
    tone.connect(volume).connect(sounds.destination);
    tone.start();
    tone.stop(now + seconds);
  }
  function buzz(pattern) {
    if (ways.buzz && navigator.vibrate) navigator.vibrate(pattern);
  }

  // Only voices that live on the device speak: others would send the words away.
  const language = document.documentElement.lang.split("-")[0].toLowerCase();
  const ownVoice = () => self.speechSynthesis && speechSynthesis.getVoices()
    .find((voice) => voice.localService && voice.lang.toLowerCase().startsWith(language));
  function speak(text) {
    const voice = ways.voice && ownVoice();
    if (!voice) return;
    const words = new SpeechSynthesisUtterance(text);
    [words.voice, words.lang] = [voice, voice.lang];
    speechSynthesis.cancel();
    speechSynthesis.speak(words);
  }

  let lamp = null;
  async function stayAwake(isWanted) {
    try {
      if (isWanted && navigator.wakeLock && document.visibilityState === "visible") lamp = await navigator.wakeLock.request("screen");
      if (!isWanted && lamp) { const old = lamp; lamp = null; await old.release(); }
    } catch { /* the device decides */ }
  }

  function build(part) {
    const panel = pattern.content.cloneNode(true).querySelector(".timer");
    const find = (name) => panel.querySelector(name);
    const stretches = stretchesOf(part.dataset.times);
    const line = find(".timer-line");
    for (const stretch of stretches) {
      const piece = document.createElement("i");
      piece.className = KINDS[stretch.kind];
      piece.style.flexGrow = stretch.seconds;
      piece.append(document.createElement("b"));
      line.append(piece);
    }
    const words = [...panel.querySelectorAll("li")].map((item) => item.textContent);
    find(".timer-go").addEventListener("click", () => (run.since === null ? go() : pause()));
    find(".timer-again").addEventListener("click", again);
    for (const box of panel.querySelectorAll("input")) {
      box.checked = ways[box.name];
      box.addEventListener("change", () => { ways[box.name] = box.checked; remember(); });
    }
    find("[name=buzz]").parentNode.hidden = !navigator.vibrate;
    const tellVoice = () => { find("[name=voice]").parentNode.hidden = !ownVoice(); };
    tellVoice();
    if (self.speechSynthesis) speechSynthesis.addEventListener("voiceschanged", tellVoice);
    return { part, panel, find, stretches, words, before: 0, since: null, last: null, ticking: null };
  }

  function go() {
    const { at } = standing(run.stretches, gone());
    if (at === run.stretches.length) run.before = 0;
    run.since = Date.now();
    run.last = null;
    run.ticking = setInterval(look, LOOK);
    stayAwake(true);
    look();
  }
  function pause() {
    run.before = gone();
    stop();
    look();
  }
  function stop() {
    run.since = null;
    clearInterval(run.ticking);
    if (self.speechSynthesis) speechSynthesis.cancel();
    stayAwake(false);
  }
  function again() {
    stop();
    run.before = 0;
    run.last = null;
    for (const box of run.part.querySelectorAll(".rounds input")) box.checked = false;
    look();
  }

  function look() {
    const now = standing(run.stretches, gone());
    const isRunning = run.since !== null;
    const isNew = isRunning && (!run.last || run.last.at !== now.at);
    const isNext = isRunning && (isNew || run.last.left !== now.left);
    if (isNext) tell(now, isNew);
    if (isRunning) run.last = now;
    show(now);
    if (now.at === run.stretches.length && isRunning) { run.before = gone(); stop(); show(now); }
  }

  function show({ at, left }) {
    const stretch = run.stretches[at];
    const { find, words, panel } = run;
    panel.dataset.kind = stretch ? KINDS[stretch.kind] : "done";
    panel.dataset.state = run.since !== null ? "running" : gone() > 0 && stretch ? "paused" : stretch ? "ready" : "done";
    find(".timer-what b").textContent = words[stretch ? stretch.kind : 5];
    const round = find("[data-round]");
    round.textContent = stretch && stretch.rounds > 1 ? round.dataset.round.replace("{n}", stretch.round).replace("{of}", stretch.rounds) : "";
    find(".timer-left").textContent = clock(left);
    const button = find(".timer-go");
    button.textContent = button.dataset[run.since !== null ? "pause" : gone() > 0 && stretch ? "on" : "start"];
    [...find(".timer-line").children].forEach((piece, place) => {
      const share = place < at ? 1 : place > at ? 0 : 1 - left / stretch.seconds;
      piece.firstChild.style.inlineSize = `${share * 100}%`;
    });
  }

  // Sound, buzz, voice, and the line that is read out for who cannot look.
  function tell({ at, left }, isNew) {
    const stretch = run.stretches[at];
    if (isNew) {
      const text = stretch ? `${run.words[stretch.kind]}, ${clock(stretch.seconds)}` : run.words[5];
      run.find(".timer-says").textContent = text;
      speak(stretch ? `${run.words[stretch.kind]}. ${stretch.seconds < 60 ? stretch.seconds : clock(stretch.seconds)}` : text);
      beep(stretch && stretch.kind === 2 ? 880 : 587, 0.5);
      buzz(stretch ? [300] : [300, 100, 300]);
      tick(at);
    } else if (left === 10 && stretch.seconds > 15) {
      run.find(".timer-says").textContent = clock(10);
      speak("10");
    } else if (left > 0 && left <= 3 && stretch.seconds > 5) {
      beep(440, 0.12);
      buzz([60]);
      speak(String(left));
    }
  }

  // Rounds that are over are ticked off on the page.
  function tick(at) {
    const over = run.stretches.slice(0, at).filter((stretch) => stretch.kind === 2).length;
    [...run.part.querySelectorAll(".rounds input")].forEach((box, place) => { if (place < over) box.checked = true; });
  }

  document.addEventListener("homeground:step", ({ detail: { part } }) => {
    if (run) { stop(); run.panel.remove(); run = null; }
    if (!part || !part.dataset.times) return;
    run = build(part);
    part.querySelector("header").after(run.panel);
    look();
  });
  document.addEventListener("visibilitychange", () => { if (run && run.since !== null) stayAwake(true); });
})();
