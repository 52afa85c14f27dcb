"""Seeded vendor price sheets with exact truth: what the reading of unseen files is tested against.

Nothing here imports the product, so that truth is an independent check of it.
"""
