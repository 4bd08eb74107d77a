"""What pages and paper show of the plans, against sums, simulations and integer programs made from the YAML anew.

Three packs: the demo, and two made here by chance, with parts that rest, efforts taken from the Compendium, things that
are filled, wanted twice at once and, in one of them, too few."""

import collections
import itertools
import math
import random
import re
import shutil
from fractions import Fraction

import numpy
from check_assign import by_program, cost_of
from check_gather_once import PackProgram, least_missing
from check_pages import read_page
from check_reading import lay_out_cmudict
from check_slot_fit import best_by_program
from check_time import lessons_in, seconds, slot_seconds, spoken, total_seconds, with_class, words, work_seconds
from paper import words_on
from program import DEMO, PACKS, published, teachers_of
from session_text import blocks_of, line_of, parts_of, read_yaml, session_files, squeezed
from stress_pack import bare, write_yaml

AGAINST = "PyYAML with sums and simulations by the second, scipy.optimize.milp, textstat, pdftotext"

# 2011 Compendium of Physical Activities (Ainsworth et al. 2011), metabolic equivalents of adults.
METS = {"standing quietly": 1.3, "mild stretching": 2.3, "slow walking": 3.0, "walking": 3.5, "brisk walking": 4.3, "playing catch": 2.5,
        "light calisthenics": 2.8, "moderate calisthenics": 3.8, "vigorous calisthenics": 8.0, "circuit training": 4.3,
        "shooting baskets": 4.5, "table tennis": 4.0, "juggling": 4.0, "social badminton": 5.5, "children's games": 5.8,
        "dancing": 7.8, "jogging on the spot": 8.0, "slow rope skipping": 8.8, "rope skipping": 11.8, "fast rope skipping": 12.3}
# Kilograms a litre, least and most: water at 20 °C from memory, rice and dry sand from tables of bulk densities.
DENSITIES = {"water": (0.998, 0.998), "rice": (0.60, 0.85), "sand": (1.28, 1.60)}
# WHO guidelines 2020, ages 5 to 17: an average of 60 minutes a day of moderate to vigorous activity.
ACTIVE_A_DAY = 3600
BANDS = ["vigorous", "moderate", "light", "rest", "talk"]
UNITS = {"mg": 1e-3, "g": 1, "kg": 1000, "mm": 0.1, "cm": 1, "m": 100, "ml": 1, "l": 1000}
# How many a home has of a thing that nothing is said of.
ENOUGH = 1000
# How far our Flesch–Kincaid grade may lie from textstat's on the same sentences.
GRADE_WITHIN = 0.7
# With fewer words in sentences no score is shown.
FEWEST_WORDS = 100
# Sessions of an invented pack.
INVENTED = 24


def straight(text):
    """One space for any, straight apostrophes for curly ones."""
    return " ".join(text.replace("’", "'").split())


def half_up(number):
    return math.floor(Fraction(number) + Fraction(1, 2))


# Effort

def band_of(part, moderate_from):
    """The effort of a part, else the band of what it is likened to (WHO 2020: vigorous from 6; light from 1.5)."""
    if "effort" in part or "compendium" not in part:
        return part.get("effort")
    met = METS[straight(part["compendium"])]
    return next(band for band, least in [("vigorous", 6), ("moderate", moderate_from), ("light", 1.5), ("rest", 0)] if met >= least)


def stretches(part):
    """A part as stretches of time in their order: "talk", "rest" or "work", and how long."""
    time = part["time"] if isinstance(part["time"], dict) else {"work": part["time"]}
    yield "talk", seconds(time.get("explain", ""))
    yield "talk", seconds(time.get("set_up", ""))
    for number in range(int(time.get("rounds", 1))):
        yield "rest", seconds(time.get("rest", "")) if number else 0
        yield "work", work_seconds(time)
    yield "rest", seconds(time.get("recover", ""))


def every_second(session, moderate_from):
    """For each second of the session, the part it lies in and what is done: a band of work, "rest" or "talk"."""
    return [(at, band_of(part, moderate_from) if what == "work" else what)
            for at, (_, part) in enumerate(parts_of(session)) for what, length in stretches(part) for _ in range(length)]


