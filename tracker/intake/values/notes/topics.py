"""The words in a note that tell what its figures are of: the 'Minimum order' of 'Minimum order 10,000 lb'."""

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases

OF_TERMS = ("lead_topic", "minimum", "charges")
"""The sections of words for what some boards may have otherwise than the rest."""


def topic_of(text: str, *sections: str) -> str:
    """The first words of these sections in a text, as it has them; '' where it has none."""
    found = [match for section in sections for match in phrases(section).find(text)]
    first = min(found, key=lambda match: match.start, default=None)
    return text[first.start : first.end] if first is not None else ""


def goes_on_about_excepted(behind: str) -> bool:
    """Whether what stands behind an exception that leads a text is said of what it excepts: the '5 weeks' of 'Except
    item 3: 5 weeks' below 'Lead time 3 weeks', and not 'Except item 3: all prices delivered'."""
    return behind.lstrip().startswith(":") and not topic_of(behind, *OF_TERMS, "price_words", "all_of_them")


def of_excepted(others: str, behind: str) -> str:
    """What is said of the lines that an exception names: 'Lead time on all lines is 4 weeks, except line 5, which is
    made once a quarter: 8 weeks'. It is on the same subject; '' where nothing is said of them."""
    said = behind.strip(" ,.;)").rpartition(":")[2].strip()
    sections: tuple[str, ...] = OF_TERMS
    if find_delivery(said) is not None:
        # The 'port' of 'franco de port, sauf CUK : départ usine' is no charge, nor is 'ab Lager' behind 'frei Haus' a
        # time.
        sections = (*OF_TERMS[:-1], "price_words") if find_delivery(others) is not None else OF_TERMS[:-1]
        if sections[-1] == "price_words" and not any(map(str.isdigit, said)):
            # The 'geliefert' of 'geliefert wird DAP, ausgenommen CUK: ab Werk' is no time either.
            sections = sections[1:]
    if ends_then(said):
        # 'Offer valid until 31 January, except GD: until 31 December'.
        sections = ("valid",)
    subject = topic_of(others, *sections)
    return f"{subject} {said}" if subject and said else said


def ends_then(said: str) -> bool:
    """'Until 31 December', and what more may follow."""
    days = find_dates(said)
    return bool(days) and any(match.start == 0 and match.end <= days[0].start for match in phrases("until").find(said))
