"""What went wrong that a user or the machine caused, as one sentence that says what to do."""

import sys


class Trouble(Exception):
    """The message is one plain sentence for the user: what did not happen, where, and what to do now."""


def sentence_for(problem: BaseException) -> str | None:
    """What to tell a user who met this, where the user or the machine is the cause; None for a fault of this program.

    Tasks say what they foresee as Trouble. What can happen at every step, a disk that is full or a database that is
    damaged or goes away, is told here for all of them.
    """
    if isinstance(problem, Trouble):
        return str(problem)
    if isinstance(problem, OSError):
        return f"That could not be finished, this computer did not allow it ({problem}): mend that and try again."
    refused = sys.modules.get("sqlalchemy.exc")  # a database that was never loaded has refused nothing
    if refused is not None and isinstance(problem, refused.DBAPIError):
        return (
            f"The database could not be used ({str(problem.orig).strip()}): try again, run the command “check”, "
            "and restore a backup if it is damaged."
        )
    return None
