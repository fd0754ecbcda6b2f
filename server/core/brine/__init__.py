"""Brine tanks and what they hold."""
