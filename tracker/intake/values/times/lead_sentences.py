"""Lead times as sentences, notes and remarks state them: 'Lead time 5 weeks after receipt of order', 'DAP, 4 weeks'."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import cache, lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.orders.bracket_pieces import LOADS_AND_COUNTS
from tracker.intake.values.times.around_delivery import without_notices
from tracker.intake.values.times.delivery_sentences import (
    lead_topics,
    of_deliveries,
    time_led,
    without_rhythms,
    without_samples,
)
from tracker.intake.values.times.done_besides import without_doings
from tracker.intake.values.times.firm_times import without_firm
from tracker.intake.values.times.goods_in_stock import in_stock_for_some_orders, without_small_orders
from tracker.intake.values.times.lead import LeadTime, LeadUnit, lead_phrases, lead_text, lead_unit
from tracker.intake.values.times.lead_from_order import lead_from_order, leaves_at_once, leaves_for_some
from tracker.intake.values.times.leads_in_full import tells_its_time, tells_no_more
from tracker.intake.values.times.present_times import of_today
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, without_words, words
from tracker.intake.words.phrases import Found, outside, without


@lru_cache(maxsize=8192)
def leads_by_grade(text: str) -> tuple[LeadTime, ...]:
    """The lead times that a sentence gives grade by grade: 'Lead times: SBS 4-5 weeks; all others 3 weeks'.

    () where it gives one for all, or leaves open for which grades one of them holds.
    """
    if not phrases("lead_topic").find(text):
        return ()
    found: list[LeadTime] = []
    for part in (part for clause in clauses(text) for part in COMMA.split(clause)):
        leads = {lead.days: lead for lead in (*_spans(part), *_from_stock(part))}
        named = find_grade(part)
        if leads and _holds_for_some(part):
            return ()
        if not leads or phrases("not_lead").find(part):
            continue
        grades = named.grades if named is not None else ()
        if len(leads) > 1 or not (grades or (found and phrases("the_others").find(part))):
            return ()
        (lead,) = leads.values()
        found.append(replace(lead, grades=grades, words=part.strip()))
    return tuple(found)


def _holds_for_some(part: str) -> bool:
    """'3 weeks unless CRB', '3 weeks except CRB': the board that is named is the one it does not hold for, or the only
    one."""
    told = part[: unless_at(part)]
    return bool(phrases("only_if").find(told) or phrases("exceptions").find(told))


@lru_cache(maxsize=8192)
def find_lead(text: str) -> LeadTime | None:
    """The lead time that a sentence states: 'Lead time 5 weeks after receipt of order', 'Dispatch 5-7 working days.'

    Only where a clause speaks of lead time, dispatch or delivery; None where two clauses disagree, and where one tells
    a time that is not read, unless another calls its own a lead time: 'Documents of delivery in 3 days; lead time 3
    weeks'.
    """
    found: dict[tuple[int, int], LeadTime] = {}
    told = clauses(text)
    if any(leaves_for_some(one) or in_stock_for_some_orders(one) for one in told) or _is_of_mill_goods(text):
        return None
    named, unread = False, list[bool]()
    for clause in map(told_of_orders, clauses(text)):
        if _leaves_unread(clause):
            unread.append(_names_a_lead_time(clause))
            continue
        lead = _clause_lead(without_firm(clause))
        named |= lead is not None and _names_a_lead_time(clause)
        for one in (lead,) if lead is not None else _carried_on(clause) if found else ():
            found[one.days] = one
    settled = not any(unread) and (named or not unread)
    return next(iter(found.values())) if len(found) == 1 and settled else None


def times_deliveries(text: str) -> bool:
    """Whether a text gives deliveries a time, whether or not it is read as the lead time of all boards."""
    return find_lead(text) is not None or any(_leaves_unread(told_of_orders(clause)) for clause in clauses(text))


def _leaves_unread(clause: str) -> bool:
    """Whether words for deliveries stand beside a time that other words say something else of, or that holds on a
    condition: 'Delivery confirmation, 2 days', 'If it is in our shed, lead time 3 days'."""
    if not lead_topics(clause) or not _counts_time(clause):
        return False
    if any(_adds_a_time(part) for part in _TERMS.split(clause)) or phrases("none_left").find(clause):
        # 'Usual lead time 4 weeks, at present the mill is sold out until May'.
        return True
    # Which boards have another time is told elsewhere.
    clause = _before_exceptions(clause)
    if any(map(_names_an_order, _TERMS.split(clause))):
        return True
    told = _TERMS.split(without_firm(clause))
    if any(match.first == 0 for part in told for match in phrases("only_if").find(part[: unless_at(part)])):
        return True
    parts = [part for part in told if not _of_another_term(part)]
    timed = [part for part in parts if _counts_time(part) and not _says_how_long_it_holds(part)]
    topics = [part for part in parts if phrases("lead_topic").find(part)]
    # '…, 3 weeks' behind a comma is the time of what was spoken of; days may be those of payment.
    in_days = [part for part in timed if part not in topics and lead_unit(part) is LeadUnit.DAY]
    return not all(map(tells_no_more, (*timed, *topics) if in_days else timed))


def _names_an_order(part: str) -> bool:
    """'5-20 pallets: lead time 3 weeks' is the time of such orders."""
    if not (lead_topics(part) or _counts_time(part)):
        return False
    loads = (match for match in phrases("bracket").find(part) if match.value in LOADS_AND_COUNTS)
    return any(_COUNTED.search(part[: match.start]) for match in loads)


_COUNTED = re.compile(r"\d\s*$")


def _adds_a_time(part: str) -> bool:
    """The 'add 1 week for sheets' of 'Lead time 3 weeks, add 1 week for sheets'."""
    return _counts_time(part) and any(match.value == "later" for match in phrases("not_lead").find(part))


def _before_exceptions(clause: str) -> str:
    """'Lead time 3 weeks' of 'Lead time 3 weeks, except sheets 5 weeks'; nothing where the time stands behind them."""
    # 'Sauf si' begins a condition.
    first = next(iter(outside(phrases("exceptions").find(clause), phrases("only_if").find(clause))), None)
    if first is None:
        return clause
    ahead = clause[: first.start].rstrip(" ,")
    return ahead if lead_topics(ahead) and _counts_time(ahead) else ""


def _counts_time(part: str) -> bool:
    return counts_time(times_in_figures(_AT.sub(" ", part)))


def _names_a_lead_time(clause: str) -> bool:
    return any(not of_deliveries(clause, topic) for topic in lead_topics(clause))


def _is_of_mill_goods(text: str) -> bool:
    """'Mill goods take five weeks', and others are in stock: which of them a board is, is not known."""
    return bool(phrases("mill_goods").find(text)) and any(match.value == "stock" for match in lead_phrases().find(text))


def told_of_orders(clause: str) -> str:
    """The clause without what else is told in times: notices, claims, how often, how soon samples come, and what is
    usual beside what holds now; 'subject to change without notice' says nothing of it."""
    clause = without_small_orders(without(clause, phrases("change_reserved").find(clause)))
    return of_today(without_samples(without_rhythms(without_doings(without_notices(clause)))))


@lru_cache(maxsize=8192)
def lead_among(text: str) -> LeadTime | None:
    """The one lead time between the commas of a cell about delivery: 'frei Haus, 4 Wochen', 'DAP, 10 days'."""
    found = {lead.days: lead for part in COMMA.split(text) if (lead := lead_text(part.strip())) is not None}
    return next(iter(found.values())) if len(found) == 1 else None


def _carried_on(clause: str) -> Iterable[LeadTime]:
    """'Lead time: rolls 3 weeks; sheets 5 weeks': a few words behind the first clause, on the same subject."""
    return () if len(clause) > _FEW_WORDS or phrases("not_lead").find(clause) else _spans(clause)


_FEW_WORDS = 40


@cache
def _span() -> re.Pattern[str]:
    """'3 weeks', '3-4 weeks', '3/4 weeks' and '3 y 4 semanas', with the word behind; never the second half alone."""
    between = "|".join(re.escape(fold(word)) for group in words("range").values() for word in group)
    figure = r"\d+(?:[.,]\d+)?"
    joined = rf"\s*(?:[-/&~]|\b(?:{between})\b)\s*{figure}"
    return re.compile(rf"(?<![\d/]){figure}(?:{joined})?\s*[^\W\d_]+\.?(?:\s+[^\W\d_]+)?")


_TERMS = re.compile(r",(?!\d)|\s-\s(?!\d)")
"""What parts the terms of one line: 'délai 10 à 15 jours - valable jusqu'au 15/09/2026'."""


