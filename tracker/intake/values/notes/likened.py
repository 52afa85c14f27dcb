"""Boards of which a note says the same as of others: 'Like SBS, CUK is delivered' is said of both."""

from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.words.lists import phrases, without_article


def with_likes(text: str) -> str:
    """'SBS, CUK is delivered' of 'Like SBS, CUK is delivered'; 'like all our boards, CUK is delivered' stays."""
    for clause in clauses(text) if phrases("likened").find(text) else ():
        like = next((match for match in phrases("likened").find(clause) if match.first == 0), None)
        first, _, behind = clause[like.end :].partition(",") if like is not None else ("", "", "")
        boards, rest = boards_ahead(without_article(first.strip()))
        told = without_article(behind.strip())
        if boards and not rest and boards_ahead(told)[0]:
            text = text.replace(clause, f"{boards}, {told}")
    return text