def longest_still(film):
    """The longest run of seconds in which nobody moves, and the part it begins in."""
    runs = [list(run) for is_still, run in itertools.groupby(film, lambda second: second[1] in ("rest", "talk")) if is_still]
    longest = max(runs, key=len, default=[])
    return len(longest), longest[0][0] if longest else 0


def check_effort(tally, name, session, plans, moderate_from):
    film, titles = every_second(session, moderate_from), [straight(line_of(part["title"])) for _, part in parts_of(session)]
    summed = collections.Counter(what for _, what in film)
    label = with_class(plans, "effort-bar")[0].get("aria-label")
    shown = dict(piece.lower().split(" ", 1) for piece in label.split(", "))
    tally.same(f"{name}: effort bar", {band: seconds(time) for band, time in shown.items()}, {b: summed[b] for b in BANDS if summed[b]})
    said = [straight(words(line)) for line in next(plans.iter("ul")).iter("li")]
    share = half_up(Fraction(100 * (summed["moderate"] + summed["vigorous"]), ACTIVE_A_DAY))
    tally.holds(f"{name}: {share} % of the WHO’s day", f"is {share} % of the 60 minutes" in said[0], said[0])
    still, at = longest_still(film)
    tally.holds(f"{name}: still for {spoken(still)} in {titles[at]}", f" is {spoken(still)}, in “{titles[at]}”" in said[1], said[1])
    rhythms = [rhythm_of(title, part) for title, (_, part) in zip(titles, parts_of(session))]
    tally.same(f"{name}: work against rest", [line for line in said if " of work to " in line], list(filter(None, rhythms)))
    likened = [likened_of(title, part, moderate_from) for title, (_, part) in zip(titles, parts_of(session)) if "compendium" in part]
    shown = [re.match(r"(.+) in the 2011 Compendium .*?: (.+?\))\. ", line) for line in said if " MET, " in line]
    tally.same(f"{name}: likened to", [found and found.groups() for found in shown], likened)


def rhythm_of(title, part):
    """The sentence for a part with rests between rounds; the ratio to the next tenth."""
    time = part["time"] if isinstance(part["time"], dict) else {}
    if int(time.get("rounds", 1)) == 1 or not seconds(time.get("rest", "")):
        return None
    work, rest = work_seconds(time), seconds(time["rest"])
    ratio = half_up(Fraction(10 * rest, work)) / 10
    return f"{title}: {spoken(work)} of work to {spoken(rest)} of rest (1 : {ratio:g})."


def likened_of(title, part, moderate_from):
    """What a part is likened to, and that entry’s figure and band, whatever effort the part itself names."""
    band = band_of({"compendium": part["compendium"]}, moderate_from)
    like = straight(part["compendium"])
    return f"{title} is like “{like}”", f"{METS[like]:g} MET, {band} (moderate from {moderate_from:g})"


# Another time

def offer_of(kind, part):
    """The lengths a part may have: whole rounds of work and rest, else half minutes; none if it says neither bound."""
    usual, time = total_seconds(part["time"]), part["time"] if isinstance(part["time"], dict) else {}
    rounds = int(time.get("rounds", 1))
    step = (work_seconds(time) + seconds(time.get("rest", "")) if rounds > 1 else 0) or 30
    shortest, longest = (seconds(part[key]) if key in part else usual for key in ("shortest", "longest"))
    fewest = 1 if rounds > 1 else 0
    down = max(k for k in range(2000) if k == 0 or (usual - k * step >= shortest and (rounds == 1 or rounds - k >= fewest)))
    up = max(k for k in range(2000) if k == 0 or usual + k * step <= longest)
    essential = part.get("essential", "true" if kind in ("warm_up", "cool_down") else "false") == "true"
    return {"usual": usual, "least": usual - down * step, "step": step, "count": down + up, "rounds": rounds,
            "essential": essential, "worth": int(part.get("worth", 3))}


