"""Whether a price includes the freight to the buyer, by Incoterms and words in five languages."""

import re
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from itertools import pairwise

from tracker.intake.values.firms.tax_numbers import is_before_a_tax_number
from tracker.intake.values.freight.billed_on import billed_on
from tracker.intake.values.freight.carriage_included import carriage_included
from tracker.intake.values.freight.delivered_free import free_for_all
from tracker.intake.values.freight.delivery_charged import PARTS, costs_extra, sums_in
from tracker.intake.values.freight.loaded import without_loading
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import joined, phrases, words
from tracker.intake.words.phrases import Found, Phrases, tokens_of

_LEAVE_OPEN = {"port", "open"}
"""What terms mean that say nothing of the freight for certain."""


@dataclass(frozen=True, slots=True)
class Delivery:
    """`delivered`: True with freight to the buyer, False without.

    None where a term pays to a port only, or two terms differ. `of_lead_time`: said beside a time alone, which may
    say from where the weeks count rather than what prices include. `conditional`: it holds for some orders or places.
    `on_request`: prices that include freight are told to who asks, so that those of the list are as the list says.
    `by_place`: the prices of each place include it. `perhaps`: it may be said of other prices.
    """

    delivered: bool | None
    words: str
    of_lead_time: bool = False
    conditional: bool = False
    on_request: bool = False
    by_place: bool = False
    perhaps: bool = False


@cache
def _terms() -> Phrases[str]:
    meanings: dict[str, tuple[str, ...]] = {}
    for section in ("delivery", "incoterms"):
        for key, found in words(section).items():
            meanings[key] = meanings.get(key, ()) + found
    return Phrases(meanings)


# 'for' and 'dap' … are terms in capitals only where they are words otherwise.
_CAPITALS_ONLY = frozenset({"for", "fas", "fot", "dat", "cip", "fab", "lab"})


def terms_in(text: str) -> list[Found[str]]:
    """The terms of delivery in a text, from left to right."""
    folded = fold(text)
    found = _terms().among(tokens(folded))
    others = joined("delivered_volumes", "lists_of_mills").find(text)
    told = [
        one
        for one in found
        if (folded[one.start : one.end] not in _CAPITALS_ONLY or _stands_out(text, one))
        # 'Volumes livrés en 2025' tells how much was bought, and 'Mill price list' whose list it is.
        and not any(other.start <= one.start and one.end <= other.end for other in others)
        and not (one.value == "port" and is_before_a_tax_number(text, one.end))
    ]
    return without_loading(text, told)


def _stands_out(text: str, term: Found[str]) -> bool:
    """Capitals among small letters, or at the beginning: the 'FOR' of 'CALL FOR LEAD TIME' is a word like the rest."""
    return text[term.start : term.end].isupper() and (not text.isupper() or not text[: term.start].strip())


@lru_cache(maxsize=16384)
def find_delivery(text: str) -> Delivery | None:
    """What a header, title or sentence says of freight; None where it says nothing.

    'Delivered' or 'DAP': True. 'FOB mill', 'ex works': False. 'Freight to your dock quoted apart' says nothing alone.
    """
    alone = phrases("delivery_alone").whole(text)
    if alone is not None:
        return Delivery(alone == "delivered", text.strip())
    found = terms_in(text)
    if not found:
        beside = _beside_unit(text)
        if beside is not None:
            return beside
        place = _by_place(text) or _from_own_place(text) or priced_at_its_store(text)
        return place or _labelled(text) or _included(text) or _free(text)
    said = {_meaning(text, one) for one in found} - _LEAVE_OPEN
    pieces = " … ".join(text[one.start : one.end] for one in found)
    if len(said) != 1:
        free = _free_to_the_buyer(text, found) or _straight_from_its_works(text, found)
        return Delivery(True if free else None, pieces)
    return Delivery(said == {"delivered"} or _to_who_asked(text, found), pieces)


def _free_to_the_buyer(text: str, found: list[Found[str]]) -> bool:
    """'Fritt fabrik Björnarp (levererat)': whose works it is free at, says what stands in brackets behind. 'Ex works
    (delivered)' and 'fritt vårt lager (levererat)' contradict themselves."""
    *ahead, last = found
    alone = text[: last.start].rstrip().endswith("(") and text[last.end :].lstrip().startswith(")")
    free = [match.start for match in phrases("free_to").find(text)]
    ours = any(match.value == "ours" for match in phrases("bids_received").find(text))
    return (
        alone
        and not ours
        and _meaning(text, last) == "delivered"
        and bool(ahead)
        and all(one.start in free for one in ahead)
    )


