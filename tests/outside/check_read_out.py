"""What sheets from right to left read out: a page has its glyphs as they stand, so each element says its words as they are
read (ActualText), and bookmarks have them so too. On every sheet words that stand apart have a space between them."""

import re
import unicodedata

import pdfplumber
import pypdf

from check_passages import words_by_piece
from program import DEMO, fresh_folder, publish
from session_text import blocks_of, line_of, parts_of, read_yaml
from stress_pack import part, session, write_yaml

AGAINST = "the texts of the YAML (PyYAML, markdown-it-py), and /ActualText (ISO 32000-1, 14.9.4) and the outline as pypdf reads them"

# Each sheet with the least that says its words on it.
SHEETS = {"cards": 15, "home-guide": 10, "review": 4, "record": 4, "poster": 5, "booklet": 15, "large-print": 15}
# The session of the demo pack that is translated into Arabic.
ARABIC = "gymnastics/still-as-stones"


def plain(text):
    """Without a difference of how marks are written: a ligature of lam and alef has its marks behind both."""
    text = unicodedata.normalize("NFC", " ".join(text.split()))
    return re.sub("\u0644([\u064b-\u0652]+)\u0627", "\u0644\u0627\\1", text)


def read_out(path):
    """What each element says, in the order of the structure: its own words, else those on the page; and how many say
    words of their own."""
    reader, words = pypdf.PdfReader(path), words_by_piece(path)
    pages = {page.indirect_reference.idnum: number for number, page in enumerate(reader.pages)}
    said, own = [], 0

    def walk(kid, page):
        nonlocal own
        kid = kid.get_object()
        if isinstance(kid, int):
            said.append(words.get((page, kid), ""))
        elif isinstance(kid, list):
            for each in kid:
                walk(each, page)
        else:
            page = pages[kid.raw_get("/Pg").idnum] if "/Pg" in kid else page
            if "/ActualText" in kid:
                own += 1
                said.append(str(kid["/ActualText"]))
            elif "/MCID" in kid:
                said.append(words.get((page, kid["/MCID"]), ""))
            elif "/K" in kid and kid.get("/S") != "/Figure":
                walk(kid["/K"], page)

    walk(reader.root_object["/StructTreeRoot"]["/K"], None)
    return said, own


def titles_of(outline):
    for entry in outline:
        if isinstance(entry, list):
            yield from titles_of(entry)
        else:
            yield entry.title


def texts_of(session):
    """Each text of a session’s parts that stands on its cards."""
    texts = [session["title"], session["summary"]]
    for _, each in parts_of(session):
        texts += [each["title"], *blocks_of(each["how"]), each.get("easier", ""), each.get("harder", ""), *(each.get("key_points") or [])]
    return [plain(line_of(text)) for text in texts if text]


def check_sheets(tally, where, folder, session):
    for sheet, least in SHEETS.items():
        path = folder / f"{sheet}.pdf"
        said, own = read_out(path)
        whole = plain(" ".join(said))
        tally.holds(f"{where} {sheet}: elements say their words", own >= least, f"{own}")
        tally.holds(f"{where} {sheet}: the title is read out", plain(line_of(session["title"])) in whole, whole[:120])
        for title in titles_of(pypdf.PdfReader(path).outline):
            read = plain(title.replace("…", ""))
            tally.holds(f"{where} {sheet}: the bookmark {title!r} is read out", read in whole, whole[:120])
        if sheet in ("cards", "large-print", "booklet"):
            for text in texts_of(session):
                tally.holds(f"{where} {sheet}: {text[:40]!r} is read out", text in whole, near(text, whole))


def near(text, whole):
    """What is read out from the text’s first words on."""
    at = whole.find(" ".join(text.split()[:2]))
    return whole[at:at + len(text)] if at >= 0 else "nothing like it"


