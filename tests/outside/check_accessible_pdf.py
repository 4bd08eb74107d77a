"""Every PDF is PDF/UA-1, and its structure reads out what the session says, in its order."""

import re

from program import BENCH_ROOM, DEMO, PACKS, published, tool
from session_text import blocks_of, line_of, parts_of, read_yaml, session_files, squeezed
from stress_pack import make_stress_pack

AGAINST = "veraPDF with the profile of PDF/UA-1 (ISO 14289-1), and the structure as pdfinfo of poppler reads it"

VERAPDF = BENCH_ROOM / "verapdf.jar"
HEADINGS = {"H1": 1, "H2": 2, "H3": 3}


def verdicts(folder):
    """PASS or FAIL for each PDF below a folder."""
    lines = tool("java", "-cp", VERAPDF, "org.verapdf.apps.GreenfieldCliWrapper", "--flavour", "ua1", "--format", "text",
                 "-r", folder, check_status=False).splitlines()
    found = [line.split(maxsplit=1) for line in lines if line.startswith(("PASS ", "FAIL "))]
    return {path.removesuffix(" ua1"): verdict for verdict, path in found}


def faults_of(path):
    """What veraPDF finds fault with in one file."""
    report = tool("java", "-cp", VERAPDF, "org.verapdf.apps.GreenfieldCliWrapper", "--flavour", "ua1", "--format", "xml",
                  path, check_status=False)
    return "; ".join(sorted(set(re.findall(r"<description>(.*?)</description>", report))))[:300]


def structure(path):
    """The structure as lines: (role, text) for roles and for the words below them."""
    lines = []
    for line in tool("pdfinfo", "-struct-text", path).splitlines():
        words = re.fullmatch(r'\s*"(.*)"', line)
        role = re.fullmatch(r"\s*(\w+)( \(.*\))?:?.*", line)
        if words:
            lines.append(("", words.group(1)))
        elif role:
            lines.append((role.group(1), ""))
    return lines


def read_out(path):
    return squeezed("".join(words for _, words in structure(path)))


def check_order(tally, name, session, path):
    """Each text of each part stands after the one before it."""
    spoken, at = read_out(path), 0
    for _, part in parts_of(session):
        texts = [line_of(part["title"]), *blocks_of(part["how"]), *map(line_of, part.get("key_points") or [])]
        for text in texts:
            found = spoken.find(squeezed(text), at)
            tally.holds(f"{name}: {text[:40]!r} is read out in its place", found >= 0, f"not after {at} of {len(spoken)}")
            at = max(at, found)


def check_headings(tally, path):
    """The first heading is of the first level, and no level is passed over (ISO 14289-1, 7.4.2)."""
    levels = [HEADINGS[role] for role, _ in structure(path) if role in HEADINGS]
    steps = [later - earlier for earlier, later in zip([0, *levels], levels)]
    tally.holds(f"{path.parent.name}/{path.name}: levels of headings", levels and max(steps) <= 1, str(levels[:12]))


def check_table(tally, path):
    """A record sheet's tables have header cells."""
    roles = [role for role, _ in structure(path)]
    if "Table" in roles:
        tally.holds(f"{path.parent.name}/{path.name}: header cells", "TH" in roles and "TD" in roles, str(set(roles)))


def check(tally):
    files = 0
    for pack in [DEMO, make_stress_pack(PACKS)]:
        folder = published(pack)
        for path, verdict in verdicts(folder / "print").items():
            files += 1
            tally.holds(f"{path.removeprefix(str(folder))}: PDF/UA-1", verdict == "PASS", verdict != "PASS" and faults_of(path) or "")
        for name, path in session_files(pack).items():
            sheets = folder / "print" / name
            if sheets.is_dir():
                check_order(tally, name, read_yaml(path), sheets / "cards.pdf")
                for sheet in sorted(sheets.glob("*.pdf")):
                    check_headings(tally, sheet)
                check_table(tally, sheets / "record.pdf")
    tally.note(f"{files} files judged by veraPDF")
