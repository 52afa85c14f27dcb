"""Order sizes written out in words: 'over three and up to ten tonnes', 'half a tonne', 'ten thousand pounds'."""

import re
from functools import lru_cache

from tracker.intake.values.lead import in_figures
from tracker.intake.words.lists import pattern, phrases

_BEHIND = " t"
"""A number is written out before a word; the last one of 'over ten tonnes, up to twenty' has none behind it."""


@lru_cache(maxsize=8192)
def weights_in_figures(text: str) -> str:
    """'up to three tonnes' -> 'up to 3 tonnes', 'half a tonne' -> '500 kg'; all other words stay as they are."""
    for half in reversed(phrases("weights_in_words").find(text)):
        text = f"{text[: half.start]}{half.value}{text[half.end :]}"
    figures = in_figures(f"{text}{_BEHIND}").removesuffix(_BEHIND)
    return _THOUSANDS.sub(lambda match: f"{match[1]}000", figures)


_THOUSANDS = re.compile(rf"(?<![\d.,])(\d{{1,3}})\s?{pattern('thousand_words', 'any')}\b", re.IGNORECASE)
