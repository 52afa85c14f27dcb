"""Tests of tracker/window/quotes."""
