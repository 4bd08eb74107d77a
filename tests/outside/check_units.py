"""Units of work: the order against brute force and scipy’s milp, questions that come back against a reckoning of
our own here and a worked example, and the demo units as published against their YAML."""

import datetime
import html
import itertools
import json
import random
import re

import numpy
import pdfplumber
import yaml
from jsonschema import Draft202012Validator
from plain_yaml import read_yaml as read_plain
from program import AS_OF, DEMO, ask, published, run, tool
from scipy.optimize import Bounds, LinearConstraint, milp
from session_text import unit_files

AGAINST = "brute force and scipy.optimize.milp for the order; a worked example and PyYAML for what comes back"

ORDERS, RETURNS = 320, 300
DAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]


def random_order(dice, most_open):
    places = dice.randint(2, most_open + 2)
    items = [{"session": dice.randrange(places), "vigorous": dice.random() < 0.5, "active": dice.randint(0, 9) * 30,
              "things": dice.sample(range(6), dice.randint(0, 4)), "grounds": []} for _ in range(places)]
    for at, item in enumerate(items):
        if dice.random() < 0.4:
            item["grounds"] = [[other] for other in dice.sample(range(places), 1) if other != at]
    day, days = 0, []
    for _ in range(places):
        days.append(day)
        day += dice.choice([1, 1, 2, 4])
    fixed = dict(zip(dice.sample(range(places), max(0, places - most_open)), dice.sample(range(places), places)))
    return {"ask": "unit_order", "items": items, "places": [{"day": day, "fixed": fixed.get(at)} for at, day in enumerate(days)]}


def step(question, before, item, place, placed):
    """What it costs to do an item after another, by the words of the documentation."""
    items, days = question["items"], [p["day"] for p in question["places"]]
    here = items[item]
    grounds = sum(not any(other in placed for other in ground) for ground in here["grounds"])
    if before is None:
        return (grounds, 0, 0, 0, 0)
    earlier = items[before]
    running = earlier["vigorous"] and here["vigorous"] and days[place] - days[place - 1] == 1
    changed = len(set(earlier["things"]) ^ set(here["things"]))
    return (grounds, int(running), int(earlier["session"] == here["session"]), changed, max(0, earlier["active"] - here["active"]))


def cost(question, order):
    total = (0, 0, 0, 0, 0)
    for place, item in enumerate(order):
        before = order[place - 1] if place else None
        total = tuple(a + b for a, b in zip(total, step(question, before, item, place, set(order[:place]))))
    return total


def orders_of(question):
    """Every way to fill the open places, the earliest of the list first."""
    fixed = [p["fixed"] for p in question["places"]]
    free = [item for item in range(len(fixed)) if item not in fixed]
    for chosen in itertools.permutations(free):
        rest = iter(chosen)
        yield [item if item is not None else next(rest) for item in fixed]


def check_orders(tally):
    dice = random.Random(20270301)
    questions = [random_order(dice, dice.randint(1, 7)) for _ in range(ORDERS)]
    for number, (question, answer) in enumerate(zip(questions, ask(questions))):
        best = min((cost(question, order), order) for order in orders_of(question))
        tally.same(f"order {number}: cost and order", (tuple(answer["cost"]), answer["items"]), best)
        tally.holds(f"order {number}: said to be the best", answer["is_best"])


def least_by_milp(question, weights):
    """Twelve open items and more: a path through items and places, as a whole-number program with one flow."""
    n = len(question["items"])
    arcs = [(p, a, b) for p in range(1, n) for a in range(n) for b in range(n) if a != b]
    first = [(0, None, b) for b in range(n)]
    arcs = first + arcs
    place_all = {"items": [{**item, "grounds": []} for item in question["items"]], "places": question["places"]}
    costs = [sum(w * c for w, c in zip(weights, step(place_all, a, b, p, set()))) for p, a, b in arcs]
    rows, low = [], []
    for b in range(n):
        rows.append([arc[2] == b for arc in arcs]), low.append(1)
    for p in range(n):
        rows.append([arc[0] == p for arc in arcs]), low.append(1)
    for p in range(n - 1):
        for b in range(n):
            rows.append([(arc[0] == p and arc[2] == b) * 1 - (arc[0] == p + 1 and arc[1] == b) * 1 for arc in arcs]), low.append(0)
    found = milp(costs, constraints=LinearConstraint(numpy.array(rows, float), low, low), bounds=Bounds(0, 1),
                 integrality=numpy.ones(len(arcs)), options={"mip_rel_gap": 0})
    return round(found.fun)


