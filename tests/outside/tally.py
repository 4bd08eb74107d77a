"""Collects the cases of one check: what was compared, and where it differs."""

# How many faults of a check are listed, and how much is said of each.
SHOWN = 12
LONGEST = 400


class Tally:
    """The cases of one check. `against` names the outside thing that ours is compared with."""

    def __init__(self, name, against):
        self.name = name
        self.against = against
        self.passed = 0
        self.faults = []
        self.notes = []

    def holds(self, what, truth, otherwise=""):
        """One case that is either true or not; `otherwise` says what was found instead."""
        if truth:
            self.passed += 1
        else:
            fault = f"{what}: {otherwise}" if otherwise else what
            self.faults.append(" ".join(fault.split())[:LONGEST])
        return bool(truth)

    def same(self, what, ours, theirs):
        """One case where our value must equal the outside one."""
        return self.holds(what, ours == theirs, f"ours {ours!r}, theirs {theirs!r}")

    def note(self, text):
        """Something a reader of the results should know, which is no case."""
        self.notes.append(text)

    def close(self):
        """A check that compared nothing has failed: it would pass whatever the program did."""
        if not self.passed and not self.faults:
            self.faults.append("nothing was compared")

    def report(self):
        head = f"{self.name}: against {self.against}"
        body = [f"  {self.passed + len(self.faults)} cases, {len(self.faults)} failed"]
        body += [f"  note: {note}" for note in self.notes]
        body += [f"  FAILED {fault}" for fault in self.faults[:SHOWN]]
        if len(self.faults) > SHOWN:
            body.append(f"  … and {len(self.faults) - SHOWN} more")
        return "\n".join([head, *body])