def _straight_from_its_works(text: str, found: list[Found[str]]) -> bool:
    """'Direkt ab Werk, frei Haus': which way board comes that is delivered; 'ab Werk, frei Haus' contradicts itself,
    and 'direct ex mill or delivered' and 'direct ex mill, delivered $25/ST extra' leave it open."""
    away = [one for one in found if _meaning(text, one) == "collected"]
    rest = {_meaning(text, one) for one in found if one not in away}
    ahead = (text[: one.start].rstrip() for one in away)
    straight = all(any(lead.end == len(words) for lead in phrases("straight").find(words)) for words in ahead)
    either = any(match.value == "or" for match in phrases("range").find(text))
    return bool(away) and rest == {"delivered"} and straight and not either and not _has_its_price(text)


def _has_its_price(text: str) -> bool:
    """One of the terms has an amount or a surcharge of its own beside it."""
    told = ((part, terms_in(part)) for part in PARTS.split(text))
    return any((terms and sums_in(part)) or costs_extra(part, terms) for part, terms in told)


def _to_who_asked(text: str, found: list[Found[str]]) -> bool:
    """'Samtliga anbud fritt vår fabrik', 'all bids FOB our plant': in what a buyer writes of bids, our plant is his."""
    if not any(match.value == "received" for match in phrases("bids_received").find(text)):
        return False
    ours = [match for match in phrases("bids_received").find(text) if match.value == "ours"]
    leaves = [match for match in phrases("leaves_from").find(text) if match.value == "lead"]
    return any(
        term.start < our.start < term.end and not any(lead.start <= term.start < lead.end for lead in leaves)
        for term in found
        for our in ours
    )


def _beside_unit(text: str) -> Delivery | None:
    """'€/t départ': a word that says it by itself, beside no more than what prices are per."""
    for one in phrases("delivery_alone").find(text):
        unit = price_unit(f"{text[: one.start]} {text[one.end :]}".strip(" ,()–-"))
        if unit is not None and unit.basis is not None:
            return Delivery(one.value == "delivered", text[one.start : one.end])
    return None


def _meaning(text: str, term: Found[str]) -> str:
    """What a term says; the contrary where it is denied: 'prices do not include delivery', 'Leverans ingår ej', and of
    freight that a seller pays and bills: 'freight prepaid by seller and added to the invoice'."""
    if term.value != "delivered":
        return term.value
    if _denied_ahead(text, term) or _denied_behind(text, term):
        return "collected"
    billed = billed_on(text, term)
    return "open" if billed is None else "collected" if billed else term.value


def _denied_ahead(text: str, term: Found[str]) -> bool:
    """'Keine Lieferung frei Haus', 'no son franco'; 'no surcharge, delivered' denies something else."""
    found = tokens_of(text)
    links = {place: one for one in phrases("denial_links").among(found) for place in range(one.first, one.after)}
    first = term.first
    while first - 1 in links:
        first = links[first - 1].first
    starts = range(max(0, first - _LONGEST_NEGATION), first)
    denials = (phrases("negations").at(found, place) for place in starts)
    return any(one is not None and one.after == first for one in denials)


_LONGEST_NEGATION = 2
"""Words of 'don't', which its apostrophe parts."""


def _denied_behind(text: str, term: Found[str]) -> bool:
    """'Leverans ingår inte', 'Freight included: no'; 'frakt ingår, ej energi' denies something else."""
    found = tokens_of(text)
    asked = term.after < len(found) and found[term.after][0] in ":?"
    said = text[term.end :].strip(" :?.")
    if asked and phrases("answers").whole(said) == "no":
        return True
    verb = phrases("denied_behind").whole(found[term.after - 1][0]) is not None
    denial = phrases("negations").at(found, term.after) if verb else None
    return denial is not None and not any(phrases(of).find(text[denial.end :]) for of in ("charges", "taxes"))


def _by_place(text: str) -> Delivery | None:
    """'frei Hamburg', 'ab Lager Kassel': words that say it only together with the place behind them."""
    places = tokens_of(text)
    for match in phrases("delivery_places").among(places):
        if match.after >= len(places):
            continue
        _, start, end = places[match.after]
        ends = match.after + 1 == len(places) or places[match.after + 1][0] in ",;.()/"
        if text[start].isupper() and text[start:end].isalpha() and ends:
            return Delivery(match.value == "delivered", text[match.start : end])
    return None