_AT = re.compile(r"\d\s+at\b")
"""'Zone 1 at no charge', where '10 AT' are working days."""


def _clause_lead(clause: str) -> LeadTime | None:
    """A clause's one lead time. Parts between commas that speak of payment or validity are left out."""
    topics = lead_topics(clause)
    if not topics:
        return lead_from_order(clause) or leaves_at_once(clause)
    rest = clause[topics[-1].end :].strip(" :,-–=")
    ahead = clause[: topics[-1].start]
    whole = lead_text(rest) if rest and not _begins_with_another(clause, topics[-1]) else None
    if whole is not None and _tells_another_time(ahead, whole):
        return None
    if whole is not None and not any(match.value == "straight" for match in phrases("at_once").find(rest)):
        return whole
    parts = [part for part in _TERMS.split(clause) if not _of_another_term(part)]
    # 'Ships in 3 weeks, good 15 days from 21 September'.
    parts = [part for part in parts if not _says_how_long_it_holds(part)] or parts
    found = {lead.days: lead for part in parts for lead in _spans(part)}
    return next(iter(found.values())) if len(found) == 1 else None


def _tells_another_time(ahead: str, lead: LeadTime) -> bool:
    """The 'Production 3 weeks' ahead of 'delivery 1 week': how long the two take together is not told. Days without a
    word for deliveries may be those of payment."""
    for part in _TERMS.split(ahead):
        found = () if _of_another_term(part) else _spans(part)
        named = bool(phrases("lead_topic").find(part))
        if any(said.high > 0 and said.days != lead.days and (named or not _in_days(said)) for said in found):
            return True
    return False


