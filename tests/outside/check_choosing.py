"""Choosing and searching on the front page: which sessions are left, with script and without, and by keys alone."""

import json
import pathlib
import random
import re
import unicodedata

from check_time import slot_seconds
from program import DEMO, NODE_MODULES, fresh_folder, published, tool
from session_text import line_of, parts_of, read_yaml, session_files

AGAINST = "the YAML read by PyYAML, words folded by Python’s unicodedata, in Chromium (npm playwright-core)"

MINUTES, ACTIVITIES = (20, 30, 45), ("athletics", "dance", "fitness", "games", "gymnastics")


def span_of(ages):
    low, _, high = re.sub("–", "-", ages).partition("-")
    return int(low), int(high or low)


def fits(session, answer):
    question, _, value = answer.partition("-")
    if question == "age":
        low, high = span_of(session["ages"])
        return low <= int(value) <= high
    if question == "minutes":
        return slot_seconds(session) <= int(value) * 60
    if question == "place":
        return value in session["space"].get("where", ["indoors", "outdoors"])
    return session["activity"] == value


def href_of(name):
    return f"sessions/{name}.html"


def folded(text):
    """No accents, no case: what a family may type for it."""
    apart = unicodedata.normalize("NFKD", text.lower())
    return "".join(letter for letter in apart if not unicodedata.combining(letter)).replace("ł", "l").replace("œ", "oe")


def words_in(text):
    return [word for word in re.findall(r"\w+", text) if len(word) > 2 and not word.isdigit()]


def texts_of(session):
    yield from (session["title"], session["summary"], *session.get("objectives", []))
    for _, part in parts_of(session):
        yield from (part["title"], *part.get("key_points", []))


def choices_for(sessions, url, chance):
    for _ in range(14):
        pool = {"age": range(5, 15), "minutes": MINUTES, "place": ("indoors", "outdoors"), "activity": ACTIVITIES}
        asked = [f"{question}-{chance.choice(list(pool[question]))}" for question in chance.sample(sorted(pool), chance.randint(1, 3))]
        asked = [answer for answer in asked if not answer.startswith("minutes") or answer != "minutes-45"]
        for script in (True, False):
            yield {"url": url, "ids": asked, "script": script}


def check(tally):
    folder, chance = published(DEMO), random.Random(11)
    sessions = {name: read_yaml(path) for name, path in session_files(DEMO).items()}
    url = (folder / "index.html").as_uri()
    choices = list(choices_for(sessions, url, chance))
    searches, wanted = [], []
    for name, session in sessions.items():
        for text in texts_of(session):
            words = words_in(line_of(text))
            if len(words) > 1 and chance.random() < 0.4:
                some = chance.sample(words, 2)
                # Shouted, and the last word not typed to its end.
                searches.append({"url": url, "text": f"{some[0].upper()} {some[1][:max(3, len(some[1]) - 2)]}"})
                wanted.append((f"“{searches[-1]['text']}” finds {name}", name, some))
    for file in sorted(DEMO.rglob("*/*.??.yaml")):
        name, language = file.relative_to(DEMO).as_posix().rsplit(".", 2)[:2]
        if name not in sessions:
            continue  # units are reached from the calendar; the search is for sessions
        home = (folder / language / "index.html").as_uri()
        for word in words_in(read_yaml(file)["title"]):
            for text in (word, word.upper(), folded(word)):
                searches.append({"url": home, "text": text})
                wanted.append((f"{language}: “{text}” finds {name}", name, None))
    searches += [{"url": url, "text": "zebra"}, {"url": url, "text": "  "}]
    room = fresh_folder("choosing")
    (room / "plan.json").write_text(json.dumps({"choices": choices, "searches": searches, "walk": {"url": url}}))
    met = json.loads(tool("node", pathlib.Path(__file__).with_name("choosing.mjs"), NODE_MODULES, room / "plan.json", timeout=200))

    for choice, found in zip(choices, met["choices"]):
        where = f"{' '.join(choice['ids'])}{'' if choice['script'] else ' (no script)'}"
        fitting = {href_of(name) for name, session in sessions.items() if all(fits(session, answer) for answer in choice["ids"])}
        tally.same(f"{where}: what is left", set(found["left"]), fitting)
        if choice["script"]:
            tally.holds(f"{where}: how many is said", re.search(rf"\b{len(fitting)}\b", found["said"]), found["said"])
            tally.same(f"{where}: in the address", set(found["address"][1:].split("&")), set(choice["ids"]))
            helps = [a for a in choice["ids"] if any(all(fits(s, b) for b in choice["ids"] if b != a) for s in sessions.values())]
            tally.same(f"{where}: what to leave out is said where nothing fits", len(found["relax"]), 0 if fitting else len(helps))
    everything = {name: folded(" ".join(line_of(text) for text in texts_of(session))) for name, session in sessions.items()}
    for (where, name, some), left in zip(wanted, met["searches"]):
        tally.holds(where, href_of(name) in left, str(left))
        if some:
            # The index holds more than these texts (things and what stands in), never less.
            starts = [folded(some[0]), folded(some[1][:max(3, len(some[1]) - 2)])]
            sure = {href_of(n) for n, text in everything.items() if all(any(w.startswith(s) for w in re.findall(r"\w+", text)) for s in starts)}
            tally.holds(f"{where}, and every other that has both words", sure <= set(left), str(sure - set(left)))
    tally.same("a word of no session: nothing is left", met["searches"][-2], [])
    tally.same("no word: everything is left", len(met["searches"][-1]), len(sessions))
    tally.holds("an address is chosen again", met["back"]["age"] and met["back"]["text"] == "balance" and met["back"]["left"], str(met["back"]))
    tally.holds("an address narrows the list", all(fits(sessions[href[9:-5]], "age-8") for href in met["back"]["left"]), str(met["back"]))

    walk = met["walk"]
    for step in ("entry", "start"):
        tally.holds(f"keys reach the {step}, and it shows", walk[step] and walk[step]["ring"] == "solid", str(walk[step]))
    tally.same("keys: every step in turn", [step["hash"] for step in walk["steps"]], [f"#now-{n + 1}" for n in range(len(walk["steps"]))])
    tally.holds("keys: each step is told", all(str(n + 1) in step["place"] for n, step in enumerate(walk["steps"])))
    tally.holds("keys: the last step has the review", walk["last"])
    tally.holds("keys: Escape leads back", walk["left"])
    sizes = {page.parent.parent.name: page.stat().st_size for page in folder.rglob("static/words.js")}
    tally.note(f"{len(searches)} searches; the words of {len(sessions)} sessions take {min(sizes.values())} to {max(sizes.values())} bytes a language")
