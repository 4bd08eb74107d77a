"""Labels, numbers, pages and paper in every language: plural forms and number forms against CLDR (Babel), the
language and direction of pages as html5lib reads them, Arabic read out of PDFs by poppler and pypdf."""

import json
import re
import shutil
import subprocess
import unicodedata

import html5lib
import icalendar
import pypdf
from babel import Locale
from babel.numbers import format_decimal
from icalendar.parser import unescape_char

from program import AS_OF, DEMO, ROOT, fresh_folder, publish, published, run
from session_text import TRANSLATION, read_yaml

AGAINST = "Unicode CLDR by Babel, html5lib, icalendar, poppler’s pdftotext and pypdf"

WORDS = ROOT / "static" / "words"
TRANSLATED = {
    "fr": "athletics/brook-leap",
    "cy": "gymnastics/still-as-stones",
    "ar": "gymnastics/still-as-stones",
}
RIGHT_TO_LEFT = {"ar", "ur"}
NUMBERS = ["2.4", "0.5", "1.25", "12", "999", "136.05"]


def labels_of(language):
    """Key → its text with all its lines."""
    labels, key = {}, None
    for line in (WORDS / f"{language}.ftl").read_text(encoding="utf-8").splitlines():
        opening = re.match(r"([a-z][a-z0-9-]*) = (.*)", line)
        if opening:
            key = opening.group(1)
            labels[key] = opening.group(2)
        elif key and line and not line.startswith("#"):
            labels[key] += "\n" + line
    return labels


def languages():
    return sorted(path.stem for path in WORDS.glob("*.ftl"))


def check_labels(tally):
    usual = labels_of("en-GB")
    for language in languages():
        labels = labels_of(language)
        tally.same(f"{language}: the keys of the labels", sorted(labels), sorted(usual))
        for key, text in labels.items():
            named = lambda label: set(re.findall(r"\$([a-z]+)", label))
            tally.same(f"{language}: {key}: what is filled in", named(text), named(usual.get(key, "")))


def check_plurals(tally):
    """Every plural category that a whole number up to 200 takes in CLDR has a form, and there is no other."""
    count = 0
    for language in languages():
        rule = Locale.parse(language.replace("-", "_")).plural_form
        taken = {rule(number) for number in range(201)} | {"other"}
        for key, text in labels_of(language).items():
            if "->" in text:
                forms = set(re.findall(r"^\s*\*?\[([a-z]+)\]", text, re.M))
                tally.same(f"{language}: {key}: plural forms", forms, taken)
                count += 1
    tally.note(f"{count} labels with plural forms in {len(languages())} languages")


def decimal_pack(language):
    """The demo’s session with a headroom and a size of each number, in one language."""
    folder = fresh_folder(f"numbers-{language}")
    shutil.copytree(DEMO, folder, dirs_exist_ok=True)
    for translation in folder.rglob("*.*.yaml"):
        translation.unlink()
    pack = folder / "pack.yaml"
    pack.write_text(re.sub(r"language: .*", f"language: {language}", pack.read_text(encoding="utf-8")), encoding="utf-8")
    return folder


def check_numbers(tally):
    """Headrooms of the demo’s sessions as the pages say them, against Babel’s decimals with Western digits."""
    compared = 0
    for language in languages():
        pack = decimal_pack(language)
        to = fresh_folder(f"numbers-out-{language}")
        to.rmdir()
        done = publish(pack, to)
        if not tally.holds(f"{language}: published", done.returncode == 0, done.stderr):
            continue
        locale = language.replace("-", "_")
        for path in sorted(path for path in pack.glob("*/*.yaml") if path.parent.name != "units"):
            height = read_yaml(path).get("space", {}).get("height", "")
            number = height.removesuffix(" m")
            if "." not in number:
                continue
            written = format_decimal(number, locale=locale, numbering_system="latn")
            unit = labels_of(language)["amount-m"].replace("{ $number }", written)
            page = (to / "sessions" / path.relative_to(pack).with_suffix(".html")).read_text(encoding="utf-8")
            plain = page.replace("\u00a0", " ")
            tally.holds(f"{language}: {path.stem}: headroom {unit}", unit in plain, "not on the page")
            compared += 1
    tally.note(f"{compared} decimals on pages in {len(languages())} languages, digits 0 to 9")
    tally.same("digits of ar in CLDR", Locale("ar").default_numbering_system, "latn")
    tally.same("digits of ur in CLDR", Locale("ur").default_numbering_system, "latn")


