"""HTML fragments brought to one form, so that two renderers can be compared by what they mean."""

import re

import html5lib

BLOCKS = {"p", "ul", "ol", "li", "blockquote", "pre", "hr", "h1", "h2", "h3", "h4", "h5", "h6", "br", "div"}
OPEN = ("http://", "https://", "mailto:")
# A text of a part stands below headings of its own, so its headings are three levels further down.
LOWERED = {"h1": "h4", "h2": "h5", "h3": "h6", "h4": "h6", "h5": "h6", "h6": "h6"}


def read_fragment(html):
    return html5lib.parseFragment(html, namespaceHTMLElements=False, container="div")


def squeeze(text, in_pre):
    """Line breaks and runs of spaces count as one space, except in code blocks, at whose end they show nothing."""
    return text.rstrip(" \n") if in_pre else re.sub(r"[ \t\n\r\f]+", " ", text)


def pieces_of(element, in_pre=False):
    """A flat list: ("<", tag, attributes), text, (">", tag)."""
    if element.text:
        yield squeeze(element.text, in_pre)
    for child in element:
        if isinstance(child.tag, str):
            yield "<", child.tag, tuple(sorted(child.attrib.items()))
            yield from pieces_of(child, in_pre or child.tag == "pre")
            yield ">", child.tag
        if child.tail:
            yield squeeze(child.tail, in_pre)


def is_edge(piece):
    return not isinstance(piece, str) and piece[1] in BLOCKS


def joined(pieces):
    """Neighbouring texts as one, without spaces at the edges of blocks."""
    whole = []
    for piece in pieces:
        if isinstance(piece, str) and whole and isinstance(whole[-1], str):
            whole[-1] += piece
        elif piece != "":
            whole.append(piece)
    for at, piece in enumerate(whole):
        if isinstance(piece, str):
            piece = piece.lstrip(" ") if at == 0 or is_edge(whole[at - 1]) else piece
            whole[at] = piece.rstrip(" \n") if at + 1 == len(whole) or is_edge(whole[at + 1]) else piece
    return [piece for piece in whole if piece != ""]


def without_closed_links(pieces):
    """The pieces with the words alone of every link that leads neither to the web nor to a mailbox."""
    kept = []
    for piece in pieces:
        if not isinstance(piece, str) and piece[:2] == ("<", "a"):
            kept.append(dict(piece[2]).get("href", "").lower().startswith(OPEN))
            if kept[-1]:
                yield piece
        elif isinstance(piece, str) or piece[1] != "a" or kept.pop():
            yield piece


def normal_form(tree, as_in_a_session=False):
    """One list for all HTML that means the same; with what a session's text changes on purpose, if asked."""
    pieces = list(pieces_of(tree))
    if as_in_a_session:
        lowered = (p if isinstance(p, str) else (p[0], LOWERED.get(p[1], p[1]), *p[2:]) for p in pieces)
        pieces = list(without_closed_links(lowered))
    return joined(pieces)


def words_of(tree):
    """The words alone, a picture by its alternative text, without spaces."""
    return "".join("".join(flat_words(tree)).split())


def flat_words(element):
    yield element.get("alt") or "" if element.tag == "img" else element.text or ""
    for child in element:
        yield from flat_words(child)
        yield child.tail or ""
