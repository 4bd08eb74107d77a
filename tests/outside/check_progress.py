"""Progress: statistics, noise and places against numpy, scipy and pandas, dialects of CSV against Python's csv, and the
report of the invented class against its marks reckoned anew."""

import csv
import io
import math
import random
import re
import shutil
import tempfile

import numpy
import pandas
from program import DEMO, ROOT, ask, run
from scipy import stats

AGAINST = "numpy, scipy.stats and pandas to 1e-9, Python's csv, a published worked example of the typical error (Hopkins)"

CLOSE = 1e-9
SHARES = [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1]
MARKS = ROOT / "tests" / "marks" / "three_weeks.csv"


def question(what, **more):
    return {"ask": "progress", "what": what, **more}


class Differences:
    """The largest difference met, for the note."""

    def __init__(self, tally):
        self.tally, self.largest, self.count = tally, 0.0, 0

    def same(self, what, ours, theirs):
        if ours is None or theirs is None:
            return self.tally.same(what, ours, theirs)
        off = abs(ours - theirs) / max(1.0, abs(theirs))
        self.largest, self.count = max(self.largest, off), self.count + 1
        return self.tally.holds(what, off <= CLOSE, f"ours {ours!r}, theirs {theirs!r}")


def check_statistics(tally, chance):
    met = Differences(tally)
    lists = [[chance.choice([chance.gauss(130, 20), float(chance.randint(90, 170)), chance.uniform(-5, 5)]) for _ in range(chance.randint(2, 60))] for _ in range(400)]
    lists += [[5.0] * 7, [1e9, 1e9 + 1, 1e9 + 2], [0.0, 0.0]]
    for values, ours in zip(lists, ask([question("statistics", values=values) for values in lists])):
        series = pandas.Series(values)
        met.same("mean", ours["mean"], float(numpy.mean(values)))
        met.same("median", ours["median"], float(series.median()))
        met.same("standard deviation", ours["deviation"], float(stats.tstd(values)))
        met.same("standard deviation of pandas", ours["deviation"], float(series.std()))
        for share, own, theirs in zip(SHARES, ours["quantiles"], numpy.quantile(values, SHARES)):
            met.same(f"quantile {share}", own, float(theirs))
        met.same("typical error", ours["typical error"], float(numpy.std(values, ddof=1) / math.sqrt(2)))
        met.same("smallest worthwhile change", ours["smallest"], 0.2 * float(series.std()))
        tally.same("places", ours["places"], stats.rankdata([-value for value in values], method="min").astype(int).tolist())
    empty = ask([question("statistics", values=[])])[0]
    tally.same("nothing has no figures", [empty["mean"], empty["median"], empty["deviation"]], [None] * 3)
    # Hopkins' method on differences 2, -1, 3, 0, 1: SD 1.5811, typical error 1.1180.
    worked = ask([question("statistics", values=[2, -1, 3, 0, 1])])[0]
    tally.same("the worked example", [round(worked["deviation"], 4), round(worked["typical error"], 4)], [1.5811, 1.118])
    tally.note(f"statistics: {met.count} figures of {len(lists)} lists, the largest difference {met.largest:.1e}")


def typical_error_of(days):
    """Pooled over consecutive pairs of tries, by another way: a frame a pair, its variance weighed by n − 1."""
    frame = pandas.DataFrame(days, dtype=float)
    above, below, pairs = 0.0, 0, 0
    for first in range(frame.shape[1] - 1):
        differences = (frame[first + 1] - frame[first]).dropna()
        pairs += len(differences)
        if len(differences) > 1:
            above += differences.var() / 2 * (len(differences) - 1)
            below += len(differences) - 1
    return (math.sqrt(above / below) if below and pairs >= 5 else None), pairs


def check_noise(tally, chance):
    met = Differences(tally)
    asked, verdicts = [], 0
    for _ in range(300):
        width = chance.randint(1, 5)
        days = [[None if chance.random() < 0.1 else chance.randint(80, 180) for _ in range(width)] for _ in range(chance.randint(1, 60))]
        latest = [chance.randint(80, 180) for _ in range(chance.randint(1, 30))]
        asked.append(question("noise", days=days, latest=latest, gains=[-80, -7, -1, 0, 1, 7, 20, 55, 80]))
    for one, (error, pairs, smallest, said) in zip(asked, ask(asked)):
        theirs, count = typical_error_of(one["days"])
        met.same("typical error of a class", error, theirs)
        tally.same("pairs", pairs, count)
        few = len(one["latest"]) < 5
        met.same("smallest worthwhile change", smallest, None if few else 0.2 * float(numpy.std(one["latest"], ddof=1)))
        for gain, word in zip(one["gains"], said):
            if theirs is None:
                expected = "noise-unknown"
            elif abs(gain) <= 2 * theirs:
                expected = "too-close"
            elif smallest is not None and abs(gain) < smallest:
                expected = "too-small"
            else:
                expected = "better" if gain > 0 else "worse"
            verdicts += 1
            tally.same(f"verdict on {gain}", word, expected)
    tally.note(f"noise: {len(asked)} classes, {verdicts} verdicts, the largest difference {met.largest:.1e}")


