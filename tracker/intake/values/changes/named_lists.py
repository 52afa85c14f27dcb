"""What a text says of the age of a list that it calls by its name: 'List 15 took the place of List 14', 'Tarif Nord is
superseded and stays in this workbook for your records only'."""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.changes.list_age import Age
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import joined, pattern, phrases
from tracker.intake.words.phrases import Found, outside

_DONE = "done"
"""Of the verbs in [replaces]: the list has taken the other's place already."""
_ASIDE = "aside"
"""Of the words for a list that is shown though it no longer holds: perhaps it does."""
_LISTS = ("sheet_words", "price_lists", "list_names", "price_words", "papers")
_TOLD_LATER = ("only_if", "will_be_so")


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
    marks = [*phrases("superseded").find(clause), *phrases("disregarded").find(clause)]
    denials = outside(phrases("negations").find(clause), marks)
    if not found or denials or any(phrases(section).find(clause) for section in _TOLD_LATER) or _ends_some_day(clause):
        return Age.IN_FORCE
    beside = [span for other in others for span in _spans(clause, other) if span not in found]
    told = [
        *_taken_over(clause, found, beside),
        *_marked(clause, found, beside),
        *_disregarded(clause, found, beside),
    ]
    if not told:
        return Age.IN_FORCE
    bounded = phrases("in_part").find(clause) or _is_of_a_day(clause, [*found, *beside])
    return Age.DOUBTFUL if bounded else max(told)


def _ends_some_day(clause: str) -> bool:
    """'List 14 is valid until superseded', 'Lista 14 upphör att gälla den 31 december 2026'."""
    ends = {said.span for said in phrases("disregarded").find(clause) if said.value == _ENDS}
    untils = {said.span for said in phrases("until").find(clause)}
    return bool(untils if find_dates(clause) else untils - ends)


def _is_of_a_day(clause: str, lists: list[tuple[int, int]]) -> bool:
    """Whether a list goes on a day that may be still to come: 'List 14 is void from 1 January 2027', 'Liste 14 wird zum
    1.1.2027 ersetzt'; 'was replaced on 1 October' is past, and the day of 'Prices 1 May 2026' is the list's name."""
    days = [day for day in find_dates(clause) if not any(start <= day.start < end for start, end in lists)]
    starts = [said.end for said in phrases("since").find(clause)]
    if any(0 <= day.start - start <= 1 for start in starts for day in days):
        return True
    done = any(verb.value == _DONE for verb in phrases("replaces").find(clause))
    return bool(days) and not done and not phrases("already_so").find(clause)


def _disregarded(
    clause: str, found: list[tuple[int, int]], beside: list[tuple[int, int]]
) -> Iterator[Age]:  # fmt: skip
    """'Please disregard List 14', 'Mit Liste 15 verliert Liste 14 ihre Gültigkeit': what more a sentence says of it
    may bound it."""
    for said in phrases("disregarded").find(clause):
        others = any(said.end <= span[0] and _stand_together(clause, said, span) for span in beside)
        if others or not any(_stand_together(clause, said, span) for span in found):
            continue
        alone = said.value == _IGNORED and not rest_of(clause, [said.span, *found], *_LISTS)
        yield Age.SUPERSEDED if alone else Age.DOUBTFUL


def _stand_together(clause: str, said: Found[str], name: tuple[int, int]) -> bool:
    """'Disregard our List 14', 'Liste 14 ignorieren'."""
    start, end = name
    return not rest_of(clause[said.end : start] if said.end <= start else clause[end : said.start], (), *_LISTS)


_IGNORED, _ENDS = "ignored", "ends"
_CANCELS = "cancels"
"""Of the words for lists that go: before the list, beside it, and between it and the one in its place."""


