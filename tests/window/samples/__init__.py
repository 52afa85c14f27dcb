"""Tests of tracker/window/samples."""
