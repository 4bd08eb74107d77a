"""Runs the outside checks, all or those named, and ends with their sum.

    run_checks.py [NAME …] [--sum FILE]     FILE receives "passed failed" for tests/run
"""

import argparse
import concurrent.futures
import importlib
import multiprocessing
import os
import pathlib
import sys
import time
import traceback

from tally import Tally

CHECKS = [path.stem.removeprefix("check_") for path in pathlib.Path(__file__).parent.glob("check_*.py")]

# These take the longest.
LONG = {"parcel", "since", "browser", "qr", "determinism", "accessible_pdf", "class", "languages", "publish", "marks_at_home", "impose"}


def run_check(name):
    """A check that breaks off has failed: a missing tool is never passed over in silence."""
    began = time.monotonic()
    tally = Tally(name, "?")
    try:
        module = importlib.import_module(f"check_{name}")
        tally.against = module.AGAINST
        module.check(tally)
    except Exception as fault:
        at = traceback.extract_tb(fault.__traceback__)[-1]
        tally.faults.append(f"broke off in {pathlib.Path(at.filename).name}:{at.lineno}: {fault!r}")
    tally.close()
    print(f"{tally.report()}\n  {time.monotonic() - began:.1f} s\n", end="", flush=True)
    return tally.passed, len(tally.faults)


def begin_worker(count):
    with count.get_lock():
        count.value += 1
        os.environ["CHECK_ROOM"] = f"room{count.value}"


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("names", nargs="*", metavar="NAME")
    arguments.add_argument("--sum", type=pathlib.Path)
    asked = arguments.parse_args()
    # Two at a time, the long ones first, so that the last does not run alone.
    names = sorted(asked.names or CHECKS, key=lambda name: (name not in LONG, name))
    with concurrent.futures.ProcessPoolExecutor(2, initializer=begin_worker, initargs=(multiprocessing.Value("i", 0),)) as workers:
        sums = list(workers.map(run_check, names))
    passed, failed = (sum(column) for column in zip(*sums))
    if asked.sum:
        asked.sum.write_text(f"{passed} {failed}\n")
    print(f"outside: {passed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


main()
