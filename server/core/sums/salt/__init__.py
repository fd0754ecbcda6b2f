"""Sums on brine and salt."""
