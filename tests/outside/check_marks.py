"""Marks: read and rounded with exact fractions, points with forty digits, places by another way of sorting."""

import math
import random
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal, localcontext
from fractions import Fraction

from program import ask

AGAINST = "Python's decimal and fractions, published combined-events constants and performances, places by counting who is ahead"

# Thousandths of a metre or of a second in each unit.
SIZES = {"m": 1000, "cm": 10, "mm": 1, "s": 1000, "min": 60000}
# The rule of each event: unit, step in thousandths, rounding. World Athletics: distances down to
# the centimetre, hand times up to the tenth, automatic times up to the hundredth (from memory).
RULES = {"m": (10, "down"), "cm": (10, "down"), "s": (100, "up"), "min": (100, "up"), "automatic": (10, "up")}
ROUND = {"down": ROUND_FLOOR, "up": ROUND_CEILING, "nearest": ROUND_HALF_UP}

# World Athletics, Scoring Tables for Combined Events: name, kind, A, B, C, and a mark with its
# points; as in the R package combinedevents and in AthPoints.
MEN = [
    ("100 m", "track", "25.4347", "18", "1.81", "10.39", 1001), ("long jump", "jump", "0.14354", "220", "1.40", "7.76", 1000),
    ("shot put", "throw", "51.39", "1.5", "1.05", "18.40", 1000), ("high jump", "jump", "0.8465", "75", "1.42", "2.21", 1002),
    ("400 m", "track", "1.53775", "82", "1.81", "46.17", 1000), ("110 m hurdles", "track", "5.74352", "28.5", "1.92", "13.80", 1000),
    ("discus throw", "throw", "12.91", "4", "1.10", "56.17", 1000), ("pole vault", "jump", "0.2797", "100", "1.35", "5.29", 1001),
    ("javelin throw", "throw", "10.14", "7", "1.08", "77.19", 1000), ("1500 m", "track", "0.03768", "480", "1.85", "3:53.79", 1000),
]
WOMEN = [
    ("100 m hurdles", "track", "9.23076", "26.7", "1.835", "13.85", 1000), ("high jump", "jump", "1.84523", "75", "1.348", "1.82", 1003),
    ("shot put", "throw", "56.0211", "1.5", "1.05", "17.07", 1000), ("200 m", "track", "4.99087", "42.5", "1.81", "23.80", 1000),
    ("long jump", "jump", "0.188807", "210", "1.41", "6.48", 1001), ("javelin throw", "throw", "15.9803", "3.8", "1.04", "57.18", 1000),
    ("800 m", "track", "0.11193", "254", "1.88", "2:07.63", 1000),
]
# Whole performances with their points: one published event by event, two by their sum.
SCORED = [
    ("men", "10.8 7.1 12 2.05 49.5 14.5 35 4.6 40 4:21", [906, 838, 606, 850, 838, 911, 564, 790, 442, 805], 7550),
    ("men", "10.55 7.80 16.00 2.05 48.42 13.75 50.54 5.45 71.90 4:36.11", None, 9126),
    ("women", "12.69 1.86 15.80 22.56 7.27 45.66 2:08.51", None, 7291),
]


def question(what, **more):
    return {"ask": "marks", "what": what, **more}


def steps_of(thousandths, step, rounding):
    """An exact fraction of thousandths to whole steps."""
    steps = Fraction(thousandths) / step
    exact = Decimal(steps.numerator) / Decimal(steps.denominator)
    return int(exact.to_integral_value(ROUND[rounding]))


def thousandths_of(text, unit):
    """"1:23.4", or a number with its unit or with the rule's own."""
    if ":" in text:
        minutes, seconds = text.split(":")
        return Fraction(minutes) * 60000 + Fraction(seconds) * 1000
    number, _, word = text.partition(" ")
    return Fraction(number) * SIZES[word or unit]


