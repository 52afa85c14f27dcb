"""The form of board that alone bears a charge: 'Für Bogenware berechnen wir einen Zuschlag von 38 EUR/t', 'sheets carry
a cutting surcharge of 42 €/t; rolls bear none'."""

import re
from typing import NamedTuple

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.figures.rates import SHARE
from tracker.intake.values.freight.charge_names import charges_named, whole_name
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked, outside

OTHER_FORM = {"roll": "sheet", "sheet": "roll"}
_STOPS = " ,;:–-"


class ChargedForm(NamedTuple):
    """A clause without the words for the one form that bears what it charges; `form`: 'roll', 'sheet', or '' for all.
    `unsure`: more is said of that form than is read."""

    said: str
    form: str = ""
    unsure: bool = False


def charged_form(clause: str) -> ChargedForm:
    """The form behind 'for' or 'on', or before 'carries', where a clause charges something and no other bears it."""
    named = _forms_in(clause) if charges_named(clause) else []
    amounts = _amounts(clause) if named else []
    if len(amounts) > 1:
        # 'Freight is 30 EUR/t, sheets 45 EUR/t': whose each is, is not told apart.
        return ChargedForm(clause, unsure=True)
    if amounts and form_freed(clause):
        return _of_the_other(clause, named[0])
    if not named and (own := _in_its_name(clause)):
        return ChargedForm(clause, own)
    if len(named) != 1 or boards_named(clause).some:
        return ChargedForm(clause)
    form = named[0]
    return _led_to(clause, form) or _bearing(clause, form) or _by_itself(clause, form) or _of_some(clause, form)


def _in_its_name(clause: str) -> str:
    """The form that a charge is called by: 'Rollenzuschlag 10 EUR/t'; '' where it is called by none."""
    found = {one.value for one in phrases("charges_of_forms").find(clause)}
    return found.pop() if len(found) == 1 else ""


def _by_itself(clause: str, form: Found[str]) -> ChargedForm | None:
    """'Energy surcharge $18/ST, rolls only'; of 'Energy surcharge $18/ST, rolls' it is not told whether others bear
    it too."""
    start = max((comma.end() for comma in COMMA.finditer(clause, 0, form.start)), default=-1)
    behind = COMMA.search(clause, form.end)
    end = behind.start() if behind is not None else len(clause)
    part = clause[start:end]
    if start < 0 or rest_of(part, [(form.start - start, form.end - start)], *_GOODS, *_ONLY):
        return None
    said = f"{clause[: start - 1]}{clause[end:]}".strip(_STOPS)
    return ChargedForm(said, form.value) if joined(*_ONLY).find(part) else ChargedForm(said, unsure=True)


def without_freed(clause: str) -> str:
    """'Sheets carry 38 EUR/t, while rolls bear none' without its second part, '38 EUR/t on rolls and sheets' without
    the forms, which are all there is."""
    parts = COMMA.split(clause)
    charged = ",".join(part for part in parts if not form_freed(part)) if len(parts) > 1 else clause
    fillers = phrases("charge_filler").find(charged)
    return blanked(charged, (one.span for one in fillers if _names_both(charged[one.start : one.end])))


def _of_the_other(clause: str, freed: Found[str]) -> ChargedForm:
    """'The surcharge of 38 EUR/t does not apply to rolls' is one for sheets."""
    denials = (match.span for match in joined(*_DENIALS).find(clause))
    start = _lead(clause[: freed.start])
    of_form = (freed.start if start is None else start, freed.end)
    return ChargedForm(blanked(clause, (*denials, of_form)).strip(_STOPS), OTHER_FORM[freed.value])


def _led_to(clause: str, form: Found[str]) -> ChargedForm | None:
    """'For material in sheets we charge 38 EUR/t', 'Zuschlag 38 EUR/t nur in Bogen'."""
    start = _lead(clause[: form.start])
    if start is None and _leads_itself(clause[slice(*form.span)]):
        start = form.start if charges_named(COMMA.split(clause[: form.start])[-1]) else None
    return None if start is None else _without(clause[:start], clause[form.end :], form)


def _leads_itself(form: str) -> bool:
    """The 'en bobinas' of 'recargo 18 EUR/t en bobinas'."""
    return phrases("forms_named").whole(form) is None and len(form.split()) > 1


def _bearing(clause: str, form: Found[str]) -> ChargedForm | None:
    """'Sheets carry 38 EUR/t', 'sheets: surcharge 38 EUR/t'."""
    before, behind = clause[: form.start], clause[form.end :]
    verb = next((one.end for one in phrases("charge_verbs").find(behind) if not behind[: one.start].strip()), None)
    colon = _COLON.match(behind)
    told = colon.end() if verb is None and colon is not None else verb
    return None if told is None or rest_of(before, (), *_GOODS) else _without("", behind[told:], form)


_COLON = re.compile(r"\s*:")


def _without(before: str, behind: str, form: Found[str]) -> ChargedForm:
    """What is left of a clause around the words for a form; in a part of its own nothing else may be said of it."""
    before, behind = _without_only_ahead(before), _without_only(behind)
    part = f"{COMMA.split(before)[-1]} {COMMA.split(behind)[0]}"
    unsure = not charges_named(part) and bool(rest_of(part, (), "charge_verbs", "charge_filler"))
    return ChargedForm(f"{before}{behind.lstrip(_STOPS)}".strip(_STOPS), form.value, unsure)


