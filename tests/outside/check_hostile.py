"""A pack written to do harm puts no element, handler or address of its own into the pages."""

import json
import re
import shutil

from check_pages import addresses, read_page
from program import AS_OF, fresh_folder, publish, run
from stress_pack import bare, part, session, write_yaml

AGAINST = "html5lib, which parses as browsers do: the elements and addresses of a harmless twin of the pack"

SCRIPT = "<script>alert(1)</script>"
HOSTILE = [
    SCRIPT, "<img src=x onerror=alert(1)>", "\"><script>alert(1)</script>", "' onmouseover='alert(1)", "</title><script>alert(1)</script>",
    "<svg onload=alert(1)>", "<iframe src=https://evil.example></iframe>", "<style>*{display:none}</style>", "<!-- --><b>",
    "{{ config }}{% include \"/etc/passwd\" %}{# x #}", "{{ 7 * 7 }}{% for x in parts %}x{% endfor %}", "&lt;script&gt;alert(1)&lt;/script&gt;",
    "\u202e<b>\u2066", "<a href=javascript:alert(1)>x</a>", "${7*7} $(id) `id`", "<base href=//evil.example>", "<meta http-equiv=refresh content=0>",
    # A tab ends an address, so that this is no link at all.
    "[x](java\tscript:alert(1))",
]
REFUSED = [
    "[x](javascript:alert(1))", "[x](JaVaScRiPt:alert(1))", "[x](<java\u0001script:alert(1)>)", "[x](&#106;avascript:alert(1))",
    "[x](data:text/html,<script>alert(1)</script>)", "[x](vbscript:x)", "[x](file:///etc/passwd)", "[x](//evil.example/a)", "[x](/etc/passwd)",
    "[x](../../../../etc/passwd)", "![x](../../secret.png)", "![x](javascript:alert(1))", "<javascript:alert(1)>", "[x](\\\\evil.example\\a)",
]
# Allowed, and made plain words: a picture from elsewhere would tell somebody that the page was read.
MADE_WORDS = ["![x](https://evil.example/a.png)"]


def filled(text):
    """A session with one text in every field that takes words."""
    short = text[:60]
    own = part(short, 300, how=text, easier=text, harder=text, key_points=[text], faults=[{"see": text, "say": text}],
               movements=["throwing"], throw={"landing_zone": text, "stop_and_collect": text})
    tried = part(short, 300, measure={"what": "criteria", "attempts": "3", "criteria": [text]})
    counted = part(short, 300, measure={"what": "count", "unit": text, "attempts": "3", "better": "more"})
    return session(short, {"technique": [own], "challenge": [tried, counted]}, 15, summary=text, success=[text], objectives=[text], safety=[text], credit=text,
                   licence=text, equipment=[{"need": text, "for": ["technique"], "note": text, "instead": [{"thing": text, "plural": text, "note": text}]}],
                   adult={"nearby": "5 min", "why": text}, film={"link": "https://example.org/?a=\"><b>", "shows": text},
                   review=[{"ask": text, "answer": text, "kind": "recall"}], adaptations=dict.fromkeys(["space", "task", "equipment", "people"], text),
                   standing={"state": "draft", "by": [text], "changed": [text]})


def make_pack(folder, texts, about):
    shutil.rmtree(folder, ignore_errors=True)
    write_yaml(folder / "pack.yaml", {"title": about, "school": about, "welcome": about, "cautions": [about], "contact": about,
                                      "licence": "CC-BY-4.0", "credit": about})
    for number, text in enumerate(texts):
        write_yaml(folder / f"s{number:02}.yaml", filled(text))
    return folder


def shape(page):
    """Each element with its attributes but for their values, counted: what a page is made of."""
    tree = read_page(page)
    return [(str(e.tag), tuple(sorted(map(str, e.attrib)))) for e in tree.iter() if isinstance(e.tag, str)]


def is_our_script(script):
    """An add-on of the pack's own folder with nothing written in it, or data that is whole JSON and is never run."""
    text = "".join(script.itertext())
    if script.get("type") in ("application/ld+json", "application/json"):
        return not script.get("src") and json.loads(text) is not None
    return bool(re.fullmatch(r"(\.\./)*(static|words)?/?[a-z0-9-]+(\.[a-z-]+)*\.js", script.get("src", ""))) and not text.strip()


def check_page(tally, where, page, harmless):
    made = set(shape(page))
    tally.holds(f"{where}: only elements and attributes that a harmless page has", made <= harmless, str(sorted(made - harmless)[:3]))
    handlers = [a for _, attributes in made for a in attributes if a.startswith("on")]
    foreign = [script for script in read_page(page).iter() if str(script.tag).endswith("script") and not is_our_script(script)]
    tally.holds(f"{where}: no script but ours, no handler", not handlers and not foreign, f"{handlers} {foreign[:2]}")
    bad = [address for _, _, address in addresses(read_page(page))
           if "evil" in address or address.strip().lower().startswith(("javascript", "data:", "vbscript", "file:"))]
    tally.holds(f"{where}: no address of its own", not bad, str(bad[:2]))


def problems(pack):
    findings = json.loads(run("inspect", pack, "--report", "json", "--as-of", AS_OF).stdout)
    return [finding for finding in findings if finding["severity"] == "problem"]


def check_published(tally, room, texts):
    """Texts that may stand: they are shown as words."""
    twin = make_pack(room / "twin", ["Plain words, *soft* and `so`."] * len(texts), "Plain *words* and `so`")
    tally.same("a harmless twin: status", publish(twin, room / "twin-out").returncode, 0)
    harmless = {kind for page in (room / "twin-out").rglob("*.html") for kind in shape(page)}
    for number, text in enumerate(texts):
        pack = make_pack(room / f"pack{number}", [text], text)
        done = publish(pack, room / f"out{number}")
        found = problems(pack)
        if not tally.holds(f"{text!r} is published or refused with a finding", done.returncode == 0 or (done.returncode == 1 and found),
                           f"status {done.returncode}: {done.stderr[-200:]}"):
            continue
        tally.holds(f"{text!r} makes no panic", "panicked" not in done.stderr)
        for page in (room / f"out{number}").rglob("*.html") if done.returncode == 0 else []:
            check_page(tally, f"{text!r} on {page.name}", page, harmless)
        if done.returncode != 0:
            tally.note(f"{text!r} is refused: {sorted({finding['code'] for finding in found})}")
        if done.returncode == 0 and "7 * 7" in text:
            pages = "".join(page.read_text() for page in (room / f"out{number}").rglob("*.html"))
            tally.holds("template marks are shown as they stand", "{{ 7 * 7 }}" in pages and "49{" not in pages)


def check_refused(tally, room):
    for number, text in enumerate(REFUSED):
        pack = room / f"refused{number}"
        own = bare()
        own["technique"][0]["how"] = f"Walk. {text}"
        write_yaml(pack / "pack.yaml", {"title": "x", "cautions": ["Clear the floor."]})
        write_yaml(pack / "folder" / "s.yaml", own)
        done = publish(pack, room / f"refused-out{number}")
        tally.same(f"{text!r}: status", done.returncode, 1)
        tally.holds(f"{text!r}: the finding is about the link", any("link" in f["code"] or "picture" in f["code"] for f in problems(pack)))
        tally.holds(f"{text!r}: nothing is published", not (room / f"refused-out{number}").exists())


def check(tally):
    room = fresh_folder("hostile")
    check_published(tally, room, HOSTILE + MADE_WORDS)
    check_refused(tally, room)
