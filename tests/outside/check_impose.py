"""Every way to print a session: backs lie behind their fronts, the folded booklet reads in order, sets are numbered,
large print is large, the poster can be read from 2 m, and each layout holds every word."""

import collections
import concurrent.futures
import functools
import multiprocessing
import re
import statistics

import pdfplumber
from PIL import ImageFont
from pypdf import PdfReader

from check_cards import find_text, texts_of
from check_figures_placed import numbers_on_poster
from check_print_layout import MARGIN, page_cases
from paper import PAPERS, POINTS_PER_MM, ink_edges, sheet
from program import DEMO, PACKS, ROOT, fresh_folder, publish
from session_text import line_of, parts_of, read_yaml, session_files, squeezed
from stress_pack import make_stress_pack
from tally import Tally

AGAINST = ("paper turned over and folded by the coordinates of its points, glyphs read by pdfplumber, page sizes read by "
           "pypdf against ISO 216 and ANSI A, WCAG 2.1 (1.4.12) for spacing, ISO 8596 for letters seen from 2 m")

GRIDS = {"1": (1, 1), "2": (1, 2), "4": (2, 2), "8": (2, 4)}
# One-sided for every grid; each flip where columns, rows or both can be mistaken.
LAYOUTS = [("1", "one"), ("2", "one"), ("4", "one"), ("8", "one"), ("2", "short_edge"), ("4", "long_edge"), ("8", "long_edge"), ("8", "short_edge")]
COPIES = 3
LARGE = 18
# ISO 8596: the letter read at acuity 1.0 subtends 5 minutes of arc, at 0.5 twice that (from memory). Common practice
# for posters is capitals of a two-hundredth of the distance and more; 10 minutes are a 344th and the least.
SEEN_FROM_MM = 2000
LEAST_CAPITAL_MM = SEEN_FROM_MM * 10 / 60 * 3.14159265 / 180
# WCAG 2.1, 1.4.12 Text Spacing, in parts of the size of the type.
WIDE_LETTERS, WIDE_LINES = 0.12, 1.5
EXTRAS = ["--large-print", "--booklet", "--poster", "--copies", COPIES, "--record", "child,class,week"]
WIDE = ("--spacing", "wide")


@functools.cache
def published_with(pack, *options):
    to = fresh_folder("printed-" + re.sub(r"\W+", "-", f"{pack.name}{''.join(map(str, options))}"))
    done = publish(pack, to, *options)
    if done.returncode != 0:
        raise RuntimeError(f"publish {pack} {options} ended with {done.returncode}: {done.stderr[-800:]}")
    return to


def middle(glyph):
    return (glyph["x0"] + glyph["x1"]) / 2, (glyph["top"] + glyph["bottom"]) / 2


@functools.cache
def read_whole(path):
    """For each page its size, every glyph that shows, and its straight lines as (x0, top, x1, bottom)."""
    with pdfplumber.open(path) as pdf:
        return [((page.width, page.height, [g for g in page.chars if g["text"].strip()]),
                 [(line["x0"], line["top"], line["x1"], line["bottom"]) for line in page.lines]) for page in pdf.pages]


def read_pages(path):
    return [page for page, _ in read_whole(path)]


def rulings_of(path):
    return [lines for _, lines in read_whole(path)]


@functools.cache
def cells_of(path, across, down):
    """For each page the words of each cell, by column and row, in the order of the file."""
    pages = []
    for width, height, glyphs in read_pages(path):
        cells = collections.defaultdict(list)
        for glyph in glyphs:
            x, y = middle(glyph)
            cells[int(x * across / width), int(y * down / height)].append(glyph["text"])
        pages.append({spot: squeezed("".join(texts)) for spot, texts in cells.items()})
    return pages


def turned_over(spot, grid, sides):
    """The cell that lies behind a cell: its middle is mirrored at the axis that the sheet is turned on."""
    x, y = (spot[0] + 0.5) / grid[0], (spot[1] + 0.5) / grid[1]
    x, y = (1 - x, y) if sides == "long_edge" else (x, 1 - y)
    return int(x * grid[0]), int(y * grid[1])


def in_reading_order(page, grid):
    return [page[column, row] for row in range(grid[1]) for column in range(grid[0]) if (column, row) in page]


