"""Coverage: the sessions added to a unit against integer programs, and the matrix against the YAML."""

import csv
import io
import random
import shutil

import numpy
import yaml
from program import AS_OF, DEMO, ask, fresh_folder, run
from scipy.optimize import Bounds, LinearConstraint, milp
from session_text import SHARED, read_yaml, session_files

AGAINST = "scipy.optimize.milp (HiGHS) for the cover; PyYAML and Python’s csv for the matrix"

COVERS = 340


def random_cover(dice):
    statements, sessions = dice.randint(1, 14), dice.randint(0, 18)
    candidates = [{"covers": dice.sample(range(statements), dice.randint(0, min(4, statements))), "seconds": 60 * dice.choice([20, 25, 30, 40])}
                  for _ in range(sessions)]
    return {"ask": "unit_cover", "asked": dice.sample(range(statements), dice.randint(1, statements)), "candidates": candidates,
            "at_most": dice.choice([0, 1, 2, 3, 4, 20])}


def solve(question, fixed=None):
    """The most statements, then the fewest sessions, then the least time: three programs, each holding to the one before.
    Variables: which sessions (x), which statements are covered (y)."""
    asked, candidates = question["asked"], question["candidates"]
    n, m = len(candidates), len(asked)
    x, y = slice(0, n), slice(n, n + m)
    rows, low, high = [], [], []

    def add(row, least, most):
        rows.append(row), low.append(least), high.append(most)

    for at, statement in enumerate(asked):
        row = numpy.zeros(n + m)
        row[x] = [statement in c["covers"] for c in candidates]
        row[n + at] = -1
        add(row, 0, numpy.inf)
    count = numpy.concatenate([numpy.ones(n), numpy.zeros(m)])
    covered = numpy.concatenate([numpy.zeros(n), numpy.ones(m)])
    seconds = numpy.concatenate([[c["seconds"] for c in candidates], numpy.zeros(m)])
    add(count, 0, question["at_most"])
    for at, value in (fixed or {}).items():
        row = numpy.zeros(n + m)
        row[at] = 1
        add(row, value, value)
    found = []
    for aim, sign in [(covered, -1), (count, 1), (seconds, 1)]:
        done = milp(sign * aim, constraints=LinearConstraint(numpy.array(rows), low, high), bounds=Bounds(0, 1),
                    integrality=numpy.ones(n + m), options={"mip_rel_gap": 0})
        if done.x is None:
            return None
        value = round(sign * done.fun)
        found.append(value)
        add(aim, value, value)
    return found


def check_covers(tally):
    dice = random.Random(20270427)
    questions = [random_cover(dice) for _ in range(COVERS)]
    largest = 0
    for number, (question, answer) in enumerate(zip(questions, ask(questions))):
        chosen = answer["chosen"]
        covered = {s for at in chosen for s in question["candidates"][at]["covers"]} & set(question["asked"])
        tally.same(f"cover {number}: what is said to be covered", sorted(answer["covered"]), sorted(covered))
        ours = [len(covered), len(chosen), sum(question["candidates"][at]["seconds"] for at in chosen)]
        theirs = solve(question)
        tally.same(f"cover {number}: statements, sessions, seconds", ours, theirs)
        tally.holds(f"cover {number}: proven", answer["is_best"])
        largest = max(largest, abs(ours[1] - theirs[1]))
        if number % 5 == 0:
            check_first(tally, number, question, chosen, theirs)
    tally.note(f"{COVERS} covers against scipy’s milp; largest difference in sessions {largest}")


def check_first(tally, number, question, chosen, best):
    """Of equal choices the one whose addresses come first: going through the list, each session is in if any best choice holds it
    besides those before."""
    fixed = {}
    for at in range(len(question["candidates"])):
        if len([v for v in fixed.values() if v]) == best[1]:
            break
        fixed[at] = 1 if solve(question, {**fixed, at: 1}) == best else 0
    tally.same(f"cover {number}: the first by address", chosen, [at for at, value in fixed.items() if value])


def ages_of(text):
    first, _, last = str(text).partition("-")
    return int(first), int(last or first)


def inside(inner, outer):
    return outer[0] <= inner[0] and inner[1] <= outer[1]


