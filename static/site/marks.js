// Marks and answers at home: entered on a session’s page, kept in this browser alone, and turned into a text
// that a family sends by itself. Everything it shows is cloned from the page’s templates.
(() => {
  "use strict";
  const home = document.querySelector("[data-home]");
  if (!home || typeof homegroundMarks !== "object") return;
  const { read, show, best, personal, judgeCode, isPersonal, check, hear, longest } = homegroundMarks;
  const page = JSON.parse(home.dataset.home);
  const clone = (id) => document.getElementById(id).content.cloneNode(true).firstElementChild;
  const words = document.getElementById("home-words").content;
  const fill = (text, with_) => text.replace(/\{(\w+)\}/g, (all, name) => with_[name] ?? all);
  const say = (key, with_ = {}) => fill(words.querySelector(`[data-word="${key}"]`).textContent, with_);
  const bare = (code) => code.replace(/[ _-]/g, "").toLowerCase();
  const today = () => new Date(Date.now() - new Date().getTimezoneOffset() * 60000).toISOString();
  const day = () => today().slice(0, 10);
  const inWords = (date) => new Date(`${date}T12:00`).toLocaleDateString(
    `${document.documentElement.lang}-u-ca-gregory-nu-latn`, { day: "numeric", month: "short", year: "numeric" });

  // What is kept: for each child its sessions, in one place for every page of this address. Where the browser
  // refuses to keep it, it lives as long as the page, and the page says so.
  const KEY = "homeground.marks.1";
  let kept = { children: [], last: "" };
  let keeps = true;
  try {
    localStorage.setItem(`${KEY}.try`, "");
    localStorage.removeItem(`${KEY}.try`);
  } catch { keeps = false; }

  function load() {
    if (!keeps) return kept;
    try {
      const found = JSON.parse(localStorage.getItem(KEY));
      kept = Array.isArray(found?.children) ? found : { children: [], last: "" };
    } catch { kept = { children: [], last: "" }; }
    return kept;
  }

  function change(does) {
    does(load());
    if (!keeps) return;
    try {
      if (kept.children.length) localStorage.setItem(KEY, JSON.stringify(kept));
      else localStorage.removeItem(KEY);
    } catch { keeps = false; }
  }

  const fresh = () => ({ id: page.id, title: page.title, days: {}, answers: {}, said: {} });
  const childOf = (name) => kept.children.find((child) => bare(child.code) === bare(name));
  const isEmpty = (record) => ["days", "answers", "said"].every((what) => !Object.keys(record[what]).length);
  // Until there is a code, what is written waits here.
  let draft = fresh();
  let code = childOf(load().last ?? "")?.code ?? "";

  const record = () => {
    load();
    return code ? childOf(code)?.sessions.find((own) => own.id === page.id) ?? fresh() : draft;
  };

  function write(does) {
    if (!code) return does(draft);
    change(() => {
      const child = childOf(code) ?? kept.children[kept.children.push({ code, sessions: [] }) - 1];
      let own = child.sessions.find((session) => session.id === page.id);
      if (!own) child.sessions.push((own = fresh()));
      does(own);
      own.title = page.title;
      child.sessions = child.sessions.filter((session) => !isEmpty(session));
    });
  }

  function setCode(name) {
    code = childOf(name)?.code ?? name;
    change(() => {
      kept.last = code;
      if (!childOf(code)) kept.children.push({ code, sessions: [] });
    });
    const waiting = draft;
    draft = fresh();
    if (isEmpty(waiting)) return;
    write((own) => {
      for (const [date, parts] of Object.entries(waiting.days)) own.days[date] = { ...parts, ...own.days[date] };
      own.answers = { ...waiting.answers, ...own.answers };
      own.said = { ...waiting.said, ...own.said };
    });
  }

  // Who: the codes of this home, and a field for another.
  const who = clone("home-who");
  const whoField = who.querySelector("#home-code");
  const refuse = (field, fault, text) => {
    fault.textContent = text;
    field.toggleAttribute("aria-invalid", !!text);
    if (text) field.setAttribute("aria-invalid", "true");
  };
  const refusedCode = { birth: "mail", phone: "mail", long: "signs" };

  who.querySelector("form").addEventListener("submit", (event) => {
    event.preventDefault();
    const name = whoField.value.trim();
    const why = judgeCode(name);
    refuse(whoField, who.querySelector(".fault"), why ? page.refused[refusedCode[why] ?? why] : "");
    if (why) return whoField.focus();
    setCode(name);
    whoField.value = "";
    draw();
  });

  function drawWho() {
    who.querySelector(".keeps").hidden = !keeps;
    who.querySelector(".keeps-not").hidden = keeps;
    const known = who.querySelector(".known");
    const focused = known.contains(document.activeElement);
    known.hidden = !kept.children.length;
    who.querySelector(".another").open = !code;
    known.querySelectorAll("label").forEach((label) => label.remove());
    for (const child of kept.children) {
      const label = document.createElement("label");
      const radio = Object.assign(document.createElement("input"), { type: "radio", name: "home-known", value: child.code });
      radio.checked = child.code === code;
      radio.addEventListener("change", () => { setCode(child.code); draw(); });
      const name = document.createElement("bdi");
      name.textContent = child.code;
      label.append(radio, " ", name);
      known.append(label);
      if (focused && radio.checked) radio.focus();
    }
  }

  // One task: a day, its tries, and what they come to.
  function makeTask(task, at) {
    const form = clone("home-task");
    const date = form.querySelector("[type=date]");
    const fields = [];
    const part = (own, on) => own.days[on]?.[task.part] ?? [];
    const local = (mark) => (mark === null ? "x" : show(mark, task, task.point, task.after));
    const marks = (list) => list.filter(Boolean).map((text) => read(text, task));
    form.querySelector("h3").textContent = task.title;
    form.querySelector(".help").textContent = fill(form.querySelector(".help").textContent, { mark: task.such });
    date.value = day();
    const tell = (text) => { form.querySelector(".cheer").textContent = text; };

    // Keeps one try; what can’t be read changes nothing that is kept.
    function keep(number) {
      const field = fields[number];
      const text = field.value.trim();
      const mark = text ? read(text, task) : "";
      const isFault = text && typeof mark === "string";
      const said = field.closest(".try").querySelector(".read");
      refuse(field, said, isFault ? fill(page.refused[hear[mark]], { mark: task.such }) : "");
      if (isFault) return;
      said.textContent = Number.isInteger(mark) ? `= ${local(mark)}` : "";
      if (!date.value || date.value > day()) return tell(say("day-to-come"));
      write((own) => {
        const parts = (own.days[date.value] ??= {});
        const list = Array.from({ length: task.attempts }, (_, n) => parts[task.part]?.[n] ?? "");
        list[number] = !text ? "" : mark === null ? "x" : show(mark, task);
        parts[task.part] = list;
        if (!list.some(Boolean)) delete parts[task.part];
        if (!Object.keys(parts).length) delete own.days[date.value];
      });
      drawBests();
      drawSend();
    }

    for (let number = 0; number < task.attempts; number++) {
      const row = clone("home-try");
      const field = row.querySelector("input");
      field.id = `try-${at}-${number}`;
      row.querySelector("label").htmlFor = field.id;
      row.querySelector("label span").textContent = number + 1;
      row.querySelector(".read").id = `${field.id}-read`;
      field.setAttribute("aria-describedby", `${field.id}-read`);
      row.querySelector(".no-mark").setAttribute("aria-describedby", field.id);
      // Phones show figures at once; a time needs its colon.
      if (!task.form.clock) field.inputMode = "decimal";
      field.addEventListener("change", () => keep(number));
      row.querySelector(".no-mark").addEventListener("click", () => {
        field.value = field.value === "x" ? "" : "x";
        keep(number);
      });
      fields.push(field);
      form.querySelector(".tries").append(row);
    }
    form.addEventListener("submit", (event) => event.preventDefault());
    date.addEventListener("change", () => drawDay());

    function drawBests() {
      const own = record();
      const earlier = Object.keys(own.days).filter((on) => on < date.value && part(own, on).length).sort();
      const all = Object.keys(own.days).flatMap((on) => marks(part(own, on)));
      const now = best(marks(part(own, date.value)), task);
      const [standing] = personal(earlier.flatMap((on) => marks(part(own, on))), marks(part(own, date.value)), task);
      const before = earlier.findLast((on) => best(marks(part(own, on)), task) !== undefined);
      const put = (is, text) => { form.querySelector(`[data-is=${is}]`).textContent = text; };
      put("today", now === undefined ? "–" : local(now));
      put("best", all.some(Number.isInteger) ? local(best(all, task)) : "–");
      const gain = before && now !== undefined ? now - best(marks(part(own, before)), task) : undefined;
      form.querySelector("[data-is=since]").textContent = before ? say("since", { date: inWords(before) }) : sinceNone;
      put("change", gain === undefined ? "–" : `\u200e${gain > 0 ? "+" : ""}${local(gain)}`);
      const cheer = ["first", "new", "equalled"].includes(standing) ? say(standing) : "";
      tell(!code && now !== undefined ? say("code-first") : cheer);
      drawDays(own);
      drawPaper(own);
    }
    const sinceNone = form.querySelector("[data-is=since]").textContent;

    function drawDays(own) {
      const rows = form.querySelector("tbody");
      const days = Object.keys(own.days).filter((on) => part(own, on).length).sort().reverse();
      form.querySelector(".earlier").hidden = !days.length || !code;
      rows.replaceChildren(...days.map((on) => {
        const row = document.createElement("tr");
        const cell = (text) => { row.insertCell().textContent = text; };
        const list = marks(part(own, on));
        const button = Object.assign(document.createElement("button"), { type: "button", textContent: inWords(on) });
        button.addEventListener("click", () => { date.value = on; drawDay(); fields[0].focus(); });
        row.insertCell().append(button);
        cell(list.map(local).join(", "));
        cell(list.some(Number.isInteger) ? local(best(list, task)) : "–");
        return row;
      }));
    }

    // The table that is printed, with what is kept of this day.
    function drawPaper(own) {
      const list = part(own, date.value);
      const cells = document.querySelectorAll("table[data-record]")[at]?.querySelectorAll("tbody td") ?? [];
      const now = best(marks(list), task);
      cells.forEach((cell, n) => {
        const text = n < task.attempts ? list[n] && local(read(list[n], task)) : now !== undefined && local(now);
        cell.textContent = text || "";
      });
      const [codeLine, dateLine] = document.querySelectorAll("[data-record].blank span");
      [[codeLine, code], [dateLine, list.length ? inWords(date.value) : ""]].forEach(([line, text]) => {
        if (line) line.textContent = `${(line.dataset.says ??= line.textContent)} ${text}`;
      });
    }

    function drawDay() {
      const list = part(record(), date.value);
      date.max = day();
      fields.forEach((field, number) => {
        const mark = list[number] ? read(list[number], task) : "";
        field.value = mark === "" ? "" : mark === null ? "x" : show(mark, task, task.point, "");
        refuse(field, field.closest(".try").querySelector(".read"), "");
      });
      drawBests();
    }
    home.querySelector(".home-who").parentNode.insertBefore(form, slot);
    return drawDay;
  }

  // A question: our answer opens after the child’s own.
  const clean = (text) => [...text.replace(/[\p{Cc}\u2028\u2029]/gu, " ").replace(/[\u200b\u202a-\u202e\u2060-\u2069\ufeff]/g, "")
    .replace(/\{/g, "(").replace(/\}/g, ")").replace(/\|/g, "/").replace(/\s+/g, " ").trim()].slice(0, longest).join("");

  function makeAnswer(item, at) {
    const number = at + 1;
    const place = clone("home-answer");
    const text = place.querySelector("textarea");
    const said = place.querySelector("[type=checkbox]");
    const ours = item.querySelector("details");
    item.querySelector(".ask").after(place);
    const open = () => {
      if (ours) ours.hidden = !text.value.trim() && !said.checked;
      place.querySelector(".written").textContent = text.value;
      item.classList.toggle("answered", !!text.value.trim());
    };
    text.addEventListener("input", open);
    text.addEventListener("change", () => {
      const own = clean(text.value);
      refuse(text, place.querySelector(".fault"), isPersonal(own) ? say("personal") : !code && own ? say("code-first") : "");
      if (isPersonal(own)) return;
      text.value = own;
      write((record_) => { if (own) record_.answers[number] = own; else delete record_.answers[number]; });
      drawSend();
    });
    said.addEventListener("change", () => {
      write((record_) => { if (said.checked) record_.said[number] = 1; else delete record_.said[number]; });
      open();
    });
    return () => {
      const own = record();
      text.value = own.answers[number] ?? "";
      said.checked = !!own.said[number];
      if (ours) ours.open = false;
      refuse(text, place.querySelector(".fault"), "");
      open();
    };
  }

  // Sending: a text that says all it holds, with a code by which a slip is noticed.
  const messageOf = (own) => {
    const says = [];
    for (const on of Object.keys(own.days).sort())
      for (const [part, list] of Object.entries(own.days[on])) says.push(`${on} ${part}: ${list.join(", ").replace(/(, )+$/, "")}`);
    for (const [number, text] of Object.entries(own.answers)) says.push(`answer ${number}: ${text}`);
    const head = `homeground 1 | ${code} | ${own.id} | sent ${today().slice(0, 16).replace("T", " ")}`;
    const whole = [head, ...says].join("\n| ");
    return `${own.title}\n{${whole}\n| check ${check(whole)}}\n`;
  };
  const canSend = (own) => Object.keys(own.days).length || Object.keys(own.answers).length;
  const send = clone("home-send");
  const sendText = send.querySelector("textarea");
  const part = (name) => send.querySelector(name);
  const sendWords = new Map([...send.querySelectorAll(".own button")].map((button) => [button, button.textContent]));
  part("[data-do=share]").hidden = !navigator.share;

  function drawSend() {
    const own = record();
    const is = !!code && !!canSend(own);
    part(".nothing").hidden = is;
    part(".something").hidden = !is;
    part(".own").hidden = !code;
    sendText.value = is ? messageOf(own) : "";
    sendText.rows = Math.min(12, sendText.value.split("\n").length + 1);
    sendWords.forEach((text, button) => { button.textContent = fill(text, { code }); });
    part(".done").textContent = "";
  }

  function save(name, text) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
    link.download = `${`${code} ${name}`.replace(/[^\p{L}\p{M}\p{N}]+/gu, "-")}.txt`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  }

  const ways = {
    async copy() {
      try { await navigator.clipboard.writeText(sendText.value); } catch {
        sendText.select();
        if (!document.execCommand("copy")) return;
      }
      part(".done").textContent = say("copied");
    },
    share: () => navigator.share({ text: sendText.value }).catch(() => {}),
    file: () => save(page.id, sendText.value),
    print: () => window.print(),
    export: () => save("", (load(), childOf(code)?.sessions ?? []).filter(canSend).map(messageOf).join("\n")),
    delete() {
      if (!window.confirm(say("sure", { code }))) return;
      change(() => {
        kept.children = kept.children.filter((child) => bare(child.code) !== bare(code));
        kept.last = "";
      });
      code = "";
      draft = fresh();
      draw();
      part(".done").textContent = say("deleted");
    },
  };
  send.addEventListener("click", (event) => ways[event.target.dataset.do]?.());

  const about = home.querySelector("h2 + p");
  about.after(who);
  const slot = who.nextSibling;
  home.classList.add("at-home");
  const tasks = page.tasks.map(makeTask);
  const answers = [...document.querySelectorAll(".review > ol > li")].map(makeAnswer);
  (document.querySelector(".review") ?? home).after(send);
  function draw() {
    load();
    drawWho();
    [...tasks, ...answers].forEach((redraw) => redraw());
    drawSend();
  }
  addEventListener("storage", (event) => event.key === KEY && draw());
  draw();
})();
