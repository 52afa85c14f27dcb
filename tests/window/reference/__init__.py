"""Tests of tracker/window/reference."""
