"""Pages opened by double click work in a browser, on a phone, and for people who read them otherwise."""

import json
import pathlib

from program import BENCH_ROOM, DEMO, NODE_MODULES, published, tool
from stress_pack import make_stress_pack

AGAINST = "Chromium (npm playwright-core) and the WCAG 2.2 A and AA rules of axe-core"

PHONE = 360  # CSS pixels, a small phone held upright


def check(tally):
    stress = published(make_stress_pack(BENCH_ROOM / "packs"))
    pages = [*sorted(published(DEMO).rglob("*.html")), *sorted(stress.rglob("sessions/*.html")), stress / "things.html"]
    script = pathlib.Path(__file__).with_name("browser.mjs")
    for met in json.loads(tool("node", script, NODE_MODULES, *pages, timeout=900)):
        where = f"{pathlib.Path(met['file']).stem} ({met['colorScheme']})"
        tally.holds(f"{where}: no errors in the console", not met["console"], str(met["console"][:2]))
        tally.holds(f"{where}: nothing is asked for from elsewhere", not met["elsewhere"], str(met["elsewhere"][:2]))
        tally.holds(f"{where}: its typeface loads from file://", met["font"] > 0)
        tally.holds(f"{where}: nothing scrolls sideways at {PHONE} px", met["width"] <= PHONE, f"{met['width']} px wide")
        tally.holds(f"{where}: no violation in {met['rules']} rules that applied", met["rules"] > 5 and not met["violations"],
                    "; ".join(met["violations"][:3]))
