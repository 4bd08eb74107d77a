"""Every code on paper scans to exactly its address, from a coarse grey print, and is as large as phones ask."""

import shutil
import subprocess
import tempfile

import numpy as np
import yaml
from PIL import Image

from paper import sheet, words_on
from program import DEMO, PACKS, fresh_folder, published, tool
from session_text import read_yaml, session_files, squeezed
from stress_pack import make_stress_pack

AGAINST = "zbarimg on what pdftoppm renders; ISO/IEC 18004 for the quiet zone, qrcode.com for the module’s size"

# A coarse printer or a poor copy.
SCAN_DPI = 150
FINE_DPI = 600
# 300 dpi × 5 dots.
LEAST_MODULE_MM = 0.42
QUIET_MODULES = 4
FILM = "https://video.example.org/watch?v=Heron&t=12"


def with_film(folder):
    """The demo pack with a film in one session."""
    pack = folder / "filmed"
    shutil.copytree(DEMO, pack)
    path = pack / "dance" / "night-bus.yaml"
    session = yaml.load(path.read_text(), Loader=yaml.BaseLoader)
    session["film"] = {"link": FILM, "shows": "One round of the dance."}
    path.write_text(yaml.safe_dump(session, allow_unicode=True, sort_keys=False))
    return pack


def rendered(path, dpi, box=()):
    """The first page, or a part of it, as a grey picture."""
    with tempfile.TemporaryDirectory() as folder:
        crop = [piece for pair in zip(["-x", "-y", "-W", "-H"], box) for piece in pair]
        tool("pdftoppm", "-gray", "-r", dpi, "-f", 1, "-l", 1, "-singlefile", *crop, path, f"{folder}/page")
        with Image.open(f"{folder}/page.pgm") as picture:
            return picture.copy()


def texts_in(picture):
    """What zbarimg reads from every code it finds."""
    with tempfile.NamedTemporaryFile(suffix=".png") as file:
        picture.save(file.name)
        done = subprocess.run(["zbarimg", "--raw", "-q", "-Sdisable", "-Sqrcode.enable", file.name], capture_output=True, text=True)
    # 4: there was no code.
    if done.returncode not in (0, 4):
        raise RuntimeError(f"zbarimg ended with {done.returncode}: {done.stderr[-400:]}")
    return sorted(done.stdout.split())


def runs_of(line):
    """Where each run of dark or light begins in a row of dots, the first and the last left out."""
    return np.flatnonzero(np.diff(line.astype(np.int8))) + 1


def is_finder(lengths):
    """Dark, light, dark, light, dark as 1 : 1 : 3 : 1 : 1 (ISO/IEC 18004, finder pattern)."""
    unit = sum(lengths) / 7
    return unit > 5 and all(abs(length - unit * share) < unit * 0.3 for length, share in zip(lengths, (1, 1, 3, 1, 1)))


