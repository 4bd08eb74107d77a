"""No key point stands alone on a card that goes on from another, nor is one left alone behind."""

from paper import cards_of, sheet
from program import DEMO, PACKS, published
from session_text import line_of, parts_of, read_yaml, session_files, squeezed
from stress_pack import make_stress_pack

AGAINST = "the key points of the YAML, looked for in what pdftotext reads from each card"


def cards_with(text, cards):
    """The cards that hold a text; one that is short may stand in another text too."""
    return {number for number, card in enumerate(cards) if squeezed(text) in card}


def check(tally):
    split = 0
    for pack in (DEMO, make_stress_pack(PACKS)):
        folder = published(pack)
        for name, path in session_files(pack).items():
            cards = cards_of(sheet(folder, name, "cards"), ("-raw",))
            for _, part in parts_of(read_yaml(path)):
                points = [line_of(point) for point in part.get("key_points", [])]
                # From the card of the part’s title on: other parts may say the same.
                titled = cards_with(line_of(part["title"]), cards)
                if len(points) < 2 or not titled:
                    continue
                own = cards[min(titled):]
                places = [cards_with(point, own) for point in points]
                split += not set.intersection(*places)
                where = f"{name} {part['title'][:30]}"
                tally.holds(f"{where}: the first two key points share a card", places[0] & places[1], str(places))
                tally.holds(f"{where}: the last two key points share a card", places[-2] & places[-1], str(places))
    tally.note(f"{split} lists of key points go on on another card")
