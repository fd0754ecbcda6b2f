"""Sums on the store and its wheels."""
