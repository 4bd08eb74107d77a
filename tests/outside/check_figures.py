"""Figures: bodies in numpy, published tables, balance by shapely, the same picture from two engines."""

import html
import io
import json
import math
import re
import subprocess

import numpy
import resvg_py
from body_model import ANKLE, CENTRE, HEAD, HEIGHT, LENGTH, MASS, NECK, centre_of_mass, place
from PIL import Image
from pypdf import PdfReader
from program import DEMO, NODE_MODULES, ROOT, ask, fresh_folder, published, teachers_of
from shapely import MultiPoint, Point

AGAINST = "numpy, tables of Winter and of the AAOS (from memory), sums by hand, shapely; resvg beside Chromium"

# Normal ranges, AAOS (1965), as Norkin and White table them; from memory. Ours is the key of a joint and motion.
RANGES = {
    "back forward": (-25, 80), "back sideways": (-35, 35), "back turned": (-45, 45),
    "head forward": (-45, 45), "head sideways": (-45, 45), "head turned": (-60, 60),
    "arms forward": (-60, 180), "arms sideways": (-75, 180), "arms turned": (-70, 90),
    "elbows forward": (0, 150), "wrists forward": (-70, 80),
    "legs forward": (-30, 120), "legs sideways": (-30, 45), "legs turned": (-45, 45),
    "knees forward": (0, 135), "feet forward": (-20, 50),
}
JOINTS = ["trunk", "back", "head", *(f"{side}_{joint}" for side in ("left", "right")
                                    for joint in ("arm", "elbow", "wrist", "leg", "knee", "foot"))]
MOTIONS = ("forward", "sideways", "turned")


def random_angles(chance):
    """Any angle of any joint; hinges bend one way only."""
    angles = {}
    for joint in JOINTS:
        is_hinge = joint.split("_")[-1] in ("elbow", "wrist", "knee", "foot")
        motions = MOTIONS[:1] if is_hinge else MOTIONS
        angles[joint] = {motion: float(chance.uniform(-170, 170)) for motion in motions}
    return angles


def every_joint_still():
    return {joint: {motion: 0.0 for motion in MOTIONS} for joint in JOINTS}


def check_bodies(tally):
    chance = numpy.random.default_rng(8)
    poses = [random_angles(chance) for _ in range(400)]
    answers = ask([{"ask": "figure", "what": "body", "angles": angles} for angles in poses])
    furthest = 0.0
    for number, (angles, ours) in enumerate(zip(poses, answers)):
        theirs = place(angles)
        off = max(float(numpy.abs(numpy.array(ours[name]) - at).max()) for name, at in theirs.items())
        centre = float(numpy.abs(numpy.array(ours["centre"]) - centre_of_mass(theirs)).max())
        furthest = max(furthest, off, centre)
        tally.holds(f"points of random pose {number}", off < 1e-9, f"{off:.2e} of stature apart")
        tally.holds(f"centre of random pose {number}", centre < 1e-9, f"{centre:.2e} of stature apart")
    tally.note(f"400 random poses, {len(theirs)} points each: largest difference {furthest:.1e} of stature")


def check_tables(tally):
    grown, *children = ask([{"ask": "figure", "what": "segments"}]
                           + [{"ask": "figure", "what": "segments", "years": years} for years in (6, 9, 12, 15)])
    for name in LENGTH:
        tally.same(f"length, mass and centre of {name}", grown["segments"][name], [LENGTH[name], MASS[name], CENTRE[name]])
    sums = {"knee": ["shank"], "hip": ["shank", "thigh"], "shoulder": ["shank", "thigh", "trunk"]}
    for point, parts in sums.items():
        height = grown["ankle"] + sum(grown["segments"][part][0] for part in parts)
        tally.holds(f"height of the {point}", abs(height - HEIGHT[point]) < 1e-9, f"{height} for {HEIGHT[point]}")
    for years, child in zip((6, 9, 12, 15), children):
        whole = child["ankle"] + sum(child["segments"][part][0] for part in ("shank", "thigh", "trunk", "head and neck"))
        tally.holds(f"a child of {years} is one stature tall", abs(whole - 1) < 1e-9, f"{whole}")
        tally.holds(f"a child of {years} has a larger head", child["head"] > HEAD, f"{child['head']}")
    [ranges] = ask([{"ask": "figure", "what": "ranges"}])
    for name, span in RANGES.items():
        tally.same(f"range of {name}", ranges.get(name), [float(end) for end in span])


