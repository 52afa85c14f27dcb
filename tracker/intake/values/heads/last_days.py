"""Heads over the last days of prices that no list of heads names: 'Firm through', 'Preise fest bis', 'Firme hasta'."""

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without


def heads_last_days(text: str) -> bool:
    """Whether words that speak of validity by themselves and lead to a last day are all that a head says, but for the
    word for prices before them. With a day in it, a head is over prices."""
    ends = [match for match in phrases("until").find(text) if match.value == "strong"]
    if len(ends) != 1 or any(map(str.isdigit, text)) or text[ends[0].end :].strip(" .:()"):
        return False
    before = text[: ends[0].start]
    rest = without(before, phrases("price_words").find(before))
    return all(phrases("articles").whole(word) is not None for word in rest.split())
