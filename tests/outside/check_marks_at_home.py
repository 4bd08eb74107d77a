"""Marks at home: the page's script against the library on many entries and against exact fractions; a family at the
keyboard, two children, and a class whose messages come back into progress."""

import binascii
import csv
import json
import pathlib
import random
import re
import shutil
import tempfile
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal
from fractions import Fraction

import numpy
from program import DEMO, NODE_MODULES, ask, fresh_folder, published, run, tool

AGAINST = "the library itself in node, exact fractions, Python's binascii.crc_hqx, Chromium, axe-core's WCAG 2.2 AA rules, numpy"

HERE = pathlib.Path(__file__).parent
ENTRIES = 24_000
UNITS = ["cm", "m", "s", "min", "points", "count", "automatic"]
ROUNDINGS = {"down": ROUND_FLOOR, "up": ROUND_CEILING, "nearest": ROUND_HALF_UP}
OWN_SIZE = {"cm": 10, "m": 1000, "s": 1000, "automatic": 1000, "min": None, "points": 1, "count": 1}
# World Athletics: distances down to the centimetre, hand times up to the tenth, automatic times up to the hundredth (from
# memory).
USUAL = {"cm": [10, "down"], "m": [10, "down"], "s": [100, "up"], "min": [100, "up"], "automatic": [10, "up"]}
# Digits as on keyboards in Arabic and Urdu (Unicode blocks Arabic and Arabic Extended).
DIGITS = ["0123456789", "٠١٢٣٤٥٦٧٨٩", "۰۱۲۳۴۵۶۷۸۹"]
SIZES = {"cm": 10, "mm": 1, "m": 1000, "s": 1000, "min": 60000, "см": 10, "سم": 10, "متر": 1000, "sec": 1000, "с": 1000, "хв": 60000,
         "centimetres": 10, "Metres": 1000, "points": 1, "kg": None, "feet": None, "": None}
STRANGE = ["½", "1/2", "x", "X", "х", "–", "foul", "No Mark", "NaN", "1e3", "١/٢", "²", "3″", "1'20", "１２", "१२", "−5", "-1", "+3", "0x1F", "12 cm 3", "😀", "\u202e12",
           "a" * 300, "9" * 400, "1:2:3", "1:75", "0:07", "1,2,3", "1.234,5", ".5", "5.", ",5", " ", "\t12\n", "1 min 5 s", "1 хв 5 с", "2 min 75 s", "1.5 min", "İ12", "Σας"]
NOISE = "0123456789.,:;-–−x xсм\u00a0\u200f\u200e\u202f٫،٠۹mcsinpt/'\"½\n"


def make_entry(chance, rule):
    """A mark as someone may write it, good or bad, and what an exact fraction says of a good one (thousandths)."""
    own = rule if isinstance(rule, str) else rule[0]
    fitting = {"cm": ["cm", "m", "mm", "см", "سم", ""], "m": ["m", "cm", "متر", ""], "points": ["points", ""], "count": [""]}.get(own, ["s", "sec", "с", "хв", "min", ""])
    kind = chance.random()
    if kind < 0.1:
        return chance.choice(STRANGE), None
    if kind < 0.25:
        return "".join(chance.choice(NOISE) for _ in range(chance.randint(0, 12))), None
    whole = str(chance.choice([chance.randint(0, 20), chance.randint(0, 999), chance.randint(0, 400), chance.randrange(10 ** chance.randint(1, 9)), 10 ** chance.randint(0, 11)]))
    part = "".join(chance.choice("0123456789") for _ in range(chance.choice([0, 0, 0, 1, 2, 3, 9, 10])))
    unit = chance.choice(fitting if chance.random() < 0.7 else list(SIZES))
    size = SIZES[unit] or (OWN_SIZE[own] if not unit else None)
    worth = Fraction(f"{whole}.{part or 0}") * size if size else None
    number = whole + (chance.choice([".", ",", "٫", "،"]) + part if part else "")
    if chance.random() < (0.4 if "s" in fitting else 0.06):
        minutes, seconds = chance.randint(0, 99), chance.randrange(75)
        number, unit = f"{minutes}:{seconds:02}" + (f"{chance.choice('.,')}{part}" if part else ""), chance.choice(["", "", "min"])
        worth = None if seconds > 59 else Fraction(f"{seconds}.{part or 0}") * 1000 + minutes * 60000
    text = number.translate(str.maketrans(DIGITS[0], chance.choice(DIGITS)))
    text = chance.choice(["", " ", "\u200f", "\u00a0"]) + text + chance.choice(["", " ", "\u00a0", "  "]) + unit + chance.choice(["", " ", "\n", "\u200e"])
    if kind > 0.85 and text:
        at = chance.randrange(len(text))
        return text[:at] + chance.choice(NOISE) + text[at + chance.randint(0, 1):], None
    return text, worth


