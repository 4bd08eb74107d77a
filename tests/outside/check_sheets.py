"""The home guide is one page, the record sheet names every challenge, and answers stand on a page of their own."""

from check_cards import find_blocks
from paper import page_count, sheet, words_on
from program import DEMO, PACKS, published
from session_text import blocks_of, line_of, parts_of, read_yaml, session_files, squeezed
from stress_pack import make_stress_pack

AGAINST = "the words of the YAML, looked for in what pdftotext reads from each page"


def check_home_guide(tally, where, session, path, cautions):
    tally.same(f"{where}: pages of the home guide", page_count(path), 1)
    words = words_on(path)
    wanted = [line_of(part["title"]) for _, part in parts_of(session)]
    wanted += [need["need"] for need in session.get("equipment", [])]
    for text in wanted:
        tally.holds(f"{where}: the home guide names {text[:50]!r}", squeezed(text).lower() in words.lower())
    for text in cautions:
        for block in blocks_of(text):
            tally.holds(f"{where}: the home guide warns {block[:50]!r}", squeezed(block) in words)


def check_record(tally, where, session, path):
    for part in session.get("challenge", []):
        for text in [part["title"], *part.get("measure", {}).get("criteria", [])]:
            tally.holds(f"{where}: the record sheet has {text[:50]!r}", squeezed(line_of(text)) in words_on(path))


def answers_begin(answers, path):
    """The first page that holds any whole answer."""
    pages = range(1, page_count(path) + 1)
    return next((page for page in pages if any(answer in words_on(path, page) for answer in answers)), None)


def check_review(tally, where, session, path):
    questions = session.get("review", [])
    asked = [squeezed(block) for q in questions for block in blocks_of(q["ask"])]
    # A one-word answer may stand in a question by chance: it can't be looked for on the first page.
    answers = [squeezed(block) for q in questions if "answer" in q for block in blocks_of(q["answer"])]
    telling = [answer for answer in answers if len(answer) >= 12]
    begin = answers_begin(telling, path)
    if answers and tally.holds(f"{where}: answers begin on a page after the first", begin and begin > 1, str(begin)):
        before = [words_on(path, page) for page in range(1, begin)]
        after = [words_on(path, page) for page in range(begin, page_count(path) + 1)]
        for text in asked:
            tally.holds(f"{where}: asks {text[:40]!r} before the answers", find_blocks([text], before, 0) is None)
        for text in answers:
            tally.holds(f"{where}: answers {text[:40]!r}", find_blocks([text], after, 0) is None)
        for text in telling:
            tally.holds(f"{where}: {text[:40]!r} is not given away", text not in "".join(before))


def check(tally):
    for pack in [DEMO, make_stress_pack(PACKS)]:
        folder, usual = published(pack), read_yaml(pack / "pack.yaml").get("cautions", [])
        for name, path in session_files(pack).items():
            session = read_yaml(path)
            # The stress pack has more cautions than a page holds: there one page is all that is asked.
            cautions = [*usual, *session.get("safety", [])] if pack == DEMO else []
            # Thirty parts or pages of text can't stand on one page at a size that can be read: they go on.
            if pack == DEMO or name not in ("long-texts", "giant-word", "thirty-parts"):
                check_home_guide(tally, name, session, sheet(folder, name, "home-guide"), cautions)
            check_record(tally, name, session, sheet(folder, name, "record"))
            check_review(tally, name, session, sheet(folder, name, "review"))