def _of_some(clause: str, form: Found[str]) -> ChargedForm:
    """'For narrow rolls, we charge 38 EUR/t': some of that form bear it, and which is not read."""
    part = COMMA.split(clause[: form.start])[-1] + COMMA.split(clause[form.end :])[0]
    leads = any(not part[: lead.start].strip() for lead in phrases("charged_on").find(part))
    # 'Only for orders of rolls' too.
    bounded = any(only.end <= form.start for only in joined(*_ONLY).find(clause) if not _is_of_amount(clause, only))
    return ChargedForm(clause, unsure=bounded or (leads and not charges_named(part)))


def _is_of_amount(clause: str, only: Found[str]) -> bool:
    """The 'only' of 'a surcharge of only $18/ST'."""
    behind = clause[only.end :].lstrip()
    return any(not clause[only.end : start].strip() and bool(behind) for start, _ in _amounts(clause))


def form_not_freed(text: str) -> str:
    """The form that alone bears the charges of a text, as it says of the other that it bears none; '' of any other."""
    parts = (part for clause in clauses(text) for part in (clause, *COMMA.split(clause)))
    freed = {form for part in parts if (form := form_freed(part))}
    return OTHER_FORM[freed.pop()] if len(freed) == 1 else ""


def form_freed(clause: str) -> str:
    """The form of which a clause says no more than that it bears no charge: 'rolls bear none', 'la bobina va sin
    recargo'; '' for any other."""
    named = _forms_in(clause)
    denied = joined(*_DENIALS).find(clause)
    if len(named) != 1 or not denied or _denies_else(clause, named[0]):
        return ""
    rest = rest_of(clause, [named[0].span, *_amounts(clause)], *_GOODS, *_DENIALS, *_OF_CHARGES)
    return "" if rest else named[0].value


def _denies_else(clause: str, form: Found[str]) -> bool:
    """'Not included for rolls', 'rolls not in stock' and 'no sheets' free none of a charge."""
    fillers = (clause[one.start : one.end] for one in phrases("charge_filler").find(clause))
    told = any(phrases("negations").find(filler) for filler in fillers)
    told = told or bool(joined(*_ELSE).find(clause))
    ahead = clause[: form.start].rstrip()
    return told or any(one.end == len(ahead) for one in joined(*_DENIALS).find(ahead))


_ELSE = ("relieved.within", "freight_included.in_price", "from_stock", "kept_in_stock")

_ONLY = ("no_other_boards", "only_these")
_GOODS = ("board_goods", "all_goods", "articles", "only_these", "supplied_so")
_DENIALS = ("charge_exempt", "negations", "relieved.waived")
_OF_CHARGES = (
    "charges", "surcharge_words", "charge_verbs", "charged_on", "copula", "of_the_charge", "charge_filler", "but_words",
)  # fmt: skip


def _amounts(clause: str) -> list[tuple[int, int]]:
    """Where its amounts of money and its shares of the price stand."""
    spans = sorted({(start, end) for _, start, end, _ in prices_within(clause)})
    # An amount is found with the small words before it as well: 'von 38 EUR/t', '38 EUR/t'.
    apart = [one for place, one in enumerate(spans) if all(other[1] <= one[0] for other in spans[:place])]
    return [*apart, *(one.span() for one in SHARE.finditer(clause))]


def _lead(before: str) -> int | None:
    """Where the words begin that lead to a form right behind: the 'al material' of 'al material en hojas'."""
    leads = (lead.start for lead in phrases("charged_on").find(before) if not rest_of(before[lead.end :], (), *_GOODS))
    return next(leads, None)


def _names_both(words: str) -> bool:
    return len({form.value for form in phrases("forms").find(words)}) > 1


def _without_only(behind: str) -> str:
    only = next((one for one in joined(*_ONLY).find(behind) if not behind[: one.start].strip()), None)
    return behind if only is None else behind[only.end :]


def _without_only_ahead(before: str) -> str:
    """'Energiezuschlag 18 EUR/t nur', before 'auf Rollen'."""
    ahead = before.rstrip()
    only = next((one for one in joined(*_ONLY).find(ahead) if one.end == len(ahead)), None)
    return before if only is None else before[: only.start]


def _forms_in(clause: str) -> list[Found[str]]:
    """The forms that a clause names: not those of 'cut to sheets' and '12 EUR per 1,000 sheets', nor 'rolls and
    sheets', which are all there is."""
    found = [match for section in ("forms", "forms_named") for match in phrases(section).find(clause)]
    found = outside(found, phrases("charge_filler").find(clause)) if found else []
    if not found:
        return []
    taken = [whole_name(clause, match) for match in charges_named(clause)]
    # That of '18 EUR/t nur auf Rollen' is none of the price's.
    taken += _amounts(clause)
    free = [one for one in found if not any(start <= one.start < end for start, end in taken)]
    longest = sorted(free, key=lambda one: one.start - one.end)
    kept: list[Found[str]] = []
    for one in longest:
        if not any(one.start < other.end and other.start < one.end for other in kept):
            kept.append(one)
    return sorted(kept, key=lambda one: one.start)
