"""Who gets which household thing, against assignment, matching, flow and integer programming from outside."""

import math
import random

import networkx
import numpy
from program import ask
from scipy.optimize import Bounds, LinearConstraint, linear_sum_assignment, milp

AGAINST = "scipy.optimize.linear_sum_assignment and milp, networkx maximum matching and min-cost flow"

ONE_MOMENT, MANY_MOMENTS = 400, 250


def random_want(dice, things, moments, most):
    first = dice.randrange(moments)
    suits = dice.sample(range(things), dice.randint(0, min(things, 5)))
    return {"count": dice.randint(1, most), "from": first, "to": dice.randrange(first, moments), "optional": dice.random() < 0.25,
            "suits": [[thing, dice.randint(0, 6)] for thing in suits]}


def random_question(dice, moments, wants, most, stock):
    things = dice.randint(1, 10)
    return {"ask": "assign", "wants": [random_want(dice, things, moments, most) for _ in range(dice.randint(1, wants))],
            "stock": [dice.randint(0, stock) for _ in range(things)]}


def weights(question):
    """What a missing optional and a missing needed thing cost, so that no lesser cost outweighs them."""
    wants = question["wants"]
    count = sum(want["count"] for want in wants)
    worst = max((u for want in wants for _, u in want["suits"]), default=0)
    return count * worst + 1, (count * worst + 1) * (count + 1)


def cost_of_missing(question, want):
    return weights(question)[0 if want["optional"] else 1]


def cost_of(question, answer):
    optional, needed = weights(question)
    return answer["missing_needed"] * needed + answer["missing_optional"] * optional + answer["unsuitability"]


def check_validity(tally, what, question, answer):
    """Only what suits is handed out, never more than there is at any moment, and the sums are right."""
    missing, unsuitability, wants = {True: 0, False: 0}, 0, question["wants"]
    held = numpy.zeros((len(question["stock"]), 1 + max(want["to"] for want in wants)), int)
    for want, served in zip(wants, answer["served"], strict=True):
        suits = dict(want["suits"])
        given = sum(number for _, number in served["things"])
        tally.holds(f"{what}: suits", all(thing in suits and number > 0 for thing, number in served["things"]), str(served))
        tally.same(f"{what}: count", given + served["missing"], want["count"])
        missing[want["optional"]] += served["missing"]
        for thing, number in served["things"]:
            held[thing, want["from"]:want["to"] + 1] += number
            unsuitability += number * suits.get(thing, 0)
    tally.holds(f"{what}: nothing is two things at once", (held.T <= question["stock"]).all(), str(held.tolist()))
    sums = (answer["missing_needed"], answer["missing_optional"], answer["unsuitability"])
    tally.same(f"{what}: sums", sums, (missing[False], missing[True], unsuitability))
    tally.holds(f"{what}: proven", answer["is_proven"])


def by_linear_sum(question):
    """Every single thing asked for is a row; every single thing there is, and going without, a column."""
    singles = [want for want in question["wants"] for _ in range(want["count"])]
    copies = [thing for thing, number in enumerate(question["stock"]) for _ in range(number)]
    never = weights(question)[1] * (len(singles) + 1)
    costs = numpy.full((len(singles), len(copies) + len(singles)), never, float)
    for row, want in enumerate(singles):
        suits = dict(want["suits"])
        costs[row, :len(copies)] = [suits.get(thing, never) for thing in copies]
        costs[row, len(copies) + row] = cost_of_missing(question, want)
    return round(costs[linear_sum_assignment(costs)].sum())


def by_matching(question):
    """The most that can be handed out at one moment, optional or not."""
    graph = networkx.Graph()
    singles = [(at, copy) for at, want in enumerate(question["wants"]) for copy in range(want["count"])]
    graph.add_nodes_from(("want", *single) for single in singles)
    for at, copy in singles:
        for thing, _ in question["wants"][at]["suits"]:
            graph.add_edges_from((("want", at, copy), ("thing", thing, n)) for n in range(question["stock"][thing]))
    top = [("want", *single) for single in singles]
    return len(networkx.bipartite.hopcroft_karp_matching(graph, top)) // 2


