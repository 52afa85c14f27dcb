"""Today: what needs the user, each a click or Enter from where it is settled."""
