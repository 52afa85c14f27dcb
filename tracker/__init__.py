"""Paperboard price sheets on one footing, and every sample accounted for."""

__version__ = "0.1.0"