# Where the demo pack says that its pages stand.
ADDRESS = read_yaml(DEMO / "pack.yaml")["address"].rstrip("/") + "/"


# Letters that only one of the demo’s languages has (Unicode’s block Arabic).
ARABIC = re.compile("[\u0620-\u064a]")


def check_script(tally, name, tree, language):
    """Arabic words stand under lang ar and dir rtl on every page (WCAG 2.2, 3.1.2), also those that all sessions share."""
    told = {child: parent for parent in tree.iter() for child in parent}

    def nearest(element, attribute):
        while element is not None and not element.get(attribute):
            element = told.get(element)
        return element.get(attribute) if element is not None else None

    for element in tree.iter():
        if isinstance(element.tag, str) and element.tag not in ("script", "style", "template") and ARABIC.search(element.text or ""):
            if (nearest(element, "lang"), nearest(element, "dir")) != ("ar", "rtl"):
                tally.same(f"{name}: {element.text.strip()[:40]}: language and direction", (nearest(element, "lang"), nearest(element, "dir")), ("ar", "rtl"))
    if language == "ar":
        tally.holds(f"{name}: has Arabic words to look at", any(ARABIC.search(e.text or "") for e in tree.iter() if isinstance(e.tag, str)))


def check_pages(tally):
    """lang and dir of each page, links to its versions that lead somewhere, foreign texts that say so."""
    site = published(DEMO)
    compared = 0
    for language, session in TRANSLATED.items():
        for page in sorted((site / language).rglob("*.html")):
            tree = html5lib.parse(page.read_text(encoding="utf-8"), namespaceHTMLElements=False)
            name = page.relative_to(site).as_posix()
            tally.same(f"{name}: lang", tree.get("lang"), language)
            tally.same(f"{name}: dir", tree.get("dir"), "rtl" if language in RIGHT_TO_LEFT else "ltr")
            check_script(tally, name, tree, language)
            links = [link for link in tree.iter("link") if link.get("rel") == "alternate" and link.get("hreflang", "x-default") != "x-default"]
            tally.same(f"{name}: versions", len(links), 1 + len(TRANSLATED))
            for link in links:
                # A pack that names its address gives whole addresses; the files lie below it.
                below = link.get("href").removeprefix(ADDRESS)
                there = (site / below if below != link.get("href") else page.parent / below).resolve()
                if tally.holds(f"{name}: leads to {link.get('href')}", there.is_file(), "no such page"):
                    other = html5lib.parse(there.read_text(encoding="utf-8"), namespaceHTMLElements=False)
                    tally.same(f"{name}: hreflang", link.get("hreflang"), other.get("lang"))
            for element in list(tree.iter("link")) + list(tree.iter("img")) + list(tree.iter("a")):
                target = element.get("src") or element.get("href") or ""
                if target and not target.startswith(("#", "http", "mailto")):
                    there = page.parent / target.split("#")[0]
                    tally.holds(f"{name}: {target}", there.exists(), "leads nowhere")
            if name.startswith(f"{language}/sessions/"):
                title = next(tree.iter("h1"))
                expected = None if session in name else "en-GB"
                tally.same(f"{name}: language of the title", title.get("lang"), expected)
            compared += 1
    tally.note(f"{compared} pages in {len(TRANSLATED)} further languages")