def check_orders_by_milp(tally):
    """More items than brute force bears; grounds are left out, since a flow does not know what came before."""
    dice = random.Random(7)
    weights = [10**8, 10**7, 10**6, 10**4, 1]
    questions = []
    for _ in range(8):
        question = random_order(dice, 9)
        while len(question["items"]) < 9:
            question = random_order(dice, 9)
        questions.append({**question, "items": [{**item, "grounds": []} for item in question["items"]],
                          "places": [{**place, "fixed": None} for place in question["places"]]})
    for number, (question, answer) in enumerate(zip(questions, ask(questions))):
        ours = sum(w * c for w, c in zip(weights, answer["cost"]))
        tally.same(f"{len(question['items'])} open sessions {number}: cost against milp", ours, least_by_milp(question, weights))


def returns_here(question):
    """The algorithm as the documentation words it, day by day over all questions."""
    met, planned = {}, []
    wait = lambda n: min(3650, question["after_days"] * question["growth"] ** n)
    for at, meeting in enumerate(question["meetings"]):
        day = meeting["day"]
        if at and question["meetings"][at - 1]["day"] == day:
            planned.append([])
            continue
        own = [q for other in question["meetings"] if other["day"] == day for q in other["questions"]]
        due = [q for q, (when, _, _) in met.items() if when <= day and q not in own]
        due.sort(key=lambda q: met[q])
        planned.append([[q, met[q][1] + 1] for q in due[:question["a_day"]]])
        for q in due[:question["a_day"]] + own:
            if q in met:
                times = met[q][1] + 1
                met[q] = (day + wait(times), times, met[q][2])
            else:
                met[q] = (day + wait(0), 0, len(met))
    return planned


def check_returns(tally):
    # By hand: see the test of src/plan/unit/returns.rs, which tells the reckoning.
    example = {"ask": "unit_returns", "after_days": 3, "growth": 2, "a_day": 2,
               "meetings": [{"day": day, "questions": [q]} for q, day in enumerate([0, 3, 7, 10, 14, 17])]}
    by_hand = [[], [[0, 1]], [[1, 1]], [[0, 2], [2, 1]], [[3, 1], [1, 2]], [[2, 2], [4, 1]]]
    tally.same("the worked example", ask([example]), [by_hand])
    dice, questions = random.Random(1), []
    for _ in range(RETURNS):
        day, meetings, sessions = 0, [], [list(range(s * 10, s * 10 + dice.randint(0, 5))) for s in range(6)]
        for _ in range(dice.randint(1, 25)):
            meetings.append({"day": day, "questions": dice.choice(sessions)})
            day += dice.choice([0, 1, 2, 3, 4, 7])
        questions.append({"ask": "unit_returns", "after_days": dice.randint(1, 9), "growth": dice.randint(1, 4),
                          "a_day": dice.randint(0, 4), "meetings": meetings})
    grown = 0
    for number, (question, answer) in enumerate(zip(questions, ask(questions))):
        tally.same(f"returns {number}", answer, returns_here(question))
        days = {}
        for meeting, back in zip(question["meetings"], answer):
            for asked, time in back:
                days.setdefault(asked, []).append((meeting["day"], time))
        for times in days.values():
            for (first, n), (second, _) in zip(times, times[1:]):
                grown += 1
                tally.holds(f"returns {number}: no wait is shorter than it should be", second - first >= question["after_days"] * question["growth"] ** n
                            or question["after_days"] * question["growth"] ** n > 3650)
    tally.note(f"{ORDERS} orders against brute force; {RETURNS} plans of what comes back, {grown} waits")


def dates_of(unit):
    """The days of a unit, reckoned from its YAML with the standard library."""
    starts = unit["starts"]
    off = set()
    for days in unit.get("no_school", []):
        day = days["from"]
        while day <= days.get("to", days["from"]):
            off.add(day)
            day += datetime.timedelta(1)
    monday, week, found = starts - datetime.timedelta(starts.weekday()), 1, []
    while week <= unit["weeks"]:
        open_days = [monday + datetime.timedelta(DAYS.index(d["day"])) for d in unit["days"]]
        open_days = [day for day in open_days if day >= starts and day not in off]
        found += [(week, day) for day in sorted(open_days)]
        week += bool(open_days)
        monday += datetime.timedelta(7)
    return found


def check_demo(tally):
    folder = published(DEMO)
    units = unit_files(DEMO)
    tally.holds("there are two demo units", len(units) == 2)
    for path in units:
        unit = yaml.safe_load(path.read_text())
        page = (folder / "units" / f"{path.stem}.html").read_text()
        shown = re.findall(r'<time datetime="(\d{4}-\d\d-\d\d)T(\d\d:\d\d)"', page)
        days = {str(day) for _, day in dates_of(unit)}
        tally.holds(f"{path.stem}: every date shown is a day of the unit", shown and {day for day, _ in shown} <= days, str(shown))
        tally.holds(f"{path.stem}: dates ascend", shown == sorted(shown))
        for entry in unit["sessions"]:
            if isinstance(entry, dict):
                day = next(str(d) for w, d in dates_of(unit) if w == entry["week"] and DAYS[d.weekday()] == entry["day"])
                article = next(a for a in page.split("<article") if f'datetime="{day}T' in a)
                tally.holds(f"{path.stem}: {entry['session']} stands on {day}", entry["session"] in article)
        check_asked_again(tally, path.stem, unit, page)