def check_reading(tally, chance):
    asked = []
    for _ in range(4000):
        rule = chance.choice(sorted(RULES))
        unit = "s" if rule == "automatic" else rule
        if unit in ("m", "cm"):
            word = chance.choice(["m", "cm", "mm", ""])
            places = chance.randint(0, 1) if (word or unit) in ("cm", "mm") else chance.randint(0, 4)
            text = f"{chance.randint(0, 999)}" + (f".{chance.randrange(10**places):0{places}}" if places else "")
            text = f"{text} {word}".strip()
        else:
            places = chance.randint(0, 3)
            rest = f".{chance.randrange(10**places):0{places}}" if places else ""
            text = f"{chance.randint(0, 20)}:{chance.randrange(60):02}{rest}" if chance.random() < 0.5 else f"{chance.randint(0, 400)}{rest} s"
        step, rounding = RULES[rule]
        made = rule
        if chance.random() < 0.3:
            step, rounding = chance.choice([1, 5, 10, 100, 500, 1000]), chance.choice(sorted(ROUND))
            made = [unit, step, rounding]
        asked.append((question("read", rule=made, text=text), steps_of(thousandths_of(text, unit), step, rounding)))
    for (mark, theirs), ours in zip(asked, ask([mark for mark, _ in asked])):
        tally.holds(f"reads {mark['text']} by {mark['rule']}", isinstance(ours, list) and ours[0] == theirs, f"ours {ours}, theirs {theirs}")
    tally.note(f"reading: {len(asked)} written marks against exact fractions, no difference allowed")


def check_two_decimals(tally):
    """Every two-decimal metre below ten; on binary fractions 69 of them lose a centimetre."""
    texts = [f"{n // 100}.{n % 100:02}" for n in range(1, 1000)]
    traps = sum(math.floor(float(text) * 100) != int(Fraction(text) * 100) for text in texts)
    tally.same("binary fractions go wrong", traps, 69)
    for rule in ("m", "cm"):
        answers = ask([question("read", rule=rule, text=f"{text} m") for text in texts])
        for text, ours in zip(texts, answers):
            shown = f"{text} m" if rule == "m" else f"{int(Fraction(text) * 100)} cm"
            tally.same(f"{text} m in {rule}", ours, [int(Fraction(text) * 100), shown])
    tally.note(f"two decimals: 999 values in m and in cm, {traps} of which go wrong as binary fractions")


def check_rounding(tally):
    """World Athletics: 10.11 s by hand is 10.2; 11.61 to 11.70 are 11.7 (from memory)."""
    texts = ["10.11", "10.10", *(f"11.{n}" for n in range(61, 71)), "11.71"]
    theirs = ["10.2 s", "10.1 s", *["11.7 s"] * 10, "11.8 s"]
    for text, ours, shown in zip(texts, ask([question("read", rule="s", text=text) for text in texts]), theirs):
        tally.same(f"{text} by hand", ours[1], shown)


def check_showing(tally, chance):
    """What is shown reads back as the same mark."""
    for rule in ("m", "cm", "s", "min", "automatic", "points", "count"):
        marks = [0, 1, 9, 10, 99, 100, 599, 600, 605, 6000, *(chance.randrange(100_000) for _ in range(60))]
        shown = ask([question("show", rule=rule, mark=mark) for mark in marks])
        back = ask([question("read", rule=rule, text=text) for text in shown])
        for mark, text, ours in zip(marks, shown, back):
            tally.same(f"{rule}: {mark} is shown as {text} and read again", ours, [mark, text])


