"""What `fit` and `progress` make for the invented class: sound pages and accessible paper."""

import csv
import re
import shutil

import icalendar
import lxml.html

from check_accessible_pdf import faults_of, verdicts
from check_pages import nu_errors
from program import AS_OF, DEMO, ROOT, fresh_folder, published, run
from session_text import unit_files

AGAINST = "icalendar and lxml (PyPI), the Nu HTML Checker (npm vnu-jar), and veraPDF with the profile of PDF/UA-1 (ISO 14289-1)"


def made(tally, room):
    """The folders that the three runs write to."""
    marks = room / "marks.csv"
    shutil.copy(ROOT / "tests/marks/three_weeks.csv", marks)
    runs = {
        "homes": ("fit", DEMO, "--homes", ROOT / "tests/homes/class.csv"),
        "survey": ("fit", DEMO, "--survey"),
        "progress": ("progress", DEMO, "--marks", marks),
    }
    for name, arguments in runs.items():
        done = run(*arguments, "--to", room / name, "--as-of", AS_OF)
        tally.same(f"{name}: status", done.returncode, 0)
    return [room / name for name in runs]


def events_of(path):
    """What a calendar holds: the identifier of each event and when it begins."""
    return {str(event["UID"]): event["DTSTART"].dt for event in icalendar.Calendar.from_ical(path.read_bytes()).walk("VEVENT")}


def check_units(tally, homes):
    """A home’s units have the days of the class, for the sessions that the home can do and for no others."""
    site, seen, fewer = published(DEMO), 0, 0
    for home in homes:
        own = {path.relative_to(home / "sessions").with_suffix("").as_posix() for path in (home / "sessions").rglob("*.html")}
        for unit in unit_files(DEMO):
            whole = events_of(site / f"units/{unit.stem}.ics")
            session_of = lambda uid, unit=unit: uid.removeprefix(f"{unit.stem}.").rsplit("@", 1)[0].rsplit(".", 1)[0].replace(".", "/", 1)
            wanted = {uid: at for uid, at in whole.items() if session_of(uid) in own}
            calendar = home / f"units/{unit.stem}.ics"
            tally.same(f"{home.name}, {unit.stem}: there where something of it can be done", calendar.exists(), bool(wanted))
            if not calendar.exists():
                continue
            seen, fewer = seen + 1, fewer + (len(wanted) < len(whole))
            tally.same(f"{home.name}, {unit.stem}: the days of the class", events_of(calendar), wanted)
            page = (home / f"units/{unit.stem}.html").read_text()
            shown = re.findall(r'<h3><a href="\.\./sessions/([^"]+)\.html"', page)
            tally.same(f"{home.name}, {unit.stem}: the page has the same sessions", sorted(shown), sorted(map(session_of, wanted)))
            tally.holds(f"{home.name}, {unit.stem}: its poster", (home / f"print/units/{unit.stem}/poster.pdf").exists())
    tally.holds("homes have units, whole ones and others", seen > fewer > 0, f"{seen}, {fewer} with days left out")


def things_on(page):
    """How many things a page asks for, how many can stand in for them, and the names of all."""
    tree = lxml.html.fromstring(page.read_text())
    things, others = tree.xpath("//ul[@class='ticks']/li"), tree.xpath("//ul[@class='ticks']/li/ul/li")
    return [len(things), len(others)], [" ".join(b.text_content().split()) for b in tree.xpath("//ul[@class='ticks']//b")]


def check_language(tally, room):
    """A home in another language has the things of one that is else alike, under the names they have there."""
    rows = list(csv.DictReader((ROOT / "tests/homes/class.csv").open()))
    names = {language: dict(rows[0], code=code, language=language) for code, language in (("X01", ""), ("X02", "fr"))}
    with (room / "two.csv").open("w", newline="") as file:
        out = csv.DictWriter(file, rows[0].keys())
        out.writeheader()
        out.writerows(names.values())
    done = run("fit", DEMO, "--homes", room / "two.csv", "--to", room / "two", "--as-of", AS_OF)
    tally.same("two homes alike: status", done.returncode, 0)
    called = 0
    for page in sorted((room / "two/X01/sessions").rglob("*.html")):
        own, other = things_on(page), things_on(room / "two/X02" / page.relative_to(room / "two/X01"))
        tally.same(f"{page.stem}, in French: as many things and stand-ins", other[0], own[0])
        called += sum(a != b for a, b in zip(own[1], other[1]))
    tally.holds("things are called in French", called > 3, str(called))


def check(tally):
    room = fresh_folder("class")
    folders = made(tally, room)
    check_language(tally, fresh_folder("class-language"))
    check_units(tally, sorted(path for path in folders[0].iterdir() if (path / "index.html").is_file()))
    # One home stands for all: their pages come from the same templates.
    homes = sorted(path for path in folders[0].iterdir() if (path / "index.html").is_file())
    pages = [folders[0] / "teacher.html", folders[1] / "survey.html", folders[2] / "report.html", *homes[0].rglob("*.html")]
    errors = [message for message in nu_errors(pages) if message["type"] == "error"]
    for page in pages:
        own = [error["message"] for error in errors if error["url"].endswith(page.name)]
        tally.same(f"{page.relative_to(room)}: errors", own, [])
    judged = verdicts(room)
    for path, verdict in judged.items():
        tally.holds(f"{path.removeprefix(str(room))}: PDF/UA-1", verdict == "PASS", verdict != "PASS" and faults_of(path) or "")
    tally.note(f"{len(homes)} homes, {len(pages)} pages, {len(judged)} PDFs")
