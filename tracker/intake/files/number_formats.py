"""Number format codes: the built-in ones by id, and what a code makes of a number (date, time, duration or number).

Built-in ids: ECMA-376 Part 1, 18.8.30 (numFmt). Ids 5-8 and 41-44 show the reader's own currency; the standard
prints them with a dollar sign.
"""

import re
from enum import Enum
from functools import cache

BUILT_IN = {
    0: "General",
    1: "0",
    2: "0.00",
    3: "#,##0",
    4: "#,##0.00",
    5: '"$"#,##0_);("$"#,##0)',
    6: '"$"#,##0_);[Red]("$"#,##0)',
    7: '"$"#,##0.00_);("$"#,##0.00)',
    8: '"$"#,##0.00_);[Red]("$"#,##0.00)',
    9: "0%",
    10: "0.00%",
    11: "0.00E+00",
    12: "# ?/?",
    13: "# ??/??",
    14: "mm-dd-yy",
    15: "d-mmm-yy",
    16: "d-mmm",
    17: "mmm-yy",
    18: "h:mm AM/PM",
    19: "h:mm:ss AM/PM",
    20: "h:mm",
    21: "h:mm:ss",
    22: "m/d/yy h:mm",
    37: "#,##0_);(#,##0)",
    38: "#,##0_);[Red](#,##0)",
    39: "#,##0.00_);(#,##0.00)",
    40: "#,##0.00_);[Red](#,##0.00)",
    41: '_(* #,##0_);_(* (#,##0);_(* "-"_);_(@_)',
    42: '_("$"* #,##0_);_("$"* (#,##0);_("$"* "-"_);_(@_)',
    43: '_(* #,##0.00_);_(* (#,##0.00);_(* "-"??_);_(@_)',
    44: '_("$"* #,##0.00_);_("$"* (#,##0.00);_("$"* "-"??_);_(@_)',
    45: "mm:ss",
    46: "[h]:mm:ss",
    47: "mmss.0",
    48: "##0.0E+0",
    49: "@",
}

_EAST_ASIAN_DATES = frozenset((*range(27, 37), *range(50, 59)))
"""Ids that the standard gives to dates and times of East Asian editions, in an order of their own per language."""


class Shows(Enum):
    """What a person sees of a number under a format."""

    NUMBER = "number"
    DATE = "date"
    DATE_AND_TIME = "date and time"
    TIME = "time"
    DURATION = "duration"

    # Every number of a sheet is looked up by it, and an Enum's own hash is a Python function.
    __hash__ = object.__hash__


def built_in(number: int) -> str:
    """The code of a built-in format id, 'General' for an id that has none."""
    if number in _EAST_ASIAN_DATES:
        return "yyyy-mm-dd"
    return BUILT_IN.get(number, "General")


_NOT_TOKENS = re.compile(r'"[^"]*"|\\.|_.|\*.|\[(?!(?:h+|m+|s+)\])[^\]]*\]', re.IGNORECASE | re.DOTALL)
_ELAPSED = re.compile(r"\[(?:h+|m+|s+)\]", re.IGNORECASE)


@cache
def shows(code: str) -> Shows:
    """What a format code makes of a positive number: only the first section counts, literals and colours do not."""
    section = _NOT_TOKENS.sub("", code).split(";", 1)[0].lower()
    if section.strip() in ("", "general", "standard", "@"):
        return Shows.NUMBER
    if _ELAPSED.search(section):
        return Shows.DURATION
    tokens = section.replace("am/pm", "h").replace("a/p", "h")
    has_time = "h" in tokens or "s" in tokens
    has_date = "y" in tokens or "d" in tokens or ("m" in tokens and not has_time)
    if "#" in tokens or "?" in tokens or ("0" in tokens and "s" not in tokens):
        return Shows.NUMBER
    if has_date:
        return Shows.DATE_AND_TIME if has_time else Shows.DATE
    return Shows.TIME if has_time else Shows.NUMBER
