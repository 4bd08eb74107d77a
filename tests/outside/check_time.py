"""Totals, offsets, shares and the slot's sum, reckoned again from the YAML and compared with what is shown."""

import json
import math
import re
from fractions import Fraction

from check_pages import read_page
from paper import sheet, words_on
from program import AS_OF, DEMO, PACKS, fresh_folder, published, run, teachers_of
from session_text import parts_of, read_yaml, session_files, squeezed
from stress_pack import bare, make_stress_pack, write_yaml

AGAINST = "sums reckoned in Python from the YAML read by PyYAML"

STEPS = {"s": 1, "min": 60, "h": 3600}
ACTIVE = ("moderate", "vigorous")


def seconds(text):
    """"1 min 30 s" → 90"""
    pairs = re.findall(r"(\d+)\s*(h|min|s)\b", str(text))
    return sum(int(number) * STEPS[unit] for number, unit in pairs)


def work_seconds(time):
    """Counts at a tempo take a started second whole."""
    if "counts" in time:
        return math.ceil(Fraction(60 * int(time["counts"]), int(time["tempo"])))
    return seconds(time.get("work", ""))


def total_seconds(time):
    """explain + set_up + rounds · work + (rounds − 1) · rest + recover, as the file format says."""
    if isinstance(time, str):
        return seconds(time)
    rounds = int(time.get("rounds", 1))
    once = sum(seconds(time.get(key, "")) for key in ("explain", "set_up", "recover"))
    return once + rounds * work_seconds(time) + (rounds - 1) * seconds(time.get("rest", ""))


def moving_seconds(time):
    """The rounds of work alone: nobody moves while they rest or listen."""
    return seconds(time) if isinstance(time, str) else int(time.get("rounds", 1)) * work_seconds(time)


def slot_seconds(session):
    minutes = session["minutes"]
    return int(minutes) * 60 if minutes.isdigit() else seconds(minutes)


def spoken(total):
    """90 → "1 min 30 s\""""
    minutes, rest = divmod(total, 60)
    return " ".join([f"{minutes} min"] * (minutes > 0) + [f"{rest} s"] * (rest > 0)) or "0 s"


def clock(total):
    return f"{total // 60}:{total % 60:02}"


def words(element):
    return " ".join("".join(element.itertext()).split())


def with_class(tree, name):
    return [e for e in tree.iter() if name in (e.get("class") or "").split()]


BAR = re.compile(r"M(-?\d*\.?\d+) ?(-?\d*\.?\d+)h(\d*\.?\d+)v(\d*\.?\d+)h")
EFFORTS = [None, "light", "moderate", "vigorous"]


def bars_of(tree):
    """From, width (in per cent of the time line) and height of each bar, read from the drawing’s paths."""
    line = with_class(tree, "timeline")[0]
    whole = float(line.get("viewbox", line.get("viewBox")).split()[2])
    fields = [e for name in ("fill-pale", "fill-measured") for e in with_class(line, name)]
    bars = [bar for field in fields for bar in BAR.findall(field.get("d"))]
    return sorted((100 * float(x) / whole, 100 * float(wide) / whole, float(tall)) for x, _, wide, tall in bars)


def check_heights(tally, where, efforts, bars):
    """The harder the work, the taller the bar."""
    tall = {}
    for effort, (_, _, height) in zip(efforts, bars):
        tall.setdefault(EFFORTS.index(effort) if effort in EFFORTS else 0, set()).add(height)
    tally.holds(f"{where}: one height for each effort", all(len(heights) == 1 for heights in tall.values()), str(tall))
    order = [min(tall[effort]) for effort in sorted(tall)]
    tally.holds(f"{where}: a taller bar is harder work", order == sorted(set(order)), str(tall))


def check_page(tally, where, parts, efforts, page, slot):
    tree = read_page(page)
    sections = with_class(tree, "part")
    if not tally.same(f"{where}: parts on the page", len(sections), len(parts)):
        return
    shown_bars = bars_of(tree)
    if not tally.same(f"{where}: bars on the time line", len(shown_bars), len(parts)):
        return
    check_heights(tally, where, efforts, shown_bars)
    whole, start = max(slot, sum(total for _, total in parts)), 0
    for section, (title, total), bar in zip(sections, parts, shown_bars):
        at = f"{where}: {title[:40]}"
        pace, span = with_class(section, "pace")[0], words(with_class(section, "clock")[0])
        tally.same(f"{at}: total", words(next(pace.iter("b"))), spoken(total))
        tally.same(f"{at}: from and to", re.findall(r"\d+:\d\d", span), [clock(start), clock(start + total)])
        share = (100 * start / whole, 100 * total / whole)
        tally.holds(f"{at}: bar of the time line", abs(bar[0] - share[0]) < 0.6 and abs(bar[1] - share[1]) < 1.2,
                    f"ours {bar}, theirs {share}")
        start += total
    running = [words(time) for time in with_class(with_class(tree, "running")[0], "time")]
    tally.same(f"{where}: running order", running, [spoken(total) for _, total in parts])