def _taken_over(clause: str, found: list[tuple[int, int]], beside: list[tuple[int, int]]) -> Iterator[Age]:
    """'List 15 replaces List 14', and not 'List 15 partly replaces List 14'."""
    cancels = (said for said in phrases("disregarded").find(clause) if said.value == _CANCELS)
    verbs = [*phrases("replaces").find(clause), *_states(clause), *cancels]
    for verb, (start, end) in ((verb, span) for verb in verbs for span in found if verb.end <= span[0]):
        by = phrases("superseded_by").find(clause[verb.start : start])
        if by or _unread(clause, verb.end, start, beside):
            continue
        whole = not _unread(clause, end, _goes_on(clause, end), beside)
        whole = whole and not _unread(clause, _begins(clause, verb.start), verb.start, beside)
        yield Age.SUPERSEDED if whole else Age.DOUBTFUL


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
        yield Age.SUPERSEDED if whole and mark.value != _ASIDE else Age.DOUBTFUL


def _states(clause: str) -> list[Found[str]]:
    return [mark for mark in phrases("superseded").find(clause) if mark.value != "list"]


def _is_verb(
    clause: str, mark: Found[str], replacing: list[tuple[int, int]], beside: list[tuple[int, int]]
) -> bool:  # fmt: skip
    """The 'ersetzt' of 'Liste 15 ersetzt Liste 14' and the 'superseded' of 'List 15 superseded List 14'; that of 'Le
    tarif 14 est remplacé' is a participle, however it is spelt."""
    behind = [span for span in beside if span[0] >= mark.end]
    if behind and not phrases("superseded_by").find(clause[mark.start : behind[0][0]]):
        return not rest_of(clause[mark.end : behind[0][0]], (), "in_part", *_LISTS)
    passive = _ends_in_copula(clause[: mark.start]) or _leads_to_by(clause, mark)
    takes_over = any(start <= mark.start < end for start, end in replacing)
    return takes_over and not passive and not _ends_clause(clause, mark.end)


def _ends_in_copula(before: str) -> bool:
    ahead = before.rstrip()
    return any(verb.end == len(ahead) for verb in phrases("copula").find(ahead))


def _leads_to_by(clause: str, mark: Found[str]) -> bool:
    """The 'remplacé par' of 'Tarif 14, remplacé par le tarif 15'."""
    by = phrases("superseded_by").find(clause[mark.start :])
    return bool(by) and not clause[mark.end : mark.start + by[0].start].strip()


def _ends_clause(clause: str, end: int) -> bool:
    return not any(map(str.isalnum, clause[end : _goes_on(clause, end)]))


def _ends_in_by(before: str) -> bool:
    """The 'by' of 'replaced by List 15' and the 'durch die' of 'durch die Liste 15 ersetzt'."""
    by = phrases("superseded_by").find(before)
    return bool(by) and not rest_of(before[by[-1].end :], (), *_LISTS)


def _unread(clause: str, start: int, end: int, beside: list[tuple[int, int]]) -> str:
    """The words between two places that are neither other lists' names nor days, nor go without saying."""
    days = [(day.start, day.end) for day in find_dates(clause)]
    spans = [(a - start, b - start) for a, b in (*beside, *days) if start <= a and b <= end]
    return rest_of(clause[start:end], spans, *_LISTS, *_BESIDE)


_BESIDE = (
    "copula", "superseded", "superseded_by", "since", "kept_for_records", "stays_there", "price_ages",
    "in_part",
)  # fmt: skip


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


_NUMBERED = re.compile(r"(?P<word>[^\W\d]{3,})\s+(?P<number>\d+)")
_STEM = 4
"""How many letters the words for one list and for several begin alike with: 'Liste', 'Listen'."""


@lru_cache(maxsize=512)
def _called(name: str) -> re.Pattern[str]:
    """A name in any letters and with any blanks; the 'List 1' of 'List 14' is another, and 'Lists 13 and 14' names it
    too."""
    spelled = r"\s+".join(map(re.escape, name.split()))
    numbered = _NUMBERED.fullmatch(name.strip())
    if numbered is not None:
        several = rf"\d+(?:\s*[,&+/]\s*|\s+{pattern('range', 'and')}\s+)"
        spelled += rf"|{re.escape(numbered['word'][:_STEM])}[^\W\d]{{0,4}}\s+(?:{several})+{numbered['number']}"
    return re.compile(rf"(?<!\w)(?:{spelled})(?!\w)", re.IGNORECASE)
