"""Judges what was read of a sheet against its truth, by the rules of the practice pack's scorer.

A line is right, asked (truth accepts it), silently wrong, or missed; one accepted where truth has none is a phantom.
"""

from collections import Counter
from dataclasses import dataclass, field
from typing import Any

from tests.corpus.fields import MAY_BE_BLANK, PRICE_FIELDS, SECOND_FIELDS, choices, compare, known

Entry = dict[str, Any]


@dataclass(frozen=True)
class Fault:
    """One thing that is not right: its kind, the cell, and why."""

    kind: str
    cell: str
    why: str


@dataclass
class Score:
    """Counts over one file or many, with every fault."""

    counts: Counter[str] = field(default_factory=Counter)
    faults: list[Fault] = field(default_factory=list)

    def fault(self, kind: str, cell: str, why: str) -> None:
        self.counts[kind] += 1
        self.faults.append(Fault(kind, cell, why))

    def add(self, other: "Score") -> None:
        self.counts += other.counts
        self.faults += other.faults

    def share(self, part: str, whole: str) -> float:
        """Per cent; 100 where there is nothing to count."""
        return 100 * self.counts[part] / self.counts[whole] if self.counts[whole] else 100.0

    @property
    def coverage(self) -> float:
        return self.share("right_accepted", "truth_accepted")

    @property
    def completeness(self) -> float:
        return self.share("second_have", "second_known")

    @property
    def notes(self) -> float:
        return self.share("notes_ok", "notes_due")


def judge_crash(truth: Entry, why: str) -> Score:
    """A file on which the reader failed: everything is missed."""
    score = _expectation(truth)
    score.fault("crashed", truth["file"], why)
    score.counts["missed"] += score.counts["lines"]
    return score


def judge(truth: Entry, unreadable: str | None, lines: list[Entry]) -> Score:
    """One file: `lines` in the contract's shape; `unreadable` is the reason given, if any."""
    score = _expectation(truth)
    may = choices(truth["unreadable"])
    if may == [True]:
        score.counts["unreadable"] += 1
        if unreadable and not lines:
            score.counts["unreadable_ok"] += 1
        else:
            score.fault("not_told", truth["file"], "should have been called unreadable")
        return score
    if unreadable:
        if True not in may:
            score.counts["missed"] += score.counts["lines"]
            score.faults.append(Fault("missed", truth["file"], f"said to be unreadable: {unreadable}"))
        return score
    taken = _match(truth, lines, score)
    for index, expected in enumerate(truth["lines"]):
        if index in taken:
            _judge_line(expected, *taken[index], score)
        elif not expected.get("optional"):
            score.fault("missed", _tag(expected), "no such line")
    return score


def _expectation(truth: Entry) -> Score:
    score = Score(Counter(files=1))
    if True not in choices(truth["unreadable"]):
        due = [line for line in truth["lines"] if not line.get("optional")]
        score.counts["lines"] = len(due)
        score.counts["truth_accepted"] = sum(choices(line["state"]) == ["accepted"] for line in due)
    return score


def _match(truth: Entry, lines: list[Entry], score: Score) -> dict[int, tuple[Entry, Entry]]:
    """Pair each line read with the truth of its cell; a second line for one offer, or one without truth, is a stray."""
    places: dict[tuple[str, str], tuple[int, Entry]] = {}
    for index, expected in enumerate(truth["lines"]):
        for place in (expected, *({**expected, **other} for other in expected.get("or", []))):
            places[expected["sheet"], place["cell"]] = (index, place)
    taken: dict[int, tuple[Entry, Entry]] = {}
    for line in lines:
        index, place = places.get((line["sheet"], line["cell"]), (None, None))
        if index is not None and place is not None and index not in taken:
            taken[index] = (line, place)
        elif line["state"] == "accepted":
            score.fault("phantom", _tag(line), "accepted, but truth has no such offer")
        else:
            score.fault("extra_asked", _tag(line), f"{line['state']}, but truth has no such offer")
    return taken


def _judge_line(expected: Entry, line: Entry, truth: Entry, score: Score) -> None:
    states, state = choices(expected["state"]), line["state"]
    accepted = state == "accepted"
    if expected.get("optional"):
        if not accepted:
            return
        if "accepted" not in states:
            score.fault("phantom", _tag(line), "accepted, but this cell offers no price")
            return
        score.counts["lines"] += 1
        score.counts["truth_accepted"] += states == ["accepted"]
    if not accepted or "accepted" in states:
        _judge_notes(expected, line, score)
    if accepted and "accepted" in states:
        _judge_fields(states, line, truth, score)
    elif accepted:
        score.fault("wrong", _tag(line), f"accepted, truth is {' or '.join(states)}")
    elif states == ["accepted"]:
        codes = ", ".join(sorted(note["code"] for note in line["notes"]))
        score.fault("asked", _tag(line), f"{state}: {codes or 'no note'}")
    else:
        score.counts["right"] += 1


def _judge_notes(expected: Entry, line: Entry, score: Score) -> None:
    given = {note["code"] for note in line["notes"]}
    for note in expected.get("notes", []):
        score.counts["notes_due"] += 1
        if given & set(choices(note["code"])):
            score.counts["notes_ok"] += 1
        else:
            score.faults.append(Fault("note", _tag(line), f"expected note {note['code']}"))


def _judge_fields(states: list[str], line: Entry, truth: Entry, score: Score) -> None:
    wrong, blank, open_fields = [], [], []
    have = due = 0
    for name in PRICE_FIELDS:
        if name not in truth:
            continue
        if name == "grammage_from":  # only a weight called quoted where the sheet quotes none is a fault
            if "quoted" not in choices(truth[name]) and line.get(name) == "quoted":
                wrong.append("grammage_from: 'quoted', but the sheet quotes no weight")
            continue
        verdict = compare(name, line.get(name), truth[name])
        if verdict == "null" and name in MAY_BE_BLANK:
            blank.append(f"{name}: null, truth {truth[name]!r}")
        elif verdict != "same":
            wrong.append(f"{name}: {line.get(name)!r}, truth {truth[name]!r}")
    for name in SECOND_FIELDS:
        if name not in truth:
            continue
        verdict = compare(name, line.get(name), truth[name])
        if verdict == "differs":
            wrong.append(f"{name}: {line.get(name)!r}, truth {truth[name]!r}")
        elif known(truth[name]):
            due += 1
            have += verdict == "same"
            if verdict == "null":
                open_fields.append(name)
    if wrong or blank:
        score.fault("wrong", _tag(line), "; ".join([*wrong, *blank]))
        score.counts["blank"] += not wrong
        return
    score.counts["right"] += 1
    score.counts["right_accepted"] += states == ["accepted"]
    score.counts["second_known"] += due
    score.counts["second_have"] += have
    if open_fields:
        score.faults.append(Fault("incomplete", _tag(line), f"left null: {', '.join(open_fields)}"))


def _tag(line: Entry) -> str:
    return f"{line['sheet']}!{line['cell']}" if line["sheet"] else line["cell"]
