"""Pages work in a browser: opened by double click and over http, on a phone, a tablet and a desk, in the light and in the
dark, with script and without, and for people who read them otherwise."""

import contextlib
import functools
import http.server
import json
import pathlib
import threading

from program import DEMO, NODE_MODULES, PACKS, fresh_folder, published, teachers_of, tool
from stress_pack import make_stress_pack

AGAINST = "Chromium (npm playwright-core) and the WCAG 2.2 A and AA rules of axe-core"

PHONE, TABLET, DESK = 360, 768, 1280  # CSS pixels
SESSION = "sessions/athletics/brook-leap.html"
# One page of each kind, and what can be done on it.
KINDS = ["index.html", "things.html", SESSION, "ar/index.html", "ar/sessions/gymnastics/still-as-stones.html"]
TEACHERS = ["index.html", "rules.html", SESSION]
STATES = {
    f"{SESSION}#now-1": [],
    f"{SESSION}#now-2": ["document.querySelector('.timer-go').click()", "document.querySelector('.now-levels summary').click()"],
    f"{SESSION}#now-10": [],
    "ar/sessions/gymnastics/still-as-stones.html#now-2": ["document.querySelector('.timer-go').click()"],
    "index.html#age-5&minutes-30&find=zebra": ["new Promise((done) => setTimeout(done, 300))"],
    "index.html#age-14&minutes-20": [],
}


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, *_):
        pass


@contextlib.contextmanager
def served(folder):
    """The folder over http on this machine alone; gives its address."""
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(folder)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{server.server_port}/"
    finally:
        server.shutdown()


def visit(url, width=PHONE, scheme="light", **more):
    return {"url": url, "width": width, "scheme": scheme, "script": True, "axe": False, "steps": [], **more}


def visits_to(demo, stress, web):
    """Every page once on a phone, then each kind in every width and scheme, from a folder and over http."""
    file = lambda folder, path: folder.as_uri() + "/" + path
    teachers = teachers_of(demo)
    for page in [*sorted(demo.rglob("*.html")), *sorted(teachers.rglob("*.html"))]:
        yield visit(page.as_uri())
    for page in [*sorted(stress.rglob("sessions/*.html")), stress / "things.html", stress / "index.html"]:
        yield visit(page.as_uri(), axe=True)
    for folder, paths in [(demo, KINDS), (teachers, TEACHERS)]:
        for path in paths:
            for width, scheme in [(PHONE, "light"), (PHONE, "dark"), (DESK, "light"), (DESK, "dark")]:
                yield visit(file(folder, path), width, scheme, axe=path != "rules.html" or (width, scheme) != (PHONE, "dark"))
            yield visit(file(folder, path), TABLET)
            for width in (PHONE, TABLET, DESK):
                yield visit(file(folder, path), width, script=False)
    for path, steps in STATES.items():
        for width, scheme in [(PHONE, "light"), (DESK, "dark")]:
            yield visit(file(demo, path), width, scheme, axe=True, steps=steps)
        yield visit(web + path, TABLET, steps=steps)
    for path in KINDS:
        for width in (PHONE, TABLET, DESK):
            yield visit(web + path, width)


def judge(tally, met):
    path = met["url"].split("/published-", 1)[-1].split("127.0.0.1", 1)[-1]
    where = f"{path} ({met['width']} px, {met['scheme']}{'' if met['script'] else ', no script'})"
    tally.holds(f"{where}: no errors in the console", not met["console"], str(met["console"][:2]))
    tally.holds(f"{where}: nothing is asked for from elsewhere", not met["elsewhere"], str(met["elsewhere"][:2]))
    tally.holds(f"{where}: its typeface loads", met["font"] > 0)
    tally.holds(f"{where}: nothing scrolls sideways", met["overflow"] <= met["width"], f"{met['overflow']} px wide")
    tally.holds(f"{where}: it says something", met["text"] > 150, str(met["text"]))
    if met["axe"]:
        tally.holds(f"{where}: no violation in {met['rules']} rules that applied", met["rules"] > 5 and not met["violations"],
                    "; ".join(met["violations"][:3]))


def check(tally):
    demo, stress = published(DEMO), published(make_stress_pack(PACKS))
    script, room = pathlib.Path(__file__).with_name("browser.mjs"), fresh_folder("browser")
    with served(demo) as web:
        visits = list(visits_to(demo, stress, web))
        (room / "visits.json").write_text(json.dumps(visits))
        met = json.loads(tool("node", script, NODE_MODULES, room / "visits.json", timeout=900))
    tally.same("every visit was made", len(met), len(visits))
    for one in sorted(met, key=lambda one: (one["url"], one["width"], one["scheme"])):
        judge(tally, one)
    tally.note(f"{len(visits)} visits, {sum(one['axe'] for one in met)} of them judged by axe-core")
