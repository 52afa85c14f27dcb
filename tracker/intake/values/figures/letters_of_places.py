"""'Harlow Gap, IN' and 'Lisboa, PT': the letters of a state or country behind the name of a town, which are no unit."""

import re

from tracker.intake.words.lists import phrases

_BEHIND_A_TOWN = re.compile(r"(?:^|[;:/(–-]\s*)(?P<town>[^\W\d_](?:[^\W\d_]|[.'’ -])*)(?:,\s*|\s*\()$")


def letters_of_a_place(text: str, start: int, end: int) -> bool:
    """Whether two capitals stand right behind words and a comma, none of which is a word that heads columns.

    'Caliper, IN' and 'Roll width (IN)' are measured in inches.
    """
    letters = text[start:end]
    if len(letters) != _LETTERS or not letters.isalpha() or not letters.isupper():
        return False
    named = _BEHIND_A_TOWN.search(text[:start])
    return named is not None and not phrases("headers").find(named["town"])


_LETTERS = 2