def missed_starts(text, parts):
    """Every start that does not stand after the one before it."""
    missed, at, start = [], 0, 0
    for title, total in parts:
        label = re.compile(re.escape(clock(start)) + ".{0,40}?" + re.escape(squeezed(title)))
        found = label.search(text, at)
        at = found.end() if found else at
        missed += [] if found else [f"{clock(start)} {title[:40]}"]
        start += total
    return missed


def check_home_guide(tally, where, parts, path):
    """Every part stands on the guide with its start, one after another."""
    readings = [missed_starts(words_on(path, None, order), parts) for order in [(), ("-raw",)]]
    missed = min(readings, key=len)
    for title, _ in parts:
        tally.holds(f"{where}: the home guide has the start of {title[:40]}", not any(title[:40] in m for m in missed), str(missed[:2]))


def lessons_in(folder):
    """The lessons of the teachers’ folder, by the titles of their sessions."""
    pages = [read_page(page) for page in sorted((folder / "sessions").rglob("*.html"))]
    return {words(next(page.iter("h1"))): with_class(page, "lesson")[0] for page in pages}


def check_teachers(tally, sessions, folder):
    lessons = lessons_in(folder)
    for name, session in sessions.items():
        lesson = lessons.get(" ".join(session["title"].split()))
        if not tally.holds(f"{name} is on the teachers' page", lesson is not None):
            continue
        starts = [words(next(row.iter("td"))) for row in next(lesson.iter("tbody")).iter("tr")]
        totals = [total_seconds(part["time"]) for _, part in parts_of(session)]
        tally.same(f"{name}: starts for the teacher", starts, [clock(sum(totals[:n])) for n in range(len(totals))])
        active = sum(moving_seconds(part["time"]) for _, part in parts_of(session) if part.get("effort") in ACTIVE)
        shown = [words(e) for e in lesson.iter("p") if "estimate" in words(e)]
        share = math.floor(Fraction(100 * active, slot_seconds(session)) + Fraction(1, 2))
        tally.holds(f"{name}: active {spoken(active)}, {share} %",
                    shown and spoken(active) in shown[0] and re.search(rf"\b{share}\s?%", shown[0]), str(shown))


def check_slot(tally, seconds_over):
    """The slot's sum is a problem beyond half a minute either way, and the report says by how much."""
    session = bare()
    session["technique"][0]["time"] = f"{300 + seconds_over} s"
    pack = fresh_folder("slot")
    write_yaml(pack / "pack.yaml", {"title": "Slot", "cautions": ["Clear the floor."]})
    write_yaml(pack / "slot.yaml", session)
    findings = json.loads(run("inspect", pack, "--report", "json", "--as-of", AS_OF).stdout)
    own = [finding["message"] for finding in findings if finding["code"] == "slot-sum"]
    tally.same(f"{seconds_over:+} s is a problem", bool(own), abs(seconds_over) > 30)
    if own:
        tally.holds(f"{seconds_over:+} s is named", spoken(abs(seconds_over)) in own[0], own[0])


def check(tally):
    for pack in [DEMO, make_stress_pack(PACKS)]:
        folder, sessions = published(pack), {n: read_yaml(p) for n, p in session_files(pack).items()}
        for name, session in sessions.items():
            parts = [(part["title"], total_seconds(part["time"])) for _, part in parts_of(session)]
            off = abs(sum(total for _, total in parts) - slot_seconds(session))
            tally.holds(f"{name}: the parts fill the slot", off <= 30, f"{off} s off")
            efforts = [part.get("effort") for _, part in parts_of(session)]
            check_page(tally, name, parts, efforts, folder / f"sessions/{name}.html", slot_seconds(session))
            check_home_guide(tally, name, parts, sheet(folder, name, "home-guide"))
        if pack == DEMO:
            check_teachers(tally, sessions, teachers_of(folder))
    for seconds_over in (-31, -30, 0, 30, 31, 95):
        check_slot(tally, seconds_over)
