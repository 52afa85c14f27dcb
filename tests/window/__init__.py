"""Tests of the window: what a user does, and what the models promise."""