def check_by_hand(tally):
    """Three poses whose centres are a sum on paper; every joint at nought but the arms."""
    still = every_joint_still()
    forward, up = json.loads(json.dumps(still)), json.loads(json.dumps(still))
    for side in ("left", "right"):
        forward[f"{side}_arm"]["forward"] = 90.0
        up[f"{side}_arm"]["forward"] = 180.0
    down, ahead, above = (numpy.array(a["centre"]) for a in
                          ask([{"ask": "figure", "what": "body", "angles": a} for a in (still, forward, up)]))
    # Mass times distance of both arms from the shoulder: upper arm, forearm, hand.
    arms = 0.056 * 0.436 * 0.186 + 0.032 * (0.186 + 0.430 * 0.146) + 0.012 * (0.332 + 0.506 * 0.108)
    # Above the hips: trunk, head, arms from the shoulder at 0.288 down; thighs, shanks and feet below.
    height = (0.497 * 0.144 + 0.081 * (0.288 + NECK + HEAD / 2) + 0.100 * 0.288 - arms
              - 0.200 * 0.433 * 0.245 - 0.093 * (0.245 + 0.433 * 0.246) - 0.029 * (0.491 + 0.5 * ANKLE))
    tally.holds("standing: the centre by hand", abs(down[2] - height) < 1e-9, f"{down[2]} for {height}")
    tally.holds("standing: at 0.55 to 0.58 of stature, as textbooks have it", 0.55 < down[2] + 0.530 < 0.58, f"{down[2] + 0.53}")
    tally.holds("arms forward: the centre moves by hand", abs(ahead[0] - down[0] - arms) < 1e-9, f"{ahead[0] - down[0]} for {arms}")
    tally.holds("arms up: it rises by twice that", abs(above[2] - down[2] - 2 * arms) < 1e-9, f"{above[2] - down[2]}")


def check_library(tally):
    [answer] = ask([{"ask": "figure", "what": "library"}])
    poses = answer["poses"]
    tally.holds("at least forty poses", len(poses) >= 40, f"{len(poses)}")
    for pose in poses:
        points = {name: numpy.array(at) for name, at in pose["points"].items()}
        centre = centre_of_mass(points)
        tally.holds(f"{pose['name']}: the centre from its points", numpy.abs(centre - pose["centre"]).max() < 2e-3, f"{centre}")
        tally.same(f"{pose['name']}: no joint beyond its range", pose["beyond"], 0)
        lowest = min(at[2] for at in points.values())
        tally.holds(f"{pose['name']}: nothing under the floor", lowest > -1e-9, f"{lowest}")
        if pose["on"] == "air":
            tally.holds(f"{pose['name']}: in flight, clear of the floor", lowest > 0.05, f"{lowest}")
            continue
        base = MultiPoint(pose["contacts"]).convex_hull
        over = Point(pose["centre"][:2])
        inside = base.exterior.distance(over) * (1 if base.contains(over) else -1) if base.area else -1
        # Outside, the nearest edge line may be nearer than the nearest edge.
        same = abs(inside - pose["steady"]) < 1e-9 if inside >= 0 else pose["steady"] < 0
        tally.holds(f"{pose['name']}: steady as shapely has it", same, f"ours {pose['steady']}, theirs {inside}")
        tally.holds(f"{pose['name']}: stays up", not pose["falls"] and inside > -0.013, f"{inside:.4f} of stature inside its base")


PAPER, INK = "#fffefa", "#0c4956"
COLOURS = {"paper": PAPER, "ink": INK, "soft": "#48595f", "line": "#a9bdbf", "tape": "#ffb92e"}


def figures_of(page):
    return re.findall(r'<svg class="(?:drawing )?figure" .*?</svg>', page.read_text("utf-8"), re.S)


