"""Figures on paper stand where they help and nowhere else: on the guide's time line, beside the poster's key points, on
pocket cards; clear of words, of one another and of the margin, and told in words. In the book they have their styles."""

import re
import zipfile

import pdfplumber
from check_accessible_pdf import faults_of, verdicts
from lxml import etree
from paper import POINTS_PER_MM, sheet
from program import DEMO, ROOT, fresh_folder, publish, published, run
from session_text import line_of, parts_of, read_yaml, session_files

AGAINST = ("boxes, marked content and alternative texts as pdfplumber reads them, PDF/UA-1 by veraPDF, the sessions by PyYAML, "
           "the book's XHTML by lxml")

MARGIN = 10 * POINTS_PER_MM
# Statures on the guide begin at 35 pt; of a child who lies or sits less is drawn upright.
SMALLEST = 12
# A figure that leans on a word's box by less does not touch its ink.
SLACK = 1.0
SVG = "{http://www.w3.org/2000/svg}"
XHTML = "{http://www.w3.org/1999/xhtml}"


def moments_of(part):
    """The moments of a part's figure as the session writes them."""
    figure = part.get("figure")
    return figure if isinstance(figure, list) else [figure] if figure else []


def figures_on(page):
    """Each figure of a page in its reading order: alternative text and the box of what is drawn."""
    drawn = {}
    for thing in [*page.curves, *page.lines, *page.rects]:
        box = drawn.get(thing.get("mcid"), (1e9, 1e9, -1e9, -1e9))
        drawn[thing.get("mcid")] = (min(box[0], thing["x0"]), min(box[1], thing["top"]),
                                    max(box[2], thing["x1"]), max(box[3], thing["bottom"]))
    found = []

    def walk(elements):
        for element in elements:
            if element["type"] == "Figure":
                boxes = [drawn[mcid] for mcid in element.get("mcids", []) if mcid in drawn]
                if boxes:
                    found.append((element.get("alt_text", ""), boxes[0], set(element["mcids"])))
            walk(element.get("children", []))

    walk(page.structure_tree)
    return found


def touch(a, b, slack):
    return min(a[2], b[2]) - max(a[0], b[0]) > slack and min(a[3], b[3]) - max(a[1], b[1]) > slack


def is_body(says):
    """The words of a figure of the body, in English."""
    return re.search(r"Seen (half )?from", says)


def check_clear(tally, where, page, figures):
    """No figure touches words, another figure or the margin."""
    words = page.extract_words()
    for says, box, _ in figures:
        name = f"{where}: {says[:32]!r}"
        hit = next((word["text"] for word in words if touch(box, (word["x0"], word["top"], word["x1"], word["bottom"]), SLACK)), None)
        tally.holds(f"{name} is clear of words", hit is None, f"{hit} in {box}")
        other = next((says for says, more, _ in figures if more is not box and touch(box, more, 6)), None)
        tally.holds(f"{name} is clear of other figures", other is None, f"{other}")
        inside = box[0] >= MARGIN and box[1] >= MARGIN and box[2] <= page.width - MARGIN and box[3] <= page.height - MARGIN
        tally.holds(f"{name} keeps to the margin", inside, f"{box}")


def check_guide(tally, name, session, path, is_rtl):
    with pdfplumber.open(path) as pdf:
        page = pdf.pages[0]
        shown = [figure for figure in figures_on(page) if re.match(r".+?: .+°|.+?: .*Seen from", figure[0])]
        parts = [line_of(part["title"]) for _, part in parts_of(session) if part.get("figure")]
        if not is_rtl:
            told = [says.split(": ")[0] for says, _, _ in shown]
            tally.same(f"{name} guide: figures in the order of the parts", told, [title for title in parts if title in told])
            tally.holds(f"{name} guide: most parts that are drawn stand on it", len(told) * 4 >= len(parts) * 3, f"{told} of {parts}")
        if not shown:
            return 0
        middles = [(box[0] + box[2]) / 2 for _, box, _ in shown]
        tally.same(f"{name} guide: along the way of reading", middles, sorted(middles, reverse=is_rtl))
        feet = max(box[3] for _, box, _ in shown)
        tally.holds(f"{name} guide: large enough", min(max(b[3] - b[1], b[2] - b[0]) for _, b, _ in shown) >= SMALLEST, f"{feet}")
        check_clear(tally, f"{name} guide", page, shown)
        return len(shown)


def numbers_on_poster(part):
    """The key points of a part with the number of the picture that shows each, among those that show one."""
    points = [line_of(point) for point in part.get("key_points", [])]
    moments = [int(moment["point"]) if isinstance(moment, dict) and "point" in moment else None for moment in moments_of(part)]
    shown = [point for at, point in enumerate(moments) if point and point <= len(points) and point not in moments[:at]]
    numbered = {point: number for number, point in enumerate(shown, 1)} if len(shown) > 1 else {}
    return [(numbered.get(at), point) for at, point in enumerate(points, 1)], len(shown) or min(1, len(moments))


