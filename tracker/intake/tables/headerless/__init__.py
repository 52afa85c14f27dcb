"""Offers that no header leads to: letters, mail, rows that say all there is to say."""