def alone(svg):
    """A figure as a file of its own, its style in it and its colours filled in."""
    style = (ROOT / "static/site/figure.css").read_text("utf-8").split("/* A strip")[0]
    style = re.sub(r"var\(--(\w+)\)", lambda found: COLOURS[found[1]], style)
    _, rest = svg.split(">", 1)
    # One unit is one dot in both engines.
    wide, tall = (math.ceil(float(side)) for side in re.search(r'viewBox="0 0 (\S+) (\S+)"', svg).groups())
    return (f'<svg xmlns="http://www.w3.org/2000/svg" class="figure" viewBox="0 0 {wide} {tall}" width="{wide}" '
            f'height="{tall}"><style>{style}</style>{rest}')


def shades(png, size):
    whole = Image.open(io.BytesIO(png)).convert("RGBA")
    ground = Image.new("RGBA", whole.size, PAPER)
    return numpy.asarray(Image.alpha_composite(ground, whole).convert("L").resize(size), float)


def check_engines(tally, svgs):
    """Chromium and resvg draw the same. Edges are smoothed each in its own way, so grey means are compared."""
    room = fresh_folder("figures")
    files = []
    for number, svg in enumerate(svgs):
        path = room / f"{number}.svg"
        path.write_text(alone(svg), "utf-8")
        files.append(path)
    script = ROOT / "tests/outside/draw_figures.mjs"
    subprocess.run(["node", script, NODE_MODULES, *files], check=True, timeout=120, capture_output=True)
    worst = 0.0
    for path in files:
        theirs = Image.open(path.with_suffix(".png"))
        ours = bytes(resvg_py.svg_to_bytes(svg_path=str(path)))
        a, b = shades(ours, theirs.size), shades(path.with_suffix(".png").read_bytes(), theirs.size)
        off = float(numpy.abs(a - b).mean())
        worst = max(worst, off)
        has_ink = float((b < 120).mean())
        tally.holds(f"figure {path.stem} from both engines", off < 1.0 and has_ink > 0.005, f"mean difference {off:.2f} of 255, ink {has_ink:.3f}")
    tally.note(f"{len(files)} figures: largest mean difference of grey {worst:.2f} of 255")


def check_words(tally, svgs):
    says = [html.unescape(re.search(r'aria-label="(.*?)"', svg)[1]) for svg in svgs]
    for text in says:
        is_sound = text.endswith(".") and len(text) > 25 and not re.search(r"[{}]|figure-|  |\bnull\b|-\d", text)
        tally.holds(f"words of a figure: {text[:60]}", is_sound, text)
    return says


def check(tally):
    check_bodies(tally)
    check_tables(tally)
    check_by_hand(tally)
    check_library(tally)
    folder = published(DEMO)
    sheet = figures_of(teachers_of(folder) / "poses.html")
    check_engines(tally, sheet[::3])
    pages = [page for page in sorted(folder.glob("sessions/**/*.html")) if figures_of(page)]
    tally.holds("every session of the demo pack has figures", len(pages) >= 10, f"{len(pages)} pages")
    drawn = [svg for page in pages for svg in figures_of(page)]
    check_words(tally, sheet + drawn)
    size = sum(len(svg.encode()) for svg in sheet) / len(sheet)
    largest = max(sum(len(svg.encode()) for svg in figures_of(page)) for page in pages)
    tally.holds("a pose is small", size < 3000, f"{size:.0f} bytes")
    drawn_on_paper = PdfReader(teachers_of(folder) / "poses.pdf").pages
    forms = [page["/Resources"]["/XObject"].get_object() for page in drawn_on_paper]
    forms = {name: form.get_object() for page in forms for name, form in page.items()}
    tally.same("forms of poses on paper", len(forms), len(sheet))
    streams = [page["/Contents"].get_object() for page in drawn_on_paper] + list(forms.values())
    paper = sum(len(stream._data) for stream in streams) / len(sheet)
    tally.holds("every pose is on paper", 600 < paper < 6000, f"{paper:.0f} bytes")
    tally.note(f"in the PDF {paper:.0f} bytes each, packed, with their names")
    tally.note(f"{len(sheet)} poses of {size:.0f} bytes each; {len(drawn)} figures in sessions, at most {largest} bytes a page")
