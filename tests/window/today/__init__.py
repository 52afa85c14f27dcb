"""Tests of tracker/window/today."""
