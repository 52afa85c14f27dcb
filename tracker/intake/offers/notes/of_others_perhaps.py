"""The words of a note about terms that may be those of some other board."""


def of_others_perhaps(words: str) -> str:
    """What is told of words that speak of a time, a day or a smallest order, and not for certain of this board."""
    return f"“{words}” may be said of this board, or of others only. Ask the vendor what holds for it."
