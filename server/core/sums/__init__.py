"""Sums in the maker's words, on top of the formulas: asked for one at a time."""