def priced_at_its_store(text: str) -> Delivery | None:
    """'Preise in EUR/kg ab Lager': of prices it says from where, and not only how soon, as 'Lieferzeit sofort ab Lager'
    behind another sentence does."""
    return next((said for clause in clauses(text) if (said := _priced_at_a_store(clause)) is not None), None)


def _priced_at_a_store(clause: str) -> Delivery | None:
    for match in phrases("delivery_places").find(clause):
        behind, before = clause[match.end :].lstrip(), clause[: match.start].rstrip(" ,")
        part = COMMA.split(before)[-1].strip()
        unit = price_unit(part)
        priced = bool(phrases("price_words").find(part)) or (unit is not None and unit.currency is not None)
        if match.value == "collected" and priced and behind[:1] in ("", ".", ",", ")"):
            return Delivery(False, clause[match.start : match.end])
    return None


def _from_own_place(text: str) -> Delivery | None:
    """'Ex our Selhampton warehouse', 'départ notre usine': the vendor's own place, perhaps by its name."""
    found = phrases("leaves_from").find(text)
    for lead, place in pairwise(found):
        between = text[lead.end : place.start].split()
        # 'Ex Hull store' needs the name of a town, and 'ex our store' none.
        leads = lead.value == "lead" or (lead.value == "lead_to_name" and bool(between))
        if leads and place.value == "place" and len(between) <= _LONGEST_NAME and _are_names(between):
            return Delivery(False, text[lead.start : place.end])
    return None


def _are_names(words_between: list[str]) -> bool:
    """'Port Hull', and not the 'VAT' of 'ex VAT mill', the 'Stock' of 'ex Stock store' or what a comma follows."""
    name = " ".join(words_between)
    capitals = all(word[0].isupper() for word in words_between) and not any(sign in name for sign in ",;:")
    return capitals and not any(phrases(section).find(name) for section in ("taxes", "tax", "charges", "stores"))


def _free(text: str) -> Delivery | None:
    """'Allt levereras fritt.', 'Lieferung frei'; what is free from 10 t, or to a place, is not said to be so here."""
    match = free_for_all(text)
    if match is None or _denied_ahead(text, match):
        return None
    return Delivery(True, text[match.start : match.end])


_COLON = re.compile(r"\s*[:=]\s*")


def _labelled(text: str) -> Delivery | None:
    """'Freight: included to your plant', 'Transport : non compris'."""
    for match in phrases("carriage").find(text):
        colon = _COLON.match(text, match.end)
        told = tokens_of(text[colon.end() :]) if colon is not None else []
        denies = phrases("negations").at(told, 0)
        included = phrases("freight_included").at(told, denies.after if denies is not None else 0)
        if included is not None:
            # 'Frakt: ingår ej'.
            denies = denies or phrases("negations").at(told, included.after)
            return Delivery(denies is None, text[match.start :].strip(" ."))
    return None


def _included(text: str) -> Delivery | None:
    said = carriage_included(text)
    return None if said is None else Delivery(*said)


_LONGEST_NAME = 3


@lru_cache(maxsize=4096)
def delivery_text(text: str) -> Delivery | None:
    """A cell that is a delivery term, perhaps with a place behind it: 'DAP Falun', 'FOB mill', 'ex works'."""
    found = terms_in(text)
    if (not found or found[0].start > 0) and phrases("delivery_alone").whole(text) is None:
        return None
    return find_delivery(text)


def terms_under(text: str, head: str) -> Delivery | None:
    """A cell's terms, where need be with the words above it: 'Prepaid' below 'Freight', 'No' below 'Delivered?'."""
    by_head = delivery_text(text) or delivery_text(f"{head} {text}")
    if by_head is None or phrases("answers").whole(text) != "no":
        return by_head
    # That something else than 'ex works' holds does not say what.
    asked = delivery_text(head) or by_head
    return replace(by_head, delivered=False if asked.delivered else None)


def leads_to_a_place(text: str, end: int) -> bool:
    """'Offer DAP your works', 'Angebot frei Haus Kassel': how it is delivered, and behind that where to."""
    behind = text[end:]
    starts = [said.start for section in ("delivery", "incoterms") for said in phrases(section).find(behind)]
    return bool(starts) and not any(map(str.isalnum, behind[: min(starts)]))