def check_urdu(tally):
    pack = fresh_folder("read-out-urdu") / "pack"
    title = "پتھر پر توازن"
    how = ("ایک پاؤں پر کھڑے ہو جائیں اور سامنے کی دیوار کو دیکھیں۔ دونوں بازو پھیلائیں، آہستہ سے سانس لیں اور پانچ تک گنیں۔ "
           "پھر پاؤں بدلیں اور 3 بار دہرائیں۔")
    seen = part(title, 300, how=how, easier="ایک ہاتھ سے دیوار پکڑیں۔", harder="اپنی آنکھیں بند کر لیں۔", key_points=["سر سیدھا رکھیں"])
    write_yaml(pack / "pack.yaml", {"title": "گھر پر کھیل", "language": "ur", "licence": "CC-BY-4.0", "cautions": ["پہلے فرش خالی کریں۔"]})
    lesson = session(title, {"technique": [seen]}, 5, summary="کھڑے ہو کر توازن رکھیں۔", success=["میں کھڑا رہتا ہوں۔"], safety=["فرش خالی کریں۔"])
    write_yaml(pack / "stones.yaml", lesson)
    site = pack.parent / "out"
    done = publish(pack, site, "--poster", "--booklet", "--large-print")
    if tally.same("the Urdu pack is published", done.returncode, 0):
        check_sheets(tally, "ur", site / "print/stones", read_yaml(pack / "stones.yaml"))


def joined_words(path):
    """Words of one piece that stand on two lines, or far apart, with no space between them (ISO 32000-1, 14.8.2.5). A
    word may go on in the next line behind a hyphen, an address behind a stroke."""
    with pdfplumber.open(path) as pdf:
        for page in pdf.pages:
            last = {}
            for glyph in page.chars:
                piece = glyph.get("mcid")
                before = last.get(piece) if piece is not None and glyph["tag"] != "Figure" else None
                last[piece] = glyph
                if not before or before["text"].isspace() or glyph["text"].isspace():
                    continue
                is_lower = abs(before["bottom"] - glyph["bottom"]) > before["size"] / 2
                gap = max(glyph["x0"] - before["x1"], before["x0"] - glyph["x1"])
                if is_lower and before["text"] in "-/\u00ad" or glyph["text"] == "\u00ad" or before["text"] == "\u00ad":
                    continue
                if is_lower or gap > before["size"]:
                    yield before["text"] + glyph["text"], round(glyph["top"])


def check_words_apart(tally, site):
    """Every kind of sheet, families’ and teachers’."""
    paths = sorted((site / "print").rglob("*.pdf"))
    paths = [path for path in paths if "/units/" in str(path) or path.parent.name in ("brook-leap", "tide-table", "print")]
    for path in paths + sorted((site.parent / "teachers").rglob("*.pdf")):
        joined = list(joined_words(path))
        tally.same(f"{path.relative_to(site.parent)}: words without a space between them", joined[:4], [])


def check(tally):
    site = fresh_folder("read-out") / "demo"
    more = ["--teachers", str(site.parent / "teachers"), "--poster", "--booklet", "--large-print", "--copies", "2", "--record", "child,class,week"]
    done = publish(DEMO, site, *more)
    if not tally.same("the demo pack is published", done.returncode, 0):
        return
    check_words_apart(tally, site)
    check_sheets(tally, "ar", site / "ar/print" / ARABIC, read_yaml(DEMO / f"{ARABIC}.ar.yaml"))
    # Where all runs from left to right, a page has its words in their order.
    english = read_yaml(DEMO / f"{ARABIC}.yaml")
    titles = {plain(line_of(text)) for text in [english["title"], *(each["title"] for _, each in parts_of(english))]}
    for sheet in SHEETS:
        path = site / "print" / ARABIC / f"{sheet}.pdf"
        said, own = read_out(path)
        tally.same(f"en {sheet}: no element needs words of its own", own, 0)
        tally.holds(f"en {sheet}: words are read out", len(said) > 10, f"{len(said)}")
        marks = set(map(plain, titles_of(pypdf.PdfReader(path).outline)))
        tally.holds(f"en {sheet}: bookmarks are titles whole", marks & titles, f"{marks}")
        tally.holds(f"en {sheet}: no bookmark is two titles", not any(a != b and a in mark and b in mark for mark in marks for a in titles for b in titles),
                    f"{marks}")
    check_urdu(tally)