def check_matrix(tally):
    room = fresh_folder("coverage")
    done = run("publish", DEMO, "--to", room / "families", "--teachers", room / "teachers", "--as-of", AS_OF)
    tally.same("the demo pack is published for teachers", done.returncode, 0)
    text = (room / "teachers" / "coverage.csv").read_bytes()
    tally.holds("the table has its mark and lines as RFC 4180 has them", text.startswith(b"\xef\xbb\xbf") and text.endswith(b"\r\n"))
    rows = list(csv.DictReader(io.StringIO(text.decode("utf-8-sig"), newline="")))
    sessions = {name: read_yaml(path) for name, path in session_files(DEMO).items()}
    sessions = {name: s for name, s in sessions.items() if (s.get("standing") or {}).get("state") != "retired"}
    curriculum = yaml.safe_load((DEMO / "curriculum.yaml").read_text())
    groups = {g["name"]: ages_of(g["ages"]) for g in curriculum["year_groups"]}
    tally.same("statements", [row["code"] for row in rows], sorted(s["code"] for s in curriculum["statements"]))
    met = {s["code"]: [n for n, other in sessions.items() if s["code"] in (other.get("curriculum") or [])] for s in curriculum["statements"]}
    mean = sum(map(len, met.values())) / len(met)
    gaps = 0
    for row in rows:
        statement = next(s for s in curriculum["statements"] if s["code"] == row["code"])
        own = met[row["code"]]
        tally.same(f"{row['code']}: sessions", [n for n in sessions if row.get(n) == "1"], own)
        tally.same(f"{row['code']}: number", int(row["sessions"]), len(own))
        counts = {name: sum(inside(ages, ages_of(sessions[n]["ages"])) for n in own) if inside(ages, ages_of(statement["ages"])) else None
                  for name, ages in groups.items()}
        tally.same(f"{row['code']}: year groups", {name: row[name] for name in groups}, {n: "" if c is None else str(c) for n, c in counts.items()})
        is_gap = not own or 0 in counts.values()
        gaps += is_gap
        tally.same(f"{row['code']}: note", row["note"], "gap" if is_gap else "often" if len(own) >= 4 and len(own) > 2 * mean else "")
    page = (room / "teachers" / "coverage.html").read_text()
    tally.same("gaps marked on the page", page.count("flag is-gap"), gaps)
    tally.same("dots on the page", page.count('class="dot"'), sum(map(len, met.values())))
    tally.note(f"{len(rows)} statements, {len(sessions)} sessions, {len(groups)} year groups; {gaps} gaps")


FORMULAS = {"=1+1": "'=1+1", "@SUM(A1)": "'@SUM(A1)", "+cmd": "'+cmd", "-2+3": "'-2+3", "a, b; \"c\"": "a, b; \"c\""}


def check_formulas(tally):
    """No cell is run as a formula (OWASP, CSV injection)."""
    room = fresh_folder("formulas")
    pack = room / "pack"
    (pack / "games").mkdir(parents=True)
    (pack / "games" / "gull-catch.yaml").write_text((DEMO / "games" / "gull-catch.yaml").read_text())
    shutil.copytree(DEMO / "_neighbours", pack / "_neighbours")
    for shared in set(SHARED) - {"curriculum.yaml"}:
        (pack / shared).write_text((DEMO / shared).read_text())
    codes = ["ks2-combine", "ks2-games", "ks2-compare"]
    statements = [{"code": f"x{at}", "says": text} for at, text in enumerate(FORMULAS)] + [{"code": code, "says": "It"} for code in codes]
    (pack / "curriculum.yaml").write_text(yaml.safe_dump({"title": "=list", "statements": statements}, allow_unicode=True))
    done = run("publish", pack, "--to", room / "families", "--teachers", room / "teachers", "--as-of", AS_OF)
    tally.same("a list of formulas is published", (done.returncode, done.stderr[-200:] if done.returncode else ""), (0, ""))
    rows = list(csv.DictReader(io.StringIO((room / "teachers" / "coverage.csv").read_text(encoding="utf-8-sig"), newline="")))
    shown = {row["code"]: row["statement"] for row in rows}
    for at, safe in enumerate(FORMULAS.values()):
        tally.same(f"cell {at}", shown[f"x{at}"].replace("“", '"').replace("”", '"'), safe)


def check(tally):
    check_covers(tally)
    check_matrix(tally)
    check_formulas(tally)
