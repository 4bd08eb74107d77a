"""The parts kept and their lengths for a slot, against an integer program and against trying every choice."""

import itertools
import random

import numpy
from program import ask
from scipy.optimize import Bounds, LinearConstraint, milp

AGAINST = "scipy.optimize.milp (HiGHS), and every choice tried one by one"

PROGRAMMED, TRIED = 600, 250


def random_part(dice, scale, counts, essential):
    return {"least": dice.randint(1, 12) * scale, "step": dice.randint(0, 4) * scale, "count": dice.randint(0, counts),
            "essential": dice.random() < essential, "worth": dice.randint(1, 5)}


def random_question(dice, parts, counts):
    scale, essential = dice.choice((1, 5, 7, 15, 30)), dice.choice((0.2, 0.2, 0.6))
    offers = [random_part(dice, scale, counts, essential) for _ in range(dice.randint(1, parts))]
    longest = sum(part["least"] + part["step"] * part["count"] for part in offers)
    slots = [dice.randint(1, longest + scale) for _ in range(2)]
    return {"ask": "slot_fit", "parts": offers, "slots": slots}


def best_by_program(parts, slot):
    """The largest worth, and of choices worth that the most parts; none if the essential ones do not fit.

    Two whole variables a part: kept (0 or 1) and steps added; steps need the part to be kept."""
    n, more = len(parts), len(parts) + 1
    least, step, count, worth = (numpy.array([part[key] for part in parts], float) for key in ("least", "step", "count", "worth"))
    gain = numpy.concatenate([more * worth * least + 1, more * worth * step])
    fits = LinearConstraint(numpy.concatenate([least, step])[None, :], -numpy.inf, slot)
    kept_first = LinearConstraint(numpy.hstack([-numpy.diag(count), numpy.eye(n)]), -numpy.inf, 0)
    low = [float(part["essential"]) for part in parts] + [0.0] * n
    bounds = Bounds(low, numpy.concatenate([numpy.ones(n), count]))
    found = milp(-gain, constraints=[fits, kept_first], bounds=bounds, integrality=numpy.ones(2 * n), options={"mip_rel_gap": 0})
    return None if found.x is None else divmod(int(numpy.rint(found.x) @ gain + 0.5), more)


def lengths(part):
    kept = [part["least"] + k * part["step"] for k in range(part["count"] + 1)]
    return kept if part["essential"] else [None, *kept]


def rank(parts, choices):
    """Worth, then parts kept, then part by part: kept before dropped, longer before shorter."""
    worth = sum(part["worth"] * (choice or 0) for part, choice in zip(parts, choices))
    return worth, sum(c is not None for c in choices), [-1 if c is None else c for c in choices]


def best_by_trying(parts, slot):
    fitting = (choices for choices in itertools.product(*map(lengths, parts)) if sum(c or 0 for c in choices) <= slot)
    return max(fitting, key=lambda choices: rank(parts, choices), default=None)


def check_choice(tally, what, parts, slot, fit):
    """Every length is allowed, the essential parts are there, and the sums are right."""
    choices = fit["choices"]
    allowed = len(choices) == len(parts) and all(c in lengths(part) for part, c in zip(parts, choices))
    total = sum(c or 0 for c in choices)
    sums = (total, slot - total, rank(parts, choices)[0])
    tally.holds(f"{what}: allowed", allowed and total <= slot, f"{choices} in {slot}")
    tally.same(f"{what}: sums", (fit["total"], fit["unfilled"], fit["worth"]), sums)


def check_program(tally, questions, answers):
    largest = refused = 0
    for number, (question, answer) in enumerate(zip(questions, answers)):
        parts, what = question["parts"], f"program {number}"
        tally.holds(f"{what}: slots together as one by one", answer["alone_too"])
        for slot, fit in zip(question["slots"], answer["fits"]):
            theirs = best_by_program(parts, slot)
            over = sum(part["least"] for part in parts if part["essential"]) - slot
            if theirs is None or "too_short" in fit:
                refused += 1
                tally.same(f"{what}: too short", (fit.get("too_short"), theirs), (over, None))
                continue
            check_choice(tally, what, parts, slot, fit)
            kept = sum(c is not None for c in fit["choices"])
            tally.same(f"{what}: worth and parts kept", (fit["worth"], kept), theirs)
            largest = max(largest, abs(fit["worth"] - theirs[0]))
    slots = sum(len(question["slots"]) for question in questions)
    tally.note(f"{slots} slots against scipy’s milp, {refused} of them too short in both; largest difference in worth {largest}")


def check_tried(tally, questions, answers):
    fitted = 0
    for number, (question, answer) in enumerate(zip(questions, answers)):
        for slot, fit in zip(question["slots"], answer["fits"]):
            theirs = best_by_trying(question["parts"], slot)
            fitted += theirs is not None
            tally.same(f"tried {number}: choices in {slot} s", fit.get("choices"), theirs and list(theirs))
    tally.note(f"{fitted} slots where every choice was tried: the same choice each time, ties included")


def check(tally):
    dice = random.Random(20260601)
    programmed = [random_question(dice, 9, 8) for _ in range(PROGRAMMED)]
    tried = [random_question(dice, 5, 3) for _ in range(TRIED)]
    answers = ask(programmed + tried)
    check_program(tally, programmed, answers[:PROGRAMMED])
    check_tried(tally, tried, answers[PROGRAMMED:])
