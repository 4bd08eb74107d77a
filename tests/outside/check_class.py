"""What `fit` and `progress` make for the invented class: sound pages and accessible paper."""

import shutil

from check_accessible_pdf import faults_of, verdicts
from check_pages import nu_errors
from program import AS_OF, DEMO, ROOT, fresh_folder, run

AGAINST = "the Nu HTML Checker (npm vnu-jar), and veraPDF with the profile of PDF/UA-1 (ISO 14289-1)"


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


def check(tally):
    room = fresh_folder("class")
    folders = made(tally, room)
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
