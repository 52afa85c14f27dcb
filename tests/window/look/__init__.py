"""Tests of tracker/window/look."""
