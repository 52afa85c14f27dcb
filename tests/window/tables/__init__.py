"""Tests of tracker/window/tables."""
