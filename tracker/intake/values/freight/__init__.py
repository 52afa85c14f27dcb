"""Delivery, and what is charged beside a price."""