def check_backs(tally, where, path, grid, sides):
    """The cards in order, each front followed by what is found behind it."""
    pages, cards = cells_of(path, *grid), []
    for front, back in zip(pages[::2], pages[1::2], strict=True):
        for row in range(grid[1]):
            for column in range(grid[0]):
                if (column, row) not in front:
                    continue
                words, behind = front[column, row], back.get(turned_over((column, row), grid, sides), "")
                number = re.search(r"Card(\d+)of(\d+)", words)
                met = re.search(r"Backof(\d+)of(\d+)", behind)
                tally.holds(f"{where}: behind card {number and number[1]}", number and met and number.groups() == met.groups(), behind[:60])
                cards += [words, behind]
    return cards


def check_words(tally, where, session, cards, has_backs):
    """Every text of every part stands on the sides from its own on, and what to look for on them or after them."""
    at = 0
    for number, (_, part) in enumerate(parts_of(session)):
        title = squeezed(line_of(part["title"]))
        found = next((n for n in range(at, len(cards)) if title in cards[n]), None)
        if not tally.holds(f"{where}: {title} after the part before it", found is not None):
            continue
        for key, blocks in texts_of(part):
            for block in blocks:
                whole = find_text(squeezed(block), cards, found, 0)
                tally.holds(f"{where}: {title}: {key}", whole is not None, f"not found whole: {block[:60]!r}")
        for fault in part.get("faults", []):
            for text in (line_of(fault["see"]).rstrip(".:"), line_of(fault["say"])):
                tally.holds(f"{where}: {title}: fault", find_text(squeezed(text), cards, found, 0) is not None, text[:60])
        at = found + 1 + has_backs if has_backs and found % 2 == 0 else found + 1


def check_cuts(tally, where, path, grid, sides):
    """A line from margin to margin between cards, on fronts alone, and no glyph under the scissors."""
    pages = zip(read_pages(path), rulings_of(path), strict=True)
    for number, ((width, height, glyphs), lines) in enumerate(pages):
        upright = [width * n / grid[0] for n in range(1, grid[0])]
        level = [height * n / grid[1] for n in range(1, grid[1])]
        is_front = sides == "one" or number % 2 == 0
        for x in upright:
            met = [l for l in lines if abs(l[0] - x) < 0.1 and abs(l[2] - x) < 0.1 and l[3] - l[1] > height - 2 * MARGIN - 10]
            tally.same(f"{where} page {number + 1}: cut at {x:.0f}", len(met), int(is_front))
        for y in level:
            met = [l for l in lines if abs(l[1] - y) < 0.1 and abs(l[3] - y) < 0.1 and l[2] - l[0] > width - 2 * MARGIN - 10]
            tally.same(f"{where} page {number + 1}: cut at {y:.0f}", len(met), int(is_front))
        cut = [c["text"] for c in glyphs if any(c["x0"] < x < c["x1"] for x in upright) or any(c["top"] < y < c["bottom"] for y in level)]
        tally.holds(f"{where} page {number + 1}: nothing under the scissors", not cut, "".join(cut[:30]))


def folded(sides):
    """The halves of the printed sides in the order they are read, when the stack is folded once.

    A point x of the front of a sheet has W - x of its back behind it. The right leaf of each sheet is read from the
    outermost to the innermost, front before back; then the left leaves on the way out, back before front.
    """
    sheets = list(zip(sides[::2], sides[1::2], strict=True))
    behind = {half: int((1 - (half + 0.5) / 2) * 2) for half in (0, 1)}
    read = []
    for front, back in sheets:
        read += [front.get(1, ""), back.get(behind[1], "")]
    for front, back in reversed(sheets):
        read += [back.get(behind[0], ""), front.get(0, "")]
    return read


def folios_of(page):
    """The page number of each half of a side: bold figures on the lowest line, at the foot of the paper."""
    width, height, glyphs = page
    folios = {}
    for half in (0, 1):
        own = [g for g in glyphs if int(middle(g)[0] * 2 / width) == half and g["bottom"] > height - MARGIN - 20]
        lowest = max((g["bottom"] for g in own), default=0)
        figures = [g["text"] for g in own if "Bold" in g["fontname"] and abs(g["bottom"] - lowest) < 0.5]
        folios[half] = "".join(figures)
    return folios


