"""Every PDF is sound, has the paper's size, a title, a date and a language, and brings its typefaces."""

import json
import re
import subprocess

from paper import PAPERS, SHEETS, sheet
from program import DEMO, PACKS, published, tool
from session_text import line_of, read_yaml, session_files, squeezed
from short_sets import make_short_pack
from stress_pack import make_stress_pack

AGAINST = "qpdf --check, and pdfinfo and pdffonts of poppler; page sizes ISO 216 A4 and US Letter"

# Bytes of a set of four pages.
MOST = 60_000


def facts(path):
    """What pdfinfo says, line by line; the size of every page apart."""
    lines = tool("pdfinfo", "-isodates", "-f", "1", "-l", "-1", path).splitlines()
    sizes = [re.search(r"([\d.]+) x ([\d.]+) pts", line) for line in lines if re.match(r"Page +\d+ size", line)]
    named = dict(line.split(":", 1) for line in lines if ":" in line)
    return {key: value.strip() for key, value in named.items()}, [(float(s[1]), float(s[2])) for s in sizes]


def check_fonts(tally, where, path):
    # Columns from the right: object number (two), then unicode, subset, embedded.
    rows = [line.split() for line in tool("pdffonts", path).splitlines()[2:]]
    tally.holds(f"{where} has typefaces", rows)
    for row in rows:
        embedded, subset, unicode = row[-5], row[-4], row[-3]
        tally.holds(f"{where} {row[0]} is embedded, subset and readable as text",
                    (embedded, subset, unicode) == ("yes", "yes", "yes"), f"{embedded} {subset} {unicode}")


def check_file(tally, where, path, paper, title):
    if not tally.holds(f"{where} is there", path.is_file()):
        return
    done = subprocess.run(["qpdf", "--check", path], capture_output=True, text=True)
    tally.holds(f"{where} passes qpdf", done.returncode == 0, (done.stdout + done.stderr)[-200:])
    named, sizes = facts(path)
    wide, high = PAPERS[paper]
    fitting = [abs(w - wide) <= 0.5 and abs(h - high) <= 0.5 for w, h in sizes]
    tally.holds(f"{where} is {paper} on all {len(sizes)} pages", fitting and all(fitting), str(sizes[:2]))
    tally.holds(f"{where} has the session's title", squeezed(title) in squeezed(named.get("Title", "")), named.get("Title", "none"))
    for date in ("CreationDate", "ModDate"):
        tally.holds(f"{where} has a {date}", re.match(r"\d{4}-\d\d-\d\dT", named.get(date, "")), named.get(date, "none"))
    root = json.loads(tool("qpdf", "--json=2", "--json-key=qpdf", path))["qpdf"][1]
    catalogue = [o["value"] for o in root.values() if isinstance(o.get("value"), dict) and o["value"].get("/Type") == "/Catalog"]
    tally.holds(f"{where} names its language", catalogue and "/Lang" in catalogue[0])
    check_fonts(tally, where, path)


def check_size(tally):
    """A card set of four pages, figures, fonts and structure included, is under 60 KB; shorter ones too."""
    sizes = {}
    for pack in [DEMO, *map(make_short_pack, (3, 2, 1))]:
        folder = published(pack)
        for session in session_files(pack):
            path = sheet(folder, session, "cards")
            pages, size = len(facts(path)[1]), path.stat().st_size
            sizes.setdefault(pages, []).append(size)
            if pages <= 4:
                tally.holds(f"{pack.name}: the {pages} pages of {session}'s cards are under 60 KB", size < MOST, f"{size} bytes")
    tally.holds("there are sets of four pages", len(sizes.get(4, [])) > 2)
    told = (f"{pages}: {sum(all) / len(all) / 1000:.0f} KB, {max(all) / 1000:.0f} at most" for pages, all in sorted(sizes.items()))
    tally.note("card sets by pages: " + "; ".join(told))


def check(tally):
    check_size(tally)
    for pack in [DEMO, make_stress_pack(PACKS)]:
        folder = published(pack)
        paper = read_yaml(pack / "pack.yaml").get("paper", "A4")
        for session, path in session_files(pack).items():
            for name in SHEETS:
                title = line_of(read_yaml(path)["title"])
                check_file(tally, f"{session} {name}", sheet(folder, session, name), paper, title)
