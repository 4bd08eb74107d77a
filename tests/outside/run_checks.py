"""Runs the outside checks, all or those named, and ends with their sum.

    run_checks.py [NAME …] [--sum FILE]     FILE receives "passed failed" for tests/run
"""

import argparse
import importlib
import pathlib
import sys
import time
import traceback

from tally import Tally

CHECKS = [path.stem.removeprefix("check_") for path in pathlib.Path(__file__).parent.glob("check_*.py")]


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
    print(tally.report(), f"\n  {time.monotonic() - began:.1f} s", sep="", flush=True)
    return tally


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("names", nargs="*", metavar="NAME")
    arguments.add_argument("--sum", type=pathlib.Path)
    asked = arguments.parse_args()
    tallies = [run_check(name) for name in asked.names or sorted(CHECKS)]
    passed = sum(tally.passed for tally in tallies)
    failed = sum(len(tally.faults) for tally in tallies)
    if asked.sum:
        asked.sum.write_text(f"{passed} {failed}\n")
    print(f"outside: {passed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


main()