def check_asked_again(tally, name, unit, page):
    """What comes back on the page is what the reckoning here gives for the sessions shown."""
    spacing = {"after_days": 3, "growth": 2, "a_day": 3, **unit.get("bring_back", {})}
    articles = page.split("<article")[1:]
    numbers, texts, meetings = {}, {}, []
    for article in articles:
        session = re.search(r'href="../sessions/([\w/-]+)\.html"', article).group(1)
        review = yaml.safe_load((DEMO / f"{session}.yaml").read_text())["review"]
        base = numbers.setdefault(session, len(numbers) * 100)
        texts.update({base + at: squeeze(question["ask"]) for at, question in enumerate(review)})
        day = datetime.date.fromisoformat(re.search(r'datetime="([\d-]+)T', article).group(1)).toordinal()
        meetings.append({"day": day, "questions": [base + at for at in range(len(review))]})
    expected = returns_here({"meetings": meetings, **spacing})
    for at, (article, back) in enumerate(zip(articles, expected)):
        asked = [squeeze(re.sub(r"<[^>]+>", "", text)) for text in re.findall(r'<div class="ask">(.*?)</div>', article, re.S)]
        tally.same(f"{name}: questions of day {at + 1}", asked, [texts[question] for question, _ in back])


def check_paper(tally):
    """Nothing on the sheets is under 11 pt or in the outer 10 mm; the poster is one page with every session, and what comes
    back is on paper with its answers after it."""
    folder = published(DEMO)
    for path in unit_files(DEMO):
        page = (folder / "units" / f"{path.stem}.html").read_text()
        titles = re.findall(r'<h3><a href="../sessions/[^"]+">(.*?)</a></h3>', page)
        asked = [squeeze(re.sub(r"<[^>]+>", "", text)) for text in re.findall(r'<div class="ask">(.*?)</div>', page, re.S)]
        texts = {}
        for sheet in ["poster", "remember", "gather"]:
            with pdfplumber.open(folder / "print" / "units" / path.stem / f"{sheet}.pdf") as pdf:
                letters = [letter for leaf in pdf.pages for letter in leaf.chars]
                edge = 10 * 72 / 25.4
                tally.holds(f"{path.stem} {sheet}: 11 pt and more", min(letter["size"] for letter in letters) >= 10.99)
                tally.holds(f"{path.stem} {sheet}: clear of the outer 10 mm", all(
                    edge <= letter["x0"] and letter["x1"] <= leaf.width - edge and edge <= letter["top"] and letter["bottom"] <= leaf.height - edge
                    for leaf in pdf.pages for letter in leaf.chars if letter["text"].strip()))
                if sheet == "poster":
                    tally.same(f"{path.stem}: pages of the poster", len(pdf.pages), 1)
                    titles_at = [letter["size"] for letter in letters if letter["size"] >= 15]
                    tally.holds(f"{path.stem}: titles can be read at arm’s length (15 pt and more)", len(titles_at) > sum(map(len, titles)) // 2)
            texts[sheet] = squeeze(tool("pdftotext", "-raw", folder / "print" / "units" / path.stem / f"{sheet}.pdf", "-"))
        for title in titles:
            tally.holds(f"{path.stem}: {title} is on the poster", squeeze(title) in texts["poster"])
        for question in asked:
            tally.same(f"{path.stem}: asked and answered on paper", texts["remember"].count(question) >= 2, True)


def squeeze(text):
    return re.sub(r"[\W_]+", "", html.unescape(text)).lower()


def check_selection(tally):
    """A unit alone is inspected with the sessions it names."""
    done = run("inspect", DEMO / "units" / "pace-and-turn.yaml", "--as-of", AS_OF)
    tally.holds("a unit alone is sound", done.returncode == 0 and "unit-session-unknown" not in done.stdout, done.stdout[-300:])


def check_schema(tally):
    """The demo units hold to the schema of a unit, and slips in them do not."""
    validator = Draft202012Validator(json.loads(run("schema", "unit").stdout))
    for path in unit_files(DEMO):
        text = path.read_text()
        tally.same(f"{path.stem}: faults by the schema", [error.message[:120] for error in validator.iter_errors(read_plain(text))], [])
        for right, slip in [("weeks: ", "weeks: about "), ("day: ", "day: sun"), ("title: ", "titel: "), ("starts: 2027-0", "starts: 2027/0"), ("at: ", "at: half past ")]:
            tally.holds(f"{path.stem}: {slip!r} is seen", not validator.is_valid(read_plain(text.replace(right, slip, 1))))


def check(tally):
    check_schema(tally)
    check_orders(tally)
    check_orders_by_milp(tally)
    check_returns(tally)
    check_demo(tally)
    check_paper(tally)
    check_selection(tally)