def make_rule(chance):
    rule = chance.choice(UNITS)
    if chance.random() < 0.4 and rule != "automatic":
        return [rule, chance.choice([1, 2, 5, 10, 50, 100, 250, 1000]), chance.choice([*ROUNDINGS, "refused"])]
    return rule


def in_node(site, questions):
    file = fresh_folder("marks-at-home") / "questions.json"
    file.write_text(json.dumps(questions), encoding="utf-8")
    return json.loads(tool("node", HERE / "marks_reading.mjs", site / "static" / "marks-reading.js", file, timeout=300))


def check_reading(tally, site, chance):
    rules = [make_rule(chance) for _ in range(200)]
    tasks = ask([{"ask": "marks", "what": "task", "rule": rule, "better": chance.choice(["more", "less"])} for rule in rules])
    asked, theirs_of = [], []
    for _ in range(ENTRIES):
        at = chance.randrange(len(rules))
        text, worth = make_entry(chance, rules[at])
        asked.append((at, text))
        theirs_of.append(worth)
    library = ask([{"ask": "marks", "what": "returned", "rule": rules[at], "text": text} for at, text in asked])
    page = in_node(site, [{"what": "returned", "task": tasks[at], "text": text} for at, text in asked])
    verdicts, exact = {}, 0
    for (at, text), ours, theirs, worth in zip(asked, page, library, theirs_of):
        tally.holds(f"{text[:40]!r} by {rules[at]} reads alike", ours == theirs, f"page {ours}, library {theirs}")
        key = "mark" if isinstance(ours, list) else str(ours)
        verdicts[key] = verdicts.get(key, 0) + 1
        step, rounding = USUAL.get(rules[at], [1, "refused"]) if isinstance(rules[at], str) else rules[at][1:]
        if isinstance(ours, list) and worth is not None and rounding in ROUNDINGS:
            steps = worth / step
            whole = (Decimal(steps.numerator) / Decimal(steps.denominator)).to_integral_value(ROUNDINGS[rounding])
            tally.same(f"{text!r} by {rules[at]}, exactly", ours[0], int(whole))
            exact += 1
    for key in ("mark", "None", "empty", "no-number", "negative", "wrong-unit", "metres-or-centimetres", "doubtful-minutes", "no-time-here", "no-clock",
                "too-many-seconds", "not-whole", "too-large"):
        tally.holds(f"entries came to “{key}”", verdicts.get(key, 0) >= 20, str(verdicts.get(key, 0)))
    tally.note(f"reading: {ENTRIES} entries, page and library alike ({', '.join(f'{k} {n}' for k, n in sorted(verdicts.items(), key=lambda kv: -kv[1]))}); {exact} marks against exact fractions")


