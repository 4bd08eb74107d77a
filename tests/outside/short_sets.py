"""The demo pack with shorter sessions: the last techniques left out, the cool-down so much longer."""

import copy
import shutil

import yaml

from check_time import total_seconds
from program import DEMO, PACKS
from session_text import read_yaml, session_files


def shortened(session, count):
    """The session with so many techniques, as long as it was."""
    session = copy.deepcopy(session)
    techniques = session.get("technique") or []
    left_out, session["technique"] = techniques[count:], techniques[:count]
    rest, finish = sum(total_seconds(part["time"]) for part in left_out), session["cool_down"]
    finish["time"] = f"{total_seconds(finish['time']) + rest} s"
    for key in ("shortest", "longest"):
        finish.pop(key, None)
    # What a thing was for may be gone.
    for need in session.get("equipment") or []:
        need.pop("for", None)
    return session


def make_short_pack(count):
    """All demo sessions with so many techniques, in one language, without the units."""
    folder = PACKS / f"short{count}"
    shutil.rmtree(folder, ignore_errors=True)
    shutil.copytree(DEMO, folder, ignore=shutil.ignore_patterns("*.??.yaml", "units"))
    shared = read_yaml(DEMO / "pack.yaml")
    (folder / "pack.yaml").write_text(yaml.safe_dump({key: shared[key] for key in shared if key != "languages"}, allow_unicode=True))
    for path in session_files(DEMO).values():
        if "borrows:" in path.read_text():
            continue
        short = yaml.safe_dump(shortened(read_yaml(path), count), allow_unicode=True, sort_keys=False)
        (folder / path.relative_to(DEMO)).write_text(short)
    return folder