def check_refusals(tally):
    """Nonsense is refused with a way out, and never read as something near it."""
    everywhere = ["", " ", "-3", "−3", "far", "1..2", "1.2.3", "1e3", "0x10", "NaN", "inf", ".5", "5.", "٣", "½", "1:2:3", ":", "1:",
                  "99999999999", "1,2,3", "12 13", "2.05 m m", "12 kg", "1_000", "+5", "m", "0.0000000001", "1\u00a0000", "4'11\"", "a" * 5000]
    wrong = {"m": ["7 s", "1:23", "2,05 m", "5 points"], "cm": ["2.05", "7 s", "1 min", "145,7"], "s": ["5 m", "5 cm", "1:5", "1:60", "1.5:30", "1.5 min"],
             "min": ["90", "1.5", "1.5 min", "4 m", "1:75", "1:5.0", "1 min 75 s"], "count": ["12.5", "12 cm", "1:23"], "points": ["7.5", "7 s"]}
    for rule, more in wrong.items():
        texts = everywhere + more
        for text, ours in zip(texts, ask([question("read", rule=rule, text=text) for text in texts])):
            good = isinstance(ours, dict) and ours.get("refused") and ours.get("way_out", "").startswith(("Write", "Count"))
            tally.holds(f"{rule} refuses “{text[:20]}” with a way out", good, str(ours)[:200])
    for text in ["x", "X", "foul", "Miss", "-", "–", "no mark"]:
        tally.same(f"“{text}” is an attempt without a mark", ask([question("attempt", rule="m", text=text)])[0], None)
    tally.same("and a mark is one", ask([question("attempt", rule="m", text="2.05")])[0], 205)


def exact_points(kind, a, b, c, hundredths):
    """INT(A·(B − T)^C) or INT(A·(M − B)^C) with forty digits; hundredths of a second, or centimetres."""
    with localcontext() as context:
        context.prec = 40
        mark = Decimal(hundredths) if kind == "jump" else Decimal(hundredths) / 100
        over = Decimal(b) - mark if kind == "track" else mark - Decimal(b)
        return int(Decimal(a) * over ** Decimal(c)) if over > 0 else 0