def check_reckoning(tally, site, chance):
    """Personal bests, how marks are shown, codes and the code at a message's end."""
    names = ["Anna", "Smith", "ليلى", "حسن", "Олена", "de", "O'Brien", "fox", "K07", "7", "otter-3", "4b.12", "a@b.example", "+447700900123", "07700 900123", "14/05/2016", "=1", "_", "é", ",", "K 07", "x" * 30]
    codes = [" ".join(chance.choice(names) for _ in range(chance.randint(0, 3))) + chance.choice(["", " ", "!", "\u00a0"]) for _ in range(2000)]
    rules = [make_rule(chance) for _ in range(400)]
    better = [chance.choice(["more", "less"]) for _ in rules]
    tasks = ask([{"ask": "marks", "what": "task", "rule": rule, "better": way} for rule, way in zip(rules, better)])
    marks = [[[chance.choice([None, chance.randint(90, 99)]) for _ in range(chance.randint(0, 4))] for _ in range(2)] for _ in rules]
    shown = [chance.choice([chance.randint(-9999, 9999), chance.randint(0, 10**9)]) for _ in rules]
    # What mail leaves as it is, counted by the rule that stands in the library.
    texts = ["123456789", "Привіт 12", "مرحبا", "é|,.:/-", *("".join(chance.choice("abcß7Éж٣|:.,/- \n>*") for _ in range(chance.randint(0, 90))) for _ in range(400))]
    page = in_node(site, [*({"what": "judge code", "text": code} for code in codes),
                          *({"what": "personal best", "task": task, "earlier": m[0], "today": m[1]} for task, m in zip(tasks, marks)),
                          *({"what": "show", "task": task, "mark": mark} for task, mark in zip(tasks, shown)), *({"what": "check code", "text": text} for text in texts)])
    library = ask([*({"ask": "progress", "what": "judge code", "text": code} for code in codes),
                   *({"ask": "marks", "what": "personal best", "earlier": m[0], "today": m[1], "better": way} for way, m in zip(better, marks)),
                   *({"ask": "marks", "what": "show", "rule": rule, "mark": mark} for rule, mark in zip(rules, shown)), *({"ask": "progress", "what": "check code", "text": text} for text in texts)])
    for ours, theirs in zip(page, library):
        tally.same("codes, bests, marks shown and check codes are alike", ours, theirs)
    for code, ours in zip(codes, page):
        words = [word for word in re.split(r"[ ,]+", code.strip()) if word]
        if len(words) > 1 and all(word.replace("'", "").isalpha() for word in words):
            tally.holds(f"{code!r} is refused as a name", ours == "name" or code.startswith(",") and ours == "signs", str(ours))
    for way, (earlier, today), (_, best) in zip(better, marks, page[len(codes):]):
        all_marks = [mark for mark in earlier + today if mark is not None]
        tally.same("the personal best is the most or the least", best, (max if way == "more" else min)(all_marks, default=None))
    for text, ours in zip(texts, page[-len(texts):]):
        counted = "".join(c for c in text.lower() if c.isalnum() or c in ".,:|/-")
        tally.same(f"check code of {text[:20]!r}", ours, f"{binascii.crc_hqx(counted.encode(), 0xFFFF):04X}")
    tally.same("the published check value of 123456789", page[-len(texts)], "29B1")
    tally.note(f"{len(codes)} codes, {len(rules)} personal bests and marks shown, {len(texts)} check codes")


def make_class(chance):
    """Six children with up to three days each; typed in as many ways as there are keyboards."""
    days, children = ["2026-05-04", "2026-05-11", "2026-05-18"], []
    for number in range(1, 7):
        base = chance.randint(95, 150)
        values = {day: [chance.choice([None, *[base + chance.randint(-8, 14) + chance.choice([0, 0.5, 0.9])] * 4]) for _ in range(3)] for day in days[: chance.randint(1, 3)]}
        values[days[0]][0] = float(base)
        write = lambda value: "x" if value is None else chance.choice([f"{value}", f"{value}".replace(".", ","), f"{value / 100:.3f} m", f"{value} cm".translate(str.maketrans(DIGITS[0], DIGITS[1]))])
        typed = {day: [write(value) for value in tries] for day, tries in values.items()}
        children.append({"code": f"K{number:02}", "values": values, "days": typed, "answers": [f"From the line {number % 2}"], "sent": "2026-05-20T18:05"})
    children[2]["answers"][0] = "<img src=x onerror=alert(1)> \u202eback {a} | b"
    # K01 sends again with a slip corrected: the later message counts.
    again = json.loads(json.dumps(children[0]))
    again["values"]["2026-05-04"][1], again["days"]["2026-05-04"][1], again["sent"] = 260.0, "260", "2026-05-21T08:00"
    return children, again


