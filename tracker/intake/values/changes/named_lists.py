"""What a text says of the age of a list that it calls by its name: 'List 15 took the place of List 14', 'Tarif Nord is
superseded and stays in this workbook for your records only'."""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.changes.list_age import Age
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, outside

_DONE, _ASIDE = "done", "aside"
"""Keys of the word lists."""
_LISTS = ("sheet_words", "price_lists", "list_names", "price_words", "papers")
_TOLD_LATER = ("only_if", "until", "will_be_so")


@lru_cache(maxsize=4096)
def age_of_named(text: str, name: str, others: tuple[str, ...]) -> Age:
    """What a text says of the list of this name; `others`: the names of those beside it. In force where it says
    nothing of it, denies it, or tells what will be; doubtful where a word is left that may bound what it says."""
    if not _spans(text, name):
        return Age.IN_FORCE
    return max((_of_clause(clause, name, others) for clause in clauses(text)), default=Age.IN_FORCE)


def _of_clause(clause: str, name: str, others: tuple[str, ...]) -> Age:
    found = _spans(clause, name)
    # The 'no' of 'no longer valid' denies nothing of it.
    denials = outside(phrases("negations").find(clause), phrases("superseded").find(clause))
    if not found or denials or any(phrases(section).find(clause) for section in _TOLD_LATER):
        return Age.IN_FORCE
    beside = [span for other in others for span in _spans(clause, other)]
    told = [*_taken_over(clause, found, beside), *_marked(clause, found, beside)]
    return max(told, default=Age.IN_FORCE)


def _taken_over(clause: str, found: list[tuple[int, int]], beside: list[tuple[int, int]]) -> Iterator[Age]:
    """'List 15 replaces List 14'; from which day on it does is not known of one that is dated."""
    verbs = [*phrases("replaces").find(clause), *_states(clause)]
    for verb, (start, end) in ((verb, span) for verb in verbs for span in found if verb.end <= span[0]):
        by = phrases("superseded_by").find(clause[verb.start : start])
        if by or _unread(clause, verb.end, start, beside):
            continue
        whole = not _unread(clause, end, _goes_on(clause, end), beside)
        dated = verb.value != _DONE and bool(find_dates(clause))
        yield Age.SUPERSEDED if whole and not dated else Age.DOUBTFUL


def _marked(clause: str, found: list[tuple[int, int]], beside: list[tuple[int, int]]) -> Iterator[Age]:
    """'List 14 is superseded', 'Liste 14 wurde durch Liste 15 ersetzt'; not the List 15 of either."""
    replacing = [(verb.start, verb.end) for verb in phrases("replaces").find(clause)]
    marks = [*_states(clause), *phrases("kept_for_records").find(clause)]
    for mark, (start, end) in ((mark, span) for mark in marks for span in found if span[1] <= mark.start):
        between = [span for span in beside if end <= span[0] < mark.start]
        others = between and not _joined(clause[end : between[0][0]])
        by = phrases("superseded_by").find(clause[end : mark.start])
        if _ends_in_by(clause[:start]) or (others and not by) or _is_verb(clause, mark, replacing, beside):
            continue
        if _unread(clause, end, mark.start, beside):
            continue
        whole = not _unread(clause, mark.end, _goes_on(clause, mark.end), beside)
        # 'Orders under List 14 were cancelled'.
        whole = whole and not _unread(clause, _begins(clause, start), start, beside)
        yield Age.SUPERSEDED if whole and mark.value != _ASIDE and not _from_a_day(clause) else Age.DOUBTFUL


def _states(clause: str) -> list[Found[str]]:
    return [mark for mark in phrases("superseded").find(clause) if mark.value != "list"]


def _is_verb(
    clause: str, mark: Found[str], replacing: list[tuple[int, int]], beside: list[tuple[int, int]]
) -> bool:  # fmt: skip
    """The 'ersetzt' of 'Liste 15 ersetzt Liste 14' and the 'superseded' of 'List 15 superseded List 14'."""
    behind = [span for span in beside if span[0] >= mark.end]
    if not behind or phrases("superseded_by").find(clause[mark.start : behind[0][0]]):
        return any(start <= mark.start < end for start, end in replacing) and not _ends_clause(clause, mark.end)
    return not rest_of(clause[mark.end : behind[0][0]], (), *_LISTS)


def _ends_clause(clause: str, end: int) -> bool:
    return not any(map(str.isalnum, clause[end : _goes_on(clause, end)]))


def _ends_in_by(before: str) -> bool:
    """The 'by' of 'replaced by List 15' and the 'durch die' of 'durch die Liste 15 ersetzt'."""
    by = phrases("superseded_by").find(before)
    return bool(by) and not rest_of(before[by[-1].end :], (), *_LISTS)


def _from_a_day(clause: str) -> bool:
    """'List 14 is void from 1 January 2027'."""
    days = find_dates(clause)
    starts = [said.end for said in phrases("since").find(clause)]
    return any(0 <= day.start - start <= 1 for start in starts for day in days)


def _unread(clause: str, start: int, end: int, beside: list[tuple[int, int]]) -> str:
    """The words between two places that are neither other lists' names nor days, nor go without saying."""
    days = [(day.start, day.end) for day in find_dates(clause)]
    spans = [(a - start, b - start) for a, b in (*beside, *days) if start <= a and b <= end]
    return rest_of(clause[start:end], spans, *_LISTS, *_BESIDE)


_BESIDE = ("copula", "superseded", "superseded_by", "since", "kept_for_records", "stays_there")


def _goes_on(clause: str, start: int) -> int:
    """Where the part of a sentence ends that begins there: at a comma or an 'and'."""
    stops = [match.start() for match in re.finditer(r"[,;()](?!\d)", clause[start:])]
    stops += [match.start for match in joined("and_words").find(clause[start:])]
    days = [(day.start - start, day.end - start) for day in find_dates(clause)]
    stops = [stop for stop in stops if not any(a <= stop < b for a, b in days)]
    return start + min(stops, default=len(clause) - start)


def _begins(clause: str, end: int) -> int:
    """Where the part of a sentence begins that goes on there."""
    stops = [match.end() for match in re.finditer(r"[,;()](?!\d)", clause[:end])]
    return max([0, *stops, *(match.end for match in phrases("and_words").find(clause[:end]))])


def _joined(between: str) -> bool:
    """The 'and' of 'List 13 and List 14 are void', and its comma."""
    return bool(between.strip()) and not rest_of(between, (), "and_words", *_LISTS)


def _spans(text: str, name: str) -> list[tuple[int, int]]:
    return [match.span() for match in _called(name).finditer(text)]


@lru_cache(maxsize=512)
def _called(name: str) -> re.Pattern[str]:
    """A name in any letters and with any blanks; the 'List 1' of 'List 14' is another."""
    spelled = r"\s+".join(map(re.escape, name.split()))
    return re.compile(rf"(?<!\w){spelled}(?!\w)", re.IGNORECASE)