def check_points(tally):
    compared = 0
    for events, table in (("men", MEN), ("women", WOMEN)):
        for at, (name, kind, a, b, c, mark, points) in enumerate(table):
            rule = "automatic" if kind == "track" else "m"
            worth = ask([question("read", rule=rule, text=mark)])[0][0]
            # Every mark about the published one, and some from nothing up to far beyond it.
            marks = sorted({*range(max(0, worth - 400), worth + 400), *range(0, 3 * worth, max(1, worth // 400)), worth})
            ours = ask([question("points", events=events, event=at, rule=rule, marks=marks)])[0]
            tally.same(f"{events}: event {at}", ours["name"], name)
            tally.same(f"{events}: {name} in {mark} (published)", ours["points"][marks.index(worth)], points)
            theirs = [exact_points(kind, a, b, c, hundredths) for hundredths in marks]
            wrong = [(m, o, t) for m, o, t in zip(marks, ours["points"], theirs) if o != t]
            tally.holds(f"{events}: {name}, {len(marks)} marks", not wrong, str(wrong[:3]))
            compared += len(marks)
    for events, marks, each, total in SCORED:
        table = MEN if events == "men" else WOMEN
        scored = []
        for at, (text, row) in enumerate(zip(marks.split(), table)):
            rule = "automatic" if row[1] == "track" else "m"
            steps = ask([question("read", rule=rule, text=text)])[0][0]
            scored += ask([question("points", events=events, event=at, rule=rule, marks=[steps])])[0]["points"]
        tally.same(f"{marks}: sum (published)", sum(scored), total)
        if each:
            tally.same(f"{marks}: event by event (published)", scored, each)
    other = ask([question("points", events="men", event=0, rule="m", marks=[100])])[0]["points"]
    tally.same("a distance has no points for a time", other, [None])
    tally.note(f"points: {compared} marks of 17 events against forty digits, no difference allowed; three published performances")


def ahead(one, other, less):
    """Whether `other` is placed before `one`, by the rule as it is written: next best by next best."""
    one, other = ([m for m in attempts if m is not None] for attempts in (one, other))
    while True:
        if not one or not other:
            return bool(other) and not one
        best, rival = (min(one), min(other)) if less else (max(one), max(other))
        if best != rival:
            return (rival < best) == less
        one.remove(best)
        other.remove(rival)


def check_places(tally, chance):
    asked = []
    for number in range(500):
        # Few different marks, so that there are many ties.
        span = chance.choice([2, 3, 10])
        competitors = [[chance.choice([None, *range(100, 100 + span)]) for _ in range(chance.randint(0, 6))] for _ in range(chance.randint(0, 12))]
        asked.append((competitors, number % 2 == 1))
    ties = 0
    answers = ask([question("places", competitors=c, better="less" if less else "more") for c, less in asked])
    for (competitors, less), ours in zip(asked, answers):
        marked = [any(m is not None for m in attempts) for attempts in competitors]
        theirs = [1 + sum(ahead(one, other, less) for other in competitors) if has else None for one, has in zip(competitors, marked)]
        ties += len([p for p in theirs if p]) - len({p for p in theirs if p})
        tally.same(f"places of {competitors}", ours, theirs)
    series = [(attempts, less) for competitors, less in asked for attempts in competitors]
    bests = ask([question("best", attempts=attempts, better="less" if less else "more") for attempts, less in series])
    for (attempts, less), ours in zip(series, bests):
        marks = [mark for mark in attempts if mark is not None]
        tally.same(f"best of {attempts}, less {less}", ours, (min if less else max)(marks, default=None))
    tally.note(f"places: {len(asked)} competitions against counting who is ahead, {ties} shared places")


def check_table_share_change(tally, chance):
    cases = []
    for number in range(400):
        less = number % 2 == 1
        better = "less" if less else "more"
        steps = sorted(chance.sample(range(50, 300), chance.randint(1, 8)), reverse=less)
        points = sorted(chance.sample(range(1, 100), len(steps)))
        mark, other = chance.randint(40, 310), chance.randint(1, 310)
        reached = [p for s, p in zip(steps, points) if (mark <= s if less else mark >= s)]
        cases.append((question("table", better=better, table=list(zip(steps, points)), mark=mark), max(reached, default=0)))
        share = Fraction(other, mark) if less else Fraction(mark, other)
        cases.append((question("share", better=better, mark=mark, reference=other), math.floor(share * 1000 + Fraction(1, 2))))
        moved, gain = mark - other, other - mark if less else mark - other
        sign = "+" if moved > 0 else "−" if moved < 0 else ""
        cases.append((question("change", better=better, rule="cm", earlier=other, now=mark), [moved, gain, f"{sign}{abs(moved)} cm"]))
        earlier, today = ([chance.choice([None, *range(10, 14)]) for _ in range(chance.randint(0, 3))] for _ in range(2))
        cases.append((question("personal best", better=better, earlier=earlier, today=today), standing(earlier, today, less)))
    for (asked, theirs), ours in zip(cases, ask([asked for asked, _ in cases])):
        tally.same(str(asked), ours, theirs)
    for table in ([[100, 1], [100, 2]], [[100, 2], [120, 2]], [[120, 1], [100, 2]]):
        tally.same(f"a table out of order: {table}", ask([question("table", table=table, mark=110)])[0], {"unsorted": 1})
    tally.same("a share of nothing", ask([question("share", mark=5, reference=0)])[0], None)
    tally.note(f"tables, shares, changes and personal bests: {len(cases)} cases against fractions and plain comparing")


def standing(earlier, today, less):
    sign = -1 if less else 1
    before, now = ([sign * m for m in marks if m is not None] for marks in (earlier, today))
    if not before and not now:
        return ["none", None]
    best = sign * max(before + now)
    if not before:
        return ["first", best]
    if not now or max(now) < max(before):
        return ["stands", best]
    return ["equalled" if max(now) == max(before) else "new", best]


def check(tally):
    chance = random.Random(20260601)
    check_reading(tally, chance)
    check_two_decimals(tally)
    check_rounding(tally)
    check_showing(tally, chance)
    check_refusals(tally)
    check_points(tally)
    check_places(tally, chance)
    check_table_share_change(tally, chance)