def by_flow(question):
    """Things flow from the stock to wants, and what is missing flows past them."""
    graph, wants = networkx.DiGraph(), question["wants"]
    count = sum(want["count"] for want in wants)
    graph.add_node("stock", demand=-count)
    for thing, number in enumerate(question["stock"]):
        graph.add_edge("stock", ("thing", thing), capacity=number, weight=0)
    for at, want in enumerate(wants):
        graph.add_node(at, demand=want["count"])
        graph.add_edge("stock", at, weight=cost_of_missing(question, want))
        for thing, unsuitability in want["suits"]:
            graph.add_edge(("thing", thing), at, weight=unsuitability)
    return networkx.min_cost_flow_cost(graph)


def by_program(question):
    """One whole variable for each want and thing that suits it, and one for what is missing."""
    wants, stock = question["wants"], question["stock"]
    columns = [(at, thing, u) for at, want in enumerate(wants) for thing, u in want["suits"]]
    columns += [(at, None, cost_of_missing(question, want)) for at, want in enumerate(wants)]
    counts = numpy.array([[column[0] == at for column in columns] for at in range(len(wants))], float)
    moments = range(1 + max(want["to"] for want in wants))
    held = [[thing == t and wants[at]["from"] <= m <= wants[at]["to"] for at, thing, _ in columns] for t in range(len(stock)) for m in moments]
    kept = LinearConstraint(numpy.array(held, float), -numpy.inf, numpy.repeat(stock, len(moments)))
    exact = [want["count"] for want in wants]
    costs = numpy.array([cost for _, _, cost in columns], float)
    found = milp(costs, constraints=[kept, LinearConstraint(counts, exact, exact)], bounds=Bounds(0, numpy.inf),
                 integrality=numpy.ones(len(columns)), options={"mip_rel_gap": 0})
    return round(numpy.rint(found.x) @ costs)


def check_one_moment(tally, questions, answers):
    largest = 0
    for number, (question, answer) in enumerate(zip(questions, answers)):
        what, ours = f"one moment {number}", cost_of(question, answer)
        check_validity(tally, what, question, answer)
        theirs = by_linear_sum(question)
        tally.same(f"{what}: linear_sum_assignment", ours, theirs)
        tally.same(f"{what}: min_cost_flow", ours, by_flow(question))
        given = sum(number for served in answer["served"] for _, number in served["things"])
        tally.same(f"{what}: maximum matching", given, by_matching(question))
        largest = max(largest, abs(ours - theirs))
    tally.note(f"{len(questions)} assignments at one moment against linear_sum_assignment, min_cost_flow and "
               f"hopcroft_karp_matching; largest difference in cost {largest}")


def check_many_moments(tally, questions, answers):
    largest = shared = 0
    for number, (question, answer) in enumerate(zip(questions, answers)):
        what, ours = f"many moments {number}", cost_of(question, answer)
        check_validity(tally, what, question, answer)
        theirs = by_program(question)
        tally.same(f"{what}: milp", ours, theirs)
        largest = max(largest, abs(ours - theirs))
        shared += any(sum(thing in dict(s["things"]) for s in answer["served"]) > 1 for thing in range(len(question["stock"])))
    tally.note(f"{len(questions)} assignments over several moments against scipy’s milp, {shared} with a thing that "
               f"serves more than one want; largest difference in cost {largest}")


def check_hostile(tally, dice):
    """Far more than any session asks: still possible, and no better than the relaxation to one moment allows."""
    question = {"ask": "assign", "stock": [dice.randint(0, 40) for _ in range(30)],
                "wants": [random_want(dice, 30, 40, 30) for _ in range(50)]}
    (answer,) = ask([question])
    tally.holds("hostile: no cheaper than milp’s best", cost_of(question, answer) >= by_program(question) * (1 - 1e-9))
    check_validity(tally, "hostile", question, {**answer, "is_proven": True})
    tally.note(f"50 wants of up to 30 over 40 moments: proven {answer['is_proven']}")


def check(tally):
    dice = random.Random(20260601)
    one = [random_question(dice, 1, 8, 4, 3) for _ in range(ONE_MOMENT)]
    many = [random_question(dice, dice.randint(2, 7), 8, 4, 4) for _ in range(MANY_MOMENTS)]
    answers = ask(one + many)
    check_one_moment(tally, one, answers[:ONE_MOMENT])
    check_many_moments(tally, many, answers[ONE_MOMENT:])
    check_hostile(tally, dice)
    tally.holds("costs stay exact in floating point", all(math.log2(weights(q)[1] * 64) < 52 for q in one + many))
