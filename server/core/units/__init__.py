"""Quantities and units: what a value may be, and how it is read and converted."""