def check_booklet(tally, where, session, path):
    pages = folded([{spot[0]: words for spot, words in page.items()} for page in cells_of(path, 2, 1)])
    folios = folded([folios_of(page) for page in read_pages(path)])
    tally.same(f"{where}: pages divide by four", len(pages) % 4, 0)
    tally.holds(f"{where}: the cover has the title", squeezed(line_of(session["title"])) in pages[0], pages[0][:60])
    written = [n for n, page in enumerate(pages, 1) if n > 1 and page != "Notes"]
    tally.same(f"{where}: page numbers run on", folios, ["", *map(str, written), *[""] * (len(pages) - 1 - len(written))])
    tally.same(f"{where}: notes stand last", written, list(range(2, 2 + len(written))))
    check_words(tally, where, session, pages[1:], False)
    # The list on the cover names the page each part is on.
    for kind, part in parts_of(session):
        title = squeezed(line_of(part["title"]))
        # Of many parts, the list goes on on the page after the cover.
        listed = re.search(re.escape(":" + title) + r"(\d+)", pages[0]) or re.search(re.escape(":" + title) + r"(\d+)", pages[1])
        if tally.holds(f"{where}: {title} is listed", listed):
            page = next((int(listed[1][:n]) for n in (2, 1) if int(listed[1][:n]) <= len(pages) and title in pages[int(listed[1][:n]) - 1]), None)
            tally.holds(f"{where}: {title} is on its page", page, listed[1])


def check_sizes(tally, where, path, paper, is_wide=False):
    wanted = sorted(PAPERS[paper], reverse=is_wide)
    for page in PdfReader(path).pages:
        size = (float(page.mediabox.width), float(page.mediabox.height))
        near = all(abs(a - b) < 0.5 for a, b in zip(size, wanted))
        tally.holds(f"{where}: paper {paper}", near and not page.get("/Rotate"), str(size))


def without_foot(words, names):
    """The words of a card up to its foot: its edition, and the session's title or maker before it, whole or called short."""
    marks = list(re.finditer(r"·(?!CCBY)[0-9A-HJKMNP-TV-Z]{4}", words))
    if not marks:
        return "no edition on this card"
    words = words[:marks[-1].start()]
    cut = words.removesuffix("...")
    if cut != words:
        # A title wider than a line is cut, where a set's number stands beside it sooner.
        starts = (at for at in range(len(cut)) if any(name.startswith(cut[at:]) for name in names))
        return words[:next(starts, len(words))]
    return next((words.removesuffix(name) for name in names if words.endswith(name)), words)


def check_class_set(tally, where, pack, session, path, cards):
    title, whole = line_of(session["title"]), {**read_yaml(pack / "pack.yaml"), **session}
    credit, licence = whole.get("credit", ""), whole.get("licence", "")
    names = [squeezed(name) for name in (f"{credit} · {licence}", title, title.split(":")[0], credit, licence) if name]
    pages, each = cells_of(path, 2, 2), cells_of(cards, 2, 2)
    tally.same(f"{where}: pages of the class set", len(pages), COPIES * len(each))
    for number in range(1, COPIES + 1):
        own = pages[(number - 1) * len(each):number * len(each)]
        label = f"Set{number}of{COPIES}"
        for page, plain in zip(own, each):
            tally.holds(f"{where}: {label} on each card", page.keys() == plain.keys() and all(label in words for words in page.values()))
            # Title and maker at the foot give way to the number of the set.
            same = all(page[spot].replace(label, "").startswith(without_foot(plain[spot], names)) for spot in plain)
            tally.holds(f"{where}: {label} has the same cards", same)


def capital_mm(size):
    """The height of a capital of the shipped bold face at a size, by its outline."""
    face = ImageFont.truetype(str(ROOT / "static" / "type" / "Andika-Bold.ttf"), 1000)
    left, top, right, bottom = face.getbbox("H")
    return (bottom - top) / 1000 * size / POINTS_PER_MM


def with_numbers(session):
    """The key points with the numbers of the figures that show them, those of each part followed by its figures’ own."""
    said = ""
    for _, part in parts_of(session):
        if part.get("key_points"):
            pairs, count = numbers_on_poster(part)
            said += "".join(f"{number or ''}{squeezed(point)}" for number, point in pairs)
            said += "".join(str(number) for number in range(1, count + 1)) if count > 1 else ""
    return said


