"""Sentences that speak of the whole file: 'All tabs: lead time 4 weeks' says what 'Lead time 4 weeks' does."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked


@lru_cache(maxsize=8192)
def without_the_file(text: str) -> str:
    """The text without the words for that, where they lead to a sentence or stand within it: 'All prices in this
    workbook are delivered'. Where they are what it is about, 'This file is valid until 30 June', they stay."""
    for match in phrases("whole_book").find(text):
        ahead, behind = text[: match.start], text[match.end :]
        leads = _LEADS.match(behind)
        if leads is not None and not ahead.strip():
            return behind[leads.end() :]
        # 'In', and the 'i' of Swedish, whichever leads to them.
        lead = next((one for one in phrases("about_lines").find(ahead) if not ahead[one.end :].strip()), None)
        if lead is not None and ahead[: lead.start].strip():
            return " ".join(blanked(text, [(lead.start, match.end)]).split())
    return text


_LEADS = re.compile(r"\s*[:–-]\s+")
