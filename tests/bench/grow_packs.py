#!/usr/bin/env python3
"""How the cost of a pack grows with its sessions. Prints figures; it is no test and never fails on time.

    cargo build --release
    python3 tests/bench/grow_packs.py [--sizes 10 100 1000] [--library 5000] [--runs 3]

Makes packs by varying the demo sessions: each copy has a title of its own and the words of its longer
texts in another order, so that no page and no sheet is like another. Runs `inspect` and `publish` on each,
takes the fastest of the runs, and prints a table: seconds, peak memory, bytes and files published, the same
for one session, and how much each figure grew against how much the pack did (1.00 is linear growth). Then one
title is changed and the pack published to the same folder again, which renders only what depends on it; and
`rehearse` is timed in Chromium from the save of a session to the changed page (median of ten; needs the Node
packages that `tests/run` installs, and is left out without them). A library is only inspected.

Standard library only, so the sessions are varied as text, line by line. Peak memory is the kernel's figure
for the finished process (wait4). To reach on two cores: 1,000 sessions with four PDFs each in under 60 s and
500 MB, `inspect` of 1,000 sessions and the demo pack in under 1 s each, of 5,000 in under 3 s, `publish` after one
change in 1,000 in under 1 s, `rehearse` in 150 ms in packs of 10 and of 1,000.
"""

import argparse
import collections
import json
import os
import pathlib
import random
import re
import shutil
import statistics
import subprocess
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
DEMO = ROOT / "sessions"
BINARY = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")) / "release" / "homeground"
AS_OF = "2026-06-01"
NODE_MODULES = BINARY.parents[1] / "outside" / "node" / "node_modules"
PORT = 18720
SHARED = ["pack.yaml", "equipment.yaml", "curriculum.yaml", "shared.yaml"]

Run = collections.namedtuple("Run", "seconds megabytes status")


def shuffled(line, chance):
    """A line of prose with its words in another order. Indent, list marker and last mark stay."""
    whole = re.fullmatch(r"( {6,}(?:[-*] |\d+\. )?)([A-Z][^:\"#\[\]{}*_`<>]{40,}[.!?])", line)
    if not whole:
        return line
    words = whole[2][:-1].split(" ")
    chance.shuffle(words)
    return whole[1] + " ".join(words) + whole[2][-1]


def vary(text, number):
    """A session of its own, made from a demo session. The same number gives the same session."""
    chance = random.Random(number)
    lines, in_prose = [], False
    for line in text.splitlines():
        lines.append(shuffled(line, chance) if in_prose else line)
        # Only block texts are touched: keys, lists of things and quoted texts keep their shape.
        in_prose = bool(re.search(r": [|>]-?$", line)) or (in_prose and (not line.strip() or line.startswith("      ")))
    varied = "\n".join(lines) + "\n"
    # The grounds have other addresses here.
    varied = re.sub(r"^builds_on: .*\n", "", varied, flags=re.M)
    return re.sub(r"^title: .*$", f"title: Session number {number} of many", varied, count=1, flags=re.M)


def make_pack(folder, count):
    # A translation (brook-leap.fr.yaml) stands beside its original: copies of it would be of nothing.
    # One that is borrowed has few words of its own to vary, and a unit is no session.
    sources = sorted(path for path in DEMO.rglob("*.yaml") if path.name not in SHARED and "." not in path.stem
                     and "_neighbours" not in path.parts and path.parent.name != "units"
                     and "borrows:" not in path.read_text(encoding="utf-8"))
    shutil.copytree(DEMO / "_neighbours", folder / "_neighbours", dirs_exist_ok=True)
    for name in SHARED:
        if (DEMO / name).exists():
            folder.mkdir(parents=True, exist_ok=True)
            shutil.copy(DEMO / name, folder / name)
    for number in range(count):
        source = sources[number % len(sources)]
        for pictures in source.parent.glob("pictures"):
            shutil.copytree(pictures, folder / source.parent.name / "pictures", dirs_exist_ok=True)
        target = folder / source.parent.name / f"{source.stem}-{number:04}.yaml"
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(vary(source.read_text(encoding="utf-8"), number), encoding="utf-8")


