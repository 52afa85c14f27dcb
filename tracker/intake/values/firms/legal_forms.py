"""Legal forms in a firm's name: 'GmbH & Co. KG', 'Inc.'; where the same letters are none, and where the form ends."""

import re

from tracker.intake.values.freight.delivery import delivery_text
from tracker.intake.words.lists import pattern, phrases, words
from tracker.intake.words.phrases import Found

_FORMS_IN_SMALL_LETTERS = frozenset({"gmbh", "plc", "mbh", "ltée", "eg"})
_STATES_TOO = frozenset({"NV", "CO", "AS"})
"""Legal forms that are the postal letters of American states and territories as well."""
_BEFORE_KILOGRAM = frozenset("0123456789/")


def written_as_form(head: str, match: Found[str]) -> bool:
    """'Co', 'AB' and 'SA' are forms in capitals only ('as', 'co' are words); the KG of '€/1000 KG' is a kilogram, and
    the AB of 'EUR/T AB WERK' says from where."""
    if delivery_text(head[match.start :]) is not None:
        return False
    if head[match.start : match.end] == "KG" and head[: match.start].rstrip()[-1:] in _BEFORE_KILOGRAM:
        return False
    form = head[match.start : match.end]
    before = head[: match.start].strip(" ,(")
    if form in _STATES_TOO and " " not in before:
        # 'Reno NV' is a place.
        return False
    place = phrases("countries").whole(before)
    if place is not None and form in words("states").get(place, ()):
        # So are 'Calgary AB' and 'Perth WA', where a town of one name is known.
        return False
    if _NUMBERED.match(head[match.end :]):
        # The SA of 'Supply Agreement SA-27-014' begins a number.
        return False
    if form == "inc" and head[match.end : match.end + 1] == ".":
        return True
    return form[0].isupper() or "." in form or form.lower() in _FORMS_IN_SMALL_LETTERS


_NUMBERED = re.compile(r"[-–/]?\d|[-–/]\w*\d|-op\b")


_JOINED = re.compile(rf"[\s&+.,]*{pattern('range', 'and')}?[\s&.]*")


def end_of_form(head: str, ends: list[Found[str]]) -> int:
    """The end of the first legal form, or of forms that follow each other ('GmbH & Co. KG'), with its full stop."""
    end = ends[0].end
    for match in ends[1:]:
        if not _JOINED.fullmatch(head[end : match.start]):
            break
        end = match.end
    return end + 1 if head[end : end + 1] == "." else end