def check_dialects(tally, chance):
    """What Python's csv writes is read cell by cell, whatever the dialect, mark and letters."""
    cells = ["", "147,5", "a;b", "tab\there", 'say "hop"', "two\nlines", "naïve", "x", " 12 ", "1:23,4", "=1+1"]
    count = 0
    for delimiter in ",;\t":
        for ending in ("\n", "\r\n"):
            for quoting in (csv.QUOTE_MINIMAL, csv.QUOTE_ALL):
                for letters, mark in (("utf-8", b""), ("utf-8", b"\xef\xbb\xbf"), ("utf-16-le", b"\xff\xfe"), ("cp1252", b"")):
                    rows = [["code", "session", "attempt 1", "attempt 2"]]
                    rows += [[f"K{n}", *(chance.choice(cells) for _ in range(3))] for n in range(12)]
                    for at in sorted(chance.sample(range(1, 12), 3), reverse=True):
                        rows.insert(at, [])
                    out = io.StringIO()
                    csv.writer(out, delimiter=delimiter, lineterminator=ending, quoting=quoting).writerows(rows)
                    ours = ask([question("table", bytes=list(mark + out.getvalue().encode(letters)))])[0]
                    read = csv.reader(io.StringIO(out.getvalue(), newline=""), delimiter=delimiter)
                    theirs = [[number, cells] for number, cells in enumerate(read, 1) if cells]
                    tally.same(f"rows and cells with {delimiter!r}, {ending!r}, {letters}", ours, theirs)
                    count += 1
    tally.note(f"dialects: {count} files of Python's csv, with empty lines and cells of two lines")


def check_cells_and_codes(tally):
    """OWASP, CSV injection: cells that begin with = + - @, tab or carriage return are run as formulas."""
    risky = ["=1+1", "+1+1", "-1+1", "@SUM(1)", "\t=1", "\r=1", "=HYPERLINK(\"x\")", " =1"]
    for text, ours in zip(risky, ask([question("safe", text=text) for text in risky])):
        tally.holds(f"{text!r} is made safe", ours.startswith("'") and ours[1:] == text, ours)
    calm = ["147", "-3", "+15", "0.5", "K07", "too close to call", ""]
    tally.same("the rest is left", ask([question("safe", text=text) for text in calm]), calm)
    names = ["Anna Smith", "Smith, Anna", "J. O'Brien", "a@b.example", "2016-05-14", "14.05.2016", "14/5/16"]
    tally.same("who a child is, is refused", ask([question("code", text=text) for text in names]), [False] * len(names))
    codes = ["K07", "otter-3", "4b.12", "falcon"]
    tally.same("codes are read", ask([question("code", text=text) for text in codes]), [True] * len(codes))


def best(row, better):
    tries = [float(cell) for cell in row if cell not in ("", "x")]
    return better(tries) if tries else None


def check_class(tally):
    """The invented class: every first, last, best and change reckoned anew from the file, and the class's median."""
    # Outside of the work tree, where children's marks may lie.
    room = tempfile.mkdtemp(prefix="homeground-progress-")
    marks = shutil.copy(MARKS, room)
    done = run("progress", DEMO, "--marks", marks, "--to", f"{room}/results", "--as-of", "2027-06-01")
    if not tally.same("the demo class is read whole", done.returncode, 0):
        return tally.note(done.stderr[-500:])
    frame = pandas.read_csv(marks, skiprows=1, dtype=str, keep_default_na=False)
    made = list(csv.DictReader(open(f"{room}/results/marks.csv", encoding="utf-8-sig", newline="")))
    tries = [f"attempt {n}" for n in (1, 2, 3)]
    compared = 0
    for name, unit, better in (("athletics/brook-leap", "cm", max), ("Switchback shuttle", "s", min)):
        own = frame[(frame["session"] == name) & (frame["date"] != "")].sort_values("date")
        rows = {row["code"]: row for row in made if row["session"].endswith(name.split("/")[-1].lower().replace(" ", "-"))}
        tally.same(f"{name}: the children", sorted(rows), sorted(own["code"].unique()))
        lasts, firsts = [], []
        for code, days in own.groupby("code"):
            bests = [best(day, better) for day in days[tries].values.tolist()]
            bests = [mark for mark in bests if mark is not None]
            row = rows[code]
            if not bests:
                continue
            firsts.append(bests[0])
            lasts.append(bests[-1])
            tally.same(f"{code} first, last, best", [float(row[key]) for key in ("first", "last", "best")], [bests[0], bests[-1], better(bests)])
            if len(bests) > 1:
                tally.holds(f"{code} change", abs(float(row["change"]) - (bests[-1] - bests[0])) < CLOSE, row["change"])
            tally.same(f"{code} unit", row["unit"], unit)
            compared += 1
        page = open(f"{room}/results/report.html", encoding="utf-8").read()
        places = 1 if unit == "cm" else 2
        for values in (firsts, lasts):
            # Python rounds halves to even and so does ours, on the same binary fraction.
            tally.holds(f"{name}: the median stands on the page", f"<td>{numpy.median(values):.{places}f} {unit}</td>" in page, str(numpy.median(values)))
    few = re.search(r'id="task-[^"]*"[^>]*>\s*<h2[^>]*>Gull catch.*?</section>', page, re.S)
    tally.holds("a small group has no figures of the class", few and "Fewer than 5" in few[0] and "class-chart" not in few[0], "")
    tally.same("no places unless asked for", page.count(">Place<"), 0)
    tally.holds("no calories", not re.search(r"calorie|kcal", page, re.I), "")
    tally.note(f"the invented class: {compared} children and tasks reckoned anew")
    shutil.rmtree(room, ignore_errors=True)


def check(tally):
    chance = random.Random(1927)
    check_statistics(tally, chance)
    check_noise(tally, chance)
    check_dialects(tally, chance)
    check_cells_and_codes(tally)
    check_class(tally)
