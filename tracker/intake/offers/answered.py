"""What a person answered, found again for just the words it was asked about."""

from collections.abc import Collection, Mapping

from tracker.intake.words.fold import fold


def key_about(kind: str, words: str) -> str:
    """The key of a question about these words of the sheet: 'currency:kr/mt', 'grade:' where nothing is said."""
    return f"{kind}:{fold(words).strip()}"


def answer_about(settled: Mapping[str, str], kind: str, words: str, left: Collection[str] = ()) -> str | None:
    """The answer to a question about these words, else the one given for the whole file.

    `left`: the values that the sheet leaves open, if it leaves only some; an answer that it excludes is none.
    """
    for key in (key_about(kind, words), kind):
        answer = settled.get(key)
        if answer is not None and (not left or answer in left):
            return answer
    return None
