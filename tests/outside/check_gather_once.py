"""The smallest set of things for a whole pack, against integer programs that hold every session at once."""

import random

import numpy
from program import ask
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import lil_matrix

AGAINST = "scipy.optimize.milp (HiGHS) over all sessions and moments at once"

PACKS = 220


def random_want(dice, things, moments, most):
    first = dice.randrange(moments)
    suits = dice.sample(range(things), dice.randint(1, min(things, 4)))
    return {"count": dice.randint(1, most), "from": first, "to": dice.randrange(first, moments), "optional": dice.random() < 0.1,
            "suits": [[thing, dice.randint(0, 4)] for thing in suits]}


def random_pack(dice):
    things, moments, most = dice.randint(2, 14), dice.randint(1, 5), dice.randint(1, 5)
    kinds = [[random_want(dice, things, moments, most) for _ in range(dice.randint(1, 5))] for _ in range(dice.randint(1, 8))]
    return {"ask": "gather_once", "sessions": [dice.choice(kinds) for _ in range(dice.randint(1, 12))],
            "most": [dice.randint(0, 6) for _ in range(things)]}


class PackProgram:
    """Whole variables: how many of each thing (g), whether any (k), and, for each want that suits a thing, how
    many it takes. Every needed want receives its count; at every moment no more is held than is gathered."""

    def __init__(self, question, missing):
        self.most, self.missing = question["most"], missing
        self.rows, self.least, self.takes = [], [], 2 * len(self.most)
        for number, wants in enumerate(question["sessions"]):
            self.add_session(number, wants)
        for thing, most in enumerate(self.most):
            self.at_least({thing: -1, len(self.most) + thing: most}, 0)

    def at_least(self, row, least):
        self.rows.append(row)
        self.least.append(least)

    def add_session(self, number, wants):
        held = {}
        for at, want in enumerate(wants):
            if want["optional"]:
                continue
            own = range(self.takes, self.takes + len(want["suits"]))
            self.takes = own.stop
            self.at_least(dict.fromkeys(own, 1), want["count"] - self.missing.get((number, at), 0))
            for column, (thing, _) in zip(own, want["suits"]):
                for moment in range(want["from"], want["to"] + 1):
                    held.setdefault((thing, moment), {thing: 1})[column] = -1
        for row in held.values():
            self.at_least(row, 0)

    def solve(self, each, once, most_in_all=numpy.inf):
        """The least of `each` for every thing and `once` for every kind."""
        n, matrix = len(self.most), lil_matrix((len(self.rows) + 1, self.takes))
        for at, row in enumerate(self.rows):
            for column, factor in row.items():
                matrix[at, column] = factor
        matrix[len(self.rows), :n] = -1
        costs = numpy.zeros(self.takes)
        costs[:n], costs[n:2 * n] = each, once
        high = numpy.concatenate([self.most, numpy.ones(n), numpy.full(self.takes - 2 * n, numpy.inf)])
        rows = LinearConstraint(matrix.tocsr(), [*self.least, -most_in_all], numpy.inf)
        found = milp(costs, constraints=rows, bounds=Bounds(0, high), integrality=numpy.ones(self.takes), options={"mip_rel_gap": 0})
        return None if found.x is None else numpy.rint(found.x[:n]).astype(int)


def worst(question):
    """Each thing’s unsuitability for the want that it suits least."""
    found = [0] * len(question["most"])
    for thing, unsuitability in (s for wants in question["sessions"] for w in wants if not w["optional"] for s in w["suits"]):
        found[thing] = max(found[thing], unsuitability)
    return numpy.array(found)


def least_missing(wants, stock):
    """The fewest needed things that a session lacks with this stock."""
    needed = [want for want in wants if not want["optional"]]
    columns = [(at, thing) for at, want in enumerate(needed) for thing, _ in want["suits"]]
    if not columns:
        return sum(want["count"] for want in needed)
    moments = range(1 + max(want["to"] for want in needed))
    held = [[t == thing and needed[at]["from"] <= m <= needed[at]["to"] for at, thing in columns] for t in range(len(stock)) for m in moments]
    counts = [[at == want for at, _ in columns] for want in range(len(needed))]
    rows = LinearConstraint(numpy.array(held + counts, float), -numpy.inf, [*numpy.repeat(stock, len(moments)), *(w["count"] for w in needed)])
    found = milp(-numpy.ones(len(columns)), constraints=rows, integrality=numpy.ones(len(columns)), options={"mip_rel_gap": 0})
    return sum(want["count"] for want in needed) - round(-found.fun)


def check_unserved(tally, what, question, missing):
    """What is reported as unserved is as little as can be, in every session."""
    for number, wants in enumerate(question["sessions"]):
        ours = sum(count for (session, _), count in missing.items() if session == number)
        tally.same(f"{what}: unserved in session {number}", ours, least_missing(wants, question["most"]))


def score(question, counts):
    once = int(worst(question).max(initial=0)) * int(sum(counts)) + 1
    return int(once * numpy.count_nonzero(counts) + worst(question) @ counts)


def check_pack(tally, what, question, answer):
    """Gives the difference in number."""
    missing = {(session, want): count for session, want, count in answer["unserved"]}
    program, counts = PackProgram(question, missing), numpy.array(answer["counts"])
    fewest = program.solve(1, 0)
    if not tally.holds(f"{what}: the rest can be served", fewest is not None):
        return 0
    number = int(fewest.sum())
    tally.same(f"{what}: number", (answer["number"], int(counts.sum()), answer["at_least"]), (number, number, number))
    own = PackProgram({**question, "most": answer["counts"]}, missing)
    tally.holds(f"{what}: our set serves every session", own.solve(1, 0) is not None and (counts <= question["most"]).all())
    each = worst(question)
    best = program.solve(each, int(each.max(initial=0)) * number + 1, number)
    tally.same(f"{what}: kinds and suitability", score(question, counts), score(question, best))
    tally.holds(f"{what}: proven", answer["is_proven"] and answer["is_best_of_smallest"])
    return abs(answer["number"] - number)


def check_large(tally, dice):
    """A thousand sessions of twenty kinds: the smallest set for the twenty is the smallest for all."""
    kinds = [[random_want(dice, 40, 5, 4) for _ in range(dice.randint(1, 5))] for _ in range(20)]
    question = {"ask": "gather_once", "sessions": [dice.choice(kinds) for _ in range(1000)], "most": [dice.randint(0, 8) for _ in range(40)]}
    (answer,) = ask([question])
    once = {**question, "sessions": [], "at": []}
    for number, wants in enumerate(question["sessions"]):
        if wants not in once["sessions"]:
            once["sessions"].append(wants)
            once["at"].append(number)
    unserved = [[once["at"].index(session), want, count] for session, want, count in answer["unserved"] if session in once["at"]]
    check_pack(tally, "a thousand sessions", once, {**answer, "unserved": unserved})


def check(tally):
    dice = random.Random(20260601)
    questions = [random_pack(dice) for _ in range(PACKS)]
    largest = short = 0
    for number, (question, answer) in enumerate(zip(questions, ask(questions))):
        largest = max(largest, check_pack(tally, f"pack {number}", question, answer))
        missing = {(session, want): count for session, want, count in answer["unserved"]}
        short += bool(missing)
        if number % 4 == 0:
            check_unserved(tally, f"pack {number}", question, missing)
    check_large(tally, dice)
    tally.note(f"{PACKS} packs against scipy’s milp, {short} with wants that nothing can serve; largest difference in number {largest}")
