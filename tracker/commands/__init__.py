"""The same desk from a shell: one module a command."""
