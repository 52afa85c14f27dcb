"""What went wrong that a user or the machine caused, as one sentence that says what to do."""


class Trouble(Exception):
    """The message is one plain sentence for the user: what did not happen, where, and what to do now."""
