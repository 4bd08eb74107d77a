"""The ink that publish tells of is the darkness of the pages as another program renders them, and within the budget."""

import concurrent.futures
import pathlib
import re
import shutil
import tempfile

import numpy as np
import yaml
from PIL import Image

from program import DEMO, PACKS, fresh_folder, publish, published, tool
from session_text import SHARED, session_files
from stress_pack import make_stress_pack, part, session, write_yaml

AGAINST = "the mean darkness of each page as pdftoppm renders it at 200 dpi"

# At 100 dpi poppler draws a line of 0.8 pt a whole dot wide or not at all as dark: finer is truer.
DPI = 200
# Per cent of the page, as the mean of a kind of sheet and as the darkest page of a sheet.
TOLERANCE = 0.35
BUDGET = 10
# A poster is the sheet with the most words in bold: it keeps this, however much there is to say on it.
POSTER = 9


def darkness(path):
    """How dark each page of a PDF is, in per cent."""
    with tempfile.TemporaryDirectory() as folder:
        tool("pdftoppm", "-gray", "-r", DPI, path, f"{folder}/page")
        pages = []
        for file in sorted(pathlib.Path(folder).iterdir()):
            with Image.open(file) as picture:
                pages.append(100 * (1 - np.asarray(picture).mean() / 255))
        return pages


def render_all(folder, name="*.pdf"):
    paths = sorted((folder / "print").rglob(name))
    with concurrent.futures.ThreadPoolExecutor() as pool:
        return dict(zip((path.relative_to(folder).as_posix() for path in paths), pool.map(darkness, paths)))


def told_by_sheet(output):
    line = next(line for line in output.splitlines() if line.startswith("Ink: "))
    return {name.replace(" ", "-"): float(share) for name, share in re.findall(r"([a-z][a-z ]*) (\d+\.\d) %", line)}


def told_by_file(pack, room, budget):
    """What the advice says of each sheet when the budget is so low that every one is over it."""
    shared = yaml.safe_load((pack / "pack.yaml").read_text()) or {}
    (pack / "pack.yaml").write_text(yaml.safe_dump({**shared, "ink_budget": budget}, allow_unicode=True))
    return publish(pack, room)


def dark_pack(folder):
    """A session whose card shows a dark picture, half black and half red."""
    pack = folder / "dark"
    seen = part("Look", 300, pictures=[{"file": "dark.png", "alt": "Half black, half red"}])
    write_yaml(pack / "pack.yaml", {"title": "Dark", "licence": "CC-BY-4.0", "cautions": ["Clear the floor."]})
    write_yaml(pack / "dark.yaml", session("Dark", {"technique": [seen]}, 5))
    picture = np.zeros((300, 400, 3), dtype=np.uint8)
    picture[:, 200:, 0] = 255
    Image.fromarray(picture).save(pack / "dark.png")
    return pack


def compare(tally, where, told, pages_of):
    """The mean of each kind of sheet; the largest difference."""
    rendered = {}
    for path, pages in pages_of.items():
        rendered.setdefault(pathlib.PurePosixPath(path).stem, []).extend(pages)
    tally.same(f"{where}: kinds of sheet", sorted(told), sorted(rendered))
    differences = [0.0]
    for name in sorted(set(told) & set(rendered)):
        mean = float(np.mean(rendered[name]))
        differences.append(abs(told[name] - mean))
        tally.holds(f"{where}: ink of {name}", differences[-1] <= TOLERANCE, f"told {told[name]}, rendered {mean:.2f}")
    return max(differences)


def check(tally):
    done = publish(DEMO, fresh_folder("ink") / "demo")
    pages_of = render_all(published(DEMO))
    tally.holds("the demo pack is within its budget", "ink_budget" not in done.stderr, done.stderr)
    for path, pages in pages_of.items():
        tally.holds(f"{path} is within {BUDGET} %", max(pages) <= BUDGET, f"{max(pages):.2f} %")
    mean_off = compare(tally, "demo", told_by_sheet(done.stdout), pages_of)

    # One sheet at a time: single sessions, whose advice names every sheet’s darkest page.
    worst, count = 0.0, 0
    room = fresh_folder("ink-files")
    for pack in (dark_pack(room), *single_packs(room)):
        done = told_by_file(pack, room / f"{pack.name}-out", 0.1)
        told = {path: float(share) for path, share in re.findall(r"^  (print/\S+\.pdf): (\d+\.\d) %$", done.stderr, re.M)}
        rendered = render_all(room / f"{pack.name}-out")
        for path, share in told.items():
            most, count = max(rendered[path]), count + 1
            worst = max(worst, abs(share - most))
            tally.holds(f"{pack.name} {path}", abs(share - most) <= TOLERANCE, f"told {share}, rendered {most:.2f}")
        tally.same(f"{pack.name}: sheets told of", sorted(told), sorted(rendered))
    posters = [ink for pack in (DEMO, make_stress_pack(PACKS)) for ink in posters_of(tally, pack, room / f"{pack.name}-posters")]
    tally.note(f"{sum(map(len, pages_of.values()))} demo pages rendered, the darkest {max(map(max, pages_of.values())):.1f} %; "
               f"means differ by {mean_off:.2f} at most, {count} darkest pages by {worst:.2f} (in per cent of the page); "
               f"{len(posters)} posters, the darkest {max(posters):.1f} %")


def posters_of(tally, pack, to):
    """The darkness of each poster of a pack; their mean is told."""
    done = publish(pack, to, "--poster")
    pages_of = render_all(to, "poster.pdf")
    for path, pages in pages_of.items():
        tally.holds(f"{pack.name} {path} is within {POSTER} %", max(pages) <= POSTER, f"{max(pages):.2f} %")
    darkest = [page for pages in pages_of.values() for page in pages]
    told, mean = told_by_sheet(done.stdout)["poster"], float(np.mean(darkest))
    tally.holds(f"{pack.name}: ink of poster", abs(told - mean) <= TOLERANCE, f"told {told}, rendered {mean:.2f}")
    return darkest


def single_packs(room):
    """Each demo session in a pack of its own with the shared files."""
    for path in session_files(DEMO).values():
        pack = room / path.stem
        shutil.copytree(DEMO / "_neighbours", pack / "_neighbours")
        for file in (*(DEMO / name for name in SHARED), path):
            (pack / file.name).write_bytes(file.read_bytes())
        yield pack
