"""The same pack gives the same bytes, whenever, wherever and on however many threads."""

import hashlib
import shutil

from program import DEMO, PACKS, fresh_folder, publish
from stress_pack import make_stress_pack

AGAINST = "its own bytes (SHA-256): again, on 1 and 2 threads, from a copy elsewhere, in another zone and language"


def prints(folder):
    files = sorted(path for path in folder.rglob("*") if path.is_file())
    return {path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest() for path in files}


def check(tally):
    room = fresh_folder("determinism")
    copy = room / "elsewhere" / "sessions"
    shutil.copytree(DEMO, copy)
    stress = make_stress_pack(PACKS)
    runs = [("again", DEMO, {}), ("on 1 thread", DEMO, {"RAYON_NUM_THREADS": "1"}), ("on 2 threads", DEMO, {"RAYON_NUM_THREADS": "2"}),
            ("from a copy", copy, {}), ("elsewhere in the world", DEMO, {"TZ": "Pacific/Kiritimati", "LANG": "tr_TR.UTF-8", "LC_ALL": "C"}),
            ("stress on 1 thread", stress, {"RAYON_NUM_THREADS": "1"}), ("stress on 2 threads", stress, {"RAYON_NUM_THREADS": "2"})]
    first = {}
    for pack in (DEMO, stress):
        done = publish(pack, room / pack.name)
        tally.same(f"{pack.name} is published", done.returncode, 0)
        first[pack.name] = prints(room / pack.name)
    for number, (how, pack, environment) in enumerate(runs):
        to = room / f"run{number}"
        publish(pack, to, **environment)
        ours, wanted = prints(to) if to.exists() else {}, first[pack.name]
        tally.same(f"{how}: names of the files", sorted(ours), sorted(wanted))
        for path, print_ in wanted.items():
            tally.holds(f"{how}: {path}", ours.get(path) == print_, "other bytes")
