"""Sums on the milk, its acid and its setting."""
