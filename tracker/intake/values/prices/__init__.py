"""Prices, their currency and what they are per."""