def check_poster(tally, where, session, path, sizes, is_whole):
    tally.same(f"{where}: one poster", len(read_pages(path)), 1)
    glyphs = read_pages(path)[0][2]
    # The title is the first heading, and the words over it are white.
    points = [g for g in glyphs if "Bold" in g["fontname"] and g["tag"] == "P" and g["non_stroking_color"] in ((0,), [0], 0, (0.0,))]
    words = squeezed("".join(g["text"] for g in points))
    wanted = [squeezed(line_of(point)) for _, part in parts_of(session) for point in part.get("key_points", [])]
    if is_whole:
        shown = with_numbers(session) if any(part.get("figure") for _, part in parts_of(session)) else "".join(wanted)
        tally.same(f"{where}: every key point is on the poster", words, shown)
    elif wanted:
        tally.holds(f"{where}: the poster has key points", any(point in words for point in wanted), words[:60])
    if not wanted:
        points = [g for g in glyphs if g["tag"] == "H2"]
        words = squeezed("".join(g["text"] for g in points))
        titles = "".join(squeezed(line_of(part["title"])) for _, part in parts_of(session))
        tally.same(f"{where}: without key points every part is on the poster", words, titles)
    if points:
        least = min(g["size"] for g in points)
        tally.holds(f"{where}: capitals can be read from 2 m", capital_mm(least) >= LEAST_CAPITAL_MM, f"{least} pt")
        sizes.append(least)


def check_large_print(tally, where, session, path):
    small = [g for _, _, glyphs in read_pages(path) for g in glyphs if g["size"] < LARGE - 0.05]
    tally.holds(f"{where}: no glyph below {LARGE} pt", not small, f"{small[0]['size'] if small else ''} {''.join(g['text'] for g in small[:20])}")
    check_words(tally, where, session, [page.get((0, 0), "") for page in cells_of(path, 1, 1)], False)


def steps_between_letters(path):
    """How far the next letter of a word begins, in parts of the size, by the pair of letters."""
    steps = collections.defaultdict(list)
    for _, _, glyphs in read_pages(path):
        for a, b in zip(glyphs, glyphs[1:]):
            same = a["fontname"] == b["fontname"] and a["size"] == b["size"] and abs(a["bottom"] - b["bottom"]) < 0.1
            step = (b["x0"] - a["x0"]) / a["size"]
            if same and 0 < step < 0.95 and a["text"].isalpha() and b["text"].isalpha():
                steps[a["fontname"].split("+")[-1], a["text"], b["text"]].append(step)
    # The smallest step of a pair has no space between.
    return {pair: min(found) for pair, found in steps.items()}


def check_wide(tally, where, path, usual, wider):
    wide, plain = steps_between_letters(path), steps_between_letters(usual)
    # A pair that only met across a space in one of the two is no pair of one word.
    more = [wide[pair] - plain[pair] for pair in wide.keys() & plain.keys() if abs(wide[pair] - plain[pair]) < 0.25]
    middle_of_all = statistics.median(more)
    tally.holds(f"{where}: letters {WIDE_LETTERS} further apart", abs(middle_of_all - WIDE_LETTERS) < 0.004, str(middle_of_all))
    wider.append(middle_of_all)
    for width, height, glyphs in read_pages(path):
        cells = collections.defaultdict(set)
        for g in glyphs:
            x, y = middle(g)
            # Titles of 19 pt are no running text, nor are the labels, drawings and boxes, all of 11 pt.
            if 11.4 < g["size"] < 18.5:
                cells[int(x * 2 / width), int(y * 2 / height), "Bold" in g["fontname"], round(g["size"], 1)].add(round(g["bottom"], 1))
        for (_, _, _, size), lines in cells.items():
            lines = sorted(lines)
            near = [b - a for a, b in zip(lines, lines[1:]) if 0.5 < b - a < 1.45 * size]
            tally.holds(f"{where}: lines of {size} pt stand {WIDE_LINES} apart", not near, f"{near[:4]}")


