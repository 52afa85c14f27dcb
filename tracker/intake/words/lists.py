"""Loading the word lists. Every TOML file under resources/words/ is read; a person may add one of their own."""

import re
import tomllib
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from pathlib import Path

from tracker.intake.words.phrases import Phrases, blanked
from tracker.trade.resources import resource

WordLists = dict[str, dict[str, tuple[str, ...]]]


@cache
def word_lists() -> WordLists:
    """Section -> meaning -> words of every language, in the order of the files' names."""
    merged: dict[str, dict[str, list[str]]] = {}
    for path in sorted(resource("words").glob("*.toml")):
        for section, meanings in read_words(path).items():
            known = merged.setdefault(section, {})
            for meaning, words in meanings.items():
                known.setdefault(meaning, []).extend(words)
    return {
        section: {meaning: tuple(dict.fromkeys(_spelt_out(words, merged))) for meaning, words in meanings.items()}
        for section, meanings in merged.items()
    }


_LIST = re.compile(r"\[(?P<section>\w+)(?:\.(?P<meaning>\w+))?\]")
"""Another list among the words of one."""


def _spelt_out(words: Iterable[str], lists: Mapping[str, Mapping[str, list[str]]]) -> Iterator[str]:
    """The words with those of the lists that they name: '[exceptions]' stands for a whole section's, '[dispatch.sent]'
    for those of one line. ValueError for a list that no file has."""
    for word in words:
        named = _LIST.fullmatch(word) if word.startswith("[") else None
        if named is None:
            yield word
            continue
        section = lists.get(named["section"], {})
        if named["meaning"] not in (None, *section) or not section:
            raise ValueError(f"A word list names the list {word}, which no file holds. Correct it or take it away.")
        for meaning in (named["meaning"],) if named["meaning"] else section:
            yield from _spelt_out(section[meaning], lists)


def read_words(path: Path) -> dict[str, dict[str, list[str]]]:
    """One file's sections. ValueError with one plain sentence where it is not a table of lists of words."""
    try:
        text = path.read_text(encoding="utf-8")
        content = _plainly_written(text) or tomllib.loads(text)
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise ValueError(f"The word list {path.name} can't be read: {error}. Correct it or take it away.") from error
    for section, meanings in content.items():
        if not isinstance(meanings, dict):
            raise ValueError(f"In the word list {path.name}, [{section}] should hold lines like meaning = [words].")
        for meaning, words in meanings.items():
            if not isinstance(words, list) or not {str}.issuperset(map(type, words)):
                raise ValueError(
                    f"In the word list {path.name}, [{section}] {meaning} should be a list of words in quotes, "
                    'like ["first", "second"].'
                )
    return content


_PLAIN = re.compile(
    r"""\[(?P<section>\w+)\]\n
    | (?:(?P<bare>\w+)|"(?P<quoted>[^"\\\n]+)")[ ]=[ ]\[\s*(?P<words>(?:"[^"\\\n]*"\s*(?:,\s*|(?=\])))*)\]\n
    | (?P<odd>\w+[ ]=[ ]\[[^\n]*\])\n
    | (?:\#[^\n]*)?\n""",
    re.ASCII | re.VERBOSE,
)
"""The head of a section, a list of words in quotes with nothing to spell out in them, any other list on one line, or a
remark."""
_IN_QUOTES = re.compile('"([^"]*)"')
_FORBIDDEN = re.compile(r"[\x00-\x08\x0b-\x1f\x7f]")
"""Signs that TOML has nowhere."""


def _plainly_written(text: str) -> dict[str, dict[str, list[str]]] | None:
    """A word list that says things once and in the plainest of the ways that TOML allows; None for any other.

    Ours are, but for a few lines, and TOML's own reader takes a tenth of a second for them, which whoever reads a
    single sheet would wait for.
    """
    if _FORBIDDEN.search(text):
        return None
    sections: dict[str, dict[str, list[str]]] = {}
    meanings: dict[str, list[str]] | None = None
    reached = 0
    while reached < len(text):
        said = _PLAIN.match(text, reached)
        if said is None:
            return None
        reached = said.end()
        section, bare, quoted, listed, odd = said.groups()
        if section is not None:
            if section in sections:
                return None
            meanings = sections[section] = {}
        elif listed is not None or odd is not None:
            added = {bare or quoted: _IN_QUOTES.findall(listed)} if odd is None else _by_toml(odd)
            if meanings is None or not added or not added.keys().isdisjoint(meanings):
                return None
            meanings.update(added)
    return sections


def _by_toml(line: str) -> dict[str, list[str]]:
    """One list with signs that are spelt out in it; nothing where it does not end on its line."""
    try:
        return tomllib.loads(line)
    except tomllib.TOMLDecodeError:
        return {}


def words(section: str) -> dict[str, tuple[str, ...]]:
    """One section's meanings with their words; empty where no file has it."""
    return word_lists().get(section, {})


@cache
def phrases(section: str) -> Phrases[str]:
    """One section ready for finding."""
    return Phrases(words(section))


@cache
def joined(*sections: str) -> Phrases[str]:
    """Several sections as one, each a meaning: the longest phrase over all of them is found.

    A section is named whole or with one of its meanings: 'ordered.any'.
    """
    return Phrases({section: list(_of_section(section)) for section in sections})


def _of_section(name: str) -> Iterator[str]:
    section, _, meaning = name.partition(".")
    return (word for key, group in words(section).items() if meaning in ("", key) for word in group)


def without_words(text: str, *sections: str) -> str:
    """A text with blanks for the words of these lists.

    Each list has its turn on what those before it left, for a longer phrase may begin with a shorter one's word.
    """
    for section in sections:
        text = blanked(text, (match.span for match in phrases(section).find(text)))
    return text


def without_article(text: str) -> str:
    """A text without the article that it begins with: 'the 28 pt', 'l'URB' -> '28 pt', 'URB'."""
    return without_leading(text, "articles")


def without_leading(text: str, *sections: str) -> str:
    """A text without the word of each of these lists that it begins with: 'GD' of 'the grade GD'."""
    for section in sections:
        ahead = next((match for match in phrases(section).find(text) if match.start == 0), None)
        text = text if ahead is None else text[ahead.end :].lstrip(" '’")
    return text


def pattern(section: str, *meanings: str) -> str:
    """A group for a regular expression that matches any word of these meanings, the longest first."""
    found = sorted((word for meaning in meanings for word in words(section)[meaning]), key=len, reverse=True)
    return f"(?:{'|'.join(map(re.escape, found))})"