def ticked(page):
    """The things of a page’s lists to tick."""
    tree = html5lib.parse(page.read_text(encoding="utf-8"), namespaceHTMLElements=False)
    boxes = [label for label in tree.iter("label") if any(box.get("type") == "checkbox" for box in label.iter("input"))]
    return [" ".join("".join(box.itertext()).split()) for box in boxes]


def check_gathered_once(tally, site):
    """A thing that is named in some sessions of a language has that name in all, so that nobody gathers it twice."""
    renamed = 0
    for language in TRANSLATED:
        for page in [*sorted((site / "units").glob("*.html")), site / "things.html"]:
            own, other = ticked(page), ticked(site / language / page.relative_to(site))
            tally.same(f"{language}, {page.stem}: as many things to gather", len(other), len(own))
            renamed += len(set(other) - set(own))
    tally.holds("things are called otherwise", renamed > 10, str(renamed))


def check_units(tally):
    """A unit’s translation stands on its page, in its calendar and in the list of the front page; what is missing or old
    is told at its line."""
    site = published(DEMO)
    compared = 0
    for path in sorted(path for path in (DEMO / "units").glob("*.yaml") if TRANSLATION.search(path.name)):
        said, (unit, language) = read_yaml(path), path.stem.rsplit(".", 1)
        page = html5lib.parse((site / language / f"units/{unit}.html").read_text(encoding="utf-8"), namespaceHTMLElements=False)
        text = " ".join("".join(page.itertext()).split())
        title = next(page.iter("h1"))
        tally.same(f"{path.name}: title", "".join(title.itertext()), said["title"])
        tally.same(f"{path.name}: no other language is told of", [e.get("lang") for e in title.iter() if e.get("lang")], [])
        tally.holds(f"{path.name}: summary", " ".join(said["summary"].split()) in text)
        for days in said["no_school"]:
            tally.holds(f"{path.name}: {days['what']}", days["what"] in text)
        front = " ".join("".join(html5lib.parse((site / language / "index.html").read_text(encoding="utf-8"), namespaceHTMLElements=False).itertext()).split())
        tally.holds(f"{path.name}: on the front page", said["title"] in front)
        own, other = (icalendar.Calendar.from_ical((folder / f"units/{unit}.ics").read_bytes()) for folder in (site, site / language))
        tally.same(f"{path.name}: the calendar’s name", unescape_char(str(other["X-WR-CALNAME"])), said["title"])
        events = lambda calendar: [(str(e["UID"]), e["DTSTART"].dt) for e in calendar.walk("VEVENT")]
        tally.same(f"{path.name}: the same events at the same times", events(other), events(own))
        compared += 1
    tally.holds("units are translated", compared >= 3, str(compared))
    check_gathered_once(tally, site)
    pack = fresh_folder("units-languages") / "pack"
    shutil.copytree(DEMO, pack)
    path = pack / "units/brook-to-harbour.fr.yaml"
    sound = path.read_text()
    slips = [
        ("missing", sound[:sound.index("summary:")] + sound[sound.index("no_school:"):], "translation-missing", 0, "summary"),
        ("old", sound.replace("translates: e", "translates: e0", 1)[:10000], "translation-old", 0, "translates: e"),
        ("too much", sound + "weeks: 6\n", "translation-too-much", 1, "no text"),
        ("too many holidays", sound + "  - {what: Une fête}\n", "translation-too-much", 1, "no such entry"),
    ]
    for what, text, code, status, told in slips:
        path.write_text(text)
        done = run("inspect", pack, "--as-of", AS_OF, "--report", "json")
        rows = [row for row in json.loads(done.stdout) if row["file"] == "units/brook-to-harbour.fr.yaml"]
        tally.same(f"unit in French, {what}: status and finding", (done.returncode, [row["code"] for row in rows]), (status, [code]))
        tally.holds(f"unit in French, {what}: in words", rows and told in rows[0]["message"] + rows[0]["way_out"], str(rows))
    path.write_text(sound)
    original = pack / "units/brook-to-harbour.yaml"
    original.write_text(original.read_text().replace("Easter holidays", "Spring holidays"))
    rows = json.loads(run("inspect", pack, "--as-of", AS_OF, "--report", "json").stdout)
    old = sorted(row["file"] for row in rows if row["code"] == "translation-old")
    tally.same("a holiday called otherwise: its translations are old", old, [f"units/brook-to-harbour.{language}.yaml" for language in ("ar", "cy", "fr")])
    original.write_text(original.read_text().replace("day: thursday, at: 14:00", "day: thursday, at: 14:30"))
    rows = json.loads(run("inspect", pack, "--as-of", AS_OF, "--report", "json").stdout)
    tally.same("another hour: that says no more", sorted(row["file"] for row in rows if row["code"] == "translation-old"), old)


