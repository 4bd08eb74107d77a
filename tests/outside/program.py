"""Runs the built program, and says where things lie. Packs are published once and kept for all checks."""

import functools
import json
import os
import pathlib
import shutil
import subprocess

ROOT = pathlib.Path(__file__).resolve().parents[2]
DEMO = ROOT / "sessions"
TARGET = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target")).resolve()
BINARY = TARGET / "release" / "homeground"
BRIDGE = TARGET / "release" / "examples" / "ask_plans"
BENCH_ROOM = TARGET / "outside"
# Checks run side by side: each worker has a room of its own, so that none clears away what another reads.
ROOM = BENCH_ROOM / os.environ.get("CHECK_ROOM", "room")
PACKS = ROOM / "packs"
NODE_MODULES = BENCH_ROOM / "node" / "node_modules"

# Held still, so that a session that is due to be looked at again does not change a result.
AS_OF = "2026-06-01"


def fresh_folder(name):
    """An empty folder for one check to work in."""
    folder = ROOM / "work" / name
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    return folder


def run(*arguments, **environment):
    """One run of the program; its output is text."""
    whole = {**os.environ, "RUST_BACKTRACE": "0", **environment}
    command = [str(BINARY), *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, env=whole, timeout=600)


def publish(pack, to, *more, **environment):
    return run("publish", pack, "--to", to, "--as-of", AS_OF, *more, **environment)


@functools.cache
def published(pack):
    """The folder a pack was published to. A pack that can't be published ends the check."""
    to = fresh_folder(f"published-{pathlib.Path(pack).name}")
    to.rmdir()
    shutil.rmtree(teachers_of(to), ignore_errors=True)
    done = publish(pack, to, "--teachers", teachers_of(to))
    if done.returncode != 0:
        raise RuntimeError(f"publish {pack} ended with {done.returncode}: {done.stderr[-800:]}")
    return to


def teachers_of(folder):
    """The teachers’ folder beside a published one."""
    return folder.with_name(f"{folder.name}-for-teachers")


def ask(questions):
    """What the plans answer to questions, one answer each, asked in one run of the bridge."""
    lines = "".join(json.dumps(question) + "\n" for question in questions)
    done = subprocess.run([str(BRIDGE)], input=lines, capture_output=True, text=True, timeout=900)
    answers = [json.loads(line) for line in done.stdout.splitlines()]
    if done.returncode != 0 or len(answers) != len(questions):
        raise RuntimeError(f"the bridge ended with {done.returncode}: {done.stderr[-800:]}")
    for answer in answers:
        if isinstance(answer, dict) and "fault" in answer and len(answer) == 1:
            raise RuntimeError(f"the bridge refused a question: {answer['fault']}")
    return answers


def tool(*command, check_status=True, **more):
    """The output of an outside tool, which must be installed and must work; some end with a status that is a verdict."""
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, **more)
    if check_status and done.returncode != 0:
        raise RuntimeError(f"{command[0]} ended with {done.returncode}: {done.stderr[-800:]}")
    return done.stdout
