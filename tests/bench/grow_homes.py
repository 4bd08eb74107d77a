#!/usr/bin/env python3
"""How the cost of fitting grows with the homes. Prints figures; it is no test and never fails on time.

    cargo build --release
    python3 tests/bench/grow_homes.py [--sizes 30 240]

Makes lists of invented homes by varying the demo class, fits six demo sessions to them, and prints seconds, peak
memory and bytes, with the packs of the homes and without (the choices, the teacher's page and sheet and the
survey alone). Bytes count a file under two names once. To reach on two cores: 240 homes and six sessions in
under 90 s and 500 MB with their PDFs, and the choices alone in under 5 s.
"""

import argparse
import csv
import os
import pathlib
import random
import shutil
import subprocess
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
DEMO = ROOT / "sessions"
CLASS = ROOT / "tests" / "homes" / "class.csv"
BINARY = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")) / "release" / "homeground"
AS_OF = "2026-06-01"
SESSIONS = ["games", "fitness", "gymnastics/still-as-stones", "dance/night-bus"]


def make_list(path, count):
    """Homes that differ in time, floor, people and things. The same count gives the same list."""
    chance = random.Random(count)
    with open(CLASS, encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    things = sorted({thing for row in rows for thing in row["things"].split("; ")})
    with open(path, "w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, rows[0].keys())
        writer.writeheader()
        for number in range(count):
            row = dict(rows[number % len(rows)], code=f"H{number + 1:03}", minutes=chance.choice([15, 20, 25, 30, 35, 40]))
            row["floor length"], row["floor width"] = f"{chance.uniform(2, 4):.1f}", f"{chance.uniform(1.8, 3):.1f}"
            row["helpers"] = chance.choice([0, 1, 1, 1, 2])
            row["things"] = "; ".join(chance.sample(things, chance.randint(8, len(things))))
            writer.writerow(row)


def timed(*arguments):
    """One run: seconds and peak memory in MB (the kernel's figure for the finished process)."""
    began = time.perf_counter()
    process = subprocess.Popen([str(BINARY), *map(str, arguments)], stdout=subprocess.PIPE)
    said = process.stdout.read().decode()
    _, status, used = os.wait4(process.pid, 0)
    if status:
        raise SystemExit(f"homeground ended with {os.waitstatus_to_exitcode(status)}")
    return time.perf_counter() - began, used.ru_maxrss / 1024, said.splitlines()[0]


def size_of(folder):
    files = [path for path in folder.rglob("*") if path.is_file()]
    once = {path.stat().st_ino: path.stat().st_size for path in files}
    return len(files), sum(path.suffix == ".pdf" for path in files), sum(once.values()) / 1e6


def main():
    arguments = argparse.ArgumentParser(description="How the cost of fitting grows with the homes.")
    arguments.add_argument("--sizes", type=int, nargs="+", default=[30, 240])
    asked = arguments.parse_args()
    print(f"{os.cpu_count()} cores")
    with tempfile.TemporaryDirectory(prefix="homeground-bench-") as folder:
        folder = pathlib.Path(folder)
        for size in asked.sizes:
            make_list(folder / "class.csv", size)
            common = ["fit", DEMO, "--homes", folder / "class.csv", "--as-of", AS_OF, "--to", folder / "out"]
            common += [part for session in SESSIONS for part in ("--session", session)]
            for more in (["--teacher-only"], []):
                seconds, megabytes, said = timed(*common, *more)
                files, sheets, bytes_written = size_of(folder / "out")
                what = "choices, teacher, survey" if more else "whole packs"
                print(f"{size:4} homes, {what:24}: {seconds:6.2f} s, {megabytes:4.0f} MB; {files} files, {sheets} PDFs, {bytes_written:.1f} MB. {said}")
            shutil.rmtree(folder / "out")


main()
