"""Tests of tracker/window/take_in."""
