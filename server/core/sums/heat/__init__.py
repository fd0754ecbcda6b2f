"""Sums on heating, cooling and the hold."""
