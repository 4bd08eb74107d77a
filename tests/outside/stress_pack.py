"""A pack that no printer likes: very long texts, forty key points, a word of 300 letters, thirty parts,
nothing but what is needed, accents and quotes, on Letter paper. It must still publish, whole."""

import shutil

import yaml

SPACE = {"length": "2 m", "width": "2 m"}
GIANT = ("donaudampfschifffahrtselektrizitaetenhauptbetriebswerkbauunterbeamtengesellschaft" * 4)[:300]
ACCENTS = "“Élan”, ‘où’ & «çà»: naïve Ærøskøbing, Łódź, Győr, Žďár – 3 × 2 m² at 20 °C, ½ <turn>; it’s \"so\" — O'Neill…"
LONG = ("Stand tall with your feet apart and look at the mark on the wall, then bend your knees slowly, "
        "push away from the floor and land so softly that nobody in the next room can hear you. ")


def part(title, seconds, **more):
    return {"title": title, "time": f"{seconds} s", "effort": "moderate", "movements": ["walking"],
            "how": "Walk round the room and back.", "easier": "Walk less far.", "harder": "Walk further.", **more}


def session(title, parts, minutes, **more):
    return {"title": title, "summary": "A session to try the printer with.", "ages": "8-11", "minutes": str(minutes),
            "activity": "fitness", "licence": "CC-BY-4.0", "success": ["I can do it."],
            "space": SPACE, "safety": ["Clear the floor."], **parts, **more}


def numbered(text, count):
    return [f"{text} {number}" for number in range(1, count + 1)]


def long_texts():
    how = "\n\n".join(f"Paragraph {n}. " + LONG * 4 for n in range(1, 9)) + "\n\n" + "\n".join(
        f"{n}. Step {n}: {LONG}" for n in range(1, 16))
    big = part("Very long", 300, how=how, easier=LONG * 4, harder=LONG * 4, key_points=["Slow knees", "Soft feet"],
               faults=[{"see": f"Fault {n}: {LONG}", "say": f"Say {n}: {LONG}"} for n in range(1, 9)])
    needs = [{"need": f"thing {n}", "count": str(n), "for": ["Very long"], "note": LONG,
              "instead": [{"thing": f"other thing {n} {k}", "note": LONG} for k in range(1, 5)]} for n in range(1, 16)]
    review = [{"ask": f"Question {n}? {LONG}", "answer": f"Response {n}. {LONG * 3}", "kind": "explain"} for n in range(1, 16)]
    return session("Very long texts", {"technique": [big]}, 5, summary=LONG * 2, success=[f"I {n}. {LONG}" for n in range(1, 9)],
                   equipment=needs, safety=[f"Caution {n}. {LONG}" for n in range(1, 13)], review=review,
                   adaptations={"space": LONG * 3, "task": LONG * 3, "equipment": LONG * 3, "people": LONG * 3})


def forty_points():
    many = part("Forty key points", 300, key_points=numbered("Bend, swing and jump, number", 40))
    judged = part("Forty criteria", 300, measure={"what": "criteria", "attempts": "12", "criteria": numbered("I see the landing held still,", 40)})
    counted = part("Thirty attempts", 300, measure={"what": "distance", "unit": "cm", "attempts": "30", "better": "more"})
    return session("Forty of everything", {"technique": [many], "challenge": [judged, counted]}, 15)


def giant_word():
    giant = part("One giant word", 300, how=f"Say {GIANT} and go on.", easier=GIANT, key_points=[GIANT[:120]],
                 faults=[{"see": GIANT, "say": GIANT}])
    return session("W" * 60, {"technique": [giant]}, 5, summary=f"See {GIANT}.", success=[f"I say {GIANT}."],
                   equipment=[{"need": GIANT[:200], "for": ["technique"], "instead": [{"thing": GIANT}]}],
                   safety=[f"Beware of {GIANT}."], review=[{"ask": f"Why {GIANT}?", "answer": f"Because {GIANT}.", "kind": "recall"}])


def thirty_parts():
    steps = [part(f"Step number {n} of thirty", 60, task="refine", key_points=["Soft feet"]) for n in range(1, 29)]
    return session("Thirty parts", {"warm_up": part("The warm-up", 60), "technique": steps, "cool_down": part("The cool-down", 60)}, 30)


def accents():
    quoted = part("“Élan” & l'Œuvre", 300, how=ACCENTS.replace("<turn>", "&lt;turn&gt;"), easier=ACCENTS.replace("<turn>", "turn"),
                  harder="Скачай выше; nhảy cao hơn", key_points=["Ça va – où?"], faults=[{"see": "‘Żółw’", "say": "»Größer!«"}])
    return session("Zoë’s “Été” & co: 100 % {{ fun }}", {"technique": [quoted]}, 5, summary="Naïve café, 5 < 6 & 7 > 6.",
                   review=[{"ask": "Où est l’été?", "answer": "Là-bas, à Łódź.", "kind": "recall"}])


def bare():
    """Nothing but the keys that a session must have."""
    return {"title": "Bare", "summary": "Nothing more.", "ages": "7", "minutes": "5", "activity": "games", "space": SPACE,
            "success": ["I can."], "technique": [{"title": "Only part", "time": "5 min", "how": "Walk."}]}


SESSIONS = {"long-texts": long_texts, "forty-points": forty_points, "giant-word": giant_word,
            "thirty-parts": thirty_parts, "accents": accents, "bare": bare}


def write_yaml(path, value):
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(yaml.safe_dump(value, allow_unicode=True, sort_keys=False, width=10**6))


def make_stress_pack(folder):
    pack = folder / "stress"
    shutil.rmtree(pack, ignore_errors=True)
    write_yaml(pack / "pack.yaml", {"title": "Stress", "paper": "Letter", "licence": "CC-BY-4.0", "cautions": ["Clear the floor."]})
    for name, make in SESSIONS.items():
        write_yaml(pack / f"{name}.yaml", make())
    return pack