def check_class(tally, texts, children, again):
    """Messages of a class, quoted, broken and one of them cut off, through the real program."""
    quoted = "".join(f"On Wednesday a parent wrote:\n> Hello,\n> here it is:\n" + "".join(f"> {line}\n" for line in text.splitlines()) + "\nThanks!\n\n" for text in texts[:3])
    wrapped = texts[3].replace(" | ", " |\n", 1) + "\nSent from a phone {really}\n"
    cut = texts[0][: len(texts[0]) // 2].replace("K01", "K09")
    changed = re.sub(r"(\d\d\d) cm", lambda m: f"{int(m[1]) + 1} cm", texts[4], count=1).replace("K05", "K05")
    room = pathlib.Path(tempfile.mkdtemp(prefix="homeground-home-"))
    # The newest first: the order of messages does not matter.
    (room / "mails.txt").write_text(f"{texts[6]}\n{quoted}{wrapped}{cut}\n", encoding="utf-8")
    (room / "more.txt").write_bytes(("\ufeff" + texts[4] + changed + texts[5]).replace("\n", "\r\n").encode())
    done = run("progress", DEMO, "--marks", room / "mails.txt", "--marks", room / "more.txt", "--to", room / "results", "--as-of", "2026-06-01", "--keep-until", "2026-07-31")
    tally.same("what could not be read is told by the status", done.returncode, 1)
    if not (room / "results" / "marks.csv").exists():
        return tally.holds("progress read the messages", False, done.stderr[-500:])
    rows = lambda name: list(csv.DictReader(open(room / "results" / name, encoding="utf-8-sig", newline="")))
    unread = rows("not-read.csv")
    tally.same("the cut and the changed message are listed, nothing else", sorted((row["file"], re.search("cut off|check code", row["what is wrong"])[0]) for row in unread), [("mails.txt", "cut off"), ("more.txt", "check code")])
    made = {row["code"]: row for row in rows("marks.csv")}
    latest = {**{child["code"]: child for child in children}, "K01": again}
    tally.same("every child is there once", sorted(made), sorted(latest))
    lasts = []
    for code, child in latest.items():
        bests = [numpy.max(numpy.floor([value for value in tries if value is not None])) for tries in child["values"].values() if any(v is not None for v in tries)]
        row = made[code]
        lasts.append(bests[-1])
        tally.same(f"{code}: first, last and best", [float(row[key]) for key in ("first", "last", "best")], [bests[0], bests[-1], numpy.max(bests)])
        tally.same(f"{code}: tries", int(row["tries"]), sum(len(tries) for tries in child["values"].values()))
        if len(bests) > 1:
            tally.same(f"{code}: change", float(row["change"]), bests[-1] - bests[0])
    report = (room / "results" / "report.html").read_text(encoding="utf-8")
    tally.holds("the median of the class stands in the report", f"<td>{numpy.median(lasts):.1f} cm</td>" in report, str(numpy.median(lasts)))
    answers = {row["code"]: row["answer"] for row in rows("answers.csv")}
    tally.same("answers come as they were written", [answers[code] for code in ("K01", "K02")], ["From the line 1", "From the line 0"])
    tally.same("a hostile answer is calm words", answers["K03"], "<img src=x onerror=alert(1)> back (a) / b")
    tally.holds("and no markup in the report", "<img src=x" not in report and "&lt;img src=x" in report)
    tally.holds("the report warns that a name may stand in answers", "a name may stand in them" in report)
    tally.note(f"{len(texts)} messages of {len(latest)} children, quoted, broken and one cut off, to the same figures as numpy")
    shutil.rmtree(room, ignore_errors=True)


def check_family(tally, met):
    board = met["keyboard"]
    tally.holds("keyboard alone from the front page to a saved mark", all(board["tabs"]), str(board["tabs"]))
    kept = json.loads(board["kept"])["children"][0]
    tally.same("a mark is kept by its rule, with its code", [kept["code"], list(kept["sessions"][0]["days"].values())], ["k07", [{"challenge 1": ["147 cm", "", ""]}]])
    tally.same("it says how it was read", board["says"], "= 147\u00a0cm")
    tally.same("and it is there after the page is loaded again", board["after"], ["147", True, "147\u00a0cm"])
    two = met["two"]
    tally.same("nothing to choose, correct or send is offered before there is any", two["early"], 0)
    for name, (fault, kept) in two["refused"].items():
        tally.holds(f"“{name}” is refused as a code, and kept nowhere", bool(fault) and kept is None, f"{fault} {kept}")
    tally.holds("a mark before its code is kept nowhere, and that is said", two["waiting"][0] is None and "code name" in two["waiting"][1], str(two["waiting"]))
    tally.same("two children have marks of their own", [two["fresh"], *two["back"]], ["", "120", "126", "126\u00a0cm"])
    tally.holds("a slip is told and changes nothing", two["fault"][0] == "true" and two["fault"][1] and two["fault"][2] == "126\u00a0cm", str(two["fault"]))
    tally.same("a wrong entry is corrected", two["corrected"], "162\u00a0cm")
    tally.same("our answers open one by one, after the child's", [two["answersBefore"], two["answersAfter"]], [0, 1])
    tally.holds("an address in an answer is not kept", not two["personal"])
    tally.same("what is copied is what is shown", two["copied"].replace("\r\n", "\n"), two["text"])
    tally.same("the file is what is shown", two["file"], ["K07-athletics-brook-leap.txt", two["text"]])
    tally.same("paper carries what was kept", two["printed"], ["120\u00a0cm", "162\u00a0cm", "", "162\u00a0cm"])
    tally.holds("only codes are kept", all(code in two["both"] for code in ("K07", "K12")) and "Anna" not in two["both"])
    tally.holds("delete deletes one child", "K12" in two["deletedOne"] and "K07" not in two["deletedOne"], two["deletedOne"])
    tally.same("and then everything", two["deletedAll"], [0, 0, ""])
    refusing = met["refusing"]
    tally.holds("where the browser keeps nothing, the page works and says so", refusing["says"] and not refusing["hides"] and refusing["best"] == "131\u00a0cm" and "131 cm" in refusing["text"], str(refusing))
    tally.same("and has forgotten after it is loaded again", refusing["after"], "")
    tally.holds("without script the table to write on is there, and answers in their folds", met["plain"]["table"] and not met["plain"]["home"] and met["plain"]["answers"] > 2, str(met["plain"]))


def check_looks(tally, met):
    tally.holds("no request carries anything or goes elsewhere", not met["leaves"], str(met["leaves"][:3]))
    tally.holds("requests were listened to", met["requests"] > 50, str(met["requests"]))
    tally.holds("no errors in the console", not met["console"], str(met["console"][:3]))
    for look in met["looks"]:
        where = f"{look['file'].split('/')[-1]} {look['colorScheme']} {look['width']}"
        tally.holds(f"{where}: nothing scrolls sideways", look["scroll"] <= look["width"], str(look["scroll"]))
        tally.holds(f"{where}: digits of the keyboard are read", "+16" in look["change"], look["change"])
        tally.same(f"{where}: nothing to touch is too small", look["small"], 0)
        tally.holds(f"{where}: no violation in {look['rules']} rules", look["rules"] > 5 and not look["violations"], "; ".join(look["violations"][:3]))


def check(tally):
    chance, site = random.Random(2026), published(DEMO)
    check_reading(tally, site, chance)
    check_reckoning(tally, site, chance)
    children, again = make_class(chance)
    file = fresh_folder("marks-at-home-class") / "class.json"
    # The browser forgets nothing between children, so that K01 comes back to its own marks.
    file.write_text(json.dumps([*children, again]), encoding="utf-8")
    met = json.loads(tool("node", HERE / "marks_at_home.mjs", NODE_MODULES, site, file, timeout=300))
    check_family(tally, met)
    check_class(tally, met["class"], children, again)
    check_looks(tally, met)