def timed(*arguments):
    """One run of the program: seconds, peak memory and exit status."""
    began = time.perf_counter()
    process = subprocess.Popen([str(BINARY), *map(str, arguments)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(process.pid, 0)
    return Run(time.perf_counter() - began, used.ru_maxrss / 1024, os.waitstatus_to_exitcode(status))


def fastest(runs, *arguments, afresh=None):
    """The fastest run. A folder to be made afresh is taken away before each, with the records beside it."""
    tries = []
    for _ in range(runs):
        for made in afresh.parent.glob(f"*{afresh.name}*") if afresh else ():
            shutil.rmtree(made) if made.is_dir() else made.unlink()
        tries.append(timed(*arguments))
    bad = [run.status for run in tries if run.status != 0]
    if bad:
        raise SystemExit(f"homeground {' '.join(map(str, arguments))} ended with {bad[0]}")
    return min(tries)


def measure(pack, room, runs):
    """Every figure of one pack, by name."""
    inspected = fastest(runs, "inspect", pack, "--as-of", AS_OF)
    out = room / "out"
    published = fastest(runs, "publish", pack, "--to", out, "--as-of", AS_OF, afresh=out)
    files = [path for path in out.rglob("*") if path.is_file()]
    sheets = [path for path in files if path.suffix == ".pdf"]
    changed = change_one(pack, out)
    figures = {
        "inspect, s": inspected.seconds, "inspect, MB": inspected.megabytes,
        "publish, s": published.seconds, "publish, MB": published.megabytes,
        "one change, s": changed.seconds, "one change, MB": changed.megabytes,
        "files": len(files), "PDFs": len(sheets),
        "published, kB": sum(path.stat().st_size for path in files) / 1000,
        "PDFs, kB": sum(path.stat().st_size for path in sheets) / 1000,
    }
    if NODE_MODULES.exists():
        figures["rehearse, ms"] = rehearse(pack)
    shutil.rmtree(out)
    return figures


def own_session(pack):
    """The first session that is the pack’s own."""
    return sorted(path for path in pack.rglob("*.yaml") if path.name not in SHARED and "_neighbours" not in path.parts)[0]


def change_one(pack, out):
    """The fastest of three runs, each after another title; the pack is left as it was."""
    session = own_session(pack)
    text = session.read_text(encoding="utf-8")
    runs = []
    for title in ["Another title", "A second title", "A third title"]:
        session.write_text(re.sub(r"^title: .*$", f"title: {title}", text, count=1, flags=re.M), encoding="utf-8")
        runs.append(fastest(1, "publish", pack, "--to", out, "--as-of", AS_OF))
    session.write_text(text, encoding="utf-8")
    return min(runs)


def rehearse(pack):
    """Milliseconds from the save of a session to the changed page in a browser, the median of ten."""
    session = own_session(pack)
    program = subprocess.Popen([str(BINARY), "rehearse", str(pack), "--port", str(PORT)], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    try:
        address = re.search(r"http://\S+/", program.stdout.readline())[0]
        script = ROOT / "tests" / "outside" / "rehearse.mjs"
        command = ["node", str(script), str(NODE_MODULES), address, str(pack), session.relative_to(pack).as_posix(), "10"]
        met = json.loads(subprocess.run(command, capture_output=True, text=True, timeout=300, check=True).stdout)
        return statistics.median(met["times"])
    finally:
        program.terminate()
        program.wait()


def print_table(results):
    """One row a figure; for each size the figure, the same for one session, and its growth."""
    sizes = list(results)
    heads = "".join(f"{f'{size} sessions':>16}{'for one':>10}{'growth':>8}" for size in sizes)
    print(f"{'':16}{heads}")
    for name in results[sizes[0]]:
        row = ""
        for before, size in zip([None, *sizes], sizes):
            figure = results[size][name]
            grown = ""
            if before and results[before][name]:
                grown = f"{figure / results[before][name] / (size / before):.2f}"
            row += f"{figure:16,.3f}{figure / size:10.4f}{grown:>8}"
        print(f"{name:16}{row}")


def main():
    arguments = argparse.ArgumentParser(description="How the cost of a pack grows with its sessions.")
    arguments.add_argument("--sizes", type=int, nargs="+", default=[10, 100, 1000])
    arguments.add_argument("--library", type=int, default=5000)
    arguments.add_argument("--runs", type=int, default=3)
    asked = arguments.parse_args()
    results = {}
    with tempfile.TemporaryDirectory(prefix="homeground-bench-") as folder:
        for size in asked.sizes:
            pack = pathlib.Path(folder) / f"pack-{size}"
            make_pack(pack, size)
            results[size] = measure(pack, pathlib.Path(folder), asked.runs)
        library = pathlib.Path(folder) / "library"
        make_pack(library, asked.library)
        inspected = fastest(asked.runs, "inspect", library, "--as-of", AS_OF)
        demo = fastest(asked.runs, "publish", DEMO, "--to", pathlib.Path(folder) / "demo", "--as-of", AS_OF)
    load = os.getloadavg()[1]
    print(f"{os.cpu_count()} cores, load {load:.1f} in the last five minutes; fastest of {asked.runs} runs; growth 1.00 is linear")
    print_table(results)
    print(f"library of {asked.library} sessions: inspect {inspected.seconds:.2f} s, {inspected.megabytes:.0f} MB")
    print(f"demo pack: publish {demo.seconds:.2f} s, {demo.megabytes:.0f} MB")


main()