def slots_looked_at(slot, offers):
    """Five minutes apart (ten beyond 45 min): four shorter, and two longer where parts can grow."""
    step = 600 if slot > 2700 else 300
    shorter = [n * step for n in range((slot - 1) // step, 0, -1)][:4]
    grows = any(o["least"] + o["count"] * o["step"] > o["usual"] for o in offers)
    return shorter + [(slot // step + n) * step for n in (1, 2) if grows]


def read_choices(says, titles, offers):
    """The sentences of one slot → for each part its length and rounds or None, and what is said to be left over."""
    choices, left = [(o["usual"], o["rounds"]) for o in offers], 0
    if says.startswith("Leave out: "):
        says = says.removeprefix("Leave out: ")
        for at, title in enumerate(titles):
            if says.startswith((title + ", ", title + ".")):
                choices[at], says = None, says.removeprefix(title)
                if says.startswith(". ") or says == ".":
                    break
                says = says.removeprefix(", ")
        says = says.removeprefix(".").strip()
    for at, title in enumerate(titles):
        found = re.match(re.escape(title) + r": (?:(\d+) rounds?, )?((?:\d+ (?:min|s|h) ?)+)\. ?", says + " ")
        if found and choices[at] is not None:
            choices[at], says = (seconds(found[2]), found[1] and int(found[1])), says[found.end():].strip()
    found = re.fullmatch(r"Left over: ((?:\d+ (?:min|s|h) ?)+)\.", says)
    return choices, seconds(found[1]) if found else 0, "" if found or says == "Everything fits." else says


def check_choice(tally, what, slot, says, titles, offers):
    """Gives the difference in worth from the best, or None where even what must stay is too long."""
    best = best_by_program(offers, slot)
    over = sum(o["least"] for o in offers if o["essential"]) - slot
    if best is None or says.startswith("Too short"):
        tally.holds(f"{what}: too short by {over} s", best is None and f"Too short by {spoken(over)}:" in says, says)
        return None
    choices, left, rest = read_choices(says, titles, offers)
    tally.same(f"{what}: nothing else is said", rest, "")
    for title, choice, offer in zip(titles, choices, offers):
        if choice is None:
            tally.holds(f"{what}: {title} may be left out", not offer["essential"])
            continue
        length, rounds = choice
        steps = Fraction(length - offer["least"], offer["step"])
        tally.holds(f"{what}: {title} may take {length} s", steps.denominator == 1 and 0 <= steps <= offer["count"], f"{steps} steps of {offer}")
        by_rounds = offer["rounds"] + Fraction(length - offer["usual"], offer["step"]) if offer["rounds"] > 1 else rounds
        tally.same(f"{what}: rounds of {title}", rounds, by_rounds)
    total = sum(choice[0] for choice in choices if choice)
    tally.holds(f"{what}: it fits", total <= slot, f"{total} s")
    tally.same(f"{what}: left over", left, slot - total if slot - total >= 60 else 0)
    worth = sum(choice[0] * offer["worth"] for choice, offer in zip(choices, offers) if choice)
    tally.same(f"{what}: worth and parts kept", (worth, sum(choice is not None for choice in choices)), best)
    return abs(worth - best[0])


def check_slots(tally, name, session, pairs):
    """`pairs` are the terms and sentences of one list. Gives the differences in worth."""
    titles = [straight(line_of(part["title"])) for _, part in parts_of(session)]
    offers = [offer_of(kind, part) for kind, part in parts_of(session)]
    looked = slots_looked_at(slot_seconds(session), offers)
    misses = [slot for slot in looked if sum(o["least"] for o in offers if o["essential"]) > slot]
    expected = [slot for slot in looked if slot not in misses[1:]]
    tally.same(f"{name}: slots", [seconds(term) for term, _ in pairs], expected)
    found = [check_choice(tally, f"{name} in {term}", seconds(term), straight(says), titles, offers) for term, says in pairs]
    return [off for off in found if off is not None]


def pairs_of(tree, name):
    """The terms of a list with what is said of each; none where there is no such list."""
    found = [pair for element in with_class(tree, name) for pair in element.iter("div")]
    return [(words(next(pair.iter("dt"))), words(next(pair.iter("dd")))) for pair in found]


# Things

def span_of(text):
    """"40-100 g" → (40, 100) in grams, centimetres or millilitres; an end that is open is None."""
    if text is None:
        return None
    written = re.findall(r"([\d.]+)\s*(m?[gm]|kg|cm|ml|l)?(?![a-z])", text)
    figures = [float(number) * UNITS[unit or written[-1][1]] for number, unit in written]
    return (None, figures[0]) if "at most" in text else (figures[0], None) if "at least" in text else (figures[0], figures[-1])


def mass_of(thing):
    """With what it is filled with: a container of unknown mass has no upper end."""
    own = span_of(thing.get("mass"))
    if not ("filling" in thing and "volume" in thing):
        return own
    volume, (least, most) = span_of(thing["volume"])[0], DENSITIES[thing["filling"]]
    low, high = own or (None, None)
    return (low or 0) + volume * least, None if high is None else high + volume * most


def keeps_to(limit, found):
    """What is not known, and an end that is open, speaks against nothing."""
    if limit is None or found is None:
        return True
    low, high = (found[0] if found[0] is not None else found[1]), (found[1] if found[1] is not None else found[0])
    return (limit[1] is None or high <= limit[1] + 1e-9) and (limit[0] is None or low >= limit[0] - 1e-9)


def suits(need, thing):
    qualities = {quality.lower() for quality in thing.get("is", [])}
    return (keeps_to(span_of(need.get("mass")), mass_of(thing)) and keeps_to(span_of(need.get("size")), span_of(thing.get("size")))
            and (need.get("soft") != "true" or thing.get("soft") == "true") and all(q.lower() in qualities for q in need.get("must_be", [])))


def candidates(need, shared):
    """The thing itself where every home has it or nothing can stand in; else what stands in and suits. Each with its cost:
    its place in the list, and ten for a mass or size that is asked for and not known."""
    own = shared.get(need["need"], {})
    instead = need.get("instead") or own.get("instead") or []
    if own.get("household") == "true" or not instead:
        return [({**own, "thing": need["need"]}, 0)]
    unknown = lambda thing: ("mass" in need and mass_of(thing) is None) + ("size" in need and "size" not in thing)
    return [(thing, place + 10 * unknown(thing)) for place, thing in enumerate(instead) if suits(need, thing)]


class Cupboard:
    """Household things by name, with the fewest that any list says are at home."""

    def __init__(self, shared):
        self.shared, self.names, self.said, self.things = shared, [], {}, {}

    def want(self, need, session):
        parts = [(kind, straight(part["title"]).lower()) for kind, part in parts_of(session)]
        users = [at for at, (kind, title) in enumerate(parts) for name in need.get("for", []) if name == kind or straight(name).lower() == title]
        return {"count": int(need.get("count", 1)), "from": min(users, default=0), "to": max(users, default=len(parts) - 1),
                "optional": need.get("optional") == "true", "suits": [[self.place(thing), cost] for thing, cost in candidates(need, self.shared)]}

    def place(self, thing):
        name = thing["thing"]
        if name not in self.names:
            self.names.append(name)
            self.things[name] = thing
        if "at_home" in thing:
            self.said[name] = min(self.said.get(name, ENOUGH), int(thing["at_home"]))
        return self.names.index(name)

    def wants(self, session):
        return [self.want(need, session) for need in session.get("equipment", [])]

    def stock(self):
        return [self.said.get(name, ENOUGH) for name in self.names]

    def read(self, text, among):
        """"2 slippers, wall" → {place: count}; None where a name is not among those that may stand here."""
        found = {}
        while text:
            fits = [(len(form), place, count) for place in among for count, form in self.forms(place) if f"{text}, ".startswith(form + ", ")]
            if not fits:
                return None
            length, place, count = max(fits)
            found[place], text = count, text[length:].removeprefix(", ")
        return found

    def forms(self, place):
        """How a thing and its number may be written; a plural that is not given is the name, with an s or without."""
        thing = self.things[self.names[place]]
        name = straight(line_of(thing["thing"]))
        plural = straight(line_of(thing["plural"])) if "plural" in thing else name + "s"
        yield 1, name
        for count in range(2, 60):
            yield from ((count, f"{count} {plural}"), (count, f"{count} × {name}"))


def check_things(tally, name, session, shared, table):
    """The assignment shown is possible and the best there is. Gives its cost less milp's."""
    cupboard = Cupboard(shared)
    question = {"wants": cupboard.wants(session)}
    question["stock"] = cupboard.stock()
    rows = [[straight(words(cell)) for cell in row.iter() if cell.tag in ("th", "td")] for row in next(table.iter("tbody")).iter("tr")]
    held = numpy.zeros((len(cupboard.names), len(list(parts_of(session)))), int)
    missing, unsuitability = {True: 0, False: 0}, 0
    if not tally.same(f"{name}: needs", len(rows), len(question["wants"])):
        return 0
    for need, want, (_, at_home, _) in zip(session["equipment"], question["wants"], rows):
        few = re.search(r"(?:, )?(\d+) too few$", at_home)
        lacking = int(few[1]) if few else 0
        given = cupboard.read(at_home[:few.start()] if few else at_home, [place for place, _ in want["suits"]])
        if not tally.holds(f"{name}: {need['need']} is served by what suits", given is not None, at_home):
            return 0
        tally.same(f"{name}: number for {need['need']}", sum(given.values()) + lacking, want["count"])
        missing[want["optional"]] += lacking
        unsuitability += sum(count * dict(want["suits"])[place] for place, count in given.items())
        for place, count in given.items():
            held[place, want["from"]:want["to"] + 1] += count
    tally.holds(f"{name}: nothing is two things at once", (held.T <= question["stock"]).all(), str(held.tolist()))
    ours = cost_of(question, {"missing_needed": missing[False], "missing_optional": missing[True], "unsuitability": unsuitability})
    tally.same(f"{name}: cost of the assignment", ours, by_program(question))
    return missing[False]


def check_gathering(tally, name, sessions, shared, folder):
    """The list to gather once serves every session, and no smaller number of things does, nor as many of fewer kinds."""
    cupboard = Cupboard(shared)
    wants = [cupboard.wants(session) for session in sessions.values()]
    question = {"sessions": [want for want in wants if want], "most": cupboard.stock()}
    section = with_class(read_page(folder / "things.html"), "once")[0]
    lines = [straight(words(line)) for line in section.iter("b")]
    read = [cupboard.read(line, range(len(cupboard.names))) for line in lines]
    if not tally.holds(f"{name}: only things that suit are gathered", all(found and len(found) == 1 for found in read), str(lines)):
        return
    counts = [sum(found.get(place, 0) for found in read) for place in range(len(cupboard.names))]
    short = [least_missing(own, question["most"]) for own in question["sessions"]]
    if any(short):
        # Which of two wants goes short is free; the number is not, and the page for teachers is held to it.
        question["sessions"] = [own for own, lacking in zip(question["sessions"], short) if not lacking]
    program = PackProgram(question, {})
    fewest = program.solve(1, 0)
    served = PackProgram({**question, "most": counts}, {}).solve(1, 0)
    tally.holds(f"{name}: the list serves every session that can be served", served is not None)
    if not any(short):
        tally.same(f"{name}: how many things to gather", sum(counts), int(fewest.sum()))
        kinds = program.solve(0, 1, int(fewest.sum()))
        tally.same(f"{name}: how many kinds", numpy.count_nonzero(counts), numpy.count_nonzero(kinds))
    check_sheet(tally, name, lines, folder / "print/gather.pdf")
    tally.note(f"{name}: {sum(counts)} things of {numpy.count_nonzero(counts)} kinds to gather once for {len(wants)} sessions; scipy’s milp needs "
               f"{int(fewest.sum())}{' for those that lack nothing' if any(short) else ''}")


def check_sheet(tally, name, lines, path):
    """The sheet has the page's lines in their order, with nothing between them."""
    whole = straight(words_on(path))
    tally.holds(f"{name}: gather.pdf lists the same", squeezed("".join(lines)) in whole, whole[-300:])


# Reading

def running_texts(session):
    """What the child reads and what ends with a stop: titles and key points are no sentences."""
    texts = [session["title"], *session["success"], *(question["ask"] for question in session.get("review", []))]
    for _, part in parts_of(session):
        texts += [part["title"], part["how"], *part.get("key_points", []), *(part[key] for key in ("easier", "harder") if key in part)]
        texts += [text for key, text in part.get("throw", {}).items() if key in ("landing_zone", "stop_and_collect")]
        texts += part.get("measure", {}).get("criteria", []) + [p["caption"] for p in part.get("pictures", []) if "caption" in p]
    blocks = [" ".join(block.split()) for text in texts for block in blocks_of(text)]
    return [block for block in blocks if re.search(r"[.!?…]['\"’”)]*$", block)]


def check_figures(tally, name, session, figures):
    """Gives how far the grade lies from textstat's, or None where there are too few words for one."""
    import textstat
    # Dashes, slashes and signs of multiplication part words, as a reader would have it.
    text = " ".join(re.sub(r"[–—/×…]|--+", " ", block) for block in running_texts(session))
    count = textstat.lexicon_count(text)
    tally.same(f"{name}: words in sentences", int(figures["Words"]), count)
    if count < FEWEST_WORDS:
        tally.holds(f"{name}: no score of so few words", "Flesch–Kincaid grade" not in figures)
        return None
    off = float(figures["Flesch–Kincaid grade"]) - textstat.flesch_kincaid_grade(text)
    tally.holds(f"{name}: grade within {GRADE_WITHIN} of textstat’s", abs(off) <= GRADE_WITHIN, f"{off:+.2f}, {figures}")
    return off


# The invented pack

def random_part(dice, title):
    """Every way to write a time, a bound and an effort."""
    rounds = dice.choice([1, 1, 2, 3, 6])
    counted = {"counts": str(dice.randint(16, 128)), "tempo": str(dice.randint(60, 140))}
    time = counted if dice.random() < 0.3 else {"work": f"{dice.randint(10, 150)} s"}
    for key, most in (("explain", 90), ("set_up", 60), ("recover", 60)):
        time |= {key: f"{dice.randint(1, most)} s"} if dice.random() < 0.5 else {}
    time |= {"rounds": str(rounds), **({"rest": f"{dice.randint(5, 60)} s"} if rounds > 1 else {})}
    time = time if dice.random() < 0.8 else f"{dice.randint(1, 6)} min"
    usual = total_seconds(time)
    how = "Walk round the room and come back to your place. Then look at the wall."
    part = {"title": title, "time": time, "how": how, "worth": str(dice.randint(1, 5))}
    part |= {"compendium": dice.choice(list(METS)).replace("'", "’")} if dice.random() < 0.5 else {}
    part |= {"effort": dice.choice(["rest", "light", "moderate", "vigorous"])} if "compendium" not in part or dice.random() < 0.4 else {}
    part |= {"shortest": f"{dice.randint(max(1, usual // 3), usual)} s"} if dice.random() < 0.6 else {}
    part |= {"longest": f"{dice.randint(usual, 2 * usual)} s"} if dice.random() < 0.4 else {}
    return part | ({"essential": dice.choice(["true", "false"])} if dice.random() < 0.4 else {})


def random_things(dice, at_home):
    """A shared list whose things often stand in for one another; some are filled, some are in every home."""
    home = [{"thing": f"thing number {n}", "plural": f"things number {n}", "mass": f"{dice.randint(1, 90)}-{dice.randint(90, 300)} g", "soft": "true",
             "is": ["Flat"], **({"at_home": str(dice.randint(*at_home))} if dice.random() < 0.7 else {})} for n in "ABCDEFGHIJ"]
    for thing, filling in zip(home, dice.sample(["water", "rice", "sand"], 3)):
        thing |= {"filling": filling, "volume": f"{dice.randint(200, 500)} ml"}
    shared = [{"name": f"kit {n}", "plural": f"kits {n}", "instead": dice.sample(home, dice.randint(1, 4))} for n in "abcdefgh"]
    return shared + [{"name": "chair", "household": "true", "at_home": str(at_home[1])}, {"name": "bell", "plural": "bells"}]


def random_needs(dice, shared, titles, least):
    """A limit is wide enough for all that can stand in: publish refuses a pack with a substitute that does not suit."""
    for thing in dice.sample(shared, dice.randint(2, 6)):
        need = {"need": thing["name"], "count": str(least + dice.randint(0, 3)), "for": dice.sample(titles, dice.randint(1, len(titles)))}
        need |= {"optional": "true"} if dice.random() < 0.15 else {}
        if "instead" in thing:
            heaviest = math.ceil(max(mass_of(other)[1] for other in thing["instead"]))
            need |= {"mass": f"at most {heaviest} g", "soft": "true", "must_be": ["flat"]}
        yield need


def make_invented_pack(name, dice, at_home):
    """`at_home`: the least and the most that a home has of a thing. One session is retired and asks for more than any other."""
    pack = PACKS / name
    shutil.rmtree(pack, ignore_errors=True)
    shared = random_things(dice, at_home)
    write_yaml(pack / "pack.yaml", {"title": "Invented", "cautions": ["Clear the floor."], "licence": "CC-BY-4.0", "moderate_from": "3"})
    write_yaml(pack / "equipment.yaml", {"equipment": shared})
    for number in range(INVENTED):
        titles = [f"Task {n}" for n in range(dice.randint(3, 9))]
        first, *middle, last = (random_part(dice, title) for title in titles)
        parts = {"warm_up": first, "technique": middle, "cool_down": last}
        total = sum(total_seconds(part["time"]) for part in [first, *middle, last])
        if not number:
            parts["standing"] = {"state": "retired", "by": ["AB"], "on": "2026-01-01"}
        needs = list(random_needs(dice, shared, titles, 1 if number else 5))
        session = {**bare(), "title": f"Invented {number}", "ages": "8-11", "minutes": spoken(total), "equipment": needs, **parts}
        write_yaml(pack / f"invented-{number}.yaml", session)
    return pack


def check_pack(tally, name, pack):
    """Gives what was compared: sessions, slots with the largest difference in worth, grades."""
    folder, about = published(pack), read_yaml(pack / "pack.yaml")
    shared = {thing["name"]: thing for thing in read_yaml(pack / "equipment.yaml")["equipment"]}
    sessions = {n: read_yaml(path) for n, path in session_files(pack).items()}
    offered = {n: session for n, session in sessions.items() if session.get("standing", {}).get("state") != "retired"}
    lessons = lessons_in(teachers_of(folder))
    worths, grades, lacking = [], [], 0
    for n, session in sessions.items():
        lesson = lessons.get(" ".join(line_of(session["title"]).split()))
        if not tally.holds(f"{n} is on the teachers’ page", lesson is not None):
            continue
        plans = with_class(lesson, "plans")[0]
        check_effort(tally, n, session, plans, float(about.get("moderate_from", "4")))
        worths += check_slots(tally, n, session, pairs_of(plans, "pairs"))
        if n in offered:
            page = read_page(folder / f"sessions/{n}.html")
            worths += check_slots(tally, f"{n}’s page", session, pairs_of(page, "slots"))
        table = [table for table in with_class(plans, "table") if table.get("aria-label", "").startswith("Things to gather")]
        lacking += check_things(tally, n, session, shared, table[0]) if session.get("equipment") and tally.same(f"{n}: things", len(table), 1) else 0
        grades.append(check_figures(tally, n, session, dict(pairs_of(plans, "figures"))))
    check_gathering(tally, name, offered, shared, folder)
    grades = [off for off in grades if off is not None]
    tally.note(f"{name}: {len(sessions)} sessions, effort equal to the second; {len(worths)} slots as shown, largest difference "
               f"in worth from milp {max(worths, default=0)}; {lacking} things too few, as in milp; grades of {len(grades)} "
               f"sessions, furthest from textstat {max(map(abs, grades), default=0):.2f}")


def check(tally):
    lay_out_cmudict()
    check_pack(tally, "demo", DEMO)
    dice = random.Random(20260602)
    for name, at_home in [("scarce", (1, 4)), ("ample", (14, 20))]:
        check_pack(tally, name, make_invented_pack(name, dice, at_home))