def bare(text):
    """Words without vowel marks and signs: readers tell marks apart from their letters (a known fault)."""
    apart = unicodedata.normalize("NFKD", text)
    kept = (letter for letter in apart if not unicodedata.category(letter).startswith(("M", "C")))
    return re.sub(r"\s+", "", "".join(kept))


def letters(text):
    """How often each letter stands in a text, whatever the order."""
    return sorted(letter for letter in bare(text) if letter.isalpha())


def read_out(pdf):
    done = subprocess.run(["pdftotext", str(pdf), "-"], capture_output=True, text=True, check=True)
    return done.stdout


def check_arabic_paper(tally):
    """Words of the Arabic session read out of its sheets; no letter lost, none that is another."""
    site = published(DEMO)
    session = read_yaml(DEMO / "gymnastics" / "still-as-stones.ar.yaml")
    folder = site / "ar" / "print" / "gymnastics" / "still-as-stones"
    read = bare(read_out(folder / "cards.pdf"))
    words = []
    for kind in ("technique", "challenge", "stretch"):
        for part in session[kind]:
            words += [part["title"], part["easier"], part["harder"], *part.get("key_points", [])]
    words = [word for text in words for word in re.findall(r"[\u0621-\u06ff]+", text)]
    # poppler turns the two letters of the ligature lam-alef round; pypdf reads the same file rightly.
    joined = [word for word in words if "لا" in bare(word)]
    plain = [word for word in words if word not in joined]
    lost = [word for word in plain if bare(word) not in read]
    tally.same("Arabic words of the cards that pdftotext does not read", lost, [])
    pages = pypdf.PdfReader(folder / "cards.pdf").pages
    by_pypdf = bare(" ".join(page.extract_text() for page in pages))
    lost = [word for word in joined if bare(word) not in by_pypdf]
    tally.same("words with the ligature lam-alef that pypdf does not read", lost, [])
    review = folder / "review.pdf"
    text = " ".join(page.extract_text() for page in pypdf.PdfReader(review).pages)
    for question in session["review"]:
        asked = [word for word in re.findall(r"[\u0621-\u06ff]+", question["ask"])]
        seen = letters(text)
        for letter in set(letters(" ".join(asked))):
            need = letters(" ".join(asked)).count(letter)
            tally.holds(f"review: {letter} read by pypdf", seen.count(letter) >= need, "too few")
    tally.note(f"{len(words)} Arabic words read out of the cards, {len(joined)} of them with lam-alef by pypdf")
    fonts = subprocess.run(["pdffonts", str(folder / "cards.pdf")], capture_output=True, text=True, check=True)
    tally.holds("the Arabic face is embedded", "Naskh" in fonts.stdout, fonts.stdout)
    english = site / "print" / "gymnastics" / "still-as-stones" / "cards.pdf"
    fonts = subprocess.run(["pdffonts", str(english)], capture_output=True, text=True, check=True)
    tally.holds("and only where it is used", "Naskh" not in fonts.stdout, fonts.stdout)


def check(tally):
    check_labels(tally)
    check_plurals(tally)
    check_numbers(tally)
    check_pages(tally)
    check_units(tally)
    check_arabic_paper(tally)
