"""Pages stay at hand with no network: over http a worker keeps them, and a new edition takes the place of the old one."""

import gzip
import json
import pathlib
import re
import shutil

from check_pages import read_page
from program import DEMO, NODE_MODULES, fresh_folder, publish, published, teachers_of, tool

AGAINST = "Chromium (npm playwright-core) with a server that is stopped, and the bytes of two editions"

SEEN, UNSEEN = "sessions/games/gull-catch.html", "sessions/games/harbour-bowls.html"
# Ours: a page, its styles, scripts and type, as a server sends them (gzip) and as plain files in a folder. What a
# phone fetches is the aim; the second only keeps what was won.
PAGE_KB = 60
FILES_KB = 155


def edition_of(folder):
    return re.search(r'EDITION = "([0-9a-f]{32})"', (folder / "sw.js").read_text())[1]


def title_of(page):
    return next(read_page(page).iter("title")).text


def check_editions(tally, room):
    pack = room / "pack"
    shutil.copytree(DEMO, pack)
    one, same, other = room / "one", room / "same", room / "other"
    publish(pack, one)
    publish(pack, same)
    tally.same("the same pack: the same worker", (one / "sw.js").read_bytes(), (same / "sw.js").read_bytes())
    session = pack / "games" / "gull-catch.yaml"
    session.write_text(re.sub(r"^title: .*$", "title: Gulls at noon", session.read_text(), count=1, flags=re.M))
    publish(pack, other)
    tally.holds("a title changed: another edition", edition_of(one) != edition_of(other))
    tally.same("a language of its own has a worker of its own", [(one / f"{language}/sw.js").is_file() for language in ("ar", "cy", "fr")], [True] * 3)
    for name in json.loads(re.search(r"FILES = (\[.*?\]);", (one / "fr/sw.js").read_text())[1]):
        tally.holds(f"kept from the start: {name}", (one / "fr" / name).is_file())
    return one, other


def files_of(page):
    """The page and all that it names to be fetched with it."""
    tree = read_page(page)
    named = [e.get("href") for e in tree.iter("link") if e.get("rel") in ("stylesheet", "icon")]
    named += [e.get("src") for kind in ("script", "img") for e in tree.iter(kind) if e.get("src")]
    return [page, *((page.parent / name).resolve() for name in named)]


def packed_size(file):
    return len(gzip.compress(file.read_bytes(), 6))


def check_weight(tally, folder):
    """What a phone fetches for a page: the page, all that it names, and its type."""
    fonts = sum((folder / f"static/fonts/andika-{weight}.woff2").stat().st_size for weight in (400, 700))
    sessions = sorted((folder / "sessions").rglob("*.html"))
    tally.holds("there are pages to weigh", len(sessions) > 5)
    for page in sessions:
        raw = sum(file.stat().st_size for file in files_of(page)) + fonts
        tally.holds(f"{page.name}: under {FILES_KB} KB as files", raw < FILES_KB * 1000, f"{raw} bytes")
        packed = sum(map(packed_size, files_of(page))) + fonts
        tally.holds(f"{page.name}: under {PAGE_KB} KB as a server sends it", packed < PAGE_KB * 1000, f"{packed} bytes")
    heaviest = max(sessions, key=lambda page: sum(map(packed_size, files_of(page))))
    teachers = teachers_of(folder)
    for page in (folder / "index.html", folder / "things.html", heaviest, teachers / "index.html", teachers / "rules.html"):
        raw, packed = sum(file.stat().st_size for file in files_of(page)), sum(map(packed_size, files_of(page)))
        tally.note(f"{page.parent.name}/{page.name}: {page.stat().st_size} bytes of HTML, {raw} with styles and scripts, "
                   f"{packed} as servers send it, {packed + fonts} with its type")
    files = [f"{file.name} {file.stat().st_size}/{packed_size(file)}" for file in files_of(heaviest)]
    tally.note(f"{heaviest.name}, each file plain and packed: {', '.join(files)}, two fonts {fonts}")


def check(tally):
    room = fresh_folder("offline")
    one, other = check_editions(tally, room)
    check_weight(tally, published(DEMO))
    script = pathlib.Path(__file__).with_name("offline.mjs")
    met = json.loads(tool("node", script, NODE_MODULES, one, other, SEEN, UNSEEN, timeout=120))
    tally.same("one edition is kept", [key.split()[-1] for key in met["kept"]], [edition_of(one)])
    seen, front = title_of(one / SEEN), title_of(one / "index.html")
    tally.same("no network: the page", met["away"]["seen"]["title"], seen)
    tally.same("no network: the page again", met["away"]["again"], seen)
    tally.same("no network: its styles", met["away"]["seen"]["styled"], "flex")
    tally.holds("no network: its type", met["away"]["seen"]["fonts"] > 0)
    tally.same("no network: the front page", met["away"]["front"]["title"], front)
    tally.same("no network: a page never seen gives the front page", met["away"]["unseen"]["title"], front)
    tally.same("a new edition: the old one is put away", [key.split()[-1] for key in met["later"]["kept"]], [edition_of(other)])
    tally.same("a new edition: the page is the new one", met["later"]["title"], title_of(other / SEEN))
    tally.same("a new edition, no network: what was seen is at hand", met["still"]["seen"]["title"], title_of(other / SEEN))
    tally.same("nothing was asked for from elsewhere", met["elsewhere"], [])
