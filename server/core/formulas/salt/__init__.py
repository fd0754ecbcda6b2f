"""Brine, and salt on its way into the cheese."""