def check_layout(tally, where, path):
    """The rules of every page, for one file."""
    pages = zip(read_pages(path), ink_edges(path), strict=True)
    for number, ((_, _, glyphs), ink) in enumerate(pages, 1):
        for what, holds, otherwise in page_cases(glyphs, ink):
            tally.holds(f"{where} page {number}: {what}", holds, otherwise)


def check_grids(tally, pack, paper, name, session):
    for count, sides in LAYOUTS:
        grid, folder = GRIDS[count], published_with(pack, "--cards", count, "--sides", sides)
        where, path = f"{name} {count} {sides}", sheet(folder, name, "cards")
        if sides == "one":
            cards = [words for page in cells_of(path, *grid) for words in in_reading_order(page, grid)]
        else:
            cards = check_backs(tally, where, path, grid, sides)
        check_words(tally, where, session, cards, sides != "one")
        check_cuts(tally, where, path, grid, sides)
        check_sizes(tally, where, path, paper)
        check_layout(tally, where, path)


def check_extras(tally, pack, paper, name, session, sizes):
    folder, usual = published_with(pack, *EXTRAS), published_with(pack)
    at = functools.partial(sheet, folder, name)
    check_booklet(tally, f"{name} booklet", session, at("booklet"))
    check_sizes(tally, f"{name} booklet", at("booklet"), paper, is_wide=True)
    check_large_print(tally, f"{name} large print", session, at("large-print"))
    check_class_set(tally, f"{name} class set", pack, session, at("class-set"), at("cards"))
    check_poster(tally, f"{name} poster", session, at("poster"), sizes, pack == DEMO)
    for kind in ("large-print", "poster", "class-set", "record-class", "record-week"):
        check_sizes(tally, f"{name} {kind}", at(kind), paper)
    for kind in ("booklet", "poster", "large-print", "record-class", "record-week"):
        check_layout(tally, f"{name} {kind}", at(kind))
    page = (folder / "sessions" / f"{name}.html").read_text(encoding="utf-8")
    made = {path.name for path in (folder / "print" / name).glob("*.pdf")}
    linked = set(re.findall(rf'print/{re.escape(name)}/([\w-]+\.pdf)"', page))
    tally.same(f"{name}: the page links the sheets that are made", linked, made)
    usual_set = sorted(path.stem for path in (usual / "print" / name).glob("*.pdf"))
    tally.same(f"{name}: the usual sheets", usual_set, ["cards", "home-guide", "record", "review"])


def check_spacing(tally, name, wider):
    wide, usual = (sheet(published_with(DEMO, *more), name, "cards") for more in (WIDE, ()))
    check_wide(tally, f"{name} wide", wide, usual, wider)
    check_layout(tally, f"{name} wide", wide)


def check_one(job):
    """All sheets of one session, in a process of its own: each file is read once."""
    pack, paper, name, file = job
    tally, sizes, wider = Tally(name, AGAINST), [], []
    session = read_yaml(file)
    check_grids(tally, pack, paper, name, session)
    check_extras(tally, pack, paper, name, session, sizes)
    if pack == DEMO:
        check_spacing(tally, name, wider)
    return tally.passed, tally.faults, sizes, wider


def check(tally):
    packs = ((DEMO, "A4"), (make_stress_pack(PACKS), "Letter"))
    for pack, _ in packs:
        for options in [*(("--cards", count, "--sides", sides) for count, sides in LAYOUTS), tuple(EXTRAS), (), WIDE]:
            published_with(pack, *options)
    jobs = [(pack, paper, name, file) for pack, paper in packs for name, file in session_files(pack).items()]
    # Forked, so that they know what is published.
    with concurrent.futures.ProcessPoolExecutor(mp_context=multiprocessing.get_context("fork")) as pool:
        done = list(pool.map(check_one, jobs))
    sizes, wider = ([figure for one in done for figure in one[at]] for at in (2, 3))
    tally.passed += sum(passed for passed, *_ in done)
    tally.faults += [fault for _, faults, *_ in done for fault in faults]
    tally.note(f"{len(jobs)} sessions; smallest key points on posters {min(sizes):.0f} pt, capitals of {capital_mm(min(sizes)):.1f} mm "
               f"against {LEAST_CAPITAL_MM:.1f} mm; letters {min(wider):.3f} to {max(wider):.3f} of the size further apart")
