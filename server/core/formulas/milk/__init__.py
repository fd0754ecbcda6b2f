"""Milk and what goes into it: mass, doses, rennet, acid."""