def finder_middles(dark):
    """The middle of each finder pattern, in dots."""
    middles = []
    for y in range(0, dark.shape[0], 3):
        edges = runs_of(dark[y])
        for at in range(len(edges) - 5):
            if not dark[y, edges[at]] or not is_finder(np.diff(edges[at:at + 6])):
                continue
            x = (edges[at] + edges[at + 5]) // 2
            column = runs_of(dark[:, x])
            below = np.searchsorted(column, y)
            if 3 <= below <= len(column) - 3 and is_finder(np.diff(column[below - 3:below + 3])):
                middle = (x, (column[below - 3] + column[below + 2]) // 2)
                if not any(abs(middle[0] - other[0]) + abs(middle[1] - other[1]) < 40 for other in middles):
                    middles.append(middle)
    return middles


def codes_in(dark):
    """The corners of each code: of three finder patterns the two at the ends of its falling diagonal span it."""
    middles = finder_middles(dark)
    for x, y in middles:
        right = sorted(other for other in middles if abs(other[1] - y) < 6 and other[0] > x + 40)
        if right and any(abs(other[0] - x) < 6 and abs(other[1] - y - (right[0][0] - x)) < 6 for other in middles):
            side = right[0][0] - x
            yield np.array([[x, y], [x + side, y + side]])


def measure(dark, corners):
    """The module in dots and the modules of quiet around a code, from the ink itself."""
    (left, top), (right, bottom) = corners.min(axis=0), corners.max(axis=0)
    # From the middle of the finder patterns outwards to where nothing is dark any more.
    while dark[top:bottom, left - 1].any(): left -= 1
    while dark[top:bottom, right].any(): right += 1
    while dark[top - 1, left:right].any(): top -= 1
    while dark[bottom, left:right].any(): bottom += 1
    inside = np.argwhere(dark[top:bottom, left:right])
    (first_row, first_column), (last_row, last_column) = inside.min(axis=0), inside.max(axis=0)
    left, right, top, bottom = left + first_column, left + last_column + 1, top + first_row, top + last_row + 1
    # The upper side of the first finder pattern is seven modules long.
    row = dark[top + 2, left:right]
    module = int(np.argmin(row)) / 7
    quiet = 0
    while quiet < 200 and not (dark[top - quiet - 1, left - quiet - 1:right + quiet + 1].any() or dark[bottom + quiet, left - quiet - 1:right + quiet + 1].any()
                               or dark[top - quiet - 1:bottom + quiet + 1, left - quiet - 1].any() or dark[top - quiet - 1:bottom + quiet + 1, right + quiet].any()):
        quiet += 1
    return module, quiet / module, (right - left) / module


def check_size(tally, where, path, wanted):
    picture = rendered(path, FINE_DPI)
    dark, smallest = np.asarray(picture) < 128, []
    for number, corners in enumerate(codes_in(dark), 1):
        module, quiet, side = measure(dark, corners)
        smallest.append(module / FINE_DPI * 25.4)
        tally.holds(f"{where}: a module of code {number} is {LEAST_MODULE_MM} mm", smallest[-1] >= LEAST_MODULE_MM, f"{smallest[-1]:.3f} mm")
        tally.holds(f"{where}: {QUIET_MODULES} modules are quiet round code {number}", quiet >= QUIET_MODULES - 0.1, f"{quiet:.2f}")
        tally.holds(f"{where}: whole modules on a side", abs(side - round(side)) < 0.25 and round(side) % 4 == 1, f"{side:.2f}")
    tally.same(f"{where}: codes measured", len(smallest), len(wanted))
    return smallest


def check_pack(tally, pack):
    """The smallest module seen."""
    folder, address = published(pack), read_yaml(pack / "pack.yaml").get("address")
    modules = []
    for name, path in session_files(pack).items():
        page = f"sessions/{name}.html"
        film = read_yaml(path).get("film", {}).get("link")
        wanted = sorted(filter(None, [address and f"{address.rstrip('/')}/{page}", film]))
        if address:
            tally.holds(f"{name}: the address is that of a page", (folder / page).is_file())
        for kind in ("cards", "home-guide"):
            pdf, where = sheet(folder, name, kind), f"{pack.name} {name} {kind}"
            picture = rendered(pdf, SCAN_DPI)
            if kind == "cards":
                picture = picture.crop((0, 0, picture.width // 2, picture.height // 2))
            tally.same(f"{where}: codes scanned", texts_in(picture), wanted)
            for text in wanted:
                tally.holds(f"{where}: spells {text[-30:]}", squeezed(text) in words_on(pdf), text)
            if wanted:
                modules += check_size(tally, where, pdf, wanted)
    return modules


def check(tally):
    filmed = with_film(fresh_folder("filmed"))
    modules = [module for pack in (DEMO, filmed) for module in check_pack(tally, pack)]
    # Without an address there is nothing to scan.
    check_pack(tally, make_stress_pack(PACKS))
    tally.note(f"{len(modules)} codes measured; the smallest module is {min(modules):.2f} mm")