def check_poster(tally, name, session, path):
    with pdfplumber.open(path) as pdf:
        page = pdf.pages[0]
        bodies = [figure for figure in figures_on(page) if is_body(figure[0])]
        words = " ".join(word["text"] for word in page.extract_words(use_text_flow=True))
        check_clear(tally, f"{name} poster", page, bodies)
    titles = {line_of(part["title"]) for _, part in parts_of(session)}
    wanted = [numbers_on_poster(part) for _, part in parts_of(session) if part.get("key_points")]
    tally.same(f"{name} poster: figures", len(bodies), sum(count for _, count in wanted))
    for number, point in (pair for pairs, _ in wanted for pair in pairs):
        text = f"{number} {point}" if number else point
        tally.holds(f"{name} poster: {text!r}", text in words, words[:80])
        if not number and point not in titles:
            tally.holds(f"{name} poster: no number at {point!r}", not re.search(rf"\b\d {re.escape(point)}", words))
    return len(bodies)


def check_pocket(tally, name, session, path):
    """Pocket cards: one moment beside key points, none elsewhere, each of a part that has a figure."""
    seen = 0
    with pdfplumber.open(path) as pdf:
        for number, page in enumerate(pdf.pages, 1):
            bodies = [figure for figure in figures_on(page) if is_body(figure[0])]
            check_clear(tally, f"{name} pocket cards {number}", page, bodies)
            for says, box, _ in bodies:
                lines = [page.width / 2], [page.height * row / 4 for row in (1, 2, 3)]
                cut = any(box[0] < x < box[2] for x in lines[0]) or any(box[1] < y < box[3] for y in lines[1])
                tally.holds(f"{name} pocket cards {number}: {says[:30]!r} is not cut", not cut, f"{box}")
            seen += len(bodies)
    drawn = sum(1 for _, part in parts_of(session) if part.get("figure") and part.get("key_points"))
    tally.holds(f"{name}: at most one figure a part on pocket cards", seen <= drawn, f"{seen} for {drawn}")
    return seen


def check_book(tally):
    path = fresh_folder("figures-book") / "pe.epub"
    done = run("parcel", DEMO, "--to", path)
    tally.same("the book is made", done.returncode, 0)
    style = (ROOT / "static/book/book.css").read_text("utf-8")
    count = 0
    with zipfile.ZipFile(path) as book:
        for name, file in session_files(DEMO).items():
            session = read_yaml(file)
            chapter = next((one for one in book.namelist() if one.endswith(f"{name}.xhtml")), None)
            if not chapter:
                continue
            tree = etree.fromstring(book.read(chapter))
            figures = tree.findall(f".//{SVG}svg[@class='figure']")
            drawn = [part for _, part in parts_of(session) if part.get("figure")]
            tally.same(f"{name} in the book: figures", len(figures), len(drawn))
            ids = set(tree.xpath("//@id"))
            for figure in figures:
                count += 1
                says = figure.get("aria-label", "")
                tally.holds(f"{name} in the book: {says[:30]!r} is an image with words", figure.get("role") == "img" and len(says) > 25)
                uses = [use.get("href", "")[1:] for use in figure.iter(f"{SVG}use")]
                tally.holds(f"{name} in the book: {says[:30]!r} uses what is there", set(uses) <= ids, f"{set(uses) - ids}")
                looks = {look for path in figure.iter(f"{SVG}path") for look in (path.get("class") or "").split()}
                bare = sorted(look for look in looks if f"path.{look} " not in style and f"path.{look}," not in style)
                tally.same(f"{name} in the book: {says[:30]!r} has every style", bare, [])
            numbered = [int(b.text) for b in tree.findall(f".//{XHTML}ul[@class='key-points']/{XHTML}li/{XHTML}b") if (b.text or "").isdigit()]
            # Of two moments that show the same key point the first counts.
            points = sum(len({moment["point"] for moment in moments_of(part) if isinstance(moment, dict) and "point" in moment})
                         for part in drawn if len(moments_of(part)) > 1)
            tally.same(f"{name} in the book: key points with numbers", len(numbered), points)
    return count


def check(tally):
    plain, more = published(DEMO), fresh_folder("figures-placed")
    more.rmdir()
    done = publish(DEMO, more, "--cards", 8, "--poster")
    tally.same("posters and pocket cards are published", done.returncode, 0)
    guides = posters = pockets = 0
    for name, path in session_files(DEMO).items():
        session = read_yaml(path)
        guides += check_guide(tally, name, session, sheet(plain, name, "home-guide"), False)
        check_guide(tally, f"{name} in Arabic", session, sheet(plain / "ar", name, "home-guide"), True)
        posters += check_poster(tally, name, session, sheet(more, name, "poster"))
        pockets += check_pocket(tally, name, session, sheet(more, name, "cards"))
    tally.holds("pocket cards have figures", pockets > 0)
    for path, verdict in verdicts(more / "print").items():
        if path.endswith(("poster.pdf", "cards.pdf")):
            tally.holds(f"{path.removeprefix(str(more))}: PDF/UA-1", verdict == "PASS", verdict != "PASS" and faults_of(path) or "")
    book = check_book(tally)
    tally.note(f"figures on guides {guides}, posters {posters}, pocket cards {pockets}, in the book {book}")
