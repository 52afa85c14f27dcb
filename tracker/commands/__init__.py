"""The same desk from a shell: one module a command. Results go to standard output, messages to standard error."""

from tracker.commands.line import run

__all__ = ["run"]