def _in_days(said: LeadTime) -> bool:
    return lead_unit(said.words) is LeadUnit.DAY


def _begins_with_another(clause: str, topic: Found[str]) -> bool:
    """The 'Claims on' of 'Claims on delivery: 2 weeks' and the 'Prices firm for' of 'Prices firm for shipment within 2
    weeks'; 'Net prices, delivery 2 weeks' and the same without a comma tell how long the goods take."""
    own = _TERMS.split(clause[: topic.start])[-1]
    led = own + _TERMS.split(clause[topic.start :])[0]
    return any(match.value == "any" for match in phrases("not_lead").find(own)) and not tells_its_time(led)


def _of_another_term(part: str) -> bool:
    """'Payment 30 days'; 'lead time 3 weeks on returnable pallets' says behind the time how the board comes."""
    others = phrases("not_lead").find(part)
    led = any(time_led(part, topic.end) is not None for topic in lead_topics(part)) if others else False
    return bool(others) and not (led and all(match.value == "how" and _is_behind(part, match) for match in others))


def _is_behind(part: str, how: Found[str]) -> bool:
    """Behind the time, which is not counted from it as in 'delivery 3 weeks after return of the pallets'."""
    ahead = part[: how.start]
    plain = without_words(ahead, "articles").rstrip()
    counted_from = any(match.end == len(plain) for match in phrases("counted_after").find(plain))
    return counts_time(ahead) and not counted_from


def _says_how_long_it_holds(part: str) -> bool:
    return bool(phrases("valid").find(part)) and not phrases("lead_topic").find(part)


def times_in(part: str) -> Iterator[tuple[LeadTime, int, int]]:
    """Each time that a part counts, and where it stands in the part as times_in_figures has it."""
    part = times_in_figures(part)
    for match in _span().finditer(fold(part)):
        piece = part[match.start() : match.end()]
        if _AT.search(piece):
            continue
        # The word behind the unit may or may not belong to it ('5 working days' / '4 weeks for').
        for said in (piece, piece.rsplit(" ", 1)[0]):
            lead = lead_text(said)
            if lead is not None:
                yield lead, match.start(), match.start() + len(said)
                break


def _spans(part: str) -> Iterable[LeadTime]:
    part = times_in_figures(part)
    for lead, _, _ in times_in(part):
        yield lead
    if phrases("lead_topic").find(part):
        yield from _from_stock(part)


def _from_stock(part: str) -> Iterable[LeadTime]:
    """'Ab Lager' and 'sofort'; the store of 'frei Lager Kunde' is where the board goes to, 'direkt från bruket' says
    from where it comes, and 'wir liefern ab sofort frei Haus' what is done from now on."""
    verbs_alone = all(topic.value == "verb" for topic in phrases("lead_topic").find(part))
    never = ("straight", "from_now") if verbs_alone else ("straight",)
    others = [match for match in phrases("at_once").find(part) if match.value in never]
    stock = outside((match for match in lead_phrases().find(part) if match.value == "stock"), others)
    said = [part[match.start : match.end] for match in stock]
    if any(phrases("stores").whole(words) is None for words in said):
        yield LeadTime(0, 0, part.strip())


@lru_cache(maxsize=4096)
def lead_in_remark(text: str) -> LeadTime | None:
    """The one lead time among a remark's parts ('3 weeks, min 2 t'): weeks, or stock; '30 days' by itself may be terms
    of payment."""
    parts = (part.strip() for clause in clauses(text) for part in COMMA.split(clause))
    found = {said.days: said for part in parts if (said := lead_text(part)) is not None}
    said = next(iter(found.values())) if len(found) == 1 else None
    counted_in_days = said is not None and said.days[1] > 0 and lead_unit(said.words) is not LeadUnit.WEEK
    return None if counted_in_days else said
