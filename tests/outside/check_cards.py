"""Every word of a session is on its cards, part by part and in order; nothing is cut off between two cards."""

from paper import cards_of, sheet
from program import DEMO, PACKS, published
from session_text import blocks_of, line_of, parts_of, read_yaml, session_files, squeezed
from stress_pack import make_stress_pack

AGAINST = "the words of the YAML (PyYAML, markdown-it-py), looked for in what pdftotext reads from each card"

# A text that goes on upon another card may end here on a glyph that also begins our own next label.
LOOK_BACK = 40


def texts_of(part):
    """Every text of a part, as lists of blocks that must follow one another."""
    yield "title", [line_of(part["title"])]
    yield "how", blocks_of(part["how"])
    yield "key points", [line_of(point) for point in part.get("key_points", [])]
    for key in ("easier", "harder"):
        if key in part:
            yield key, [line_of(part[key])]
    for rule in part.get("throw", {}).values():
        yield "throw", [line_of(rule)]
    measure = part.get("measure", {})
    yield "criteria", [line_of(line) for line in measure.get("criteria", [])]
    for key in ("unit", "attempts"):
        if key in measure:
            yield key, [line_of(measure[key])]


def longest_start(text, card, at):
    """How much of the beginning of a text stands on a card in one piece."""
    low, high = 0, len(text)
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if card.find(text[:middle], at) >= 0 else (low, middle - 1)
    return low


def find_text(text, cards, card, at):
    """Where a text ends, as (card, place): in one piece, or carried on from card to card."""
    if card >= len(cards):
        return None
    start = cards[card].find(text, at)
    if start >= 0:
        return card, start + len(text)
    longest = longest_start(text, cards[card], at)
    for length in range(longest, max(0, longest - LOOK_BACK), -1):
        end = find_text(text[length:], cards, card + 1, 0)
        if end:
            return end
    return find_text(text, cards, card + 1, 0)


def find_blocks(blocks, cards, from_card):
    """None when all blocks follow one another from a card on, else the first that does not."""
    card, at = from_card, 0
    for block in blocks:
        end = find_text(squeezed(block), cards, card, at)
        if end is None:
            return block
        card, at = end
    return None


def first_card(title, cards, from_card):
    return next((n for n in range(from_card, len(cards)) if squeezed(title) in cards[n]), None)


def lost_in(blocks, cards, starts, number):
    """The first block that is not whole on the cards of a part, in one order of reading."""
    until = next((start for start in starts[number + 1:] if start is not None), len(cards))
    return find_blocks(blocks, cards[:until], starts[number])


def starts_of(parts, cards):
    """The first card of each part, each after the part before it; None where there is none."""
    starts, card = [], 0
    for part in parts:
        found = first_card(line_of(part["title"]), cards, card)
        starts.append(found)
        card = card if found is None else found + 1
    return starts


def check_faults(tally, where, parts, readings):
    """Common faults stand on the helper's cards, in the order of their parts, after every part."""
    faults = [[line_of(fault["see"]).rstrip(".:"), line_of(fault["say"])] for part in parts for fault in part.get("faults", [])]
    places = [(0, 0)] * len(readings)
    for see, say in faults:
        for number, cards in enumerate(readings):
            for text in (see, say):
                end = places[number] and find_text(squeezed(text), cards, *places[number])
                places[number] = end
        tally.holds(f"{where}: fault {see[:40]}", any(places), f"not found whole: {see[:60]!r}")


def check_session(tally, where, session, path):
    parts = [part for _, part in parts_of(session)]
    # Two columns on a card read one after the other in one of these, whatever gap lies between them.
    readings = [cards_of(path), cards_of(path, ("-raw",))]
    starts = [starts_of(parts, cards) for cards in readings]
    for number, part in enumerate(parts):
        title = part["title"][:40]
        whole = all(start[number] is not None for start in starts)
        if not tally.holds(f"{where}: a card for {title}, after the part before it", whole):
            continue
        for key, blocks in texts_of(part):
            lost = [lost_in(blocks, cards, start, number) for cards, start in zip(readings, starts)]
            tally.holds(f"{where}: {title}: {key}", None in lost, f"not found whole: {(lost[0] or '')[:70]!r}")
    last = [max([start for start in own if start is not None], default=0) for own in starts]
    helpers = [cards[from_card:] for cards, from_card in zip(readings, last)]
    check_faults(tally, where, parts, helpers)


def check(tally):
    for pack in [DEMO, make_stress_pack(PACKS)]:
        folder = published(pack)
        for name, path in session_files(pack).items():
            check_session(tally, name, read_yaml(path), sheet(folder, name, "cards"))
