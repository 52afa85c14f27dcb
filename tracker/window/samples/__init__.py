"""Samples: who owes what, since when, and logging a request without leaving the keyboard."""
